"""Statements with some of the names in them changed: an older edition in the names of a newer one."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

import attrs
from attrs import evolve

from koirules.language import round_parts
from koirules.language import statements as st
from koirules.language.syntax import BatchFigure, FaultRead, SectionRead, Title, Word

Renames = Mapping[tuple[str, str], str]
"""New names by group and old name; traits, terms and settings are one group, `value`, as in the language."""

_VALUES = frozenset({"setting", "trait", "term"})


def group_of(head: str) -> str:
    """The group of names that a kind of statement belongs to."""
    return "value" if head in _VALUES else head


def in_names(statement: st.Part, head: str, renames: Renames) -> st.Part:
    """A statement with its own name and the names that it reads changed."""
    if not renames:
        return statement
    made: st.Part = _within(statement, renames, {"name": group_of(head), "grade": "grade"})
    match made:
        case st.Sample(outcomes=outcomes):
            return evolve(made, outcomes=tuple(_outcome(one, renames) for one in outcomes))
        case _:
            return made


def _outcome(outcome: st.Outcome, renames: Renames) -> st.Outcome:
    return outcome if outcome.name is None else evolve(outcome, name=_word(outcome.name, outcome.names, renames))


def _word(word: Word, group: str, renames: Renames) -> Word:
    new = renames.get((group, word.text))
    return word if new is None else evolve(word, text=new)


def _within(value: Any, renames: Renames, names: Mapping[str, str]) -> Any:
    """A part of a statement with its names changed; names: the groups of those fields that hold other names than values."""
    made: dict[str, Any] = {}
    for field in attrs.fields(type(value)):
        before = getattr(value, field.name)
        after = _changed(before, renames, names.get(field.name, "value"))
        if after is not before:
            made[field.name] = after
    return evolve(value, **made) if made else value


def _changed(value: Any, renames: Renames, group: str) -> Any:
    match value:
        case Word():
            return _word(value, group, renames)
        case SectionRead():
            return evolve(value, name=_word(value.name, "section", renames))
        case FaultRead():
            return evolve(value, name=_word(value.name, "fault", renames))
        case BatchFigure():
            return _within(value, renames, {"among_kept": "round"})
        case round_parts.Pool():
            return _within(value, renames, {"round": "round"})
        case Title():
            return _said(value, renames)
        case st.Fact() | st.Outcome() | st.KindWritten() | st.Row():
            return value
        case tuple():
            made = tuple(_changed(each, renames, group) for each in value)
            return made if any(one is not other for one, other in zip(made, value, strict=True)) else value
        case _ if attrs.has(type(value)):
            return _within(value, renames, {})
        case _:
            return value


def _said(title: Title, renames: Renames) -> Title:
    def put(found: re.Match[str]) -> str:
        return "{" + renames.get(("value", found[1]), found[1]) + "}"

    def changed(text: str) -> str:
        return re.sub(r"\{([^{}]*)\}", put, text)

    others = {code: changed(text) for code, text in title.others.items()}
    made = changed(title.text)
    return title if made == title.text and others == title.others else evolve(title, text=made, others=others)
