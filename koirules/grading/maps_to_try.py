"""Maps of patches that are tried where a map, or what it grows to, makes a difference."""

from __future__ import annotations

from koirules.standard.parts import Rules
from koirules.vocabulary.maps import PatchMap, boxed
from koirules.vocabulary.readings import Reading

_STEPS = (((5, 92),), ((6, 42), (58, 92)), ((5, 22), (33, 55), (68, 92)), ((5, 18), (28, 42), (52, 66), (76, 92)))
_ACROSS = (15, 20, 25, 30, 36, 43, 52, 62, 75, 90, 110, 140)
MAPS = (
    *(PatchMap([boxed(*reach, -wide, wide) for reach in steps]) for steps in _STEPS for wide in _ACROSS),
    PatchMap((boxed(3, 98, -200, 200),)),
    PatchMap((boxed(8, 26, -60, 55), boxed(40, 70, -120, 20, 2), boxed(80, 96, -30, 30, thin=True))),
    PatchMap((boxed(30, 60, 10, 90),)),
)
"""One to four steps, narrow to wide, all red, odd ones."""


def maps_of_samples(rules: Rules, name: str) -> list[Reading]:
    """The maps that the samples of a standard have for a trait."""
    given = (sample.record.get(name) for sample in rules.samples)
    return [reading for reading in given if isinstance(reading, PatchMap)]
