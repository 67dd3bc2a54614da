"""Looks at the same fish: those of one sorting are put together; the latest sorting is graded, and knows the one before."""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterable, Mapping, Sequence
from unicodedata import normalize

from attrs import evolve

from koirules.problems import Cell, Problem, recording
from koirules.results.mapping_record import RecordReader
from koirules.results.record import Look, Record

DATE = "date"
"""Under which name the day of a look stands, where no trait is called so."""

LOOK_DATE = "look_date"
"""The trait that holds the day of a look; what is no day in it is a note like any other."""


_DAY = re.compile(r"([0-9]{4})-([0-9]{2})-([0-9]{2})|([0-9]{4})[./年] ?([0-9]{1,2})[./月] ?([0-9]{1,2})日?")
_DAY_FIRST = re.compile(r"([0-9]{1,2})\. ?([0-9]{1,2})\. ?([0-9]{4})")
_MONTHS = 12
_SLASHED = re.compile(r"([0-9]{1,2})/([0-9]{1,2})/([0-9]{4})")


def day_of(value: object) -> datetime.date | None:
    """The day that a value gives, as a date or as a text; None where it gives none, or may give several.

    Read are 2026-11-25, 2026/11/25, 2026年11月25日, 25.11.2026, and with slashes what can be one day only: 25/11/2026.
    """
    if isinstance(value, datetime.datetime):
        return value.date()
    if isinstance(value, datetime.date):
        return value
    text = value.strip() if isinstance(value, str) else ""
    if match := _DAY.fullmatch(text):
        year, month, day = (int(part) for part in match.groups() if part is not None)
    elif match := _DAY_FIRST.fullmatch(text):
        day, month, year = map(int, match.groups())
    elif match := _SLASHED.fullmatch(text):
        one, other, year = map(int, match.groups())
        day, month = (one, other) if one > _MONTHS else (other, one)
        if day <= _MONTHS and day != month:
            return None
    else:
        return None
    try:
        return datetime.date(year, month, day)
    except ValueError:
        return None


def read_looks(reader: RecordReader, given: Iterable[Mapping[str, object]]) -> tuple[tuple[Record, ...], list[Problem]]:
    """The latest look at each fish that mappings give, and every problem of them. Rows count from 1."""
    records: list[Record] = []
    problems: list[Problem] = []
    rows: dict[tuple[str, datetime.date | None, int], int] = {}
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
        number = record.look or 1
        first = rows.setdefault((record.fish, day, number), row)
        if first != row and number > 1:
            problems.append(recording.doubled_number("records", row, record.fish, number, first))
        elif first != row and day is None:
            problems.append(recording.doubled_fish("records", row, record.fish, first))
        elif first != row and day is not None:
            problems.append(recording.doubled_look("records", row, record.fish, day.isoformat(), first))
        records.append(evolve(record, date=day, row=row))
    undated = {fish: row for (fish, day, number), row in rows.items() if day is None and number == 1}
    for (fish, day, number), row in rows.items():
        if day is not None and number == 1 and fish in undated:
            problems.append(recording.undated_look("records", undated.pop(fish), fish, row))
    return latest_looks(records), problems


def _column(problem: Problem) -> str:
    site = problem.site
    return (site.column if isinstance(site, Cell) else None) or ""


def latest_looks(records: Sequence[Record]) -> tuple[Record, ...]:
    """The latest sorting of each fish, with the readings of the sorting before it, in the order of the records.

    A look above 1 goes on with the sorting of the look before it, whatever its date: it adds to what was seen, and corrects it
    trait by trait. Any other row is a sorting of its own.
    """
    by_fish: dict[str, list[Record]] = {}
    for record in records:
        by_fish.setdefault(normalize("NFC", record.fish), []).append(record)
    latest: dict[int, Record] = {}
    for rows in by_fish.values():
        sortings = _sortings(rows)
        *earlier, last = (_together(each) for each in sortings)
        before = earlier[-1].readings if earlier else None
        # A fish stands where its latest sorting began.
        latest[id(sortings[-1][0])] = evolve(last, before=before, earlier=tuple(one.readings for one in earlier))
    return tuple(latest[id(record)] for record in records if id(record) in latest)


def _sortings(rows: Sequence[Record]) -> list[list[Record]]:
    """The rows of a fish, sorting by sorting; in each the looks in their order."""
    placed: list[tuple[datetime.date, int, Record]] = []
    day = datetime.date.min
    for row in rows:
        number = row.look or 1
        # A further look without a day of its own was on the day of the one before it, or later.
        day = row.date or (day if number > 1 else datetime.date.min)
        placed.append((day, number, row))
    placed.sort(key=lambda each: (each[0], each[1]))
    sortings: list[list[Record]] = []
    for _, number, row in placed:
        if sortings and number > 1:
            sortings[-1].append(row)
        else:
            sortings.append([row])
    return [sorted(each, key=lambda row: row.look or 1) for each in sortings]


def _together(rows: Sequence[Record]) -> Record:
    """One sorting: its last look with all that those before it had seen."""
    found: list[Look] = []
    labels: dict[str, str] = {}
    for row in rows:
        last = found[-1] if found else Look(0, {})
        kept = {name: reading for name, reading in last.readings.items() if name not in row.cannot_tell}
        found.append(
            Look(
                row.look or 1,
                {**kept, **row.readings},
                row.date or last.date,
                last.looked if row.looked is None else row.looked,
                (last.cannot_tell - row.readings.keys()) | row.cannot_tell,
            )
        )
        labels |= row.labels
    now, row = found[-1], rows[-1]
    carried = frozenset(now.readings.keys() - row.readings.keys())
    return evolve(
        row,
        readings=now.readings,
        labels=labels,
        date=now.date,
        looked=now.looked,
        cannot_tell=now.cannot_tell,
        looks=tuple(found),
        carried=carried,
    )
