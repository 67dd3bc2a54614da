"""A pattern map: where a colour lies on the body, patch by patch, in coordinates that are the same for every fish.

`u` runs along the body from 0 (tip of the nose) to 100 (end of the tail stem, fins left out). `v` runs across it along the
skin: 0 is the line of the back, -100 the lateral line on the fish's own left, +100 that on its right, -200 and +200 the
middle of the belly.
"""

from __future__ import annotations

from collections.abc import Iterable
from decimal import Decimal

from attrs import field

from koirules.values import frozen

LENGTH = 100.0
"""Where the body ends along `u`."""
LINE = 100.0
"""How far from the back the lateral lines lie, along `v`."""
BELLY = 200.0
"""How far from the back the middle of the belly lies, along `v`."""
DECIMALS = 3
"""Maps are held to a thousandth: on a fish of a metre that is a hundredth of a millimetre."""

Point = tuple[float, float]
Ring = tuple[Point, ...]
"""The corners of an outline as (u, v), the first one not said again."""


def _rings(rings: Iterable[Iterable[Point]]) -> tuple[Ring, ...]:
    return tuple(sorted(_ring(ring, turns=-1) for ring in rings))


def _outline(ring: Iterable[Point]) -> Ring:
    return _ring(ring, turns=1)


def _ring(ring: Iterable[Point], turns: int) -> Ring:
    """A ring in its canonical form: begun at its first corner along the body, outlines and windows turning opposite ways."""
    points = [(float(u) + 0.0, float(v) + 0.0) for u, v in ring]
    points = [point for i, point in enumerate(points) if point != points[i - 1]] or points[:1]
    if doubled_area(points) * turns < 0:
        points.reverse()
    start = points.index(min(points)) if points else 0
    return (*points[start:], *points[:start])


def doubled_area(ring: Iterable[Point]) -> float:
    """Twice the area inside a ring in (u, v), below 0 where it turns the other way (the shoelace formula)."""
    points = list(ring)
    return sum(points[i - 1][0] * v - u * points[i - 1][1] for i, (u, v) in enumerate(points))


@frozen
class Patch:
    """One patch of a colour.

    outline: its corners. windows: the outlines of the holes in it. sashi: how far behind its front edge the colour still
    lies under white scales, in % of the length. thin: whether the colour is thin, and may go.
    """

    outline: Ring = field(converter=_outline)
    windows: tuple[Ring, ...] = field(default=(), converter=_rings)
    sashi: float = 0.0
    thin: bool = False

    @property
    def box(self) -> tuple[float, float, float, float] | None:
        """Front, rear, left and right of a patch that was given by these alone; None for one whose outline was drawn."""
        us, vs = sorted({u for u, _ in self.outline}), sorted({v for _, v in self.outline})
        if self.windows or len(self.outline) != 4 or len(us) != 2 or len(vs) != 2:
            return None
        return us[0], us[1], vs[0], vs[1]


def boxed(front: float, rear: float, left: float, right: float, sashi: float = 0.0, *, thin: bool = False) -> Patch:
    """A patch from `front` to `rear` along the body, and from `left` to `right` across it (left is below 0)."""
    return Patch(((front, left), (rear, left), (rear, right), (front, right)), (), sashi, thin)


def _in_order(patches: Iterable[Patch]) -> tuple[Patch, ...]:
    return tuple(sorted(patches, key=lambda patch: (patch.outline, patch.windows, patch.sashi, patch.thin)))


@frozen
class PatchMap:
    """The patches of one colour on one fish, from the nose backwards; none where the fish has none of it."""

    patches: tuple[Patch, ...] = field(default=(), converter=_in_order)

    def __str__(self) -> str:
        return write_map(self)


def write_map(pattern: PatchMap) -> str:
    """A map in its canonical form: one text for one map, and the map again where that is read."""
    return "; ".join(_written(patch) for patch in pattern.patches) or "none"


def _written(patch: Patch) -> str:
    if patch.box is None:
        rings = ", ".join(_ring_written(ring) for ring in (patch.outline, *patch.windows))
        words = [f"POLYGON ({rings})"]
    else:
        front, rear, left, right = patch.box
        words = [f"{decimal(front)} to {decimal(rear)}", *_sides(left, right)]
    if patch.sashi:
        words.append(f"sashi {decimal(patch.sashi)}")
    if patch.thin:
        words.append("thin")
    return " ".join(words)


def _sides(left: float, right: float) -> Iterable[str]:
    if left < 0 < right:
        yield f"left {decimal(-left)} right {decimal(right)}"
        return
    side = "right" if left >= 0 else "left"
    near, far = sorted((abs(left), abs(right)))
    yield f"{side} {decimal(near)} to {decimal(far)}" if near else f"{side} {decimal(far)}"


def _ring_written(ring: Ring) -> str:
    return f"({', '.join(f'{decimal(u)} {decimal(v)}' for u, v in (*ring, ring[0]))})"


def decimal(value: float) -> str:
    """A coordinate in its shortest form, to a thousandth."""
    text = format(round(Decimal(repr(value)), DECIMALS), "f").rstrip("0").rstrip(".")
    return "0" if text in {"-0", ""} else text
