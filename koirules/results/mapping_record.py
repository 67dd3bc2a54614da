"""The record of one fish from a mapping, as a program gives it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal
from math import inf, nextafter
from unicodedata import normalize

from koirules.problems import Cell, Problem, recording
from koirules.results.record import Record
from koirules.values import frozen
from koirules.vocabulary.cells import CannotTell, Misread, is_missing, read_cell, read_value
from koirules.vocabulary.colour_readings import ColourReadings
from koirules.vocabulary.headings import by_heading, headed
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
    words_of,
)
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.nearness import near
from koirules.vocabulary.quantities import exactly_held, may_be_part_of_one
from koirules.vocabulary.readings import NO, YES, Reading, Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit

Glance = Callable[[object], Reading | None]
"""The reading of a value that needs no second look; None for any other. What it gives is what read_value would give."""

LOOK = "look"
"""The key that says which look of its sorting a record is, where no trait is called so."""

LOOKED = "looked"
"""The key that says whether somebody looked at the fish, where no trait is called so."""

JUDGE = "judge"
"""The key that says whose record it is, where no trait is called so: several judges may each make one of the same fish."""

_MOST_LOOKS = 60

TINY = 1e-20
_HUGE = 2.0**53
"""Numbers between these, and 0, are looked at as doubles: there, each is the decimal that it is written as."""


@frozen
class RecordReader:
    """Reads records of the given traits; what can be known of a trait before any value is made ready once."""

    traits: Mapping[str, Trait]
    glances: Mapping[str, Glance]
    labels: frozenset[str]
    headings: Mapping[str, Trait]

    @classmethod
    def of(cls, traits: Mapping[str, Trait]) -> RecordReader:
        """The reader of records that may name these traits."""
        labels = frozenset(name for name, trait in traits.items() if isinstance(trait.kind, Label))
        return cls(
            traits, {name: _glance(trait.kind) for name, trait in traits.items()}, labels, by_heading(traits.values())
        )

    def read(self, record: Mapping[str, object], fish: str) -> Record | tuple[Problem, ...]:
        """The record that a mapping gives, or every problem of it."""
        readings: dict[str, Reading] = {}
        problems: list[Problem] = []
        cannot_tell: set[str] = set()
        looked: bool | None = None
        look: int | None = None
        judge = ""
        glances = self.glances
        for name, value in record.items():
            glance = glances.get(name)
            reading = None if glance is None else glance(value)
            if reading is None:
                if name == LOOK and name not in self.traits:
                    look = look_number(value)
                    if look is None and value is not None:
                        problems.append(recording.not_a_look("record", None, str(value)[:30]))
                    continue
                if name == JUDGE and name not in self.traits:
                    judge = normalize("NFC", "" if is_missing(value) else str(value)).strip()
                    continue
                trait, unit = self._headed(name)
                if trait is not None and trait.name != name:
                    if trait.name in record or trait.name in readings:
                        problems.append(recording.key_of_another(str(name), trait.name))
                        continue
                    name = trait.name  # noqa: PLW2901 - what it stands for
                read = self._read_closely(name, value, unit)
                if read is None:
                    continue
                if isinstance(read, CannotTell):
                    cannot_tell.add(name)
                    continue
                if isinstance(read, bool):
                    looked = read
                    continue
                if isinstance(read, Problem):
                    problems.append(read)
                    continue
                reading = read
            readings[name] = reading
        if problems:
            return tuple(problems)
        labels = {name: str(reading) for name, reading in readings.items() if name in self.labels}
        named = record.get("fish")
        name = fish or ("" if is_missing(named) else str(named))
        return Record(
            name, 0, readings, labels, looked=looked, cannot_tell=frozenset(cannot_tell), look=look, judge=judge
        )

    def _headed(self, name: object) -> tuple[Trait | None, Unit | None]:
        """The trait that a key names as a heading of a sheet does, with the unit that it gives its numbers."""
        if name in self.traits or not isinstance(name, str):
            return None, None
        return headed(name, self.headings) or (None, None)

    def _read_closely(
        self, name: str, value: object, unit: Unit | None
    ) -> Reading | Problem | CannotTell | bool | None:
        """What a value says that is not plain; of `looked`, where no trait is called so, whether it is yes."""
        trait = self.traits.get(name)
        if trait is None and name == LOOKED:
            said = read_value(YesNo(), value)
            if isinstance(said, Misread):
                return recording.wrong_value(Cell("record", None, name), said.code, said.cause, said.mend)
            return None if said is None else said == YES
        if trait is None:
            return None if name == "fish" else recording.unknown_trait(name, near(str(name), self.traits))
        read = read_cell(trait.kind, value, unit)
        if isinstance(read, Misread):
            return recording.wrong_value(Cell("record", None, name), read.code, read.cause, read.mend)
        return read


def _glance(kind: Kind) -> Glance:
    match kind:
        case Number():
            return _glance_at_number(kind)
        case Count(high):
            return _glance_at_count(high)
        case Scale() | Choice() | Places() | YesNo():
            return _glance_at_words(kind)
        case Label():
            return _glance_at_label
        case Patches():
            return _glance_at_map
        case Colours():
            return _glance_at_colours


def _glance_at_number(kind: Number) -> Glance:
    if kind.unit is not None and not kind.unit.is_held:
        return _glance_at_converted(kind, kind.unit)
    low, high = doubles_between(kind.low, kind.high)
    parts = may_be_part_of_one(kind)

    def number(value: object) -> Span | None:
        if parts and type(value) in (float, int) and 0 < value <= 1:  # type: ignore[operator]
            return None
        # Another type, such as bool or a double of numpy, may compare or write itself in its own way.
        if (type(value) is float or type(value) is int) and low <= value <= high and (abs(value) > TINY or not value):
            held = value + 0.0
            return Span(held, held)
        return None

    return number


def _glance_at_converted(kind: Number, unit: Unit) -> Glance:
    low, high = exactly_held(unit, kind.low), exactly_held(unit, kind.high)

    def number(value: object) -> Span | None:
        if (type(value) is float or type(value) is int) and (TINY < abs(value) <= _HUGE or not value):
            exact = exactly_held(unit, Decimal(repr(value)))
            if low <= exact <= high:
                held = float(exact) + 0.0
                return Span(held, held)
        return None

    return number


def doubles_between(low: Decimal, high: Decimal) -> tuple[float, float]:
    """The lowest and the highest double whose shortest decimal lies between two ends, within what is held exactly."""
    lowest, highest = max(float(low), -_HUGE), min(float(high), _HUGE)
    return (
        nextafter(lowest, inf) if Decimal(repr(lowest)) < low else lowest,
        nextafter(highest, -inf) if Decimal(repr(highest)) > high else highest,
    )


def highest_count(high: int) -> int:
    """The highest count that is held exactly."""
    return min(high, int(_HUGE))


def _glance_at_count(high: int) -> Glance:
    highest = highest_count(high)

    def count(value: object) -> Span | None:
        if (type(value) is int or (type(value) is float and value.is_integer())) and 0 <= value <= highest:
            held = value + 0.0
            return Span(held, held)
        return None

    return count


def _glance_at_words(kind: Scale | Choice | Places | YesNo) -> Glance:
    known = words_known(kind)
    truths = (NO, YES) if isinstance(kind, YesNo) else None

    def word_or_truth(value: object) -> Reading | None:
        if type(value) is str:
            return known.get(value)
        return truths[value] if truths and type(value) is bool else None

    return word_or_truth


def _glance_at_map(value: object) -> PatchMap | None:
    return value if isinstance(value, PatchMap) else None


def _glance_at_colours(value: object) -> ColourReadings | None:
    return value if isinstance(value, ColourReadings) else None


def words_known(kind: Scale | Choice | Places | YesNo) -> dict[str, Reading]:
    """The reading of each word that stands for itself."""
    known: dict[str, Reading] = {}
    for word in (*words_of(kind), "none"):
        reading = read_value(kind, word)
        if reading is not None and not isinstance(reading, Misread):
            known[word] = reading
    return known


def _glance_at_label(value: object) -> str | None:
    return normalize("NFC", value.strip()) or None if type(value) is str else None


def look_number(value: object) -> int | None:
    """The number of a look, from 1; None for what is none."""
    if isinstance(value, bool):
        return None
    try:
        number = float(str(value).strip())
    except ValueError:
        return None
    return int(number) if number.is_integer() and 1 <= number <= _MOST_LOOKS else None
