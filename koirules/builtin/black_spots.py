"""Traits of black (sumi) that lies in spots, as on sanke and bekko.

Meanings are common practice, no source; ranges and steps are from memory. That one black at the shoulder is the key of the
pattern, that about three stripes on a pectoral fin are right, and that black on the head and stripes in the tail lower a
sanke, is said by a trade text on how to judge a taisho sanshoku.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import EVERYWHERE, PRACTICE, YES_NO, count, places, scale
from koirules.vocabulary.traits import Better, Growth, Trait

BLACK_SPOTS = (
    Trait(
        "sumi_spots",
        "number of black spots (sumi)",
        count(60),
        Better.TARGET,
        Growth.VARIES,
        "Count the black spots on the body from above; pepper smaller than a scale does not count.",
        {"ja": "墨の数"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_size",
        "size of the black spots (sumi)",
        scale("pepper", "small", "medium", "bold"),
        Better.MORE,
        Growth.RISES,
        "Most of the spots: pepper is smaller than a scale, small is one or two scales, bold is as broad as the head's half.",
        {"ja": "墨の大きさ"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_places",
        "places of the black spots (sumi)",
        places(*EVERYWHERE),
        Better.NEITHER,
        Growth.VARIES,
        "Where on the fish the black spots lie.",
        source=PRACTICE,
    ),
    Trait(
        "kata_sumi",
        "key black at the shoulder (kata sumi)",
        YES_NO,
        Better.MORE,
        Growth.VARIES,
        "Yes if one strong black spot lies at the shoulder, just behind the head.",
        {"ja": "肩墨"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_on_head",
        "black on the head",
        YES_NO,
        Better.LESS,
        Growth.RISES,
        "Yes if any black spot lies on the head, in front of the rear edge of the gill covers.",
        {"ja": "頭の墨"},
        source=PRACTICE,
    ),
    Trait(
        "sumi_below_line",
        "black below the lateral line",
        YES_NO,
        Better.LESS,
        Growth.FIXED,
        "Yes if black spots lie below the lateral line, on either side.",
        source=PRACTICE,
    ),
    Trait(
        "tejima",
        "stripes on a pectoral fin (tejima)",
        count(8),
        Better.TARGET,
        Growth.VARIES,
        "Count the black stripes on the pectoral fin that has more of them.",
        {"ja": "手縞"},
        source=PRACTICE,
    ),
    Trait(
        "ojima",
        "stripes in the tail fin (ojima)",
        YES_NO,
        Better.LESS,
        Growth.FIXED,
        "Yes if there are black stripes in the tail fin.",
        {"ja": "尾縞"},
        source=PRACTICE,
    ),
)
"""The traits of black in spots."""
