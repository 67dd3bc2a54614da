"""Numbers of fish that are not known yet, as exact terms, with bounds and with how far a double may stand from them.

An error is a bound on |double - term|: every operation of doubles adds at most 2^-53 of the largest result to those of its
operands (Higham, Accuracy and Stability of Numerical Algorithms, 2002, section 2.2, from memory). A comparison is exact
where no value of the term comes as near to the bound as that; elsewhere either answer is allowed within the error.
"""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal
from fractions import Fraction
from math import gcd
from typing import Any

from koirules.values import frozen

UNIT = Fraction(1, 2**53)
HUGE = Fraction(10**9)
"""An error that says nothing: beyond every number of the language."""


@frozen(eq=False)
class Ratio:
    """scale * (above / below) + shift, of which comparisons with known numbers are linear."""

    above: Num
    below: Num
    scale: Fraction
    shift: Fraction


@frozen(eq=False)
class Split:
    """One of two numbers: where `test` holds the first, else the second; without a test the lesser or the greater."""

    one: Num
    other: Num
    test: Any = None
    least: bool = True


@frozen(eq=False)
class Num:
    """A number: a real term or a known Fraction, between low and high.

    step: every value of the term is `offset` and a whole number of steps; 0 where the term is anything. error: how far the
    double may stand from the term at most. ratio, split: where the term is a quotient, or one of several numbers with one.
    """

    term: Any
    low: Fraction
    high: Fraction
    step: Fraction
    offset: Fraction
    error: Fraction
    ratio: Ratio | None = None
    split: Split | None = None

    @property
    def known(self) -> bool:
        """Whether it is one number, whatever the fish."""
        return isinstance(self.term, Fraction)

    @property
    def most(self) -> Fraction:
        """The largest value on either side of 0, with the error."""
        return max(abs(self.low), abs(self.high)) + self.error


@frozen(eq=False)
class Whole:
    """A number that was rounded down to a whole one; `inner` is what it was before."""

    inner: Num


def short(error: Fraction) -> Fraction:
    """An error, or the next larger power of ten: the solver is slow with long fractions."""
    if not error:
        return error
    power = Fraction(1, 10**15)
    while power < error:
        power *= 10
    return power


def known(value: float) -> Num:
    """A number as written: its shortest decimal, and how far the double is from that."""
    exact = Fraction(Decimal(repr(value)))
    return Num(exact, exact, exact, Fraction(0), exact, abs(Fraction(value) - exact))


def holds_ratio(*parts: Num) -> bool:
    """Whether any of the numbers is a quotient, or one of several with one."""
    return any(part.ratio is not None or part.split is not None for part in parts)


def each_of(split: Split, change: Callable[[Num], Num], *, turned: bool = False) -> Split:
    """The same choice of changed numbers; turned: the lesser is the greater after the change."""
    return Split(change(split.one), change(split.other), split.test, split.least is not turned)


def grid_of_sum(a: Num, b: Num, sign: int) -> tuple[Fraction, Fraction]:
    """The step and offset of a sum."""
    offset = a.offset + sign * b.offset
    if a.known and b.known:
        return Fraction(0), offset
    if a.known or b.known:
        return (b if a.known else a).step, offset
    return _common(a.step, b.step), offset


def grid_of_either(a: Num, b: Num) -> tuple[Fraction, Fraction]:
    """The step and offset of what is one or the other."""
    steps = [part.step for part in (a, b) if not part.known]
    step = steps[0] if len(steps) == 1 else _common(*steps) if steps else abs(a.offset - b.offset)
    between = abs(a.offset - b.offset)
    step = step if not between or (step and (between / step).denominator == 1) else _common(step, between)
    return step, a.offset


def _common(one: Fraction, other: Fraction) -> Fraction:
    """The greatest step of which both are multiples; 0 where one of them is anything."""
    if not one or not other:
        return Fraction(0)
    below = one.denominator * other.denominator
    return Fraction(gcd(one.numerator * other.denominator, other.numerator * one.denominator), below)


def next_on_grid(a: Num, bound: Fraction) -> Fraction:
    """The least value on the steps of a number that is a bound or more; the bound itself where it has no steps."""
    return bound + (a.offset - bound) % a.step if a.step else bound


def away_from(a: Num, bound: Fraction) -> Fraction:
    """How near a value of the term can come to a bound: 0 where it is anything, or can be the bound."""
    if not a.step:
        return Fraction(0)
    past = (bound - a.offset) % a.step
    return min(past, a.step - past)
