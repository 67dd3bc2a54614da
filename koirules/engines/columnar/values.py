"""What an expression is over columns, before it becomes columns itself.

Both ends of every value stand side by side, as in the operations table; where they are the same object, the value is one
value in every row. An end is a plain Python value where it is the same for every row.
"""

from __future__ import annotations

from collections.abc import Callable
from math import floor, inf, nextafter
from typing import TYPE_CHECKING, Any

from attrs import frozen

if TYPE_CHECKING:
    import polars as pl

    from koirules.engines.columnar.held import CodeColumn
    from koirules.engines.columnar.stages import Stages


@frozen(eq=False)
class Raw:
    """A column of numbers as recorded; fill: this end of the range, for the rows in which nothing was (None: no such row)."""

    column: pl.Expr
    fill: float | None = None

    def filled(self) -> pl.Expr:
        """The end as a column of doubles."""
        return self.column if self.fill is None else self.column.fill_null(self.fill)

    def value(self, recorded: float) -> float:
        """The number that one of the recorded values stands for."""
        return recorded


@frozen(eq=False)
class Hundredths:
    """A column of whole hundredths, read as a number; `most` of them at the most."""

    column: pl.Expr
    most: int
    fill: None = None

    def filled(self) -> pl.Expr:
        """The end as a column of doubles."""
        return divided(self.column, 100.0)

    def value(self, recorded: float) -> float:
        """The number that so many hundredths are."""
        return recorded / 100.0


@frozen(eq=False)
class Millionths:
    """The whole millionths of a column of numbers, which a comparison with a known number need not work out."""

    of: Raw | Hundredths
    stages: Stages

    def filled(self) -> pl.Expr:
        """The end as a column of whole doubles."""
        fill = self.of.fill
        column = self.whole()
        return column if fill is None else column.fill_null(float(floor(1_000_000.0 * fill + 0.5)))

    def whole(self) -> pl.Expr:
        """floor(1000000 x + 0.5) as whole doubles, null where nothing was recorded."""
        made: pl.Expr = self.stages.once("millionths", self.of.column, self._made)
        return made

    def _made(self) -> pl.Expr:
        column = self.of.column if isinstance(self.of, Raw) else self.of.filled()
        return (column * 1_000_000.0 + 0.5).floor()

    def at_least(self, bound: int) -> pl.Expr:
        """Where the millionths are at least so many: where the number itself is at least the least double that has them."""
        return self._compared(self._least_with(bound), lambda column, least: column >= least)

    def below(self, bound: int) -> pl.Expr:
        """Where the millionths are fewer."""
        return self._compared(self._least_with(bound), lambda column, least: column < least)

    def _compared(self, least: float, compare: Callable[[Any, float], Any]) -> pl.Expr:
        made: pl.Expr = compare(self.of.column, least)
        fill = self.of.fill
        return made if fill is None else made.fill_null(compare(fill, least))

    def _least_with(self, bound: int) -> float:
        # Both steps round, and neither ever turns the order of two numbers round: so there is one least number.
        step: Callable[[float, float], float] = (
            (lambda x, to: x + (1.0 if to > x else -1.0)) if isinstance(self.of, Hundredths) else nextafter
        )

        def has(x: float) -> bool:
            return floor(1_000_000.0 * self.of.value(x) + 0.5) >= bound

        least = float(floor(bound / 10_000)) if isinstance(self.of, Hundredths) else (bound - 0.5) / 1_000_000.0
        while has(least):
            least = step(least, -inf)
        while not has(least):
            least = step(least, inf)
        return least


End = Any
"""An end: a Python value, a column (`pl.Expr`), or one of the above."""


@frozen(eq=False)
class Pair:
    """Both ends of an expression; `second` is the very same object where every row has one value.

    Steps and texts have one end; their `second` is None where a row can have several.
    """

    first: End
    second: End

    @property
    def sure(self) -> bool:
        """Whether every row has one value."""
        return self.first is self.second


@frozen(eq=False)
class Known:
    """A value that is the same for every row: a reading."""

    reading: Any


@frozen(eq=False)
class Coded:
    """An expression that reads one column of codes: the reading that it has for each code.

    The last of `readings` is that of a row in which nothing was recorded.
    """

    column: CodeColumn
    readings: tuple[Any, ...]


Value = Pair | Known | Coded


def divided(column: pl.Expr, by: Any) -> pl.Expr:
    """A quotient, as Python rounds it.

    By a known number Polars multiplies with its reciprocal, which is one bit off in every eighth quotient; a divisor that
    is a column is divided by.
    """
    if isinstance(by, int | float):
        return column / (column * 0.0 + float(by))
    made: pl.Expr = column / by
    return made


def filled(end: End) -> Any:
    """An end as a Python value or a column."""
    return end.filled() if isinstance(end, Raw | Hundredths | Millionths) else end
