"""Splitting by hole: what depends on one column alone is worked out as if that column had no holes.

Why: where a number was not recorded, it is anything of its range, so that both ends of all that depends on it would have to be
worked out. But in a row without it, what depends on nothing else is the same for every such row. So it is worked out once, of
a stand-in for the number (the low end of its range), and what comes out is replaced in the rows without it, as far as it is
something else. In a sum nothing is replaced: a table adds what the hole changes, and the tables of all holes are looked up as one
(`sums`).
"""

from __future__ import annotations

from typing import Any

from koirules.program.graph import Kind, Op, Part, Read, Value, plain
from koirules.program.unrounded import UnroundedTracer
from koirules.values import frozen


@frozen(eq=False)
class _Cases:
    """A value by whether one column has a hole: what it is where there is none, and what it is in a hole.

    there: whether the row has no hole. there_value: of the stand-in in a row with a hole. stand_in: what comes of that.
    """

    there: Value
    there_value: Value
    stand_in: Any
    in_hole: Any


class HoleTracer(UnroundedTracer):
    """A tracer that splits by hole whatever depends on one column with holes alone."""

    def __init__(self) -> None:
        super().__init__()
        self._cases: dict[Value, _Cases] = {}

    def number_with_holes(self, column: str, low: float, high: float) -> tuple[Value, Value]:
        """Both ends of a column of numbers, which are anything from low to high in its holes."""
        there = self.input(Kind.TRUTH, Read(column, Part.RECORDED))
        one = self.input(Kind.NUMBER, Read(column, Part.ONE, low))
        self._cases.setdefault(one, _Cases(there, one, low, low))
        return one, self._chosen(there, one, low, high)

    def there_value(self, value: Value) -> Value:
        """What a value is where its column has no hole; the value itself, of one that is not split."""
        cases = self._cases.get(value)
        return value if cases is None else cases.there_value

    def _chosen(self, there: Value, value: Value, stand_in: Any, in_hole: Any) -> Value:
        """A value where there is no hole, and what it is in a hole."""
        if value.constant and value.kind is not Kind.TRUTH:
            return self.table(there, value.kind, (in_hole, value.data))
        made = value if stand_in == in_hole else self.where(there, value, self.constant(in_hole, value.kind))
        if not value.constant:
            self._cases.setdefault(made, _Cases(there, value, stand_in, in_hole))
        return made

    def _made(self, op: Op, kind: Kind, operands: tuple[Value, ...], data: Any = None) -> Value:
        cases = [self._cases.get(operand) for operand in operands]
        holes = {case.there for case in cases if case is not None}
        if len(holes) != 1 or any(case is None and not one.constant for one, case in zip(operands, cases, strict=True)):
            return super()._made(op, kind, operands, data)
        (there,) = holes
        found = [
            (one, one.data, one.data) if case is None else (case.there_value, case.stand_in, case.in_hole)
            for one, case in zip(operands, cases, strict=True)
        ]
        values, stand_ins, in_holes = zip(*found, strict=True)
        stand_in, in_hole = plain(op, data)(*stand_ins), plain(op, data)(*in_holes)
        if values == operands:
            made = super()._made(op, kind, operands, data)
            self._cases.setdefault(made, _Cases(there, made, stand_in, in_hole))
            return made
        return self._chosen(there, self.apply(op, values, data), stand_in, in_hole)

    def total(self, *parts: Value) -> Value:
        """The sum of whole numbers; what holes change of it is a table of each hole."""
        opened: list[Value] = []
        for part in parts:
            cases = self._cases.get(part)
            if cases is None or cases.stand_in == cases.in_hole:
                opened.append(part)
            else:
                lack = cases.in_hole - cases.stand_in
                opened += [cases.there_value, self.table(cases.there, Kind.WHOLE, (lack, 0))]
        return super().total(*opened)
