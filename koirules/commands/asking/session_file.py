"""The book of a session at the tub: fish, readings and steps, each on disk before anything else is asked."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

import click
from attrs import evolve, field

from koirules.api import Standard
from koirules.commands.output import show_problems, stop, stop_if_refused
from koirules.grading.questions import Known
from koirules.problems import Problem
from koirules.problems.asking import lost_records, not_asked_for, told_only_as_csv
from koirules.problems.judging import one_recorder
from koirules.records.asked_journal import (
    Answered,
    Back,
    Looked,
    Noted,
    Step,
    Untold,
    add_to_journal,
    begin_journal,
    journal_of,
    read_journal,
    write_journal,
)
from koirules.records.holding import Hold, clear_unfinished, hold
from koirules.records.records import read_records
from koirules.records.told_records import cell_of, not_kept, write_told
from koirules.records.writing import check_folder
from koirules.results.record import Record
from koirules.values import define
from koirules.vocabulary.cells import Misread, read_value
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Trait


@define
class Book:
    """All fish of a session and what was asked of them.

    path: the file of records. hold: on that file. records: by the name of the fish, in order. steps: what was asked, oldest
    first.
    """

    path: Path
    hold: Hold
    standard: Standard
    records: dict[str, Record]
    steps: list[Step]
    labels: tuple[str, ...] = ()
    _columns: tuple[Trait, ...] = field(default=())
    _of_fish: dict[str, list[Step]] | None = None

    def known(self, fish: str) -> Known:
        """What is known of a fish, with what follows from it."""
        known = self.standard.known(self.records[fish])
        for step in self.steps_of(fish):
            match step:
                case Answered(trait=name) if name in known.readings and name in self.standard.traits:
                    known = known.told(self.standard.traits[name], known.readings[name])
                case Untold(trait=name) if name in self.standard.traits:
                    known = known.told(self.standard.traits[name], None)
                case Noted(asked=asked, names=names):
                    traits = [self.standard.traits[name] for name in asked if name in self.standard.traits]
                    known = known.noted(traits, names)
                case _:
                    pass
        return known

    def was_noted(self, fish: str) -> bool:
        """Whether a fish was asked what else is to be noted."""
        return any(isinstance(step, Noted) for step in self.steps_of(fish))

    def marked(self, fish: str) -> tuple[str, ...]:
        """The traits that the sorter marked as noted, in the order of the question."""
        return tuple(name for step in self.steps_of(fish) if isinstance(step, Noted) for name in step.names)

    def steps_of(self, fish: str) -> Sequence[Step]:
        """What was asked of a fish, oldest first."""
        if self._of_fish is None:
            self._of_fish = {}
            for step in self.steps:
                self._of_fish.setdefault(step.fish, []).append(step)
        return self._of_fish.get(fish, ())

    def begin(self, fish: str) -> None:
        """Put a new fish into the file."""
        self.records[fish] = Record(fish, 0, {})
        self._write()

    def answer(self, fish: str, trait: Trait, reading: Reading) -> None:
        """Keep an answer as the file can hold it, to a millionth: first in the journal, so that it can be taken back."""
        kept = read_value(trait.kind, cell_of(trait, reading))
        if kept is not None and not isinstance(kept, Misread):
            reading = kept
        before = cell_of(trait, self.records[fish].readings.get(trait.name))
        self._keep(Answered(fish, trait.name, before))
        self._change(fish, trait, reading)

    def keep(self, step: Untold | Noted | Looked) -> None:
        """Keep a step that gives no reading; what cannot be told stands as `?` in the file, and a look that is done as well."""
        self._keep(step)
        record = self.records[step.fish]
        match step:
            case Untold(trait=name) if name not in record.readings:
                self.records[step.fish] = evolve(record, cannot_tell=record.cannot_tell | {name})
                self._write()
            case Looked():
                self.records[step.fish] = evolve(record, looked=True)
                self._write()
            case _:
                pass

    def back(self) -> str | None:
        """Take the last step back; the fish that it was about, None where there is none."""
        if not self.steps:
            return None
        step = self.steps.pop()
        self._of_fish = None
        if isinstance(step, Answered):
            trait = self.standard.traits[step.trait]
            reading = read_value(trait.kind, step.before)
            self._change(step.fish, trait, None if isinstance(reading, Misread) else reading)
        elif isinstance(step, Untold):
            record = self.records[step.fish]
            self.records[step.fish] = evolve(record, cannot_tell=record.cannot_tell - {step.trait})
            self._write()
        elif isinstance(step, Looked):
            self.records[step.fish] = evolve(self.records[step.fish], looked=None)
            self._write()
        self._end_if(add_to_journal(journal_of(self.path), Back()))
        return step.fish

    def _keep(self, step: Step) -> None:
        self.steps.append(step)
        self._of_fish = None
        self._end_if(add_to_journal(journal_of(self.path), step))

    def _change(self, fish: str, trait: Trait, reading: Reading | None) -> None:
        record = self.records[fish]
        readings = {name: held for name, held in record.readings.items() if name != trait.name}
        if reading is not None:
            readings[trait.name] = reading
        self.records[fish] = evolve(record, readings=readings, cannot_tell=record.cannot_tell - {trait.name})
        self._write()

    def _write(self) -> None:
        self._end_if(write_told(self.path, list(self.records.values()), self._columns, self.labels))

    def _end_if(self, problem: Problem | None) -> None:
        if problem is not None:
            show_problems([problem])
            stop("The answers before this one are in the file.")

    @classmethod
    def open(cls, path: Path, standard: Standard, others: Path | None, labels: Sequence[str]) -> Book:
        """The book of a file: new, or as it was left; with the fish of another file that it does not have yet.

        The file is held until the command ends: a second session that wrote it would lose answers of the first.
        """
        problem = check_folder(path)
        stop_if_refused([] if problem is None else [problem])
        held = hold(path)
        if isinstance(held, Problem):
            stop_if_refused([held])
            raise AssertionError("a problem that is no more than a warning")
        context = click.get_current_context(silent=True)
        if context is not None:
            context.call_on_close(held.release)
        for file in (path, journal_of(path)):
            clear_unfinished(file)
        records, steps = _as_left(path, standard, labels)
        added = read_records(others, standard.traits, labels) if others is not None else None
        if added is not None:
            stop_if_refused([*added.problems, *standard.measured(added.records, added.file).problems])
            stop_if_refused([one_recorder(str(others), one.row, one.fish) for one in added.records if one.seats])
            for record in added.records:
                records.setdefault(record.fish, record)
        for record in records.values():
            problem = not_kept(str(others or path), record, standard.traits)
            stop_if_refused([] if problem is None else [problem])
        carried = dict.fromkeys(label for record in records.values() for label in record.labels)
        read = {name for record in records.values() for name in record.readings} | standard.grader.traits_to_record()
        book = cls(
            path,
            held,
            standard,
            records,
            steps,
            tuple(label for label in carried if label not in standard.traits),
            tuple(trait for name, trait in standard.traits.items() if name in read),
        )
        book._write()
        if not journal_of(path).exists():
            book._end_if(begin_journal(journal_of(path)))
        return book


def _as_left(path: Path, standard: Standard, labels: Sequence[str]) -> tuple[dict[str, Record], list[Step]]:
    """What stands in a file that was asked for before, and the steps to it."""
    journal = journal_of(path)
    problem: Problem | None = None
    if path.suffix.lower() != ".csv":
        problem = told_only_as_csv(str(path), path.suffix)
    elif path.exists() and not journal.exists():
        problem = not_asked_for(str(path), str(journal))
    elif journal.exists() and not path.exists():
        problem = lost_records(str(path), str(journal))
    else:
        problem = check_folder(path)
    stop_if_refused([] if problem is None else [problem])
    if not path.exists():
        return {}, []
    batch = read_records(path, standard.traits, labels)
    steps = read_journal(journal)
    found = [*batch.problems, *standard.measured(batch.records, batch.file).problems]
    found += [one_recorder(str(path), one.row, one.fish) for one in batch.records if one.seats]
    stop_if_refused([*found, *([steps] if isinstance(steps, Problem) else [])])
    records = {record.fish: record for record in batch.records}
    if isinstance(steps, Problem):
        return records, []
    left = _still_there(steps, records, standard.traits)
    if len(left) < len(steps):
        # What is taken back is the last line of the journal: it must be the last of these.
        failed = write_journal(journal, left)
        stop_if_refused([] if failed is None else [failed])
    return records, left


def _still_there(steps: Sequence[Step], records: Mapping[str, Record], traits: Mapping[str, Trait]) -> list[Step]:
    """The steps about fish and traits that are there: somebody may have changed the file or the standard since.

    A last answer that the file does not hold was cut off between the journal and the file: it was never acknowledged.
    """
    left = [
        step for step in steps if step.fish in records and (isinstance(step, Noted | Looked) or step.trait in traits)
    ]
    last = left[-1] if left else None
    if isinstance(last, Answered):
        cell = cell_of(traits[last.trait], records[last.fish].readings.get(last.trait))
        if cell == last.before:
            left.pop()
    return left
