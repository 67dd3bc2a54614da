"""Fish and their classes: records read for no more than that, and written as a table or as data."""

from __future__ import annotations

import csv
import json
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from attrs import evolve

from koirules.classes.placing import GROUP, SIZE, Placed
from koirules.problems import Problem, class_tables
from koirules.problems.saving import unknown_output_ending
from koirules.records.columns import match_columns
from koirules.records.records import read_table
from koirules.records.rows import read_rows
from koirules.records.safe_text import for_csv, without_controls
from koirules.records.writing import check_folder, write_beside
from koirules.results.record import Record
from koirules.values import frozen
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.traits import Trait

_ENDINGS = (".csv", ".json")


@frozen
class Classed:
    """A fish with its class, and what was said of it: the variety as it was understood, the measure as it was written."""

    fish: str
    variety: str
    measured: str
    placed: Placed


def read_for_classes(path: Path, measure: Trait | None) -> tuple[tuple[Record, ...], tuple[Problem, ...]]:
    """The fish of a file with one trait, and the label `variety` where there is such a column; other columns are passed over."""
    table = read_table(path)
    named = {folded(heading.text): heading.text for heading in table.headings}
    traits: Mapping[str, Trait] = {} if measure is None else {measure.name: measure}
    columns, of_headings = match_columns(table, traits, ())
    problems = [problem for problem in of_headings if problem.code != "unknown-column"]
    if measure is not None and table.headings and not any(column.trait for column in columns.others):
        row = table.headings[0].row
        problems.append(class_tables.no_measured_column(table.file, row, measure.name, near(measure.name, named)))
    records, of_rows = read_rows(table, columns)
    return tuple(_of_fish(records)), (*table.problems, *problems, *of_rows)


def _of_fish(records: Sequence[Record]) -> Iterator[Record]:
    """The records without those of judges: the row without a judge goes before them, else what all of them measured alike."""
    by_fish: dict[str, list[Record]] = {}
    for record in records:
        by_fish.setdefault(record.fish, []).append(record)
    for record in records:
        judged = [one for one in by_fish[record.fish] if one.judge]
        if not record.judge:
            yield record
        elif len(judged) == len(by_fish[record.fish]) and record is judged[0]:
            alike = all(one.readings == record.readings for one in judged)
            yield record if alike else evolve(record, readings={})


def write_classes(path: Path, fish: Sequence[Classed], table: str, edition: str) -> Problem | None:
    """Write fish with their classes, as .csv or .json; a problem says why nothing was written."""
    if path.suffix.lower() not in _ENDINGS:
        return unknown_output_ending(str(path), path.suffix, _ENDINGS)
    problem = check_folder(path)
    if problem is not None:
        return problem
    if path.suffix.lower() == ".json":
        text = json.dumps(as_data(fish, table, edition), ensure_ascii=False, indent=1)
        return write_beside(path, lambda passing: _write_text(passing, text))
    return write_beside(path, lambda passing: _write_csv(passing, fish))


def as_data(fish: Sequence[Classed], table: str, edition: str) -> dict[str, object]:
    """Fish with their classes as objects for JSON: every size that it could be, `none` for no size."""
    rows = [
        {
            "fish": without_controls(one.fish),
            "variety": without_controls(one.variety) or None,
            "measured": without_controls(one.measured) or None,
            GROUP: one.placed.group or None,
            "class_sizes": list(one.placed.sizes),
        }
        for one in fish
    ]
    return {"table": table, "edition": edition, "fish": rows}


def _write_text(path: Path, text: str) -> None:
    path.write_text(f"{text}\n", encoding="utf-8", newline="\n", errors="replace")


def _write_csv(path: Path, fish: Sequence[Classed]) -> None:
    with path.open("w", encoding="utf-8", newline="", errors="replace") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["fish", "variety", "measured", GROUP, SIZE])
        for one in fish:
            cells = (one.fish, one.variety, one.measured, one.placed.group, one.placed.size)
            writer.writerow(for_csv(cell) for cell in cells)
