"""What readers and writers of plugins give and take, so that they know neither traits nor results.

A reader turns a file into a grid of cells; what the cells mean, and every problem of theirs, is found as for any other format.
A writer lays out sheets of texts and numbers.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal
from pathlib import Path

from attrs import field

from koirules.values import frozen

MOST_CELLS = 40_000_000
"""How many cells a sheet may reach over, blank ones too."""


@frozen
class CellError:
    """What stands in a cell whose formula has no value. text: as the program shows it, `#DIV/0!`."""

    text: str


@frozen
class Grid:
    """The cells of one sheet.

    rows: from row 1 of the sheet, blank rows too, each from its first column. A cell is a text, a number (int, float, Decimal),
    a bool, a date or datetime, a CellError, or None where it is blank. A number that is shown as per cent is given as text,
    "45 %". merged: the cells that were joined into one, as the program names them, `B2:B4`.
    """

    rows: Sequence[Sequence[object]]
    merged: tuple[str, ...] = ()


class UnreadableError(Exception):
    """A file that a reader cannot read. why: for the inside of a sentence. mend: a sentence on what to do."""

    def __init__(self, why: str, mend: str) -> None:
        super().__init__(why)
        self.why = why
        self.mend = mend


@frozen
class Sheet:
    """One sheet of results. rows: each with one cell for each heading: a text, a number, or None for a blank cell."""

    name: str
    headings: tuple[str, ...]
    rows: Sequence[Sequence[str | Decimal | None]] = field(repr=False)


@frozen
class RecordReader:
    """A format of records. ending: of its files, `.ods`. title: what people call it.

    read: called with the path of a file that is there. It raises UnreadableError, or OSError. It imports what is heavy when it
    is called.
    """

    ending: str
    title: str
    read: Callable[[Path], Grid] = field(repr=False)


@frozen
class ResultWriter:
    """A format of results. ending: of its files. title: what people call it.

    write: called with a path to write to and the sheets: `results`, where fish were selected `rounds`, and `standard`.
    most_rows: how many rows a sheet may have, headings counted, None for any number.
    """

    ending: str
    title: str
    write: Callable[[Path, Sequence[Sheet]], None] = field(repr=False)
    most_rows: int | None = None
