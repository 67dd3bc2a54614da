"""Large text files of records, read in blocks of whole rows."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from io import StringIO
from pathlib import Path

from koirules.problems import Problem, recording
from koirules.problems.record_files import unreadable_file
from koirules.records.csv_records import csv_shape
from koirules.records.large_rows import Frames, RefusedError, Rows
from koirules.records.table import Table
from koirules.records.text_files import decoded

_BLOCK = 8_000_000
"""So many bytes of text are in memory at once."""

_HEAD = 1 << 18
_BEYOND = 16
"""So many cells beyond the last heading may stand in a row, as long as they are empty: spreadsheets leave them."""


def open_csv(path: Path) -> tuple[Table, int, Frames]:
    """The headings of a text file, the number of its first row of records, and its rows. Raises RefusedError, OSError."""
    file = str(path)
    with path.open("rb") as opened:
        head = opened.read(_HEAD)
    if len(head) == _HEAD:
        head = head[: head.rfind(b"\n") + 1] or head
    if b"\r" in head and b"\n" not in head:
        why = "its lines end in carriage returns alone"
        raise RefusedError(unreadable_file(file, why, "Save it again as CSV (UTF-8)."))
    text = _sound(decoded(file, head))
    shape = csv_shape(file, text)
    if isinstance(shape, Problem):
        raise RefusedError(shape)
    width = len(shape.table.headings)
    first = shape.lines_before + 1

    def frames(_first: int | None, _last: int | None) -> Iterator[Rows]:
        row = first
        for block in _blocks(path, shape.lines_before):
            rows = _rows(file, block, shape.delimiter, width, row)
            row += rows.taken
            yield rows

    return shape.table, first, frames


def _sound(text: str | Problem) -> str:
    if isinstance(text, Problem):
        raise RefusedError(text)
    return text


def _rows(file: str, block: bytes, delimiter: str, width: int, first: int) -> Rows:
    import polars as pl

    if b"\0" in block:
        _sound(decoded(file, block, first))
    names = {str(i): pl.String for i in range(width + _BEYOND)}
    try:
        frame = pl.read_csv(
            block, separator=delimiter, has_header=False, schema=names, infer_schema=False, missing_columns="insert"
        )
    except (pl.exceptions.ComputeError, pl.exceptions.SchemaError):
        # A text that is no UTF-8, a quotation mark inside of a cell, a row that is far too long: each has its place.
        _refuse(file, _sound(decoded(file, block, first)), delimiter, width, first)
        raise
    beyond = [name for name in list(names)[width:] if frame[name].null_count() < frame.height]
    for name in beyond:
        filled = frame[name].str.strip_chars().fill_null("") != ""
        if filled.any():
            row = filled.arg_true()[0]
            sizes = (int(name) + 1, width)
            raise RefusedError(recording.row_too_long(file, first + row, sizes, frame[name][row], delimiter))
    frame = frame.select(list(names)[:width])
    start = frame["0"].str.strip_chars().fill_null("")
    if not ((start == "") | start.str.starts_with("#")).any():
        return Rows(frame, frame.height)
    # A row is blank where nothing but spaces is in it, and a note where a # begins its only cell.
    others = pl.all_horizontal(
        [pl.col(str(i)).str.strip_chars().fill_null("") == "" for i in range(1, width)] or [pl.lit(value=True)]
    )
    passed = (pl.lit(start == "") | pl.lit(start.str.contains("^#(?:\\s|$)"))) & others
    kept = frame.select(~passed).to_series()
    return Rows(frame.filter(kept), frame.height, None if kept.all() else kept.arg_true())


def _refuse(file: str, text: str, delimiter: str, width: int, first: int) -> None:
    """Say which row of a block cannot be read; does nothing where each of them can. first: the number of its first row."""
    rows = csv.reader(StringIO(text, newline=""), delimiter=delimiter, strict=True)
    row = first - 1
    try:
        for row, cells in enumerate(rows, first):
            beyond = [place for place, cell in enumerate(cells[width:], width) if cell.strip()]
            if beyond or len(cells) > width + _BEYOND:
                last = beyond[0] if beyond else len(cells) - 1
                raise RefusedError(recording.row_too_long(file, row, (last + 1, width), cells[last], delimiter))
    except csv.Error:
        raise RefusedError(
            unreadable_file(
                file,
                f"a cell of row {row + 1} has a quotation mark inside, or one that is never closed",
                "Write two quotation marks for one inside of a quoted cell, and one at each end of the cell.",
            )
        ) from None


def _blocks(path: Path, skipped: int) -> Iterator[bytes]:
    """The text of a file after so many lines, in blocks of whole rows: a line may end inside of quotation marks."""
    with path.open("rb") as opened:
        for _ in range(skipped):
            opened.readline()
        rest = b""
        while more := opened.read(_BLOCK):
            rest += more
            end = rest.rfind(b"\n")
            while end >= 0 and rest.count(b'"', 0, end) % 2:
                end = rest.rfind(b"\n", 0, end)
            if end >= 0:
                yield rest[: end + 1]
                rest = rest[end + 1 :]
        if rest.strip():
            yield rest
