"""Columns that are worked out once and read many times, in the order in which they can be.

Polars can find what expressions have in common by itself, but takes long over it for as many as a standard has, and
panics over some (a literal inside a shared part loses its type). So what is shared is named here.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING, Any

from attrs import define, field

if TYPE_CHECKING:
    import polars as pl


@define
class Stages:
    """Named columns by stage: each reads the frame and the stages before its own."""

    layers: list[list[pl.Expr]] = field(factory=list)
    _levels: dict[str, int] = field(factory=dict)
    _kept: dict[int, tuple[Any, pl.Expr]] = field(factory=dict)
    _made: dict[tuple[str, int], tuple[Any, Any]] = field(factory=dict)

    def keep(self, end: Any) -> Any:
        """The column in which an expression is kept; anything that is no expression stays what it is."""
        import polars as pl

        if not isinstance(end, pl.Expr) or end.meta.is_column():
            return end
        known = self._kept.get(id(end))
        if known is None:
            roots = end.meta.root_names()
            if not roots:
                return end
            level = max(self._levels.get(name, 0) for name in roots)
            name = f"s{len(self._levels)}"
            self._levels[name] = level + 1
            while len(self.layers) <= level:
                self.layers.append([])
            self.layers[level].append(end.alias(name))
            known = self._kept[id(end)] = (end, pl.col(name))
        return known[1]

    def once(self, what: str, of: Any, make: Callable[[], Any]) -> Any:
        """What is made of an object, the first time that it is asked for, and kept."""
        known = self._made.get((what, id(of)))
        if known is None:
            known = self._made[what, id(of)] = (of, self.keep(make()))
        return known[1]

    def collect(self, frame: pl.LazyFrame, results: Iterable[pl.Expr]) -> pl.LazyFrame:
        """A frame with the results, by way of the stages."""
        for layer in (*self.layers, list(results)):
            frame = frame.with_columns(layer)
        return frame
