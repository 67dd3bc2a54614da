"""The variety shusui: doitsu asagi, pale blue with a row of dark scales on each side of the back, red below.

Meanings are common practice, no source; the steps of the scales are from memory. The rows and the bare skin are those of
the skin doitsu, which shusui includes.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, choice, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_asagi.said import SAID_OF_SHUSUI

SHUSUI = Vocabulary(
    name="shusui",
    title="shusui",
    traits=(
        Trait(
            "blue_skin",
            "blue of the bare skin",
            scale("grey", "patchy", "even"),
            Better.MORE,
            Growth.FALLS,
            "From above, beside the rows: even is one clear light blue, patchy has clouds, grey has no blue.",
            {"ja": "地肌の青"},
            source=PRACTICE,
        ),
        Trait(
            "blue_scales",
            "blue of the scales",
            scale("pale", "fair", "deep"),
            Better.MORE,
            Growth.RISES,
            "The scales of the rows along the back: deep is dark indigo against the light skin.",
            {"ja": "鱗の藍"},
            source=PRACTICE,
        ),
        Trait(
            "red_back",
            "red above the flank",
            choice("none", "hana", "hi"),
            Better.NEITHER,
            Growth.RISES,
            "Hana has red between the lateral line and the rows of the back, hi is red over the back as well.",
            {"ja": "花・緋"},
            source=PRACTICE,
        ),
    ),
    includes=("shared", "asagi_and_shusui", "doitsu"),
    describe="Doitsu asagi: light blue bare skin, a row of dark scales each side of the back, red on the flanks.",
    also=("秋翠",),
    forms=("hana shusui", "hi shusui"),
    sayings=SAID_OF_SHUSUI,
)
"""The traits of shusui, with those it shares."""
