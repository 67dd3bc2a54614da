"""Koi of black on one other colour: bekko, with black in spots, and utsurimono, with black in bands.

In: nothing. Out: the varieties `bekko` and `utsurimono`, what they share, and their rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_utsurimono.bekko import BEKKO
from koirules_utsurimono.ground import GROUND
from koirules_utsurimono.utsurimono import UTSURIMONO

KOIRULES_API = 1


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """What both share, then the two varieties."""
    return (GROUND, BEKKO, UTSURIMONO)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
