"""Blank record sheets as CSV: the header and nothing else."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules.records.safe_text import for_csv
from koirules.records.sheet_headings import heading_of
from koirules.records.table import FISH
from koirules.vocabulary.traits import Trait, Variety


def write_csv_sheet(
    path: Path,
    variety: Variety,  # noqa: ARG001 - as XLSX
    traits: Sequence[Trait],
    fish: int,  # noqa: ARG001
    phrases: Mapping[str, Sequence[str]],  # noqa: ARG001
) -> None:
    """Write a header with `fish` and a column for each trait."""
    import csv

    with path.open("w", encoding="utf-8", newline="") as file:
        csv.writer(file, lineterminator="\n").writerow([FISH, *(for_csv(heading_of(trait)) for trait in traits)])
