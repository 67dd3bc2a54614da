"""The record of one fish from a mapping, as a program gives it."""

from __future__ import annotations

from collections.abc import Mapping

from koirules.grading.records import Record
from koirules.problems import Cell, Problem, recording
from koirules.vocabulary.cells import Misread, read_value
from koirules.vocabulary.kinds import Count, Label, Number, Scale, YesNo
from koirules.vocabulary.nearness import near
from koirules.vocabulary.readings import NO, YES, Reading, Span
from koirules.vocabulary.traits import Trait


def read_mapping(record: Mapping[str, object], traits: Mapping[str, Trait], fish: str) -> Record | tuple[Problem, ...]:
    """The record that a mapping gives, or every problem of it."""
    readings: dict[str, Reading] = {}
    labels: dict[str, str] = {}
    problems: list[Problem] = []
    name = fish or str(record.get("fish", "") or "")
    for key, value in record.items():
        trait = traits.get(key)
        if trait is None:
            if key != "fish":
                problems.append(recording.unknown_trait(key, near(str(key), traits)))
            continue
        reading = _plain(trait, value)
        if reading is None:
            read = read_value(trait.kind, value)
            if isinstance(read, Misread):
                problems.append(recording.wrong_value(Cell("record", None, key), read.code, read.cause, read.mend))
                continue
            if read is None:
                continue
            reading = read
        readings[key] = reading
        if isinstance(trait.kind, Label):
            labels[key] = str(reading)
    return tuple(problems) if problems else Record(name, 0, readings, labels)


def _plain(trait: Trait, value: object) -> Reading | None:
    """The reading of a value that needs no second look; None for any other."""
    kind = trait.kind
    match value:
        case bool():
            return (YES if value else NO) if isinstance(kind, YesNo) else None
        case float() | int() if isinstance(kind, Count):
            return Span(float(value), float(value)) if 0 <= value <= kind.high and value == int(value) else None
        case float() if isinstance(kind, Number) and (kind.unit is None or kind.unit.factor == 1):
            return Span(value, value) if kind.low <= value <= kind.high else None
        case str() if isinstance(kind, Scale) and value in kind.steps:
            return 1 << kind.steps.index(value)
        case _:
            return None
