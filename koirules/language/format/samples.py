"""Writes what is said of fish in a rule file: samples and phrases."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.language import statements as st
from koirules.language.format.expressions import quantity_words
from koirules.language.format.pieces import ALWAYS, FIRST, NEVER, SECOND, WITHIN, Pen
from koirules.language.syntax import Word
from koirules.vocabulary.kinds import shortest


def write_sample(statement: st.Sample, pen: Pen) -> None:
    """Write a sample: its title, what is recorded, and a line for each outcome."""
    pen.words("sample", at=statement.place)
    pen.title(statement.title)
    pen.words("with", ALWAYS)
    for i, fact in enumerate(statement.facts):
        if i:
            pen.comma()
        pen.words(fact.trait.text, WITHIN if i else NEVER, fact.trait.place)
        _value(fact, pen)
    for outcome in statement.outcomes:
        pen.words(_outcome_words(outcome), ALWAYS, outcome.place)


def write_phrase(statement: st.Phrase, pen: Pen) -> None:
    """Write a phrase: its wordings, and what they mean."""
    pen.words("phrase", at=statement.place)
    for i, wording in enumerate(statement.wordings):
        if i:
            pen.comma()
        pen.title(wording, WITHIN if i else NEVER)
    pen.words("means", FIRST)
    for i, stated in enumerate(statement.stated):
        if i:
            pen.words("and", SECOND)
        write_stated(stated, pen)
    if not statement.stated:
        pen.words("correction" if statement.corrects else "nothing")


def write_stated(stated: st.Stated, pen: Pen, level: int = NEVER) -> None:
    """Write what a trait is said to be. level: of a break before it."""
    if stated.counts:
        pen.words("count of", level, stated.place)
    pen.words(stated.trait.text, NEVER if stated.counts else level, stated.trait.place)
    pen.words(stated.operator)
    if stated.operator == "includes" and len(stated.fact.words) == 1:
        pen.words(stated.fact.words[0].text, at=stated.fact.words[0].place)
    else:
        _value(stated.fact, pen)


def _value(fact: st.Fact, pen: Pen) -> None:
    if fact.not_known:
        pen.words("not known")
    elif fact.text is not None:
        pen.words(f'"{fact.text}"')
    elif fact.numbers:
        for i, number in enumerate(fact.numbers):
            if i:
                pen.words("to")
            pen.words(quantity_words(number), at=number.place)
    elif fact.so_many is not None:
        _places(fact.words, fact.so_many, pen)
    elif fact.bracketed:
        pen.listed(fact.words, WITHIN + 1)
    else:
        for i, word in enumerate(fact.words):
            if i:
                pen.words("to" if fact.words_to else "or")
            pen.words(word.text, at=word.place)


def _places(sure: Sequence[Word], so_many: st.SoMany, pen: Pen) -> None:
    if sure:
        pen.opening()
        for i, word in enumerate(sure):
            pen.words(word.text, WITHIN + 1 if i else NEVER, word.place)
            pen.comma()
    level = WITHIN + 1 if sure else NEVER
    if so_many.bound:
        pen.words(so_many.bound, level, so_many.place)
        level = NEVER
    for i, number in enumerate(so_many.numbers):
        if i:
            pen.words("to")
        pen.words(quantity_words(number), NEVER if i else level, number.place)
    pen.words("of")
    if so_many.among:
        pen.listed(so_many.among, WITHIN + 2)
    else:
        pen.words("them")
    if sure:
        pen.closing()


def _outcome_words(outcome: st.Outcome) -> str:
    name = "" if outcome.name is None else f" {outcome.name.text}"
    if outcome.low is not None and outcome.high is not None:
        what, _, joint = outcome.what.partition(" ")
        return f"{what}{name} {joint} {shortest(outcome.low)} to {shortest(outcome.high)}"
    return f"{outcome.what} round{name}" if outcome.names == "round" else f"{outcome.what}{name}"
