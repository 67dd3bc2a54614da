"""A standard as a program over frames of one profile: of all those whose rows are complete, or may lack anything.

Why: the program of a frame (`frames.py`) knows the holes and the codes of that frame. Machine code is too dear to be made for
each. It is made for a profile, and what the codes of a frame mean is looked up in tables that are filled when the frame is there.

Of most values it is enough to know one column. They are taken apart (partial evaluation: Jones, Gomard, Sestoft, 1993, from
memory): what follows from the code of one column becomes an input of its own, looked up by the code; what follows from one column
of numbers is worked out for a number that is there, and is a constant where none is.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from enum import Enum
from hashlib import sha256
from itertools import chain
from typing import Any

from attrs import field

from koirules.meaning.algebra import Ends
from koirules.program.evaluation import Evaluation
from koirules.program.evaluation_order import order_key, order_of_grading
from koirules.program.graph import Kind, Op, Part, Read, Tracer, Value, plain
from koirules.program.passes import live
from koirules.program.records import OF_A_TUPLE, ends_read, kind_of, reach_of
from koirules.standard.parts import Limit, Rules, Setting
from koirules.standard.tree import Supplied, TraitRead
from koirules.standard.types import Numeric
from koirules.values import define, frozen

_EITHER_OF_TWO = 3
"""The bits of a scale, choice or yes-or-no of two levels, of which nothing was recorded."""

_JOINING = frozenset({Op.TOTAL, Op.COUNT, Op.EVERY, Op.SOME})


class Column(Enum):
    """What the column of a key holds: numbers, truths (the second of two levels), or codes of readings."""

    NUMBERS = "numbers"
    TRUTHS = "truths"
    CODES = "codes"

    __hash__ = object.__hash__


@frozen
class Profile:
    """What a program takes for granted of a frame.

    complete: every row has one value of all that the rules read; else any may be missing. stretched: the keys of numbers with
    a second column for their upper ends.
    """

    complete: bool
    stretched: frozenset[str] = frozenset()


@frozen
class Looked:
    """An input: the value that follows from the reading of one column alone."""

    key: str
    value: Value

    def of(self, reading: Any) -> Any:
        """The value for a reading; None for nothing recorded."""
        return evaluated([self.value], reading)[0]


@frozen
class RowProgram:
    """The program of a standard over the rows of frames with one profile.

    columns: what is read, by key, in order, with the reading that stands for nothing recorded. possible: bits of the grades,
    bit 0 the best. score, sections: hundredths; is_one: whether both ends of the score are the same. limits: of each lift and
    fault whether it surely bites, and whether that is known.
    """

    profile: Profile
    columns: Mapping[str, tuple[Column, Any]]
    possible: Value
    score: tuple[Value, Value]
    is_one: Value
    sections: tuple[tuple[Value, Value], ...]
    limits: tuple[tuple[Value, Value], ...]

    @property
    def outputs(self) -> list[Value]:
        """Every value that is written."""
        return [self.possible, self.is_one, *chain(self.score, *self.sections, *self.limits)]


@define(eq=False)
class _FrameRecord:
    """What is read of the row of a frame."""

    tracer: Tracer
    complete: bool
    columns: dict[str, tuple[Column, Any]] = field(factory=dict)
    asked: set[str] = field(factory=set)

    def given(self, node: TraitRead | Supplied) -> Ends[Value]:
        """What stands in the columns of a node."""
        kind, reach = kind_of(node.type), reach_of(node)
        if isinstance(node.type, Numeric):
            column = Column.NUMBERS
        else:
            column = Column.TRUTHS if isinstance(reach, int) and reach == _EITHER_OF_TWO else Column.CODES
        self.columns[node.key] = (column, reach)
        if self.complete:
            one = self.tracer.input(kind, Read(node.key, Part.ONE, reach))
            return Ends(one, one)
        return ends_read(self.tracer, node.key, kind, reach)

    def recorded(self, of: TraitRead | Supplied) -> Ends[Value]:
        """Whether something stands there."""
        self.given(of)
        self.asked.add(of.key)
        stands = self.tracer.input(Kind.TRUTH, Read(of.key, Part.RECORDED))
        there = self.tracer.constant(value=True) if self.complete else stands
        return Ends(there, there)


def row_program(rules: Rules, settings: Mapping[str, Setting], profile: Profile) -> RowProgram:
    """Trace a standard over the rows of frames, with the settings of this run."""
    tracer = Tracer()
    record = _FrameRecord(tracer, profile.complete)
    needed = {order_key(part) for part in order_of_grading(rules)}
    outcome = Evaluation(settings, tracer, record, rules=rules).outcome(
        lambda part: isinstance(part, Limit) or order_key(part) in needed
    )
    for key in record.asked & record.columns.keys():
        column, reach = record.columns[key]
        if column is Column.TRUTHS:
            # A truth has no room for an answer that is there and could be either.
            record.columns[key] = (Column.CODES, reach)
    ends = [outcome.score, *outcome.sections, *(bites for *_, bites in outcome.limits)]
    values = [outcome.possible, *(end for one in ends for end in (one.first, one.last))]
    taken = _Apart(tracer, record.columns, profile)
    possible, *rest = taken.values(values)
    pairs = list(zip(rest[::2], rest[1::2], strict=True))
    score, *others = pairs
    sections, limits = others[: len(outcome.sections)], others[len(outcome.sections) :]
    made = taken.tracer
    known = [
        (surely, made.constant(value=True) if surely is possibly else made.some(surely, made.no(possibly)))
        for surely, possibly in limits
    ]
    is_one = made.equal(*score)
    return RowProgram(profile, record.columns, possible, score, is_one, tuple(sections), tuple(known))


def evaluated(values: Sequence[Value], reading: Any) -> list[Any]:
    """Plain values that follow from the reading of one column; None for nothing recorded."""
    known: dict[Value, Any] = {}
    for value in live(values):
        known[value] = (
            value.data
            if value.op is Op.CONSTANT
            else _part(value.data, reading)
            if value.op is Op.INPUT
            else plain(value.op, value.data)(*(known[operand] for operand in value.operands))
        )
    return [known[value] for value in values]


def _part(read: Read, reading: Any) -> Any:
    if read.part is Part.RECORDED:
        return reading is not None
    what = read.otherwise if reading is None else reading
    if read.part in OF_A_TUPLE:
        return what[OF_A_TUPLE.index(read.part)]
    return what[0] if read.part is Part.ONE and isinstance(what, tuple) else what


@define(eq=False)
class _Apart:
    """Takes a program apart by the columns that its values follow from. tracer: of the new one."""

    before: Tracer
    columns: Mapping[str, tuple[Column, Any]]
    profile: Profile
    tracer: Tracer = field(factory=Tracer)
    _keys: dict[Value, str | None] = field(factory=dict)
    _several: set[Value] = field(factory=set)
    _made: dict[Value, Value] = field(factory=dict)
    _there: dict[Value, Value] = field(factory=dict)

    def values(self, outputs: Sequence[Value]) -> list[Value]:
        """The values of the new program that some of the old one become."""
        for value in live(outputs):
            self._find_key(value)
        for value in live(outputs, stop=lambda value: value not in self._several):
            self._made[value] = self._again(value) if value in self._several else self._alone(value)
        return [self._made[value] for value in outputs]

    def _find_key(self, value: Value) -> None:
        """Find the one column that a value follows from, if it is one: None for a constant."""
        keys: Iterable[str | None] = (
            [value.data.key] if value.op is Op.INPUT else (self._keys.get(one) for one in value.operands)
        )
        found = {key for key in keys if key is not None}
        if len(found) > 1 or any(one in self._several for one in value.operands):
            self._several.add(value)
        else:
            self._keys[value] = next(iter(found), None)

    def _again(self, value: Value) -> Value:
        """A value that follows from several columns; operands from the same column are joined first."""
        operands = list(value.operands)
        if value.op not in _JOINING:
            return self._same(value, [self._made[one] for one in operands])
        groups: dict[str, list[Value]] = {}
        for one in operands:
            key = self._keys.get(one)
            if one not in self._several and key is not None:
                groups.setdefault(key, []).append(one)
        joined = {one for group in groups.values() if len(group) > 1 for one in group}
        rest = [self._made[one] for one in operands if one not in joined]
        sums = []
        for group in groups.values():
            if len(group) > 1:
                one = self.before.apply(value.op, group, value.data)
                self._find_key(one)
                sums.append(self._alone(one))
        if not sums:
            return self._same(value, rest)
        if value.op is Op.COUNT:
            return self.tracer.total(*sums, *([self.tracer.count(*rest)] if rest else []))
        return self._same(value, [*sums, *rest])

    def _same(self, value: Value, operands: Sequence[Value]) -> Value:
        if value.op is Op.CONSTANT:
            return self.tracer.constant(value.data, value.kind)
        return self.tracer.apply(value.op, operands, value.data)

    def _alone(self, value: Value) -> Value:
        """A value that follows from one column, or from none."""
        key = self._keys[value]
        if key is None:
            return self.tracer.constant(evaluated([value], None)[0], value.kind)
        match self.columns[key][0]:
            case Column.CODES:
                return self.tracer.input(value.kind, Looked(key, value))
            case Column.TRUTHS:
                second = self.tracer.input(Kind.TRUTH, Read(key, Part.CODE))
                no, yes = (self.tracer.constant(evaluated([value], bits)[0], value.kind) for bits in (1, 2))
                return self._or_missing(key, value, self.tracer.where(second, yes, no))
            case Column.NUMBERS:
                return self._or_missing(key, value, self._of_number(key, value))

    def _or_missing(self, key: str, value: Value, there: Value) -> Value:
        if self.profile.complete:
            return there
        missing = self.tracer.constant(evaluated([value], None)[0], value.kind)
        return self.tracer.where(self.tracer.input(Kind.TRUTH, Read(key, Part.RECORDED)), there, missing)

    def _of_number(self, key: str, value: Value) -> Value:
        """A value that follows from one number, where that is recorded."""
        stretched = key in self.profile.stretched
        for one in live([value], stop=lambda one: one in self._there):
            if one in self._there:
                continue
            if one.op is not Op.INPUT:
                self._there[one] = self._same(one, [self._there[operand] for operand in one.operands])
            elif one.data.part is Part.RECORDED:
                self._there[one] = self.tracer.constant(value=True)
            else:
                part = one.data.part if stretched else Part.ONE
                self._there[one] = self.tracer.input(Kind.NUMBER, Read(key, part, one.data.otherwise))
        return self._there[value]


def digest_of(program: RowProgram) -> bytes:
    """What tells programs apart that do something else: every value with its operation, operands and data."""
    told = sha256(repr((program.profile.complete, sorted(program.profile.stretched))).encode())
    for key, (column, reach) in program.columns.items():
        told.update(f"{key!r} {column.value} {reach!r}\n".encode("utf-8", "surrogatepass"))
    numbers: dict[Value, int] = {}
    for value in live(program.outputs):
        numbers[value] = len(numbers)
        data = value.data
        if isinstance(data, Looked):
            # What is in its table is filled in for each frame; bounds follow from what it is made of.
            inner = live([data.value])
            places = {one: place for place, one in enumerate(inner)}
            data = (
                data.key,
                [(one.op.value, one.kind.value, [places[o] for o in one.operands], one.data) for one in inner],
            )
        told.update(
            repr((value.op.value, value.kind.value, [numbers[o] for o in value.operands], data)).encode(
                "utf-8", "surrogatepass"
            )
        )
    told.update(repr([numbers[value] for value in program.outputs]).encode())
    return told.digest()
