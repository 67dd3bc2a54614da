"""What is missing for a condition to hold: its parts that do not, with how far each number is from it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from koirules.problems import Place
from koirules.standard import operations as ops
from koirules.standard.criteria import unit_shown
from koirules.standard.tree import Apply, Node, ScoreRead, walk
from koirules.standard.types import Numeric
from koirules.standard.wording import number_words

NOT_SETTLED = " (not settled)"

_MORE = {ops.NUMBER_AT_LEAST.name: "short by", ops.NUMBER_ABOVE.name: "not above it by"}


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
    """How much is missing in a comparison of two numbers."""
    if not isinstance(node, Apply) or node.operation.name not in _MORE:
        return None
    left, right = node.operands
    kind = left.type
    if not isinstance(kind, Numeric):
        return None
    reached, needed = value_of(left)[1], value_of(right)[0]
    inner = left.operands[0] if isinstance(left, Apply) else left
    low, high = value_of(inner)
    unit = unit_shown(inner)
    has = number_words(high, kind, unit) if low == high else f"at most {number_words(high, kind, unit)}"
    missing = number_words((needed - reached) / 1_000_000, kind, unit)
    return f"it has {has}, {_MORE[node.operation.name]} {missing}"
