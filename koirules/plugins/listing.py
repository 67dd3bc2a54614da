"""Which plugins are installed, kept in the cache folder: to ask Python takes longer than to call those that there are.

`importlib.metadata` imports the readers of mails and of archives, and opens a file of every distribution. What it said holds for
as long as the folders in which it looks, and what distributions say of themselves there, have the times and sizes that they had.
Where another library brings a finder of distributions along, it is asked each time.
"""

from __future__ import annotations

import json
import os
import sys
from collections.abc import Iterable, Iterator
from hashlib import sha256
from importlib.machinery import PathFinder
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.cache import keep, read_kept, stamp
from koirules.values import frozen

if TYPE_CHECKING:
    from importlib.metadata import Distribution, EntryPoint

GROUP = "koirules"
"""The group of the entry points, and the name that the hooks go by."""

_KIND, _FORM = "plugins", "1"


@frozen
class Listed:
    """An entry point, as its distribution has it. source: the distribution with its version, "" where that is not known."""

    source: str
    name: str
    value: str
    module: str

    def load(self) -> object:
        """What it names, imported."""
        from importlib.metadata import EntryPoint

        return EntryPoint(self.name, self.value, GROUP).load()


def box_and_plugins() -> tuple[str, tuple[Listed, ...]]:
    """What koirules is installed as, "" where it is not, and every entry point; raises what broken metadata raises."""
    name = _name()
    kept = _kept(name) if name else None
    if kept is not None:
        return kept
    box, plugins = _box_asked(), tuple(_asked())
    if name:
        rows = [(one.source, one.name, one.value, one.module) for one in plugins]
        keep(_KIND, name, json.dumps([box, rows]).encode("utf-8", "surrogateescape"))
    return box, plugins


def box_source() -> str:
    """What koirules is installed as, "" where it is not."""
    name = _name()
    kept = _kept(name) if name else None
    return _box_asked() if kept is None else kept[0]


def _box_asked() -> str:
    from importlib.metadata import PackageNotFoundError, distribution

    try:
        return _name_and_version(distribution("koirules")) or ""
    except PackageNotFoundError:
        return ""


def _asked() -> Iterator[Listed]:
    from importlib.metadata import entry_points

    for entry in entry_points(group=GROUP):
        yield Listed(_source(entry), entry.name, entry.value, entry.module)


def _source(entry: EntryPoint) -> str:
    return (None if entry.dist is None else _name_and_version(entry.dist)) or ""


def _name_and_version(found: Distribution) -> str | None:
    """The name and the version of a distribution, from the head of its metadata: `metadata` takes the parser of mails."""
    head = (found.read_text("METADATA") or "").partition("\n\n")[0]
    fields = dict(line.split(": ", 1) for line in head.splitlines() if line.startswith(("Name: ", "Version: ")))
    return f"{fields['Name']} {fields['Version']}" if len(fields) == 2 else None


def _kept(name: str) -> tuple[str, tuple[Listed, ...]] | None:
    data = read_kept(_KIND, name)
    try:
        if data is None:
            return None
        box, rows = json.loads(data)
        return str(box), tuple(Listed(*map(str, row)) for row in rows)
    except (ValueError, TypeError):  # cut off
        return None


def _name() -> str:
    """Under what the plugins are kept: it changes with every installation and removal; "" where they are not kept."""
    if any(hasattr(finder, "find_distributions") and finder is not PathFinder for finder in sys.meta_path):
        return ""
    told = [_FORM, sys.version, *_stamps(sys.path)]
    return sha256("\n".join(told).encode("utf-8", "surrogateescape")).hexdigest()


def _stamps(folders: Iterable[str]) -> Iterator[str]:
    for folder in map(Path, folders):
        try:
            yield stamp(str(folder), folder.stat())
            found = sorted(name for name in os.listdir(folder) if name.endswith((".dist-info", ".egg-info", ".egg")))  # noqa: PTH208
        except OSError:  # none, or an archive
            yield str(folder)
            continue
        for name in found:
            for file in (folder / name / "entry_points.txt", folder / name / "METADATA"):
                try:
                    yield stamp(str(file), file.stat())
                except OSError:
                    yield str(file)
                    break
