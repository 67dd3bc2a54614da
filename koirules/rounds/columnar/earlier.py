"""The look before, over the rows of a frame: which row it is, and what expressions were in it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from koirules.rounds.columnar.of_nodes import NodeColumns
from koirules.rounds.columnar.rows import Rows
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import whether_recorded
from koirules.standard.tree import Supplied
from koirules.standard.types import Numeric, PlaceWords, TextLabel
from koirules.values import frozen

if TYPE_CHECKING:
    import polars as pl


@frozen
class LooksOfRows:
    """Which rows are the latest look at their fish, and for each row the number of the look before (null: none)."""

    latest: pl.Series
    before: pl.Series

    @classmethod
    def of(cls, fish: pl.Series, days: pl.Series) -> LooksOfRows:
        """Put the rows of each fish in the order of their days."""
        import polars as pl

        frame = pl.DataFrame({"fish": fish, "day": days}).with_row_index("row")
        ordered = frame.sort("fish", "day", nulls_last=False, maintain_order=True).with_columns(
            before=pl.col("row").shift(1).over("fish"),
            latest=pl.int_range(pl.len()).over("fish") == pl.len().over("fish") - 1,
        )
        back = ordered.sort("row")
        return cls(back["latest"], back["before"])


def supply_earlier(
    rules: Rules, settings: Mapping[str, Setting], asked: Sequence[Supplied], rows: Rows, looks: LooksOfRows
) -> None:
    """Put what is asked of the look before beside the rows."""
    import polars as pl

    nodes = [one.source.of for one in asked]
    columns = NodeColumns.of(rules, settings, rows, nodes, graded=False)
    for i, node in enumerate(nodes):
        whether = whether_recorded(node)
        if whether is not None:
            columns.ask(f"said {i}", columns.column(columns.ends(whether).first))
        if isinstance(node.type, PlaceWords):
            columns.ask(f"code {i}", columns.code(node)[0])
            continue
        pair = columns.ends(node)
        columns.ask(f"low {i}", columns.column(pair.first))
        if pair.second is not None and not pair.sure:
            columns.ask(f"high {i}", columns.column(pair.second))
    made = columns.collect()
    for i, one in enumerate(asked):
        said = made[f"said {i}"].gather(looks.before).fill_null(value=False) if f"said {i}" in made.columns else None
        if f"code {i}" in made.columns:
            _, readings = columns.code(nodes[i])
            code = made[f"code {i}"].gather(looks.before)
            there = (
                said if said is not None else code.is_in([c for c, each in enumerate(readings) if each != one.range])
            )
            rows.with_codes(one.key, pl.select(pl.when(there).then(code)).to_series(), readings)
            continue
        low = made[f"low {i}"].gather(looks.before)
        high = made[f"high {i}"].gather(looks.before) if f"high {i}" in made.columns else low
        if isinstance(one.type, Numeric):
            if said is None:
                least, most = (float(end) for end in one.range)
                said = low.is_not_null() & ~((low == least) & (high == most))
            low, high = low.cast(pl.Float64), high.cast(pl.Float64)
            low, high = (pl.select(pl.when(said).then(end)).to_series() for end in (low, high))
            rows.with_numbers(one.key, low, None if (low.eq_missing(high)).all() else high)
        else:
            _with_codes(rows, one, low, high, said)


def _with_codes(rows: Rows, one: Supplied, low: pl.Series, high: pl.Series, said: pl.Series | None) -> None:
    """said: in which rows it was recorded, where the values themselves do not tell."""
    import polars as pl

    pairs = pl.DataFrame({"low": low, "high": high})
    different = pairs.drop_nulls().unique(maintain_order=True)
    readings: list[Any] = [
        (first, second) if isinstance(one.range, tuple) else first for first, second in different.iter_rows()
    ]
    anything = None if isinstance(one.type, TextLabel) else one.range
    # Of a sum, what is no narrower than anything at all says nothing.
    says = [said is not None or reading != anything for reading in readings]
    codes = pl.Series([code if each else None for code, each in enumerate(says)], dtype=pl.UInt32)
    coded = pairs.join(different.with_columns(code=codes), on=["low", "high"], how="left", maintain_order="left")
    code = coded["code"] if said is None else pl.select(pl.when(said).then(coded["code"])).to_series()
    rows.with_codes(one.key, code, readings)
