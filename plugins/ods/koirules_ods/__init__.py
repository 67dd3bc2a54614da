"""OpenDocument spreadsheets for koirules: records in, results out.

In: nothing. Out: a reader and a writer for files that end in .ods.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from koirules.hooks import Grid, RecordReader, ResultWriter, Sheet, hookimpl

KOIRULES_API = 2
"""The version of the hooks that this was written for."""

ENDING, TITLE = ".ods", "OpenDocument spreadsheet"
MOST_ROWS = 1_048_576
"""How many rows the usual programs open (LibreOffice 24.8, from memory); the format itself has no limit."""


@hookimpl
def koirules_record_readers() -> Sequence[RecordReader]:
    """The reader of .ods files."""
    return (RecordReader(ENDING, TITLE, _read),)


@hookimpl
def koirules_result_writers() -> Sequence[ResultWriter]:
    """The writer of .ods files."""
    return (ResultWriter(ENDING, TITLE, _write, MOST_ROWS),)


def _read(path: Path) -> Grid:
    from koirules_ods.reading import read_ods

    return read_ods(path)


def _write(path: Path, sheets: Sequence[Sheet]) -> None:
    from koirules_ods.writing import write_ods

    write_ods(path, sheets)
