"""How far a sheet of a workbook reaches, found in its XML before the reader of values sets aside room for it.

Whoever writes a sheet by hand can hide where a cell stands: in a comment, behind a quoted `>`, or by leaving places out.
So places are looked for wherever they may be, and a sheet that leaves them out must be written plainly.
"""

from __future__ import annotations

import re

LAST_COLUMN, LAST_ROW = 16_384, 1_048_576

_PLACED = re.compile(rb"""r(?<![\w:.-]r)\s*=\s*["']([A-Za-z0-9]+)["']""")
_PLACE = re.compile(rb"([A-Za-z]{0,3})([0-9]{1,7})")
_UNPLACED_CELL = re.compile(rb"""[<:]c(?=[\s/>])(?!\s+r\s*=\s*["'][A-Za-z]{1,3}[0-9]{1,7}["'])""")
_PROLOG = re.compile(rb"(?:\xef\xbb\xbf)?\s*<\?xml[^<>]*>")
_PLAIN_TAG = re.compile(rb"""<[\w/](?:[^<>"']|"[^"<>]*"|'[^'<>]*')*>""")
_ROW_OR_CELL = re.compile(rb"<(/?)(?:[^\s<>:/]*:)?(row|c)(?=[\s/>])([^<>]*)>")
_PLAIN_ATTRIBUTES = re.compile(rb"""(?:\s+[\w:]+\s*=\s*(?:"[^"'&]*"|'[^"'&]*'))*\s*/?""")
_OWN_PLACE = re.compile(rb"""\sr\s*=\s*["']([A-Za-z]{0,3})([0-9]{1,7})["']""")


class AstrayError(Exception):
    """A sheet with a cell or a row outside of any sheet, or one of which nobody can say where its cells stand."""


def reach(content: bytes) -> tuple[int, int]:
    """The number of rows and columns that a sheet reaches over. Raises AstrayError."""
    rows = columns = 0
    for written in {match[1] for match in _PLACED.finditer(content)}:
        place = _PLACE.fullmatch(written)
        if place is None or not 1 <= int(place[2]) <= LAST_ROW or column_number(place[1]) > LAST_COLUMN:
            raise AstrayError("a cell of it stands outside of any sheet")
        if place[1]:
            rows, columns = max(rows, int(place[2])), max(columns, column_number(place[1]))
    if _UNPLACED_CELL.search(content):
        more_rows, more_columns = _counted(content)
        rows, columns = max(rows, more_rows), max(columns, more_columns)
    return rows, columns


def column_number(letters: bytes) -> int:
    """The number of a column, counted from 1, by its letters."""
    number = 0
    for letter in letters.upper():
        number = number * 26 + letter - ord("A") + 1
    return number


def _counted(content: bytes) -> tuple[int, int]:
    """How far cells without a place of their own reach, counted as the reader of values counts them."""
    prolog = _PROLOG.match(content)
    tags = content[prolog.end() :] if prolog else content
    if tags.count(b"<") != sum(1 for _ in _PLAIN_TAG.finditer(tags)):
        raise AstrayError("its cells cannot be told from what is around them")
    row = column = rows = columns = 0
    for end, name, attributes in _ROW_OR_CELL.findall(tags):
        if not _PLAIN_ATTRIBUTES.fullmatch(attributes):
            raise AstrayError("its cells cannot be told from what is around them")
        place = _OWN_PLACE.search(attributes)
        if name == b"c" and not end:
            column = column_number(place[1]) if place else column + 1
            rows, columns = max(rows, row + 1), max(columns, column)
        elif name == b"row":
            row = int(place[2]) - 1 if place else row
            if end or attributes.endswith(b"/"):
                row, column = row + 1, 0
    return rows, columns
