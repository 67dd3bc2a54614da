"""The variety kohaku: red (hi) on white (shiroji)."""

from __future__ import annotations

from koirules.vocabulary.phrases import Spoken
from koirules.vocabulary.traits import Vocabulary

KOHAKU = Vocabulary(
    name="kohaku",
    title="kohaku",
    traits=(),
    includes=("shared", "red_pattern", "red_on_white"),
    describe="White koi with red patches on head and back.",
    also=("紅白",),
    sayings=(
        Spoken("shiroji", bare={"at most white": "grey, greyish, gone grey, a bit grey, greyish white"}),
        *(
            Spoken(
                trait,
                "black spot, small black spot, tiny black spot, black dot, little black dot, small black dot, black mark, "
                "(spot|dot|bit) of black",
                alone={
                    "is 0": "no black (anywhere|at all|on it|on her|on him|on this one|to be seen|), not a bit of black, "
                    "not a black (dot|mark|spot) (anywhere|on it|to be seen|)"
                }
                if trait == "shimi_count"
                else {},
            )
            for trait in ("shimi_count", "shimi_places")
        ),
    ),
)
"""Kohaku has nothing of its own: red, where it lies, and white are parts that other varieties have too."""
