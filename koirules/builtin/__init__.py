"""What ships in the box, through the same hooks as a stranger's plugin.

In: nothing. Out: the vocabularies that varieties share, the variety kohaku, and the rule sets of this distribution.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules.builtin.kohaku import KOHAKU
from koirules.builtin.shared import PARTS_OF_VARIETIES, SHARED
from koirules.hooks import hookimpl, rulesets_in
from koirules.vocabulary.traits import Vocabulary

KOIRULES_API = 2

__all__ = ["KOIRULES_API", "SHARED", "koirules_rulesets", "koirules_vocabularies"]


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """The shared traits, the parts that varieties are put together from, and kohaku."""
    return (SHARED, *PARTS_OF_VARIETIES, KOHAKU)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in the installed package, or beside it in a checkout."""
    package = Path(__file__).resolve().parent.parent
    installed = package / "rulesets"
    folder = installed if installed.is_dir() else package.parent / "rulesets"
    return rulesets_in(folder)
