"""What shows of columns of numbers at a glance: whether a value in them needs a closer look."""

from __future__ import annotations

import sys
from collections.abc import Iterable
from math import isnan
from typing import TYPE_CHECKING, Any, Literal

from koirules.values import frozen

if TYPE_CHECKING:
    import polars as pl

TINY = 1e-20
"""Between this and 0 a double may be written with more digits than a measure can have."""

_STREAMED = 50_000
"""Longer columns are looked at in pieces by both cores; shorter ones are done before these have begun."""

_PIECE = 100_000
"""So many doubles stay near the processor while their least and their most is looked for."""


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
    every = [series for series, _ in given]
    found = {number: (*ends, False, False) for number, ends in _quick_ends(given).items()}
    asked: list[pl.Expr] = []
    slow = [number for number in range(len(given)) if number not in found]
    for number in slow:
        series, whole = given[number]
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
    row = _asked(every, asked)
    found |= {number: row[4 * i : 4 * i + 4] for i, number in enumerate(slow)}
    near = {
        number: found[number][0]
        for number, (series, whole) in enumerate(given)
        if series.dtype.is_float() and not whole and found[number][0] is not None and found[number][0] <= TINY
    }
    # Where nothing lies above 0 and at most at 1, nothing is tiny either.
    shares = _of_each(every, {number: _is_share(pl.col(str(number))) for number in near if near[number] >= 0})
    tiny = _of_each(every, {i: _has_tiny(pl.col(str(i)), least) for i, least in near.items() if shares.get(i, True)})
    return [
        Glance(least, most, nans, tiny.get(number, False), parts, shares.get(number, True))
        for number, (least, most, nans, parts) in sorted(found.items())
    ]


def _quick_ends(given: list[tuple[pl.Series, bool]]) -> dict[int, tuple[Any, Any]]:
    """The least and the most value of long columns without holes in which each value is a number.

    The ends that numpy gives are no number where one value is none, so that two looks do for what takes Polars three. Where
    nobody has loaded it, to load it takes longer than that.
    """
    found: dict[int, tuple[Any, Any]] = {}
    if "numpy" not in sys.modules:
        return found
    for number, (series, whole) in enumerate(given):
        plain = series.dtype.is_float() and not whole and series.null_count() == 0 and series.n_chunks() == 1
        if plain and len(series) > _STREAMED:
            values = series.to_numpy(allow_copy=False)
            pieces = (values[start : start + _PIECE] for start in range(0, len(values), _PIECE))
            ends = [(float(piece.min()), float(piece.max())) for piece in pieces]
            if not any(isnan(least) for least, _ in ends):
                found[number] = (min(least for least, _ in ends), max(most for _, most in ends))
    return found


def _of_each(columns: list[pl.Series], asked: dict[int, pl.Expr]) -> dict[int, bool]:
    found = _asked(columns, [one.alias(str(number)) for number, one in asked.items()])
    return dict(zip(asked, map(bool, found), strict=True))


def _is_share(x: pl.Expr) -> pl.Expr:
    return ((x > 0) & (x <= 1)).any()


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
