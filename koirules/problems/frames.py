"""Problems of frames that a program gives to be graded."""

from __future__ import annotations

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import visible


def column_of_results(name: str) -> Problem:
    """A column of the frame is called like one that the results add."""
    return Problem(
        "column-taken",
        Cell("frame", None, visible(name)),
        "A column of the results has this name.",
        "Rename it, or leave it out of the frame.",
    )


def nearly_a_trait(name: str, meant: str) -> Problem:
    """A column is spelt nearly like a trait that the rules read and that no column has."""
    return Problem(
        "unknown-column",
        Cell("frame", None, visible(name)),
        f'No trait is called so, and "{meant}", which the rules read, has no column.',
        f'Rename it to "{meant}" if that is meant, else to something less like it.',
    )


def doubled_column(name: str) -> Problem:
    """Two columns of the frame have one name."""
    return Problem(
        "doubled-column",
        Cell("frame", None, visible(name)),
        "Two columns have this name, and nobody knows which of them is meant.",
        "Rename one of them, or leave it out.",
    )


def looks_in_frame() -> Problem:
    """A frame with several looks of one sorting."""
    return Problem(
        "looks-in-frame",
        Cell("frame", None, "look"),
        "A frame has one row for each sorting of a record, but this one numbers its looks.",
        "Grade the looks as records (`grade_batch`, or a file), which puts those of one sorting together.",
    )
