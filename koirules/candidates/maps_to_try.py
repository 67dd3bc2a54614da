"""Maps of patches that are tried where a map, or what it grows to, makes a difference."""

from __future__ import annotations

from koirules.standard.parts import Rules
from koirules.vocabulary.maps import DECIMALS, Patch, PatchMap, Point, Ring, boxed
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


def map_between(one: PatchMap, other: PatchMap) -> PatchMap | None:
    """The map half way between two whose patches have as many corners and no windows; None where there is none."""
    pairs = list(zip(one.patches, other.patches, strict=False))
    if len(one.patches) != len(other.patches) or any(_shape(a) != _shape(b) or a.windows for a, b in pairs):
        return None
    made = PatchMap(Patch(_half_way(a.outline, b.outline), (), a.sashi, a.thin) for a, b in pairs)
    return None if made in {one, other} else made


def _shape(patch: Patch) -> tuple[int, int, float, bool]:
    return len(patch.outline), len(patch.windows), patch.sashi, patch.thin


def _half_way(one: Ring, other: Ring) -> list[Point]:
    return [
        (round((u + a) / 2, DECIMALS), round((v + b) / 2, DECIMALS)) for (u, v), (a, b) in zip(one, other, strict=True)
    ]


def maps_of_samples(rules: Rules, name: str) -> list[Reading]:
    """The maps that the samples of a standard have for a trait."""
    given = (sample.record.get(name) for sample in rules.samples)
    return [reading for reading in given if isinstance(reading, PatchMap)]
