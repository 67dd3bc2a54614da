"""The value algebra over columns: what Python would work out for a record is worked out here for a whole column."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from enum import Enum
from functools import reduce
from typing import TYPE_CHECKING, Any, assert_never

from koirules.engines.columnar.values import End, Millionths, Pair, divided, filled
from koirules.meaning.algebra import PLAIN, Ends, OperatorAlgebra
from koirules.meaning.operators import Operation

if TYPE_CHECKING:
    import polars as pl


def applied(operation: Operation, operands: Sequence[Pair], ranges: Sequence[Any]) -> Pair:
    """An operation over columns. ranges: what each operand can be at all, which may show that the result is one value."""
    made = operation.over(COLUMNS, [Ends(pair.first, pair.second) for pair in operands], ranges)
    return Pair(made.first, made.second)


def every(parts: Sequence[Any]) -> Any:
    """Where all hold; parts that are known are left out, or decide."""
    return _joined(parts, neutral=True, join=lambda a, b: a & b)


def some(parts: Sequence[Any]) -> Any:
    """Where any holds."""
    return _joined(parts, neutral=False, join=lambda a, b: a | b)


def no(part: Any) -> Any:
    """Where it does not hold."""
    return not part if isinstance(part, bool) else ~part


def total(parts: Sequence[Any]) -> Any:
    """A sum, as a balanced tree: Polars plans deep ones in quadratic time. Known parts are added up first."""
    known = sum(part for part in parts if isinstance(part, int | float))
    columns = [part for part in parts if not isinstance(part, int | float)]
    if not columns:
        return known
    return balanced(columns, lambda a, b: a + b) + known if known else balanced(columns, lambda a, b: a + b)


def balanced(parts: Sequence[Any], join: Callable[[Any, Any], Any]) -> Any:
    """Parts joined two by two, and these again, until one is left."""
    level = list(parts)
    while len(level) > 1:
        pairs = [join(level[i], level[i + 1]) for i in range(0, len(level) - 1, 2)]
        level = pairs + level[len(level) - len(level) % 2 :]
    return level[0]


def chosen(test: Any, one: Any, other: Any) -> Any:
    """One value where the test holds, else the other."""
    import polars as pl

    if isinstance(test, bool):
        return one if test else other
    return pl.when(test).then(_literal(one)).otherwise(_literal(other))


def _literal(value: Any) -> Any:
    import polars as pl

    return value if isinstance(value, pl.Expr) else pl.lit(value)


def _joined(parts: Sequence[Any], *, neutral: bool, join: Callable[[Any, Any], Any]) -> Any:
    columns = [part for part in parts if not isinstance(part, bool)]
    if any(part is not neutral for part in parts if isinstance(part, bool)):
        return not neutral
    return balanced(columns, join) if columns else neutral


class _Columns:
    """The value algebra over columns, and over Python values that stand for a column that is the same in every row."""

    def constant(self, value: Any) -> Any:
        return value

    def bits(self, value: int) -> Any:
        return value

    def known(self, value: Any) -> bool | None:
        return value if isinstance(value, bool) else None

    def add(self, a: End, b: End) -> Any:
        return filled(a) + filled(b)

    def subtract(self, a: End, b: End) -> Any:
        return filled(a) - filled(b)

    def multiply(self, a: End, b: End) -> Any:
        return filled(a) * filled(b)

    def divide(self, a: End, b: End) -> Any:
        left, right = filled(a), filled(b)
        if isinstance(left, int | float):
            return left / (right or 1.0) if isinstance(right, int | float) else left / right
        return divided(left, right)

    def negate(self, a: End) -> Any:
        return -filled(a)

    def millionths(self, a: End) -> Any:
        number = filled(a)
        return PLAIN.millionths(number) if not _is_column(number) else (1_000_000.0 * number + 0.5).floor()

    def least(self, *parts: End) -> Any:
        return _extreme("min", [filled(part) for part in parts])

    def most(self, *parts: End) -> Any:
        return _extreme("max", [filled(part) for part in parts])

    def count(self, *parts: End) -> Any:
        return total([_counted(part) for part in parts])

    def at_least(self, a: End, b: End) -> Any:
        return _compared(Comparison.AT_LEAST, a, b)

    def above(self, a: End, b: End) -> Any:
        return _compared(Comparison.ABOVE, a, b)

    def equal(self, a: End, b: End) -> Any:
        return _compared(Comparison.EQUAL, a, b)

    def every(self, *parts: Any) -> Any:
        return every(parts)

    def some(self, *parts: Any) -> Any:
        return some(parts)

    def no(self, part: Any) -> Any:
        return no(part)

    def where(self, test: Any, one: End, other: End) -> Any:
        return chosen(test, filled(one), filled(other))

    def common(self, a: Any, b: Any) -> Any:
        return a & b

    def either(self, a: Any, b: Any) -> Any:
        return a | b

    def meets(self, a: Any, b: Any) -> Any:
        return no(_same(a & b, 0))

    def lowest(self, a: Any) -> Any:
        return a & -a

    def halved(self, a: Any) -> Any:
        return a // 2

    def members(self, a: Any) -> Any:
        import polars as pl

        return a.bitwise_count_ones().cast(pl.Float64) if _is_column(a) else a.bit_count()

    def missing(self, a: Any) -> Any:
        return a.is_null() if _is_column(a) else a is None


COLUMNS: OperatorAlgebra[Any] = _Columns()


class Comparison(Enum):
    """How two ends are compared."""

    AT_LEAST = ">="
    ABOVE = ">"
    EQUAL = "=="
    AT_MOST = "<="
    BELOW = "<"


_TURNED = {
    Comparison.AT_LEAST: Comparison.AT_MOST,
    Comparison.ABOVE: Comparison.BELOW,
    Comparison.EQUAL: Comparison.EQUAL,
    Comparison.AT_MOST: Comparison.AT_LEAST,
    Comparison.BELOW: Comparison.ABOVE,
}


def _compared(how: Comparison, left: End, right: End) -> Any:
    if isinstance(left, Millionths) and isinstance(right, int):
        return _at_bound(how, left, right)
    if isinstance(right, Millionths) and isinstance(left, int):
        return _at_bound(_TURNED[how], right, left)
    a, b = filled(left), filled(right)
    match how:
        case Comparison.AT_LEAST:
            return a >= b
        case Comparison.ABOVE:
            return a > b
        case Comparison.EQUAL:
            return _same(a, b)
        case Comparison.AT_MOST:
            return a <= b
        case Comparison.BELOW:
            return a < b
        case _:
            assert_never(how)


def _at_bound(how: Comparison, end: Millionths, bound: int) -> pl.Expr:
    match how:
        case Comparison.AT_LEAST:
            return end.at_least(bound)
        case Comparison.ABOVE:
            return end.at_least(bound + 1)
        case Comparison.BELOW:
            return end.below(bound)
        case Comparison.AT_MOST:
            return end.below(bound + 1)
        case Comparison.EQUAL:
            return end.at_least(bound) & end.below(bound + 1)
        case _:
            assert_never(how)


def _same(a: Any, b: Any) -> Any:
    if not _is_column(a) and not _is_column(b):
        return a == b
    # A text that was not recorded is null, and as None in Python it is the same as no other.
    return a.eq_missing(b) if _is_column(a) else b.eq_missing(a)


def _is_column(value: Any) -> bool:
    import polars as pl

    return isinstance(value, pl.Expr)


def _counted(condition: Any) -> Any:
    import polars as pl

    if isinstance(condition, bool):
        return float(condition)
    return pl.when(condition).then(pl.lit(1.0)).otherwise(pl.lit(0.0))


def _extreme(name: str, parts: Sequence[Any]) -> Any:
    import polars as pl

    if not any(_is_column(part) for part in parts):
        return reduce(min if name == "min" else max, parts)
    return (pl.min_horizontal if name == "min" else pl.max_horizontal)([_literal(part) for part in parts])
