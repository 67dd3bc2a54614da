"""What a fish is like in words that a buyer understands: one sentence, and what it gained and lost, apart.

Everything comes from the reasons of its result and from what was recorded of its looks; a bonus that was missed is no loss.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from koirules.languages import Tongue, to_say
from koirules.report.appearance import Appearance
from koirules.report.figures import in_tenths
from koirules.report.page_words import Wording
from koirules.results.reason import Reason
from koirules.results.result import Result
from koirules.values import frozen

_STRONG = Decimal("0.85")
"""From which share of its points on a criterion is a strength of a fish."""
_WEAK = Decimal("0.5")
"""Up to which share of them it is a weakness."""
_LEAST_LOSS = Decimal("0.5")
"""A weakness cost so many points of the score."""
_MOST_LISTED = 3
_FAULTS_NAMED = 2

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

_EACH_PATTERN = {**_PATTERNS, "many": to_say("many patches")}
_OF_RED = ("hi_thick thick", "hi_even even")
"""What a pattern is told together with: three patches of thick, even red."""
_IN_WORDS = {
    "shiroji snow": to_say("snow-white skin"),
    "shiroji white": to_say("white skin"),
    "shiroji cream": to_say("cream skin"),
    "shiroji yellow": to_say("yellowish skin"),
    "kiwa razor": to_say("razor-sharp edges"),
    "kiwa sharp": to_say("sharp edges"),
    "kiwa fair": to_say("edges not yet sharp"),
    "kiwa blurred": to_say("blurred edges"),
    "sashi_even even": to_say("even front edges"),
    "sashi_even rough": to_say("rough front edges"),
    "hi_even fair": to_say("red not quite even"),
    "hi_thick fair": to_say("red of fair thickness"),
    "head_hi none": to_say("no red on the head"),
    "head_hi small": to_say("little red on the head"),
    "head_hi large": to_say("much red on the head"),
    "head_hi hood": to_say("red over the whole face"),
}
"""What a buyer is told for a word of a trait, where its title and the word would read stiffly."""
_UNSAID = ("steps ", "hi_tone ", "head_hi u_shape")
"""What is told by the pattern, seen by everybody, or says nothing to a buyer."""
_ORDER = ("shiroji", "steps", "hi_", "kiwa", "lustre", "outline")
"""In which order a buyer asks; what begins with none of these comes after them."""

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
            Line(f"+{in_tenths(one.score_low or Decimal(0), tongue=wording.tongue)}", _gained(wording.tongue, one))
            for one in gains[:_MOST_LISTED]
        ),
        tuple(
            Line(f"−{in_tenths(points, tongue=wording.tongue)}", short(one.title))
            for one, points in losses[:_MOST_LISTED]
        ),
    )


def _gained(tongue: Tongue, reason: Reason) -> str:
    """What gave points: `white ground`; of what was counted and is not there, `no black specks`."""
    none = tongue.language is None and re.match(r"[a-z_]+ 0(,|$)", reason.read)
    return f"{'no ' if none else ''}{short(reason.title)}"


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
    return _as_a_breeder(wording, result, gains, losses, look, each)


def _as_a_breeder(
    wording: Wording,
    result: Result,
    gains: Sequence[Reason],
    losses: Sequence[tuple[Reason, Decimal]],
    look: Appearance | None,
    each: int,
) -> str:
    """The sentence as a breeder would say it."""
    tongue, parts = wording.tongue, _decided(wording, result)
    good = _good(result, gains, look, each, tongue)
    if good:
        told = tongue.joined(good)
        parts.append(tongue("otherwise {good}", good=told) if parts and result.grade is not None else told)
    seen = [] if look is None else _seen(look, tongue)
    if seen and len(parts) < 3:
        parts.append(tongue.joined(seen))
    missing = sum((points for _, points in losses), Decimal(0))
    weak = (
        []
        if result.grade is None
        else [one for one in _weak(result, losses, tongue) if one.lower() not in "; ".join(parts).lower()][:each]
    )
    if weak:
        told = tongue.joined(weak)
        parts.append(tongue("but {weak}", weak=told) if good else told)
    elif good and missing < 1 and result.grade is not None:
        parts.append(tongue("hardly a point is missing"))
    return tongue.sentence(
        tongue.joined(parts, "; ", "halves of a sentence") or "; ".join(one.words for one in result.main_reasons[:1])
    )


def _good(result: Result, gains: Sequence[Reason], look: Appearance | None, each: int, tongue: Tongue) -> list[str]:
    """The strengths of a fish, its pattern told with them, in the order in which a buyer asks."""
    read = {one: words for one in result.reasons if one.kind == "points" and (words := _word(one, result))}
    found = {
        read[one]: _phrase(one, read[one], tongue) for one in gains if one in read and not read[one].startswith(_UNSAID)
    }
    steps = [words.removeprefix("steps ") for words in read.values() if words.startswith("steps ")]
    steps += [] if look is None or "steps" in result.assumed else [look.words.get("steps", "")]
    meant = next((_EACH_PATTERN[one] for one in steps if one in _EACH_PATTERN), None)
    pattern = None if meant is None else tongue.of(meant)
    if pattern is not None:
        red = [tongue.of(words.split()[1], words.split()[0]) for words in _OF_RED if found.pop(words, None)]
        if red and meant != _PATTERNS["tancho"]:
            pattern = tongue("{pattern} of {words} red", pattern=pattern, words=tongue.joined(red))
    chosen = dict(list(found.items())[:each])
    if pattern is not None:
        chosen["steps"] = pattern
    return [chosen[words] for words in sorted(chosen, key=_asked)]


def _asked(words: str) -> int:
    """Where in the order of a buyer's questions what was read of a trait stands."""
    return next((place for place, begins in enumerate(_ORDER) if words.startswith(begins)), len(_ORDER))


