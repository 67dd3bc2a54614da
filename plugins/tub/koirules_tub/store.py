"""What was entered at the tub: one SQLite file that anybody can open.

Every entry is a row of `entries` with a name that the phone gave it, so that one that is sent twice is there once. What is
shown follows from the entries; `looks` and `decisions` keep it ready to read (README.md has the layout).
"""

from __future__ import annotations

import json
import sqlite3
import threading
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

from attrs import field, frozen

APPLICATION = 0x6B6F6974
"""`koit` in ASCII."""

_FIRST = """
CREATE TABLE facts (name TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;
CREATE TABLE entries (
  number INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  fish TEXT NOT NULL,
  sorter TEXT NOT NULL,
  look INTEGER NOT NULL,
  kind TEXT NOT NULL,
  body TEXT NOT NULL CHECK (json_valid(body)),
  entered TEXT NOT NULL,
  received TEXT NOT NULL
);
CREATE INDEX entries_of_fish ON entries (fish, number);
CREATE TABLE looks (
  fish TEXT NOT NULL,
  sorter TEXT NOT NULL,
  look INTEGER NOT NULL,
  record TEXT NOT NULL CHECK (json_valid(record)),
  verdict TEXT NOT NULL,
  unread TEXT NOT NULL CHECK (json_valid(unread)),
  possible TEXT NOT NULL CHECK (json_valid(possible)),
  score_low INTEGER NOT NULL,
  score_high INTEGER NOT NULL,
  faults TEXT NOT NULL CHECK (json_valid(faults)),
  changed INTEGER NOT NULL,
  PRIMARY KEY (fish, sorter, look)
) WITHOUT ROWID;
CREATE INDEX looks_by_change ON looks (changed);
CREATE TABLE decisions (
  fish TEXT NOT NULL,
  round TEXT NOT NULL,
  grade TEXT NOT NULL,
  sorter TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (fish, round)
) WITHOUT ROWID;
CREATE TABLE photographs (
  id TEXT PRIMARY KEY,
  fish TEXT NOT NULL,
  sorter TEXT NOT NULL,
  look INTEGER NOT NULL,
  file TEXT NOT NULL,
  width INTEGER NOT NULL,
  height INTEGER NOT NULL
) WITHOUT ROWID;
"""

MIGRATIONS = (_FIRST,)
VERSION = len(MIGRATIONS)

KINDS = frozenset({"line", "strike", "set", "lot", "done", "open", "decision", "photograph", "look"})
"""What an entry can be (README.md)."""


class StoreError(Exception):
    """A file that cannot be used; the message says why, for a person."""


@frozen
class Entry:
    """One entry. id: the phone's name for it. body: by kind. number: its place in the file, 0 before it has one."""

    id: str
    fish: str
    sorter: str
    look: int
    kind: str
    body: Mapping[str, object] = field(hash=False)
    entered: str = ""
    number: int = 0


@frozen
class Look:
    """What one sorter says of one fish at one look, and the grade that follows."""

    fish: str
    sorter: str
    look: int
    record: Mapping[str, str] = field(hash=False)
    verdict: str
    unread: tuple[str, ...]
    possible: tuple[str, ...]
    score_low: int
    score_high: int
    faults: tuple[str, ...]


