"""Problems of fitting the coefficients of growth."""

from __future__ import annotations

from koirules.problems.problem import Cell, Problem


def too_few_looks(file: str, pairs: int, fewest: int, left_out: int) -> Problem:
    """Too few pairs of looks at the same fish, or too little measured in them."""
    there = "is no pair" if pairs == 0 else "is one pair" if pairs == 1 else f"are {pairs} pairs"
    shrunk = f" (besides {left_out} that were no longer at the second)" if left_out else ""
    return Problem(
        "too-few-looks",
        Cell(file),
        f"There {there} of looks at the same one on two days with the length and the weight, the girth or the red in both"
        f"{shrunk}, and fewer than {fewest} say nothing of growth.",
        'Give a file with the columns "fish" and "date", a row for each look, and measure the same one again when it has grown.',
    )
