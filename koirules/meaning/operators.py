"""Every operator of the rule language once: its meaning over a value algebra.

A row is a pair of functions, from the ends of the operands to each end of the result. The checker's static ranges run it
over plain numbers, the tracer to record a program: a record, a column of a frame and a term of the solver have one meaning.

Scales are compared through their bits: `lowest` of a set of levels is the bit of its lowest level, and `at_least` of two
sets says that the highest level of the one reaches that of the other.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from enum import Flag, auto
from itertools import combinations
from typing import Any

from attrs import field

from koirules.meaning.algebra import PLAIN, Ends, OperatorAlgebra, ends_of
from koirules.values import frozen

LIMIT = 1_000_000.0
"""A value beyond this on either side of 0 is not recorded: any number at all."""

M = OperatorAlgebra[Any]
E = Ends[Any]


class Nature(Flag):
    """What others than the engines have to know of an operator.

    COMMUTES: its operands may change places. LOSES: it can make a number any number at all. CHOOSES: one of its first and
    last operands, by the one in the middle. COMPARES_NUMBERS: two numbers in millionths. ORDERS: a comparison in order.
    """

    PLAIN = 0
    COMMUTES = auto()
    LOSES = auto()
    CHOOSES = auto()
    COMPARES_NUMBERS = auto()
    ORDERS = auto()


@frozen
class Operation:
    """A row of the table: the name of the operator, its words, what it does besides, and its meaning.

    first, second: what each end of the result is, from an algebra and the ends of the operands; `second` None where the
    result has one end. opens: whether operands that are one value each can still give several, from the ranges of the
    operands; where not, the first end is the result.
    """

    name: str
    words: str
    nature: Nature
    first: Callable[..., Any] = field(repr=False, eq=False)
    second: Callable[..., Any] | None = field(repr=False, eq=False, default=None)
    opens: Callable[..., bool] = field(repr=False, eq=False, default=lambda *_: False)

    def __reduce__(self) -> str:
        """A row is copied and pickled as what it is: a row of this table."""
        return next(name for name, value in globals().items() if value is self)

    def range_of(self, *operands: Any) -> Any:
        """The result over readings: pairs for numbers, truths and places, bits for levels."""
        ends = [ends_of(operand) for operand in operands]
        first = self.first(PLAIN, *ends)
        return first if self.second is None else (first, self.second(PLAIN, *ends))

    def over(self, algebra: M, operands: Sequence[E], ranges: Sequence[Any]) -> E:
        """The result over an algebra; one value where every operand is one value and the operator opens nothing.

        ranges: what each operand can be at all.
        """
        first = self.first(algebra, *operands)
        if all(ends.sure for ends in operands) and not self.opens(*ranges):
            return Ends(first, first)
        return Ends(first, None if self.second is None else self.second(algebra, *operands))


def _distinct(*values: Any) -> list[Any]:
    found: list[Any] = []
    for value in values:
        if not any(value is known for known in found):
            found.append(value)
    return found


def _corners(apply: Callable[[Any, Any], Any], a: E, b: E) -> list[Any]:
    """What an operation gives of each end of one operand and each end of the other."""
    return [apply(x, y) for x in _distinct(a.first, a.last) for y in _distinct(b.first, b.last)]


def _quotient(m: M, a: E, b: E, without: float, pick: Callable[..., Any]) -> Any:
    """One end of a quotient; `without` where the divisor may be 0."""
    nothing = m.constant(0.0)
    by_nothing = m.every(m.at_least(nothing, b.first), m.at_least(b.last, nothing))
    if m.known(by_nothing):
        return m.constant(without)
    return m.where(by_nothing, m.constant(without), pick(*_corners(m.divide, a, b)))


def _inside(m: M, a: E) -> Any:
    return m.every(m.at_least(a.first, m.constant(-LIMIT)), m.at_least(m.constant(LIMIT), a.last))


def _choice(m: M, c: E, one: Any, other: Any, both: Callable[[Any, Any], Any]) -> Any:
    """One of two ends: where the condition is open, what both of them come to."""
    if c.sure:
        return m.where(c.first, one, other)
    return m.where(c.first, one, m.where(c.last, both(one, other), other))


def _all_equal(m: M, *values: Any) -> Any:
    first, *others = _distinct(*values)
    return m.every(*(m.equal(first, other) for other in others))


def _firsts(parts: Sequence[E]) -> list[Any]:
    return [part.first for part in parts]


def _lasts(parts: Sequence[E]) -> list[Any]:
    return [part.last for part in parts]


def _middle(m: M, values: Sequence[Any]) -> Any:
    """The one in the middle of some numbers in order, or half of the two in the middle together.

    The median rises with each of them, so that the ends of the operands give its ends.
    """

    def ranked(place: int) -> Any:
        """The number at a place in order, from 1: the least of what the largest of so many can be."""
        return m.least(*(m.most(*some) for some in combinations(values, place)))

    half = len(values) // 2
    if len(values) % 2:
        return ranked(half + 1)
    return m.multiply(m.constant(0.5), m.add(ranked(half), ranked(half + 1)))


ADD = Operation(
    "add", "+", Nature.COMMUTES, lambda m, a, b: m.add(a.first, b.first), lambda m, a, b: m.add(a.last, b.last)
)
SUBTRACT = Operation(
    "subtract",
    "-",
    Nature.PLAIN,
    lambda m, a, b: m.subtract(a.first, b.last),
    lambda m, a, b: m.subtract(a.last, b.first),
)
MULTIPLY = Operation(
    "multiply",
    "*",
    Nature.COMMUTES,
    lambda m, a, b: m.least(*_corners(m.multiply, a, b)),
    lambda m, a, b: m.most(*_corners(m.multiply, a, b)),
)
DIVIDE = Operation(
    "divide",
    "/",
    Nature.LOSES,
    lambda m, a, b: _quotient(m, a, b, -LIMIT, m.least),
    lambda m, a, b: _quotient(m, a, b, LIMIT, m.most),
    opens=lambda _, b: b[0] <= 0 <= b[1],
)
NEGATE = Operation("negate", "-", Nature.PLAIN, lambda m, a: m.negate(a.last), lambda m, a: m.negate(a.first))
HELD_WITHIN = Operation(
    "held within",
    "",
    Nature.LOSES,
    lambda m, a: m.where(_inside(m, a), a.first, m.constant(-LIMIT)),
    lambda m, a: m.where(_inside(m, a), a.last, m.constant(LIMIT)),
    opens=lambda _: True,
)
MILLIONTHS = Operation(
    "millionths", "", Nature.PLAIN, lambda m, a: m.millionths(a.first), lambda m, a: m.millionths(a.last)
)
LESSER = Operation(
    "lesser",
    "lesser of",
    Nature.COMMUTES,
    lambda m, *parts: m.least(*_firsts(parts)),
    lambda m, *parts: m.least(*_lasts(parts)),
)
GREATER = Operation(
    "greater",
    "greater of",
    Nature.COMMUTES,
    lambda m, *parts: m.most(*_firsts(parts)),
    lambda m, *parts: m.most(*_lasts(parts)),
)
MEDIAN = Operation(
    "median",
    "median of",
    Nature.COMMUTES,
    lambda m, *parts: _middle(m, _firsts(parts)),
    lambda m, *parts: _middle(m, _lasts(parts)),
)
CHOOSE_NUMBER = Operation(
    "choose number",
    "if … otherwise",
    Nature.CHOOSES,
    lambda m, a, c, b: _choice(m, c, a.first, b.first, m.least),
    lambda m, a, c, b: _choice(m, c, a.last, b.last, m.most),
)
CHOOSE_TRUTH = Operation(
    "choose truth",
    "if … otherwise",
    Nature.CHOOSES,
    lambda m, a, c, b: _choice(m, c, a.first, b.first, m.every),
    lambda m, a, c, b: _choice(m, c, a.last, b.last, m.some),
)
CHOOSE_STEPS = Operation(
    "choose steps", "if … otherwise", Nature.CHOOSES, lambda m, a, c, b: _choice(m, c, a.first, b.first, m.either)
)
COUNT_CONDITIONS = Operation(
    "count conditions",
    "count of",
    Nature.COMMUTES,
    lambda m, *parts: m.count(*_firsts(parts)),
    lambda m, *parts: m.count(*_lasts(parts)),
)
COUNT_PLACES = Operation(
    "count places",
    "count of",
    Nature.PLAIN,
    lambda m, a: m.members(a.first) if a.least is None else a.least,
    lambda m, a: m.members(a.last) if a.most is None else a.most,
)

ALL_OF = Operation(
    "all of",
    "and",
    Nature.COMMUTES,
    lambda m, *parts: m.every(*_firsts(parts)),
    lambda m, *parts: m.every(*_lasts(parts)),
)
ANY_OF = Operation(
    "any of", "or", Nature.COMMUTES, lambda m, *parts: m.some(*_firsts(parts)), lambda m, *parts: m.some(*_lasts(parts))
)
NOT = Operation("not", "not", Nature.PLAIN, lambda m, a: m.no(a.last), lambda m, a: m.no(a.first))

NUMBER_AT_LEAST = Operation(
    "number at least",
    "at least",
    Nature.COMPARES_NUMBERS | Nature.ORDERS,
    lambda m, a, b: m.at_least(a.first, b.last),
    lambda m, a, b: m.at_least(a.last, b.first),
)
NUMBER_ABOVE = Operation(
    "number above",
    "above",
    Nature.COMPARES_NUMBERS | Nature.ORDERS,
    lambda m, a, b: m.above(a.first, b.last),
    lambda m, a, b: m.above(a.last, b.first),
)
NUMBER_IS = Operation(
    "number is",
    "is",
    Nature.COMPARES_NUMBERS,
    lambda m, a, b: _all_equal(m, a.first, a.last, b.first, b.last),
    lambda m, a, b: m.every(m.at_least(b.last, a.first), m.at_least(a.last, b.first)),
)
STEP_AT_LEAST = Operation(
    "step at least",
    "at least",
    Nature.ORDERS,
    lambda m, a, b: m.above(m.lowest(a.first), m.halved(b.first)),
    lambda m, a, b: m.at_least(a.first, m.lowest(b.first)),
)
STEP_ABOVE = Operation(
    "step above",
    "above",
    Nature.ORDERS,
    lambda m, a, b: m.above(m.lowest(a.first), b.first),
    lambda m, a, b: m.at_least(m.halved(a.first), m.lowest(b.first)),
)
STEP_IS = Operation(
    "step is",
    "is",
    Nature.PLAIN,
    lambda m, a, b: m.every(m.equal(a.first, b.first), m.equal(m.lowest(a.first), a.first)),
    lambda m, a, b: m.meets(a.first, b.first),
)
STEP_IN = Operation(
    "step in",
    "is one of",
    Nature.PLAIN,
    lambda m, a, b: m.equal(m.common(a.first, b.first), a.first),
    lambda m, a, b: m.meets(a.first, b.first),
)
TRUTH_IS = Operation(
    "truth is",
    "is",
    Nature.PLAIN,
    lambda m, a, b: m.some(m.every(a.first, b.first), m.no(m.some(a.last, b.last))),
    lambda m, a, b: m.some(m.every(a.last, b.last), m.no(m.some(a.first, b.first))),
)
TEXT_IS = Operation(
    "text is",
    "is",
    Nature.PLAIN,
    lambda m, a, b: m.equal(a.first, b.first),
    lambda m, a, b: m.some(m.missing(a.first), m.equal(a.first, b.first)),
)
INCLUDES = Operation(
    "includes",
    "includes",
    Nature.PLAIN,
    lambda m, a, b: m.meets(a.first, b.first),
    lambda m, a, b: m.meets(a.last, b.first),
)
STEPS_OF_TRUTH = Operation(
    "steps of truth",
    "",
    Nature.PLAIN,
    lambda m, a: m.either(m.where(a.first, m.bits(0), m.bits(1)), m.where(a.last, m.bits(2), m.bits(0))),
)
TRUTH_OF_STEPS = Operation(
    "truth of steps",
    "",
    Nature.PLAIN,
    lambda m, a: m.equal(a.first, m.bits(2)),
    lambda m, a: m.at_least(a.first, m.bits(2)),
)

OPERATIONS: Mapping[str, Operation] = {one.name: one for one in list(globals().values()) if isinstance(one, Operation)}
"""Every row of the table by its name."""
