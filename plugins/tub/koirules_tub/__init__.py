"""A page for a wet phone: sorting at the tub, served by a laptop in the shed.

In: a standard. Out: `koirules tub`, and files of it (`.tub`) as records for every other command.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from koirules.hooks import Grid, RecordReader, Subcommand, hookimpl

KOIRULES_API = 2


@hookimpl
def koirules_subcommands() -> Sequence[Subcommand]:
    """`koirules tub`."""
    return (Subcommand("tub", "Serve a page for phones at the tub.", "koirules_tub.commands:tub"),)


@hookimpl
def koirules_record_readers() -> Sequence[RecordReader]:
    """The files of the tub as records: `koirules grade RULES FILE.tub`."""
    return tuple(RecordReader(ending, "file of the tub", _read) for ending in (".tub", ".db"))


def _read(path: Path) -> Grid:
    from koirules_tub.records import read_records

    return read_records(path)
