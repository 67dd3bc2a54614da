"""How traits of black (sumi) follow from its map, and from what is measured on the fins."""

from __future__ import annotations

from koirules.builtin.black_colour import BLACK_COLOUR
from koirules.measures.pattern import pattern_measure
from koirules.vocabulary.measures import Formula

_FIGURES = {"cover": "sumi_cover", "front_share": "sumi_front_share", "left_share": "sumi_left_share"}
_BY_NAME = {trait.name: trait for trait in BLACK_COLOUR}

_EVEN = "(50 % - greater of ({0} - 50 %, 50 % - {0})) / 50 %"
"""How near a share is to a half: 1 at 50 %, 0 at 0 % and 100 %."""

MEASURES_OF_BLACK = (
    pattern_measure("sumi_patches", {figure: _BY_NAME[name] for figure, name in _FIGURES.items()}),
    Formula("sumi_balance", f"lesser of ({_EVEN.format('sumi_left_share')}, {_EVEN.format('sumi_front_share')})"),
)
"""What is measured on the map of the black: the worse of both balances is its spread."""

MEASURES_OF_BANDS = (
    Formula(
        "motoguro_evenness", "lesser of (motoguro_left, motoguro_right) / greater of (motoguro_left, motoguro_right)"
    ),
)
"""What follows from the black of both pectoral fins."""
