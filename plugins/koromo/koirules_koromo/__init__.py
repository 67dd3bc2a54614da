"""Netted koi with red: koromo, with the net on the red, and goshiki, with the net on the white.

In: nothing. Out: the varieties `koromo` and `goshiki`, and their rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_koromo.goshiki import GOSHIKI
from koirules_koromo.koromo import KOROMO

KOIRULES_API = 1


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """Koromo and goshiki."""
    return (KOROMO, GOSHIKI)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
