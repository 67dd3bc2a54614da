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

    possible = results["possible"]
    if not isinstance(possible.dtype, pl.Enum):
        possible = possible.cast(pl.Enum(possible.unique().to_list()))
    sets = possible.dtype.categories.to_list() if isinstance(possible.dtype, pl.Enum) else []
    frame = results.select(
        possible.to_physical().alias("code"),
        *((pl.col(f"score_{end}") * 100.0).round().cast(pl.Int64).alias(end) for end in ("low", "high")),
    )
    sure = frame.filter(pl.col("low") == pl.col("high"))["low"]
    limits = [name for name in results.columns if name.startswith("fault ")]
    bites = results.select(pl.col(limits).sum()).row(0) if limits else ()
    return Totals(
        frame.height,
        {sets[code]: count for code, count in frame["code"].value_counts().iter_rows()},
        dict(sure.value_counts().iter_rows()),
        int(frame["low"].sum()),
        int(frame["high"].sum()),
        {name.removeprefix("fault "): count for name, count in zip(limits, bites, strict=True) if count},
        _best(grades, sets, frame, fish, piece, row, most),
        most,
    )


def _best(
    grades: Sequence[str],
    sets: Sequence[str],
    frame: pl.DataFrame,
    fish: pl.Series,
    piece: int,
    row: int,
    most: int,
) -> tuple[Top, ...]:
    import polars as pl

    if not frame.height:
        return ()
    ranks = {name: rank for rank, name in enumerate(grades)}
    # One number for the rank of the best grade and, within it, whether others are possible.
    orders = pl.Series([2 * ranks[each.split("|")[0]] + ("|" in each) for each in sets], dtype=pl.UInt32)
    ranked = (
        frame.lazy()
        .with_row_index("row")
        .with_columns(order=pl.lit(orders).gather(pl.col("code")))
        .sort("order", "low", "high", "row", descending=[False, True, True, False])
        .head(most)
        .collect()
    )
    return tuple(
        Top(order // 2, bool(order % 2), -low, -high, piece, row + place, fish[place], sets[code])
        for place, code, low, high, order in ranked.iter_rows()
    )
