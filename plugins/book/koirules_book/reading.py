"""A book as a file of records: every look a row, for whatever koirules reads records for."""

from __future__ import annotations

from collections import Counter
from pathlib import Path

from koirules.hooks import Grid, UnreadableError
from koirules_book.book import Book
from koirules_book.problems import BookError

_SAVE = "Save what can be read with `koirules book rescue`, or take your last copy of the file."


def read_book(path: Path) -> Grid:
    """The looks of a book, fish by fish. Raises UnreadableError for a file that cannot be read as one.

    A name that several fish have is followed by the pond of each, so that looks stay apart.
    """
    try:
        with Book.open(path) as book:
            rows = book.db.execute("SELECT id, name, pond FROM fish").fetchall()
            looks = list(book.all_looks())
    except BookError as error:
        raise UnreadableError(error.problems[0].cause.removesuffix(".").lower(), _SAVE) from None
    count = Counter(name for _, name, _ in rows)
    names = {number: f"{name} ({pond or number})" if count[name] > 1 else name for number, name, pond in rows}
    traits = sorted({trait for look in looks for trait in look.record})
    headings = ["fish", "date", *(name for name in traits if name != "date")]
    body = [
        [
            names[look.fish],
            look.day.isoformat() if look.day else "",
            *(look.record.get(trait, "") for trait in headings[2:]),
        ]
        for look in looks
    ]
    return Grid([headings, *body])
