"""The cells of an OpenDocument spreadsheet, by the standard ISO/IEC 26300 (OASIS OpenDocument 1.3, part 3).

A cell says its type in `office:value-type` and its value in an attribute of its own (section 19.385 of OpenDocument 1.3). Rows
and cells that are alike stand once with the number of their repetitions; a sheet ends with a million blank rows told so.
The document is parsed here, by defusedxml: odfpy, which writes ours, goes on without a word after an error in one that it reads.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime
from decimal import Decimal, InvalidOperation
from pathlib import Path
from xml.etree.ElementTree import Element, ParseError
from zipfile import BadZipFile, ZipFile
from zlib import error as ZlibError  # noqa: N812 - an exception, by its name

from defusedxml.common import DefusedXmlException
from defusedxml.ElementTree import fromstring

from koirules.hooks import CellError, Grid, UnreadableError

SHEET = "records"
"""The name of the sheet that is read where there are several."""

MOST_BYTES = 1024 * 1024 * 1024
"""How large the contents of a file may be when they are unpacked."""

MOST_CELLS = 40_000_000
"""How many cells a sheet may reach over."""

_OFFICE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
_TABLE = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
_TEXT = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"
_CALCEXT = "{urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0}"
"""Where LibreOffice says that a formula failed; the standard has no attribute for it."""

_CELL, _COVERED = f"{_TABLE}table-cell", f"{_TABLE}covered-table-cell"
_GROUPS = {f"{_TABLE}{name}" for name in ("table-row-group", "table-rows", "table-header-rows")}
_SAVE = 'Open it in a spreadsheet program and save it again as "ODF spreadsheet (.ods)", or as "CSV UTF-8".'
_UNLOCK = "Open it in a spreadsheet program, take the password off, and save it again."


def read_ods(path: Path) -> Grid:
    """The sheet named `records`, or the first one. Raises UnreadableError for a file that cannot be read."""
    content = _content(path)
    try:
        root = fromstring(content, forbid_dtd=True)
    except (ParseError, DefusedXmlException, ValueError) as error:
        raise UnreadableError(f"it is no sound spreadsheet ({type(error).__name__})", _SAVE) from error
    sheets = root.findall(f"{_OFFICE}body/{_OFFICE}spreadsheet/{_TABLE}table")
    if not sheets:
        raise UnreadableError("there is no sheet in it", _SAVE)
    named = [sheet for sheet in sheets if sheet.get(f"{_TABLE}name", "").strip().casefold() == SHEET]
    return _grid((named or sheets)[0])


def _content(path: Path) -> bytes:
    """The document of a file. Refuses what is no file of this kind, is locked, or would fill the memory."""
    try:
        with ZipFile(path) as archive:
            names = set(archive.namelist())
            if "META-INF/manifest.xml" in names and b"encryption-data" in archive.read("META-INF/manifest.xml"):
                raise UnreadableError("it is protected by a password", _UNLOCK)
            if "content.xml" not in names:
                raise UnreadableError("it is no OpenDocument spreadsheet", _SAVE)
            size = archive.getinfo("content.xml").file_size
            if size > MOST_BYTES:
                raise UnreadableError(
                    f"it holds {size:,} bytes when it is unpacked, more than the {MOST_BYTES:,} that are read in one go",
                    "Split it into several files, a batch in each.",
                )
            return archive.read("content.xml")
    except (BadZipFile, ValueError, NotImplementedError, RuntimeError, EOFError, ZlibError) as error:
        raise UnreadableError("it is no OpenDocument spreadsheet, or was cut off", _SAVE) from error


def _grid(sheet: Element) -> Grid:
    rows: list[list[object]] = []
    merged: list[str] = []
    blank = 0
    cells = 0
    for row in _rows(sheet):
        count = _number(row, "number-rows-repeated")
        values = list(_cells(row, len(rows) + blank, merged))
        if not values:
            blank += count
            continue
        cells += (blank + count) * len(values)
        if cells > MOST_CELLS:
            raise UnreadableError(
                f"its rows and cells reach over more than {MOST_CELLS:,} cells",
                "Look for something far below or right of the table and delete those rows and columns.",
            )
        rows += [[] for _ in range(blank)]
        rows += [list(values) for _ in range(count)]
        blank = 0
    return Grid(rows, tuple(merged))


def _rows(node: Element) -> Iterator[Element]:
    """The rows of a sheet in order, also those in groups and headers."""
    for child in node:
        if child.tag == f"{_TABLE}table-row":
            yield child
        elif child.tag in _GROUPS:
            yield from _rows(child)


def _cells(row: Element, above: int, merged: list[str]) -> Iterator[object]:
    """The values of a row up to its last that is not blank. above: how many rows lie above it."""
    blank = column = 0
    for cell in row:
        if cell.tag not in {_CELL, _COVERED}:
            continue
        count = _number(cell, "number-columns-repeated")
        value = None if cell.tag == _COVERED else _value(cell)
        down, across = _number(cell, "number-rows-spanned"), _number(cell, "number-columns-spanned")
        if down > 1 or across > 1:
            first, last = _letters(column), _letters(column + across - 1)
            merged.append(f"{first}{above + 1}:{last}{above + down}")
        column += count
        if value is None or value == "":
            blank += count
            continue
        if column > MOST_CELLS:
            raise UnreadableError(f"a row of it has {column:,} cells", "Delete the columns right of the table.")
        yield from [None] * blank
        yield from [value] * count
        blank = 0


def _value(cell: Element) -> object:
    shown = "\n".join(map(_of_paragraph, cell.findall(f"{_TEXT}p")))  # a line for each, and none of a comment
    if cell.get(f"{_CALCEXT}value-type") == "error":
        return CellError(shown or "#VALUE!")
    formula = cell.get(f"{_TABLE}formula")
    match cell.get(f"{_OFFICE}value-type"):
        case "float" | "currency":
            return _decimal(cell)
        case "percentage":
            number = _decimal(cell)
            return None if number is None else f"{format((number * 100).normalize(), 'f')} %"
        case "boolean":
            return cell.get(f"{_OFFICE}boolean-value") == "true"
        case "date":
            return _date(cell.get(f"{_OFFICE}date-value", ""), shown)
        case "string":
            if formula and shown.startswith(("#", "Err:")):
                return CellError(shown)
            return cell.get(f"{_OFFICE}string-value") or shown
        case None if formula:
            return CellError(shown or "no value")
        case _:
            return shown  # a time of day, or what has no type


def _decimal(cell: Element) -> Decimal | None:
    try:
        number = Decimal(cell.get(f"{_OFFICE}value", ""))
    except InvalidOperation:
        return None
    return number if number.is_finite() else None


def _date(value: str, shown: str) -> object:
    try:
        return datetime.fromisoformat(value) if "T" in value else date.fromisoformat(value)
    except ValueError:
        return shown or value


def _of_paragraph(node: Element) -> str:
    parts = [node.text or ""]
    for child in node:
        match child.tag.removeprefix(_TEXT):
            case "s":
                parts.append(" " * min(int(child.get(f"{_TEXT}c", "1")), 1000))
            case "tab":
                parts.append("\t")
            case "line-break":
                parts.append("\n")
            case _:
                parts.append(_of_paragraph(child))
        parts.append(child.tail or "")
    return "".join(parts)


def _number(node: Element, name: str) -> int:
    try:
        return max(1, int(node.get(f"{_TABLE}{name}", "1")))
    except ValueError:
        return 1


def _letters(column: int) -> str:
    letters = ""
    column += 1
    while column:
        column, last = divmod(column - 1, 26)
        letters = chr(ord("A") + last) + letters
    return letters
