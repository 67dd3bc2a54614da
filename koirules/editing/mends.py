"""The mends that carry an edit: each alone, and all that can be made together."""

from __future__ import annotations

from collections.abc import Iterable

from attrs import evolve

from koirules.editing.desk import Look
from koirules.editing.lines import Lines
from koirules.problems import Edit, Place, Problem
from koirules.values import frozen


@frozen
class Mend:
    """A change of the text that mends a problem. site: the place of the problem. words: what it does, as the problem says."""

    problem: Problem
    site: Place
    edit: Edit

    @property
    def words(self) -> str:
        """What it does, in one line."""
        return self.problem.mend


def mends(problems: Iterable[Problem], file: str) -> list[Mend]:
    """The mends of a file's problems that carry an edit."""
    return [
        Mend(problem, problem.site, problem.edit)
        for problem in problems
        if problem.edit is not None and isinstance(problem.site, Place) and problem.edit.place.file == file
    ]


def problems_now(look: Look, lines: Lines) -> list[Problem]:
    """The problems of a look that still stand where nothing has changed since, at their places in the text as it is now."""
    if look.lines is lines:
        return list(look.checked.problems)
    old, new = look.lines.counted, lines.counted
    most = min(len(old), len(new))
    first = next((i for i in range(most) if old[i] != new[i]), most)
    last = next((i for i in range(most - first) if old[-1 - i] != new[-1 - i]), most - first)
    found: list[Problem] = []
    for problem in look.checked.problems:
        edit = problem.edit
        places = [place for place in (problem.site, edit and edit.place) if place is not None]
        for by, begin, end in ((0, 1, first), (len(new) - len(old), len(old) - last + 1, len(old))):
            if all(isinstance(each, Place) and begin <= each.line <= each.end_line <= end for each in places):
                found.append(_moved(problem, by))
                break
    return found


def _moved(problem: Problem, by: int) -> Problem:
    def moved(place: Place) -> Place:
        return Place(place.file, place.line + by, place.column, place.end_line + by, place.end_column)

    if by == 0 or not isinstance(problem.site, Place):
        return problem
    edit = None if problem.edit is None else Edit(moved(problem.edit.place), problem.edit.text)
    return evolve(problem, site=moved(problem.site), edit=edit, beside=())


def together(found: Iterable[Mend]) -> list[Edit]:
    """The edits that can be made in one go: of those that touch one stretch of the text, the first."""
    made: list[Edit] = []
    end = (0, 0)
    for mend in sorted(found, key=lambda mend: _begin(mend.edit)):
        if _begin(mend.edit) >= end:
            made.append(mend.edit)
            end = (mend.edit.place.end_line, mend.edit.place.end_column)
    return made


def _begin(edit: Edit) -> tuple[int, int]:
    return edit.place.line, edit.place.column
