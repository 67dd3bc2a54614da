"""`koirules new-variety`: a distribution for a variety of one's own, laid down whole."""

from __future__ import annotations

import re
import tempfile
from collections.abc import Mapping
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from string import Template

import click

from koirules.commands.inputs import registry
from koirules.commands.output import shown, stop
from koirules.hooks import API
from koirules.vocabulary.words import RESERVED

_FILES = {
    "pyproject.toml.txt": "pyproject.toml",
    "README.md.txt": "README.md",
    "init.py.txt": "$package/__init__.py",
    "traits.py.txt": "$package/traits.py",
    "standard.koi.txt": "$package/rulesets/$ruleset/standard.koi",
    "records.csv.txt": "tests/records.csv",
    "expected.csv.txt": "tests/expected.csv",
    "test.py.txt": "tests/test_$name.py",
}
"""Where each file of the kit goes."""

_KIT = Path(__file__).with_name("variety_kit")


@click.command("new-variety")
@click.argument("name")
@click.option("--skin", is_flag=True, help="Lay down a skin, which lies over other varieties, in place of a variety.")
@click.option(
    "--into", type=click.Path(), default=".", metavar="FOLDER", help="Where the new folder NAME goes, here by default."
)
def command(name: str, skin: bool, into: str) -> None:
    """Lay down a plugin for the variety NAME in a new folder: traits, a standard, records, tests. It works at once.

    NAME is what rule files write after `variety`: lower-case letters, digits and _. What stands in the files is invented,
    and there to be replaced; the guide goes through it step by step (how-to/add-a-variety.md).
    """
    _check_name(name)
    target = Path(into) / name
    if target.exists():
        stop(f"{shown(str(target))} is there already. Name another variety, or another folder with --into FOLDER.")
    if not Path(into).is_dir():
        stop(f"There is no folder {shown(into)}.")
    words = _words(name, skin)
    try:
        _lay_down(target, words)
    except OSError as error:
        stop(
            f"Nothing was written: {shown(str(target))} cannot be made ({(error.strerror or 'no reason given').lower()})."
        )
    click.echo(f"Wrote {shown(str(target))}: the {words['kind']} {name}, all of it invented, with tests that pass.")
    click.echo(f"Begin with {shown(str(target / 'README.md'))}.")


_MOST_LETTERS = 40


def _check_name(name: str) -> None:
    if re.fullmatch(r"[a-z][a-z0-9_]*", name) is None:
        meant = re.sub(r"[^a-z0-9]+", "_", name.lower()).strip("_")
        guess = f' such as "{meant}"' if re.fullmatch(r"[a-z][a-z0-9_]*", meant) else ""
        stop(f"A variety has a name of lower-case letters, digits and _, a letter first{guess}.")
    if len(name) > _MOST_LETTERS:
        stop(
            f"The name has {len(name)} letters. Files and packages are called by it: choose one of at most {_MOST_LETTERS}."
        )
    if name in RESERVED:
        stop(f'"{name}" is a word of the rule language. Choose another name.')
    plugins = registry()
    if name in plugins.vocabularies:
        stop(f'There is a vocabulary "{name}" already, from {shown(plugins.sources.get(name, "koirules"))}.')


def _words(name: str, skin: bool) -> dict[str, str]:
    """What stands in the files for each word after a `$`."""
    try:
        installed = version("koirules")
    except PackageNotFoundError:
        installed = "0.1.0"
    return {
        "name": name,
        "title": name.replace("_", " "),
        "kind": "skin" if skin else "variety",
        "package": f"koirules_{name}",
        "distribution": f"koirules-{name.replace('_', '-')}",
        "constant": name.upper(),
        "ruleset": f"tosai_{name}",
        "variety": f"kohaku with {name}" if skin else name,
        "spoken": f"kohaku with {name}" if skin else name,
        "spoken_title": f"a fish that is {name.replace('_', ' ')}" if skin else f"the variety {name.replace('_', ' ')}",
        "prefix": f"{name}_" if skin else "",
        "lies": "is_skin=True" if skin else 'includes=("shared",)',
        "version": installed,
        "api": str(API),
    }


def _lay_down(target: Path, words: Mapping[str, str]) -> None:
    """Write all files beside the target, then put them in its place."""
    with tempfile.TemporaryDirectory(dir=target.parent, prefix=f".{target.name}-") as folder:
        whole = Path(folder) / target.name
        for source, place in _FILES.items():
            path = whole / Template(place).substitute(words)
            path.parent.mkdir(parents=True, exist_ok=True)
            text = Template((_KIT / source).read_text(encoding="utf-8")).substitute(words)
            path.write_text(text, encoding="utf-8", newline="\n")
        whole.rename(target)
