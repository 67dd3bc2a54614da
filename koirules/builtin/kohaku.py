"""The variety kohaku: red (hi) on white (shiroji)."""

from __future__ import annotations

from koirules.builtin.kohaku_colour import COLOUR
from koirules.builtin.kohaku_measures import MEASURES_OF_PATTERN
from koirules.builtin.kohaku_pattern import DETAILS, PATTERN
from koirules.builtin.kohaku_readings import MEASURES_OF_COLOUR, READINGS
from koirules.vocabulary.traits import Vocabulary

KOHAKU = Vocabulary(
    name="kohaku",
    title="kohaku",
    traits=(*PATTERN, *DETAILS, *COLOUR, *READINGS),
    includes=("shared",),
    measures=(*MEASURES_OF_PATTERN, *MEASURES_OF_COLOUR),
    describe="White koi with red patches on head and back.",
)
"""The traits of kohaku, with the shared ones."""
