"""Which traits a row lacks, as one number a row: what the lack of each adds is then one table for all of them.

A sum is first worked out as if the rows without a trait had some value of it; the table says what is wrong with that.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from attrs import define, field

from koirules.engines.columnar.meaning import balanced
from koirules.engines.columnar.stages import Stages

if TYPE_CHECKING:
    import polars as pl

_TOGETHER = 8
"""So many traits make one number of eight bits, and a table of 256 rows."""


@define
class Missing:
    """The columns that have holes, by eights; each eight is one column of numbers."""

    stages: Stages
    columns: tuple[str, ...]
    _groups: dict[int, pl.Expr] = field(factory=dict)

    def total(self, amounts: Mapping[str, int]) -> list[Any]:
        """What the missing traits of a row add up to. amounts: by column, what its lack adds."""
        import polars as pl

        parts: list[Any] = []
        for group in range(0, len(self.columns), _TOGETHER):
            names = self.columns[group : group + _TOGETHER]
            each = [amounts.get(name, 0) for name in names]
            if any(each):
                sums = [
                    float(sum(amount for bit, amount in enumerate(each) if code >> bit & 1))
                    for code in range(1 << len(each))
                ]
                parts.append(pl.lit(pl.Series(sums)).gather(self._group(group, names)))
        return parts

    def _group(self, group: int, names: tuple[str, ...]) -> pl.Expr:
        import polars as pl

        known = self._groups.get(group)
        if known is None:
            bits = [
                pl.when(pl.col(name).is_null()).then(pl.lit(1 << bit, pl.UInt8)).otherwise(pl.lit(0, pl.UInt8))
                for bit, name in enumerate(names)
            ]
            known = self._groups[group] = self.stages.keep(balanced(bits, lambda a, b: a | b))
        return known
