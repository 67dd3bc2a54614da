"""Comparisons of rounded numbers with known bounds, made on the numbers themselves.

Why: a number is rounded to millionths before it is compared, which is dear for a whole column, and what most conditions compare
with is a known number. Rounding never turns the order of two numbers round. So there is one least double that rounds up to the
bound, and a number reaches the bound where it is at least that double.
"""

from __future__ import annotations

from math import inf, nextafter

from koirules.meaning.algebra import PLAIN
from koirules.program.graph import Kind, Op, Tracer, Value


class UnroundedTracer(Tracer):
    """A tracer that compares numbers with known bounds before they are rounded."""

    def at_least(self, a: Value, b: Value) -> Value:
        """A >= b."""
        if _is_rounded(a, b):
            return super().at_least(a.operands[0], self._least_with(b.data))
        if _is_rounded(b, a):
            return self.no(super().at_least(b.operands[0], self._least_with(a.data + 1)))
        return super().at_least(a, b)

    def above(self, a: Value, b: Value) -> Value:
        """A > b."""
        if _is_rounded(a, b) or _is_rounded(b, a):
            return self.no(self.at_least(b, a))
        return super().above(a, b)

    def equal(self, a: Value, b: Value) -> Value:
        """Whether both are the same."""
        if _is_rounded(a, b) or _is_rounded(b, a):
            return self.every(self.at_least(a, b), self.at_least(b, a))
        return super().equal(a, b)

    def _least_with(self, bound: int) -> Value:
        return self.constant(least_double(bound), Kind.NUMBER)


def _is_rounded(a: Value, bound: Value) -> bool:
    return a.op is Op.MILLIONTHS and bound.constant and isinstance(bound.data, int)


def least_double(bound: int) -> float:
    """The least double that comes to so many millionths or more when it is rounded (`Plain.millionths`)."""
    least = (bound - 0.5) / 1_000_000.0
    while PLAIN.millionths(least) >= bound:
        least = nextafter(least, -inf)
    while PLAIN.millionths(least) < bound:
        least = nextafter(least, inf)
    return least
