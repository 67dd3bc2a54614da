"""Grades every look of a book by a standard, beside the grades that it has."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from koirules import RecordError
from koirules_book.adding import keep_grade, keep_standard
from koirules_book.book import Book

if TYPE_CHECKING:
    from koirules import Standard


def regrade_all(book: Book, standard: Standard, told: Callable[[int], None] = lambda _: None) -> tuple[int, int]:
    """How many looks were graded, and how many cannot be read by these rules."""
    looks = list(book.all_looks())
    graded = refused = 0
    with book.change() as db:
        number = keep_standard(db, standard)
        for at, look in enumerate(looks, 1):
            record = {name: value for name, value in look.record.items() if name in standard.traits}
            try:
                result = standard.grade(record, str(look.fish))
            except RecordError:
                refused += 1
                continue
            keep_grade(db, look.id, number, standard, result)
            graded += 1
            if at % 1000 == 0:
                told(at)
    return graded, refused
