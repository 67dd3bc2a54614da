"""A drawing of one fish from above with its patches, as SVG: plain, to be looked at beside its grade."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from math import pi, sin
from xml.sax.saxutils import escape

from attrs import frozen

from koirules.measures.landmarks import LANDMARKS
from koirules.vocabulary.maps import LINE, Patch, PatchMap, Point, Ring, decimal
from koirules.vocabulary.outlines import TORPEDO, Outline

PAINTS: Mapping[str, str] = {"hi": "#cf4a2c", "sumi": "#33353d"}
"""How each colour of a pattern is painted; any other is painted slate."""

_AT = {one.name: float(one.value) for one in LANDMARKS}
_SVG = "http://www.w3.org/2000/svg"
_SLATE = "#6f8296"
_SKIN, _EDGE, _FIN, _PALE = "#fffdf7", "#5b636b", "#edf0ee", 0.4
_LENGTH = 300.0
_BEFORE, _BEHIND, _BESIDE = 10.0, 62.0, 44.0
"""Room around the body for fins and tail."""
_ROUNDED = 4.0
"""How far the corners of a patch are cut that was given by its ends alone; its true edge is nowhere written down."""


def fish_drawing(
    outline: Outline = TORPEDO,
    patches: Mapping[str, PatchMap] | None = None,
    *,
    title: str,
    describe: str = "",
    key: str = "fish",
    upright: bool = False,
    at: tuple[float, float, float, float] | None = None,
) -> str:
    """One `<svg>` element: the body from above, fins, and the patches of each colour, the later over the earlier.

    patches: maps by the word of their colour (`hi`, `sumi`). title: what it shows, such as the name of the fish; any text.
    describe: read out after the title; by default where the patches lie, in words. key: begins the ids inside, and must
    differ between drawings on one page. upright: nose up, the fish's own left to the left; else nose to the left.
    at: left, top, width and height in a picture around it; else it has a viewBox and no size. It loads nothing, and runs
    no script. Thin patches are pale with a broken edge; the front of a patch that lies under white scales (sashi) is pale.
    """
    maps = patches or {}
    sheet = _Sheet(outline, upright)
    sizes = "" if at is None else ' x="{}" y="{}" width="{}" height="{}"'.format(*map(_short, at))
    key = re.sub(r"[^A-Za-z0-9_-]", "-", key)
    told = describe or described(maps)
    painted = [
        line
        for i, (colour, pattern) in enumerate(maps.items())
        for line in _painted(sheet, pattern, PAINTS.get(colour, _SLATE), f"{key}-{i}")
    ]
    return "\n".join(
        (
            f'<svg xmlns="{_SVG}" viewBox="{sheet.view}"{sizes} role="img" aria-labelledby="{key}-title {key}-desc">',
            f'<title id="{key}-title">{_safe(title)}</title>',
            f'<desc id="{key}-desc">{_safe(told)}</desc>',
            f'<clipPath id="{key}-body"><path d="{sheet.body}"/></clipPath>',
            f'<g fill="{_FIN}" stroke="{_EDGE}" stroke-width="1" stroke-linejoin="round">',
            *(f'<path d="{fin}"/>' for fin in sheet.fins),
            "</g>",
            f'<path d="{sheet.body}" fill="{_SKIN}"/>',
            f'<g clip-path="url(#{key}-body)">',
            *painted,
            "</g>",
            f'<path d="{sheet.body}" fill="none" stroke="{_EDGE}" stroke-width="1.5" stroke-linejoin="round"/>',
            f'<path d="{sheet.dorsal}" fill="none" stroke="{_EDGE}" stroke-width="2" stroke-linecap="round"/>',
            f'<g fill="{_EDGE}">',
            *(f'<circle cx="{_short(x)}" cy="{_short(y)}" r="2.6"/>' for x, y in sheet.eyes),
            "</g>",
            "</svg>",
        )
    )


def drawing_size(outline: Outline = TORPEDO) -> tuple[float, float]:
    """How wide and how tall a drawing is with the nose to the left, in its own units."""
    _, _, wide, tall = map(float, _Sheet(outline, upright=False).view.split())
    return wide, tall


def described(maps: Mapping[str, PatchMap]) -> str:
    """Where the patches of each colour lie, in words, for those who do not see the drawing."""
    told = ["A koi seen from above."]
    for colour, pattern in maps.items():
        if not pattern.patches:
            told.append(f"No {colour}.")
            continue
        reach = ", ".join(
            f"{decimal(min(us))} to {decimal(max(us))} %{' (thin)' if patch.thin else ''}"
            for patch in pattern.patches
            if (us := [u for u, _ in patch.outline])
        )
        count = len(pattern.patches)
        told.append(f"{colour}: {count} patch{'es' if count > 1 else ''}, along the body from nose to tail at {reach}.")
    return " ".join(told)


@frozen
class _Sheet:
    """Where things of the body lie on the drawing."""

    outline: Outline
    upright: bool

    @property
    def view(self) -> str:
        long = _BEFORE + _LENGTH + _BEHIND
        wide = self._half + 2 * _BESIDE + self._half
        return f"0 0 {_short(wide)} {_short(long)}" if self.upright else f"0 0 {_short(long)} {_short(wide)}"

    @property
    def _half(self) -> float:
        return _LENGTH * self.outline.stoutness / 2

    def at(self, u: float, across: float) -> Point:
        """A place on the drawing: u along the body, and across it in units of the drawing (below 0 is the fish's left)."""
        along, middle = _BEFORE + u / 100 * _LENGTH, _BESIDE + self._half
        # Nose to the left, the fish's own left lies below: the fish is seen from above.
        return (middle + across, along) if self.upright else (along, middle - across)

    def on_skin(self, u: float, v: float) -> Point:
        """Where a place of the skin is seen from above: round the body, the lateral line is its edge."""
        turned = min(max(v / LINE, -1.0), 1.0) * pi / 2
        return self.at(u, self._half * self.outline.width(u) * sin(turned))

    @property
    def body(self) -> str:
        sides = [(u, self._half * width) for u, width in self.outline.knots]
        return _path([self.at(u, -half) for u, half in sides] + [self.at(u, half) for u, half in reversed(sides)])

    @property
    def eyes(self) -> tuple[Point, Point]:
        u, v = _AT["eyes"], _AT["eyes_aside"]
        return self.on_skin(u, -v), self.on_skin(u, v)

    @property
    def dorsal(self) -> str:
        return _path([self.at(_AT["dorsal_front"], 0), self.at(_AT["dorsal_rear"], 0)], closed=False)

    @property
    def fins(self) -> tuple[str, ...]:
        """Pectoral and pelvic fins of both sides, and the tail."""
        found = []
        for side in (-1, 1):
            for front, rear, reach, back in ((25.0, 31.0, 36.0, 11.0), (52.0, 56.0, 18.0, 8.0)):
                inner = [self._half * self.outline.width(u) * 0.93 * side for u in (front, rear)]
                tip = inner[0] + reach * side
                found.append(self._curved((front, inner[0]), (front + back, tip), (rear, inner[1]), side))
        stem = self._half * self.outline.width(100)
        tail = [(100, -stem), (110, -stem - 9), (120, -stem - 21), (112.5, 0), (120, stem + 21), (110, stem + 9)]
        found.append(_path([self.at(u, across) for u, across in [*tail, (100.0, stem)]]))
        return tuple(found)

    def _curved(self, front: Point, tip: Point, rear: Point, side: int) -> str:
        """A fin: rounded from its front to its tip and back to its rear."""
        lead = (front[0] + 1.5, front[1] + 0.75 * (tip[1] - front[1]))
        trail = (tip[0] + 2.5, tip[1] - 9 * side)
        corners = [self.at(*place) for place in (front, lead, tip, trail, rear)]
        a, b, c, d, e = (f"{_short(x)} {_short(y)}" for x, y in corners)
        return f"M{a}Q{b} {c}Q{d} {e}Z"


def _painted(sheet: _Sheet, pattern: PatchMap, paint: str, key: str) -> Iterable[str]:
    for number, patch in enumerate(pattern.patches):
        whole = _outlines(sheet, patch, 0)
        fill = f'fill="{paint}" fill-rule="evenodd"'
        if patch.thin:
            edge = f'stroke="{paint}" stroke-width="1.2" stroke-dasharray="4 3"'
            yield f'<path d="{whole}" {fill} fill-opacity="{_PALE}" {edge}/>'
        elif patch.sashi:
            clip = f"{key}-{number}"
            yield f'<clipPath id="{clip}"><path d="{whole}" clip-rule="evenodd"/></clipPath>'
            yield f'<path d="{whole}" {fill} fill-opacity="{_PALE}"/>'
            yield f'<path d="{_outlines(sheet, patch, patch.sashi)}" {fill} clip-path="url(#{clip})"/>'
        else:
            yield f'<path d="{whole}" {fill}/>'


def _outlines(sheet: _Sheet, patch: Patch, back: float) -> str:
    """The path of a patch, moved back along the body."""
    rings = (_rounded(patch) if patch.box else patch.outline, *patch.windows)
    return "".join(_path([sheet.on_skin(u + back, v) for u, v in _followed(ring)]) for ring in rings)


def _rounded(patch: Patch) -> Ring:
    """The outline of a patch that was given by its ends, without its corners."""
    corners = patch.outline
    found: list[Point] = []
    for i, corner in enumerate(corners):
        one, other = (_toward(corner, beside) for beside in (corners[i - 1], corners[(i + 1) % len(corners)]))
        for step in range(5):
            # A curve of Bézier from side to side, with the corner as what it bends to.
            a, b, c = (1 - step / 4) ** 2, step / 2 * (1 - step / 4), (step / 4) ** 2
            found.append((a * one[0] + b * corner[0] + c * other[0], a * one[1] + b * corner[1] + c * other[1]))
    return tuple(found)


def _toward(corner: Point, other: Point) -> Point:
    """Where the side from a corner to another begins to be straight."""
    (u, v), long = corner, abs(other[0] - corner[0]) + abs(other[1] - corner[1])
    part = min(_ROUNDED * (1 if other[1] == v else 4), long / 3) / long
    return u + part * (other[0] - u), v + part * (other[1] - v)


def _followed(ring: Ring) -> Iterable[Point]:
    """The corners of a ring with places between, near enough that it bends with the body."""
    for i, (u, v) in enumerate(ring):
        before = ring[i - 1]
        steps = 1 + int(max(abs(u - before[0]) / 3, abs(v - before[1]) / 12))
        for step in range(1, steps + 1):
            yield before[0] + (u - before[0]) * step / steps, before[1] + (v - before[1]) * step / steps


def _path(points: Iterable[Point], *, closed: bool = True) -> str:
    return "M" + "L".join(f"{_short(x)} {_short(y)}" for x, y in points) + ("Z" if closed else "")


def _short(value: float) -> str:
    text = f"{value:.1f}".removesuffix(".0")
    return "0" if text == "-0" else text


def _safe(text: str) -> str:
    """Any text as text of XML: what XML cannot hold is left out."""
    return escape("".join(letter for letter in text if letter.isprintable() or letter == " "))
