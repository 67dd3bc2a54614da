"""A fish that no standard was for, as a row among results."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import field, frozen

from koirules.grading.results import Result


@frozen
class NotGraded:
    """A fish of a batch that was not graded, with the reason; the columns of grades and scores are blank."""

    fish: str
    why: str
    labels: Mapping[str, str] = field(factory=dict, hash=False)


Row = Result | NotGraded
"""A row of a file of results."""
