"""A plot as SVG: words stay words, so that they can be found, read out and printed sharp."""

from __future__ import annotations

from pathlib import Path
from typing import assert_never

from koirules.report.page_markup import Markup, element
from koirules.report.plot_marks import Area, Drawing, Line, Mark, Words


def write_svg(path: Path, drawing: Drawing) -> None:
    """Write one `<svg>` element that loads nothing and runs no script."""
    wide, high = _short(drawing.width), _short(drawing.height)
    whole = element(
        "svg",
        element("title", drawing.title, id="title"),
        element("desc", drawing.describe, id="desc"),
        *(_written(mark) for mark in drawing.marks),
        xmlns="http://www.w3.org/2000/svg",
        width=wide,
        height=high,
        viewBox=f"0 0 {wide} {high}",
        role="img",
        aria_labelledby="title desc",
        font_family="system-ui, 'Hiragino Sans', 'Yu Gothic', 'Noto Sans CJK JP', sans-serif",
    )
    path.write_text(f'<?xml version="1.0" encoding="UTF-8"?>\n{whole.text}\n', encoding="utf-8", newline="\n")


def _written(mark: Mark) -> Markup:
    match mark:
        case Area(points=points, fill=fill, what=what):
            outline = "M" + "L".join(f"{_short(x)} {_short(y)}" for x, y in points) + "Z"
            return element("path", *([element("title", what)] if what else []), d=outline, fill=fill)
        case Line(start=(x1, y1), end=(x2, y2)):
            return element(
                "line",
                x1=_short(x1),
                y1=_short(y1),
                x2=_short(x2),
                y2=_short(y2),
                stroke=mark.ink,
                stroke_width=_short(mark.width),
                stroke_dasharray="8 5" if mark.dashed else None,
            )
        case Words(at=(x, y)):
            place = f"rotate(-90 {_short(x)} {_short(y)})" if mark.upright else None
            return element(
                "text",
                mark.text,
                x=_short(x),
                y=_short(y),
                transform=place,
                fill=mark.ink,
                font_size=_short(mark.size),
                font_weight="bold" if mark.bold else None,
                text_anchor=None if mark.anchor == "start" else mark.anchor,
                dominant_baseline="central",
            )
        case _:
            assert_never(mark)


def _short(value: float) -> str:
    return f"{value:.2f}".rstrip("0").rstrip(".")
