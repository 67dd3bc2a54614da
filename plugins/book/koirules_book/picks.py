"""Past picks from a file: verdicts beside the records, or pairs of fish with the better one first."""

from __future__ import annotations

import csv
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from attrs import field, frozen
from python_calamine import CalamineWorkbook

from koirules_book import problems as say
from koirules_book.problems import BookError

if TYPE_CHECKING:
    from koirules import Problem, Standard

IN, OUT = "in", "out"


@frozen
class Verdicts:
    """The verdict of each fish as a number, and the names of these, worst first. given: what the standard gives, or None."""

    fish: tuple[str, ...]
    verdict: np.ndarray = field(eq=False)
    names: tuple[str, ...]


def read_verdicts(path: Path, standard: Standard, column: str) -> Mapping[str, str]:
    """The verdict of each fish: `in`, `out`, or a grade's name or title. Raises BookError with every problem."""
    rows = _rows(path)
    if not rows or column not in rows[0][1] or "fish" not in rows[0][1]:
        raise BookError(say.event_columns(str(path), [column], ["fish", column]))
    by_title = {title.casefold(): name for name, title in standard.grade_titles.items()}
    names = {name.casefold(): name for name in standard.grades}
    problems: list[Problem] = []
    found: dict[str, str] = {}
    for row, cells in rows:
        text = cells.get(column, "").casefold()
        if not text or not cells.get("fish"):
            continue
        if text in {IN, OUT}:
            found[cells["fish"]] = text
        elif text in names or text in by_title:
            found[cells["fish"]] = names.get(text) or by_title[text]
        else:
            expected = f"“in”, “out” or a grade ({', '.join(standard.grades)})"
            problems.append(say.event_cell(str(path), row, column, cells[column], expected))
    if len({text in {IN, OUT} for text in found.values()}) > 1:
        problems.append(
            say.cannot_tell(
                f"The column {column} has both “in” or “out” and names of grades.",
                "Write all verdicts in one of the two ways.",
            )
        )
    if problems:
        raise BookError(*problems)
    return found


def read_pairs(path: Path) -> Sequence[tuple[int, str, str]]:
    """Pairs of names, the better fish first, each with its row; empty where the file has no such columns."""
    rows = _rows(path)
    if not rows or not {"better", "worse"} <= rows[0][1].keys():
        return ()
    return [(row, cells["better"], cells["worse"]) for row, cells in rows if cells["better"] and cells["worse"]]


def _rows(path: Path) -> Sequence[tuple[int, Mapping[str, str]]]:
    if path.suffix.lower() not in {".csv", ".tsv"}:
        return _from_workbook(path)
    lines = path.read_text(encoding="utf-8-sig").splitlines()
    skipped = next((at for at, line in enumerate(lines) if not line.startswith("#")), len(lines))
    kept = lines[skipped:]
    if not kept:
        return ()
    reader = csv.DictReader(kept, delimiter=max(",;\t", key=kept[0].count))
    return [
        (
            number,
            {
                (name or "").strip(): (value or "").strip()
                for name, value in row.items()
                if isinstance(value, str | None)
            },
        )
        for number, row in enumerate(reader, 2 + skipped)
    ]


def _from_workbook(path: Path) -> Sequence[tuple[int, Mapping[str, str]]]:
    sheet = CalamineWorkbook.from_path(path).get_sheet_by_index(0).to_python()
    if not sheet:
        return ()
    headings = [str(cell).strip() for cell in sheet[0]]
    return [
        (number, {name: str(cell).strip() for name, cell in zip(headings, row, strict=False)})
        for number, row in enumerate(sheet[1:], 2)
    ]
