"""Statements about grades, faults, lifts, bonuses, penalties and conditions: what can never be, and what always is."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, islice
from typing import Any

import z3

from koirules.analysis.proofs.prover import Answer, Prover, Shows
from koirules.analysis.proofs.statements import Outcome, Statement
from koirules.engines.scalar.evaluator import Trace
from koirules.engines.scalar.walking import worked_out
from koirules.meaning.algebra import PLAIN, Ends
from koirules.meaning.grades import after_all
from koirules.standard.parts import Limit, part_key
from koirules.standard.tree import Node, walk
from koirules.values import frozen

_LIFTED, _MOVED = 5, 30
"""So many fish that a lift raises are tried with so many other values of what a fault reads."""


@frozen
class Claim:
    """A question: whether any fish shows something, and what to say where one does, none does, and it is not known."""

    goal: Any
    shows: Shows
    found: str
    proved: str
    undecided: str


def grades(prover: Prover) -> Iterator[Statement]:
    """Whether each grade can be reached."""
    for i, grade in enumerate(prover.rules.grades):
        alone, among = _only(1 << i), _among(1 << i)
        answer = prover.ask(prover.standing.settled(i), alone)
        about, line = part_key(grade), grade.place.line
        if answer.seen is not None:
            fish = (prover.told(answer.seen, alone),)
            yield Statement("grade", about, f"{grade.name} can be reached", Outcome.FOUND, False, fish, line)
        elif not answer.sure:
            yield Statement(
                "grade", about, f"whether any {prover.rules.subject.one} can get {grade.name}", Outcome.OPEN, line=line
            )
        else:
            possible = prover.ask(prover.standing.possible[i], among)
            words = f"no {prover.rules.subject.one} can get {grade.name}"
            if possible.seen is not None or not possible.sure:
                words = f"no {prover.rules.subject.one} is ever sure of {grade.name}"
            yield Statement("grade", about, words, Outcome.PROVED, True, line=line)


def _only(bits: int) -> Shows:
    return lambda _, trace: trace.possible == bits


def _among(bits: int) -> Shows:
    return lambda _, trace: bool(trace.possible & bits)


def limits(prover: Prover) -> Iterator[Statement]:
    """Whether each fault and lift can bite, can fail to, and can change a grade."""
    for i, limit in enumerate(prover.rules.limits):
        about, line = part_key(limit), limit.place.line
        bites = prover.standing.bites[limit.head, limit.name]
        never = _never_or_always(prover, bites, _state(i, 4, True), _state(i, 5, False))
        if never is not None:
            words = f"{limit.head} {limit.name} {never[0]} {'bites' if never[0] != 'can never' else 'bite'}"
            yield Statement("limit", about, words, never[1], never[1] is Outcome.PROVED, line=line)
            continue
        without = [other for other in prover.rules.limits if other is not limit]
        changed = _differs(prover, prover.standing.after(without))
        answer = prover.ask(changed, _changes(prover, [limit]))
        if answer.seen is None:
            words = f"{limit.head} {limit.name} can bite, but never changes a grade"
            outcome = Outcome.PROVED if answer.sure else Outcome.OPEN
            yield Statement(
                "limit", about, words if answer.sure else f"whether {about} ever changes a grade", outcome, line=line
            )
        else:
            yield Statement(
                "limit", about, f"{limit.head} {limit.name} can bite, and changes grades", Outcome.FOUND, line=line
            )


def extras(prover: Prover) -> Iterator[Statement]:
    """Whether each bonus and penalty can hold and can fail to."""
    for i, extra in enumerate(prover.rules.extras):
        about, line = part_key(extra), extra.place.line
        pair = prover.standing.extras[about]
        never = _never_or_always(prover, pair, _extra(i, 0, True), _extra(i, 1, False))
        if never is None:
            words = f"{about} holds of some {prover.rules.subject.many} and not of others"
            yield Statement("extra", about, words, Outcome.FOUND, line=line)
        else:
            words = f"{about} {never[0]} hold{'s' if never[0] != 'can never' else ''}"
            yield Statement("extra", about, words, never[1], never[1] is Outcome.PROVED, line=line)


def _state(limit: int, end: int, wanted: bool) -> Shows:
    return lambda _, trace: trace.limits[limit][end] is wanted


def _extra(extra: int, end: int, wanted: bool) -> Shows:
    return lambda _, trace: trace.extras[extra][end] is wanted


def _never_or_always(prover: Prover, pair: Any, holds: Shows, fails: Shows) -> tuple[str, Outcome] | None:
    """Of a condition that is the same for every fish: the words for it; None where some fish differ."""
    for word, goal, shows in (
        ("can never", pair.first, holds),
        ("always", prover.universe.logic.no(pair.second), fails),
    ):
        answer = prover.ask(goal, shows)
        if answer.seen is None:
            return (word, Outcome.PROVED) if answer.sure else (f"perhaps {word.removeprefix('can ')}", Outcome.OPEN)
    return None


def conditions(prover: Prover) -> Iterator[Statement]:
    """Conditions and comparisons that can never, or always, hold; of one inside of another the outer one is told."""
    told: set[int] = set()
    # Of faults, bonuses and grades as wholes the other statements tell.
    whole = {id(root) for part in prover.rules.parts for root in part.roots if len(part.roots) == 1}
    many = prover.rules.subject.many
    for key, node, pair in prover.standing.truths():
        if id(node) in told or id(node) in whole:
            continue
        holds, fails = _truth(prover, node, 0, True), _truth(prover, node, 1, False)
        never = _never_or_always(prover, pair, holds, fails)
        words = prover.rules.words_at(node.place)
        line = node.place.line
        if never is None:
            yield Statement(
                "comparison", key, f"“{words}” holds of some {many} and not of others", Outcome.FOUND, line=line
            )
            continue
        told.update(id(inner) for inner in walk(node, into_terms=False))
        said = f"in {key}: “{words}” {never[0]} hold{'s' if never[0] != 'can never' else ''}"
        yield Statement("comparison", key, said, never[1], never[1] is Outcome.PROVED, line=line)


def _truth(prover: Prover, node: Node, end: int, wanted: bool) -> Shows:
    def shows(record: Any, trace: Trace) -> bool:
        return bool(worked_out(node, prover.rules, prover.settings, record, trace)[end]) is wanted

    return shows


def together(prover: Prover) -> Iterator[Statement]:
    """Faults of which one never bites without the other."""
    faults = [(i, limit) for i, limit in enumerate(prover.rules.limits) if limit.head == "fault"]
    biting = [(i, one) for i, one in faults if any(seen.trace.limits[i][4] for seen in prover.pool)]
    for (i, one), (k, other) in combinations(biting, 2):
        apart = _apart(i, k)
        if any(apart(seen.readings, seen.trace) for seen in prover.pool):
            continue
        a, b = (prover.standing.bites["fault", limit.name] for limit in (one, other))
        logic = prover.universe.logic
        goal = logic.some([logic.every([a.first, logic.no(b.second)]), logic.every([b.first, logic.no(a.second)])])
        answer = prover.ask(goal, apart)
        if answer.seen is None:
            about = f"fault {one.name}, fault {other.name}"
            words = f"the faults {one.name} and {other.name} always bite together"
            outcome = Outcome.PROVED if answer.sure else Outcome.OPEN
            said = words if answer.sure else f"whether {words}"
            yield Statement("together", about, said, outcome, line=other.place.line)


def _apart(i: int, k: int) -> Shows:
    def shows(_: Any, trace: Trace) -> bool:
        one, other = trace.limits[i], trace.limits[k]
        return (one[4] and not other[5]) or (other[4] and not one[5])

    return shows


def under(prover: Prover) -> Iterator[Statement]:
    """Faults under which a lift can never be seen: where the fault bites, the grade is the same with and without it."""
    lifts = [(i, limit) for i, limit in enumerate(prover.rules.limits) if limit.head == "lift"]
    for k, fault in enumerate(prover.rules.limits):
        if fault.head != "fault":
            continue
        for i, lift in lifts:
            answer = _seen_under(prover, (k, fault), (i, lift))
            if answer.seen is not None:
                continue
            about = f"fault {fault.name}, lift {lift.name}"
            does, one = "lowers" if fault.lowers else "caps", prover.rules.subject.one
            words = f"no {one} shows the lift {lift.name} while the fault {fault.name} {does} its grade"
            outcome = Outcome.PROVED if answer.sure else Outcome.OPEN
            said = words if answer.sure else f"whether {words}"
            yield Statement("under", about, said, outcome, line=fault.place.line)


def _seen_under(prover: Prover, fault: tuple[int, Limit], lift: tuple[int, Limit]) -> Answer:
    k, one = fault
    if max(one.grade, lift[1].grade) >= len(prover.rules.grades) - 1:
        # A fish that is worse than the worst grade, which a lift could raise, is not there.
        return Answer(None, True)
    changes = _changes(prover, [lift[1]])

    def shows(record: Any, trace: Trace) -> bool:
        return trace.limits[k][4] and changes(record, trace)

    logic = prover.universe.logic
    bites, holds = prover.standing.bites["fault", one.name].first, prover.standing.bites["lift", lift[1].name].second
    if prover.asked(logic.truth(logic.every([bites, holds])))[1] == z3.unsat:
        return Answer(None, True)  # the one shuts the other out, whatever the score
    others = [other for other in prover.rules.limits if other is not lift[1]]
    changed = _differs(prover, prover.standing.after(others))
    lifted_fish = [seen.record for seen in prover.pool if changes(seen.readings, seen.trace)][:_LIFTED]
    likely = (fish for record in lifted_fish for fish in islice(prover.moved(record, one), _MOVED))
    return prover.ask(logic.every([bites, changed]), shows, likely)


def _differs(prover: Prover, possible: Sequence[Any]) -> Any:
    """Where the grades that are possible are others than those of the whole standard."""
    logic = prover.universe.logic
    pairs = zip(prover.standing.possible, possible, strict=True)
    return logic.some([logic.chosen(one, logic.no(other), other) for one, other in pairs])


def _changes(prover: Prover, left_out: list[Limit]) -> Shows:
    def shows(_: Any, trace: Trace) -> bool:
        bites = [
            (limit.turn, limit.by, Ends(*states[4:]))
            for limit, states in zip(prover.rules.limits, trace.limits, strict=True)
            if limit not in left_out
        ]
        return bool(after_all(PLAIN, trace.by_points, bites, len(prover.rules.grades)) != trace.possible)

    return shows
