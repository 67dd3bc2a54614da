"""`koirules traits`: what rules and records can name."""

from __future__ import annotations

import json
import re
import sys
import textwrap
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click

from koirules.commands.inputs import registry, standard_from
from koirules.commands.output import show_paragraph, show_problems, shown, stop
from koirules.records.writing import write_beside
from koirules.standard.check.growing import Growing
from koirules.standard.measured import in_common, measures_of
from koirules.vocabulary.expected import range_of
from koirules.vocabulary.joining import join
from koirules.vocabulary.kinds import Label, describe_kind, shortest
from koirules.vocabulary.measures import Formula, outputs_of
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import ANY_VARIETY, Varieties, clashes, lay_over, name_with
from koirules.vocabulary.spoken import said
from koirules.vocabulary.traits import Trait, Variety

if TYPE_CHECKING:
    from rich.console import RenderableType


@click.command("traits")
@click.argument("variety", metavar="VARIETY [with SKIN…]", nargs=-1, required=True)
@click.option("--names", is_flag=True, help="List the name of every trait, in groups.")
@click.option("--search", metavar="TEXT", help="List the traits in whose name, title or words TEXT stands.")
@click.option("--about", metavar="TRAIT", help="Tell all about one trait.")
@click.option(
    "--drawing", metavar="FILE", type=click.Path(), help="With --about: draw where on the fish it is looked at (.svg)."
)
@click.option("--all", "in_full", is_flag=True, help="List every trait in full, and what measures go by.")
@click.option("--json", "as_json", is_flag=True, help="Print them as data.")
def command(
    variety: tuple[str, ...],
    names: bool,
    search: str | None,
    about: str | None,
    drawing: str | None,
    in_full: bool,
    as_json: bool,
) -> None:
    """List the traits of VARIETY: what rules and records can name.

    By default it lists those to begin with: what a house standard of `koirules new` reads. `showa with ginrin` lists those
    of a variety and of a skin that lies over it. A rule file in place of VARIETY lists what it reads, and with --names
    the traits of its variety and its own; the name of a skin, or of a vocabulary that varieties include, such as
    `shared`, those of it alone.
    """
    asked = {
        "--names": names or None,
        "--search": search,
        "--about": about,
        "--all": in_full or None,
        "--json": as_json or None,
    }
    given = [name for name, value in asked.items() if value is not None]
    if len(given) > 1:
        stop(f"{given[0]} and {given[1]} cannot go together.")
    if drawing is not None and about is None:
        stop("--drawing needs --about TRAIT.")
    found = _found(variety)
    follows = _follows(found)
    growth = Growing(found.traits, measures_of(found))
    if as_json:
        click.echo(json.dumps([_as_data(trait, follows, growth) for trait in found.traits.values()], indent=1))
    elif about is not None:
        _tell(_trait(found, about), follows, growth, drawing)
    elif search is not None:
        _list_found(found, search, variety)
    elif in_full:
        _list_in_full(found, follows, growth)
    elif len(found.traits) <= _FEW and not names:
        _list_lines(found.traits.values())
    elif not names and (first := _to_begin_with(found, variety)):
        _list_first(found, first, of_rules=variety[0].endswith(".koi"))
    else:
        _list_names(found, follows)


_FEW = 24
"""So many traits are listed with a line each, and more by their names alone."""


def _to_begin_with(found: Variety, words: Sequence[str]) -> list[Trait]:
    """The traits that a rule file records, or a house standard to begin with; none of what no standard is for."""
    import koirules
    from koirules.commands.new import text_of

    plugins = registry()
    if words[0].endswith(".koi"):
        standard = standard_from(words[0])
    elif found.name.split()[0] in plugins.varieties:
        text = text_of("house", Path("house.koi"), found, plugins)
        standard = koirules.read_standard(text, registry=plugins)
    else:
        return []
    read = {*standard.grader.traits_to_record(), *standard.rules.house_traits}
    return [trait for name, trait in found.traits.items() if name in read]


