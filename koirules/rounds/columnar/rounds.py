"""The rounds of a selection over the columns of a frame."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial, reduce
from operator import or_
from typing import TYPE_CHECKING

from koirules.results.course import Fate
from koirules.rounds.columnar.counted import Counted, supply_ends
from koirules.rounds.columnar.figures import supply_figures
from koirules.rounds.columnar.of_nodes import NodeColumns, NodePlans
from koirules.rounds.columnar.picks import FATES, open_columns, picked_columns
from koirules.rounds.columnar.rows import Rows
from koirules.rounds.evaluation_levels import Asked, asked_by
from koirules.rounds.rounds_of_rows import may_leave_out, number_of, places_of
from koirules.standard.rounds import Key, Round
from koirules.values import define

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
    """The rounds of a standard, over a frame whose rows carry their outcome.

    later: the same rows with outcomes as wide as figures of the batch may make them once more is recorded; None where they
    make no difference.
    """

    plans: NodePlans
    rows: Rows
    later: Rows | None = None

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
        wanted = [run for run in before if _wants(asked, run.round)]
        lacks = any(run.open.any() for run in wanted)
        among = {run.round.name: self.rows.chosen(run.of_fates(_KEPT), one.roots) for run in wanted}
        if asked.levels:
            lacks = supply_figures(self.plans, asked, rows, graded=True, among=among) or lacks
        now = self._seen(one, rows)
        fates = self._fates(one, now)
        wide = now
        if lacks or self.later is not None:
            source = self.rows if self.later is None else self.later
            later = source.chosen(pool, one.roots)
            members = {run.round.name: _members(run, among[run.round.name], source) for run in wanted}
            supply_ends(self.plans, asked, Counted(rows, later), members, graded=True)
            wide = self._seen(one, later)
        return RoundColumns(one, pool, fates, self._open(one, now, wide, fates))

    def _seen(self, one: Round, rows: Rows) -> pl.DataFrame:
        """What a round asks of each of its rows."""
        import polars as pl

        made = self.plans.get(f"round {one.name}", rows, one.roots, partial(_ask, one), graded=True).collect()
        if one.keep is None:
            yes = pl.repeat(value=True, n=rows.height, eager=True, dtype=pl.Boolean)
            made = (
                made.with_columns(surely=yes, possibly=yes)
                if made.width
                else pl.DataFrame({"surely": yes, "possibly": yes})
            )
        return made

    def _fates(self, one: Round, now: pl.DataFrame) -> pl.Series:
        import polars as pl

        candidate = now["possibly" if one.possibly else "surely"]
        fates = candidate.cast(pl.UInt8) * _KEPT + (~candidate).cast(pl.UInt8) * _LEFT
        if not one.ordered:
            return fates
        keys = [now[f"k{i}"] for i in range(len(one.keys))]
        groups = [now[f"q{i}"] for i in range(len(one.quotas))]
        frame = pl.DataFrame([*keys, *groups, candidate.alias("candidate")])
        picked = pl.zeros(now.height, pl.UInt8, eager=True)
        for rows in _groups(one, now):
            places, quotas = self._places(one, len(rows)), self._quotas(one)
            picked = picked.scatter(rows, picked_columns(frame[rows], len(one.keys), places, quotas, one.ties))
        return fates.zip_with(~candidate, picked)

    def _open(self, one: Round, now: pl.DataFrame, wide: pl.DataFrame, fates: pl.Series) -> pl.Series:
        """The rows in whose fate a recording could still change. wide: what the round asks, as figures may yet make it."""
        import polars as pl

        is_open = wide["surely"] != wide["possibly"]
        if not one.ordered:
            return is_open
        candidate = now["possibly" if one.possibly else "surely"]
        keys = [wide[f"{end}{i}"] for end in "kb" for i in range(len(one.keys))]
        groups = [wide[f"q{i}"] for i in range(len(one.quotas))]
        loose = [_loose(one, i, wide) for i in range(len(one.quotas))]
        falls = reduce(or_, (wide[f"k{i}"] != now[f"k{i}"] for i in range(len(one.keys))))
        flags = [wide["surely"].alias("sure"), candidate.alias("candidate"), falls.alias("falls"), fates.alias("fate")]
        same = [quota.condition is None for quota in one.quotas]
        frame = pl.DataFrame([*keys, *groups, *loose, *flags])
        quotas, strays = self._quotas(one), _strays(one, now, wide)
        could_be = candidate | wide["possibly"]
        for rows in _groups(one, now):
            if not candidate[rows].any():
                continue
            # Those of which the group is not sure may come to compete in any, where they make a share of it larger.
            own = rows.filter(candidate[rows] | (could_be & ~strays)[rows])
            others = _may_come_into(one, rows, now, wide, strays)
            come = others.filter(could_be[others])
            inside = pl.concat([own, come.cast(own.dtype)]).sort()
            parted = frame[inside].with_columns(candidate=pl.col("candidate") & ~inside.is_in(come.implode()))
            places = self._places(one, len(rows))
            opened = inside.filter(open_columns(parted, len(one.keys), places, quotas, same, one.ties))
            is_open = is_open.scatter(opened, values=True)
            if self._places(one, len(rows) + len(others)) != places:
                out = rows.filter(candidate[rows] & (fates[rows] != _KEPT))
                is_open = is_open.scatter(out, values=True)
        if may_leave_out(one.amount, quotas):
            is_open = is_open | (strays & candidate)
        return is_open

    def _places(self, one: Round, looked_at: int) -> int | None:
        return places_of(one, self.plans.settings, looked_at)

    def _quotas(self, one: Round) -> list[int]:
        return [number_of(quota.amount, self.plans.settings) for quota in one.quotas]


def _groups(one: Round, now: pl.DataFrame) -> Iterator[pl.Series]:
    """The rows of each group in which a round picks."""
    import polars as pl

    rows = pl.int_range(now.height, eager=True)
    if not one.each:
        yield rows
        return
    for piece in pl.DataFrame([rows.alias("row"), now["each"]]).partition_by("each", maintain_order=True):
        yield piece["row"]


def _strays(one: Round, now: pl.DataFrame, wide: pl.DataFrame) -> pl.Series:
    """In which rows it is not sure in what group they are picked."""
    import polars as pl

    names = [f"each {i}" for i in range(len(one.each))]
    found = pl.repeat(value=False, n=now.height, eager=True, dtype=pl.Boolean)
    for name in names:
        found = found | wide[name].is_null() | ~wide[name].eq_missing(now[name])
    return found


def _may_come_into(one: Round, rows: pl.Series, now: pl.DataFrame, wide: pl.DataFrame, strays: pl.Series) -> pl.Series:
    """The strays of other groups that may turn out to belong to the group of some rows (picking.may_be)."""
    found = strays
    for i in range(len(one.each)):
        theirs, ours = wide[f"each {i}"], now[f"each {i}"][int(rows[0])]
        if ours is not None:
            found = found & (theirs.is_null() | (theirs == ours).fill_null(value=True))
    come = found.arg_true()
    return come.filter(~come.is_in(rows.implode()))


def _ask(one: Round, columns: NodeColumns) -> None:
    import polars as pl

    if one.keep is not None:
        pair = columns.ends(one.keep)
        columns.ask("surely", columns.column(pair.first))
        columns.ask("possibly", columns.column(pair.second))
    for i, key in enumerate(one.keys):
        sure, best = _key_ends(columns, key)
        columns.ask(f"k{i}", sure)
        columns.ask(f"b{i}", best)
    for i, quota in enumerate(one.quotas):
        if quota.condition is not None:
            pair = columns.ends(quota.condition)
            columns.ask(f"q{i}", pl.when(columns.column(pair.second)).then(pl.lit(1, pl.Int64)))
            columns.ask(f"surely {i}", columns.column(pair.first))
        else:
            columns.group(f"q{i}", quota.same)
            for j, node in enumerate(quota.same):
                columns.one_value(f"same {i} {j}", node)
    if one.each:
        columns.group("each", one.each)
        for i, node in enumerate(one.each):
            columns.one_value(f"each {i}", node)


def _loose(one: Round, quota: int, made: pl.DataFrame) -> pl.Series:
    """In which rows it is not sure in what group of a quota they count, or whether they count."""
    import polars as pl

    if one.quotas[quota].condition is None:
        unknown = [pl.col(f"same {quota} {j}").is_null() for j in range(len(one.quotas[quota].same))]
        return made.select(pl.any_horizontal(unknown).alias(f"l{quota}")).to_series()
    return made.select((pl.col(f"q{quota}").is_not_null() & ~pl.col(f"surely {quota}")).alias(f"l{quota}")).to_series()


def _members(run: RoundColumns, kept: Rows, source: Rows) -> list[Counted]:
    """Those that a round kept, and those that it may yet keep, as figures over them count them. kept: with their figures."""
    is_kept = run.fates == _KEPT
    perhaps = source.chosen(run.rows.filter(~is_kept & run.open))
    later = source.chosen(run.rows.filter(is_kept))
    return [Counted(kept, later, staying=~run.open.filter(is_kept)), Counted(perhaps, perhaps, counted=False)]


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


def _key_ends(columns: NodeColumns, key: Key) -> tuple[pl.Expr, pl.Expr]:
    """Where a row surely stands by a key, and where at best (rounds_of_rows.key_ends)."""
    low, high = columns.value_ends(key.by)
    return (-low, -high) if key.highest else (high, low)
