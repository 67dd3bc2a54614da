"""What criteria and sections give a fish that is not known yet.

Points are within half a thousandth of the straight line, sections within half a hundredth of their sum: a solver of real
numbers is a hundred times quicker than one of whole ones, and what it rules out so is ruled out. How much of that leeway it
may use is a variable, `slack`; without any its answers are nearly always those of the evaluator, which has the last word.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import Any

import z3

from koirules.engines.symbolic.arithmetic import Arithmetic
from koirules.engines.symbolic.numbers import Num, Whole, short
from koirules.engines.symbolic.values import Cases, Logic
from koirules.meaning.algebra import Ends
from koirules.meaning.curves import Curve, Table
from koirules.standard.parts import Section
from koirules.values import frozen

HALF = Fraction(1, 2)


@frozen
class Line:
    """A piece of a curve: where it holds, its ends in millionths and what it gives there in thousandths."""

    when: Any
    left: int
    right: int
    low: int
    high: int


@frozen(eq=False)
class Curved:
    """What a curve gives for one number: the term of the points, the number before it was rounded, and the pieces."""

    points: Any
    read: Whole
    lines: tuple[Line, ...]


@frozen
class Giving:
    """Works out points, in one context. exact: further facts, by which every rounding is that of the language."""

    arithmetic: Arithmetic
    logic: Logic
    exact: list[Any]

    @property
    def facts(self) -> list[Any]:
        """What holds of the names that were made."""
        return self.arithmetic.facts

    def table(self, read: Any, table: Table) -> Ends[Any]:
        """The least and most thousandths of a table."""
        if not isinstance(read, Cases):
            low, high = table.span(read)
            return Ends(z3.RealVal(low, self._context), z3.RealVal(high, self._context))
        spans = [(table.span(bits), when) for bits, when in read.each]
        first = self._one_of([(low, when) for (low, _), when in spans])
        if all(low == high for (low, high), _ in spans):
            return Ends(first, first)
        return Ends(first, self._one_of([(high, when) for (_, high), when in spans]))

    def _one_of(self, each: Sequence[tuple[int, Any]]) -> Any:
        by_points: dict[int, list[Any]] = {}
        for points, when in each:
            by_points.setdefault(points, []).append(when)
        if len(by_points) == 1:
            return z3.RealVal(next(iter(by_points)), self._context)
        given = z3.Real(self.arithmetic.name("points"), self._context)
        self.facts.extend([given >= min(by_points), given <= max(by_points)])
        for points, parts in by_points.items():
            self.facts.append(z3.Implies(self.logic.truth(self.logic.some(parts)), given == points))
        return given

    def curve(self, read: Ends[Any], curve: Curve) -> tuple[Ends[Any], tuple[Curved, ...]]:
        """The least and most thousandths of a curve, and how each end came about."""
        first = self._curved(read.first, curve)
        if read.sure:
            return Ends(first.points, first.points), (first,)
        second = self._curved(read.second, curve)
        least, most = [first.points, second.points], [first.points, second.points]
        passed = []
        for x, gives in zip(curve.at, curve.gives, strict=True):
            before = self.logic.no(self.arithmetic.at_least(first.read.inner, Fraction(x) + 1))
            beyond = self.arithmetic.at_least(second.read.inner, Fraction(x))
            passed.append((self.logic.truth(self.logic.every([before, beyond])), gives))
        for when, gives in passed:
            least.append(z3.If(when, z3.RealVal(gives, self._context), first.points))
            most.append(z3.If(when, z3.RealVal(gives, self._context), first.points))
        return Ends(_extreme(least, least=True), _extreme(most, least=False)), (first, second)

    def _curved(self, end: Any, curve: Curve) -> Curved:
        if isinstance(end, int):
            return Curved(z3.RealVal(curve.point(end), self._context), Whole(_number(end)), ())
        whole: Whole = end
        given = z3.Real(self.arithmetic.name("points"), self._context)
        self.facts.extend([given >= min(curve.gives), given <= max(curve.gives)])
        reached = [self.arithmetic.at_least(whole.inner, Fraction(x)) for x in curve.at]
        lines = []
        edges = [True, *reached, False]
        for i in range(len(curve.at) + 1):
            when = self.logic.every([edges[i], self.logic.no(edges[i + 1])])
            if when is False:
                continue
            line = _line(when, curve, i)
            lines.append(line)
            self.facts.append(z3.Implies(self.logic.truth(when), self._on(line, whole, given)))
            self.exact.append(z3.Implies(self.logic.truth(when), self._exactly_on(line, whole, given)))
        return Curved(given, whole, tuple(lines))

    def _on(self, line: Line, whole: Whole, given: Any) -> Any:
        if line.low == line.high:
            return given == line.low
        run, rise = line.right - line.left, line.high - line.low
        # Before it was rounded down it was at most half a millionth from what is read, and the error of doubles.
        slope = Fraction(rise, run)
        value = self.arithmetic.value
        off = value(HALF + abs(slope) * (HALF + short(whole.inner.error))) * self.arithmetic.slack
        on = value(Fraction(line.low)) + value(slope) * (value(whole.inner) - value(HALF) - line.left)
        ends = sorted((line.low, line.high))
        return z3.And(given >= on - off, given <= on + off, given >= ends[0], given <= ends[1])

    def _exactly_on(self, line: Line, whole: Whole, given: Any) -> Any:
        if line.low == line.high:
            return given == line.low
        run, rise = line.right - line.left, line.high - line.low
        above = 2 * (line.low * run + rise * (self.arithmetic.whole(whole) - line.left)) + run
        return z3.And(z3.IsInt(given), 2 * run * given <= above, above < 2 * run * (given + 1))

    def section(
        self, section: Section, points: Sequence[Ends[Any]], extras: Sequence[Ends[Any]]
    ) -> tuple[Ends[Any], Ends[Any]]:
        """The least and most hundredths of a section, and the same before they were rounded and held within its worth."""
        if all(pair.sure for pair in (*points, *extras)):
            held, total = self._hundredths(section, [pair.first for pair in points], [pair.first for pair in extras])
            return Ends(held, held), Ends(total, total)
        low = [
            (pair.first if part.sign > 0 else pair.second) for part, pair in zip(section.extras, extras, strict=True)
        ]
        high = [
            (pair.second if part.sign > 0 else pair.first) for part, pair in zip(section.extras, extras, strict=True)
        ]
        least, before = self._hundredths(section, [pair.first for pair in points], low)
        most, after = self._hundredths(section, [pair.second for pair in points], high)
        return Ends(least, most), Ends(before, after)

    def _hundredths(self, section: Section, points: Sequence[Any], extras: Sequence[Any]) -> tuple[Any, Any]:
        divisor, nothing = section.divisor, z3.RealVal(0, self._context)
        parts = [nothing]
        for part, given in zip(section.points, points, strict=True):
            if part.weight:
                parts.append(self.arithmetic.value(Fraction(section.worth * part.weight, divisor)) * given)
        for extra, holds in zip(section.extras, extras, strict=True):
            amount = z3.RealVal(extra.sign * extra.amount, self._context)
            if holds is not False:
                parts.append(amount if holds is True else z3.If(holds, amount, nothing))
        total = z3.Sum(parts)
        rounded = z3.Real(self.arithmetic.name(f"rounded {section.name}"), self._context)
        off = self.arithmetic.value(HALF) * self.arithmetic.slack
        self.facts.extend([rounded <= total + off, total - off <= rounded])
        half = self.arithmetic.value(HALF)
        self.exact.append(z3.And(z3.IsInt(rounded), rounded <= total + half, total + half < rounded + 1))
        held = z3.Real(self.arithmetic.name(f"section {section.name}"), self._context)
        self.facts.extend([held >= 0, held <= section.worth])
        self.facts.append(held == z3.If(rounded < 0, 0, z3.If(rounded > section.worth, section.worth, rounded)))
        return held, total

    @property
    def _context(self) -> z3.Context:
        return self.arithmetic.context


def _line(when: Any, curve: Curve, i: int) -> Line:
    """The piece before the knot i; flat before the first and after the last."""
    if i == 0:
        return Line(when, curve.at[0], curve.at[0], curve.gives[0], curve.gives[0])
    if i == len(curve.at):
        return Line(when, curve.at[-1], curve.at[-1], curve.gives[-1], curve.gives[-1])
    return Line(when, curve.at[i - 1], curve.at[i], curve.gives[i - 1], curve.gives[i])


def _extreme(parts: Sequence[Any], *, least: bool) -> Any:
    found = parts[0]
    for part in parts[1:]:
        found = z3.If(part < found, part, found) if least else z3.If(part > found, part, found)
    return found


def _number(value: int) -> Num:
    exact = Fraction(value)
    return Num(exact, exact, exact, Fraction(0), exact, Fraction(0))
