"""What goes into the book: looks from files of records, their grades, and what happened to fish.

A whole file is one transaction. The same look entered twice is there once; a look at the same fish, on the same day and by
the same sorter, that says something else is a correction of the first, and what stood there before is kept.
"""

from __future__ import annotations

import csv
import importlib.metadata
import json
import sqlite3
from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from datetime import date
from decimal import Decimal, InvalidOperation
from hashlib import sha256
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import frozen

from koirules.vocabulary.readings import write_reading
from koirules_book import problems as say
from koirules_book.book import Book, as_json, hash_of, now
from koirules_book.problems import BookError

if TYPE_CHECKING:
    from koirules import Problem, Record, Result, Standard

_OF_THE_LOOK = ("pond", "sorter", "photo")


@frozen
class Added:
    """What came of a file. looks: new ones. known: looks that the book had. corrected: values put right. fish: new ones."""

    looks: int = 0
    known: int = 0
    corrected: int = 0
    fish: int = 0


@frozen
class Names:
    """What a person said of names that several fish have: `same` fish that were moved, `other` fish of a known name."""

    same: frozenset[str] = frozenset()
    other: frozenset[str] = frozenset()


def add_looks(
    book: Book,
    standard: Standard,
    records: Sequence[Record],
    path: Path,
    day: date | None = None,
    names: Names | None = None,
    told: Callable[[int], None] = lambda _: None,
) -> Added:
    """Enter looks at fish, and their grades by a standard.

    records: every look of a file that was read without problems. path: that file. day: of looks without a date. told: gets
    the number of looks done, now and then. Raises BookError with every name that several fish could have.
    """
    names = names or Names()
    results = _graded(standard, records)
    with book.change() as db:
        file = _file(db, path)
        number = keep_standard(db, standard)
        problems: list[Problem] = []
        finder = _Finder(db, str(path), names)
        looks = known = corrected = 0
        for at, record in enumerate(records):
            row = _row(standard, record, day)
            fish = finder.find(record, row, problems)
            if fish is None:
                continue
            digest = hash_of(fish, row.day, row.record, row.labels)
            if db.execute("SELECT 1 FROM looks WHERE hash = ?", (digest,)).fetchone():
                known += 1
            else:
                changed = _correct(db, fish, row, path)
                if changed is None:
                    look = db.execute(
                        "INSERT INTO looks (fish, day, sorter, pond, photo, record, labels, file, line, hash)"
                        " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                        (
                            fish,
                            row.day,
                            row.sorter,
                            row.pond,
                            row.photo,
                            as_json(row.record),
                            as_json(row.labels),
                            file,
                            record.row,
                            digest,
                        ),
                    ).lastrowid
                    looks += 1
                    keep_grade(db, look, number, standard, results[at])
                else:
                    corrected += changed[1]
                    keep_grade(db, changed[0], number, standard, results[at])
            if at % 1000 == 999:
                told(at + 1)
        if problems:
            raise BookError(*problems)
        return Added(looks, known, corrected, finder.made)


@frozen
class _Row:
    day: str | None
    pond: str
    sorter: str
    photo: str
    record: Mapping[str, str]
    labels: Mapping[str, str]


def _row(standard: Standard, record: Record, day: date | None) -> _Row:
    traits = standard.traits
    written = {
        name: write_reading(traits[name].kind, reading) for name, reading in record.readings.items() if name in traits
    }
    written = {name: text for name, text in written.items() if text}
    seen = record.date or day
    pond, sorter, photo = (written.get(name, record.labels.get(name, "")) for name in _OF_THE_LOOK)
    return _Row(None if seen is None else seen.isoformat(), pond, sorter, photo, written, dict(record.labels))


def _graded(standard: Standard, records: Sequence[Record]) -> Sequence[Result]:
    # Looks at one fish are graded each by itself: the latest of them must not stand for the others.
    measured = standard.measured(records, "records").records
    return [standard.grade_record(record) for record in measured]


