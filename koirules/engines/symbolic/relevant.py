"""Which of the facts a question needs: those about the names in it, and about the names in these, and so on.

A fact says what the youngest of its names is, from older ones. What is left out only allows more fish: a question that has
no answer without it has none with it, and a fish that is found is graded before it is told.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import z3
from attrs import field

from koirules.standard.tree import post_order
from koirules.values import define


@define(eq=False)
class Relevant:
    """The facts of a universe by the name that each is about; new facts are taken in as they are made.

    made: the place of every name that was made for a fact, in the order of making; those of a fish are older than all.
    """

    facts: list[Any]
    made: Mapping[str, int]
    _seen: dict[str, int] = field(factory=dict)
    _about: dict[str, list[int]] = field(factory=dict)
    _names: dict[int, frozenset[str]] = field(factory=dict)
    _within: list[frozenset[str]] = field(factory=list)
    _kept: list[Any] = field(factory=list)

    def to(self, *wanted: Any) -> list[Any]:
        """The facts that a question needs, in the order in which they were made."""
        self._take_in()
        waiting = [name for term in wanted for name in self.names(term)]
        known = set(waiting)
        chosen: set[int] = set()
        while waiting:
            for place in self._about.get(waiting.pop(), ()):
                if place not in chosen:
                    chosen.add(place)
                    new = self._within[place] - known
                    known |= new
                    waiting.extend(sorted(new))
        return [self.facts[place] for place in sorted(chosen)]

    def among(self, facts: Sequence[Any], others: Sequence[Any]) -> list[Any]:
        """Those of some facts whose every name stands in other ones."""
        names = frozenset().union(*(self.names(other) for other in others))
        return [fact for fact in facts if self.names(fact) <= names]

    def _take_in(self) -> None:
        for place in range(len(self._within), len(self.facts)):
            names = self.names(self.facts[place])
            self._within.append(names)
            for name in sorted(names):
                self._seen.setdefault(name, len(self._seen))
            youngest = max(names, key=lambda name: (self.made.get(name, -1), self._seen[name]), default="")
            self._about.setdefault(youngest, []).append(place)

    def names(self, term: Any) -> frozenset[str]:
        """The names in a term; without recursion, since sums can be long."""
        if isinstance(term, bool):
            return frozenset()
        for node in post_order(
            term, lambda one: one.children(), lambda one: one.get_id() in self._names, z3.AstRef.get_id
        ):
            self._kept.append(node)  # a term that is gone gives its number to another one
            children = node.children()
            if children:
                found = frozenset().union(*(self._names[child.get_id()] for child in children))
            else:
                named = z3.is_const(node) and node.decl().kind() == z3.Z3_OP_UNINTERPRETED
                found = frozenset([node.decl().name()]) if named else frozenset()
            self._names[node.get_id()] = found
        return self._names[term.get_id()]
