"""Traits of the one colour under the black (ground), white, red or yellow, of bekko and utsurimono.

Meanings are common practice, no source; steps are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import FINS, PRACTICE, choice, places, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_utsurimono.said import SAID_OF_GROUND

GROUND = Vocabulary(
    name="one_ground",
    title="one colour under the black",
    traits=(
        Trait(
            "ground",
            "colour under the black",
            choice("shiro", "hi", "ki"),
            Better.NEITHER,
            Growth.FIXED,
            "Shiro is white, hi is red (aka bekko, hi utsuri), ki is yellow.",
            {"ja": "地色"},
            source=PRACTICE,
        ),
        Trait(
            "ground_quality",
            "quality of the colour under the black",
            scale("poor", "fair", "clean", "snow"),
            Better.MORE,
            Growth.RISES,
            "From nose to tail in daylight: clean has no cast and no cloud; snow, or as deep as the colour can be, is best.",
            {"ja": "地色の質"},
            source=PRACTICE,
        ),
        Trait(
            "ground_even",
            "evenness of the colour under the black",
            scale("patchy", "fair", "even"),
            Better.MORE,
            Growth.RISES,
            "Compare head, shoulder and rear: even is one tone everywhere, patchy changes from place to place.",
            source=PRACTICE,
        ),
        Trait(
            "ground_in_fins",
            "red or yellow in the fins",
            places(*FINS),
            Better.LESS,
            Growth.FALLS,
            "The fins with red or yellow of the body in the blade; white fins are wanted on bekko of every colour.",
            source=PRACTICE,
        ),
    ),
    describe="The white, red or yellow of a koi that has one colour and black.",
    is_variety=False,
    sayings=SAID_OF_GROUND,
)
"""What bekko and utsurimono share beside black."""
