"""What a standard gave each fish, as numbers: the share of each criterion, bonuses less penalties, which faults bit."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import TYPE_CHECKING

import numpy as np
from attrs import field, frozen

if TYPE_CHECKING:
    from koirules import Result, Standard

Array = np.ndarray


@frozen
class Parts:
    """A batch of results as columns.

    criteria: the names of the `points`. shares: a row a fish, a column a criterion: what it gave of the most that it gives,
    0 to 1; the middle where it is open. extras: bonuses less penalties of each fish, in points of the score. faults: the
    names of the faults; bites: whether each surely bit. scores: points, the middle where they are open. caps: for each fish
    the place of the best grade that its faults and lifts leave by rules (0 is the best of all).
    """

    criteria: tuple[str, ...]
    titles: tuple[str, ...]
    shares: Array = field(repr=False, eq=False)
    extras: Array = field(repr=False, eq=False)
    faults: tuple[str, ...]
    bites: Array = field(repr=False, eq=False)
    scores: Array = field(repr=False, eq=False)
    caps: Array = field(repr=False, eq=False)
    floors: Array = field(repr=False, eq=False)
    fault_titles: tuple[str, ...] = ()


def parts_of(standard: Standard, results: Sequence[Result]) -> Parts:
    """The columns of results of one standard."""
    rules = standard.rules
    points = rules.points
    faults = [limit for limit in rules.limits if limit.head == "fault"]
    lifts = [limit for limit in rules.limits if limit.head == "lift"]
    n = len(results)
    shares = np.zeros((n, len(points)))
    extras = np.zeros(n)
    bites = np.zeros((n, len(faults)), dtype=bool)
    caps = np.zeros(n, dtype=int)
    floors = np.full(n, len(rules.grades) - 1, dtype=int)
    where = {part.name: i for i, part in enumerate(points)}
    for row, result in enumerate(results):
        for reason in result.reasons:
            low, high = reason.points_low, reason.points_high
            if reason.kind == "points" and low is not None and high is not None and reason.points_most:
                shares[row, where[reason.name]] = float((low + high) / 2 / reason.points_most)
            elif reason.kind in {"bonus", "penalty"} and reason.score_low is not None and reason.score_high is not None:
                extras[row] += float((reason.score_low + reason.score_high) / 2)
        lowered = 0
        for column, fault in enumerate(faults):
            if fault.name in result.faults:
                bites[row, column] = True
                caps[row] = max(caps[row], fault.grade)
                lowered += fault.lowers
        # The best grade that faults which lower leave is as many below the best as they come to.
        caps[row] = max(caps[row], min(lowered, len(rules.grades) - 1))
        for lift in lifts:
            if lift.name in result.lifts:
                floors[row] = min(floors[row], lift.grade)
    scores = np.array([float((result.score_low + result.score_high) / 2) for result in results])
    return Parts(
        tuple(part.name for part in points),
        tuple(part.title.within(standard.language) for part in points),
        shares,
        extras,
        tuple(fault.name for fault in faults),
        bites,
        scores,
        caps,
        floors,
        tuple(fault.title.within(standard.language) for fault in faults),
    )


def present_weights(standard: Standard) -> Array:
    """What each criterion gives of the score at most, in points, in the order of the file."""
    found: list[float] = []
    for section in standard.rules.sections:
        whole = sum(part.weight * part.shape.most for part in section.points)
        found.extend(
            float(Decimal(section.worth * part.weight * part.shape.most) / whole / 100) for part in section.points
        )
    return np.array(found)
