"""Figures of a batch from counts: exact, and the same in whatever pieces and order the fish come.

A tally counts the different values of each group, as whole millionths (for conditions 0 and 1, for scales the place of
the step). Counts add up, so tallies of parts merge into that of the whole. A figure is worked out of them as a fraction
and rounded half up to a whole millionth: percentiles by type 7 (Hyndman and Fan, Sample quantiles in statistical
packages, 1996), standings as the share below plus half the share equal (the mean rank of scipy's percentileofscore).
"""

from __future__ import annotations

from bisect import bisect_left
from collections import Counter
from collections.abc import Hashable, Iterable, Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from functools import cached_property
from itertools import accumulate

from attrs import define, field, frozen

from koirules.standard.tree import Figure
from koirules.vocabulary.readings import Span

Group = tuple[Hashable, ...]

_WHOLE = 100 * 1_000_000
"""100 % in millionths."""


@frozen
class Tally:
    """How often each value stands in each group."""

    groups: Mapping[Group, Mapping[int, int]] = field(factory=dict)

    @classmethod
    def of(cls, pairs: Iterable[tuple[Group | None, int | None]]) -> Tally:
        """The tally of fish, each with its group and value; without one of them (None) a fish does not count."""
        counted: dict[Group, Counter[int]] = {}
        for group, value in pairs:
            if group is not None and value is not None:
                counted.setdefault(group, Counter())[value] += 1
        return cls(counted)

    def merged(self, other: Tally) -> Tally:
        """The tally of both, which have no fish in common."""
        groups = {group: Counter(counts) for group, counts in self.groups.items()}
        for group, counts in other.groups.items():
            groups.setdefault(group, Counter()).update(counts)
        return Tally(groups)


@define(slots=False)
class Counts:
    """The counted values of one group, in rising order."""

    values: Sequence[int]
    times: Sequence[int]

    @classmethod
    def of(cls, counts: Mapping[int, int]) -> Counts:
        """The counts of values."""
        values = sorted(counts)
        return cls(values, [counts[value] for value in values])

    @cached_property
    def passed(self) -> list[int]:
        """How many there are up to each value."""
        return list(accumulate(self.times))

    @property
    def number(self) -> int:
        """How many there are."""
        return self.passed[-1] if self.passed else 0

    def at(self, place: int) -> int:
        """The value at a place, from 0."""
        return self.values[bisect_left(self.passed, place + 1)]

    def mean(self) -> Fraction:
        """The arithmetic mean."""
        return Fraction(sum(value * times for value, times in zip(self.values, self.times, strict=True)), self.number)

    def percentile(self, percent: Decimal) -> Fraction:
        """The value below which so many of 100 lie, in a straight line between the two nearest."""
        place = Fraction(percent) / 100 * (self.number - 1)
        below = int(place)
        low, high = self.at(below), self.at(min(below + 1, self.number - 1))
        return low + (high - low) * (place - below)

    def standing(self, value: int) -> Fraction:
        """The share below a value and half the share equal to it, in millionths of a percent."""
        place = bisect_left(self.values, value)
        upto = self.passed[place - 1] if place else 0
        equal = self.times[place] if place < len(self.values) and self.values[place] == value else 0
        return Fraction(_WHOLE * (2 * upto + equal), 2 * self.number)

    def share(self) -> Fraction:
        """The share of those that are 1, in millionths of a percent."""
        yes = sum(times for value, times in zip(self.values, self.times, strict=True) if value)
        return Fraction(_WHOLE * yes, self.number)


def half_up(exact: Fraction) -> int:
    """A fraction as a whole number, half up."""
    return (2 * exact.numerator + exact.denominator) // (2 * exact.denominator)


@define
class FigureTable:
    """A figure, ready to be looked up: for the group of a fish, and for a standing its own value."""

    figure: Figure
    groups: Mapping[Group, Counts]
    _known: dict[Group, int | None] = field(factory=dict)

    @classmethod
    def of(cls, figure: Figure, tally: Tally) -> FigureTable:
        """The table of a figure over what was counted."""
        return cls(figure, {group: Counts.of(counts) for group, counts in tally.groups.items()})

    def millionths(self, group: Group | None, value: int | None) -> int | None:
        """The figure for a fish; None where it is not recorded."""
        if group is None:
            return None
        if self.figure.kind == "standing":
            counts = self._counted(group)
            return None if counts is None or value is None else half_up(counts.standing(value))
        if group not in self._known:
            self._known[group] = self._of_group(self._counted(group))
        return self._known[group]

    def reading(self, group: Group | None, value: int | None) -> Span | None:
        """The figure as a reading."""
        found = self.millionths(group, value)
        return None if found is None else Span(found / 1_000_000.0, found / 1_000_000.0)

    def _counted(self, group: Group) -> Counts | None:
        counts = self.groups.get(group)
        return counts if counts is not None and counts.number >= max(1, self.figure.least) else None

    def _of_group(self, counts: Counts | None) -> int | None:
        if counts is None:
            return None
        match self.figure.kind:
            case "lowest":
                return counts.values[0]
            case "highest":
                return counts.values[-1]
            case "mean":
                return half_up(counts.mean())
            case "median":
                return half_up(counts.percentile(Decimal(50)))
            case "percentile":
                return half_up(counts.percentile(self.figure.percent or Decimal(0)))
            case "share":
                return half_up(counts.share())
            case kind:
                raise AssertionError(kind)
