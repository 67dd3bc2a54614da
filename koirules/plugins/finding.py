"""Where plugins are: in the box, installed, or given by a test."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from importlib.metadata import Distribution, EntryPoint, PackageNotFoundError, distribution, entry_points
from pathlib import Path
from types import ModuleType

from koirules import builtin
from koirules.values import frozen

GROUP = "koirules"
"""The group of the entry points, and the name that the hooks go by."""


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
    try:
        source = _name_and_version(distribution("koirules")) or "koirules"
    except PackageNotFoundError:
        source = "koirules"
    return Found(source, source, lambda: builtin, is_box=True, module=builtin.__name__)


def find_installed() -> list[Found]:
    """The plugins of other distributions, in the order of distribution and name."""
    # The box has an entry point only where it is installed, and is to be there exactly once: find_box() has it.
    entries = [entry for entry in entry_points(group=GROUP) if entry.value != builtin.__name__]
    rows = sorted(((_source(entry), entry.name, entry) for entry in entries), key=lambda row: row[:2])
    return [Found(f"{name} of {source}", source, entry.load, module=entry.module) for source, name, entry in rows]


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


def _source(entry: EntryPoint) -> str:
    told = None if entry.dist is None else _name_and_version(entry.dist)
    return told or "an unknown distribution"  # what a half-finished uninstall leaves behind


def _name_and_version(found: Distribution) -> str | None:
    """The name and the version of a distribution, from the head of its metadata: `metadata` takes the parser of mails."""
    head = (found.read_text("METADATA") or "").partition("\n\n")[0]
    fields = dict(line.split(": ", 1) for line in head.splitlines() if line.startswith(("Name: ", "Version: ")))
    return f"{fields['Name']} {fields['Version']}" if len(fields) == 2 else None


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
