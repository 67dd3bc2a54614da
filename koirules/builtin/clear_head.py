"""Traits of a head that should be one clear tone, as on asagi, bekko, metallic and other plain-headed koi.

Meanings are common practice, no source; ranges and steps are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, count, scale
from koirules.vocabulary.traits import Better, Growth, Trait

CLEAR_HEAD = (
    Trait(
        "head_clear",
        "clearness of the head",
        scale("stained", "skull_shows", "fair", "clear"),
        Better.MORE,
        Growth.VARIES,
        "Clear is one tone from nose to nape; skull_shows has dark bone under the skin; stained has dots, blots or a cast.",
        {"ja": "頭の澄み"},
        source=PRACTICE,
    ),
    Trait(
        "jami",
        "dark specks on head and back (jami)",
        count(200),
        Better.LESS,
        Growth.RISES,
        "Count the small dark specks on head and back that are no part of a pattern or a net.",
        {"ja": "ジャミ"},
        source=PRACTICE,
    ),
)
"""The traits of a clear head."""
