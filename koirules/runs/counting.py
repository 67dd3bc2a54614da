"""The totals of one frame of results."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from koirules.runs.totals import Top, Totals

if TYPE_CHECKING:
    import polars as pl


def counted(grades: Sequence[str], results: pl.DataFrame, fish: pl.Series, piece: int, row: int, most: int) -> Totals:
    """Count the results of some fish; row: how the first of them is counted; most: how many of the best are kept."""
    import polars as pl

    low, high = (_hundredths(results[name]) for name in ("score_low", "score_high"))
    frame = pl.DataFrame({"possible": results["possible"].cast(pl.String), "low": low, "high": high})
    possible = dict(frame["possible"].value_counts().rows())
    scores = dict(frame.filter(pl.col("low") == pl.col("high"))["low"].value_counts().rows())
    faults = {
        name.removeprefix("fault "): bites
        for name in results.columns
        if name.startswith("fault ") and (bites := int(results[name].sum() or 0))
    }
    best = _best(grades, frame, fish, piece, row, most)
    return Totals(frame.height, possible, scores, _sum(low), _sum(high), faults, best, most)


def _hundredths(points: pl.Series) -> pl.Series:
    import polars as pl

    return (points * 100.0).round().cast(pl.Int64)


def _sum(hundredths: pl.Series) -> int:
    return int(hundredths.sum())


def _best(
    grades: Sequence[str], frame: pl.DataFrame, fish: pl.Series, piece: int, row: int, most: int
) -> tuple[Top, ...]:
    import polars as pl

    sets = frame["possible"].unique().to_list()
    ranks = {name: rank for rank, name in enumerate(grades)}
    ranked = (
        frame.lazy()
        .with_row_index("row")
        .with_columns(
            rank=pl.col("possible").replace_strict(sets, [ranks[each.split("|")[0]] for each in sets]),
            unsettled=pl.col("possible").str.contains("|", literal=True),
        )
        .sort("rank", "unsettled", "low", "high", "row", descending=[False, False, True, True, False])
        .head(most)
        .collect()
    )
    return tuple(
        Top(
            each["rank"],
            each["unsettled"],
            -each["low"],
            -each["high"],
            piece,
            row + each["row"],
            fish[each["row"]],
            each["possible"],
        )
        for each in ranked.iter_rows(named=True)
    )
