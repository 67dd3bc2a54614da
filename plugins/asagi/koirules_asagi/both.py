"""What is said alike of asagi and shusui: the head, and the red (hi) of belly, cheeks and fins.

Meanings are common practice, no source; ranges and the steps of the scales are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import CHEEKS, PRACTICE, YES_NO, count, places, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_asagi.said import SAID_OF_BOTH

HEAD = (
    Trait(
        "nose_clear",
        "clear nose",
        YES_NO,
        Better.MORE,
        Growth.FIXED,
        "Yes if the nose of a small fish is already pale and clean: the first sign of a clear head.",
        source=PRACTICE,
    ),
    Trait(
        "red_eyes",
        "red eyes",
        YES_NO,
        Better.MORE,
        Growth.FIXED,
        "Yes if the ring of the eye (iris) is red on both sides.",
        source=PRACTICE,
    ),
)
"""What a clear head has beside it."""

RED = (
    Trait(
        "hi_height",
        "height of the red (hi) on the flank",
        share(),
        Better.TARGET,
        Growth.RISES,
        "From the side, in % of the height of the body: 0 is the belly, about 50 the lateral line, 100 the back.",
        {"ja": "緋の高さ"},
        source=PRACTICE,
    ),
    Trait(
        "hi_line_even",
        "upper edge of the red (hi)",
        scale("ragged", "fair", "straight"),
        Better.MORE,
        Growth.VARIES,
        "Follow the upper edge of the red from the gill to the tail: straight runs level, ragged jumps up and down.",
        source=PRACTICE,
    ),
    Trait(
        "cheek_hi",
        "red cheeks",
        places(*CHEEKS),
        Better.MORE,
        Growth.FIXED,
        "The cheeks that are red below the eye; both are wanted.",
        {"ja": "頬の緋"},
        source=PRACTICE,
    ),
    Trait(
        "pectoral_red",
        "red at the base of the pectorals (motoaka)",
        scale("none", "full_fin", "half", "base"),
        Better.MORE,
        Growth.RISES,
        "How far red runs into the pectoral fins: base is best; a young fish may have red to the rim, which draws back.",
        {"ja": "元赤"},
        source=PRACTICE,
    ),
    Trait(
        "stray_hi",
        "stray red above the line",
        count(20),
        Better.LESS,
        Growth.RISES,
        "Count the red spots on the back, or on the flank away from the red below.",
        source=PRACTICE,
    ),
)
"""The red of belly, flank, cheeks and fins."""

BOTH = Vocabulary(
    name="asagi_and_shusui",
    title="what asagi and shusui share",
    traits=(*HEAD, *RED),
    includes=("clear_head",),
    describe="The head, and the red of belly, flank, cheeks and fins.",
    is_variety=False,
    sayings=SAID_OF_BOTH,
)
"""The traits that asagi and shusui share."""
