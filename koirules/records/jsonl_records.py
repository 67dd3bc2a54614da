"""Records from JSON: an object on each line, or one list of objects."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal
from pathlib import Path

from koirules.problems import Problem, recording
from koirules.problems.record_files import empty_file, not_a_list
from koirules.records.table import MOST_LETTERS, Heading, Row, Table, Told, refused
from koirules.records.text_files import read_text

_MOST_DIGITS = 400


class _Fish(list[tuple[str, object]]):
    """The pairs of a JSON object, as they stand, so that a key that is there twice can be seen."""


def read_jsonl(path: Path) -> Table:
    """Read the table of a file with one object on each line; rows count as lines."""
    file = str(path)
    text = read_text(path)
    if isinstance(text, Problem):
        return refused(file, text)
    lines = ((number, line) for number, line in enumerate(text.split("\n"), 1) if line.strip())
    return _table(file, ((number, _parse(file, number, line)) for number, line in lines))


def read_json(path: Path) -> Table:
    """Read the table of a file that is one list of objects; rows count as objects, from 1."""
    file = str(path)
    text = read_text(path)
    if isinstance(text, Problem):
        return refused(file, text)
    if not text.strip():
        return refused(file, empty_file(file))
    whole = _parse(file, None, text)
    if isinstance(whole, Problem) or type(whole) is not list:
        lines = [line for line in text.split("\n") if line.strip()]
        looks = len(lines) > 1 and all(isinstance(_parse(file, 1, line), _Fish) for line in lines[:2])
        return refused(file, whole if isinstance(whole, Problem) and not looks else not_a_list(file, looks))
    return _table(file, enumerate(whole, 1))


def _parse(file: str, row: int | None, text: str) -> object:
    """The value of a JSON text, or a Problem; objects become lists of pairs."""
    import json

    try:
        value: object = json.loads(
            text.strip(), object_pairs_hook=_Fish, parse_float=_number, parse_int=_number, parse_constant=float
        )
    except json.JSONDecodeError as error:
        where = f"{error.msg} at letter {error.colno}"
        return recording.broken_line(file, error.lineno if row is None else row, where[0].lower() + where[1:])
    except RecursionError:
        return recording.broken_line(file, row or 1, "lists or objects are nested far too deep")
    return value


def _number(text: str) -> Decimal | str:
    """A number as the exact decimal that was written; one that is absurdly long stays a text, and is told as such."""
    _, _, exponent = text.lower().partition("e")
    return Decimal(text) if len(text) <= _MOST_DIGITS and len(exponent) <= 5 else text


def _table(file: str, values: Iterable[tuple[int, object]]) -> Table:
    """The table of numbered values; each key is a heading, standing in the row in which it came first."""
    headings: dict[str, Heading] = {}
    fish: list[tuple[int, dict[str, object]]] = []
    problems: list[Problem] = []
    for row, value in values:
        if isinstance(value, Problem):
            problems.append(value)
        elif not isinstance(value, _Fish):
            problems.append(recording.not_an_object(file, row, _what(value)))
        else:
            cells: dict[str, object] = {key: _cell(cell) for key, cell in value}
            for key in cells:
                headings.setdefault(key, Heading(key, row))
            for key, problem in _odd(file, row, value):
                cells[key] = Told.TOLD
                problems.append(problem)
            if any(cell is not None for cell in cells.values()):
                fish.append((row, cells))
    if not headings and not problems:
        problems.append(empty_file(file))
    rows = tuple(Row(row, [cells.get(key) for key in headings]) for row, cells in fish)
    return Table(file, tuple(headings.values()), rows, tuple(problems))


def _odd(file: str, row: int, pairs: _Fish) -> Iterator[tuple[str, Problem]]:
    seen: set[str] = set()
    for key, cell in pairs:
        if key in seen:
            yield key, recording.doubled_key(file, row, key)
        elif isinstance(cell, str) and len(cell) > MOST_LETTERS:
            yield key, recording.cell_too_long(file, row, key, MOST_LETTERS)
        seen.add(key)


def _cell(value: object) -> object:
    """A value with its objects as dicts, as far in as a cell is looked at."""
    if isinstance(value, _Fish):
        return dict(value)
    if isinstance(value, list):
        return [dict(item) if isinstance(item, _Fish) else item for item in value]
    return value


def _what(value: object) -> str:
    match value:
        case None:
            return "null"
        case bool():
            return "true or false"
        case str():
            return "a text"
        case list():
            return "a list"
        case _:
            return "a number"