def _weak(result: Result, losses: Sequence[tuple[Reason, Decimal]], tongue: Tongue) -> list[str]:
    """The weaknesses that a word says, the one that cost most first."""
    return list(
        dict.fromkeys(
            _phrase(one, words, tongue)
            for one, points in losses
            if one.kind == "points"
            and points >= _LEAST_LOSS
            and (one.score_high or Decimal(0)) <= _WEAK * (one.score_most or Decimal(0))
            and (words := _word(one, result))
            and not words.startswith("steps ")
        )
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
        names = _faults(tongue, deciding)
        grade = wording.grades[result.grade].title
        found.append(tongue("{faults}: no better than {grade}", faults=names, grade=grade))
    if others:
        names = _faults(tongue, others)
        found.append(tongue("also {faults}", faults=names) if found else names)
    return found


def _faults(tongue: Tongue, faults: Sequence[Reason]) -> str:
    """The names of two faults, and how many more there are."""
    names = [short(one.title) for one in faults]
    left = len(names) - _FAULTS_NAMED
    more = [tongue.plural("{number} more fault", "{number} more faults", left)] if left > 0 else []
    return tongue.listed([*names[:_FAULTS_NAMED], *more])


def _read_word(reason: Reason) -> tuple[str, str] | None:
    """The trait and the one word that a criterion read; None where it read a number, or nothing."""
    read = _READ.match(reason.read)
    if read is None or reason.kind != "points" or read[2] in {"not", "section", "yes", "no"}:
        return None
    return read[1], read[2]


def _foreign(tongue: Tongue, reason: Reason) -> str:
    """What a criterion saw, in another language: its title, with the word in brackets."""
    title, read = short(reason.title), _read_word(reason)
    if read is None:
        return title
    word = read[1].replace("_", " ")
    told = tongue.of(_PATTERNS[word]) if word in _PATTERNS else tongue.of(word, read[0])
    return tongue("{title} ({word})", title=title, word=told)


def _phrase(reason: Reason, words: str, tongue: Tongue) -> str:
    """A criterion with the word that was read of it: `excellent outline`, `thin red`, `snow-white skin`."""
    if words in _IN_WORDS:
        return tongue.of(_IN_WORDS[words])
    if tongue.language is not None:
        return _foreign(tongue, reason)
    word = words.split()[1].replace("_", " ")
    title = re.sub(r",? (?:from (?:above|the side)|by eye|when grown)\b", "", short(reason.title))
    title = re.sub(r"^\w+ness of (?:the )?", "", title)
    return title if word in title.split() else f"{word.replace(' ', '-')} {title}"


def _word(reason: Reason, result: Result) -> str | None:
    """The same as `outline excellent`; None also where nobody mentioned it."""
    read = _read_word(reason)
    return None if read is None or read[0] in result.assumed else " ".join(read)


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
