"""What a person decided about fish, from a table: fish, grade or round, by, reason."""

from __future__ import annotations

import datetime
from pathlib import Path

from koirules.problems import Problem
from koirules.problems import decisions as say
from koirules.records.records import read_table
from koirules.records.table import Row, Table, is_blank, text_of
from koirules.results.decisions import Decision
from koirules.vocabulary.plain_text import folded

_COLUMNS = ("fish", "grade", "round", "by", "reason")


def read_decisions(path: Path) -> tuple[tuple[Decision, ...], tuple[Problem, ...]]:
    """The decisions of a file (.csv, .xlsx, .jsonl …), and every problem of its table."""
    table = read_table(path)
    found: dict[str, int] = {}
    problems: list[Problem] = list(table.problems)
    for index, heading in enumerate(table.headings):
        name = folded(heading.text)
        if name in _COLUMNS and name not in found:
            found[name] = index
        elif heading.text:
            problems.append(say.decision_column_unknown(table.file, heading.row, heading.text))
    missing = [name for name in ("fish", "by", "reason") if name not in found]
    if "grade" not in found and "round" not in found:
        missing.insert(1, "grade or round")
    if table.headings and missing:
        problems.append(say.decision_columns(table.file, missing))
    if problems:
        return (), tuple(problems)
    return tuple(_decision(row, found, table.file) for row in table.rows if not _is_empty(row, table)), ()


def _is_empty(row: Row, table: Table) -> bool:
    return all(is_blank(row.cells[index]) for index in range(len(table.headings)))


def _decision(row: Row, columns: dict[str, int], file: str) -> Decision:
    def told(name: str) -> str:
        raw = row.cells[columns[name]] if name in columns else None
        if raw is None or is_blank(raw):
            return ""
        return raw.isoformat() if isinstance(raw, datetime.date) else text_of(raw).strip()

    return Decision(told("fish"), told("grade"), told("round"), told("by"), told("reason"), row.number, file)
