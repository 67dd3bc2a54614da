"""What a kind of value expects, in the words of a message: its range, its steps, an example."""

from __future__ import annotations

from decimal import Decimal

from koirules.problems.quoting import in_words
from koirules.vocabulary.kinds import (
    Choice,
    Colours,
    Count,
    Kind,
    Label,
    Number,
    Patches,
    Places,
    Scale,
    YesNo,
    shortest,
    words_of,
)
from koirules.vocabulary.units import UNITS, Unit

COLOURS_EXAMPLE = "45 42 38; 47 40 36"
"""Colour readings at two places."""

MAP_EXAMPLE = "8 to 26 left 60 right 55; 34 to 52 left 95 right 40"
"""A map of two patches in the short form."""


def units_of(kind: Number) -> tuple[str, ...]:
    """The symbols of all units that a number can be written in."""
    return tuple(symbol for symbol, unit in UNITS.items() if unit.dimension is kind.dimension)


def range_of(kind: Number | Count) -> str:
    """The range of a number in its own unit: `0 cm to 90 cm`."""
    match kind:
        case Count(high):
            return f"0 to {high}"
        case Number(unit, low, high):
            behind = f" {unit.symbol}" if unit else ""
            return f"{shortest(low)}{behind} to {shortest(high)}{behind}"


def stretch_of(kind: Number | Count) -> str:
    """An unsure value that the trait could have: `36 cm to 45 cm`."""
    if isinstance(kind, Count):
        lowest = kind.high * 2 // 5
        return f"{lowest} to {min(max(lowest + 1, kind.high // 2), kind.high)}"
    width = kind.high - kind.low
    ends = (shortest(round(kind.low + width * part, _decimals(width))) for part in (Decimal("0.4"), Decimal("0.5")))
    behind = f" {kind.unit.symbol}" if kind.unit else ""
    return f"{behind} to ".join(ends) + behind


def stretch_near(kind: Number | Count, value: Decimal, unit: Unit | None, steps: tuple[int, int]) -> str:
    """An unsure value at a number that somebody wrote, inside the range: `115 to 125` for 120.

    unit: the one that the number is in. steps: how far to go below and above, in steps of about a twentieth.
    """
    if isinstance(kind, Count):
        lowest, highest = Decimal(0), Decimal(kind.high)
    elif unit is None or unit is kind.unit:
        lowest, highest = kind.low, kind.high
    else:
        lowest, highest = (round(unit.from_held(end), 6) for end in (kind.held_low, kind.held_high))
    least = Decimal(1) if isinstance(kind, Count) else Decimal(0)
    step = max(_one_two_or_five(abs(value) / 20 or least or (highest - lowest) / 20), least)
    below, above = steps
    return f"{shortest(max(value - below * step, lowest))} to {shortest(min(value + above * step, highest))}"


def example_of(kind: Kind) -> str:
    """What to write, with an example that the trait could have."""
    match kind:
        case Number(unit, low, high):
            middle = shortest(round((low + high) / 2, _decimals(high - low)))
            behind = f" {unit.symbol}" if unit else ""
            return f'Write a number from {range_of(kind)}, such as "{middle}{behind}"'
        case Count():
            return f"Write a whole number from {range_of(kind)}"
        case Label():
            return "Write a text"
        case Colours():
            return f'Write L*, a* and b* of each reading, such as "{COLOURS_EXAMPLE}"'
        case Patches():
            return f'Write the patches, such as "{MAP_EXAMPLE}", or "none"'
        case _:
            return choose(kind).removesuffix(".")


def choose(kind: Kind) -> str:
    """The words to choose from, as a sentence."""
    words = words_of(kind)
    match kind:
        case Places():
            return f'Write "none", or any of {in_words(words, "and")}.'
        case YesNo():
            return 'Write "yes" or "no".'
        case _:
            return f"Write {in_words(words)}." if len(words) < 3 else f"Write one of {in_words(words)}."


def noun_of(kind: Kind) -> str:
    """What a word of this kind is, as the end of a sentence."""
    match kind:
        case Scale():
            return "one of its words"
        case Choice():
            return "one of the choices"
        case Places():
            return "a place that can be named here"
        case _:
            return "yes or no"


def without_unit(kind: Number | Count) -> str:
    """Why a unit does not fit, as a sentence."""
    return "this is counted, without a unit" if isinstance(kind, Count) else "this is a plain number without a unit"


def measure_of(kind: Number) -> str:
    """What a number measures, as a word."""
    return kind.dimension.word if kind.dimension else "plain number"


def _one_two_or_five(width: Decimal) -> Decimal:
    """The largest of …, 0.5, 1, 2, 5, 10, … that is not above a width."""
    power = Decimal(1).scaleb(width.adjusted())
    return next((digit * power for digit in (5, 2) if digit * power <= width), power)


def _decimals(width: Decimal) -> int:
    """How many decimals an example from a range of this width needs."""
    if width >= 10:
        return 0
    return 2 if width >= Decimal("0.2") else 6
