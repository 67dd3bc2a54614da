"""A curve over a column: the line between each two knots, and between two ends the knots that lie inside."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from attrs import evolve

from koirules.engines.columnar.rounding import Line
from koirules.engines.columnar.values import End, Millionths, filled
from koirules.meaning.curves import Curve

if TYPE_CHECKING:
    import polars as pl


def points_at(curve: Curve, end: End, reach: int) -> tuple[Any, int]:
    """Thousandths at an end, and what comes out in a row where nothing was recorded.

    reach: the most millionths that an end can be away from 0.
    """
    if isinstance(end, int):
        return float(curve.point(end)), 0
    n: pl.Expr = end.whole() if isinstance(end, Millionths) else end
    lines = [line_of(curve, i) for i in range(len(curve.at) - 1)]
    if any(line.doubles is None for line in lines):
        pieces = [_flat(curve.gives[0]), *(line.whole(n) for line in lines), _flat(curve.gives[-1])]
        return _by_halves(n, pieces, [float(knot) for knot in curve.at]), curve.gives[-1]
    bent = _bent_one_way(curve, [evolve(line, most=max(line.most, reach)) for line in lines], n)
    if bent is not None:
        return bent[0].floor(), bent[1]
    # What is flat is whole, and stays so when it is rounded down.
    pieces = [_flat(curve.gives[0]), *(line.raised(n) for line in lines), _flat(curve.gives[-1])]
    return _by_halves(n, pieces, [float(knot) for knot in curve.at]).floor(), curve.gives[-1]


def _bent_one_way(curve: Curve, lines: Sequence[Line], n: pl.Expr) -> tuple[pl.Expr, int] | None:
    """A curve that bends one way only, as the least (or the most) of its lines, which is quicker than to choose one.

    Between its ends such a curve is the least of all its lines where it bends down, the most where it bends up (Boyd,
    Vandenberghe, Convex Optimization, 2004, section 3.2.3, from memory). Beyond the ends that is held within them, which
    is right where the curve never turns round, or both ends give the same. Each line is worked out beyond its own knots, and
    has to be proved there too; each then rounds as it would by itself, and the least of them is that of the rounded lines.
    """
    import polars as pl

    if any(line.doubles is None for line in lines):
        return None
    raised = [line.raised(n) for line in lines]
    slopes = [line.slope for line in lines]
    down = all(one >= other for one, other in pairwise(slopes))
    up = all(one <= other for one, other in pairwise(slopes))
    one_way = all(slope >= 0 for slope in slopes) or all(slope <= 0 for slope in slopes)
    ends = curve.gives[0], curve.gives[-1]
    if not (down or up) or not (one_way or ends[0] == ends[1]):
        return None
    low, high = min(ends), max(ends)
    # In a row without a number the lines that rise or fall are null, and what is flat is left.
    flat = [line.start for line in lines if not line.slope]
    if down:
        inner = pl.min_horizontal(*raised, *([_flat(high)] if one_way else []))
        left = min([*flat, *([high] if one_way else [])], default=low)
        return pl.max_horizontal(inner, _flat(low)), max(left, low)
    inner = pl.max_horizontal(*raised, *([_flat(low)] if one_way else []))
    left = max([*flat, *([low] if one_way else [])], default=high)
    return pl.min_horizontal(inner, _flat(high)), min(left, high)


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


def points_between(curve: Curve, low: End, high: End, reach: int) -> tuple[Any, Any]:
    """The least and the most thousandths between two ends, both in; reach: as above."""
    import polars as pl

    if isinstance(low, int) and isinstance(high, int):
        least, most = curve.span(low, high)
        return float(least), float(most)
    lows, highs = _column(low), _column(high)
    ends = [points_at(curve, lows, reach)[0], points_at(curve, highs, reach)[0]]
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
