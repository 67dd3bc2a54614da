"""Exact rounding in columns of doubles, proved when a standard is compiled; whole numbers where the proof fails.

What is rounded is always a + (u / v) n for a whole n, with u / v in lowest terms: a whole number of v-ths. Rounded half up
it is floor(a + (u / v) n + 1/2), and a + (u / v) n + 1/2 is a whole number of (2 v)-ths. Worked out in doubles with a
nudge of 1 / (4 v) upwards the floor is right whenever the error is below 1 / (4 v): an exact tie then lies above its whole
number, and what is below one stays below. The error is at most that of two roundings of the coefficients, of one product
and of one sum: each at most 2^-53 of the largest value in play (Higham, Accuracy and Stability of Numerical Algorithms,
2002, section 2.2, from memory).
"""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from attrs import frozen

if TYPE_CHECKING:
    import polars as pl

_UNIT = Fraction(1, 2**53)
_ROUNDINGS = 6


@frozen
class Line:
    """start + slope n, rounded half up, for whole n from 0 up to `most` away from 0 on either side."""

    start: int
    slope: Fraction
    at: int
    most: int

    @property
    def doubles(self) -> tuple[float, float] | None:
        """Coefficients a and b such that floor(a + b n) is right for every n; None where doubles are too short."""
        nudge = Fraction(1, 2) + Fraction(1, 4 * self.slope.denominator)
        exact = self.start - self.slope * self.at + nudge
        largest = max(abs(exact), abs(self.slope) * self.most, abs(exact) + abs(self.slope) * self.most)
        if self.most >= 2**53 or largest * _UNIT * _ROUNDINGS >= Fraction(1, 4 * self.slope.denominator):
            return None
        return float(exact), float(self.slope)

    def raised(self, n: pl.Expr) -> pl.Expr:
        """What is to be rounded down, in doubles."""
        import polars as pl

        made = self.doubles
        if made is None:
            raise AssertionError("doubles are too short")
        start, slope = made
        return n * slope + start if slope else pl.lit(start)

    def whole(self, n: pl.Expr) -> pl.Expr:
        """The same in whole numbers: floor((2 (start v + u (n - at)) + v) / (2 v))."""
        import polars as pl

        up, over = self.slope.numerator, self.slope.denominator
        count = n.cast(pl.Int128)
        made = (2 * (self.start * over + up * (count - self.at)) + over) // (2 * over)
        return made.cast(pl.Float64)


def rounded(line: Line, n: pl.Expr) -> pl.Expr:
    """Give start + slope (n - at), rounded half up; n is a column of whole doubles."""
    return line.whole(n) if line.doubles is None else line.raised(n).floor()
