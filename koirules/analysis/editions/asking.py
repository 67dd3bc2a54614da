"""Asks the solver whether any fish is graded differently by two editions, and whether one with fewer traits changed is.

The same editions give the same answers in every run: the solver has one thread, a fixed seed, and a budget in its own units of
work. What it finds is graded by both editions before it is told.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import z3
from attrs import define

from koirules.analysis.editions.joint import BY_NEW, Joint, Record
from koirules.analysis.editions.unlike import settings_of
from koirules.grading.single import Grader
from koirules.grading.solver.fish import Fish, Slot
from koirules.grading.solver.relevant import Relevant
from koirules.grading.solver.shared import Shared, SharedStanding, in_order
from koirules.grading.solver.standing import Universe
from koirules.grading.solver.values import Bits, Cases, Logic, Pair
from koirules.language.syntax import Word
from koirules.problems import Place
from koirules.standard.reading_nodes import read_trait, recordable_of
from koirules.standard.types import Numeric, PlaceWords, Steps, TextLabel, Truth, type_of_kind
from koirules.vocabulary.kinds import words_of
from koirules.vocabulary.readings import PlaceSet, Span
from koirules.vocabulary.traits import Trait

WORK = 2_500_000
"""How much work the solver may put into one question, in its own units: some seconds at the most."""

WORK_ON_FEWER = 1_000_000
"""The same for the question whether a fish with fewer traits changed is graded differently, which is often too hard."""

_NOWHERE = Place("", 1, 1, 1, 1)


@define(eq=False)
class Asker:
    """Asks about one pair of editions. fish: one that is not known yet; differ: where its grades are others."""

    joint: Joint
    universe: Universe
    fish: Fish
    differ: Any
    order: list[Any]
    relevant: Relevant

    @classmethod
    def of(cls, joint: Joint) -> Asker:
        """Work both editions out for a fish that is not known yet."""
        universe = Universe.made()
        texts = {name: cut.texts for name, cut in joint.cuts.items()}
        fish = Fish(universe.context, universe.facts, universe.giving.exact, joint.optional, texts)
        for name in joint.cuts:
            read = recordable_of(read_trait(joint.traits[name], Word(name, _NOWHERE)))
            if read is not None:
                fish.slot(read)
        for one in joint.beside.values():
            fish.slot(one)
        shared = Shared(joint.same)
        old = _standing(joint, joint.old, fish, universe, shared, "old")
        new = _standing(joint, joint.new, fish, universe, shared, "new")
        differ = _differ(joint, old, new)
        relevant = Relevant(universe.facts, universe.meaning.arithmetic.made)
        return cls(joint, universe, fish, differ, list(in_order(old, new)), relevant)

    def ask(self, tried: Callable[[Record], Record | None], most: int | None = None) -> tuple[bool, Record | None]:
        """Whether it is proved that no fish is graded differently, or else one that is, where one was found.

        tried: what is graded differently of a fish that the solver allows, or None. most: only fish with at most so many traits
        other than in the ordinary one.
        """
        slack = self.universe.meaning.arithmetic.slack
        ways: list[tuple[tuple[Any, ...], bool]] = [((), False), ((slack == 0,), False), ((), True)]
        for more, exact in ways if most is None else ways[:2]:
            solver, answer = self._asked(most, *more, exact=exact)
            if answer == z3.unsat and not more:
                return True, None
            if answer == z3.sat:
                found = tried(self.fish.record(solver.model(), self.joint.ordinary))
                if found is not None:
                    return False, found
        return False, None

    def _asked(self, most: int | None, *more: Any, exact: bool) -> tuple[z3.Solver, z3.CheckSatResult]:
        solver = z3.SimpleSolver(ctx=self.universe.context)
        solver.set("random_seed", 0)
        solver.set("rlimit", WORK if most is None else WORK_ON_FEWER)
        needed = self.relevant.to(self.differ, *more, *self.order)
        solver.add(*needed, *self.order)
        if exact:
            solver.add(*self.relevant.among(self.universe.giving.exact, needed))
        solver.add(self.differ, *more)
        if most is not None:
            ordinary, logic = self.joint.ordinary, self.universe.logic
            slots = self.fish.slots.items()
            changed = [z3.Not(as_ordinary(slot, ordinary.get(key), logic)) for key, slot in slots]
            solver.add(z3.AtMost(*changed, most))
        return solver, solver.check()


def _standing(
    joint: Joint, grader: Grader, fish: Fish, universe: Universe, shared: Shared, mark: str
) -> SharedStanding:
    """What an edition makes of the fish, read in its own words."""
    words = joint.old_words if mark == "old" else joint.new_words
    own = Fish(fish.context, fish.facts, fish.exact, fish.optional, fish.texts)
    for key, slot in fish.slots.items():
        if key in words:
            own.slots[key] = _in_words(slot, grader.rules.traits[key], words[key], universe.logic)
        elif not key.endswith(BY_NEW):
            own.slots.setdefault(key, slot)
    if mark == "new":
        own.slots |= {key.removesuffix(BY_NEW): slot for key, slot in fish.slots.items() if key.endswith(BY_NEW)}
    return SharedStanding.beside(grader.rules, settings_of(grader), universe, own, shared, mark)


def _in_words(slot: Slot, trait: Trait, places: tuple[int, ...], logic: Logic) -> Slot:
    """A trait of the fish in the words that an edition has for it: at which place each common word stands there."""
    kind, size = type_of_kind(trait.kind), len(words_of(trait.kind))
    if isinstance(kind, PlaceWords):
        pair: Pair = slot.read
        ends = []
        for end in (pair.first, pair.second):
            truths = [False] * size
            for place, truth in zip(places, end.truths, strict=True):
                truths[place] = truth
            ends.append(Bits(tuple(truths)))
        return Slot(kind, slot.value, Pair(ends[0], ends[0]) if pair.sure else Pair(*ends), slot.recorded, slot.names)
    cases: list[tuple[Any, Any]] = [
        (1 << place, logic.every([slot.recorded, when])) for place, when in zip(places, slot.value, strict=True)
    ]
    if slot.recorded is not True:
        cases.append(((1 << size) - 1, logic.no(slot.recorded)))
    return Slot(kind, slot.value, Cases(tuple(cases)), slot.recorded, slot.names)


def _differ(joint: Joint, old: SharedStanding, new: SharedStanding) -> Any:
    logic = old.universe.logic
    ours = dict(zip(joint.old.grades, old.possible, strict=True))
    theirs = dict(zip(joint.new.grades, new.possible, strict=True))
    either = []
    for name in joint.grades:
        one, other = ours.get(name, False), theirs.get(name, False)
        either.append(logic.chosen(one, logic.no(other), other))
    return logic.truth(logic.some(either))


def as_ordinary(slot: Slot, reading: Any, logic: Logic) -> Any:
    """Where a trait is as in the ordinary fish; reading: None for not recorded."""
    if reading is None:
        return logic.truth(logic.no(slot.recorded))
    match slot.type:
        case Numeric():
            same = slot.value == round(reading.low * slot.notch) if isinstance(reading, Span) else False
        case PlaceWords():
            same = _those(slot, reading, logic)
        case TextLabel():
            # A text that no rule names is as good as any other one.
            same = dict(slot.value).get(reading, slot.value[-1][1])
        case Steps():
            same = slot.value[reading.bit_length() - 1]
        case Truth():
            same = slot.value if reading == 2 else logic.no(slot.value)
    return logic.truth(logic.every([slot.recorded, same]))


def _those(slot: Slot, reading: PlaceSet, logic: Logic) -> Any:
    bits = reading.sure
    return logic.every([one if bits >> i & 1 else logic.no(one) for i, one in enumerate(slot.value)])
