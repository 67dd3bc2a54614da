"""Colour readings as a person writes them into one cell: `45 42 38; 47 40 36`, `srgb 200 60 30; 190 55 28`, `#c83c1e`.

A reading is three numbers; readings stand in a row from head to tail, parted by `;`. Without a mark the numbers are L*, a*
and b* of CIELAB (ISO/CIE 11664-4), as a hand-held reader shows them; behind `srgb` they are red, green and blue from 0 to
255 of a white-balanced photograph (IEC 61966-2-1), for which `#c83c1e` is another way to write.
"""

from __future__ import annotations

import re
from enum import Enum
from math import hypot

from koirules.values import frozen
from koirules.vocabulary import misread_colours
from koirules.vocabulary.misreads import Misread

Triple = tuple[float, float, float]

MOST_CHROMA = 150.0
"""No surface, and no colour of sRGB, lies farther from grey (from memory: sRGB reaches 134)."""


class ColourSpace(Enum):
    """What the three numbers of a reading are; the value is the mark that a cell begins with."""

    LAB = "lab"
    SRGB = "srgb"


@frozen
class ColourReadings:
    """Colour readings along one colour of a fish, from head to tail, one at least, all in one space."""

    space: ColourSpace
    values: tuple[Triple, ...]


_HEX = re.compile(r"#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})", re.IGNORECASE)
_NUMBER = re.compile(r"[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)")
_BETWEEN = re.compile(r"\s*[,/]\s*|\s+")
_MARK = re.compile(r"([a-z*]+)\s*:?\s*", re.IGNORECASE)
_MARKS = {"lab": ColourSpace.LAB, "cielab": ColourSpace.LAB, "srgb": ColourSpace.SRGB, "rgb": ColourSpace.SRGB}


def read_colour_readings(text: str) -> ColourReadings | Misread:
    """The readings of a plain text that is not blank, or what is wrong with the first that cannot be read."""
    space: ColourSpace | None = None
    values: list[Triple] = []
    parts = [part.strip() for part in text.split(";")]
    if not parts[-1]:
        parts.pop()
    for number, part in enumerate(parts):
        rest, marked = part, space or ColourSpace.LAB
        if mark := _MARK.match(part):
            known = _MARKS.get(mark[1].lower())
            if known is None:
                return misread_colours.unknown_mark(mark[1], text)
            rest, marked = part[mark.end() :], known
        elif part.startswith("#"):
            marked = ColourSpace.SRGB
        if number and marked is not space:
            return misread_colours.mixed_spaces(text)
        space = marked
        value = _triple(rest, space)
        if isinstance(value, Misread):
            return value
        values.append(value)
    if space is None:
        return misread_colours.not_three_numbers(text, 0)
    return ColourReadings(space, tuple(values))


def write_colour_readings(readings: ColourReadings) -> str:
    """Readings in their one canonical form, which reads back as the same."""
    mark = "" if readings.space is ColourSpace.LAB else f"{readings.space.value} "
    return mark + "; ".join(" ".join(_shortest(number) for number in value) for value in readings.values)


def _triple(part: str, space: ColourSpace) -> Triple | Misread:
    if part.startswith("#"):
        digits = _HEX.fullmatch(part)
        if digits is None:
            return misread_colours.not_a_hex_colour(part)
        red, green, blue = (float(int(pair, 16)) for pair in digits.groups())
        return red, green, blue
    words = _BETWEEN.split(part) if part else []
    for word in words:
        if _NUMBER.fullmatch(word) is None:
            return misread_colours.not_a_colour_number(word, part)
    if len(words) != 3:
        return misread_colours.not_three_numbers(part, len(words))
    first, second, third = (float(word) + 0.0 for word in words)
    return _within(part, (first, second, third), space)


def _within(part: str, value: Triple, space: ColourSpace) -> Triple | Misread:
    match space:
        case ColourSpace.SRGB:
            fits = all(0 <= number <= 255 for number in value)
            return value if fits else misread_colours.beyond_srgb(part)
        case ColourSpace.LAB:
            lightness, a, b = value
            if 0 <= lightness <= 100 and hypot(a, b) <= MOST_CHROMA:
                return value
            photograph = all(0 <= number <= 255 for number in value)
            return misread_colours.beyond_lab(part, photograph=photograph)


def _shortest(number: float) -> str:
    text = repr(number)
    return text.removesuffix(".0") if "e" not in text else f"{number:.12f}".rstrip("0").rstrip(".")
