"""A checked standard over any value algebra: each term, limit, criterion, section and grade in its order of evaluation."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any, Generic, Protocol, TypeVar, assert_never

from attrs import field

from koirules.meaning import grades as of_grades
from koirules.meaning import sections as of_sections
from koirules.meaning.algebra import Algebra, Ends
from koirules.program.evaluation_order import late_parts, needed_for, order_key, reading_grade
from koirules.standard.parts import Limit, Points, Rules, Section, Setting, Term, part_key
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
    operands_of,
    post_order,
)
from koirules.standard.types import Numeric, PlaceWords, Truth, Type
from koirules.values import define

V = TypeVar("V")
_NO_SECTION = ""


class Inputs(Protocol[V]):
    """What an evaluation reads of a record."""

    def given(self, node: TraitRead | Supplied) -> Ends[V]:
        """What a trait, or a value beside the record, could be."""

    def recorded(self, of: TraitRead | Supplied) -> Ends[V]:
        """Whether it was recorded."""


@define(eq=False)
class Outcome(Generic[V]):
    """What was evaluated, each in the order of the rules.

    possible: the grades (bit 0 the best); by_points: the same before lifts and faults. score, sections: hundredths. reads:
    what each criterion reads; points: the thousandths that it gives. limits: condition, exception and where it bites.
    """

    possible: V
    by_points: V
    score: Ends[V]
    sections: list[Ends[V]]
    reads: list[Ends[V]]
    points: list[Ends[V]]
    extras: list[Ends[V]]
    limits: list[tuple[Ends[V], Ends[V], Ends[V]]]
    grades: list[Ends[V]]


@define(eq=False)
class Expressions(Generic[V]):
    """Expressions over what is read of a record, each worked out once.

    settings: those of the rules, with the values of this run. terms, faults, hundredths (of sections by name, of the score by
    ""), grade: what was evaluated before, or is given.
    """

    settings: Mapping[str, Setting]
    algebra: Algebra[V]
    inputs: Inputs[V]
    terms: dict[str, Ends[V]] = field(factory=dict)
    faults: dict[str, Ends[V]] = field(factory=dict)
    hundredths: dict[str, Ends[V]] = field(factory=dict)
    grade: Ends[V] | None = None
    _nodes: dict[int, Ends[V]] = field(factory=dict, init=False)
    _kept: list[Node] = field(factory=list, init=False)

    def one(self, value: V) -> Ends[V]:
        """A value that is not open."""
        return Ends(value, value)

    def node(self, root: Node) -> Ends[V]:
        """The value of an expression; without recursion, since sums can be long."""
        for node in post_order(root, self._beneath, lambda node: id(node) in self._nodes):
            self._kept.append(node)  # a node that is gone gives its id to another one
            self._nodes[id(node)] = self.value(node)
        return self._nodes[id(root)]

    def _beneath(self, node: Node) -> tuple[Node, ...]:
        if isinstance(node, TermRead):
            return () if node.key in self.terms else (node.node,)
        return operands_of(node)

    def value(self, node: Node) -> Ends[V]:
        """The value of an expression, of which the operands are evaluated."""
        match node:
            case Constant(type=kind, range=value):
                return self._constant(value, kind)
            case SettingRead(name=name):
                return self.one(self.algebra.constant(float(self.settings[name].value)))
            case TraitRead() | Supplied():
                return self.inputs.given(node)
            case Recorded(of=of):
                return self.inputs.recorded(of)
            case TermRead(key=key, node=inner):
                return self.terms[key] if key in self.terms else self._nodes[id(inner)]
            case FaultRead(name=name):
                return self.faults[name]
            case GradeRead():
                if self.grade is None:
                    raise AssertionError("the grade, read by what makes it")
                return self.grade
            case SectionRead(name=name):
                return self.number(name)
            case ScoreRead():
                return self.number(_NO_SECTION)
            case Apply(operands=operands):
                return self.apply(node, [self._nodes[id(operand)] for operand in operands])
            case _:
                assert_never(node)

    def apply(self, node: Apply, operands: list[Ends[V]]) -> Ends[V]:
        """An operator over its operands."""
        return node.operation.over(self.algebra, operands, [operand.range for operand in node.operands])

    def _constant(self, value: Any, kind: Type) -> Ends[V]:
        make = (
            self.algebra.constant if isinstance(kind, Numeric | Truth) or isinstance(value, str) else self.algebra.bits
        )
        if isinstance(value, tuple):
            first, second = value
            return self.one(make(first)) if _same(first, second) else Ends(make(first), make(second))
        return self.one(make(value))

    def number(self, section: str) -> Ends[V]:
        """The hundredths of a section, or of the score (""), as a number."""
        hundredths = self.hundredths[section]
        first = self.algebra.hundredths(hundredths.first)
        return Ends(first, first if hundredths.sure else self.algebra.hundredths(hundredths.last))


@define(eq=False)
class Evaluation(Expressions[V]):
    """An evaluation of whole rules.

    limits: by head word and name, each with its condition, its exception and where it bites. reads: what criteria read. points,
    extras: by key.
    """

    rules: Rules = field(kw_only=True)
    limits: dict[tuple[str, str], tuple[Ends[V], Ends[V], Ends[V]]] = field(factory=dict, kw_only=True)
    reads: list[Ends[V]] = field(factory=list, kw_only=True)
    points: dict[str, Ends[V]] = field(factory=dict, kw_only=True)
    extras: dict[str, Ends[V]] = field(factory=dict, kw_only=True)

    def outcome(self, wanted: Callable[[Term | Limit], bool] = lambda _: True) -> Outcome[V]:
        """Evaluate everything, the grade at last. wanted: which terms and limits are evaluated."""
        late, after = late_parts(self.rules), reading_grade(self.rules)
        order = [part for part in self.rules.order if order_key(part) not in after and wanted(part)]
        self.evaluate(part for part in order if order_key(part) not in late)
        self.evaluate_score()
        self.evaluate(part for part in order if order_key(part) in late)
        always = self.one(self.algebra.constant(True))
        conditions = [always if grade.condition is None else self.node(grade.condition) for grade in self.rules.grades]
        by_points = of_grades.possible(self.grade_sets, conditions)
        return Outcome(
            self.after_limits(by_points),
            by_points,
            self.hundredths[_NO_SECTION],
            [self.hundredths[section.name] for section in self.rules.sections],
            self.reads,
            list(self.points.values()),
            list(self.extras.values()),
            [self.limits[limit.head, limit.name] for limit in self.rules.limits],
            conditions,
        )

    def evaluate_needed(self, roots: Iterable[Node], *, graded: bool) -> None:
        """Evaluate no more than what expressions need. graded: whether the outcome is given, and only terms are left."""
        needed, late = needed_for(self.rules, roots), late_parts(self.rules)
        if graded:
            self.evaluate(one for one in self.rules.order if isinstance(one, Term) and order_key(one) in needed)
            return
        order = [part for part in self.rules.order if order_key(part) in needed]
        self.evaluate(part for part in order if order_key(part) not in late)
        if "score" in needed:
            self.evaluate_score()
        self.evaluate(part for part in order if order_key(part) in late)

    def evaluate(self, parts: Iterable[Term | Limit]) -> None:
        """Evaluate terms and limits, each after what it reads."""
        for part in parts:
            if isinstance(part, Term):
                self.terms[part.name] = self.node(part.node)
            else:
                self._limit(part)

    def evaluate_score(self) -> None:
        """Evaluate the sections, and the score of them."""
        sections = [self._section(section) for section in self.rules.sections]
        self.hundredths[_NO_SECTION] = of_sections.score(self.algebra, sections)

    @property
    def grade_sets(self) -> of_grades.Sets[V]:
        """The algebra of sets of grades."""
        return self.algebra

    def after_limits(self, grades: V, among: Callable[[Limit], bool] = lambda _: True) -> V:
        """The possible grades after all lifts, then all faults that lower, and then all that cap. among: which of them."""
        count = len(self.rules.grades)
        for place, limit in sorted(enumerate(self.rules.limits), key=lambda one: one[1].turn):
            if among(limit):
                *_, bites = self.limits[limit.head, limit.name]
                moved = of_grades.moved(self.grade_sets, grades, limit.turn, limit.by, count)
                grades = of_grades.limited(self.grade_sets, grades, moved, bites)
                self.bitten(place, bites, grades)
        return grades

    def bitten(self, place: int, bites: Ends[V], grades: V) -> None:
        """Called of each limit, with its place in the rules and the grades that it leaves."""

    def _limit(self, limit: Limit) -> None:
        condition = self.node(limit.condition)
        exception = None if limit.exception is None else self.node(limit.exception)
        bites = of_grades.bites(self.algebra, condition, exception)
        if limit.head == "fault":
            self.faults[limit.name] = bites
        never = self.one(self.algebra.constant(False)) if exception is None else exception
        self.limits[limit.head, limit.name] = (condition, never, bites)

    def _section(self, section: Section) -> Ends[V]:
        for part in section.points:
            self.points[part_key(part)] = self.criterion(part)
        for extra in section.extras:
            self.extras[part_key(extra)] = self.node(extra.condition)
        made = self.hundredths[section.name] = self.section(section)
        return made

    def section(self, section: Section) -> Ends[V]:
        """What a section comes to, of its points and extras."""
        points = [(part.weight, self.points[part_key(part)]) for part in section.points]
        extras = [(part.sign * part.amount, self.extras[part_key(part)]) for part in section.extras]
        return of_sections.section(self.algebra, points, extras, section.worth, section.divisor)

    def criterion(self, part: Points) -> Ends[V]:
        """What a criterion gives."""
        self.reads.append(self.node(part.by))
        return self.algebra.points(part.shape, self.node(part.reads))


def _same(first: Any, second: Any) -> bool:
    return first == second and repr(first) == repr(second)


def reading(ends: Ends[Any], kind: Type) -> Any:
    """The reading that plain ends are: a pair for numbers and truths, four of places, one end for levels and texts."""
    if isinstance(kind, PlaceWords) and ends.least is not None:
        return tuple(ends)
    return (ends.first, ends.second) if isinstance(kind, Numeric | Truth | PlaceWords) else ends.first
