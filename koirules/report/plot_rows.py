"""The plot of a batch that several standards graded: a row of bars for each, every row with a scale and lines of its own."""

from __future__ import annotations

from collections.abc import Sequence
from typing import assert_never

from attrs import evolve

from koirules.records.about import About
from koirules.report.plot import plot_of
from koirules.report.plot_marks import GROUND, INK, QUIET, Area, Drawing, Line, Mark, Words, box
from koirules.report.score_bins import most_points
from koirules.results.result import Result
from koirules.vocabulary.subject import in_common

_LEFT, _ROW, _BETWEEN = 64.0, 40.0, 26.0
"""Where words begin, the height of a row that is only words, and the room between two rows."""


def plot_of_rows(parts: Sequence[tuple[About, Sequence[Result]]], records: str, left: int) -> Drawing:
    """Lay the rows out, in the order of the standards; one of them at least gives points to a fish.

    records: the name of their file. left: how many fish of it were not graded.
    """
    rows = [_row(about, results) for about, results in parts]
    if left:
        rows.append(_said(f"Not graded: {in_common(about.subject for about, _ in parts).counted(left)}", ""))
    wide = max(row.width for row in rows)
    tops = [sum(row.height + _BETWEEN for row in rows[:number]) for number in range(len(rows))]
    high = tops[-1] + rows[-1].height
    marks: list[Mark] = [box(0, 0, wide, high, GROUND)]
    for number, (row, top) in enumerate(zip(rows, tops, strict=True)):
        marks += [_lower(mark, top) for mark in row.marks]
        if number:
            marks.append(Line((0, top - _BETWEEN / 2), (wide, top - _BETWEEN / 2), INK, 1.5))
    told = " ".join(f"{row.title}: {row.describe}".strip() for row in rows)
    return Drawing(f"{records or 'A batch'} by {len(parts)} standards", told, wide, high, tuple(marks))


def _row(about: About, results: Sequence[Result]) -> Drawing:
    about = evolve(about, records="")
    if most_points(results):
        return plot_of(results, about)
    return _said(f"{about.title}, edition {about.edition}", "No section of this standard gives points.")


def _said(title: str, words: str) -> Drawing:
    heading = Words(title, (_LEFT, 22), 19, bold=True)
    more = (Words(words, (_LEFT, 43), 13, ink=QUIET),) if words else ()
    return Drawing(title, words, _LEFT, _ROW + 20 * len(more), (heading, *more))


def _lower(mark: Mark, by: float) -> Mark:
    match mark:
        case Area(points=points):
            return evolve(mark, points=tuple((x, y + by) for x, y in points))
        case Line(start=(x1, y1), end=(x2, y2)):
            return evolve(mark, start=(x1, y1 + by), end=(x2, y2 + by))
        case Words(at=(x, y)):
            return evolve(mark, at=(x, y + by))
        case _:
            assert_never(mark)
