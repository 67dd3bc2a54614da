"""Ranchu: goldfish that are looked at from above, without a fin on the back and with a tail in two halves.

In: nothing. Out: the variety `ranchu`, and the drawing that its records are shown by.
"""

from __future__ import annotations

from collections.abc import Sequence

from koirules.hooks import Drawing, hookimpl
from koirules.vocabulary.traits import Vocabulary
from koirules_ranchu.drawing import DRAWING
from koirules_ranchu.ranchu import RANCHU

KOIRULES_API = 2


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """Ranchu."""
    return (RANCHU,)


@hookimpl
def koirules_drawings() -> Sequence[Drawing]:
    """A ranchu from above."""
    return (DRAWING,)
