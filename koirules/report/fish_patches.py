"""The patches of a fish as curves on its body: what was given by its ends alone gets an edge such as skin has.

Nobody wrote down how the edge of such a patch runs. It is drawn round, meets the front and the rear that were recorded, and
keeps the area; its waves follow from its numbers alone, so that the same fish looks the same everywhere. A traced edge is drawn
as it was traced.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import pairwise
from math import cos, pi, sin

from koirules.report.fish_body import Form, Point, curve, n, sampled, turned
from koirules.vocabulary.maps import LINE, Patch, Ring

_POWERS = (3.1, 3.8, 5.0, 8.0)
"""How square the edge is, tried in turn until the area is kept: 2 is an ellipse, more is squarer."""

_WAVES = (2, 3, 5, 7)
_DEPTH = 0.1
_WIDER, _WIDEST = 1.09, 1.6
"""By how much an edge is drawn wider to keep the area; the second for what lies on the tip of the nose, where a body begins."""
_TIP = 1.3
_SMALL = 4000.0
"""Patches below this area, in square units, are drawn with a decimal."""
_NEAR = 0.08
"""By how much of itself the area that is drawn may differ from the one that was mapped."""


def patch_path(form: Form, patch: Patch) -> str:
    """The path of a patch, windows and all."""
    if patch.box is not None:
        edge = _in_units(form, boxed_edge(form, patch.box))
        return curve(edge, digits=1 if visible_area(form, edge) < _SMALL else 0)
    return "".join(_traced(form, ring) for ring in (patch.outline, *patch.windows))


@lru_cache(maxsize=4096)
def boxed_edge(form: Form, box: tuple[float, float, float, float]) -> tuple[Point, ...]:
    """Points (u, v) of the edge of a patch that was given by its ends."""
    _, _, left, right = box
    mapped = _mapped_area(form, box)
    best: tuple[float, tuple[Point, ...]] | None = None
    tries = [(depth, power, _WIDER) for depth in (_DEPTH, _DEPTH / 2, 0.0) for power in _POWERS]
    for depth, power, widest in (*tries, (0.0, _POWERS[-1], _WIDEST)):
        edge = _edge(box, power, depth)
        drawn = _drawn_area(form, edge)
        if drawn > 0:
            by = min(max(mapped / drawn, 1 / widest), widest)
            middle = (left + right) / 2
            edge = tuple((u, middle + (v - middle) * by) for u, v in edge)
            drawn = _drawn_area(form, edge)
        away = abs(drawn - mapped) / mapped if mapped else 0.0
        if best is None or away < best[0]:
            best = away, edge
        if away <= _NEAR:
            break
    return best[1] if best else ()


def _edge(box: tuple[float, float, float, float], power: float, depth: float) -> tuple[Point, ...]:
    front, rear, left, right = box
    long = rear - front
    count = 24 if long > 30 or front < _TIP else 10 if long < 7 else 16
    seed = front * 12.9898 + rear * 78.233 + left * 3.7719 + right * 45.164
    phases = [(seed * (1 + wave / 7)) % (2 * pi) for wave in _WAVES]
    ring = []
    for number in range(count):
        angle = 2 * pi * (number + 0.5) / count
        c, s = cos(angle), sin(angle)
        reach = (abs(c) ** power + abs(s) ** power) ** (-1 / power)
        wavy = 1 + depth * sum(sin(w * angle + p) / w for w, p in zip(_WAVES, phases, strict=True))
        ring.append((-c * reach * wavy, s * reach * wavy))
    # Stretched so that the curve, not only its points, meets all four ends.
    seen = sampled(ring)
    (u0, u1), (v0, v1) = ((min(one[k] for one in seen), max(one[k] for one in seen)) for k in (0, 1))
    return tuple((front + long * (u - u0) / (u1 - u0), left + (right - left) * (v - v0) / (v1 - v0)) for u, v in ring)


def _mapped_area(form: Form, box: tuple[float, float, float, float]) -> float:
    """What is seen of a patch that reaches exactly from end to end, in square units: the integral of its width."""
    front, rear, left, right = box
    across = turned(min(max(right, -LINE), LINE)) - turned(max(min(left, LINE), -LINE))
    pieces = max(8, int(4 * (rear - front)))
    long = (rear - front) / pieces
    return 10 * long * across * sum(form.width(front + (i + 0.5) * long) for i in range(pieces))


def _drawn_area(form: Form, edge: Sequence[Point]) -> float:
    return visible_area(form, sampled(_in_units(form, edge), per_piece=8))


def visible_area(form: Form, ring: Iterable[Point]) -> float:
    """The area inside a ring of the drawing, in square units; what lies outside the body is not seen."""
    points = []
    for x, y in ring:
        widest = form.width(y / 10)
        points.append((max(-widest, min(widest, x)), y))
    return abs(sum(points[i - 1][0] * y - x * points[i - 1][1] for i, (x, y) in enumerate(points))) / 2


def _in_units(form: Form, edge: Iterable[Point]) -> list[Point]:
    """Places of the skin on the drawing; on the tip of the nose, where a body begins with no width, a little beside it."""
    return [(form.width(max(u, _TIP)) * turned(v), 10 * u) for u, v in edge]


def _traced(form: Form, ring: Ring) -> str:
    """Straight from corner to corner on the skin, with places between, so that it bends with the body."""
    at = [(round(form.x(u, v)), round(10 * u)) for u, v in _followed(ring)]
    at = [point for i, point in enumerate(at) if i == 0 or point != at[i - 1]]
    moved = "".join(f"{_signed(p - x)}{_signed(q - y)}" for (x, y), (p, q) in pairwise(at))
    return f"M{at[0][0]} {at[0][1]}l{moved.lstrip()}z"


def _signed(value: float) -> str:
    return n(value) if value < 0 else f" {n(value)}"


def _followed(ring: Ring) -> list[Point]:
    """The corners of a ring with places between, near enough that it bends with the body."""
    found = []
    for i, (u, v) in enumerate(ring):
        before = ring[i - 1]
        steps = 1 + int(max(abs(u - before[0]) / 3, abs(v - before[1]) / 12))
        for step in range(1, steps + 1):
            found.append((before[0] + (u - before[0]) * step / steps, before[1] + (v - before[1]) * step / steps))
    return found
