"""`koirules note`: what is said at the tub, in free order, made into records."""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path

import click

from koirules.api import Standard
from koirules.commands.asking.keyboard import Ended, Keyboard
from koirules.commands.inputs import (
    language_option,
    replace_option,
    setting_option,
    shown_titles,
    standard_from,
    stop_if_there,
)
from koirules.commands.output import show_problems, shown, stop, stop_if_refused
from koirules.notes.reader import Hearing, NotedFish, Notes, NotesReader, cell_of, cells, understood
from koirules.notes.remarks import Remark, Sort
from koirules.notes.sheet import headings_of, latest, row_of, was_looked_at
from koirules.notes.slips import nearest
from koirules.problems import Problem
from koirules.problems.asking import changed_since, not_noted, told_only_as_csv
from koirules.records.noted_journal import Journal, journal_of, sheet_line, write_sheet
from koirules.records.text_files import read_text
from koirules.records.writing import check_folder
from koirules.report.figures import figure
from koirules.vocabulary.kinds import words_of
from koirules.vocabulary.phrases import Spoken, examples_of, sequel_of, wordings_in
from koirules.vocabulary.traits import Trait

_INTERRUPTED = 130
_MOST_QUESTIONS = 5
_MOST_UNREAD = 20
_TYPED = (
    "Notes are typed after `koirules note RULES --out FILE.csv`, a line for each fish, such as "
    "`11: sandan, sharp kiwa, 14 cm`."
)
_ON_A_CRIB = 2


@click.command("note")
@click.argument("rules")
@click.argument("notes", type=click.Path(), required=False)
@click.option(
    "--out", type=click.Path(), metavar="FILE", help="The records that come of it (.csv); goes on where it is."
)
@click.option(
    "--phrases",
    is_flag=True,
    help="Print words that are understood, a line for each trait that RULES reads, as a crib sheet.",
)
@click.option("--all", "every", is_flag=True, help="With --phrases: every trait and all words that are understood.")
@click.option("--understood", is_flag=True, help="Say how much of NOTES is understood, and what is not most often.")
@replace_option
@setting_option
@language_option
def command(
    rules: str,
    notes: str | None,
    out: str | None,
    phrases: bool,
    every: bool,
    understood: bool,
    replace: bool,
    changes: tuple[str, ...],
    language: str | None,
) -> None:
    """Take notes of the fish at the tub by RULES, a line after another, or make records of a file of NOTES (.txt).

    A line names the fish and says what strikes you, in any order: `7: sandan, sharp kiwa, hi on one eye, 14 cm, in`. Every
    line is on disk before it is answered. `?` says what the fish hangs on, `back` takes the last line back, `done` ends.
    """
    standard = standard_from(rules, changes, language)
    if every and not phrases:
        stop("--all says how many words --phrases prints: add --phrases.")
    if phrases:
        _print_phrases(standard, every=every)
        return
    if notes is not None and " " in notes.strip() and not Path(notes).exists():
        stop(f"There is no file {shown(notes)}. {_TYPED}")
    if notes is None and understood:
        stop("--understood says how much of a file of notes is understood: name the file.")
    if notes is not None and understood:
        _print_understood(standard, _read(standard, notes))
        return
    if out is None:
        stop(f"Say where the records go: --out FILE.csv.{f' {_TYPED}' if notes is None else ''}")
    path = Path(out)
    problem = told_only_as_csv(out, path.suffix) if path.suffix.lower() != ".csv" else check_folder(path)
    stop_if_refused([] if problem is None else [problem])
    if notes is not None:
        stop_if_there([out], replace=replace)
        _convert(standard, _read(standard, notes), path)
        return
    if path.exists() and not journal_of(path).exists():
        stop_if_refused([not_noted(str(path), journal_of(path).name)])
    journal = Journal.open(path)
    if isinstance(journal, Problem):
        stop_if_refused([journal])
        return
    try:
        status = _Session(standard, path, journal).run()
    finally:
        journal.close()
    sys.exit(status)


def _read(standard: Standard, file: str) -> Notes:
    text = read_text(Path(file)) if Path(file).exists() else None
    if text is None:
        stop(f"There is no file {shown(file)}.")
    if isinstance(text, Problem):
        stop_if_refused([text])
        raise AssertionError("a problem that is no more than a warning")
    notes = standard.read_notes(text, file)
    stop_if_refused(notes.problems)
    return notes


