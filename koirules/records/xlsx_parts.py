"""What a workbook says about its cells beside their values: errors, formulas never worked out, per cent formats, size.

The reader of values gives a blank for an error and 0.45 for what the sheet shows as 45 %, and asks for as much memory
as the farthest cell demands; so these are looked up in the sheet's XML first. Only marks are looked for there, with
patterns; no tree is built of what a stranger wrote.
"""

from __future__ import annotations

import re
import zipfile
from collections.abc import Iterator
from html import unescape
from pathlib import Path
from zlib import error as ZlibError  # noqa: N812 - the library's own name is not one of a class

from koirules.records.xlsx_reach import AstrayError, column_number, reach
from koirules.values import define, frozen

_MOST_BYTES = 256 * 1024 * 1024
_DAMAGED = (zipfile.BadZipFile, ZlibError, KeyError, EOFError, OSError, RuntimeError, ValueError)
"""What unpacking a part that is damaged, missing or locked may raise."""

_ATTRIBUTE = re.compile(r"""([\w:]+)\s*=\s*(?:"([^"]*)"|'([^']*)')""")
# Nothing here looks past the next `<`, so that the time stays in proportion to the size of the sheet.
_TAG = re.compile(rb"<(?:\w+:)?(row|c|f|v)\b([^<>]*)>([^<]*)")
_REFERENCE = re.compile(rb"""\br\s*=\s*["']([A-Za-z]{1,3})([0-9]{1,7})["']""")
_ROW_NUMBER = re.compile(rb"""\br\s*=\s*["']([0-9]{1,7})["']""")
_STYLE = re.compile(rb"""\bs\s*=\s*["']([0-9]+)["']""")
_TYPE = re.compile(rb"""\bt\s*=\s*["'](\w+)["']""")
_FORMULA = re.compile(rb"<(?:\w+:)?f[\s/>]")
_ERROR = re.compile(rb"""\bt\s*=\s*["']e["']""")
_ASIDE = re.compile(r'"[^"]*"|\\.|_.|\*.|\[[^\]]*\]')

Position = tuple[int, int]
"""Row and column of a cell, counted from 0."""


class UnsoundError(Exception):
    """A workbook whose parts cannot be found or unpacked."""


@frozen
class Marks:
    """What a sheet says beside the values.

    errors: the cells that hold one. without_value: formulas never worked out. percent: cells shown as per cent. rows,
    columns: how far the sheet reaches.
    """

    errors: dict[Position, str]
    without_value: frozenset[Position]
    percent: frozenset[Position]
    rows: int
    columns: int


@define
class _Cell:
    """The tag of a cell; `kind` is its attribute `t`."""

    position: Position
    kind: bytes
    style: int
    has_formula: bool = False
    value: str = ""


def read_marks(path: Path, sheet: str) -> Marks:
    """Read the marks of the sheet with a name. Raises UnsoundError where the workbook is damaged."""
    try:
        with zipfile.ZipFile(path) as parts:
            names = {name.lower(): name for name in parts.namelist()}
            content = parts.read(names[_part_of_sheet(parts, names, sheet)])
            styles = _percent_styles(parts.read(names["xl/styles.xml"])) if "xl/styles.xml" in names else frozenset()
    except _DAMAGED as error:
        raise UnsoundError("a part of it is missing or damaged") from error
    return _marks(content, styles)


def check_size(path: Path) -> None:
    """Raise UnsoundError for a workbook that unpacks to more than can be read, before anything unpacks it."""
    try:
        with zipfile.ZipFile(path) as parts:
            size = sum(info.file_size for info in parts.infolist())
    except _DAMAGED:
        return  # what is damaged is told by the reader of the values
    if size > _MOST_BYTES:
        raise UnsoundError("it unpacks to more than can be read in one go")


def _part_of_sheet(parts: zipfile.ZipFile, names: dict[str, str], sheet: str) -> str:
    """The name of the part that holds a sheet, in small letters. Raises KeyError where there is none."""
    workbook = parts.read(names["xl/workbook.xml"])
    relations = parts.read(names["xl/_rels/workbook.xml.rels"])
    identities = {tag["name"]: tag for tag in _tags(workbook, "sheet") if "name" in tag}
    identity = next(value for key, value in identities[sheet].items() if key.endswith(":id"))
    targets = {tag["Id"]: tag["Target"] for tag in _tags(relations, "Relationship") if "Id" in tag and "Target" in tag}
    target = targets[identity]
    return (target.lstrip("/") if target.startswith("/") else f"xl/{target}").lower()


def _tags(content: bytes, name: str) -> Iterator[dict[str, str]]:
    text = content.decode("utf-8", errors="replace")
    for match in re.finditer(rf"<(?:\w+:)?{name}\b([^>]*)>", text):
        yield {key: unescape(one or other) for key, one, other in _ATTRIBUTE.findall(match[1])}


def _percent_styles(content: bytes) -> frozenset[int]:
    """The numbers of the cell styles that show a value as per cent; 9 and 10 are the built-in formats that do."""
    text = content.decode("utf-8", errors="replace")
    percent = {"9", "10"}
    for tag in _tags(content, "numFmt"):
        if "%" in _ASIDE.sub("", tag.get("formatCode", "")):
            percent.add(tag.get("numFmtId", ""))
    block = re.search(r"<(?:\w+:)?cellXfs\b.*?</(?:\w+:)?cellXfs>", text, re.DOTALL)
    styles = _tags(block[0].encode(), "xf") if block else ()
    return frozenset(i for i, tag in enumerate(styles) if tag.get("numFmtId") in percent)


def _marks(content: bytes, percent_styles: frozenset[int]) -> Marks:
    try:
        rows, columns = reach(content)
    except AstrayError as error:
        raise UnsoundError(str(error)) from error
    errors: dict[Position, str] = {}
    without: set[Position] = set()
    percent: set[Position] = set()
    if percent_styles or _FORMULA.search(content) or _ERROR.search(content):
        for cell in _cells(content):
            if cell.kind == b"e":
                errors[cell.position] = cell.value or "#N/A"
            elif cell.has_formula and not cell.value and cell.kind != b"str":
                without.add(cell.position)
            elif cell.style in percent_styles and cell.kind in {b"", b"n"}:
                percent.add(cell.position)
    return Marks(errors, frozenset(without), frozenset(percent), rows, columns)


def _cells(content: bytes) -> Iterator[_Cell]:
    """Every cell with its position; a row or cell that does not give its own comes after the one before."""
    row, column = -1, -1
    cell: _Cell | None = None
    for tag, attributes, text in _TAG.findall(content):
        if tag == b"f" and cell is not None:
            cell.has_formula = True
        elif tag == b"v" and cell is not None:
            cell.value = text.decode("utf-8", errors="replace").strip()
        elif tag == b"row":
            number = _ROW_NUMBER.search(attributes)
            row, column = (int(number[1]) - 1 if number else row + 1), -1
        elif tag == b"c":
            if cell is not None:
                yield cell
            reference = _REFERENCE.search(attributes)
            column = column_number(reference[1]) - 1 if reference else column + 1
            row = int(reference[2]) - 1 if reference else row
            kind, style = _TYPE.search(attributes), _STYLE.search(attributes)
            cell = _Cell((row, column), kind[1] if kind else b"", int(style[1]) if style else 0)
    if cell is not None:
        yield cell
