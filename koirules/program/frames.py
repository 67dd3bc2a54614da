"""A standard as a program over the columns of a frame, for every engine that grades frames.

How to use it: make a `FrameProgram` of the rules, the settings of the run, and how the frame holds each trait (`held`). Its
`outputs` are values under names; lower these, and all that they need (`passes.live`), operation by operation.

What an engine finds in the program:
- An input says by its `Read` which column of the frame it takes (`key`), and what of it: one number (ONE; FIRST and SECOND of
  two columns that hold both ends), a code (CODE), or whether a row has it (RECORDED). `otherwise` is what stands for a null,
  None where the column has none: the end of the range, or one code more than there are.
- A code stands under a table: a tuple with one value for each code. The code of a column of truths is a truth itself: false is
  code 0, true is code 1, and a null code 2.
- Numbers with holes are split (`holes`): no value but a text is ever null.
- `sums.Sums` puts the tables of several codes together; `bounds.Bounds` says how wide whole numbers get.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, assert_never

from attrs import field

from koirules.meaning import grades as of_grades
from koirules.meaning.algebra import Ends
from koirules.meaning.grades import Turn
from koirules.meaning.planes import PlaneSets
from koirules.program.bounds import Bounds
from koirules.program.evaluation import Evaluation
from koirules.program.graph import Kind, Part, Read, Value
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn, readings_of
from koirules.program.holes import HoleTracer
from koirules.program.records import kind_of, reach_of
from koirules.standard.parts import Limit, Rules, Setting
from koirules.standard.tree import GradeRead, Node, Supplied, TraitRead
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, Type
from koirules.values import define, frozen


@frozen
class FrameInputs:
    """What is read of a frame. held: how it holds each trait, and each value beside the record, by its key."""

    tracer: HoleTracer
    held: Mapping[str, Held]

    def given(self, node: TraitRead | Supplied) -> Ends[Value]:
        """What the rows have under the key of a node."""
        return self.read(node.key, node.type, reach_of(node))

    def read(self, key: str, of: Type, reach: Any) -> Ends[Value]:
        """What the rows have under a key. reach: what a row can have at all."""
        tracer, held = self.tracer, self.held.get(key, NoColumn())
        match held:
            case NoColumn():
                return _ends(of, [reach], lambda kind, values: tracer.constant(values[0], kind))
            case CodeColumn():
                code = self._code(held)
                readings = readings_of(held, reach) or (reach,)
                return _ends(of, readings, lambda kind, values: tracer.table(code, kind, values))
            case NumberColumn(name=name, holes=holes, high=high):
                if high:
                    low, most = (None, None) if not holes else reach
                    first = tracer.input(Kind.NUMBER, Read(name, Part.FIRST, low))
                    return Ends(first, tracer.input(Kind.NUMBER, Read(high, Part.SECOND, most)))
                if holes:
                    return Ends(*tracer.number_with_holes(name, *reach))
                one = tracer.input(Kind.NUMBER, Read(name, Part.ONE))
                return Ends(one, one)
            case _:
                assert_never(held)

    def recorded(self, of: TraitRead | Supplied) -> Ends[Value]:
        """In which rows there is something under the key of a node."""
        tracer, held = self.tracer, self.held.get(of.key, NoColumn())
        match held:
            case NoColumn():
                there = tracer.constant(value=False)
            case CodeColumn(readings=readings, holes=holes):
                each = [reading is not None for reading in readings] + [False] * holes
                there = tracer.table(self._code(held), Kind.TRUTH, each) if each else tracer.constant(value=False)
            case NumberColumn(name=name, holes=holes):
                read = Read(name, Part.RECORDED)
                there = tracer.input(Kind.TRUTH, read) if holes else tracer.constant(value=True)
            case _:
                assert_never(held)
        return Ends(there, there)

    def _code(self, held: CodeColumn) -> Value:
        kind = Kind.TRUTH if held.truth else Kind.WHOLE
        return self.tracer.input(kind, Read(held.name, Part.CODE, len(held.readings) if held.holes else None))


def _ends(of: Type, readings: Sequence[Any], make: Callable[[Kind, Sequence[Any]], Value]) -> Ends[Value]:
    """Both ends of readings of a type; the same value where each reading is one value."""
    kind = kind_of(of)
    match of:
        case Numeric() | Truth() | PlaceWords():
            # Behind both ends of a set of places stands how many there are.
            kinds = (kind, kind, Kind.WHOLE, Kind.WHOLE)
            return Ends(*(make(one, each) for one, each in zip(kinds, zip(*readings, strict=True), strict=False)))
        case PatternMap() | ColourList():
            return Ends(make(kind, [None if reading is None else str(reading) for reading in readings]))
        case Steps() | TextLabel():
            first = make(kind, readings)
            return Ends(first, first if all(map(_is_one, readings)) else None)


def _is_one(reading: Any) -> bool:
    """Whether bits are of one level; whether there is a text."""
    return reading is not None and (not isinstance(reading, int) or reading.bit_count() == 1)


@define(eq=False)
class FrameEvaluation(Evaluation[Value]):
    """An evaluation over the columns of a frame.

    A set of grades is a truth for each grade, and limits with the same outcome come to one: where any of them surely bites, the
    outcome is sure; where any may bite, it is possible. bounds: of what the checker knows the range of.
    """

    bounds: Bounds = field(factory=Bounds, kw_only=True)

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting], held: Mapping[str, Held]) -> FrameEvaluation:
        """Ready to evaluate expressions over a frame that holds its traits so."""
        tracer = HoleTracer()
        return cls(settings, tracer, FrameInputs(tracer, held), rules=rules)

    @property
    def tracer(self) -> HoleTracer:
        """What records the program."""
        if not isinstance(self.algebra, HoleTracer):
            raise AssertionError("an evaluation over something else than columns")
        return self.algebra

    def given_outcome(self) -> None:
        """Read the outcome of each row from columns of its own, by the names of `FrameProgram.outputs`."""
        tracer = self.tracer

        def ends(kind: Kind, first: str, second: str) -> Ends[Value]:
            return Ends(tracer.input(kind, Read(first, Part.FIRST)), tracer.input(kind, Read(second, Part.SECOND)))

        worths = {"": sum(one.worth for one in self.rules.sections)}
        worths |= {one.name: one.worth for one in self.rules.sections}
        for name, worth in worths.items():
            key = f"section {name}" if name else "score"
            self.hundredths[name] = found = ends(Kind.WHOLE, f"{key} low", f"{key} high")
            for end in (found.first, found.last):
                self.bounds.note(end, 0, worth)
        for limit in self.rules.limits:
            if limit.head == "fault":
                key = f"fault {limit.name}"
                self.faults[limit.name] = ends(Kind.TRUTH, f"{key} surely", f"{key} possibly")

    @property
    def grade_sets(self) -> of_grades.Sets[Any]:
        """A truth for each grade."""
        return PlaneSets(self.algebra, len(self.rules.grades))

    def after_limits(self, grades: Any, among: Callable[[Limit], bool] = lambda _: True) -> Any:
        """The possible grades after all lifts, then all faults that lower, and then all that cap."""
        count = len(self.rules.grades)
        by_outcome: dict[tuple[Turn, int, int], list[Ends[Value]]] = {}
        for place, limit in sorted(enumerate(self.rules.limits), key=lambda one: one[1].turn):
            if among(limit):
                # Those of one outcome are one; those that lower add up.
                alone = place if limit.lowers else 0
                key = (limit.turn, limit.by, alone)
                by_outcome.setdefault(key, []).append(self.limits[limit.head, limit.name][-1])
        for (turn, outcome, _), bites in by_outcome.items():
            surely = self.algebra.some(*(ends.first for ends in bites))
            possibly = self.algebra.some(*(ends.last for ends in bites))
            moved = of_grades.moved(self.grade_sets, grades, turn, outcome, count)
            grades = of_grades.limited(self.grade_sets, grades, moved, Ends(surely, possibly))
        return grades

    def value(self, node: Node) -> Ends[Value]:
        """The value of an expression, of which the operands are evaluated."""
        if isinstance(node, GradeRead):
            if not isinstance(self.inputs, FrameInputs):
                raise AssertionError("an evaluation over something else than columns")
            return self.inputs.read("grade", node.type, node.range)
        ends = super().value(node)
        if isinstance(node.type, Numeric):
            for end in (ends.first, ends.last):
                for value in {end, self.tracer.there_value(end)}:
                    self.bounds.note(value, *node.range)
        return ends


@frozen
class FrameProgram:
    """The program that grades the rows of a frame.

    evaluation: what further expressions can be asked of. score, sections: both ends, in whole hundredths. possible: for each
    grade, best first, where it is possible. limits: where each lift and fault surely and possibly bites.
    """

    evaluation: FrameEvaluation
    score: Ends[Value]
    sections: Mapping[str, Ends[Value]]
    possible: tuple[Value, ...]
    limits: Mapping[tuple[str, str], Ends[Value]]

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting], held: Mapping[str, Held]) -> FrameProgram:
        """Trace a standard for frames that hold their traits so."""
        evaluation = FrameEvaluation.of(rules, settings, held)
        outcome = evaluation.outcome()
        names = [section.name for section in rules.sections]
        keys = [(limit.head, limit.name) for limit in rules.limits]
        bites = [bites for *_, bites in outcome.limits]
        possible: Any = outcome.possible
        return cls(
            evaluation,
            outcome.score,
            dict(zip(names, outcome.sections, strict=True)),
            tuple(possible),
            dict(zip(keys, bites, strict=True)),
        )

    @property
    def outputs(self) -> dict[str, Value]:
        """What comes of each row, by name.

        `score low`, `score high`, `section NAME low` and `high`: whole hundredths. `fault NAME surely` and `possibly`, likewise
        of each lift: truths. `grade NUMBER`: whether the grade of that place, 0 the best, is possible.
        """
        found: dict[str, Value] = {}
        for name, ends in (("score", self.score), *((f"section {name}", ends) for name, ends in self.sections.items())):
            found |= {f"{name} low": ends.first, f"{name} high": ends.last}
        for (head, name), ends in self.limits.items():
            found |= {f"{head} {name} surely": ends.first, f"{head} {name} possibly": ends.last}
        return found | {f"grade {place}": value for place, value in enumerate(self.possible)}
