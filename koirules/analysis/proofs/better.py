"""Better never scores worse: of two fish that differ in one trait alone, the better one has no lower score and no worse grade.

What they grow to differs with the trait. What is derived from it is the same in both: whoever wants to know how that counts
asks about it.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any

from koirules.analysis.proofs.prover import Prover
from koirules.analysis.proofs.statements import Outcome, Statement
from koirules.analysis.proofs.two_fish import Goals, Two, is_better, rank
from koirules.candidates.ordinary import made_ordinary, shorter_numbers
from koirules.problems.quoting import in_words
from koirules.vocabulary.kinds import Count, Number, Scale, YesNo
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Better, Trait

_TRIED = 25
"""How many fish are taken through every value of a trait before the solver is asked."""


def ordered_traits(prover: Prover) -> list[Trait]:
    """The traits that the rules read and of which more, or less, is better."""
    traits = [prover.rules.traits[name] for name in prover.values]
    kinds = (Number, Count, Scale, YesNo)
    return [one for one in traits if one.better in {Better.MORE, Better.LESS} and isinstance(one.kind, kinds)]


def better(prover: Prover, trait: Trait) -> Statement:
    """The statement about one trait."""
    for what, contrary in (("grade", _worse_grade), ("score", _lower_score)):
        two = _tried(prover, trait, contrary)
        if two is not None:
            return _found(prover, trait, two, what, contrary)
    return _asked(prover, trait)


def _worse_grade(two: Two) -> bool:
    """Whether the better fish surely gets a worse grade: each of its grades is worse than each of the other's."""
    best_of_better = two.better.trace.possible & -two.better.trace.possible
    return best_of_better > two.worse.trace.possible


def _lower_score(two: Two) -> bool:
    return two.better.trace.score[1] < two.worse.trace.score[0]


def _tried(prover: Prover, trait: Trait, contrary: Any) -> Two | None:
    values = sorted(prover.values[trait.name], key=rank)
    if trait.better is Better.LESS:
        values.reverse()
    for seen in prover.pool[:_TRIED]:
        fish = [prover.seen({**seen.record, trait.name: value}) for value in values]
        for one, other in pairwise(fish):
            two = Two(one, other)
            if contrary(two):
                return two
    return None


def _asked(prover: Prover, trait: Trait) -> Statement:
    goals = Goals.of(prover, trait)
    undecided = []
    for what, contrary in (("score", _lower_score), ("grade", _worse_grade)):
        proved, two = goals.answered(prover, trait, what, contrary)
        if two is not None:
            return _found(prover, trait, two, what, contrary)
        if not proved:
            undecided.append(what)
    if undecided:
        words = f"{trait.name}: whether better can bring a worse {' or '.join(undecided)}"
        return Statement("better", trait.name, words, Outcome.OPEN)
    held = prover.following.from_trait(trait.name)
    words = f"{trait.name}: better never brings a lower score or a worse grade"
    if held:
        words += f", of two {prover.rules.subject.many} with the same {in_words(held, 'and')}, which can follow from it"
    return Statement("better", trait.name, words, Outcome.PROVED, held=held)


def _found(prover: Prover, trait: Trait, two: Two, what: str, contrary: Any) -> Statement:
    values = (two.worse.record[trait.name], two.better.record[trait.name])

    def both(record: Mapping[str, Reading]) -> Two:
        return Two(*(prover.seen({**record, trait.name: value}) for value in values))

    rest = {name: reading for name, reading in two.worse.record.items() if name != trait.name}
    ordinary = {name: reading for name, reading in prover.ordinary.items() if name != trait.name}
    record = made_ordinary(rest, ordinary, prover.rules.traits, lambda tried: contrary(both(tried)))
    for value in shorter_numbers(trait, values[1]):
        two = Two(*(prover.seen({**record, trait.name: one}) for one in (values[0], value)))
        if contrary(two) and is_better(trait, values[0], value):
            values = (values[0], value)
            break
    fish = tuple(prover.shown({**record, trait.name: value}) for value in values)
    word = "worse grade" if what == "grade" else "lower score"
    return Statement("better", trait.name, f"{trait.name}: better can bring a {word}", Outcome.FOUND, fish=fish)
