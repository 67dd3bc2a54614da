"""Traits of the net of the scales, as on asagi, koromo, goshiki and other netted koi.

Meanings are common practice, no source; ranges and steps are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.measures import Formula
from koirules.vocabulary.shorthand import PRACTICE, number, scale, share
from koirules.vocabulary.traits import Better, Growth, Trait

NET = (
    Trait(
        "net_clarity",
        "clearness of the net",
        scale("none", "faint", "clear", "crisp"),
        Better.MORE,
        Growth.RISES,
        "Look at single scales where the net should lie: crisp shows every scale by itself with a clean rim, faint is a haze.",
        {"ja": "網目"},
        source=PRACTICE,
    ),
    Trait(
        "net_even",
        "evenness of the net",
        scale("patchy", "fair", "even"),
        Better.MORE,
        Growth.VARIES,
        "Follow the net from head to tail: even is the same everywhere it should be, patchy has gaps and blots.",
        {"ja": "網目の揃い"},
        source=PRACTICE,
    ),
    Trait(
        "net_front",
        "net on the shoulder",
        share(),
        Better.MORE,
        Growth.VARIES,
        "Of the scales from the head to the back fin that should have a net: how many stand out whole.",
        source=PRACTICE,
    ),
    Trait(
        "net_middle",
        "net beside the back fin",
        share(),
        Better.MORE,
        Growth.VARIES,
        "Of the scales along the back fin that should have a net: how many stand out whole.",
        source=PRACTICE,
    ),
    Trait(
        "net_rear",
        "net behind the back fin",
        share(),
        Better.MORE,
        Growth.VARIES,
        "Of the scales from the back fin to the tail that should have a net: how many stand out whole.",
        source=PRACTICE,
    ),
    Trait(
        "net_cover",
        "share of the back with a whole net",
        share(),
        Better.MORE,
        Growth.VARIES,
        "The mean of the shares on the shoulder, beside and behind the back fin.",
        source=PRACTICE,
    ),
    Trait(
        "net_evenness",
        "poorest part of the net beside the best",
        number("0", "1"),
        Better.MORE,
        Growth.VARIES,
        "The least of the three shares of the net divided by the greatest: 1 is alike all along the back.",
        source=PRACTICE,
    ),
)
"""The traits of a net."""

MEASURES_OF_NET = (
    Formula("net_cover", "(net_front + net_middle + net_rear) / 3"),
    Formula(
        "net_evenness", "lesser of (net_front, net_middle, net_rear) / greater of (net_front, net_middle, net_rear)"
    ),
)
"""What follows from the shares of the net on shoulder, beside and behind the back fin."""
