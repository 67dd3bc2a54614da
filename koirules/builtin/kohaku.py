"""The variety kohaku: red (hi) on white (shiroji)."""

from __future__ import annotations

from koirules.vocabulary.traits import Vocabulary

KOHAKU = Vocabulary(
    name="kohaku",
    title="kohaku",
    traits=(),
    includes=("shared", "red_pattern", "red_on_white"),
    describe="White koi with red patches on head and back.",
    also=("紅白",),
)
"""Kohaku has nothing of its own: red, where it lies, and white are parts that other varieties have too."""
