"""The skin kinginrin: koi whose scales sparkle, over any variety.

Meanings are common practice, no source; ranges and the steps of the scales are from memory. Into which class a ginrin
goes, and whether its shine or its pattern comes first there, is for the show or the house to say, and so is no trait.
"""

from __future__ import annotations

from koirules.vocabulary.measures import Formula
from koirules.vocabulary.shorthand import PRACTICE, choice, count, number, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_skins.said import SAID_OF_GINRIN

TRAITS = (
    Trait(
        "gin_type",
        "type of the sparkle",
        choice("diamond", "beta", "pearl", "kado", "sudare"),
        Better.NEITHER,
        Growth.FIXED,
        "On one scale: diamond glitters, beta shines all over, pearl has a raised dot, kado a rim, sudare stripes.",
        {"ja": "銀鱗の型"},
        source=PRACTICE,
    ),
    Trait(
        "gin_rows",
        "rows of sparkling scales",
        count(10),
        Better.MORE,
        Growth.FIXED,
        "From the back fin downwards, on the poorer side: how many rows of scales sparkle from shoulder to tail.",
        {"ja": "銀鱗の列"},
        source=PRACTICE,
    ),
    Trait(
        "gin_cover_left",
        "share of sparkling scales on the left",
        share(),
        Better.MORE,
        Growth.VARIES,
        "Of the scales between shoulder, tail and lateral line on the fish's own left: how many sparkle.",
        source=PRACTICE,
    ),
    Trait(
        "gin_cover_right",
        "share of sparkling scales on the right",
        share(),
        Better.MORE,
        Growth.VARIES,
        "Of the scales between shoulder, tail and lateral line on the fish's own right: how many sparkle.",
        source=PRACTICE,
    ),
    Trait(
        "gin_cover",
        "share of sparkling scales",
        share(),
        Better.MORE,
        Growth.VARIES,
        "Of all scales above the lateral lines, from shoulder to tail: how many sparkle, the mean of both sides.",
        source=PRACTICE,
    ),
    Trait(
        "gin_balance",
        "likeness of the sparkle on both sides",
        number("0", "1"),
        Better.MORE,
        Growth.VARIES,
        "The share of sparkling scales on the poorer side divided by that on the richer: 1 is alike, 0 is one side only.",
        source=PRACTICE,
    ),
    Trait(
        "gin_even",
        "evenness of the sparkle",
        scale("scattered", "fair", "even"),
        Better.MORE,
        Growth.FIXED,
        "Even has no gap from shoulder to tail, scattered has single bright scales between dull ones.",
        source=PRACTICE,
    ),
    Trait(
        "gin_strength",
        "strength of the sparkle",
        scale("dull", "fair", "bright"),
        Better.MORE,
        Growth.VARIES,
        "Turn the bowl slowly in daylight: bright flashes from every side, dull only where the light hits it.",
        {"ja": "銀鱗の輝き"},
        source=PRACTICE,
    ),
    Trait(
        "gin_blur",
        "edges lost in the sparkle",
        scale("strong", "some", "none"),
        Better.MORE,
        Growth.FIXED,
        "Whether the sparkle blurs the edges of the pattern: none leaves them clear; plain fish have none.",
        source=PRACTICE,
    ),
)
"""The traits of sparkling scales."""

GINRIN = Vocabulary(
    name="ginrin",
    title="kinginrin",
    traits=TRAITS,
    describe="A skin over any variety: scales that sparkle gold on red and silver on white and black.",
    is_skin=True,
    measures=(
        Formula("gin_cover", "(gin_cover_left + gin_cover_right) / 2"),
        Formula(
            "gin_balance", "lesser of (gin_cover_left, gin_cover_right) / greater of (gin_cover_left, gin_cover_right)"
        ),
    ),
    also=("gin rin", "kin gin rin", "金銀鱗", "銀鱗"),
    sayings=SAID_OF_GINRIN,
)
"""The traits of kinginrin, to lie over those of a variety."""
