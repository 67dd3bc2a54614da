"""Columns of codes packed into few: what each of several columns adds to a sum is then one table for all of them.

A pack is a column of numbers, of which each stands for one code of every column in it (a mixed radix); a hole counts as one
more code. Looking up one sum is as dear as looking up one summand.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from itertools import product
from typing import TYPE_CHECKING, Any

from attrs import define, field, frozen

from koirules.engines.columnar.held import CodeColumn
from koirules.engines.columnar.meaning import balanced
from koirules.engines.columnar.stages import Stages

if TYPE_CHECKING:
    import polars as pl

_MOST_CODES = 720
"""A pack stands for no more combinations: its tables are made anew for each plan, and should stay in the nearest cache."""


@frozen
class _Pack:
    columns: tuple[CodeColumn, ...]

    @property
    def sizes(self) -> tuple[int, ...]:
        return tuple(_size(column) for column in self.columns)


def _size(column: CodeColumn) -> int:
    return len(column.readings) + column.holes


@define
class Packs:
    """The packs of the columns that any sum reads."""

    stages: Stages
    _packs: list[_Pack] = field(factory=list)
    _codes: dict[int, pl.Expr] = field(factory=dict)

    def pack(self, columns: Iterable[CodeColumn]) -> None:
        """Put columns together, the first that fit, as long as a pack is not too large."""
        together: list[CodeColumn] = []
        size = 1
        for column in columns:
            if together and size * _size(column) > _MOST_CODES:
                self._packs.append(_Pack(tuple(together)))
                together, size = [], 1
            together.append(column)
            size *= _size(column)
        if together:
            self._packs.append(_Pack(tuple(together)))

    def total(self, tables: Mapping[str, Sequence[int]]) -> list[Any]:
        """What columns add up to. tables: by column, what each code adds, and last a hole."""
        import polars as pl

        parts: list[Any] = []
        for number, pack in enumerate(self._packs):
            each = [
                tuple(tables.get(column.name, (0,) * (_size(column) + 1)))[: _size(column)] for column in pack.columns
            ]
            sums = [float(sum(values)) for values in product(*each)]
            if any(value != sums[0] for value in sums):
                parts.append(pl.lit(pl.Series(sums)).gather(self._code(number)))
            else:
                parts.append(sums[0])
        return parts

    def _code(self, number: int) -> pl.Expr:
        import polars as pl

        known = self._codes.get(number)
        if known is None:
            pack, digits, stride = self._packs[number], [], 1
            for column, size in zip(reversed(pack.columns), reversed(pack.sizes), strict=True):
                digit = column.column.fill_null(len(column.readings)) if column.holes else column.column
                digit = digit.cast(pl.UInt16)
                digits.append(digit * pl.lit(stride, pl.UInt16) if stride > 1 else digit)
                stride *= size
            known = self._codes[number] = self.stages.keep(balanced(digits, lambda a, b: a + b))
        return known