class _Finder:
    """Finds the fish that a row is about, or makes it."""

    def __init__(self, db: sqlite3.Connection, file: str, names: Names) -> None:
        self.db = db
        self.file = file
        self.names = names
        self.made = 0
        self.found: dict[tuple[str, str], int] = {}

    def find(self, record: Record, row: _Row, problems: list[Problem]) -> int | None:
        key = (record.fish, row.pond)
        if key in self.found:
            return self.found[key]
        rows = self.db.execute("SELECT id, pond FROM fish WHERE name = ?1 OR tag = ?1", (record.fish,)).fetchall()
        here = [number for number, _ in rows if not row.pond or row.pond in self._ponds(number)]
        unplaced = [number for number, pond in rows if self._ponds(number) == {""}]
        if len(here) == 1:
            number = int(here[0])
        elif not rows or record.fish in self.names.other:
            number = self._new(record, row)
        elif len(rows) == 1 and (record.fish in self.names.same or unplaced):
            number = int(rows[0][0])
        else:
            problems.append(
                say.two_fish_of_a_name(self.file, record.row, record.fish, row.pond, [pond for _, pond in rows])
            )
            return None
        self.found[key] = number
        return number

    def _ponds(self, number: int) -> set[str]:
        rows = self.db.execute(
            "SELECT pond FROM looks WHERE fish = ?1 UNION SELECT pond FROM fish WHERE id = ?1", (number,)
        )
        return {row[0] for row in rows}

    def _new(self, record: Record, row: _Row) -> int:
        self.made += 1
        facts = [row.record.get(name, row.labels.get(name, "")) for name in ("spawning", "bloodline")]
        tag = row.labels.get("tag") or None
        made = self.db.execute(
            "INSERT INTO fish (name, tag, pond, spawning, bloodline) VALUES (?, ?, ?, ?, ?)",
            (record.fish, tag, row.pond, *facts),
        )
        return int(made.lastrowid or 0)


def _correct(db: sqlite3.Connection, fish: int, row: _Row, path: Path) -> tuple[int, int] | None:
    """The look that a row corrects and how many values it puts right; None where it is a look of its own."""
    if row.day is None:
        return None
    found = db.execute(
        "SELECT id, record FROM looks WHERE fish = ? AND day = ? AND sorter = ? ORDER BY id DESC",
        (fish, row.day, row.sorter),
    ).fetchall()
    same = [one for one in found if json.loads(one[1]).get("look_number", "") == row.record.get("look_number", "")]
    if not same:
        return None
    number, text = same[0]
    before = json.loads(text)
    changed = sorted(name for name in before.keys() | row.record.keys() if before.get(name) != row.record.get(name))
    for name in changed:
        db.execute(
            "INSERT INTO corrections (look, trait, before, after, corrected, reason) VALUES (?, ?, ?, ?, ?, ?)",
            (number, name, before.get(name, ""), row.record.get(name, ""), now(), f"entered again from {path.name}"),
        )
    db.execute("UPDATE looks SET record = ? WHERE id = ?", (as_json(row.record), number))
    db.execute("DELETE FROM grades WHERE look = ?", (number,))
    return number, len(changed)


def keep_standard(db: sqlite3.Connection, standard: Standard) -> int:
    """The number of a standard in the book, which keeps all that it says; for an open transaction."""
    found = db.execute("SELECT id FROM standards WHERE seal = ?", (standard.seal,)).fetchone()
    if found:
        return int(found[0])
    made = db.execute(
        "INSERT INTO standards (seal, title, edition, variety, grades, canonical, text, versions)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        (
            standard.seal,
            standard.title,
            standard.edition,
            standard.variety or "",
            as_json(list(standard.grades)),
            standard.canonical_text,
            standard.whole_text,
            as_json(_versions()),
        ),
    )
    return int(made.lastrowid or 0)


def _versions() -> dict[str, str]:
    """The versions of koirules and of every distribution that adds to it."""
    found = {
        entry.dist.name: entry.dist.version for entry in importlib.metadata.entry_points(group="koirules") if entry.dist
    }
    return dict(sorted(found.items()))


def keep_grade(db: sqlite3.Connection, look: int | None, number: int, standard: Standard, result: Result) -> None:
    """Keep the grade of a look by a standard that the book has; for an open transaction."""
    settings = {name: str(standard.settings[name].value) for name in standard.changed}
    db.execute(
        "INSERT OR REPLACE INTO grades (look, standard, settings, possible, score_low, score_high, faults, lifts, derived)"
        " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        (
            look,
            number,
            as_json(settings),
            as_json(list(result.possible)),
            int(result.score_low * 100),
            int(result.score_high * 100),
            as_json(list(result.faults)),
            as_json(list(result.lifts)),
            as_json(_derived(result)),
        ),
    )


def _derived(result: Result) -> Mapping[str, str]:
    """What each criterion read: the values from which the grade can be followed on paper, years later."""
    return {f"{reason.kind} {reason.name}": reason.read for reason in result.reasons if reason.kind == "points"}


