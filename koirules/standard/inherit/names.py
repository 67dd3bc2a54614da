"""Statements with some of the names in them changed: a base in the names of what builds on it, an edition in those of a newer."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Iterator, Mapping
from typing import Any

import attrs
from attrs import evolve

from koirules.language import round_parts
from koirules.language import statements as st
from koirules.language.syntax import (
    BatchFigure,
    Comparison,
    Conditional,
    Expression,
    FaultRead,
    GradeRead,
    SectionRead,
    Title,
    Word,
)
from koirules.problems import Place

Renames = Mapping[tuple[str, str], str]
"""New names by group and old name; traits, terms and settings are one group, `value`, as in the language."""

_VALUES = frozenset({"setting", "trait", "term"})


def group_of(head: str) -> str:
    """The group of names that a kind of statement belongs to."""
    return "value" if head in _VALUES else head


def grade_terms(statements: Iterable[st.Statement]) -> frozenset[str]:
    """The terms that stand for the grade, so that what they are compared with are grades."""
    terms = {one.name.text: one.expression for one in statements if isinstance(one, st.Term)}
    found: set[str] = set()
    while more := {name for name, means in terms.items() if name not in found and _is_grade(means, found)}:
        found |= more
    return frozenset(found)


def _is_grade(expression: Expression, terms: Collection[str]) -> bool:
    match expression:
        case GradeRead():
            return True
        case Word(text=text):
            return text in terms
        case Conditional(value=value, otherwise=otherwise):
            return _is_grade(value, terms) or _is_grade(otherwise, terms)
        case _:
            return False


def respelt_in(before: Any, after: Any) -> Iterator[tuple[Place, str]]:
    """The words of a statement that are others in the same statement with names changed, by their places."""
    if isinstance(before, Word) and isinstance(after, Word):
        if before.text != after.text:
            yield before.place, after.text
    elif isinstance(before, tuple) and isinstance(after, tuple):
        for one, other in zip(before, after, strict=True):
            yield from respelt_in(one, other)
    elif before is not after and attrs.has(type(before)) and type(before) is type(after):
        for field in attrs.fields(type(before)):
            yield from respelt_in(getattr(before, field.name), getattr(after, field.name))


def in_names(statement: st.Part, head: str, renames: Renames, grades: Collection[str] = ()) -> st.Part:
    """A statement with its own name and the names that it reads changed. grades: the terms that stand for the grade."""
    if not renames:
        return statement
    names = {"name": group_of(head), "grade": "grade", "after": "grade"}
    made: st.Part = _within(statement, renames, names, grades)
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


def _within(value: Any, renames: Renames, names: Mapping[str, str], grades: Collection[str]) -> Any:
    """A part of a statement with its names changed; names: the groups of those fields that hold other names than values."""
    made: dict[str, Any] = {}
    for field in attrs.fields(type(value)):
        before = getattr(value, field.name)
        after = _changed(before, renames, names.get(field.name, "value"), grades)
        if after is not before:
            made[field.name] = after
    return evolve(value, **made) if made else value


def _changed(value: Any, renames: Renames, group: str, grades: Collection[str]) -> Any:
    match value:
        case Word():
            return _word(value, group, renames)
        case SectionRead():
            return evolve(value, name=_word(value.name, "section", renames))
        case FaultRead():
            return evolve(value, name=_word(value.name, "fault", renames))
        case BatchFigure():
            return _within(value, renames, {"among_kept": "round"}, grades)
        case Comparison(left=left, tails=tails) if _is_grade(left, grades):
            of = tuple(_within(tail, renames, {"operands": "grade"}, grades) for tail in tails)
            return evolve(value, left=_changed(left, renames, "value", grades), tails=of)
        case Conditional() if group == "grade":
            return _within(value, renames, {"value": "grade", "otherwise": "grade"}, grades)
        case round_parts.Pool():
            return _within(value, renames, {"round": "round"}, grades)
        case Title():
            return _said(value, renames)
        case st.Fact() | st.Outcome() | st.KindWritten() | st.Row():
            return value
        case tuple():
            made = tuple(_changed(each, renames, group, grades) for each in value)
            return made if any(one is not other for one, other in zip(made, value, strict=True)) else value
        case _ if attrs.has(type(value)):
            return _within(value, renames, {}, grades)
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
