"""Records from text files whose cells are parted by commas, semicolons or tabs."""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from pathlib import Path

from koirules.problems import Cell, Problem
from koirules.problems.record_files import empty_file, mixed_delimiters, unclosed_quote, wrong_delimiter
from koirules.problems.recording import cell_too_long
from koirules.records.table import MOST_LETTERS, Table, refused, table_of
from koirules.records.text_files import read_text
from koirules.values import frozen

_DELIMITERS = {",": "commas", ";": "semicolons", "\t": "tabs"}
_DECLARED = re.compile(r'"?sep=([,;\t])"?[,;\t]*\r?\n?', re.IGNORECASE)
_QUOTED = re.compile(r'"(?:[^"]|"")*"?')


@frozen
class CsvShape:
    """How a text file is laid out: the sign between cells, the lines up to the first row of records, and the headings."""

    delimiter: str
    lines_before: int
    table: Table


def read_csv(path: Path) -> Table:
    """Read the table of a CSV or TSV file; rows count as a spreadsheet counts them, the header being row 1."""
    file = str(path)
    text = read_text(path)
    if isinstance(text, Problem):
        return refused(file, text)
    delimited = _delimited(file, text)
    return refused(file, delimited) if isinstance(delimited, Problem) else _table(file, *delimited)


def csv_shape(file: str, head: str) -> CsvShape | Problem:
    """The layout of a text file from its first lines."""
    delimited = _delimited(file, head)
    if isinstance(delimited, Problem):
        return delimited
    text, delimiter = delimited
    table = _table(file, text, delimiter)
    if not table.headings:
        return next(iter(table.problems), empty_file(file))
    before = _lines_to(text, delimiter, table.headings[0].row) + head[: len(head) - len(text)].count("\n")
    return CsvShape(delimiter, before, Table(file, table.headings, (), ()))


def _lines_to(text: str, delimiter: str, row: int) -> int:
    """How many lines the rows up to one take: a cell may hold line ends."""
    import csv

    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    for _ in range(row):
        next(reader)
    return reader.line_num


def _delimited(file: str, text: str) -> tuple[str, str] | Problem:
    """The text after a line that declares its sign, and the sign that parts its cells."""
    declared = _DECLARED.match(text)
    if declared:
        text = text[declared.end() :]
    header_row, header = _header(text)
    if not header:
        return empty_file(file)
    delimiter = declared[1] if declared else _delimiter(file, header_row, header)
    return delimiter if isinstance(delimiter, Problem) else (text, delimiter)


def _table(file: str, text: str, delimiter: str) -> Table:
    grid: list[tuple[int, list[str]]] = []
    problems = list(_split(file, text, delimiter, grid))
    problems += _mixed(file, delimiter, grid)
    told = {problem.site.row for problem in problems if isinstance(problem.site, Cell)}
    return table_of(file, [row for row in grid if row[0] not in told], delimiter, problems)


def _header(text: str) -> tuple[int, str]:
    """The number and the text of the first line that is neither blank nor a note."""
    for number, line in enumerate(io.StringIO(text, newline=None), 1):
        stripped = line.strip().strip('"').lstrip()
        if stripped and not f"{stripped} ".startswith("# ") and stripped.strip(",;\t"):
            return number, line
    return 0, ""


def _delimiter(file: str, row: int, header: str) -> str | Problem:
    """The sign that parts the cells of the header; a problem where two signs do, or none that can be read."""
    outside = _QUOTED.sub("", header)
    counts = {sign: outside.count(sign) for sign in _DELIMITERS}
    best = max(counts, key=lambda sign: counts[sign])
    others = [sign for sign in _DELIMITERS if sign != best and counts[sign]]
    if others and counts[others[0]] == counts[best]:
        return mixed_delimiters(file, row, _DELIMITERS[best], _DELIMITERS[others[0]])
    if not counts[best]:
        stray = next((sign for sign in "|:" if sign in outside), None)
        return wrong_delimiter(file, row, stray) if stray else ","
    return best


def _split(file: str, text: str, delimiter: str, grid: list[tuple[int, list[str]]]) -> Iterator[Problem]:
    """Fill the grid with the cells of each row, up to a row that cannot be split."""
    import csv

    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    number = 0
    while True:
        number += 1
        try:
            grid.append((number, next(reader)))
        except StopIteration:
            return
        except csv.Error as error:
            if "field limit" in str(error):
                yield cell_too_long(file, number, None, MOST_LETTERS)
            else:
                yield unclosed_quote(file, number)
            return


def _mixed(file: str, delimiter: str, grid: list[tuple[int, list[str]]]) -> Iterator[Problem]:
    """Rows with one cell only that another sign would split into as many as the header has."""
    width = next((len(cells) for _, cells in grid if len(cells) > 1), 0)
    for number, cells in grid:
        if width > 1 and len(cells) == 1:
            fits = [sign for sign in _DELIMITERS if sign != delimiter and cells[0].count(sign) == width - 1]
            if fits:
                yield mixed_delimiters(file, number, _DELIMITERS[delimiter], _DELIMITERS[fits[0]])
