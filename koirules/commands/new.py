"""`koirules new`: a beginner's standard to fill in, with remarks, that grades at once."""

from __future__ import annotations

import re
from collections.abc import Collection
from pathlib import Path
from string import Template

import click

from koirules.api import tidy
from koirules.commands.inputs import registry, replace_option, stop_if_there
from koirules.commands.output import show_problems, shown, stop
from koirules.commands.traits import variety_named
from koirules.plugins import Registry
from koirules.records.writing import write_beside
from koirules.vocabulary.traits import Variety

_KIT = Path(__file__).with_name("standard_kit")
_TEMPLATES = ("minimal", "house", "show")


@click.command("new")
@click.argument("rules", metavar="RULES", type=click.Path())
@click.option("--variety", required=True, metavar="VARIETY", help="The variety that it is for: kohaku.")
@click.option(
    "--from",
    "template",
    type=click.Choice(_TEMPLATES),
    default="house",
    show_default=True,
    help="minimal: two grades and no score. house: faults, points, three grades. show: points, places and ties.",
)
@replace_option
def command(rules: str, variety: str, template: str, replace: bool) -> None:
    """Write a standard to begin with, RULES (.koi), with a remark beside each part. It reads well and grades at once.

    The house and the numbers in it are invented, and there to be replaced.
    """
    path = Path(rules)
    if path.suffix.lower() != ".koi":
        stop(f"A rule file has a name that ends in .koi: try {shown(str(path.with_suffix('.koi')))}.")
    found = variety_named(variety.split())
    stop_if_there([rules], replace=replace)
    text = text_of(template, path, found, registry())
    problem = write_beside(path, lambda passing: _write(passing, text))
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(rules)}: a {template} standard for {shown(found.title)}, all of it invented.")
    click.echo(f"Next: `koirules check {shown(rules)}`, then `koirules sheet --rules {shown(rules)} --out sheet.xlsx`.")


def text_of(template: str, path: Path, variety: Variety, plugins: Registry) -> str:
    """The template for a variety, in the one layout; a part under `@needs` stands only where all its traits are known."""
    kept = []
    for part in _KIT.joinpath(f"{template}.koi.txt").read_text(encoding="utf-8").split("\n\n"):
        remark, wants, body = _parted(part)
        if wants is None or _holds(wants, variety.traits):
            kept.append(remark + body)
    words = {"title": variety.title, "variety": variety.name, "file": path.name}
    return tidy(Template("\n\n".join(kept).rstrip() + "\n").substitute(words), path.name, plugins)


def _parted(part: str) -> tuple[str, str | None, str]:
    """The remark before the line that says what a part needs, that line, and what is behind it."""
    found = re.search(r"^@(.+)\n", part, re.MULTILINE)
    return ("", None, part) if found is None else (part[: found.start()], found[1], part[found.end() :])


def _holds(wants: str, traits: Collection[str]) -> bool:
    word, *names = wants.split()
    return all(name in traits for name in names) == (word == "needs")


def _write(passing: Path, text: str) -> None:
    passing.write_text(text, encoding="utf-8")
