"""What a criterion gives: the straight lines of a curve, or the rows of a table, exactly.

Points are whole thousandths. A curve reads whole millionths and gives the exact point of the line between two knots,
rounded half up (towards the larger number).
"""

from __future__ import annotations

from bisect import bisect_right
from functools import cached_property
from itertools import pairwise
from math import gcd
from typing import NamedTuple

from attrs import field

from koirules.values import frozen


class Piece(NamedTuple):
    """A straight piece of a curve: floor((slope x + start) / over) thousandths at x millionths."""

    slope: int
    start: int
    over: int

    def point(self, x: int) -> int:
        """Thousandths at x millionths."""
        return (self.slope * x + self.start) // self.over


@frozen
class Curve:
    """Knots at `at` (rising, millionths of the held unit) that give `gives` (thousandths); flat outside."""

    at: tuple[int, ...]
    gives: tuple[int, ...]

    @property
    def most(self) -> int:
        """The largest points, in thousandths."""
        return max(self.gives)

    @cached_property
    def pieces(self) -> tuple[Piece, ...]:
        """What is left of all knots, the line between each two, and what is right of all."""
        knots = pairwise(zip(self.at, self.gives, strict=True))
        lines = (_line(left, low, right, high) for (left, low), (right, high) in knots)
        return (Piece(0, self.gives[0], 1), *lines, Piece(0, self.gives[-1], 1))

    def point(self, x: int) -> int:
        """Thousandths at x millionths."""
        return self.pieces[bisect_right(self.at, x)].point(x)

    def span(self, low: int, high: int | None = None) -> tuple[int, int]:
        """The least and most thousandths between two millionths, both in; at one of them where there is no other."""
        if high is None or low == high:
            point = self.point(low)
            return point, point
        ends = [self.point(low), self.point(high)]
        ends.extend(self.gives[bisect_right(self.at, low) : bisect_right(self.at, high)])
        return min(ends), max(ends)


def _line(left: int, low: int, right: int, high: int) -> Piece:
    """The line between two knots, rounded half up: floor(n / d + 1/2) = floor((2 n + d) / (2 d)) in whole numbers."""
    shared = gcd(high - low, right - left)
    rise, run = (high - low) // shared, (right - left) // shared
    return Piece(2 * rise, 2 * (low * run - rise * left) + run, 2 * run)


@frozen
class Table:
    """Thousandths by step, the lowest step first."""

    gives: tuple[int, ...]
    _spans: dict[int, tuple[int, int]] = field(factory=dict, init=False, repr=False, eq=False)

    @property
    def most(self) -> int:
        """The largest points, in thousandths."""
        return max(self.gives)

    def span(self, bits: int, _: None = None) -> tuple[int, int]:
        """The least and most thousandths over the steps whose bits are set."""
        known = self._spans.get(bits)
        if known is None:
            points = [gives for i, gives in enumerate(self.gives) if bits >> i & 1]
            known = self._spans[bits] = (min(points), max(points))
        return known


Shape = Curve | Table
