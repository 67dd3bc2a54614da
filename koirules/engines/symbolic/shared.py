"""Two standards of one fish: what both say alike is worked out once, so that the solver need not find out that it is alike.

What they do not share but work out of the same goes in one order in both: of two sums the greater one is not rounded to less.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping
from typing import Any

import z3
from attrs import field

from koirules.engines.symbolic.fish import Fish
from koirules.engines.symbolic.points import Curved
from koirules.engines.symbolic.standing import Standing
from koirules.engines.symbolic.universe import Universe
from koirules.engines.symbolic.value_numbering import SameValues
from koirules.meaning.algebra import Ends
from koirules.meaning.curves import Curve
from koirules.standard.parts import Points, Rules, Section, Setting, part_key
from koirules.standard.tree import Node
from koirules.values import define, frozen


@frozen(eq=False)
class Shared:
    """What was worked out so far, by the numbers of expressions.

    points: by what a criterion reads and its shape; sections: by their worth and all that they add up.
    """

    same: SameValues
    nodes: dict[int, Ends[Any]] = field(factory=dict)
    points: dict[Hashable, tuple[Ends[Any], tuple[Curved, ...]]] = field(factory=dict)
    sections: dict[Hashable, tuple[Ends[Any], Ends[Any]]] = field(factory=dict)


@define(eq=False)
class SharedStanding(Standing):
    """What one of several standards makes of a fish; mark: which of them it is."""

    shared: Shared = field(kw_only=True)
    mark: str = field(kw_only=True)

    @classmethod
    def beside(
        cls,
        rules: Rules,
        settings: Mapping[str, Setting],
        universe: Universe,
        fish: Fish,
        shared: Shared,
        mark: str,
    ) -> SharedStanding:
        """Work a standard out beside others."""
        made = cls(
            settings, universe.meaning.terms, fish, rules=rules, universe=universe, fish=fish, shared=shared, mark=mark
        )
        made.evaluate_all()
        return made

    def value(self, node: Node) -> Ends[Any]:
        """The value of an expression; that of any that says the same."""
        number = self._number_of(node)
        if number not in self.shared.nodes:
            self.shared.nodes[number] = super().value(node)
        return self.shared.nodes[number]

    def _number_of(self, node: Node) -> int:
        return self.shared.same.number(node, self.settings, self.mark)

    def criterion(self, part: Points) -> Ends[Any]:
        """What a criterion gives; what any gives that says the same."""
        key, said = part_key(part), self._said(part)
        if said not in self.shared.points:
            self.shared.points[said] = (super().criterion(part), self.curved.get(key, ()))
        made, self.curved[key] = self.shared.points[said]
        return made

    def _said(self, part: Points) -> Hashable:
        shape: Hashable = part.shape if isinstance(part.shape, Curve) else part.shape.gives
        return (self._number_of(part.reads), shape)

    def section(self, section: Section) -> Ends[Any]:
        """What a section comes to; what any comes to that says the same."""
        said = self._section_said(section)
        if said not in self.shared.sections:
            self.shared.sections[said] = (super().section(section), self.totals[section.name])
        made, self.totals[section.name] = self.shared.sections[said]
        return made

    def _section_said(self, section: Section) -> Hashable:
        points = sorted((repr(self._said(part)), part.weight) for part in section.points if part.weight)
        extras = sorted((extra.sign, extra.amount, self._number_of(extra.condition)) for extra in section.extras)
        return (section.worth, section.divisor, tuple(points), tuple(extras))


def in_order(one: SharedStanding, other: SharedStanding) -> Iterator[Any]:
    """What rounding keeps in order between two standards: sections of one name along their sums, points along one line."""
    worth = {section.name: section.worth for section in other.rules.sections}
    for section in one.rules.sections:
        totals, others = one.totals[section.name], other.totals.get(section.name)
        if others is None or totals is others:
            continue
        held, other_held = one.sections[section.name], other.sections[section.name]
        for end in ("first", "second"):
            a, b = getattr(totals, end), getattr(others, end)
            low, high = getattr(held, end), getattr(other_held, end)
            if section.worth <= worth[section.name]:
                yield z3.Implies(a <= b, low <= high)
            if section.worth >= worth[section.name]:
                yield z3.Implies(b <= a, high <= low)
    for key, curved in one.curved.items():
        for mine in curved:
            for theirs in other.curved.get(key, ()):
                yield from _on_one_line(one.universe, mine, theirs)


def _on_one_line(universe: Universe, one: Curved, other: Curved) -> Iterator[Any]:
    """Two curves of one number give the same where their pieces lie on one line."""
    if one is other or one.read.inner is not other.read.inner:
        return
    truth = universe.logic.truth
    for mine in one.lines:
        for theirs in other.lines:
            run, rise = mine.right - mine.left, mine.high - mine.low
            other_run, other_rise = theirs.right - theirs.left, theirs.high - theirs.low
            if rise and rise * other_run == other_rise * run and other_run:
                on_line = mine.low * run + rise * (theirs.left - mine.left) == theirs.low * run
                if on_line:
                    yield z3.Implies(z3.And(truth(mine.when), truth(theirs.when)), one.points == other.points)
