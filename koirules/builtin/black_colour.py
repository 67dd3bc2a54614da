"""Traits of black (sumi) that hold whatever form it has: its depth, its edges, its share of the back.

Meanings are common practice, no source; ranges and steps are from memory. As with red, shares are of what is seen from
above, fins left out.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PATCHES, PRACTICE, YES_NO, number, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait

BLACK_COLOUR = (
    Trait(
        "sumi_quality",
        "depth of the black (sumi)",
        scale("grey", "dull", "black", "lacquer"),
        Better.MORE,
        Growth.VARIES,
        "Look at the darkest patch, wet: lacquer is deep and shines, dull is black without depth, grey is not through yet.",
        {"ja": "墨の質"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_kiwa",
        "edge of the black (sumi)",
        scale("blurred", "fair", "sharp"),
        Better.MORE,
        Growth.RISES,
        "Where black meets white: sharp is cut clean, blurred fades out over several scales.",
        {"ja": "墨のキワ"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_rising",
        "black still under the skin (ato sumi)",
        scale("none", "some", "much"),
        Better.NEITHER,
        Growth.FALLS,
        "Blue-grey shadows under white or red: black that may come up later, a promise and a risk.",
        {"ja": "後墨"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_patches",
        "map of the black (sumi)",
        PATCHES,
        Better.NEITHER,
        Growth.VARIES,
        "Where each black patch starts and ends along the body, and how far it reaches to each side, as for the red.",
        source=PRACTICE,
    ),
    Trait(
        "sumi_cover",
        "share of black on the back (sumi)",
        share(),
        Better.TARGET,
        Growth.VARIES,
        "From above, fins left out: how much of the fish is black; a third black is 33 %.",
        {"ja": "墨の割合"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_front_share",
        "share of the black in the front half",
        share(),
        Better.TARGET,
        Growth.VARIES,
        "Of all black on the back, how much lies in front of the middle of the body.",
        source=PRACTICE,
    ),
    Trait(
        "sumi_left_share",
        "share of the black on the left",
        share(),
        Better.TARGET,
        Growth.VARIES,
        "Of all black on the back, how much lies left of the spine, the fish's own left.",
        source=PRACTICE,
    ),
    Trait(
        "sumi_balance",
        "spread of the black (sumi)",
        number("0", "1"),
        Better.MORE,
        Growth.VARIES,
        "How evenly the black is spread from shoulder to tail and over both sides: 1 is even, 0 is all in one place.",
        source=PRACTICE,
    ),
    Trait(
        "black_as_larva",
        "black in its first days",
        YES_NO,
        Better.MORE,
        Growth.FIXED,
        "Yes if it was dark and not yellow one to five days after hatching; spawnings of showa and utsuri are parted by it.",
        source=PRACTICE,
    ),
)
"""The traits of the colour of black."""
