"""What shows of columns of numbers at a glance: whether a value in them needs a closer look."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Literal

from attrs import frozen

if TYPE_CHECKING:
    import polars as pl

_TINY = 1e-20
"""Between this and 0 a double may be written with more digits than a measure can have."""

_STREAMED = 50_000


@frozen
class Glance:
    """The least and the most value of a column (None without any), and whether some are no number, tiny, or not whole."""

    least: float | None
    most: float | None
    nans: bool
    tiny: bool
    parts: bool


def glances(columns: Iterable[tuple[pl.Series, bool]]) -> list[Glance]:
    """A glance at each column of numbers, all at once; with each, whether its values should be whole."""
    import polars as pl

    frame: dict[str, pl.Series] = {}
    asked: list[pl.Expr] = []
    for number, (series, whole) in enumerate(columns):
        name = str(number)
        frame[name] = series
        x = pl.col(name)
        floats = series.dtype.is_float()
        no = pl.lit(value=False)
        asked += [
            x.min().cast(pl.Float64).alias(f"{name} least"),
            x.max().cast(pl.Float64).alias(f"{name} most"),
            (x.is_nan().any() if floats else no).alias(f"{name} nans"),
            (((x != 0) & (x.abs() <= _TINY)).any() if floats and not whole else no).alias(f"{name} tiny"),
            ((x.floor() != x).any() if floats and whole else no).alias(f"{name} parts"),
        ]
    if not frame:
        return []
    made = pl.DataFrame(frame)
    engine: Literal["streaming", "in-memory"] = "streaming" if made.height > _STREAMED else "in-memory"
    row = made.lazy().select(asked).collect(engine=engine).row(0)
    return [Glance(*row[i : i + 5]) for i in range(0, len(row), 5)]
