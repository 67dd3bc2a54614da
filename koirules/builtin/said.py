"""How sorters speak of the shared traits and of the parts of varieties, by the vocabulary: for who reads notes."""

from __future__ import annotations

from collections.abc import Mapping

from koirules.builtin.said_at_length import SAID_AT_LENGTH
from koirules.builtin.said_of_balance import SAID_OF_BALANCE
from koirules.builtin.said_of_black import SAID_OF_BANDS, SAID_OF_BLACK, SAID_OF_HEADS, SAID_OF_NETS, SAID_OF_SPOTS
from koirules.builtin.said_of_body import SAID_OF_BODY
from koirules.builtin.said_of_details import SAID_OF_AMOUNTS, SAID_OF_HEAD
from koirules.builtin.said_of_edges import SAID_OF_EDGES
from koirules.builtin.said_of_layers import SAID_OF_LAYERS
from koirules.builtin.said_of_marks import SAID_OF_MARKS
from koirules.builtin.said_of_pattern import SAID_OF_PATTERN
from koirules.builtin.said_of_reach import SAID_OF_REACH
from koirules.builtin.said_of_red import SAID_OF_RED
from koirules.builtin.said_of_shapes import SAID_OF_SHAPES
from koirules.builtin.said_of_skin import SAID_OF_SKIN
from koirules.builtin.said_of_spans import SAID_OF_SPANS
from koirules.builtin.said_of_steps import SAID_OF_STEPS
from koirules.builtin.said_of_white import SAID_OF_WHITE
from koirules.vocabulary.phrases import Saying

SAID: Mapping[str, tuple[Saying, ...]] = {
    "shared": (*SAID_OF_BODY, *SAID_OF_SHAPES, *SAID_OF_SKIN),
    "red_pattern": (
        *SAID_OF_STEPS,
        *SAID_OF_PATTERN,
        *SAID_OF_HEAD,
        *SAID_OF_AMOUNTS,
        *SAID_OF_REACH,
        *SAID_OF_SPANS,
        *SAID_OF_BALANCE,
        *SAID_OF_MARKS,
        *SAID_AT_LENGTH,
    ),
    "red": (*SAID_OF_EDGES, *SAID_OF_LAYERS, *SAID_OF_RED),
    "white": SAID_OF_WHITE,
    "black": SAID_OF_BLACK,
    "black_spots": SAID_OF_SPOTS,
    "black_bands": SAID_OF_BANDS,
    "clear_head": SAID_OF_HEADS,
    "net": SAID_OF_NETS,
}
