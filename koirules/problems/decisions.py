"""Problems of what a person decided about fish."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import in_words, quoted


def _row(file: str, row: int, column: str) -> Cell:
    return Cell(file or "decisions", row or None, column)


def decision_of_nobody(file: str, row: int, fish: str, near: str | None) -> Problem:
    """A decision about a fish that the batch does not have."""
    return Problem(
        "decision-of-nobody",
        _row(file, row, "fish"),
        f"There is no {quoted(fish)} in the batch.",
        f"Did you mean {quoted(near)}?" if near else "Take the names from the record sheet.",
    )


def decision_without(file: str, row: int, fish: str, what: str) -> Problem:
    """A decision without a reason, or without a name behind it."""
    cause, mend = {
        "reason": ("has no reason", "Write why: it is shown wherever the decision is."),
        "by": ("does not say who made it", "Write a name or initials in the column `by`."),
    }[what]
    return Problem("decision-without", _row(file, row, what), f"The decision about {quoted(fish)} {cause}.", mend)


def decision_of_what(file: str, row: int, fish: str) -> Problem:
    """A decision that names neither a grade nor a round, or both."""
    return Problem(
        "decision-of-what",
        _row(file, row, "grade"),
        f"The decision about {quoted(fish)} must name either a grade or a round.",
        "Fill in `grade` to give it that grade, or `round` to let that round keep it; for both, write two rows.",
    )


def decision_unknown(file: str, row: int, kind: str, name: str, near: str | None, known: Sequence[str]) -> Problem:
    """A decision that names a grade or a round which the standard lacks."""
    listed = ", ".join(known) if known else "none"
    return Problem(
        "decision-unknown",
        _row(file, row, kind),
        f"The standard has no {kind} {quoted(name)}.",
        f"Did you mean {quoted(near)}?" if near else f"It has: {listed}.",
    )


def decided_twice(file: str, row: int, fish: str) -> Problem:
    """Two decisions about the same thing."""
    return Problem(
        "decided-twice",
        _row(file, row, "fish"),
        f"There is a decision of this kind about {quoted(fish)} already.",
        "Keep one of the two.",
    )


def too_many_rescues(file: str, row: int, name: str, fish: Sequence[str], most: int, places: int | None) -> Problem:
    """More fish rescued in a round than it allows; fish: all of them. places: how many its pick takes."""
    whom = in_words([quoted(one) for one in fish], "and")
    beyond = (
        f"although {'it' if len(fish) == 1 else 'they'} would leave it"
        if places is None
        else f"beyond those that its {_places(places)} went to"
    )
    only = f"to keep no more than {most}" if most else "to keep none so"
    lacks = "" if most else " To allow it, write `rescues N` into the round."
    return Problem(
        "too-many-rescues",
        _row(file, row, "round"),
        f"In the round {quoted(name)} a person keeps {whom} {beyond}, and it allows a person {only}.",
        f"Take back {len(fish) - most} of them.{lacks}",
    )


def tie_half_settled(file: str, row: int, name: str, fish: Sequence[str], short: int) -> Problem:
    """A tie in a round with fewer fish chosen than it has places."""
    whom = in_words([quoted(one) for one in fish], "and")
    return Problem(
        "tie-half-settled",
        _row(file, row, "round"),
        f"In the round {quoted(name)} only {whom} of those that are tied {'is' if len(fish) == 1 else 'are'} chosen, "
        f"and {_places(short)} of the tie {'is' if short == 1 else 'are'} left.",
        f"Choose {short} more of those that are tied, or take the decision back: then all of them stay tied.",
    )


def _places(number: int) -> str:
    return f"{number} place{'' if number == 1 else 's'}"


def decision_columns(file: str, missing: Sequence[str]) -> Problem:
    """A file of decisions that lacks columns."""
    return Problem(
        "decision-columns",
        Cell(file, None, None),
        f"Decisions need the columns fish, grade or round, by, reason; there is no {', no '.join(missing)}.",
        "Put these headings into the first row.",
    )


def decision_column_unknown(file: str, row: int, heading: str) -> Problem:
    """A column that decisions do not have."""
    return Problem(
        "decision-columns",
        Cell(file, row, heading),
        f"Decisions have no column {quoted(heading)}.",
        "The columns are: fish, grade, round, by, reason.",
    )
