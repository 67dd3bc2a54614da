"""The variety bekko: black (sumi) spots on white, red or yellow.

Meanings are common practice, no source. A bekko is a sanke without its second colour; all that is said of it is said with
the shared traits of black in spots, of a clear head and of the one colour under the black.
"""

from __future__ import annotations

from koirules.vocabulary.traits import Vocabulary

BEKKO = Vocabulary(
    name="bekko",
    title="bekko",
    traits=(),
    includes=("shared", "one_ground", "clear_head", "black", "black_spots"),
    describe="White, red or yellow koi with a few black spots on the back and a clear head.",
    also=("べっ甲",),
    forms=("shiro bekko", "aka bekko", "ki bekko"),
)
"""The traits of bekko."""
