"""A checked standard traced over records: over any record, and over complete ones, in which everything has one value."""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from typing import Any

from attrs import field

from koirules.meaning.algebra import Ends
from koirules.program.evaluation import Evaluation
from koirules.program.graph import Kind, Part, Read, Tracer, Value
from koirules.standard.tree import Apply, Node, Supplied, TraitRead
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, Type
from koirules.values import define, frozen
from koirules.vocabulary.readings import Reading, anything

OF_A_TUPLE = (Part.FIRST, Part.SECOND, Part.LEAST, Part.MOST)
"""What an input takes of a reading that is a tuple, by its place there: of a pair the first two."""


class RecordedAs(Enum):
    """How `is recorded` of a trait is answered.

    STANDS: as the record stands. SAID: as it is said beside the record, by the name of the trait; open for any other.
    """

    STANDS = "as the record stands"
    SAID = "as it is said by name"


def reach_of(node: TraitRead | Supplied) -> Any:
    """The reading that stands for nothing recorded: all of the range; None for texts, maps and colour readings."""
    if isinstance(node.type, TextLabel):
        return None
    return anything(node.trait.kind) if isinstance(node, TraitRead) else node.range


def kind_of(kind: Type) -> Kind:
    """The kind of value that each end of a type is."""
    match kind:
        case Numeric():
            return Kind.NUMBER
        case Truth():
            return Kind.TRUTH
        case Steps() | PlaceWords():
            return Kind.SET
        case TextLabel() | PatternMap() | ColourList():
            return Kind.TEXT


def ends_read(tracer: Tracer, key: str, kind: Kind, reach: Any) -> Ends[Value]:
    """The inputs that take all ends of what stands under a key. reach: the reading that stands for nothing recorded."""
    if not isinstance(reach, tuple):
        return Ends(tracer.input(kind, Read(key, Part.WHOLE, reach)))
    ends = tuple(reach)
    kinds = (kind, kind, Kind.WHOLE, Kind.WHOLE)[: len(ends)]
    parts = zip(kinds, OF_A_TUPLE, strict=False)
    return Ends(*(tracer.input(one, Read(key, part, ends)) for one, part in parts))


@frozen
class AnyRecord:
    """What is read of any record: what is not recorded is anything of its range."""

    tracer: Tracer
    recorded_as: RecordedAs = RecordedAs.STANDS

    def given(self, node: TraitRead | Supplied) -> Ends[Value]:
        """What stands under the key of a node."""
        return self.read(node.key, kind_of(node.type), reach_of(node))

    def read(self, key: str, kind: Kind, reach: Any) -> Ends[Value]:
        """What stands under a key."""
        return ends_read(self.tracer, key, kind, reach)

    def recorded(self, of: TraitRead | Supplied) -> Ends[Value]:
        """Whether something stands under the key of a node."""
        if self.recorded_as is RecordedAs.SAID and isinstance(of, TraitRead):
            surely = self.tracer.input(Kind.TRUTH, Read(of.key, Part.SURELY))
            return Ends(surely, self.tracer.input(Kind.TRUTH, Read(of.key, Part.POSSIBLY)))
        there = self.tracer.input(Kind.TRUTH, Read(of.key, Part.RECORDED))
        return Ends(there, there)


@frozen
class Input:
    """What is read of a complete record: what stands under a key.

    A value is the code of a level (where there are two of them a truth: whether it is the second), one end of what has two,
    or a text. steps: how many levels there are, 0 of what is no level. paired: whether a reading has two ends.
    """

    key: str
    steps: int = 0
    paired: bool = False

    @property
    def codes(self) -> Mapping[Reading, Any]:
        """The code of each reading that is one level."""
        if self.steps == len((False, True)):
            return {1: False, 2: True}
        return {1 << i: i for i in range(self.steps)}

    def value(self, reading: Any) -> Any:
        """The value that a reading is, None where it could be several."""
        if self.steps:
            return self.codes.get(reading)
        if self.paired:
            return reading[0] if reading is not None and reading[0] == reading[1] else None
        return reading


class OpenToEveryFishError(Exception):
    """A value that is open whatever is recorded."""


@define(eq=False)
class CompleteRecord:
    """What is read of a complete record.

    inputs: by key, each with its value. asked: keys of which it matters only whether something stands under them.
    """

    tracer: Tracer
    inputs: dict[str, tuple[Input, Value]] = field(factory=dict)
    asked: dict[str, Value] = field(factory=dict)

    def given(self, node: TraitRead | Supplied) -> Ends[Value]:
        """The one value that stands under the key of a node."""
        reach = reach_of(node)
        if isinstance(reach, int):
            one = Input(node.key, steps=reach.bit_length())
            code = self._value(one, Kind.WHOLE, Part.CODE)
            level = self.tracer.table(code, Kind.SET, tuple(one.codes)) if one.codes else code
            return Ends(level, level)
        one = Input(node.key, paired=isinstance(reach, tuple))
        value = self._value(one, kind_of(node.type), Part.ONE)
        return Ends(value, value)

    def _value(self, one: Input, kind: Kind, part: Part) -> Value:
        value = self.tracer.input(kind, Read(one.key, part))
        self.inputs.setdefault(one.key, (one, value))
        return value

    def recorded(self, of: TraitRead | Supplied) -> Ends[Value]:
        """Whether something stands under the key of a node."""
        there = self.asked.setdefault(of.key, self.tracer.input(Kind.TRUTH, Read(of.key, Part.RECORDED)))
        return Ends(there, there)


@define(eq=False)
class CompleteEvaluation(Evaluation[Value]):
    """An evaluation over complete records: the low end is the high end, and where it may not be, that is demanded.

    demands: truths that hold of a record of which every value is one value. bits: of the limits that bite, in the order of
    the rules. Raises OpenToEveryFishError where no record is like that.
    """

    demands: list[Value] = field(factory=list, kw_only=True)
    bits: Value | None = field(default=None, kw_only=True)
    stepwise: list[Value] = field(factory=list, kw_only=True)

    def node(self, root: Node) -> Ends[Value]:
        """The value of an expression."""
        made = super().node(root)
        if not made.sure:
            raise OpenToEveryFishError
        return made

    def apply(self, node: Apply, operands: list[Ends[Value]]) -> Ends[Value]:
        """An operator over its operands: one value, or one that is open to every fish."""
        made = super().apply(node, operands)
        if made.second is None:
            raise OpenToEveryFishError
        if made.sure or (made.first.constant and made.last.constant):
            return made
        self.demands.append(self.algebra.equal(made.first, made.last))
        return self.one(made.first)

    def bitten(self, place: int, bites: Ends[Value], grades: Value) -> None:
        """Note the bit of a limit that bites."""
        before = self.bits or self.algebra.bits(0)
        bit = self.algebra.bits(1 << place)
        self.bits = self.algebra.where(bites.first, self.algebra.either(before, bit), before)
        self.stepwise += [grades, self.bits]
