"""Traits of black (sumi) that wraps round the body, as on showa and utsurimono.

Meanings are common practice, no source; ranges and steps are from memory. That the head is best split by black with about
half of it black, that black at the nose is a plus, and that small spots between the bands lower, is said by a handout on
selecting an utsuri (2005); that stripes in the pectoral fins in place of a black base lower, by three pages on utsuri; that
the yellow head of most young fish whitens and black on the head grows, by the same and by a text on the third selection of
showa.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, YES_NO, choice, count, number, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait

BLACK_BANDS = (
    Trait(
        "sumi_bands",
        "black bands that reach the flanks",
        count(8),
        Better.MORE,
        Growth.FIXED,
        "Count the black bands that run over the back and down to a flank, wrapping the body.",
        source=PRACTICE,
    ),
    Trait(
        "sumi_linked",
        "black joined up",
        scale("spots", "partly", "linked"),
        Better.MORE,
        Growth.RISES,
        "Linked is one black that runs on from band to band, spots lie apart as on a sanke.",
        source=PRACTICE,
    ),
    Trait(
        "small_sumi",
        "small black spots between the bands",
        count(100),
        Better.LESS,
        Growth.VARIES,
        "Count small spots of black away from the bands, each larger than a speck and smaller than an eye.",
        source=PRACTICE,
    ),
    Trait(
        "head_sumi",
        "form of the black on the head",
        choice("clear", "stain", "v_shape", "menware", "hachiware", "solid"),
        Better.NEITHER,
        Growth.RISES,
        "Menware splits the face like lightning, hachiware splits the crown, v_shape comes from the shoulder; "
        "clear has none, stain is a shapeless spot, solid is a black hood.",
        {"ja": "頭の墨模様"},
        source=PRACTICE,
    ),
    Trait(
        "head_sumi_share",
        "share of black on the head",
        share(),
        Better.TARGET,
        Growth.RISES,
        "From above, how much of the head in front of the gill edge is black.",
        source=PRACTICE,
    ),
    Trait(
        "nose_sumi",
        "black at the nose (hana sumi)",
        YES_NO,
        Better.MORE,
        Growth.RISES,
        "Yes if there is black on the nose or the lips.",
        {"ja": "鼻墨"},
        source=PRACTICE,
    ),
    Trait(
        "head_yellow",
        "yellow cast on the head",
        scale("strong", "slight", "none"),
        Better.MORE,
        Growth.RISES,
        "Hold the head beside the white of the back: strong is plainly yellow; in most young fish it whitens.",
        source=PRACTICE,
    ),
    Trait(
        "motoguro",
        "black at the base of the pectoral fins (motoguro)",
        scale("none", "stripes", "whole_fin", "base"),
        Better.MORE,
        Growth.VARIES,
        "Base is black round the joint and a clear blade, whole_fin is all black and may draw back, stripes are as on a sanke.",
        {"ja": "元黒"},
        source=PRACTICE,
    ),
    Trait(
        "motoguro_even",
        "both motoguro alike",
        scale("poor", "fair", "even"),
        Better.MORE,
        Growth.VARIES,
        "With both pectoral fins spread: even is the same black on both, poor has one black fin and one without.",
        source=PRACTICE,
    ),
    Trait(
        "motoguro_left",
        "black of the left pectoral fin",
        share(),
        Better.TARGET,
        Growth.VARIES,
        "With the fin spread, from the joint to the tip: how much of the fish's own left fin is black.",
        source=PRACTICE,
    ),
    Trait(
        "motoguro_right",
        "black of the right pectoral fin",
        share(),
        Better.TARGET,
        Growth.VARIES,
        "With the fin spread, from the joint to the tip: how much of the fish's own right fin is black.",
        source=PRACTICE,
    ),
    Trait(
        "motoguro_evenness",
        "likeness of both motoguro",
        number("0", "1"),
        Better.MORE,
        Growth.VARIES,
        "The lesser of the two shares of black divided by the greater: 1 is alike, 0 has black on one side only.",
        source=PRACTICE,
    ),
)
"""The traits of black in bands."""
