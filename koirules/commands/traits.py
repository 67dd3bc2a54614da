"""`koirules traits`: what rules and records can name."""

from __future__ import annotations

import json
import sys

import click

from koirules.commands.inputs import registry, standard_from
from koirules.commands.output import shown, stop
from koirules.vocabulary.kinds import describe_kind
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Trait, Variety


@click.command("traits")
@click.argument("variety", metavar="VARIETY")
@click.option("--json", "as_json", is_flag=True, help="Print them as data.")
def command(variety: str, as_json: bool) -> None:
    """List the traits of VARIETY: name, kind and range, which way is better, how it changes as the fish grows.

    A rule file in place of VARIETY lists the traits of its variety and its own house traits.
    """
    found = _of_rules(variety) if variety.endswith(".koi") else variety_named(variety)
    if as_json:
        click.echo(json.dumps([_as_data(trait) for trait in found.traits.values()], indent=1))
        return
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    console = Console(highlight=False, width=None if sys.stdout.isatty() else 140)
    table = Table(
        box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False, title=Text(shown(f"{found.title}: {len(found.traits)} traits"))
    )
    for heading in ("trait", "kind", "better", "with growth"):
        table.add_column(heading, overflow="fold")
    table.add_column("what it is", overflow="fold", ratio=1)
    for trait in found.traits.values():
        told = (trait.name, describe_kind(trait.kind), trait.better.value, trait.growth.value)
        table.add_row(*(Text(shown(cell)) for cell in (*told, f"{trait.title}. {trait.describe}")))
    console.print(table)


def variety_named(name: str) -> Variety:
    """An installed variety; ends the command where there is none of that name."""
    varieties = registry().varieties
    found = varieties.get(name)
    if found is None:
        guess = near(name, varieties)
        mend = f'Did you mean "{guess}"?' if guess else f"Installed: {', '.join(varieties)}."
        stop(f'No variety "{shown(name)}" is installed. {mend}')
    return found


def _of_rules(rules: str) -> Variety:
    standard = standard_from(rules)
    return Variety(standard.variety or "", standard.title, standard.traits)


def _as_data(trait: Trait) -> dict[str, object]:
    return {
        "name": trait.name,
        "title": trait.title,
        "kind": describe_kind(trait.kind),
        "better": trait.better.value,
        "growth": trait.growth.value,
        "describe": trait.describe,
        "titles": dict(trait.titles),
    }
