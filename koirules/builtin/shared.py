"""The traits that every variety shares."""

from __future__ import annotations

from koirules.builtin.body import FRAME, PARTS
from koirules.builtin.look import LOOK
from koirules.builtin.measures_of_body import MEASURES_OF_BODY
from koirules.builtin.skin import SKIN, WHOLE
from koirules.measures.body import ELLIPSE
from koirules.measures.landmarks import LANDMARKS, LIMITS
from koirules.vocabulary.measures import Formula
from koirules.vocabulary.traits import Vocabulary

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

SHARED = Vocabulary(
    name="shared",
    title="shared traits",
    traits=(*LOOK, *MEASURES_OF_BODY, *FRAME, *PARTS, *SKIN, *WHOLE),
    describe="What can be said about a koi of any variety: the look, the body, the skin and the whole.",
    is_variety=False,
    measures=(ELLIPSE, *FORMULAS),
    constants=(*LANDMARKS, *LIMITS),
)
"""The shared traits, for a variety to include."""
