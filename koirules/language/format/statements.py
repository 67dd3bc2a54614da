"""Writes the statements of a rule file, word by word."""

from __future__ import annotations

from typing import assert_never

from koirules.language import statements as st
from koirules.language.format.expressions import ExpressionWriter, names, quantity_words
from koirules.language.format.pieces import ALWAYS, FIRST, NEVER, SECOND, WITHIN, Pen, Piece, joined
from koirules.language.format.rounds import write_round
from koirules.language.format.samples import write_phrase, write_sample, write_stated
from koirules.language.syntax import Quantity, Title, Word


def pieces_of(statement: st.Statement, *, bare: bool = False) -> list[Piece]:
    """The words of a statement in the one layout. bare: with no brackets but those that are needed."""
    pen = Pen()
    writer = ExpressionWriter(pen, bare)
    match statement:
        case st.Header():
            _header(statement, pen)
        case st.Replace(statement=inner, place=place):
            pen.words("replace", at=place)
            pen.pieces.extend(pieces_of(inner, bare=bare))
        case st.Drop(head=head, name=name, place=place):
            pen.words(f"drop {head}", at=place)
            pen.words(name.text if isinstance(name, Word) else f'"{name.text}"', at=name.place)
        case st.Rename(name=name, to=to, title=title, place=place):
            pen.words("rename grade", at=place)
            pen.words(name.text, at=name.place)
            pen.words("to")
            pen.words(to.text, at=to.place)
            if title is not None:
                pen.title(title)
        case st.Round():
            _head("round", statement, writer)
            if statement.look is not None:
                pen.words("at look")
                _quantity(pen, statement.look)
            write_round(statement, writer)
        case st.Sample():
            write_sample(statement, pen)
        case st.Phrase():
            write_phrase(statement, pen)
        case st.Silence():
            _silence(statement, writer)
        case st.Carry(traits=traits):
            pen.words("carry forward", at=statement.place)
            for i, trait in enumerate(traits):
                if i:
                    pen.comma()
                pen.words(trait.text, WITHIN if i else NEVER, trait.place)
        case st.Panel():
            _panel(statement, writer)
        case _:
            _part(statement, writer)
    return pen.pieces


def statement_line(statement: st.Statement) -> str:
    """A statement on one line."""
    return joined(pieces_of(statement))


def _part(
    statement: st.Setting
    | st.HouseTrait
    | st.Term
    | st.Section
    | st.Points
    | st.Extra
    | st.Limit
    | st.Grade
    | st.Alert,
    writer: ExpressionWriter,
) -> None:
    pen = writer.pen
    match statement:
        case st.Setting():
            _setting(statement, pen)
        case st.HouseTrait():
            _trait(statement, writer)
        case st.Term(expression=expression):
            _head("term", statement, writer)
            pen.words("means", FIRST)
            writer.write(expression)
        case st.Section(worth=worth):
            _head("section", statement, writer)
            if worth is not None:
                pen.words("worth", SECOND)
                _quantity(pen, worth)
        case st.Points():
            _points(statement, writer)
        case st.Extra(head=head, amount=amount, condition=condition, say=say):
            _head(head, statement, writer)
            _quantity(pen, amount)
            pen.words("if", FIRST if say is None else SECOND)
            writer.write(condition)
            _say(pen, say)
        case st.Limit():
            _limit(statement, writer)
        case st.Grade():
            _grade(statement, writer)
        case st.Alert(condition=condition, say=say):
            _head("alert", statement, writer)
            pen.words("if", FIRST if say is None else SECOND)
            writer.write(condition)
            _say(pen, say)
        case _:
            assert_never(statement)


def _head(head: str, statement: st.Part, writer: ExpressionWriter) -> None:
    if isinstance(statement, st.Sample | st.Phrase | st.Silence | st.Carry):
        raise AssertionError("samples, phrases, silence and what is carried forward have no name")
    pen = writer.pen
    pen.words(head, at=statement.place)
    pen.words(statement.name.text, at=statement.name.place)
    if statement.title is not None:
        pen.title(statement.title)


def _panel(statement: st.Panel, writer: ExpressionWriter) -> None:
    pen = writer.pen
    _head("panel", statement, writer)
    pen.words(statement.way.value, FIRST)
    if statement.judges is not None:
        pen.words("at least", FIRST)
        _quantity(pen, statement.judges)
        pen.words("judges")
    if statement.named_by is not None:
        pen.words("places named by at least", FIRST)
        _quantity(pen, statement.named_by)
    if statement.middle is not None:
        pen.words("of two in the middle the", FIRST)
        pen.words(statement.middle.text, at=statement.middle.place)


def _silence(statement: st.Silence, writer: ExpressionWriter) -> None:
    pen = writer.pen
    pen.words("silence means", at=statement.place)
    for i, entry in enumerate(statement.entries):
        if i:
            pen.comma()
        write_stated(entry.stated, pen, WITHIN if i else NEVER)
        if entry.unless is not None:
            pen.words("unless")
            writer.write(entry.unless, level=NEVER, depth=1)


def _say(pen: Pen, say: Title | None) -> None:
    if say is not None:
        pen.words("say", FIRST)
        pen.title(say)


def _quantity(pen: Pen, quantity: Quantity, level: int = NEVER) -> None:
    pen.words(quantity_words(quantity), level, quantity.place)


