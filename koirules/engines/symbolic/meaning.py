"""The operations table over terms of the solver: the source of each row is read as it stands.

What reads steps, options or texts is tabled instead, by running the table's own source over every reading that they can
have, so that an operator has one meaning here too.
"""

from __future__ import annotations

import ast
from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import cache
from itertools import product
from math import prod
from typing import Any

import z3
from attrs import field, frozen

from koirules.engines.symbolic.arithmetic import Arithmetic
from koirules.engines.symbolic.numbers import Num, Whole, known
from koirules.engines.symbolic.values import Bits, Cases, Logic, Pair
from koirules.standard.operations import Ends, Operation

MOST_READINGS = 200_000
"""More combinations of readings than this are not tabled."""


class TooManyReadings(Exception):  # noqa: N818 - a limit that is met, told as such
    """An operation over steps that would need too large a table."""


@frozen
class Meaning:
    """Applies operations of the table in one context."""

    arithmetic: Arithmetic
    logic: Logic
    _known: dict[tuple[Any, ...], Any] = field(factory=dict)
    _kept: list[Any] = field(factory=list)

    def applied(self, operation: Operation, operands: Sequence[Any], ranges: Sequence[Any]) -> Any:
        """An operation over operands: pairs, cases, or readings that are known. ranges: what each can be at all."""
        key = (operation.name, *(id(operand) for operand in operands))
        if key not in self._known:
            self._kept.extend(operands)
            self._known[key] = self._applied(operation, operands, ranges)
        return self._known[key]

    def _applied(self, operation: Operation, operands: Sequence[Any], ranges: Sequence[Any]) -> Any:
        if not any(isinstance(operand, Pair | Cases) for operand in operands):
            return operation.range_of(*operands)
        if any(isinstance(operand, Cases) for operand in operands) or operation.name == "steps of truth":
            return self._tabled(operation, operands)
        pairs = [operand if isinstance(operand, Pair) else _pair(operand) for operand in operands]
        names = [Ends(f"x{i}", f"x{i}" if pair.sure else f"y{i}") for i, pair in enumerate(pairs)]
        ends = {name.first: pair.first for name, pair in zip(names, pairs, strict=True)}
        ends.update({name.second: pair.second for name, pair in zip(names, pairs, strict=True)})
        shape = tuple(pair.sure for pair in pairs)
        reader = _Reader(self.arithmetic, self.logic, ends)
        first = reader.read(_syntax(operation, shape, second=False))
        if all(shape) and not operation.opens(*ranges):
            return Pair(first, first)
        second = reader.read(_syntax(operation, shape, second=True))
        return Pair(first, first if second is first else second)

    def _tabled(self, operation: Operation, operands: Sequence[Any]) -> Any:
        each = [self._readings(operand) for operand in operands]
        if prod(len(cases) for cases in each) > MOST_READINGS:
            raise TooManyReadings
        found: dict[Any, list[Any]] = {}
        for combination in product(*each):
            made = operation.range_of(*(reading for reading, _ in combination))
            found.setdefault(made, []).append(self.logic.every([when for _, when in combination]))
        if all(isinstance(made, tuple) for made in found):
            surely = self.logic.some([when for made, parts in found.items() if made[0] for when in parts])
            if all(made[0] == made[1] for made in found):
                return Pair(surely, surely)
            return Pair(surely, self.logic.some([when for made, parts in found.items() if made[1] for when in parts]))
        return Cases(tuple((made, self.logic.some(parts)) for made, parts in found.items()))

    def _readings(self, operand: Any) -> Sequence[tuple[Any, Any]]:
        match operand:
            case Cases(each):
                return each
            case Pair(first, second) if operand.sure:
                return (((True, True), first), ((False, False), self.logic.no(first)))
            case Pair(first, second):
                open_ = self.logic.every([second, self.logic.no(first)])
                return (((True, True), first), ((False, True), open_), ((False, False), self.logic.no(second)))
            case _:
                return ((operand, True),)


def _pair(reading: Any) -> Pair:
    if not isinstance(reading, tuple):
        return Pair(reading, reading)
    first, second = reading
    one = known(first) if isinstance(first, float) else first
    return Pair(one, one if first == second else known(second) if isinstance(second, float) else second)


@cache
def _syntax(operation: Operation, shape: tuple[bool, ...], *, second: bool) -> ast.expr:
    names = [Ends(f"x{i}", f"x{i}" if sure else f"y{i}") for i, sure in enumerate(shape)]
    source = operation.second if second else operation.first
    if source is None:
        raise AssertionError("an end that the operation has not")
    return ast.parse(source(*names), mode="eval").body


