"""What a criterion gives: the straight lines of a curve, or the rows of a table, exactly.

Points are whole thousandths. A curve reads whole millionths and gives the exact point of the line between two knots,
rounded half up (towards the larger number).
"""

from __future__ import annotations

from bisect import bisect_right

from attrs import define, field, frozen


@frozen
class Curve:
    """Knots at `at` (rising, millionths of the held unit) that give `gives` (thousandths); flat outside."""

    at: tuple[int, ...]
    gives: tuple[int, ...]

    @property
    def most(self) -> int:
        """The largest points, in thousandths."""
        return max(self.gives)

    def point(self, x: int) -> int:
        """Thousandths at x millionths."""
        i = bisect_right(self.at, x)
        if i == 0:
            return self.gives[0]
        if i == len(self.at):
            return self.gives[-1]
        left, right, low, high = self.at[i - 1], self.at[i], self.gives[i - 1], self.gives[i]
        run = right - left
        # floor(n / d + 1/2) in whole numbers.
        return (2 * (low * run + (high - low) * (x - left)) + run) // (2 * run)

    def span(self, low: int, high: int) -> tuple[int, int]:
        """The least and most thousandths between two millionths, both in."""
        if low == high:
            point = self.point(low)
            return point, point
        ends = [self.point(low), self.point(high)]
        ends.extend(self.gives[bisect_right(self.at, low) : bisect_right(self.at, high)])
        return min(ends), max(ends)


@define(eq=False)
class Table:
    """Thousandths by step, the lowest step first."""

    gives: tuple[int, ...]
    _spans: dict[int, tuple[int, int]] = field(factory=dict, init=False, repr=False)

    @property
    def most(self) -> int:
        """The largest points, in thousandths."""
        return max(self.gives)

    def span(self, bits: int) -> tuple[int, int]:
        """The least and most thousandths over the steps whose bits are set."""
        known = self._spans.get(bits)
        if known is None:
            points = [gives for i, gives in enumerate(self.gives) if bits >> i & 1]
            known = self._spans[bits] = (min(points), max(points))
        return known


Shape = Curve | Table