def _labelled(pen: Pen, word: str, label: Word | None) -> None:
    if label is not None:
        pen.words(word, ALWAYS)
        pen.words(label.text, at=label.place)


def _header(statement: st.Header, pen: Pen) -> None:
    pen.words("standard", at=statement.place)
    pen.title(statement.title)
    _labelled(pen, "edition", statement.edition)
    if statement.any_variety is not None:
        pen.words("any variety", ALWAYS, statement.any_variety.place)
    elif statement.varieties:
        pen.words("variety", ALWAYS)
        names(pen, statement.varieties)
        if statement.skins:
            pen.words("with")
            names(pen, statement.skins)
    _labelled(pen, "stage", statement.stage)
    _labelled(pen, "for", statement.occasion)
    if statement.valid_from is not None and statement.valid_place is not None:
        until = "" if statement.valid_until is None else f" until {statement.valid_until}"
        pen.words(f"valid from {statement.valid_from}{until}", ALWAYS, statement.valid_place)
    base = statement.based_on
    if base is not None:
        pen.words("based on", ALWAYS, base.place)
        pen.words(f'"{base.file.text}"', at=base.file.place)
        pen.words("edition")
        pen.words(base.edition.text, at=base.edition.place)
        if base.seal is not None:
            pen.words("seal", WITHIN)
            pen.words(base.seal.text, at=base.seal.place)
    for note in statement.notes:
        pen.words("note", ALWAYS)
        pen.words(f'"{note.text}"', at=note.place)


def _setting(statement: st.Setting, pen: Pen) -> None:
    pen.words("setting", at=statement.place)
    pen.words(statement.name.text, at=statement.name.place)
    pen.words("=")
    _quantity(pen, statement.value)
    if statement.low is not None and statement.high is not None:
        pen.words("from", SECOND)
        _quantity(pen, statement.low)
        pen.words("to")
        _quantity(pen, statement.high)
    if statement.title is not None:
        pen.title(statement.title, FIRST)


def _trait(statement: st.HouseTrait, writer: ExpressionWriter) -> None:
    pen = writer.pen
    _head("trait", statement, writer)
    pen.words("as", FIRST)
    _kind(pen, statement.kind)
    if statement.better is not None:
        pen.comma()
        pen.pieces.append(Piece(f"{statement.better} is better", level=WITHIN, back=True))


def _kind(pen: Pen, kind: st.KindWritten) -> None:
    match kind.word:
        case "yes_no":
            pen.words("yes or no", at=kind.place)
        case "count" if kind.high is not None:
            pen.words("count up to", at=kind.place)
            _quantity(pen, kind.high)
        case "number" if kind.low is not None and kind.high is not None:
            pen.words("number" if kind.unit is None else f"number in {kind.unit}", at=kind.place)
            pen.words("from")
            _quantity(pen, kind.low)
            pen.words("to")
            _quantity(pen, kind.high)
        case "scale":
            pen.words("scale", at=kind.place)
            for i, step in enumerate(kind.words):
                if i:
                    pen.words("<", WITHIN)
                pen.words(step.text, at=step.place)
        case "choice" | "places" as word:
            pen.words(f"{word} of", at=kind.place)
            pen.listed(kind.words)
        case _:
            pen.words("label", at=kind.place)


def _points(statement: st.Points, writer: ExpressionWriter) -> None:
    pen = writer.pen
    _head("points", statement, writer)
    if statement.weight is not None:
        pen.words("weight", SECOND)
        _quantity(pen, statement.weight)
    pen.words("by", SECOND)
    writer.write(statement.by, level=NEVER, depth=1)
    pen.colon()
    for i, row in enumerate(statement.rows):
        if i:
            pen.comma()
        level = WITHIN if i else FIRST
        match row.key:
            case None:
                pen.words("anything else", level, row.place)
            case Word(text, place):
                pen.words(text, level, place)
            case Quantity() as key:
                _quantity(pen, key, level)
        pen.words("gives")
        _quantity(pen, row.gives)
    _say(pen, statement.say)


def _limit(statement: st.Limit, writer: ExpressionWriter) -> None:
    pen = writer.pen
    _head(statement.head, statement, writer)
    pen.words("if", SECOND)
    writer.write(statement.condition)
    if statement.exception is not None:
        pen.words("except", FIRST)
        writer.write(statement.exception)
    pen.colon(SECOND if statement.exception is None else FIRST)
    if statement.lowers is not None:
        pen.words("lowers by")
        _quantity(pen, statement.lowers)
        pen.words("grade" if statement.lowers.value == 1 else "grades")
    if statement.grade is not None:
        pen.words("no better than" if statement.head == "fault" else "no worse than")
        pen.words(statement.grade.text, at=statement.grade.place)
    _say(pen, statement.say)


def _grade(statement: st.Grade, writer: ExpressionWriter) -> None:
    pen = writer.pen
    _head("grade", statement, writer)
    if statement.condition is None:
        pen.back("otherwise")
    else:
        pen.words("if", FIRST if statement.say is None else SECOND)
        writer.write(statement.condition)
    if statement.after is not None:
        pen.words("after", SECOND)
        pen.words(statement.after.text, at=statement.after.place)
    _say(pen, statement.say)
