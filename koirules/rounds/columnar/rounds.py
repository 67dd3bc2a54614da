"""The rounds of a selection over the columns of a frame."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial, reduce
from operator import or_
from typing import TYPE_CHECKING, Any

from attrs import define

from koirules.engines.columnar.values import filled
from koirules.results.course import Fate
from koirules.rounds.columnar.figures import supply_figures
from koirules.rounds.columnar.of_nodes import NodeColumns, NodePlans
from koirules.rounds.columnar.picks import FATES, picked_columns
from koirules.rounds.columnar.rows import Rows
from koirules.rounds.evaluation_levels import Asked, asked_by
from koirules.rounds.rounds_of_rows import number_of
from koirules.standard import operations as ops
from koirules.standard.rounds import Key, Round
from koirules.standard.tree import apply
from koirules.standard.types import Numeric, Steps

if TYPE_CHECKING:
    import polars as pl

_KEPT, _LEFT, _TIED = (FATES.index(fate) for fate in (Fate.KEPT, Fate.LEFT, Fate.TIED))


@define
class RoundColumns:
    """What a round did: the numbers of the rows that it looked at, in rising order, their fates, and which are open."""

    round: Round
    rows: pl.Series
    fates: pl.Series
    open: pl.Series

    def of_fates(self, *numbers: int) -> pl.Series:
        """The numbers of the rows with one of these fates."""
        return self.rows.filter(reduce(or_, (self.fates == number for number in numbers)))


@define
class RoundsOfColumns:
    """The rounds of a standard, over a frame whose rows carry their outcome."""

    plans: NodePlans
    rows: Rows

    def run(self, taking_part: pl.Series) -> list[RoundColumns]:
        """Run every round; taking_part: the numbers of the rows that the first one may look at."""
        runs: list[RoundColumns] = []
        for one in self.plans.rules.rounds:
            runs.append(self._run(one, runs, taking_part))
        return runs

    def _run(self, one: Round, before: Sequence[RoundColumns], taking_part: pl.Series) -> RoundColumns:
        pool = _pool(one, before, taking_part)
        for run in before:
            tied = run.of_fates(_TIED)
            if len(tied):
                pool = pool.filter(~pool.is_in(tied.implode()))
        rows = self.rows.chosen(pool, one.roots)
        asked = asked_by(self.plans.rules, one.roots, graded=True)
        if asked.levels:
            among = {
                run.round.name: self.rows.chosen(run.of_fates(_KEPT), one.roots)
                for run in before
                if _wants(asked, run.round)
            }
            supply_figures(self.plans, asked, rows, graded=True, among=among)
        columns = self.plans.get(f"round {one.name}", rows, one.roots, partial(_ask, one), graded=True)
        return self._decided(one, pool, columns.collect())

    def _decided(self, one: Round, pool: pl.Series, made: pl.DataFrame) -> RoundColumns:
        import polars as pl

        if one.keep is None:
            surely = possibly = pl.repeat(value=True, n=len(pool), eager=True, dtype=pl.Boolean)
        else:
            surely, possibly = made["surely"], made["possibly"]
        candidate = possibly if one.possibly else surely
        fates = candidate.cast(pl.UInt8) * _KEPT + (~candidate).cast(pl.UInt8) * _LEFT
        is_open = surely != possibly
        if one.ordered:
            groups = [made[f"q{i}"] for i in range(len(one.quotas))]
            keys = [made[f"{end}{i}"] for end in "kb" for i in range(len(one.keys))]
            loose = [_loose(one, i, made) for i in range(len(one.quotas))]
            frame = pl.DataFrame([*keys, *groups, *loose, surely.alias("sure"), candidate.alias("candidate")])
            in_it = possibly.arg_true()
            amount = None if one.amount is None else number_of(one.amount, self.plans.settings)
            quotas = [number_of(quota.amount, self.plans.settings) for quota in one.quotas]
            same = [quota.condition is None for quota in one.quotas]
            picked = picked_columns(frame[in_it], len(one.keys), amount, quotas, same, one.ties)
            chosen = candidate.filter(possibly)
            fates = fates.scatter(in_it.filter(chosen), picked.fates.filter(chosen))
            opened = in_it.filter(picked.open)
            is_open = is_open.scatter(opened, values=True) if len(opened) else is_open
        return RoundColumns(one, pool, fates, is_open)


def _ask(one: Round, columns: NodeColumns) -> None:
    import polars as pl

    if one.keep is not None:
        pair = columns.ends(one.keep)
        columns.ask("surely", pair.first)
        columns.ask("possibly", pair.second)
    for i, key in enumerate(one.keys):
        sure, best = _key_ends(columns, key)
        columns.ask(f"k{i}", sure)
        columns.ask(f"b{i}", best)
    for i, quota in enumerate(one.quotas):
        if quota.condition is not None:
            pair = columns.ends(quota.condition)
            columns.ask(f"q{i}", pl.when(_condition(pair.second)).then(pl.lit(1, pl.Int64)))
            columns.ask(f"surely {i}", pair.first)
        else:
            columns.group(f"q{i}", quota.same)
            for j, node in enumerate(quota.same):
                columns.one_value(f"same {i} {j}", node)


def _loose(one: Round, quota: int, made: pl.DataFrame) -> pl.Series:
    """In which rows it is not sure in what group of a quota they count, or whether they count."""
    import polars as pl

    if one.quotas[quota].condition is None:
        unknown = [pl.col(f"same {quota} {j}").is_null() for j in range(len(one.quotas[quota].same))]
        return made.select(pl.any_horizontal(unknown).alias(f"l{quota}")).to_series()
    return made.select((pl.col(f"q{quota}").is_not_null() & ~pl.col(f"surely {quota}")).alias(f"l{quota}")).to_series()


def _wants(asked: Asked, one: Round) -> bool:
    return any(getattr(figure.source, "kept_by", "") == one.name for figure in asked.figures)


def _pool(one: Round, before: Sequence[RoundColumns], taking_part: pl.Series) -> pl.Series:
    runs = {run.round.name: run for run in before}
    match one.pool:
        case "all":
            return taking_part
        case "kept":
            return runs[one.pool_of].of_fates(_KEPT)
        case _:
            out = (Fate.LEFT, Fate.OVER, Fate.QUOTA)
            return runs[one.pool_of].of_fates(*(FATES.index(fate) for fate in out))


def _key_ends(columns: NodeColumns, key: Key) -> tuple[Any, Any]:
    """Where a row surely stands by a key, and where at best (rounds_of_rows.key_ends)."""
    import polars as pl

    node = key.by
    low: Any
    high: Any
    match node.type:
        case Numeric():
            pair = columns.ends(apply(ops.MILLIONTHS, (node,), node.type, node.place))
            low, high = (_whole(end) for end in (pair.first, pair.second))
        case Steps():
            bits = _whole(columns.ends(node).first)
            low = bits.bitwise_trailing_zeros().cast(pl.Int64) + 1
            high = pl.lit(64, pl.Int64) - bits.bitwise_leading_zeros().cast(pl.Int64)
        case _:
            pair = columns.ends(node)
            low, high = (_whole(end) for end in (pair.first, pair.second))
    return (-low, -high) if key.highest else (high, low)


def _whole(end: Any) -> pl.Expr:
    import polars as pl

    made = filled(end)
    return (made if isinstance(made, pl.Expr) else pl.lit(made)).cast(pl.Int64)


def _condition(end: Any) -> pl.Expr:
    import polars as pl

    made = filled(end)
    return made if isinstance(made, pl.Expr) else pl.lit(made)
