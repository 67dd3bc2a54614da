"""Traits of the white ground (shiroji), by eye and by instrument.

Meanings by eye are common practice, no source; steps and ranges are from memory. The measured colours are CIELAB under
D65 and 10 degrees unless the sheet says otherwise (ISO/CIE 11664-4); their ranges, what skin
can reach at all, are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import CIELAB, PRACTICE, number, scale
from koirules.vocabulary.traits import Better, Growth, Trait

WHITE_COLOUR = (
    Trait(
        "shiroji",
        "white ground (shiroji)",
        scale("yellow", "cream", "white", "snow"),
        Better.MORE,
        Growth.RISES,
        "Look at the white from the nose to the tail in daylight: snow is thick and pure, yellow has a cast.",
        {"ja": "白地"},
        source=PRACTICE,
    ),
    Trait(
        "white_head",
        "white of the head",
        scale("yellow", "cream", "clear"),
        Better.MORE,
        Growth.RISES,
        "Hold the head beside the white of the back: a yellow head often clears in young fish.",
        source=PRACTICE,
    ),
    Trait(
        "shiroji_lightness",
        "lightness of the white (shiroji), L*",
        number("0", "100"),
        Better.MORE,
        Growth.RISES,
        "Lightness of the mean colour reading of the white, wet skin, no glare: 100 is pure white.",
        {"ja": "白地の明度"},
        by_eye=False,
        source=CIELAB,
    ),
    Trait(
        "shiroji_chroma",
        "cast of the white (shiroji), chroma",
        number("0", "100"),
        Better.LESS,
        Growth.VARIES,
        "Chroma of the mean colour reading of the white: 0 has no cast at all.",
        {"ja": "白地の彩度"},
        by_eye=False,
        source=CIELAB,
    ),
    Trait(
        "shiroji_yellow",
        "yellow in the white (shiroji), b*",
        number("-60", "100"),
        Better.LESS,
        Growth.FALLS,
        "The b* of the mean colour reading of the white: above 0 is yellow, below 0 is blue.",
        by_eye=False,
        source=CIELAB,
    ),
)
"""The traits of white."""
