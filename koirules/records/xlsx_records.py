"""Records from Excel workbooks: the sheet named `records`, or the first one."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.problems import Problem, recording
from koirules.problems.record_files import far_cell, locked_file, no_sheet, no_workbook
from koirules.records.exchange import MOST_CELLS
from koirules.records.table import Table, Told, letters_of, refused, table_of
from koirules.records.text_files import read_bytes
from koirules.records.xlsx_parts import Marks, Position, UnsoundError, check_size, read_marks
from koirules.vocabulary.quantities import write_decimal

if TYPE_CHECKING:
    from python_calamine import CalamineSheet, CalamineWorkbook

SHEET = "records"
"""The name of the sheet that is read where there are several."""

_OLD_OR_LOCKED = b"\xd0\xcf\x11\xe0"
_ERRORS = frozenset(
    {"#REF!", "#DIV/0!", "#VALUE!", "#NAME?", "#N/A", "#NUM!", "#NULL!", "#SPILL!", "#CALC!", "#FIELD!"}
)


def read_xlsx(path: Path) -> Table:
    """Read the table of a workbook."""
    from python_calamine import CalamineError, CalamineWorkbook

    file = str(path)
    content = read_bytes(path)
    if isinstance(content, Problem):
        return refused(file, content)
    if content.startswith(_OLD_OR_LOCKED):
        return refused(file, locked_file(file))
    try:
        check_size(path)
        with CalamineWorkbook.from_path(path) as workbook:
            read = _read_workbook(file, path, workbook)
    except (CalamineError, UnsoundError, OSError) as error:
        return refused(file, no_workbook(file, str(error).split("\n")[0][:100]))
    except (OverflowError, ValueError):
        return refused(file, no_workbook(file, "a date or time in it is beyond any calendar"))
    except BaseException as error:
        # The library's own panics are no ordinary exceptions and cannot be named by an import.
        if not isinstance(error, Exception) and type(error).__name__ != "PanicException":
            raise
        return refused(file, no_workbook(file, "it cannot be understood"))
    return refused(file, read) if isinstance(read, Problem) else _table(file, *read)


def _read_workbook(file: str, path: Path, workbook: CalamineWorkbook) -> Problem | tuple[list[list[object]], Marks]:
    """The values and the marks of the sheet of records."""
    from python_calamine import SheetTypeEnum

    sheets = [sheet.name for sheet in workbook.sheets_metadata if sheet.typ == SheetTypeEnum.WorkSheet]
    if not sheets:
        return no_sheet(file)
    name = next((sheet for sheet in sheets if sheet.strip().casefold() == SHEET), sheets[0])
    marks = read_marks(path, name)
    if marks.rows * marks.columns > MOST_CELLS:
        return far_cell(file, marks.rows, letters_of(marks.columns - 1))
    sheet = workbook.get_sheet_by_name(name)
    merged = _merged(file, sheet)
    if merged is not None:
        return merged
    return [list(cells) for cells in sheet.to_python(skip_empty_area=False)], marks


def _merged(file: str, sheet: CalamineSheet) -> Problem | None:
    ranges = sheet.merged_cell_ranges or []
    if not ranges:
        return None
    named = [f"{letters_of(left)}{top + 1}:{letters_of(right)}{bottom + 1}" for (top, left), (bottom, right) in ranges]
    return recording.merged_cells(file, ranges[0][0][0] + 1, named)


def _table(file: str, grid: list[list[object]], marks: Marks) -> Table:
    """The table of a grid of values and the marks of its cells; cells with a problem are marked as told."""
    told: dict[Position, str | None] = {**marks.errors, **dict.fromkeys(marks.without_value)}
    for row, cells in enumerate(grid):
        for column, cell in enumerate(cells):
            if isinstance(cell, str) and cell in _ERRORS:
                told[row, column] = cell
    for row, column in marks.percent:
        if row < len(grid) and column < len(grid[row]):
            grid[row][column] = _in_percent(grid[row][column])
    for row, column in told:
        _put(grid, row, column)
    table = table_of(file, list(enumerate(grid, 1)), delimiter=None)
    names = [heading.text for heading in table.headings]
    problems = [
        _tell(file, names, position, error) for position, error in sorted(told.items(), key=lambda item: item[0])
    ]
    return Table(table.file, table.headings, table.rows, (*table.problems, *problems))


def _in_percent(cell: object) -> object:
    """A number that its sheet shows as per cent, written as the sheet shows it."""
    if isinstance(cell, bool) or not isinstance(cell, int | float):
        return cell
    return f"{write_decimal(Decimal(repr(cell)) * 100)} %"


def _put(grid: list[list[object]], row: int, column: int) -> None:
    """Mark a cell as told, also where it lies outside of the values that were read."""
    while len(grid) <= row:
        grid.append([])
    cells = grid[row]
    cells += [None] * (column + 1 - len(cells))
    cells[column] = Told.TOLD


def _tell(file: str, names: list[str], position: Position, error: str | None) -> Problem:
    row, column = position
    name = names[column] if column < len(names) and names[column] else letters_of(column)
    if error is None:
        return recording.formula_without_value(file, row + 1, name)
    return recording.formula_error(file, row + 1, name, error)
