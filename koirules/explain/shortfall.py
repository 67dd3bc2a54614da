"""What is missing for a condition to hold: its parts that do not, with how far each number is from it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from koirules.meaning import operators as ops
from koirules.problems import Place
from koirules.standard.reading_nodes import unit_shown, unrounded
from koirules.standard.tree import Apply, Constant, Node, ScoreRead, SettingRead, walk
from koirules.standard.types import Numeric
from koirules.standard.wording import number_words

NOT_SETTLED = " (not settled)"

_ORDERED = {ops.NUMBER_AT_LEAST.name, ops.NUMBER_ABOVE.name}


def shortfalls(condition: Node, told: Callable[[Place], str], value_of: Callable[[Node], Any]) -> Iterator[str]:
    """Each part of a condition joined by `and` that does not surely hold, in words.

    told: the words of the rule file at a place. value_of: what a node comes to for the fish, both ends.
    """
    for part in _joined(condition):
        surely, possibly = value_of(part)
        if surely:
            continue
        gap = None if possibly else _gap(part, value_of)
        words = told(part.place)
        yield f"{words}: {gap}" if gap else f"{words}{NOT_SETTLED}" if possibly else words


def fails_on_score(condition: Node, value_of: Callable[[Node], Any]) -> bool:
    """Whether a part of a condition that reads the score itself is among those that do not surely hold."""
    return any(
        isinstance(node, ScoreRead) for part in _joined(condition) if not value_of(part)[0] for node in walk(part)
    )


def _joined(node: Node) -> Iterator[Node]:
    if isinstance(node, Apply) and node.operation is ops.ALL_OF:
        for operand in node.operands:
            yield from _joined(operand)
    else:
        yield node


def _gap(node: Node, value_of: Callable[[Node], Any]) -> str | None:
    """How much is missing, or too much, in a comparison of a number with a known one."""
    if not isinstance(node, Apply) or node.operation.name not in _ORDERED:
        return None
    left, right = (unrounded(operand) for operand in node.operands)
    # `at most` and `below` are `at least` and `above` with their sides turned round.
    turned = isinstance(left, Constant | SettingRead)
    if turned == isinstance(right, Constant | SettingRead):
        return None
    read = right if turned else left
    kind = read.type
    if not isinstance(kind, Numeric):
        return None
    low, high = value_of(read)
    ends = [value_of(operand) for operand in node.operands]
    apart = ends[1][0] - ends[0][1]
    unit = unit_shown(read)
    nearest = low if turned else high
    bound = "" if low == high else "at least " if turned else "at most "
    has = f"it has {bound}{number_words(nearest, kind, unit)}"
    if apart == 0:
        return f"{has}, exactly at the line"
    return f"{has}, {'over' if turned else 'short'} by {number_words(apart / 1_000_000, kind, unit)}"
