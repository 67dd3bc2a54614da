"""Tables of classes read from TOML, with every problem at once."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping, Sequence
from decimal import Decimal
from pathlib import Path
from typing import Any, TypeVar

from attrs import field

from koirules.classes.table import ClassTable, Closed, Group, Rounding, Size, Sizes
from koirules.problems import Problem, class_tables
from koirules.problems.record_files import unreadable_file
from koirules.values import define
from koirules.vocabulary.nearness import near
from koirules.vocabulary.units import UNITS

TABLES: Mapping[str, Path] = {path.stem: path for path in sorted(Path(__file__).with_name("tables").glob("*.toml"))}
"""The tables that are shipped, by name: invented examples."""

MOST_BYTES = 1_000_000
"""How large a table may be."""

_T = TypeVar("_T")
_LARGEST = 1_000_000
_AT = re.compile(r"(.*) \(at line ([0-9]+), column ([0-9]+)\)", re.DOTALL)
_TEXT, _LIST, _NUMBER = "a text in quotes", "a list of texts", "a number"


def read_table(name: str) -> ClassTable | tuple[Problem, ...]:
    """The table of a file, or of a shipped one by its name; its problems where there are any. Never raises for bad input."""
    path = Path(name)
    if not _is_file(path):
        if name not in TABLES:
            return (class_tables.no_class_table(name, near(name, TABLES), list(TABLES)),)
        path = TABLES[name]
    try:
        with path.open("rb") as file:
            text = file.read(MOST_BYTES + 1)
    except OSError as error:
        return (unreadable_file(name, (error.strerror or "no reason given").lower()),)
    if len(text) > MOST_BYTES:
        return (unreadable_file(name, "it is larger than 1 MB", "Give a table of classes."),)
    return read_table_text(text.decode("utf-8-sig", errors="replace"), str(path))


def read_table_text(text: str, file: str) -> ClassTable | tuple[Problem, ...]:
    """The table of a text; `file` is the name that problems show."""
    try:
        data = tomllib.loads(text, parse_float=Decimal)
    except tomllib.TOMLDecodeError as error:
        found = _AT.fullmatch(str(error))
        why, line, column = (found[1], int(found[2]), int(found[3])) if found else (str(error), 1, 1)
        return (class_tables.class_table_unread(file, line, column, why[:1].lower() + why[1:]),)
    except (RecursionError, ValueError) as error:  # lists in lists without end, a number of a million digits
        return (class_tables.class_table_unread(file, 1, 1, type(error).__name__),)
    reader = _Reader(file)
    table = reader.table(data)
    return tuple(reader.problems) or table


def _is_file(path: Path) -> bool:
    try:
        return path.is_file()
    except (OSError, ValueError):
        return False


@define
class _Reader:
    """Reads one table, and gathers what is wrong with it."""

    file: str
    problems: list[Problem] = field(factory=list)

    def table(self, data: Mapping[str, Any]) -> ClassTable:
        where = "in the table"
        self._known(data, where, ("title", "edition", "note", "sizes", "groups"))
        title = self._needed(data, where, "title", str, _TEXT, 'title = "…"', "")
        edition = self._needed(data, where, "edition", str, _TEXT, 'edition = "…"', "")
        note = self._one(data, where, "note", str, _TEXT, "")
        sizes = self._one(data, where, "sizes", dict, "a table, [sizes]", {})
        groups = self._one(data, where, "groups", list, "tables, [[groups]]", [])
        if not sizes and not groups:
            self.problems.append(
                class_tables.class_key_missing(self.file, where, "sizes", "[sizes], or [[groups]], or both")
            )
        read = self._sizes(sizes) if sizes else None
        return ClassTable(title, edition, self.file, read, self._groups(groups), (note,) if note else ())

    def _sizes(self, data: Mapping[str, Any]) -> Sizes | None:
        where = "in [sizes]"
        self._known(data, where, ("trait", "unit", "closed", "rounding", "step", "sizes"))
        trait = self._needed(data, where, "trait", str, _TEXT, 'what is measured: trait = "length"', "")
        unit = self._word(data, where, "unit", tuple(UNITS))
        closed = self._word(data, where, "closed", tuple(side.value for side in Closed))
        rounding = self._word(data, where, "rounding", tuple(way.value for way in Rounding))
        step = self._number(data, where, "step")
        if rounding == Rounding.NONE.value and step is not None:
            self.problems.append(class_tables.step_without_rounding(self.file))
        elif rounding not in {None, Rounding.NONE.value} and step is None and "step" not in data:
            told = "to what is rounded: step = 0.5"
            self.problems.append(class_tables.class_key_missing(self.file, where, "step", told))
        elif step is not None and step <= 0:
            self.problems.append(class_tables.class_value_wrong(self.file, where, "step", str(step), "above 0"))
        rows = self._needed(data, where, "sizes", list, "a list of sizes", 'sizes = [{ name = "…", to = … }]', [])
        if isinstance(data.get("sizes"), list) and not rows:
            self.problems.append(class_tables.no_sizes(self.file))
        if closed is None:
            return None
        side = Closed(closed)
        read = self._rows(rows, side)
        if unit is None or rounding is None:
            return None
        return Sizes(trait, UNITS[unit], side, Rounding(rounding), step, read)

    def _rows(self, rows: Sequence[Any], side: Closed) -> tuple[Size, ...]:
        """The sizes of a list; each says the end at its closed side, the first or last may say the other one."""
        own, other = ("to", "over") if side is Closed.UPPER else ("from", "below")
        outer, outermost = (0, "first") if side is Closed.UPPER else (len(rows) - 1, "last")
        ends: list[tuple[str, str, Decimal | None, Decimal | None]] = []
        for position, row in enumerate(rows):
            where = f"in the size in place {position + 1}"
            if not isinstance(row, dict):
                self.problems.append(
                    class_tables.class_value_wrong(
                        self.file, "of [sizes]", "sizes", "a list with something else", "sizes"
                    )
                )
                continue
            self._known(row, where, ("name", "title", own, other))
            name = self._needed(row, where, "name", str, _TEXT, 'name = "…"', "")
            self._fit(row, where)
            end, beyond = self._number(row, where, own), self._number(row, where, other)
            open_end = side is Closed.UPPER and position == len(rows) - 1
            if end is None and own not in row and not open_end:
                self.problems.append(class_tables.class_key_missing(self.file, where, own, f"{own} = …"))
            if beyond is not None and position != outer:
                self.problems.append(class_tables.size_end_misplaced(self.file, name, other, outermost))
            ends.append((name, self._one(row, where, "title", str, _TEXT, name), end, beyond))
        self._once("size", [name for name, *_ in ends])
        return self._joined(ends, side)

    def _joined(
        self, ends: Sequence[tuple[str, str, Decimal | None, Decimal | None]], side: Closed
    ) -> tuple[Size, ...]:
        sizes: list[Size] = []
        for position, (name, title, end, beyond) in enumerate(ends):
            if side is Closed.UPPER:
                low = ends[position - 1][2] if position else beyond
                sizes.append(Size(name, title, low, end))
            else:
                high = ends[position + 1][2] if position + 1 < len(ends) else beyond
                sizes.append(Size(name, title, end, high))
            size = sizes[-1]
            if size.low is not None and size.high is not None and size.low >= size.high:
                before = ends[position - 1][0] if position and side is Closed.UPPER else name
                after = ends[position + 1][0] if position + 1 < len(ends) and side is Closed.LOWER else name
                alone = (len(sizes) == 1 and side is Closed.UPPER) or (
                    position + 1 == len(ends) and side is Closed.LOWER
                )
                self.problems.append(
                    class_tables.size_upside_down(self.file, name)
                    if alone
                    else class_tables.sizes_not_rising(self.file, before, after)
                )
        return tuple(sizes)

    def _groups(self, rows: Sequence[Any]) -> tuple[Group, ...]:
        groups: list[Group] = []
        for position, row in enumerate(rows):
            where = f"in the group in place {position + 1}"
            if not isinstance(row, dict):
                self.problems.append(
                    class_tables.class_value_wrong(self.file, "in the table", "groups", "something else", "[[groups]]")
                )
                continue
            self._known(row, where, ("name", "title", "varieties", "skins", "others"))
            name = self._needed(row, where, "name", str, _TEXT, 'name = "…"', "")
            self._fit(row, where)
            title = self._one(row, where, "title", str, _TEXT, name)
            varieties, skins = (self._texts(row, where, key) for key in ("varieties", "skins"))
            others = self._one(row, where, "others", bool, "true or false", False)
            if not varieties and not skins and not others:
                told = 'varieties = ["…"], skins = ["…"] or others = true'
                self.problems.append(class_tables.class_key_missing(self.file, where, "varieties", told))
            groups.append(Group(name, title, varieties, skins, others))
        self._once("group", [group.name for group in groups])
        self._once("variety", [variety for group in groups for variety in group.varieties])
        self._once("skin", [skin for group in groups for skin in group.skins])
        self._once("group of others", ["others" for group in groups if group.others])
        return tuple(groups)

    def _known(self, data: Mapping[str, Any], where: str, keys: Sequence[str]) -> None:
        for key in data:
            if key not in keys:
                self.problems.append(class_tables.class_key_unknown(self.file, where, key, near(key, keys), keys))

    def _one(self, data: Mapping[str, Any], where: str, key: str, kind: type[_T], expected: str, default: _T) -> _T:
        value: object = data.get(key, default)
        if isinstance(value, kind):
            return value
        self.problems.append(class_tables.class_value_wrong(self.file, where, key, _kind_of(value), expected))
        return default

    def _needed(
        self, data: Mapping[str, Any], where: str, key: str, kind: type[_T], expected: str, write: str, default: _T
    ) -> _T:
        if key not in data:
            self.problems.append(class_tables.class_key_missing(self.file, where, key, write))
        return self._one(data, where, key, kind, expected, default)

    def _word(self, data: Mapping[str, Any], where: str, key: str, words: Sequence[str]) -> str | None:
        if key not in data:
            told = f"{key} = " + " or ".join(f'"{word}"' for word in words[:4])
            self.problems.append(class_tables.class_key_missing(self.file, where, key, told))
            return None
        value = data[key]
        if isinstance(value, str) and value in words:
            return value
        got = f'"{value}"' if isinstance(value, str) else _kind_of(value)
        self.problems.append(class_tables.class_value_wrong(self.file, where, key, got, f"one of: {', '.join(words)}"))
        return None

    def _number(self, data: Mapping[str, Any], where: str, key: str) -> Decimal | None:
        value = data.get(key)
        if value is None:
            return None
        number = Decimal(value) if isinstance(value, int | Decimal) and not isinstance(value, bool) else None
        if number is not None and number.is_finite() and abs(number) <= _LARGEST:
            return number
        self.problems.append(class_tables.class_value_wrong(self.file, where, key, _kind_of(value), _NUMBER))
        return None

    def _texts(self, data: Mapping[str, Any], where: str, key: str) -> tuple[str, ...]:
        value = data.get(key, [])
        if isinstance(value, list) and all(isinstance(text, str) for text in value):
            return tuple(" ".join(text.split()) for text in value)
        self.problems.append(class_tables.class_value_wrong(self.file, where, key, _kind_of(value), _LIST))
        return ()

    def _fit(self, row: Mapping[str, Any], where: str) -> None:
        """A name that can be told from the word for no class, and from nothing."""
        name = row.get("name")
        if isinstance(name, str) and name.strip().casefold() in {"", "none"}:
            self.problems.append(class_tables.class_name_unfit(self.file, where, name))

    def _once(self, what: str, names: Sequence[str]) -> None:
        for name in dict.fromkeys(name for name in names if name and names.count(name) > 1):
            self.problems.append(class_tables.class_named_twice(self.file, what, name))


def _kind_of(value: object) -> str:
    match value:
        case bool():
            return "true" if value else "false"
        case str():
            return "a text"
        case int() | Decimal():
            return f"the number {value}"
        case list():
            return "a list"
        case dict():
            return "a table"
        case _:
            return "a date or time"
