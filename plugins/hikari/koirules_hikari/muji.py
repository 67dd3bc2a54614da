"""The variety hikari muji: metallic koi of one colour, with or without a net (matsuba).

Meanings are common practice, no source; the steps of the scales are from memory. The dark centre of the scales of a
metallic matsuba is its net, which has the traits of every net.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, choice, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_hikari.said import SAID_OF_MUJI

HIKARI_MUJI = Vocabulary(
    name="hikari_muji",
    title="hikari muji",
    traits=(
        Trait(
            "metal_colour",
            "colour of the metal",
            choice("yamabuki", "platinum", "orenji", "nezu", "gin_matsuba", "kin_matsuba"),
            Better.NEITHER,
            Growth.FIXED,
            "Yamabuki is yellow gold, platinum white, orenji orange, nezu grey, matsuba silver or gold under a dark net.",
            {"ja": "色"},
            source=PRACTICE,
        ),
        Trait(
            "tone_even",
            "evenness of the tone",
            scale("patchy", "fair", "even"),
            Better.MORE,
            Growth.FIXED,
            "Compare head, back and tail stem: even is one tone, patchy is paler or darker in places.",
            source=PRACTICE,
        ),
        Trait(
            "fukurin",
            "bright rim round the scales (fukurin)",
            scale("none", "some", "full"),
            Better.MORE,
            Growth.RISES,
            "Between the scales of the back: full has a bright line of skin round every scale; it comes only with size.",
            {"ja": "覆輪"},
            source=PRACTICE,
        ),
        Trait(
            "rows_neat",
            "neatness of the scale rows",
            scale("rough", "fair", "neat"),
            Better.MORE,
            Growth.FIXED,
            "From the side: neat has straight rows of whole scales down to the belly, rough has gaps and crooked rows.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "metal", "net"),
    describe="Metallic koi of one colour: ogon, platinum and their kin, and the metallic matsuba.",
    also=("hikarimono", "hikarimuji", "hikari mujimono", "光無地"),
    forms=(
        "ogon",
        "yamabuki ogon",
        "yamabuki",
        "platinum",
        "platinum ogon",
        "purachina",
        "orenji ogon",
        "nezu ogon",
        "gin matsuba",
        "kin matsuba",
        "matsuba ogon",
    ),
    sayings=SAID_OF_MUJI,
)
"""The traits of hikari muji, with those of metal and net."""
