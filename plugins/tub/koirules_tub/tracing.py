"""From taps on a picture to a pattern map.

Four taps set the fish: the nose, the end of the tail stem, and the left and right edge where it is broadest. They give the
projective map between the plane of the fish and the picture (Hartley and Zisserman 2004, Multiple View Geometry, 4.1: four
points, no three on a line, determine it), which straightens a picture taken at a slant. A koi is round: what lies at `v` is
seen at sine(0.9 degrees x v) of the half width (the lateral line at the edge), so the arc sine of a place gives its `v`.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from attrs import frozen
from shapely import get_parts, make_valid, set_precision
from shapely.geometry import Polygon, box
from shapely.geometry.base import BaseGeometry
from shapely.ops import unary_union

from koirules.vocabulary.outlines import TORPEDO, Outline

Point = tuple[float, float]

BROADEST = 36.0
"""Where the body is broadest, in % of its length (the outline of the vocabulary)."""

MOST_POINTS = 2000
_STEEP = 0.92
"""Up to this share of the half width the arc sine is taken. From here to the edge it grows so fast that a slip of three pixels is
worth fifteen of `v`: a straight line is taken instead, the one that erred least on the rendered scenes of the tests."""

_LEAST = 1.0
"""A patch of less than this, in % of the length by % of the way to the lateral line, is a slip."""

_FINE = 0.25
"""Corners nearer than this to a straight line, in % of the length, are left out."""


class TracingError(ValueError):
    """Taps that set no fish; the message says why, for a person."""


@frozen
class Frame:
    """Where the fish lies in a picture: pixels of the nose, the end of the tail stem, and both edges where it is broadest."""

    nose: Point
    tail: Point
    left: Point
    right: Point

    def plane(self) -> np.ndarray:
        """The matrix from pixels to the plane of the fish: u in % of the length, across in half widths of the broadest place."""
        body = ((0.0, 0.0), (100.0, 0.0), (BROADEST, -1.0), (BROADEST, 1.0))
        rows = []
        for (x, y), (u, w) in zip((self.nose, self.tail, self.left, self.right), body, strict=True):
            rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y])
            rows.append([0, 0, 0, x, y, 1, -w * x, -w * y])
        try:
            solved = np.linalg.solve(np.array(rows, dtype=float), np.array([value for pair in body for value in pair]))
        except np.linalg.LinAlgError:
            raise TracingError("The four points lie on a line. Set the nose, the tail and both edges again.") from None
        return np.append(solved, 1.0).reshape(3, 3)


def map_of(frame: Frame, patches: Sequence[Sequence[Point]], outline: Outline = TORPEDO) -> str:
    """The pattern map of traced patches, as records write it; `none` where nothing is left of them.

    patches: rings of pixels. Raises TracingError where the taps set no fish.
    """
    plane = frame.plane()
    shapes = [
        shape for ring in patches if len(ring) >= 3 for shape in [_shape(plane, ring[:MOST_POINTS], outline)] if shape
    ]
    if not shapes:
        return "none"
    whole = set_precision(unary_union(shapes).intersection(box(0, -100, 100, 100)).simplify(_FINE), 0.01)
    parts = [part for part in get_parts(whole) if isinstance(part, Polygon) and part.area > _LEAST]
    return f"MULTIPOLYGON ({', '.join(map(_words, parts))})" if parts else "none"


def _shape(plane: np.ndarray, ring: Sequence[Point], outline: Outline) -> BaseGeometry | None:
    pixels = np.column_stack([np.array(ring, dtype=float), np.ones(len(ring))]) @ plane.T
    with np.errstate(divide="ignore", invalid="ignore"):
        u, across = pixels[:, 0] / pixels[:, 2], pixels[:, 1] / pixels[:, 2]
    if not np.isfinite(u).all() or not np.isfinite(across).all():
        raise TracingError("The picture is taken from too far aside. Take it from above.")
    u = np.clip(u, 0, 100)
    widest = max(width for _, width in outline.knots)
    half = np.array([max(outline.width(one), 1e-3) for one in u]) / widest
    v = _on_skin(np.clip(across / half, -1, 1))
    made = make_valid(Polygon(np.column_stack([u, v])), method="structure", keep_collapsed=False)
    return None if made.is_empty else made


def _on_skin(seen: np.ndarray) -> np.ndarray:
    """Where on the skin a place lies that is seen at a share of the half width: `v`, -100 to 100."""
    far = np.abs(seen)
    steep = np.degrees(np.arcsin(_STEEP)) / 0.9
    v = np.where(far < _STEEP, np.degrees(np.arcsin(far)) / 0.9, steep + (far - _STEEP) / (1 - _STEEP) * (100 - steep))
    return np.asarray(np.sign(seen) * v)


def _words(shape: Polygon) -> str:
    rings = [shape.exterior, *shape.interiors]
    return "(" + ", ".join("(" + ", ".join(f"{u:.2f} {v:.2f}" for u, v in ring.coords) + ")" for ring in rings) + ")"
