"""Traits of the net of the scales, as on asagi, koromo, goshiki and other netted koi.

Meanings are common practice, no source; ranges and steps are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import count, scale
from koirules.vocabulary.traits import Better, Growth, Trait

NET = (
    Trait(
        "net_clarity",
        "clearness of the net",
        scale("none", "faint", "clear", "crisp"),
        Better.MORE,
        Growth.RISES,
        "Look at single scales where the net should lie: crisp shows every scale with its own dark line, faint is a haze.",
        {"ja": "網目"},
    ),
    Trait(
        "net_even",
        "evenness of the net",
        scale("patchy", "fair", "even"),
        Better.MORE,
        Growth.VARIES,
        "Follow the net from head to tail: even is the same everywhere it should be, patchy has gaps and blots.",
        {"ja": "網目の揃い"},
    ),
    Trait(
        "jami",
        "dark specks beside the net (jami)",
        count(200),
        Better.LESS,
        Growth.RISES,
        "Count the small dark specks on head and back that are no part of the net.",
        {"ja": "ジャミ"},
    ),
)
"""The traits of a net."""
