"""What the traits of the fish of a frame will be when they are grown, as columns beside those that were read.

Each value is worked out by the very function that serves one record: powers of other libraries differ in the last bit.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING

from attrs import evolve

from koirules.engines.columnar.codes import fits_codes
from koirules.engines.columnar.reading import ReadFrame
from koirules.measures.grown_traits import Ahead
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.vocabulary.readings import Reading, Span

if TYPE_CHECKING:
    import polars as pl


def with_grown(read: ReadFrame, ahead: Ahead, rows: int) -> ReadFrame:
    """A frame that was read, with the grown traits that are wanted and not there yet; rows: how many it has."""
    wanted = [each for each in ahead.wanted if each.key not in read.held]
    derived = [each for each in ahead.derived if not any(key in read.held for key in each.every_key)]
    if not wanted and not derived:
        return read
    held: dict[str, Held] = dict(read.held)
    columns: list[pl.Series] = []
    shortest, longest = ahead.any_length
    lengths = _ends(read, ahead.grows_by)
    of_fish = [(shortest, longest)] * rows if lengths is None else list(_filled(*lengths, shortest, longest))
    for each in wanted:
        values = ([0.0] * rows,) * 2 if each.grower.is_length else _ends(read, each.trait.name)
        if values is None:
            held[each.key] = NoColumn()
            continue
        grown = [
            None if low is None or high is None else each.grower.grown(low, high, *length)
            for low, high, length in zip(*values, of_fish, strict=True)
        ]
        made, held[each.key] = _made(grown, f"g{len(held)}")
        columns += made
    spans = [Span(*length) for length in of_fish] if derived else []
    for group in derived:
        found = group.rows(list(zip(*(_readings(read, name, rows) for name in group.inputs), strict=True)), spans)
        for key in group.every_key:
            made, held[key] = _held([one.get(key) for one in found], f"g{len(held)}")
            columns += made
    if not columns:
        return evolve(read, held=held)
    import polars as pl

    # A frame of which nothing was recorded has no column, and so no height.
    frame = read.columns.hstack(columns) if read.columns.width else pl.DataFrame(columns)
    return evolve(read, columns=frame, held=held)


def _filled(
    lows: Iterable[float | None], highs: Iterable[float | None], shortest: float, longest: float
) -> Iterator[tuple[float, float]]:
    """Both ends of a length, row by row, with those of its range where it was not recorded."""
    for low, high in zip(lows, highs, strict=True):
        yield (shortest if low is None else low), (longest if high is None else high)


def _ends(read: ReadFrame, name: str) -> tuple[Iterable[float | None], Iterable[float | None]] | None:
    """Both ends of what was read of a number, row by row; None where no row has it."""
    held = read.held.get(name, NoColumn())
    if not isinstance(held, NumberColumn):
        return None
    lows = read.columns[held.name].to_list()
    return lows, read.columns[held.high].to_list() if held.high else lows


def _readings(read: ReadFrame, name: str, rows: int) -> list[Reading | None]:
    """What was read of a trait, row by row."""
    match read.held.get(name, NoColumn()):
        case NoColumn():
            return [None] * rows
        case CodeColumn() as held:
            codes = read.columns[held.name].to_list()
            return [None if code is None else held.readings[code] for code in codes]
        case NumberColumn() as held:
            lows = read.columns[held.name].to_list()
            highs = read.columns[held.high].to_list() if held.high else lows
            return [None if low is None else Span(low, high) for low, high in zip(lows, highs, strict=True)]


def _held(column: Sequence[Reading | None], name: str) -> tuple[list[pl.Series], Held]:
    """The columns of readings, and how they are held."""
    import polars as pl

    spans = [one for one in column if isinstance(one, Span)]
    if spans:
        return _made([one if isinstance(one, Span) else None for one in column], name)
    codes: dict[Reading, int] = {}
    numbered = [None if one is None else codes.setdefault(one, len(codes)) for one in column]
    if not codes:
        return [], NoColumn()
    series = pl.Series(name, numbered, dtype=fits_codes(len(codes)))
    return [series], CodeColumn(name, tuple(codes), series.null_count() > 0)


def _made(grown: Sequence[Span | None], name: str) -> tuple[list[pl.Series], Held]:
    """The columns of grown values, and how they are held."""
    import polars as pl

    lows = pl.Series(name, [None if one is None else one.low for one in grown], dtype=pl.Float64)
    if all(one is None or one.low == one.high for one in grown):
        return [lows], NumberColumn(name, lows.null_count() > 0)
    highs = pl.Series(f"{name}h", [None if one is None else one.high for one in grown], dtype=pl.Float64)
    return [lows, highs], NumberColumn(name, lows.null_count() > 0, f"{name}h")
