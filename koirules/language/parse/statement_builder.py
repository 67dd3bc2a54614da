"""From Lark's tree of a statement to our node of it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from decimal import Decimal

from lark import Token, Tree

from koirules.language import statements as st
from koirules.language.parse.builder import Builder, Node
from koirules.language.parse.round_builder import build_round
from koirules.language.syntax import Quantity, Text, Word
from koirules.meaning.panels import PanelWay


def build_statement(build: Builder, node: Node) -> st.Statement:
    """The statement that a tree stands for. Raises NoSuchDateError for a date that no calendar has."""
    return _BUILD[node.data](build, node)


_SAYS = {"any_variety": "variety"}
"""What a part of the header says, where two kinds of part say the same thing."""


def _header(build: Builder, node: Node) -> st.Header:
    title, *parts = node.children
    found: dict[str, Node] = {}
    notes: list[Text] = []
    repeated: list[Word] = []
    for part in parts:
        if part.data == "note":
            notes.append(_text(build, part.children[0]))
        elif _SAYS.get(part.data, part.data) in found:
            repeated.append(Word(part.data.replace("_", " "), build.place(part)))
        else:
            found[_SAYS.get(part.data, part.data)] = part

    def only(name: str) -> Word | None:
        part = found.get(name)
        return None if part is None else build.word(part.children[0])

    is_any = "variety" in found and found["variety"].data == "any_variety"
    valid = found.get("valid")
    dates = [None, None] if valid is None else [_date(build, child) for child in valid.children]
    label = build.title(title)
    if label is None:
        raise AssertionError("the grammar gives a standard without a title")
    return st.Header(
        title=label,
        edition=only("edition"),
        varieties=() if is_any else _names(build, found.get("variety"), 0),
        any_variety=Word("any variety", build.place(found["variety"])) if is_any else None,
        skins=() if is_any else _names(build, found.get("variety"), 1),
        stage=only("stage"),
        valid_from=dates[0],
        valid_until=dates[1],
        valid_place=None if valid is None else build.place(valid),
        based_on=_based_on(build, found["based_on"]) if "based_on" in found else None,
        notes=tuple(notes),
        repeated=tuple(repeated),
        place=build.place(node),
        occasion=only("occasion"),
    )


def _names(build: Builder, variety: Node, position: int) -> tuple[Word, ...]:
    """The varieties of `variety … with …` (position 0), or its skins (1)."""
    names = None if variety is None else variety.children[position]
    return () if names is None else tuple(build.word(name) for name in names.children)


def _based_on(build: Builder, node: Node) -> st.BasedOn:
    file, edition, seal = node.children
    return st.BasedOn(_text(build, file), build.word(edition), build.maybe_word(seal), build.place(node))


def _text(build: Builder, node: Node) -> Text:
    return Text(str(node)[1:-1], build.place(node))


class NoSuchDateError(ValueError):
    """A date that no calendar has, with its place."""

    def __init__(self, word: Word) -> None:
        super().__init__(word.text)
        self.word = word


def _date(build: Builder, node: Node) -> date | None:
    if node is None:
        return None
    try:
        return date.fromisoformat(str(node))
    except ValueError:
        raise NoSuchDateError(build.word(node)) from None


def _setting(build: Builder, node: Node) -> st.Setting:
    name, value, low, high, title = node.children
    return st.Setting(
        build.word(name),
        build.quantity(value),
        build.maybe_quantity(low),
        build.maybe_quantity(high),
        build.title(title),
        build.place(node),
    )


def _kind(build: Builder, node: Node) -> st.KindWritten:
    word = node.data.removeprefix("kind_")
    words: tuple[Word, ...] = ()
    unit, low, high = None, None, None
    if word == "number":
        unit_node, low_node, high_node = node.children
        unit = None if unit_node is None else str(unit_node.children[0])
        low, high = build.quantity(low_node), build.quantity(high_node)
    elif word == "count":
        high = build.quantity(node)
    else:
        words = tuple(build.word(child) for child in node.children)
    return st.KindWritten(word, words, unit, low, high, build.place(node))


def _trait(build: Builder, node: Node) -> st.HouseTrait:
    name, title, kind, better = node.children
    return st.HouseTrait(
        build.word(name),
        build.title(title),
        _kind(build, kind),
        None if better is None else better.data.removesuffix("_is_better"),
        build.place(node),
    )


def _term(build: Builder, node: Node) -> st.Term:
    name, title, expression = node.children
    return st.Term(build.word(name), build.title(title), build.expression(expression), build.place(node))


def _section(build: Builder, node: Node) -> st.Section:
    name, title, worth = node.children
    return st.Section(build.word(name), build.title(title), build.maybe_quantity(worth), build.place(node))


def _row(build: Builder, node: Node) -> st.Row:
    key, gives = node.children
    if isinstance(key, Token):
        return st.Row(None, build.quantity(gives), build.place(node))
    inner = key.children[0]
    read = build.quantity(inner) if key.data == "key_number" else build.word(inner)
    return st.Row(read, build.quantity(gives), build.place(node))


def _points(build: Builder, node: Node) -> st.Points:
    name, title, weight, by, *rows, say = node.children
    return st.Points(
        build.word(name),
        build.title(title),
        build.maybe_quantity(weight),
        build.expression(by),
        tuple(_row(build, row) for row in rows),
        build.say(say),
        build.place(node),
    )


def _extra(build: Builder, node: Node) -> st.Extra:
    name, title, amount, condition, say = node.children
    return st.Extra(
        str(node.data),
        build.word(name),
        build.title(title),
        build.quantity(amount),
        build.expression(condition),
        build.say(say),
        build.place(node),
    )


def _limit(build: Builder, node: Node) -> st.Limit:
    name, title, condition, exception, consequence, say = node.children
    grade, lowers = consequence, None
    if isinstance(consequence, Tree):
        (grade,) = consequence.children
        if consequence.data == "lowers":
            grade, lowers = None, Quantity(Decimal(str(grade)), None, build.place(grade))
    return st.Limit(
        str(node.data),
        build.word(name),
        build.title(title),
        build.expression(condition),
        None if exception is None else build.expression(exception),
        build.maybe_word(grade),
        build.say(say),
        build.place(node),
        lowers,
    )


def _grade(build: Builder, node: Node) -> st.Grade:
    name, title, *rest = node.children
    condition = build.expression(rest.pop(0)) if node.data == "grade_if" else None
    after, say = rest
    return st.Grade(
        build.word(name), build.title(title), condition, build.maybe_word(after), build.say(say), build.place(node)
    )


def _fact(build: Builder, node: Node) -> st.Fact:
    if node.data == "fact_not_known":
        return st.Fact(build.word(node.children[0]), (), (), None, False, build.place(node), not_known=True)
    name, value = node.children
    return _valued(build, name, value, node)


def _valued(build: Builder, name: Node, value: Node, node: Node) -> st.Fact:
    children = [child for child in value.children if child is not None]
    trait, place = build.word(name), build.place(node)
    if value.data == "value_number":
        return st.Fact(trait, tuple(build.quantity(c) for c in children), (), None, False, place)
    if value.data == "value_text":
        return st.Fact(trait, (), (), str(children[0])[1:-1], False, place)
    so_many = _so_many(build, children.pop()) if value.data == "value_so_many" or _counts(children[-1]) else None
    words = tuple(build.word(c) for c in children)
    bracketed = value.data == "value_places"
    return st.Fact(trait, (), words, None, bracketed, place, value.data == "value_steps", so_many=so_many)


def _counts(node: Node) -> bool:
    return isinstance(node, Tree) and node.data.startswith("so_many")


def _so_many(build: Builder, node: Node) -> st.SoMany:
    bound = " ".join(node.children[0].split()) if node.data == "so_many_beyond" else ""
    *numbers, among = node.children[1:] if bound else node.children
    places = () if among is None else tuple(build.word(word) for word in among.children)
    return st.SoMany(bound, tuple(build.quantity(one) for one in numbers if one is not None), places, build.place(node))


def _carry(build: Builder, node: Node) -> st.Carry:
    return st.Carry(tuple(build.word(child) for child in node.children), build.place(node))


def _panel(build: Builder, node: Node) -> st.Panel:
    name, title, way, judges, named_by, middle = node.children
    return st.Panel(
        build.word(name),
        build.title(title),
        PanelWay[way.data.removeprefix("panel_").upper()],
        _number(build, judges),
        _number(build, named_by),
        build.maybe_word(middle),
        build.place(node),
    )


def _number(build: Builder, token: Token | None) -> Quantity | None:
    return None if token is None else Quantity(Decimal(str(token)), None, build.place(token))


def _silence(build: Builder, node: Node) -> st.Silence:
    entries = []
    for child in node.children:
        stated, unless = child.children
        condition = None if unless is None else build.expression(unless)
        entries.append(st.Silent(_stated(build, stated), condition, build.place(child)))
    return st.Silence(tuple(entries), build.place(node))


def _outcome(build: Builder, node: Node) -> st.Outcome:
    what = node.data.replace("_", " ")
    name: Word | None = None
    bounds: list[Decimal] = []
    for child in node.children:
        if isinstance(child, Tree):
            bounds.append(build.quantity(child).value)
        elif child is not None and child.type == "NAME":
            name = build.word(child)
    low, high = bounds or (None, None)
    return st.Outcome(what, name, low, high, build.place(node))


def _sample(build: Builder, node: Node) -> st.Sample:
    title, *rest = node.children
    label = build.title(title)
    if label is None:
        raise AssertionError("the grammar gives a sample without a title")
    facts = tuple(_fact(build, child) for child in rest if child.data in _FACTS)
    outcomes = tuple(_outcome(build, child) for child in rest if child.data not in _FACTS)
    return st.Sample(label, facts, outcomes, build.place(node))


def _stated(build: Builder, node: Node) -> st.Stated:
    how, place = node.data, build.place(node)
    if how == "stated_includes":
        name, *words = node.children
        fact = st.Fact(build.word(name), (), tuple(build.word(word) for word in words), None, True, place)
        return st.Stated("includes", fact, False, place)
    name, value = node.children
    head, _, operator = how.partition("_")
    if how == "stated_is":
        fact = _valued(build, name, value, node)
    elif value.data == "limit_word":
        fact = st.Fact(build.word(name), (), (build.word(value.children[0]),), None, False, place)
    else:
        number = value if head == "counted" else value.children[0]
        fact = st.Fact(build.word(name), (build.quantity(number),), (), None, False, place)
    return st.Stated(operator.replace("_", " "), fact, head == "counted", place)


def _phrase(build: Builder, node: Node) -> st.Phrase:
    titles = [child for child in node.children if child.data == "title"]
    wordings = tuple(label for label in map(build.title, titles) if label is not None)
    means = node.children[len(titles) :]
    corrects = [each.data for each in means] == ["correction"]
    stated = () if corrects else tuple(_stated(build, each) for each in means)
    return st.Phrase(wordings, stated, build.place(node), corrects)


def _alert(build: Builder, node: Node) -> st.Alert:
    name, title, condition, say = node.children
    return st.Alert(
        build.word(name), build.title(title), build.expression(condition), build.say(say), build.place(node)
    )


def _replace(build: Builder, node: Node) -> st.Replace:
    statement = build_statement(build, node.children[0])
    if isinstance(statement, st.Replace | st.Drop | st.Rename):
        raise AssertionError("the grammar lets replace stand before replace or drop")
    return st.Replace(statement, build.place(node))


def _rename(build: Builder, node: Node) -> st.Rename:
    name, to, title = node.children
    return st.Rename(build.word(name), build.word(to), build.title(title), build.place(node))


def _drop(build: Builder, node: Node) -> st.Drop:
    kind, name = node.children
    made = _text(build, name) if name.type == "STRING" else build.word(name)
    return st.Drop(str(kind.children[0]), made, build.place(node))


_FACTS = frozenset({"fact", "fact_not_known"})

_BUILD: Mapping[str, Callable[[Builder, Node], st.Statement]] = {
    "standard": _header,
    "setting": _setting,
    "trait": _trait,
    "term": _term,
    "section": _section,
    "points": _points,
    "bonus": _extra,
    "penalty": _extra,
    "fault": _limit,
    "lift": _limit,
    "grade_if": _grade,
    "grade_otherwise": _grade,
    "silence": _silence,
    "carry": _carry,
    "panel": _panel,
    "sample": _sample,
    "round": build_round,
    "alert": _alert,
    "phrase": _phrase,
    "replace": _replace,
    "drop": _drop,
    "rename": _rename,
}
