"""Figures over a batch that is never in memory at once: each piece is counted, and later looks its figures up.

What a piece counts is a tally (tallies.py), whose groups are the values themselves and not numbers of this frame, so that
tallies of different files merge.
"""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from typing import TYPE_CHECKING, Any

from koirules.rounds.columnar.of_nodes import NodeColumns, NodePlans
from koirules.rounds.columnar.rows import Rows
from koirules.rounds.tallies import FigureTable, Group, Tally
from koirules.standard.tree import Figure, Node, Supplied

if TYPE_CHECKING:
    import polars as pl


def tallied(plans: NodePlans, figures: Sequence[Supplied], rows: Rows, *, graded: bool) -> dict[str, Tally]:
    """What the rows count for each figure, by its key."""
    import polars as pl

    found: dict[str, Tally] = {}
    for key, frame in _valued(plans, figures, rows, graded=graded):
        counts = frame.drop_nulls().group_by(frame.columns).agg(times=pl.len())
        groups: dict[Group, dict[int, int]] = {}
        for value, *group, times in counts.iter_rows():
            groups.setdefault(tuple(group), {})[value] = times
        found[key] = Tally(groups)
    return found


def look_up(
    plans: NodePlans, figures: Sequence[Supplied], rows: Rows, tables: Mapping[str, FigureTable], *, graded: bool
) -> None:
    """Put figures beside the rows, as they were counted over the whole batch."""
    import polars as pl

    for key, frame in _valued(plans, figures, rows, graded=graded):
        table = tables[key]
        # For all but a standing the value of the row itself does not matter.
        asked = frame if table.figure.kind == "standing" else frame.drop("v")
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
    plans: NodePlans, figures: Sequence[Supplied], rows: Rows, *, graded: bool
) -> list[tuple[str, pl.DataFrame]]:
    """For each figure its key, and of each row the value `v` and what it has in common with others, `g0` …"""
    known = [(one.key, one.source) for one in figures if isinstance(one.source, Figure)]

    def ask(columns: NodeColumns) -> None:
        for i, (_, figure) in enumerate(known):
            columns.one_value(f"{i} v", figure.of)
            for j, node in enumerate(figure.same):
                columns.one_value(f"{i} g{j}", node)

    nodes: list[Node] = [node for _, figure in known for node in figure.reads]
    made = plans.get("counted " + " ".join(key for key, _ in known), rows, nodes, ask, graded=graded).collect()
    frames = []
    for i, (key, _) in enumerate(known):
        names = [name for name in made.columns if name.startswith(f"{i} ")]
        frames.append((key, made.select(names).rename({name: name.split(" ")[1] for name in names})))
    return frames
