"""What would have changed the grade of a fish: the smallest changes of one trait, then of two.

For a fish whose best possible grade is not the best of the standard: the changes after which the next better grade, or one
better still, is possible. For a fish that is surely of the best grade: the changes after which a worse one is possible. For one
that may be of the best grade or another there is nothing to change: what was not recorded decides, and the questions have it.

Only what was recorded as one value is changed. What was not recorded, or not surely, stays open, and so does `is recorded`:
finding something out changes no fish.

One trait: of every trait the smallest change that does it alone, exactly, to a millionth of the held unit. Two traits: only
where no single trait does it, or where two together are clearly smaller, which is: their sizes add up to no more than half of
the smallest single change, so that neither is needless. The search for them puts one at a step, an option, or the first or
last value of a stretch between two thresholds or knots (places: one added or taken away, or none left), and the other at the
nearest value that then does it; then each of the two is searched again while the other stands, so that neither could be smaller
by itself. Between knots all curves are straight, so that the smallest sum lies at such a corner but for the rounding of points;
what lies between two corners is not tried. For a trait that is read inside a sum, product or quotient no corner is known: the
search begins at quarters of its range, and a pair with it need not be the smallest. The three smallest that are met are told.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from itertools import islice
from math import inf

from attrs import evolve

from koirules.candidates.changes import Change, Move, NearestChanges
from koirules.candidates.places_to_move import Box, Point, Stretch, boxes_of, rest_of_range, telling_points
from koirules.results.parts_read import asked_whether_recorded
from koirules.search.best_first import Failing, Looks, Reach, Try, nearest_first
from koirules.search.pairs_to_move import pair_tries
from koirules.search.witness import witness
from koirules.standard.cuts import Cuts, cuts_of
from koirules.standard.parts import Rules, Setting
from koirules.values import frozen
from koirules.vocabulary.readings import Reading, is_sure

CLEARLY_SMALLER = 0.5
"""Two changes together are clearly smaller than one where they are at most this share of it."""

# Sizes are doubles: two that add up to exactly the share may come out a last digit above it.
_JUST_OVER = 1 + 1e-9

MOST_PAIRS = 3

_LOOKS_EACH, _LOOKS_BEYOND, _LOOKS_AT_PAIRS = 1_500, 300, 6_000


@frozen
class ChangeFinder:
    """Finds the nearest changes of the fish of one standard. possible: the bits of the grades possible for a record."""

    rules: Rules
    possible: Callable[[Mapping[str, Reading | None]], int]
    cuts: Mapping[str, Cuts]
    asked: frozenset[str]

    @classmethod
    def of(
        cls, rules: Rules, settings: Mapping[str, Setting], possible: Callable[[Mapping[str, Reading | None]], int]
    ) -> ChangeFinder:
        """The finder of a standard. possible: of the same rules and settings."""
        return cls(rules, possible, cuts_of(rules, settings), asked_whether_recorded(rules))

    def nearest(self, record: Mapping[str, Reading]) -> NearestChanges:
        """The nearest changes of one fish."""
        possible = self.possible(record)
        best = (possible & -possible).bit_length() - 1
        loses = possible == 1
        if best == 0 and (not loses or len(self.rules.grades) == 1):
            return NearestChanges()
        goal = Reach(0 if loses else best - 1, loses)
        search = _Search(self, record, goal)
        single, whole = search.single()
        least = min((change.size for change in single), default=inf)
        double, all_seen = search.double(least * CLEARLY_SMALLER * _JUST_OVER)
        return NearestChanges(self.rules.grades[goal.place].name, loses, single, double, whole and all_seen)

    def movable(self, record: Mapping[str, Reading]) -> list[str]:
        """The traits that the rules read and that were recorded as one value."""
        return [name for name in self.cuts if name in record and is_sure(self.rules.traits[name].kind, record[name])]

    def boxes(self, name: str, record: Mapping[str, Reading]) -> tuple[Box, ...]:
        """Every other value of a recorded trait."""
        return boxes_of(self.rules.traits[name], record[name], self.cuts[name])

    def points(self, name: str, record: Mapping[str, Reading]) -> tuple[Point, ...]:
        """The values of a recorded trait at which something turns."""
        return telling_points(self.rules.traits[name], record[name], self.cuts[name])


@frozen
class _Search:
    """The search for one fish."""

    finder: ChangeFinder
    record: Mapping[str, Reading]
    goal: Reach

    def single(self) -> tuple[tuple[Change, ...], bool]:
        """Of every trait the smallest change that does it alone; and whether each was searched through."""
        found: list[Change] = []
        whole = True
        for name in self.finder.movable(self.record):
            looks = Looks(_LOOKS_EACH)
            tries = [Try(self.record, ((name, box),), name) for box in self.finder.boxes(name, self.record)]
            met = next(nearest_first(tries, self.finder.possible, self.goal, looks, inf), None)
            whole = whole and (met is not None or not looks.spent)
            if met is not None:
                found.append(self.change(met))
        return tuple(sorted(found, key=lambda change: change.size)), whole

    def double(self, limit: float) -> tuple[tuple[Change, ...], bool]:
        """The smallest changes of two traits, none larger than a limit; and whether all were looked at."""
        looks = Looks(_LOOKS_AT_PAIRS)
        names = self.finder.movable(self.record)
        tries = pair_tries(
            {name: self.finder.boxes(name, self.record) for name in names},
            {name: self.finder.points(name, self.record) for name in names},
            self.record,
            limit,
        )
        met = nearest_first(tries, self.finder.possible, self.goal, looks, limit)
        found = [self.change(self.tightened(one)) for one in islice(met, MOST_PAIRS)]
        return tuple(sorted(found, key=lambda change: change.size)), not looks.spent or len(found) == MOST_PAIRS

    def tightened(self, met: Try) -> Try:
        """A try over two traits, each of them moved no farther than the other asks for."""
        parts = dict(met.parts)
        for name in sorted(parts, key=lambda name: -parts[name].size):
            record = {**self.record, **{other: box.nearest for other, box in parts.items() if other != name}}
            tries = [Try(record, ((name, box),), name) for box in self.finder.boxes(name, self.record)]
            nearer = next(
                nearest_first(tries, self.finder.possible, self.goal, Looks(_LOOKS_EACH), parts[name].size), None
            )
            if nearer is not None:
                parts[name] = nearer.parts[0][1]
        return Try(met.record, tuple(parts.items()), met.about)

    def change(self, met: Try) -> Change:
        """The nearest change of a try that reaches the goal."""
        after = {**self.record, **{name: box.nearest for name, box in met.parts}}
        moves = []
        order = list(self.finder.cuts)
        for name, box in sorted(met.parts, key=lambda part: order.index(part[0])):
            trait = self.finder.rules.traits[name]
            move = Move(trait, self.record[name], box.nearest, None, to_the_end=False, size=box.size)
            moves.append(self._reaching(move, after))
        possible = self.finder.possible(after)
        named = tuple(grade.name for i, grade in enumerate(self.finder.rules.grades) if possible >> i & 1)
        return Change(tuple(moves), named)

    def _reaching(self, move: Move, after: Mapping[str, Reading]) -> Move:
        """A move with how far beyond its value it still does it."""
        rest = rest_of_range(move.trait, move.becomes, move.direction)
        if rest is None:
            return evolve(move, until=move.becomes, to_the_end=True)
        looks = Looks(_LOOKS_BEYOND)
        name = move.trait.name
        finder = self.finder
        after = witness(after, finder.rules.traits, finder.cuts, finder.asked, finder.possible, self.goal)
        met = nearest_first([Try(after, ((name, rest),), name)], self.finder.possible, Failing(self.goal), looks, inf)
        first = next(met, None)
        if first is None:
            far = rest.part(rest.far, rest.far).nearest
            return move if looks.spent else evolve(move, until=far, to_the_end=True)
        ((_, box),) = first.parts
        if not isinstance(box, Stretch):
            raise AssertionError("a number that moves to no number")
        last = box.near - move.direction
        return evolve(move, until=box.part(last, last).nearest)