def _own_of(found: Variety, first: Sequence[Trait]) -> list[Trait]:
    """What a variety has beside the traits of all, where a standard to begin with reads none of it."""
    shared = registry().varieties.shared
    common = {} if shared is None else shared.traits
    own = [trait for name, trait in found.traits.items() if name not in common and not isinstance(trait.kind, Label)]
    return [] if {one.name for one in own} & {one.name for one in first} else own


def _list_first(found: Variety, first: Sequence[Trait], *, of_rules: bool) -> None:
    why = "The rules read these" if of_rules else "Begin with these, as `koirules new` does"
    click.echo(shown(f"{found.title}: {len(found.traits)} traits. {why} ({len(first)}):"))
    _list_lines(first)
    own = [] if of_rules else _own_of(found, first)
    if own:
        click.echo(f"Its own, which other varieties lack ({len(own)}):")
        _list_lines(own[:_FEW])
    click.echo("--names lists all; --search TEXT finds by words; --about TRAIT explains one.")


def _list_names(found: Variety, follows: Mapping[str, str]) -> None:
    groups: dict[str, list[str]] = {
        "You look at": [],
        "You measure or write down": [],
        "Follows from others, where it is not written": [],
        "About the record": [],
    }
    looked, measured, derived, about = groups.values()
    for name, trait in found.traits.items():
        if isinstance(trait.kind, Label):
            about.append(name)
        elif name in follows:
            derived.append(name)
        else:
            (looked if trait.by_eye else measured).append(name)
    click.echo(shown(f"{found.title}: {len(found.traits)} traits"))
    for title, names in groups.items():
        if names:
            click.echo(click.style(f"{title} ({len(names)})", bold=True))
            for line in textwrap.wrap(", ".join(names), 78, break_long_words=False):
                click.echo(f"  {shown(line)}")
    click.echo("--search TEXT finds by words; --about TRAIT explains one; --all has all in full.")


def _list_lines(traits: Iterable[Trait]) -> None:
    rows = [
        (
            shown(one.name),
            shown(one.title),
            shown(textwrap.shorten(_in_short(one), 60, placeholder=" …")),
        )
        for one in traits
    ]
    wide = max((len(name) for name, _, _ in rows), default=0)
    for name, title, kind in rows:
        click.echo(f"{name:{wide}}  {title}: {kind}")


def _in_short(trait: Trait) -> str:
    return describe_kind(trait.kind).removeprefix("scale ")


def _list_found(found: Variety, text: str, variety: Sequence[str]) -> None:
    wanted = text.casefold()
    hits = [
        one
        for one in found.traits.values()
        if any(
            wanted in words.casefold()
            for words in (one.name, one.title, one.describe, describe_kind(one.kind), *one.titles.values())
        )
    ]
    if not hits:
        stop(
            f'No trait has "{shown(text)}" in its words. `koirules traits {shown(" ".join(variety))} --names` lists all names.'
        )
    _list_lines(hits)


def _trait(found: Variety, name: str) -> Trait:
    if name not in found.traits:
        guess = near(name, found.traits)
        mend = f'Did you mean "{guess}"?' if guess else "--search TEXT finds traits by their words."
        stop(f'There is no trait "{shown(name)}" in {shown(found.title)}. {mend}')
    return found.traits[name]


def _tell(trait: Trait, follows: Mapping[str, str], growth: Growing, drawing: str | None) -> None:
    from koirules.report.trait_drawing import has_drawing, trait_drawing

    if drawing is not None:
        if not has_drawing(trait.name):
            stop(f"There is no drawing for {trait.name}: no one place on the fish shows it.")
        if not drawing.lower().endswith(".svg"):
            stop(f"A drawing is written as SVG: let {shown(drawing)} end in .svg.")
        made = trait_drawing([trait.name], trait.title)
        problem = write_beside(Path(drawing), lambda passing: _write(passing, made))
        if problem is not None:
            show_problems([problem])
            stop("Nothing was written.")
    click.echo(click.style(shown(f"{trait.name}: {trait.title}"), bold=True))
    show_paragraph(shown(trait.describe))
    rows = {
        "is": describe_kind(trait.kind),
        "better": trait.better.value,
        "with growth": trait.growth.value + ("; can be asked grown" if growth.inputs(trait) else ""),
        "is had": "by eye" if trait.by_eye else "by measuring, or from a note",
        "follows from": follows.get(trait.name, ""),
        "source": trait.source,
        "other languages": ", ".join(f"{title} ({code})" for code, title in trait.titles.items()),
    }
    for title, words in rows.items():
        if words:
            for number, line in enumerate(textwrap.wrap(shown(words), 60)):
                click.echo(f"  {title if number == 0 else '':15}  {line}")
    if drawing is not None:
        click.echo(f"Wrote {shown(drawing)}.", err=True)
    elif has_drawing(trait.name):
        click.echo(f"--drawing {trait.name}.svg draws where on the fish it is.")


