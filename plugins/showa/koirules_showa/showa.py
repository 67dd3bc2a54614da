"""The variety showa: black (sumi) that wraps the body and splits the head, with red and white between.

Meanings are common practice, no source; ranges and steps are from memory. Red, white and black in bands have the traits of
every koi that has them; what is said here is how the three go together. That a tenth to a fifth of white is classic and
more of it modern is said by a lesson on showa in Dutch.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, choice, count, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_showa.said import SAID_OF_SHOWA

SHOWA = Vocabulary(
    name="showa",
    title="showa",
    traits=(
        Trait(
            "showa_style",
            "style of the showa",
            choice("hi_showa", "mukashi", "kindai", "boke"),
            Better.NEITHER,
            Growth.VARIES,
            "Mukashi is the old style, mostly black; kindai the modern one with much white; hi_showa mostly red; "
            "boke has clouded black.",
            source=PRACTICE,
        ),
        Trait(
            "shiro_cover",
            "share of white on the back (shiroji)",
            share(),
            Better.TARGET,
            Growth.RISES,
            "From above, fins left out: how much of the fish is white; grey that will clear counts as white.",
            {"ja": "白の割合"},
            source=PRACTICE,
        ),
        Trait(
            "head_colours",
            "colours on the head",
            count(3),
            Better.MORE,
            Growth.RISES,
            "How many of red, black and white there are on the head: three is wanted.",
            {"ja": "頭の色数"},
            source=PRACTICE,
        ),
        Trait(
            "third_balance",
            "thirds of the body that show all three colours",
            count(3),
            Better.MORE,
            Growth.VARIES,
            "Think the body in thirds, from behind the head to the tail: in how many can red, black and white all be seen?",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "red_pattern", "red_on_white", "black", "black_bands"),
    describe="Koi with black that wraps the body and splits the head, red and white between it.",
    also=("showa sanshoku", "showa sanke", "昭和", "昭和三色"),
    forms=("hi showa", "kindai showa", "mukashi showa", "boke showa"),
    sayings=SAID_OF_SHOWA,
)
"""The traits of showa, with those of red, white and black."""
