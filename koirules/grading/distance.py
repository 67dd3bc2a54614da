"""How far a fish is from its next better grade."""

from __future__ import annotations

from collections.abc import Mapping
from functools import partial

from koirules.engines.scalar.walking import worked_out
from koirules.explain.shortfall import shortfalls
from koirules.grading.single import Grader
from koirules.standard.parts import Setting
from koirules.vocabulary.readings import Reading


def to_next_grade(
    grader: Grader, settings: Mapping[str, Setting], record: Mapping[str, Reading]
) -> tuple[str, tuple[str, ...]] | None:
    """The next grade above the best that is possible, and what stands in its way, in words; None for the best grade."""
    record = grader.evaluator.ahead.whole(record)
    trace = grader.evaluator.run_whole(record)
    best = (trace.possible & -trace.possible).bit_length() - 1
    if best == 0:
        return None
    rules, target, plain = grader.rules, best - 1, grader.reasoner.teller.plain
    ways: list[str] = []
    for limit, states in zip(rules.limits, trace.limits, strict=True):
        if limit.lowers and states[4]:
            told = plain.tongue(
                "the fault “{fault}” {lowers}", fault=plain.of(limit.title), lowers=plain.lowering(limit.lowers)
            )
            ways.append(told)
        elif limit.head == "fault" and states[4] and limit.grade > target:
            bound = plain.of(rules.grades[limit.grade].title)
            title = plain.of(limit.title)
            ways.append(plain.tongue("the fault “{fault}” allows no better than {grade}", fault=title, grade=bound))
    condition = rules.grades[target].condition
    if condition is not None and not trace.by_points & ((2 << target) - 1):
        value_of = partial(worked_out, rules=rules, settings=settings, record=record, trace=trace)
        ways.extend(one.told for one in shortfalls(condition, plain, value_of))
    return rules.grades[target].name, tuple(ways)
