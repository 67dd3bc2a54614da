"""Scores of a batch in equal steps, for a picture of how they are distributed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from decimal import Decimal

from koirules.results.result import Result
from koirules.values import frozen

_STEPS = tuple(Decimal(step).scaleb(power) for power in range(6) for step in (1, 2, 5))
_MOST_BINS = 25
_WIDEST = Decimal("0.15")
"""A fish whose score could lie anywhere in more than this share of all points was set aside early: it has no place."""


@frozen
class Bin:
    """The fish whose score is at least `low` and below `high` (the last one: at most `high`).

    settled: by the name of their grade, whether or not the score is one number. unsettled: those whose grade is open. A score
    that is not one number counts in the middle of what it could be.
    """

    low: Decimal
    high: Decimal
    settled: Counter[str]
    unsettled: int

    @property
    def fish(self) -> int:
        """How many there are."""
        return self.settled.total() + self.unsettled


def most_points(results: Sequence[Result]) -> Decimal:
    """What all sections together are worth."""
    return max((sum((s.worth for s in result.sections.values()), Decimal(0)) for result in results), default=Decimal(0))


def is_scored(result: Result, results: Sequence[Result]) -> bool:
    """Whether so much was recorded of a fish that its score has a place."""
    return result.score_high - result.score_low <= _WIDEST * most_points(results)


def bins(results: Sequence[Result]) -> tuple[Bin, ...]:
    """The scores from 0 to all that could be had, in the narrowest even step that makes few enough bins."""
    return tuple(one for one, _ in binned(results))


def binned(results: Sequence[Result]) -> list[tuple[Bin, list[Result]]]:
    """The same, each with its fish."""
    most = most_points(results)
    if not most:
        return []
    step = next(step for step in _STEPS if most / step <= _MOST_BINS)
    number = int(-(-most // step))
    there: list[list[Result]] = [[] for _ in range(number)]
    for result in results:
        if result.score_high - result.score_low <= _WIDEST * most:
            middle = (result.score_low + result.score_high) / 2
            there[min(int(middle // step), number - 1)].append(result)
    return [
        (
            Bin(
                place * step,
                (place + 1) * step,
                Counter(one.grade for one in fish if one.grade is not None),
                sum(one.grade is None for one in fish),
            ),
            fish,
        )
        for place, fish in enumerate(there)
    ]
