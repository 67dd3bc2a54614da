"""`koirules traits`: what rules and records can name."""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Mapping, Sequence

import click

from koirules.commands.inputs import registry, standard_from
from koirules.commands.output import shown, stop
from koirules.vocabulary.joining import join
from koirules.vocabulary.kinds import describe_kind
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import Varieties, clashes, lay_over, name_with
from koirules.vocabulary.traits import Trait, Variety


@click.command("traits")
@click.argument("variety", metavar="VARIETY [with SKIN…]", nargs=-1, required=True)
@click.option("--json", "as_json", is_flag=True, help="Print them as data.")
def command(variety: tuple[str, ...], as_json: bool) -> None:
    """List the traits of VARIETY: name, kind and range, which way is better, how it changes as the fish grows.

    `showa with ginrin` lists those of a variety and of a skin that lies over it. A rule file in place of VARIETY lists the
    traits of its variety and its own house traits; the name of a skin, or of a vocabulary that varieties include, such as
    `shared`, those of it alone.
    """
    found = _found(variety)
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


def _found(words: Sequence[str]) -> Variety:
    if len(words) == 1 and words[0].endswith(".koi"):
        return _of_rules(words[0])
    plugins = registry()
    if len(words) == 1 and words[0] in plugins.vocabularies and words[0] not in plugins.varieties:
        return join(plugins.vocabularies[words[0]], plugins.vocabularies)
    return _named(words, plugins.varieties)


def variety_named(words: Sequence[str]) -> Variety:
    """The installed variety that the words of a command name, with its skins: `showa`, `showa with ginrin`.

    Ends the command where it is not there, or where a skin does not fit.
    """
    return _named(words, registry().varieties)


def _named(words: Sequence[str], varieties: Varieties) -> Variety:
    name, *rest = re.findall(r"[^\s(),]+", " ".join(words)) or [""]
    found = varieties.get(name)
    if found is None and name in varieties.skins:
        stop(f'"{shown(name)}" is a skin, which lies over a variety: write VARIETY with {shown(name)}.')
    if found is None:
        stop(f'No variety "{shown(name)}" is installed. {_mend(name, varieties)}')
    if rest and rest[0] != "with":
        stop(f"Name one variety, and its skins after `with`: {shown(name)} with {shown(rest[0])}.")
    if rest == ["with"]:
        stop("Name the skin after `with`.")
    for position, skin in enumerate(rest[1:], start=2):
        if skin in rest[1 : position - 1]:
            stop(f'The skin "{shown(skin)}" stands here twice.')
        found = _under(found, skin, name_with(name, rest[1:position]), varieties)
    return found


def _under(found: Variety, skin: str, name: str, varieties: Varieties) -> Variety:
    if skin not in varieties.skins:
        stop(f'No skin "{shown(skin)}" is installed. {_mend(skin, varieties.skins)}')
    for why in clashes(found, varieties.skins[skin]):
        stop(f'The skin "{shown(skin)}" cannot lie over {shown(found.name)}: {why}.')
    return lay_over(found, varieties.skins[skin], name)


def _mend(name: str, known: Mapping[str, Variety]) -> str:
    guess = near(name, known)
    return f'Did you mean "{guess}"?' if guess else f"Installed: {', '.join(known) or 'none'} (`koirules varieties`)."


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
