"""Occasions read from TOML, and their names held against classes, standards and records; every problem at once."""

from __future__ import annotations

import re
import tomllib
from collections import Counter
from collections.abc import Mapping, Sequence
from datetime import date, datetime
from decimal import Decimal
from enum import Enum
from pathlib import Path
from typing import Any, TypeVar

from attrs import field

from koirules.classes.placing import GROUP, SIZE
from koirules.classes.table import ClassTable
from koirules.prizes.awarding import Entrant, Placings
from koirules.prizes.occasion import (
    OUTSIDE,
    SCORE,
    SECTION,
    SHOWN_AS,
    VOTES,
    Fewer,
    Occasion,
    Prize,
    Ties,
    Winners,
    section_of,
)
from koirules.problems import Cell, Place, Problem
from koirules.problems import awarding as say
from koirules.problems.record_files import no_such_file, unreadable_file
from koirules.values import define, frozen
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import folded

MOST_BYTES = 1_000_000
"""How large a table may be."""

MOST_PLACES = 1_000

_T = TypeVar("_T")
_E = TypeVar("_E", bound=Enum)
_AT = re.compile(r"(.*) \(at line ([0-9]+), column ([0-9]+)\)", re.DOTALL)
_ENTRY = re.compile(r"\s*\[\[\s*prize\s*\]\]")
_DATE = re.compile(r"\s*date\s*=")
_TABLE = re.compile(r"\s*\[")
_TEXT = "a text in quotes"
_TOP = ("title", "date", "classes", "note", "prize")
_KEYS = (
    "name",
    "title",
    "for_each",
    "places",
    "among",
    "where",
    "by",
    "not_with",
    "fewest",
    "if_fewer",
    "ties",
    OUTSIDE,
)


@frozen
class Entered:
    """A standard as far as prizes read it: its words, its grades, and the most points of each section and in all.

    fish: the labels of the fish that it graded, by which prizes part them; None where nobody knows them.
    """

    words: str
    grades: tuple[str, ...]
    sections: Mapping[str, Decimal] = field(hash=False)
    fish: tuple[Mapping[str, str], ...] | None = field(default=None, hash=False)

    @property
    def most(self) -> Decimal:
        """The most points in all."""
        return sum(self.sections.values(), Decimal(0))


def read_occasion(path: Path) -> Occasion | tuple[Problem, ...]:
    """The occasion of a file, or its problems. Never raises for bad input."""
    try:
        if not path.is_file():
            beside = [one.name for one in path.parent.glob("*.toml")] if path.parent.is_dir() else []
            return (no_such_file(str(path), near(path.name, beside)),)
        with path.open("rb") as file:
            text = file.read(MOST_BYTES + 1)
    except (OSError, ValueError) as error:
        return (unreadable_file(str(path), (getattr(error, "strerror", None) or str(error)).lower()),)
    if len(text) > MOST_BYTES:
        return (unreadable_file(str(path), "it is larger than 1 MB", "Give a table of prizes."),)
    return read_occasion_text(text.decode("utf-8-sig", errors="replace"), str(path))


def read_occasion_text(text: str, file: str) -> Occasion | tuple[Problem, ...]:
    """The occasion of a text; `file` is the name that problems show."""
    try:
        data = tomllib.loads(text, parse_float=Decimal)
    except tomllib.TOMLDecodeError as error:
        found = _AT.fullmatch(str(error))
        why, line, column = (found[1], int(found[2]), int(found[3])) if found else (str(error), 1, 1)
        return (say.prize_table_unread(file, line, column, why[:1].lower() + why[1:]),)
    except (RecursionError, ValueError) as error:  # lists in lists without end, a number of a million digits
        return (say.prize_table_unread(file, 1, 1, type(error).__name__),)
    reader = _Reader(_Sites(file, text))
    occasion = reader.occasion(data)
    return tuple(reader.problems) or occasion


def is_occasion(path: Path) -> bool:
    """Whether a file is a table of prizes, by a heading `[[prize]]` or a date of its own."""
    try:
        lines = path.read_text(encoding="utf-8-sig", errors="replace")[:MOST_BYTES].splitlines()
    except (OSError, ValueError):
        return False
    return any(_ENTRY.match(line) or _DATE.match(line) for line in lines)


