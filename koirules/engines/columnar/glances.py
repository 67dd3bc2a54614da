"""What shows of columns of numbers at a glance: whether a value in them needs a closer look."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Any, Literal

from attrs import frozen

if TYPE_CHECKING:
    import polars as pl

TINY = 1e-20
"""Between this and 0 a double may be written with more digits than a measure can have."""

_STREAMED = 50_000
"""Longer columns are looked at in pieces by both cores; shorter ones are done before these have begun."""


@frozen
class Glance:
    """The least and the most value of a column (None without any), and whether some are no number, tiny, or not whole.

    shares: whether some are above 0 and at most 1; True where nobody looked.
    """

    least: float | None
    most: float | None
    nans: bool
    tiny: bool
    parts: bool
    shares: bool = True


def glances(columns: Iterable[tuple[pl.Series, bool]]) -> list[Glance]:
    """A glance at each column of numbers, all at once; with each, whether its values should be whole."""
    import polars as pl

    given = list(columns)
    asked: list[pl.Expr] = []
    for number, (series, whole) in enumerate(given):
        x = pl.col(str(number))
        floats = series.dtype.is_float()
        no = pl.lit(value=False)
        asked += [
            x.min().cast(pl.Float64).alias(f"{number} least"),
            x.max().cast(pl.Float64).alias(f"{number} most"),
            # A sum is quick, and no number makes it no number.
            (x.sum().is_nan() if floats else no).alias(f"{number} nans"),
            ((x.floor() != x).any() if floats and whole else no).alias(f"{number} parts"),
        ]
    row = _asked([series for series, _ in given], asked)
    found = [row[i : i + 4] for i in range(0, len(row), 4)]
    near = [
        number
        for number, ((series, whole), (least, *_)) in enumerate(zip(given, found, strict=True))
        if series.dtype.is_float() and not whole and least is not None and least <= TINY
    ]
    close = [_has_tiny(pl.col(str(i)), found[i][0]).alias(str(i)) for i in near]
    tiny = dict(zip(near, _asked([series for series, _ in given], close), strict=True))
    return [
        Glance(least, most, nans, tiny.get(number, False), parts)
        for number, (least, most, nans, parts) in enumerate(found)
    ]


def _has_tiny(x: pl.Expr, least: float) -> pl.Expr:
    small = (x > 0) & (x <= TINY)
    # To look below 0, too, costs as much again.
    return (small if least >= 0 else small | ((x < 0) & (x >= -TINY))).any()


def _asked(columns: list[pl.Series], asked: list[pl.Expr]) -> tuple[Any, ...]:
    import polars as pl

    if not asked:
        return ()
    frame = pl.DataFrame({str(number): series for number, series in enumerate(columns)})
    engine: Literal["streaming", "in-memory"] = "streaming" if frame.height > _STREAMED else "in-memory"
    row: tuple[Any, ...] = frame.lazy().select(asked).collect(engine=engine).row(0)
    return row
