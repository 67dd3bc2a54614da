"""The variety hikari utsuri: metallic showa and utsuri, black bands under a metallic shine.

Meanings are common practice, no source; the steps of the scales are from memory. Black, red and white have the traits of
every koi that has them. That the shine may be lost as the black grows is said by an article on the growth of a champion.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, YES_NO, choice, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_hikari.said import SAID_OF_HIKARI_UTSURI

HIKARI_UTSURI = Vocabulary(
    name="hikari_utsuri",
    title="hikari utsuri",
    traits=(
        Trait(
            "utsuri_kind",
            "kind of hikari utsuri",
            choice("kin_showa", "gin_shiro", "kin_hi", "kin_ki"),
            Better.NEITHER,
            Growth.FIXED,
            "Kin showa has red, white and black; gin shiro is silver, kin hi red gold and kin ki yellow gold with black.",
            {"ja": "種類"},
            source=PRACTICE,
        ),
        Trait(
            "hi_under_metal",
            "red under the metal",
            scale("brown", "orange", "red"),
            Better.MORE,
            Growth.VARIES,
            "The metal thins every red: red is still a clear red from two steps away, brown is rust.",
            source=PRACTICE,
        ),
        Trait(
            "ground_bright",
            "brightness of the ground under the metal",
            scale("dull", "fair", "bright"),
            Better.MORE,
            Growth.VARIES,
            "The silver or gold between the black bands: bright shines by itself, dull looks like wet paper.",
            source=PRACTICE,
        ),
        Trait(
            "metal_lost",
            "shine lost where black grows",
            YES_NO,
            Better.LESS,
            Growth.RISES,
            "Yes if the shine has gone from the black and from its edges since the last look.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "metal", "red_pattern", "red_on_white", "black", "black_bands"),
    describe="Metallic showa and utsuri: black bands, and silver, gold or red between them, under one shine.",
    also=("hikariutsuri", "hikari utsurimono", "光写り"),
    forms=("kin showa", "gin showa", "kin ki utsuri", "kin hi utsuri", "gin shiro", "gin shiro utsuri"),
    sayings=SAID_OF_HIKARI_UTSURI,
)
"""The traits of hikari utsuri, with those of metal, red, white and black."""
