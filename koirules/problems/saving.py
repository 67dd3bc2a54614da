"""Problems of writing: results, record sheets and whatever else goes into a file."""

from __future__ import annotations

import errno
import os
from collections.abc import Sequence

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import in_words, quoted, visible

_FULL = {os.strerror(getattr(errno, name)).casefold() for name in ("ENOSPC", "EDQUOT", "EFBIG") if hasattr(errno, name)}
"""How systems say that a disk, a share of it or a file is full."""


def unknown_output_ending(file: str, ending: str, endings: Sequence[str]) -> Problem:
    """The ending of the name is none that can be written."""
    what = f"Nothing is written that ends in {quoted(ending)}." if ending else "The name has no ending."
    pdf = " A browser prints that page, or saves it as PDF." if ending.lower() == ".pdf" and ".html" in endings else ""
    return Problem("unknown-ending", Cell(file), what, f"Choose a name that ends in {in_words(endings)}.{pdf}")


def no_such_folder(file: str, folder: str) -> Problem:
    """The folder to write into is not there."""
    return Problem(
        "no-such-folder",
        Cell(file),
        f'There is no folder "{visible(folder)}".',
        "Make the folder first, or give another one.",
    )


def unwritable(file: str, folder: str, why: str) -> Problem:
    """The system does not let us write there."""
    if any(full in why.casefold() for full in _FULL):
        return Problem(
            "unwritable",
            Cell(file),
            f'It was not written: there is no room for it in "{visible(folder)}" ({visible(why)}).',
            "Make room on the disk, or give a folder on another one. What stood there before is as it was.",
        )
    return Problem(
        "unwritable",
        Cell(file),
        f'Nothing can be written into "{visible(folder)}": {visible(why)}.',
        "If the file is open in another program, close it there; otherwise give a folder that is yours to write to.",
    )


def too_many_rows(file: str, rows: int, most: int) -> Problem:
    """There are more rows than a spreadsheet can hold."""
    return Problem(
        "too-many-rows",
        Cell(file),
        f"There are {rows:,} rows, but a sheet holds {most:,}.",
        "Write a .csv or .json file, or fewer rows.",
    )


def too_many_fish(file: str, fish: int, most: int) -> Problem:
    """There are more fish than a page for reading goes to."""
    return Problem(
        "too-many-fish",
        Cell(file),
        f"There are {fish:,} records, but a page goes to {most:,}: a phone would hardly open it, and nobody reads that many.",
        "Grade them in parts for their pages, or write a .csv or .xlsx file of them all.",
    )


def no_such_trait(file: str, name: str, variety: str, meant: str | None) -> Problem:
    """A trait was asked for that the variety does not have."""
    mend = f"Did you mean {quoted(meant)}?" if meant else "Check the spelling, or ask for all traits."
    return Problem("no-such-trait", Cell(file), f"The variety {variety} has no trait {quoted(name)}.", mend)


def held_by_another(file: str, who: str) -> Problem:
    """Another process writes the file. who: in words."""
    return Problem(
        "file-held",
        Cell(file),
        f"The file is in use: {visible(who)}, holds it.",
        "End that one first, or write to another file. Nothing was changed.",
    )
