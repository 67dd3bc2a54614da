"""Results as sheets of texts and numbers: what every kind of workbook holds."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from typing import overload

from koirules.records.about import About
from koirules.records.exchange import Sheet
from koirules.records.not_graded import Row
from koirules.records.result_columns import ResultColumns, columns_of

_Cells = Sequence[str | Decimal | None]


class _ResultRows(Sequence[_Cells]):
    """The rows of results, each made when it is read: there may be a million."""

    def __init__(self, columns: ResultColumns, results: Sequence[Row]) -> None:
        self._columns = columns
        self._results = results

    def __len__(self) -> int:
        return len(self._results)

    @overload
    def __getitem__(self, index: int) -> _Cells: ...
    @overload
    def __getitem__(self, index: slice) -> Sequence[_Cells]: ...
    def __getitem__(self, index: int | slice) -> _Cells | Sequence[_Cells]:
        if isinstance(index, slice):
            return _ResultRows(self._columns, self._results[index])
        return tuple(self._columns.row(self._results[index]))

    def __iter__(self) -> Iterator[_Cells]:
        return (tuple(self._columns.row(result)) for result in self._results)


def sheets_of(results: Sequence[Row], about: About) -> tuple[Sheet, ...]:
    """The sheets `results`, one row a fish, `rounds` where fish were selected, and `standard`."""
    columns = columns_of(results, about.recorded)
    first = Sheet("results", columns.headings, _ResultRows(columns, results))
    return (first, *([_rounds(about)] if about.rounds else []), _standard(about))


def _rounds(about: About) -> Sheet:
    """One row for each round and fish that it looked at; who is tied for how many places."""
    rows: list[tuple[str, ...]] = []
    for one in about.rounds:
        by_hand = {decision.fish: f"{decision.by}: {decision.reason}" for decision in one.by_hand}
        again = "" if one.again is None else one.again.isoformat()
        rows.extend((one.title, fish, "kept", by_hand.get(fish, ""), one.sent, again) for fish in one.kept)
        for tie in one.ties:
            fate = f"tied for {tie.places} place{'s' if tie.places != 1 else ''}"
            rows.extend((one.title, fish, fate, "", "", "") for fish in tie.fish)
        rows.extend((one.title, fish, "left", "", "", "") for fish in one.left)
    return Sheet("rounds", ("round", "fish", "fate", "by_hand", "sent_to", "next_look"), rows)


def _standard(about: About) -> Sheet:
    lines = [line for part in about.parts for line in _lines_about(part)] if about.parts else _lines_about(about)
    lines += [("class table", about.classes)] if about.classes else []
    lines += [("caution", caution) for caution in about.cautions]
    return Sheet("standard", ("what", "is"), lines)


def _lines_about(about: About) -> list[tuple[str, str]]:
    return [
        ("title", about.title),
        ("edition", about.edition),
        ("seal", about.seal),
        ("variety", about.variety or ""),
        ("stage", about.stage or ""),
        ("file", about.file),
        *((f"setting {name}", value) for name, value in about.settings.items()),
        *(("alert" if alert.surely else "perhaps", alert.words) for alert in about.alerts),
        *((f"round {one.name}", f"{one.title}: {one.asks}") for one in about.rounds),
    ]
