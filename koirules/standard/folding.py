"""An expression worked through from its leaves up."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from koirules.standard.tree import Apply, Node, TermRead

_T = TypeVar("_T")


def folded(root: Node, leaf: Callable[[Node], _T | None], joined: Callable[[Apply | TermRead, list[_T]], _T]) -> _T:
    """What an expression comes to from its leaves up, through terms too; without recursion, since sums can be long.

    leaf: what a node comes to by itself, None for those whose operands come first.
    """
    done: dict[int, _T] = {}
    waiting: list[tuple[Node, bool]] = [(root, False)]
    while waiting:
        node, ready = waiting.pop()
        own = leaf(node)
        if own is not None:
            done[id(node)] = own
            continue
        inner = node.operands if isinstance(node, Apply) else (node.node,) if isinstance(node, TermRead) else ()
        if not ready:
            waiting.append((node, True))
            waiting.extend((operand, False) for operand in inner if id(operand) not in done)
        elif isinstance(node, Apply | TermRead):
            done[id(node)] = joined(node, [done[id(operand)] for operand in inner])
        else:
            raise AssertionError("a leaf that comes to nothing by itself")
    return done[id(root)]
