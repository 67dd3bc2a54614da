"""The variety tancho: one red mark on the head and no other red, on the body of a kohaku, a sanke or a showa.

Meanings are common practice, no source; ranges and steps are from memory. That a round mark is wanted first, and large without
touching eyes, nose or shoulder, is said by three pages on tancho; that the likeness of its sides outranks its shape and that
red anywhere else, also on the lips, makes it no tancho, by texts in a trade magazine. Tone and edge of the mark have the
traits of red, the black of a sanke or showa those of black.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import CHEEKS, EYES, PRACTICE, choice, count, number, places, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_tancho.said import SAID_OF_TANCHO

TANCHO = Vocabulary(
    name="tancho",
    title="tancho",
    traits=(
        Trait(
            "tancho_body",
            "body under the mark",
            choice("kohaku", "sanke", "showa"),
            Better.NEITHER,
            Growth.VARIES,
            "Kohaku is all white, sanke has black spots, showa has black that wraps the body and splits the head.",
            source=PRACTICE,
        ),
        Trait(
            "spot_shape",
            "shape of the mark",
            choice("round", "oval", "heart", "diamond", "crown_like", "irregular"),
            Better.NEITHER,
            Growth.FIXED,
            "From straight above: the nearest of these shapes; round is wanted first, irregular is none of them.",
            {"ja": "丹頂の形"},
            source=PRACTICE,
        ),
        Trait(
            "spot_roundness",
            "roundness of the mark",
            number("0", "1"),
            Better.MORE,
            Growth.FIXED,
            "The shorter diameter of the mark divided by the longer one: 1 is a circle.",
            source=PRACTICE,
        ),
        Trait(
            "spot_symmetry",
            "likeness of the halves of the mark",
            number("0", "1"),
            Better.MORE,
            Growth.FIXED,
            "Fold it along the middle of the head in your mind: 1 covers itself, 0 lies on one side only.",
            source=PRACTICE,
        ),
        Trait(
            "spot_off_centre",
            "how far the mark lies off the middle",
            share("0", "50"),
            Better.LESS,
            Growth.FIXED,
            "From the middle of the mark to the middle line of the head, in % of the width of the head between the gill edges.",
            source=PRACTICE,
        ),
        Trait(
            "spot_size",
            "size of the mark",
            share(),
            Better.TARGET,
            Growth.FALLS,
            "How much of the head, from the nose to the gill edge, the mark covers from above.",
            source=PRACTICE,
        ),
        Trait(
            "spot_touches",
            "what the mark touches",
            places("nose", *EYES, *CHEEKS, "shoulder"),
            Better.LESS,
            Growth.FALLS,
            "The places that the mark runs into; a free mark touches none.",
            source=PRACTICE,
        ),
        Trait(
            "spot_windows",
            "white holes in the mark (mado)",
            count(20),
            Better.LESS,
            Growth.RISES,
            "Count the white holes inside the mark.",
            source=PRACTICE,
        ),
        Trait(
            "other_red",
            "red anywhere else",
            count(10),
            Better.LESS,
            Growth.VARIES,
            "Count the red spots away from the mark, on lips, body and fins; with any of them it is no tancho.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "red_on_white", "black", "black_spots", "black_bands"),
    describe="Koi with one red mark on the head and no other red: tancho kohaku, tancho sanke, tancho showa.",
    also=("丹頂",),
    forms=("tancho kohaku", "tancho sanke", "tancho taisho sanke", "tancho showa"),
    sayings=SAID_OF_TANCHO,
)
"""The traits of tancho, with those of red, white and black."""
