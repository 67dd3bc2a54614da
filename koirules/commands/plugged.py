"""The commands of plugins: listed without importing any, fetched when one runs.

What plugins answered is kept in the cache folder, as names and texts alone. It is good for as long as the folders in which
Python looks for distributions, and the modules of the plugins, have the times and sizes that they had; then the hooks are
asked again.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Container, Iterator
from contextlib import suppress
from hashlib import sha256
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn, TypeAlias

import click

from koirules.cache import keep, read_kept

if TYPE_CHECKING:
    from koirules.plugins import Registry
    from koirules.problems import Problem

_KIND, _FORM = "commands", 1

_Kept: TypeAlias = tuple[list[list[str]], int]
"""A row for each command (name, help, target, plugin), and how many things of plugins were left out."""


class PluggedCommand:
    """A command of a plugin. help: its one line. target: `module:attribute`. plugin: the plugin as problems name it."""

    def __init__(self, name: str, help: str, target: str, plugin: str) -> None:  # noqa: A002 - click's word
        self.name = name
        self.help = help
        self.target = target
        self.plugin = plugin

    def fetch(self) -> click.Command:
        """Import the command; ends with status 2 and a problem that names the plugin where that cannot be done."""
        module, _, attribute = self.target.partition(":")
        try:
            command = getattr(import_module(module), attribute)
        except KeyboardInterrupt:
            raise
        except BaseException as error:  # a stranger's code may raise anything
            from koirules.problems.quoting import error_told

            self._stop(error_told(error))
        if not isinstance(command, click.Command):
            self._stop(f"{self.target} is of type {type(command).__name__}, and no click.Command")
        return command

    def _stop(self, error: str) -> NoReturn:
        from koirules.problems import plugging

        _end(plugging.command_unusable(self.plugin, self.name, error))

    def end_failed(self, error: Exception) -> NoReturn:
        """End with status 2 and a problem that names the plugin, whose command raised an error."""
        from koirules.problems import plugging
        from koirules.problems.failing import TRACEBACK
        from koirules.problems.quoting import error_told

        _end(plugging.command_failed(self.plugin, self.name, error_told(error), TRACEBACK))


def _end(problem: Problem) -> NoReturn:
    from koirules.commands.output import PROBLEMS, show_problems

    show_problems([problem])
    sys.exit(PROBLEMS)


class PluggedCommands:
    """The commands of all plugins by name, in their order, and how many things of plugins were left out.

    own: the names that koirules has itself, and keeps.
    """

    def __init__(self, own: Container[str]) -> None:
        self._own = own
        self._key = _key()
        kept = _kept(self._key)
        self._is_fresh = kept is None
        self._take(kept or _asked(self._key))

    def _take(self, kept: _Kept) -> None:
        rows, left_out = kept
        self.by_name = {row[0]: PluggedCommand(*row) for row in rows if row[0] not in self._own}
        self.left_out = left_out + len(rows) - len(self.by_name)

    def find(self, name: str) -> PluggedCommand | None:
        """The command of a name; where none was kept under it, the plugins are asked again."""
        if name not in self.by_name and not self._is_fresh:
            self._is_fresh = True
            self._take(_asked(self._key))
        return self.by_name.get(name)


def taken_by_koirules(registry: Registry, own: Container[str]) -> list[Problem]:
    """A problem for each command of a plugin whose name koirules has itself."""
    from koirules.problems import plugging
    from koirules.problems.quoting import quoted

    return [
        plugging.plugin_name_taken(one.plugin, f"the command {quoted(name)}", "koirules")
        for name, one in registry.subcommands.items()
        if name in own
    ]


def _asked(key: str) -> _Kept:
    from koirules.plugins import load_registry

    registry = load_registry()
    rows = [[name, one.what.help, one.what.target, one.plugin] for name, one in registry.subcommands.items()]
    files = [(str(path), *_stamp(path)) for path in _files_of(registry.modules)]
    kept = {"form": _FORM, "files": files, "commands": rows, "left_out": len(registry.problems)}
    keep(_KIND, key, json.dumps(kept).encode())
    return rows, len(registry.problems)


def _kept(key: str) -> _Kept | None:
    data = read_kept(_KIND, key)
    if data is None:
        return None
    try:
        kept = json.loads(data)
        if kept["form"] != _FORM or any([*_stamp(Path(path))] != stamp for path, *stamp in kept["files"]):
            return None
        rows = [[str(text) for text in row] for row in kept["commands"]]
        left_out = int(kept["left_out"])
    except (ValueError, KeyError, TypeError, OSError):  # of another version, or cut off
        return None
    return (rows, left_out) if all(len(row) == 4 for row in rows) else None


def _key() -> str:
    """The name under which the commands are kept: it changes with every installation and removal."""
    found = [sys.version, str(Path(__file__).stat().st_mtime_ns)]
    for folder in sys.path:
        try:
            found.append(f"{folder} {Path(folder).stat().st_mtime_ns}")
        except (OSError, ValueError):
            found.append(folder)
    return sha256("\n".join(found).encode("utf-8", "surrogateescape")).hexdigest()


def _stamp(path: Path) -> tuple[int, int]:
    told = path.stat()
    return told.st_mtime_ns, told.st_size


def _files_of(modules: tuple[str, ...]) -> Iterator[Path]:
    """The files of modules, and of the packages in which they are where they could not be imported."""
    for name in modules:
        file = getattr(sys.modules.get(name), "__file__", None)
        with suppress(ImportError, ValueError):
            spec = None if file else find_spec(name.partition(".")[0])
            file = file or getattr(spec, "origin", None)
        if file and Path(file).is_file():
            yield Path(file)
