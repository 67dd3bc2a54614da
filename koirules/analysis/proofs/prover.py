"""Asks whether any fish shows something: first of many fish that were graded, then of the solver.

The same standard gives the same answers in every run: fish are drawn with a fixed seed, the solver has one thread, a fixed
seed and a budget in its own units of work instead of seconds, and everything is asked in one order.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from random import Random
from typing import Any

import z3
from attrs import define, frozen

from koirules.analysis.proofs.statements import Shown
from koirules.grading.evaluator import Trace
from koirules.grading.ordinary import made_ordinary, ordinary_fish, telling_values
from koirules.grading.single import Grader
from koirules.grading.solver.relevant import Relevant
from koirules.grading.solver.standing import Standing, Universe, fish_of
from koirules.standard.cuts import Cuts, cuts_of
from koirules.standard.parts import Rules, Setting
from koirules.vocabulary.readings import Reading

DRAWN = 1_500
"""How many fish are drawn and graded before anything is asked."""

WORK = 2_500_000
"""How much work the solver may put into one question, in its own units: some seconds."""

Shows = Callable[[Mapping[str, Reading], Trace], bool]


@frozen
class Seen:
    """A fish that was graded."""

    record: Mapping[str, Reading]
    trace: Trace

    def height(self, sign: int) -> int:
        """How high its score surely is, in hundredths; with sign -1 how low."""
        return self.trace.score[0] if sign > 0 else -self.trace.score[1]


@frozen
class Answer:
    """Whether a fish shows something: one that does, or none where that is proved (`sure`) or not known."""

    seen: Seen | None
    sure: bool


@define
class Prover:
    """Answers questions about all fish of one standard, in one run."""

    grader: Grader
    rules: Rules
    settings: Mapping[str, Setting]
    cuts: Mapping[str, Cuts]
    ordinary: Mapping[str, Reading]
    pool: list[Seen]
    universe: Universe
    standing: Standing
    relevant: Relevant

    @classmethod
    def of(cls, grader: Grader, *, whole: bool = False) -> Prover:
        """The prover of a standard with the settings of a grader; whole: of fish whose every trait is recorded."""
        rules, settings = grader.rules, grader.reasoner.teller.settings
        cuts = cuts_of(rules, settings)
        ordinary = ordinary_fish([rules], cuts)
        universe = Universe.made()
        standing = Standing.of(rules, settings, universe, fish_of(rules, settings, universe, whole=whole))
        relevant = Relevant(universe.facts, universe.meaning.arithmetic.made)
        made = cls(grader, rules, settings, cuts, ordinary, [], universe, standing, relevant)
        made.pool.extend(made.seen(record) for record in made._drawn())
        return made

    def seen(self, record: Mapping[str, Reading]) -> Seen:
        """A fish, graded."""
        return Seen(record, self.grader.trace(record))

    def _drawn(self) -> Iterator[Mapping[str, Reading]]:
        values = {name: telling_values(self.rules.traits[name], cut) for name, cut in self.cuts.items()}
        best = self.climbed(self.seen(self.ordinary), 1).record
        yield self.ordinary
        for sample in self.rules.samples:
            yield {**self.ordinary, **{name: reading for name, reading in sample.record.items() if name in self.cuts}}
        draw = Random(0)  # noqa: S311 - the same fish every time, no secret
        for number in range(DRAWN):
            # Some are ordinary, or as good as can be, but for a few traits; some are anything.
            share = (0.05, 0.2, 0.5, 1.0)[number % 4]
            record = dict(self.ordinary if number % 8 < 4 else best)
            for name, telling in values.items():
                if draw.random() < share:
                    record[name] = draw.choice(telling)
                    if name in self.standing.fish.optional and draw.random() < 0.3:
                        del record[name]
            yield record

    def climbed(self, start: Seen, sign: int) -> Seen:
        """A fish made better (with sign -1: worse) in its score, trait by trait, as long as that helps."""
        best, improved = start, True
        while improved:
            improved = False
            for name, cut in self.cuts.items():
                for value in telling_values(self.rules.traits[name], cut):
                    seen = self.seen({**best.record, name: value})
                    if seen.height(sign) > best.height(sign):
                        best, improved = seen, True
        return best

    def ask(self, goal: Any, shows: Shows) -> Answer:
        """Whether any fish shows something. goal: the same as a term, which holds of every fish that shows it."""
        for seen in self.pool:
            if shows(seen.record, seen.trace):
                return Answer(seen, True)
        logic = self.universe.logic
        wanted, slack = logic.truth(goal), self.universe.meaning.arithmetic.slack
        for terms, exact in (((wanted,), False), ((wanted, slack == 0), False), ((wanted,), True)):
            solver, answer = self.asked(*terms, exact=exact)
            if answer == z3.unsat and len(terms) == 1:
                return Answer(None, True)
            if answer == z3.sat:
                near = self._near(self.record(solver), shows)
                if near is not None:
                    self.pool.append(near)
                    return Answer(near, True)
        return Answer(None, False)

    def _near(self, record: Mapping[str, Reading], shows: Shows) -> Seen | None:
        """The fish itself if it shows what is asked for, or one that does and differs in one trait.

        The solver's fish often stand on a threshold of the score, which rounding may put them on the other side of.
        """
        first = self.seen(record)
        if shows(first.record, first.trace):
            return first
        for name, cut in self.cuts.items():
            for value in telling_values(self.rules.traits[name], cut):
                seen = self.seen({**record, name: value})
                if shows(seen.record, seen.trace):
                    return seen
        return None

    def record(self, solver: z3.Solver) -> dict[str, Reading]:
        """The fish that a solver has found."""
        return self.standing.fish.record(solver.model(), self.ordinary)

    def asked(
        self, *wanted: Any, stated: Sequence[Any] = (), alone: bool = False, exact: bool = False
    ) -> tuple[z3.Solver, z3.CheckSatResult]:
        """What a new solver says of some terms.

        stated: what was proved before; alone: nothing else is taken as given; exact: with every rounding, which takes long.
        """
        solver = z3.SimpleSolver(ctx=self.universe.context)
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
        record = made_ordinary(
            seen.record,
            self.ordinary,
            self.rules.traits,
            lambda tried: shows(tried, self.grader.trace(tried)),
        )
        return self.shown(record)

    def shown(self, record: Mapping[str, Reading]) -> Shown:
        """A fish with what the evaluator makes of it."""
        trace = self.grader.trace(record)
        return Shown(record, self.grader.named(trace.possible), trace.score)