def _convert(standard: Standard, notes: Notes, path: Path) -> None:
    failed = write_sheet(path, _Lines().of(notes))
    stop_if_refused([] if failed is None else [failed])
    heard = [*notes.fish, *([] if notes.lot is None else [notes.lot])]
    every, read = understood(heard)
    click.echo(
        f"Wrote {shown(str(path))}: {standard.subject.counted(len(latest(notes)))}, {read} of {every} remarks understood."
    )
    unread = [text for one in heard for text in one.unread]
    if unread:
        _print_unread(standard, unread)
        sys.exit(1)


def _print_unread(standard: Standard, unread: Sequence[str]) -> None:
    """What was not understood, the most frequent first, each with the line that would teach it."""
    click.echo("Not understood; write into the rules what it means, or `means nothing`:")
    reader, read = standard.notes_reader, standard.grader.traits_to_record()
    for text, times in Counter(unread).most_common(_MOST_UNREAD):
        near = nearest(reader, text, read)
        hint = f"  # near: {', '.join(near)}" if near else ""
        click.echo(shown(f'  {times:>3} x  phrase "{text.replace(chr(34), chr(39))}" means …{hint}'))
    left = len(set(unread)) - _MOST_UNREAD
    if left > 0:
        click.echo(f"  and {left} more")


def _print_understood(standard: Standard, notes: Notes) -> None:
    heard = [*notes.fish, *([] if notes.lot is None else [notes.lot])]
    every, read = understood(heard)
    share = 100 * read / every if every else 100.0
    click.echo(f"{read} of {every} remarks understood ({share:.1f} %), on {standard.subject.counted(len(notes.fish))}.")
    sorts = Counter(remark.sort for one in heard for remark in one.remarks)
    click.echo(", ".join(f"{sort.value} {count}" for sort, count in sorts.most_common()))
    unread = [text for one in heard for text in one.unread]
    if unread:
        _print_unread(standard, unread)


def _print_phrases(standard: Standard, *, every: bool) -> None:
    """The words of the page, then for each trait what it is called, and what is said for each of its words.

    every: all traits and words; otherwise a line with some words for each trait that the rules read.
    """
    rules = standard.rules
    own = [wording for phrase in rules.phrases for _, wording in phrase.wordings]
    if own:
        click.echo(shown(f"Of this page: {', '.join(own)}"))
    spoken: dict[str, list[Spoken]] = {}
    for saying in rules.sayings:
        if isinstance(saying, Spoken):
            spoken.setdefault(saying.trait, []).append(saying)
    if not every:
        read = standard.grader.traits_to_record()
        for trait in (trait for name, trait in rules.traits.items() if name in read):
            click.echo(shown(_crib_line(trait, spoken.get(trait.name, []), standard.language)))
        return
    for name, trait in rules.traits.items():
        sayings = spoken.get(name, [])
        nouns = dict.fromkeys(noun for one in sayings for noun in _examples(f"{one.nouns}, {one.beside}"))
        click.echo(shown(f"{name} ({trait.within(standard.language)})" + (f": {', '.join(nouns)}" if nouns else "")))
        for word in dict.fromkeys((*words_of(trait.kind), *(word for one in sayings for word in one.levels))):
            said = [each for one in sayings for each in _examples(one.levels.get(word, ""))]
            if said:
                click.echo(shown(f"    {word}: {', '.join(said)}"))
        for one in sayings:
            for reading, wordings in one.alone.items():
                click.echo(shown(f"    {reading}: {', '.join(_examples(wordings))}"))


def _examples(wordings: str) -> tuple[str, ...]:
    """The wordings of a list as people say them: of a pattern its first one."""
    return tuple(next(examples_of(sequel_of(each))) for each in wordings_in(wordings))


