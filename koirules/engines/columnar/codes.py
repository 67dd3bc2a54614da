"""What reads one column of codes alone: conditions as comparisons of codes, everything else as a table."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from koirules.engines.columnar.held import CodeColumn
from koirules.engines.columnar.meaning import some
from koirules.engines.columnar.values import Coded, Known, Pair, Value
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, Type

if TYPE_CHECKING:
    import polars as pl

_MOST_RUNS = 3
_MOST_BITS = 62
_FEW_CODES = 256


def spread(value: Value, kind: Type) -> Pair:
    """Both ends of a value as columns or Python values."""
    match value:
        case Pair():
            return value
        case Known(reading=reading):
            one, other, *_ = reading if isinstance(reading, tuple) else (reading, reading if _is_one(reading) else None)
            return Pair(one, one) if one == other else Pair(one, other)
        case Coded():
            return _spread(value, kind)


def _spread(value: Coded, kind: Type) -> Pair:
    held = value.column
    # Without holes the last reading, that of a hole, is no row's.
    rows = value.readings if held.holes else value.readings[:-1]
    same = all(isinstance(reading, tuple) and reading[0] == reading[1] for reading in rows)
    match kind:
        case Truth():
            surely, possibly = zip(*value.readings, strict=True)
            first = where(held, surely)
            return Pair(first, first if same else where(held, possibly))
        case Numeric():
            low, high = zip(*value.readings, strict=True)
            first = looked_up(held, [float(end) for end in low])
            return Pair(first, first if same else looked_up(held, [float(end) for end in high]))
        case Steps():
            first = _bits(held, value.readings, len(kind.words))
            return Pair(first, first if _are_one(value) else None)
        case PlaceWords():
            surely, possibly, *_ = zip(*value.readings, strict=True)
            first = _bits(held, surely, len(kind.words))
            return Pair(first, first if same else _bits(held, possibly, len(kind.words)))
        case TextLabel():
            first = looked_up(held, value.readings)
            return Pair(first, first if _are_one(value) else None)
        case PatternMap() | ColourList():
            # A term may be a map or colour readings; what it says is read by nothing but `is recorded`.
            return Pair(
                looked_up(held, [None if reading is None else str(reading) for reading in value.readings]), None
            )


def _are_one(value: Coded) -> bool:
    """Whether every row has one step, or a text."""
    rows = value.readings if value.column.holes else value.readings[:-1]
    return all(_is_one(reading) for reading in rows)


def _is_one(reading: Any) -> bool:
    """Whether bits are of one step; whether there is a text."""
    return reading is not None and (not isinstance(reading, int) or reading.bit_count() == 1)


def _bits(held: CodeColumn, bits: Sequence[int], steps: int) -> Any:
    import polars as pl

    return looked_up(held, bits, pl.Int64 if steps <= _MOST_BITS else pl.Int128)


def where(held: CodeColumn, flags: Sequence[bool]) -> Any:
    """Where the code is one of those whose flag is set; the last flag is that of a null."""
    codes, of_null = flags[: len(held.readings)], flags[-1]
    if all(flags) or not any(flags):
        return flags[0]
    if not held.holes and (all(codes) or not any(codes)):
        return codes[0]
    found = _where_coded(held, codes)
    if isinstance(found, bool):
        return held.column.is_not_null() if found else held.column.is_null()
    return found.fill_null(of_null) if held.holes else found


def _where_coded(held: CodeColumn, flags: Sequence[bool]) -> Any:
    import polars as pl

    column, size = held.column, len(flags)
    if all(flags) or not any(flags):
        return bool(size) and flags[0]
    if held.truth:
        return column if flags[1] else ~column
    runs: list[tuple[int, int]] = []
    for code, flag in enumerate(flags):
        if flag and runs and runs[-1][1] == code - 1:
            runs[-1] = (runs[-1][0], code)
        elif flag:
            runs.append((code, code))
    if len(runs) > _MOST_RUNS:
        return pl.lit(pl.Series(flags)).gather(column)
    return some([_between(column, low, high, size - 1) for low, high in runs])


def _between(column: pl.Expr, low: int, high: int, last: int) -> pl.Expr:
    if low == high:
        return column == low
    if low == 0:
        return column <= high
    if high == last:
        return column >= low
    return (column >= low) & (column <= high)


def looked_up(held: CodeColumn, values: Sequence[Any], dtype: Any = None) -> Any:
    """The value of each code; the last value is that of a null."""
    import polars as pl

    used = values if held.holes else values[: len(held.readings)]
    if not used or all(value == used[0] for value in used):
        return values[-1] if not used else used[0]
    if held.truth:
        column = held.column
        known = pl.when(column).then(pl.lit(values[1], dtype))
        if not held.holes or values[-1] == values[0]:
            return known.otherwise(pl.lit(values[0], dtype))
        return known.when(column.is_null()).then(pl.lit(values[-1], dtype)).otherwise(pl.lit(values[0], dtype))
    column = held.column.fill_null(len(held.readings)) if held.holes else held.column
    return pl.lit(pl.Series(list(used), dtype=dtype, strict=True)).gather(column)


def fits_codes(readings: int) -> Any:
    """The narrowest type for so many codes and one more."""
    import polars as pl

    return pl.UInt8 if readings < _FEW_CODES - 1 else pl.UInt32
