"""The vocabularies that varieties share: what every koi has, and the parts that some varieties are put together from."""

from __future__ import annotations

from koirules.builtin.black_bands import BLACK_BANDS
from koirules.builtin.black_colour import BLACK_COLOUR
from koirules.builtin.black_spots import BLACK_SPOTS
from koirules.builtin.body import FRAME, PARTS
from koirules.builtin.clear_head import CLEAR_HEAD
from koirules.builtin.look import LOOK
from koirules.builtin.measures_of_body import MEASURES_OF_BODY
from koirules.builtin.net import NET
from koirules.builtin.red_colour import RED_COLOUR
from koirules.builtin.red_pattern import DETAILS, PATTERN
from koirules.builtin.skin import SKIN, WHOLE
from koirules.builtin.white_ground import WHITE_COLOUR
from koirules.vocabulary.traits import Trait, Vocabulary


def _part(name: str, title: str, traits: tuple[Trait, ...], describe: str) -> Vocabulary:
    return Vocabulary(name, title, traits, describe=describe, is_variety=False)


SHARED = _part(
    "shared",
    "shared traits",
    (*LOOK, *MEASURES_OF_BODY, *FRAME, *PARTS, *SKIN, *WHOLE),
    "What can be said about a koi of any variety: the look, the body, the skin and the whole.",
)
"""The shared traits, for a variety to include."""

PARTS_OF_VARIETIES = (
    _part("red_pattern", "pattern of red (hi)", (*PATTERN, *DETAILS), "Where the red of a patterned koi lies."),
    _part("red", "colour of red (hi)", RED_COLOUR, "Tone, thickness and edges of red."),
    _part("white", "white ground (shiroji)", WHITE_COLOUR, "The white between the patches."),
    _part("black", "colour of black (sumi)", BLACK_COLOUR, "Depth, edges and share of black, whatever its form."),
    _part("black_spots", "black in spots (sumi)", BLACK_SPOTS, "Black that lies on the back like stepping stones."),
    _part("black_bands", "black in bands (sumi)", BLACK_BANDS, "Black that wraps round body, head and fin joints."),
    _part("clear_head", "clear head", CLEAR_HEAD, "A head of one clear tone, without specks or dark bone."),
    _part("net", "net of the scales", NET, "A dark centre or rim on each scale, seen as a net."),
)
"""Parts that a variety includes where it has them, so that the same thing has the same name in each."""
