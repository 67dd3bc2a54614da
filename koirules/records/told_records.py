"""Records that are told one value after another: the file they stand in, safe on disk at every moment.

The file is an ordinary CSV of records. It is written whole beside its place, forced to the disk and renamed after every
value, so that a power cut leaves either the file before the value or the one with it.
"""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from contextlib import suppress
from pathlib import Path

from koirules.candidates.changes import exact_number
from koirules.problems import Problem
from koirules.problems.asking import value_not_kept
from koirules.records.safe_text import for_csv
from koirules.records.sheet_headings import heading_of
from koirules.records.table import FISH
from koirules.records.writing import write_beside
from koirules.results.mapping_record import LOOKED
from koirules.results.record import Record
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Count, Kind, Label, Number
from koirules.vocabulary.readings import Reading, Span, write_reading
from koirules.vocabulary.traits import Trait


def write_told(path: Path, records: Sequence[Record], traits: Sequence[Trait], labels: Sequence[str]) -> Problem | None:
    """Write records to a CSV file so that they survive a power cut; a problem says why they could not be written.

    traits: a column for each, headed as in a blank sheet. labels: columns behind them.
    """
    problem = write_beside(path, lambda passing: _write(passing, records, traits, labels))
    if problem is None:
        keep_folder(path)
    return problem


def keep_folder(path: Path) -> None:
    """Force the names in the folder of a file to the disk, on systems where a folder can be."""
    with suppress(OSError):
        folder = os.open(path.resolve().parent, os.O_RDONLY)
        try:
            os.fsync(folder)
        finally:
            os.close(folder)


def not_kept(file: str, record: Record, traits: Mapping[str, Trait]) -> Problem | None:
    """The problem of a record with something that could not be read again as it was."""
    if name_of(record.fish) != record.fish:
        return value_not_kept(file, record.fish, FISH, record.fish)
    for name, reading in record.readings.items():
        text = cell_of(traits[name], reading)
        if read_value(traits[name].kind, text) != reading:
            return value_not_kept(file, record.fish, name, text)
    return None


def name_of(text: str) -> str:
    """The name of a fish as it can be written and read again."""
    name = read_value(Label(), for_csv(text))
    return name if isinstance(name, str) else ""


def cell_of(trait: Trait, reading: Reading | None) -> str:
    """A reading as a cell of a sheet: numbers without the unit that stands in the header, where that says them exactly."""
    kind = trait.kind
    text = _short(kind, reading)
    if isinstance(kind, Number) and isinstance(reading, Span) and read_value(kind, text) != reading:
        # A week has no end as a decimal of days, and the other way round: then it stands in the unit that it is held in.
        low, high = (exact_number(Span(end, end), kind) for end in reading)
        return low if low == high else f"{low} to {high}"
    return text


def _short(kind: Kind, reading: Reading | None) -> str:
    match kind, reading:
        case (Number() | Count(), Span(low, high)) if low == high:
            symbol = kind.unit.symbol if isinstance(kind, Number) and kind.unit else ""
            return write_reading(kind, reading).removesuffix(symbol).rstrip()
        case (Label(), str(text)):
            return for_csv(text)
        case _:
            return write_reading(kind, reading)


def _write(path: Path, records: Sequence[Record], traits: Sequence[Trait], labels: Sequence[str]) -> None:
    import csv

    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        looked = [LOOKED] if any(record.looked is not None for record in records) else []
        writer.writerow([FISH, *looked, *(for_csv(heading_of(trait)) for trait in traits), *map(for_csv, labels)])
        for record in records:
            said = [{True: "yes", False: "no", None: ""}[record.looked]] if looked else []
            cells = [
                "?" if trait.name in record.cannot_tell else cell_of(trait, record.readings.get(trait.name))
                for trait in traits
            ]
            carried = (for_csv(record.labels.get(label, "")) for label in labels)
            writer.writerow([for_csv(record.fish), *said, *cells, *carried])
        file.flush()
        os.fsync(file.fileno())
