"""What a fish is like in words that a buyer understands: one sentence, and what it gained and lost, apart.

Everything comes from the reasons of its result and from what was recorded of its looks; a bonus that was missed is no loss.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from attrs import frozen

from koirules.languages import Tongue, to_say
from koirules.report.appearance import Appearance
from koirules.report.figures import in_tenths
from koirules.report.page_words import Wording
from koirules.results.reason import Reason
from koirules.results.result import Result

_STRONG = Decimal("0.85")
"""From which share of its points on a criterion is a strength of a fish."""
_LEAST_LOSS = Decimal("0.5")
"""A second weakness is named where it cost so many points of the score."""
_MOST_LISTED = 3

_PATTERNS = {
    "tancho": to_say("one round mark on the head"),
    "ippon": to_say("one long patch"),
    "inazuma": to_say("a zigzag pattern"),
    "nidan": to_say("two patches"),
    "sandan": to_say("three patches"),
    "yondan": to_say("four patches"),
    "godan": to_say("five patches"),
}
"""The words for a pattern of the red, for those who do not know them."""

_READ = re.compile(r"([a-z_]+) ([a-z_]+)(?:,|$)")
"""The first thing that a criterion read, where it was one word: `outline excellent`."""


@frozen
class Line:
    """A gain or a loss: its points as people read them, and what it is about."""

    points: str
    title: str


@frozen
class Told:
    """What is said of a fish. sentence: in one. gains, losses: the most first."""

    sentence: str
    gains: tuple[Line, ...]
    losses: tuple[Line, ...]


def told(wording: Wording, result: Result, look: Appearance | None = None, *, each: int = 2) -> Told:
    """Say what a fish is like. each: how many strengths, and how many weaknesses, the sentence names."""
    gains, losses = _gains(result.reasons), _losses(result)
    return Told(
        _sentence(wording, result, gains, losses, look, each),
        tuple(
            Line(f"+{in_tenths(one.score_low or Decimal(0), tongue=wording.tongue)}", short(one.title))
            for one in gains[:_MOST_LISTED]
        ),
        tuple(
            Line(f"−{in_tenths(points, tongue=wording.tongue)}", short(one.title))
            for one, points in losses[:_MOST_LISTED]
        ),
    )


def short(title: str) -> str:
    """A title without what stands in brackets."""
    return re.sub(r"\s*\([^()]*\)", "", title).strip() or title


def _gains(reasons: Sequence[Reason]) -> list[Reason]:
    """What surely gave points, the most first; of criteria only those that gave most of what they can."""
    found = [
        one
        for one in reasons
        if one.score_low is not None
        and one.score_low > 0
        and (one.kind == "bonus" or (one.score_most and one.score_low >= _STRONG * one.score_most))
    ]
    return sorted(found, key=lambda one: -(one.score_low or 0))


def _losses(result: Result) -> list[tuple[Reason, Decimal]]:
    """What surely missed points or took some, the most first; a bonus that was not given is none."""
    found = [(one, one.left_on_table) for one in result.left_on_table if one.kind != "bonus"]
    return [(one, points) for one, points in found if in_tenths(points) != "0"]


def _sentence(
    wording: Wording,
    result: Result,
    gains: Sequence[Reason],
    losses: Sequence[tuple[Reason, Decimal]],
    look: Appearance | None,
    each: int,
) -> str:
    tongue = wording.tongue
    if not tongue.speaks:
        return "; ".join(reason.words for reason in result.main_reasons)
    parts = [*_decided(wording, result)]
    strong = tongue.listed([_phrase(tongue, one) for one in gains if one.kind == "points"][:each])
    if strong and not parts:
        parts.append(strong)
    seen = [] if look is None else list(_seen(look, tongue))
    missing = sum((points for _, points in losses), Decimal(0))
    if seen and len(parts) < 2:
        parts.append(tongue.listed(seen))
    if not result.sections or not (losses or gains):
        pass
    elif missing < 1 and result.grade is not None:
        parts.append(tongue("hardly a point is missing"))
    elif losses:
        worst = [one for one, points in losses if points >= _LEAST_LOSS][:each] or [losses[0][0]]
        parts.append(tongue("loses most by {what}", what=tongue.listed([_weakness(tongue, one) for one in worst])))
    return tongue.sentence(
        tongue.joined(parts, "; ", "halves of a sentence") or "; ".join(one.words for one in result.main_reasons[:1])
    )


def _decided(wording: Wording, result: Result) -> list[str]:
    """What settled the grade more than the points did: a person's word, a fault, or what was not recorded."""
    tongue = wording.tongue
    if result.decision is not None:
        return [tongue("decided by hand: {reason}", reason=result.decision.reason)]
    if result.grade is None:
        asked = tongue.listed([wording.trait(name) for name in result.hangs_on[:2]])
        look = tongue("still to look at: {traits}", traits=asked) if asked else tongue("more has to be recorded")
        return [tongue("could be {grades}; {look}", grades=wording.titles(result.possible), look=look)]
    grounds = result.grounds
    deciding = [one for one in grounds.faults if (one.kind, one.name) in grounds.decided]
    others = [one for one in grounds.faults if one not in deciding]
    found = []
    if deciding:
        names = tongue.listed([short(one.title) for one in deciding])
        grade = wording.grades[result.grade].title
        found.append(tongue("{faults}: no better than {grade}", faults=names, grade=grade))
    if others:
        names = tongue.listed([short(one.title) for one in others])
        found.append(tongue("also {faults}", faults=names) if found else names)
    return found


