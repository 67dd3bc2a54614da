"""A book: one SQLite file with fish, looks, standards, grades and events.

Every change is one transaction. The file is in WAL mode, so that a page can be read while another process writes; a writer
waits for another one for a minute. What is written twice is there once: a look or an event is known by the hash of all that
it says.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import UTC, date, datetime
from difflib import get_close_matches
from hashlib import sha256
from pathlib import Path

from attrs import field, frozen

from koirules_book import problems as say
from koirules_book.layout import APPLICATION, VERSION, migrate
from koirules_book.problems import BookError

_WAIT = 60.0


@frozen
class Fish:
    """A fish of the book. pond: where it was first seen."""

    id: int
    name: str
    tag: str
    pond: str
    spawning: str
    bloodline: str


@frozen
class Look:
    """A look at a fish. record: trait names to values as a record writes them, with all corrections made."""

    id: int
    fish: int
    day: date | None
    sorter: str
    pond: str
    photo: str
    record: Mapping[str, str] = field(hash=False)
    labels: Mapping[str, str] = field(hash=False)


@frozen
class Event:
    """What happened to a fish.

    kind: `decided`, `sold`, `died`, `shown` or `became`. what, value: by kind (README.md). amount: the value as a number,
    where it is one: a price, or a place at a show.
    """

    id: int
    fish: int
    kind: str
    day: date | None
    what: str
    value: str
    amount: float | None
    who: str
    note: str


class Book:
    """An open book; close it, or use it in a `with`."""

    def __init__(self, connection: sqlite3.Connection, file: str) -> None:
        self.db = connection
        self.file = file

    @classmethod
    def start(cls, path: Path) -> Book:
        """Make a new book. Raises BookError where the file is there already."""
        try:
            path.open("xb").close()
        except FileExistsError:
            raise BookError(say.book_exists(str(path))) from None
        except OSError as error:
            raise BookError(say.not_a_book(str(path), error.strerror or str(error))) from None
        return cls._opened(path)

    @classmethod
    def open(cls, path: Path) -> Book:
        """Open a book, and bring it to today's layout. Raises BookError where it cannot be read as a book."""
        if not path.is_file():
            raise BookError(say.no_such_book(str(path)))
        return cls._opened(path)

    @classmethod
    def _opened(cls, path: Path) -> Book:
        connection = sqlite3.connect(path, timeout=_WAIT, isolation_level=None)
        try:
            (version,) = connection.execute("PRAGMA user_version").fetchone()
            (application,) = connection.execute("PRAGMA application_id").fetchone()
            (tables,) = connection.execute("SELECT count(*) FROM sqlite_schema").fetchone()
            _check(str(path), application, version, tables)
            connection.execute("PRAGMA journal_mode = WAL")
            connection.execute("PRAGMA synchronous = FULL")
            connection.execute("PRAGMA foreign_keys = ON")
            if version < VERSION:
                migrate(connection)
        except BookError:
            connection.close()
            raise
        except sqlite3.OperationalError as error:
            connection.close()
            busy = "locked" in str(error)
            raise BookError(say.book_in_use(str(path)) if busy else say.not_a_book(str(path), str(error))) from None
        except sqlite3.DatabaseError as error:
            connection.close()
            raise BookError(say.not_a_book(str(path), str(error))) from None
        return cls(connection, str(path))

    def close(self) -> None:
        """Close the file."""
        self.db.close()

    def __enter__(self) -> Book:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    @contextmanager
    def change(self) -> Iterator[sqlite3.Connection]:
        """One transaction: all that is done in it is kept, or none of it. Raises BookError where the book stays in use."""
        try:
            self.db.execute("BEGIN IMMEDIATE")
        except sqlite3.OperationalError:
            raise BookError(say.book_in_use(self.file)) from None
        try:
            yield self.db
            self.db.execute("COMMIT")
        except BaseException:
            if self.db.in_transaction:
                self.db.execute("ROLLBACK")
            raise

    def damage(self) -> tuple[str, ...]:
        """What is damaged in the file, as SQLite tells it; empty for a sound book."""
        try:
            found = [row[0] for row in self.db.execute("PRAGMA integrity_check(20)")]
            broken = [f"{row[0]}: a row names what is not there" for row in self.db.execute("PRAGMA foreign_key_check")]
        except sqlite3.DatabaseError as error:
            return (str(error),)
        return tuple(line for line in [*found, *broken] if line != "ok")

    def named(self, name: str, pond: str | None = None) -> tuple[Fish, ...]:
        """The fish of a name or tag, of a pond where one is given (of any of its looks)."""
        rows = self.db.execute(
            "SELECT id, name, coalesce(tag, ''), pond, spawning, bloodline FROM fish WHERE name = ?1 OR tag = ?1 ORDER BY id",
            (name,),
        )
        found = [Fish(*row) for row in rows]
        if pond is not None:
            found = [one for one in found if pond in self.ponds_of(one.id)]
        return tuple(found)

    def one_named(self, name: str, pond: str | None = None) -> Fish:
        """The one fish of a name or tag. Raises BookError where there is none, or several."""
        found = self.named(name, pond)
        if len(found) == 1:
            return found[0]
        if found:
            raise BookError(say.which_fish(name, [one.pond for one in found]))
        names = [
            row[0]
            for row in self.db.execute(
                "SELECT name FROM fish UNION SELECT tag FROM fish WHERE tag IS NOT NULL LIMIT 20000"
            )
        ]
        raise BookError(say.no_such_fish(name, get_close_matches(name, names, 1)))

    def ponds_of(self, fish: int) -> frozenset[str]:
        """Every pond in which a fish was looked at, and the one in which it was first seen."""
        rows = self.db.execute(
            "SELECT pond FROM looks WHERE fish = ?1 UNION SELECT pond FROM fish WHERE id = ?1", (fish,)
        )
        return frozenset(row[0] for row in rows)

    def fish(self, number: int) -> Fish:
        """The fish of a number."""
        row = self.db.execute(
            "SELECT id, name, coalesce(tag, ''), pond, spawning, bloodline FROM fish WHERE id = ?", (number,)
        ).fetchone()
        return Fish(*row)

    def looks(self, fish: int) -> tuple[Look, ...]:
        """The looks at a fish, the earliest first."""
        rows = self.db.execute(f"{_LOOKS} WHERE fish = ? ORDER BY day, id", (fish,))
        return tuple(map(_look, rows))

    def all_looks(self) -> Iterator[Look]:
        """Every look in the book, fish by fish, the earliest of each first."""
        return map(_look, self.db.execute(f"{_LOOKS} ORDER BY fish, day, id"))

    def events(self, fish: int) -> tuple[Event, ...]:
        """What happened to a fish, the earliest first."""
        return tuple(map(_event, self.db.execute(f"{_EVENTS} WHERE fish = ? ORDER BY day, id", (fish,))))

    def all_events(self, kind: str | None = None) -> Iterator[Event]:
        """Every event, or those of a kind."""
        if kind is None:
            return map(_event, self.db.execute(f"{_EVENTS} ORDER BY day, id"))
        return map(_event, self.db.execute(f"{_EVENTS} WHERE kind = ? ORDER BY day, id", (kind,)))

    def correct(self, look: int, trait: str, after: str, reason: str, who: str = "") -> None:
        """Put a value right; what stood there before is kept in `corrections`. An empty value takes the trait out."""
        with self.change() as db:
            (text,) = db.execute("SELECT record FROM looks WHERE id = ?", (look,)).fetchone()
            record = json.loads(text)
            before = record.get(trait, "")
            if before == after:
                return
            record.pop(trait, None)
            if after:
                record[trait] = after
            db.execute("UPDATE looks SET record = ? WHERE id = ?", (as_json(record), look))
            db.execute("DELETE FROM grades WHERE look = ?", (look,))
            db.execute(
                "INSERT INTO corrections (look, trait, before, after, corrected, who, reason) VALUES (?, ?, ?, ?, ?, ?, ?)",
                (look, trait, before, after, now(), who, reason),
            )

    def forget_fish(self, fish: int) -> None:
        """Remove a fish with all its looks, grades and events for good: nothing of it stays in the file."""
        with self.change() as db:
            db.execute("DELETE FROM fish WHERE id = ?", (fish,))
        self._clean()

    def forget_person(self, name: str) -> int:
        """Remove a person's name wherever it stands as buyer, sorter or decider, for good; how many rows named them."""
        with self.change() as db:
            count = db.execute("UPDATE events SET who = '' WHERE who = ?", (name,)).rowcount
            count += db.execute("UPDATE looks SET sorter = '' WHERE sorter = ?", (name,)).rowcount
            count += db.execute("UPDATE corrections SET who = '' WHERE who = ?", (name,)).rowcount
            count += db.execute("DELETE FROM exercises WHERE sorter = ?", (name,)).rowcount
        self._clean()
        return count

    def _clean(self) -> None:
        # What was deleted stays in free pages and in the log until both are written anew.
        self.db.execute("PRAGMA secure_delete = ON")
        self.db.execute("VACUUM")
        self.db.execute("PRAGMA wal_checkpoint(TRUNCATE)")

    def standard_texts(self) -> Sequence[tuple[int, str, str, str]]:
        """The standards by which fish were graded: number, seal, title with edition, and whole text, the oldest first."""
        rows = self.db.execute("SELECT id, seal, title || ', edition ' || edition, text FROM standards ORDER BY id")
        return [tuple(row) for row in rows]


