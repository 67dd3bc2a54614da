"""A table of records as any format gives it: headings and rows of cells, before anybody asks what they mean."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

from koirules.problems import Problem, recording
from koirules.problems.record_files import empty_file
from koirules.problems.recording import no_fish_column
from koirules.values import frozen
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Label
from koirules.vocabulary.plain_text import folded

FISH = "fish"
"""The header of the column that names the fish."""

MOST_LETTERS = 10_000
"""How long the text of one cell may be."""

_ROWS_LOOKED_AT = 20


class Told(Enum):
    """What stands in place of a cell whose problem has been told already."""

    TOLD = "told"


@frozen
class Heading:
    """The header of a column as it was written, and the row in which it stands."""

    text: str
    row: int


@frozen
class Row:
    """The cells of a row, one for each heading, and its number as a spreadsheet counts."""

    number: int
    cells: Sequence[object]


@frozen
class Table:
    """A file of records: its headings, its rows, and what was wrong with the file itself."""

    file: str
    headings: tuple[Heading, ...]
    rows: tuple[Row, ...]
    problems: tuple[Problem, ...] = ()


def refused(file: str, *problems: Problem) -> Table:
    """A table of a file that could not be read at all."""
    return Table(file, (), (), problems)


def table_of(
    file: str, grid: Sequence[tuple[int, Sequence[object]]], delimiter: str | None, problems: Sequence[Problem] = ()
) -> Table:
    """The table in a grid of numbered rows: the first row that is neither blank nor a note holds the headings.

    delimiter: what parts the cells in a text file, where a cell too many comes of one inside a value. Without one, cells
    stand in columns, and those beyond the headings belong to columns without a name.
    """
    found = list(problems)
    filled = [(number, cells, size) for number, cells in grid if (size := last_filled(cells))]
    start = next((i for i, (_, cells, size) in enumerate(filled) if not _begins_a_note(cells, size)), None)
    if start is None:
        return refused(file, *(found or [empty_file(file)]))
    header = _header(filled, start)
    if header != start:
        found.append(no_fish_column(file, filled[start][0], None, filled[header][0]))
    number, cells, size = filled[header]
    if delimiter is None:
        size = max(size for _, _, size in filled[header:])
    texts = [text_of(cell) for cell in cells[:size]]
    headings = tuple(Heading(text, number) for text in [*texts, *[""] * (size - len(texts))])
    rows: list[Row] = []
    for number, cells, size in filled[header + 1 :]:
        if _begins_a_note(cells, size) and sum(not is_blank(cell) for cell in cells) == 1:
            continue
        row = _fit(file, number, cells[:size], headings, delimiter or "")
        if isinstance(row, Problem):
            found.append(row)
        else:
            rows.append(row)
    return Table(file, headings, tuple(rows), tuple(found))


def _header(filled: Sequence[tuple[int, Sequence[object], int]], start: int) -> int:
    """Which of the filled rows holds the headings: the first, or the one near it that has the column `fish`."""
    for i, (_, cells, _) in enumerate(filled[start : start + _ROWS_LOOKED_AT], start):
        if any(isinstance(cell, str) and folded(cell) == FISH for cell in cells):
            return i
    return start


def last_filled(cells: Sequence[object]) -> int:
    """The number of cells up to the last one that is not blank."""
    count = len(cells)
    while count and is_blank(cells[count - 1]):
        count -= 1
    return count


def is_blank(cell: object) -> bool:
    """Whether nothing is in a cell."""
    return cell is None or (isinstance(cell, str) and (not cell or cell.isspace()))


def text_of(cell: object) -> str:
    """The text of a cell of a header, whatever a spreadsheet made of it."""
    if cell is Told.TOLD:
        return ""
    text = read_value(Label(), cell)
    return text if isinstance(text, str) else ""


def letters_of(index: int) -> str:
    """The letters that a spreadsheet gives to a column, counted from 0: A, B, … Z, AA."""
    letters = ""
    index += 1
    while index:
        index, last = divmod(index - 1, 26)
        letters = chr(ord("A") + last) + letters
    return letters


def _begins_a_note(cells: Sequence[object], size: int) -> bool:
    """Whether the first text of a row begins with `# `: a fish may be called #12, so the space counts."""
    first = next(cell for cell in cells[:size] if not is_blank(cell))
    return isinstance(first, str) and f"{first.strip()} ".startswith("# ")


def _fit(
    file: str, number: int, cells: Sequence[object], headings: tuple[Heading, ...], delimiter: str
) -> Row | Problem:
    """A row with one cell for each heading; a problem where more are filled, since nobody knows which are too many."""
    most = len(headings)
    if len(cells) > most:
        extra = next(cell for cell in cells[most:] if not is_blank(cell))
        return recording.row_too_long(file, number, (len(cells), most), text_of(extra), delimiter)
    for index, cell in enumerate(cells):
        if isinstance(cell, str) and len(cell) > MOST_LETTERS:
            return recording.cell_too_long(file, number, headings[index].text, MOST_LETTERS)
    return Row(number, [*cells, *[None] * (most - len(cells))])
