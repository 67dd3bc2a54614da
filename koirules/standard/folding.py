"""An expression worked through from its leaves up."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from koirules.standard.tree import Apply, Node, TermRead, post_order

_T = TypeVar("_T")


def folded(root: Node, leaf: Callable[[Node], _T | None], joined: Callable[[Apply | TermRead, list[_T]], _T]) -> _T:
    """What an expression comes to from its leaves up, through terms too; without recursion, since sums can be long.

    leaf: what a node comes to by itself, None for those whose operands come first.
    """
    done: dict[int, _T] = {}

    def beneath(node: Node) -> tuple[Node, ...]:
        own = leaf(node)
        if own is None:
            return _inner(node)
        done[id(node)] = own
        return ()

    for node in post_order(root, beneath):
        if id(node) in done:
            continue
        if not isinstance(node, Apply | TermRead):
            raise AssertionError("a leaf that comes to nothing by itself")
        done[id(node)] = joined(node, [done[id(operand)] for operand in _inner(node)])
    return done[id(root)]


def _inner(node: Node) -> tuple[Node, ...]:
    return node.operands if isinstance(node, Apply) else (node.node,) if isinstance(node, TermRead) else ()
