"""Formats that plugins bring, for the readers and writers of this room.

The room lies below that of plugins, which hands it the formats when it is imported; the plugins themselves are loaded when a
file has an ending that nothing here reads or writes.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.problems import Problem, plugging, recording
from koirules.problems.failing import failure_told
from koirules.problems.record_files import far_cell, unreadable_file
from koirules.records.exchange import (
    MOST_CELLS,
    CellError,
    Grid,
    RecordReader,
    ResultWriter,
    Sheet,
    UnreadableError,
)
from koirules.values import define, frozen

if TYPE_CHECKING:
    from koirules.records.table import Table

TABLES = (".csv", ".tsv", ".xlsx", ".jsonl", ".ndjson", ".json", ".txt")
"""The endings of the formats of records that we read ourselves (`koirules.records.records.READERS`, and notes)."""

ENDINGS_READ = (*TABLES, ".parquet", ".koi")
"""The endings that no plugin can claim for a reader: those of our own formats, and of rule files."""

ENDINGS_WRITTEN = (".csv", ".xlsx", ".json", ".html", ".parquet", ".koi")
"""The endings that no plugin can claim for a writer."""


@frozen
class Formats:
    """The formats of plugins by ending, each with the plugin that gives it as problems name it."""

    readers: Mapping[str, tuple[RecordReader, str]]
    writers: Mapping[str, tuple[ResultWriter, str]]


@define
class _Plugged:
    load: Callable[[], Formats] = lambda: Formats({}, {})


_plugged = _Plugged()


def use_formats(load: Callable[[], Formats]) -> None:
    """Say where the formats of plugins come from. load: called each time when one is looked for."""
    _plugged.load = load


def plugged_formats() -> Formats:
    """The formats of the installed plugins."""
    return _plugged.load()


def is_table(name: str) -> bool:
    """Whether a name ends as files of records do."""
    ending = Path(name).suffix.lower()
    return ending in TABLES or (ending not in {"", ".koi"} and ending in plugged_formats().readers)


def read_plugged(path: Path, reader: RecordReader, plugin: str) -> Table:
    """The table of a file by the reader of a plugin; whatever it raises is a problem of the file that names the plugin."""
    from koirules.records.table import refused
    from koirules.records.text_files import check_readable

    file = str(path)
    unreadable = check_readable(path)
    if unreadable is not None:
        return refused(file, unreadable)
    try:
        grid = reader.read(path)
    except UnreadableError as error:
        return refused(file, unreadable_file(file, error.why, error.mend))
    except OSError as error:
        return refused(file, unreadable_file(file, error.strerror or str(error)))
    except Exception as error:  # a stranger's code may raise anything
        return refused(file, plugging.reader_failed(file, plugin, failure_told(error, reader.read)))
    if not isinstance(grid, Grid):
        return refused(file, plugging.reader_failed(file, plugin, f"it gave a {type(grid).__name__}, and no Grid"))
    return _table(file, grid)


def _table(file: str, grid: Grid) -> Table:
    from koirules.records.table import Table, Told, letters_of, refused, table_of

    if grid.merged:
        row = int("".join(letter for letter in grid.merged[0].partition(":")[0] if letter.isdigit()) or 1)
        return refused(file, recording.merged_cells(file, row, grid.merged))
    widest = max((len(row) for row in grid.rows), default=0)
    if len(grid.rows) * widest > MOST_CELLS:
        return refused(file, far_cell(file, len(grid.rows), letters_of(widest - 1)))
    errors = [
        (number, column, cell.text)
        for number, row in enumerate(grid.rows, 1)
        for column, cell in enumerate(row)
        if isinstance(cell, CellError)
    ]
    rows = [[Told.TOLD if isinstance(cell, CellError) else cell for cell in row] for row in grid.rows]
    table = table_of(file, list(enumerate(rows, 1)), delimiter=None)
    names = [heading.text for heading in table.headings]
    problems = [
        recording.formula_error(
            file, row, names[column] if column < len(names) and names[column] else letters_of(column), text
        )
        for row, column, text in errors
    ]
    return Table(table.file, table.headings, table.rows, (*table.problems, *problems))


def write_plugged(path: Path, writer: ResultWriter, plugin: str, sheets: Sequence[Sheet]) -> Problem | None:
    """Write sheets by the writer of a plugin; a problem says why nothing was written."""
    from koirules.records.writing import write_beside

    failed: list[Problem] = []

    def write(passing: Path) -> None:
        try:
            writer.write(passing, sheets)
        except OSError:
            raise
        except Exception as error:  # a stranger's code may raise anything
            failed.append(plugging.writer_failed(str(path), plugin, failure_told(error, writer.write)))
            raise OSError(str(error)) from error

    problem = write_beside(path, write)
    return failed[0] if failed else problem
