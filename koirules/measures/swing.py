"""How far a long patch swings from one side of the back to the other, and back again."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from koirules.vocabulary.maps import LENGTH, LINE

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

_SLICES = 100
"""The middle of a patch is looked at in so many places along the body (a bound of computing)."""


def swings(shapes: Any) -> NDArray[np.float64]:
    """The swing of each shape, in % of the width of the back.

    The middle of a patch is half way between its left and its right edge. Its swing is how far the middle goes to one side
    and comes back at the least: a patch that only drifts to one side swings by 0.
    """
    import numpy as np

    low, high = _edges(shapes)
    middle = (low + high) / 2
    there = ~np.isnan(middle)
    found = np.zeros(len(shapes))
    for number in range(len(shapes)):
        line = middle[number, there[number]]
        if len(line):
            found[number] = max(_there_and_back(line), _there_and_back(-line))
    return 100 * found / (2 * LINE)


def _there_and_back(line: NDArray[np.float64]) -> float:
    import numpy as np

    before = line - np.minimum.accumulate(line)
    behind = line - np.minimum.accumulate(line[::-1])[::-1]
    return float(np.minimum(before, behind).max())


def _edges(shapes: Any) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """The left and the right edge of each shape in the middle of each slice; NaN where it is not."""
    import numpy as np
    import shapely

    places = (np.arange(_SLICES) + 0.5) * LENGTH / _SLICES
    low = np.full((len(shapes), _SLICES), np.inf)
    high = np.full((len(shapes), _SLICES), -np.inf)
    polygons, owner = shapely.get_parts(shapes, return_index=True)
    rings, polygon = shapely.get_rings(polygons, return_index=True)
    points, ring = shapely.get_coordinates(rings, return_index=True)
    same = ring[1:] == ring[:-1]
    start, end, of = points[:-1][same], points[1:][same], owner[polygon[ring[1:][same]]]
    turned = start[:, 0] > end[:, 0]
    start[turned], end[turned] = end[turned], start[turned].copy()
    first, last = np.searchsorted(places, start[:, 0]), np.searchsorted(places, end[:, 0])
    count = last - first
    edge = np.repeat(np.arange(len(count)), count)
    slice_ = np.arange(count.sum()) - np.repeat(np.cumsum(count) - count, count) + first[edge]
    (u0, v0), (u1, v1) = start[edge].T, end[edge].T
    crossing = np.clip(v0 + (v1 - v0) * (places[slice_] - u0) / (u1 - u0), -LINE, LINE)
    np.minimum.at(low, (of[edge], slice_), crossing)
    np.maximum.at(high, (of[edge], slice_), crossing)
    return np.where(np.isinf(low), np.nan, low), np.where(np.isinf(high), np.nan, high)
