"""The variety koromo: a kohaku whose red wears a net of blue or black.

Meanings are common practice, no source; ranges and steps are from memory. That the net lies within the red alone, comes with
age so that the least marked young may end best, and keeps off the red of the head of an ai goromo, is said by a club page on
koromo. `net_clarity` and the other traits of the net are here those of the net on the red.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, YES_NO, choice, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_koromo.said import SAID_OF_KOROMO

KOROMO = Vocabulary(
    name="koromo",
    title="koromo",
    traits=(
        Trait(
            "koromo_type",
            "type of koromo",
            choice("ai", "sumi", "budo"),
            Better.NEITHER,
            Growth.VARIES,
            "Ai has blue rims on red scales, sumi has black over the red as well, budo has grape-coloured clusters.",
            {"ja": "衣の種類"},
            source=PRACTICE,
        ),
        Trait(
            "net_on_white",
            "net on the white",
            scale("much", "some", "none"),
            Better.MORE,
            Growth.VARIES,
            "Look along the edges of the red: none keeps every dark scale inside the red, much has them all over the white.",
            source=PRACTICE,
        ),
        Trait(
            "head_net",
            "net or black on the red of the head",
            YES_NO,
            Better.LESS,
            Growth.RISES,
            "Yes if any dark scale or stain lies in the red of the head; on sumi goromo it is common.",
            source=PRACTICE,
        ),
        Trait(
            "budo_clusters",
            "grape-like clusters",
            scale("poor", "fair", "clear"),
            Better.MORE,
            Growth.RISES,
            "Of budo goromo: clear stands in round bunches with a clean edge, poor runs together; leave it out for the others.",
            {"ja": "葡萄"},
            source=PRACTICE,
        ),
        Trait(
            "dark_sashi",
            "blue or black front edge",
            YES_NO,
            Better.NEITHER,
            Growth.RISES,
            "Yes if the front edge of the red (sashi) shows blue or black under the white scales.",
            source=PRACTICE,
        ),
        Trait(
            "hi_hidden",
            "red that is lost under black",
            share(),
            Better.LESS,
            Growth.RISES,
            "Of all the red on the back, how much can no longer be seen for black.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "red_pattern", "red_on_white", "net"),
    describe="A kohaku whose red carries a net of blue, black or grape: ai goromo, sumi goromo, budo goromo.",
    also=("goromo", "衣"),
    forms=("ai goromo", "aigoromo", "sumi goromo", "budo goromo", "ai koromo"),
    sayings=SAID_OF_KOROMO,
)
"""The traits of koromo, with those of red, white and net."""
