"""A ranchu from above, nose to the left, as far as it was recorded.

What was not recorded is not invented: the body is an ordinary one with a broken outline where it was not measured, a tail of
which nobody said the kind is a broken line, and a colour that nobody said is left out. Proportions are from memory.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import cos, radians, sin

from koirules.hooks import Drawing, Recorded, Sketch
from koirules.vocabulary.drawings import Value

_WIDE, _TALL = 640.0, 400.0
_NOSE, _ROOT, _MIDDLE = 60.0, 400.0, _TALL / 2
"""Where the body begins, where the tail is rooted, and the height of the middle line."""
_BODY_OF_LENGTH = 0.62
"""The body without the tail, of the length."""
_ORDINARY, _LEAST, _MOST = 0.56, 0.35, 0.85
"""Breadth of the body over its length: where it was not measured, and between which it is drawn."""

_RED, _WHITE, _DARK, _LINE = "#cf4a2c", "#fffdf8", "#5a5f56", "#3b4a52"
_PAINTS = {"red": _RED, "red_and_white": _WHITE, "white": _WHITE, "dark": _DARK}
_GROWTHS = {"slight": 0.5, "fair": 0.75, "full": 1.0}
_SPREADS = {"closed": 14.0, "half_open": 30.0, "open": 48.0}
_HEMS = {"three_lobes": 190, "cherry": 90, "pinched": 20}
"""How far the middle of the hem is drawn from the root of the tail, as the control point of a curve."""
_BROKEN = ' stroke-dasharray="9 8"'
_BACKS = {
    "broken": "M150 200h80v9h60v-9h90",
    "uneven": "M150 200q20 7 40 0t40 0t40 0t40 0t40 0",
    "smooth": "M150 200h230",
}


def draw(recorded: Recorded) -> Sketch:
    """The sketch of a ranchu."""
    values = recorded.values
    parts = [*_defined(values), *_fins(values), *_body(values), *_head(values), *_back(values)]
    return Sketch("".join(parts), _WIDE, _TALL, ". ".join(_told(values)) + ".")


DRAWING = Drawing("ranchu from above", draw)
"""The drawing that the subject of the variety names."""


def _breadth(values: Mapping[str, Value]) -> float | None:
    """Breadth of the body over its length, None where one of the two was not recorded."""
    length, breadth = values.get("length"), values.get("breadth")
    if not isinstance(length, int | float) or not isinstance(breadth, int | float):
        return None
    return min(max(breadth / (length * _BODY_OF_LENGTH), _LEAST), _MOST)


def _outline(share: float) -> str:
    half = (_ROOT - _NOSE) * share / 2
    return (
        f"M{_NOSE:g} {_MIDDLE:g}C{_NOSE:g} {_MIDDLE - half * 0.9:.1f} 130 {_MIDDLE - half:.1f} 230 {_MIDDLE - half:.1f}"
        f"S370 {_MIDDLE - 34:g} {_ROOT:g} {_MIDDLE - 22:g}V{_MIDDLE + 22:g}"
        f"S330 {_MIDDLE + half:.1f} 230 {_MIDDLE + half:.1f}S{_NOSE:g} {_MIDDLE + half * 0.9:.1f} {_NOSE:g} {_MIDDLE:g}z"
    )


def _defined(values: Mapping[str, Value]) -> Iterator[str]:
    yield f'<defs><path id="body" d="{_outline(_breadth(values) or _ORDINARY)}"/>'
    yield '<clipPath id="inside"><use href="#body"/></clipPath></defs>'


def _red_on(values: Mapping[str, Value]) -> tuple[str, ...]:
    where = values.get("red_on")
    return where if isinstance(where, tuple) and values.get("colour") == "red_and_white" else ()


def _paint(values: Mapping[str, Value], part: str) -> str:
    """The colour of a part; none where the colour was not recorded."""
    return _RED if part in _red_on(values) else _PAINTS.get(str(values.get("colour")), "none")


def _fins(values: Mapping[str, Value]) -> Iterator[str]:
    for side, part in ((1, "left_pectoral"), (-1, "right_pectoral")):
        # Nose to the left, seen from above: the fish's own left is below.
        y = _MIDDLE + side * 80
        broken = "" if "colour" in values else _BROKEN
        yield (
            f'<path d="M170 {y:g}q30 {side * 60:g} 62 {side * 46:g}q-8 {-side * 30:g} -30 {-side * 46:g}z" '
            f'fill="{_paint(values, part)}" fill-opacity=".7" stroke="{_LINE}" stroke-width="2"{broken}/>'
        )
    yield from _tail(values)


def _tail(values: Mapping[str, Value]) -> Iterator[str]:
    kind = values.get("tail_kind")
    broken = _BROKEN if kind is None else ""
    angle = _SPREADS.get(str(values.get("tail_spread")), 30.0)
    shown = f'fill="{_paint(values, "tail")}" fill-opacity=".7" stroke="{_LINE}" stroke-width="2.5"{broken}'
    if kind == "single":
        yield f'<path d="M{_ROOT:g} {_MIDDLE - 14:g}L590 {_MIDDLE - 6:g}V{_MIDDLE + 6:g}L{_ROOT:g} {_MIDDLE + 14:g}z" {shown}/>'
        return
    outer, inner, hem = (
        [_at(side * turn, far) for side in (1, -1)]
        for turn, far in ((angle + 16, 185), (angle - 6, 185), (angle + 5, 202))
    )
    if kind in _HEMS:
        ways = [
            f"Q{_p(hem[0])} {_p(inner[0])}Q{_ROOT + _HEMS[str(kind)]:g} {_MIDDLE:g} {_p(inner[1])}Q{_p(hem[1])} {_p(outer[1])}"
        ]
    else:
        folds = [_at(side * max(angle - 16, 2), 120) for side in (1, -1)]
        ways = [f"Q{_p(hem[side])} {_p(inner[side])}L{_p(folds[side])}" for side in (0, 1)]
    for side, way in enumerate(ways):
        yield f'<path d="M{_ROOT:g} {_MIDDLE:g}L{_p(outer[side])}{way}z" {shown}/>'


def _p(point: tuple[float, float]) -> str:
    return f"{point[0]:.1f} {point[1]:.1f}"


def _at(angle: float, far: float) -> tuple[float, float]:
    """A point of the tail: so many degrees from the middle line, so far from its root."""
    return _ROOT + far * cos(radians(angle)), _MIDDLE + far * sin(radians(angle))


def _body(values: Mapping[str, Value]) -> Iterator[str]:
    broken = "" if _breadth(values) is not None else _BROKEN
    yield f'<use href="#body" fill="{_PAINTS.get(str(values.get("colour")), "none")}"/>'
    patches = {"head": (_NOSE - 20, 110), "front_back": (170, 100), "rear_back": (280, 130)}
    red = [patches[part] for part in patches if part in _red_on(values)]
    if red:
        yield '<g clip-path="url(#inside)">'
        for left, wide in red:
            yield f'<rect x="{left:g}" y="0" width="{wide}" height="{_TALL:g}" rx="30" fill="{_RED}"/>'
        yield "</g>"
    yield f'<use href="#body" fill="none" stroke="{_LINE}" stroke-width="3"{broken}/>'


def _head(values: Mapping[str, Value]) -> Iterator[str]:
    size = _GROWTHS.get(str(values.get("head_growth")), 0.0)
    if size:
        paint = _RED if "head" in _red_on(values) else _paint(values, "head")
        for x, y in ((92, -34), (92, 34), (82, 0), (118, -46), (118, 46), (112, -14), (112, 16)):
            yield (
                f'<circle cx="{x}" cy="{_MIDDLE + y:g}" r="{20 * size:g}" fill="{paint}" stroke="{_LINE}" '
                'stroke-opacity=".45" stroke-width="2"/>'
            )
    for side in (1, -1):
        yield f'<circle cx="128" cy="{_MIDDLE + side * 74:g}" r="9" fill="#14181b"/>'


def _back(values: Mapping[str, Value]) -> Iterator[str]:
    path = _BACKS.get(str(values.get("back")))
    if path is not None:
        yield f'<path d="{path}" fill="none" stroke="{_LINE}" stroke-opacity=".5" stroke-width="2"/>'
    remnants = values.get("fin_remnants")
    for place in range(remnants if isinstance(remnants, int) else 0):
        yield f'<path d="M{190 + 20 * place} 194l6 -12 6 12z" fill="{_LINE}"/>'


def _told(values: Mapping[str, Value]) -> Iterator[str]:
    yield "A ranchu seen from above"
    said = {
        "colour": "colour",
        "head_growth": "growth on the head",
        "tail_kind": "tail",
        "tail_spread": "spread of the tail",
        "back": "line of the back",
    }
    for trait, title in said.items():
        value = values.get(trait)
        yield f"{title} {str(value).replace('_', ' ')}" if value is not None else f"{title} not recorded"
    if _red_on(values):
        yield "red on " + ", ".join(part.replace("_", " ") for part in _red_on(values))
    if values.get("fin_remnants"):
        yield f"remnants of a fin on the back: {values['fin_remnants']}"
    if _breadth(values) is None:
        yield "its breadth was not recorded: the outline is an ordinary one"
