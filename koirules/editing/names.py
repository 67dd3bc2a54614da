"""The names of a file: where each is given, and where it is used."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import assert_never

from koirules.language import round_parts, syntax
from koirules.language import statements as st
from koirules.language.syntax import Expression, Title, Word
from koirules.problems import Place
from koirules.standard.inherit.merging import head_of
from koirules.standard.saying import said_by
from koirules.values import frozen

VALUE = "value"
"""The group of traits, terms and settings, which share one set of names; every other group is called by its head word."""

_GROUPS = {"setting": VALUE, "trait": VALUE, "term": VALUE, "silence": VALUE, "carry": VALUE}


@frozen
class Use:
    """A name at a place. group: VALUE, or the head word of what it names. gives: whether it is given there."""

    group: str
    name: str
    place: Place
    gives: bool = False


def group_of(head: str) -> str:
    """The group that the names of statements with a head word belong to."""
    return _GROUPS.get(head, head)


def uses_in(statement: st.Statement, lines: list[str]) -> Iterator[Use]:
    """Every name in a statement. lines: those of the text that it stands in."""
    match statement:
        case st.Header():
            return
        case st.Drop(head=head, name=name):
            if isinstance(name, Word):
                yield Use(group_of(head), name.text, name.place)
        case st.Rename(name=old, to=new):
            yield _use("grade", old)
            yield Use("grade", new.text, new.place, gives=True)
        case st.Replace(statement=inner):
            yield from uses_in(inner, lines)
        case _:
            if not isinstance(statement, st.Sample | st.Phrase | st.Silence | st.Carry):
                yield Use(group_of(head_of(statement)), statement.name.text, statement.name.place, gives=True)
            yield from _inside(statement)
            for said in said_by(statement):
                yield from _said(said, lines)


def _inside(part: st.Part) -> Iterator[Use]:
    match part:
        case st.Setting() | st.HouseTrait() | st.Section() | st.Panel():
            return
        case st.Term(expression=expression) | st.Points(by=expression):
            yield from _of(expression)
        case st.Extra(condition=condition) | st.Alert(condition=condition):
            yield from _of(condition)
        case st.Limit(condition=condition, exception=exception, grade=grade):
            yield from _of(condition)
            yield from () if exception is None else _of(exception)
            yield from () if grade is None else [_use("grade", grade)]
        case st.Grade(condition=condition, after=after):
            yield from () if condition is None else _of(condition)
            yield from () if after is None else [_use("grade", after)]
        case st.Round(parts=parts):
            for each in parts:
                yield from _of_round(each)
        case st.Phrase(stated=stated):
            yield from (_use(VALUE, each.trait) for each in stated)
        case st.Sample(facts=facts, outcomes=outcomes):
            yield from (_use(VALUE, fact.trait) for fact in facts)
            for outcome in outcomes:
                if outcome.name is not None:
                    yield _use(outcome.names, outcome.name)
        case st.Carry(traits=traits):
            yield from (_use(VALUE, trait) for trait in traits)
        case st.Silence(entries=entries):
            for entry in entries:
                yield _use(VALUE, entry.stated.trait)
                yield from () if entry.unless is None else _of(entry.unless)
        case _:
            assert_never(part)


def _of_round(part: round_parts.RoundPart) -> Iterator[Use]:
    match part:
        case round_parts.Pool(round=name):
            yield from () if name is None else [_use("round", name)]
        case round_parts.Pick(amount=Word() as amount) | round_parts.Quota(amount=Word() as amount):
            yield _use(VALUE, amount)
        case round_parts.Rescues(amount=Word() as amount):
            yield _use(VALUE, amount)
        case _:
            pass
    for expression in round_parts.expressions_in(part):
        yield from _of(expression)


def _use(group: str, word: Word) -> Use:
    return Use(group, word.text, word.place)


def _of(expression: Expression) -> Iterator[Use]:
    """The names in an expression. A step is taken for a value of the same name, if there is one: no file may have both."""
    match expression:
        case Word():
            yield _use(VALUE, expression)
        case syntax.SectionRead(name=name):
            yield _use("section", name)
        case syntax.FaultRead(name=name):
            yield _use("fault", name)
        case syntax.Comparison(left=syntax.GradeRead(), tails=tails):
            for operand in (each for tail in tails for each in tail.operands):
                yield from [_use("grade", operand)] if isinstance(operand, Word) else _of(operand)
        case syntax.BatchFigure(operand=operand, among_same=same, among_kept=kept):
            yield from _of(operand)
            yield from (_use(VALUE, word) for word in same)
            yield from () if kept is None else [_use("round", kept)]
        case _:
            for operand in _operands(expression):
                yield from _of(operand)


def _operands(expression: Expression) -> Iterator[Expression]:
    match expression:
        case syntax.Negative(operand=operand) | syntax.Negated(operand=operand) | syntax.CountPlaces(operand=operand):
            yield operand
        case syntax.Earlier(operand=operand) | syntax.BatchFigure(operand=operand):
            yield operand
        case syntax.Arithmetic(first=first, rest=rest):
            yield first
            yield from (operand for _, operand in rest)
        case syntax.AllOf(parts=parts) | syntax.AnyOf(parts=parts):
            yield from parts
        case syntax.CountConditions(items=items) | syntax.Extreme(items=items):
            yield from items
        case syntax.Comparison(left=left, tails=tails):
            yield left
            yield from (operand for tail in tails for operand in tail.operands)
        case syntax.Conditional(value=value, condition=condition, otherwise=otherwise):
            yield from (value, condition, otherwise)
        case syntax.GrownTo(operand=operand, target=target):
            yield from (operand, target)
        case syntax.Word() | syntax.Quantity() | syntax.Text() | syntax.ScoreRead() | syntax.GradeRead():
            return
        case syntax.SectionRead() | syntax.FaultRead():
            return
        case _:
            assert_never(expression)


_SAID = re.compile(r"\{\s*([^{}]*?)\s*\}")


def _said(title: Title, lines: list[str]) -> Iterator[Use]:
    place = title.place
    for number in range(place.line, place.end_line + 1):
        begin = place.column - 1 if number == place.line else 0
        end = place.end_column - 1 if number == place.end_line else len(lines[number - 1])
        for found in _SAID.finditer(lines[number - 1], begin, end):
            if found.group(1):
                first, last = found.span(1)
                yield Use(VALUE, found.group(1), Place(place.file, number, first + 1, number, last + 1))
