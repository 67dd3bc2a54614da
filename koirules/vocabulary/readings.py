"""What was read of a trait, in the form that evaluators take.

A reading is always "what it could be": a value that is known is the case where only one is left.

| kind           | reading                                                                                 |
| -------------- | --------------------------------------------------------------------------------------- |
| number, count  | Span: lowest and highest value, in the held unit                                        |
| scale, choice  | int: bit i is set where step i is possible                                              |
| yes or no      | int: bit 0 is set where no is possible, bit 1 where yes is                              |
| places         | PlaceSet: bits of the places surely in, of those that may be; how many at least, at most |
| label          | str                                                                                     |
| patches        | PatchMap                                                                                |
| colours        | ColourReadings                                                                          |
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal
from typing import NamedTuple, Self

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


class _PlaceSet(NamedTuple):
    sure: int
    possible: int
    least: int
    most: int


class PlaceSet(_PlaceSet):
    """Sets of places: each holds all of `sure` (bits), lies within `possible` (bits), and has from `least` to `most` members.

    Without counts there may be as many as the places allow. A reading has the tightest of all four (`narrowed`).
    """

    __slots__ = ()

    def __new__(cls, sure: int, possible: int, least: int | None = None, most: int | None = None) -> Self:
        """The sets between two, with their counts where these say more."""
        return super().__new__(
            cls,
            sure,
            possible,
            sure.bit_count() if least is None else least,
            possible.bit_count() if most is None else most,
        )

    @classmethod
    def any_of(cls, kind: Places) -> PlaceSet:
        """Any set at all."""
        return cls(0, (1 << len(kind.places)) - 1)

    @classmethod
    def exactly(cls, bits: int) -> PlaceSet:
        """One set."""
        return cls(bits, bits)

    @property
    def is_counted(self) -> bool:
        """Whether the number of places says more than the places themselves."""
        return self.least > self.sure.bit_count() or self.most < self.possible.bit_count()

    def meet(self, other: PlaceSet) -> PlaceSet | None:
        """The sets that both allow; None where there are none."""
        return PlaceSet(
            self.sure | other.sure,
            self.possible & other.possible,
            max(self.least, other.least),
            min(self.most, other.most),
        ).narrowed()

    def either(self, other: PlaceSet) -> PlaceSet:
        """The sets that one of them allows, and what lies between."""
        return PlaceSet(
            self.sure & other.sure,
            self.possible | other.possible,
            min(self.least, other.least),
            max(self.most, other.most),
        )

    def within(self, bits: int, *, sure: int = 0) -> PlaceSet | None:
        """Those of the sets that hold all of `sure` and nothing beside `bits`; None where there are none."""
        return self.meet(PlaceSet(sure, bits))

    def narrowed(self) -> PlaceSet | None:
        """The same sets with the tightest bounds; None where there is no such set."""
        sure, possible = self.sure, self.possible
        if sure & ~possible:
            return None
        least, most = max(self.least, sure.bit_count()), min(self.most, possible.bit_count())
        if least > most:
            return None
        if most == sure.bit_count():
            return PlaceSet(sure, sure)
        if least == possible.bit_count():
            return PlaceSet(possible, possible)
        return PlaceSet(sure, possible, least, most)

    def holds(self, other: PlaceSet) -> bool:
        """Whether every set of another reading is one of these."""
        within = not self.sure & ~other.sure and not other.possible & ~self.possible
        return within and self.least <= other.least and other.most <= self.most

    @property
    def sets(self) -> Iterator[int]:
        """Every set that is meant, as bits."""
        free = self.possible & ~self.sure
        part = 0
        while True:
            if self.least <= (self.sure | part).bit_count() <= self.most:
                yield self.sure | part
            part = (part - free) & free
            if not part:
                return


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
        case Places():
            return PlaceSet.any_of(kind)
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


def _write_places(kind: Places, reading: PlaceSet) -> str:
    """`left_pectoral tail`, `none`, `tail, perhaps dorsal`, `1 of them`, `tail, at least 1 of (dorsal, anal)`."""
    sure, open_ones = words_in(kind, reading.sure), words_in(kind, reading.possible & ~reading.sure)
    if not open_ones:
        return " ".join(sure) or "none"
    if reading.is_counted:
        least, most = reading.least - len(sure), reading.most - len(sure)
        if least == most:
            number = str(least)
        elif most == len(open_ones):
            number = f"at least {least}"
        else:
            number = f"at most {most}" if least == 0 else f"{least} to {most}"
        told = f"{number} of them" if len(open_ones) == len(kind.places) else f"{number} of ({', '.join(open_ones)})"
    else:
        told = f"perhaps {' '.join(open_ones)}"
    return f"{' '.join(sure)}, {told}" if sure else told


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
        case (Places(), PlaceSet()):
            return _write_places(kind, reading)
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
    """A reading as a person is told it: numbers rounded.

    exact: numbers with all of their digits.
    """
    if not exact and isinstance(kind, Number) and isinstance(reading, Span):
        lowest, highest = show_number(reading.low, kind), show_number(reading.high, kind)
        if lowest != highest or reading.low == reading.high:
            return lowest if lowest == highest else f"{lowest} to {highest}"
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
