"""Problems of what silence means."""

from __future__ import annotations

from koirules.problems.problem import Place, Problem


def silence_twice(place: Place, name: str, first: Place) -> Problem:
    """Two entries about one trait."""
    return Problem(
        "silence-twice",
        place,
        f'What silence means for "{name}" stands on line {first.line} already.',
        "Delete one of them.",
    )


def never_silent(place: Place, name: str) -> Problem:
    """Silence about health, an injury or a deformity."""
    return Problem(
        "never-silent",
        place,
        f'"{name}" is about health, an injury or a deformity, or about eyes, mouth or gill covers: nobody may take it for '
        "granted of a fish that was not looked at for it.",
        f"Delete it here. What holds for the whole lot is recorded once: a first row named `all fish` in a sheet, or a line "
        f"`all: …` in notes, with the column or words of {name}.",
    )


def not_by_eye(place: Place, name: str) -> Problem:
    """Silence about what is measured or labelled."""
    return Problem(
        "not-by-eye",
        place,
        f'"{name}" is not judged by eye, so silence says nothing about it.',
        "Delete it here. Measure it, or state it once for the whole lot: a first row named `all fish` in a sheet, or a line "
        "`all: …` in notes.",
    )


def unless_reads(place: Place, what: str) -> Problem:
    """A condition behind `unless` that reads more than what was recorded."""
    return Problem(
        "unless-reads",
        place,
        f"This reads {what}, but a condition after `unless` can read only what was recorded.",
        "Compare traits here, such as `unless steps is tancho`.",
    )


def carried_twice(place: Place, name: str, first: Place) -> Problem:
    """A trait that is carried forward twice."""
    return Problem(
        "carried-twice", place, f'"{name}" is carried forward on line {first.line} already.', "Delete one of them."
    )


def no_such_look(place: Place) -> Problem:
    """A round at a look that there cannot be."""
    return Problem(
        "no-such-look", place, "Looks count from 1, in whole numbers up to 60.", "Write `at look 1`, or another look."
    )
