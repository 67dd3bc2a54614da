"""Some expressions of a standard as one generated function: what the batch asks of each fish.

Before the fish are graded the function works out the score and the faults that it needs; after that they are given with
the record (`outcome_readings`), so that nothing that a round looks at can change them.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Mapping, Sequence
from typing import Any, assert_never

from koirules.engines.scalar.evaluator import Trace, ends_shown, function, labels
from koirules.engines.scalar.source import tupled
from koirules.meaning.algebra import Ends
from koirules.meaning.grades import worst_first
from koirules.meaning.operators import MILLIONTHS
from koirules.program.evaluation import Evaluation
from koirules.program.graph import Kind, Tracer, Value
from koirules.program.records import AnyRecord
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Node
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, Type
from koirules.values import frozen

Readings = Mapping[str, Any]


@frozen
class NodeValues:
    """A compiled list of expressions. `run` takes the readings of a record and gives the value of each, in order.

    A value is a pair of ends for numbers and truths, four ends of places, bits for steps, a text or None for labels.
    """

    run: Callable[[Readings], tuple[Any, ...]]


def compile_nodes(rules: Rules, settings: Mapping[str, Setting], nodes: Sequence[Node], *, graded: bool) -> NodeValues:
    """Generate the function that works expressions out. graded: whether its records carry their outcome."""
    tracer = Tracer()
    evaluation = Evaluation(settings, tracer, AnyRecord(tracer), rules=rules)
    if graded:
        _give_outcome(evaluation, tracer)
    evaluation.evaluate_needed(nodes, graded=graded)
    ends = [_told(evaluation.node(node), node.type) for node in nodes]
    outputs = [end for each in ends for end in each]

    def result(spell: Callable[[Any], str]) -> str:
        return tupled(spell(each[0]) if len(each) == 1 else tupled(map(spell, each)) for each in ends)

    return NodeValues(function(rules.file, outputs, result, labels=labels(evaluation)).run)


def _told(ends: Ends[Value], kind: Type) -> list[Value]:
    """The ends of a value as a reading has them."""
    each = ends if isinstance(kind, PlaceWords) else ends_shown(ends, kind)
    return [end for end in each if end is not None]


def _give_outcome(evaluation: Evaluation[Value], tracer: Tracer) -> None:
    """Take the score, sections, faults and grade from the record (`outcome_readings`)."""
    rules, record = evaluation.rules, AnyRecord(tracer)
    evaluation.hundredths[""] = record.read("score", Kind.WHOLE, (0, 0))
    for section in rules.sections:
        evaluation.hundredths[section.name] = record.read(f"section {section.name}", Kind.WHOLE, (0, 0))
    for limit in rules.limits:
        if limit.head == "fault":
            evaluation.faults[limit.name] = record.read(f"fault {limit.name}", Kind.TRUTH, (False, True))
    evaluation.grade = record.read("grade", Kind.SET, (1 << len(rules.grades)) - 1)


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
            surely, possibly, *_ = value
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
