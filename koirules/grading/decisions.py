"""A person's word about a fish, above the rules."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence

from attrs import frozen

from koirules.problems import Problem
from koirules.problems import decisions as say
from koirules.standard.parts import Rules, Setting
from koirules.standard.rounds import Round
from koirules.vocabulary.nearness import near


@frozen
class Decision:
    """What a person decided: the grade of a fish, or that a round keeps it ("" where it is not that), by whom and why.

    row: where it stands in its file, 0 where it comes from none.
    """

    fish: str
    grade: str
    round: str
    by: str
    reason: str
    row: int = 0


def check_decisions(
    rules: Rules, settings: Mapping[str, Setting], decisions: Sequence[Decision], fish: Collection[str], file: str = ""
) -> list[Problem]:
    """Every problem of decisions about fish of a batch."""
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
    for name, each in rounds.items():
        most = each.rescues if isinstance(each.rescues, int) else int(settings[each.rescues].value)
        kept = [one for one in decisions if one.round == name]
        if len(kept) > most:
            problems.append(say.too_many_rescues(file, kept[most].row, name, len(kept), most))
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
