"""Asks the solver whether any fish is graded differently by two editions, and whether one with fewer traits changed is.

The same editions give the same answers in every run: the solver has one thread, a fixed seed, and a budget in its own units of
work. What it finds is graded by both editions before it is told.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

import z3
from attrs import evolve

from koirules.analysis.diff.joint import BY_NEW, Joint, Record, in_common
from koirules.analysis.diff.unlike import settings_of
from koirules.engines.symbolic.fish import Fish, Slot
from koirules.engines.symbolic.found import before_growth, record_of
from koirules.engines.symbolic.relevant import Relevant
from koirules.engines.symbolic.shared import Shared, SharedStanding, in_order
from koirules.engines.symbolic.universe import Universe, fish_of
from koirules.engines.symbolic.values import Bits, Cases, Logic
from koirules.grading.single import Grader
from koirules.language.syntax import Word
from koirules.meaning.algebra import Ends
from koirules.problems import Place
from koirules.standard.reading_nodes import read_trait, recordable_of
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, type_of_kind
from koirules.values import define
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
    """Asks about one pair of editions.

    fish: one that is not known yet; standings: what each edition makes of it; differ: where its grades are others.
    """

    joint: Joint
    universe: Universe
    fish: Fish
    standings: tuple[SharedStanding, SharedStanding]
    differ: Any
    order: list[Any]
    relevant: Relevant

    @classmethod
    def of(cls, joint: Joint) -> Asker:
        """Work both editions out for a fish that is not known yet."""
        universe = Universe.made()
        fish = _fish(joint, universe)
        for one in joint.beside.values():
            fish.slot(one)
        shared = Shared(joint.same)
        old = _standing(joint, joint.old, fish, universe, shared, "old")
        new = _standing(joint, joint.new, fish, universe, shared, "new")
        differ = _differ(joint, old, new)
        relevant = Relevant(universe.facts, universe.meaning.arithmetic.made)
        return cls(joint, universe, fish, (old, new), differ, list(in_order(old, new)), relevant)

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
                for record in self._records(solver.model()):
                    found = tried(record)
                    if found is not None:
                        return False, found
        return False, None

    def _records(self, model: z3.ModelRef) -> Iterator[Record]:
        """The fish of a model; where something grows, also those that grow to what the solver has, in either edition."""
        joint = self.joint
        record = record_of(self.fish, model, joint.ordinary)
        for name in joint.own:
            # Of what each edition works out in its own way, what the older one has is written.
            told = in_common({name: record.pop(name)} if name in record else {}, joint.traits, joint.old_words)
            record.pop(f"{name}{BY_NEW}", None)
            record.update(told)
        yield record
        for standing in self.standings:
            grown = before_growth(standing.fish, model, record)
            if grown != record:
                yield grown

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
            joint, logic = self.joint, self.universe.logic
            # A trait that each edition works out in its own way may be anything where its inputs are.
            slots = [(key, slot) for key, slot in self.fish.slots.items() if key.removesuffix(BY_NEW) not in joint.own]
            changed = [z3.Not(as_ordinary(slot, joint.ordinary.get(key), logic)) for key, slot in slots]
            solver.add(z3.AtMost(*changed, most))
        return solver, solver.check()


def _fish(joint: Joint, universe: Universe) -> Fish:
    """The variables of the traits of a fish; two of each that either edition works out in its own way."""
    cuts, own = joint.cuts, sorted(joint.own)
    texts = {name: cut.texts for name, cut in cuts.items()} | {f"{name}{BY_NEW}": cuts[name].texts for name in own}
    optional = joint.optional | {f"{name}{BY_NEW}" for name in joint.optional.intersection(own)}
    context, exact, made = universe.context, universe.giving.exact, universe.meaning.arithmetic.made
    fish = Fish(context, universe.facts, exact, made, optional, texts, {}, {}, Span(0.0, 0.0))
    old, new = joint.old.rules.traits, joint.new.rules.traits
    each = [old[name] if name in joint.own else joint.traits[name] for name in cuts]
    each += [evolve(new[name], name=f"{name}{BY_NEW}") for name in own]
    for trait in each:
        read = recordable_of(read_trait(trait, Word(trait.name, _NOWHERE)))
        if read is not None:
            fish.slot(read)
    return fish


def _standing(
    joint: Joint, grader: Grader, fish: Fish, universe: Universe, shared: Shared, mark: str
) -> SharedStanding:
    """What an edition makes of the fish, read in its own words, and grown as it has it."""
    words = joint.old_words if mark == "old" else joint.new_words
    grown = fish_of(grader.rules, settings_of(grader), universe)
    own = evolve(grown, optional=fish.optional, texts=fish.texts, mark=f" of the {mark} edition")
    for key, slot in fish.slots.items():
        if key in words and key not in joint.own:
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
        ends = []
        for end in (slot.read.first, slot.read.last):
            truths = [False] * size
            for place, truth in zip(places, end.truths, strict=True):
                truths[place] = truth
            ends.append(Bits(tuple(truths)))
        return Slot(
            kind, slot.value, Ends(ends[0], ends[0]) if slot.read.sure else Ends(*ends), slot.recorded, slot.names
        )
    cases: list[tuple[Any, Any]] = [
        (1 << place, logic.every([slot.recorded, when])) for place, when in zip(places, slot.value, strict=True)
    ]
    if slot.recorded is not True:
        cases.append(((1 << size) - 1, logic.no(slot.recorded)))
    return Slot(kind, slot.value, Ends(Cases(tuple(cases))), slot.recorded, slot.names)


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
        case PatternMap() | ColourList():
            # Any is as good as another one where rules only ask whether there is one.
            same = True
    return logic.truth(logic.every([slot.recorded, same]))


def _those(slot: Slot, reading: PlaceSet, logic: Logic) -> Any:
    bits = reading.sure
    return logic.every([one if bits >> i & 1 else logic.no(one) for i, one in enumerate(slot.value)])
