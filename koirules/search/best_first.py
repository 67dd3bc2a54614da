"""Searches boxes of changes, the smallest change first, and proves what it passes over.

A box is graded as a whole, as a record that could be any of its values. By the language (section 5, Sound) the grades possible
for every value lie among those possible for the box: a box that cannot reach the goal holds no change that does, and is left
out whole; a box that surely reaches it is met at its nearest value. Any other box is parted, and the parts wait their turn in
order of the smallest change that they could hold. The first value met is therefore the smallest, exactly, for every rule that
can be written: also where a trait is read inside sums, by two curves with opposite slopes, or through the score. Where a trait
is read several times in one sum or quotient, a box can look more open than it is; that costs looks and never exactness. The
looks are bounded, and a search that ends at its bound says so. This is branch and bound over intervals (Moore, Kearfott, Cloud,
Introduction to Interval Analysis, 2009, chapter 8; from memory).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from heapq import heapify, heappop, heappush
from itertools import count
from typing import Protocol

from koirules.candidates.places_to_move import Box, Marks, Point, Stretch
from koirules.values import define, frozen
from koirules.vocabulary.readings import Reading


class Goal(Protocol):
    """What is looked for, asked of the bits of the grades possible (bit 0 the best)."""

    def met(self, possible: int) -> bool:
        """Whether one value that gave these grades is what is looked for."""

    def can(self, possible: int) -> bool:
        """Whether some of several values that gave these grades together may be."""

    def must(self, possible: int) -> bool:
        """Whether all of them surely are."""


@frozen
class Reach:
    """A change of the grade: to `place` or a better one, or (`loses`) to a worse one than `place`.

    A value does it where such a grade is then possible. A fish without holes has only one grade possible; of one with holes
    the change keeps the others in sight, and the grades that it gives are told with it.
    """

    place: int
    loses: bool

    def met(self, possible: int) -> bool:
        """Whether such a grade is possible."""
        up_to = (2 << self.place) - 1
        return possible & ~up_to != 0 if self.loses else possible & up_to != 0

    def can(self, possible: int) -> bool:
        """Whether such a grade is possible for one of the values."""
        return self.met(possible)

    def must(self, possible: int) -> bool:
        """Whether no other grade is possible for any of the values."""
        up_to = (2 << self.place) - 1
        return possible & up_to == 0 if self.loses else possible & ~up_to == 0


@frozen
class Failing:
    """The values that do not reach a goal."""

    goal: Reach

    def met(self, possible: int) -> bool:
        """Whether the goal is missed."""
        return not self.goal.met(possible)

    def can(self, possible: int) -> bool:
        """Whether some value may miss it."""
        return not self.goal.must(possible)

    def must(self, possible: int) -> bool:
        """Whether every value misses it."""
        return not self.goal.can(possible)


@frozen
class Try:
    """Boxes of the traits that a change moves, with all else as in `record`.

    about: what the try is for; of tries about the same, only the first that is met counts.
    """

    record: Mapping[str, Reading]
    parts: tuple[tuple[str, Box], ...]
    about: object

    @property
    def size(self) -> float:
        """The size of the smallest change that it could hold."""
        return sum(box.size for _, box in self.parts)

    @property
    def readings(self) -> Mapping[str, Reading | None]:
        """The record as it could be after any of its changes."""
        return {**self.record, **{name: box.reading for name, box in self.parts}}

    @property
    def is_one(self) -> bool:
        """Whether it holds one change only."""
        return all(is_one(box) for _, box in self.parts)

    def split(self) -> Iterator[Try]:
        """Its parts: those of the first box that holds several values."""
        for i, (name, box) in enumerate(self.parts):
            if not is_one(box):
                before, after = self.parts[:i], self.parts[i + 1 :]
                for part in box.split():
                    yield Try(self.record, (*before, (name, part), *after), self.about)
                return


@define
class Looks:
    """How many records may still be graded in a search."""

    left: int

    @property
    def spent(self) -> bool:
        """Whether none is left."""
        return self.left <= 0


def is_one(box: Box) -> bool:
    """Whether a box holds one value only."""
    match box:
        case Point():
            return True
        case Stretch(near, far):
            return near == far
        case Marks(_, _, decided, places):
            return decided == places
        case _:
            return False


def nearest_first(
    tries: Iterable[Try],
    possible: Callable[[Mapping[str, Reading | None]], int],
    goal: Goal,
    looks: Looks,
    limit: float,
) -> Iterator[Try]:
    """The tries that reach a goal at the nearest value of their box, the smallest change first, none larger than `limit`.

    possible: the bits of the grades possible for a record. Ends without a word where the looks are spent.
    """
    order = count()
    waiting = [(one.size, next(order), one) for one in tries if one.size <= limit]
    heapify(waiting)
    met: set[object] = set()
    while waiting and not looks.spent:
        _, _, one = heappop(waiting)
        if one.about in met:
            continue
        looks.left -= 1
        grades = possible(one.readings)
        if not goal.can(grades):
            continue
        if goal.met(grades) if one.is_one else goal.must(grades):
            met.add(one.about)
            yield one
            continue
        for part in one.split():
            if (size := part.size) <= limit:
                heappush(waiting, (size, next(order), part))
