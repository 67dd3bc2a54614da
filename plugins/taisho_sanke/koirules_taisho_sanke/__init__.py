"""Taisho sanke: a kohaku with black spots on the white of its back.

In: nothing. Out: the variety `taisho_sanke`, and its rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_taisho_sanke.taisho_sanke import TAISHO_SANKE

KOIRULES_API = 1


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """Taisho sanke."""
    return (TAISHO_SANKE,)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
