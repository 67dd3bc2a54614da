"""Finds what only has another name in the newer edition, and puts the older one into the newer one's names.

A statement goes by another name where one that is gone and one that is new say the same in all but their names, or carry
the same written label. Traits are never taken for renamed ones: a record sheet names them, so a new name is a new column.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from typing import Any

from attrs import evolve

from koirules.analysis.diff.pages import Entry, Key, Page
from koirules.language import statements as st
from koirules.language.format.sameness import unplaced
from koirules.standard.inherit.names import grade_terms, group_of, in_names

_HEADS = (
    "setting",
    "term",
    "section",
    "fault",
    "lift",
    "grade",
    "points",
    "bonus",
    "penalty",
    "alert",
    "round",
    "panel",
)
_BY_LABEL_ALONE = frozenset({"setting", "section"})
"""What says too little to be known by it: two settings of one value are not one setting."""


def renames_between(old: Page, new: Page, kept: Collection[str] = ()) -> dict[Key, str]:
    """The new names of statements of the older edition, by their head word and old name.

    kept: settings that count by their name, so that under another one they say another thing.
    """
    found: dict[Key, str] = {}
    while True:
        more = dict(_more(renamed(old, found), old, new, found, kept))
        if not more:
            return found
        found |= more


def _more(
    now: dict[Key, Key], old: Page, new: Page, found: dict[Key, str], kept: Collection[str]
) -> Iterator[tuple[Key, str]]:
    """Further pairs, by what the older statements say in the names that are known so far."""
    groups, grades = _groups(found), grade_terms(old.statements)
    for head in _HEADS:
        gone = [key for key in old.keys([head]) if now[key] not in new.entries]
        here = set(now.values())
        come = [key for key in new.keys([head]) if key not in here]
        if head == "setting":
            gone, come = ([key for key in keys if key[1] not in kept] for keys in (gone, come))
        pairs: dict[Key, Key] = {}
        for marks in (_label, _content):
            if marks is _content and head in _BY_LABEL_ALONE:
                continue
            theirs = _by_mark([(key, marks(new.entries[key])) for key in come if key not in pairs.values()])
            ours = _by_mark(
                [
                    (
                        key,
                        marks(
                            Entry(
                                in_names(old.entries[key].statement, head, groups, grades), _section(old, key, groups)
                            )
                        ),
                    )
                    for key in gone
                    if key not in pairs
                ]
            )
            pairs |= {key: theirs[mark] for mark, key in ours.items() if mark in theirs}
        for key, other in pairs.items():
            yield key, other[1]


def _section(page: Page, key: Key, groups: dict[tuple[str, str], str]) -> str:
    section = page.entries[key].section
    return groups.get(("section", section), section)


def _label(entry: Entry) -> str | None:
    statement = entry.statement
    return (
        None
        if isinstance(statement, st.Sample | st.Silence | st.Carry) or statement.title is None
        else statement.title.text
    )


def _content(entry: Entry) -> str:
    told = unplaced(entry.statement)
    told.pop("name", None)
    told.pop("title", None)
    told.pop("say", None)
    return repr((told, entry.section))


def _by_mark(marked: list[tuple[Key, Any]]) -> dict[Any, Key]:
    """The one key of each mark; marks that several have tell nothing apart."""
    found: dict[Any, list[Key]] = {}
    for key, mark in marked:
        if mark is not None:
            found.setdefault(mark, []).append(key)
    return {mark: keys[0] for mark, keys in found.items() if len(keys) == 1}


def _groups(renames: dict[Key, str]) -> dict[tuple[str, str], str]:
    return {(group_of(head), name): new for (head, name), new in renames.items()}


def renamed(page: Page, renames: dict[Key, str]) -> dict[Key, Key]:
    """The key of each statement of the older edition after renaming."""
    return {key: (key[0], renames.get(key, key[1])) for key in page.entries}


def in_new_names(page: Page, renames: dict[Key, str]) -> Page:
    """The older edition in the names of the newer one."""
    groups, grades = _groups(renames), grade_terms(page.statements)
    entries = {
        (head, renames.get((head, name), name)): evolve(
            entry,
            statement=in_names(entry.statement, head, groups, grades),
            section=groups.get(("section", entry.section), entry.section),
        )
        for (head, name), entry in page.entries.items()
    }
    return Page(page.header, entries)
