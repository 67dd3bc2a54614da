"""Sheets of results as an OpenDocument spreadsheet."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from decimal import Decimal
from pathlib import Path
from typing import Any

from odf.config import (
    ConfigItem,
    ConfigItemMapEntry,
    ConfigItemMapIndexed,
    ConfigItemMapNamed,
    ConfigItemSet,
)
from odf.number import Number, NumberStyle
from odf.opendocument import OpenDocumentSpreadsheet
from odf.style import ParagraphProperties, Style, TableCellProperties, TableColumnProperties, TextProperties
from odf.table import DatabaseRange, DatabaseRanges, Table, TableCell, TableColumn, TableHeaderRows, TableRow
from odf.text import P

from koirules.hooks import Sheet

_NOT_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""What a document of XML 1.0 cannot hold (section 2.2 of its recommendation)."""

_NARROWEST, _WIDEST, _ROWS_FOR_WIDTH = 8, 60, 50
_CM_A_LETTER = 0.19


def write_ods(path: Path, sheets: Sequence[Sheet]) -> None:
    """Write each sheet with its headings on top, kept in view, with a filter; numbers show two decimals."""
    document = OpenDocumentSpreadsheet()
    header, text, score = _styles(document)
    ranges = DatabaseRanges()
    for number, sheet in enumerate(sheets):
        table = Table(name=sheet.name)
        for width in _widths(sheet):
            table.addElement(TableColumn(stylename=_column(document, width)))
        top = TableHeaderRows()
        top.addElement(_row(sheet.headings, header, header))
        table.addElement(top)
        for cells in sheet.rows:
            table.addElement(_row(cells, text, score))
        document.spreadsheet.addElement(table)
        last = f"{_letters(len(sheet.headings) - 1)}{len(sheet.rows) + 1}"
        area = f"'{sheet.name}'.A1:'{sheet.name}'.{last}"
        ranges.addElement(DatabaseRange(name=f"filter{number}", targetrangeaddress=area, displayfilterbuttons="true"))
    document.spreadsheet.addElement(ranges)
    document.settings.addElement(_frozen(sheets))
    document.save(str(path))


def _row(cells: Iterable[str | Decimal | None], text: Any, score: Any) -> Any:
    row = TableRow()
    for cell in cells:
        if isinstance(cell, Decimal):
            made = TableCell(valuetype="float", value=format(cell, "f"), stylename=score)
            made.addElement(P(text=f"{cell:.2f}"))
        elif cell:
            made = TableCell(valuetype="string", stylename=text)
            for line in _NOT_XML.sub("\ufffd", cell).split("\n"):
                made.addElement(P(text=line))
        else:
            made = TableCell()
        row.addElement(made)
    return row


def _styles(document: Any) -> tuple[Any, Any, Any]:
    header = Style(name="header", family="table-cell")
    header.addElement(TableCellProperties(backgroundcolor="#DCE6EC", wrapoption="wrap", verticalalign="top"))
    header.addElement(TextProperties(fontweight="bold"))
    text = Style(name="text", family="table-cell")
    text.addElement(TableCellProperties(wrapoption="wrap", verticalalign="top"))
    two = NumberStyle(name="two")
    two.addElement(Number(decimalplaces="2", minintegerdigits="1"))
    score = Style(name="score", family="table-cell", datastylename="two")
    score.addElement(TableCellProperties(verticalalign="top"))
    score.addElement(ParagraphProperties(textalign="end"))
    for style in (two, header, text, score):
        document.automaticstyles.addElement(style)
    return header, text, score


def _column(document: Any, width: int) -> Any:
    name = f"width{width}"
    for style in document.automaticstyles.childNodes:
        if style.getAttribute("name") == name:
            return style
    style = Style(name=name, family="table-column")
    style.addElement(TableColumnProperties(columnwidth=f"{width * _CM_A_LETTER:.2f}cm"))
    document.automaticstyles.addElement(style)
    return style


def _widths(sheet: Sheet) -> list[int]:
    first = [[_shown(cell) for cell in row] for row in sheet.rows[:_ROWS_FOR_WIDTH]]
    longest = [
        max(map(_size, [heading, *(row[column] for row in first)])) for column, heading in enumerate(sheet.headings)
    ]
    return [min(max(size + 2, _NARROWEST), _WIDEST) for size in longest]


def _size(text: str) -> int:
    """How many letters wide a text is; wide letters such as kanji count twice."""
    return sum(2 if ord(letter) > 0x2E7F else 1 for letter in text)


def _shown(cell: str | Decimal | None) -> str:
    return f"{cell:.2f}" if isinstance(cell, Decimal) else cell or ""


def _letters(column: int) -> str:
    letters = ""
    column += 1
    while column:
        column, last = divmod(column - 1, 26)
        letters = chr(ord("A") + last) + letters
    return letters


def _frozen(sheets: Sequence[Sheet]) -> Any:
    """The settings by which the headings, and of results the names of the fish, stay in view."""
    tables = ConfigItemMapNamed(name="Tables")
    for sheet in sheets:
        entry = ConfigItemMapEntry(name=sheet.name)
        columns = "1" if sheet.name == "results" else "0"
        for name, kind, value in (
            ("HorizontalSplitMode", "short", "2" if columns == "1" else "0"),
            ("VerticalSplitMode", "short", "2"),
            ("HorizontalSplitPosition", "int", columns),
            ("VerticalSplitPosition", "int", "1"),
            ("PositionRight", "int", columns),
            ("PositionBottom", "int", "1"),
        ):
            entry.addElement(ConfigItem(name=name, type=kind, text=value))
        tables.addElement(entry)
    view = ConfigItemMapEntry()
    view.addElement(ConfigItem(name="ViewId", type="string", text="view1"))
    view.addElement(tables)
    views = ConfigItemMapIndexed(name="Views")
    views.addElement(view)
    made = ConfigItemSet(name="ooo:view-settings")
    made.addElement(views)
    return made