def check_names(
    occasion: Occasion, table: ClassTable | None, standards: Sequence[Entered], columns: Sequence[str], records: str
) -> tuple[Problem, ...]:
    """What prizes name that is neither in the class table, nor in the standards that grade fish, nor in the records.

    columns: the headings of the records. Sections and whole scores whose points differ among the standards are warnings.
    """
    sites = _Sites(occasion.file, occasion.text)
    found: list[Problem] = []
    for position, prize in enumerate(occasion.prizes):
        where = _in_prize(prize.name, position)
        found += _check_classes(prize, table, sites, position, where)
        grades = tuple(dict.fromkeys(grade for one in standards for grade in one.grades))
        found += _unknown(sites.of("where", position), where, "a grade of these standards", prize.grades, grades)
        for name in prize.columns:
            if folded(name) not in map(folded, columns):
                site = sites.of("for_each" if name in prize.for_each else "where", position)
                kind = f"a column of {records}"
                found.append(say.prize_name_unknown(site, where, kind, name, near(name, columns), columns))
        found += _check_keys(prize, standards, sites.of("by", position), where)
    return tuple(found)


def votes_wanted(occasion: Occasion) -> tuple[Problem, ...]:
    """A problem for each prize that goes by votes, where none were given."""
    sites = _Sites(occasion.file, occasion.text)
    return tuple(
        say.votes_not_given(sites.of("by", position), _in_prize(prize.name, position))
        for position, prize in enumerate(occasion.prizes)
        if prize.goes_by_votes
    )


def lowest_placed(
    occasion: Occasion, placings: Sequence[Placings], entrants: Sequence[Entrant], standards: Sequence[Sequence[str]]
) -> tuple[Problem, ...]:
    """A warning for each prize that places fish of the last grade without naming grades, itself or by `among`.

    standards: the grades of each standard, best first.
    """
    sites = _Sites(occasion.file, occasion.text)
    lowest = {
        one.fish
        for one in entrants
        if len(standards[one.standard]) > 1 and one.grades == tuple(standards[one.standard][-1:])
    }
    found: list[Problem] = []
    for position, (prize, one) in enumerate(zip(occasion.prizes, placings, strict=True)):
        placed = [award.fish for part in one.parts for award in part.awards if award.fish in lowest]
        last = {grades[-1] for grades in standards}
        better = tuple(dict.fromkeys(name for grades in standards for name in grades if name not in last))
        if placed and better and not prize.grades and not prize.among:
            where = _in_prize(prize.name, position)
            found.append(say.prize_to_lowest(sites.of("name", position), where, placed, better))
    return tuple(found)


def _check_classes(prize: Prize, table: ClassTable | None, sites: _Sites, position: int, where: str) -> list[Problem]:
    found: list[Problem] = []
    halves = {
        GROUP: () if table is None else tuple(group.name for group in table.groups),
        SIZE: () if table is None or table.sizes is None else tuple(size.name for size in table.sizes.sizes),
    }
    for half, named in ((GROUP, prize.groups), (SIZE, prize.sizes)):
        if table is None and named:
            found.append(say.prize_without_classes(sites.of("where", position), where, SHOWN_AS[half]))
        else:
            kind = f"a {SHOWN_AS[half].removeprefix('class ')} of the class table"
            found += _unknown(sites.of("where", position), where, kind, named, halves[half])
        if half in prize.for_each and not halves[half]:
            site = sites.of("for_each", position)
            if table is None:
                found.append(say.prize_without_classes(site, where, SHOWN_AS[half]))
            else:
                parts = [SHOWN_AS[one] for one, names in halves.items() if names]
                kind = "what the class table has"
                found.append(say.prize_name_unknown(site, where, kind, SHOWN_AS[half], None, parts))
    return found


