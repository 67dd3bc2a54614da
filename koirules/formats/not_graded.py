"""A fish that no standard was for, as a row among results."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from decimal import Decimal

from attrs import field, frozen

from koirules.grading.course import Step
from koirules.grading.decisions import Decision
from koirules.grading.results import Reason, Result, SectionResult


@frozen
class NotGraded:
    """A fish of a batch that was not graded: all that a result has, blank; `why` says why."""

    fish: str
    why: str
    labels: Mapping[str, str] = field(factory=dict, hash=False)
    grade: str | None = None
    possible: tuple[str, ...] = ()
    score: Decimal | None = None
    score_low: Decimal | None = None
    score_high: Decimal | None = None
    sections: Mapping[str, SectionResult] = field(factory=dict, hash=False)
    faults: tuple[str, ...] = ()
    lifts: tuple[str, ...] = ()
    hangs_on: tuple[str, ...] = ()
    decision: Decision | None = None
    by_rules: tuple[str, ...] = ()
    course: tuple[Step, ...] = ()
    kept_by: tuple[str, ...] = ()
    left_in: str | None = None
    tied_in: str | None = None
    sent_to: str = ""
    next_look: date | None = None
    reasons: tuple[Reason, ...] = ()


Row = Result | NotGraded
"""A row of a file of results."""
