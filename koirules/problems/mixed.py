"""Problems of batches that several standards grade."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import quoted


def column_of_others(file: str, row: int, column: str, fish: int, standard: str) -> Problem:
    """Fish have something written in a column that only other varieties have."""
    many = f"{fish} records have" if fish > 1 else "One record has"
    return Problem(
        "column-of-others",
        Cell(file, row, column),
        f"{many} a value here, but the standard that grades them, {quoted(standard)}, has no such trait.",
        "The value was not used. Check the variety of these, or leave the cells blank.",
        warning=True,
    )


def meant_for_others(file: str, row: int, column: str, fish: int, words: Sequence[str], own: str) -> Problem:
    """Fish are recorded as of another variety or stage than the one standard that grades them is for."""
    many = f"{fish} records are" if fish > 1 else "One record is"
    more = f" and {len(words) - 3} others" if len(words) > 3 else ""
    return Problem(
        "fish-for-others",
        Cell(file, row, column),
        f"{many} recorded as {', '.join(map(quoted, words[:3]))}{more}, but this standard is for {quoted(own)}.",
        "They were graded by this standard. To grade each by its own, give the rules of each variety and stage.",
        warning=True,
    )


def standard_named_twice(rules: str) -> Problem:
    """One standard was given twice to grade a batch."""
    return Problem(
        "standard-named-twice",
        Cell(rules),
        "These rules are named twice.",
        "Name them once: a record is graded by one standard.",
    )


def no_rules_or_records(given: str, near: str | None) -> Problem:
    """What was given is neither the name of a rule set nor a file or folder."""
    return Problem(
        "no-rules-or-records",
        Cell(given),
        "There is no file, folder or installed rule set of this name.",
        f"Did you mean {quoted(near)}?"
        if near
        else "`koirules plugins` lists the rule sets; check the name and the folder.",
    )
