"""Problems of the book and of learning: each with its place, its cause and its mend."""

from __future__ import annotations

from collections.abc import Sequence

from koirules import Cell, Problem, Record


class BookError(Exception):
    """What cannot be done with a book; `problems` holds every reason."""

    def __init__(self, *problems: Problem) -> None:
        self.problems = problems
        super().__init__("\n".join(str(problem) for problem in problems))


def stop_at_judges(file: str, records: Sequence[Record]) -> None:
    """Raise BookError where a file holds the records of judges: which of them would count, nobody has said."""
    judged = next((record for record in records if record.judge), None)
    if judged is not None:
        raise BookError(
            Problem(
                "one-recorder",
                Cell(file, judged.row or None, "judge"),
                f'"{judged.fish}" was recorded by judges, but here each look at a fish has one record.',
                "Give a file with one row of each look, without the column `judge`.",
            )
        )


def no_such_book(file: str) -> Problem:
    """The file is not there."""
    return Problem(
        "no-such-book", Cell(file), "There is no such book.", "Check the name, or start one with `koirules book start`."
    )


def book_exists(file: str) -> Problem:
    """`start` never writes over a file."""
    return Problem(
        "book-exists", Cell(file), "This file is there already.", "Give another name, or enter into this book."
    )


def not_a_book(file: str, why: str) -> Problem:
    """The file is no SQLite file, another program's, or damaged."""
    return Problem(
        "not-a-book",
        Cell(file),
        f"This file cannot be read as a book: {why}.",
        "Save what can be read with `koirules book rescue`, or take your last copy of the file.",
    )


def later_book(file: str, version: int, ours: int) -> Problem:
    """The layout is of a later version of the plugin."""
    return Problem(
        "later-book",
        Cell(file),
        f"This book has layout {version}; this version reads layouts up to {ours}.",
        "Install the current version of koirules-book.",
    )


def book_in_use(file: str) -> Problem:
    """Another process holds the book for longer than we wait."""
    return Problem(
        "book-in-use",
        Cell(file),
        "Another command has been writing into this book for a minute.",
        "Try again when it has ended.",
    )


def two_fish_of_a_name(file: str, row: int, name: str, pond: str, others: Sequence[str]) -> Problem:
    """A name that the book knows from another pond."""
    where = " and ".join(f"pond {other}" if other else "no pond" for other in others)
    here = f"pond {pond}" if pond else "no pond"
    return Problem(
        "name-of-two-ponds",
        Cell(file, row, "fish"),
        f'"{name}" comes from {here} here, and the book has a fish of that name from {where}.',
        f'Say which: `--same "{name}"` if it was moved, `--other "{name}"` if it is another fish.',
    )


def which_fish(name: str, ponds: Sequence[str]) -> Problem:
    """A name that several fish have."""
    known = ", ".join(f'"{pond}"' if pond else "no pond" for pond in ponds)
    return Problem(
        "which-fish",
        Cell("book"),
        f'Several fish are named "{name}": {known}.',
        "Add `--pond` with one of these, or give the tag.",
    )


def no_such_fish(name: str, near: Sequence[str]) -> Problem:
    """Nobody of that name or tag."""
    mend = f'Did you mean "{near[0]}"?' if near else "`koirules book list` shows the names."
    return Problem("no-such-fish-in-book", Cell("book"), f'The book has no fish named or tagged "{name}".', mend)


def event_cell(file: str, row: int, column: str, text: str, expected: str) -> Problem:
    """A cell of a table of events that cannot be read."""
    return Problem(
        "event-cell",
        Cell(file, row, column),
        f'"{text}" is not {expected}.',
        f"Write {expected} into the cell, or leave it blank.",
    )


def event_columns(file: str, missing: Sequence[str], known: Sequence[str]) -> Problem:
    """A table of events without a column that it needs."""
    return Problem(
        "event-columns",
        Cell(file, 1),
        f"The table lacks the column{'s' if len(missing) > 1 else ''} {', '.join(missing)}.",
        f"Give the table the columns {', '.join(known)}.",
    )


def event_of_nobody(file: str, row: int, name: str) -> Problem:
    """An event of a fish that the book does not have."""
    return Problem(
        "event-of-nobody",
        Cell(file, row, "fish"),
        f'The book has no fish named or tagged "{name}".',
        "Enter a look at the fish first, or correct the name.",
    )


def cannot_tell(why: str, mend: str) -> Problem:
    """The picks do not say what the weights are."""
    return Problem("picks-cannot-tell", Cell("picks"), why, mend)
