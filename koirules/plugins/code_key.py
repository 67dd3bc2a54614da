"""What the meaning of a rule file follows from, beside its own bytes: the code that reads it, as one short text."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Iterator
from hashlib import sha256
from pathlib import Path

_PACKAGE = Path(__file__).parents[1] / "__init__.py"

_CODE = (".py", ".lark", ".toml", ".koi", ".csv", ".json", ".so", ".pyd")


def code_key(sources: Iterable[str], modules: Iterable[str]) -> str:
    """A digest that is another one when koirules or a plugin is another version, or a file of their code was touched.

    sources: the distributions with their versions. modules: those that are plugins; the package of each is looked through, so
    that a plugin or a checkout that is worked on counts as new with every change.
    """
    told = [sys.version, *sources]
    files = [str(_PACKAGE), *(getattr(sys.modules.get(name), "__file__", None) for name in modules)]
    for file in dict.fromkeys(files):
        if file:
            told.extend(_stamps(Path(file)))
    return sha256("\n".join(told).encode("utf-8", "surrogateescape")).hexdigest()


def _stamps(file: Path) -> Iterator[str]:
    if file.name != "__init__.py":
        yield _stamp(str(file), file.stat())
        return
    folders = [str(file.parent)]
    while folders:
        with os.scandir(folders.pop()) as entries:
            for entry in sorted(entries, key=lambda entry: entry.name):
                if entry.is_dir(follow_symlinks=False):
                    if entry.name != "__pycache__":
                        folders.append(entry.path)
                elif entry.name.endswith(_CODE):
                    yield _stamp(entry.path, entry.stat())


def _stamp(path: str, told: os.stat_result) -> str:
    return f"{path} {told.st_mtime_ns} {told.st_size}"
