"""A plot as PNG, for what takes no SVG. Needs the extra `pictures`."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, assert_never

from koirules.records.safe_text import without_controls
from koirules.report.plot_marks import GROUND, Area, Drawing, Line, Mark, Words

if TYPE_CHECKING:
    from PIL.Image import Image
    from PIL.ImageDraw import ImageDraw
    from PIL.ImageFont import FreeTypeFont, ImageFont

SCALE = 2
"""Pixels to a unit of the plot."""

_FONTS = (
    "DejaVuSans.ttf",
    "NotoSansCJK-Regular.ttc",
    "NotoSansJP-Regular.otf",
    "YuGothM.ttc",
    "meiryo.ttc",
    "ヒラギノ角ゴシック W3.ttc",
    "ipag.ttf",
    "Arial Unicode.ttf",
)
"""Fonts that may be on a machine and know more letters than the one that the library brings, by the names of their files."""


def write_png(path: Path, drawing: Drawing) -> None:
    """Write the plot with two pixels to a unit."""
    from PIL import Image, ImageDraw

    picture = Image.new("RGB", (round(drawing.width * SCALE), round(drawing.height * SCALE)), GROUND)
    draw = ImageDraw.Draw(picture)
    letters = _letters(drawing)
    for mark in drawing.marks:
        _draw(picture, draw, mark, letters)
    picture.save(path, "PNG", optimize=True)


def letters_without_font(drawing: Drawing) -> str:
    """The letters of a plot that no font at hand has, and that would be written as boxes."""
    letters = _letters(drawing)
    return "".join(sorted(_missing(_font(round(15 * SCALE), letters), letters)))


def _letters(drawing: Drawing) -> frozenset[str]:
    return frozenset(letter for mark in drawing.marks if isinstance(mark, Words) for letter in mark.text)


def _draw(picture: Image, draw: ImageDraw, mark: Mark, letters: frozenset[str]) -> None:
    match mark:
        case Area(points=points, fill=fill):
            draw.polygon([(x * SCALE, y * SCALE) for x, y in points], fill=fill)
        case Line():
            _line(draw, mark)
        case Words():
            _words(picture, draw, mark, letters)
        case _:
            assert_never(mark)


def _line(draw: ImageDraw, line: Line) -> None:
    width = max(1, round(line.width * SCALE))
    (x1, y1), (x2, y2) = ((x * SCALE, y * SCALE) for x, y in (line.start, line.end))
    if not line.dashed:
        draw.line([(x1, y1), (x2, y2)], fill=line.ink, width=width)
        return
    long, dash, gap = max(abs(x2 - x1), abs(y2 - y1)), 8.0 * SCALE, 5.0 * SCALE
    at = 0.0
    while at < long:
        one, other = at / long, min(at + dash, long) / long
        ends = [(x1 + (x2 - x1) * part, y1 + (y2 - y1) * part) for part in (one, other)]
        draw.line(ends, fill=line.ink, width=width)
        at += dash + gap


def _words(picture: Image, draw: ImageDraw, words: Words, letters: frozenset[str]) -> None:
    from PIL import Image, ImageDraw

    font = _font(round(words.size * SCALE), letters)
    text = without_controls(words.text).replace("\n", " ")
    x, y = (part * SCALE for part in words.at)
    anchor = {"start": "lm", "middle": "mm", "end": "rm"}[words.anchor]
    stroke = 1 if words.bold else 0
    if not words.upright:
        draw.text((x, y), text, fill=words.ink, font=font, anchor=anchor, stroke_width=stroke)
        return
    left, top, right, bottom = (round(part) for part in font.getbbox(text, anchor="ls"))
    lying = Image.new("L", (right - left + 4, bottom - top + 4))
    ImageDraw.Draw(lying).text((2 - left, 2 - top), text, fill=255, font=font, anchor="ls")
    standing = lying.rotate(90, expand=True)
    # Read from below to above, a text that ends there ends above.
    high = round(y) if words.anchor == "end" else round(y - standing.height)
    picture.paste(words.ink, (round(x - standing.width / 2), high), standing)


@cache
def _font(size: int, letters: frozenset[str]) -> FreeTypeFont | ImageFont:
    """The font that the library brings, or the first one on this machine that knows more of the letters."""
    from PIL import ImageFont

    best = ImageFont.load_default(size)
    missing = _missing(best, letters)
    for name in _FONTS:
        if not missing:
            break
        try:
            other = ImageFont.truetype(name, size)
        except OSError:
            continue
        if len(left := _missing(other, letters)) < len(missing):
            best, missing = other, left
    return best


def _missing(font: FreeTypeFont | ImageFont, letters: frozenset[str]) -> frozenset[str]:
    """The letters that a font shows as it shows what no font has."""
    nothing = bytes(font.getmask("\uffff"))
    return frozenset(letter for letter in letters if not letter.isspace() and bytes(font.getmask(letter)) == nothing)