def _check(file: str, application: int, version: int, tables: int) -> None:
    if application != APPLICATION and tables:
        raise BookError(say.not_a_book(file, "it belongs to another program"))
    if version > VERSION:
        raise BookError(say.later_book(file, version, VERSION))


_LOOKS = "SELECT id, fish, day, sorter, pond, photo, record, labels FROM looks"
_EVENTS = "SELECT id, fish, kind, day, what, value, amount, who, note FROM events"


def _day(text: str | None) -> date | None:
    return None if text is None else date.fromisoformat(text)


def _look(row: tuple[int, int, str | None, str, str, str, str, str]) -> Look:
    number, fish, day, sorter, pond, photo, record, labels = row
    return Look(number, fish, _day(day), sorter, pond, photo, json.loads(record), json.loads(labels))


def _event(row: tuple[int, int, str, str | None, str, str, float | None, str, str]) -> Event:
    number, fish, kind, day, what, value, amount, who, note = row
    return Event(number, fish, kind, _day(day), what, value, amount, who, note)


def as_json(value: object) -> str:
    """A value as JSON in one form, so that equal values have equal texts."""
    return json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"))


def hash_of(*parts: object) -> str:
    """The hash by which a look or an event is known again."""
    return sha256(as_json(parts).encode()).hexdigest()


def now() -> str:
    """The present time, UTC, in ISO 8601."""
    return datetime.now(UTC).isoformat(timespec="seconds")
