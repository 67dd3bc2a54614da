"""What a plugin imports when it is found: every command waits for it."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Iterator
from types import ModuleType

_HEAVY_NAMES = """
altair coloraide dask duckdb hypothesis jinja2 lark matplotlib narwhals networkx numpy openpyxl pandas PIL plotly polars pyarrow
pydantic pygls pyspark pytest requests rich scipy setuptools shapely sklearn sympy torch xlsxwriter z3
"""
_HEAVY = frozenset(_HEAVY_NAMES.split())
"""Libraries that take more than a few milliseconds to import."""

_NEEDED = "koirules.hooks, koirules.vocabulary.kinds, koirules.vocabulary.traits, koirules.vocabulary.units"


def of_import(plugin: object) -> Iterator[str]:
    """The heavy libraries that a module loads when it is imported, a sentence each; nothing for other objects."""
    if not isinstance(plugin, ModuleType) or plugin.__spec__ is None:
        return
    name = plugin.__spec__.name
    loaded = _loaded(f"{_NEEDED}, {name}")
    if isinstance(loaded, str):
        yield f"{name} cannot be imported in a new Python: {loaded}"
        return
    before = _loaded(_NEEDED)
    for heavy in sorted((loaded - set(before)) & _HEAVY):
        yield f"importing {name} loads {heavy}: import it in the function that uses it"


def _loaded(modules: str) -> frozenset[str] | str:
    """The top-level modules that a new Python has loaded after an import; the error where there is one."""
    code = f"import sys\nimport {modules}\nprint(*{{name.partition('.')[0] for name in sys.modules}})"
    paths = os.pathsep.join(path for path in sys.path if path)
    done = subprocess.run(  # noqa: S603 - this Python, and the name of a module that is loaded here already
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        check=False,
        env={**os.environ, "PYTHONPATH": paths},
    )
    return done.stderr.strip().rpartition("\n")[2] if done.returncode else frozenset(done.stdout.split())
