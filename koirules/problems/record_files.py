"""Problems of a file of records as a whole: what keeps it from being read as a table."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Cell, Problem
from koirules.problems.quoting import in_words, quoted, visible


def no_such_file(file: str, near: str | None) -> Problem:
    """There is no file of that name."""
    mend = f"Did you mean {quoted(near)}?" if near else "Check the name and the folder."
    return Problem("no-such-file", Cell(file), "There is no such file.", mend)


def unreadable_file(file: str, why: str, mend: str = "Check that it is yours to read.") -> Problem:
    """The file cannot be opened or is not what its name says."""
    return Problem("unreadable-file", Cell(file), f"The file cannot be read: {visible(why)}.", mend)


def locked_file(file: str) -> Problem:
    """A spreadsheet is protected by a password, or in a format of long ago."""
    return unreadable_file(
        file,
        "it is protected by a password, or an old spreadsheet under a new name",
        'Open it in a spreadsheet program, take the password off, and save it as "Excel workbook (.xlsx)".',
    )


def no_workbook(file: str, why: str) -> Problem:
    """A file is called .xlsx and is no workbook that can be read."""
    return unreadable_file(
        file,
        f"it is no sound spreadsheet ({why})",
        'Open it in a spreadsheet program and save it again as "Excel workbook (.xlsx)", or as "CSV UTF-8".',
    )


def misnamed_file(file: str, looks_like: str, mend: str) -> Problem:
    """The content of the file is of another format than its ending says."""
    return unreadable_file(file, f"it looks like {looks_like}, not like text", mend)


def unknown_record_ending(file: str, ending: str, others: Sequence[str] = ()) -> Problem:
    """The ending of the name is none that records can have. others: endings that plugins read."""
    what = f"Records cannot be read from a file that ends in {quoted(ending)}." if ending else "The name has no ending."
    return Problem(
        "unknown-ending",
        Cell(file),
        what,
        f"Save them as {in_words(['.xlsx', '.csv (or .tsv)', '.jsonl (or .ndjson)', '.json', *others])}.",
    )


def too_large(file: str, size: int, most: int) -> Problem:
    """The file is larger than can be read in one go."""
    return Problem(
        "too-large",
        Cell(file),
        f"The file holds {size:,} bytes; {most:,} can be read in one go.",
        "Split it into several files, a batch in each.",
    )


def far_cell(file: str, row: int, column: str) -> Problem:
    """A cell far away from all others makes the sheet too large to read."""
    return Problem(
        "too-large",
        Cell(file, row, column),
        f"The sheet reaches down to row {row:,} and across to column {column}, which is too large to read in one go.",
        "Look for something far below or right of the table and delete those rows and columns.",
    )


def empty_file(file: str) -> Problem:
    """There is nothing in the file."""
    return Problem(
        "empty-file",
        Cell(file),
        "There is nothing in the file.",
        'Its first row holds the names of the columns, "fish" and the traits; `koirules sheet` makes a blank one.',
    )


def no_sheet(file: str) -> Problem:
    """A workbook has no sheet with cells."""
    return Problem("empty-file", Cell(file), "There is no sheet with cells in the file.", "Add one with the records.")


def not_utf8(file: str, row: int | None, looks_like: str, sample: str) -> Problem:
    """The bytes are in another encoding; sample: the first word that shows it, read in the encoding it looks like."""
    shown = f" (there it reads {quoted(sample)})" if sample else ""
    return Problem(
        "not-utf8",
        Cell(file, row),
        f"The file is not saved as UTF-8; it looks like {looks_like}{shown}.",
        'In the spreadsheet program choose "Save as" and the type "CSV UTF-8"; in an editor the encoding "UTF-8".',
    )


def zero_bytes(file: str, row: int) -> Problem:
    """There are zero bytes in a text file."""
    return Problem(
        "zero-bytes",
        Cell(file, row),
        "There is a zero byte here, which no text holds; the file may be damaged.",
        "Save it again from the program that it came from.",
    )


def unclosed_quote(file: str, row: int) -> Problem:
    """A cell in quotes is never closed, or goes on after its closing quote."""
    return Problem(
        "unclosed-quote",
        Cell(file, row),
        'In this row a cell begins with a " that is never closed, or goes on after the closing one.',
        'Delete the ", or close it at the end of the cell; a " inside of quotes is written twice: "".',
    )


def mixed_delimiters(file: str, row: int, one: str, other: str) -> Problem:
    """Some cells are parted by one sign and some by another."""
    return Problem(
        "mixed-delimiters",
        Cell(file, row),
        f"Cells are parted by {one} in one place and by {other} in another.",
        'Part all cells by the same sign; put " around a cell that holds the sign itself.',
    )


def wrong_delimiter(file: str, row: int, sign: str) -> Problem:
    """The header has one column only and a sign in it that other programs part cells by."""
    return Problem(
        "wrong-delimiter",
        Cell(file, row),
        f'The header has one cell only, with "{sign}" in it.',
        "Part the cells by a comma, a semicolon or a tab.",
    )


def not_a_list(file: str, lines: bool) -> Problem:
    """A .json file does not hold one list of objects; lines: it looks like JSON lines."""
    mend = (
        "It looks like one object on each line: end its name in .jsonl." if lines else "Put all records into one list."
    )
    return Problem(
        "not-a-list", Cell(file), 'A .json file of records holds one list of objects: [{"fish": "A1"}, …].', mend
    )
