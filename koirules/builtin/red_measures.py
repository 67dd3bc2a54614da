"""How the traits of the pattern of red (hi) follow from its map."""

from __future__ import annotations

from koirules.builtin.red_pattern import DETAILS, PATTERN
from koirules.measures.pattern import pattern_measure
from koirules.vocabulary.measures import Formula

_FIGURES = {
    "cover": "hi_cover",
    "front_share": "hi_front_share",
    "left_share": "hi_left_share",
    "start": "hi_start",
    "rear_gap": "odome",
    "steps": "steps",
    "step_count": "step_count",
    "longest_gap": "longest_white_gap",
    "smallest": "smallest_patch",
    "zigzag": "zigzag",
    "below_line": "hi_below_line",
    "wraps": "makibara",
    "splashes": "tobihi",
    "separate_head": "maruten",
    "roundness": "head_roundness",
    "windows": "windows",
    "head_windows": "head_windows",
    "lips": "kuchibeni",
    "head_front": "head_hi_front",
    "eyes": "hi_on_eyes",
    "fins": "hi_at_fins",
}
_BY_NAME = {trait.name: trait for trait in (*PATTERN, *DETAILS)}

MEASURES_OF_RED = (
    pattern_measure("hi_patches", {figure: _BY_NAME[name] for figure, name in _FIGURES.items()}),
    Formula("odome_gap", "standard_length * (odome / 100 %)"),
    Formula(
        "balance_left_right",
        "(50 % - greater of (hi_left_share - 50 %, 50 % - hi_left_share)) / 50 %",
    ),
    Formula(
        "balance_front_rear",
        "(50 % - greater of (hi_front_share - 50 %, 50 % - hi_front_share)) / 50 %",
    ),
)
"""What is measured on the map of the red, and what follows from it."""
