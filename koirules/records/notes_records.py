"""A text file of notes as a table of records."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.problems import Problem
from koirules.records.table import Heading, Row, Table, refused
from koirules.records.text_files import read_text

if TYPE_CHECKING:  # most records are no notes
    from koirules.notes.reader import NotesReader

ENDING = ".txt"
"""How files of notes end."""


def read_notes_file(path: Path, reader: Callable[[], NotesReader]) -> Table:
    """The table of a file of notes. reader: makes what reads them, which takes a while."""
    from koirules.notes.sheet import headings_of, row_of

    text = read_text(path)
    if isinstance(text, Problem):
        return refused(str(path), text)
    notes = reader().read(text, str(path))
    headings = headings_of(notes)
    rows = tuple(
        Row(fish.line, [row.get(name, "") for name in headings]) for fish in notes.fish for row in [row_of(fish, notes)]
    )
    return Table(str(path), tuple(Heading(name, 1) for name in headings), rows, notes.problems)
