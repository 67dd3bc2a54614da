"""The value algebra over terms of the solver.

What reads steps, options or texts is tabled instead, by running the operator over plain values for every reading that
they can have.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import product
from math import prod
from typing import Any

import z3
from attrs import field

from koirules.engines.symbolic.arithmetic import Arithmetic
from koirules.engines.symbolic.numbers import Num, Whole, known
from koirules.engines.symbolic.values import Bits, Cases, Logic
from koirules.meaning.algebra import Algebra, Ends
from koirules.meaning.operators import CHOOSE_STEPS, STEPS_OF_TRUTH, Operation
from koirules.values import frozen

MOST_READINGS = 200_000
"""More combinations of readings than this are not tabled."""


class TooManyReadings(Exception):  # noqa: N818 - a limit that is met, told as such
    """An operation over steps that would need too large a table."""


@frozen
class Meaning:
    """Applies operations of the table in one context."""

    arithmetic: Arithmetic
    logic: Logic
    _known: dict[tuple[Any, ...], Ends[Any]] = field(factory=dict)
    _kept: list[Any] = field(factory=list)

    @property
    def terms(self) -> Algebra[Any]:
        """The value algebra of this context."""
        return _Terms(self.arithmetic, self.logic)

    def applied(self, operation: Operation, operands: Sequence[Ends[Any]], ranges: Sequence[Any]) -> Ends[Any]:
        """An operation over operands: of terms, of cases, or of Python values. ranges: what each can be at all."""
        # Python values are read anew for each fish; terms of the same value stand in the same pair.
        key = (operation.name, *(tuple(map(id, one)) if _is_known(one) else id(one) for one in operands))
        if key not in self._known:
            self._kept.extend(operands)
            self._known[key] = self._applied(operation, operands, ranges)
        return self._known[key]

    def _applied(self, operation: Operation, operands: Sequence[Ends[Any]], ranges: Sequence[Any]) -> Ends[Any]:
        if all(map(_is_known, operands)):
            return _plain(operation.range_of(*operands))
        # Words of a scale that are known are plain numbers: no terms, so what chooses between them is tabled.
        of_words = operation in {CHOOSE_STEPS, STEPS_OF_TRUTH}
        if of_words or any(isinstance(operand.first, Cases) for operand in operands):
            return self._tabled(operation, operands)
        return operation.over(self.terms, [_with_terms(operand) for operand in operands], ranges)

    def _tabled(self, operation: Operation, operands: Sequence[Ends[Any]]) -> Ends[Any]:
        each = [self._readings(operand) for operand in operands]
        if prod(len(cases) for cases in each) > MOST_READINGS:
            raise TooManyReadings
        found: dict[Any, list[Any]] = {}
        for combination in product(*each):
            made = operation.range_of(*(reading for reading, _ in combination))
            found.setdefault(made, []).append(self.logic.every([when for _, when in combination]))
        if all(isinstance(made, tuple) for made in found):
            surely = self.logic.some([when for made, parts in found.items() if made[0] for when in parts])
            if all(made[0] == made[1] for made in found):
                return Ends(surely, surely)
            return Ends(surely, self.logic.some([when for made, parts in found.items() if made[1] for when in parts]))
        return Ends(Cases(tuple((made, self.logic.some(parts)) for made, parts in found.items())))

    def _readings(self, operand: Ends[Any]) -> Sequence[tuple[Any, Any]]:
        """The readings that an operand can be, each with when it is that."""
        first, second = operand.first, operand.second
        if isinstance(first, Cases):
            return first.each
        if _is_known(operand):
            return ((operand, True),)
        if operand.sure:
            return (((True, True), first), ((False, False), self.logic.no(first)))
        open_ = self.logic.every([second, self.logic.no(first)])
        return (((True, True), first), ((False, True), open_), ((False, False), self.logic.no(second)))


def _is_known(operand: Ends[Any]) -> bool:
    """Whether both ends are Python values, and so the same for every fish."""
    return all(end is None or isinstance(end, int | float | str) for end in operand)


def _plain(made: Any) -> Ends[Any]:
    """The ends of a reading; one value where they are the same."""
    first, second = made if isinstance(made, tuple) else (made, made)
    return Ends(first, first if first == second else second)


def _with_terms(operand: Ends[Any]) -> Ends[Any]:
    """The ends of an operand, numbers as terms."""
    first = known(operand.first) if isinstance(operand.first, float) else operand.first
    if operand.sure:
        return Ends(first, first)
    return Ends(first, known(operand.second) if isinstance(operand.second, float) else operand.second)


@frozen
class _Terms:
    """The value algebra over terms of the solver, and over Python values that hold for every fish."""

    arithmetic: Arithmetic
    logic: Logic

    def constant(self, value: Any) -> Any:
        return value

    def bits(self, value: int) -> Any:
        return value

    def known(self, value: Any) -> bool | None:
        return value if isinstance(value, bool) else None

    def add(self, a: Any, b: Any) -> Any:
        return self.arithmetic.add(_number(a), _number(b))

    def subtract(self, a: Any, b: Any) -> Any:
        return self.arithmetic.add(_number(a), _number(b), -1)

    def multiply(self, a: Any, b: Any) -> Any:
        return self.arithmetic.multiply(_number(a), _number(b))

    def divide(self, a: Any, b: Any) -> Any:
        return self.arithmetic.divide(_number(a), _number(b))

    def negate(self, a: Any) -> Any:
        return -a if isinstance(a, float) else self.arithmetic.negate(_number(a))

    def millionths(self, a: Any) -> Any:
        return Whole(self.add(self.multiply(1_000_000.0, a), 0.5))

    def least(self, *parts: Any) -> Any:
        return self.arithmetic.extreme("min", [_number(part) for part in parts])

    def most(self, *parts: Any) -> Any:
        return self.arithmetic.extreme("max", [_number(part) for part in parts])

    def total(self, *parts: Any) -> Any:
        return z3.Sum([z3.RealVal(0, self.arithmetic.context), *parts])

    def count(self, *parts: Any) -> Any:
        sure = sum(part is True for part in parts)
        context = self.arithmetic.context
        one, nothing = z3.RealVal(1, context), z3.RealVal(0, context)
        open_ = [z3.If(part, one, nothing) for part in parts if not isinstance(part, bool)]
        if not open_:
            return known(float(sure))
        term = z3.Sum([*open_, z3.RealVal(sure, context)])
        return Num(term, Fraction(sure), Fraction(sure + len(open_)), Fraction(1), Fraction(0), Fraction(0))

    def at_least(self, a: Any, b: Any) -> Any:
        arithmetic, left_bound, right_bound = self.arithmetic, _bound(a), _bound(b)
        if left_bound is not None and right_bound is not None:
            return left_bound >= right_bound
        if right_bound is not None:
            # A whole number is at least a whole bound where it was that before it was rounded down.
            return arithmetic.at_least(a.inner if isinstance(a, Whole) else a, right_bound)
        if left_bound is not None:
            if isinstance(b, Whole):
                return self.logic.no(arithmetic.at_least(b.inner, left_bound + 1))
            return arithmetic.at_least(arithmetic.negate(b), -left_bound)
        if isinstance(a, Whole) and isinstance(b, Whole):
            return arithmetic.whole(a) >= arithmetic.whole(b)
        return arithmetic.at_least(arithmetic.add(a, b, -1), Fraction(0))

    def above(self, a: Any, b: Any) -> Any:
        return self.logic.no(self.at_least(b, a))

    def equal(self, a: Any, b: Any) -> Any:
        return self.logic.every([self.at_least(a, b), self.at_least(b, a)])

    def every(self, *parts: Any) -> Any:
        return self.logic.every(parts)

    def some(self, *parts: Any) -> Any:
        return self.logic.some(parts)

    def no(self, part: Any) -> Any:
        return self.logic.no(part)

    def where(self, test: Any, one: Any, other: Any) -> Any:
        if isinstance(test, bool):
            return one if test else other
        if isinstance(one, bool | z3.BoolRef):
            return self.logic.chosen(test, one, other)
        return self.arithmetic.choose(test, _number(one), _number(other))

    def meets(self, a: Bits, b: int) -> Any:
        return self.logic.some([truth for i, truth in enumerate(a.truths) if b >> i & 1])

    def _tabled(self, *_: Any) -> Any:
        raise AssertionError("levels and texts are tabled (`Meaning.applied`)")

    common = either = lowest = halved = missing = _tabled

    def _bounded(self, *_: Any) -> Any:
        raise AssertionError("points and hundredths have bounds, of which only the rules know (`Standing`)")

    divide_down = hundredths = points = _bounded

    def members(self, a: Bits) -> Any:
        return self.count(*a.truths)


def _number(value: Any) -> Num:
    return value if isinstance(value, Num) else known(float(value))


def _bound(value: Any) -> Fraction | None:
    """A number that is known, whole or not."""
    if isinstance(value, int | float):
        return Fraction(value)
    if isinstance(value, Num) and value.known:
        return Fraction(float(value.term))
    if isinstance(value, Whole) and value.inner.known:
        return Fraction(value.inner.term.__floor__())
    return None
