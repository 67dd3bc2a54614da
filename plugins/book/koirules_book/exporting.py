"""The book as tables for other programs, and what can still be read of a damaged one."""

from __future__ import annotations

import csv
import json
import sqlite3
from contextlib import suppress
from pathlib import Path

from koirules_book import problems as say
from koirules_book.book import Book
from koirules_book.problems import BookError

_TABLES = ("fish", "looks", "standards", "grades", "events", "corrections", "exercises")
_PEOPLE = {"events": ("who",), "looks": ("sorter",), "corrections": ("who",), "exercises": ("sorter",)}
_NOTES = {"events": ("note",), "corrections": ("reason",)}


def export(book: Book, folder: Path, *, people: bool = False, notes: bool = False) -> dict[str, int]:
    """Write every table of a book as a CSV file into a new folder; how many rows of each.

    people, notes: whether names of buyers, sorters and deciders, and free notes, go along.
    """
    folder.mkdir()
    left_out = {table: set() if people else set(names) for table, names in _PEOPLE.items()}
    for table, names in _NOTES.items():
        if not notes:
            left_out.setdefault(table, set()).update(names)
    return {
        table: _write(book.db, folder, table, left_out.get(table, set()), notes=notes, people=people)
        for table in _TABLES
    }


def _write(db: sqlite3.Connection, folder: Path, table: str, left_out: set[str], *, notes: bool, people: bool) -> int:
    rows = db.execute(f"SELECT * FROM {table}")  # noqa: S608 - a name of ours
    names = [column[0] for column in rows.description]
    kept = [at for at, name in enumerate(names) if name not in left_out]
    count = 0
    with (folder / f"{table}.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow([names[at] for at in kept])
        for row in rows:
            cells = [row[at] for at in kept]
            for place, at in enumerate(kept):
                if table == "looks" and names[at] in {"record", "labels"}:
                    cells[place] = _private(cells[place], notes=notes, people=people)
            writer.writerow([_safe(cell) for cell in cells])
            count += 1
    return count


def _private(text: str, *, notes: bool, people: bool) -> str:
    record = json.loads(text)
    for name in [] if notes else ["note"]:
        record.pop(name, None)
    for name in [] if people else ["sorter", "buyer", "owner"]:
        record.pop(name, None)
    return json.dumps(record, ensure_ascii=False)


def _safe(cell: object) -> object:
    # A spreadsheet would carry out what begins like a formula.
    return f"'{cell}" if isinstance(cell, str) and cell[:1] in "=+-@\t\r" else cell


def rescue(path: Path, folder: Path) -> dict[str, int]:
    """Read what can be read of a damaged book into CSV files in a new folder; how many rows of each table.

    Raises BookError where nothing can be read.
    """
    if not path.is_file():
        raise BookError(say.no_such_book(str(path)))
    db = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    db.text_factory = lambda data: data.decode("utf-8", "replace")
    read: dict[str, list[tuple[object, ...]]] = {}
    names: dict[str, list[str]] = {}
    for table in _TABLES:
        try:
            cursor = db.execute(f"SELECT * FROM {table}")  # noqa: S608 - a name of ours
            names[table] = [column[0] for column in cursor.description]
        except sqlite3.DatabaseError:
            continue
        read[table] = _all_that_can_be_read(db, table, cursor)
    db.close()
    if not any(read.values()):
        raise BookError(say.not_a_book(str(path), "no table of it can be read"))
    folder.mkdir()
    for table, rows in read.items():
        with (folder / f"{table}.csv").open("w", encoding="utf-8", newline="") as file:
            writer = csv.writer(file)
            writer.writerow(names[table])
            writer.writerows([[_safe(cell) for cell in row] for row in rows])
    return {table: len(rows) for table, rows in read.items()}


def _all_that_can_be_read(db: sqlite3.Connection, table: str, cursor: sqlite3.Cursor) -> list[tuple[object, ...]]:
    """The rows up to the damage, and those behind it, found by number."""
    rows: list[tuple[object, ...]] = []
    with suppress(sqlite3.DatabaseError):
        while (row := cursor.fetchone()) is not None:
            rows.append(row)
        return rows
    if table == "grades":
        return rows
    last = int(rows[-1][0]) if rows and isinstance(rows[-1][0], int) else 0
    try:
        (most,) = db.execute(f"SELECT max(id) FROM {table}").fetchone()  # noqa: S608
    except sqlite3.DatabaseError:
        most = last + 100_000
    number, missed = last + 1, 0
    while number <= (most or 0) and missed < 100_000:
        try:
            found = db.execute(f"SELECT * FROM {table} WHERE id = ?", (number,)).fetchone()  # noqa: S608
        except sqlite3.DatabaseError:
            found = None
        missed = 0 if found else missed + 1
        rows += [found] if found else []
        number += 1
    return rows
