"""The rounds of a selection, and what decides between fish that are alike."""

from __future__ import annotations

from collections.abc import Iterator

from koirules.report.handbook.blocks import Block, Facts, Heading, Line, Listed, Paragraph, line
from koirules.report.handbook.voice import Voice, anchor
from koirules.rounds.course_words import first_words
from koirules.standard.rounds import Round, Share
from koirules.vocabulary.kinds import shortest

_TIES = {
    "": "those alike in all of this at the last place stay tied and are in no later round: a person decides between them",
    "all": "those that are alike in all of this at the last place all stay",
    "first": "of those that are alike in all of this, the one that was recorded first stands first",
}


def selection(voice: Voice) -> Iterator[Block]:
    """What decides between those that tie, and the rounds if there are any."""
    rounds, subject = voice.rules.rounds, voice.rules.subject
    yield Heading(2, line("Rounds, and what decides ties" if rounds else "What decides ties"), "selection")
    scored = ", then by score, the highest first" if voice.rules.sections else ""
    listed = (
        f"In a list of results {subject.many} stand by grade{scored}; those that are alike in that stand as they were "
        "recorded."
    )
    if not rounds:
        yield Paragraph(
            line(listed, f" This standard picks no {subject.one} over another: each gets its grade by itself.")
        )
        return
    yield Paragraph(
        line(
            f"The rounds run in this order over the {subject.many} of a batch, once all grades are fixed. "
            "What a pick goes by also decides "
            "between those that tie: each line counts only where those above it leave two alike."
        )
    )
    for number, one in enumerate(rounds, 1):
        yield Heading(3, line(f"{number}. ", voice.title(one.title)), anchor("round", one.name))
        yield from voice.remarks_on(one.place)
        yield Facts(tuple(_facts(voice, one)))
        if one.keys:
            yield Paragraph(line("The pick goes by, in this order:"))
            keys = tuple(line(f"{first_words(key)} ", voice.told(key.by.place)) for key in one.keys)
            yield Listed((*keys, line(_TIES[one.ties], ".")), numbered=True)
    yield Paragraph(line(listed))


def _facts(voice: Voice, one: Round) -> Iterator[tuple[str, Line]]:
    yield "looks at", _pool(voice, one)
    if one.keep is not None:
        yield f"keeps those {'possibly ' if one.possibly else ''}with", voice.told(one.keep.place)
        if one.possibly:
            yield "possibly", line(f"what was not recorded does not send {voice.rules.subject.with_article} away here")
    if one.ordered:
        yield "picks", _picks(voice, one)
    for quota in one.quotas:
        yield "but", voice.told(quota.place)
    if one.send:
        again = "" if one.again is None else f", to be looked at again after {shortest(one.again)} days"
        yield "sends them to", line(one.send, again)
    if one.rescues != 0:
        yield "by hand", line("a person may keep up to ", voice.amount(one.rescues), " more, and says why")


def _picks(voice: Voice, one: Round) -> Line:
    match one.amount:
        case None:
            return line("all, in order")
        case Share():
            return line("the first ", voice.amount(one.amount), " of those that it looks at, rounded up")
        case _:
            return line("the first ", voice.amount(one.amount))


def _pool(voice: Voice, one: Round) -> Line:
    rounds = {each.name: each.title for each in voice.rules.rounds}
    match one.pool:
        case "kept":
            of = voice.title(rounds[one.pool_of], anchor("round", one.pool_of), named=True)
            return line("those kept by ", of)
        case "passed":
            of = voice.title(rounds[one.pool_of], anchor("round", one.pool_of), named=True)
            return line("those passed over by ", of)
        case _:
            return line(f"all {voice.rules.subject.many}")
