"""One expression of a standard, worked out for one fish that has been graded: for looking into a result.

Reads the same operations table as the generated function, node by node.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, assert_never

from koirules.engines.scalar.evaluator import Trace, worst_first
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import (
    Apply,
    Constant,
    FaultRead,
    GradeRead,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    SettingRead,
    Supplied,
    TermRead,
    TraitRead,
)
from koirules.standard.types import TextLabel
from koirules.vocabulary.readings import Reading, Span, anything


def worked_out(
    root: Node, rules: Rules, settings: Mapping[str, Setting], record: Mapping[str, Reading], trace: Trace
) -> Any:
    """The value of an expression for a fish: both ends for numbers, truths and places, bits for steps, text for labels."""
    done: dict[int, Any] = {}
    waiting: list[tuple[Node, bool]] = [(root, False)]
    while waiting:
        node, ready = waiting.pop()
        if id(node) in done:
            continue
        inner = node.operands if isinstance(node, Apply) else (node.node,) if isinstance(node, TermRead) else ()
        if inner and not ready:
            waiting.append((node, True))
            waiting.extend((operand, False) for operand in inner)
            continue
        match node:
            case Apply(operation=operation, operands=operands):
                done[id(node)] = operation.range_of(*(done[id(operand)] for operand in operands))
            case TermRead(node=meaning):
                done[id(node)] = done[id(meaning)]
            case Constant(range=value):
                done[id(node)] = value
            case SettingRead(name=name):
                value = float(settings[name].value)
                done[id(node)] = Span(value, value)
            case TraitRead(trait=trait):
                done[id(node)] = record.get(trait.name, anything(trait.kind))
            case Supplied(key=key, range=reach):
                done[id(node)] = record.get(key, None if isinstance(node.type, TextLabel) else reach)
            case Recorded(of=of):
                done[id(node)] = (of.key in record, of.key in record)
            case ScoreRead():
                done[id(node)] = Span(trace.score[0] / 100.0, trace.score[1] / 100.0)
            case SectionRead(name=name):
                low, high = trace.sections[[section.name for section in rules.sections].index(name)]
                done[id(node)] = Span(low / 100.0, high / 100.0)
            case GradeRead():
                done[id(node)] = worst_first(trace.possible, len(rules.grades))
            case FaultRead(name=name):
                place = [(limit.head, limit.name) for limit in rules.limits].index(("fault", name))
                done[id(node)] = trace.limits[place][4:]
            case _:
                assert_never(node)
    return done[id(root)]
