"""A whole standard for a fish that is not known yet, evaluated in the order of the evaluator of one record."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from fractions import Fraction
from typing import Any

import z3
from attrs import field

from koirules.engines.symbolic.fish import Fish
from koirules.engines.symbolic.numbers import UNIT, Num
from koirules.engines.symbolic.points import Curved
from koirules.engines.symbolic.universe import Universe
from koirules.meaning import grades as of_grades
from koirules.meaning.algebra import Ends
from koirules.meaning.curves import Curve
from koirules.meaning.planes import PlaneSets
from koirules.program.evaluation import Evaluation
from koirules.program.evaluation_order import order_key, order_of_grading
from koirules.standard.parts import Limit, Points, Rules, Section, Setting, part_key
from koirules.standard.tree import (
    Apply,
    FaultRead,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    Supplied,
    TraitRead,
    walk,
)
from koirules.standard.types import Truth
from koirules.values import define

_OF_A_FISH = TraitRead | Supplied | Recorded | FaultRead | SectionRead | ScoreRead


@define(eq=False)
class Standing(Evaluation[Any]):
    """What a standard makes of a fish: an evaluation over terms of the solver.

    Points, sections and the score have bounds, of which only the rules know; their rounding is relaxed (`Giving`).

    curved: how the points of a criterion came about, by its key. totals: what sections are before they are rounded and held
    within their worth, by name. twin: the standing of the fish that this one differs from in a trait; what does not read
    that is shared. grades: where the condition of each grade holds. possible: for each grade, best first, whether it is still
    possible; plain: the same before lifts and faults.
    """

    universe: Universe = field(kw_only=True)
    fish: Fish = field(kw_only=True)
    twin: Standing | None = field(default=None, kw_only=True)
    curved: dict[str, tuple[Curved, ...]] = field(factory=dict, init=False)
    totals: dict[str, Ends[Any]] = field(factory=dict, init=False)
    grades: list[Ends[Any]] = field(factory=list, init=False)
    plain: tuple[Any, ...] = field(default=(), init=False)
    possible: tuple[Any, ...] = field(default=(), init=False)

    @classmethod
    def of(
        cls,
        rules: Rules,
        settings: Mapping[str, Setting],
        universe: Universe,
        fish: Fish,
        twin: Standing | None = None,
    ) -> Standing:
        """Evaluate a standard."""
        made = cls(settings, universe.meaning.terms, fish, rules=rules, universe=universe, fish=fish, twin=twin)
        made.evaluate_all()
        return made

    def evaluate_all(self) -> None:
        """Evaluate all that grading needs."""
        needed = {order_key(part) for part in order_of_grading(self.rules)}
        outcome = self.outcome(lambda part: order_key(part) in needed)
        self.grades, self.plain, self.possible = outcome.grades, outcome.by_points, outcome.possible

    @property
    def sections(self) -> dict[str, Ends[Any]]:
        """The least and most hundredths of each section, by its name."""
        return {section.name: self.hundredths[section.name] for section in self.rules.sections}

    @property
    def score(self) -> Ends[Any]:
        """The least and most hundredths of the score."""
        return self.hundredths[""]

    @property
    def bites(self) -> dict[tuple[str, str], Ends[Any]]:
        """Where each lift and fault bites, by its head word and name."""
        return {key: bites for key, (_, _, bites) in self.limits.items()}

    def settled(self, grade: int) -> Any:
        """Where a grade, by its place, is the only one possible."""
        logic = self.universe.logic
        others = [logic.no(other) for i, other in enumerate(self.possible) if i != grade]
        return logic.every([self.possible[grade], *others])

    def after(self, limits: Collection[Limit]) -> tuple[Any, ...]:
        """The grades that are possible after some of the lifts and faults."""
        possible: tuple[Any, ...] = self.after_limits(self.plain, lambda limit: limit in limits)
        return possible

    @property
    def grade_sets(self) -> of_grades.Sets[Any]:
        """A truth for each grade."""
        return PlaneSets(self.universe.meaning.terms, len(self.rules.grades))

    def criterion(self, part: Points) -> Ends[Any]:
        """What a criterion gives; that of the twin where it reads nothing in which the two fish differ."""
        key = part_key(part)
        if self.twin is not None and not self._touches(part.by):
            return self.twin.points[key]
        read = self.node(part.reads)
        if isinstance(part.shape, Curve):
            made, self.curved[key] = self.universe.giving.curve(read, part.shape)
            return made
        return self.universe.giving.table(read.first, part.shape)

    def section(self, section: Section) -> Ends[Any]:
        """What a section comes to; that of the twin where all that it adds up is the same."""
        points = {key: self.points[key] for key in map(part_key, section.points)}
        extras = {key: self.extras[key] for key in map(part_key, section.extras)}
        twin = self.twin
        if (
            twin is not None
            and all(given is twin.points[key] for key, given in points.items())
            and all(applies is twin.extras[key] for key, applies in extras.items())
        ):
            self.totals[section.name] = twin.totals[section.name]
            return twin.hundredths[section.name]
        held, total = self.universe.giving.section(section, list(points.values()), list(extras.values()))
        self.totals[section.name] = total
        return held

    def apply(self, node: Apply, operands: list[Ends[Any]]) -> Ends[Any]:
        """An operator over its operands."""
        return self.universe.meaning.applied(node.operation, operands, [operand.range for operand in node.operands])

    def number(self, section: str) -> Ends[Any]:
        """The hundredths of a section, or of the score (""), as a number, as the evaluator divides them."""
        most = Fraction(sum(one.worth for one in self.rules.sections if section in {"", one.name}), 100)

        def divided(hundredths: Any) -> Num:
            term = hundredths * z3.Q(1, 100, self.universe.context)
            return Num(term, Fraction(0), most, Fraction(1, 100), Fraction(0), UNIT * most)

        hundredths = self.hundredths[section]
        first = divided(hundredths.first)
        return Ends(first, first if hundredths.sure else divided(hundredths.last))

    def _touches(self, root: Node) -> bool:
        moved = self.fish.moved
        return any(isinstance(node, TraitRead | Recorded | Supplied) and node.key in moved for node in walk(root))

    def truths(self) -> list[tuple[str, Node, Ends[Any]]]:
        """Every condition and comparison of the rules that reads a fish, with the part that it stands in."""
        roots = [(part_key(part), root) for part in self.rules.parts for root in part.roots]
        roots.extend((f"term {name}", self.rules.terms[name].node) for name in self.terms)
        return [
            (key, node, self.node(node))
            for key, root in roots
            for node in walk(root, into_terms=False)
            if isinstance(node, Apply) and isinstance(node.type, Truth) and _reads_a_fish(node)
        ]


def _reads_a_fish(root: Node) -> bool:
    return any(isinstance(node, _OF_A_FISH) for node in walk(root))
