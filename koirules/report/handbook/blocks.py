"""What a page is made of, whatever it is written as."""

from __future__ import annotations

from decimal import Decimal

from koirules.languages import ENGLISH, Tongue
from koirules.report.views import View
from koirules.values import frozen


@frozen
class Piece:
    """A piece of a line.

    strong: set off from the rest. named: the title of something that the standard names. language: two-letter code where it
    is known to be another than that of the page, else "". to: the anchor of what it names, "" for none. mark: says where
    something comes from, beside it.
    """

    text: str
    strong: bool = False
    named: bool = False
    language: str = ""
    to: str = ""
    mark: bool = False


Line = tuple[Piece, ...]
"""A line of text, to be broken wherever there is no more room."""


def line(*parts: str | Piece | Line) -> Line:
    """A line of several parts."""
    found: list[Piece] = []
    for part in parts:
        if isinstance(part, tuple):
            found.extend(part)
        elif isinstance(part, Piece):
            found.append(part)
        elif part:
            found.append(Piece(part))
    return tuple(found)


def strong(text: str) -> Piece:
    """A piece that is set off."""
    return Piece(text, strong=True)


@frozen
class Heading:
    """A heading; the title of the page has level 1."""

    level: int
    line: Line
    anchor: str = ""


@frozen
class Paragraph:
    """A paragraph; quiet: said beside the matter."""

    line: Line
    quiet: bool = False


@frozen
class Listed:
    """A list; numbered where the order matters."""

    items: tuple[Line, ...]
    numbered: bool = False


@frozen
class Facts:
    """What something is, point by point: a word, and what is to be said of it."""

    pairs: tuple[tuple[str, Line], ...]


@frozen
class Column:
    """A column of a table; number: of figures, which stand to the right."""

    title: str
    number: bool = False


@frozen
class Row:
    """A row of a table; the first cell says what it is about. sums: what it adds up stands below it. remarks: on the whole."""

    cells: tuple[Line, ...]
    anchor: str = ""
    sums: bool = False
    remarks: tuple[str, ...] = ()


@frozen
class Table:
    """A table. about: what is in it. kind: how wide its columns are to be, by a word of the style sheet."""

    about: Line
    columns: tuple[Column, ...]
    rows: tuple[Row, ...]
    kind: str = ""


@frozen
class Knot:
    """A knot of a curve: where it is, in the unit that it is shown in, and how many points it gives there."""

    at: Decimal
    gives: Decimal
    words: str


@frozen
class Drawing:
    """A curve to be drawn: straight lines between its knots, flat outside of them.

    anchor: its own. about: what it shows. axis: what is along it, with the unit. unit: its symbol, "" for none. low, high: what
    the value can be.
    """

    anchor: str
    about: str
    axis: Line
    unit: str
    knots: tuple[Knot, ...]
    low: Decimal
    high: Decimal
    tongue: Tongue = ENGLISH


@frozen
class Portrait:
    """What was recorded, drawn. anchor: begins the ids in it. title: whose it is. tongue: the language told in."""

    anchor: str
    title: str
    view: View
    tongue: Tongue = ENGLISH


@frozen
class Group:
    """Blocks that belong together and stay on one page of paper where they can. kind: a word of the style sheet."""

    kind: str
    blocks: tuple[Block, ...]


Block = Heading | Paragraph | Listed | Facts | Table | Drawing | Portrait | Group
