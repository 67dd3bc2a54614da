"""What was read of a trait, in the form that evaluators take.

A reading is always "what it could be": a value that is known is the case where only one is left.

| kind           | reading                                                                                 |
| -------------- | --------------------------------------------------------------------------------------- |
| number, count  | Span: lowest and highest value, in the held unit                                        |
| scale, choice  | int: bit i is set where step i is possible                                              |
| yes or no      | int: bit 0 is set where no is possible, bit 1 where yes is                              |
| places         | PlaceSet: bits of the places that are surely in, bits of those that may be              |
| label          | str                                                                                     |
| patches        | PatchMap                                                                                |
| colours        | ColourReadings                                                                          |
"""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal
from typing import NamedTuple

from koirules.vocabulary.colour_readings import ColourReadings, write_colour_readings
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
from koirules.vocabulary.maps import PatchMap, write_map
from koirules.vocabulary.rounding import for_people
from koirules.vocabulary.units import Dimension


class Span(NamedTuple):
    """Every number from low to high, both in; held unit."""

    low: float
    high: float


class PlaceSet(NamedTuple):
    """The places that are surely in (bits), and those that may be (bits; holds the sure ones)."""

    sure: int
    possible: int


Reading = Span | PlaceSet | int | str | PatchMap | ColourReadings

NO, YES, NO_OR_YES = 1, 2, 3
"""Readings of a yes-or-no trait."""


def anything(kind: Kind) -> Span | PlaceSet | int | None:
    """The reading of a trait that was not recorded: any value of its range.

    None for a label, a map and colour readings: any at all.
    """
    match kind:
        case YesNo():
            return NO_OR_YES
        case Count(high):
            return Span(0.0, float(high))
        case Number():
            return Span(float(kind.held_low), float(kind.held_high))
        case Scale() | Choice():
            return (1 << len(words_of(kind))) - 1
        case Places(places):
            return PlaceSet(0, (1 << len(places)) - 1)
        case Label() | Patches() | Colours():
            return None


def step_bits(kind: Scale | Choice | Places | YesNo, words: Iterable[str]) -> int:
    """The bits of the given steps, options or places. Raises ValueError for a word that the kind lacks."""
    known = words_of(kind)
    bits = 0
    for word in words:
        bits |= 1 << known.index(word)
    return bits


def words_in(kind: Kind, bits: int) -> tuple[str, ...]:
    """The steps, options or places whose bits are set, in the order of the kind."""
    return tuple(word for i, word in enumerate(words_of(kind)) if bits >> i & 1)


def write_number(value: float, kind: Number | Count) -> str:
    """A held value in the trait's own unit, to a millionth at the most, with the unit: `12.5 cm`, `3`."""
    exact = Decimal(repr(float(value)))
    if isinstance(kind, Number) and kind.unit is not None:
        exact = kind.unit.from_held(exact)
        return f"{shortest(round(exact, 6))} {kind.unit.symbol}"
    return shortest(round(exact, 6))


def write_reading(kind: Kind, reading: Reading | None) -> str:
    """A reading as a record writes it: `12.5 cm`, `40 % to 50 %`, `fair or sharp`, `none`; "" for what was not recorded."""
    match kind, reading:
        case (Number() | Count(), Span(low, high)):
            lowest = write_number(low, kind)
            return lowest if low == high else f"{lowest} to {write_number(high, kind)}"
        case (Scale() | Choice() | YesNo(), int(bits)):
            return " or ".join(words_in(kind, bits))
        case (Places(), PlaceSet(sure, possible)):
            if sure != possible:
                return ""
            return " ".join(words_in(kind, sure)) or "none"
        case (Label(), str(text)):
            return text
        case (Patches(), PatchMap()):
            return write_map(reading)
        case (Colours(), ColourReadings()):
            return write_colour_readings(reading)
        case _:
            return ""


def show_number(value: float, kind: Number | Count) -> str:
    """A held value in the trait's own unit as a person reads it (see rounding.py), with the unit."""
    exact = Decimal(repr(float(value)))
    if not isinstance(kind, Number) or kind.unit is None:
        return for_people(round(exact, 6))
    own = round(kind.unit.from_held(exact), 6)
    return f"{for_people(own, share=kind.dimension is Dimension.SHARE)} {kind.unit.symbol}"


def show_reading(kind: Kind, reading: Reading, *, exact: bool = False) -> str:
    """A reading as a person is told it: numbers rounded, and `tail, perhaps dorsal` for places that are not sure.

    exact: numbers with all of their digits.
    """
    if not exact and isinstance(kind, Number) and isinstance(reading, Span):
        lowest, highest = show_number(reading.low, kind), show_number(reading.high, kind)
        if lowest != highest or reading.low == reading.high:
            return lowest if lowest == highest else f"{lowest} to {highest}"
    if isinstance(kind, Places) and isinstance(reading, PlaceSet) and reading.sure != reading.possible:
        perhaps = f"perhaps {' '.join(words_in(kind, reading.possible & ~reading.sure))}"
        return f"{' '.join(words_in(kind, reading.sure))}, {perhaps}" if reading.sure else perhaps
    return write_reading(kind, reading)


def is_sure(kind: Kind, reading: Reading) -> bool:
    """Whether a reading is one value, and not one of several."""
    match kind, reading:
        case (Number() | Count(), Span(low, high)):
            return low == high
        case (Scale() | Choice() | YesNo(), int(bits)):
            return bits.bit_count() == 1
        case (Places(), PlaceSet(sure, possible)):
            return sure == possible
        case _:
            return True