def _crib_line(trait: Trait, sayings: Sequence[Spoken], language: str | None) -> str:
    """The first words that are said of a trait, by its own words and readings."""
    heard: dict[str, list[str]] = {}
    for one in sayings:
        for word, wordings in (*one.levels.items(), *one.alone.items()):
            known = heard.setdefault(word.removeprefix("is "), [])
            known += [each for each in _examples(wordings) if each != word and each not in known]
    words = dict.fromkeys((*words_of(trait.kind), *heard))
    parts = [f"{word}: {', '.join(said[:_ON_A_CRIB])}" if (said := heard.get(word)) else word for word in words]
    return f"{trait.name} ({trait.within(language)})  {' | '.join(parts)}".rstrip()


class _Lines:
    """The lines of a sheet of notes: each is made once, however often the sheet is written."""

    def __init__(self) -> None:
        self._made_for: tuple[tuple[str, ...], NotedFish | None, str] | None = None
        self._lines: dict[int, tuple[NotedFish, str]] = {}

    def of(self, notes: Notes) -> list[str]:
        """Every line, the headings first."""
        headings = headings_of(notes)
        made_for = (headings, notes.lot, notes.seal)
        if made_for != self._made_for:
            self._made_for, self._lines = made_for, {}
        known, self._lines = self._lines, {}
        for fish in notes.fish:
            line = known.get(id(fish))
            if line is None:
                row = row_of(fish, notes)
                line = (fish, sheet_line(row.get(name, "") for name in headings))
            self._lines[id(fish)] = line
        return [sheet_line(headings), *(line for _, line in self._lines.values())]


