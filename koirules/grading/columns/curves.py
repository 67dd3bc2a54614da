"""A curve over a column: the line between each two knots, and between two ends the knots that lie inside."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from koirules.grading.columns.rounding import Line
from koirules.grading.columns.values import End, Millionths, filled
from koirules.standard.curves import Curve

if TYPE_CHECKING:
    import polars as pl


def points_at(curve: Curve, end: End) -> Any:
    """Thousandths at an end; those of the last knot in a row where nothing was recorded."""
    if isinstance(end, int):
        return float(curve.point(end))
    n: pl.Expr = end.whole() if isinstance(end, Millionths) else end
    lines = [line_of(curve, i) for i in range(len(curve.at) - 1)]
    # Doubles are rounded down once, after the line was chosen; whole numbers are there already.
    short = [line.doubles is None for line in lines]
    pieces = [
        _flat(curve.gives[0]),
        *(line.whole(n) if any(short) else line.raised(n) for line in lines),
        _flat(curve.gives[-1]),
    ]
    knots = [float(knot) for knot in curve.at]
    chosen = _by_halves(n, pieces, knots)
    return chosen if any(short) else chosen.floor()


def _flat(gives: int) -> pl.Expr:
    import polars as pl

    return pl.lit(float(gives))


def _by_halves(n: pl.Expr, pieces: Sequence[pl.Expr], knots: Sequence[float]) -> pl.Expr:
    """The piece before the first knot that is above n; what lies between each two knots, and outside of all."""
    import polars as pl

    if len(pieces) == 1:
        return pieces[0]
    half = len(pieces) // 2
    knot = knots[half - 1]
    return (
        pl.when(n < knot)
        .then(_by_halves(n, pieces[:half], knots[: half - 1]))
        .otherwise(_by_halves(n, pieces[half:], knots[half:]))
    )


def line_of(curve: Curve, i: int) -> Line:
    """The line from knot i to the next."""
    left, right, low, high = curve.at[i], curve.at[i + 1], curve.gives[i], curve.gives[i + 1]
    return Line(low, Fraction(high - low, right - left), left, max(abs(left), abs(right)))


def points_between(curve: Curve, low: End, high: End) -> tuple[Any, Any]:
    """The least and the most thousandths between two ends, both in."""
    import polars as pl

    if isinstance(low, int) and isinstance(high, int):
        least, most = curve.span(low, high)
        return float(least), float(most)
    lows, highs = _column(low), _column(high)
    ends = [points_at(curve, lows), points_at(curve, highs)]
    inside = [
        pl.when((lows < float(knot)) & (highs >= float(knot))).then(pl.lit(float(gives)))
        for knot, gives in zip(curve.at, curve.gives, strict=True)
    ]
    # A knot that is not inside is null, which neither the least nor the most looks at.
    return pl.min_horizontal(*ends, *inside), pl.max_horizontal(*ends, *inside)


def _column(end: End) -> pl.Expr:
    import polars as pl

    made = filled(end)
    return pl.lit(float(made)) if isinstance(made, int | float) else made
