"""Puts the new grades of a file among those of its base."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import evolve

from koirules.language import statements as st
from koirules.problems import Problem, naming
from koirules.problems import sharing as say
from koirules.vocabulary.nearness import near


def placed_grades(held: Sequence[st.Grade], new: Sequence[st.Grade], problems: list[Problem]) -> list[st.Grade]:
    """All grades, best first: those of the base that still hold, each new one right after the grade that it names.

    Of several that name the same grade, the one that is written first stands first. Where no grade of the base is left,
    new grades need no `after`.
    """
    grades = list(held)
    if not held:
        grades = [grade for grade in new if grade.after is None]
    waiting = [grade for grade in reversed(new) if grade.after is not None or held]
    names = [grade.name.text for grade in grades]
    there = set(names)
    while True:
        grade = next((grade for grade in waiting if grade.after is not None and grade.after.text in there), None)
        if grade is None or grade.after is None:
            break
        waiting.remove(grade)
        place = names.index(grade.after.text) + 1
        grades.insert(place, evolve(grade, after=None))
        names.insert(place, grade.name.text)
        there.add(grade.name.text)
    for grade in reversed(waiting):
        _tell(grade, grades, [each.name.text for each in held], problems)
        grades.insert(max(0, len(grades) - 1), evolve(grade, after=None))
    return grades


def _tell(grade: st.Grade, grades: Sequence[st.Grade], held: Sequence[str], problems: list[Problem]) -> None:
    after = grade.after
    if after is None:
        problems.append(say.after_needed(grade.name.place, grade.name.text, held))
    else:
        known = [each.name.text for each in grades]
        problems.append(naming.unknown_part(after.place, "grade", after.text, near(after.text, known), known))
