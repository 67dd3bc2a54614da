"""The traced program: a typed graph of primitive operations in static single assignment form.

The tracer is a value algebra (meaning/algebra.py) that records what is done. It folds constants, shares common
subexpressions (value numbering: Cocke, Schwartz, Programming Languages and Their Compilers, 1970, from memory) and makes
a case table of everything that depends on the code of one input alone: a constant is a table over nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from enum import Enum
from typing import Any

from attrs import field

from koirules.meaning.algebra import PLAIN, Ends
from koirules.meaning.curves import Shape
from koirules.values import define, frozen


class Kind(Enum):
    """What a value is: a double, a whole number, a truth, a set of levels or places, a text."""

    NUMBER = "number"
    WHOLE = "whole number"
    TRUTH = "truth"
    SET = "set"
    TEXT = "text"

    # Members are singletons; the hash of Enum is a Python function, called for every value of a program.
    __hash__ = object.__hash__


class Op(Enum):
    """The primitive operations; those of the algebra are called as there."""

    CONSTANT = "constant"
    INPUT = "input"
    TABLE = "table"
    ADD = "add"
    SUBTRACT = "subtract"
    MULTIPLY = "multiply"
    DIVIDE = "divide"
    NEGATE = "negate"
    MILLIONTHS = "millionths"
    DIVIDE_DOWN = "divide_down"
    LEAST = "least"
    MOST = "most"
    TOTAL = "total"
    COUNT = "count"
    AT_LEAST = "at_least"
    ABOVE = "above"
    EQUAL = "equal"
    EVERY = "every"
    SOME = "some"
    NO = "no"
    WHERE = "where"
    COMMON = "common"
    EITHER = "either"
    MEETS = "meets"
    LOWEST = "lowest"
    HALVED = "halved"
    MEMBERS = "members"
    MISSING = "missing"
    HUNDREDTHS = "hundredths"
    LEAST_POINTS = "least_points"
    MOST_POINTS = "most_points"
    PACK = "pack"

    __hash__ = object.__hash__


class Part(Enum):
    """What an input takes of what stands under a key of the record.

    FIRST, SECOND: one end of a pair. LEAST, MOST: how many places a set of them has. WHOLE: what stands there, levels as
    bits or a text. ONE: the one value of a complete record. CODE: the place of its level. RECORDED: whether anything stands
    there. SURELY, POSSIBLY: whether it is said to be recorded.
    """

    FIRST = "first"
    SECOND = "second"
    LEAST = "least"
    MOST = "most"
    WHOLE = "whole"
    ONE = "one"
    CODE = "code"
    RECORDED = "recorded"
    SURELY = "surely said"
    POSSIBLY = "possibly said"


@frozen
class Read:
    """An input: which part of what stands under a key. otherwise: the reading that stands for nothing recorded."""

    key: str
    part: Part
    otherwise: Any = field(default=None, eq=False)


@define(eq=False)
class Value:
    """A value of the program: an operation over earlier values.

    data: of a constant its value, of an input what it reads, of a table the value for each code, of `divide_down` the
    divisor, of points their shape, of a pack how many codes each operand has. A table has the code as its operand.
    """

    number: int
    op: Op
    kind: Kind
    operands: tuple[Value, ...]
    data: Any = None

    @property
    def constant(self) -> bool:
        """Whether it is the same for every record."""
        return self.op is Op.CONSTANT


_FOLDED: dict[Op, Callable[..., Any]] = {
    op: getattr(PLAIN, op.value)
    for op in Op
    if op not in {Op.CONSTANT, Op.INPUT, Op.TABLE, Op.DIVIDE_DOWN, Op.LEAST_POINTS, Op.MOST_POINTS, Op.PACK}
}


def _kind_of(value: Any) -> Kind:
    match value:
        case bool():
            return Kind.TRUTH
        case int():
            return Kind.WHOLE
        case float():
            return Kind.NUMBER
        case _:
            return Kind.TEXT


class Tracer:
    """The value algebra that records a program. values: every value, each after its operands."""

    def __init__(self) -> None:
        self.values: list[Value] = []
        self._known: dict[Hashable, Value] = {}

    # What a program is made of

    def constant(self, value: Any, kind: Kind | None = None) -> Value:
        """A constant; its kind is that of the Python value where none is given."""
        kind = kind or _kind_of(value)
        # 0.0 and -0.0 are equal and not the same, and so are True and 1.
        return self._value(Op.CONSTANT, kind, (), value, (kind, value.__class__, repr(value)))

    def bits(self, value: int) -> Value:
        """A constant set."""
        return self.constant(value, Kind.SET)

    def input(self, kind: Kind, read: Hashable) -> Value:
        """What is read of a record: a `Read`, or what takes its place in a program that is made of another."""
        return self._value(Op.INPUT, kind, (), read, read)

    def table(self, code: Value, kind: Kind, values: Sequence[Any]) -> Value:
        """A value for each code; a constant where all of them are the same."""
        keys = [(value.__class__, repr(value)) for value in values]
        if len(set(keys)) == 1:
            return self.constant(values[0], kind)
        return self._value(Op.TABLE, kind, (code,), tuple(values), (kind, *keys))

    def _value(self, op: Op, kind: Kind, operands: tuple[Value, ...], data: Any, key: Hashable) -> Value:
        named = (op, operands, key)
        known = self._known.get(named)
        if known is None:
            known = self._known[named] = Value(len(self.values), op, kind, operands, data)
            self.values.append(known)
        return known

    def _made(self, op: Op, kind: Kind, operands: tuple[Value, ...], data: Any = None) -> Value:
        """An operation; folded where its operands are known, tabled where they depend on one code."""
        code: Value | None = None
        for operand in operands:
            if operand.op is Op.TABLE and code in {None, operand.operands[0]}:
                (code,) = operand.operands
            elif operand.op is not Op.CONSTANT:
                return self._value(op, kind, operands, data, _key_of(op, data))
        apply = plain(op, data)
        if code is None:
            return self.constant(apply(*(operand.data for operand in operands)), kind)
        size = next(len(operand.data) for operand in operands if operand.op is Op.TABLE)
        each = [operand.data if operand.op is Op.TABLE else (operand.data,) * size for operand in operands]
        return self.table(code, kind, [apply(*values) for values in zip(*each, strict=True)])

    def pack(self, codes: Sequence[Value], sizes: Sequence[int]) -> Value:
        """One code for several: a number of mixed radix, the last code its lowest digit. sizes: how many codes each has."""
        return self._value(Op.PACK, Kind.WHOLE, tuple(codes), tuple(sizes), tuple(sizes))

    def over(self, value: Value, operands: tuple[Value, ...]) -> Value:
        """The same operation over other operands, as it is; not of a table, whose code stays what it is."""
        return self._value(value.op, value.kind, operands, value.data, _key_of(value.op, value.data))

    def apply(self, op: Op, operands: Sequence[Value], data: Any = None) -> Value:
        """An operation by its name, simplified as the method of that name does."""
        match op:
            case Op.DIVIDE_DOWN:
                return self.divide_down(operands[0], data)
            case Op.LEAST_POINTS:
                return self.points(data, Ends(*operands)).first
            case Op.MOST_POINTS:
                return self.points(data, Ends(*operands)).last
            case _:
                made: Value = getattr(self, op.value)(*operands)
                return made

    # The algebra

    def known(self, value: Value) -> bool | None:
        """Whether a truth holds, where it is a constant."""
        return value.data if value.op is Op.CONSTANT else None

    def add(self, a: Value, b: Value) -> Value:
        """A + b."""
        return self._made(Op.ADD, Kind.NUMBER, (a, b))

    def subtract(self, a: Value, b: Value) -> Value:
        """A - b."""
        return self._made(Op.SUBTRACT, Kind.NUMBER, (a, b))

    def multiply(self, a: Value, b: Value) -> Value:
        """A * b; of whole numbers with what is 0 or 1 left out."""
        kind = Kind.WHOLE if a.kind is b.kind is Kind.WHOLE else Kind.NUMBER
        if kind is Kind.WHOLE:
            for one, other in ((a, b), (b, a)):
                if one.constant and one.data in {0, 1}:
                    return other if one.data else one
        return self._made(Op.MULTIPLY, kind, (a, b))

    def divide(self, a: Value, b: Value) -> Value:
        """A / b."""
        return self._made(Op.DIVIDE, Kind.NUMBER, (a, b))

    def negate(self, a: Value) -> Value:
        """-a."""
        return self._made(Op.NEGATE, a.kind, (a,))

    def millionths(self, a: Value) -> Value:
        """Whole millionths; of whole hundredths ten thousand each, without a double."""
        if a.op is Op.HUNDREDTHS:
            return self.multiply(self.constant(10_000), a.operands[0])
        return self._made(Op.MILLIONTHS, Kind.WHOLE, (a,))

    def divide_down(self, a: Value, by: int) -> Value:
        """floor(a / by)."""
        return self._made(Op.DIVIDE_DOWN, Kind.WHOLE, (a,), by)

    def least(self, *parts: Value) -> Value:
        """The smallest."""
        return self._extreme(Op.LEAST, parts)

    def most(self, *parts: Value) -> Value:
        """The largest."""
        return self._extreme(Op.MOST, parts)

    def _extreme(self, op: Op, parts: tuple[Value, ...]) -> Value:
        distinct = tuple(dict.fromkeys(parts))
        return distinct[0] if len(distinct) == 1 else self._made(op, distinct[0].kind, distinct)

    def total(self, *parts: Value) -> Value:
        """The sum of whole numbers: constants are added up, and so are the tables of each code."""
        known = sum(part.data for part in parts if part.constant)
        tables: dict[Value, Value] = {}
        rest: list[Value] = []
        for part in parts:
            if part.op is Op.TABLE:
                (code,) = part.operands
                tables[code] = self._made(Op.TOTAL, Kind.WHOLE, (tables[code], part)) if code in tables else part
            elif not part.constant:
                rest.append(part)
        left = [*rest, *(table for table in tables.values() if not table.constant)]
        known += sum(table.data for table in tables.values() if table.constant)
        if known or not left:
            left.append(self.constant(known))
        return left[0] if len(left) == 1 else self._made(Op.TOTAL, Kind.WHOLE, tuple(left))

    def count(self, *parts: Value) -> Value:
        """How many truths hold."""
        return self._made(Op.COUNT, Kind.WHOLE, parts)

    def at_least(self, a: Value, b: Value) -> Value:
        """A >= b."""
        if a is b:
            return self.constant(value=True)
        return self._unscaled(Op.AT_LEAST, a, b) or self._made(Op.AT_LEAST, Kind.TRUTH, (a, b))

    def above(self, a: Value, b: Value) -> Value:
        """A > b."""
        if a is b:
            return self.constant(value=False)
        return self._unscaled(Op.ABOVE, a, b) or self._made(Op.ABOVE, Kind.TRUTH, (a, b))

    def equal(self, a: Value, b: Value) -> Value:
        """Whether both are the same."""
        if a is b:
            return self.constant(value=True)
        return self._unscaled(Op.EQUAL, a, b) or self._made(Op.EQUAL, Kind.TRUTH, (a, b))

    def _unscaled(self, op: Op, a: Value, b: Value) -> Value | None:
        """A comparison of a whole multiple with a constant as one of what is multiplied; None where it is none."""
        for one, other in ((a, b), (b, a)):
            if one.op is not Op.MULTIPLY or one.kind is not Kind.WHOLE or not other.constant:
                continue
            factor, whole = one.operands
            if not factor.constant or factor.data <= 0 or not isinstance(other.data, int):
                continue
            down, rest = divmod(other.data, factor.data)
            if op is Op.EQUAL:
                return self.constant(value=False) if rest else self.equal(whole, self.constant(down))
            # n f >= c where n >= ceil(c / f); n f > c where n > floor(c / f); likewise where the sides are turned.
            up = down + bool(rest)
            if one is a:
                bound = self.constant(up if op is Op.AT_LEAST else down)
                return self._made(op, Kind.TRUTH, (whole, bound))
            bound = self.constant(down if op is Op.AT_LEAST else up)
            return self._made(op, Kind.TRUTH, (bound, whole))
        return None

    def every(self, *parts: Value) -> Value:
        """Whether all hold."""
        return self._joined(Op.EVERY, parts, neutral=True)

    def some(self, *parts: Value) -> Value:
        """Whether any holds."""
        return self._joined(Op.SOME, parts, neutral=False)

    def _joined(self, op: Op, parts: tuple[Value, ...], *, neutral: bool) -> Value:
        distinct = dict.fromkeys(parts)
        if any(part.constant and part.data is not neutral for part in distinct):
            return self.constant(not neutral)
        left = tuple(part for part in distinct if not part.constant)
        if not left:
            return self.constant(neutral)
        return left[0] if len(left) == 1 else self._made(op, Kind.TRUTH, left)

    def no(self, part: Value) -> Value:
        """Whether it does not hold."""
        return part.operands[0] if part.op is Op.NO else self._made(Op.NO, Kind.TRUTH, (part,))

    def where(self, test: Value, one: Value, other: Value) -> Value:
        """One or the other; a choice by the same test inside of either is made already."""
        if test.constant:
            return one if test.data else other
        if one.op is Op.WHERE and one.operands[0] is test:
            one = one.operands[1]
        if other.op is Op.WHERE and other.operands[0] is test:
            other = other.operands[2]
        if one is other:
            return one
        if one.kind is Kind.TRUTH:
            if one.constant:
                return self.some(test, other) if one.data else self.every(self.no(test), other)
            if other.constant:
                return self.some(self.no(test), one) if other.data else self.every(test, one)
        return self._made(Op.WHERE, one.kind, (test, one, other))

    def common(self, a: Value, b: Value) -> Value:
        """What two sets share."""
        return self._made(Op.COMMON, Kind.SET, (a, b))

    def either(self, a: Value, b: Value) -> Value:
        """Two sets together."""
        for one, other in ((a, b), (b, a)):
            if one.constant and not one.data:
                return other
        return self._made(Op.EITHER, Kind.SET, (a, b))

    def meets(self, a: Value, b: Value) -> Value:
        """Whether two sets share a member."""
        return self._made(Op.MEETS, Kind.TRUTH, (a, b))

    def lowest(self, a: Value) -> Value:
        """The lowest member."""
        return self._made(Op.LOWEST, Kind.SET, (a,))

    def halved(self, a: Value) -> Value:
        """Moved down by one."""
        return self._made(Op.HALVED, Kind.SET, (a,))

    def members(self, a: Value) -> Value:
        """How many members."""
        return self._made(Op.MEMBERS, Kind.WHOLE, (a,))

    def missing(self, a: Value) -> Value:
        """Whether no text was recorded."""
        return self._made(Op.MISSING, Kind.TRUTH, (a,))

    def hundredths(self, a: Value) -> Value:
        """Whole hundredths as a number."""
        return self._made(Op.HUNDREDTHS, Kind.NUMBER, (a,))

    def points(self, shape: Shape, read: Ends[Value]) -> Ends[Value]:
        """The least and the most thousandths; one value where what is read is one."""
        operands = (read.first,) if read.second is None else (read.first, read.second)
        least = self._made(Op.LEAST_POINTS, Kind.WHOLE, operands, shape)
        return Ends(least, least if read.sure else self._made(Op.MOST_POINTS, Kind.WHOLE, operands, shape))


def _key_of(op: Op, data: Any) -> Hashable:
    """What tells the data of an operation apart: a shape is what it is, and anything else its value."""
    return id(data) if op in {Op.LEAST_POINTS, Op.MOST_POINTS} else data


def plain(op: Op, data: Any) -> Callable[..., Any]:
    """The operation over plain values."""
    match op:
        case Op.DIVIDE_DOWN:
            return lambda a: a // data
        case Op.LEAST_POINTS:
            return lambda *read: data.span(*read)[0]
        case Op.MOST_POINTS:
            return lambda *read: data.span(*read)[1]
        case _:
            return _FOLDED[op]
