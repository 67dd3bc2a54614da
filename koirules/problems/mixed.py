"""Problems of batches that several standards grade."""

from __future__ import annotations

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import quoted


def column_of_others(file: str, row: int, column: str, fish: int, standard: str) -> Problem:
    """Fish have something written in a column that only other varieties have."""
    many = f"{fish} fish have" if fish > 1 else "One fish has"
    return Problem(
        "column-of-others",
        Cell(file, row, column),
        f"{many} something written here that the standard they are graded by, {quoted(standard)}, knows nothing of.",
        "It was not read. Check the variety of these fish, or leave the cells blank.",
        warning=True,
    )
