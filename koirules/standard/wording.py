"""Ranges and values in words, for problems and reasons."""

from __future__ import annotations

from decimal import Decimal

from koirules.standard.tree import Node
from koirules.standard.types import Numeric, Steps
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.rounding import apart, for_people
from koirules.vocabulary.units import Dimension, Unit


def number_words(value: float, kind: Numeric, unit: Unit | None = None) -> str:
    """A held number with a unit: that of a trait where one is given, else the held one of its dimension."""
    exact = Decimal(repr(float(value)))
    if unit is not None:
        return f"{shortest(round(unit.from_held(exact), 6))} {unit.symbol}"
    text = shortest(round(exact, 6))
    return text if kind.dimension is None else f"{text} {kind.dimension.value}"


def told_number(value: float, kind: Numeric, unit: Unit | None = None, line: float | None = None) -> str:
    """The same as a person reads it (vocabulary/rounding.py). line: a number that it must not be mistaken for."""
    of_unit = kind.dimension.value if kind.dimension else ""
    symbol = unit.symbol if unit is not None else of_unit
    exact, other = (None if one is None else _in_unit(one, unit) for one in (value, line))
    share = kind.dimension is Dimension.SHARE
    if exact is None:
        raise AssertionError("a number that is none")
    text = for_people(exact, share=share) if other is None else apart(exact, other, share=share)
    return f"{text} {symbol}" if symbol else text


def _in_unit(value: float, unit: Unit | None) -> Decimal:
    exact = Decimal(repr(float(value)))
    return round(exact if unit is None else unit.from_held(exact), 6)


def range_words(node: Node) -> str:
    """What a node can be, as a part of a sentence: `lies between 0 cm and 125 cm`."""
    match node.type:
        case Numeric():
            low, high = node.range
            if low == high:
                return f"is {number_words(low, node.type)}"
            return f"lies between {number_words(low, node.type)} and {number_words(high, node.type)}"
        case Steps(words):
            return f"is one of {', '.join(word for i, word in enumerate(words) if node.range >> i & 1)}"
        case _:
            return "is known before anything is looked at"