class _Session:
    """Notes taken a line after another."""

    def __init__(self, standard: Standard, path: Path, journal: Journal) -> None:
        self.standard, self.path, self.journal = standard, path, journal
        self.reader: NotesReader = standard.notes_reader
        self.lines = _Lines()
        self.hearing = self._heard(journal.lines)
        self.notes = self.hearing.notes
        if path.exists() and not self._is_as_left():
            stop_if_refused([changed_since(str(path))])
        self._write()

    def _heard(self, lines: Sequence[str]) -> Hearing:
        hearing = Hearing.of(self.reader, str(self.path))
        for line in lines:
            hearing.take(line)
        return hearing

    def _is_as_left(self) -> bool:
        """Whether the sheet is what its notes say, with the last line or, after a power cut, without it."""
        passing = self.path.with_name(f".{self.path.name}.compared")
        try:
            for lines in (self.journal.lines, self.journal.lines[:-1]):
                notes = self._heard(lines).notes
                if write_sheet(passing, _Lines().of(notes)) is not None:
                    return True
                if passing.read_bytes() == self.path.read_bytes():
                    return True
        except OSError:
            return True
        finally:
            passing.unlink(missing_ok=True)
        return False

    def _write(self) -> None:
        failed = write_sheet(self.path, self.lines.of(self.notes))
        if failed is not None:
            show_problems([failed])
            stop("The notes before this one are in the file.")

    def run(self) -> int:
        """Take notes until nothing more comes; the exit status."""
        for caution in self.standard.cautions.handling:
            click.echo(caution)
        if self.notes.fish:
            click.echo(
                f"{shown(str(self.path))} goes on behind {self.standard.subject.one} {shown(self.notes.fish[-1].name)}."
            )
        keyboard, status = Keyboard(), 0
        try:
            while True:
                line = keyboard.line()
                if line == "done":
                    break
                self._take(line)
        except Ended:
            click.echo()
        except KeyboardInterrupt:
            click.echo()
            status = _INTERRUPTED
        lot = [] if self.notes.lot is None else [self.notes.lot]
        unread = [one for one in (*lot, *latest(self.notes)) if one.unread]
        click.echo(f"{shown(str(self.path))}: {self.standard.subject.counted(len(latest(self.notes)))}.")
        for one in unread:
            click.echo(shown(f"  read again {one.name}: {'; '.join(one.unread)}"))
        return status or (1 if unread else 0)

    def _take(self, line: str) -> None:
        if not line:
            return
        if line == "?":
            self._ask()
            return
        if line == "back":
            back = self.journal.back()
            if isinstance(back, Problem):
                show_problems([back])
                stop("The notes before this one are in the file.")
            if back is not None:
                self.hearing = self._heard(self.journal.lines)
                self.notes = self.hearing.notes
                self._write()
            click.echo("Nothing is left to take back." if back is None else shown(f"taken back: {back}"))
            return
        wrong = self.hearing.take(line, whole=True)
        if wrong:
            for problem in wrong:
                click.echo(shown(f"{problem.cause} {problem.mend}"))
            return
        failed = self.journal.add(line)
        if failed is not None:
            show_problems([failed])
            stop("The notes before this one are in the file.")
        before = {(one.name, one.look): one for one in self.notes.fish}
        was_lot, notes = self.notes.lot, self.hearing.notes
        self.notes = notes
        self._write()
        told = [one for one in notes.fish if before.get((one.name, one.look)) != one]
        for fish in told:
            self._tell(fish, before.get((fish.name, fish.look)))
        if notes.lot is not None and notes.lot != was_lot:
            parts = [_words(notes.lot, was_lot, notes), *self._not_understood(notes.lot, was_lot)]
            click.echo(shown(f"all: {_joined(parts) or 'nothing to record'}"))

    def _tell(self, fish: NotedFish, before: NotedFish | None) -> None:
        """One line: what was understood, what was not, the grade so far, and what it still hangs on."""
        parts = [_words(fish, before, self.notes), *self._not_understood(fish, before)]
        record = self._record(fish)
        result = self.standard.grade(record)
        titles = shown_titles(self.standard)
        every = len(result.possible) == len(titles) > 1
        grades = "any grade" if every else " or ".join(titles[name] for name in result.possible)
        if self.standard.rules.sections:
            grades += f" {figure(result.score_low, result.score_high)}"
        parts.append(grades)
        if result.grade is None:
            asked = [one.trait.name for one in self.standard.questions(record)[:2]]
            parts.append(f"hangs on {', '.join(asked)}".replace("_", " ") if asked else "")
        click.echo(shown(f"{fish.name}: {_joined(parts)}"))

    def _not_understood(self, fish: NotedFish, before: NotedFish | None) -> Iterator[str]:
        """What of a line was not understood, each with what it may have been."""
        for text in fish.unread[len(before.unread) if before else 0 :]:
            near = nearest(self.reader, text, self.standard.grader.traits_to_record(), 1)
            yield f'not understood: "{text}"' + (f' (near "{near[0]}"?)' if near else "")

    def _record(self, fish: NotedFish) -> dict[str, object]:
        whole = next(one for one in latest(self.notes) if one.name == fish.name)
        looked = (
            {"looked": "yes"} if was_looked_at(whole, self.notes.traits) and "looked" not in self.notes.traits else {}
        )
        return {"fish": fish.name, **looked, **cells(whole, self.notes.traits, self.notes.lot)}

    def _ask(self) -> None:
        """What the last fish still hangs on."""
        if not self.notes.fish:
            click.echo(f"No {self.standard.subject.one} was named yet.")
            return
        fish = self.notes.fish[-1]
        result = self.standard.grade(self._record(fish))
        if result.grade is not None:
            click.echo(shown(f"{fish.name} is settled: {shown_titles(self.standard)[result.grade]}."))
            return
        click.echo(shown(f"{fish.name} hangs on:"))
        for trait in [one.trait for one in self.standard.questions(self._record(fish))[:_MOST_QUESTIONS]]:
            words = " / ".join(words_of(trait.kind))
            click.echo(shown(f"  {trait.within(self.standard.language)}" + (f": {words}" if words else "")))


def _joined(parts: Iterable[str]) -> str:
    return " | ".join(part for part in parts if part)


def _words(fish: NotedFish, before: NotedFish | None, notes: Notes) -> str:
    """What a line said of a fish, trait by trait, in the words of a sheet."""
    old = {} if before is None else before.said
    new = [
        f"{name.replace('_', ' ')} {cell_of(notes.traits[name].kind, said).replace('_', ' ')}"
        for name, said in fish.said.items()
        if name not in old or old[name] != said
    ]
    remarks: list[Remark] = list(fish.remarks[len(before.remarks) if before else 0 :])
    new += [f"{one.sort.value}: {one.text}" for one in remarks if one.sort in {Sort.FORECAST, Sort.COMPARISON}]
    new += [f"{Sort.DETAIL.value}: {one.text}" for one in remarks if one.is_detail]
    new += [f"verdict {fish.verdict}"] if fish.verdict and (before is None or before.verdict != fish.verdict) else []
    return ", ".join(new)
