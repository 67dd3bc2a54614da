"""Figures over a batch that is never in memory at once: each piece is counted, and later looks its figures up.

What a piece counts is a tally (tallies.py), whose groups are the values themselves and not numbers of this frame, so that
tallies of different files merge.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping, Sequence
from functools import reduce
from typing import TYPE_CHECKING, Any

from koirules.program.held import NumberColumn
from koirules.rounds.columnar.of_nodes import NodeColumns, NodePlans
from koirules.rounds.columnar.rows import Rows
from koirules.rounds.evaluation_levels import Asked
from koirules.rounds.tallies import FigureTable, Group, Member, Tally
from koirules.standard.tree import Figure, Node, Supplied
from koirules.values import frozen

if TYPE_CHECKING:
    import polars as pl


@frozen
class Counted:
    """Rows that figures are over, now and as wide as they may become once more is recorded.

    counted: whether figures are now over them; staying: which of them they surely stay over, None for all.
    """

    now: Rows
    later: Rows
    counted: bool = True
    staying: pl.Series | None = None


def tallied(plans: NodePlans, figures: Sequence[Supplied], over: Counted, *, graded: bool) -> dict[str, Tally]:
    """What rows count for each figure, by its key."""
    import polars as pl

    found: dict[str, Tally] = {}
    same = over.later is over.now and over.counted and over.staying is None
    now = _valued(plans, figures, over.now, graded=graded)
    lacks = not same or any(column.null_count() for _, frame in now for column in frame.get_columns())
    later = _valued(plans, figures, over.later, graded=graded, ends=True) if lacks else now
    for (key, frame), (_, ends) in zip(now, later, strict=True):
        if not lacks:
            counts = frame.group_by(frame.columns).agg(times=pl.len())
            groups: dict[Group, dict[int, int]] = {}
            for value, *group, times in counts.iter_rows():
                groups.setdefault(tuple(group), {})[value] = times
            found[key] = Tally(groups)
        else:
            found[key] = Tally.of_members(_members(over, frame, ends))
    return found


def _members(over: Counted, now: pl.DataFrame, later: pl.DataFrame) -> Iterator[tuple[Member, int]]:
    """The different fish of a figure, each with how often it is there."""
    import polars as pl

    frame = now.hstack(later.rename({name: f"later {name}" for name in later.columns}))
    yes = pl.repeat(value=True, n=frame.height, eager=True, dtype=pl.Boolean)
    frame = frame.with_columns((yes if over.staying is None else over.staying).alias("staying"))
    many = now.width - 1
    for row in frame.group_by(frame.columns).agg(times=pl.len()).iter_rows():
        value, *group = row[: many + 1]
        low, high, *after = row[many + 1 : 2 * many + 3]
        *_, staying, times = row
        yield Member(_known(group), value, _known(after), (low, high), over.counted, staying), times


def _known(group: Sequence[Hashable]) -> Group | None:
    return None if None in group else tuple(group)


def look_up_ends(
    plans: NodePlans,
    figures: Sequence[Supplied],
    over: Counted,
    tables: Mapping[str, FigureTable],
    *,
    graded: bool,
) -> None:
    """Put between which ends figures lie beside the wide rows; a figure that is not recorded now stays so.

    Of rows that are not counted it is not known whether they will have a figure; theirs is anything at all.
    """
    import polars as pl

    valued = dict(_valued(plans, figures, over.later, graded=graded, ends=True))
    for supplied in figures:
        table, frame = tables[supplied.key], valued[supplied.key]
        asked = frame if table.figure.kind.own else frame.drop("v", "high")
        if not asked.width:
            asked = pl.DataFrame({"all": pl.zeros(over.later.height, pl.UInt8, eager=True)})
        different = asked.unique()
        found = [_ends(supplied, table, asked.columns, row) for row in different.iter_rows()]
        answers = different.with_columns(
            pl.Series("found low", [low for low, _ in found], dtype=pl.Float64),
            pl.Series("found high", [high for _, high in found], dtype=pl.Float64),
        )
        made = asked.join(answers, on=asked.columns, how="left", maintain_order="left", nulls_equal=True)
        lacks = _not_recorded(over, supplied.key)
        low, high = (made.select(pl.when(~lacks).then(pl.col(f"found {end}"))).to_series() for end in ("low", "high"))
        over.later.with_numbers(supplied.key, low, high)


def _not_recorded(over: Counted, key: str) -> pl.Series:
    """In which of the counted rows a figure is not recorded now."""
    import polars as pl

    held = over.now.held.get(key)
    if not over.counted:
        return pl.repeat(value=False, n=over.now.height, eager=True, dtype=pl.Boolean)
    if not isinstance(held, NumberColumn):
        return pl.repeat(value=True, n=over.now.height, eager=True, dtype=pl.Boolean)
    return over.now.columns[held.name].is_null()


def _ends(supplied: Supplied, table: FigureTable, names: Sequence[str], row: Sequence[Any]) -> tuple[float, float]:
    values = dict(zip(names, row, strict=True))
    group = [value for name, value in values.items() if name.startswith("g")]
    own = (values["v"], values["high"]) if "v" in values else None
    ends = table.ends(_known(group), own)
    low, high = supplied.range if ends is None else (ends[0] / 1_000_000.0, ends[1] / 1_000_000.0)
    return float(low), float(high)


def supply_ends(
    plans: NodePlans, asked: Asked, over: Counted, among: Mapping[str, Sequence[Counted]], *, graded: bool
) -> bool:
    """Put between which ends figures lie beside wide rows; gives whether any moves. among: as for supply_figures."""
    moves = False
    counting = {"": [over], **among}
    for level in asked.levels:
        tables = {}
        for one in level:
            if isinstance(one.source, Figure):
                tallies = [tallied(plans, [one], part, graded=graded) for part in counting[one.source.kept_by]]
                tables[one.key] = FigureTable.of(one.source, reduce(Tally.merged, (each[one.key] for each in tallies)))
        moves = moves or any(table.tally.moves for table in tables.values())
        for part in (part for parts in counting.values() for part in parts):
            look_up_ends(plans, level, part, tables, graded=graded)
    return moves


def look_up(
    plans: NodePlans, figures: Sequence[Supplied], rows: Rows, tables: Mapping[str, FigureTable], *, graded: bool
) -> None:
    """Put figures beside the rows, as they were counted over the whole batch."""
    import polars as pl

    for key, frame in _valued(plans, figures, rows, graded=graded):
        table = tables[key]
        # For all but a standing the value of the row itself does not matter.
        asked = frame if table.figure.kind.own else frame.drop("v")
        if not asked.width:
            asked = pl.DataFrame({"all": pl.zeros(rows.height, pl.UInt8, eager=True)})
        different = asked.unique()
        found = [_millionths(table, asked.columns, row) for row in different.iter_rows()]
        answers = different.with_columns(found=pl.Series(found, dtype=pl.Int64))
        made = asked.join(answers, on=asked.columns, how="left", maintain_order="left", nulls_equal=True)["found"]
        over = pl.Series([1_000_000.0], dtype=pl.Float64).new_from_index(0, rows.height)
        rows.with_numbers(key, made.cast(pl.Float64) / over)


def _millionths(table: FigureTable, names: Sequence[str], row: Sequence[Any]) -> int | None:
    values = dict(zip(names, row, strict=True))
    group: list[Hashable] = [value for name, value in values.items() if name.startswith("g")]
    return table.millionths(None if None in group else tuple(group), values.get("v"))


def _valued(
    plans: NodePlans, figures: Sequence[Supplied], rows: Rows, *, graded: bool, ends: bool = False
) -> list[tuple[str, pl.DataFrame]]:
    """For each figure its key, and of each row the value `v` and what it has in common with others, `g0` …

    ends: `v` is then the lowest that the value could be, and `high` behind it the highest.
    """
    known = [(one.key, one.source) for one in figures if isinstance(one.source, Figure)]

    def ask(columns: NodeColumns) -> None:
        for i, (_, figure) in enumerate(known):
            if ends:
                low, high = columns.value_ends(figure.of)
                columns.ask(f"{i} v", low)
                columns.ask(f"{i} high", high)
            else:
                columns.one_value(f"{i} v", figure.of)
            for j, node in enumerate(figure.groups):
                columns.one_value(f"{i} g{j}", node)

    nodes: list[Node] = [node for _, figure in known for node in figure.reads]
    name = f"counted {ends} " + " ".join(key for key, _ in known)
    made = plans.get(name, rows, nodes, ask, graded=graded).collect()
    frames = []
    for i, (key, _) in enumerate(known):
        names = [name for name in made.columns if name.startswith(f"{i} ")]
        frames.append((key, made.select(names).rename({name: name.split(" ")[1] for name in names})))
    return frames
