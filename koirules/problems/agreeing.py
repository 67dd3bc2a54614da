"""Problems of setting verdicts beside rules, sorters and looks."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import in_words, quoted


def no_verdicts(file: str) -> Problem:
    """A file without a verdict."""
    return Problem(
        "no-verdicts",
        Cell(file, None, "verdict"),
        "No record of this file has a verdict.",
        "Add a column `verdict` with in, out, unsure or the name of a grade.",
    )


def unknown_verdict(file: str, row: int, said: str, known: Sequence[str]) -> Problem:
    """A verdict that says neither in nor out, nor names a grade."""
    return Problem(
        "unknown-verdict",
        Cell(file, row, "verdict"),
        f"{quoted(said)} is no verdict.",
        f"Write {in_words(known, 'or')}.",
    )


def no_two_looks(file: str) -> Problem:
    """A file in which no fish has two verdicts."""
    return Problem(
        "no-two-verdicts",
        Cell(file, None, "verdict"),
        "No record of this file has a verdict at two looks.",
        "Number the looks in a column `look`, or date them in a column `date`, each look with its verdict.",
    )


def no_such_grade(name: str, known: Sequence[str]) -> Problem:
    """A grade behind `--in` that the standard does not have."""
    return Problem(
        "no-such-grade",
        Cell("--in"),
        f"The standard has no grade {quoted(name)}.",
        f"Its grades are {in_words(known, 'and')}.",
    )


def nothing_in_common(file: str) -> Problem:
    """Several judges, none of whom said anything of a fish that another one did."""
    return Problem(
        "nothing-in-common",
        Cell(file),
        "No fish has something that two judges said of it.",
        "Let several judges record the same fish, under the same names of fish.",
    )
