"""The looks of a file of the tub as a table of records."""

from __future__ import annotations

from collections import Counter
from pathlib import Path

from koirules.hooks import Grid, UnreadableError
from koirules_tub.store import Look, Store, StoreError

_SAVE = "Give a file that `koirules tub` made, or take your last copy of it."


def read_records(path: Path) -> Grid:
    """Each look a row. Raises UnreadableError for a file that is none of the tub."""
    if not path.is_file():
        raise UnreadableError("there is no such file", _SAVE)
    try:
        store = Store(path)
    except StoreError as error:
        raise UnreadableError(str(error).removesuffix("."), _SAVE) from None
    try:
        return Grid(table_of(store.looks()))
    finally:
        store.close()


def table_of(looks: list[Look]) -> list[list[object]]:
    """Headings and rows. What several sorters said of one fish are several rows, each with the sorter behind the name."""
    latest: dict[tuple[str, str], Look] = {}
    for look in looks:
        latest[look.fish, look.sorter] = look
    shared = Counter(fish for fish, _ in latest)
    traits = sorted({trait for look in latest.values() for trait in look.record} - {"fish"})
    extra = [name for name in ("sorter", "verdict") if name not in traits]
    rows: list[list[object]] = [["fish", *extra, *traits]]
    for look in latest.values():
        name = f"{look.fish} ({look.sorter})" if shared[look.fish] > 1 else look.fish
        facts = {"sorter": look.sorter, "verdict": look.verdict}
        rows.append([name, *(facts[one] for one in extra), *(look.record.get(trait, "") for trait in traits)])
    return rows
