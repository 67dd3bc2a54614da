"""Colour readings of red and white, and how their measured colours follow from them.

That several places are read on wet skin is common practice, no source; the readings of the examples are made up.
"""

from __future__ import annotations

from koirules.builtin.red_colour import RED_COLOUR
from koirules.builtin.white_ground import WHITE_COLOUR
from koirules.measures.colour import colour_measure, contrast_measure
from koirules.vocabulary.shorthand import CIELAB, COLOURS
from koirules.vocabulary.traits import Better, Growth, Trait

RED_READINGS = (
    Trait(
        "hi_readings",
        "colour readings of the red (hi)",
        COLOURS,
        Better.NEITHER,
        Growth.VARIES,
        'L*, a* and b* on each patch from head to tail, wet skin, seconds out of water: "45 42 38; 47 40 36".',
        {"ja": "緋の測色値"},
        source=CIELAB,
    ),
)
"""What a reader shows of the red, or a photograph."""

WHITE_READINGS = (
    Trait(
        "shiroji_readings",
        "colour readings of the white (shiroji)",
        COLOURS,
        Better.NEITHER,
        Growth.VARIES,
        'L*, a* and b* behind the head and before the tail, wet skin, seconds out of water: "82 0 7; 80 1 9".',
        {"ja": "白地の測色値"},
        source=CIELAB,
    ),
)
"""The same of the white."""

_BY_NAME = {trait.name: trait for trait in (*RED_COLOUR, *WHITE_COLOUR)}

COLOURS_OF_RED = (
    colour_measure(
        "hi_readings",
        {
            "lightness": _BY_NAME["hi_lightness"],
            "hue": _BY_NAME["hi_hue"],
            "chroma": _BY_NAME["hi_chroma"],
            "evenness": _BY_NAME["hi_evenness"],
        },
    ),
)
"""What is worked out from the readings of the red."""

COLOURS_OF_WHITE = (
    colour_measure(
        "shiroji_readings",
        {
            "lightness": _BY_NAME["shiroji_lightness"],
            "chroma": _BY_NAME["shiroji_chroma"],
            "yellow": _BY_NAME["shiroji_yellow"],
        },
    ),
)
"""What is worked out from the readings of the white."""

COLOURS_OF_BOTH = (contrast_measure("hi_readings", "shiroji_readings", _BY_NAME["hi_contrast"]),)
"""What is worked out from both."""
