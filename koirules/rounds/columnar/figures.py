"""Figures of a batch over whole columns: the same fractions as tallies.py, rounded the same way.

The value of each row and the number of its group are put into one whole number, group first. Sorted once, these hold
every figure of a value: the rows of a group lie side by side, in the order of their values.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING

from koirules.meaning.aggregates import WHOLE
from koirules.rounds.columnar.of_nodes import NodeColumns, NodePlans
from koirules.rounds.columnar.rows import Rows
from koirules.rounds.evaluation_levels import Asked
from koirules.standard.tree import Figure, Node, meaning
from koirules.values import define, frozen

if TYPE_CHECKING:
    import polars as pl

_MOST_KEYS = 2**62
_FEW_EACH = 4


def supply_figures(
    plans: NodePlans,
    asked: Asked,
    rows: Rows,
    *,
    graded: bool,
    among: Mapping[str, Rows] | None = None,
) -> bool:
    """Put the figures that are asked for beside the rows. among: the rows kept by each round, for figures among those.

    The rows of `among` get them too, as far as a later figure over them may be of what reads them. Gives whether some row
    does not count in some figure, or counts in a group that is not known.
    """
    lacks = False
    counted = {"": rows} if among is None else {"": rows, **among}
    for i, level in enumerate(asked.levels):
        figures = [(one.key, one.source) for one in level if isinstance(one.source, Figure)]
        for asking in list(counted.values()) if i + 1 < len(asked.levels) else [rows]:
            lacks = _supply_level(plans, figures, asking, counted, graded=graded) or lacks
    return lacks


def _supply_level(
    plans: NodePlans, figures: Sequence[tuple[str, Figure]], asking: Rows, counted: Mapping[str, Rows], *, graded: bool
) -> bool:
    own = _values(plans, figures, asking, graded=graded)
    shapes = [(one.kept_by, meaning(one.of), *map(meaning, one.groups)) for _, one in figures]
    ordered: dict[tuple[str, ...], _Ordered] = {}
    lacks = any(one.lacks for one in own)
    for i, (key, figure) in enumerate(figures):
        shape = shapes[i]
        if shape not in ordered:
            ranked = any(one == shape and each.kind.own for one, (_, each) in zip(shapes, figures, strict=True))
            others = counted[figure.kept_by]
            count = own[i] if others is asking else _values(plans, [(key, figure)], others, graded=graded)[0]
            lacks = lacks or count.lacks
            ordered[shape] = _Ordered.of(own[i], count, ranked=ranked)
        asking.with_numbers(key, _divided(_figure(figure, ordered[shape])))
    return lacks


@frozen
class _Valued:
    """The value of each row in millionths, and what it has in common with others: for each expression a column of numbers.

    With each column how many numbers there can be; 0 where it holds the values themselves. Null is not recorded.
    """

    values: pl.Series
    groups: tuple[tuple[pl.Series, int], ...]

    @property
    def lacks(self) -> bool:
        """Whether the value or what it has in common with others is not recorded in some row."""
        return self.values.null_count() > 0 or any(column.null_count() > 0 for column, _ in self.groups)


def _values(plans: NodePlans, figures: Sequence[tuple[str, Figure]], rows: Rows, *, graded: bool) -> list[_Valued]:
    import polars as pl

    def ask(columns: NodeColumns) -> None:
        for i, (_, figure) in enumerate(figures):
            columns.one_value(f"v{i}", figure.of)
            for j, node in enumerate(figure.groups):
                columns.numbered(f"g{i} {j}", node)

    nodes: list[Node] = [node for _, figure in figures for node in figure.reads]
    columns = plans.get(" ".join(key for key, _ in figures), rows, nodes, ask, graded=graded)
    made = columns.collect()
    return [
        _Valued(
            made[f"v{i}"].cast(pl.Int64),
            tuple((made[f"g{i} {j}"], columns.numbers[f"g{i} {j}"]) for j in range(len(figure.groups))),
        )
        for i, (_, figure) in enumerate(figures)
    ]


def _numbered(asking: _Valued, counted: _Valued) -> tuple[pl.Series, pl.Series, int]:
    """The number of the group of each row that asks and of each that counts, and how many there are.

    Numbers are the same for both, and no more than a few for each row.
    """
    import polars as pl

    same = asking is counted
    size, every = len(asking.values), len(asking.values) + (0 if same else len(counted.values))
    number = 1
    code = pl.zeros(every, pl.Int64, eager=True)
    for (one, many), (other, _) in zip(asking.groups, counted.groups, strict=True):
        column = one if same else pl.concat([one, other])
        step = many or max(every, 1)
        code = code * step + (column if many else _ranked(column)).cast(pl.Int64)
        number *= step
        if number > _FEW_EACH * (every + _FEW_EACH):
            code, number = _ranked(code), every
    return code.head(size), code if same else code.slice(size), max(number, 1)


def _ranked(column: pl.Series) -> pl.Series:
    import polars as pl

    return column.rank("dense").cast(pl.Int64) - 1


@define(slots=False)
class _Ordered:
    """What is counted, in order: keys of group and value, where each group begins; the keys that ask.

    order: the rows in the order of their keys, where those that ask are those that count.
    """

    keys: pl.Series
    asking: pl.Series
    order: pl.Series | None
    groups: pl.Series
    starts: list[int]
    least: int
    span: int

    @classmethod
    def of(cls, asking: _Valued, counted: _Valued, *, ranked: bool) -> _Ordered:
        """Put what is counted in order; ranked: so that each row finds its own place in it."""
        import polars as pl

        asked_groups, counted_groups, number = _numbered(asking, counted)
        ends = [each for series in (asking.values, counted.values) for each in (series.min(), series.max())]
        known = [int(end) for end in ends if isinstance(end, int)]
        least, span = (min(known), max(known) - min(known) + 1) if known else (0, 1)
        if number * span >= _MOST_KEYS:
            raise pl.exceptions.ComputeError("too many groups of too different values for one number")
        asks = asked_groups * span + (asking.values - least)
        order: pl.Series | None = None
        if asking is counted and ranked:
            keys, order = _with_order(asks, number * span)
        elif asking is counted:
            keys = asks.drop_nulls().sort()
        else:
            keys = (counted_groups * span + (counted.values - least)).drop_nulls().sort()
        borders = pl.Series([group * span for group in range(number + 1)], dtype=pl.Int64)
        starts = [int(start) for start in keys.search_sorted(borders)]
        return cls(keys, asks, order, asked_groups, starts, least, span)

    def number_of(self, group: int) -> int:
        """How many a group has."""
        return self.starts[group + 1] - self.starts[group]

    def at(self, place: int) -> int:
        """The value at a place of the order."""
        return int(self.keys[place]) % self.span + self.least

    def below_and_upto(self) -> tuple[pl.Series, pl.Series]:
        """For each row that asks, how many keys are smaller than its own, and how many no greater."""
        import polars as pl

        if self.order is None:
            asked = self.asking.fill_null(0)
            return (self.keys.search_sorted(asked, "left"), self.keys.search_sorted(asked, "right"))
        place = pl.int_range(pl.len(), dtype=pl.UInt32)
        runs = pl.DataFrame({"key": self.keys}).select(
            left=pl.when(pl.col("key") != pl.col("key").shift(1)).then(place).forward_fill().fill_null(0),
            right=pl.when(pl.col("key") != pl.col("key").shift(-1)).then(place + 1).backward_fill().fill_null(pl.len()),
        )
        blank = pl.zeros(len(self.asking), pl.UInt32, eager=True)
        left, right = (blank.clone().scatter(self.order, runs[name].cast(pl.UInt32)) for name in ("left", "right"))
        return left, right

    @cached_property
    def totals(self) -> list[int]:
        """The sum of the values of each group."""
        return [total + number * self.least for number, total in zip(self._numbers, self._added(1), strict=True)]

    @cached_property
    def squares(self) -> list[int]:
        """The sum of the squares of the values of each group: (a + least)^2 = a^2 + 2 a least + least^2."""
        return [
            square + self.least * (2 * total + number * self.least)
            for number, total, square in zip(self._numbers, self._added(1), self._added(2), strict=True)
        ]

    @property
    def _numbers(self) -> list[int]:
        return [self.number_of(group) for group in range(len(self.starts) - 1)]

    def _added(self, power: int) -> list[int]:
        """The sum, over each group, of how far the values lie above the least, to a power."""
        import polars as pl

        above = (self.keys % self.span).cast(pl.Int128)
        summed = (above if power == 1 else above * above).cum_sum()
        added = [0, *(summed.to_list() if len(self.keys) else [])]
        return [added[end] - added[start] for start, end in pairwise(self.starts)]


def _with_order(asks: pl.Series, most: int) -> tuple[pl.Series, pl.Series]:
    """Keys in order, and the rows that they are of; most: no key is as large."""
    import polars as pl

    if most * len(asks) < _MOST_KEYS:
        # One number for key and row is sorted twice as fast as an order is found.
        size = len(asks)
        packed = (asks * size + pl.int_range(size, dtype=pl.Int64, eager=True)).drop_nulls().sort()
        return packed // size, packed % size
    order = asks.arg_sort(nulls_last=True).head(len(asks) - asks.null_count())
    return asks.gather(order), order


def _figure(figure: Figure, ordered: _Ordered) -> pl.Series:
    """The millionths of a figure for each row, null where it is not recorded."""
    import polars as pl

    if figure.kind.own:
        return _standings(figure, ordered)
    groups = [group for group in range(len(ordered.starts) - 1) if ordered.number_of(group) >= max(1, figure.least)]
    found: list[int | None] = [None] * (len(ordered.starts) - 1)
    for group in groups:
        found[group] = figure.kind.value(_Group(ordered, group), figure.percent, None)
    return pl.Series(found, dtype=pl.Int64).gather(ordered.groups)


@frozen
class _Group:
    """What was counted of one group (`meaning.aggregates.Counted`)."""

    ordered: _Ordered
    group: int

    @property
    def number(self) -> int:
        return self.ordered.number_of(self.group)

    def at(self, place: int) -> int:
        return self.ordered.at(self.ordered.starts[self.group] + place)

    @property
    def total(self) -> int:
        return self.ordered.totals[self.group]

    @property
    def squares(self) -> int:
        return self.ordered.squares[self.group]

    def below(self, value: int) -> int:  # noqa: ARG002
        raise AssertionError("standings are read off whole columns")

    upto = below


def _standings(figure: Figure, ordered: _Ordered) -> pl.Series:
    import polars as pl

    def per_group(values: list[int]) -> pl.Series:
        return pl.Series(values, dtype=pl.Int64).gather(ordered.groups)

    below, upto = ordered.below_and_upto()
    frame = pl.DataFrame(
        {
            "left": below.cast(pl.Int64),
            "right": upto.cast(pl.Int64),
            "start": per_group(ordered.starts[:-1]),
            "n": per_group([ordered.number_of(group) for group in range(len(ordered.starts) - 1)]),
            "known": ordered.asking.is_not_null(),
        }
    )
    twice = (pl.col("left") - pl.col("start")) + (pl.col("right") - pl.col("start"))
    made = (2 * WHOLE * twice + 2 * pl.col("n")) // (4 * pl.col("n"))
    known = pl.col("known") & (pl.col("n") >= max(1, figure.least))
    return frame.select(pl.when(known).then(made)).to_series()


def _divided(made: pl.Series) -> pl.Series:
    """Millionths as numbers: divided as in Python, and not by a reciprocal."""
    import polars as pl

    return made.cast(pl.Float64) / pl.Series([1_000_000.0], dtype=pl.Float64).new_from_index(0, len(made))
