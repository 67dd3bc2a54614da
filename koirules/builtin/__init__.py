"""What ships in the box, through the same hooks as a stranger's plugin.

In: nothing. Out: the shared traits, the variety kohaku, and the rule sets of this distribution.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from koirules.builtin.kohaku import KOHAKU
from koirules.builtin.shared import SHARED
from koirules.hooks import hookimpl
from koirules.vocabulary.traits import Vocabulary

KOIRULES_API = 1

__all__ = ["KOIRULES_API", "koirules_rulesets", "koirules_vocabularies"]


@hookimpl
def koirules_vocabularies() -> Sequence[Vocabulary]:
    """The shared traits and kohaku."""
    return (SHARED, KOHAKU)


@hookimpl
def koirules_rulesets() -> Mapping[str, Path]:
    """The rule sets in the installed package, or beside it in a checkout."""
    package = Path(__file__).resolve().parent.parent
    installed = package / "rulesets"
    folder = installed if installed.is_dir() else package.parent / "rulesets"
    return {path.parent.name: path for path in sorted(folder.glob("*/standard.koi"))}
