"""Every operator of the rule language once: its words and its meaning over what a value could be.

A row gives Python source for both ends of the result from the source of both ends of the operands; the evaluator of one
record is generated from it, and the checker's static ranges run the very same source over the ranges of the traits.

| shape  | first                    | second                   |
| ------ | ------------------------ | ------------------------ |
| number | lowest value             | highest value            |
| truth  | surely yes               | possibly yes             |
| steps  | bits of possible steps   | -                        |
| places | bits of places surely in | bits of places maybe in  |

Scales are compared through their bits: of a set of steps `a`, `a & -a` is the bit of the lowest step, and `a >= bit` says
that the highest reaches it.

Sources: three-valued logic, Kleene, Introduction to Metamathematics (1952), section 64; interval arithmetic, Moore,
Kearfott, Cloud, Introduction to Interval Analysis (2009), chapter 2 (both from memory).
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from math import floor
from typing import Any

from attrs import field, frozen

LIMIT = 1_000_000.0
"""A value beyond this on either side of 0 is not recorded: any number at all."""


@frozen
class Ends:
    """The source of both ends of an operand; `second` is "" for steps, which have one."""

    first: str
    second: str = ""


Source = Callable[..., str]


@frozen
class Operation:
    """A row of the table: the words of the operator, and the source of both ends of its result.

    first, second: functions from the ends of the operands to source; `second` None where the result is steps. opens: whether
    operands that are one value each can still give several, from the ranges of the operands; where not, and where the
    source of both ends of every operand is the same, that of `first` is the result.
    """

    name: str
    words: str
    first: Source = field(repr=False, eq=False)
    second: Source | None = field(repr=False, eq=False, default=None)
    opens: Callable[..., bool] = field(repr=False, eq=False, default=lambda *_: False)

    def range_of(self, *operands: Any) -> Any:
        """The result over readings: pairs for numbers, truths and places, bits for steps."""
        flat: list[Any] = []
        shape = []
        for operand in operands:
            paired = isinstance(operand, tuple)
            shape.append(paired)
            flat.extend(operand if paired else (operand,))
        return _compiled(self, tuple(shape))(*flat)


@cache
def _compiled(operation: Operation, shape: tuple[bool, ...]) -> Callable[..., Any]:
    names: list[str] = []
    ends: list[Ends] = []
    for number, paired in enumerate(shape):
        pair = Ends(f"x{number}", f"y{number}" if paired else "")
        ends.append(pair)
        names.extend([pair.first, pair.second] if paired else [pair.first])
    source = operation.first(*ends)
    if operation.second is not None:
        source = f"({source}, {operation.second(*ends)})"
    # The source is made of this table's own templates and the names above; no text of a rule file reaches it.
    made: Callable[..., Any] = eval(f"lambda {', '.join(names)}: {source}", dict(NAMES))  # noqa: S307
    return made


NAMES: dict[str, Any] = {"floor": floor, "min": min, "max": max, "sum": sum}
"""What the source of operations may call."""


def _corners(a: Ends, b: Ends, sign: str, pick: str) -> str:
    corners = dict.fromkeys(f"{x} {sign} {y}" for x in (a.first, a.second) for y in (b.first, b.second))
    return f"{pick}({', '.join(corners)})" if len(corners) > 1 else f"({next(iter(corners))})"


def _guarded(a: Ends, b: Ends, pick: str, without: float) -> str:
    return f"({without} if {b.first} <= 0.0 <= {b.second} else {_corners(a, b, '/', pick)})"


def _choose(joined: str) -> Callable[[str], Source]:
    def make(end: str) -> Source:
        def source(a: Ends, c: Ends, b: Ends) -> str:
            one, other = getattr(a, end), getattr(b, end)
            if c.first == c.second:
                return f"({one} if {c.first} else {other})"
            both = joined.format(one, other)
            return f"({one} if {c.first} else {both} if {c.second} else {other})"

        return source

    return make


def _all_equal(*ends: str) -> str:
    different = list(dict.fromkeys(ends))
    return f"({' == '.join(different)})" if len(different) > 1 else "True"


def _joined(end: str, joint: str) -> Source:
    return lambda *parts: "(" + joint.join(getattr(part, end) for part in parts) + ")"


def _summed(end: str) -> Source:
    return lambda *parts: f"sum(({''.join(getattr(part, end) + ', ' for part in parts)}))"


def _called(end: str, name: str) -> Source:
    return lambda *parts: f"{name}({', '.join(getattr(part, end) for part in parts)})"


ADD = Operation("add", "+", lambda a, b: f"({a.first} + {b.first})", lambda a, b: f"({a.second} + {b.second})")
SUBTRACT = Operation(
    "subtract", "-", lambda a, b: f"({a.first} - {b.second})", lambda a, b: f"({a.second} - {b.first})"
)
MULTIPLY = Operation("multiply", "*", lambda a, b: _corners(a, b, "*", "min"), lambda a, b: _corners(a, b, "*", "max"))
DIVIDE = Operation(
    "divide",
    "/",
    lambda a, b: _guarded(a, b, "min", -LIMIT),
    lambda a, b: _guarded(a, b, "max", LIMIT),
    opens=lambda _, b: b[0] <= 0 <= b[1],
)
NEGATE = Operation("negate", "-", lambda a: f"(-{a.second})", lambda a: f"(-{a.first})")
HELD_WITHIN = Operation(
    "held within",
    "",
    lambda a: f"({a.first} if -{LIMIT} <= {a.first} and {a.second} <= {LIMIT} else -{LIMIT})",
    lambda a: f"({a.second} if -{LIMIT} <= {a.first} and {a.second} <= {LIMIT} else {LIMIT})",
    opens=lambda _: True,
)
MILLIONTHS = Operation(
    "millionths",
    "",
    lambda a: f"floor(1000000.0 * {a.first} + 0.5)",
    lambda a: f"floor(1000000.0 * {a.second} + 0.5)",
)
LESSER = Operation("lesser", "lesser of", _called("first", "min"), _called("second", "min"))
GREATER = Operation("greater", "greater of", _called("first", "max"), _called("second", "max"))
CHOOSE_NUMBER = Operation(
    "choose number", "if … otherwise", _choose("min({}, {})")("first"), _choose("max({}, {})")("second")
)
CHOOSE_TRUTH = Operation(
    "choose truth", "if … otherwise", _choose("({} and {})")("first"), _choose("({} or {})")("second")
)
CHOOSE_STEPS = Operation("choose steps", "if … otherwise", _choose("({} | {})")("first"))
COUNT_CONDITIONS = Operation("count conditions", "count of", _summed("first"), _summed("second"))
COUNT_PLACES = Operation(
    "count places", "count of", lambda a: f"{a.first}.bit_count()", lambda a: f"{a.second}.bit_count()"
)

ALL_OF = Operation("all of", "and", _joined("first", " and "), _joined("second", " and "))
ANY_OF = Operation("any of", "or", _joined("first", " or "), _joined("second", " or "))
NOT = Operation("not", "not", lambda a: f"(not {a.second})", lambda a: f"(not {a.first})")

NUMBER_AT_LEAST = Operation(
    "number at least", "at least", lambda a, b: f"({a.first} >= {b.second})", lambda a, b: f"({a.second} >= {b.first})"
)
NUMBER_ABOVE = Operation(
    "number above", "above", lambda a, b: f"({a.first} > {b.second})", lambda a, b: f"({a.second} > {b.first})"
)
NUMBER_IS = Operation(
    "number is",
    "is",
    lambda a, b: _all_equal(a.first, a.second, b.first, b.second),
    lambda a, b: f"({a.first} <= {b.second} and {b.first} <= {a.second})",
)
STEP_AT_LEAST = Operation(
    "step at least",
    "at least",
    lambda a, b: f"(({a.first} & -{a.first}) > ({b.first} >> 1))",
    lambda a, b: f"({a.first} >= ({b.first} & -{b.first}))",
)
STEP_ABOVE = Operation(
    "step above",
    "above",
    lambda a, b: f"(({a.first} & -{a.first}) > {b.first})",
    lambda a, b: f"(({a.first} >> 1) >= ({b.first} & -{b.first}))",
)
STEP_IS = Operation(
    "step is",
    "is",
    lambda a, b: f"({a.first} == {b.first} and {a.first} & ({a.first} - 1) == 0)",
    lambda a, b: f"({a.first} & {b.first} != 0)",
)
STEP_IN = Operation(
    "step in",
    "is one of",
    lambda a, b: f"({a.first} & ~{b.first} == 0)",
    lambda a, b: f"({a.first} & {b.first} != 0)",
)
TRUTH_IS = Operation(
    "truth is",
    "is",
    lambda a, b: f"(({a.first} and {b.first}) or not ({a.second} or {b.second}))",
    lambda a, b: f"(({a.second} and {b.second}) or not ({a.first} or {b.first}))",
)
TEXT_IS = Operation(
    "text is",
    "is",
    lambda a, b: f"({a.first} == {b.first})",
    lambda a, b: f"({a.first} is None or {a.first} == {b.first})",
)
INCLUDES = Operation(
    "includes", "includes", lambda a, b: f"({a.first} & {b.first} != 0)", lambda a, b: f"({a.second} & {b.first} != 0)"
)
STEPS_OF_TRUTH = Operation("steps of truth", "", lambda a: f"((0 if {a.first} else 1) | (2 if {a.second} else 0))")
TRUTH_OF_STEPS = Operation("truth of steps", "", lambda a: f"({a.first} == 2)", lambda a: f"({a.first} >= 2)")
