"""What a plugin imports: every command waits for what is loaded when it is found, and whoever installs it needs the rest."""

from __future__ import annotations

import ast
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from importlib.metadata import Distribution, PackageNotFoundError, distribution, entry_points, packages_distributions
from pathlib import Path
from types import ModuleType

SLOWEST = 0.3
"""So many seconds of processor time may the import of a plugin take beside what koirules loads itself."""

_HEAVY_NAMES = """
altair coloraide dask duckdb hypothesis jinja2 lark matplotlib narwhals networkx numpy openpyxl pandas PIL plotly polars pyarrow
pydantic pygls pyspark pytest requests rich scipy setuptools shapely sklearn sympy torch xlsxwriter z3
"""
_HEAVY = frozenset(_HEAVY_NAMES.split())
"""Libraries that take more than a few milliseconds to import."""

_NEEDED = "koirules.hooks, koirules.vocabulary.kinds, koirules.vocabulary.traits, koirules.vocabulary.units"
_REQUIRED = re.compile(r"([A-Za-z0-9._-]+)\s*(?:\[([^\]]*)\])?[^;]*(?:;(.*))?")


def of_import(plugin: object) -> Iterator[str]:
    """What is wrong with the imports of a module, a sentence each; nothing for other objects.

    Told are heavy libraries that it loads when it is imported, an import that is slow (`SLOWEST`), and libraries that its code
    imports anywhere while the distribution does not depend on them.
    """
    if not isinstance(plugin, ModuleType) or plugin.__spec__ is None:
        return
    name = plugin.__spec__.name
    loaded = _loaded(name)
    if isinstance(loaded, str):
        yield f"{name} cannot be imported in a new Python: {loaded}"
        return
    heavy, took = loaded
    for library in sorted(heavy & _HEAVY):
        yield f"importing {name} loads {library}: import it in the function that uses it"
    if took > SLOWEST:
        yield f"importing {name} takes {took:.1f} s, and every command waits for it: at most {SLOWEST} s"
    yield from _undeclared(plugin, name)


def _loaded(name: str) -> tuple[frozenset[str], float] | str:
    """The top-level modules that an import adds in a new Python and the seconds it takes; the error where there is one."""
    code = (
        f"import sys, time\nimport {_NEEDED}\nbefore, began = {{*sys.modules}}, time.process_time()\nimport {name}\n"
        "print(time.process_time() - began, *{one.partition('.')[0] for one in {*sys.modules} - before})"
    )
    paths = os.pathsep.join(path for path in sys.path if path)
    done = subprocess.run(  # noqa: S603 - this Python, and the name of a module that is loaded here already
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        check=False,
        env={**os.environ, "PYTHONPATH": paths},
    )
    if done.returncode:
        return done.stderr.strip().rpartition("\n")[2]
    took, *names = done.stdout.strip().rpartition("\n")[2].split()
    return frozenset(names), float(took)


def _undeclared(plugin: ModuleType, name: str) -> Iterator[str]:
    """The libraries that the code of a plugin imports and its distribution does not depend on, a sentence each."""
    found = _distribution_of(name)
    if found is None or plugin.__file__ is None:
        return
    top = name.partition(".")[0]
    provided = packages_distributions()
    declared = _needed_by(found)
    for library in sorted(_imported(Path(plugin.__file__)) - {top} - sys.stdlib_module_names):
        givers = {_plain(one) for one in provided.get(library, ())}
        if givers and not givers & declared:
            yield f"{top} imports {library}, but its distribution does not depend on {' or '.join(sorted(givers))}"


def _distribution_of(name: str) -> Distribution | None:
    """The distribution whose entry point names a module, None where none is installed."""
    return next((entry.dist for entry in entry_points(group="koirules") if entry.module == name), None)


def _imported(file: Path) -> set[str]:
    """The top-level modules that the files of a module or package import when they run."""
    files = file.parent.rglob("*.py") if file.name == "__init__.py" else [file]
    found: set[str] = set()
    for one in files:
        found |= _of_code(ast.parse(one.read_text(encoding="utf-8")))
    return found


def _of_code(node: ast.AST) -> set[str]:
    match node:
        case ast.Import(names=names):
            return {one.name.partition(".")[0] for one in names}
        case ast.ImportFrom(module=str(module), level=0):
            return {module.partition(".")[0]}
        case ast.If(test=ast.Name(id="TYPE_CHECKING") | ast.Attribute(attr="TYPE_CHECKING"), orelse=other):
            return {name for one in other for name in _of_code(one)}
        case _:
            return {name for child in ast.iter_child_nodes(node) for name in _of_code(child)}


def _needed_by(found: Distribution) -> set[str]:
    """All that a distribution depends on, directly or by way of others, with itself."""
    known: set[str] = set()
    left: list[tuple[Distribution, frozenset[str]]] = [(found, frozenset())]
    seen: set[tuple[str, frozenset[str]]] = set()
    while left:
        one, extras = left.pop()
        name = _plain(one.metadata["Name"])
        known.add(name)
        if (name, extras) in seen:
            continue
        seen.add((name, extras))
        for line in one.requires or ():
            matched = _REQUIRED.match(line)
            extra = re.search(r"extra\s*==\s*['\"]([^'\"]+)", line)
            if matched is None or (extra and extra[1] not in extras):
                continue
            try:
                further = distribution(matched[1])
            except PackageNotFoundError:
                known.add(_plain(matched[1]))
                continue
            asked = frozenset(part.strip() for part in (matched[2] or "").split(",") if part.strip())
            left.append((further, asked))
    return known


def _plain(name: str) -> str:
    """The name of a distribution in the one form in which names are compared (PyPA, name normalization)."""
    return re.sub(r"[-_.]+", "-", name).lower()
