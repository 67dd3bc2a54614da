"""Writes the parts of a round, a line each."""

from __future__ import annotations

from typing import assert_never

from attrs import evolve

from koirules.language import round_parts as parts
from koirules.language import statements as st
from koirules.language.format.expressions import SUM, ExpressionWriter, names, quantity_words
from koirules.language.format.pieces import ALWAYS, FIRST, NEVER, WITHIN, Pen
from koirules.language.syntax import Word


def write_round(statement: st.Round, writer: ExpressionWriter) -> None:
    """Write the parts of a round, in the order in which they stand."""
    begin = len(writer.pen.pieces)
    for part in statement.parts:
        _part(part, writer)
    if len(statement.parts) == 1:
        writer.pen.pieces[begin] = evolve(writer.pen.pieces[begin], level=FIRST)


def _part(part: parts.RoundPart, writer: ExpressionWriter) -> None:
    pen = writer.pen
    match part:
        case parts.Pool(word, name, place):
            pen.words(
                {"all": "from all", "kept": "from those kept by", "passed": "from those passed over by"}[word],
                ALWAYS,
                place,
            )
            if name is not None:
                pen.words(name.text, at=name.place)
        case parts.Keep(possibly, condition, place):
            pen.words("keep those possibly with" if possibly else "keep those with", ALWAYS, place)
            writer.write(condition)
        case parts.Pick():
            _pick(part, writer)
        case parts.Quota(amount, condition, same, place):
            pen.words("no more than", ALWAYS, place)
            _amount(pen, amount)
            if condition is not None:
                pen.words("with")
                writer.write(condition)
            else:
                pen.words("of the same")
                names(pen, same)
        case parts.Send(to, again, place):
            pen.words(f'send to "{to}"', ALWAYS, place)
            if again is not None:
                pen.words("again in")
                pen.words(quantity_words(again), at=again.place)
        case parts.Rescues(amount, place):
            pen.words("rescues", ALWAYS, place)
            _amount(pen, amount)
        case parts.Ties(word, place):
            pen.words("ties all in" if word == "all" else "ties by first recorded", ALWAYS, place)
        case parts.Saying(words, place):
            pen.words("say", ALWAYS, place)
            pen.title(words)
        case _:
            assert_never(part)


def _pick(part: parts.Pick, writer: ExpressionWriter) -> None:
    pen = writer.pen
    pen.words("pick", ALWAYS, part.place)
    if part.amount is None:
        pen.back("all")
    else:
        _amount(pen, part.amount)
    if part.each:
        pen.words("for each")
        names(pen, part.each)
    pen.words("by")
    for i, order in enumerate(part.orders):
        if i:
            pen.comma()
            pen.back("then")
        level = WITHIN if i else NEVER
        pen.words("those with" if order.word == "those" else order.word, level, order.place)
        if order.word == "those":
            writer.write(order.by, depth=1)
        else:
            writer.write(order.by, SUM, depth=1)


def _amount(pen: Pen, amount: parts.Amount) -> None:
    pen.words(amount.text if isinstance(amount, Word) else quantity_words(amount), at=amount.place)
