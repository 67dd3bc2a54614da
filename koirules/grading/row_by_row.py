"""Frames that are too small to be worth a plan: each row through the function that grades one record."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, Any, assert_never

from koirules.engines.scalar.complete import Complete, Sure
from koirules.engines.scalar.evaluator import Trace
from koirules.grading.single import Grader
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.program.records import Input
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
    grader: Grader, columns: pl.DataFrame, held: Mapping[str, Held], rows: int, *, sections: bool, faults: bool
) -> pl.DataFrame:
    """The columns of the results of a frame that was read, as the plan for whole columns names and types them."""
    sure = _sure_rows(grader.complete, columns, held, rows)
    rest = [row for row, each in enumerate(sure) if each is None]
    left = columns[rest] if columns.width and len(rest) < rows else columns
    traces = map(grader.evaluator.run, readings_by_row(left, held, len(rest)))
    outcomes = (next(traces) if each is None else each for each in sure)
    return graded_traces(grader.rules, outcomes, sections=sections, faults=faults)


def _sure_rows(complete: Complete, columns: pl.DataFrame, held: Mapping[str, Held], rows: int) -> Sequence[Sure | None]:
    """What came of each row that is complete."""
    values = [_values(held.get(one.key, NoColumn()), one, columns) for one in complete.inputs]
    there = [_recorded(held.get(key, NoColumn()), columns, rows) for key in complete.asked]
    if not values or None in values:
        return [None] * rows
    holes = {row for each in values if each for row, value in enumerate(each) if value is None}
    run = complete.run_values
    taken = zip(*(each or () for each in values), *there, strict=True)
    return [None if row in holes else run(each) for row, each in enumerate(taken)]


def _values(how: Held, one: Input, columns: pl.DataFrame) -> list[Any] | None:
    """The value of an input in each row, None where there are several or none; None instead of all where no row has one."""
    match how:
        case CodeColumn():
            table = [one.value(reading) for reading in how.readings]
            return [None if code is None else table[code] for code in columns[how.name].to_list()]
        case NumberColumn():
            lows: list[Any] = columns[how.name].to_list()
            if not how.high:
                return lows
            highs = columns[how.high].to_list()
            return [low if low == high else None for low, high in zip(lows, highs, strict=True)]
        case NoColumn():
            return None
        case _:
            assert_never(how)


def _recorded(how: Held, columns: pl.DataFrame, rows: int) -> list[bool]:
    """Whether each row has anything recorded."""
    match how:
        case CodeColumn():
            return [code is not None and how.readings[code] is not None for code in columns[how.name].to_list()]
        case NumberColumn():
            return [value is not None for value in columns[how.name].to_list()]
        case NoColumn():
            return [False] * rows
        case _:
            assert_never(how)


def graded_traces(rules: Rules, outcomes: Iterable[Trace | Sure], *, sections: bool, faults: bool) -> pl.DataFrame:
    """The same of what was worked out already."""
    import polars as pl

    from koirules.engines.columnar.outputs import column_types

    types = column_types(rules, sections=sections, faults=faults)
    grades = [grade.name for grade in rules.grades]
    sets: dict[int, tuple[str, ...]] = {}
    bits = range(len(rules.limits))
    rows = []
    for outcome in outcomes:
        possible = sets.get(outcome[0])
        if possible is None:
            possible = sets[outcome[0]] = tuple(name for i, name in enumerate(grades) if outcome[0] >> i & 1)
        if isinstance(outcome, Trace):
            rows.append(tuple(_cells(outcome, possible, sections=sections, faults=faults)))
            continue
        _, score, parts, bites, _ = outcome
        points = score / 100
        row: list[Any] = [possible[0], possible[0], points, points, points]
        if sections:
            row += [end for part in parts for end in (part / 100,) * 2]
        if faults:
            row += [bool(bites >> bit & 1) for bit in bits]
        rows.append(tuple(row))
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
