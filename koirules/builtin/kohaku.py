"""The variety kohaku: red (hi) on white (shiroji)."""

from __future__ import annotations

from koirules.builtin.kohaku_colour import COLOUR
from koirules.builtin.kohaku_measures import MEASURES_OF_PATTERN
from koirules.builtin.kohaku_pattern import DETAILS, PATTERN
from koirules.vocabulary.traits import Vocabulary

KOHAKU = Vocabulary(
    name="kohaku",
    title="kohaku",
    traits=(*PATTERN, *DETAILS, *COLOUR),
    includes=("shared",),
    measures=MEASURES_OF_PATTERN,
    describe="White koi with red patches on head and back.",
)
"""The traits of kohaku, with the shared ones."""
