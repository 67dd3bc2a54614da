"""The variety asagi: a net of pale-rimmed scales on a blue-grey back, red below.

Meanings are common practice, no source; ranges and the steps of the scales are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, YES_NO, count, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_asagi.said import SAID_OF_ASAGI

GROUND = (
    Trait(
        "scale_rows",
        "rows of even scales",
        count(8),
        Better.TARGET,
        Growth.FIXED,
        "Count the rows of neat scales from the back fin down to the lateral line, on the poorer side.",
        source=PRACTICE,
    ),
    Trait(
        "blue_tone",
        "tone of the blue",
        scale("black_blue", "dark", "mid", "light"),
        Better.MORE,
        Growth.FALLS,
        "The centres of the scales beside the reference fish: a young fish should be light, as the net darkens with age.",
        {"ja": "藍の濃淡"},
        source=PRACTICE,
    ),
)
"""The ground under the net."""

ASAGI = Vocabulary(
    name="asagi",
    title="asagi",
    traits=(
        *GROUND,
        Trait(
            "white_line",
            "white line between red and blue",
            YES_NO,
            Better.MORE,
            Growth.VARIES,
            "Yes if a clean white line parts the red of the flank from the blue of the back on both sides.",
            source=PRACTICE,
        ),
        Trait(
            "menkaburi",
            "red over the head (menkaburi)",
            YES_NO,
            Better.NEITHER,
            Growth.VARIES,
            "Yes if red runs from the cheeks over the whole head: a kind of its own.",
            {"ja": "面被り"},
            source=PRACTICE,
        ),
    ),
    includes=("shared", "net", "asagi_and_shusui"),
    describe="Blue-grey koi with a net of pale-rimmed scales and red on belly, cheeks and fins.",
    also=("浅黄",),
    sayings=SAID_OF_ASAGI,
)
"""The traits of asagi, with those it shares."""
