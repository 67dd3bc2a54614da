"""The vocabularies that varieties share: what every koi has, and the parts that some varieties are put together from."""

from __future__ import annotations

from functools import partial

from koirules.builtin.black_bands import BLACK_BANDS
from koirules.builtin.black_colour import BLACK_COLOUR
from koirules.builtin.black_measures import MEASURES_OF_BANDS, MEASURES_OF_BLACK
from koirules.builtin.black_spots import BLACK_SPOTS
from koirules.builtin.body import FRAME, PARTS
from koirules.builtin.clear_head import CLEAR_HEAD
from koirules.builtin.colour_measures import (
    COLOURS_OF_BOTH,
    COLOURS_OF_RED,
    COLOURS_OF_WHITE,
    RED_READINGS,
    WHITE_READINGS,
)
from koirules.builtin.koi import KOI
from koirules.builtin.look import LOOK
from koirules.builtin.measures_of_body import MEASURES_OF_BODY
from koirules.builtin.net import MEASURES_OF_NET, NET
from koirules.builtin.red_colour import RED_COLOUR
from koirules.builtin.red_measures import MEASURES_OF_RED
from koirules.builtin.red_pattern import DETAILS, PATTERN
from koirules.builtin.skin import SKIN, WHOLE
from koirules.builtin.white_ground import WHITE_COLOUR
from koirules.later import later
from koirules.measures.body import ELLIPSE
from koirules.measures.landmarks import LANDMARKS, LIMITS
from koirules.vocabulary.measures import Formula, Measure
from koirules.vocabulary.phrases import Saying
from koirules.vocabulary.traits import Trait, Vocabulary

_CONDITION = "100 * (weight / 1 g) / (({0} / 1 cm) * ({0} / 1 cm) * ({0} / 1 cm))"
"""Fulton's K, 100 W / L^3 with W in g and L in cm (Froese, Journal of Applied Ichthyology 22, 2006)."""

FORMULAS = (
    Formula("girth_ratio", "girth / length"),
    Formula("fineness", "length / depth"),
    Formula("condition", _CONDITION.format("length")),
    Formula("condition_standard", _CONDITION.format("standard_length")),
    Formula("condition_fork", _CONDITION.format("fork_length")),
    Formula("stem_ratio", "stem_width / width"),
    Formula("shoulder_share", "gill_width / width"),
)
"""What follows from measured traits of the body. No length of one kind ever stands for one of another."""


def _part(
    name: str,
    title: str,
    traits: tuple[Trait, ...],
    describe: str,
    measures: tuple[Measure, ...] = (),
) -> Vocabulary:
    # A measure may read the length, the widths or a landmark of any koi.
    includes = ("shared",) if measures else ()
    return Vocabulary(
        name, title, traits, includes, describe, is_variety=False, measures=measures, sayings=_sayings(name)
    )


def _sayings(name: str) -> tuple[Saying, ...]:
    return later(partial(_said, name))


def _said(name: str) -> tuple[Saying, ...]:
    from koirules.builtin.said import SAID

    return SAID[name]


SHARED = Vocabulary(
    name="shared",
    title="shared traits",
    traits=(*LOOK, *MEASURES_OF_BODY, *FRAME, *PARTS, *SKIN, *WHOLE),
    describe="What can be said about a koi of any variety: the look, the body, the skin and the whole.",
    is_variety=False,
    measures=(ELLIPSE, *FORMULAS),
    constants=(*LANDMARKS, *LIMITS),
    sayings=_sayings("shared"),
    subject=KOI,
)
"""The shared traits, for a variety to include."""

PARTS_OF_VARIETIES = (
    _part(
        "red_pattern",
        "pattern of red (hi)",
        (*PATTERN, *DETAILS),
        "Where the red of a patterned koi lies.",
        MEASURES_OF_RED,
    ),
    _part(
        "red",
        "colour of red (hi)",
        (*RED_COLOUR, *RED_READINGS),
        "Tone, thickness and edges of red.",
        COLOURS_OF_RED,
    ),
    _part(
        "white",
        "white ground (shiroji)",
        (*WHITE_COLOUR, *WHITE_READINGS),
        "The white between the patches.",
        COLOURS_OF_WHITE,
    ),
    Vocabulary(
        "red_on_white",
        "red on white",
        (),
        ("red", "white"),
        "Red and white, and how far their colours lie apart.",
        is_variety=False,
        measures=COLOURS_OF_BOTH,
    ),
    _part(
        "black",
        "colour of black (sumi)",
        BLACK_COLOUR,
        "Depth, edges and share of black, whatever its form.",
        MEASURES_OF_BLACK,
    ),
    _part(
        "black_spots",
        "black in spots (sumi)",
        BLACK_SPOTS,
        "Black that lies on the back like stepping stones.",
    ),
    _part(
        "black_bands",
        "black in bands (sumi)",
        BLACK_BANDS,
        "Black that wraps round body, head and fin joints.",
        MEASURES_OF_BANDS,
    ),
    _part(
        "clear_head",
        "clear head",
        CLEAR_HEAD,
        "A head of one clear tone, without specks or dark bone.",
    ),
    _part(
        "net",
        "net of the scales",
        NET,
        "A dark centre or rim on each scale, seen as a net.",
        MEASURES_OF_NET,
    ),
)
"""Parts that a variety includes where it has them, so that the same thing has the same name in each."""
