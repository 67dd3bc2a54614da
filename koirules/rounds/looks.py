"""Looks at the same fish on several days: the latest is graded, and knows the one before."""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterable, Mapping, Sequence
from unicodedata import normalize

from attrs import evolve

from koirules.problems import Cell, Problem, recording
from koirules.results.mapping_record import RecordReader
from koirules.results.record import Record

DATE = "date"
"""Under which name the day of a look stands, where no trait is called so."""

LOOK_DATE = "look_date"
"""The trait that holds the day of a look; what is no day in it is a note like any other."""


_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")


def day_of(value: object) -> datetime.date | None:
    """The day that a value gives, as a date or as a text such as 2026-11-25; None where it gives none."""
    if isinstance(value, datetime.datetime):
        return value.date()
    if isinstance(value, datetime.date):
        return value
    if not isinstance(value, str) or not _DAY.fullmatch(value.strip()):
        return None
    try:
        return datetime.date.fromisoformat(value.strip())
    except ValueError:
        return None


def read_looks(reader: RecordReader, given: Iterable[Mapping[str, object]]) -> tuple[tuple[Record, ...], list[Problem]]:
    """The latest look at each fish that mappings give, and every problem of them. Rows count from 1."""
    records: list[Record] = []
    problems: list[Problem] = []
    rows: dict[tuple[str, datetime.date | None], int] = {}
    dated = DATE not in reader.traits
    for row, mapping in enumerate(given, 1):
        fish = mapping.get("fish")
        if fish is None or not str(fish).strip():
            problems.append(recording.unnamed_fish("records", row))
            continue
        raw = mapping.get(DATE) if dated else None
        noted = mapping.get(LOOK_DATE) if raw is None and LOOK_DATE in reader.traits else None
        day = None if raw is None and noted is None else day_of(noted if raw is None else raw)
        if raw is not None and day is None:
            problems.append(recording.not_a_day("records", row, str(raw)[:30]))
        record = reader.read({key: value for key, value in mapping.items() if key != DATE or not dated}, "")
        if not isinstance(record, Record):
            problems.extend(evolve(one, site=recording.cell("records", row, _column(one))) for one in record)
            continue
        first = rows.setdefault((record.fish, day), row)
        if first != row and day is None:
            problems.append(recording.doubled_fish("records", row, record.fish, first))
        elif first != row and day is not None:
            problems.append(recording.doubled_look("records", row, record.fish, day.isoformat(), first))
        records.append(evolve(record, date=day, row=row))
    undated = {fish: row for (fish, day), row in rows.items() if day is None}
    for (fish, day), row in rows.items():
        if day is not None and fish in undated:
            problems.append(recording.undated_look("records", undated.pop(fish), fish, row))
    return latest_looks(records), problems


def _column(problem: Problem) -> str:
    site = problem.site
    return (site.column if isinstance(site, Cell) else None) or ""


def latest_looks(records: Sequence[Record]) -> tuple[Record, ...]:
    """The latest look at each fish, with the readings of the look before it, in the order of the records."""
    by_fish: dict[str, list[Record]] = {}
    for record in records:
        by_fish.setdefault(normalize("NFC", record.fish), []).append(record)
    latest: dict[int, Record] = {}
    for looks in by_fish.values():
        looks.sort(key=lambda look: look.date or datetime.date.min)
        before = looks[-2].readings if len(looks) > 1 else None
        earlier = tuple(look.readings for look in looks[:-1])
        latest[id(looks[-1])] = evolve(looks[-1], before=before, earlier=earlier)
    return tuple(latest[id(record)] for record in records if id(record) in latest)
