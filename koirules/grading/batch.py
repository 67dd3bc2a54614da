"""A standard over frames of records: row by row, as whole columns or by machine code, as it pays, with the same answers."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Literal

from attrs import field

from koirules.engines.columnar.glances import glances
from koirules.engines.columnar.grown import with_grown
from koirules.engines.columnar.outputs import Plan, column_names
from koirules.engines.columnar.reading import FrameReader, ReadFrame, Source
from koirules.engines.compiled.engine import Compiled, reasons_against
from koirules.engines.compiled.lowering import CannotLowerError
from koirules.engines.compiled.objects import is_installed
from koirules.engines.compiled.running import OtherFrameError
from koirules.grading.row_by_row import graded_rows
from koirules.grading.silent_columns import SILENCE_COLUMNS, as_written, told_of_silence, with_silence
from koirules.grading.single import Grader
from koirules.grading.whole_batch import WholeBatch
from koirules.grading.whole_frames import ROUND_COLUMNS, WholeFrames
from koirules.problems import EngineError
from koirules.problems.extras import to_install
from koirules.program.held import Held, NoColumn, Profile
from koirules.rounds.columnar.earlier import LooksOfRows
from koirules.standard.parts import Rules, Setting
from koirules.values import define, frozen

if TYPE_CHECKING:
    import polars as pl

Engine = Literal["columnar", "compiled"]
"""An engine for frames, by its name."""

_MOST_PLANS = 16
_MOST_SHAPES = 128


@frozen
class _Few:
    """So many rows are graded as soon one by one. with_plan: where there is a plan of columns. without: where it is to be made.

    tests/benchmarks/batch/small.py measures it: a row of the neutral standard takes 8 µs, with 5 % holes in ten traits 17 µs, one
    of the example standard 46 µs; a plan takes 4, 5 and 11 ms, and 11, 17 and 30 ms to make.
    """

    with_plan: int
    without: int


_FEW_COMPLETE = _Few(450, 1_800)
_FEW_WITH_HOLES = _Few(250, 1_000)
_FEW_COMPARED = 150


@define
class BatchGrader:
    """A compiled standard, ready to grade frames.

    sections, faults: whether results have the ends of each section, and a column for each fault. engine: the one that grades
    frames; where that is None, the compiled one where it pays.
    """

    rules: Rules
    settings: Mapping[str, Setting]
    grader: Grader
    sections: bool = True
    faults: bool = False
    engine: Engine | None = None
    needed: frozenset[str] = field(init=False)
    whole: WholeFrames = field(init=False)
    compiled: Compiled = field(init=False)
    _plans: dict[Profile, Plan] = field(factory=dict)
    _rows: dict[Profile, int] = field(factory=dict)

    @needed.default
    def _traits_read(self) -> frozenset[str]:
        return self.grader.traits_read()

    @whole.default
    def _whole_frames(self) -> WholeFrames:
        return WholeFrames(WholeBatch(self.grader), self.sections, self.faults)

    @compiled.default
    def _compiled(self) -> Compiled:
        return Compiled(self.rules, self.settings, self.sections, self.faults)

    @property
    def compares(self) -> bool:
        """Whether the fish of a frame are compared with each other, or with earlier looks."""
        return self.whole.batch.needed

    @property
    def result_names(self) -> tuple[str, ...]:
        """The names of the columns of the results."""
        names = tuple(column_names(self.rules, sections=self.sections, faults=self.faults))
        names += ROUND_COLUMNS if self.rules.rounds else ()
        return names + (SILENCE_COLUMNS if self.rules.silence else ())

    def reader(self, sources: Mapping[str, Source]) -> FrameReader:
        """What reads frames that have these traits."""
        needed = self.needed | self.grader.evaluator.ahead.reads
        noticed = frozenset(self.rules.traits) if self.rules.silence else frozenset[str]()
        look = glances if self.engine == "columnar" else self.compiled.glances
        return FrameReader(self.rules.traits, sources, needed, self.grader.measurer, noticed, look)

    def grade(self, read: ReadFrame, rows: int, looks: LooksOfRows | None = None) -> pl.DataFrame:
        """The columns of the results of a frame that was read; rows: how many it has. looks: which are of the same fish."""
        silence = self.grader.silence
        if silence is None:
            return self._graded(read, rows, looks)
        read = self.filled(read, rows, looks)
        made = self._graded(read, rows, looks)
        if self.compares:
            return made
        written = self._graded(as_written(silence, read), rows, looks)
        return made.hstack(told_of_silence(silence, read.columns, written["possible"]))

    def filled(self, read: ReadFrame, rows: int, looks: LooksOfRows | None = None) -> ReadFrame:
        """A frame that was read, with its silent traits where silence means something."""
        silence = self.grader.silence
        return read if silence is None else with_silence(silence, read, rows, looks)

    def _graded(self, read: ReadFrame, rows: int, looks: LooksOfRows | None) -> pl.DataFrame:
        if self.engine == "compiled":
            return self.by_code(read, rows)
        if self.compares:
            return (self.by_row if rows < _FEW_COMPARED else self.by_column)(read, rows, looks)
        if self.engine is None and self.compiled.pays(rows):
            grown = with_grown(read, self.grader.evaluator.ahead, rows)
            found = self.compiled.graded_at_once(grown.columns, grown.held, rows)
            if found is not None:
                return found
        few = _FEW_WITH_HOLES if self._has_holes(read.held) else _FEW_COMPLETE
        if rows < few.with_plan:
            return self.by_row(read, rows)
        return (self.by_column if self._has_paid(read.held, rows, few) else self.by_row)(read, rows)

    def _has_paid(self, held: Mapping[str, Held], rows: int, few: _Few) -> bool:
        """Whether as many rows of one shape were graded, in all frames, as would have paid for a plan."""
        profile = _profile(held)
        so_far = self._rows.get(profile, 0)
        if so_far < few.without:
            if len(self._rows) >= _MOST_SHAPES:
                self._rows.clear()
            so_far = self._rows[profile] = so_far + rows
        return so_far >= few.without

    def _has_holes(self, held: Mapping[str, Held]) -> bool:
        """Whether some row may lack some of what the rules read."""
        columns = (held.get(key, NoColumn()) for key in self.grader.needed)
        return any(isinstance(one, NoColumn) or one.holes for one in columns)

    def by_row(self, read: ReadFrame, rows: int, looks: LooksOfRows | None = None) -> pl.DataFrame:
        """The same, each row by itself."""
        if self.compares:
            return self.whole.by_row(read, rows, looks)
        return graded_rows(self.grader, read.columns, read.held, rows, sections=self.sections, faults=self.faults)

    def by_code(self, read: ReadFrame, rows: int) -> pl.DataFrame:
        """The same by machine code, which is made first where it is not there. Raises EngineError where that cannot be."""
        if not is_installed():
            raise EngineError(f"The compiled engine needs the extra `compiled`: {to_install('compiled')}.")
        if self.compares:
            raise EngineError(f"The compiled engine cannot grade this standard: {_COMPARED}.")
        read = with_grown(read, self.grader.evaluator.ahead, rows)
        try:
            return self.compiled.graded(read.columns, read.held, rows)
        except CannotLowerError as error:
            raise EngineError(f"The compiled engine cannot grade this standard: {error}.") from error
        except OtherFrameError as error:
            raise EngineError(f"The compiled engine cannot grade this frame: {error}.") from error

    def by_column(self, read: ReadFrame, rows: int, looks: LooksOfRows | None = None) -> pl.DataFrame:
        """The same, as whole columns."""
        read = with_grown(read, self.grader.evaluator.ahead, rows)
        if self.compares:
            return self.whole.by_column(read, rows, looks)
        plan = self.plan(read.held)
        return plan.columns.collect(read.columns, rows, plan.results)

    def plan(self, held: Mapping[str, Held]) -> Plan:
        """The plan for one shape of frame, made once."""
        profile = _profile(held)
        known = self._plans.get(profile)
        if known is None:
            if len(self._plans) >= _MOST_PLANS:
                self._plans.pop(next(iter(self._plans)))
            known = Plan.of(self.rules, self.settings, held, sections=self.sections, faults=self.faults)
            self._plans[profile] = known
        return known


def _profile(held: Mapping[str, Held]) -> Profile:
    return tuple(sorted(held.items(), key=lambda pair: pair[0]))


_COMPARED = "it compares fish with each other, or with earlier looks"


def engines_told(grader: BatchGrader) -> list[str]:
    """What grades large frames of a standard, a line for each kind of them, and why it is not the compiled engine."""
    if grader.compares:
        return [f"columnar: all frames; {_COMPARED}"]
    without, holes = reasons_against(grader.rules, grader.settings)
    if not (without and holes) and not is_installed():
        return [f"columnar: all frames; the compiled engine is not installed: {to_install('compiled')}"]
    if without == holes:
        return [f"columnar: all frames; {without}" if without else "compiled: all frames"]
    return [
        f"columnar: {which}; {why}" if why else f"compiled: {which}"
        for which, why in (("complete frames", without), ("frames with holes", holes))
    ]
