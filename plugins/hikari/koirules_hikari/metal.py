"""What is said alike of all metallic koi: how far the shine (hikari) reaches, and what dulls it.

Meanings are common practice, no source; ranges and the steps of the scales are from memory. That the shine should reach
the nose and run through the fins is said by three pages on hikari muji. How strong it is stands in `lustre`, which every
variety has.
"""

from __future__ import annotations

from koirules.vocabulary.measures import Formula
from koirules.vocabulary.shorthand import PRACTICE, YES_NO, number, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_hikari.said import SAID_OF_METAL

METAL = Vocabulary(
    name="metal",
    title="metallic shine (hikari)",
    traits=(
        Trait(
            "lustre_even",
            "evenness of the shine (hikari)",
            scale("patchy", "fair", "even"),
            Better.MORE,
            Growth.VARIES,
            "Even is the same from nose to tail and down both sides, patchy has dull fields.",
            {"ja": "光りの揃い"},
            source=PRACTICE,
        ),
        Trait(
            "shine_head",
            "shine on the head",
            share(),
            Better.MORE,
            Growth.VARIES,
            "From above: how much of the head has full shine, from the nose to the gill edge.",
            source=PRACTICE,
        ),
        Trait(
            "shine_shoulder",
            "shine on the shoulder",
            share(),
            Better.MORE,
            Growth.VARIES,
            "From above: how much of the body before the back fin has full shine.",
            source=PRACTICE,
        ),
        Trait(
            "shine_rear",
            "shine behind",
            share(),
            Better.MORE,
            Growth.VARIES,
            "From above: how much of the body from the front of the back fin to the tail has full shine.",
            source=PRACTICE,
        ),
        Trait(
            "shine_cover",
            "share of the fish with full shine",
            share(),
            Better.MORE,
            Growth.VARIES,
            "The mean of the shares on head, shoulder and behind.",
            source=PRACTICE,
        ),
        Trait(
            "shine_evenness",
            "poorest part of the shine beside the best",
            number("0", "1"),
            Better.MORE,
            Growth.VARIES,
            "The least of the three shares of the shine divided by the greatest: 1 is alike from nose to tail.",
            source=PRACTICE,
        ),
        Trait(
            "pectoral_shine",
            "shine of the pectoral fins",
            scale("dull", "fair", "bright"),
            Better.MORE,
            Growth.RISES,
            "With the pectoral fins spread: bright shines to the rim like foil, dull is only clear or white.",
            source=PRACTICE,
        ),
        Trait(
            "discolour",
            "darkening or stain in warm water",
            scale("strong", "some", "none"),
            Better.MORE,
            Growth.VARIES,
            "Look again in warm water: strong has gone dark or orange, none has kept its tone.",
            source=PRACTICE,
        ),
        Trait(
            "helmet",
            "skull marks on the head (helmet)",
            YES_NO,
            Better.LESS,
            Growth.RISES,
            "Yes if the outline of the skull stands dark under the shine like a helmet; it comes through with age.",
            source=PRACTICE,
        ),
    ),
    includes=("clear_head",),
    describe="How far the shine of a metallic koi reaches, and what dulls it.",
    is_variety=False,
    measures=(
        Formula("shine_cover", "(shine_head + shine_shoulder + shine_rear) / 3"),
        Formula(
            "shine_evenness",
            "lesser of (shine_head, shine_shoulder, shine_rear) / greater of (shine_head, shine_shoulder, shine_rear)",
        ),
    ),
    sayings=SAID_OF_METAL,
)
"""The traits of metal."""
