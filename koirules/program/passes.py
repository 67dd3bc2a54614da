"""Passes over a program, for every engine that wants them."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from koirules.program.graph import Op, Value


def live(outputs: Iterable[Value], stop: Callable[[Value], bool] = lambda _: False) -> list[Value]:
    """The values that outputs need, in program order: all others are dead.

    stop: values of which the operands are not needed.
    """
    found: dict[Value, None] = {}
    waiting = list(outputs)
    while waiting:
        value = waiting.pop()
        if value not in found:
            found[value] = None
            if not stop(value):
                waiting.extend(value.operands)
    return sorted(found, key=lambda value: value.number)


def carried(outputs: Iterable[Value], dear: Callable[[Value], bool]) -> tuple[Value, ...]:
    """What has to be carried over to a later program that evaluates some outputs: inputs, and what is dear to evaluate."""

    def is_taken(value: Value) -> bool:
        return value.op is Op.INPUT or (value.op not in {Op.CONSTANT, Op.TABLE} and dear(value))

    return tuple(value for value in live(outputs, stop=is_taken) if is_taken(value))
