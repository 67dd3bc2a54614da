"""What a page changes of the standard that it is based on: listed once, and marked where it stands."""

from __future__ import annotations

from collections.abc import Iterator

from koirules.language import statements as st
from koirules.language.parse.reader import read_text
from koirules.problems import Place
from koirules.report.handbook.blocks import Block, Facts, Heading, Line, Paragraph, line
from koirules.report.handbook.voice import Voice, anchor
from koirules.standard.parts import Rules
from koirules.standard.titles import Titled

_MOST_LISTED = 40
"""A page that adds more than this is a page of its own on a common ground: what comes from there is marked then."""


def differences(voice: Voice) -> Iterator[Block]:
    """What a page changes, adds and leaves out, each with the way to where it stands; nothing where it has no base."""
    rules = voice.rules
    if not rules.source.chain:
        return
    changed, added = (
        [one for one in _own(rules) if (one[2] in rules.source.replaced) is again] for again in (True, False)
    )
    gone = list(left_out(rules, voice.base))
    told: list[tuple[str, Line]] = []
    if changed:
        told.append((voice.say("changed"), _listed(voice, changed)))
    if added and len(added) <= _MOST_LISTED:
        told.append((voice.say("added"), _listed(voice, added)))
    elif added:
        told.append((voice.say("added"), line(voice.say("{number} parts", number=voice.tongue.whole(len(added))))))
    if gone:
        told.append((voice.say("left out"), line(voice.tongue.joined(map(voice.plain.of, gone)))))
    yield Heading(2, line(voice.say("What this page changes")), "differences")
    base = rules.source.chain[0].title
    words = voice.say("The rest is as {base} has it.", base=voice.plain.of(Titled(base.text, base.others)))
    if not told:
        words = voice.say("Nothing: all is as {base} has it.", base=voice.plain.of(Titled(base.text, base.others)))
    if told:
        yield Facts(tuple(told))
    yield Paragraph(line(words))


def _own(rules: Rules) -> Iterator[tuple[str, str, Place, Titled]]:
    """The parts that the page itself says: head word, name, place and title."""
    parts: list[tuple[str, str, Place, Titled]] = [
        *(("setting", one.name, one.place, one.title) for one in rules.settings.values()),
        *(("term", one.name, one.place, one.title) for one in rules.terms.values()),
        *(("section", one.name, one.place, one.title) for one in rules.sections),
        *((one.head, one.name, one.place, one.title) for one in (*rules.criteria, *rules.limits, *rules.grades)),
        *(("alert", one.name, one.place, one.title) for one in rules.alerts),
        *(("round", one.name, one.place, one.title) for one in rules.rounds),
        *(("panel", one.name, one.place, one.title) for one in (rules.panel,) if one is not None),
    ]
    yield from (part for part in parts if part[2].file == rules.file)


def _listed(voice: Voice, parts: list[tuple[str, str, Place, Titled]]) -> Line:
    found: list[Line] = []
    for head, name, _, title in parts:
        if found:
            found.append(line(voice.tongue.of(", ")))
        found.append(line(voice.title(title, head if head == "panel" else anchor(head, name), named=True)))
    return line(*found)


def left_out(rules: Rules, base: Rules | None = None) -> Iterator[Titled]:
    """The titles of what a base says and this standard does not any more. base: the one, of several, that it is held to."""
    there = {_key(one) for one in rules.source.statements}
    renamed = {one.place for one in rules.source.statements if isinstance(one, st.Grade)}
    for key, held in _held(rules, base).items():
        if key not in there and held.place not in renamed:
            title = getattr(held, "title", None)
            yield Titled(key[1].replace("_", " "), {}) if title is None else Titled(title.text, title.others)


def _held(rules: Rules, base: Rules | None) -> dict[tuple[str, str], st.Statement]:
    """What holds by the base of a standard: a base of that one may have left out what its own base says."""
    if base is not None:
        return {key: one for one in base.source.statements if (key := _key(one)) is not None}
    held: dict[tuple[str, str], st.Statement] = {}
    for file, text in rules.source.bases.items():
        if file == rules.file:
            continue
        for one in read_text(text, file).rules.statements:
            if isinstance(one, st.Drop):
                for head in (one.head, one.head.capitalize()):
                    held.pop((head, one.name.text), None)
            elif (key := _key(one)) is not None:
                held[key] = one
    return held


def _key(statement: st.Statement) -> tuple[str, str] | None:
    match statement:
        case st.Limit() | st.Extra():
            return statement.head, statement.name.text
        case st.Setting() | st.Term() | st.Section() | st.Points() | st.Grade() | st.Alert() | st.Round():
            return type(statement).__name__, statement.name.text
        case _:
            return None
