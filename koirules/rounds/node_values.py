"""Some expressions of a standard as one generated function: what the batch asks of each fish.

Before the fish are graded the function works out the score and the faults that it needs; after that they are given with
the record (`outcome_readings`), so that nothing that a round looks at can change them.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Mapping, Sequence
from typing import Any, assert_never

from attrs import frozen

from koirules.engines.scalar.emitter import Emitter, RecordedAs
from koirules.engines.scalar.evaluator import RuleWriter, Trace, worst_first
from koirules.engines.scalar.late_parts import late_parts, needed_for, order_key
from koirules.standard.operations import MILLIONTHS
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Node
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, Type

Readings = Mapping[str, Any]


@frozen
class NodeValues:
    """A compiled list of expressions. `run` takes the readings of a record and gives the value of each, in order.

    A value is a pair of ends for numbers, truths and places, bits for steps, a text or None for labels.
    """

    run: Callable[[Readings], tuple[Any, ...]]


def compile_nodes(rules: Rules, settings: Mapping[str, Setting], nodes: Sequence[Node], *, graded: bool) -> NodeValues:
    """Generate the function that works expressions out. graded: whether its records carry their outcome."""
    writer = RuleWriter(rules, Emitter(settings, RecordedAs.STANDS))
    emit = writer.emit
    needed = needed_for(rules, nodes)
    if graded:
        kind = Numeric(None)
        emit.points("", emit.given("score", kind, (0, 0)))
        for section in rules.sections:
            emit.points(section.name, emit.given(f"section {section.name}", kind, (0, 0)))
        for limit in rules.limits:
            if limit.head == "fault":
                emit.fault(limit.name, emit.given(f"fault {limit.name}", Truth(), (False, True)))
        grades = tuple(grade.name for grade in reversed(rules.grades))
        emit.grade(emit.given("grade", Steps(grades, ordered=True), (1 << len(grades)) - 1))
        writer.work_out(
            part for part in rules.order if order_key(part) in needed and order_key(part).startswith("term ")
        )
    else:
        late = late_parts(rules)
        order = [part for part in rules.order if order_key(part) in needed]
        writer.work_out(part for part in order if order_key(part) not in late)
        if "score" in needed:
            writer.score()
        writer.work_out(part for part in order if order_key(part) in late)
    ends = [emit.node(node) for node in nodes]
    told = "".join(f"({end.first}, {end.second}), " if end.second else f"{end.first}, " for end in ends)
    run = writer.function(f"({told})")
    return NodeValues(run)


def outcome_readings(rules: Rules, trace: Trace) -> dict[str, Any]:
    """What came of a fish, as readings: whole hundredths, whether each fault bites, the grade as a scale."""
    found: dict[str, Any] = {"score": trace.score, "grade": worst_first(trace.possible, len(rules.grades))}
    found.update((f"section {one.name}", ends) for one, ends in zip(rules.sections, trace.sections, strict=True))
    for limit, states in zip(rules.limits, trace.limits, strict=True):
        if limit.head == "fault":
            found[f"fault {limit.name}"] = states[4:]
    return found


def one_value(kind: Type, value: Any) -> Hashable:
    """What groups equal values together: a value that is one and no other, None where it could be several.

    Numbers are told apart by the millionth, as in a comparison; a step is its place in the scale.
    """
    match kind:
        case Numeric():
            low, high = map(millionths_of, value)
            return low if low == high else None
        case Truth() | PlaceWords():
            surely, possibly = value
            return int(surely) if surely == possibly else None
        case Steps():
            return value.bit_length() - 1 if value.bit_count() == 1 else None
        case TextLabel() | PatternMap() | ColourList():
            return value  # type: ignore[no-any-return]
        case _:
            assert_never(kind)


def value_ends(kind: Type, value: Any) -> tuple[int, int]:
    """Between which ends a number, a truth or a step of a scale lies, numbered as by `one_value`."""
    match kind:
        case Numeric():
            low, high = value
            return millionths_of(low), millionths_of(high)
        case Steps():
            return (value & -value).bit_length() - 1, value.bit_length() - 1
        case _:
            surely, possibly = value
            return int(surely), int(possibly)


def millionths_of(number: float) -> int:
    """A number in whole millionths, as a comparison reads it."""
    return int(MILLIONTHS.range_of((number, number))[0])
