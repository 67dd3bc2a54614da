"""The rounds of a selection, and what decides between fish that are alike."""

from __future__ import annotations

from collections.abc import Iterator

from koirules.languages import to_say
from koirules.report.handbook.blocks import Block, Facts, Heading, Line, Listed, Paragraph, line
from koirules.report.handbook.voice import Voice, anchor
from koirules.rounds.course_words import key_words
from koirules.standard.rounds import Round, Share
from koirules.vocabulary.kinds import shortest

_TIES = {
    "": to_say(
        "those alike in all of this at the last place stay tied and are in no later round: a person decides between them."
    ),
    "all": to_say("those that are alike in all of this at the last place all stay."),
    "first": to_say("of those that are alike in all of this, the one that was recorded first stands first."),
}


def selection(voice: Voice) -> Iterator[Block]:
    """What decides between those that tie, and the rounds if there are any."""
    rounds = voice.rules.rounds
    if voice.base is not None and not voice.told_here(rounds):
        return
    title = voice.say("Rounds, and what decides ties") if rounds else voice.say("What decides ties")
    yield Heading(2, line(title), "selection")
    listed = to_say(
        "In a list of results {fish} stand by grade; those that are alike in that stand as they were recorded."
    )
    if voice.rules.sections:
        listed = to_say(
            "In a list of results {fish} stand by grade, then by score, the highest first; those that are alike in that stand "
            "as they were recorded."
        )
    told = voice.say(listed, fish=voice.many)
    if not rounds:
        alone = voice.say(
            " This standard picks no {fish} over another: each gets its grade by itself.", fish=voice.fish
        )
        yield Paragraph(line(told, alone))
        return
    order = voice.say(
        "The rounds run in this order over the {fish} of a batch, once all grades are fixed. What a pick goes by also decides "
        "between those that tie: each line counts only where those above it leave two alike.",
        fish=voice.many,
    )
    yield Paragraph(line(order))
    here = voice.told_here(rounds)
    for number, one in enumerate(rounds, 1):
        if one not in here:
            continue
        yield Heading(
            3, line(f"{number}. ", voice.title(one.title), voice.origin(one.place)), anchor("round", one.name)
        )
        yield from voice.remarks_on(one.place)
        yield Facts(tuple(_facts(voice, one)))
        if one.keys:
            yield Paragraph(line(voice.say("The pick goes by, in this order:")))
            keys = tuple(voice.line(key_words(key), value=voice.told(key.by.place)) for key in one.keys)
            yield Listed((*keys, line(voice.say(_TIES[one.ties]))), numbered=True)
    if voice.base is None:
        yield Paragraph(line(told))


def _facts(voice: Voice, one: Round) -> Iterator[tuple[str, Line]]:
    say = voice.say
    yield say("looks at"), _pool(voice, one)
    if one.keep is not None:
        yield say("keeps those possibly with") if one.possibly else say("keeps those with"), voice.told(one.keep.place)
        if one.possibly:
            spared = say("what was not recorded does not send {a_fish} away here", a_fish=voice.a_fish)
            yield say("possibly"), line(spared)
    if one.ordered:
        yield say("picks"), _picks(voice, one)
    for quota in one.quotas:
        yield say("but"), voice.told(quota.place)
    if one.send:
        place = voice.tongue.of(one.send)
        if one.again is not None:
            days = voice.tongue.figure(shortest(one.again))
            place = say("{place}, to be looked at again after {number} days", place=place, number=days)
        yield say("sends them to"), line(place)
    if one.rescues != 0:
        kept = voice.line("a person may keep up to {number} more, and says why", number=voice.amount(one.rescues))
        yield say("by hand"), kept


def _picks(voice: Voice, one: Round) -> Line:
    match one.amount:
        case None:
            told = line(voice.say("all, in order"))
        case Share():
            told = voice.line("the first {share} of those that it looks at, rounded up", share=voice.amount(one.amount))
        case _:
            told = voice.line("the first {number}", number=voice.amount(one.amount))
    if not one.each:
        return told
    same = [
        piece
        for i, node in enumerate(one.each)
        for piece in (*((voice.say(" and "),) if i else ()), voice.told(node.place))
    ]
    return voice.line("{picked}, each time anew among those of the same {group}", picked=told, group=line(*same))


def _pool(voice: Voice, one: Round) -> Line:
    rounds = {each.name: each.title for each in voice.rules.rounds}
    match one.pool:
        case "kept":
            of = voice.title(rounds[one.pool_of], anchor("round", one.pool_of), named=True)
            return voice.line("those kept by {round}", round=of)
        case "passed":
            of = voice.title(rounds[one.pool_of], anchor("round", one.pool_of), named=True)
            return voice.line("those passed over by {round}", round=of)
        case _:
            return line(voice.say("all {fish}", fish=voice.many))
