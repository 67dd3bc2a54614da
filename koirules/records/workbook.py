"""The look that every workbook of ours has, and how it is opened so that text stays text."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.records.safe_text import for_workbook
from koirules.values import frozen

if TYPE_CHECKING:
    from xlsxwriter.format import Format  # type: ignore[import-untyped]
    from xlsxwriter.workbook import Workbook  # type: ignore[import-untyped]
    from xlsxwriter.worksheet import Worksheet  # type: ignore[import-untyped]

MOST_ROWS = 1_048_576
"""How many rows a sheet can hold."""

NARROWEST, WIDEST = 8, 60
"""Widths of columns, in letters."""

_MOST_LINES = 20


@frozen
class Styles:
    """The formats of cells that our sheets share."""

    header: Format
    wrapped: Format
    text: Format
    beside: Format
    score: Format


def open_workbook(path: Path, in_order: bool = False) -> Workbook:
    """Open a workbook for writing, in which no text becomes a formula, a link or a number.

    in_order: cells are written row by row, from the top, and need no memory.
    """
    from xlsxwriter.workbook import Workbook

    options = {
        "constant_memory": in_order,
        "strings_to_formulas": False,
        "strings_to_urls": False,
        "strings_to_numbers": False,
    }
    return Workbook(str(path), options)


def close_workbook(workbook: Workbook) -> None:
    """Write a workbook out. Raises OSError where that is not possible."""
    from xlsxwriter.exceptions import XlsxFileError  # type: ignore[import-untyped]

    try:
        workbook.close()
    except XlsxFileError as error:
        raise OSError(str(error)) from error


def styles_of(workbook: Workbook) -> Styles:
    """Add our formats to a workbook."""
    header = {"bold": True, "bg_color": "#DCE6EC", "bottom": 1, "valign": "top", "text_wrap": True}
    return Styles(
        header=workbook.add_format(header),
        wrapped=workbook.add_format({"text_wrap": True, "valign": "top"}),
        text=workbook.add_format({"num_format": "@"}),
        beside=workbook.add_format({"text_wrap": True, "valign": "top", "indent": 1}),
        score=workbook.add_format({"num_format": "0.00", "valign": "top"}),
    )


def write_texts(sheet: Worksheet, row: int, texts: Iterable[str], style: Format | None = None) -> None:
    """Write a row of texts, from the first column."""
    for column, text in enumerate(texts):
        sheet.write_string(row, column, for_workbook(text), style)


def print_across(sheet: Worksheet) -> None:
    """Let a sheet print on A4 across, with its headings and the names of the fish on every page."""
    sheet.set_landscape()
    sheet.set_paper(9)
    sheet.repeat_rows(0)
    sheet.repeat_columns(0)


def width_for(texts: Iterable[str]) -> int:
    """The width of a column that shows most of its texts; wide letters such as kanji count twice."""
    longest = max((_letters(text) for text in texts), default=0)
    return min(max(longest + 2, NARROWEST), WIDEST)


def height_for(texts: Iterable[tuple[str, int]]) -> float:
    """The height of a row, in points, that shows its texts wrapped in columns of the given widths."""
    # Words do not fill a line to its end, so a line holds some letters less than the column is wide.
    lines = max((-(-_letters(text) // max(1, width - 4)) for text, width in texts), default=1)
    return 15.0 * min(max(1, lines), _MOST_LINES)


def _letters(text: str) -> int:
    return sum(2 if ord(letter) > 0x2E7F else 1 for letter in text)
