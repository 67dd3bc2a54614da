"""Files of records that are read piece by piece, as columns: they may be larger than the memory."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from pathlib import Path

from koirules.problems import Problem
from koirules.problems.record_files import unreadable_file
from koirules.records.columns import Columns, match_columns
from koirules.records.large_csv import open_csv
from koirules.records.large_rows import Frames, RefusedError, Rows
from koirules.records.table import Heading, Table
from koirules.values import frozen
from koirules.vocabulary.traits import Trait

ENDINGS = (".csv", ".tsv", ".parquet")
_ROWS = 100_000
"""So many rows are in memory at once."""


@frozen
class LargeFile:
    """A file that is ready to be read: what its columns hold, and how its rows come.

    columns: by index; frames name their columns by it. first_row: the number of the first row of records, as a spreadsheet
    counts. frames: frames of some row groups (None, None: of the whole file), in order.
    """

    file: str
    columns: Columns
    first_row: int
    frames: Frames


def open_large(
    path: Path, traits: Mapping[str, Trait], labels: Collection[str]
) -> tuple[LargeFile | None, tuple[Problem, ...]]:
    """Look at the head of a file; None where that shows that it cannot be read. Problems may be warnings."""
    file = str(path)
    try:
        opened = _open_parquet(path) if path.suffix.lower() == ".parquet" else open_csv(path)
    except RefusedError as refused:
        return None, (refused.problem,)
    except (OSError, ValueError) as error:
        return None, (unreadable_file(file, _first_line(error), "Make the file again, or leave it out."),)
    table, first_row, frames = opened
    columns, problems = match_columns(table, traits, labels)
    found = (*table.problems, *problems)
    if any(not problem.warning for problem in found):
        return None, found
    return LargeFile(file, columns, first_row, frames), found


def _open_parquet(path: Path) -> tuple[Table, int, Frames]:
    import polars as pl
    import pyarrow.parquet as pq

    schema = pq.read_schema(path)
    table = Table(str(path), tuple(Heading(name, 1) for name in schema.names), (), ())

    def frames(first: int | None, last: int | None) -> Iterator[Rows]:
        with pq.ParquetFile(path) as opened:
            groups = range(opened.num_row_groups)[first:last]
            for batch in opened.iter_batches(_ROWS, row_groups=list(groups)):
                made = pl.DataFrame(batch)
                made.columns = [str(i) for i in range(made.width)]
                yield Rows(made, made.height)

    return table, 1, frames


def row_groups(path: Path) -> list[int]:
    """The number of rows of each row group of a Parquet file. Raises OSError or ValueError where it is none."""
    import pyarrow.parquet as pq

    metadata = pq.read_metadata(path)
    return [metadata.row_group(i).num_rows for i in range(metadata.num_row_groups)]


def _first_line(error: Exception) -> str:
    return (str(error).splitlines() or [type(error).__name__])[0][:200]
