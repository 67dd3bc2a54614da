"""Figures of a batch from counts: exact, and the same in whatever pieces and order the fish come.

A tally counts the different values of each group, as whole millionths (for conditions 0 and 1, for scales the place of
the step). Counts add up, so tallies of parts merge into that of the whole. How a figure is read off them stands in
meaning/aggregates.py.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import Counter
from collections.abc import Hashable, Iterable, Mapping, Sequence
from functools import cached_property
from itertools import accumulate
from typing import NamedTuple, TypeVar

from attrs import field

from koirules.rounds.figure_ends import Ends, Members
from koirules.standard.tree import Figure
from koirules.values import define, frozen
from koirules.vocabulary.readings import Span

Group = tuple[Hashable, ...]


class Member(NamedTuple):
    """A fish as a figure counts it now, and as it may come to count once more is recorded.

    group, value: now; None where it could be several, so that the fish does not count. later, ends: in which group it will
    be (None: in any), and between which ends its value then lies. counted: whether it is now one of those that the figure
    is over; staying: whether it surely will be.
    """

    group: Group | None
    value: int | None
    later: Group | None
    ends: Ends
    counted: bool = True
    staying: bool = True


@frozen
class Tally:
    """How often each value stands in each group.

    moved: values among these that lie between two ends, since they read a figure that may still move. loose: how many of a
    value may yet cease to count. more: ends of values that may yet count, in a group or (None) in any.
    """

    groups: Mapping[Group, Mapping[int, int]] = field(factory=dict)
    moved: Mapping[Group, Mapping[tuple[int, Ends], int]] = field(factory=dict)
    loose: Mapping[Group, Mapping[int, int]] = field(factory=dict)
    more: Mapping[Group | None, Mapping[Ends, int]] = field(factory=dict)

    @classmethod
    def of(cls, pairs: Iterable[tuple[Group | None, int | None]]) -> Tally:
        """The tally of fish, each with its group and value; without one of them (None) a fish does not count."""
        counted: dict[Group, Counter[int]] = {}
        for group, value in pairs:
            if group is not None and value is not None:
                counted.setdefault(group, Counter())[value] += 1
        return cls(counted)

    @classmethod
    def of_members(cls, members: Iterable[tuple[Member, int]]) -> Tally:
        """The tally of fish, each with how often it is there, with what may become of it."""
        groups: dict[Group, Counter[int]] = {}
        moved: dict[Group, Counter[tuple[int, Ends]]] = {}
        loose: dict[Group, Counter[int]] = {}
        more: dict[Group | None, Counter[Ends]] = {}
        for one, times in members:
            if one.counted and one.group is not None and one.value is not None:
                groups.setdefault(one.group, Counter())[one.value] += times
                if one.staying and one.later == one.group:
                    if one.ends != (one.value, one.value):
                        moved.setdefault(one.group, Counter())[one.value, one.ends] += times
                    continue
                loose.setdefault(one.group, Counter())[one.value] += times
            more.setdefault(one.later, Counter())[one.ends] += times
        return cls(groups, moved, loose, more)

    @property
    def moves(self) -> bool:
        """Whether a recording could still change what is counted."""
        return bool(self.moved or self.loose or self.more)

    def members(self, group: Group) -> Members:
        """The values of a group, with those that may yet count."""
        sure = Counter({(value, value): times for value, times in self.groups.get(group, {}).items()})
        for value, times in self.loose.get(group, {}).items():
            sure[value, value] -= times
        for (value, ends), times in self.moved.get(group, {}).items():
            sure[value, value] -= times
            sure[ends] += times
        return Members(+sure, Counter(self.more.get(group, {})) + Counter(self.more.get(None, {})))

    def merged(self, other: Tally) -> Tally:
        """The tally of both, which have no fish in common."""
        return Tally(
            _merged(self.groups, other.groups),
            _merged(self.moved, other.moved),
            _merged(self.loose, other.loose),
            _merged(self.more, other.more),
        )


_G = TypeVar("_G", bound=Hashable)
_V = TypeVar("_V", bound=Hashable)


def _merged(one: Mapping[_G, Mapping[_V, int]], other: Mapping[_G, Mapping[_V, int]]) -> dict[_G, Counter[_V]]:
    groups = {group: Counter(counts) for group, counts in one.items()}
    for group, counts in other.items():
        groups.setdefault(group, Counter()).update(counts)
    return groups


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

    @cached_property
    def total(self) -> int:
        """The sum of them."""
        return sum(value * times for value, times in zip(self.values, self.times, strict=True))

    @cached_property
    def squares(self) -> int:
        """The sum of their squares."""
        return sum(value * value * times for value, times in zip(self.values, self.times, strict=True))

    def below(self, value: int) -> int:
        """How many are below a value."""
        place = bisect_left(self.values, value)
        return self.passed[place - 1] if place else 0

    def upto(self, value: int) -> int:
        """How many are no greater than a value."""
        place = bisect_right(self.values, value)
        return self.passed[place - 1] if place else 0


@define
class FigureTable:
    """A figure, ready to be looked up: for the group of a fish, and for a standing its own value."""

    figure: Figure
    tally: Tally
    groups: Mapping[Group, Counts]
    _known: dict[Group, int | None] = field(factory=dict)
    _members: dict[Group, Members] = field(factory=dict)
    _ends: dict[tuple[Group, int | None], Ends | None] = field(factory=dict)

    @classmethod
    def of(cls, figure: Figure, tally: Tally) -> FigureTable:
        """The table of a figure over what was counted."""
        return cls(figure, tally, {group: Counts.of(counts) for group, counts in tally.groups.items()})

    def ends(self, group: Group | None, own: Ends | None) -> Ends | None:
        """Between which ends the figure of a fish lies once more is recorded; None where nothing can be said.

        own: of a standing, between which ends the value of the fish lies.
        """
        standing = self.figure.kind.own
        if group is None or (standing and (own is None or own[0] != own[1])):
            return None
        key = (group, own[0] if standing and own else None)
        if key not in self._ends:
            if group not in self._members:
                self._members[group] = self.tally.members(group)
            members = self._members[group]
            enough = members.number >= max(1, self.figure.least)
            self._ends[key] = members.ends(self.figure, key[1]) if enough else None
        return self._ends[key]

    def millionths(self, group: Group | None, value: int | None) -> int | None:
        """The figure for a fish; None where it is not recorded."""
        if group is None:
            return None
        if self.figure.kind.own:
            counts = self._counted(group)
            return (
                None if counts is None or value is None else self.figure.kind.value(counts, self.figure.percent, value)
            )
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
        return None if counts is None else self.figure.kind.value(counts, self.figure.percent, None)