@frozen
class _Reader:
    """Reads the syntax of a row of the table with terms in place of its names."""

    arithmetic: Arithmetic
    logic: Logic
    ends: Mapping[str, Any]

    def read(self, node: ast.expr) -> Any:
        match node:
            case ast.Name(id=name):
                return self.ends[name]
            case ast.Constant(value=value):
                return value
            case ast.BoolOp(op=ast.And(), values=values):
                return self.logic.every([self.read(value) for value in values])
            case ast.BoolOp(op=ast.Or(), values=values):
                return self.logic.some([self.read(value) for value in values])
            case ast.UnaryOp(op=ast.Not(), operand=operand):
                return self.logic.no(self.read(operand))
            case ast.UnaryOp(op=ast.USub(), operand=operand):
                made = self.read(operand)
                return -made if isinstance(made, float) else self.arithmetic.negate(self.number(made))
            case ast.BinOp(left=left, op=sign, right=right):
                return self._calculated(sign, self.read(left), self.read(right))
            case ast.IfExp(test=test, body=body, orelse=orelse):
                return self._chosen(self.read(test), body, orelse)
            case ast.Compare(left=left, ops=signs, comparators=others):
                ends = [self.read(left), *(self.read(other) for other in others)]
                return self.logic.every([self._compared(sign, *ends[i : i + 2]) for i, sign in enumerate(signs)])
            case ast.Call(func=ast.Name(id="sum"), args=[ast.Tuple(elts=parts)]):
                return self._counted([self.read(part) for part in parts])
            case ast.Call(func=ast.Name(id=("min" | "max") as name), args=parts):
                return self.arithmetic.extreme(name, [self.number(self.read(part)) for part in parts])
            case ast.Call(func=ast.Name(id="floor"), args=[part]):
                return Whole(self.number(self.read(part)))
            case ast.Call(func=ast.Attribute(value=value, attr="bit_count")):
                return self._counted(self.read(value).truths)
            case _:
                raise AssertionError(f"the table says what the solver cannot do: {ast.unparse(node)}")

    def number(self, value: Any) -> Num:
        return value if isinstance(value, Num) else known(float(value))

    def _calculated(self, sign: ast.operator, left: Any, right: Any) -> Any:
        match sign, left, right:
            case ast.BitAnd(), Bits(truths), int(mask):
                return Bits(tuple(truth for i, truth in enumerate(truths) if mask >> i & 1))
            case ast.Add(), _, _:
                return self.arithmetic.add(self.number(left), self.number(right))
            case ast.Sub(), _, _:
                return self.arithmetic.add(self.number(left), self.number(right), -1)
            case ast.Mult(), _, _:
                return self.arithmetic.multiply(self.number(left), self.number(right))
            case ast.Div(), _, _:
                return self.arithmetic.divide(self.number(left), self.number(right))
            case _:
                raise AssertionError(sign)

    def _chosen(self, test: Any, body: ast.expr, orelse: ast.expr) -> Any:
        if isinstance(test, bool):
            # As in Python, the other branch is not looked at: it may divide by 0.
            return self.read(body if test else orelse)
        one, other = self.read(body), self.read(orelse)
        if isinstance(one, bool | z3.BoolRef):
            return self.logic.chosen(test, one, other)
        return self.arithmetic.choose(test, self.number(one), self.number(other))

    def _compared(self, sign: ast.cmpop, left: Any, right: Any) -> Any:
        match sign, left, right:
            case ast.NotEq(), Bits(truths), 0:
                return self.logic.some(truths)
            case ast.GtE(), _, _:
                return self._at_least(left, right)
            case ast.LtE(), _, _:
                return self._at_least(right, left)
            case ast.Gt(), _, _:
                return self.logic.no(self._at_least(right, left))
            case ast.Lt(), _, _:
                return self.logic.no(self._at_least(left, right))
            case ast.Eq(), _, _:
                return self.logic.every([self._at_least(left, right), self._at_least(right, left)])
            case _:
                raise AssertionError(sign)

    def _at_least(self, left: Any, right: Any) -> Any:
        arithmetic, left_bound, right_bound = self.arithmetic, _bound(left), _bound(right)
        if left_bound is not None and right_bound is not None:
            return left_bound >= right_bound
        if right_bound is not None:
            # A whole number is at least a whole bound where it was that before it was rounded down.
            return arithmetic.at_least(left.inner if isinstance(left, Whole) else left, right_bound)
        if left_bound is not None:
            if isinstance(right, Whole):
                return self.logic.no(arithmetic.at_least(right.inner, left_bound + 1))
            return arithmetic.at_least(arithmetic.negate(right), -left_bound)
        if isinstance(left, Whole) and isinstance(right, Whole):
            return arithmetic.whole(left) >= arithmetic.whole(right)
        return arithmetic.at_least(arithmetic.add(left, right, -1), Fraction(0))

    def _counted(self, conditions: Sequence[Any]) -> Num:
        sure = sum(condition is True for condition in conditions)
        context = self.arithmetic.context
        one, nothing = z3.RealVal(1, context), z3.RealVal(0, context)
        open_ = [z3.If(condition, one, nothing) for condition in conditions if not isinstance(condition, bool)]
        if not open_:
            return known(float(sure))
        term = z3.Sum([*open_, z3.RealVal(sure, context)])
        return Num(term, Fraction(sure), Fraction(sure + len(open_)), Fraction(1), Fraction(0), Fraction(0))


def _bound(value: Any) -> Fraction | None:
    """A number that is known, whole or not."""
    if isinstance(value, int | float):
        return Fraction(value)
    if isinstance(value, Num) and value.known:
        return Fraction(float(value.term))
    if isinstance(value, Whole) and value.inner.known:
        return Fraction(value.inner.term.__floor__())
    return None
