"""Records of a batch from a file, whatever its format."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import evolve

from koirules.problems import Cell, Problem
from koirules.problems.record_files import no_such_file, unknown_record_ending, unreadable_file
from koirules.records.columns import match_columns
from koirules.records.csv_records import read_csv
from koirules.records.jsonl_records import read_json, read_jsonl
from koirules.records.notes_records import ENDING as NOTES
from koirules.records.notes_records import read_notes_file
from koirules.records.plugged_formats import is_table, plugged_formats, read_plugged
from koirules.records.rows import read_rows
from koirules.records.table import Table, refused
from koirules.results.record import Record
from koirules.rounds.looks import latest_looks
from koirules.values import frozen
from koirules.vocabulary.nearness import near
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:  # most records are no notes
    from koirules.notes.reader import NotesReader


def _read_xlsx(path: Path) -> Table:
    from koirules.records.xlsx_records import read_xlsx

    return read_xlsx(path)


READERS: dict[str, Callable[[Path], Table]] = {
    ".csv": read_csv,
    ".tsv": read_csv,
    ".xlsx": _read_xlsx,
    ".jsonl": read_jsonl,
    ".ndjson": read_jsonl,
    ".json": read_json,
}
"""The reader of each ending."""


@frozen
class Batch:
    """The records of a file.

    records: those in which nothing was wrong, in the order of the file. problems: all that was found, from the top of
    the file to its end; a batch with any that is more than a warning should not be graded. label_columns: the names of
    the labels that its records carry, in the order of the columns.
    """

    file: str
    records: tuple[Record, ...]
    problems: tuple[Problem, ...]
    label_columns: tuple[str, ...]


def read_records(
    path: Path,
    traits: Mapping[str, Trait],
    labels: Collection[str] = (),
    notes: Callable[[], NotesReader] | None = None,
    *,
    broken_as_open: bool = False,
) -> Batch:
    """Read a file of records; what is wrong with it is in the batch's problems, and nothing is ever raised for it.

    traits: what columns may hold, by name. labels: further columns that are carried into the results as they are. Of a fish
    that was looked at on several days it is the latest look, with the one before. notes: makes what reads files of notes and
    phrases in cells; without it there are none. broken_as_open: what cannot be read is taken as not recorded (read_rows).
    """
    batch = read_every_look(path, traits, labels, notes, broken_as_open=broken_as_open)
    return evolve(batch, records=latest_looks(batch.records))


def read_every_look(
    path: Path,
    traits: Mapping[str, Trait],
    labels: Collection[str] = (),
    notes: Callable[[], NotesReader] | None = None,
    *,
    broken_as_open: bool = False,
) -> Batch:
    """The same with every look at a fish as a record of its own, in the order of the file."""
    table = read_table(path, notes)
    columns, of_headings = match_columns(
        table, traits, labels, (lambda _: ()) if notes is None else lambda words: notes().called(words)
    )
    records, of_rows = read_rows(
        table,
        columns,
        None if notes is None else lambda trait, text: _by_phrase(notes(), trait, text),
        broken_as_open=broken_as_open,
    )
    problems = sorted([*table.problems, *of_headings, *of_rows], key=_row_of)
    carried = tuple(column.label for column in columns.others if column.label is not None)
    return Batch(table.file, records, tuple(problems), carried)


def _by_phrase(reader: NotesReader, trait: Trait, text: str) -> tuple[Reading, bool] | None:
    """What a phrase says of a trait in a cell, and whether the page has that phrase itself."""
    said = reader.cell(trait, text)
    return None if said is None else (said, reader.is_own(trait, text))


def read_table(path: Path, notes: Callable[[], NotesReader] | None = None) -> Table:
    """The table of a file in whatever format its ending names; what is wrong with the file is in the table."""
    file = str(path)
    ending = path.suffix.lower()
    try:
        if path.is_dir():
            return refused(file, unreadable_file(file, "it is a folder", "Give the file in it."))
        if not path.exists():
            return refused(file, no_such_file(file, _near_file(path)))
        if not path.is_file():
            return refused(file, unreadable_file(file, "it is no ordinary file", "Give a file of records."))
    except (OSError, ValueError) as error:
        return refused(file, unreadable_file(file, str(error), "Check the name."))
    if ending in READERS:
        return READERS[ending](path)
    if ending == NOTES and notes is not None:
        return read_notes_file(path, notes)
    plugged = plugged_formats().readers
    if ending not in plugged:
        others = [f"{end} ({reader.title})" for end, (reader, _) in plugged.items()]
        return refused(file, unknown_record_ending(file, path.suffix, others))
    reader, plugin = plugged[ending]
    return read_plugged(path, reader, plugin)


def _near_file(path: Path) -> str | None:
    try:
        return near(path.name, sorted(other.name for other in path.parent.iterdir() if is_table(other.name)))
    except OSError:
        return None


def _row_of(problem: Problem) -> int:
    """Where a problem comes in the order of the file: what is of no row, such as the encoding, comes first."""
    return (problem.site.row or 0) if isinstance(problem.site, Cell) else 0
