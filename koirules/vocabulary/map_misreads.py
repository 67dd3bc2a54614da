"""What can be wrong with a pattern map that somebody wrote: which patch, why it cannot be read, and what to write."""

from __future__ import annotations

from koirules.problems.quoting import quoted
from koirules.vocabulary.expected import MAP_EXAMPLE
from koirules.vocabulary.misreads import Misread

_LOOK = "Look again, or leave the cell blank if its pattern was not written down."


def not_a_map(number: int, was: str) -> Misread:
    """A patch that is written in no way that is known."""
    return Misread(
        "value-not-a-map",
        f"Patch {number}, {quoted(was)}, is not written as a patch.",
        f"Write where each patch starts and ends along the body and how far it reaches to each side, in %, patches"
        f' parted by ";": "{MAP_EXAMPLE}"; or "none".',
    )


def sides_said_twice(number: int, was: str) -> Misread:
    """A patch that says one thing about itself twice."""
    return Misread(
        "value-map-said-twice",
        f"Patch {number}, {quoted(was)}, says the same thing twice.",
        'Say each side once, and write two patches as two, parted by ";".',
    )


def side_in_part(number: int, was: str) -> Misread:
    """A patch that leaves the back free on one side, and yet reaches to the other."""
    return Misread(
        "value-map-side-in-part",
        f"Patch {number}, {quoted(was)}, leaves the line of the back free, and yet reaches to both sides.",
        'Write two patches, one for each side, parted by ";".',
    )


def swapped(number: int, was: str, better: str) -> Misread:
    """A patch that ends before it starts, or a side whose far end comes first."""
    return Misread(
        "value-map-ends-swapped",
        f"Patch {number}, {quoted(was)}, has an end before its start.",
        f'Write "{better}".',
    )


def outside(number: int, number_written: str, what: str) -> Misread:
    """A coordinate that is not on the body."""
    return Misread(
        "value-map-outside",
        f"{number_written} in patch {number} lies outside the body: {what}.",
        "Measure in % of the length without the fins, and in % of the way from the back to the lateral line.",
    )


def outline_broken(number: int, why: str) -> Misread:
    """An outline in WKT that is no ring."""
    return Misread(
        "value-map-outline",
        f"The outline of patch {number} cannot be read: {why}.",
        "Write a polygon with its first corner said again at its end, such as"
        ' "POLYGON ((8 -60, 26 -60, 26 55, 8 55, 8 -60))".',
    )


def outline_crossed(number: int, why: str) -> Misread:
    """An outline that encloses no area, or not one (why: what is the matter, with the place)."""
    return Misread("value-map-crossed", f"Patch {number} is no patch: {why}.", f"Trace its edge once around. {_LOOK}")


def several_maps() -> Misread:
    """What could be one map or another."""
    return Misread(
        "value-map-or-map",
        "A map is one look, and this cell holds two, joined by a word.",
        'Keep the likelier one, and mark a patch that may go with "thin".',
    )


def too_many_corners(most: int) -> Misread:
    """A map with more corners than any tracing needs."""
    return Misread(
        "value-map-too-fine",
        f"The map has more than {most:,} corners.",
        "Trace it more coarsely: a corner for each scale of the edge is plenty.",
    )


def of_another_type(what: str) -> Misread:
    """Something that is no text where a map is expected."""
    return Misread(
        "value-not-a-map",
        f"{what} stands here, but a map of patches is expected.",
        f'Set the cell to the format "Text" and write the patches: "{MAP_EXAMPLE}"; or "none".',
    )
