"""Checks what a person decided: the names, the reasons, the rescues of each round, ties that are settled."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from koirules.problems import Problem
from koirules.problems import decisions as say
from koirules.results.decisions import Decision
from koirules.standard.parts import Rules, Setting
from koirules.standard.rounds import Round
from koirules.vocabulary.nearness import near

if TYPE_CHECKING:
    from koirules.rounds.rounds_of_rows import RoundRun


def check_decisions(
    rules: Rules, decisions: Sequence[Decision], fish: Collection[str], file: str = ""
) -> list[Problem]:
    """Every problem of decisions about fish of a batch that can be told before its rounds are run."""
    grades = [grade.name for grade in rules.grades]
    rounds = {one.name: one for one in rules.rounds}
    known = set(fish)
    problems: list[Problem] = []
    seen: set[tuple[str, str]] = set()
    for one in decisions:
        problems.extend(_of_one(one, grades, rounds, known, file))
        key = (one.fish, f"grade {bool(one.grade)} {one.round}")
        if key in seen:
            problems.append(say.decided_twice(file, one.row, one.fish))
        seen.add(key)
    return problems


def check_rescues(
    settings: Mapping[str, Setting], runs: Sequence[RoundRun], kept: Mapping[str, Mapping[int, Decision]]
) -> list[Problem]:
    """Every problem of what a person decided in the rounds that were run: more rescues than allowed, ties half settled.

    kept: for each round its decisions, by the place of their fish in the batch.
    """
    from koirules.rounds.rounds_of_rows import number_of

    problems: list[Problem] = []
    for run in runs:
        decided = kept.get(run.round.name, {})
        for settled in run.picked.settled if run.picked else ():
            if settled.short:
                first = decided[settled.chosen[0]]
                fish = [decided[number].fish for number in settled.chosen]
                problems.append(say.tie_half_settled(first.file, first.row, run.round.name, fish, settled.short))
        most = number_of(run.round.rescues, settings)
        rescued = [decided[number] for number in decided if number in run.rescued]
        if len(rescued) > most:
            over = rescued[most]
            fish = [one.fish for one in rescued]
            problems.append(say.too_many_rescues(over.file, over.row, run.round.name, fish, most, run.places))
    return problems


def _of_one(
    one: Decision, grades: Sequence[str], rounds: Mapping[str, Round], fish: Collection[str], file: str
) -> Iterator[Problem]:
    if one.fish not in fish:
        yield say.decision_of_nobody(file, one.row, one.fish, near(one.fish, sorted(fish)))
    if not one.reason.strip():
        yield say.decision_without(file, one.row, one.fish, "reason")
    if not one.by.strip():
        yield say.decision_without(file, one.row, one.fish, "by")
    if bool(one.grade) == bool(one.round):
        yield say.decision_of_what(file, one.row, one.fish)
    elif one.grade and one.grade not in grades:
        yield say.decision_unknown(file, one.row, "grade", one.grade, near(one.grade, grades), grades)
    elif one.round and one.round not in rounds:
        yield say.decision_unknown(file, one.row, "round", one.round, near(one.round, rounds), list(rounds))