def _write(passing: Path, text: str) -> None:
    passing.write_text(text, encoding="utf-8")


def _list_in_full(found: Variety, follows: Mapping[str, str], growth: Growing) -> None:
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
        derived = f" Follows from {follows[trait.name]}, where it is not written." if trait.name in follows else ""
        grows = trait.growth.value + ("; can be asked grown" if growth.inputs(trait) else "")
        told = (trait.name, describe_kind(trait.kind), trait.better.value, grows)
        table.add_row(*(Text(shown(cell)) for cell in (*told, f"{trait.title}. {trait.describe}{derived}")))
    console.print(table)
    for source, names in _by_source(found).items():
        show_paragraph(shown(f"{source or 'Nothing is said of where these come from.'} ({', '.join(names)})"))
    if found.constants:
        console.print(_constants(found))


def _by_source(found: Variety) -> dict[str, list[str]]:
    """The names of the traits by where their meanings, ranges and words come from."""
    together: dict[str, list[str]] = {}
    for trait in found.traits.values():
        together.setdefault(trait.source, []).append(trait.name)
    return together


def _constants(found: Variety) -> RenderableType:
    """What measures go by; a standard sets one with a `setting` of its name."""
    from rich.box import SIMPLE_HEAD
    from rich.table import Table
    from rich.text import Text

    title = "What measures go by; a rule file changes it with a `setting` of its name"
    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False, title=Text(title))
    for heading in ("constant", "value", "range"):
        table.add_column(heading)
    table.add_column("what it is", overflow="fold", ratio=1)
    for one in found.constants:
        unit = f" {one.kind.unit.symbol}" if one.kind.unit else ""
        told = (one.name, f"{shortest(one.value)}{unit}", range_of(one.kind), f"{one.title}. {one.describe}")
        table.add_row(*(Text(shown(cell)) for cell in told))
    return table


def _follows(found: Variety) -> dict[str, str]:
    """What each derived trait follows from: its formula, or what its measure needs."""
    return {
        name: f"`{measure.expression}`" if isinstance(measure, Formula) else ", ".join(measure.inputs)
        for measure in found.measures
        for name in outputs_of(measure)
    }


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
    strange = name not in varieties or (rest and rest[0] != "with")
    if strange and (spoken := said(" ".join(words), varieties)) is not None:
        name, *rest = [spoken.variety, *(["with", *sorted(spoken.skins)] if spoken.skins else [])]
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
    return f'Did you mean "{guess}"?' if guess else f"Installed: {', '.join(known) or 'none'} (`koirules plugins`)."


def _of_rules(rules: str) -> Variety:
    standard = standard_from(rules)
    every = [variety_named([name]) for name in standard.varieties]
    if standard.variety == ANY_VARIETY and (shared := registry().varieties.shared) is not None:
        every = [shared]
    known = in_common(tuple(every), "") if every else None
    measures, constants = ((), ()) if known is None else (known.measures, known.constants)
    return Variety(standard.variety or "", standard.title, standard.traits, "", measures, constants)


def _as_data(trait: Trait, follows: Mapping[str, str], growth: Growing) -> dict[str, object]:
    return {
        "name": trait.name,
        "title": trait.title,
        "kind": describe_kind(trait.kind),
        "better": trait.better.value,
        "growth": trait.growth.value,
        "grown_to": growth.is_known(trait),
        "describe": trait.describe,
        "titles": dict(trait.titles),
        "source": trait.source,
        "follows_from": follows.get(trait.name),
    }
