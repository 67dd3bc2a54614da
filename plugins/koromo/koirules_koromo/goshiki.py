"""The variety goshiki: a kohaku with a net over its white.

Meanings are common practice, no source; steps are from memory. That the net darkens in cold water and lightens in warm, and
is usually darker with age, is from memory: so the warmth of the water belongs to every look (`water_temperature`).
`net_clarity` and the other traits of the net are here those of the net on the white.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, choice, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_koromo.said import SAID_OF_GOSHIKI

GOSHIKI = Vocabulary(
    name="goshiki",
    title="goshiki",
    traits=(
        Trait(
            "goshiki_style",
            "style of the goshiki",
            choice("modern", "kuro"),
            Better.NEITHER,
            Growth.VARIES,
            "Modern has a light net and clean red, kuro is dark between the patches.",
            source=PRACTICE,
        ),
        Trait(
            "net_weight",
            "darkness of the net",
            scale("light", "middle", "heavy", "solid"),
            Better.TARGET,
            Growth.RISES,
            "On the white: light is pale blue-grey, heavy is nearly black, solid lets no single scale be seen.",
            source=PRACTICE,
        ),
        Trait(
            "hi_clean",
            "red free of the net",
            scale("covered", "some", "clean"),
            Better.MORE,
            Growth.RISES,
            "Clean has no dark scale in the red, covered has the net all over it.",
            source=PRACTICE,
        ),
        Trait(
            "hi_brightness",
            "red against the net",
            scale("dull", "fair", "bright"),
            Better.MORE,
            Growth.RISES,
            "Step back: bright red stands out from the net like a lamp, dull red sinks into it.",
            source=PRACTICE,
        ),
        Trait(
            "head_white_clear",
            "white of the head free of the net",
            scale("dark", "fair", "clear"),
            Better.MORE,
            Growth.VARIES,
            "The white of the head in front of the gill edge: clear has no grey, dark is clouded.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "red_pattern", "red_on_white", "net"),
    describe="A kohaku with a blue-grey to black net over its white.",
    also=("五色",),
    forms=("kuro goshiki",),
    sayings=SAID_OF_GOSHIKI,
)
"""The traits of goshiki, with those of red, white and net."""
