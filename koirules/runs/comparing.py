"""What a piece does for a standard that compares fish: count for figures, grade by them, put aside what rounds read."""

from __future__ import annotations

from typing import TYPE_CHECKING

from attrs import field

from koirules.api import Standard
from koirules.engines.columnar.reading import ReadFrame
from koirules.grading.batch import BatchGrader
from koirules.results.parts_read import traits_of_rounds
from koirules.rounds.columnar.kept_rows import put_aside
from koirules.rounds.evaluation_levels import Asked
from koirules.rounds.tallies import FigureTable, Tally
from koirules.runs.parts import aside_of
from koirules.runs.work import Job
from koirules.standard.tree import Figure
from koirules.values import define

if TYPE_CHECKING:
    import polars as pl

BEFORE, ALERTS = "before", "alerts"


LATER = "later "
"""Before the names of columns of what may come of rows once more is recorded."""


@define
class Comparing:
    """A piece in the making."""

    job: Job
    grader: BatchGrader
    asked: Asked
    tables: dict[str, FigureTable]
    tallies: dict[str, Tally] = field(factory=dict)
    _put_aside: int = 0

    def count(self, read: ReadFrame, rows: int) -> None:
        """Count what the figures of this phase need of some rows."""
        graded = self.job.phase == ALERTS
        read = self.grader.filled(read, rows)
        found = self.grader.whole.tallies(read, rows, self.asked, self.job.level, self.tables, graded=graded)
        for key, tally in found.items():
            self.tallies[key] = self.tallies[key].merged(tally) if key in self.tallies else tally

    def grade(self, read: ReadFrame, rows: int, fish: pl.Series, piece: int) -> pl.DataFrame:
        """Grade some rows, and put aside what rounds read of them."""
        graded = self.grader.whole.piece(self.grader.filled(read, rows), rows, self.tables)
        if self.job.aside:
            traits = traits_of_rounds(self.grader.rules)
            outcome = graded.outcome
            if graded.later is not None:
                outcome = outcome.hstack(graded.later.rename({name: f"{LATER}{name}" for name in graded.later.columns}))
            kept = put_aside(graded.rows, traits, outcome).with_columns(fish.alias("fish"))
            kept.write_parquet(aside_of(self.job, piece, self._put_aside), compression="zstd")
            self._put_aside += 1
        return graded.results


def comparing(job: Job, standard: Standard, grader: BatchGrader) -> Comparing:
    """Ready for the rows of a piece, with the figures that were counted so far."""
    batch = standard.whole_batch
    before, alerts = batch.asked, batch.asked_by_alerts
    figures = {one.key: one.source for one in (*before.figures, *alerts.figures)}
    tables = {
        key: FigureTable.of(figure, job.tallies[key])
        for key, figure in figures.items()
        if key in job.tallies and isinstance(figure, Figure)
    }
    return Comparing(job, grader, alerts if job.phase == ALERTS else before, tables)
