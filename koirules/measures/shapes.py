"""Pattern maps as shapes of Shapely, whole columns at once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, Any

from koirules.values import frozen
from koirules.vocabulary.map_misreads import outline_crossed
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.misreads import Misread

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Geometries = NDArray[np.object_]

GRID = 0.001
"""Shapes are put on a grid of a thousandth, to which maps are held, so that patches which touch are one (a bound of
computing)."""


@frozen(eq=False)
class Shapes:
    """The maps of a column. whole: for each, all its patches as one shape. traced: where every edge was drawn.

    wrong: by their number, the maps of which a patch is none; these are taken as empty.
    """

    whole: Geometries
    traced: NDArray[np.bool_]
    wrong: Mapping[int, Misread]


def shapes_of(maps: Sequence[PatchMap]) -> Shapes:
    """The shapes of maps."""
    import numpy as np
    import shapely

    polygons, owner = _polygons(maps)
    wrong = dict(_crossed(polygons, owner))
    sound = ~np.isin(owner, list(wrong))
    kept = polygons[sound]
    whole = np.full(len(maps), shapely.MultiPolygon(), dtype=object)
    if len(kept):
        # Owners ascend. np.unique would say the same, but imports the masked arrays of NumPy, which takes longer than a batch.
        is_first = np.diff(owner[sound], prepend=-1) > 0
        there, at = owner[sound][is_first], np.cumsum(is_first) - 1
        several = shapely.multipolygons(kept, indices=at)
        near = np.flatnonzero(np.bincount(at[_near(kept, at)]))
        several[near] = shapely.union_all(several[near, None], axis=1, grid_size=GRID)
        whole[there] = several
    traced = np.array([all(patch.box is None for patch in pattern.patches) for pattern in maps], dtype=bool)
    return Shapes(whole, traced, wrong)


def _polygons(maps: Sequence[PatchMap]) -> tuple[Geometries, NDArray[np.intp]]:
    """A polygon for each patch, and the number of its map."""
    import numpy as np
    import shapely

    points: list[tuple[float, float]] = []
    ring_of_point: list[int] = []
    patch_of_ring: list[int] = []
    owner: list[int] = []
    for number, pattern in enumerate(maps):
        for patch in pattern.patches:
            for ring in (patch.outline, *patch.windows):
                points += (*ring, ring[0])
                ring_of_point += [len(patch_of_ring)] * (len(ring) + 1)
                patch_of_ring.append(len(owner))
            owner.append(number)
    if not owner:
        return np.empty(0, dtype=object), np.empty(0, dtype=np.intp)
    rings = shapely.linearrings(points, indices=ring_of_point)
    return shapely.polygons(rings, indices=patch_of_ring), np.array(owner, dtype=np.intp)


def _near(polygons: Geometries, owner: NDArray[np.intp]) -> NDArray[np.bool_]:
    """Which polygons may touch one before them: those that do not lie behind all others of their map."""
    import numpy as np
    import shapely

    bounds = shapely.bounds(polygons)
    order = np.lexsort((bounds[:, 0], owner))
    near = np.zeros(len(polygons), dtype=bool)
    number, rear = -1, 0.0
    for at in order:
        near[at] = owner[at] == number and bounds[at, 0] <= rear + GRID
        rear = max(rear, bounds[at, 2]) if owner[at] == number else bounds[at, 2]
        number = owner[at]
    return near


def _crossed(polygons: Geometries, owner: NDArray[np.intp]) -> Iterator[tuple[int, Misread]]:
    """The maps with a polygon that is none, each with its first one."""
    import shapely

    told: set[int] = set()
    for at in (~shapely.is_valid(polygons)).nonzero()[0]:
        number = int(owner[at])
        if number not in told:
            told.add(number)
            first = int((owner == number).nonzero()[0][0])
            yield number, outline_crossed(int(at) - first + 1, _why(shapely.is_valid_reason(polygons[at])))


def _why(reason: str) -> str:
    """What Shapely finds wrong, in our own words: `Self-intersection[10 5]`."""
    kind, _, place = reason.partition("[")
    where = f" at {place.rstrip(']')}" if place else ""
    words = {
        "Self-intersection": "its edge crosses itself",
        "Ring Self-intersection": "its edge touches itself",
        "Hole lies outside shell": "a window lies outside it",
        "Holes are nested": "a window lies inside another",
        "Interior is disconnected": "its windows cut it in two",
    }
    return words.get(kind, "its edge does not enclose one area") + where


def box(front: float, rear: float, left: float, right: float) -> Any:
    """A shape from front to rear along the body and left to right across it."""
    import shapely

    return shapely.box(front, left, rear, right)
