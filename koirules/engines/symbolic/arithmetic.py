"""Sums, products, choices and comparisons of numbers that are not known yet, as terms of the solver."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import Any

import z3
from attrs import evolve

from koirules.engines.symbolic.numbers import (
    HUGE,
    UNIT,
    Num,
    Ratio,
    Split,
    Whole,
    away_from,
    each_of,
    grid_of_either,
    grid_of_sum,
    holds_ratio,
    next_on_grid,
    short,
)
from koirules.engines.symbolic.values import Logic


class Arithmetic:
    """Sums, products, choices and comparisons of numbers in one context of the solver.

    facts: what holds of the names that were made on the way. made: the place of each of these names among them.
    """

    def __init__(self, context: z3.Context, facts: list[Any]) -> None:
        self.context = context
        self.facts = facts
        self._logic = Logic(context)
        self.made: dict[str, int] = {}
        self._compared: dict[tuple[int, Fraction], Any] = {}
        self._joined: dict[tuple[str, int, int], Num] = {}
        self._floors: dict[int, Any] = {}
        self._kept: list[Any] = []

    @property
    def slack(self) -> Any:
        """How much of every leeway of rounding may be used: between 0, none, and 1."""
        return z3.Real("slack", self.context)

    def name(self, what: str) -> str:
        """A name that nothing else has."""
        made = f"{what} {len(self.made)}"
        self.made[made] = len(self.made)
        return made

    def value(self, number: Num | Fraction) -> Any:
        """The real term of a number."""
        exact = number.term if isinstance(number, Num) else number
        return z3.Q(exact.numerator, exact.denominator, self.context) if isinstance(exact, Fraction) else exact

    def add(self, a: Num, b: Num, sign: int = 1) -> Num:
        """A + b, or a - b with sign -1."""
        low, high = (a.low + b.low, a.high + b.high) if sign > 0 else (a.low - b.high, a.high - b.low)
        error = a.error + b.error
        step, offset = grid_of_sum(a, b, sign)
        ratio = None
        for one, other, turn in ((a, b, 1), (b, a, sign)):
            if one.ratio is not None and other.known:
                moved = other.term * (sign if one is a else 1)
                ratio = Ratio(one.ratio.above, one.ratio.below, one.ratio.scale * turn, one.ratio.shift * turn + moved)
        term = a.term + sign * b.term if a.known and b.known else self.value(a) + sign * self.value(b)
        split = None
        if a.split is not None and b.known:
            split = each_of(a.split, lambda part: self.add(part, b, sign))
        elif b.split is not None and a.known:
            split = each_of(b.split, lambda part: self.add(a, part, sign), turned=sign < 0)
        return self._rounded(Num(term, low, high, step, offset, error, ratio, split))

    def negate(self, a: Num) -> Num:
        """-a, which is exact."""
        ratio = a.ratio and evolve(a.ratio, scale=-a.ratio.scale, shift=-a.ratio.shift)
        split = a.split and each_of(a.split, self.negate, turned=True)
        return Num(-a.term, -a.high, -a.low, a.step, -a.offset, a.error, ratio, split)

    def multiply(self, a: Num, b: Num) -> Num:
        """A * b; of two that are not known only the bounds are kept."""
        if a.known:
            a, b = b, a
        corners = [x * y for x in (a.low, a.high) for y in (b.low, b.high)]
        error = a.most * b.error + b.most * a.error + a.error * b.error
        if not b.known:
            made = Num(None, min(corners), max(corners), Fraction(0), Fraction(0), error)
            return self._fresh("product", a, b, made)
        by: Fraction = b.term
        term = a.term * by if a.known else self.value(a) * self.value(b)
        ratio = a.ratio and evolve(a.ratio, scale=a.ratio.scale * by, shift=a.ratio.shift * by)
        step = a.step * abs(by)
        split = a.split and each_of(a.split, lambda part: self.multiply(part, b), turned=by < 0)
        return self._rounded(Num(term, min(corners), max(corners), step, a.offset * by, error, ratio, split))

    def divide(self, a: Num, b: Num) -> Num:
        """A / b where b is not 0 (whoever reads it has looked)."""
        if b.known and b.term:
            inverse = Num(1 / b.term, 1 / b.term, 1 / b.term, Fraction(0), 1 / b.term, Fraction(0))
            exact = self.multiply(a, inverse)
            least = abs(b.term) - b.error
            error = (a.error + abs(a.most / b.term) * b.error) / least if least > 0 else HUGE
            return self._rounded(evolve(exact, error=error))
        nearest = min(abs(b.low), abs(b.high)) if b.low * b.high > 0 else Fraction(0)
        if nearest <= b.error:
            # The bounds of the language: a quotient that leaves them is any number at all.
            limit = Fraction(10**15)
            made = Num(None, -limit, limit, Fraction(0), Fraction(0), HUGE)
        else:
            corners = [x / y for x in (a.low, a.high) for y in (b.low, b.high)]
            most = max(abs(corner) for corner in corners)
            error = (a.error + most * b.error) / (nearest - b.error)
            made = Num(None, min(corners), max(corners), Fraction(0), Fraction(0), error + UNIT * (most + error))
        return self._fresh("quotient", a, b, evolve(made, ratio=Ratio(a, b, Fraction(1), Fraction(0))))

    def choose(self, test: Any, a: Num, b: Num) -> Num:
        """A where the test holds, else b."""
        if a is b:
            return a
        step, offset = grid_of_either(a, b)
        term = z3.If(test, self.value(a), self.value(b))
        made = Num(term, min(a.low, b.low), max(a.high, b.high), step, offset, max(a.error, b.error))
        return evolve(made, split=Split(a, b, test)) if holds_ratio(a, b) else made

    def extreme(self, name: str, parts: Sequence[Num]) -> Num:
        """The least ("min") or the greatest ("max") of several."""
        found = parts[0]
        for part in parts[1:]:
            one, other = (found, part) if name == "min" else (part, found)
            if one.high <= other.low:
                continue
            if one.low >= other.high:
                found = part
                continue
            test = self.value(one) <= self.value(other)
            made = self.choose(test, found, part)
            found = evolve(made, split=Split(found, part, None, name == "min")) if made.split is not None else made
        return found

    def at_least(self, a: Num, bound: Fraction) -> Any:
        """Whether a is at least a known number: a truth of the solver or of Python."""
        if a.low - a.error >= bound:
            return True
        if a.high + a.error < bound:
            return False
        key = (id(a), bound)
        if key not in self._compared:
            self._kept.append(a)
            self._compared[key] = self._at_least(a, bound)
        return self._compared[key]

    def _at_least(self, a: Num, bound: Fraction) -> Any:
        if a.split is not None:
            one, other = self.at_least(a.split.one, bound), self.at_least(a.split.other, bound)
            if a.split.test is not None:
                return self._logic.chosen(a.split.test, one, other)
            return self._logic.every([one, other]) if a.split.least else self._logic.some([one, other])
        if a.ratio is None and (a.error == 0 or away_from(a, bound) > a.error):
            return self.value(a) >= self.value(next_on_grid(a, bound))
        test = z3.Bool(self.name("at least"), self.context)
        low, high = bound - short(a.error), bound + short(a.error)
        off = self.value(short(a.error)) * self.slack
        self.facts.append(z3.Implies(test, self.value(a) >= self.value(bound) - off))
        self.facts.append(z3.Implies(z3.Not(test), self.value(a) < self.value(bound) + off))
        if a.ratio is not None:
            self.facts.append(z3.Implies(test, self._crossed(a.ratio, low)))
            self.facts.append(z3.Implies(z3.Not(test), z3.Not(self._crossed(a.ratio, high))))
        return test

    def _crossed(self, ratio: Ratio, bound: Fraction) -> Any:
        """Whether a ratio is at least a bound, multiplied out; true where it is divided by 0, of which nothing is said."""
        left = self.value(ratio.scale) * self.value(ratio.above)
        right = self.value(bound - ratio.shift) * self.value(ratio.below)
        if ratio.below.low > 0:
            return left >= right
        if ratio.below.high < 0:
            return left <= right
        below = self.value(ratio.below)
        return z3.If(below > 0, left >= right, z3.If(below < 0, left <= right, z3.Bool("by nothing", self.context)))

    def whole(self, whole: Whole) -> Any:
        """The term of a rounded number: what it was, less the part that is the same for all values; else a whole name."""
        a = whole.inner
        if a.known:
            return z3.IntVal(a.term.__floor__(), self.context)
        if a.step and a.step.denominator == 1 and a.ratio is None and away_from(a, Fraction(0)) > a.error:
            return self.value(a) - self.value(a.offset % 1)
        if id(a) not in self._floors:
            self._kept.append(a)
            name = z3.Int(self.name("floor"), self.context)
            term, error = self.value(a), self.value(short(a.error)) * self.slack
            self.facts.extend([z3.ToReal(name) <= term + error, term < z3.ToReal(name) + 1 + error])
            self._floors[id(a)] = z3.ToReal(name)
        return self._floors[id(a)]

    def _fresh(self, what: str, a: Num, b: Num, made: Num) -> Num:
        key = (what, id(a), id(b))
        if key not in self._joined:
            self._kept.extend([a, b])
            term = z3.Real(self.name(what), self.context)
            self.facts.extend([term >= self.value(made.low), term <= self.value(made.high)])
            self._joined[key] = evolve(made, term=term)
        return self._joined[key]

    def _rounded(self, a: Num) -> Num:
        if a.error == 0 and a.step and a.step.denominator == 1 and a.offset.denominator == 1 and a.most < 2**53:
            return a
        return evolve(a, error=a.error + UNIT * (max(abs(a.low), abs(a.high)) + a.error))
