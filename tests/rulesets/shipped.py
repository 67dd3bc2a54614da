"""Every standard that is shipped, of koirules and of the plugins beside it, whatever is installed here."""

from __future__ import annotations

import sys
from functools import cache
from importlib import import_module
from pathlib import Path

from koirules import Standard, load_standard
from koirules.analysis.flaws import Flaws
from koirules.plugins import Registry
from koirules.testing import registry_with

ROOT = Path(__file__).resolve().parents[2]
PLUGINS = sorted(path.parent for path in ROOT.glob("plugins/*/koirules_*/rulesets"))
FOLDERS = {
    path.parent.name: path.parent
    for path in (*ROOT.glob("rulesets/*/standard.koi"), *ROOT.glob("plugins/*/*/rulesets/*/standard.koi"))
}
"""The folder of each rule set, by its name."""

COMMON = {"fry": "fry_any_variety", "tosai": "tosai_any_variety", "nisai": "tosai_any_variety"}
"""The common page that every standard of a stage builds on."""


@cache
def registry() -> Registry:
    """What ships, read from this checkout."""
    for package in PLUGINS:
        if str(package.parent) not in sys.path:
            sys.path.append(str(package.parent))
    return registry_with(*(import_module(package.name) for package in PLUGINS))


@cache
def standard(name: str) -> Standard:
    """A shipped standard."""
    return load_standard(FOLDERS[name] / "standard.koi", registry())


@cache
def flaws(name: str) -> Flaws:
    """The ideal fish of a shipped standard."""
    found = standard(name)
    return Flaws.of(found.grader, found.settings)
