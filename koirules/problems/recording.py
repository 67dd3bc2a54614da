"""Problems of records: what cannot be read in a table of fish, from the file as a whole down to one cell."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from attrs import evolve

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import in_words, quoted, visible


def cell(file: str, row: int | None, column: str) -> Cell:
    """A place in a table, with the header of its column made safe to show."""
    return Cell(file, row, visible(column))


SHARE_OR_PART = "value-share-or-part"
"""The code of a bare number where a share stands in %."""

_MOST_ROWS = 8
"""So many rows with the same mistake are named by their numbers."""


def told_once(problems: Iterable[Problem]) -> list[Problem]:
    """Problems, each mistake that a column repeats told once, at its first row, with the rows that have it."""
    groups: dict[object, list[Problem]] = {}
    for problem in problems:
        site = problem.site
        if not isinstance(site, Cell) or site.row is None or site.column is None:
            groups[len(groups), problem] = [problem]
            continue
        said = "" if problem.code == SHARE_OR_PART else (problem.cause, problem.mend)
        groups.setdefault((site.file, site.column, problem.code, problem.warning, said), []).append(problem)
    return [group[0] if len(group) == 1 else _repeated(group) for group in groups.values()]


def _repeated(group: Sequence[Problem]) -> Problem:
    """One problem for the rows of a column that have the same one."""
    first = group[0]
    sites = [one.site for one in group if isinstance(one.site, Cell)]
    named = [str(site.row) for site in sites[:_MOST_ROWS]]
    more = len(group) - len(named)
    rows = in_words([*named, f"{more:,} more"] if more else named, "and")
    if first.code != SHARE_OR_PART:
        return evolve(
            first, site=evolve(sites[0], fish=""), cause=f"{first.cause} It stands in {len(group):,} rows: {rows}."
        )
    return evolve(
        first,
        site=evolve(sites[0], fish=""),
        cause=f"{len(group):,} numbers of this column, which is in %, are 1 or less: rows {rows}.",
        mend="If they are parts of one, write 45 for 0.45 in the whole column; if they are in %, write 0.45 % for 0.45.",
    )


def read_as_said(site: Cell, word: str, value: str, rows: Sequence[int]) -> Problem:
    """Words in cells that are no value of their column, and were read by a phrase."""
    named = [str(row) for row in rows[:_MOST_ROWS]]
    more = len(rows) - len(named)
    listed = in_words([*named, f"{more:,} more"] if more else named, "and")
    return Problem(
        "read-as-said",
        site,
        f"{quoted(word)} was read as {value} ({'row' if len(rows) == 1 else f'{len(rows):,} rows:'} {listed}).",
        "Write another word of the column where something else was meant.",
        warning=True,
    )


def unnamed_column(file: str, row: int, letters: str, first: str) -> Problem:
    """A column has values but no header."""
    return Problem(
        "unnamed-column",
        Cell(file, row, letters),
        f"The column {letters} has no header, but there is something in it ({first}).",
        "Write the trait's name at the top of the column, or empty the column.",
    )


def no_fish_column(file: str, row: int | None, instead: str | None, later: int | None) -> Problem:
    """No column names the fish; instead: a column that may do so; later: a row that looks like the header."""
    if later is not None:
        mend = f'Row {later} looks like the header: delete the rows above it, or begin each of them with "# ".'
    elif instead is not None:
        mend = f'If the column {quoted(instead)} names them, rename it to "fish".'
    else:
        mend = 'Add a column "fish" with a name or number for each row, no two the same.'
    return Problem("no-fish-column", Cell(file, row), 'There is no column "fish".', mend)


def unknown_column(file: str, row: int, column: str, *meant: str) -> Problem:
    """A column that no trait claims; meant: headers that may have been meant."""
    guess = f"Did you mean {in_words([quoted(one) for one in meant])}? Otherwise" if meant else "Check the spelling;"
    return Problem(
        "unknown-column",
        cell(file, row, column),
        f"There is no trait {quoted(column)}.",
        f"{guess} keep the column as a label with `--label {_on_command_line(column)}`, or delete it.",
    )


def doubled_column(file: str, row: int, column: str, first: str, trait: str) -> Problem:
    """Two columns hold the same trait."""
    same = "" if column == first else f", as {quoted(first)} and as {quoted(column)}"
    return Problem(
        "doubled-column",
        cell(file, row, column),
        f"The column for {trait} is there twice{same}.",
        "Keep one of the two.",
    )


def unknown_column_unit(file: str, row: int, column: str, unit: str, units: Sequence[str]) -> Problem:
    """A header gives a unit that koirules does not know."""
    mend = (
        f"Convert the numbers, and write {in_words(units)} there." if units else "Take the brackets out of the header."
    )
    return Problem(
        "unknown-column-unit",
        cell(file, row, column),
        f"{quoted(unit)} in the brackets is not a unit that koirules knows.",
        mend,
    )


def wrong_column_unit(site: Cell, unit: str, measure: str, units: Sequence[str]) -> Problem:
    """A header gives a unit that measures something else."""
    return Problem(
        "wrong-column-unit",
        site,
        f"The header gives the unit {unit}, but this is a {measure}.",
        f"Convert the numbers, and write {in_words(units)} there.",
    )


def column_unit_not_wanted(file: str, row: int, column: str, unit: str, name: str) -> Problem:
    """A header gives a unit to values that have none."""
    return Problem(
        "column-unit-not-wanted",
        cell(file, row, column),
        f"The header gives the unit {unit}, but {name} has no unit.",
        f'Write "{name}" alone.',
    )


def missing_label(file: str, label: str, meant: str | None) -> Problem:
    """A column that was declared as a label is not there."""
    mend = f"Did you mean {quoted(meant)}?" if meant else "Check the name after `--label`."
    return Problem(
        "missing-label", Cell(file), f"There is no column {quoted(label)} to carry along.", mend, warning=True
    )


def unnamed_fish(file: str, row: int) -> Problem:
    """A row has values, but no fish."""
    return Problem(
        "unnamed-fish",
        Cell(file, row, "fish"),
        "The row has values, but no name in the column `fish`.",
        "Write the name or number, or empty the row.",
    )


def doubled_fish(file: str, row: int, fish: str, first: int) -> Problem:
    """Two rows are of the same fish."""
    return Problem(
        "doubled-fish",
        Cell(file, row, "fish"),
        f"{quoted(fish)} stands in row {first} already.",
        "If it is another one, give it another name; if it is the same, keep one of the two rows.",
    )


def doubled_look(file: str, row: int, fish: str, day: str, first: int) -> Problem:
    """Two rows are of the same fish on the same day."""
    return Problem(
        "doubled-look",
        Cell(file, row, "fish"),
        f"{quoted(fish)} was looked at on {day} in row {first} already.",
        "If it is another one, give it another name; if it is another look, give it its own day.",
    )


def doubled_number(file: str, row: int, fish: str, look: int, first: int) -> Problem:
    """Two rows are the same look at the same fish."""
    return Problem(
        "doubled-number",
        Cell(file, row, "look"),
        f"Look {look} at {quoted(fish)} stands in row {first} already.",
        "Give the later one the next number: each look in one sorting has its own.",
    )


def doubled_judge(file: str, row: int, fish: str, judge: str, first: int) -> Problem:
    """Two rows are of the same fish by the same judge."""
    return Problem(
        "doubled-judge",
        Cell(file, row, "judge"),
        f"{quoted(judge)} judged {quoted(fish)} in row {first} already.",
        "If it was another judge, write that name; if it is a later look, give it its number in a column `look`, or its day.",
    )


def not_a_look(file: str, row: int | None, written: str) -> Problem:
    """What stands in the column of looks is none."""
    return Problem(
        "not-a-look",
        Cell(file, row, "look"),
        f"{quoted(written)} is no number of a look.",
        "Write 1 for the first look of a sorting, 2 for the second, and so on up to 60.",
    )


def undated_look(file: str, row: int, fish: str, other: int) -> Problem:
    """A fish has several rows, and one of them has no date."""
    return Problem(
        "undated-look",
        Cell(file, row, "date"),
        f"{quoted(fish)} also stands in row {other}, and without its day nobody knows which look came first.",
        "Write the day of each look: 2026-11-25.",
    )


def not_a_day(file: str, row: int, written: str) -> Problem:
    """What stands in the column of dates is none, or one that could be read in two ways."""
    return Problem(
        "not-a-day",
        Cell(file, row, "date"),
        f"{quoted(written)} is not a date with only one meaning.",
        "Write year, month and day: 2026-11-25.",
    )


def row_too_long(file: str, row: int, cells_and_most: tuple[int, int], extra: str, delimiter: str) -> Problem:
    """A row has more cells than the header has columns; extra: the first one over."""
    cells, most = cells_and_most
    inside = {
        ",": "a comma inside a value: write 12.5 instead of 12,5",
        ";": "a semicolon inside a value: put a space between two places",
    }
    return Problem(
        "row-too-long",
        Cell(file, row),
        f"The row has {cells} cells, but the header has {most}; the first one over is {quoted(extra)}.",
        f'Look for {inside.get(delimiter, "a tab too many")}, or put " around the cell.',
    )


def cell_too_long(file: str, row: int, column: str | None, most: int) -> Problem:
    """A cell holds more text than a cell may."""
    return Problem(
        "cell-too-long",
        Cell(file, row, None if column is None else visible(column)),
        f"The cell holds more than {most:,} letters.",
        'Shorten it; in a text file, look for a " in an earlier row that is never closed.',
    )


def wrong_value(site: Cell, code: str, cause: str, mend: str) -> Problem:
    """One value cannot be read."""
    return Problem(code, site, cause, mend)


def fractions_for_percent(file: str, column: str, sample: str) -> Problem:
    """All values of a column in % are 1 or less, as if they were parts of one."""
    return Problem(
        "fractions-for-percent",
        cell(file, None, column),
        f"Every value here is 1 % or less (the first is {sample}).",
        "If they are parts of one, write them in %: 45 and not 0.45.",
        warning=True,
    )


def too_many_columns(file: str, row: int, columns: int, most: int) -> Problem:
    """More headings than a spreadsheet can have."""
    return Problem(
        "too-many-columns",
        Cell(file, row),
        f"The header has {columns:,} columns, and a sheet has at most {most:,}.",
        "Check the sign that parts the cells, and keep the columns of traits only.",
    )


def value_unlikely(site: Cell, value: str, why: str, more: int) -> Problem:
    """A number that can be, but is unlikely. why: as a clause; more: how many others of its column are unlikely."""
    others = f" ({more:,} more in this column)" if more else ""
    return Problem(
        "value-unlikely",
        site,
        f"{value} is {why}{others}.",
        "Look again. It was graded as recorded.",
        warning=True,
    )


def patch_astray(file: str, row: int, column: str, text: str) -> Problem:
    """A patch of a map stands in a column that is carried along: the map was cut where a sign parts the columns."""
    return Problem(
        "patch-astray",
        cell(file, row, column),
        f"{quoted(text)} reads as a patch of a map, and this column is no map.",
        "A sign between two patches that also parts the columns cuts a map in two: put the whole map in quotes.",
    )


def formula_error(file: str, row: int, column: str, error: str) -> Problem:
    """A formula gave an error and no value."""
    return Problem(
        "formula-error",
        cell(file, row, column),
        f"The formula in this cell gives the error {visible(error)} and no value.",
        "Mend the formula, or write the value itself; empty the cell if it was not recorded.",
    )


def formula_without_value(file: str, row: int, column: str) -> Problem:
    """A formula was never worked out by the program that wrote the file."""
    return Problem(
        "formula-without-value",
        cell(file, row, column),
        "The cell holds a formula whose value the file does not hold.",
        "Open the file in a spreadsheet program, let it work the formulas out, and save it again.",
    )


def merged_cells(file: str, row: int, ranges: Sequence[str]) -> Problem:
    """Cells are merged, so that it cannot be told which row or column a value belongs to."""
    shown = in_words([*ranges[:3], f"{len(ranges) - 3} more"] if len(ranges) > 3 else list(ranges), "and")
    return Problem(
        "merged-cells",
        Cell(file, row),
        f"Cells are merged ({shown}), so a value there belongs to several rows or traits.",
        "Select the sheet, undo the merging, and write each value into its own cell.",
    )


def broken_line(file: str, row: int, why: str) -> Problem:
    """A line is not JSON."""
    return Problem(
        "broken-line",
        Cell(file, row),
        f"This is not JSON: {visible(why)}.",
        'Each record is one object such as {"fish": "A1", "length": "12 cm"}, with " around every text.',
    )


def not_an_object(file: str, row: int, what: str) -> Problem:
    """A JSON value is not an object."""
    return Problem(
        "not-an-object",
        Cell(file, row),
        f"Here stands {what}, but each record is an object.",
        'Write {"fish": "A1", "length": "12 cm"}, with a key for each trait.',
    )


def doubled_key(file: str, row: int, key: str) -> Problem:
    """A JSON object has the same key twice."""
    return Problem(
        "doubled-key",
        cell(file, row, key),
        f"The key {quoted(key)} is there twice in this object.",
        "Keep one of the two.",
    )


def _on_command_line(column: str) -> str:
    plain = column.replace("_", "a").replace("-", "a").isalnum()
    return visible(column) if plain else f"'{visible(column)}'"


def unknown_trait(name: str, meant: str | None) -> Problem:
    """A record given by a program names a trait that the standard does not have."""
    mend = f'Did you mean "{meant}"?' if meant else "Leave it out, or declare it in the standard: `trait NAME as …`."
    return Problem("unknown-column", Cell("record", None, name), f'No trait is called "{name}".', mend)


def key_of_another(name: str, trait: str) -> Problem:
    """Two keys of a record name one trait."""
    return Problem(
        "doubled-key",
        Cell("record", None, visible(name)),
        f"This key names {trait}, and so does another one.",
        "Keep one of the two.",
    )
