"""The blank sheet of a variety, written, looked into, filled in with invented records, and read again."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from xml.etree import ElementTree
from zipfile import ZipFile

from koirules.records.records import read_records
from koirules.records.sheet import write_sheet
from koirules.records.sheet_headings import heading_of
from koirules.records.table import FISH, letters_of
from koirules.records.xlsx_sheet import words_offered
from koirules.vocabulary.kinds import Choice, Colours, Label, Patches, Places, Scale, YesNo
from koirules.vocabulary.traits import Trait, Variety

_MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
"""The namespace of SpreadsheetML (ECMA-376)."""


def of_sheets(variety: Variety, records: Sequence[Mapping[str, str]], folder: Path) -> Iterator[str]:
    """What is wrong with the blank sheets of a variety or with filling them in, a sentence each.

    records: cells by trait. folder: an empty one, to write into.
    """
    for ending in (".xlsx", ".csv"):
        path = folder / f"blank{ending}"
        problem = write_sheet(path, variety, fish=3)
        if problem is not None:
            yield f"its blank sheet ({ending}) cannot be written: {problem.cause}"
            return
        for told in read_records(path, variety.traits).problems:
            if not told.warning:
                yield f"its blank sheet ({ending}) cannot be read again: {told.cause}"
    yield from _of_checks(variety, folder / "blank.xlsx")
    filled = folder / "filled.csv"
    _fill_in(filled, list(variety.traits.values()), records)
    batch = read_records(filled, variety.traits)
    for told in batch.problems:
        yield f"a sheet filled in with invented records is not read: {told.site}: {told.cause}"
    if not batch.problems and len(batch.records) != len(records):
        yield f"of {len(records)} invented records only {len(batch.records)} are read from a sheet"


def _fill_in(path: Path, traits: Sequence[Trait], records: Sequence[Mapping[str, str]]) -> None:
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow([FISH, *map(heading_of, traits)])
        for number, record in enumerate(records, 1):
            writer.writerow([f"fish {number}", *(record.get(trait.name, "") for trait in traits)])


def _of_checks(variety: Variety, path: Path) -> Iterator[str]:
    """Whether each column has its drop-down or its check of numbers, in the words of the trait."""
    with ZipFile(path) as parts:
        root = ElementTree.fromstring(parts.read("xl/worksheets/sheet1.xml"))  # noqa: S314 - written a moment ago
    found: dict[str, ElementTree.Element] = {}
    for check in root.iter(f"{_MAIN}dataValidation"):
        for cells in check.get("sqref", "").split():
            found[re.sub(r"[0-9:].*", "", cells)] = check
    for column, trait in enumerate(variety.traits.values(), 1):
        if isinstance(trait.kind, Label | Patches | Colours):
            continue
        check_of = found.get(letters_of(column))
        if check_of is None:
            yield f"the blank sheet does not check its column {trait.name}"
        elif isinstance(trait.kind, YesNo | Scale | Choice | Places):
            listed = check_of.findtext(f"{_MAIN}formula1") or ""
            if not listed.startswith("lists!") and listed.strip('"').split(",") != list(words_offered(trait.kind)):
                yield f"the drop-down of {trait.name} offers {listed}, not its values"
