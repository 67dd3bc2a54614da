"""Rows of a criterion as people say them: two words in one row, `sharp or better`, `10 cm or less`, `20-45 %`."""

from __future__ import annotations

import re
from functools import cache

from koirules.language.diagnose.spots import Spot
from koirules.problems import Problem
from koirules.problems import rows as say
from koirules.vocabulary.units import unit_words

_NAME = r"[^\W\d]\w*"
_NUMBER = r"-?[0-9]*\.?[0-9]+"
_LARGER = r"(?:more|above|over|larger|bigger|longer|higher|greater|up|upwards|better)"
_SMALLER = r"(?:less|below|under|smaller|shorter|lower|fewer|worse)"
_ROW = re.compile(rf"(?P<key>[^,:()]+?)\s+gives\s+(?P<points>{_NUMBER})")
_REST = re.compile(
    r"(?:everything|all|any|every|each|the|whatever|anything)?\s*"
    r"(?:else|others?|rest|remaining|remainder)|everything|whatever|anything(?:\s+other)?|any\s+value"
)
_UNKNOWN = re.compile(r"(?:is\s+)?(?:not|un)[\s-]*(?:recorded|known)|blank|missing|empty|unrecorded|unknown")
_JOINT = r"(?:\s+(?:and/or|or|and)\s+|\s*[/|]\s*)"
_SEVERAL = re.compile(rf"{_NAME}(?:{_JOINT}{_NAME})+")
_OR_ALL_BEYOND = re.compile(rf"({_NAME})\s+(?:or|and)\s+({_LARGER}|{_SMALLER})")


@cache
def _with_units(units: tuple[str, ...]) -> tuple[re.Pattern[str], re.Pattern[str]]:
    """What an open end and what a stretch of numbers looks like, with these units."""
    unit = rf"(?:\s?(?:{'|'.join(units)})(?!\w)|\s?%)?"
    quantity = rf"{_NUMBER}{unit}"
    open_end = (
        rf"({quantity})\s+(?:(?:or|and)\s+)?(?:{_LARGER}|{_SMALLER})"
        rf"|(?:at\s+least|at\s+most|above|below|over|under|from|up\s+to|(?:more|less|greater|smaller)\s+than|[<>]=?|≤|≥)"
        rf"\s*({quantity})"
    )
    stretch = rf"(?:between\s+|from\s+)?({_NUMBER})({unit})\s*(?:-|–|to|and|\.\.\.?)\s*({_NUMBER})({unit})"
    return re.compile(open_end), re.compile(stretch)


def row_slip(spot: Spot, head: str) -> Problem | None:
    """A row that says more than one value, or a value of no table, in the words of a sentence."""
    begin = spot.text.rfind(":", 0, spot.at) + 1
    if head != "points" or not begin:
        return None
    for found in _ROW.finditer(spot.text, begin):
        key = found.group("key").strip()
        start = found.start("key") + len(found.group("key")) - len(found.group("key").lstrip())
        if start <= spot.at <= found.end():
            return _of_row(spot, key, found.group("points"), start, found)
    return None


def _of_row(spot: Spot, key: str, points: str, start: int, row: re.Match[str]) -> Problem | None:
    place = spot.span(start, start + len(key))
    if key != "anything else" and _REST.fullmatch(key):
        return say.rest_of_table(place, key)
    if _UNKNOWN.fullmatch(key):
        return say.row_for_unknown(spot.span(*_with_comma(spot.text, start, row.end())), key)
    beyond = _OR_ALL_BEYOND.fullmatch(key)
    if beyond:
        return say.word_and_beyond(place, key, beyond.group(1), points)
    open_ends, stretches = _with_units(unit_words())
    open_end = open_ends.fullmatch(key)
    if open_end:
        return say.open_end_of_curve(place, key, open_end.group(1) or open_end.group(2))
    whole = spot.span(start, row.end())
    stretch = stretches.fullmatch(key)
    if stretch:
        low, unit, high, last = stretch.groups()
        ends = list(dict.fromkeys((f"{low}{unit or last}", f"{high}{last or unit}")))
        return say.several_keys(whole, key, [f"{end} gives {points}" for end in ends], "curve")
    if _SEVERAL.fullmatch(key):
        return say.several_keys(whole, key, [f"{word} gives {points}" for word in re.split(_JOINT, key)], "table")
    return None


def _with_comma(text: str, start: int, end: int) -> tuple[int, int]:
    """A row with the comma that parts it from its neighbour: the one before it, or else the one behind."""
    before = re.search(r",\s*\Z", text[:start])
    if before:
        return before.start(), end
    behind = re.match(r"\s*,\s*", text[end:])
    return (start, end + behind.end()) if behind else (start, end)
