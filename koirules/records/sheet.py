"""Blank record sheets: a column a trait, for people to fill in and for us to read again."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from types import MappingProxyType

from koirules.problems import Problem
from koirules.problems.saving import no_such_trait, too_many_rows, unknown_output_ending
from koirules.records.csv_sheet import write_csv_sheet
from koirules.records.workbook import MOST_ROWS
from koirules.records.writing import write_beside
from koirules.records.xlsx_sheet import write_xlsx_sheet
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Trait, Variety

Phrases = Mapping[str, Sequence[str]]
"""By trait the words of a page that may stand in its cells."""

WRITERS: dict[str, Callable[[Path, Variety, Sequence[Trait], int, Phrases], None]] = {
    ".xlsx": write_xlsx_sheet,
    ".csv": write_csv_sheet,
}
"""The writer of each ending."""


def write_sheet(
    path: Path,
    variety: Variety,
    only: Sequence[str] = (),
    fish: int = 200,
    phrases: Phrases = MappingProxyType({}),
) -> Problem | None:
    """Write a blank record sheet of a variety; a problem says why nothing was written.

    only: the names of the traits to have columns for, in this order; all traits where there are none. fish: how many rows
    are prepared with drop-downs and checks. phrases: by trait the words of the page that may stand in its cells.
    """
    file, ending = str(path), path.suffix.lower()
    if ending not in WRITERS:
        return unknown_output_ending(file, path.suffix, tuple(WRITERS))
    for name in only:
        if name not in variety.traits:
            return no_such_trait(file, name, variety.name, near(name, variety.traits))
    if fish >= MOST_ROWS:
        return too_many_rows(file, fish, MOST_ROWS - 1)
    traits = [variety.traits[name] for name in dict.fromkeys(only)] or list(variety.traits.values())
    return write_beside(path, lambda passing: WRITERS[ending](passing, variety, traits, fish, phrases))
