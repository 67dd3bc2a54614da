"""The rows of a table made into records, with every problem on the way."""

from __future__ import annotations

import datetime
import re
from collections.abc import Callable, Iterator, Sequence, Set
from unicodedata import normalize

from attrs import evolve, field

from koirules.problems import Cell, Problem, recording
from koirules.problems.quoting import visible
from koirules.records.columns import Column, Columns
from koirules.records.looks import Looks
from koirules.records.table import FISH, Row, Table, Told, is_blank, text_of
from koirules.results.mapping_record import LOOKED, look_number
from koirules.results.record import Record
from koirules.values import define
from koirules.vocabulary import misreads
from koirules.vocabulary.cells import CANNOT_TELL, CannotTell, Misread, read_cell, read_value
from koirules.vocabulary.kinds import Label, Number, Patches, YesNo
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.readings import NO, YES, Reading, Span, show_reading
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Dimension

_MOST_REMEMBERED = 10_000
"""How many different values of a column are remembered, so that the same text is read once."""

_FEW = 3
"""With fewer values than this a column may well hold small shares only."""

_PATCH = re.compile(r"\s*[0-9.]+ to [0-9.]+ (?:left|right|both)\b", re.IGNORECASE)
"""How a patch of a map begins as sorters write it."""

LOT = "all_fish"
"""What names the fish of a first row that holds for the whole lot, folded: it is no fish and no look."""

_Read = Reading | Misread | CannotTell | None

Phrases = Callable[[Trait, str], tuple[Reading, bool] | None]
"""What a phrase says of one trait, and whether it is one of the page's own; None where it says nothing of it alone."""


@define
class _Remembered:
    """The values of a column that were read before. phrases: reads words that are no value of their trait.

    said: the rows of words that were read by a phrase which the page does not have itself.
    """

    column: Column
    phrases: Phrases | None = None
    values: dict[tuple[type, object], _Read] = field(factory=dict)
    said: dict[str, list[int]] = field(factory=dict)

    def read(self, raw: object) -> _Read:
        """Read one cell, or give what it was read as before."""
        trait = self.column.trait
        kind = trait.kind if trait else Label()
        if not isinstance(raw, str | float | int):
            return read_cell(kind, raw, self.column.unit)
        key = (type(raw), raw)
        if key not in self.values:
            value = read_cell(kind, raw, self.column.unit)
            if isinstance(value, Misread) and isinstance(raw, str) and trait is not None and self.phrases is not None:
                said = self.phrases(trait, raw)
                if said is not None:
                    value, own = said
                    if not own:
                        self.said[raw] = []
            if len(self.values) >= _MOST_REMEMBERED:
                return value
            self.values[key] = value
        return self.values[key]


def read_rows(
    table: Table, columns: Columns, phrases: Phrases | None = None, *, broken_as_open: bool = False
) -> tuple[tuple[Record, ...], tuple[Problem, ...]]:
    """Read every row, each look at a fish by itself. phrases: reads words that are no value of their trait, if they say one.

    A row with a problem becomes no record, so that nothing wrong is ever taken as not recorded. broken_as_open: where a value
    cannot be read, the trait is not recorded instead; a warning says so, and the record.
    """
    remembered = [_Remembered(column, phrases) for column in columns.others if not column.told]
    unread = [column.index for column in columns.others if column.told]
    mapped = any(column.trait and isinstance(column.trait.kind, Patches) for column in columns.others)
    looks = Looks()
    records: list[Record] = []
    problems: list[Problem] = []
    for row in table.rows:
        day, undated = looks.day_of(table.file, row, columns.date, noted=columns.noted)
        fish, found = _read_fish(table.file, row, columns.fish)
        number, unclear = _read_look(table.file, row, columns.look)
        found += unclear
        judge = _read_judge(row, columns.judge)
        if undated is not None:
            found.append(undated)
        elif fish is not None:
            found += looks.seen(table.file, row.number, fish, day, number or 1, judge)
        readings: dict[str, Reading] = {}
        labels: dict[str, str] = {}
        cannot_tell: set[str] = set()
        opened: list[Problem] = []
        unreadable: list[tuple[str, str]] = []
        for cells in remembered:
            problem = _read_cell(table.file, row, cells, readings, labels, cannot_tell)
            trait = cells.column.trait
            if problem is not None and broken_as_open and trait is not None:
                cannot_tell.add(trait.name)
                unreadable.append((trait.name, problem.cause))
                opened.append(evolve(_of_fish(problem, fish), warning=True))
            elif problem is not None:
                found.append(problem)
        looked, unclear = _read_looked(table.file, row, columns.looked)
        found += unclear
        astray = (name for name, text in labels.items() if mapped and _PATCH.match(text))
        found += [recording.patch_astray(table.file, row.number, name, labels[name]) for name in astray]
        problems += [_of_fish(problem, fish) for problem in found] + opened
        whole = Told.TOLD not in row.cells and all(is_blank(row.cells[index]) for index in unread)
        if fish is not None and not found and whole:
            untold = frozenset(cannot_tell)
            made = Record(
                fish,
                row.number,
                readings,
                labels,
                day,
                looked=looked,
                cannot_tell=untold,
                look=number,
                judge=judge,
            )
            records.append(evolve(made, unreadable=tuple(unreadable)) if unreadable else made)
    problems += _fractions(table, remembered)
    problems += _said(table, remembered)
    if records and table.rows and records[0].row == table.rows[0].number and folded(records[0].fish) == LOT:
        by_eye = {one.trait.name for one in columns.others if one.trait is not None and one.trait.by_eye}
        records = [_of_lot(records[0], record, by_eye) for record in records[1:]]
    return tuple(records), (*recording.told_once(problems), *looks.without_a_day(table.file))