def _told_word(tongue: Tongue, reason: Reason) -> tuple[str, str] | None:
    """The trait and the one word that a criterion read, in another language; None where it read a number, or nothing."""
    read = _READ.match(reason.read)
    if read is None or reason.kind != "points" or _word(reason) is None:
        return None
    word = read[2].replace("_", " ")
    return read[1], tongue.of(_PATTERNS[word]) if word in _PATTERNS else tongue.of(word, read[1])


def _phrase(tongue: Tongue, reason: Reason) -> str:
    """What a criterion saw, as a strength: `excellent outline from above`, `thick red`, `length`."""
    title, word = short(reason.title), _word(reason)
    if tongue.language is not None:
        read = _told_word(tongue, reason)
        return title if read is None else tongue("{title} ({word})", title=title, word=read[1])
    if word is None:
        return title
    if word in _PATTERNS:
        return _PATTERNS[word]
    same = re.match(rf"{re.escape(word)}\w*ness of (?:the )?(.+)", title)
    if same is not None:
        return f"{word} {same[1]}"
    return title if word in title.split() else f"{word.replace(' ', '-')} {title}"


def _weakness(tongue: Tongue, reason: Reason) -> str:
    """The same as a weakness: `outline from above (fair)`."""
    if tongue.language is not None:
        return _phrase(tongue, reason)
    title, word = short(reason.title), _word(reason)
    if word is None or word in title.split():
        return title
    return f"{title} ({_PATTERNS.get(word, word).removeprefix('a ')})"


def _word(reason: Reason) -> str | None:
    """The one word that a criterion read; None where it read a number, or nothing."""
    read = _READ.match(reason.read)
    if read is None or reason.kind != "points" or read[2] in {"not", "section", "yes", "no"}:
        return None
    return read[2].replace("_", " ")


def _seen(look: Appearance, tongue: Tongue) -> list[str]:
    """What everybody sees at once and a buyer asks about."""
    found = []
    eyes = look.places.get("hi_on_eyes", ())
    if len(eyes) > 1:
        found.append(tongue("red over both eyes"))
    elif eyes:
        found.append(tongue("red touches the {eye}", eye=tongue.of(eyes[0].replace("_", " "), "hi_on_eyes")))
    if look.specks:
        found.append(tongue.plural("{number} black speck", "{number} black specks", look.specks))
    if look.words.get("kuchibeni") == "yes":
        found.append(tongue("red lips"))
    return found
