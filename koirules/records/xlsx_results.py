"""Results as an Excel workbook: a sheet of results and one about the standard."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.records.about import About
from koirules.records.not_graded import Row
from koirules.records.result_columns import ResultColumns, columns_of
from koirules.records.safe_text import for_workbook
from koirules.records.workbook import (
    Styles,
    close_workbook,
    height_for,
    open_workbook,
    print_across,
    styles_of,
    width_for,
    write_texts,
)

if TYPE_CHECKING:
    from xlsxwriter.worksheet import Worksheet  # type: ignore[import-untyped]

_ROWS_FOR_WIDTH = 50


def write_xlsx(path: Path, results: Sequence[Row], about: About) -> None:
    """Write a workbook with the sheets `results`, one row a fish, and `standard`."""
    columns = columns_of(results)
    workbook = open_workbook(path, in_order=True)
    styles = styles_of(workbook)
    _write_results(workbook.add_worksheet("results"), results, columns, styles)
    if about.rounds:
        _write_rounds(workbook.add_worksheet("rounds"), about, styles)
    _write_about(workbook.add_worksheet("standard"), about, styles)
    close_workbook(workbook)


def _write_results(sheet: Worksheet, results: Sequence[Row], columns: ResultColumns, styles: Styles) -> None:
    headings = columns.headings
    first = [[_shown(cell) for cell in columns.row(result)] for result in results[:_ROWS_FOR_WIDTH]]
    widths = [width_for([heading, *(row[column] for row in first)]) for column, heading in enumerate(headings)]
    for column, width in enumerate(widths):
        sheet.set_column(column, column, width)
    sheet.freeze_panes(1, 1)
    print_across(sheet)
    sheet.autofilter(0, 0, max(len(results), 1), len(headings) - 1)
    write_texts(sheet, 0, headings, styles.header)
    for row, result in enumerate(results, 1):
        cells = list(columns.row(result))
        shown = zip((cell if isinstance(cell, str) else "" for cell in cells), widths, strict=True)
        sheet.set_row(row, height_for(shown))
        for column, cell in enumerate(cells):
            match cell:
                case Decimal():
                    sheet.write_number(row, column, float(cell), styles.score)
                case str() if cell:
                    sheet.write_string(row, column, for_workbook(cell), styles.beside)
                case _:
                    pass


def _write_rounds(sheet: Worksheet, about: About, styles: Styles) -> None:
    """One row for each round and fish that it looked at; who is tied for how many places."""
    headings = ("round", "fish", "fate", "by_hand", "sent_to", "next_look")
    rows: list[tuple[str, ...]] = []
    for one in about.rounds:
        by_hand = {decision.fish: f"{decision.by}: {decision.reason}" for decision in one.by_hand}
        again = "" if one.again is None else one.again.isoformat()
        rows.extend((one.title, fish, "kept", by_hand.get(fish, ""), one.sent, again) for fish in one.kept)
        for tie in one.ties:
            fate = f"tied for {tie.places} place{'s' if tie.places != 1 else ''}"
            rows.extend((one.title, fish, fate, "", "", "") for fish in tie.fish)
        rows.extend((one.title, fish, "left", "", "", "") for fish in one.left)
    for column, heading in enumerate(headings):
        sheet.set_column(column, column, width_for([heading, *(row[column] for row in rows[:_ROWS_FOR_WIDTH])]))
    sheet.freeze_panes(1, 0)
    print_across(sheet)
    sheet.autofilter(0, 0, max(len(rows), 1), len(headings) - 1)
    write_texts(sheet, 0, headings, styles.header)
    for number, row in enumerate(rows, 1):
        write_texts(sheet, number, row, styles.beside)


def _write_about(sheet: Worksheet, about: About, styles: Styles) -> None:
    lines = [line for part in about.parts for line in _lines_about(part)] if about.parts else _lines_about(about)
    lines += [("caution", caution) for caution in about.cautions]
    sheet.set_column(0, 0, width_for(name for name, _ in lines), styles.header)
    sheet.set_column(1, 1, 100, styles.wrapped)
    for row, (name, text) in enumerate(lines):
        sheet.write_string(row, 0, for_workbook(name), styles.header)
        sheet.write_string(row, 1, for_workbook(text), styles.wrapped)


def _lines_about(about: About) -> list[tuple[str, str]]:
    return [
        ("title", about.title),
        ("edition", about.edition),
        ("seal", about.seal),
        ("variety", about.variety or ""),
        ("stage", about.stage or ""),
        ("file", about.file),
        *((f"setting {name}", value) for name, value in about.settings.items()),
        *(("alert" if alert.surely else "perhaps", alert.words) for alert in about.alerts),
        *((f"round {one.name}", f"{one.title}: {one.asks}") for one in about.rounds),
    ]


def _shown(cell: str | Decimal | None) -> str:
    return f"{cell:.2f}" if isinstance(cell, Decimal) else cell or ""
