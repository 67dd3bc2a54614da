"""What was recorded of each fish, as columns beside its result: one file then has everything."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import Decimal

from attrs import field

from koirules.results.record import Record
from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Label, Number
from koirules.vocabulary.readings import Reading, Span, write_reading
from koirules.vocabulary.traits import Trait


class Measured(Decimal):
    """A number as it was recorded or worked out: written with all its digits, unlike a score."""


Value = str | Measured | None


@frozen
class Recorded:
    """The columns. headings: a trait each, with its unit. cells: by fish, one for each heading, None where nothing is known."""

    headings: tuple[str, ...] = ()
    cells: Mapping[str, tuple[Value, ...]] = field(factory=dict, hash=False)

    def of(self, fish: str) -> tuple[Value, ...]:
        """The cells of a fish."""
        return self.cells.get(fish, (None,) * len(self.headings))


def recorded_values(batches: Iterable[tuple[Mapping[str, Trait], Iterable[Record]]]) -> Recorded:
    """The columns of some batches: each trait of which any fish has a value, in the order of the vocabularies.

    batches: the traits of each standard with its records.
    """
    traits: dict[str, Trait] = {}
    fish: list[Record] = []
    for known, records in batches:
        traits |= {name: trait for name, trait in known.items() if name not in traits}
        fish.extend(records)
    there = {name for record in fish for name in record.readings}
    # What is carried along as a label has its column already.
    shown = [trait for name, trait in traits.items() if name in there and not isinstance(trait.kind, Label)]
    cells = {record.fish: tuple(_value(trait, record.readings.get(trait.name)) for trait in shown) for record in fish}
    return Recorded(tuple(_heading(trait) for trait in shown), cells)


def _heading(trait: Trait) -> str:
    unit = trait.kind.unit if isinstance(trait.kind, Number) else None
    return trait.name if unit is None else f"{trait.name} ({unit.symbol})"


def _value(trait: Trait, reading: Reading | None) -> Value:
    """A number alone where it is one, else the text that a record would have."""
    if isinstance(trait.kind, (Number, Count)) and isinstance(reading, Span) and reading.low == reading.high:
        exact = Decimal(repr(float(reading.low)))
        if isinstance(trait.kind, Number) and trait.kind.unit is not None:
            exact = trait.kind.unit.from_held(exact)
        return Measured(round(exact, 6))
    return write_reading(trait.kind, reading) or None
