"""The lowest and the highest score that a fish can have."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal

import z3

from koirules.analysis.proofs.prover import Prover, Seen
from koirules.analysis.proofs.statements import Outcome, Statement
from koirules.engines.scalar.evaluator import Trace
from koirules.vocabulary.readings import Reading

_ROUNDS = 24


def scores(prover: Prover) -> Iterator[Statement]:
    """The highest score that a fish is sure of, and the lowest that one cannot go beyond."""
    if prover.rules.sections:
        for sign, word in ((1, "highest"), (-1, "lowest")):
            yield _extreme(prover, sign, word)


def _extreme(prover: Prover, sign: int, word: str) -> Statement:
    best = prover.climbed(max(prover.pool, key=lambda seen: seen.height(sign)), sign)
    # What no fish goes beyond, brought nearer to what one has by halves.
    beyond = sum(section.worth for section in prover.rules.sections) if sign > 0 else 0
    score = prover.standing.score.first if sign > 0 else -prover.standing.score.last
    slack = prover.universe.meaning.arithmetic.slack
    for _ in range(_ROUNDS):
        least = best.height(sign)
        if least >= beyond:
            break
        aim = (least + beyond + 1) // 2
        _, answer = prover.asked(score >= aim)
        if answer == z3.unsat:
            beyond = aim - 1
            continue
        found = _better_of(prover, [(score >= aim, slack == 0), (score >= aim,)], best, sign)
        if found is best:
            # Without every rounding the solver has more leeway than any fish.
            if prover.asked(score >= least + 1, exact=True)[1] == z3.unsat:
                beyond = least
            break
        best = found
    return _statement(prover, best, beyond, sign, word)


def _better_of(prover: Prover, wanted: list[tuple[z3.BoolRef, ...]], best: Seen, sign: int) -> Seen:
    for terms in wanted:
        solver, answer = prover.asked(*terms)
        if answer == z3.sat:
            for record in prover.records(solver):
                seen = prover.climbed(prover.seen(record), sign)
                if seen.height(sign) > best.height(sign):
                    return seen
    return best


def _statement(prover: Prover, best: Seen, beyond: int, sign: int, word: str) -> Statement:
    reached = sign * best.height(sign)

    def shows(record: Mapping[str, Reading], trace: Trace) -> bool:
        return Seen(record, record, trace).height(sign) >= best.height(sign)

    fish = (prover.told(best, shows),)
    if best.height(sign) >= beyond:
        return Statement("score", word, f"the {word} score is {_points(reached)}", Outcome.FOUND, fish=fish)
    other = _points(abs(beyond))
    side = "none above" if sign > 0 else "none below"
    one = prover.rules.subject.with_article
    words = f"the {word} score: {one} has {_points(reached)}, {side} {other}; whether any lies between"
    return Statement("score", word, words, Outcome.OPEN, fish=fish)


def _points(hundredths: int) -> str:
    return str(Decimal(hundredths).scaleb(-2))
