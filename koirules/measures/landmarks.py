"""Where things lie on the body of a koi, as constants that a standard may set.

Places along the body are in % of its length from the nose to the end of the tail stem, places across it in % of the way from
the line of the back to the lateral line. The gill edge is where a head of a quarter of the standard length ends (common
practice, no source); all other values are from memory.
"""

from __future__ import annotations

from decimal import Decimal

from koirules.vocabulary.kinds import Number
from koirules.vocabulary.measures import Constant
from koirules.vocabulary.units import UNITS

_FROM_MEMORY, _COMMON = "The value is from memory.", "The value is common practice, no source."


def _share(name: str, value: str, title: str, describe: str, high: str = "100") -> Constant:
    told = f"{describe} {_FROM_MEMORY if name != 'gill_edge' else _COMMON}"
    return Constant(name, title, Number(UNITS["%"], Decimal(0), Decimal(high)), Decimal(value), told)


LANDMARKS = (
    _share("lips", "2", "rear end of the lips", "Red that reaches in front of this lies on the lips."),
    _share("nose", "4", "rear end of the nose", "Red that begins between the lips and this begins on the nose."),
    _share("eyes", "10", "eye line", "Where the middle of the eyes lies along the body."),
    _share("eyes_aside", "66", "how far the eyes lie from the back", "In % of the way to the lateral line."),
    _share("gill_edge", "25", "rear edge of the gill covers", "Where the head ends."),
    _share("dorsal_front", "48", "front end of the dorsal fin", "Where the first ray of the dorsal fin stands."),
    _share("dorsal_rear", "85", "rear end of the dorsal fin", "Where the last ray of the dorsal fin stands."),
    _share("flank_end", "150", "where the belly begins", "In % of the way from the back to the lateral line.", "200"),
)
"""The landmarks of the body."""

LIMITS = (
    _share("splash", "1", "largest splash", "A patch of less than this share of the back is a splash, and no step."),
    _share("zigzag_least", "25", "least swing of a zigzag", "One long patch that swings as far as this is an inazuma."),
    Constant(
        "girth_of_length",
        "greatest girth for the length of the body",
        Number(None, Decimal("0.3"), Decimal("1.5")),
        Decimal("0.65"),
        f"Used for the roundness of a mark where girth and standard length were not measured. {_FROM_MEMORY}",
    ),
)
"""What is called what."""
