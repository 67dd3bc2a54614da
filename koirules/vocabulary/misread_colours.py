"""What can be wrong with colour readings that somebody wrote."""

from __future__ import annotations

from koirules.problems.quoting import quoted
from koirules.vocabulary.misreads import Misread

_AS_LAB = 'Write L*, a* and b* as the reader shows them, such as "45 42 38"'
_AS_SRGB = 'write red, green and blue of a photograph behind "srgb", such as "srgb 200 60 30"'
_BETWEEN = 'put ";" between readings'


def not_three_numbers(was: str, count: int) -> Misread:
    """A reading of more or fewer than three numbers."""
    commas = " Decimals have a point." if count == 6 and "," in was else ""
    return Misread(
        "value-colour-not-three",
        f"{quoted(was)} is not a colour reading of three numbers, but has {count}.",
        f"{_AS_LAB}, and {_BETWEEN}.{commas}",
    )


def not_a_colour_number(word: str, was: str) -> Misread:
    """A word stands where a number of a reading is expected."""
    return Misread(
        "value-colour-not-a-number",
        f"{quoted(word)} in the colour reading {quoted(was)} is not a number.",
        f"{_AS_LAB}, and {_BETWEEN}; or {_AS_SRGB}.",
    )


def not_a_hex_colour(was: str) -> Misread:
    """A colour with `#` that does not have six digits."""
    return Misread(
        "value-colour-not-hex",
        f"{quoted(was)} is not a colour of six digits or letters from a to f.",
        f'Write it as the program shows it, such as "#c83c1e", or {_AS_SRGB}.',
    )


def unknown_mark(word: str, was: str) -> Misread:
    """A word in front of a reading that is none of the marks."""
    return Misread(
        "value-colour-unknown-mark",
        f"{quoted(word)} in {quoted(was)} does not say what the numbers are.",
        f"{_AS_LAB}, with no word in front; or {_AS_SRGB}. Give every reading its own three numbers and {_BETWEEN}.",
    )


def mixed_spaces(was: str) -> Misread:
    """Readings of a hand-held reader and of a photograph in one cell."""
    return Misread(
        "value-colour-mixed",
        f"{quoted(was)} mixes readings of L*, a* and b* with red, green and blue of a photograph.",
        "Their white differs, so that they cannot be compared. Keep the readings of one instrument.",
    )


def no_colour_readings(what: str) -> Misread:
    """Something that is no text where colour readings are expected."""
    return Misread(
        "value-no-colours",
        f"{what} stands here, but colour readings are expected.",
        f'Set the cell to the format "Text". {_AS_LAB}, and {_BETWEEN}.',
    )


def beyond_lab(was: str, *, photograph: bool) -> Misread:
    """L* beyond 0 to 100, or a* and b* beyond what any surface has."""
    mend = "Lightness comes first and lies between 0 and 100; a* and b* lie together within 150 of 0."
    hint = f' If these are red, green and blue of a photograph, write "srgb {was}".' if photograph else ""
    return Misread("value-colour-beyond-lab", f"No surface has the colour {quoted(was)}.", mend + hint)


def beyond_srgb(was: str) -> Misread:
    """A red, green or blue beyond 0 to 255."""
    return Misread(
        "value-colour-beyond-srgb",
        f"{quoted(was)} has a red, green or blue that is not between 0 and 255.",
        "Write them as the program shows them, from 0 to 255.",
    )
