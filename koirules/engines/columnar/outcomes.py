"""The grades still possible, over columns: for each grade a column that says where it is possible.

What lifts and faults do to a set of grades stands in meaning/grades.py. Limits with the same
outcome come to one: where any of them surely bites the outcome is sure, where any may bite it is possible.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from koirules.engines.columnar.expressions import Expressions
from koirules.engines.columnar.meaning import COLUMNS, some
from koirules.engines.columnar.stages import Stages
from koirules.engines.columnar.values import Pair
from koirules.meaning import grades as of_grades
from koirules.meaning.algebra import Ends
from koirules.meaning.planes import PlaneSets
from koirules.standard.parts import Grade, Limit


def by_points(columns: Expressions, grades: Sequence[Grade]) -> list[Any]:
    """Where each grade is possible by its condition: no sure no, and no better one a sure yes."""
    pairs = [
        columns.kept(Pair(True, True) if grade.condition is None else columns.condition(grade.condition))
        for grade in grades
    ]
    sets: of_grades.Sets[Any] = PlaneSets(COLUMNS, len(pairs))
    possible = of_grades.possible(sets, [Ends(pair.first, pair.second) for pair in pairs])
    return [columns.stages.keep(plane) for plane in possible]


def after_limits(
    stages: Stages, planes: Sequence[Any], limits: Sequence[Limit], bites: Mapping[tuple[str, str], Pair]
) -> list[Any]:
    """Where each grade is possible after the lifts, and then the faults."""
    sets: of_grades.Sets[Any] = PlaneSets(COLUMNS, len(planes), stages.keep)
    left: Any = tuple(planes)
    for head in ("lift", "fault"):
        by_grade: dict[int, list[Pair]] = {}
        for limit in limits:
            if limit.head == head:
                by_grade.setdefault(limit.grade, []).append(bites[head, limit.name])
        for grade, pairs in by_grade.items():
            surely = stages.keep(some([pair.first for pair in pairs]))
            possibly = surely
            if not all(pair.sure for pair in pairs):
                possibly = stages.keep(some([pair.second for pair in pairs]))
            moved = of_grades.moved(sets, left, head, grade, len(planes))
            left = of_grades.limited(sets, left, moved, Ends(surely, possibly))
    return list(left)
