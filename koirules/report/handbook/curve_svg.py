"""Draws a curve: its line in black, a ring at each knot, the value along the foot and the points above the ring."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from koirules.languages import Tongue
from koirules.report.handbook.blocks import Drawing, Knot, Line, Piece
from koirules.report.page_markup import Markup, element
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest

_LEFT, _RIGHT, _TOP, _SIDE = 34, 14, 36, 16
_WIDTH, _HEIGHT = 400, 110
_ROW, _LETTER, _MOST_ROWS = 16, 8, 4
"""Sizes in units of the picture."""

_BEYOND = 0.06
"""How far the flat ends are drawn, in widths of the curve."""


@frozen
class _At:
    """A knot on the picture. row: of its label at the foot, None where there is no room for one."""

    knot: Knot
    x: float
    y: float
    row: int | None


def curve_svg(drawing: Drawing) -> Markup:
    """The picture of a curve."""
    knots = drawing.knots
    first, last = float(knots[0].at), float(knots[-1].at)
    pad = (last - first) * _BEYOND
    begin, end = max(min(float(drawing.low), first), first - pad), min(max(float(drawing.high), last), last + pad)
    most = max(float(knot.gives) for knot in knots) or 1.0

    def across(value: float) -> float:
        return _LEFT + _SIDE + (value - begin) / (end - begin) * (_WIDTH - _LEFT - _RIGHT - 2 * _SIDE)

    placed = tuple(_placed(drawing, across, most))
    foot = _TOP + _HEIGHT
    rows = max(at.row or 0 for at in placed) + 1
    high = foot + 6 + rows * _ROW + 20
    line = [(across(begin), placed[0].y), *((at.x, at.y) for at in placed), (across(end), placed[-1].y)]
    title = f"{drawing.anchor}-title"
    axis = (element("tspan", piece.text, lang=piece.language or None) for piece in _axis(drawing))
    return element(
        "svg",
        element("title", drawing.about, id=title),
        *_frame(foot, most, drawing.tongue),
        *(part for at in placed for part in _guides(at, foot, drawing.tongue)),
        element("polyline", class_="line", points=" ".join(f"{_short(x)},{_short(y)}" for x, y in line)),
        *(element("circle", class_="knot", cx=_short(at.x), cy=_short(at.y), r=4) for at in placed),
        *_values(placed, drawing.tongue),
        element("text", *axis, class_="middle axis-title", x=_short((_LEFT + _WIDTH - _RIGHT) / 2), y=high - 5),
        viewBox=f"0 0 {_WIDTH} {high}",
        role="img",
        aria_labelledby=title,
        class_="curve",
    )


def _placed(drawing: Drawing, across: Callable[[float], float], most: float) -> Iterator[_At]:
    """Where each knot is; a label at the foot that has no room beside those before goes a row down, as far as there are any."""
    ends = [float("-inf")] * _MOST_ROWS
    for knot in drawing.knots:
        x = across(float(knot.at))
        half = len(shortest(knot.at)) * _LETTER / 2 + 3
        row = next((i for i, end in enumerate(ends) if x - half > end), None)
        if row is not None:
            ends[row] = x + half
        yield _At(knot, x, _TOP + _HEIGHT * (1 - float(knot.gives) / most), row)


def _axis(drawing: Drawing) -> Line:
    """What is along the axis; the unit alone where all of it has no room there."""
    wide = sum(1 if letter.isascii() else 2 for piece in drawing.axis for letter in piece.text)
    return drawing.axis if wide * _LETTER * 0.9 <= _WIDTH else (Piece(drawing.unit),)


def _frame(foot: int, most: float, tongue: Tongue) -> Iterator[Markup]:
    yield element("line", class_="axis", x1=_LEFT, x2=_WIDTH - _RIGHT, y1=foot, y2=foot)
    yield element("line", class_="axis", x1=_LEFT, x2=_LEFT, y1=_TOP, y2=foot)
    yield element("text", "0", class_="end", x=_LEFT - 6, y=foot + 4)
    yield element("text", tongue.figure(_short(most)), class_="end", x=_LEFT - 6, y=_TOP + 4)
    yield element("text", tongue("points"), x=0, y=12)


def _guides(at: _At, foot: int, tongue: Tongue) -> Iterator[Markup]:
    """A broken line from the knot down to its value at the foot."""
    if at.row is None:
        return
    below = foot + 6 + at.row * _ROW
    yield element("line", class_="guide", x1=_short(at.x), x2=_short(at.x), y1=_short(at.y), y2=below)
    yield element("text", tongue.figure(shortest(at.knot.at)), class_="middle", x=_short(at.x), y=below + 11)


def _values(placed: tuple[_At, ...], tongue: Tongue) -> Iterator[Markup]:
    """The points of each knot, above its ring; left out where the one before leaves no room."""
    before = (float("-inf"), 0.0)
    for at in placed:
        words = tongue.figure(shortest(at.knot.gives))
        half = len(words) * _LETTER / 2
        if at.x - half < before[0] and abs(at.y - before[1]) < _ROW - 3:
            continue  # the table beside the picture has it
        before = (at.x + half, at.y)
        yield element("text", words, class_="middle value", x=_short(at.x), y=_short(at.y - 9))


def _short(value: float) -> str:
    return f"{value:.2f}".rstrip("0").rstrip(".")