def _check_keys(prize: Prize, standards: Sequence[Entered], site: Cell | Place, where: str) -> list[Problem]:
    found: list[Problem] = []
    for key in prize.by:
        name = section_of(key)
        if name:
            lacking = next((one for one in standards if name not in one.sections), None)
            if lacking is not None:
                known = list(lacking.sections)
                kind = f"a section of {lacking.words}"
                found.append(say.prize_name_unknown(site, where, kind, name, near(name, known), known))
            elif unlike := _unlike(prize, standards, [one.sections[name] for one in standards]):
                told = [f"{one.sections[name]:f} points in {one.words}" for one in unlike]
                found.append(say.section_worth_differs(site, where, name, told))
        elif key == SCORE and (unlike := _unlike(prize, standards, [one.most for one in standards])):
            found.append(say.scores_unlike(site, where, [f"{one.most:f} points in {one.words}" for one in unlike]))
    return found


def _unlike(prize: Prize, standards: Sequence[Entered], most: Sequence[Decimal]) -> tuple[Entered, ...]:
    """The standards whose fish meet in a part of a prize although the most points differ there, in their order."""
    if any(one.fish is None for one in standards):
        return tuple(standards) if len(set(most)) > 1 else ()
    wanted = {**prize.labels, GROUP: prize.groups, SIZE: prize.sizes}
    parts: dict[tuple[str, ...], set[int]] = {}
    for number, one in enumerate(standards):
        for labels in one.fish or ():
            if all(not names or labels.get(label, "") in names for label, names in wanted.items()):
                part = tuple(labels.get(label, "") for label in prize.for_each)
                if all(part):
                    parts.setdefault(part, set()).add(number)
    parted = [numbers for numbers in parts.values() if len({most[number] for number in numbers}) > 1]
    met = set[int]().union(*parted)
    return tuple(one for number, one in enumerate(standards) if number in met)


def _unknown(site: Cell | Place, where: str, kind: str, names: Sequence[str], known: Sequence[str]) -> list[Problem]:
    return [
        say.prize_name_unknown(site, where, kind, name, near(name, known), known) for name in names if name not in known
    ]


def _in_prize(name: str, position: int) -> str:
    return f'in the prize "{name}"' if name else f"in the prize in place {position + 1}"


@define
class _Sites:
    """Where the keys of a table stand. The TOML reader gives no lines, so they are looked for as people write them."""

    file: str
    text: str
    _lines: list[str] = field(init=False)
    _entries: list[int] = field(init=False)

    def __attrs_post_init__(self) -> None:
        self._lines = self.text.splitlines()
        self._entries = [number for number, line in enumerate(self._lines) if _ENTRY.match(line)]

    def of(self, key: str, position: int | None = None) -> Cell | Place:
        """The line of a key of the prize in a place, or of the top; that of its heading where the key is not found."""
        start, stop = 0, (self._entries[0] if self._entries else len(self._lines))
        if position is not None:
            if position >= len(self._entries):
                return Cell(self.file)
            start = self._entries[position]
            stop = self._entries[position + 1] if position + 1 < len(self._entries) else len(self._lines)
        # What stands in a table of its own within the prize, such as [prize.where].
        opened = re.compile(rf"\s*(?:\"?{re.escape(key)}\"?\s*=|\[prize\.{re.escape(key)}\])")
        for number in range(start, stop):
            if opened.match(self._lines[number]):
                return self._line(number)
        return self._line(start) if self._lines and position is not None else Cell(self.file)

    def _line(self, number: int) -> Place:
        line = self._lines[number]
        first = len(line) - len(line.lstrip()) + 1
        return Place(self.file, number + 1, first, number + 1, max(len(line.rstrip()), first) + 1)


