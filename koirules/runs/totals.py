"""Totals of a run that merge exactly: in whatever pieces and order the fish come, the same fish give the same totals.

Everything is a count or a sum of whole numbers, or the best of a strict order, so that merging is associative and
commutative. Scores are counted by the hundredth: percentiles are then exact, and not estimates that would depend on the
pieces.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from decimal import Decimal
from fractions import Fraction
from functools import reduce
from typing import TypeVar

from attrs import field

from koirules.values import frozen

_Key = TypeVar("_Key")


@frozen(order=True)
class Top:
    """A fish among the best; the order is that of the fields: best grade still possible, settled, highest score, place.

    rank: of the best grade that it may get, 0 the best. unsettled: whether it may get another. low, high: hundredths below
    0, so that more comes first. piece, row: where it stands, which tells equal fish apart.
    """

    rank: int
    unsettled: bool
    low: int
    high: int
    piece: int
    row: int
    fish: str
    possible: str


@frozen
class Totals:
    """Counts and sums over fish.

    possible: fish by the grades still possible, parted by `|`, best first. scores: fish by their score in hundredths,
    those alone whose score is sure. low, high: sums of the lowest and of the highest hundredths of all fish. faults: fish
    by fault that surely bites. best: the best `most` fish.
    """

    fish: int = 0
    possible: Mapping[str, int] = field(factory=dict)
    scores: Mapping[int, int] = field(factory=dict)
    low: int = 0
    high: int = 0
    faults: Mapping[str, int] = field(factory=dict)
    best: tuple[Top, ...] = ()
    most: int = 0

    def merged(self, other: Totals) -> Totals:
        """The totals of both, which have no fish in common."""
        most = max(self.most, other.most)
        return Totals(
            self.fish + other.fish,
            _added(self.possible, other.possible),
            _added(self.scores, other.scores),
            self.low + other.low,
            self.high + other.high,
            _added(self.faults, other.faults),
            tuple(sorted((*self.best, *other.best))[:most]),
            most,
        )

    def percentile(self, percent: int) -> Decimal | None:
        """The score below which so many of 100 lie, among the sure ones, in points; None without any.

        Linear between the two nearest (type 7 of Hyndman and Fan, Sample quantiles in statistical packages, 1996).
        """
        count = sum(self.scores.values())
        if not count:
            return None
        place = Fraction(percent, 100) * (count - 1)
        below, above = self._at(int(place)), self._at(min(int(place) + 1, count - 1))
        exact = (below + (above - below) * (place - int(place))) / 100
        return Decimal(exact.numerator) / Decimal(exact.denominator)

    def _at(self, place: int) -> int:
        """The score at a place of all sure ones in rising order."""
        passed = 0
        for score in sorted(self.scores):
            passed += self.scores[score]
            if passed > place:
                return score
        raise IndexError(place)


def merge(totals: Iterable[Totals]) -> Totals:
    """The totals of all."""
    return reduce(Totals.merged, totals, Totals())


def _added(one: Mapping[_Key, int], other: Mapping[_Key, int]) -> dict[_Key, int]:
    return dict(Counter(one) + Counter(other))
