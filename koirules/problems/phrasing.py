"""Problems of phrases: what a page says that words mean."""

from __future__ import annotations

from koirules.problems.problem import Cell, Place, Problem
from koirules.problems.quoting import quoted


def empty_phrase(place: Place) -> Problem:
    """A wording without a letter or number."""
    return Problem("empty-phrase", place, "This wording has no words.", "Write what a sorter says, or delete it.")


def long_phrase(place: Place, most: int) -> Problem:
    """A wording longer than anybody says."""
    return Problem("long-phrase", place, f"This wording has more than {most} letters.", "Write the words alone.")


def same_phrase(place: Place, wording: str, other: str, first: Place) -> Problem:
    """Two wordings that are the same to a reader of notes."""
    alike = "is given twice" if wording == other else f'and "{other}" count as the same words'
    return Problem(
        "same-phrase",
        place,
        f'The wording "{wording}" {alike} (line {first.line}): case, punctuation and the plural make no difference.',
        "Delete one of them.",
        beside=((first, "the same words"),),
    )


def contradicting_phrase(place: Place, wording: str, trait: str) -> Problem:
    """A phrase that no fish can meet."""
    return Problem(
        "contradicting-phrase",
        place,
        f'What "{wording}" says of "{trait}" contradicts itself: no value is left.',
        "Take one of the two readings out.",
    )


def nothing_beyond(place: Place, trait: str, operator: str) -> Problem:
    """A reading that no value meets."""
    return Problem(
        "contradicting-phrase",
        place,
        f'No value of "{trait}" is {operator} this.',
        "Name another value, or write `is`.",
    )


def whole_range(place: Place, trait: str) -> Problem:
    """A reading that leaves every value possible."""
    return Problem(
        "whole-range",
        place,
        f'This allows every value of "{trait}", so it says nothing.',
        "Narrow it or delete it; a phrase may write `means nothing`.",
    )


def wrong_reading(place: Place, trait: str, operator: str, needs: str) -> Problem:
    """A reading with an operator that its trait does not have."""
    return Problem(
        "wrong-reading",
        place,
        f'"{trait}" does not go with `{operator}`.',
        f"Write {needs}.",
    )


def no_single_meaning(place: Place) -> Problem:
    """What a vocabulary gives as the meaning of a phrase is more or less than one."""
    return Problem("wrong-reading", place, "It is no single meaning.", "Join readings with `and`.")


def phrase_left_out(site: Cell | Place, said: str, means: str, problem: Problem) -> Problem:
    """A phrase that a plugin gives says nothing that can be read of the traits of its variety; it alone is left out."""
    return Problem(
        "phrase-left-out",
        site,
        f"The phrase {quoted(said)} was left out: its meaning {quoted(means)} cannot be read. {problem.cause} {problem.mend}",
        "Write a meaning of traits that the variety has, or tell the author of the plugin.",
        warning=True,
    )
