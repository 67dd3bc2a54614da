"""A frame of a batch whose fish are compared: figures, grades, rounds, as columns; small frames row by row."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import TYPE_CHECKING, Any

from attrs import evolve, field

from koirules.engines.columnar.grown import with_grown
from koirules.engines.columnar.outputs import Plan
from koirules.engines.columnar.reading import ReadFrame
from koirules.grading.measuring import all_measured
from koirules.grading.row_by_row import graded_traces, readings_by_row
from koirules.grading.silent_columns import as_written, told_of_silence
from koirules.grading.whole_batch import WholeBatch
from koirules.program.held import Profile
from koirules.results.course import Fate
from koirules.results.record import Record
from koirules.rounds.columnar.counted import Counted, look_up, look_up_ends, supply_ends, tallied
from koirules.rounds.columnar.earlier import LooksOfRows, supply_earlier
from koirules.rounds.columnar.figures import supply_figures
from koirules.rounds.columnar.of_nodes import NodeColumns, NodePlans, outcome_columns
from koirules.rounds.columnar.picks import FATES
from koirules.rounds.columnar.rounds import RoundColumns, RoundsOfColumns
from koirules.rounds.columnar.rows import Rows, hold_grade
from koirules.rounds.evaluation_levels import Asked
from koirules.rounds.looks import latest_looks
from koirules.rounds.rounds_of_rows import RoundRun
from koirules.rounds.tallies import FigureTable, Tally
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Supplied
from koirules.values import define

if TYPE_CHECKING:
    import polars as pl

ROUND_COLUMNS = ("kept_by", "left_in", "tied_in", "open_in", "sent_to")
_MOST_PLANS = 16
_BITS = 62
_OUT = tuple(FATES.index(fate) for fate in (Fate.LEFT, Fate.OVER, Fate.QUOTA))
_KEPT, _TIED = FATES.index(Fate.KEPT), FATES.index(Fate.TIED)


@define
class GradedPiece:
    """Rows that were graded: the rows, the columns of their results, and what came of them as rounds and alerts read it.

    later: what may come of them once more is recorded, as far as figures of the batch make a difference; None for none.
    wide: the rows with their figures as wide as these may become, the same as `rows` where none moves.
    """

    rows: Rows
    results: pl.DataFrame
    outcome: pl.DataFrame
    later: pl.DataFrame | None
    wide: Rows

    def with_outcome(self) -> Rows:
        """The rows with what came of them."""
        return with_outcome(self.rows, self.outcome)


def with_outcome(rows: Rows, outcome: pl.DataFrame) -> Rows:
    """Rows with what came of them beside them."""
    columns = rows.columns.drop([name for name in outcome.columns if name in rows.columns.columns])
    beside = outcome.drop("grade bits")
    # A frame without columns has no rows, whatever number of them was graded.
    frame = Rows(columns.hstack(beside) if columns.width else beside, dict(rows.held), rows.height)
    hold_grade(frame, outcome["grade bits"])
    return frame


@define
class WholeFrames:
    """A compiled standard that compares the fish of a frame."""

    batch: WholeBatch
    sections: bool
    faults: bool
    _plans: NodePlans = field(init=False)
    _last: dict[Profile, tuple[NodeColumns, list[str], list[str]]] = field(factory=dict)

    @_plans.default
    def _node_plans(self) -> NodePlans:
        return NodePlans(self.rules, self.settings)

    @property
    def rules(self) -> Rules:
        """The standard."""
        return self.batch.rules

    @property
    def settings(self) -> Mapping[str, Setting]:
        """The settings of the run."""
        return self.batch.settings

    def by_row(self, read: ReadFrame, rows: int, looks: LooksOfRows | None) -> pl.DataFrame:
        """Grade a small frame, record by record."""
        import polars as pl

        readings = list(readings_by_row(read.columns, read.held, rows))
        silence = self.batch.grader.silence
        written = readings
        if silence is not None:
            # An earlier look is read as it was written.
            written = list(readings_by_row(read.columns, as_written(silence, read).held, rows))
        before: list[int | None] = [None] * rows if looks is None else looks.before.to_list()
        latest = list(range(rows)) if looks is None else looks.latest.arg_true().to_list()
        records = [
            Record(str(row), row, readings[row], before=None if (look := before[row]) is None else written[look])
            for row in latest
        ]
        made = self._made(records)
        if len(latest) == rows:
            return made
        return _spread_out(made, pl.Series(latest, dtype=pl.UInt32), rows)

    def of_judges(self, read: ReadFrame, rows: Sequence[Record]) -> pl.DataFrame:
        """Grade a frame in which several rows may be the records of judges of one fish; each has what the panel came to.

        rows: what every row says of its fish, judge, day and look, numbered from 1. Rows of earlier days have nothing.
        """
        import polars as pl

        given = readings_by_row(read.columns, read.held, len(rows))
        records = [evolve(one, readings=readings) for one, readings in zip(rows, given, strict=True)]
        latest = latest_looks(records)
        grader = self.batch.grader
        made = self._made(all_measured(grader.measurer, latest, grader.silence, self.rules))
        numbers = {one.fish: number for number, one in enumerate(latest)}
        last: dict[str, date] = {}
        for one in records:
            last[one.fish] = max(last.get(one.fish, date.min), one.date or date.min)
        own = [row for row, one in enumerate(records) if (one.date or date.min) == last[one.fish]]
        spread = made[[numbers[records[row].fish] for row in own]]
        return spread if len(own) == len(rows) else _spread_out(spread, pl.Series(own, dtype=pl.UInt32), len(rows))

    def _made(self, records: Sequence[Record]) -> pl.DataFrame:
        """The columns of the results of records that were measured."""
        import polars as pl

        silence = self.batch.grader.silence
        whole, traces, runs = self.batch.worked_out(records)
        made = graded_traces(self.rules, traces, sections=self.sections, faults=self.faults)
        if self.rules.rounds:
            made = made.hstack(self._rounds_frame([_as_columns(run) for run in runs], len(records)))
        if silence is None:
            return made
        assumed = ["|".join(silence.assumed(each)) for each in whole]
        rests = [self.batch.grader.rests_on_silence(each) for each in whole]
        told = {
            "assumed": pl.Series(assumed, dtype=pl.String),
            "rests_on_silence": pl.Series(rests, dtype=pl.Boolean),
        }
        return made.with_columns(**told)

    def by_column(self, read: ReadFrame, rows: int, looks: LooksOfRows | None) -> pl.DataFrame:
        """Grade a frame as whole columns."""
        frame = Rows(read.columns, dict(read.held), rows)
        if looks is not None:
            if self.batch.earlier:
                self._supply_earlier(frame, read, rows, looks)
            latest = looks.latest.arg_true()
            if len(latest) < rows:
                return _spread_out(self._latest(frame.chosen(latest)), latest, rows)
        return self._latest(frame)

    def _supply_earlier(self, frame: Rows, read: ReadFrame, rows: int, looks: LooksOfRows) -> None:
        """Put what is asked of the look before beside the rows; it is read as it was written."""
        import polars as pl

        silence = self.batch.grader.silence
        if silence is None:
            supply_earlier(self.rules, self.settings, self.batch.earlier, frame, looks)
            return
        written = with_grown(as_written(silence, read), self.batch.grader.evaluator.ahead, rows)
        before = Rows(written.columns, dict(written.held), rows)
        supply_earlier(self.rules, self.settings, self.batch.earlier, before, looks)
        there = set(frame.columns.columns)
        new = [column for column in before.columns.get_columns() if column.name not in there]
        frame.columns = frame.columns.hstack(new) if frame.columns.width else pl.DataFrame(new)
        frame.held |= {one.key: before.held[one.key] for one in self.batch.earlier}

    def piece(self, read: ReadFrame, rows: int, tables: Mapping[str, FigureTable]) -> GradedPiece:
        """Grade a piece of a batch, whose figures were counted over all pieces."""
        import polars as pl

        frame = Rows(read.columns, dict(read.held), rows)
        later = self._looked_up(frame, frame, self.batch.asked.levels, tables, graded=False)
        columns, results, outcome = self._graded(frame, with_outcome=True)
        made = columns.collect()
        given = made.select(pl.col(f"outcome {name}").alias(name) for name in outcome)
        moves = later is not frame and (self.rules.rounds or self.rules.alerts)
        told = self._with_silence(frame, made.select(results))
        return GradedPiece(frame, told, given, self._outcome(later) if moves else None, later)

    def _looked_up(
        self,
        frame: Rows,
        later: Rows,
        levels: Sequence[Sequence[Supplied]],
        tables: Mapping[str, FigureTable],
        *,
        graded: bool,
    ) -> Rows:
        """Put figures beside rows; gives the rows as wide as figures may yet make them, the same where none moves.

        later: the rows as wide as other figures may make them, the same where none of those moves.
        """
        for level in levels:
            if later is frame and any(tables[one.key].tally.moves for one in level):
                later = Rows(frame.columns, dict(frame.held), frame.height)
            look_up(self._plans, level, frame, tables, graded=graded)
            if later is not frame:
                look_up_ends(self._plans, level, Counted(frame, later), tables, graded=graded)
        return later

    def _outcome(self, frame: Rows) -> pl.DataFrame:
        """What comes of rows, as rounds read it."""
        import polars as pl

        columns, _, outcome = self._graded(frame, with_outcome=True)
        return columns.collect().select(pl.col(f"outcome {name}").alias(name) for name in outcome)

    def _with_silence(self, frame: Rows, results: pl.DataFrame) -> pl.DataFrame:
        """Results with the columns that tell of silence, where it means something; the figures of the batch stay."""
        silence = self.batch.grader.silence
        if silence is None:
            return results
        read = as_written(silence, ReadFrame(frame.columns, frame.held, ()))
        written = with_grown(read, self.batch.grader.evaluator.ahead, frame.height)
        columns, named, _ = self._graded(Rows(written.columns, dict(written.held), frame.height))
        return results.hstack(told_of_silence(silence, frame.columns, columns.collect()[named]["possible"]))

    def tallies(
        self, read: ReadFrame, rows: int, asked: Asked, level: int, tables: Mapping[str, FigureTable], *, graded: bool
    ) -> dict[str, Tally]:
        """Count what the figures of one level need of a piece. graded: they are figures of what came of the fish."""
        if graded:
            piece = self.piece(read, rows, tables)
            frame = piece.with_outcome()
            later = frame if piece.later is None else with_outcome(piece.wide, piece.later)
        else:
            frame = Rows(read.columns, dict(read.held), rows)
            later = frame
        later = self._looked_up(frame, later, asked.levels[:level], tables, graded=graded)
        return tallied(self._plans, asked.levels[level], Counted(frame, later), graded=graded)

    def rounds(self, frame: Rows, later: Rows | None = None) -> tuple[list[RoundColumns], pl.DataFrame]:
        """Run the rounds over rows that carry their outcome; what each did, and the columns of it.

        later: the same rows with what may come of them, where figures of the batch may yet move.
        """
        import polars as pl

        runs = RoundsOfColumns(self._plans, frame, later).run(pl.int_range(frame.height, eager=True))
        return runs, self._rounds_frame(runs, frame.height)

    def _latest(self, frame: Rows) -> pl.DataFrame:
        import polars as pl

        lacks = supply_figures(self._plans, self.batch.asked, frame, graded=False)
        columns, results, outcome = self._graded(frame)
        made = columns.collect()
        graded = made[results]
        if not self.rules.rounds:
            return self._with_silence(frame, graded)
        given = made.select(pl.col(f"outcome {name}").alias(name) for name in outcome)
        later: Rows | None = None
        if lacks:
            wide = Rows(frame.columns, dict(frame.held), frame.height)
            if supply_ends(self._plans, self.batch.asked, Counted(frame, wide), {}, graded=False):
                later = with_outcome(wide, self._outcome(wide))
        rounds = self.rounds(with_outcome(frame, given), later)[1]
        told = self._with_silence(frame, graded)
        return told[graded.columns].hstack(rounds).hstack(told.drop(graded.columns))

    def _graded(self, frame: Rows, *, with_outcome: bool = False) -> tuple[NodeColumns, list[str], list[str]]:
        """The results of a frame and what rounds have to know of them, with the names of both, made once for its shape."""
        known = self._last.get(frame.profile)
        if known is None:
            wants = bool(self.rules.rounds) or with_outcome
            rules, settings, held = self.rules, self.settings, frame.held
            plan = Plan.of(rules, settings, held, sections=self.sections, faults=self.faults, outputs=wants)
            columns = NodeColumns(frame, plan.columns)
            named = [result.meta.output_name() for result in plan.results]
            columns.wanted |= dict(zip(named, plan.results, strict=True))
            outcome = outcome_columns(plan.program, plan.columns) if wants else {}
            for name, end in outcome.items():
                columns.ask(f"outcome {name}", end)
            if len(self._last) >= _MOST_PLANS:
                self._last.clear()
            known = self._last[frame.profile] = (columns.without_rows(), named, list(outcome))
        columns, named, outcomes = known
        return evolve(columns, rows=frame), named, outcomes

    def _rounds_frame(self, runs: list[RoundColumns], rows: int) -> pl.DataFrame:
        """For each row the rounds that kept it, in which it left or is tied, and where it is sent."""
        import polars as pl

        names = [run.round.name for run in runs]

        def blank(dtype: Any) -> pl.Series:
            return pl.Series([None], dtype=dtype).new_from_index(0, rows)

        # What is scattered into a series stays in it.
        left, tied, sent = (blank(kind) for kind in (pl.Enum(names), pl.Enum(names), pl.String))
        kept_by, open_in = _Sets.blank(rows), _Sets.blank(rows)
        for i, run in enumerate(runs):
            kept, is_tied = run.of_fates(_KEPT), run.of_fates(_TIED)
            left = left.scatter(run.rows, None)
            out = run.of_fates(*_OUT)
            if len(out):
                left = left.scatter(out, run.round.name)
            if len(is_tied):
                tied = tied.scatter(is_tied, run.round.name)
            if run.round.send and len(kept):
                sent = sent.scatter(kept, run.round.send)
            kept_by.add(kept, i)
            open_in.add(run.rows.filter(run.open), i)
        return pl.DataFrame(
            [
                kept_by.named(names).alias("kept_by"),
                left.alias("left_in"),
                tied.alias("tied_in"),
                open_in.named(names).alias("open_in"),
                sent.alias("sent_to"),
            ]
        )


@define
class _Sets:
    """For each row a set of rounds, as bits, so many in one column."""

    rows: int
    columns: list[pl.Series]

    @classmethod
    def blank(cls, rows: int) -> _Sets:
        """No round in any row."""
        return cls(rows, [])

    def add(self, rows: pl.Series, number: int) -> None:
        """Put a round into the sets of some rows."""
        import polars as pl

        while len(self.columns) <= number // _BITS:
            self.columns.append(pl.zeros(self.rows, pl.UInt64, eager=True))
        if len(rows):
            column, bit = self.columns[number // _BITS], 1 << number % _BITS
            self.columns[number // _BITS] = column.scatter(rows, column.gather(rows) + bit)

    def named(self, names: Sequence[str]) -> pl.Series:
        """The names of each set, parted by `|`; different sets are few, and each is put together once."""
        import polars as pl

        frame = pl.DataFrame([column.alias(str(i)) for i, column in enumerate(self.columns)])
        different = frame.unique()
        words = [
            "|".join(name for i, name in enumerate(names) if row[i // _BITS] >> i % _BITS & 1)
            for row in different.iter_rows()
        ]
        if different.height < 2:
            return pl.Series(words or [None], dtype=pl.String).new_from_index(0, self.rows)
        told = different.with_columns(words=pl.Series(words, dtype=pl.String))
        return frame.join(told, on=frame.columns, how="left", maintain_order="left")["words"]


def _as_columns(run: RoundRun) -> RoundColumns:
    import polars as pl

    fates = [FATES.index(run.fates[number]) for number in run.fish]
    is_open = [number in run.open for number in run.fish]
    return RoundColumns(
        run.round,
        pl.Series(run.fish, dtype=pl.UInt32),
        pl.Series(fates, dtype=pl.UInt8),
        pl.Series(is_open, dtype=pl.Boolean),
    )


def _spread_out(made: pl.DataFrame, places: pl.Series, rows: int) -> pl.DataFrame:
    """Results of the latest looks in the rows of these; null in the rows of earlier ones."""
    import polars as pl

    every = pl.DataFrame({"row": pl.int_range(rows, dtype=pl.Int64, eager=True)})
    placed = made.insert_column(0, places.cast(pl.Int64).alias("row"))
    found: Any = every.join(placed, on="row", how="left", maintain_order="left")
    return found.drop("row")  # type: ignore[no-any-return]
