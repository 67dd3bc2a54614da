"""Files of records that are read piece by piece, as columns: they may be larger than the memory."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import frozen

from koirules.formats.columns import Columns, match_columns
from koirules.formats.csv_records import csv_shape
from koirules.formats.table import Heading, Table
from koirules.problems import Problem
from koirules.problems.record_files import unreadable_file
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    import polars as pl

ENDINGS = (".csv", ".tsv", ".parquet")
_ROWS = 100_000
_BLOCK = 8_000_000
"""So many rows, or so many bytes of text, are in memory at once."""

_HEAD = 1 << 18


@frozen
class Rows:
    """Some rows of a file. taken: how many there were with those that are blank; places: where among them these stood."""

    frame: pl.DataFrame
    taken: int
    places: pl.Series | None = None

    def place(self, row: int) -> int:
        """Where a row of the frame stood among those that were taken."""
        return row if self.places is None else int(self.places[row])


@frozen
class LargeFile:
    """A file that is ready to be read: what its columns hold, and how its rows come.

    columns: by index; frames name their columns by it. first_row: the number of the first row of records, as a spreadsheet
    counts. frames: frames of some row groups (None, None: of the whole file), in order.
    """

    file: str
    columns: Columns
    first_row: int
    frames: Callable[[int | None, int | None], Iterator[Rows]]


def open_large(
    path: Path, traits: Mapping[str, Trait], labels: Collection[str]
) -> tuple[LargeFile | None, tuple[Problem, ...]]:
    """Look at the head of a file; None where that shows that it cannot be read. Problems may be warnings."""
    file = str(path)
    try:
        opened = _open_parquet(path) if path.suffix.lower() == ".parquet" else _open_csv(path)
    except (OSError, ValueError) as error:
        return None, (unreadable_file(file, _first_line(error), "Make the file again, or leave it out."),)
    if isinstance(opened, Problem):
        return None, (opened,)
    table, first_row, frames = opened
    columns, problems = match_columns(table, traits, labels)
    found = (*table.problems, *problems)
    if any(not problem.warning for problem in found):
        return None, found
    return LargeFile(file, columns, first_row, frames), found


_Opened = tuple[Table, int, Callable[[int | None, int | None], Iterator["Rows"]]]


def _open_csv(path: Path) -> _Opened | Problem:
    with path.open("rb") as opened:
        head = opened.read(_HEAD)
    whole = len(head) < _HEAD
    text = head.decode("utf-8-sig", errors="strict" if whole else "ignore")
    shape = csv_shape(str(path), text if whole else text[: text.rfind("\n") + 1])
    if isinstance(shape, Problem):
        return shape
    width = len(shape.table.headings)

    def frames(_first: int | None, _last: int | None) -> Iterator[Rows]:
        import polars as pl

        names = {str(i): pl.String for i in range(width)}
        blank = pl.all_horizontal(pl.all().is_null())
        note = pl.col("0").str.starts_with("# ") & pl.all_horizontal(pl.all().exclude("0").is_null())
        for block in _blocks(path, shape.lines_before):
            frame = pl.read_csv(block, separator=shape.delimiter, has_header=False, schema=names, infer_schema=False)
            kept = frame.select(~(blank | note.fill_null(value=False))).to_series()
            yield Rows(frame.filter(kept), frame.height, None if kept.all() else kept.arg_true())

    return shape.table, shape.lines_before + 1, frames


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


def _open_parquet(path: Path) -> _Opened:
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
