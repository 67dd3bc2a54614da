"""Lowers a program to expressions of Polars, in stages.

A value that several others read is worked out once, as a column of its own: each stage of columns reads the frame and the
stages before it. Polars can find what expressions have in common by itself, but takes long over it for as many as a standard
has, and panics over some (a literal inside a shared part loses its type).

Whole numbers are doubles as long as these hold them exactly, and 128-bit integers beyond that.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable
from operator import add, and_, or_
from typing import Any, assert_never

import polars as pl
from attrs import field

from koirules.engines.columnar.codes import looked_up, packed, truth_of
from koirules.engines.columnar.curves import points_at, points_between
from koirules.engines.columnar.doubles import EXACT, balanced, divided, divided_down
from koirules.meaning.curves import Curve, Shape
from koirules.program.bounds import Bounds
from koirules.program.graph import Kind, Op, Part, Value
from koirules.program.passes import live
from koirules.values import define

_CHEAP = frozenset({Op.CONSTANT, Op.INPUT, Op.NO})
_MOST_BITS = 62
_Join = Callable[[pl.Expr, pl.Expr], pl.Expr]


@define(eq=False)
class Lowering:
    """The expressions of a program. layers: the columns of each stage.

    bounds: between which the numbers lie. sets: the type of sets of levels and places.
    """

    bounds: Bounds
    layers: list[list[pl.Expr]] = field(factory=list)
    _uses: Counter[Value] = field(factory=Counter)
    _made: dict[Value, pl.Expr] = field(factory=dict)
    _stages: dict[Value, int] = field(factory=dict)

    @classmethod
    def of(cls, outputs: Iterable[Value], bounds: Bounds) -> Lowering:
        """Ready to lower some outputs; a value that is read more than once among them is kept."""
        made = cls(bounds)
        wanted = list(outputs)
        made._uses.update(wanted)
        for value in reversed(live(wanted)):
            # What is cheap is worked out wherever it is read, and with it what it reads.
            times = made._uses[value] if _is_cheap(value) else 1
            made._uses.update(dict.fromkeys(value.operands, times))
        return made

    def column(self, output: Value) -> pl.Expr:
        """The expression of a value."""
        for value in live([output], lambda one: one in self._made):
            if value not in self._made:
                made = self._lowered(value)
                stage = max((self._stages[operand] for operand in value.operands), default=0)
                if self._uses[value] > 1 and not _is_cheap(value):
                    made, stage = self._kept(made, stage)
                self._made[value], self._stages[value] = made, stage
        return self._made[output]

    def collect(self, frame: pl.LazyFrame, results: Iterable[pl.Expr]) -> pl.LazyFrame:
        """A frame with the results, by way of the stages."""
        for layer in (*self.layers, list(results)):
            frame = frame.with_columns(layer)
        return frame

    def _kept(self, made: pl.Expr, stage: int) -> tuple[pl.Expr, int]:
        while len(self.layers) <= stage:
            self.layers.append([])
        name = f"s{stage} {len(self.layers[stage])}"
        self.layers[stage].append(made.alias(name))
        return pl.col(name), stage + 1

    # Whole numbers

    def _is_wide(self, value: Value) -> bool:
        """Whether doubles are too short for a whole number."""
        return (
            value.kind is Kind.WHOLE
            and value.op in {Op.TOTAL, Op.MULTIPLY, Op.DIVIDE_DOWN, Op.WHERE, Op.LEAST, Op.MOST}
            and max(map(abs, self.bounds.of(value))) >= EXACT
        )

    def _numbers(self, value: Value, *, wide: bool = False) -> list[pl.Expr]:
        """The operands of a value, as whole numbers of the width that is wanted for all of them."""
        found = [self._made[operand] for operand in value.operands]
        widths = [self._is_wide(operand) for operand in value.operands]
        if not (wide or any(widths)):
            return found
        return [one if width else one.cast(pl.Int128) for one, width in zip(found, widths, strict=True)]

    # Operations

    def _lowered(self, value: Value) -> pl.Expr:  # noqa: C901 - one case for each operation
        wide = self._is_wide(value)
        match value.op:
            case Op.CONSTANT:
                return self._constant(value.kind, value.data)
            case Op.INPUT:
                return _input(value)
            case Op.TABLE:
                return self._table(value)
            case Op.PACK:
                return packed(value, [self._made[code] for code in value.operands])
            case Op.ADD:
                return self._binary(value, lambda a, b: a + b)
            case Op.SUBTRACT:
                return self._binary(value, lambda a, b: a - b, lambda b, a: -b + a)
            case Op.MULTIPLY:
                return self._binary(value, lambda a, b: a * b, wide=wide)
            case Op.DIVIDE:
                a, b = value.operands
                above = self._made[b] * 0.0 + float(a.data) if a.constant else self._made[a]
                return divided(above, float(b.data) if b.constant and b.data else self._made[b])
            case Op.NEGATE:
                return -self._made[value.operands[0]]
            case Op.MILLIONTHS:
                return (self._made[value.operands[0]] * 1_000_000.0 + 0.5).floor()
            case Op.HUNDREDTHS:
                (whole,) = value.operands
                return divided(self._made[whole].cast(pl.Float64) if self._is_wide(whole) else self._made[whole], 100.0)
            case Op.DIVIDE_DOWN:
                return self._divided_down(value)
            case Op.LEAST:
                return pl.min_horizontal(self._numbers(value, wide=wide))
            case Op.MOST:
                return pl.max_horizontal(self._numbers(value, wide=wide))
            case Op.TOTAL:
                width = sum(max(map(abs, self.bounds.of(operand))) for operand in value.operands)
                return balanced(self._numbers(value, wide=wide or width >= EXACT), add)
            case Op.COUNT:
                return balanced([_counted(self._made[truth]) for truth in value.operands], add)
            case Op.AT_LEAST:
                return self._binary(value, lambda a, b: a >= b, lambda b, a: b <= a)
            case Op.ABOVE:
                return self._binary(value, lambda a, b: a > b, lambda b, a: b < a)
            case Op.EQUAL if value.operands[0].kind is Kind.TEXT:
                # A text that was not recorded is null, and as None in Python it is the same as no other.
                return self._binary(value, lambda a, b: a.eq_missing(b))
            case Op.EQUAL:
                return self._binary(value, lambda a, b: a == b)
            case Op.EVERY:
                return balanced([self._made[truth] for truth in value.operands], and_)
            case Op.SOME:
                return balanced([self._made[truth] for truth in value.operands], or_)
            case Op.NO:
                return ~self._made[value.operands[0]]
            case Op.WHERE:
                test, one, other = value.operands
                first, second = self._made[one], self._made[other]
                if wide:
                    first, second = first.cast(pl.Int128), second.cast(pl.Int128)
                return pl.when(self._made[test]).then(first).otherwise(second)
            case Op.COMMON:
                return self._binary(value, lambda a, b: a & b)
            case Op.EITHER:
                return self._binary(value, lambda a, b: a | b)
            case Op.MEETS:
                return self._binary(value, lambda a, b: (a & b) != 0)
            case Op.LOWEST:
                bits = self._made[value.operands[0]]
                return bits & -bits
            case Op.HALVED:
                return self._made[value.operands[0]] // 2
            case Op.MEMBERS:
                return self._made[value.operands[0]].bitwise_count_ones().cast(pl.Float64)
            case Op.MISSING:
                return self._made[value.operands[0]].is_null()
            case Op.LEAST_POINTS | Op.MOST_POINTS:
                return self._points(value)
            case _:
                assert_never(value.op)

    def _binary(self, value: Value, join: _Join, turned: _Join | None = None, *, wide: bool = False) -> pl.Expr:
        """An operation over two operands. turned: the same over them in the other order, where that matters.

        Polars takes a literal on the left of a column that is the same in every row for one row. So literals stand on the right.
        """
        a, b = self._numbers(value, wide=wide)
        return (turned or join)(b, a) if value.operands[0].constant else join(a, b)

    def _type_of(self, kind: Kind) -> Any:
        match kind:
            case Kind.NUMBER | Kind.WHOLE:
                return pl.Float64
            case Kind.TRUTH:
                return pl.Boolean
            case Kind.SET:
                return pl.Int64
            case Kind.TEXT:
                return pl.String
            case _:
                assert_never(kind)

    def _constant(self, kind: Kind, data: Any) -> pl.Expr:
        if kind is Kind.SET and data.bit_length() > _MOST_BITS:
            return pl.lit(data, pl.Int128)
        return pl.lit(data, self._type_of(kind))

    def _table(self, value: Value) -> pl.Expr:
        (code,) = value.operands
        if value.kind is Kind.TRUTH:
            return truth_of(code, self._made[code], value.data)
        wide = value.kind is Kind.SET and max(value.data).bit_length() > _MOST_BITS
        return looked_up(code, self._made[code], value.data, pl.Int128 if wide else self._type_of(value.kind))

    def _divided_down(self, value: Value) -> pl.Expr:
        (total,) = value.operands
        is_sum = total.op is Op.TOTAL and self._uses[total] <= 1
        parts = total.operands if is_sum else (total,)
        known = sum(part.data for part in parts if part.constant)
        left = [self._made[part] for part in parts if not part.constant]
        widths = [max(map(abs, self.bounds.of(part))) for part in parts]
        if not any(map(self._is_wide, parts)):
            made = divided_down(balanced(left, add), known, value.data, sum(widths))
            if made is not None:
                return made
        by: int = value.data
        return (self._made[total].cast(pl.Int128) // by).cast(pl.Float64)

    def _points(self, value: Value) -> pl.Expr:
        read = [self._made[operand] for operand in value.operands]
        shape: Shape = value.data
        if not isinstance(shape, Curve):
            given = [
                pl.when((read[0] & (1 << i)) != 0).then(pl.lit(float(gives))) for i, gives in enumerate(shape.gives)
            ]
            return pl.min_horizontal(given) if value.op is Op.LEAST_POINTS else pl.max_horizontal(given)
        if value.operands[0] is value.operands[-1]:
            return points_at(shape, read[0])
        return points_between(shape, *read, least=value.op is Op.LEAST_POINTS)


def _input(value: Value) -> pl.Expr:
    """The column of an input; that of a code is null where it was not recorded, until it is looked up."""
    read = value.data
    column = pl.col(read.key)
    if read.part is Part.RECORDED:
        return column.is_not_null()
    return column if read.part is Part.CODE or read.otherwise is None else column.fill_null(read.otherwise)


def _counted(truth: pl.Expr) -> pl.Expr:
    """1 where a truth holds, else 0: to choose is quicker than to cast."""
    return pl.when(truth).then(pl.lit(1.0)).otherwise(pl.lit(0.0))


def _is_cheap(value: Value) -> bool:
    """Whether it is as quick to work a value out as to read it."""
    if value.op is Op.INPUT and value.data.otherwise is not None:
        # A column of numbers whose holes are filled is not.
        return value.data.part is Part.CODE
    return value.op in _CHEAP or (value.op is Op.TABLE and value.kind is Kind.TRUTH)
