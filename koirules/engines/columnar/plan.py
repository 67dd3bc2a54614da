"""A standard compiled for one shape of frame: the columns of its results as expressions of Polars."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from attrs import frozen

from koirules.engines.columnar.expressions import Expressions
from koirules.engines.columnar.held import Held
from koirules.engines.columnar.meaning import COLUMNS, total
from koirules.engines.columnar.outcomes import after_limits, by_points
from koirules.engines.columnar.points import points_by_section
from koirules.engines.columnar.stages import Stages
from koirules.engines.columnar.values import Pair
from koirules.meaning import grades as of_grades
from koirules.meaning.algebra import Ends
from koirules.program.evaluation_order import late_parts, order_key, reading_grade
from koirules.standard.parts import Limit, Rules, Setting, Term

STREAMED = 20_000
"""Frames with more rows than this go through in pieces: the columns in between then stay in the cache of the processor."""


@frozen
class Plan:
    """What is worked out.

    stages: what the others read. score, sections: both ends, whole hundredths as doubles. possible: for each grade where it
    is possible. columns: what further expressions can be asked of. limits: where each fault and lift surely and possibly
    bites. A plain Python value stands for a column that is the same in every row.
    """

    stages: Stages
    score: Pair
    sections: Mapping[str, Pair]
    possible: tuple[Any, ...]
    columns: Expressions
    limits: Mapping[tuple[str, str], Pair]


def planned(rules: Rules, settings: Mapping[str, Setting], held: Mapping[str, Held]) -> Plan:
    """Compile a standard for frames that hold their traits so."""
    columns = Expressions(settings, held)
    late = late_parts(rules) | reading_grade(rules)
    bites: dict[tuple[str, str], Pair] = {}
    _work_out(columns, bites, (part for part in rules.order if order_key(part) not in late))
    made = points_by_section(columns, rules.sections)
    sections = {name: columns.kept(pair) for name, pair in made.items()}
    for section in rules.sections:
        columns.points(section.name, sections[section.name], section.worth)
    low = total([pair.first for pair in sections.values()])
    sure = all(pair.sure for pair in sections.values())
    score = Pair(low, low if sure else total([pair.second for pair in sections.values()]))
    score = columns.kept(score)
    columns.points("", score, sum(section.worth for section in rules.sections))
    _work_out(columns, bites, (part for part in rules.order if order_key(part) in late_parts(rules)))
    planes = after_limits(columns.stages, by_points(columns, rules.grades), rules.limits, bites)
    # In the order of the file, and not in the one of working out.
    limits = {(limit.head, limit.name): bites[limit.head, limit.name] for limit in rules.limits}
    return Plan(columns.stages, score, sections, tuple(planes), columns, limits)


def _work_out(columns: Expressions, bites: dict[tuple[str, str], Pair], parts: Iterable[Term | Limit]) -> None:
    for part in parts:
        if isinstance(part, Term):
            columns.term(part)
            continue
        pair = columns.condition(part.condition)
        if part.exception is not None:
            other = columns.condition(part.exception)
            bites_at = of_grades.bites(COLUMNS, Ends(pair.first, pair.second), Ends(other.first, other.second))
            pair = Pair(bites_at.first, bites_at.last)
        bites[part.head, part.name] = pair = columns.kept(pair)
        if part.head == "fault":
            columns.fault(part, pair)
