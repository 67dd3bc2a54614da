"""A whole standard for a fish that is not known yet, worked out in the order of the evaluator of one record."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from fractions import Fraction
from typing import Any, assert_never

import z3
from attrs import define, field

from koirules.engines.symbolic.fish import Fish
from koirules.engines.symbolic.numbers import Num
from koirules.engines.symbolic.points import Curved
from koirules.engines.symbolic.universe import Universe
from koirules.engines.symbolic.values import Pair
from koirules.meaning import grades as of_grades
from koirules.meaning.algebra import Ends
from koirules.meaning.curves import Curve
from koirules.meaning.planes import PlaneSets
from koirules.program.evaluation_order import late_parts, order_key, order_of_grading
from koirules.standard.parts import Limit, Points, Rules, Setting, Term, part_key
from koirules.standard.tree import (
    Apply,
    Constant,
    FaultRead,
    GradeRead,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    SettingRead,
    Supplied,
    TermRead,
    TraitRead,
    post_order,
    walk,
)
from koirules.standard.types import Truth
from koirules.vocabulary.readings import Span

_UNIT = Fraction(1, 2**53)


@define(eq=False)
class Standing:
    """What a standard makes of a fish. points, sections, extras, bites: both ends, by key or name.

    totals: what sections are before they are rounded and held within their worth.

    twin: the standing of the fish that this one differs from in a trait; what does not read that is shared.
    possible: for each grade, best first, whether it is still possible; plain: the same before lifts and faults.
    """

    rules: Rules
    settings: Mapping[str, Setting]
    universe: Universe
    fish: Fish
    twin: Standing | None = None
    points: dict[str, Pair] = field(factory=dict)
    curved: dict[str, tuple[Curved, ...]] = field(factory=dict)
    extras: dict[str, Pair] = field(factory=dict)
    sections: dict[str, Pair] = field(factory=dict)
    totals: dict[str, Pair] = field(factory=dict)
    conditions: dict[tuple[str, str], tuple[Pair, Pair]] = field(factory=dict)
    bites: dict[tuple[str, str], Pair] = field(factory=dict)
    grades: list[Pair] = field(factory=list)
    plain: list[Any] = field(factory=list)
    possible: list[Any] = field(factory=list)
    _terms: dict[str, Any] = field(factory=dict)
    _nodes: dict[int, Any] = field(factory=dict)

    @classmethod
    def of(
        cls,
        rules: Rules,
        settings: Mapping[str, Setting],
        universe: Universe,
        fish: Fish,
        twin: Standing | None = None,
    ) -> Standing:
        """Work a standard out."""
        made = cls(rules, settings, universe, fish, twin)
        made.work_out()
        return made

    def work_out(self) -> None:
        """Work every part out."""
        late, order = late_parts(self.rules), order_of_grading(self.rules)
        self._work_out([part for part in order if order_key(part) not in late])
        for section in self.rules.sections:
            self._section(section.name)
        self._work_out([part for part in order if order_key(part) in late])
        self.plain = self._by_points()
        self.possible = self.after(self.rules.limits)

    @property
    def score(self) -> Pair:
        """The least and most hundredths of the score."""
        pairs = [self.sections[section.name] for section in self.rules.sections]
        nothing = z3.RealVal(0, self.universe.context)
        first = z3.Sum([nothing, *(pair.first for pair in pairs)])
        if all(pair.sure for pair in pairs):
            return Pair(first, first)
        return Pair(first, z3.Sum([nothing, *(pair.second for pair in pairs)]))

    def settled(self, grade: int) -> Any:
        """Where a grade, by its place, is the only one possible."""
        logic = self.universe.logic
        others = [logic.no(other) for i, other in enumerate(self.possible) if i != grade]
        return logic.every([self.possible[grade], *others])

    def after(self, limits: Collection[Limit]) -> list[Any]:
        """The grades that are possible after some of the lifts and faults."""
        sets, possible = self._sets, tuple(self.plain)
        for head in ("lift", "fault"):
            for limit in self.rules.limits:
                if limit.head == head and limit in limits:
                    bites = self.bites[head, limit.name]
                    moved = of_grades.moved(sets, possible, head, limit.grade, len(possible))
                    possible = of_grades.limited(sets, possible, moved, Ends(bites.first, bites.second))
        return list(possible)

    def _by_points(self) -> list[Any]:
        self.grades = [
            Pair(True, True) if grade.condition is None else self.condition(grade.condition)
            for grade in self.rules.grades
        ]
        return list(of_grades.possible(self._sets, [Ends(pair.first, pair.second) for pair in self.grades]))

    @property
    def _sets(self) -> of_grades.Sets[Any]:
        return PlaneSets(self.universe.meaning.terms, len(self.rules.grades))

    def _work_out(self, parts: list[Term | Limit]) -> None:
        for part in parts:
            if isinstance(part, Term):
                self._terms[part.name] = self.node(part.node)
            else:
                self._limit(part)

    def _limit(self, limit: Limit) -> None:
        condition = self.condition(limit.condition)
        exception = Pair(False, False)
        bites = condition
        if limit.exception is not None:
            exception = self.condition(limit.exception)
            both = (Ends(pair.first, pair.second) for pair in (condition, exception))
            bites = Pair(*of_grades.bites(self.universe.meaning.terms, *both))
        self.conditions[limit.head, limit.name] = (condition, exception)
        self.bites[limit.head, limit.name] = bites

    def _section(self, name: str) -> None:
        section = next(section for section in self.rules.sections if section.name == name)
        shared = self.twin is not None
        for part in section.points:
            shared &= self._criterion(part)
        for extra in section.extras:
            made = self.condition(extra.condition)
            self.extras[part_key(extra)] = made
            shared = shared and self.twin is not None and self.twin.extras[part_key(extra)] is made
        if shared and self.twin is not None:
            self.sections[name], self.totals[name] = self.twin.sections[name], self.twin.totals[name]
            return
        points = [self.points[part_key(part)] for part in section.points]
        extras = [self.extras[part_key(extra)] for extra in section.extras]
        self.sections[name], self.totals[name] = self.universe.giving.section(section, points, extras)

    def _criterion(self, part: Points) -> bool:
        """Work a criterion out; whether it is that of the twin."""
        key = part_key(part)
        if self.twin is not None and not self._touches(part.by):
            self.points[key] = self.twin.points[key]
            return True
        read = self.node(part.reads)
        if isinstance(part.shape, Curve):
            pair = read if isinstance(read, Pair) else Pair(*read)
            self.points[key], self.curved[key] = self.universe.giving.curve(pair, part.shape)
        else:
            self.points[key] = self.universe.giving.table(read, part.shape)
        return False

    def condition(self, node: Node) -> Pair:
        """Where a condition surely and possibly holds."""
        made = self.node(node)
        return made if isinstance(made, Pair) else Pair(*made) if made[0] != made[1] else Pair(made[0], made[0])

    def node(self, root: Node) -> Any:
        """What an expression is; without recursion, since sums can be long."""
        for node in post_order(root, known=lambda node: id(node) in self._nodes):
            self._nodes[id(node)] = self._one(node)
        return self._nodes[id(root)]

    def _one(self, node: Node) -> Any:
        match node:
            case Constant(range=reading):
                return reading
            case SettingRead(name=name):
                value = float(self.settings[name].value)
                return Span(value, value)
            case TraitRead() | Supplied():
                return self.fish.slot(node).read
            case Recorded(of=of):
                recorded = self.fish.slot(of).recorded
                return Pair(recorded, recorded)
            case TermRead(name=name):
                return self._terms[name]
            case FaultRead(name=name):
                return self.bites["fault", name]
            case SectionRead(name=name):
                worth = next(section.worth for section in self.rules.sections if section.name == name)
                return self._number(self.sections[name], worth)
            case ScoreRead():
                return self._number(self.score, sum(section.worth for section in self.rules.sections))
            case GradeRead():
                raise AssertionError("the grade, read by what makes it")
            case Apply(operation=operation, operands=operands):
                made = [self._nodes[id(operand)] for operand in operands]
                return self.universe.meaning.applied(operation, made, [operand.range for operand in operands])
            case _:
                assert_never(node)

    def _number(self, hundredths: Pair, most: int) -> Pair:
        """Hundredths made a number, as the evaluator divides them."""
        found = []
        for end in (hundredths.first, hundredths.second):
            term = end * z3.Q(1, 100, self.universe.context)
            high = Fraction(most, 100)
            found.append(Num(term, Fraction(0), high, Fraction(1, 100), Fraction(0), _UNIT * high))
        return Pair(found[0], found[0]) if hundredths.sure else Pair(*found)

    def _touches(self, root: Node) -> bool:
        moved = self.fish.moved
        return any(isinstance(node, TraitRead | Recorded | Supplied) and node.key in moved for node in walk(root))

    def truths(self) -> list[tuple[str, Node, Pair]]:
        """Every condition and comparison of the rules that reads a fish, with the part that it stands in."""
        found: list[tuple[str, Node, Pair]] = []
        roots = [(part_key(part), root) for part in self.rules.parts for root in part.roots]
        roots.extend((f"term {name}", self.rules.terms[name].node) for name in self._terms)
        for key, root in roots:
            for node in walk(root, into_terms=False):
                if isinstance(node, Apply) and isinstance(node.type, Truth):
                    made = self.node(node)
                    if isinstance(made, Pair):
                        found.append((key, node, made))
        return found
