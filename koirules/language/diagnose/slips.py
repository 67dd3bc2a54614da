"""Slips that are known by their look: everyday phrases, signs of other languages, brackets, numbers, words too many."""

from __future__ import annotations

import re
from datetime import date

from koirules.language.diagnose.hint_words import FILLERS, PHRASES, SIGNS, wants_value
from koirules.language.diagnose.spots import Spot
from koirules.problems import Problem, misfits
from koirules.problems import reading as say
from koirules.vocabulary.units import WRITTEN_OTHERWISE

_DATE = re.compile(r"([0-9]{1,4})([./-])([0-9]{1,2})[./-]([0-9]{1,4})(?![\w.])")
_PARTS_OF_ROUNDS = frozenset(("from", "keep", "pick", "no", "send", "rescues", "ties", "say"))
_FUNCTIONS = {"max": "greater of", "min": "lesser of", "median": "median of"}


def phrase_slip(spot: Spot, head: str) -> Problem | None:
    """A comparison as people say it, such as `more than 3` or `is above 3`."""
    if head in {"trait", "sample", "standard", "setting"}:
        return None
    begin, end = max(0, spot.at - 60), spot.at + 60
    for pattern, meant in PHRASES:
        for found in pattern.finditer(spot.text, begin, end):
            touches = found.start() <= spot.at < found.end() or not spot.text[found.end() : spot.at].strip()
            if found.start() > spot.at or not touches or spot.text[: found.start()].rstrip().endswith(":"):
                continue
            if meant.startswith("between") and found.group()[0].isdigit() and found.start() != spot.at:
                continue  # a difference of two numbers
            return say.misspelt_word(spot.span(found.start(), found.end()), found.group(), found.expand(meant))
    return None


def comma_slip(spot: Spot, head: str) -> Problem | None:
    """A comma before another part of a round, as in `pick 3 by highest length, no more than 1 with C`."""
    if head == "round" and spot.last == "," and spot.word in _PARTS_OF_ROUNDS and spot.accepts == {"THEN"}:
        return misfits.not_needed(spot.before_place, ",")
    return None


def bracket_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001 - every rule is asked the same way
    """Several values in a bracket where one is asked for."""
    found = (
        re.search(r"(?<!\w)(is(?:\s+not)?|includes)\s*\([^()]*\Z", spot.text[: spot.at]) if spot.word == "," else None
    )
    if found is None:
        return None
    place = spot.span(found.start(1), found.end(1))
    if found.group(1) == "includes":
        return misfits.one_place_at_a_time(place)
    return misfits.one_of_several(place, found.group(1))


def scale_slip(spot: Spot, head: str) -> Problem | None:
    """Steps of a scale with commas or `>` between them."""
    if head != "trait" or spot.word in {"more", "less"}:
        return None
    found = re.search(r"(?<=\sscale)\s+([^\W\d]\w*(?:\s*([,>/]|->|→)\s*[^\W\d]\w*)+)", spot.text)
    if found is None or found.end() < spot.at:
        return None
    steps = re.findall(r"[^\W\d]\w*", found.group(1))
    if found.group(2) == ">":
        steps.reverse()
    return misfits.wrong_steps(spot.span(found.start(1), found.end(1)), found.group(1), steps)


def sign_slip(spot: Spot, head: str) -> Problem | None:
    """A sign where the language has words."""
    sign = spot.word
    if sign == "=" and head == "sample":
        return misfits.not_needed(spot.place, sign)
    words = SIGNS.get(sign)
    if sign in {"=", "->", "→", "=="}:
        words = next((word for word in ("gives", "means", "is") if spot.takes(word)), None)
    if words is not None and (words == "," or spot.takes(words)):
        return say.sign_for_word(spot.place, sign, words)
    return None


def number_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """A number in parts, with a comma, or run together with letters."""
    if spot.last.isdigit() and spot.word.isdigit():
        return misfits.number_in_parts(spot.before_place.to(spot.place), spot.last, spot.word)
    comma = re.search(r"(?<![\w.,])[0-9]+,[0-9]+\Z", spot.text[: spot.at])
    if comma is not None and spot.word == ",":
        return say.decimal_comma(spot.span(comma.start(), comma.end()), comma.group())
    if not spot.word[:1].isdigit() or re.fullmatch(r"[0-9]+(\.[0-9]+)?", spot.word):
        return None
    if "DATE" in spot.accepts:
        found = _DATE.match(spot.text, spot.at)
        whole = spot.place if found is None else spot.span(spot.at, found.end())
        return misfits.wrong_date(whole, spot.text[spot.at : found.end()] if found else spot.word, _day(found))
    unit = re.fullmatch(r"([0-9]+(?:\.[0-9]+)?)([^\W\d]+)", spot.word)
    if unit and unit.group(2) in WRITTEN_OTHERWISE:
        return say.misspelt_word(spot.place, spot.word, f"{unit.group(1)} {WRITTEN_OTHERWISE[unit.group(2)]}")
    return say.not_a_number(spot.place, spot.word)


def _day(found: re.Match[str] | None) -> str | None:
    """A date as a rule file has it, where the way it is written can be read in one way only."""
    if found is None:
        return None
    one, sign, two, three = found.groups()
    if len(one) == 4:
        year, month, day = one, two, three
    elif len(three) == 4 and (sign == "." or int(one) > 12):
        day, month, year = one, two, three
    elif len(three) == 4 and int(two) > 12:
        month, day, year = one, two, three
    else:
        return None
    try:
        return date(int(year), int(month), int(day)).isoformat()
    except ValueError:
        return None


def filler_slip(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """A word too many: one that only a sentence needs, or one that stands twice."""
    if "STRING" in spot.accepts and not wants_value(spot.accepts):
        return None  # part of a title
    if spot.word in FILLERS:
        return misfits.not_needed(spot.place, spot.word)
    if spot.last in FILLERS or (spot.last.isidentifier() and spot.last == spot.word_before(2)):
        return misfits.not_needed(spot.before_place, spot.last)
    if spot.word == "(" and spot.last in _FUNCTIONS:
        return say.misspelt_word(spot.before_place, spot.last, _FUNCTIONS[spot.last])
    return None
