"""Figures of a batch over whole columns: the same fractions as tallies.py, rounded the same way.

The value of each row and the number of its group are put into one whole number, group first. Sorted once, these hold
every figure of a value: the rows of a group lie side by side, in the order of their values.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from typing import TYPE_CHECKING

from attrs import define, frozen

from koirules.grading.beside import Asked
from koirules.grading.columns.of_nodes import NodeColumns, NodePlans, Rows
from koirules.grading.tallies import half_up
from koirules.standard.tree import Figure, Node, meaning

if TYPE_CHECKING:
    import polars as pl

_WHOLE = 100 * 1_000_000
_MOST_KEYS = 2**62


def supply_figures(
    plans: NodePlans,
    asked: Asked,
    rows: Rows,
    *,
    graded: bool,
    among: Mapping[str, Rows] | None = None,
) -> None:
    """Put the figures that are asked for beside the rows. among: the rows kept by each round, for figures among those."""
    for level in asked.levels:
        figures = [(one.key, one.source) for one in level if isinstance(one.source, Figure)]
        own = _values(plans, figures, rows, graded=graded)
        ordered: dict[tuple[str, ...], _Ordered] = {}
        for i, (key, figure) in enumerate(figures):
            kept = own
            if figure.kept_by and among is not None:
                kept = _values(plans, [(key, figure)], among[figure.kept_by], graded=graded)
            shape = (figure.kept_by, meaning(figure.of), *map(meaning, figure.same))
            if shape not in ordered:
                ordered[shape] = _Ordered.of(own[i], kept[i if kept is own else 0])
            rows.with_numbers(key, _divided(_figure(figure, ordered[shape])))


@frozen
class _Valued:
    """The value of each row in millionths and the number of its group, null where it has none; how many groups there are."""

    values: pl.Series
    groups: pl.Series
    number: int


def _values(plans: NodePlans, figures: Sequence[tuple[str, Figure]], rows: Rows, *, graded: bool) -> list[_Valued]:
    import polars as pl

    def ask(columns: NodeColumns) -> None:
        for i, (_, figure) in enumerate(figures):
            columns.one_value(f"v{i}", figure.of)
            columns.group(f"g{i}", figure.same)

    nodes: list[Node] = [node for _, figure in figures for node in figure.reads]
    columns = plans.get(" ".join(key for key, _ in figures), rows, nodes, ask, graded=graded)
    made = columns.collect()
    return [
        _Valued(made[f"v{i}"].cast(pl.Int64), made[f"g{i}"].cast(pl.Int64), columns.numbers(f"g{i}"))
        for i in range(len(figures))
    ]


@define
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
    def of(cls, asking: _Valued, counted: _Valued) -> _Ordered:
        import polars as pl

        ends = [each for series in (asking.values, counted.values) for each in (series.min(), series.max())]
        known = [int(end) for end in ends if isinstance(end, int)]
        least, span = (min(known), max(known) - min(known) + 1) if known else (0, 1)
        number = max(asking.number, counted.number)
        if number * span >= _MOST_KEYS:
            raise OverflowError("too many groups of too different values")
        asks = asking.groups * span + (asking.values - least)
        order: pl.Series | None = None
        if asking is counted:
            order = asks.arg_sort(nulls_last=True).head(len(asks) - asks.null_count())
            keys = asks.gather(order)
        else:
            keys = (counted.groups * span + (counted.values - least)).drop_nulls().sort()
        borders = pl.Series([group * span for group in range(number + 1)], dtype=pl.Int64)
        starts = [int(start) for start in keys.search_sorted(borders)]
        return cls(keys, asks, order, asking.groups, starts, least, span)

    def number_of(self, group: int) -> int:
        """How many a group has."""
        return self.starts[group + 1] - self.starts[group]

    def at(self, places: Sequence[int]) -> list[int]:
        """The values at places of the order."""
        import polars as pl

        return [key % self.span + self.least for key in self.keys.gather(pl.Series(places, dtype=pl.Int64)).to_list()]

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

    def sums(self) -> list[int]:
        """The sum of the values of each group."""
        import polars as pl

        added = [0, *((self.keys % self.span).cast(pl.Int128).cum_sum().to_list() if len(self.keys) else [])]
        return [
            added[end] - added[start] + (end - start) * self.least
            for start, end in zip(self.starts, self.starts[1:], strict=False)
        ]


def _figure(figure: Figure, ordered: _Ordered) -> pl.Series:
    """The millionths of a figure for each row, null where it is not recorded."""
    import polars as pl

    if figure.kind == "standing":
        return _standings(figure, ordered)
    groups = [group for group in range(len(ordered.starts) - 1) if ordered.number_of(group) >= max(1, figure.least)]
    found: list[int | None] = [None] * (len(ordered.starts) - 1)
    for group, value in zip(groups, _of_groups(figure, ordered, groups), strict=True):
        found[group] = value
    return pl.Series(found, dtype=pl.Int64).gather(ordered.groups)


def _of_groups(figure: Figure, ordered: _Ordered, groups: Sequence[int]) -> list[int]:
    match figure.kind:
        case "lowest":
            return ordered.at([ordered.starts[group] for group in groups])
        case "highest":
            return ordered.at([ordered.starts[group + 1] - 1 for group in groups])
        case "mean" | "share":
            sums, whole = ordered.sums(), _WHOLE if figure.kind == "share" else 1
            return [half_up(Fraction(whole * sums[group], ordered.number_of(group))) for group in groups]
        case kind:
            percent = figure.percent if kind == "percentile" and figure.percent is not None else Decimal(50)
            places = [Fraction(percent) / 100 * (ordered.number_of(group) - 1) for group in groups]
            low = ordered.at([ordered.starts[group] + int(place) for group, place in zip(groups, places, strict=True)])
            high = ordered.at(
                [
                    min(ordered.starts[group] + int(place) + 1, ordered.starts[group + 1] - 1)
                    for group, place in zip(groups, places, strict=True)
                ]
            )
            return [
                half_up(below + (above - below) * (place - int(place)))
                for below, above, place in zip(low, high, places, strict=True)
            ]


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
    made = (2 * _WHOLE * twice + 2 * pl.col("n")) // (4 * pl.col("n"))
    known = pl.col("known") & (pl.col("n") >= max(1, figure.least))
    return frame.select(pl.when(known).then(made)).to_series()


def _divided(made: pl.Series) -> pl.Series:
    """Millionths as numbers: divided as in Python, and not by a reciprocal."""
    import polars as pl

    return made.cast(pl.Float64) / pl.Series([1_000_000.0], dtype=pl.Float64).new_from_index(0, len(made))
