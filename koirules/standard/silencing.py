"""A standard without what silence means: for fish of which everything is known, and for fish that are still being looked at."""

from __future__ import annotations

from typing import Any

import attrs
from attrs import evolve

from koirules.standard.parts import Rules
from koirules.standard.tree import Apply, Node, Recorded, Supplied, TermRead, Written, operands_of, post_order

_HOLDERS = ("terms", "sections", "limits", "order", "grades", "alerts", "rounds")
"""The parts of a standard that hold expressions."""


def without_silence(rules: Rules) -> Rules:
    """The same standard where silence means nothing: `is recorded` asks of the trait itself again."""
    if not rules.silence:
        return rules
    plain = _Plain()
    return evolve(rules, silence={}, **{name: plain.within(getattr(rules, name)) for name in _HOLDERS})


class _Plain:
    """Puts traits back in the place of traits as they were written."""

    def __init__(self) -> None:
        self._nodes: dict[int, tuple[Node, Node]] = {}

    def within(self, value: Any) -> Any:
        """A part of a standard with its expressions changed."""
        match value:
            case Apply() | TermRead() | Supplied() | Recorded():
                return self.node(value)
            case tuple():
                return tuple(self.within(each) for each in value)
            case dict():
                return {key: self.within(each) for key, each in value.items()}
            case _ if attrs.has(type(value)):
                changed = {}
                for field in attrs.fields(type(value)):
                    before = getattr(value, field.name)
                    if field.init and (after := self.within(before)) is not before:
                        changed[field.name] = after
                return evolve(value, **changed) if changed else value
            case _:
                return value

    def node(self, root: Node) -> Node:
        """An expression, changed; without recursion into operands, since sums can be long."""
        for node in post_order(root, operands_of, lambda node: id(node) in self._nodes):
            # The node itself is kept too, so that no other one is given its number.
            self._nodes[id(node)] = (node, self._one(node))
        return self._nodes[id(root)][1]

    def _one(self, node: Node) -> Node:
        match node:
            case Apply(operands=operands):
                made = tuple(self._nodes[id(operand)][1] for operand in operands)
                same = all(one is other for one, other in zip(made, operands, strict=True))
                return node if same else evolve(node, operands=made)
            case TermRead(node=inner):
                return evolve(node, node=self.node(inner), as_written=False)
            case Recorded(of=Supplied(source=Written(of=of))):
                return evolve(node, of=of)
            case Supplied(source=Written(of=of)):
                return of
            case Recorded(of=Supplied(source=source) as of):
                return evolve(node, of=evolve(of, source=self.within(source)))
            case Supplied(source=source):
                return evolve(node, source=self.within(source))
            case _:
                return node
