"""What the meaning of a rule file follows from, beside its own bytes: the code that reads it, as one short text."""

from __future__ import annotations

import sys
from collections.abc import Iterable
from hashlib import sha256
from pathlib import Path

from koirules.cache import code_stamps, stamp, stamps_within


def code_key(sources: Iterable[str], modules: Iterable[str]) -> str:
    """A digest that is another one when koirules or a plugin is another version, or a file of their code was touched.

    sources: the distributions with their versions. modules: those that are plugins; the package of each is looked through, so
    that a plugin or a checkout that is worked on counts as new with every change.
    """
    told = [sys.version, *sources, *code_stamps()]
    strange = (name for name in modules if not name.startswith("koirules."))
    files = [getattr(sys.modules.get(name), "__file__", None) for name in strange]
    for file in dict.fromkeys(files):
        if file:
            path = Path(file)
            told.extend(stamps_within(path.parent) if path.name == "__init__.py" else [stamp(file, path.stat())])
    return sha256("\n".join(told).encode("utf-8", "surrogateescape")).hexdigest()
