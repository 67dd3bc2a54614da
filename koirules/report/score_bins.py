"""Scores of a batch in equal steps, for a picture of how they are distributed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from decimal import Decimal

from attrs import frozen

from koirules.results.result import Result

_STEPS = tuple(Decimal(step).scaleb(power) for power in range(6) for step in (1, 2, 5))
_MOST_BINS = 25


@frozen
class Bin:
    """The fish whose score is at least `low` and below `high` (the last one: at most `high`).

    settled: by the name of their grade. unsettled: those whose grade or score is not settled, counted at their lowest score.
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


def bins(results: Sequence[Result]) -> tuple[Bin, ...]:
    """The scores from 0 to all that could be had, in the narrowest even step that makes few enough bins."""
    return tuple(_bins(results, most_points(results)))


def _bins(results: Sequence[Result], most: Decimal) -> Iterator[Bin]:
    if not most:
        return
    step = next(step for step in _STEPS if most / step <= _MOST_BINS)
    number = -(-most // step)
    settled: dict[int, Counter[str]] = {}
    unsettled: Counter[int] = Counter()
    for result in results:
        place = int(min(result.score_low // step, number - 1))
        if result.grade is None or result.score is None:
            unsettled[place] += 1
        else:
            settled.setdefault(place, Counter())[result.grade] += 1
    for place in range(int(number)):
        yield Bin(place * step, (place + 1) * step, settled.get(place, Counter()), unsettled[place])
