"""The maps of a fish as they will be at the lengths that a standard asks its pattern for: to be looked at, not measured."""

from __future__ import annotations

from collections.abc import Mapping

from koirules.measures.growing_maps import map_ahead
from koirules.measures.grown_traits import model_of
from koirules.measures.growth import across, girth_gain
from koirules.standard.growth_settings import grown_in, length_grown_to
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Grown
from koirules.values import frozen
from koirules.vocabulary.kinds import Patches
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import Reading, Span


@frozen
class MapsAhead:
    """What a fish will look like. length: in cm. stouter: by how much girth over length changes. maps: by their traits."""

    length: float
    stouter: float
    maps: Mapping[str, PatchMap]


def maps_ahead(rules: Rules, settings: Mapping[str, Setting], readings: Mapping[str, Reading]) -> tuple[MapsAhead, ...]:
    """The maps of a fish at every length that its pattern is asked for, the shortest first.

    None where the rules ask for no grown pattern, where the length is not one value, or where the fish is that long already.
    """
    length = readings.get(rules.subject.grows_by)
    maps = {name: reading for name, reading in readings.items() if isinstance(reading, PatchMap)}
    if not maps or not isinstance(length, Span) or length.low != length.high:
        return ()
    asked = [node.source for node in grown_in(rules).values() if isinstance(node.source, Grown)]
    patterned = [one for one in asked if any(isinstance(read.trait.kind, Patches) for read in one.inputs)]
    model = model_of(settings)
    return tuple(
        MapsAhead(
            target,
            girth_gain(model, length.low, target),
            {name: map_ahead(one, across(model, length.low, target)) for name, one in maps.items()},
        )
        for target in sorted({length_grown_to(one, settings) for one in patterned})
        if length.low < target
    )
