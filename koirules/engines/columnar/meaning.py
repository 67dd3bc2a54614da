"""The operations table over columns: the source of each row is read as it stands, and done to columns instead of numbers.

So an operator has one meaning: what Python would work out for a record is worked out here for a whole column.
"""

from __future__ import annotations

import ast
from collections.abc import Callable, Mapping, Sequence
from functools import cache, reduce
from typing import TYPE_CHECKING, Any

from koirules.engines.columnar.values import End, Millionths, Pair, divided, filled
from koirules.standard.operations import Ends, Operation

if TYPE_CHECKING:
    import polars as pl


def applied(operation: Operation, operands: Sequence[Pair], ranges: Sequence[Any]) -> Pair:
    """An operation over columns. ranges: what each operand can be at all, which may show that the result is one value."""
    names = [Ends(f"x{i}", f"x{i}" if pair.sure else f"y{i}") for i, pair in enumerate(operands)]
    ends = {name.first: pair.first for name, pair in zip(names, operands, strict=True)}
    ends.update({name.second: pair.second for name, pair in zip(names, operands, strict=True)})
    shape = tuple(pair.sure for pair in operands)
    first = _Reader(ends).read(_syntax(operation, shape, second=False))
    if all(shape) and not operation.opens(*ranges):
        return Pair(first, first)
    if operation.second is None:
        return Pair(first, None)
    return Pair(first, _Reader(ends).read(_syntax(operation, shape, second=True)))


@cache
def _syntax(operation: Operation, shape: tuple[bool, ...], *, second: bool) -> ast.expr:
    names = [Ends(f"x{i}", f"x{i}" if sure else f"y{i}") for i, sure in enumerate(shape)]
    source = operation.second if second else operation.first
    if source is None:
        raise AssertionError("an end that the operation has not")
    return ast.parse(source(*names), mode="eval").body


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


class _Reader:
    """Reads the syntax of a row of the table with columns in place of its names."""

    def __init__(self, ends: Mapping[str, End]) -> None:
        self.ends = ends

    def read(self, node: ast.expr) -> Any:
        match node:
            case ast.Name(id=name):
                return self.ends[name]
            case ast.Constant(value=value):
                return value
            case ast.BoolOp(op=ast.And(), values=values):
                return every([self.column(value) for value in values])
            case ast.BoolOp(op=ast.Or(), values=values):
                return some([self.column(value) for value in values])
            case ast.UnaryOp(op=ast.Not(), operand=operand):
                return no(self.column(operand))
            case ast.UnaryOp(op=ast.USub(), operand=operand):
                return -self.column(operand)
            case ast.UnaryOp(op=ast.Invert(), operand=operand):
                return ~self.column(operand)
            case ast.BinOp(left=left, op=sign, right=right):
                return _calculated(sign, self.column(left), self.column(right))
            case ast.IfExp(test=test, body=body, orelse=orelse):
                made = self.column(test)
                if isinstance(made, bool):
                    # As in Python, the other branch is not looked at: it may divide by 0.
                    return self.column(body if made else orelse)
                return chosen(made, self.column(body), self.column(orelse))
            case ast.Compare(left=left, ops=signs, comparators=others):
                ends = [self.read(left), *(self.read(other) for other in others)]
                return every([_compared(sign, *ends[i : i + 2]) for i, sign in enumerate(signs)])
            case ast.Call(func=ast.Name(id="sum"), args=[ast.Tuple(elts=parts)]):
                return total([_counted(self.column(part)) for part in parts])
            case ast.Call(func=ast.Name(id=("min" | "max") as name), args=parts):
                return _extreme(name, [self.column(part) for part in parts])
            case ast.Call(func=ast.Name(id="floor"), args=[part]):
                return self.column(part).floor()
            case ast.Call(func=ast.Attribute(value=value, attr="bit_count")):
                import polars as pl

                return self.column(value).bitwise_count_ones().cast(pl.Float64)
            case _:
                raise AssertionError(f"the table says what columns cannot do: {ast.unparse(node)}")

    def column(self, node: ast.expr) -> Any:
        """A node as a Python value or a column."""
        return filled(self.read(node))


def _calculated(sign: ast.operator, left: Any, right: Any) -> Any:
    match sign:
        case ast.Add():
            return left + right
        case ast.Sub():
            return left - right
        case ast.Mult():
            return left * right
        case ast.Div():
            if isinstance(left, int | float) and isinstance(right, int | float):
                # A divisor that is 0 in every row is guarded in every row.
                return left / right if right else 0.0
            return left / right if isinstance(left, int | float) else divided(left, right)
        case ast.BitAnd():
            return left & right
        case ast.BitOr():
            return left | right
        case ast.RShift():
            return left // 2**right
        case _:
            raise AssertionError(sign)


def _compared(sign: ast.cmpop, left: End, right: End) -> Any:
    if isinstance(left, Millionths) and isinstance(right, int):
        return _at_bound(sign, left, right)
    if isinstance(right, Millionths) and isinstance(left, int):
        return _at_bound(_TURNED[type(sign)](), right, left)
    a, b = filled(left), filled(right)
    match sign:
        case ast.GtE():
            return a >= b
        case ast.Gt():
            return a > b
        case ast.LtE():
            return a <= b
        case ast.Lt():
            return a < b
        case ast.Eq():
            return _same(a, b)
        case ast.NotEq():
            return no(_same(a, b))
        case ast.Is() if b is None:
            return a is None if not _is_column(a) else a.is_null()
        case _:
            raise AssertionError(sign)


_TURNED = {ast.GtE: ast.LtE, ast.Gt: ast.Lt, ast.LtE: ast.GtE, ast.Lt: ast.Gt, ast.Eq: ast.Eq}


def _at_bound(sign: ast.cmpop, end: Millionths, bound: int) -> pl.Expr:
    match sign:
        case ast.GtE():
            return end.at_least(bound)
        case ast.Gt():
            return end.at_least(bound + 1)
        case ast.Lt():
            return end.below(bound)
        case ast.LtE():
            return end.below(bound + 1)
        case ast.Eq():
            return end.at_least(bound) & end.below(bound + 1)
        case _:
            raise AssertionError(sign)


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
