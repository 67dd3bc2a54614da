"""The traits that every variety shares."""

from __future__ import annotations

from koirules.builtin.body import FRAME, PARTS
from koirules.builtin.look import LOOK
from koirules.builtin.measures_of_body import MEASURES_OF_BODY
from koirules.builtin.skin import SKIN, WHOLE
from koirules.vocabulary.traits import Vocabulary

SHARED = Vocabulary(
    name="shared",
    title="shared traits",
    traits=(*LOOK, *MEASURES_OF_BODY, *FRAME, *PARTS, *SKIN, *WHOLE),
    describe="What can be said about a koi of any variety: the look, the body, the skin and the whole.",
    is_variety=False,
)
"""The shared traits, for a variety to include."""
