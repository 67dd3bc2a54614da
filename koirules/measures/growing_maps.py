"""What a pattern map will be when the fish is grown.

Patches keep their place along the body and are drawn together across it (measures/growth.py). Sashi clears: the front edge
of a patch moves back by it. A thin patch may stay or go, so that a map with thin patches becomes several.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import compress, product

from attrs import evolve

from koirules.measures.shapes import shapes_of
from koirules.vocabulary.maps import BELLY, DECIMALS, Patch, PatchMap, Point, boxed, doubled_area

MOST_THIN = 6
"""With more thin patches than this nothing is said: there would be more than 64 maps (a bound of computing)."""


def grown_maps(pattern: PatchMap, across: float) -> tuple[PatchMap, ...]:
    """The maps that a map can become, each thin patch being there or gone; none where it has too many thin patches.

    across: what a distance across the body, as a share of the girth, is multiplied by.
    """
    cleared = [
        (patch.thin, tuple(_drawn_together(one, across) for one in _cleared(patch))) for patch in pattern.patches
    ]
    thin = [patches for is_thin, patches in cleared if is_thin]
    if len(thin) > MOST_THIN:
        return ()
    sure = [one for is_thin, patches in cleared if not is_thin for one in patches if one is not None]
    return tuple(
        PatchMap([*sure, *(one for patches in compress(thin, there) for one in patches if one is not None)])
        for there in product((True, False), repeat=len(thin))
    )


def map_ahead(pattern: PatchMap, across: float) -> PatchMap:
    """The map that a map becomes, for a drawing: what is thin stays marked as thin, since nobody knows whether it stays.

    across: what a distance across the body, as a share of the girth, is multiplied by.
    """
    return PatchMap(
        evolve(grown, thin=patch.thin)
        for patch in pattern.patches
        for one in _cleared(patch)
        if (grown := _drawn_together(one, across)) is not None
    )


def area_without_sashi(pattern: PatchMap) -> float | None:
    """The area of the patches in body coordinates, u times v, their sashi left out; None where one is thin, or none is there."""
    import shapely

    if not pattern.patches or any(patch.thin for patch in pattern.patches):
        return None
    shapes = shapes_of(grown_maps(pattern, 1.0))
    return None if shapes.wrong else float(shapely.area(shapes.whole[0]))


def _cleared(patch: Patch) -> Iterator[Patch]:
    """What is left of a patch without its sashi: the points behind which, over the length of the sashi, it goes on."""
    if not patch.sashi:
        yield patch
    elif patch.box is not None:
        front, rear, left, right = patch.box
        if front + patch.sashi < rear:
            yield boxed(front + patch.sashi, rear, left, right, thin=patch.thin)
    else:
        yield from _cleared_shape(patch)


def _cleared_shape(patch: Patch) -> Iterator[Patch]:
    import shapely
    from shapely.affinity import translate

    whole = shapely.Polygon(patch.outline, patch.windows)
    left = shapely.intersection(whole, translate(whole, xoff=patch.sashi), grid_size=10**-DECIMALS)
    for part in shapely.get_parts(left):
        if part.geom_type == "Polygon" and part.area > 0:
            rings = (part.exterior, *part.interiors)
            outline, *windows = (tuple((float(u), float(v)) for u, v in ring.coords[:-1]) for ring in rings)
            yield Patch(outline, tuple(windows), thin=patch.thin)


def _drawn_together(patch: Patch, across: float) -> Patch | None:
    """A patch with the distances across the body multiplied; None where nothing is left of it."""
    if across == 1.0:
        return Patch(patch.outline, patch.windows)

    def moved(points: tuple[Point, ...]) -> tuple[Point, ...]:
        return tuple((u, round(min(max(v * across, -BELLY), BELLY), DECIMALS) + 0.0) for u, v in points)

    outline = moved(patch.outline)
    return Patch(outline, tuple(map(moved, patch.windows))) if doubled_area(outline) else None
