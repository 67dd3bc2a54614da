"""Where plugins are: in the box, installed, or given by a test."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from types import ModuleType

from koirules import builtin
from koirules.plugins.listing import GROUP, Listed, box_and_plugins, box_source
from koirules.values import frozen

__all__ = ["GROUP", "Found", "find_box", "find_given", "find_installed", "written_in"]


@frozen
class Found:
    """A plugin before its code has run.

    label: its name as problems give it. source: the distribution with its version. load: imports it. is_box: whether it is
    what ships with koirules. module: the name of its module, "" for what is at hand.
    """

    label: str
    source: str
    load: Callable[[], object]
    is_box: bool = False
    module: str = ""


def find_box() -> Found:
    """What ships with koirules, whether it is installed or runs from a checkout."""
    source = box_source() or "koirules"
    return Found(source, source, lambda: builtin, is_box=True, module=builtin.__name__)


def find_installed() -> list[Found]:
    """The plugins of other distributions, in the order of distribution and name."""
    # The box has an entry point only where it is installed, and is to be there exactly once: find_box() has it.
    entries = [entry for entry in box_and_plugins()[1] if entry.value != builtin.__name__]
    # Without a source it is what a half-finished uninstall leaves behind.
    rows = sorted(((entry.source or "an unknown distribution", entry) for entry in entries), key=_order)
    return [Found(f"{entry.name} of {source}", source, entry.load, module=entry.module) for source, entry in rows]


def _order(row: tuple[str, Listed]) -> tuple[str, str]:
    return row[0], row[1].name


def find_given(plugin: object) -> Found:
    """A module or object that is at hand."""
    name = str(getattr(plugin, "__name__", type(plugin).__name__))
    return Found(name, name, lambda: _hashable(plugin, name))


def _hashable(plugin: object, name: str) -> object:
    """The plugin, or a module with the same names where it has no hash, which pluggy asks for."""
    if type(plugin).__hash__ is not None:
        return plugin
    module = ModuleType(name)
    module.__dict__.update(vars(plugin))
    return module


def written_in(text: str, modules: Iterable[str]) -> tuple[str, int] | None:
    """The file and the line in the code of plugins where a text stands that only one of its lines has; None where none does.

    modules: those of the plugins. Of a package all modules that were loaded are looked at.
    """
    found = [
        (file, number)
        for file in _files_of(modules)
        for number, line in enumerate(file.read_text(encoding="utf-8", errors="replace").split("\n"), 1)
        if text in line
    ]
    return (str(found[0][0]), found[0][1]) if len(found) == 1 else None


def _files_of(modules: Iterable[str]) -> list[Path]:
    packages = {name.partition(".")[0] for name in modules} - {"koirules"}
    named = (
        getattr(module, "__file__", None)
        for name, module in list(sys.modules.items())
        if name.partition(".")[0] in packages
    )
    files = {Path(name) for name in named if name and name.endswith(".py")}
    return sorted(file for file in files if file.is_file())
