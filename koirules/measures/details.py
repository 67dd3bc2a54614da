"""What is measured on the head, at the fins and of small things, whole columns at once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property
from math import pi
from typing import TYPE_CHECKING, Any

from koirules.values import define
from koirules.vocabulary.maps import BELLY, LENGTH

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from koirules.measures.figures import Figures

    Floats = NDArray[np.float64]
    Truths = NDArray[np.bool_]

_EYE_LONG, _EYE_WIDE = 1.5, 8.0
"""How far an eye reaches to each side of its middle, in % along and across the body (from memory)."""
_LIPS_WIDE = 60.0
"""How far the lips reach to each side, in % of the way to the lateral line (from memory)."""
_DORSAL_WIDE = 4.0
"""How far the base of the dorsal fin reaches to each side, in % of the way to the lateral line (from memory)."""
_DENSE = 0.5
"""Edges have a corner at least so often, in % along the body, and the tail begins so far from its end (a bound of computing)."""

FRONTS = ("behind_eyes", "eye_line", "nostrils", "nose", "lips")
"""How far forward the colour of a head can run."""


@define(eq=False, slots=False)
class Details:
    """The details of a column of maps. girths: the greatest girth of each fish for the length of its body."""

    figures: Figures
    girths: Floats

    @property
    def constants(self) -> Mapping[str, float]:
        """Landmarks and limits, in %."""
        return self.figures.constants

    @cached_property
    def roundness(self) -> Floats:
        """`4 pi A / P^2` of the largest patch of a head mark, flat on paper; NaN where its edge was not drawn."""
        import numpy as np
        import shapely

        figures = self.figures
        parts, owner, shares = figures.parts
        found = np.full(len(figures.fish), np.nan)
        drawn = figures.head_mark & figures.shapes.traced
        on_head = drawn[owner] & (shapely.bounds(parts)[:, 2] <= self.constants["gill_edge"])
        if not on_head.any():
            return found
        marks, numbers = shapely.segmentize(parts[on_head], _DENSE), owner[on_head]
        points, part = shapely.get_coordinates(marks, return_index=True)
        fish = numbers[part]
        points[:, 1] *= self.girths[fish] * figures.skin.width(points[:, 0], fish) / 4
        flat = shapely.set_coordinates(marks, points)
        round_ = 4 * pi * shapely.area(flat) / shapely.length(flat) ** 2
        for at in np.argsort(shares[on_head], kind="stable"):
            found[numbers[at]] = round_[at]
        return found

    @cached_property
    def windows(self) -> tuple[Floats, Floats]:
        """How many holes the patches have: on the whole fish, and on the head."""
        import numpy as np
        import shapely

        fish = len(self.figures.fish)
        polygons, owner = shapely.get_parts(self.figures.shapes.whole, return_index=True)
        rings, polygon = shapely.get_rings(polygons, return_index=True)
        holes = np.zeros(len(rings), dtype=bool)
        holes[1:] = polygon[1:] == polygon[:-1]
        numbers = owner[polygon[holes]]
        middle = shapely.get_x(shapely.centroid(shapely.polygons(rings[holes])))
        on_head = numbers[middle < self.constants["gill_edge"]]
        whole, head = (np.bincount(of, minlength=fish).astype(float) for of in (numbers, on_head))
        return whole, head

    @cached_property
    def splashes(self) -> Floats:
        """How many patches on the back are too small for a step, marks on the lips aside."""
        import numpy as np

        parts, owner, shares = self.figures.parts
        small = (shares < self.constants["splash"]) & ~self._on_lips(parts)
        return np.bincount(owner[small], minlength=len(self.figures.fish)).astype(float)

    @cached_property
    def lips(self) -> Truths:
        """Where there is colour on the lips that is parted from the rest of the head."""
        import numpy as np

        parts, owner = self._parts
        found = np.zeros(len(self.figures.fish), dtype=bool)
        found[owner[self._on_lips(parts)]] = True
        return found

    @cached_property
    def fronts(self) -> Sequence[str | None]:
        """Where the colour of the head begins, marks on the lips aside; None where the head has none."""
        import numpy as np
        import shapely

        parts, owner = self._parts
        begins = shapely.bounds(parts)[:, 0]
        on_head = (begins < self.constants["gill_edge"]) & ~self._on_lips(parts)
        first = np.full(len(self.figures.fish), np.inf)
        np.minimum.at(first, owner[on_head], begins[on_head])
        eyes = self.constants["eyes"]
        ends = sorted((self.constants["lips"], self.constants["nose"], eyes - _EYE_LONG, eyes + _EYE_LONG))
        words = FRONTS[::-1]
        return [None if np.isinf(u) else words[int(np.searchsorted(ends, u, side="left"))] for u in first]

    @cached_property
    def eyes(self) -> Mapping[str, Truths]:
        """Where there is colour over each eye."""
        front, rear = self.constants["eyes"] - _EYE_LONG, self.constants["eyes"] + _EYE_LONG
        near, far = self.constants["eyes_aside"] - _EYE_WIDE, self.constants["eyes_aside"] + _EYE_WIDE
        return {
            "left_eye": self._touched(front, rear, -far, -near),
            "right_eye": self._touched(front, rear, near, far),
        }

    @cached_property
    def fins(self) -> Mapping[str, Truths]:
        """Where there is colour at the root of each fin (places from memory)."""
        edge = self.constants["gill_edge"]
        dorsal = self.constants["dorsal_front"], self.constants["dorsal_rear"]
        return {
            "left_pectoral": self._touched(edge + 1, edge + 5, -140, -110),
            "right_pectoral": self._touched(edge + 1, edge + 5, 110, 140),
            "dorsal": self._touched(*dorsal, -_DORSAL_WIDE, _DORSAL_WIDE),
            "pelvic": self._touched(50, 54, -190, -170) | self._touched(50, 54, 170, 190),
            "anal": self._touched(76, 84, -BELLY, -190) | self._touched(76, 84, 190, BELLY),
            "tail": self._touched(LENGTH - _DENSE, LENGTH, -BELLY, BELLY),
        }

    @cached_property
    def _parts(self) -> tuple[Any, Any]:
        import shapely

        parts, owner = shapely.get_parts(self.figures.shapes.whole, return_index=True)
        return parts, owner

    def _on_lips(self, parts: Any) -> Truths:
        import shapely

        from koirules.measures.shapes import box

        lips = box(0, self.constants["lips"], -_LIPS_WIDE, _LIPS_WIDE)
        ends = shapely.bounds(parts)[:, 2] if len(parts) else shapely.get_x(parts)
        on_lips: Truths = shapely.intersects(parts, lips) & (ends < self.constants["eyes"] - _EYE_LONG)
        return on_lips

    def _touched(self, front: float, rear: float, left: float, right: float) -> Truths:
        import shapely

        from koirules.measures.shapes import box

        touched: Truths = shapely.intersects(self.figures.shapes.whole, box(front, rear, left, right))
        return touched
