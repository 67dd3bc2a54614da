"""Tables of codes over columns: truths as comparisons of codes, everything else looked up."""

from __future__ import annotations

from collections.abc import Sequence
from math import prod
from operator import add, or_
from typing import Any

import polars as pl

from koirules.engines.columnar.doubles import balanced
from koirules.program.graph import Kind, Op, Part, Value
from koirules.program.held import CodeColumn, NoColumn, NumberColumn

_MOST_RUNS = 3
_FEW_CODES = 256


def is_there(column: pl.Series, how: CodeColumn | NumberColumn | NoColumn) -> pl.Series:
    """In which rows of its column a trait has a reading."""
    if not isinstance(how, CodeColumn):
        return column.is_not_null()
    table = pl.Series([reading is not None for reading in how.readings], dtype=pl.Boolean)
    return table.gather(column.cast(pl.UInt32)).fill_null(value=False)


def fits_codes(readings: int) -> Any:
    """The narrowest type for so many codes and one more."""
    return pl.UInt8 if readings < _FEW_CODES - 1 else pl.UInt32


def truth_of(code: Value, column: pl.Expr, flags: Sequence[bool]) -> pl.Expr:
    """Where the code is one of those whose flag is set. column: the code, which may be null if it says what stands for that."""
    *of_codes, of_null = flags if _may_be_null(code) else (*flags, False)
    if all(of_codes) or not any(of_codes):
        # Not all flags are the same, or there would be a constant.
        return column.is_not_null() if of_codes and of_codes[0] else column.is_null()
    found = _truth_of_codes(code, column, of_codes)
    return found.fill_null(of_null) if _may_be_null(code) else found


def _may_be_null(code: Value) -> bool:
    return code.op is Op.INPUT and code.data.part is Part.CODE and code.data.otherwise is not None


def _truth_of_codes(code: Value, column: pl.Expr, flags: Sequence[bool]) -> pl.Expr:
    if code.kind is Kind.TRUTH:
        return column if flags[1] else ~column
    runs: list[tuple[int, int]] = []
    for each, flag in enumerate(flags):
        if flag and runs and runs[-1][1] == each - 1:
            runs[-1] = (runs[-1][0], each)
        elif flag:
            runs.append((each, each))
    if len(runs) > _MOST_RUNS:
        return pl.lit(pl.Series(flags)).gather(column)
    return balanced([_between(column, low, high, len(flags) - 1) for low, high in runs], or_)


def _between(column: pl.Expr, low: int, high: int, last: int) -> pl.Expr:
    if low == high:
        return column == low
    if low == 0:
        return column <= high
    if high == last:
        return column >= low
    return (column >= low) & (column <= high)


def looked_up(code: Value, column: pl.Expr, values: Sequence[Any], dtype: Any) -> pl.Expr:
    """The value of each code."""
    if code.kind is not Kind.TRUTH:
        return pl.lit(pl.Series(list(values), dtype=dtype, strict=False)).gather(without_null(code, column))
    no, yes = (pl.lit(value, dtype) for value in values[:2])
    if not _may_be_null(code):
        return pl.when(column).then(yes).otherwise(no)
    return pl.when(column).then(yes).when(column.is_null()).then(pl.lit(values[2], dtype)).otherwise(no)


def without_null(code: Value, column: pl.Expr) -> pl.Expr:
    """A code with what stands for a null in its place."""
    return column.fill_null(code.data.otherwise) if _may_be_null(code) else column


def packed(pack: Value, columns: Sequence[pl.Expr]) -> pl.Expr:
    """The number of mixed radix that several codes are."""
    kind: Any = pl.UInt8 if prod(pack.data) <= _FEW_CODES else pl.UInt16
    digits: list[pl.Expr] = []
    stride = 1
    for code, column, size in reversed(list(zip(pack.operands, columns, pack.data, strict=True))):
        if code.kind is Kind.TRUTH:
            # To choose is quicker than to cast.
            digits.append(looked_up(code, column, [digit * stride for digit in range(size)], kind))
        else:
            digit = without_null(code, column.cast(kind))
            digits.append(digit * pl.lit(stride, kind) if stride > 1 else digit)
        stride *= size
    return balanced(digits, add)
