"""Between which bounds the numbers of a program lie: what tells how wide a machine's number has to be to hold them exactly.

Why: doubles hold whole numbers up to 2^53, words of a processor up to 2^63; beyond that an engine has to take wider ones, which
are slower by far. Bounds are worked out by the same operations over both ends (interval arithmetic: Moore, Kearfott, Cloud,
Introduction to Interval Analysis, 2009, chapter 2, from memory).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import product
from math import inf, isinf, isnan, prod

from attrs import field

from koirules.meaning.algebra import PLAIN
from koirules.program.graph import Kind, Op, Value
from koirules.program.passes import live
from koirules.values import define

Range = tuple[float, float]
"""The least and the most; infinite where that is not known. Whole numbers are whole."""

_ANY: Range = (-inf, inf)


@define
class Bounds:
    """The bounds of each number and whole number, and of a set as the number that its bits are.

    known: of some values, as whoever traced them knows.
    """

    known: dict[Value, Range] = field(factory=dict)
    _found: dict[Value, Range] = field(factory=dict)

    def note(self, value: Value, low: float, high: float) -> None:
        """Note what is known of a value."""
        if not value.constant:
            self.known.setdefault(value, (low, high))

    def of(self, value: Value) -> Range:
        """The bounds of a value."""
        for each in live([value], lambda one: one in self._found or one in self.known):
            if each not in self._found:
                self._found[each] = self.known.get(each) or self._worked_out(each)
        return self._found[value]

    def _worked_out(self, value: Value) -> Range:  # noqa: C901 - one case for each operation
        each = [self._found[operand] for operand in value.operands]
        match value.op:
            case Op.CONSTANT | Op.TABLE if value.kind in {Kind.NUMBER, Kind.WHOLE, Kind.SET}:
                data = value.data if value.op is Op.TABLE else (value.data,)
                return min(data), max(data)
            case Op.LEAST_POINTS | Op.MOST_POINTS:
                return min(value.data.gives), max(value.data.gives)
            case Op.ADD | Op.TOTAL:
                return _sum(each)
            case Op.COUNT:
                return 0, len(each)
            case Op.SUBTRACT:
                (low, high), (least, most) = each
                return _clean(low - most, high - least)
            case Op.NEGATE:
                return -each[0][1], -each[0][0]
            case Op.MULTIPLY:
                corners = [0 if 0 in {x, y} else x * y for x, y in product(*each)]
                return _clean(min(corners), max(corners))
            case Op.DIVIDE:
                (low, high), (least, most) = each
                if least <= 0 <= most or inf in {-low, high}:
                    return _ANY
                corners = [x / y for x in (low, high) for y in (least, most)]
                return min(corners), max(corners)
            case Op.MILLIONTHS:
                return _mapped(each[0], PLAIN.millionths)
            case Op.HUNDREDTHS:
                return _mapped(each[0], PLAIN.hundredths)
            case Op.DIVIDE_DOWN:
                return _mapped(each[0], lambda end: end // value.data)
            case Op.LEAST:
                return min(low for low, _ in each), min(high for _, high in each)
            case Op.MOST:
                return max(low for low, _ in each), max(high for _, high in each)
            case Op.WHERE:
                _, (low, high), (least, most) = each
                return min(low, least), max(high, most)
            case Op.PACK:
                return 0, prod(value.data) - 1
            case Op.COMMON:
                return 0, min(high for _, high in each)
            case Op.EITHER:
                return 0, _sum(each)[1]
            case Op.LOWEST | Op.HALVED:
                return 0, each[0][1]
            case Op.MEMBERS:
                return _mapped((0, each[0][1]), lambda bits: int(bits).bit_length())
            case _:
                return _ANY


def _sum(each: list[Range]) -> Range:
    return _clean(sum(low for low, _ in each), sum(high for _, high in each))


def _clean(low: float, high: float) -> Range:
    return (-inf if isnan(low) else low, inf if isnan(high) else high)


def _mapped(ends: Range, step: Callable[[float], float]) -> Range:
    """The bounds of what never falls where its operand rises."""
    low, high = (end if isinf(end) else step(end) for end in ends)
    return low, high
