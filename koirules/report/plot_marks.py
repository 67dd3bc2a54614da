"""What a plot is drawn with, whatever it is written as: areas, lines, frames and words, from the upper left corner on."""

from __future__ import annotations

from unicodedata import east_asian_width

from koirules.values import frozen

INK, QUIET, GROUND, GRID = "#10201d", "#3f4f4b", "#ffffff", "#c4cecb"


@frozen
class Area:
    """A filled outline. what: says what it shows, for those who look into the file."""

    points: tuple[tuple[float, float], ...]
    fill: str
    what: str = ""


@frozen
class Line:
    """A straight line; dashed where it is a border that is not drawn anywhere in the fish."""

    start: tuple[float, float]
    end: tuple[float, float]
    ink: str = INK
    width: float = 1
    dashed: bool = False


@frozen
class Words:
    """A text. at: the middle of its left end (or of its middle, or right end); upright: read from below to above."""

    text: str
    at: tuple[float, float]
    size: float = 15
    anchor: str = "start"
    upright: bool = False
    bold: bool = False
    ink: str = INK


Mark = Area | Line | Words


@frozen
class Drawing:
    """A plot ready to be written: what it shows in words, its size, and its marks, the later over the earlier."""

    title: str
    describe: str
    width: float
    height: float
    marks: tuple[Mark, ...]


def box(left: float, top: float, right: float, bottom: float, fill: str, what: str = "") -> Area:
    """A rectangle."""
    return Area(((left, top), (right, top), (right, bottom), (left, bottom)), fill, what)


def words_width(text: str, size: float) -> float:
    """About how wide a text is: nobody knows the fonts of the reader."""
    return size * sum(1.0 if east_asian_width(letter) in "WF" else 0.58 for letter in text)
