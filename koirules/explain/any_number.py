"""Why a number that was recorded can still be any number: a division by what may be 0, a value beyond the limit."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

from koirules.meaning import operators as ops
from koirules.meaning.operators import Nature
from koirules.standard.tree import Apply, Node, walk


def can_be_any(roots: Iterable[Node]) -> bool:
    """Whether expressions hold an operation that can make a number any number at all."""
    return any(
        isinstance(node, Apply) and Nature.LOSES in node.operation.nature for root in roots for node in walk(root)
    )


def causes(roots: Iterable[Node], value_of: Callable[[Node], Any]) -> tuple[str, ...]:
    """What makes numbers in these expressions any number for a fish, in words. value_of: both ends of a node."""
    found: dict[str, None] = {}
    for root in roots:
        for node in walk(root):
            if not isinstance(node, Apply):
                continue
            if node.operation is ops.DIVIDE:
                low, high = value_of(node.operands[1])
                if low <= 0 <= high:
                    found["divides by what may be 0"] = None
            elif node.operation is ops.HELD_WITHIN:
                low, high = value_of(node.operands[0])
                if low < -ops.LIMIT or high > ops.LIMIT:
                    found["a value beyond 1,000,000"] = None
    return tuple(found)
