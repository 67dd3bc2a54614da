"""Two fish that differ in one trait alone, as terms: the second is the better one in it.

What is asked of their grades is taken apart. First, section by section, fault by fault and grade by grade, whether the
better fish can be worse off there; what is proved is stated, and of the whole often nothing more need be known.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from typing import Any

import z3

from koirules.analysis.proofs.prover import Prover, Seen
from koirules.engines.symbolic.found import record_of
from koirules.engines.symbolic.grown import in_order
from koirules.engines.symbolic.points import Curved
from koirules.engines.symbolic.standing import Standing
from koirules.engines.symbolic.universe import twin_of
from koirules.meaning.algebra import Ends
from koirules.standard.parts import Limit, part_key
from koirules.standard.tree import FaultRead, GradeRead, Recorded, ScoreRead, SectionRead, Supplied, TraitRead, walk
from koirules.values import define
from koirules.vocabulary.readings import Reading, Span
from koirules.vocabulary.traits import Better, Trait


@define
class Two:
    """Two fish that differ in one trait: the worse one in it, and the better one."""

    worse: Seen
    better: Seen


def is_better(trait: Trait, one: Reading, other: Reading) -> bool:
    """Whether the second value of a trait is better than the first."""
    return rank(other) > rank(one) if trait.better is Better.MORE else rank(other) < rank(one)


def rank(reading: Reading) -> float:
    """A number that grows with a number or a step."""
    return reading.low if isinstance(reading, Span) else float(reading) if isinstance(reading, int) else 0.0


@define
class Goals:
    """The terms that two fish would have to meet, and what was proved of them on the way.

    moved: they differ in the trait, and the twin is the better one. given: what rounding keeps in order. stated: what was
    proved. steady: whether each section is proved never to be lower.
    """

    twin: Standing
    moved: Any
    given: list[Any]
    stated: list[Any]
    steady: bool

    @classmethod
    def of(cls, prover: Prover, trait: Trait) -> Goals:
        """The terms for a trait of which more, or less, is better."""
        one, universe, logic = prover.standing, prover.universe, prover.universe.logic
        fish = twin_of(one.fish, trait.name)
        twin = Standing.of(prover.rules, prover.settings, universe, fish, one)
        universe.facts.extend(in_order(one.fish, fish, trait.name))
        worse, better = one.fish.slots[trait.name], fish.slots[trait.name]
        sign = 1 if trait.better is Better.MORE else -1
        moved = logic.every([sign * better.order > sign * worse.order, worse.recorded, better.recorded])
        made = cls(twin, logic.truth(moved), list(_in_order(prover, twin)), list(_the_same(prover, twin)), True)
        made._take_apart(prover)
        return made

    def answered(
        self, prover: Prover, trait: Trait, what: str, contrary: Callable[[Two], bool]
    ) -> tuple[bool, Two | None]:
        """Whether no two fish are contrary in their score or grade, or two that are."""
        if what == "score" and self.steady:
            return True, None
        goal = self._lower() if what == "score" else self._worse(prover)
        if prover.asked(self.moved, goal, stated=self.stated, alone=True)[1] == z3.unsat:
            return True, None
        slack = prover.universe.meaning.arithmetic.slack
        for more in ((), (slack == 0,)):
            solver, answer = prover.asked(self.moved, goal, *more, stated=[*self.given, *self.stated])
            if answer == z3.unsat:
                return not more, None
            if answer == z3.sat:
                for two in self._twos(prover, trait, solver):
                    if contrary(two):
                        return False, two
        return False, None

    def _lower(self) -> Any:
        one = self.twin.twin
        if one is None:
            raise AssertionError("a twin of nothing")
        # The lower end of a score lies below its higher end, so whoever is surely lower is lower at both.
        return z3.And(self.twin.score.first < one.score.first, self.twin.score.last < one.score.last)

    def _worse(self, prover: Prover) -> Any:
        one, twin, logic = prover.standing, self.twin, prover.universe.logic
        places = range(len(one.possible))
        return logic.truth(
            logic.some([logic.every([one.settled(i), twin.settled(k)]) for i in places for k in places if k > i])
        )

    def _twos(self, prover: Prover, trait: Trait, solver: z3.Solver) -> Iterator[Two]:
        other = record_of(self.twin.fish, solver.model(), prover.ordinary)[trait.name]
        for record in prover.records(solver):
            # With what it grows to, a fish may have passed the other one in the trait itself.
            if is_better(trait, record[trait.name], other):
                yield Two(prover.seen(record), prover.seen({**record, trait.name: other}))

    def _take_apart(self, prover: Prover) -> None:
        one, twin, logic = prover.standing, self.twin, prover.universe.logic
        lower = [
            # Of sections that are one or the other the solver hears what their sums are.
            getattr(held, end) < getattr(one.sections[name], end)
            for name, held in twin.sections.items()
            for end in _ends(one.sections[name], held)
        ]
        self.steady = self._all_proved(prover, lower)
        contrary = []
        pairs = [(one.bites[key], twin.bites[key], key[0] == "fault") for key in twin.bites]
        pairs.extend((ours, theirs, False) for ours, theirs in zip(one.grades, twin.grades, strict=True))
        for ours, theirs, is_bad in pairs:
            for end in _ends(ours, theirs):
                mine, its = getattr(ours, end), getattr(theirs, end)
                worse = logic.every([its, logic.no(mine)] if is_bad else [mine, logic.no(its)])
                contrary.append(logic.truth(worse))
        self._all_proved(prover, contrary)

    def _all_proved(self, prover: Prover, worse: list[Any]) -> bool:
        """Whether none of several things can be worse: asked of all at once, and only where that fails one by one."""
        if len(worse) > 1:
            together = z3.Or(*worse)
            if prover.asked(self.moved, together, stated=[*self.given, *self.stated])[1] == z3.unsat:
                self.stated.extend(z3.Implies(self.moved, z3.Not(one)) for one in worse)
                return True
        # Each one that is proved helps with the next.
        proved = [self._proved(prover, one) for one in worse]
        return all(proved)

    def _proved(self, prover: Prover, worse: Any) -> bool:
        if prover.asked(self.moved, worse, stated=[*self.given, *self.stated])[1] != z3.unsat:
            return False
        self.stated.append(z3.Implies(self.moved, z3.Not(worse)))
        return True


def _ends(ours: Ends[Any], theirs: Ends[Any]) -> tuple[str, ...]:
    """The ends in which two values may differ."""
    if ours is theirs:
        return ()
    return ("first",) if ours.sure and theirs.sure else ("first", "second")


def _the_same(prover: Prover, twin: Standing) -> Iterator[Any]:
    """Faults and lifts that read nothing in which the two fish differ are the same for both.

    Where the solver has only bounds, as of a product, it would else take them for two things.
    """
    one, truth = prover.standing, prover.universe.logic.truth
    differs: dict[str, bool] = {}
    for limit in prover.rules.limits:
        if not _differs(prover, limit, twin.fish.moved, differs):
            ours, theirs = one.bites[limit.head, limit.name], twin.bites[limit.head, limit.name]
            for end in _ends(ours, theirs):
                yield truth(getattr(ours, end)) == truth(getattr(theirs, end))


def _differs(prover: Prover, limit: Limit, moved: Collection[str], known: dict[str, bool]) -> bool:
    """Whether a fault or lift may differ between two fish that differ in some traits, and so perhaps in their scores."""
    key = part_key(limit)
    if key not in known:
        nodes = [node for root in limit.roots for node in walk(root, into_terms=True, into_sources=True)]
        known[key] = any(
            isinstance(node, ScoreRead | SectionRead | GradeRead)
            or (isinstance(node, TraitRead | Recorded | Supplied) and node.key in moved)
            for node in nodes
        )
        read = {node.name for node in nodes if isinstance(node, FaultRead)}
        others = [other for other in prover.rules.limits if other.head == "fault" and other.name in read]
        known[key] = known[key] or any(_differs(prover, other, moved, known) for other in others)
    return known[key]


def _in_order(prover: Prover, twin: Standing) -> Iterator[Any]:
    """What rounding keeps in order: points along one straight piece, and sections along their sums."""
    for key, curved in twin.curved.items():
        for one, other in zip(prover.standing.curved[key], curved, strict=True):
            yield from _along(prover, one, other)
    for name, totals in twin.totals.items():
        ours = prover.standing.totals[name]
        if ours is totals:
            continue
        held = (prover.standing.sections[name], twin.sections[name])
        for end in ("first", "second"):
            one, other = getattr(ours, end), getattr(totals, end)
            low, high = getattr(held[0], end), getattr(held[1], end)
            yield z3.Implies(one <= other, low <= high)
            yield z3.Implies(other <= one, high <= low)


def _along(prover: Prover, one: Curved, other: Curved) -> Iterator[Any]:
    value, truth = prover.universe.meaning.arithmetic.value, prover.universe.logic.truth
    x, y = value(one.read.inner), value(other.read.inner)
    for mine, theirs in zip(one.lines, other.lines, strict=False):
        if (mine.left, mine.right) != (theirs.left, theirs.right):
            continue
        both = z3.And(truth(mine.when), truth(theirs.when))
        first, second = (one.points, other.points) if mine.high >= mine.low else (other.points, one.points)
        yield z3.Implies(z3.And(both, x <= y), first <= second)
        yield z3.Implies(z3.And(both, y <= x), second <= first)
