"""The lines of a text of notes: whose they are, and the remarks in them."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from functools import cache

from attrs import evolve, field

from koirules.notes.numbers import plain_numbers
from koirules.values import define, frozen
from koirules.vocabulary.plain_text import plain
from koirules.vocabulary.units import Unit, added_units

ALL = "all"
"""The name before what holds for every fish of the notes."""

MOST_FISH = 200
"""`5 to 9:` may speak of so many fish."""

_SPLIT = re.compile(r"[,;。、，；!]|\.(?!\d)|\s[-–—]\s")
_NAMED = re.compile(r"\s*(?P<again>again\s+)?(?P<name>[^:;.]{1,60}?)\s*[:：]\s*", re.IGNORECASE)
_LATER = re.compile(r"(?<=[.;])\s*(?=(?:again\s+)?[^:,;.]{1,40}:\s)", re.IGNORECASE)
_NUMBER = re.compile(r"\s*(?P<again>again\s+)?(?:fish\s+)?(?P<name>[0-9]{1,6})(?![\w.])\s+", re.IGNORECASE)
_COUNTED = re.compile(r"\s*(?P<again>again\s+)?(?P<name>[0-9]{1,6})\s*,", re.IGNORECASE)
_CODE = re.compile(r"\s*(?P<again>again\s+)?(?P<name>[a-z]{1,3}-?[0-9]{1,6})(?:\s*,|\s+|\Z)", re.IGNORECASE)
_LOOK = re.compile(r"\s*look\s+([0-9]{1,3})\s*[:：]?\s*\Z", re.IGNORECASE)
_RANGE = re.compile(r"([0-9]{1,6})\s*(?:to|-|–)\s*([0-9]{1,6})\Z", re.IGNORECASE)
_FISH = re.compile(r"fish\s+(?=[0-9]{1,6}\Z)", re.IGNORECASE)
_MEASURED = r"mm|cm|m|mg|kg|g|%|per\s*cent|percent|to|or|-"


@cache
def _measured(units: tuple[Unit, ...]) -> re.Pattern[str]:
    """What stands behind the number of a measure, and not behind that of a fish."""
    added = "".join(f"|{re.escape(word.casefold())}" for unit in units for word in (unit.symbol, *unit.written))
    return re.compile(rf"(?:{_MEASURED}{added})(?!\w)")


@frozen
class Line:
    """A stretch of notes about the same fish. names: of whom it speaks; look: under which heading it stands, 0 for none.

    number: of the line of the text, from 1. named: whether it names its fish itself; again: whether it says that it was named
    before.
    """

    number: int
    names: tuple[str, ...]
    remarks: tuple[str, ...]
    look: int = 0
    named: bool = True
    again: bool = False


@define
class LineCutter:
    """Cuts lines of notes, one after another.

    counted: whether words begin with something that is counted (`2 shimi`), so that the digits before it are no name.
    spoken: whether words are said of a fish, so that they are no name before a colon (`kiwa: sharp`).
    """

    counted: Callable[[str], bool]
    spoken: Callable[[str], bool]
    names: tuple[str, ...] = ()
    look: int = 0
    highest: int = 0
    said: dict[str, str] = field(factory=dict)
    number: int = 0

    def cut(self, raw: str) -> list[Line]:
        """What the next line says of whom; nothing where it says nothing."""
        self.number += 1
        if not raw.strip() or raw.lstrip().startswith("#"):
            return []
        heading = _LOOK.match(raw)
        if heading:
            self.look = int(heading[1])
            return []
        lines: list[Line] = []
        for piece in _LATER.split(raw.strip()):
            found = self._whose(piece)
            again = False
            if found is not None:
                self.names, rest, again = found
                for name in self.names:
                    self.said.setdefault(name.casefold(), name)
                self.highest = max(self.highest, _highest(self.names))
            else:
                rest = piece.replace(":", " ")
            remarks = tuple(part.strip() for part in _SPLIT.split(plain_numbers(rest)) if part.strip())
            if remarks or found is not None:
                lines.append(Line(self.number, self.names, remarks, self.look, found is not None, again))
        return lines

    def copy(self) -> LineCutter:
        """A cutter at the same place, so that a line can be tried."""
        return evolve(self, said=dict(self.said))

    def _whose(self, piece: str) -> tuple[tuple[str, ...], str, bool] | None:
        """The names that a line begins with, what stands behind them, and whether it says `again`."""
        found = _NAMED.match(piece)
        if found is not None:
            if found["name"].casefold() not in self.said and not found["again"] and self.spoken(found["name"]):
                return None
            return _names(found["name"], self.said, self.highest), piece[found.end() :], found["again"] is not None
        found = _NUMBER.match(f"{piece} ")
        if found is not None:
            rest = piece[found.end() :]
            if not _measured(added_units()).match(rest.casefold()) and not self.counted(rest):
                return (self.said.get(found["name"], found["name"]),), rest, found["again"] is not None
            return None
        found = _COUNTED.match(piece)
        if found is not None and (not self.names or found["name"] in {*self.said, str(self.highest + 1)}):
            return (self.said.get(found["name"], found["name"]),), piece[found.end() :], found["again"] is not None
        found = _CODE.match(piece)
        if found is not None and not self.spoken(found["name"]):
            name = self.said.get(found["name"].casefold(), found["name"])
            return (name,), piece[found.end() :], found["again"] is not None
        first = piece.split(maxsplit=1)
        name = first[0].rstrip(",").casefold() if first else ""
        if name in self.said and not name.isalpha():
            return (self.said[name],), "".join(first[1:]), False
        return None


def _names(text: str, said: dict[str, str], highest: int) -> tuple[str, ...]:
    shown = plain(text)
    shown = shown if shown.casefold() in said else _FISH.sub("", shown)
    if shown.casefold() == "next":
        return (str(highest + 1),)
    found: list[str] = []
    for part in re.split(r"\s*(?:,|&|\band\b|\+)\s*", shown):
        stretch = _RANGE.match(part)
        if stretch and 0 < int(stretch[2]) - int(stretch[1]) < MOST_FISH:
            found += [str(value) for value in range(int(stretch[1]), int(stretch[2]) + 1)]
        elif part:
            found.append(part)
    numbers = all(each.isdigit() for each in found)
    names = found if numbers and found else [shown]
    return tuple(said.get(name.casefold(), name) for name in names)


def _highest(names: Sequence[str]) -> int:
    return max((int(name) for name in names if name.isdigit() and len(name) < 7), default=0)
