"""The layout of the book: its tables, and how a book of an earlier version becomes one of today's.

The version stands in `PRAGMA user_version`, and `PRAGMA application_id` marks the file as a book (README.md lists the tables).
A migration is the statements that lead from one version to the next. What has been released is never changed: a new
version adds a migration.
"""

from __future__ import annotations

import sqlite3

APPLICATION = 0x6B6F6962
"""`koib` in ASCII."""

_FIRST = """
CREATE TABLE fish (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  tag TEXT UNIQUE,
  pond TEXT NOT NULL DEFAULT '',
  spawning TEXT NOT NULL DEFAULT '',
  bloodline TEXT NOT NULL DEFAULT ''
);
CREATE INDEX fish_by_name ON fish (name);
CREATE TABLE files (
  id INTEGER PRIMARY KEY,
  sha256 TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  added TEXT NOT NULL
);
CREATE TABLE looks (
  id INTEGER PRIMARY KEY,
  fish INTEGER NOT NULL REFERENCES fish (id) ON DELETE CASCADE,
  day TEXT,
  sorter TEXT NOT NULL DEFAULT '',
  pond TEXT NOT NULL DEFAULT '',
  photo TEXT NOT NULL DEFAULT '',
  record TEXT NOT NULL CHECK (json_valid(record)),
  labels TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(labels)),
  file INTEGER REFERENCES files (id) ON DELETE SET NULL,
  line INTEGER NOT NULL DEFAULT 0,
  hash TEXT NOT NULL UNIQUE
);
CREATE INDEX looks_by_fish ON looks (fish, day);
CREATE INDEX looks_by_day ON looks (day);
CREATE TABLE standards (
  id INTEGER PRIMARY KEY,
  seal TEXT NOT NULL UNIQUE,
  title TEXT NOT NULL,
  edition TEXT NOT NULL,
  variety TEXT NOT NULL DEFAULT '',
  grades TEXT NOT NULL CHECK (json_valid(grades)),
  canonical TEXT NOT NULL,
  text TEXT NOT NULL,
  versions TEXT NOT NULL CHECK (json_valid(versions))
);
CREATE TABLE grades (
  look INTEGER NOT NULL REFERENCES looks (id) ON DELETE CASCADE,
  standard INTEGER NOT NULL REFERENCES standards (id),
  settings TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(settings)),
  possible TEXT NOT NULL CHECK (json_valid(possible)),
  score_low INTEGER NOT NULL,
  score_high INTEGER NOT NULL,
  faults TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(faults)),
  lifts TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(lifts)),
  derived TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(derived)),
  PRIMARY KEY (look, standard, settings)
) WITHOUT ROWID;
CREATE TABLE events (
  id INTEGER PRIMARY KEY,
  fish INTEGER NOT NULL REFERENCES fish (id) ON DELETE CASCADE,
  kind TEXT NOT NULL CHECK (kind IN ('decided', 'sold', 'died', 'shown', 'became')),
  day TEXT,
  what TEXT NOT NULL DEFAULT '',
  value TEXT NOT NULL DEFAULT '',
  amount REAL,
  who TEXT NOT NULL DEFAULT '',
  note TEXT NOT NULL DEFAULT '',
  file INTEGER REFERENCES files (id) ON DELETE SET NULL,
  hash TEXT NOT NULL UNIQUE
);
CREATE INDEX events_by_fish ON events (fish, kind, day);
CREATE INDEX events_by_day ON events (kind, day);
"""

_CORRECTIONS = """
CREATE TABLE corrections (
  id INTEGER PRIMARY KEY,
  look INTEGER NOT NULL REFERENCES looks (id) ON DELETE CASCADE,
  trait TEXT NOT NULL,
  before TEXT NOT NULL,
  after TEXT NOT NULL,
  corrected TEXT NOT NULL,
  who TEXT NOT NULL DEFAULT '',
  reason TEXT NOT NULL
);
CREATE INDEX corrections_by_look ON corrections (look);
"""

_TRAINING = """
CREATE TABLE exercises (
  id INTEGER PRIMARY KEY,
  sorter TEXT NOT NULL,
  day TEXT NOT NULL,
  standard INTEGER NOT NULL REFERENCES standards (id),
  look INTEGER NOT NULL REFERENCES looks (id) ON DELETE CASCADE,
  answer TEXT NOT NULL,
  settled TEXT NOT NULL
);
CREATE INDEX exercises_by_sorter ON exercises (sorter, day);
"""

MIGRATIONS = (_FIRST, _CORRECTIONS, _TRAINING)
"""What leads from version N to version N + 1, by N."""

VERSION = len(MIGRATIONS)
"""The version of today's layout."""


def migrate(connection: sqlite3.Connection) -> None:
    """Bring a book to today's layout, in one transaction: another process sees the old layout or the new one.

    Raises sqlite3.DatabaseError where the file is no database.
    """
    connection.execute("BEGIN IMMEDIATE")
    try:
        (version,) = connection.execute("PRAGMA user_version").fetchone()
        for statements in MIGRATIONS[version:]:
            for statement in statements.split(";"):
                if statement.strip():
                    connection.execute(statement)
        if version < VERSION:
            connection.execute(f"PRAGMA application_id = {APPLICATION}")
            connection.execute(f"PRAGMA user_version = {VERSION}")
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise
