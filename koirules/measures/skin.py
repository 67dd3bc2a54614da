"""Areas on the skin of a fish, from shapes in body coordinates: `dA = G(u)/400 * L/100 * du dv`.

Shares need the girth `G` only up to a factor, so a profile is the girth along the body for a greatest girth of 1. Between
knots it is straight. By Green's theorem the area inside a ring is the integral of `A(u) dv` around it, where `A` is the
integral of the profile from the nose; along a straight edge that is its rise in v times the mean of `A`, exactly. To count
only a part of the skin, `A` and `v` are held at its edges, and no shape need be cut.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from koirules.values import frozen
from koirules.vocabulary.maps import LENGTH, LINE

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]
    Indices = NDArray[np.intp]

_SHORT = 1e-3
"""Along an edge that is shorter than this in u, the mean of `A` is that of its ends (a bound of computing)."""


@frozen(eq=False)
class Skin:
    """The skin of several fish.

    along: knots from 0 to 100. girth: profiles, one a row, at the knots. once, twice: the integral of each profile, and the
    integral of that. profile: the row of each fish.
    """

    along: Floats
    girth: Floats
    once: Floats
    twice: Floats
    profile: Indices

    @classmethod
    def of(cls, along: Floats, girth: Floats, profile: Indices) -> Skin:
        """The skin of fish with such profiles."""
        import numpy as np

        step = np.diff(along)
        rise = np.diff(girth, axis=1)
        start = np.zeros((len(girth), 1))
        once = np.concatenate([start, np.cumsum(step * (girth[:, :-1] + rise / 2), axis=1)], axis=1)
        parts = once[:, :-1] * step + girth[:, :-1] * step**2 / 2 + rise * step**2 / 6
        return cls(along, girth, once, np.concatenate([start, np.cumsum(parts, axis=1)], axis=1), profile)

    def back(self, fish: Indices) -> Floats:
        """The area between the lateral lines of each fish."""
        whole: Floats = 2 * LINE * self.once[self.profile[fish], -1]
        return whole

    def width(self, u: Floats, fish: Indices) -> Floats:
        """The girth at u, for the greatest of 1."""
        profile = self.profile[fish]
        knot, behind, slope = self._at(u, profile)
        girth: Floats = self.girth[profile, knot] + slope * behind
        return girth

    def areas(
        self,
        polygons: NDArray[np.object_],
        fish: Indices,
        left: float = -LINE,
        right: float = LINE,
        rear: float = LENGTH,
    ) -> Floats:
        """The area of each polygon on the skin of its fish, holes left out; an array of Shapely polygons.

        Only what lies between left and right, and in front of rear, is counted: the back, where nothing else is said.
        """
        import numpy as np
        import shapely

        rings, polygon = shapely.get_rings(polygons, return_index=True)
        points, ring = shapely.get_coordinates(rings, return_index=True)
        areas = np.zeros(len(polygons))
        if not len(points):
            return areas
        u, v = np.ascontiguousarray(points.T)
        profile = self.profile[fish[polygon[ring]]]
        once, twice = self._integrals(u, rear, profile)
        edge = (ring[1:] == ring[:-1]).nonzero()[0]
        mean = _mean(np.diff(u)[edge], once[edge] + once[edge + 1], np.diff(twice)[edge])
        held = np.clip(v, left, right)
        rise = np.diff(held)[edge]
        cut = ((rise != np.diff(v)[edge]) & (rise != 0)).nonzero()[0]
        if len(cut):
            at = edge[cut]
            mean[cut] = self._mean_inside((u[at], v[at]), (u[at + 1], v[at + 1]), (left, right, rear), profile[at])
        inside = np.abs(np.bincount(ring[edge], rise * mean, len(rings)))
        outer = np.ones(len(rings), dtype=bool)
        outer[1:] = polygon[1:] != polygon[:-1]
        np.add.at(areas, polygon, np.where(outer, inside, -inside))
        return areas

    def _mean_inside(
        self,
        start: tuple[Floats, Floats],
        end: tuple[Floats, Floats],
        within: tuple[float, float, float],
        profile: Indices,
    ) -> Floats:
        """The mean of `A` along the part of each edge that lies between the sides."""
        import numpy as np

        (u0, v0), (u1, v1) = start, end
        left, right, rear = within
        first, last = (u0 + (np.clip(v, left, right) - v0) / (v1 - v0) * (u1 - u0) for v in (v0, v1))
        (once, twice), (also, again) = (self._integrals(u, rear, profile) for u in (first, last))
        return _mean(last - first, once + also, again - twice)

    def _at(self, u: Floats, profile: Indices) -> tuple[Indices, Floats, Floats]:
        import numpy as np

        knot = np.clip(np.searchsorted(self.along, u, side="right") - 1, 0, len(self.along) - 2)
        slopes = np.diff(self.girth, axis=1) / np.diff(self.along)
        return knot, u - self.along[knot], slopes[profile, knot]

    def _integrals(self, u: Floats, rear: float, profile: Indices) -> tuple[Floats, Floats]:
        """`A`, which rises no more behind `rear`, and its own integral."""
        import numpy as np

        before = np.minimum(u, rear)
        knot, behind, slope = self._at(before, profile)
        girth, once, twice = (table[profile, knot] for table in (self.girth, self.once, self.twice))
        first = once + behind * (girth + slope * behind / 2)
        second = twice + behind * (once + behind * (girth / 2 + slope * behind / 6))
        return first, second + first * (u - before)


def _mean(long: Floats, ends: Floats, area: Floats) -> Floats:
    """The mean of `A` along edges: how long they are, the sum of both its ends, and its integral along them."""
    import numpy as np

    short = np.abs(long) < _SHORT
    mean: Floats = np.where(short, ends / 2, area / np.where(short, 1.0, long))
    return mean
