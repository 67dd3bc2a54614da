"""Results as a CSV file."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path

from koirules.records.about import About
from koirules.records.not_graded import Row
from koirules.records.recorded_values import Measured
from koirules.records.result_columns import columns_of
from koirules.records.safe_text import for_csv
from koirules.vocabulary.kinds import shortest


def write_csv(path: Path, results: Sequence[Row], about: About) -> None:
    """Write one row a fish, parted by commas, in UTF-8; text that would begin a formula has an apostrophe before it."""
    import csv

    columns = columns_of(results, about.recorded)
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(for_csv(heading) for heading in columns.headings)
        for result in results:
            writer.writerow(_written(cell) for cell in columns.row(result))


def _written(cell: str | Decimal | None) -> str:
    match cell:
        case None:
            return ""
        case Measured():
            return shortest(cell)
        case Decimal():
            return f"{cell:.2f}"
        case str():
            return for_csv(cell)