def _of_fish(problem: Problem, fish: str | None) -> Problem:
    """A problem of a row that names the fish of that row."""
    if fish is None or not isinstance(problem.site, Cell):
        return problem
    return evolve(problem, site=evolve(problem.site, fish=visible(fish)))


def _of_lot(lot: Record, record: Record, by_eye: Set[str]) -> Record:
    """A record with what holds for the lot, where it says nothing itself. by_eye: traits whose recording is a look."""
    told = {name: held for name, held in lot.readings.items() if name not in record.cannot_tell}
    untold = {name for name in lot.cannot_tell if name not in record.readings}
    return evolve(
        record,
        readings={**told, **record.readings},
        labels={**lot.labels, **record.labels},
        cannot_tell=record.cannot_tell | untold,
        # What is said of the lot makes no look at any of its fish.
        looked=not by_eye.isdisjoint(record.readings) if record.looked is None else record.looked,
    )


def _read_fish(file: str, row: Row, index: int | None) -> tuple[str | None, list[Problem]]:
    raw = row.cells[index] if index is not None else Told.TOLD
    if raw is Told.TOLD:
        return None, []
    if isinstance(raw, datetime.date | datetime.time | datetime.timedelta):
        return None, [_wrong(file, row, FISH, misreads.became_a_date(str(raw), Label()))]
    fish = read_value(Label(), raw)
    if fish is None:
        return None, [recording.unnamed_fish(file, row.number)]
    if not isinstance(fish, str):
        return None, [_wrong(file, row, FISH, fish)] if isinstance(fish, Misread) else []
    return fish, []


def _read_look(file: str, row: Row, index: int | None) -> tuple[int | None, list[Problem]]:
    """Which look of its sorting a row is, where the file has a column that says so."""
    raw = None if index is None else row.cells[index]
    if raw is None or raw is Told.TOLD or is_blank(raw):
        return None, []
    number = look_number(raw)
    return number, [] if number is not None else [recording.not_a_look(file, row.number, text_of(raw)[:30])]


def _read_judge(row: Row, index: int | None) -> str:
    """Whose record a row is, "" where no judge is named."""
    raw = None if index is None else row.cells[index]
    return "" if raw is None or raw is Told.TOLD or is_blank(raw) else normalize("NFC", text_of(raw)).strip()


def _read_looked(file: str, row: Row, index: int | None) -> tuple[bool | None, list[Problem]]:
    """Whether somebody looked at the fish, where the file has a column that says so."""
    raw = None if index is None else row.cells[index]
    if raw is None or raw is Told.TOLD or is_blank(raw):
        return None, []
    read = read_value(YesNo(), raw)
    if isinstance(read, Misread):
        return None, [_wrong(file, row, LOOKED, read)]
    return (read == YES if read in {YES, NO} else None), []


def _read_cell(
    file: str,
    row: Row,
    cells: _Remembered,
    readings: dict[str, Reading],
    labels: dict[str, str],
    cannot_tell: set[str],
) -> Problem | None:
    """Put what a cell holds into the readings and labels of its fish, or say what is wrong with it."""
    column = cells.column
    raw = row.cells[column.index]
    if raw is Told.TOLD:
        return None
    value = cells.read(raw)
    if isinstance(raw, str) and raw in cells.said:
        cells.said[raw].append(row.number)
    if isinstance(value, Misread):
        return _wrong(file, row, column.heading, value)
    if value is None:
        return None
    if value is CANNOT_TELL:
        if column.trait is not None:
            cannot_tell.add(column.trait.name)
        return None
    if column.trait is not None:
        readings[column.trait.name] = value
    if column.label is not None:
        text = value if isinstance(value, str) else read_value(Label(), raw)
        if isinstance(text, str):
            labels[column.label] = text
    return None


def _wrong(file: str, row: Row, column: str, misread: Misread) -> Problem:
    site = recording.cell(file, row.number, column)
    return recording.wrong_value(site, misread.code, misread.cause, misread.mend)


def _said(table: Table, remembered: Sequence[_Remembered]) -> Iterator[Problem]:
    """A warning for words in cells that a phrase was found for: what they were read as, so that it is not taken unseen."""
    for cells in remembered:
        trait = cells.column.trait
        for word, rows in cells.said.items():
            value = cells.read(word)
            if trait is not None and rows and not isinstance(value, Misread | CannotTell) and value is not None:
                site = recording.cell(table.file, rows[0], cells.column.heading)
                yield recording.read_as_said(site, word, show_reading(trait.kind, value), rows)


def _fractions(table: Table, remembered: Sequence[_Remembered]) -> Iterator[Problem]:
    """Warn of columns in % that look as if 0.45 stood for 45 %: nothing else would show it."""
    for cells in remembered:
        column = cells.column
        kind = column.trait.kind if column.trait else None
        if not isinstance(kind, Number) or kind.dimension is not Dimension.SHARE or kind.high <= 1:
            continue
        spans = [span for row in table.rows if isinstance(span := cells.read(row.cells[column.index]), Span)]
        between = [span for span in spans if 0.0 < span.low < 1.0]
        if len(spans) >= _FEW and between and all(span.low >= 0 and span.high <= 1 for span in spans):
            yield recording.fractions_for_percent(table.file, column.heading, f"{between[0].low:g}")
