"""Curves as sums in doubles that come to the exact point, proved for each curve before it is used.

The line of a curve at x millionths, rounded half up, is floor(f(x) + 1/2), where f is the continuous function through the
knots. On one piece f(x) + 1/2 is a multiple of 1 / over (`Piece.over`). So with d = 1 / (2 · largest over) the floor of
f(x) + 1/2 + d + e is the exact point wherever |e| < d: a multiple that is whole stays at or above itself, and one that is not
is at least 1 / over >= 2 d below the next whole number. What is shown of each form is that its errors come to less than d.
u = 2^-53 is the relative error of one operation (Higham, Accuracy and Stability of Numerical Algorithms, 2002, section 2.2, from
memory). A fused multiply-add rounds once where two operations round twice, so that it stays within the same bound.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from koirules.meaning.curves import Curve
from koirules.values import frozen

_UNIT = Fraction(1, 2**53)


@frozen
class Hinges:
    """start + the sum of bend · max(min(x, last), knot): the bend of a curve at each knot but the last.

    Two operations a knot. With n bends and s = |start| + the sum of |bend| · the largest |knot|, each of the 2 n + 2 rounded
    operations is off by at most u s, as are the roundings of the n bends and of the start: in all less than 4 (n + 2) u s.
    """

    start: float
    bends: tuple[tuple[float, float], ...]
    last: float


@frozen
class Steps:
    """start + the sum of slope · (held within the piece (x) - its left knot): the rise over each piece.

    Differences of whole numbers below 2^53 are exact, so that the error does not grow with x: with n pieces and s = |start| +
    the sum of the rises it is less than 4 (n + 2) u s, as above.
    """

    start: float
    pieces: tuple[tuple[float, float, float], ...]


@frozen
class Lines:
    """The line of each piece in 64-bit integers: (slope x + start) // over - below, for knots that leave doubles no room.

    The pieces begin at `at`, the first of them at the first knot, where x is held. starts has below · over added, so that no
    quotient is of a negative number. That no product or sum reaches 2^63 is looked at for both ends of each piece.
    """

    at: tuple[float, ...]
    slopes: tuple[int, ...]
    starts: tuple[int, ...]
    overs: tuple[int, ...]
    below: int
    last: float


def exact_form(curve: Curve) -> Hinges | Steps | Lines | float | None:
    """A form that gives the exact point; a number where the curve is flat; None where no form is proved."""
    knots = list(zip(curve.at, curve.gives, strict=True))
    if len(set(curve.gives)) == 1:
        return float(curve.gives[0])
    slopes = [Fraction(high - low, right - left) for (left, low), (right, high) in pairwise(knots)]
    nudge = Fraction(1, 2 * max(piece.over for piece in curve.pieces))
    half = Fraction(1, 2) + nudge
    if max(map(abs, curve.at)) >= 2**52:
        return None
    bends = [slope - before for before, slope in zip([Fraction(0), *slopes], slopes, strict=False)]
    start = curve.gives[0] + half - sum(bend * at for bend, at in zip(bends, curve.at, strict=False))
    size = abs(start) + sum(map(abs, bends)) * max(map(abs, curve.at))
    if _is_proved(len(bends), size, nudge):
        made = tuple((float(bend), float(at)) for bend, at in zip(bends, curve.at, strict=False) if bend)
        return Hinges(float(start), made, float(curve.at[-1]))
    size = abs(curve.gives[0] + half) + sum(abs(high - low) for low, high in pairwise(curve.gives))
    if _is_proved(len(slopes), size, nudge):
        pieces = zip(slopes, pairwise(curve.at), strict=True)
        made_pieces = tuple((float(slope), float(left), float(right)) for slope, (left, right) in pieces if slope)
        return Steps(float(curve.gives[0] + half), made_pieces)
    return _lines(curve)


def _lines(curve: Curve) -> Lines | None:
    below = 1 + max(map(abs, curve.gives))
    pieces = curve.pieces[1:-1]
    starts = [piece.start + below * piece.over for piece in pieces]
    for piece, start, ends in zip(pieces, starts, pairwise(curve.at), strict=True):
        products = [piece.slope * x for x in ends]
        if max(map(abs, [*products, start, *(product + start for product in products)])) >= 2**63:
            return None
    return Lines(
        tuple(map(float, curve.at[:-1])),
        tuple(piece.slope for piece in pieces),
        tuple(starts),
        tuple(piece.over for piece in pieces),
        below,
        float(curve.at[-1]),
    )


def _is_proved(terms: int, size: Fraction, nudge: Fraction) -> bool:
    return 4 * (terms + 2) * _UNIT * size < nudge
