"""The possible grades: by their conditions, then after lifts and faults. A set of grades has bit 0 for the best."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from enum import IntEnum
from operator import itemgetter
from typing import Protocol, TypeVar

from koirules.meaning.algebra import Ends

V = TypeVar("V")


class Turn(IntEnum):
    """When lifts and faults have their say: lifts raise first, then faults lower, and those that cap have the last word."""

    LIFTS = 0
    LOWERS = 1
    CAPS = 2


class Sets(Protocol[V]):
    """What is needed of a value algebra: truths, and sets of grades."""

    def bits(self, value: int) -> V:
        """A set that is the same for every record."""

    def every(self, *parts: V) -> V:
        """Whether all of some truths hold."""

    def no(self, part: V) -> V:
        """Whether a truth does not hold."""

    def common(self, a: V, b: V) -> V:
        """The members that two sets share."""

    def either(self, a: V, b: V) -> V:
        """The members of two sets together."""

    def meets(self, a: V, b: V) -> V:
        """Whether two sets share a member."""

    def where(self, test: V, one: V, other: V) -> V:
        """One set where a truth holds, else the other."""


def bites(m: Sets[V], condition: Ends[V], exception: Ends[V] | None) -> Ends[V]:
    """Where a lift or fault surely and possibly bites: its condition holds and its exception does not."""
    if exception is None:
        return condition
    surely = m.every(condition.first, m.no(exception.last))
    if condition.sure and exception.sure:
        return Ends(surely, surely)
    return Ends(surely, m.every(condition.last, m.no(exception.first)))


def possible(m: Sets[V], conditions: Sequence[Ends[V]]) -> V:
    """The grades that may be the first whose condition holds, best first."""
    left = m.bits(0)
    for place, holds in reversed(list(enumerate(conditions))):
        alone = m.bits(1 << place)
        if holds.sure:
            left = m.where(holds.first, alone, left)
        else:
            left = m.where(holds.first, alone, m.where(holds.last, m.either(alone, left), left))
    return left


def lifted(m: Sets[V], grades: V, floor: int, count: int) -> V:
    """The grades that a lift makes of some: each that is worse than the floor becomes it. count: how many grades there are."""
    kept = (2 << floor) - 1
    return _moved_to(m, grades, kept, ((1 << count) - 1) & ~kept, floor)


def capped(m: Sets[V], grades: V, cap: int, count: int) -> V:
    """The grades that a fault makes of some: each that is better than the cap becomes it."""
    beyond = (1 << cap) - 1
    return _moved_to(m, grades, ((1 << count) - 1) & ~beyond, beyond, cap)


def lowered(m: Sets[V], grades: V, by: int, count: int) -> V:
    """The grades that a fault makes of some which it lowers by so many: each goes down, no further than to the worst."""
    found = m.bits(0)
    for place in range(count):
        below = m.bits(1 << min(place + by, count - 1))
        found = m.either(found, m.where(m.meets(grades, m.bits(1 << place)), below, m.bits(0)))
    return found


def _moved_to(m: Sets[V], grades: V, kept: int, beyond: int, to: int) -> V:
    left = m.common(grades, m.bits(kept))
    return m.either(left, m.where(m.meets(grades, m.bits(beyond)), m.bits(1 << to), m.bits(0))) if beyond else left


def limited(m: Sets[V], grades: V, moved: V, bites: Ends[V]) -> V:
    """The grades after a lift or fault that makes `moved` of them where it bites."""
    if bites.sure:
        return m.where(bites.first, moved, grades)
    return m.where(bites.last, m.either(moved, m.where(bites.first, m.bits(0), grades)), grades)


def moved(m: Sets[V], grades: V, turn: Turn, by: int, count: int) -> V:
    """The grades that a lift or a fault makes of some. by: the place of its grade, or how many grades it lowers by."""
    return {Turn.LIFTS: lifted, Turn.LOWERS: lowered, Turn.CAPS: capped}[turn](m, grades, by, count)


def after_all(m: Sets[V], grades: V, bites: Iterable[tuple[Turn, int, Ends[V]]], count: int) -> V:
    """The grades after lifts and faults, each with what `moved` takes of it and where it bites, in their turns."""
    for turn, by, ends in sorted(bites, key=itemgetter(0)):
        grades = limited(m, grades, moved(m, grades, turn, by, count), ends)
    return grades


def worst_first(grades: int, count: int) -> int:
    """The bits of some grades, bit 0 the worst: as levels of the scale that `grade` is."""
    return sum(1 << (count - 1 - i) for i in range(count) if grades >> i & 1)
