"""A statement taken apart into the things that it says, each with its words and its meaning."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Any, assert_never

from attrs import evolve, field

from koirules.analysis.diff.meanings import SameWords
from koirules.language import round_parts
from koirules.language import statements as st
from koirules.language.format.expressions import ExpressionWriter, quantity_words
from koirules.language.format.pieces import Pen, joined
from koirules.language.format.rounds import write_round
from koirules.language.format.samples import write_phrase, write_sample, write_stated
from koirules.language.syntax import Expression, Quantity, Title, Word
from koirules.meaning.curves import Curve
from koirules.standard.check.header import said_of
from koirules.standard.parts import Rules
from koirules.standard.tree import Node
from koirules.standard.types import Steps
from koirules.values import frozen
from koirules.vocabulary.kinds import describe_kind, shortest
from koirules.vocabulary.units import UNITS

LABEL = "label"


@frozen
class Facet:
    """One thing that a statement says. meaning: equal where it is the same, in whatever words. counts: for grades."""

    what: str
    words: str
    meaning: Any
    counts: bool = True


@frozen
class Typed:
    """The typed expressions of a standard, by head word and name of their statement and what they are in it.

    same: what gives them numbers by what they say.
    """

    rules: Rules
    same: SameWords = field(eq=False)
    nodes: dict[tuple[str, str, str], Node] = field(eq=False)

    @classmethod
    def of(cls, rules: Rules, same: SameWords) -> Typed:
        """Those of a standard."""
        nodes: dict[tuple[str, str, str], Node] = {}
        for term in rules.terms.values():
            nodes["term", term.name, "means"] = term.node
        for points in rules.points:
            nodes["points", points.name, "by"] = points.by
        for extra in rules.extras:
            nodes[extra.head, extra.name, "if"] = extra.condition
        for limit in rules.limits:
            nodes[limit.head, limit.name, "if"] = limit.condition
            if limit.exception is not None:
                nodes[limit.head, limit.name, "except"] = limit.exception
        for grade in rules.grades:
            if grade.condition is not None:
                nodes["grade", grade.name, "if"] = grade.condition
        for silent in rules.silence.values():
            if silent.unless is not None:
                nodes["silence", silent.trait.name, "unless"] = silent.unless
        for alert in rules.alerts:
            nodes["alert", alert.name, "if"] = alert.condition
        return cls(rules, same, nodes)


_ButSilence = (
    st.Setting
    | st.HouseTrait
    | st.Term
    | st.Section
    | st.Points
    | st.Extra
    | st.Limit
    | st.Grade
    | st.Alert
    | st.Round
    | st.Phrase
    | st.Sample
)


def facets_of(statement: st.Part, head: str, section: str, typed: Typed) -> list[Facet]:
    """What a statement says. section: the one that a criterion stands in."""
    if isinstance(statement, st.Silence):
        return list(_silence(statement, typed))
    if isinstance(statement, st.Carry):
        return [Facet("from one sorting to the next", "carried forward", True)]
    if isinstance(statement, st.Panel):
        return [*_titled(LABEL, statement.title), *_panel(statement)]
    return list(_facets(statement, head, section, typed))


def _facets(statement: _ButSilence, head: str, section: str, typed: Typed) -> Iterator[Facet]:
    if section and head != "section":
        yield Facet("section", section, section)
    yield from _titled(LABEL, statement.title if not isinstance(statement, st.Sample | st.Phrase) else None)
    match statement:
        case st.Setting():
            yield from _setting(statement, typed.rules)
        case st.HouseTrait(name=name, better=better):
            kind = describe_kind(typed.rules.traits[name.text].kind)
            yield Facet("as", kind, kind)
            if better is not None:
                yield Facet("direction", f"{better} is better", better, counts=False)
        case st.Term(name=name, expression=expression):
            yield _expression("means", expression, typed.nodes["term", name.text, "means"], typed)
        case st.Section(worth=worth):
            if worth is not None:
                yield _quantity("worth", worth)
        case st.Points():
            yield from _points(statement, typed)
        case st.Extra(name=name, amount=amount, condition=condition):
            yield _quantity("points", amount)
            yield _expression("if", condition, typed.nodes[head, name.text, "if"], typed)
        case st.Limit(name=name):
            yield _expression("if", statement.condition, typed.nodes[head, name.text, "if"], typed)
            if statement.exception is not None:
                yield _expression("except", statement.exception, typed.nodes[head, name.text, "except"], typed)
            yield _consequence(statement)
        case st.Grade(name=name, condition=condition):
            if condition is None:
                yield Facet("if", "otherwise", "otherwise")
            else:
                yield _expression("if", condition, typed.nodes["grade", name.text, "if"], typed)
        case st.Alert(name=name, condition=condition):
            yield evolve(_expression("if", condition, typed.nodes["alert", name.text, "if"], typed), counts=False)
        case st.Round():
            yield from _round(statement)
        case st.Sample() | st.Phrase():
            yield from _of_fish(statement)
        case _:
            assert_never(statement)
    if isinstance(statement, st.Points | st.Extra | st.Limit | st.Grade | st.Alert):
        yield from _titled("say", statement.say)


def _consequence(limit: st.Limit) -> Facet:
    word = "no better than" if limit.head == "fault" else "no worse than"
    said = "" if limit.grade is None else limit.grade.text
    if limit.lowers is not None:
        word, said = "lowers by", shortest(limit.lowers.value)
    return Facet(word, said, said)


def _titled(what: str, title: Title | None) -> Iterator[Facet]:
    if title is not None:
        pen = Pen()
        pen.title(title)
        words = joined(pen.pieces)
        yield Facet(what, words, words, counts=False)


def _expression(what: str, expression: Expression, node: Node, typed: Typed) -> Facet:
    pen = Pen()
    ExpressionWriter(pen).write(expression)
    return Facet(what, joined(pen.pieces), typed.same.meaning(node))


def _quantity(what: str, quantity: Quantity) -> Facet:
    return Facet(what, quantity_words(quantity), held(quantity))


def held(quantity: Quantity) -> Decimal:
    """A quantity in the unit that it is held in."""
    return (quantity.value if quantity.unit is None else UNITS[quantity.unit].to_held(quantity.value)).normalize()


def _setting(statement: st.Setting, rules: Rules) -> Iterator[Facet]:
    yield _quantity("value", statement.value)
    if statement.low is not None and statement.high is not None:
        words = f"{quantity_words(statement.low)} to {quantity_words(statement.high)}"
        yield Facet("range", words, (held(statement.low), held(statement.high)), counts=False)
    unit = rules.settings[statement.name.text].unit
    if unit is not None:
        yield Facet("measures", unit.dimension.word, unit.dimension)


def _points(statement: st.Points, typed: Typed) -> Iterator[Facet]:
    part = next(part for part in typed.rules.points if part.name == statement.name.text)
    weight = statement.weight
    yield Facet("weight", "1" if weight is None else quantity_words(weight), part.weight)
    yield _expression("by", statement.by, part.by, typed)
    if isinstance(part.shape, Curve):
        for row, gives in zip(statement.rows, part.shape.gives, strict=True):
            if isinstance(row.key, Quantity):
                yield Facet(f"{quantity_words(row.key)} gives", quantity_words(row.gives), (held(row.key), gives))
        return
    rows = {row.key.text: row for row in statement.rows if isinstance(row.key, Word)}
    rest = next((row for row in statement.rows if row.key is None), None)
    steps = part.reads.type.words if isinstance(part.reads.type, Steps) else ()
    for word, gives in zip(steps, part.shape.gives, strict=True):
        found = rows.get(word, rest)
        if found is not None:
            yield Facet(f"{word} gives", quantity_words(found.gives), (word, gives))


def _panel(statement: st.Panel) -> Iterator[Facet]:
    yield Facet("judges are put together", statement.way.value, statement.way)
    if statement.judges is not None:
        yield _quantity("at least … judges", statement.judges)
    if statement.named_by is not None:
        yield _quantity("places named by at least", statement.named_by)
    if statement.middle is not None:
        yield Facet("of two in the middle the", statement.middle.text, statement.middle.text)


def _round(statement: st.Round) -> Iterator[Facet]:
    names = {
        round_parts.Pool: "looks at",
        round_parts.Keep: "keeps",
        round_parts.Pick: "picks",
        round_parts.Quota: "quota",
        round_parts.Send: "sends",
        round_parts.Rescues: "rescues",
        round_parts.Ties: "ties",
        round_parts.Saying: "say",
    }
    seen: dict[str, int] = {}
    for part in statement.parts:
        pen = Pen()
        write_round(evolve(statement, parts=(part,)), ExpressionWriter(pen))
        what = names[type(part)]
        seen[what] = seen.get(what, 0) + 1
        number = f" {seen[what]}" if seen[what] > 1 else ""
        words = joined(pen.pieces)
        yield Facet(f"{what}{number}", words, words, counts=False)


def _silence(statement: st.Silence, typed: Typed) -> Iterator[Facet]:
    for entry in statement.entries:
        pen = Pen()
        write_stated(entry.stated, pen)
        words = joined(pen.pieces).removeprefix(f"{entry.stated.trait.text} ")
        yield Facet("means", words, typed.rules.silence[entry.stated.trait.text].reading)
        if entry.unless is not None:
            yield _expression("unless", entry.unless, typed.nodes["silence", entry.stated.trait.text, "unless"], typed)


def _of_fish(statement: st.Sample | st.Phrase) -> Iterator[Facet]:
    if isinstance(statement, st.Phrase):
        pen = Pen()
        write_phrase(statement, pen)
        words = joined(pen.pieces).removeprefix("phrase ")
        yield Facet("phrase", words, words, counts=False)
        return
    for fact in statement.facts:
        words = _of_sample(evolve(statement, facts=(fact,), outcomes=())).removeprefix(f"{fact.trait.text} ")
        yield Facet(f"with {fact.trait.text}", words, words, counts=False)
    for outcome in statement.outcomes:
        words = _of_sample(evolve(statement, facts=(), outcomes=(outcome,)))
        yield Facet("comes to", words, words, counts=False)


def _of_sample(statement: st.Sample) -> str:
    pen = Pen()
    write_sample(statement, pen)
    begin = next(i for i, piece in enumerate(pen.pieces) if piece.text == "with")
    return joined(pen.pieces[begin + 1 :])


def header_facets(header: st.Header) -> list[Facet]:
    """What the standard says of itself."""
    told: list[Facet] = list(_titled("title", header.title))
    valid = "" if header.valid_from is None else f"from {header.valid_from}"
    valid += "" if header.valid_until is None else f" until {header.valid_until}"
    named = (
        ("edition", "" if header.edition is None else header.edition.text),
        ("variety", said_of(header)),
        ("stage", "" if header.stage is None else header.stage.text),
        ("for", "" if header.occasion is None else header.occasion.text),
        ("valid", valid),
        *((f"note {i}", f'"{note.text}"') for i, note in enumerate(header.notes, 1)),
    )
    told.extend(Facet(what, words, words, counts=False) for what, words in named if words)
    return told
