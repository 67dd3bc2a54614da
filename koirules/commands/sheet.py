"""`koirules sheet`: a blank record sheet."""

from __future__ import annotations

from pathlib import Path

import click

from koirules.api import Standard
from koirules.commands.inputs import registry, standard_from
from koirules.commands.output import counted, show_problems, shown, stop
from koirules.commands.traits import variety_named
from koirules.formats.sheet import write_sheet
from koirules.vocabulary.traits import Variety


@click.command("sheet")
@click.argument("variety")
@click.option("--out", required=True, type=click.Path(), metavar="FILE", help="Where to write it (.xlsx or .csv).")
@click.option("--rules", metavar="RULES", help="Take only the traits that this standard reads, its house traits too.")
@click.option(
    "--fish", default=200, show_default=True, type=click.IntRange(1, 100_000), help="How many rows to prepare."
)
def command(variety: str, out: str, rules: str | None, fish: int) -> None:
    """Make a blank record sheet for VARIETY: a column a trait, with drop-downs, number checks and notes."""
    found = variety_named(variety) if rules is None else _variety_of(variety, standard_from(rules))
    problem = write_sheet(Path(out), found, fish=fish)
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(out)}: {counted(len(found.traits), 'trait')}, a row a fish.")


def _variety_of(name: str, standard: Standard) -> Variety:
    base = registry().varieties.get(name)
    if base is None or standard.variety != base.name:
        stop(f'{shown(standard.rules.file)} is not for the variety "{shown(name)}".')
    read = standard.grader.traits_read()
    traits = {trait: standard.traits[trait] for trait in standard.traits if trait in read}
    return Variety(base.name, base.title, traits, base.describe)
