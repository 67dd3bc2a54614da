"""The skins that lie over another variety: kinginrin, whose scales sparkle, and doitsu, which has few scales or none.

In: nothing. Out: the vocabularies `ginrin` and `doitsu`, for `variety showa with ginrin`, and their rule sets.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules import hookimpl
from koirules.hooks import rulesets_in
from koirules.vocabulary.traits import Vocabulary
from koirules_skins.doitsu import DOITSU
from koirules_skins.ginrin import GINRIN

KOIRULES_API = 1
"""The version of the hooks that this was written for."""


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """Both skins."""
    return (GINRIN, DOITSU)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in this package, by the name of their folder."""
    return rulesets_in(Path(__file__).with_name("rulesets"))
