"""The outline of a body from above: how wide it is all along its length, for its greatest width."""

from __future__ import annotations

from bisect import bisect_right
from itertools import pairwise

from attrs import field

from koirules.values import frozen

Knots = tuple[tuple[float, float], ...]


def _checked(knots: Knots) -> Knots:
    rising = all(one[0] < other[0] for one, other in pairwise(knots))
    if len(knots) < 2 or not rising or knots[0][0] != 0 or knots[-1][0] != 100 or any(width < 0 for _, width in knots):
        raise ValueError("an outline goes from 0 to 100, each knot behind the one before, no width below 0")
    return tuple((float(u), float(width)) for u, width in knots)


@frozen
class Outline:
    """Widths along a body: knots of (u, width), u rising from 0 (nose) to 100 (end of the stem), straight lines between.

    Widths are for a greatest width of 1; the girth is taken to follow them. stoutness: the greatest width for the length of
    the body, which a drawing needs and a share does not.
    """

    knots: Knots = field(converter=_checked)
    stoutness: float = 0.24

    def width(self, u: float) -> float:
        """The width at u, held at the ends of the body."""
        u = min(max(u, 0.0), 100.0)
        i = min(max(bisect_right(self.knots, (u, float("inf"))) - 1, 0), len(self.knots) - 2)
        (u0, w0), (u1, w1) = self.knots[i], self.knots[i + 1]
        return w0 + (w1 - w0) * (u - u0) / (u1 - u0)


TORPEDO = Outline(
    (
        (0, 0.1),
        (1, 0.24),
        (2.5, 0.36),
        (5, 0.5),
        (8, 0.63),
        (12, 0.75),
        (16, 0.84),
        (20, 0.9),
        (25, 0.95),
        (30, 0.985),
        (36, 1),
        (42, 0.99),
        (48, 0.965),
        (54, 0.92),
        (60, 0.86),
        (66, 0.78),
        (72, 0.68),
        (78, 0.57),
        (84, 0.46),
        (90, 0.38),
        (95, 0.34),
        (100, 0.32),
    )
)
"""A koi of good outline from above, widest between the gills and the dorsal fin; from memory, no source."""
