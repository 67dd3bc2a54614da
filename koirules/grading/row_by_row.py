"""Frames that are too small to be worth a plan: each row through the function that grades one record."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import TYPE_CHECKING, Any, assert_never

from koirules.grading.columns.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.grading.evaluator import Evaluator, Trace
from koirules.standard.parts import Rules
from koirules.vocabulary.readings import Reading, Span

if TYPE_CHECKING:
    import polars as pl


def readings_by_row(columns: pl.DataFrame, held: Mapping[str, Held], rows: int) -> Iterator[dict[str, Reading]]:
    """The readings of each row of a frame that was read."""
    names: list[str] = []
    values: list[list[Reading | None]] = []
    for name, how in held.items():
        match how:
            case CodeColumn():
                names.append(name)
                values.append([None if code is None else how.readings[code] for code in columns[how.name].to_list()])
            case NumberColumn():
                names.append(name)
                lows = columns[how.name].to_list()
                highs = columns[how.high].to_list() if how.high else lows
                values.append([None if low is None else Span(low, high) for low, high in zip(lows, highs, strict=True)])
            case NoColumn():
                continue
            case _:
                assert_never(how)
    if not names:
        yield from ({} for _ in range(rows))
        return
    for row in zip(*values, strict=True):
        yield {name: reading for name, reading in zip(names, row, strict=True) if reading is not None}


def graded_rows(
    rules: Rules, evaluator: Evaluator, records: Iterator[dict[str, Reading]], *, sections: bool, faults: bool
) -> pl.DataFrame:
    """The columns of the results, as the plan for whole columns names and types them."""
    return graded_traces(rules, map(evaluator.run, records), sections=sections, faults=faults)


def graded_traces(rules: Rules, traces: Iterable[Trace], *, sections: bool, faults: bool) -> pl.DataFrame:
    """The same of what was worked out already."""
    import polars as pl

    from koirules.grading.columns.outputs import column_types

    types = column_types(rules, sections=sections, faults=faults)
    grades = [grade.name for grade in rules.grades]
    sets: dict[int, tuple[str, ...]] = {}
    rows = []
    for trace in traces:
        possible = sets.get(trace.possible)
        if possible is None:
            possible = tuple(name for i, name in enumerate(grades) if trace.possible >> i & 1)
            sets[trace.possible] = possible
        rows.append(tuple(_cells(trace, possible, sections=sections, faults=faults)))
    return pl.DataFrame(rows, schema=types, orient="row")


def _cells(trace: Trace, possible: tuple[str, ...], *, sections: bool, faults: bool) -> Iterator[Any]:
    low, high = trace.score
    yield possible[0] if len(possible) == 1 else None
    yield "|".join(possible)
    yield low / 100 if low == high else None
    yield low / 100
    yield high / 100
    if sections:
        for least, most in trace.sections:
            yield least / 100
            yield most / 100
    if faults:
        for *_, surely, possibly in trace.limits:
            yield surely if surely == possibly else None
