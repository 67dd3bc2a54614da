"""Problems of asking for records fish by fish: the file they go into and the journal beside it."""

from __future__ import annotations

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import quoted, visible


def told_only_as_csv(file: str, ending: str) -> Problem:
    """The file to write has another ending than .csv."""
    what = f"Asking does not write files that end in {quoted(ending)}." if ending else "The name has no ending."
    return Problem("ask-not-csv", Cell(file), what, "Choose a name that ends in .csv.")


def not_asked_for(file: str, journal: str) -> Problem:
    """The file is there already, but was not made by asking."""
    return Problem(
        "ask-not-begun-here",
        Cell(file),
        f'The file is there already, and no journal "{visible(journal)}" is beside it.',
        f"To go on from what is recorded in it, give it with --records {quoted(file)} and write to another file.",
    )


def broken_journal(file: str, row: int) -> Problem:
    """A line of the journal that cannot be read."""
    return Problem(
        "ask-broken-journal",
        Cell(file, row),
        "This line of the journal cannot be read; somebody may have changed it.",
        "The records are whole: give them with --records and write to another file. Only what cannot be told is asked again.",
    )


def lost_records(file: str, journal: str) -> Problem:
    """The journal is there, but its records are not."""
    return Problem(
        "ask-lost-records",
        Cell(file),
        f'The file is not there, but the journal of it is ("{visible(journal)}").',
        "Put the file back, or move the journal away to begin anew.",
    )


def value_not_kept(file: str, fish: str, column: str, text: str) -> Problem:
    """A value that would not be read again as it was."""
    return Problem(
        "ask-value-not-kept",
        Cell(file, None, visible(column)),
        f"{quoted(text)} of {quoted(fish)} would not be read again as it is.",
        "Write it with at most six decimals, and without a sign such as = at its beginning.",
    )


def not_noted(file: str, journal: str) -> Problem:
    """A sheet that no session of notes has made."""
    return Problem(
        "not-noted",
        Cell(file),
        f"This file is there already, and {journal} with the notes that it was made of is not.",
        "Give another name, so that nothing of it is lost.",
    )


def changed_since(file: str) -> Problem:
    """A sheet that was changed by hand since it was made of its notes."""
    return Problem(
        "changed-since",
        Cell(file),
        "This file is not what its notes say: somebody has changed it since.",
        "Give another name for the sheet of this session, or put the changes into the notes and delete this file.",
    )
