"""What a formula gives for one fish, from the operations table, and how that becomes a reading of its trait."""

from __future__ import annotations

from collections.abc import Mapping
from math import floor, inf
from typing import Any

from koirules.standard.parts import Setting
from koirules.standard.tree import Apply, Constant, Node, Recorded, SettingRead, TraitRead
from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Kind, Number, YesNo
from koirules.vocabulary.readings import NO, NO_OR_YES, YES, Reading, Span, anything, show_number

MILLION = 1_000_000.0
"""The ends of what a formula gives are rounded to a millionth of the held unit (a bound of computing)."""


@frozen
class Unrecorded:
    """What came out says nothing; shown: a number that lies outside the range of its trait, "" where it is any at all."""

    shown: str = ""


def worked_out(node: Node, readings: Mapping[str, Reading], constants: Mapping[str, Setting]) -> Any:
    """Both ends of an expression, as the operations table gives them; what was not recorded is anything of its range."""
    match node:
        case Constant(range=value):
            return value
        case SettingRead(name=name):
            number = float(constants[name].value)
            return Span(number, number)
        case TraitRead(trait=trait):
            return readings.get(trait.name, anything(trait.kind))
        case Recorded():
            return (node.key in readings,) * 2
        case Apply(operation=operation, operands=operands):
            return operation.range_of(*(worked_out(operand, readings, constants) for operand in operands))
        case _:
            raise AssertionError(f"a formula cannot read {node}")


def as_reading(kind: Kind, value: Any, reach: Reading | None) -> Reading | Unrecorded:
    """The reading of a kind that both ends of a value make.

    Numbers are held to a millionth of the held unit, as everything is that is compared, and kept within the range of the
    trait. What leaves all of `reach` open, the readings that the kind can have, is not recorded.
    """
    match kind:
        case Number() | Count():
            low, high = value
            return _as_number(kind, low, high, reach)
        case YesNo() if isinstance(value, tuple):
            value = YES if value[0] else NO_OR_YES if value[1] else NO
    return Unrecorded() if value == reach else value


def _as_number(kind: Number | Count, low: float, high: float, reach: Reading | None) -> Reading | Unrecorded:
    if not isinstance(reach, Span):
        raise AssertionError("a number without a range")
    low, high = (end if end in {inf, -inf} else floor(MILLION * end + 0.5) / MILLION for end in (low, high))
    if low > reach.high or high < reach.low:
        return Unrecorded(show_number(low if low > reach.high else high, kind))
    made = Span(max(low, reach.low), min(high, reach.high))
    return Unrecorded() if made == reach else made
