"""The first look at each fish, graded, and what came of it: a number, or a yes or no."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from typing import TYPE_CHECKING

from koirules import Cell, Problem, RecordError
from koirules_book.adding import as_number
from koirules_book.book import Book
from koirules_book.problems import BookError

if TYPE_CHECKING:
    from koirules import Result, Standard

ASKED = ("price", "sold", "died", "shown", "seen-again")


def first_results(book: Book, standard: Standard, since: int | None = None) -> Sequence[Result]:
    """The first look at each fish by a standard; fish stand under the number that they have in the book."""
    found: list[Result] = []
    seen: set[int] = set()
    for look in book.all_looks():
        if look.fish in seen:
            continue
        seen.add(look.fish)
        if since is not None and (look.day is None or look.day.year < since):
            continue
        record = {name: value for name, value in look.record.items() if name in standard.traits}
        try:
            found.append(standard.grade(record, str(look.fish)))
        except RecordError:
            continue
    return found


def outcomes_of(book: Book, outcome: str, value: str, fish: Collection[str]) -> Mapping[str, float]:
    """The outcome of each fish that has one, by its number in the book. Raises BookError for an outcome that nobody has.

    `price` counts for fish that were sold at one; `sold`, `died`, `shown` and `seen-again` are a yes or no for every fish.
    """
    if outcome == "price":
        rows = book.db.execute(
            "SELECT fish, sum(amount) FROM events WHERE kind = 'sold' AND amount IS NOT NULL GROUP BY fish"
        )
        found = {str(number): float(amount) for number, amount in rows}
    elif outcome in {"sold", "died", "shown"}:
        happened = {
            str(row[0]) for row in book.db.execute("SELECT DISTINCT fish FROM events WHERE kind = ?", (outcome,))
        }
        found = {one: float(one in happened) for one in fish} if happened else {}
    elif outcome == "seen-again":
        rows = book.db.execute(
            "SELECT fish, count(DISTINCT substr(day, 1, 4)) FROM looks WHERE day IS NOT NULL GROUP BY fish"
        )
        found = {str(number): float(years > 1) for number, years in rows}
    else:
        rows = book.db.execute(
            "SELECT fish, value FROM events WHERE kind = 'became' AND what = ? ORDER BY day", (outcome,)
        )
        found = {}
        for number, text in rows:
            read = float(text == value) if value else as_number(text)
            if read is not None:
                found[str(number)] = read
    wanted = set(fish)
    found = {one: amount for one, amount in found.items() if one in wanted}
    if not found:
        known = sorted({row[0] for row in book.db.execute("SELECT DISTINCT what FROM events WHERE kind = 'became'")})
        raise BookError(
            Problem(
                "no-such-outcome",
                Cell(book.file),
                f"No fish of the book has the outcome “{outcome}”.",
                f"Ask for one of {', '.join([*ASKED, *known])}.",
            )
        )
    return found
