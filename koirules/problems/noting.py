"""Problems of notes: whose a line is, and what was said twice."""

from __future__ import annotations

from koirules.problems.problem import Problem, Site


def nameless(site: Site, remark: str) -> Problem:
    """A line before any fish was named."""
    return Problem(
        "nameless-note",
        site,
        f'No name stands before "{remark}".',
        "Begin the line with the name and a colon, such as `1:`; or with `all:` for what holds for all of them.",
    )


def named_again(site: Site, name: str, first: int) -> Problem:
    """A fish that was named before, without a word that this is meant."""
    return Problem(
        "named-again",
        site,
        f'"{name}" was noted in line {first} already.',
        f"Write `again {name}:` to go on about it, `look 2` on a line of its own for a second look, or another name.",
    )