def _file(db: sqlite3.Connection, path: Path) -> int:
    digest = sha256(path.read_bytes()).hexdigest()
    found = db.execute("SELECT id FROM files WHERE sha256 = ?", (digest,)).fetchone()
    if found:
        return int(found[0])
    made = db.execute("INSERT INTO files (sha256, name, added) VALUES (?, ?, ?)", (digest, path.name, now()))
    return int(made.lastrowid or 0)


@frozen
class Form:
    """The columns of a table of events: those that say what and how much, whether the amount is a number, and who."""

    what: str
    value: str
    is_number: bool
    who: str


FORMS: Mapping[str, Form] = {
    "decided": Form("round", "grade", is_number=False, who="by"),
    "sold": Form("to", "price", is_number=True, who="buyer"),
    "died": Form("cause", "", is_number=False, who=""),
    "shown": Form("show", "place", is_number=True, who=""),
    "became": Form("what", "value", is_number=False, who="by"),
}
"""The table of each kind of event; besides these it has `fish`, and may have `pond`, `day` and `note`."""


def add_events(book: Book, kind: str, path: Path, *, people: bool = False) -> int:
    """Enter a table of events; how many were new. people: whether buyers' names are kept.

    Raises BookError with every problem of the table.
    """
    form = FORMS[kind]
    rows = _table(path)
    if rows is None:
        raise BookError(say.event_columns(str(path), ["fish"], _columns(form)))
    headings, cells = rows
    missing = [name for name in ("fish", form.value or form.what) if name not in headings]
    if missing:
        raise BookError(say.event_columns(str(path), missing, _columns(form)))
    with book.change() as db:
        problems: list[Problem] = []
        table = _Table(book, kind, str(path), _file(db, path), people)
        new = sum(table.add(db, row, cell, problems) for row, cell in cells)
        if problems:
            raise BookError(*problems)
        return new


def _columns(form: Form) -> list[str]:
    return ["fish", *(name for name in (form.what, form.value) if name), "day"]


@frozen
class _Table:
    book: Book
    kind: str
    file: str
    number: int
    people: bool

    def add(self, db: sqlite3.Connection, row: int, cell: Mapping[str, str], problems: list[Problem]) -> bool:
        """Enter a row; whether it was new. Appends what is wrong with it."""
        form = FORMS[self.kind]
        name = cell["fish"]
        found = self.book.named(name, cell.get("pond") or None)
        if len(found) != 1:
            several = say.which_fish(name, [one.pond for one in found]) if found else None
            problems.append(several or say.event_of_nobody(self.file, row, name))
            return False
        day = cell.get("day", "")
        if day and not _is_day(day):
            problems.append(say.event_cell(self.file, row, "day", day, "a day such as 2026-10-03"))
        value = cell.get(form.value, "") if form.value else ""
        amount = as_number(value)
        if form.is_number and value and amount is None:
            problems.append(say.event_cell(self.file, row, form.value, value, "a number such as 450 or 12.5"))
        who = cell.get(form.who, "") if form.who and (self.people or self.kind == "decided") else ""
        said = (self.kind, day or None, cell.get(form.what, ""), value, amount, who, cell.get("note", ""))
        made = db.execute(
            "INSERT OR IGNORE INTO events (fish, kind, day, what, value, amount, who, note, file, hash)"
            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            (found[0].id, *said, self.number, hash_of(found[0].id, *said)),
        )
        return made.rowcount > 0


def _is_day(text: str) -> bool:
    try:
        date.fromisoformat(text)
    except ValueError:
        return False
    return True


def as_number(text: str) -> float | None:
    """A number such as `450` or `12.5`; None for anything else, a comma included, which some read as a point."""
    try:
        value = Decimal(text.strip())
    except InvalidOperation:
        return None
    return float(value) if value.is_finite() else None


def _table(path: Path) -> tuple[Collection[str], Iterable[tuple[int, dict[str, str]]]] | None:
    """The headings and the rows of a CSV file, each row with its number as a spreadsheet counts it."""
    text = path.read_text(encoding="utf-8-sig")
    lines = text.splitlines()
    skipped = next((at for at, line in enumerate(lines) if not line.startswith("#")), len(lines))
    kept = lines[skipped:]
    if not kept:
        return None
    reader = csv.DictReader(kept, delimiter=max(",;\t", key=kept[0].count))
    headings = [(name or "").strip() for name in reader.fieldnames or ()]
    if "fish" not in headings:
        return None
    rows = [
        (
            number,
            {
                (name or "").strip(): (value or "").strip()
                for name, value in row.items()
                if isinstance(value, str | None)
            },
        )
        for number, row in enumerate(reader, 2 + skipped)
    ]
    return headings, [(number, row) for number, row in rows if row.get("fish")]
