"""Rows put aside for the rounds: what these read of each fish, in a form that rows of different files have in common."""

from __future__ import annotations

from ast import literal_eval
from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING, Any

from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.rounds.columnar.rows import Rows
from koirules.vocabulary.readings import PlaceSet, Reading, Span

if TYPE_CHECKING:
    import polars as pl


def put_aside(rows: Rows, traits: Collection[str], outcome: pl.DataFrame) -> pl.DataFrame:
    """The traits of rows as columns, readings written out, and the outcome beside them."""
    import polars as pl

    columns: list[pl.Series] = []
    for name in sorted(traits):
        match rows.held.get(name, NoColumn()):
            case NumberColumn(name=low, high=high):
                columns.append(rows.columns[low].alias(f"low {name}"))
                columns.append(rows.columns[high or low].alias(f"high {name}"))
            case CodeColumn(name=codes, readings=readings):
                words = pl.Series([_written(reading) for reading in readings], dtype=pl.String)
                number = rows.columns[codes].cast(pl.UInt32)
                columns.append(words.gather(number).alias(f"told {name}"))
            case NoColumn():
                columns.append(pl.Series([None], dtype=pl.String).new_from_index(0, rows.height).alias(f"told {name}"))
    return pl.DataFrame(columns).hstack(outcome) if columns else outcome


def taken_up(parts: Sequence[pl.DataFrame], traits: Collection[str]) -> Rows:
    """Rows that were put aside, of all parts."""
    import polars as pl

    height = sum(part.height for part in parts)
    held: dict[str, Held] = {}
    columns: list[pl.Series] = []
    for name in sorted(traits):
        numbers = [part for part in parts if f"low {name}" in part.columns]
        if numbers:
            low, high = (
                pl.concat([_ends(part, end, name) for part in parts]).alias(f"{end} {name}") for end in ("low", "high")
            )
            columns += [low, high]
            same = low.eq_missing(high).all()
            held[name] = NumberColumn(low.name, low.null_count() > 0, "" if same else high.name)
        else:
            told = pl.concat([part[f"told {name}"] for part in parts]) if parts else pl.Series([], dtype=pl.String)
            words = told.drop_nulls().unique(maintain_order=True)
            codes = pl.DataFrame({"told": told}).join(
                pl.DataFrame({"told": words, "code": pl.int_range(len(words), dtype=pl.UInt32, eager=True)}),
                on="told",
                how="left",
                maintain_order="left",
            )["code"]
            columns.append(codes.alias(f"code {name}"))
            readings = tuple(_read(word) for word in words)
            held[name] = CodeColumn(f"code {name}", readings, codes.null_count() > 0)
    outcome = [
        name for name in (parts[0].columns if parts else []) if name.split(" ")[0] not in {"low", "high", "told"}
    ]
    columns += [pl.concat([part[name] for part in parts]) for name in outcome]
    return Rows(pl.DataFrame(columns), held, height)


def _ends(part: pl.DataFrame, end: str, name: str) -> pl.Series:
    """One end of a trait in a part; of a file that told it in words, from these."""
    import polars as pl

    if f"{end} {name}" in part.columns:
        return part[f"{end} {name}"]
    place = ("low", "high").index(end)
    told = part[f"told {name}"]
    spans = {word: _read(word) for word in told.unique().drop_nulls()}
    ends: dict[Any, float] = {word: span[place] for word, span in spans.items() if isinstance(span, Span)}
    return pl.Series([ends.get(word) for word in told], dtype=pl.Float64)


def _written(reading: Reading | None) -> str | None:
    match reading:
        case None:
            return None
        case Span(low, high):
            return f"n{(float(low), float(high))!r}"
        case PlaceSet():
            return f"p{tuple(reading)!r}"
        case str():
            return f"t{reading}"
        case _:
            return f"s{reading!r}"


def _read(word: str) -> Reading:
    kind, told = word[0], word[1:]
    match kind:
        case "n":
            return Span(*literal_eval(told))
        case "p":
            return PlaceSet(*literal_eval(told))
        case "t":
            return told
        case _:
            return int(told)
