"""The histories that pages show: one fish over its looks, and a year with what became of its fish."""

from __future__ import annotations

import json
import re
from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from datetime import date
from typing import TYPE_CHECKING

from attrs import field, frozen

from koirules import RecordError, StandardError, read_standard
from koirules.vocabulary.kinds import Choice, Count, Number
from koirules_book.book import Book, Event, Fish, Look
from koirules_book.statistics import Share, share

if TYPE_CHECKING:
    from koirules import Standard


@frozen
class Graded:
    """A grade of a look. then: whether it was given when the look was entered; else it was worked out now."""

    standard: str
    grade: str
    low: int
    high: int
    faults: tuple[str, ...]


@frozen
class Foreseen:
    """What an earlier look foresaw of a trait, and what a later one found. at: the length that was foreseen for."""

    trait: str
    title: str
    foreseen: str
    came: str
    then: date | None
    later: date | None


@frozen
class LookPage:
    """One look on the page of a fish. seen: titles and values, in the order of the vocabulary."""

    look: Look
    seen: tuple[tuple[str, str, str], ...]
    grades: tuple[Graded, ...]
    corrections: tuple[tuple[str, str, str, str], ...]


@frozen
class FishHistory:
    """A fish over its looks."""

    fish: Fish
    looks: tuple[LookPage, ...]
    events: tuple[Event, ...]
    foreseen: tuple[Foreseen, ...]


def fish_history(book: Book, fish: Fish, today: Sequence[Standard] = ()) -> FishHistory:
    """The page of a fish. today: editions by which each look is graded now, beside the grades that it was given then."""
    titles = {name: trait.title for standard in today for name, trait in standard.traits.items()}
    looks = book.looks(fish.id)
    pages = tuple(_look_page(book, look, titles, today) for look in looks)
    return FishHistory(fish, pages, book.events(fish.id), tuple(_foreseen(looks, today, titles)))


def _look_page(book: Book, look: Look, titles: Mapping[str, str], today: Sequence[Standard]) -> LookPage:
    rows = book.db.execute(
        "SELECT s.title || ', edition ' || s.edition, s.grades, g.possible, g.score_low, g.score_high, g.faults, s.seal"
        " FROM grades g JOIN standards s ON s.id = g.standard WHERE g.look = ? ORDER BY s.id",
        (look.id,),
    ).fetchall()
    grades = [
        Graded(title, " or ".join(json.loads(possible)), low, high, tuple(json.loads(faults)))
        for title, _, possible, low, high, faults, _ in rows
    ]
    given = {row[6] for row in rows}
    for standard in today:
        if standard.seal not in given:
            result = standard.grade(_known(look, standard), look_name(look))
            told = f"{standard.title}, edition {standard.edition} (worked out now)"
            grades.append(
                Graded(
                    told,
                    " or ".join(result.possible),
                    int(result.score_low * 100),
                    int(result.score_high * 100),
                    result.faults,
                )
            )
    corrections = book.db.execute(
        "SELECT trait, before, after, reason FROM corrections WHERE look = ? ORDER BY id", (look.id,)
    ).fetchall()
    seen = tuple((name, titles.get(name, name), value) for name, value in look.record.items())
    return LookPage(look, seen, tuple(grades), tuple(tuple(row) for row in corrections))


def _known(look: Look, standard: Standard) -> dict[str, str]:
    return {name: value for name, value in look.record.items() if name in standard.traits}


def look_name(look: Look) -> str:
    """A name for a result of a look that stands alone."""
    return f"look {look.id}"


def _foreseen(looks: Sequence[Look], today: Sequence[Standard], titles: Mapping[str, str]) -> list[Foreseen]:
    """What the first look with a length foresaw for the length of the latest: each trait that a standard asks grown."""
    measured = [look for look in looks if "length" in look.record]
    if len(measured) < 2 or not today:
        return []
    first, last = measured[0], measured[-1]
    standard = today[0]
    found: list[Foreseen] = []
    for name in sorted(last.record.keys() & first.record.keys()):
        trait = standard.traits.get(name)
        if trait is None or name == "length" or not isinstance(trait.kind, Number | Count | Choice):
            continue
        told = _grown(standard, first, name, last.record["length"])
        if told is not None:
            found.append(Foreseen(name, titles.get(name, name), told, last.record[name], first.day, last.day))
    return found


def _grown(standard: Standard, look: Look, trait: str, length: str) -> str | None:
    """The value of a trait grown to a length, by the model of growth: read off a standard that says nothing else."""
    words = f"{trait} grown to {length}"
    variety = f"variety {standard.variety}" if standard.variety else ""
    text = (
        f'standard "growth" edition 1 {variety}\nsection s worth 100\n'
        f"points p by ({words}): {_gives(standard.traits[trait].kind)}\ngrade all otherwise\n"
    )
    try:
        made = read_standard(text)
        reason = made.grade(_known(look, made)).reasons[0]
    except (StandardError, RecordError):
        return None
    found = re.search(rf"{re.escape(words)} ([^,;]+)", reason.read)
    return _rounded(found.group(1)) if found else None


def _gives(kind: Number | Count | Choice) -> str:
    if isinstance(kind, Choice):
        return f"{kind.options[0]} gives 1, anything else gives 0"
    low, high, unit = (kind.low, kind.high, kind.unit) if isinstance(kind, Number) else (0, kind.high, None)
    symbol = f" {unit.symbol}" if unit else ""
    return f"{low}{symbol} gives 0, {high}{symbol} gives 10"


