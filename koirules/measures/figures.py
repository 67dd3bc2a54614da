"""What is measured on the pattern as a whole, whole columns at once: each figure once, when it is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from koirules.measures.shapes import Shapes, box
from koirules.measures.skin import Skin
from koirules.measures.swing import swings
from koirules.values import define
from koirules.vocabulary.maps import BELLY, LENGTH, LINE

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

_TOUCHING = 0.0015
"""Patches that are no farther from each other than this along the body touch: maps are held to a thousandth (a bound of
computing)."""


@define(eq=False, slots=False)
class Figures:
    """The figures of a column of maps.

    shapes, skin: of each map, by its number. constants: landmarks and limits, in %.
    """

    shapes: Shapes
    skin: Skin
    constants: Mapping[str, float]

    @cached_property
    def fish(self) -> NDArray[np.intp]:
        """The numbers of the maps."""
        import numpy as np

        return np.arange(len(self.shapes.whole))

    @cached_property
    def back(self) -> Any:
        """What of each map is seen from above: between the lateral lines."""
        import numpy as np
        import shapely

        back = self.shapes.whole.copy()
        beyond = np.maximum(-self._bounds(1, 0.0), self._bounds(3, 0.0)) > LINE
        back[beyond] = shapely.intersection(back[beyond], box(0, LENGTH, -LINE, LINE))
        return back

    @cached_property
    def area(self) -> Floats:
        """The area of each map on the back, as the skin has it."""
        return self._area()

    @cached_property
    def cover(self) -> Floats:
        """How much of the back is covered, in %."""
        cover: Floats = 100 * self.area / self.skin.back(self.fish)
        return cover

    @cached_property
    def front_share(self) -> Floats:
        """How much of the colour on the back lies in front of the middle of the body, in %; NaN where there is none."""
        return self._share(self._area(rear=LENGTH / 2))

    @cached_property
    def left_share(self) -> Floats:
        """How much of the colour on the back lies left of the line of the back, in %; NaN where there is none."""
        return self._share(self._area(right=0.0))

    @cached_property
    def start(self) -> Floats:
        """From the nose to the front of the first colour, in % of the length; all of it where there is none."""
        return self._bounds(0, LENGTH)

    @cached_property
    def rear_gap(self) -> Floats:
        """From the end of the last colour to the end of the tail stem, in % of the length."""
        rear: Floats = LENGTH - self._bounds(2, 0.0)
        return rear

    @cached_property
    def parts(self) -> tuple[Any, NDArray[np.intp], Floats]:
        """The patches on the back that are parted from each other: shapes, map, share of the back in %."""
        import numpy as np
        import shapely

        parts, owner = shapely.get_parts(self.back, return_index=True)
        flat = (shapely.get_dimensions(parts) == 2) & ~shapely.is_empty(parts)
        parts, owner = parts[flat], owner[flat]
        shares = 100 * self.skin.areas(parts, owner) / self.skin.back(owner)
        order = np.lexsort((shapely.bounds(parts)[:, 0], owner))
        return parts[order], owner[order], shares[order]

    @cached_property
    def steps(self) -> tuple[tuple[tuple[float, float], ...], ...]:
        """The steps of each map, from where to where along the body: patches with no white right across between them."""
        import shapely

        parts, owner, shares = self.parts
        found: list[list[tuple[float, float]]] = [[] for _ in self.fish]
        for part, number, share in zip(shapely.bounds(parts), owner, shares, strict=True):
            if share < self.constants["splash"]:
                continue
            steps, front, rear = found[number], float(part[0]), float(part[2])
            if steps and front <= steps[-1][1] + _TOUCHING:
                steps[-1] = steps[-1][0], max(rear, steps[-1][1])
            else:
                steps.append((front, rear))
        return tuple(map(tuple, found))

    @cached_property
    def smallest(self) -> Floats:
        """The smallest patch that is no splash, in % of the back; NaN where there is none."""
        import numpy as np

        _, owner, shares = self.parts
        large = shares >= self.constants["splash"]
        least = np.full(len(self.fish), np.inf)
        np.minimum.at(least, owner[large], shares[large])
        return np.where(np.isinf(least), np.nan, least)

    @cached_property
    def longest_gap(self) -> Floats:
        """The longest white between two steps, in % of the length; 0 where there are not two."""
        import numpy as np

        gaps = [[behind[0] - before[1] for before, behind in pairwise(s)] for s in self.steps]
        return np.array([max(gap, default=0.0) for gap in gaps])

    @cached_property
    def zigzag(self) -> Floats:
        """How far a single step swings to one side and back, in % of the width of the back; 0 where there are more."""
        import numpy as np

        found = np.zeros(len(self.fish))
        single = np.array([len(steps) == 1 for steps in self.steps], dtype=bool)
        if single.any():
            found[single] = swings(self.back[single])
        return found

    @cached_property
    def below(self) -> Floats:
        """Along how much of the length the colour reaches below the lateral line, on the worse side, in %."""
        import numpy as np

        sides = [
            self._along(box(0, LENGTH, -BELLY, -LINE), reaches=-self._bounds(1, 0.0)),
            self._along(box(0, LENGTH, LINE, BELLY), reaches=self._bounds(3, 0.0)),
        ]
        return np.maximum(*sides)

    @cached_property
    def wraps(self) -> NDArray[np.bool_]:
        """Where the colour runs down the flank and under the belly."""
        import numpy as np

        reach: NDArray[np.bool_] = (
            np.maximum(-self._bounds(1, 0.0), self._bounds(3, 0.0)) >= self.constants["flank_end"]
        )
        return reach

    @cached_property
    def head_mark(self) -> NDArray[np.bool_]:
        """Where the first step lies on the head alone."""
        import numpy as np

        edge = self.constants["gill_edge"]
        return np.array([bool(steps) and steps[0][1] <= edge for steps in self.steps], dtype=bool)

    def _area(self, right: float = LINE, rear: float = LENGTH) -> Floats:
        """The area of each map on the back, to the left of a side and in front of a place along the body."""
        import numpy as np
        import shapely

        parts, owner = shapely.get_parts(self.shapes.whole, return_index=True)
        areas = np.zeros(len(self.fish))
        np.add.at(areas, owner, self.skin.areas(parts, owner, right=right, rear=rear))
        return areas

    def _share(self, inside: Floats) -> Floats:
        import numpy as np

        there = self.area > 0
        return np.where(there, 100 * inside / np.where(there, self.area, 1.0), np.nan)

    def _bounds(self, side: int, empty: float) -> Floats:
        import numpy as np
        import shapely

        bounds = shapely.bounds(self.shapes.whole)[:, side]
        return np.where(np.isnan(bounds), empty, bounds)

    def _along(self, side: Any, reaches: Floats) -> Floats:
        """Along how much of the body the maps reach into a side; reaches: how far from the back they come there."""
        import numpy as np
        import shapely

        found = np.zeros(len(self.fish))
        beyond = (reaches > LINE).nonzero()[0]
        parts, owner = shapely.get_parts(shapely.intersection(self.shapes.whole[beyond], side), return_index=True)
        bounds = shapely.bounds(parts)
        done = np.zeros(len(beyond))
        for at in np.lexsort((bounds[:, 0], owner)) if len(parts) else ():
            number, front, rear = owner[at], max(bounds[at, 0], done[owner[at]]), bounds[at, 2]
            found[beyond[number]] += max(rear - front, 0.0)
            done[number] = max(done[number], rear)
        return found
