"""The mends that carry an edit: each alone, and all that can be made together."""

from __future__ import annotations

from collections.abc import Iterable

from attrs import frozen

from koirules.problems import Edit, Place, Problem


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
