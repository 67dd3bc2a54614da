"""A fish that no standard was for, as a row among results."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from attrs import field

from koirules.records.about import About
from koirules.results.result import Result
from koirules.values import frozen


@frozen
class NotGraded:
    """A fish of a batch that was not graded, with the reason; the columns of grades and scores are blank.

    why: with what it means (`not graded: …`); reason: alone.
    """

    fish: str
    why: str
    labels: Mapping[str, str] = field(factory=dict, hash=False)
    reason: str = ""


Row = Result | NotGraded
"""A row of a file of results."""


def by_standard(rows: Sequence[Row], about: About) -> Iterator[tuple[About, tuple[Result, ...]]]:
    """The fish of each standard that graded some; those of several stand one after the other, as `About.fish` counts them."""
    graded = tuple(one for one in rows if isinstance(one, Result))
    if not about.parts:
        yield about, graded
    start = 0
    for part in about.parts:
        yield part, graded[start : start + part.fish]
        start += part.fish