def _rounded(text: str) -> str:
    """Numbers of a text to three figures, as people read them."""
    return re.sub(r"[0-9]+\.[0-9]+", lambda found: f"{float(found.group()):.3g}", text)


def latest_looks(book: Book, search: str = "", most: int = 200) -> list[tuple[Fish, Look]]:
    """Fish whose name, tag, spawning or bloodline holds a text, by name, each with its latest look."""
    rows = book.db.execute(
        "SELECT id FROM fish WHERE name LIKE ?1 OR tag LIKE ?1 OR spawning LIKE ?1 OR bloodline LIKE ?1"
        " ORDER BY name, id LIMIT ?2",
        (f"%{search}%", most),
    ).fetchall()
    found = [(book.fish(number), book.looks(number)) for (number,) in rows]
    return [(fish, looks[-1]) for fish, looks in found if looks]


@frozen
class YearRow:
    """A group of a year's fish and what became of them."""

    name: str
    fish: int
    looked_again: Share
    sold: Share
    died: Share
    shown: Share
    median_price: float | None
    prices: int


@frozen
class YearHistory:
    """A year: its first looks by grade, and by spawning, pond and bloodline; what the sales brought."""

    year: int
    fish: int
    by_grade: tuple[YearRow, ...]
    by_spawning: tuple[YearRow, ...]
    by_pond: tuple[YearRow, ...]
    by_bloodline: tuple[YearRow, ...]
    revenue: float
    cautions: tuple[str, ...] = field(factory=tuple)


def year_history(book: Book, year: int) -> YearHistory:
    """What became of the fish that were first looked at in a year, whenever it happened."""
    rows = book.db.execute(
        "WITH first AS (SELECT fish, min(day) AS day FROM looks WHERE day IS NOT NULL GROUP BY fish)"
        " SELECT l.id, f.id, f.spawning, l.pond, f.bloodline FROM first JOIN fish f ON f.id = first.fish"
        " JOIN looks l ON l.fish = f.id AND l.day = first.day WHERE first.day >= ? AND first.day < ? GROUP BY f.id",
        (f"{year:04}-01-01", f"{year + 1:04}-01-01"),
    ).fetchall()
    grade = {
        look: json.loads(possible)
        for look, possible in book.db.execute(
            "SELECT g.look, g.possible FROM grades g JOIN looks l ON l.id = g.look WHERE l.day >= ? AND l.day < ?"
            " ORDER BY g.standard",
            (f"{year:04}-01-01", f"{year + 1:04}-01-01"),
        )
    }
    again = {
        row[0]
        for row in book.db.execute("SELECT fish FROM looks WHERE day >= ? GROUP BY fish", (f"{year + 1:04}-01-01",))
    }
    happened: dict[str, set[int]] = defaultdict(set)
    prices: dict[int, float] = {}
    for fish, kind, amount in book.db.execute("SELECT fish, kind, amount FROM events"):
        happened[kind].add(fish)
        if kind == "sold" and amount is not None:
            prices[fish] = prices.get(fish, 0.0) + amount

    def grouped(column: int | None) -> tuple[YearRow, ...]:
        groups: dict[str, list[int]] = defaultdict(list)
        for row in rows:
            possible = grade.get(row[0], [])
            name = (possible[0] if len(possible) == 1 else "not settled") if column is None else row[column]
            groups[name or "not recorded"].append(row[1])
        best = {name: at for at, name in enumerate(_grades(book))} if column is None else {}
        order = sorted(
            groups, key=lambda name: (name == "not recorded", best.get(name, len(best)), -len(groups[name]), name)
        )
        return tuple(_year_row(name, groups[name], again, happened, prices) for name in order)

    everyone = [row[1] for row in rows]
    cautions = []
    if rows:
        cautions.append(
            "A fish that was not kept is seldom seen again: that few of a grade were looked at again does not show that they "
            "came to nothing."
        )
    return YearHistory(
        year,
        len(rows),
        grouped(None),
        grouped(2),
        grouped(3),
        grouped(4),
        sum(prices.get(fish, 0.0) for fish in everyone),
        tuple(cautions),
    )


def _grades(book: Book) -> Sequence[str]:
    """The grades of all standards, those of the latest first, each best first."""
    rows = book.db.execute("SELECT grades FROM standards ORDER BY id DESC")
    return tuple(dict.fromkeys(name for (grades,) in rows for name in json.loads(grades)))


def _year_row(
    name: str, fish: Sequence[int], again: set[int], happened: Mapping[str, set[int]], prices: Mapping[int, float]
) -> YearRow:
    count = Counter(
        {
            "again": sum(one in again for one in fish),
            **{kind: sum(one in happened.get(kind, set()) for one in fish) for kind in ("sold", "died", "shown")},
        }
    )
    paid = sorted(prices[one] for one in fish if one in prices)
    middle = None if not paid else (paid[(len(paid) - 1) // 2] + paid[len(paid) // 2]) / 2
    whole = len(fish)
    return YearRow(
        name,
        whole,
        share(count["again"], whole),
        share(count["sold"], whole),
        share(count["died"], whole),
        share(count["shown"], whole),
        middle,
        len(paid),
    )
