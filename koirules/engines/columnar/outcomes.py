"""The grades still possible, over columns: for each grade a column that says where it is possible.

The same steps as for one record (`raised` and `capped` in the evaluator), for every grade at once. Limits with the same
outcome come to one: where any of them surely bites the outcome is sure, where any may bite it is possible.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from koirules.engines.columnar.expressions import Expressions
from koirules.engines.columnar.meaning import every, no, some
from koirules.engines.columnar.stages import Stages
from koirules.engines.columnar.values import Pair
from koirules.standard.parts import Grade, Limit


def by_points(columns: Expressions, grades: Sequence[Grade]) -> list[Any]:
    """Where each grade is possible by its condition: no sure no, and no better one a sure yes."""
    planes: list[Any] = []
    settled: Any = False
    for grade in grades:
        pair = Pair(True, True) if grade.condition is None else columns.condition(grade.condition)
        pair = columns.kept(pair)
        planes.append(columns.stages.keep(every([pair.second, no(settled)])))
        settled = columns.stages.keep(some([settled, pair.first]))
    return planes


def after_limits(
    stages: Stages, planes: Sequence[Any], limits: Sequence[Limit], bites: Mapping[tuple[str, str], Pair]
) -> list[Any]:
    """Where each grade is possible after the lifts, and then the faults."""
    left = list(planes)
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
            moved = range(grade + 1, len(left)) if head == "lift" else range(grade)
            gone = some([left[i] for i in moved])
            left[grade] = stages.keep(some([left[grade], every([gone, possibly])]))
            for i in moved:
                left[i] = stages.keep(every([left[i], no(surely)]))
    return left
