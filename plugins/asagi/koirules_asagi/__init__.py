"""Asagi, blue-grey under a net of scales with red below, and shusui, its doitsu form, with one row of scales each side.

In: nothing. Out: the varieties `asagi` and `shusui`, what they share, and their rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_asagi.asagi import ASAGI
from koirules_asagi.both import BOTH
from koirules_asagi.shusui import SHUSUI

KOIRULES_API = 1
"""The version of the hooks that this was written for."""


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """What both share, then the two varieties."""
    return (BOTH, ASAGI, SHUSUI)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
