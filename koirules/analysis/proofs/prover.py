"""Asks whether any fish shows something: first of many fish that were graded, then of the solver.

The same standard gives the same answers in every run: fish are drawn with a fixed seed, the solver has one thread, a fixed
seed and a budget in its own units of work instead of seconds, and everything is asked in one order.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from itertools import combinations, islice, permutations, product
from random import Random
from time import process_time
from typing import Any

import z3

from koirules.analysis.proofs.following import Following, values_to_try
from koirules.analysis.proofs.statements import Shown
from koirules.candidates.ordinary import made_ordinary, ordinary_fish
from koirules.engines.scalar.evaluator import Trace
from koirules.engines.symbolic.found import before_growth, record_of
from koirules.engines.symbolic.relevant import Relevant
from koirules.engines.symbolic.standing import Standing
from koirules.engines.symbolic.universe import Universe, fish_of
from koirules.grading.single import Grader
from koirules.standard.cuts import cuts_of
from koirules.standard.parts import Part, Rules, Setting
from koirules.standard.tree import TraitRead, walk
from koirules.values import define, frozen
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.readings import Reading, Span

_MOVED_TOGETHER = 2
"""So many of the traits that a rule reads are tried in every combination of their values."""

DRAWN = 1_500
"""How many fish are drawn and graded before anything is asked."""

WORK = 2_500_000
"""How much work the solver may put into one question, in its own units: some seconds."""

_MOST_MOVED = 200
"""So many fish are drawn for one fault or lift."""

STRETCHES = 40
"""Into so many parts the range of a number is cut that moves together with another one."""

SMALLEST = 0.00001

Shows = Callable[[Mapping[str, Reading], Trace], bool]


@frozen
class Seen:
    """A fish that was graded. record: as it is written; readings: with what follows from that, now and when grown."""

    record: Mapping[str, Reading]
    readings: Mapping[str, Reading]
    trace: Trace

    def height(self, sign: int) -> int:
        """How high its score surely is, in hundredths; with sign -1 how low."""
        return self.trace.score[0] if sign > 0 else -self.trace.score[1]


@frozen
class Answer:
    """Whether a fish shows something: one that does, or none where that is proved (`sure`) or not known."""

    seen: Seen | None
    sure: bool


class OutOfTimeError(Exception):
    """The time that somebody gave is used up."""


@define
class Prover:
    """Answers questions about all fish of one standard, in one run."""

    grader: Grader
    rules: Rules
    settings: Mapping[str, Setting]
    following: Following
    values: Mapping[str, Sequence[Reading]]
    ordinary: Mapping[str, Reading]
    pool: list[Seen]
    universe: Universe
    standing: Standing
    relevant: Relevant
    until: float | None = None

    @classmethod
    def of(cls, grader: Grader, *, whole: bool = False, until: float | None = None) -> Prover:
        """The prover of a standard with the settings of a grader.

        whole: of fish whose every trait is recorded. until: the processor time of this process at which it gives up.
        """
        rules, settings = grader.rules, grader.reasoner.teller.settings
        universe = Universe.made()
        standing = Standing.of(rules, settings, universe, fish_of(rules, settings, universe, whole=whole))
        relevant = Relevant(universe.facts, universe.meaning.arithmetic.made)
        # What nothing but an unused term reads makes no difference.
        cuts = {name: cut for name, cut in cuts_of(rules, settings).items() if name in standing.fish.slots}
        following = Following.of(grader, cuts)
        ordinary = ordinary_fish([rules], cuts)
        for name in standing.fish.optional & ordinary.keys():
            if following.from_trait(name):
                # An ordinary fish does not say one thing by its map and another by its traits.
                del ordinary[name]
        values = values_to_try(grader, cuts, standing.fish)
        made = cls(grader, rules, settings, following, values, ordinary, [], universe, standing, relevant, until)
        made.pool.extend(made._all_seen(list(made._drawn())))
        return made

    def seen(self, record: Mapping[str, Reading]) -> Seen:
        """A fish, graded as every fish is: what follows from its record is worked out first, then what it grows to."""
        return self._graded(record, self.following.whole([record])[0])

    def _all_seen(self, records: Sequence[Mapping[str, Reading]]) -> list[Seen]:
        known = self.following.whole(records)
        self.grader.evaluator.ahead.prepare(known)
        return [self._graded(*one) for one in zip(records, known, strict=True)]

    def _graded(self, record: Mapping[str, Reading], known: Mapping[str, Reading]) -> Seen:
        readings = self.grader.evaluator.ahead.whole(known)
        return Seen(record, readings, self.grader.evaluator.run_whole(readings))

    def moved(self, record: Mapping[str, Reading], part: Part) -> Iterator[Mapping[str, Reading]]:
        """A fish with other values of the traits that a part of the standard reads, a few of them at a time."""
        read = {node.trait.name for root in part.roots for node in walk(root) if isinstance(node, TraitRead)}
        names = [name for name in self.values if name in read]
        for count in range(1, _MOVED_TOGETHER + 1):
            for moving in combinations(names, count):
                for values in product(*(self.values[name] for name in moving)):
                    yield {**record, **dict(zip(moving, values, strict=True))}

    def _drawn(self) -> Iterator[Mapping[str, Reading]]:
        values = self.values
        high = self.climbed(self.seen(self.ordinary), 1)
        best = self._climbed_alone(high, _standing).record
        yield self.ordinary
        for sample in self.rules.samples:
            yield {**self.ordinary, **{name: reading for name, reading in sample.record.items() if name in values}}
        draw = Random(0)  # noqa: S311 - the same fish every time, no secret
        for number in range(DRAWN):
            # Some are ordinary, or as good as can be, but for a few traits; some are anything.
            share = (0.05, 0.2, 0.5, 1.0)[number % 4]
            record = dict((self.ordinary, high.record, best)[number % 3])
            for name, telling in values.items():
                if draw.random() < share:
                    record[name] = draw.choice(telling)
                    if name in self.standing.fish.optional and draw.random() < 0.3:
                        del record[name]
            yield record
        # A fault is seen best of a fish that is good but for it.
        yield from (fish for limit in self.rules.limits for fish in islice(self.moved(best, limit), _MOST_MOVED))

    def climbed(self, start: Seen, sign: int) -> Seen:
        """A fish made better (with sign -1: worse) in its score, trait by trait, as long as that helps.

        Where no single trait helps, two numbers move together: a curve over `width / length` is at its best at a ratio.
        """
        best, one_by_one = start, None
        while one_by_one is not best:
            one_by_one = best = self._climbed_alone(best, lambda seen: seen.height(sign))
            best = self._climbed_in_pairs(best, sign)
        return best

    def _climbed_in_pairs(self, start: Seen, sign: int) -> Seen:
        best = start
        for one, other in pairs_read_together(self.rules, self.values):
            low, high = self._reach(other)
            for value in self.values[one]:
                near = best
                for number in stretched(low, high):
                    seen = self.seen({**best.record, one: value, other: Span(number, number)})
                    near = seen if seen.height(sign) > near.height(sign) else near
                best = self._refined(near, other, sign, (high - low) / STRETCHES) if near is not best else best
        return best

    def _refined(self, seen: Seen, name: str, sign: int, width: float) -> Seen:
        """A fish with one number moved by ever smaller steps, as long as that helps."""
        while width > SMALLEST:
            now = seen.record[name]
            if not isinstance(now, Span):
                return seen
            low, high = self._reach(name)
            moved = [min(max(round(now.low + by, 6), low), high) for by in (-width, width)]
            tried = [self.seen({**seen.record, name: Span(value, value)}) for value in moved]
            better = max(tried, key=lambda one: one.height(sign))
            if better.height(sign) > seen.height(sign):
                seen = better
            else:
                width /= 2
        return seen

    def _reach(self, name: str) -> tuple[float, float]:
        kind = self.rules.traits[name].kind
        return (float(kind.held_low), float(kind.held_high)) if isinstance(kind, Number) else (0.0, 0.0)

    def _climbed_alone(self, start: Seen, height: Callable[[Seen], Any]) -> Seen:
        best, improved = start, True
        while improved:
            improved = False
            for name, values in self.values.items():
                for value in values:
                    seen = self.seen({**best.record, name: value})
                    if height(seen) > height(best):
                        best, improved = seen, True
        return best

    def ask(self, goal: Any, shows: Shows, likely: Iterable[Mapping[str, Reading]] = ()) -> Answer:
        """Whether any fish shows something. goal: the same as a term, which holds of every fish that shows it.

        likely: fish that may well show it, to be tried before the solver is asked.
        """
        for seen in self.pool:
            if shows(seen.readings, seen.trace):
                return Answer(seen, True)
        for seen in map(self.seen, likely):
            if shows(seen.readings, seen.trace):
                self.pool.append(seen)
                return Answer(seen, True)
        logic = self.universe.logic
        wanted, slack = logic.truth(goal), self.universe.meaning.arithmetic.slack
        first = None
        for terms, exact in (((wanted,), False), ((wanted, slack == 0), False), ((wanted,), True)):
            if exact and first == z3.unknown:
                break  # what is too hard without the roundings is no easier with them
            solver, answer = self.asked(*terms, exact=exact)
            first = answer if first is None else first
            if answer == z3.unsat and len(terms) == 1:
                return Answer(None, True)
            if answer == z3.sat:
                for record in self.records(solver):
                    near = self._near(record, shows)
                    if near is not None:
                        self.pool.append(near)
                        return Answer(near, True)
        return Answer(None, False)

    def _near(self, record: Mapping[str, Reading], shows: Shows) -> Seen | None:
        """The fish itself if it shows what is asked for, or one that does and differs in one trait.

        The solver's fish often stand on a threshold of the score, which rounding may put them on the other side of.
        """
        first = self.seen(record)
        if shows(first.readings, first.trace):
            return first
        for name, values in self.values.items():
            for value in values:
                seen = self.seen({**record, name: value})
                if shows(seen.readings, seen.trace):
                    return seen
        return None

    def records(self, solver: z3.Solver) -> Iterator[dict[str, Reading]]:
        """The fish that a solver has found; where something grows, also one that grows to what the solver has."""
        fish, model = self.standing.fish, solver.model()
        record = record_of(fish, model, self.ordinary)
        yield record
        grown = before_growth(fish, model, record)
        if grown != record:
            yield grown

    def asked(
        self, *wanted: Any, stated: Sequence[Any] = (), alone: bool = False, exact: bool = False
    ) -> tuple[z3.Solver, z3.CheckSatResult]:
        """What a new solver says of some terms.

        stated: what was proved before; alone: nothing else is taken as given; exact: with every rounding, which takes long.
        """
        left = None if self.until is None else self.until - process_time()
        if left is not None and left <= 0:
            raise OutOfTimeError
        solver = z3.SimpleSolver(ctx=self.universe.context)
        if left is not None:
            solver.set("timeout", int(left * 1000) + 1)
        solver.set("random_seed", 0)
        solver.set("rlimit", WORK)
        if not alone:
            needed = self.relevant.to(*wanted, *stated)
            solver.add(*needed)
            if exact:
                solver.add(*self.relevant.among(self.universe.giving.exact, needed))
        solver.add(*stated, *wanted)
        return solver, solver.check()

    def told(self, seen: Seen, shows: Shows) -> Shown:
        """A fish that shows something, made as ordinary as it can be."""

        def still(tried: Mapping[str, Reading]) -> bool:
            made = self.seen(tried)
            return shows(made.readings, made.trace)

        record = made_ordinary(seen.record, self.ordinary, self.rules.traits, still)
        for name in (*sorted(record.keys() - self.ordinary.keys()), *self.following.doubts(record)):
            # What an ordinary fish has not, or what does not go with the rest, need not be written.
            without = {key: reading for key, reading in record.items() if key != name}
            if still(without):
                record = without
        return self.shown(record)

    def shown(self, record: Mapping[str, Reading]) -> Shown:
        """A fish with what the evaluator makes of it."""
        trace = self.seen(record).trace
        return Shown(record, self.grader.named(trace.possible), trace.score, self.following.doubts(record))


def _standing(seen: Seen) -> tuple[int, int, int]:
    """What makes one fish better than another: its worst grade, then how few limits bite, then its score."""
    biting = sum(states[5] for states in seen.trace.limits)
    return -seen.trace.possible.bit_length(), -biting, seen.height(1)


def pairs_read_together(rules: Rules, values: Mapping[str, Sequence[Reading]]) -> list[tuple[str, str]]:
    """The numbers that one curve reads two of, as in `width / length`, each pair in both orders."""
    found: dict[tuple[str, str], None] = {}
    for part in rules.points:
        names = [
            node.trait.name
            for node in walk(part.by)
            if isinstance(node, TraitRead) and isinstance(node.trait.kind, Number) and node.trait.name in values
        ]
        for pair in permutations(dict.fromkeys(names), 2):
            found[pair] = None
    return list(found)


def stretched(low: float, high: float) -> list[float]:
    """Numbers over a range, as far apart as each other."""
    return [round(low + (high - low) * i / STRETCHES, 6) for i in range(STRETCHES + 1)]
