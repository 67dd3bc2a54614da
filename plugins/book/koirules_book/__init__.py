"""The book of fish: what was seen, sold and won over the years, and what that says about a standard.

In: records, results and events of fish. Out: one SQLite file, pages about a fish or a year, figures on whether a standard
foresaw what came, and proposed editions with weights learnt from past picks.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from koirules.hooks import Grid, RecordReader, Subcommand, hookimpl

KOIRULES_API = 2


@hookimpl
def koirules_subcommands() -> Sequence[Subcommand]:
    """`koirules book` and `koirules learn`."""
    return (
        Subcommand(
            "book", "Keep a book of fish over the years, and ask it what became of them.", "koirules_book.commands:book"
        ),
        Subcommand("learn", "Propose weights and grade lines from past picks.", "koirules_book.commands:learn"),
    )


@hookimpl
def koirules_record_readers() -> Sequence[RecordReader]:
    """Books as files of records: `koirules grade RULES farm.book`, `koirules growth RULES farm.book`."""
    return (RecordReader(".book", "book of fish", _read),)


def _read(path: Path) -> Grid:
    from koirules_book.reading import read_book

    return read_book(path)
