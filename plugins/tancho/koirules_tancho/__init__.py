"""Tancho: koi whose only red is one mark on the head, on a kohaku, sanke or showa.

In: nothing. Out: the variety `tancho`, and its rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_tancho.tancho import TANCHO

KOIRULES_API = 1


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """Tancho."""
    return (TANCHO,)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
