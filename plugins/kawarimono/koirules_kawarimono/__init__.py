"""Kawarimono: the koi that fit no other group, plain ones such as chagoi and changing ones such as kumonryu.

In: nothing. Out: the variety `kawarimono`, and its rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_kawarimono.kawarimono import KAWARIMONO

KOIRULES_API = 1
"""The version of the hooks that this was written for."""


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """Kawarimono."""
    return (KAWARIMONO,)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
