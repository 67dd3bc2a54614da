"""Checks what decides: faults, lifts and grades."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.language import statements as st
from koirules.language.syntax import Word
from koirules.problems import Place, Problem, naming, parts
from koirules.standard.check.declarations import maybe_titled, titled
from koirules.standard.check.expressions import Typer
from koirules.standard.numbers import written
from koirules.standard.parts import Grade, Limit
from koirules.vocabulary.nearness import near


def check_limit(statement: st.Limit, typer: Typer, grades: Sequence[str]) -> Limit | None:
    """A fault or a lift, None where it has problems."""
    condition = typer.condition(statement.condition)
    exception = None if statement.exception is None else typer.condition(statement.exception)
    grade, lowers = _consequence(statement, grades, typer.problems)
    if condition is None or grade is None or (statement.exception is not None and exception is None):
        return None
    name = statement.name.text
    return Limit(
        statement.head,
        name,
        titled(statement.title, name),
        condition,
        exception,
        grade,
        maybe_titled(statement.say),
        statement.place,
        lowers,
    )


def _consequence(statement: st.Limit, grades: Sequence[str], problems: list[Problem]) -> tuple[int | None, int]:
    """The place of the grade that a fault or lift names, None where there is no such grade; by how many a fault lowers."""
    if statement.grade is not None:
        return grade_place(statement.grade, grades, problems), 0
    by = statement.lowers
    if by is None:
        raise AssertionError("a fault without a consequence")
    # Of one grade nobody knows how many there are meant to be.
    most = max(1, len(grades) - 1)
    if by.value != by.value.to_integral_value() or not 1 <= by.value <= most:
        problems.append(parts.lowers_by_so_many(by.place, written(by), most))
        return None, 0
    return 0, int(by.value)


def grade_place(word: Word, grades: Sequence[str], problems: list[Problem]) -> int | None:
    """The place of a grade in the list, best first; None and a problem where there is no such grade."""
    if word.text in grades:
        return grades.index(word.text)
    problems.append(naming.unknown_part(word.place, "grade", word.text, near(word.text, grades), grades))
    return None


def check_grades(statements: Sequence[st.Grade], typer: Typer, header: Place, *, unread: bool) -> tuple[Grade, ...]:
    """The grades, best first, as far as they have no problems. unread: some could not be read, so that none is missing."""
    problems = typer.problems
    if not unread and not any(statement.condition is None for statement in statements):
        problems.append(parts.no_otherwise(statements[-1].place if statements else header))
    made: list[Grade] = []
    for i, statement in enumerate(statements):
        if statement.after is not None:
            problems.append(parts.after_without_base(statement.after.place))
        condition = None
        if statement.condition is None:
            if i != len(statements) - 1:
                problems.append(parts.otherwise_not_last(statement.place))
        else:
            condition = typer.condition(statement.condition)
            if condition is None:
                continue
            if not condition.range[1]:
                problems.append(parts.unreachable_grade(statement.place, statement.name.text))
        name = statement.name.text
        label = titled(statement.title, name)
        made.append(Grade(name, label, condition, maybe_titled(statement.say), statement.place))
    return tuple(made)
