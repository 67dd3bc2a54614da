"""Maps of patches, measured, for tests."""

from __future__ import annotations

from typing import Any

from koirules.measures.deriving import Derived, Measurer
from koirules.plugins import registry_with
from koirules.standard.measured import constant_settings, measures_of
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import Reading, Span, show_reading

KOHAKU = registry_with().varieties["kohaku"]
ALL = measures_of(KOHAKU)
MEASURER = Measurer(
    ALL,
    KOHAKU.traits,
    constant_settings(KOHAKU.constants, {}),
    frozenset(name for measure in ALL for name in measure.outputs),
)


def map_of(text: str) -> PatchMap:
    read = read_map(text)
    assert isinstance(read, PatchMap), read
    return read


def measured(*maps: str | PatchMap, **more: float) -> Derived:
    """What is measured on maps of red, on fish that are all alike in the other traits."""
    patches = [map_of(one) if isinstance(one, str) else one for one in maps]
    columns: dict[str, list[Reading | None]] = {name: [Span(value, value)] * len(maps) for name, value in more.items()}
    derived = MEASURER.derive({"hi_patches": patches, **columns}, len(maps))
    assert not derived.failed
    return derived


def shown(pattern: str | PatchMap, **more: float) -> dict[str, str]:
    """What is measured on one map, in words."""
    columns = measured(pattern, **more).columns
    traits = KOHAKU.traits
    return {name: show_reading(traits[name].kind, one) for name, (one,) in columns.items() if one is not None}


def number(pattern: str | PatchMap, trait: str, **more: float) -> float:
    """A number that is measured on a map."""
    reading: Any = measured(pattern, **more).columns[trait][0]
    assert reading.low == reading.high
    return float(reading.low)
