"""A curve over a column, exactly: as a sum of hinges in doubles, or in whole numbers where doubles are too short."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise
from operator import add

import polars as pl

from koirules.engines.columnar.doubles import UNIT, balanced
from koirules.meaning.curves import Curve, Piece


def points_at(curve: Curve, x: pl.Expr) -> pl.Expr:
    """Thousandths at a column of whole millionths.

    Each piece is a hinge: its slope times how far x has come between its knots, which is held within them. To add the hinges
    is quicker than to choose a piece. What they add up to is rounded down with a nudge of 1 / (4 v) upwards, where v is the
    largest denominator of a slope: the exact sum and 1/2 are a whole number of (2 v)-ths, so that the floor is right whenever the
    error is below 1 / (4 v). Each step of the sum rounds by at most `UNIT` of the largest value in play.
    """
    knots = list(pairwise(zip(curve.at, curve.gives, strict=True)))
    slopes = [Fraction(high - low, right - left) for (left, low), (right, high) in knots]
    if not any(slopes):
        return x * 0.0 + float(curve.gives[0])
    nudge = Fraction(1, 4 * max(slope.denominator for slope in slopes))
    start = curve.gives[0] - sum((slope * left for slope, left in zip(slopes, curve.at, strict=False)), Fraction(0))
    largest = abs(start) + 1 + sum(abs(slope) for slope in slopes) * max(map(abs, curve.at))
    if largest * UNIT * (2 * len(slopes) + 4) >= nudge:
        return _in_whole_numbers(curve, x)
    hinges = [
        pl.max_horizontal(pl.min_horizontal(x, float(right)), float(left)) * float(slope)
        for slope, (left, right) in zip(slopes, pairwise(curve.at), strict=True)
        if slope
    ]
    return (balanced(hinges, add) + float(start + Fraction(1, 2) + nudge)).floor()


def _in_whole_numbers(curve: Curve, x: pl.Expr) -> pl.Expr:
    inside = x.clip(float(curve.at[0]), float(curve.at[-1])).cast(pl.Int128)
    return _by_halves(inside, curve.pieces, curve.at).cast(pl.Float64)


def _by_halves(x: pl.Expr, pieces: Sequence[Piece], knots: Sequence[int]) -> pl.Expr:
    """The piece before the first knot that is above x."""
    if len(pieces) == 1:
        (piece,) = pieces
        return (x * piece.slope + piece.start) // piece.over if piece.slope else pl.lit(piece.point(0), pl.Int128)
    half = len(pieces) // 2
    return (
        pl.when(x < knots[half - 1])
        .then(_by_halves(x, pieces[:half], knots[: half - 1]))
        .otherwise(_by_halves(x, pieces[half:], knots[half:]))
    )


def points_between(curve: Curve, low: pl.Expr, high: pl.Expr, *, least: bool) -> pl.Expr:
    """The least, or the most, thousandths between two columns of whole millionths, both in."""
    inside = [
        pl.when((low < float(knot)) & (high >= float(knot))).then(pl.lit(float(gives)))
        for knot, gives in zip(curve.at, curve.gives, strict=True)
    ]
    # A knot that is not inside is null, which neither the least nor the most looks at.
    parts = [points_at(curve, low), points_at(curve, high), *inside]
    return pl.min_horizontal(parts) if least else pl.max_horizontal(parts)
