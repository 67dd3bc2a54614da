"""Looks at fish: several rows of one fish, told apart by their day."""

from __future__ import annotations

import datetime
from collections.abc import Iterator
from unicodedata import normalize

from attrs import field

from koirules.problems import Problem, recording
from koirules.records.table import Row, is_blank, text_of
from koirules.rounds.looks import day_of
from koirules.values import define
from koirules.vocabulary.plain_text import folded


@define
class Looks:
    """The looks of a file that were seen so far: by fish and judge the day, the number and the row of each."""

    _rows: dict[str, list[tuple[str, datetime.date | None, int, int]]] = field(factory=dict)
    _judged: dict[tuple[str, str, datetime.date | None, int], int] = field(factory=dict)

    def day_of(
        self, file: str, row: Row, index: int | None, *, noted: bool
    ) -> tuple[datetime.date | None, Problem | None]:
        """The day that a row gives, where the file has a column of days; a problem where it is none.

        noted: the column may hold something else.
        """
        raw = None if index is None else row.cells[index]
        if raw is None or is_blank(raw):
            return None, None
        day = day_of(raw)
        return day, None if day is not None or noted else recording.not_a_day(file, row.number, text_of(raw)[:30])

    def seen(
        self, file: str, row: int, fish: str, day: datetime.date | None, number: int, judge: str = ""
    ) -> list[Problem]:
        """Note a look; a problem where the fish has this look of that day already, by the same judge if one is named."""
        name = normalize("NFC", fish)
        self._rows.setdefault(name, []).append((fish, day, number, row))
        first = self._judged.setdefault((name, folded(judge), day, number), row)
        if first == row:
            return []
        if judge:
            return [recording.doubled_judge(file, row, fish, judge, first)]
        if number > 1:
            return [recording.doubled_number(file, row, fish, number, first)]
        if day is None:
            return [recording.doubled_fish(file, row, fish, first)]
        return [recording.doubled_look(file, row, fish, day.isoformat(), first)]

    def without_a_day(self, file: str) -> Iterator[Problem]:
        """The problem of each fish that has dated looks and one without a day."""
        for rows in self._rows.values():
            dated = next((row for _, day, number, row in rows if day is not None and number == 1), None)
            undated = next(((fish, row) for fish, day, number, row in rows if day is None and number == 1), None)
            if dated is not None and undated is not None:
                yield recording.undated_look(file, undated[1], undated[0], dated)
