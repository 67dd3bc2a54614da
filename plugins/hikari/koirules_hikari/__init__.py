"""The three groups of metallic koi: plain (hikari muji), in two colours (hikari moyo), with black bands (hikari utsuri).

In: nothing. Out: the three varieties, the vocabulary `metal` that they share, and their rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_hikari.metal import METAL
from koirules_hikari.moyo import HIKARI_MOYO
from koirules_hikari.muji import HIKARI_MUJI
from koirules_hikari.utsuri import HIKARI_UTSURI

KOIRULES_API = 1
"""The version of the hooks that this was written for."""


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """The metal, then the three groups."""
    return (METAL, HIKARI_MUJI, HIKARI_MOYO, HIKARI_UTSURI)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