@define
class _Reader:
    """Reads one table, and gathers what is wrong with it."""

    sites: _Sites
    problems: list[Problem] = field(factory=list)
    _position: int | None = None
    _where: str = "at the top of the table"

    def occasion(self, data: Mapping[str, Any]) -> Occasion:
        self._known(data, _TOP)
        title = self._text(data, "title", needed='title = "…"')
        day = self._day(data)
        classes = self._text(data, "classes")
        note = self._text(data, "note")
        rows = self._kind(data, "prize", list, "entries, [[prize]]", [])
        if "prize" not in data or (isinstance(data["prize"], list) and not rows):
            self._missing("prize", 'one or more entries, each with the heading [[prize]] and name = "…"')
        # A wrong name of a prize is told once, where it is used.
        everybody = [row["name"] for row in rows if isinstance(row, dict) and isinstance(row.get("name"), str)]
        prizes: list[Prize] = []
        for position, row in enumerate(rows):
            self._position = position
            if isinstance(row, dict):
                prizes.append(self._prize(row, prizes, everybody))
            else:
                self._wrong("prize", _kind_of(row), "a table, [[prize]]")
        return Occasion(title, day, classes, tuple(prizes), self.sites.file, (note,) if note else (), self.sites.text)

    def _day(self, data: Mapping[str, Any]) -> date | str:
        value = data.get("date")
        if isinstance(value, datetime):
            return value.date()
        if isinstance(value, date):
            return value
        if value is None:
            self._missing("date", 'date = 2026-04-18, or in words: date = "18 and 19 April 2026"')
            return ""
        return self._text(data, "date", expected='a day such as 2026-04-18, or a text: "18 and 19 April 2026"')

    def _prize(self, row: Mapping[str, Any], before: Sequence[Prize], everybody: Sequence[str]) -> Prize:
        given = row.get("name")
        self._where = _in_prize(given if isinstance(given, str) else "", self._position or 0)
        self._known(row, _KEYS)
        name = self._text(row, "name", needed='name = "…"')
        if name and any(one.name == name for one in before):
            self.problems.append(say.prize_named_twice(self._site("name"), name))
        places = self._number(row, "places", 1)
        fewest = self._number(row, "fewest", 0)
        if_fewer = self._word(row, "if_fewer", Fewer, Fewer.NOTHING)
        if fewest and "if_fewer" not in row:
            self._missing("if_fewer", " or ".join(f'if_fewer = "{one.value}"' for one in Fewer))
        elif "if_fewer" in row and "fewest" not in row:
            self.problems.append(say.fewer_without_fewest(self._site("if_fewer"), self._where))
        only = self._only(row)
        return Prize(
            name=name,
            title=self._text(row, "title") or name,
            by=self._by(row),
            places=places,
            for_each=self._parts(row),
            among=self._winners(row, "among", before, everybody),
            not_with=self._winners(row, "not_with", before, everybody),
            sizes=only.pop("sizes", ()),
            groups=only.pop("groups", ()),
            grades=only.pop("grades", ()),
            labels=only,
            fewest=fewest,
            if_fewer=if_fewer,
            ties=self._word(row, "ties", Ties, Ties.DECIDE),
            outside=self._kind(row, OUTSIDE, bool, "true or false", False),
        )

    def _by(self, row: Mapping[str, Any]) -> tuple[str, ...]:
        if "by" not in row:
            self._missing("by", 'what decides, the first thing first: by = ["section body", "score"] or by = ["votes"]')
            return ()
        keys = self._texts(row, "by")
        if isinstance(row["by"], list) and not row["by"]:
            self._wrong("by", "an empty list", 'one or more of "score", "votes" and "section NAME"')
        for key in keys:
            if key not in {SCORE, VOTES} and not section_of(key):
                meant = near(key, (SCORE, VOTES, SECTION.strip()))
                known = (SCORE, VOTES, "section NAME")
                kind = "something that can decide"
                self.problems.append(say.prize_name_unknown(self._site("by"), self._where, kind, key, meant, known))
        self._each_once("by", keys)
        return keys

    def _parts(self, row: Mapping[str, Any]) -> tuple[str, ...]:
        halves = {folded(words): name for name, words in SHOWN_AS.items()}
        parts = tuple(halves.get(folded(words)) or _label(words) for words in self._texts(row, "for_each"))
        self._each_once("for_each", parts)
        return parts

    def _winners(
        self, row: Mapping[str, Any], key: str, before: Sequence[Prize], everybody: Sequence[str]
    ) -> tuple[Winners, ...]:
        value = row.get(key, [])
        expected = 'the name of a prize, { prize = "…", places = 1 }, or a list of these'
        found: list[Winners] = []
        for one in value if isinstance(value, list) else [value]:
            if isinstance(one, str):
                found.append(Winners(one))
            elif isinstance(one, dict) and isinstance(one.get("prize"), str):
                self._known(one, ("prize", "places"), key)
                places = self._number(one, "places", 1, key) if "places" in one else None
                found.append(Winners(one["prize"], places))
            else:
                self._wrong(key, _kind_of(one), expected)
        names = [prize.name for prize in before]
        for one in found:
            if one.prize not in names:
                guess = near(one.prize, names)
                site, is_later = self._site(key), one.prize in everybody
                self.problems.append(say.prize_not_before(site, self._where, one.prize, is_later, guess, names))
        return tuple(found)

    def _only(self, row: Mapping[str, Any]) -> dict[str, tuple[str, ...]]:
        table = self._kind(row, "where", dict, 'a table such as { sizes = ["12", "15"] }', {})
        return {_label(name): self._texts(table, name, "where") for name in table}

    def _known(self, data: Mapping[str, Any], keys: Sequence[str], inside: str = "") -> None:
        for key in data:
            if key not in keys:
                site = self._site(inside or key)
                where = f'of "{inside}" {self._where}' if inside else self._where
                self.problems.append(say.prize_key_unknown(site, where, key, near(key, keys), keys))

    def _text(self, data: Mapping[str, Any], key: str, *, needed: str = "", expected: str = _TEXT) -> str:
        if key not in data:
            if needed:
                self._missing(key, needed)
            return ""
        text = " ".join(self._kind(data, key, str, expected, "").split())
        if isinstance(data[key], str) and not text:
            self._wrong(key, "blank", expected)
        return text

    def _kind(self, data: Mapping[str, Any], key: str, kind: type[_T], expected: str, default: _T) -> _T:
        value: object = data.get(key, default)
        if isinstance(value, kind):
            return value
        self._wrong(key, _kind_of(value), expected)
        return default

    def _number(self, data: Mapping[str, Any], key: str, least: int, inside: str = "") -> int:
        value: object = data.get(key, least)
        if isinstance(value, int) and not isinstance(value, bool) and least <= value <= MOST_PLACES:
            return value
        self._wrong(key, _kind_of(value), f"a whole number from {max(least, 1)} to {MOST_PLACES:,}", inside)
        return least

    def _word(self, data: Mapping[str, Any], key: str, words: type[_E], default: _E) -> _E:
        if key not in data:
            return default
        value = data[key]
        found = next((one for one in words if one.value == value), None)
        if found is None:
            got = f'"{value}"' if isinstance(value, str) else _kind_of(value)
            self._wrong(key, got, f"one of: {', '.join(str(one.value) for one in words)}")
        return found or default

    def _texts(self, data: Mapping[str, Any], key: str, inside: str = "") -> tuple[str, ...]:
        value = data.get(key, [])
        listed = [value] if isinstance(value, str) else value
        if isinstance(listed, list) and all(isinstance(one, str) and one.strip() for one in listed):
            return tuple(" ".join(one.split()) for one in listed)
        self._wrong(key, _kind_of(value), "a text or a list of texts, none of them blank", inside)
        return ()

    def _each_once(self, key: str, names: Sequence[str]) -> None:
        for name in [name for name, number in Counter(names).items() if number > 1]:
            self._wrong(key, f'a list with "{SHOWN_AS.get(name, name)}" twice', "a list of different things")

    def _wrong(self, key: str, got: str, expected: str, inside: str = "") -> None:
        self.problems.append(say.prize_value_wrong(self._site(inside or key), self._where, key, got, expected))

    def _missing(self, key: str, what: str) -> None:
        self.problems.append(say.prize_key_missing(self._site(key), self._where, key, what))

    def _site(self, key: str) -> Cell | Place:
        return self.sites.of(key, self._position)


def _label(name: str) -> str:
    """A column as it is carried along: those that every record can have are known by one name."""
    return folded(name) if folded(name) in {"variety", "stage"} else name


def _kind_of(value: object) -> str:
    match value:
        case bool():
            return "true" if value else "false"
        case str():
            return "a text" if value.strip() else "blank"
        case int() | Decimal():
            return f"the number {value}"
        case list():
            return "a list"
        case dict():
            return "a table"
        case _:
            return "a date or time"
