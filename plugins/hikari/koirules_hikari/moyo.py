"""The variety hikari moyo: metallic koi in two colours or more, without the black bands of showa and utsuri.

Meanings are common practice, no source; ranges and the steps of the scales are from memory. That shine ranks above
pattern here is said by an article on hikari moyo. The net of a kujaku has the traits of every net.
"""

from __future__ import annotations

from koirules.vocabulary.measures import Formula
from koirules.vocabulary.shorthand import PRACTICE, YES_NO, choice, number, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_hikari.said import SAID_OF_MOYO

HIKARI_MOYO = Vocabulary(
    name="hikari_moyo",
    title="hikari moyo",
    traits=(
        Trait(
            "moyo_kind",
            "kind of hikari moyo",
            choice(
                "hariwake",
                "kikusui",
                "kujaku",
                "yamato_nishiki",
                "sakura_ogon",
                "kikokuryu",
                "kinsui",
                "ginsui",
                "other",
            ),
            Better.NEITHER,
            Growth.FIXED,
            "Hariwake is gold or orange on platinum, kikusui wavy and doitsu, kujaku netted, yamato has black spots too.",
            {"ja": "種類"},
            source=PRACTICE,
        ),
        Trait(
            "moyo_cover",
            "share of the second colour (moyo)",
            share(),
            Better.TARGET,
            Growth.VARIES,
            "From above, fins left out: how much of the fish has the second colour.",
            {"ja": "模様の割合"},
            source=PRACTICE,
        ),
        Trait(
            "moyo_balance",
            "balance of the pattern (moyo)",
            number("0", "1"),
            Better.MORE,
            Growth.VARIES,
            "The poorer of the balance of left and right and that of front and rear: 1 is well spread, 0 is all in one place.",
            source=PRACTICE,
        ),
        Trait(
            "moyo_edge",
            "edge of the pattern (moyo)",
            scale("blurred", "fair", "sharp"),
            Better.MORE,
            Growth.RISES,
            "Where the two colours meet: sharp is cut as with a knife, blurred runs over several scales.",
            source=PRACTICE,
        ),
        Trait(
            "kujaku_face",
            "face of a kujaku",
            scale("dirty", "fair", "clean"),
            Better.MORE,
            Growth.VARIES,
            "On a kujaku alone: clean is a red or white face without black, dirty has net or specks on it.",
            source=PRACTICE,
        ),
        Trait(
            "wave",
            "wavy flank (kikusui)",
            YES_NO,
            Better.MORE,
            Growth.FIXED,
            "Yes if the second colour runs in waves along both flanks, as wanted on a kikusui.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "metal", "net"),
    measures=(Formula("moyo_balance", "lesser of (balance_left_right, balance_front_rear)"),),
    describe="Metallic koi in two colours: hariwake, kikusui, kujaku, yamato nishiki and others.",
    also=("hikarimoyo", "hikari moyomono", "光模様"),
    forms=(
        "hariwake",
        "yamabuki hariwake",
        "orenji hariwake",
        "kikusui",
        "kujaku",
        "yamato nishiki",
        "yamatonishiki",
        "sakura ogon",
    ),
    sayings=SAID_OF_MOYO,
)
"""The traits of hikari moyo, with those of metal and net."""
