"""The variety kawarimono: the koi that fit no other group.

Meanings are common practice, no source; the steps of the scales are from memory. The share of black on a kumonryu is
`sumi_cover`, and the net of a matsuba has the traits of every net; how far a fish is ahead of its batch is
`growth_standing`, how a pattern is balanced `balance_left_right` and `balance_front_rear`, which every variety has.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PECTORALS, PRACTICE, choice, places, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_kawarimono.said import SAID_OF_KAWARIMONO

KAWARIMONO = Vocabulary(
    name="kawarimono",
    title="kawarimono",
    traits=(
        Trait(
            "kawari_kind",
            "kind of kawarimono",
            choice(
                *("chagoi", "soragoi", "ochiba", "karasugoi", "hajiro", "kumonryu", "beni_kumonryu", "benigoi"),
                *("kigoi", "aka_matsuba", "ki_matsuba", "shiro_matsuba", "kage", "kanoko", "midorigoi", "other"),
            ),
            Better.NEITHER,
            Growth.VARIES,
            "Chagoi is brown, soragoi grey, ochiba brown on grey, karasugoi black, kumonryu black and white and doitsu.",
            {"ja": "種類"},
            source=PRACTICE,
        ),
        Trait(
            "colour_even",
            "evenness of the colour",
            scale("patchy", "fair", "even"),
            Better.MORE,
            Growth.VARIES,
            "Compare head, back and tail stem: even is one tone on each colour, patchy has clouds or pale fields.",
            source=PRACTICE,
        ),
        Trait(
            "white_edges",
            "white edges of a black koi",
            places("nose", *PECTORALS, "tail"),
            Better.MORE,
            Growth.FIXED,
            "Where a black koi is white: the fin tips of a hajiro, nose and tail too on its kin.",
            {"ja": "白の縁"},
            source=PRACTICE,
        ),
        Trait(
            "tameness",
            "tameness",
            scale("shy", "fair", "tame"),
            Better.MORE,
            Growth.RISES,
            "At the edge of the pond: tame comes first and takes food from the hand, shy stays below.",
            source=PRACTICE,
        ),
        Trait(
            "rarity",
            "rarity, in the eyes of the house",
            scale("common", "uncommon", "rare", "very_rare"),
            Better.MORE,
            Growth.FIXED,
            "How seldom such a fish comes out of a spawning of this house.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "clear_head", "net", "black"),
    describe="Koi that fit no other group: chagoi, soragoi, ochiba, karasugoi, kumonryu, matsuba, kage, kanoko and others.",
    also=("kawari", "kawarigoi", "変わり鯉"),
    forms=(
        "chagoi",
        "soragoi",
        "ochiba",
        "ochiba shigure",
        "ochibashigure",
        "karasugoi",
        "karasu",
        "hajiro",
        "kumonryu",
        "benigoi",
        "kigoi",
        "shiromuji",
        "matsuba",
        "aka matsuba",
        "ki matsuba",
        "shiro matsuba",
        "kage showa",
        "kage utsuri",
        "kage shiro utsuri",
        "kanoko kohaku",
        "kanoko sanke",
        "kanoko showa",
        "midorigoi",
    ),
    sayings=SAID_OF_KAWARIMONO,
)
"""The traits of kawarimono, with those of clear head, net and black."""
