"""The library: load a standard, grade records by it."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from datetime import date
from decimal import Decimal
from functools import cached_property
from importlib.util import find_spec
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar, overload
from warnings import warn

from attrs import evolve, field, fields

from koirules.loading.files import load
from koirules.plugins import Registry, load_registry
from koirules.problems import (
    EngineError,
    KoirulesError,
    Problem,
    RecordError,
    RecordWarning,
    StandardError,
    is_refused,
    plugging,
)
from koirules.problems.extras import to_install
from koirules.standard.parts import Rules, Setting, words_of_one_trait
from koirules.values import frozen
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:  # each is imported where it is used: a command needs a few of them
    import polars as pl

    from koirules.analysis.agreement import Agreement
    from koirules.analysis.diff.comparison import Comparison
    from koirules.analysis.flaws import Flaws
    from koirules.analysis.growth_fitting import GrowthOfFish
    from koirules.analysis.proofs.every import Proofs
    from koirules.explain.plain_words import PlainWords
    from koirules.explain.score_lines import GradeLine
    from koirules.grading.at_once import AtOnce
    from koirules.grading.batch import BatchGrader, Engine
    from koirules.grading.measuring import MeasuredBatch
    from koirules.grading.next_look import Asker
    from koirules.grading.questions import Known, Question, Questioner
    from koirules.grading.sample_runs import SampleRun
    from koirules.grading.single import Grader
    from koirules.grading.whole_batch import BatchResult, WholeBatch
    from koirules.languages import Tongue
    from koirules.notes.reader import Notes, NotesReader
    from koirules.records.about import About
    from koirules.report.audience import Audience
    from koirules.report.drawer import Drawer
    from koirules.report.page_pictures import Pictures
    from koirules.report.paper import Paper
    from koirules.report.photographs import Photograph
    from koirules.report.views import View
    from koirules.results.decisions import Decision
    from koirules.results.mapping_record import RecordReader
    from koirules.results.record import Record
    from koirules.results.result import Result
    from koirules.standard.checked import Checked
    from koirules.vocabulary.subject import Cautions, Subject

_Frame = TypeVar("_Frame")
"""A frame of any library that `Standard.grade_frame` takes."""


@frozen(slots=False, repr=False)
class Standard:
    """A checked standard, ready to grade.

    rules: its parts, typed. settings: the values of this run. changed: the names of the settings that differ from the
    file. language: two-letter code of the language of reasons, where the file's labels carry it. exact: whether numbers
    in reasons keep all of their digits. warnings: what the checker had to say about a file that holds. kept_as: what it is
    kept as between runs, "" where it is not.
    """

    rules: Rules = field(repr=False)
    settings: Mapping[str, Setting] = field(repr=False)
    changed: tuple[str, ...] = ()
    language: str | None = None
    exact: bool = False
    warnings: tuple[Problem, ...] = field(default=(), repr=False)
    _known_seal: str = field(default="", eq=False)
    kept_as: str = field(default="", eq=False, repr=False)
    _batches: dict[tuple[bool, bool, Engine | None], BatchGrader] = field(
        factory=dict, init=False, eq=False, repr=False
    )

    def __repr__(self) -> str:
        changes = "".join(f", {name}={self.settings[name].value}" for name in self.changed)
        return f"Standard({self.title!r}, edition={self.edition!r}, seal={self.seal[:6] + '…'!r}{changes})"

    def __hash__(self) -> int:
        return hash((self.seal, self.changed, self.language))

    def __getstate__(self) -> dict[str, object]:
        """A standard is copied and pickled as what it says; what was compiled of it is compiled again where it is needed."""
        return {one.name: getattr(self, one.name) for one in fields(type(self)) if one.init}

    def __setstate__(self, state: Mapping[str, object]) -> None:
        self.__dict__.update(state, _batches={})

    @property
    def title(self) -> str:
        """The title of the standard."""
        return self.rules.title.text if self.language is None else self._plain.of(self.rules.title)

    @property
    def edition(self) -> str:
        """The edition, a label."""
        return self.rules.edition

    @property
    def variety(self) -> str | None:
        """The variety as the standard names it, with its skins: `showa with ginrin`, `(kohaku, showa)`, `any variety`."""
        return self.rules.variety

    @property
    def varieties(self) -> tuple[str, ...]:
        """The varieties that it is for, each with its skins; none where it names none or is for any variety."""
        return self.rules.each_variety

    @property
    def grades(self) -> tuple[str, ...]:
        """The names of the grades, best first."""
        return tuple(grade.name for grade in self.rules.grades)

    @property
    def grade_titles(self) -> Mapping[str, str]:
        """The title of each grade by its name, in the language of this standard, best first."""
        return {grade.name: self._plain.of(grade.title) for grade in self.rules.grades}

    @property
    def subject(self) -> Subject:
        """What its records are about, as sentences name it."""
        return self.rules.subject

    @property
    def cautions(self) -> Cautions:
        """What to bear in mind on the kind of occasion that it is for."""
        return self.rules.subject.cautions_for(self.rules.occasion)

    @property
    def growth_note(self) -> str:
        """What a reader of its results should know about the model of growth behind them; "" where it asks for no growth."""
        from koirules.measures.grown_traits import growth_note

        return growth_note(self.rules, self.settings, self.tongue)

    @property
    def grade_lines(self) -> tuple[GradeLine, ...]:
        """Each grade with its title and the score that it asks for in this run, best first."""
        from koirules.explain.score_lines import grade_lines

        return grade_lines(self.rules, self.settings, self._plain.of)

    @property
    def traits(self) -> Mapping[str, Trait]:
        """All that a record may name, by name."""
        return self.rules.traits

    @cached_property
    def seal(self) -> str:
        """The seal: the number of the canonical form and the SHA-256 of the canonical text (examples/guide/reference/seal.md)."""
        if self._known_seal:
            return self._known_seal
        from koirules.standard.canonical import seal_of

        return seal_of(self.rules)

    @cached_property
    def canonical_text(self) -> str:
        """What the seal is made of: all that the standard says, without its looks."""
        from koirules.standard.canonical import canonical_text

        return canonical_text(self.rules)

    @cached_property
    def whole_text(self) -> str:
        """The standard as one text that needs no other file: the text of its file, or its base with all changes made."""
        from koirules.standard.inherit.effective_text import whole_text

        return whole_text(self.rules)

    @cached_property
    def grader(self) -> Grader:
        """The compiled standard."""
        from koirules.grading.single import Grader

        return Grader.of(self.rules, self.settings, self.language, self.exact)

    @cached_property
    def reader(self) -> RecordReader:
        """What reads the records of this standard."""
        from koirules.results.mapping_record import RecordReader

        return RecordReader.of(self.rules.traits)

    def grade(self, record: Mapping[str, object], fish: str = "") -> Result:
        """Grade one fish.

        record: trait names to values: numbers in the trait's own unit, or texts as a record sheet has them ("12 mm",
        "40 % to 50 %", "fair or sharp", "tail dorsal"), booleans, sets of places; None or absent is not recorded.
        A key `fish` names the fish where the argument does not. Raises RecordError with every problem of the record.
        """
        return self._at_once.grade(record, fish) or self.grader.grade(self._read(record, fish))

    def _read(self, record: Mapping[str, object], fish: str = "") -> Record:
        made = self.reader.read(record, fish)
        if isinstance(made, tuple):
            raise RecordError(made)
        return made

    def known(self, record: Record, untold: Collection[str] = ()) -> Known:
        """What is known of a fish that is being looked at. Silence says nothing of it before the look is done (`looked`)."""
        from koirules.grading.questions import Known

        grader = self.grader if record.looked else self.grader.of_known_fish
        return Known(grader.measured(record).readings, frozenset(untold) | record.cannot_tell)

    @cached_property
    def _at_once(self) -> AtOnce:
        from koirules.grading.at_once import AtOnce

        return AtOnce(self.grader, self.reader)

    @cached_property
    def questioner(self) -> Questioner:
        """The compiled standard, ready to say what a fish hangs on whose look is not done: silence says nothing of it."""
        from koirules.grading.questions import Questioner

        return Questioner.of(self.grader.of_known_fish, self.settings)

    @cached_property
    def _questioner_of_looks(self) -> Questioner:
        from koirules.grading.questions import Questioner

        return Questioner.of(self.grader, self.settings) if self.rules.silence else self.questioner

    def questioner_of(self, record: Record) -> Questioner:
        """The questioner of a fish: silence counts once its look is done."""
        return self._questioner_of_looks if record.looked else self.questioner

    def questions(self, record: Mapping[str, object], untold: Collection[str] = ()) -> tuple[Question, ...]:
        """What the grade of a fish hangs on: the traits not recorded, or not surely, most decisive first; empty if settled.

        record: as for `grade`. untold: traits that cannot be told. Settled here means settled whatever is still told, so
        that `is recorded` of a trait that may yet be told is open. What silence means counts only where the record says that
        the look is done (`looked`: yes). Raises RecordError like `grade`.
        """
        read = self._read(record)
        return self.questioner_of(read).questions(self.known(read, untold))

    def next_question(self, record: Mapping[str, object], untold: Collection[str] = ()) -> Question | None:
        """The look that settles such fish soonest (grading/next_look.py), None where nothing is left to ask; as `questions`.

        A fish whose grade rests on silence has a next question until its record says `looked`: yes. Then silence answers.
        """
        from koirules.grading.next_look import Asker

        read = self._read(record)
        asker = self.asker if not read.looked else Asker.of(self._questioner_of_looks)
        return asker.next_one(self.known(read, untold))

    @cached_property
    def asker(self) -> Asker:
        """What chooses the next question, all answers of a trait being as likely as their share of its range."""
        from koirules.grading.next_look import Asker

        return Asker.of(self.questioner)

    def grade_record(self, record: Record) -> Result:
        """Grade one fish whose record has been read already."""
        return self.whole_batch.alone(record) if record.seats else self.grader.grade(record)

    def drawing(self, record: Mapping[str, object], name: str = "", *, grown: bool = True) -> str:
        """A drawing of a record as SVG; with `grown` a koi also as it may be when grown, where the standard asks for that.

        "" where nothing draws its subject, or no pattern of a koi was mapped: nothing is invented. Raises RecordError like
        `grade`. Where the drawing of a plugin fails, it is "" too, and a RecordWarning says so.
        """
        from koirules.report.views import views_drawn

        drawer = self.drawer
        readings = self._read(record, name).readings
        view = None if grown else drawer.view_now(readings, name)
        views = drawer.views_of(readings, name) if grown else () if view is None else (view,)
        self._warn_of_drawings()
        return views_drawn(views, name, self.tongue) if views and views[0].mapped else ""

    @cached_property
    def drawer(self) -> Drawer:
        """What draws the records of this standard, and knows what went wrong with that."""
        from koirules.report.drawer import Drawer

        return Drawer(self.rules, self.settings, self.tongue)

    def _warn_of_drawings(self) -> None:
        for problem in self.drawer.take_problems():
            warn(str(problem), RecordWarning, stacklevel=3)

    def read_records(self, path: str | PathLike[str], labels: Collection[str] = ()) -> tuple[Record, ...]:
        """Every look that a file of records holds, in its order; several of one fish are told apart by their dates.

        labels: further columns that are carried along as text. Raises RecordError with every problem of the file.
        """
        from koirules.records.records import read_every_look

        batch = read_every_look(Path(path), self.traits, labels, lambda: self.notes_reader)
        if is_refused(batch.problems):
            raise RecordError([problem for problem in batch.problems if not problem.warning])
        return batch.records

    @cached_property
    def notes_reader(self) -> NotesReader:
        """What reads notes by the phrases of this standard and of its varieties."""
        from koirules.notes.reader import NotesReader

        return NotesReader.of(self.rules)

    def read_notes(self, text: str, file: str = "notes") -> Notes:
        """Notes in free order, as they are said at the tub: a line a fish, its remarks between commas.

        Each fish of what comes back says what was understood, by which phrase, and what was not; `records` are ready for
        `grade_batch`. What is wrong with the lines is in `problems`, and nothing is raised for it.
        """
        return self.notes_reader.read(text, file)

    def prove(self, *, seconds: float | None = None, progress: Callable[[str], None] = lambda _: None) -> Proofs:
        """What holds for every fish, proved, or shown to fail by a fish (`koirules prove`); needs the extra `proofs`.

        seconds: of processor time, after which what was not reached stands in `unreached`. progress: is told which question is
        next. Raises EngineError where the solver is not installed.
        """
        if find_spec("z3") is None:
            raise EngineError(f"Proofs need the extra `proofs`: {to_install('proofs')}.")
        from koirules.analysis.proofs.every import proofs

        return proofs(self.grader.of_known_fish, progress, seconds)

    def sample_runs(self) -> tuple[SampleRun, ...]:
        """The samples of the file, each with its result and, in words, every outcome that does not hold."""
        from koirules.grading.sample_runs import run_samples

        return run_samples(self.grader)

    def unreached(self) -> tuple[str, ...]:
        """What no sample reaches: faults, words of scales, pieces of curves, grades (`koirules check --reach`)."""
        from koirules.analysis.coverage import unreached

        return unreached(self.grader)

    def unnoticed_changes(self, progress: Callable[[int], None] = lambda _: None) -> tuple[str, ...]:
        """Small changes to the rules that no sample would notice (`koirules check --changes`).

        progress: is told how many were tried.
        """
        from koirules.analysis.mutation import unnoticed

        return unnoticed(self.grader, progress)

    def write_sheet(self, path: str | PathLike[str], *, fish: int = 200) -> None:
        """Write a blank record sheet (.xlsx or .csv) with the traits that this standard reads. Raises KoirulesError."""
        from koirules.classes.placing import classes_read
        from koirules.records.sheet import write_sheet
        from koirules.vocabulary.traits import Variety

        read = self.grader.traits_to_record() - classes_read(self.traits)
        traits = {name: trait for name, trait in self.traits.items() if name in read}
        found = Variety(self.variety or "", self.title, traits, subject=self.rules.subject)
        _raise(write_sheet(Path(path), found, fish=fish, phrases=words_of_one_trait(self.rules.phrases)))

    def write_handbook(self, path: str | PathLike[str], *, remarks: bool = False) -> None:
        """Write the standard as a page for judges (.html or .md). remarks: show those of the rule file. Raises KoirulesError."""
        from koirules.report.handbook import Subject, write_handbook

        subject = Subject(self.grader, self.sample_runs(), self.seal, self.every_caution, remarks, self.drawer)
        _raise(write_handbook(Path(path), subject))
        self._warn_of_drawings()

    def about(self, batch: BatchResult, records: str = "") -> About:
        """Where the results of a batch come from, as files of them say it. records: what the batch is called."""
        from koirules.records.about import About

        return About(
            title=self.title,
            edition=self.edition,
            variety=self.variety,
            file=self.rules.file,
            settings={name: self.settings[name].words for name in self.changed},
            stage=self.rules.stage,
            cautions=self.every_caution,
            alerts=batch.alerts,
            rounds=batch.rounds,
            seal=self.seal,
            grades=self.grade_lines,
            tongue=self.tongue,
            records=records,
            fish=len(batch.results),
            day=date.today(),
            subject=self.subject,
            traits=self.trait_titles,
        )

    def write_results(
        self,
        path: str | PathLike[str],
        batch: BatchResult,
        records: str = "",
        *,
        audience: Audience | None = None,
        with_records: bool = False,
        photographs: Mapping[str, Photograph] | None = None,
    ) -> None:
        """Write the results of a batch (.html, .csv, .xlsx, .json or a format of a plugin). Raises KoirulesError.

        records: what the batch is called. audience: who a page is for (a table has everything, whoever reads it). with_records:
        whether tables have what was recorded beside the results. photographs: by fish, for a page (see `photographs_of`).
        """
        from koirules.records.recorded_values import recorded_values
        from koirules.report.result_files import write_results

        unknown = sorted(() if audience is None else audience.offered - set(self.grades))
        if unknown:
            raise ValueError(f"no grade is called {', '.join(unknown)}: there are {', '.join(self.grades)}")
        about = self.about(batch, records)
        if with_records:
            about = evolve(about, recorded=recorded_values([(self.traits, batch.records)]))
        results = self.questioner.with_hangs_on(batch.results, batch.records)
        _raise(write_results(Path(path), results, about, self._pictures(batch, photographs), audience))

    def write_plot(self, path: str | PathLike[str], batch: BatchResult, records: str = "") -> None:
        """Plot the points of a batch by section, with the lines of the grades (.svg or .png). Raises KoirulesError."""
        from koirules.report.plots import write_plot

        _raise(write_plot(Path(path), batch.results, self.about(batch, records)))

    def write_paper(
        self,
        path: str | PathLike[str],
        paper: Paper,
        batch: BatchResult,
        records: str = "",
        *,
        house: Audience | None = None,
        photographs: Mapping[str, Photograph] | None = None,
    ) -> None:
        """Write a sheet to print, as HTML: a certificate, labels, lists of places to hang up, or a page for each place.

        house: its title, contact line and mark. Raises KoirulesError: the file cannot be written; ValueError: a certificate is
        wanted, and no settled fish has the name.
        """
        from koirules.report.paper import write_paper

        about, pictures = self.about(batch, records), self._pictures(batch, photographs)
        results = self.questioner.with_hangs_on(batch.results, batch.records)
        _raise(write_paper(Path(path), paper, results, about, pictures, house))

    def photographs_of(self, batch: BatchResult, file: str | PathLike[str]) -> dict[str, Photograph]:
        """The photographs that the records of a batch name, by fish. file: the records; names are taken from its folder.

        Raises RecordError with every photograph that cannot be shown.
        """
        from koirules.report.photographs import read_photographs

        found, problems = read_photographs(Path(file), batch.records)
        if problems:
            raise RecordError(tuple(problems))
        return dict(found)

    def _pictures(self, batch: BatchResult, photographs: Mapping[str, Photograph] | None) -> Pictures:
        from koirules.report.page_pictures import Pictures

        return Pictures(photographs or {}, self.views(batch.records))

    def views(self, records: Iterable[Record]) -> dict[str, tuple[View, ...]]:
        """How each fish looks, a koi also at each length that its pattern is asked for; without those that nothing draws.

        A RecordWarning says where the drawing of a plugin fails.
        """
        found = self.drawer.views_by_fish(records)
        self._warn_of_drawings()
        return found

    def agreement(
        self, verdicts: Mapping[str, str], beside: BatchResult | Mapping[str, str], kept: Sequence[str] = ()
    ) -> Agreement:
        """How far a sorter agrees with the rules, or with another sorter.

        verdicts: by fish, in, out, unsure, or the name or title of a grade. beside: results of a batch, or other verdicts. kept:
        the grades that count as in, by default the best. Raises ValueError at a verdict that is none of these, and where no fish
        has both.
        """
        from koirules.analysis.agreement import Judging

        first = self._verdicts(verdicts)
        second = self._verdicts(beside) if isinstance(beside, Mapping) else {}
        judging = Judging.of([*first.values(), *second.values()], self.grades, tuple(kept))
        theirs = {fish: judging.of_verdict(verdict) for fish, verdict in second.items()}
        if not isinstance(beside, Mapping):
            theirs = {result.fish: judging.of_result(result) for result in beside.results}
        if first.keys().isdisjoint(theirs):
            raise ValueError("no fish of the verdicts is among those that they are set beside")
        return judging.agreement({fish: judging.of_verdict(one) for fish, one in first.items()}, theirs)

    @cached_property
    def verdict_words(self) -> Mapping[str, str]:
        """What each word of a verdict means, by the word in lower case: in, out, unsure, or the name of a grade."""
        from koirules.analysis.agreement import IN, OUT, UNSURE
        from koirules.vocabulary.plain_text import folded

        words = {IN: IN, OUT: OUT, UNSURE: UNSURE, **{folded(name): name for name in self.grades}}
        return words | {folded(title): name for name, title in self.grade_titles.items()}

    def _verdicts(self, said: Mapping[str, str]) -> dict[str, str]:
        from koirules.vocabulary.plain_text import folded

        unknown = {fish: word for fish, word in said.items() if folded(word) not in self.verdict_words}
        if unknown:
            told = ", ".join(f"{word!r} of {fish}" for fish, word in unknown.items())
            raise ValueError(f"These are no verdicts: {told}. Say one of {', '.join(self.verdict_words)}.")
        return {fish: self.verdict_words[folded(word)] for fish, word in said.items()}

    def flaws(self) -> Flaws:
        """An ideal fish of the standard, and what each single flaw makes of it."""
        from koirules.analysis.flaws import Flaws

        return Flaws.of(self.grader, self.settings)

    def fit_growth(self, records: Sequence[Record]) -> GrowthOfFish:
        """Fit the coefficients of growth to looks at the same fish on several days. records: every look of each fish."""
        from koirules.analysis.growth_fitting import growth_of

        return growth_of(records, self.traits)

    @property
    def every_caution(self) -> tuple[str, ...]:
        """The cautions of the subject and the occasion, after what is to be known of the model of growth where one is asked."""
        note = self.growth_note
        return (note, *self.cautions.all) if note else self.cautions.all

    @cached_property
    def whole_batch(self) -> WholeBatch:
        """The compiled standard for batches of records that are graded together."""
        from koirules.grading.whole_batch import WholeBatch

        return WholeBatch(self.grader)

    def grade_batch(
        self,
        records: Iterable[Mapping[str, object]],
        decisions: Sequence[Decision] = (),
        day: date | None = None,
    ) -> BatchResult:
        """Grade the fish of a batch together, with its figures, alerts and rounds.

        records: as for `grade`, each with a key `fish` that names it. A key `date` (a date, or text such as 2026-11-25)
        tells looks at the same fish apart: the latest is graded, and the one before is its `earlier`. decisions: a person's
        words, above the rules. day: of looks without a date; the day of the next look counts from it. Raises RecordError
        with every problem of records and decisions.
        """
        from koirules.rounds.decision_checks import check_decisions
        from koirules.rounds.looks import read_looks

        read, problems = read_looks(self.reader, records)
        measured = self.measured(read, "records")
        problems.extend(problem for problem in measured.problems if not problem.warning)
        problems.extend(check_decisions(self.rules, decisions, [record.fish for record in read]))
        if problems:
            raise RecordError(tuple(problems))
        return self.whole_batch.grade(measured.records, decisions, day)

    def grade_file(
        self,
        path: str | PathLike[str],
        labels: Collection[str] = (),
        decisions: Sequence[Decision] = (),
        day: date | None = None,
    ) -> BatchResult:
        """Grade the fish of a file of records together, as `grade_batch`, each at its latest look.

        labels: further columns that are carried along as text. Raises RecordError with every problem of the file and of the
        decisions.
        """
        from koirules.records.records import read_records
        from koirules.rounds.decision_checks import check_decisions

        read = read_records(Path(path), self.traits, labels, lambda: self.notes_reader)
        measured = self.measured(read.records, read.file)
        fish = [record.fish for record in read.records]
        problems = (*read.problems, *measured.problems, *check_decisions(self.rules, decisions, fish))
        if is_refused(problems):
            raise RecordError(tuple(problem for problem in problems if not problem.warning))
        return evolve(self.whole_batch.grade(measured.records, decisions, day or date.today()), warnings=problems)

    def grade_records(
        self, records: Sequence[Record], decisions: Sequence[Decision] = (), day: date | None = None
    ) -> BatchResult:
        """Grade records that have been read already, and decisions that have been checked, as `grade_batch`."""
        return self.whole_batch.grade(records, decisions, day)

    def measured(self, records: Sequence[Record], file: str) -> MeasuredBatch:
        """Records with the derived traits that the rules read, worked out over all of them at once; never raises.

        file: the name that problems show. Grading does the same for a record that has not been through here.
        """
        from koirules.grading.measuring import measured_records

        return measured_records(self.grader.measurer, records, file, self.grader.silence, self.rules)

    def batch(self, *, sections: bool = True, faults: bool = False, engine: Engine | None = None) -> BatchGrader:
        """The compiled standard for whole frames: see `grade_frame`."""
        if engine not in {None, "columnar", "compiled"}:
            raise EngineError(
                f'There is no engine "{engine}". Choose "columnar" or "compiled", or leave it out for whichever pays.'
            )
        if any(find_spec(name) is None for name in ("polars", "narwhals")):
            raise EngineError(f"Grading frames needs the extra `frames`: {to_install('frames')}.")
        from koirules.grading.batch import BatchGrader

        return BatchGrader(self.rules, self.settings, self.grader, sections, faults, engine)

    @overload
    def grade_frame(
        self,
        frame: pl.LazyFrame,
        *,
        sections: bool = True,
        faults: bool = False,
        engine: Engine | None = None,
        lot: Mapping[str, object] | None = None,
    ) -> pl.DataFrame: ...
    @overload
    def grade_frame(
        self,
        frame: _Frame,
        *,
        sections: bool = True,
        faults: bool = False,
        engine: Engine | None = None,
        lot: Mapping[str, object] | None = None,
    ) -> _Frame: ...
    def grade_frame(
        self,
        frame: Any,
        *,
        sections: bool = True,
        faults: bool = False,
        engine: Engine | None = None,
        lot: Mapping[str, object] | None = None,
    ) -> Any:
        """Grade every row of a frame: Polars (eager or lazy), pandas, Arrow or a DuckDB relation, and what comes is the same.

        Columns with the names of traits are read as `grade` reads values; null and NaN are not recorded. All columns stay,
        in their order; after them come `grade` (null where several are possible), `possible` (names parted by `|`),
        `score` (null where it is open), `score_low`, `score_high`, with `sections` the two ends of each section, and with
        `faults` a column `fault NAME` or `lift NAME` for each (true where it surely bites, null where it may). Scores are
        points. A lazy frame is collected. `lot` is what holds for every row that says nothing of a trait itself, as a first row
        `all fish` of a sheet: `{"health": "well"}`.

        `engine` is "columnar" or "compiled", with the same results; where it is None, the compiled one grades large frames if
        the extra `compiled` is installed (`koirules check --engines` tells which). Raises RecordError with
        the problems of columns and cells; rows count from 1. Raises EngineError where `engine` cannot grade the frame,
        and without the extra `frames`.
        """
        key = (sections, faults, engine)
        if key not in self._batches:
            self._batches[key] = self.batch(sections=sections, faults=faults, engine=engine)
        from koirules.grading.frames import graded_frame

        return graded_frame(self._batches[key], frame, lot)

    def compare(self, newer: Standard, records: Iterable[Mapping[str, object]] | None = None) -> Comparison:
        """Compare this standard with a newer edition of it.

        `changes`: what changed. `parting`: whether a fish can be graded differently (`verdict`: proved with the extra `proofs`,
        else only tried). `moves`: of records, who moves and by which change. Raises RecordError with all problems of these.
        """
        from koirules.analysis.diff.comparison import compared
        from koirules.analysis.diff.moves import Batch

        batch = None if records is None else Batch.read(self.traits, newer.traits, list(records))
        return compared(self.grader, newer.grader, batch)

    def with_settings(self, changes: Mapping[str, str | int | float | Decimal]) -> Standard:
        """The same standard with some settings changed; raises StandardError for a change that cannot be made."""
        from koirules.standard.setting_changes import change_settings

        changed = change_settings(self.rules, self.settings, changes)
        if isinstance(changed, tuple):
            raise StandardError(changed)
        names = tuple(n for n in changed if changed[n].value != self.rules.settings[n].value)
        return evolve(self, settings=changed, changed=names, kept_as="" if names else self.kept_as)

    def in_language(self, language: str | None) -> Standard:
        """The same standard, told in another language as far as its labels and the catalogues carry it."""
        return evolve(self, language=language)

    def section_title(self, name: str) -> str:
        """The title of a section, in the language of this standard."""
        return self._plain.of(next(one.title for one in self.rules.sections if one.name == name))

    @property
    def trait_titles(self) -> Mapping[str, str]:
        """The title of each trait by its name."""
        return {name: self._plain.trait(one) for name, one in self.traits.items()}

    @property
    def tongue(self) -> Tongue:
        """The language that it is told in."""
        return self._plain.tongue

    @property
    def _plain(self) -> PlainWords:
        return self.grader.reasoner.teller.plain

    def in_exact_words(self) -> Standard:
        """The same standard, with reasons in which numbers keep all of their digits."""
        return evolve(self, exact=True)


def load_standard(path: str | PathLike[str], registry: Registry | None = None) -> Standard:
    """The standard of a rule file, given by its path or by the name of a rule set.

    registry: the plugins to use, by default all that are installed. Raises StandardError with every problem of the file.
    """
    plugins = load_registry() if registry is None else registry
    checked = load(str(path), plugins.varieties, plugins.rulesets, plugins.key)
    if plugins.problems and checked.rules is None:
        told = (
            plugging.missing_with_it(one, plugins.problems) if one.code == "no-such-file" else one
            for one in checked.problems
        )
        checked = evolve(checked, problems=tuple(told))
    return _standard(checked)


def read_standard(
    text: str,
    file: str = "standard.koi",
    registry: Registry | None = None,
    folder: str | PathLike[str] | None = None,
) -> Standard:
    """The standard of a text; `file` is the name that problems show. Raises StandardError with every problem of the text.

    folder: where the file that it is based on is looked for; without one, no file is opened but an installed rule set.
    """
    from koirules.loading.reading import load_text

    plugins = load_registry() if registry is None else registry
    return _standard(
        load_text(text, file, plugins.varieties, plugins.rulesets, None if folder is None else Path(folder))
    )


def _standard(checked: Checked) -> Standard:
    if checked.rules is None or is_refused(checked.problems):
        raise StandardError(checked.problems)
    return Standard(
        checked.rules,
        checked.rules.settings,
        warnings=checked.problems,
        known_seal=checked.seal,
        kept_as=checked.kept_as,
    )


def tidy(
    text: str,
    file: str = "standard.koi",
    registry: Registry | None = None,
    folder: str | PathLike[str] | None = None,
) -> str:
    """The text of a rule file in the one layout; it means the same. folder: where its base is looked for.

    Raises StandardError with every problem of the text.
    """
    from koirules.loading.tidying import tidied_text

    plugins = load_registry() if registry is None else registry
    lies_in = None if folder is None else Path(folder)
    found = tidied_text(text, file, plugins.varieties, plugins.rulesets, lies_in)
    if found.text is None:
        raise StandardError(found.problems)
    return found.text


def _raise(problem: Problem | None) -> None:
    if problem is not None and not problem.warning:
        raise KoirulesError((problem,))
