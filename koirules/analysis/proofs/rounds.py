"""Statements about rounds: one that no fish can pass, and one that every fish passes that it looks at.

A condition that reads a figure of the batch hangs on the other fish, and is not asked about.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from koirules.analysis.proofs.prover import Prover, Shows
from koirules.analysis.proofs.statements import Outcome, Statement
from koirules.engines.scalar.evaluator import Trace
from koirules.engines.scalar.walking import worked_out
from koirules.meaning import operators as ops
from koirules.standard.rounds import Round
from koirules.standard.tree import (
    Apply,
    FaultRead,
    Figure,
    GradeRead,
    Node,
    ScoreRead,
    SectionRead,
    Supplied,
    TraitRead,
    walk,
)
from koirules.values import frozen
from koirules.vocabulary.readings import Reading


@frozen
class _Asked:
    """What a round asks of a fish: as terms of the solver where they can be said, and of a fish that was graded."""

    keep: Node
    passes: Any
    fails: Any

    def holds(self, prover: Prover, record: Mapping[str, Reading], trace: Trace) -> tuple[bool, bool]:
        """Whether it surely, and possibly, holds of a fish."""
        surely, possibly = worked_out(self.keep, prover.rules, prover.settings, record, trace)
        return bool(surely), bool(possibly)


def rounds(prover: Prover) -> Iterator[Statement]:
    """Of each round whether a fish can pass it, and whether one can leave in it."""
    asked: dict[str, _Asked] = {}
    before: dict[str, list[_Asked]] = {}
    for one in prover.rules.rounds:
        chain = _chain(one, asked, before)
        before[one.name] = chain
        if one.keep is None or _reads_batch(one.keep):
            continue
        asked[one.name] = this = _asked(prover, one.keep)
        statement = _told(prover, one, chain, this)
        yield statement
        if statement.slip and statement.about.endswith(_NONE):
            return  # what comes after a round that no fish passes looks at no fish


_NONE = ", none passes"


def _chain(one: Round, asked: Mapping[str, _Asked], before: Mapping[str, list[_Asked]]) -> list[_Asked]:
    """What was asked of the fish that a round looks at by the rounds before it."""
    if one.pool == "all" or one.pool_of not in before:
        return []
    kept = [asked[one.pool_of]] if one.pool == "kept" and one.pool_of in asked else []
    return [*before[one.pool_of], *kept]


def _told(prover: Prover, one: Round, chain: Sequence[_Asked], this: _Asked) -> Statement:
    logic, line, subject = prover.universe.logic, one.place.line, prover.rules.subject
    reached = [each.passes for each in chain]
    known = all(term is not None for term in (*reached, this.passes))
    for passes, about, words in (
        (True, _NONE, f"no {subject.one} can pass the round {one.name}"),
        (False, ", all pass", f"every {subject.one} that the round {one.name} looks at passes it"),
    ):
        shows = _shows(prover, chain, this, passes=passes)
        if any(shows(seen.readings, seen.trace) for seen in prover.pool):
            continue
        if not known:
            return Statement("round", f"round {one.name}{about}", f"whether {words}", Outcome.OPEN, line=line)
        answer = prover.ask(logic.every([*reached, this.passes if passes else this.fails]), shows)
        if answer.seen is None:
            said = words if answer.sure else f"whether {words}"
            outcome = Outcome.PROVED if answer.sure else Outcome.OPEN
            return Statement("round", f"round {one.name}{about}", said, outcome, answer.sure, line=line)
    words = f"some {subject.many} pass the round {one.name}, and some leave in it"
    return Statement("round", f"round {one.name}", words, Outcome.FOUND, line=line)


def _shows(prover: Prover, chain: Sequence[_Asked], this: _Asked, *, passes: bool) -> Shows:
    def shows(record: Mapping[str, Reading], trace: Trace) -> bool:
        if not all(each.holds(prover, record, trace)[0] for each in chain):
            return False
        surely, possibly = this.holds(prover, record, trace)
        return surely if passes else not possibly

    return shows


def _asked(prover: Prover, keep: Node) -> _Asked:
    """A condition as terms; None for one that mixes the grade with other things inside of `or` and the like."""
    logic = prover.universe.logic
    passes, fails = [], []
    for part in _joined(keep):
        nodes = list(walk(part))
        if not any(isinstance(node, GradeRead) for node in nodes):
            pair = prover.standing.node(part)
            passes.append(pair.first)
            fails.append(logic.no(pair.second))
        elif any(isinstance(node, TraitRead | Supplied | ScoreRead | SectionRead | FaultRead) for node in nodes):
            return _Asked(keep, None, None)
        else:
            places = range(len(prover.rules.grades))
            good = [i for i in places if _of_grade(prover, part, i)]
            passes.append(logic.some([prover.standing.settled(i) for i in good]))
            fails.append(logic.some([prover.standing.settled(i) for i in places if i not in good]))
    return _Asked(keep, logic.every(passes), logic.some(fails))


def _of_grade(prover: Prover, part: Node, grade: int) -> bool:
    """Whether a condition that reads nothing of a fish but its grade holds of fish of one grade."""
    seen = prover.pool[0]
    trace = seen.trace._replace(possible=1 << grade)
    return bool(worked_out(part, prover.rules, prover.settings, seen.readings, trace)[0])


def _joined(node: Node) -> Iterator[Node]:
    if isinstance(node, Apply) and node.operation is ops.ALL_OF:
        for operand in node.operands:
            yield from _joined(operand)
    else:
        yield node


def _reads_batch(keep: Node) -> bool:
    return any(isinstance(node, Supplied) and isinstance(node.source, Figure) for node in walk(keep))
