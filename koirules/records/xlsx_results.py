"""Results as an Excel workbook: a sheet of results and one about the standard."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.records.about import About
from koirules.records.exchange import Sheet
from koirules.records.not_graded import Row
from koirules.records.recorded_values import Measured
from koirules.records.result_sheets import sheets_of
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
    workbook = open_workbook(path, in_order=True)
    styles = styles_of(workbook)
    first, *others = sheets_of(results, about)
    _write_results(workbook.add_worksheet(first.name), first, styles)
    for sheet in others[:-1]:
        _write_rounds(workbook.add_worksheet(sheet.name), sheet, styles)
    _write_about(workbook.add_worksheet(others[-1].name), others[-1], styles)
    close_workbook(workbook)


def _write_results(page: Worksheet, sheet: Sheet, styles: Styles) -> None:
    widths = _widths(sheet)
    for column, width in enumerate(widths):
        page.set_column(column, column, width)
    page.freeze_panes(1, 1)
    print_across(page)
    page.autofilter(0, 0, max(len(sheet.rows), 1), len(sheet.headings) - 1)
    write_texts(page, 0, sheet.headings, styles.header)
    for row, cells in enumerate(sheet.rows, 1):
        shown = zip((cell if isinstance(cell, str) else "" for cell in cells), widths, strict=True)
        page.set_row(row, height_for(shown))
        for column, cell in enumerate(cells):
            match cell:
                case Measured():
                    page.write_number(row, column, float(cell), styles.beside)
                case Decimal():
                    page.write_number(row, column, float(cell), styles.score)
                case str() if cell:
                    page.write_string(row, column, for_workbook(cell), styles.beside)
                case _:
                    pass


def _write_rounds(page: Worksheet, sheet: Sheet, styles: Styles) -> None:
    for column, width in enumerate(_widths(sheet)):
        page.set_column(column, column, width)
    page.freeze_panes(1, 0)
    print_across(page)
    page.autofilter(0, 0, max(len(sheet.rows), 1), len(sheet.headings) - 1)
    write_texts(page, 0, sheet.headings, styles.header)
    for number, row in enumerate(sheet.rows, 1):
        write_texts(page, number, map(_shown, row), styles.beside)


def _write_about(page: Worksheet, sheet: Sheet, styles: Styles) -> None:
    page.set_column(0, 0, width_for(_shown(name) for name, _ in sheet.rows), styles.header)
    page.set_column(1, 1, 100, styles.wrapped)
    for row, (name, text) in enumerate(sheet.rows):
        page.write_string(row, 0, for_workbook(_shown(name)), styles.header)
        page.write_string(row, 1, for_workbook(_shown(text)), styles.wrapped)


def _widths(sheet: Sheet) -> list[int]:
    first = [[_shown(cell) for cell in row] for row in sheet.rows[:_ROWS_FOR_WIDTH]]
    return [width_for([heading, *(row[column] for row in first)]) for column, heading in enumerate(sheet.headings)]


def _shown(cell: str | Decimal | None) -> str:
    return f"{cell:.2f}" if isinstance(cell, Decimal) else cell or ""
