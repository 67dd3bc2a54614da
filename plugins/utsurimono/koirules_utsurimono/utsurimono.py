"""The variety utsurimono: black (sumi) that wraps the body, with white, red or yellow between.

Meanings are common practice, no source; steps are from memory. That about half of the head and half or a bit less of the
back is black is said by a handout on selecting an utsuri (2005).
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, number, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_utsurimono.said import SAID_OF_UTSURI

UTSURIMONO = Vocabulary(
    name="utsurimono",
    title="utsurimono",
    traits=(
        Trait(
            "head_split",
            "both colours on the head",
            scale("one_colour", "weak", "split"),
            Better.MORE,
            Growth.RISES,
            "Split has black and the other colour side by side across the face, weak has a little of one of them.",
            {"ja": "面割れ"},
            source=PRACTICE,
        ),
        Trait(
            "checker",
            "alternation of the colours from side to side",
            number("0", "1"),
            Better.MORE,
            Growth.FIXED,
            "Walk down the back: 1 changes from black left to black right like a chequered board, 0 has rings or stripes only.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "one_ground", "black", "black_bands"),
    describe="Black koi with white, red or yellow in clear patches: shiro, hi and ki utsuri.",
    also=("utsuri", "写り物", "写り"),
    forms=("shiro utsuri", "hi utsuri", "ki utsuri"),
    sayings=SAID_OF_UTSURI,
)
"""The traits of utsurimono."""