class Store:
    """An open file. One connection that threads share under a lock: writes are short."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self._lock = threading.RLock()
        self.db = sqlite3.connect(path, timeout=30, isolation_level=None, check_same_thread=False)
        try:
            self._prepare()
        except sqlite3.DatabaseError as error:
            self.db.close()
            raise StoreError(f"{path} cannot be read as a file of the tub: {error}.") from None

    def _prepare(self) -> None:
        (version,) = self.db.execute("PRAGMA user_version").fetchone()
        (application,) = self.db.execute("PRAGMA application_id").fetchone()
        (tables,) = self.db.execute("SELECT count(*) FROM sqlite_schema").fetchone()
        if tables and application != APPLICATION:
            raise StoreError(f"{self.path} belongs to another program.")
        if version > VERSION:
            raise StoreError(f"{self.path} has layout {version}; this version reads layouts up to {VERSION}.")
        self.db.execute("PRAGMA journal_mode = WAL")
        self.db.execute("PRAGMA synchronous = FULL")
        self.db.execute("PRAGMA foreign_keys = ON")
        with self.change():
            (version,) = self.db.execute("PRAGMA user_version").fetchone()
            for statements in MIGRATIONS[version:]:
                for statement in statements.split(";"):
                    if statement.strip():
                        self.db.execute(statement)
            if version < VERSION:
                self.db.execute(f"PRAGMA application_id = {APPLICATION}")
                self.db.execute(f"PRAGMA user_version = {VERSION}")

    def close(self) -> None:
        """Close the file."""
        with self._lock:
            self.db.close()

    @contextmanager
    def change(self) -> Iterator[sqlite3.Connection]:
        """One transaction: all of it, or nothing."""
        with self._lock:
            self.db.execute("BEGIN IMMEDIATE")
            try:
                yield self.db
                self.db.execute("COMMIT")
            except BaseException:
                if self.db.in_transaction:
                    self.db.execute("ROLLBACK")
                raise

    def read(self, query: str, values: Sequence[object] = ()) -> list[tuple[object, ...]]:
        """The rows of a query."""
        with self._lock:
            return self.db.execute(query, values).fetchall()

    def add(self, entries: Iterable[Entry]) -> list[Entry]:
        """Put entries down, for an open transaction; those that were new. One that is there already stays as it is."""
        new = []
        for entry in entries:
            made = self.db.execute(
                "INSERT OR IGNORE INTO entries (id, fish, sorter, look, kind, body, entered, received)"
                " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                (
                    entry.id,
                    entry.fish,
                    entry.sorter,
                    entry.look,
                    entry.kind,
                    json.dumps(entry.body, ensure_ascii=False),
                    entry.entered,
                    datetime.now(UTC).isoformat(timespec="seconds"),
                ),
            )
            if made.rowcount:
                new.append(entry)
        return new

    def entries_of(self, fish: str) -> list[Entry]:
        """The entries about a fish, in the order in which they came; "" for those about the lot."""
        rows = self.read(
            "SELECT id, fish, sorter, look, kind, body, entered, number FROM entries WHERE fish = ? ORDER BY number",
            (fish,),
        )
        return [Entry(*row[:5], json.loads(str(row[5])), *row[6:]) for row in rows]  # type: ignore[arg-type]

    def keep_look(self, look: Look) -> None:
        """Keep what follows from the entries, for an open transaction."""
        (changed,) = self.db.execute("SELECT coalesce(max(number), 0) FROM entries").fetchone()
        self.db.execute(
            "INSERT OR REPLACE INTO looks VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            (
                look.fish,
                look.sorter,
                look.look,
                json.dumps(look.record, ensure_ascii=False),
                look.verdict,
                json.dumps(look.unread, ensure_ascii=False),
                json.dumps(look.possible),
                look.score_low,
                look.score_high,
                json.dumps(look.faults),
                changed,
            ),
        )

    def looks(self, fish: str | None = None, since: int = 0) -> list[Look]:
        """Looks at a fish, or those that changed after an entry."""
        if fish is None:
            rows = self.read(f"{_LOOKS} WHERE changed > ? ORDER BY fish, sorter, look", (since,))
        else:
            rows = self.read(f"{_LOOKS} WHERE fish = ? ORDER BY sorter, look", (fish,))
        return [_look(row) for row in rows]

    @property
    def last(self) -> int:
        """The number of the last entry."""
        return int(self.read("SELECT coalesce(max(number), 0) FROM entries")[0][0])  # type: ignore[call-overload]

    def fact(self, name: str) -> str:
        """A fact about the file, "" where it is not there."""
        rows = self.read("SELECT value FROM facts WHERE name = ?", (name,))
        return str(rows[0][0]) if rows else ""

    def set_fact(self, name: str, value: str) -> None:
        """Keep a fact about the file."""
        with self.change() as db:
            db.execute("INSERT OR REPLACE INTO facts VALUES (?, ?)", (name, value))


_LOOKS = "SELECT fish, sorter, look, record, verdict, unread, possible, score_low, score_high, faults FROM looks"


def _look(row: Sequence[object]) -> Look:
    fish, sorter, look, record, verdict, unread, possible, low, high, faults = row
    return Look(
        str(fish),
        str(sorter),
        int(look),  # type: ignore[call-overload]
        json.loads(str(record)),
        str(verdict),
        tuple(json.loads(str(unread))),
        tuple(json.loads(str(possible))),
        int(low),  # type: ignore[call-overload]
        int(high),  # type: ignore[call-overload]
        tuple(json.loads(str(faults))),
    )
