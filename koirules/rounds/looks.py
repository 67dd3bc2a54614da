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
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.readings import Reading

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
    rows: dict[tuple[str, datetime.date | None, int, str], int] = {}
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
        first = rows.setdefault((record.fish, day, number, folded(record.judge)), row)
        if first != row and record.judge:
            problems.append(recording.doubled_judge("records", row, record.fish, record.judge, first))
        elif first != row and number > 1:
            problems.append(recording.doubled_number("records", row, record.fish, number, first))
        elif first != row and day is None:
            problems.append(recording.doubled_fish("records", row, record.fish, first))
        elif first != row and day is not None:
            problems.append(recording.doubled_look("records", row, record.fish, day.isoformat(), first))
        records.append(evolve(record, date=day, row=row))
    undated = {fish: row for (fish, day, number, _), row in rows.items() if day is None and number == 1}
    for (fish, day, number, _), row in rows.items():
        if day is not None and number == 1 and fish in undated:
            problems.append(recording.undated_look("records", undated.pop(fish), fish, row))
    return latest_looks(records), problems


def _column(problem: Problem) -> str:
    site = problem.site
    return (site.column if isinstance(site, Cell) else None) or ""


def latest_looks(records: Sequence[Record]) -> tuple[Record, ...]:
    """The latest sorting of each fish, with the readings of the sorting before it, in the order of the records.

    A look above 1 goes on with the sorting of the look before it, whatever its date: it adds to what was seen, and corrects it
    trait by trait. Any other row is a sorting of its own. Rows of several judges on one day are one sorting (`_judged`).
    """
    by_fish: dict[str, list[Record]] = {}
    for record in records:
        by_fish.setdefault(normalize("NFC", record.fish), []).append(record)
    latest: dict[int, Record] = {}
    for rows in by_fish.values():
        first, made = _judged(rows) if any(row.judge for row in rows) else _of_nobody(rows)
        # A fish stands where its latest sorting began.
        latest[id(first)] = made
    return tuple(latest[id(record)] for record in records if id(record) in latest)


def _of_nobody(rows: Sequence[Record]) -> tuple[Record, Record]:
    """The first row of the latest sorting of a fish, or of a judge's at it, and the record that its rows make."""
    sortings = _sortings(rows)
    *earlier, last = (_together(each) for each in sortings)
    before = earlier[-1].readings if earlier else None
    return sortings[-1][0], evolve(last, before=before, earlier=tuple(one.readings for one in earlier))


def _judged(rows: Sequence[Record]) -> tuple[Record, Record]:
    """The same of a fish that judges looked at: with a seat for each judge of its latest day.

    What a row without a judge says holds for each of them who does not say otherwise.
    """
    by_judge: dict[str, list[Record]] = {}
    for row in rows:
        by_judge.setdefault(folded(row.judge), []).append(row)
    made = {judge: _of_nobody(each) for judge, each in by_judge.items()}
    day = max(_day(first) for first, _ in made.values())
    now = {judge: each for judge, each in made.items() if _day(each[0]) == day}
    firsts = {id(first) for first, _ in now.values()}
    begins = next(row for row in rows if id(row) in firsts)
    _, shared = now.pop("", (None, None))
    if not now and shared is not None:
        return begins, shared
    seats = tuple(_with_shared(own, shared, made.get("")) for _, own in now.values())
    labels: dict[str, dict[str, None]] = {}
    for one in (*(() if shared is None else (shared,)), *seats):
        for name, text in one.labels.items():
            labels.setdefault(name, {})[text] = None
    found = Record(rows[0].fish, begins.row, {}, date=seats[0].date) if shared is None else shared
    return begins, evolve(
        found,
        row=begins.row,
        labels={name: " | ".join(texts) for name, texts in labels.items()},
        unreadable=tuple(each for one in (found, *seats) for each in one.unreadable),
        seats=seats,
    )


def _day(row: Record) -> datetime.date:
    return row.date or datetime.date.min


def _with_shared(own: Record, shared: Record | None, ever: tuple[Record, Record] | None) -> Record:
    """A judge's record with what the row without a judge says. ever: the latest such row, on whatever day, and its record.

    Where the judge never saw the fish before, what was known of it before counts.
    """
    if own.before is None and ever is not None:
        _, last = ever
        before, earlier = (
            (last.before, last.earlier) if last is shared else (last.readings, (*last.earlier, last.readings))
        )
        own = evolve(own, before=before, earlier=earlier)
    own = evolve(own, own=frozenset(own.readings))
    if shared is None:
        return own
    looks = tuple(evolve(look, readings=_shared(shared, look.readings, look.cannot_tell)) for look in own.looks)
    return evolve(
        own,
        readings=_shared(shared, own.readings, own.cannot_tell),
        labels={**shared.labels, **own.labels},
        cannot_tell=own.cannot_tell | (shared.cannot_tell - own.readings.keys()),
        looked=shared.looked if own.looked is None else own.looked,
        looks=looks,
    )


def _shared(shared: Record, own: Mapping[str, Reading], cannot_tell: frozenset[str]) -> dict[str, Reading]:
    told = {name: reading for name, reading in shared.readings.items() if name not in cannot_tell}
    return {**told, **own}


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
