"""`koirules plugins`: what is installed, and from where."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Sequence
from itertools import chain
from pathlib import Path

import click
from attrs import asdict, evolve

from koirules.api import load_standard
from koirules.commands import COMMANDS
from koirules.commands.inputs import registry
from koirules.commands.output import counted, show_problems, shown
from koirules.commands.plugged import taken_by_koirules
from koirules.loading.opening import earlier_editions
from koirules.loading.reading import header_of
from koirules.plugins import Registry
from koirules.plugins.finding import written_in
from koirules.problems import Cell, Problem, StandardError, measuring
from koirules.problems.quoting import quoted
from koirules.standard.check.header import said_of
from koirules.standard.check.phrasing import phrases_left_out, sayings_left_out
from koirules.standard.measured import formulas_left_out, unsound_formulas
from koirules.values import frozen
from koirules.vocabulary.measures import Formula
from koirules.vocabulary.traits import Addition, Variety


@frozen
class _Row:
    """A variety or a skin."""

    name: str
    title: str
    describe: str
    traits: int
    source: str


@frozen
class _RuleSet:
    """A rule set, with what its header says; an empty word where it says nothing or cannot be read.

    earlier: the editions before this one that are kept.
    """

    name: str
    title: str
    edition: str
    variety: str
    stage: str
    source: str
    file: str
    earlier: tuple[str, ...]


@frozen
class _Given:
    """Anything else that a plugin gives."""

    kind: str
    name: str
    what: str
    source: str


@click.command("plugins")
@click.option("--json", "as_json", is_flag=True, help="Print them as data.")
def command(as_json: bool) -> None:
    """List what is installed, and from which distribution and version.

    These are the varieties, the skins that lie over them, their rule sets, and what else plugins give: commands, formats of
    records and results, drawings, units, and what they add to varieties of others. A plugin that had to be left out is named
    first, with what is wrong with it.
    """
    plugins = registry()
    clashes = taken_by_koirules(plugins, COMMANDS)
    unread = [*_formulas(plugins), *_phrases(plugins)]
    show_problems((*clashes, *unread))
    varieties = _rows(plugins.varieties.values(), plugins)
    skins = _rows(plugins.varieties.skins.values(), plugins)
    rule_sets = _rule_sets(plugins)
    others = [one for one in _others(plugins) if one.kind != "command" or one.name not in COMMANDS]
    if as_json:
        left_out = [
            {"plugin": str(problem.site), "code": problem.code, "cause": problem.cause, "mend": problem.mend}
            for problem in (*plugins.problems, *clashes, *unread)
        ]
        data = {
            "varieties": [asdict(row) for row in varieties],
            "skins": [asdict(row) for row in skins],
            "rule_sets": [asdict(one) for one in rule_sets],
            "others": [asdict(one) for one in others],
            "left_out": left_out,
        }
        click.echo(json.dumps(data, indent=1))
        return
    _print(varieties, skins, rule_sets, others)


def _others(plugins: Registry) -> list[_Given]:
    return [
        *(_Given("command", name, one.what.help, one.source) for name, one in plugins.subcommands.items()),
        *(_Given("records", ending, one.what.title, one.source) for ending, one in plugins.readers.items()),
        *(_Given("results", ending, one.what.title, one.source) for ending, one in plugins.writers.items()),
        *(
            _Given("drawing", name, f"draws {_subjects_of(name, plugins)}", one.source)
            for name, one in plugins.drawings.items()
        ),
        *(_Given("unit", name, f"1 {name} is {one.what.told}", one.source) for name, one in plugins.units.items()),
        *(_Given("addition", one.what.to, _added(one.what), one.source) for one in plugins.additions),
    ]


def _subjects_of(drawing: str, plugins: Registry) -> str:
    """What a drawing draws, in the plural: the nouns of the subjects that name it."""
    nouns = (one.subject.many for one in plugins.varieties.values() if one.subject.drawing == drawing)
    return ", ".join(dict.fromkeys(nouns)) or "nothing that is installed"


def _formulas(plugins: Registry) -> list[Problem]:
    """What is wrong with the formulas of varieties: the other commands read them only where a rule file names the variety."""
    added_by = {measure: one.source for one in plugins.additions for measure in one.what.measures}
    told: dict[Formula | str, Problem] = {}
    for name, variety in plugins.varieties.items():
        source = plugins.sources[name]
        for problem in unsound_formulas(variety):
            place = _place_of(problem, variety, plugins)
            cause = f"{problem.cause} {place}".rstrip()
            told.setdefault(problem.cause, evolve(problem, site=Cell(f"plugin {source}"), cause=cause, warning=True))
        for one in formulas_left_out(variety):
            site = Cell(f"plugin {added_by.get(one, source)}")
            told.setdefault(one, measuring.formula_of_no_trait(site, one.trait, one.expression))
    return [*told.values()]


def _place_of(problem: Problem, variety: Variety, plugins: Registry) -> str:
    """Where in the code of its plugin the formula stands that a problem speaks of, as a sentence; "" where nobody can tell."""
    formulas = (one.expression for one in variety.measures if isinstance(one, Formula))
    meant = next((one for one in formulas if quoted(one) in problem.cause), None)
    found = None if meant is None else written_in(meant, plugins.modules)
    return "" if found is None else f"It stands in {found[0]}, line {found[1]}."


def _phrases(plugins: Registry) -> list[Problem]:
    """What is wrong with the phrases and sayings of varieties and skins, each told once."""
    told: dict[str, Problem] = {}
    for name, variety in (*plugins.varieties.items(), *plugins.varieties.skins.items()):
        site = Cell(f"plugin {plugins.sources[name]}")
        wrong = sayings_left_out(site, variety.sayings, variety.traits)
        if name in plugins.varieties:  # those of a skin may speak of what it lies over
            wrong = chain(wrong, phrases_left_out(site, variety.phrases, variety.traits))
        for problem in wrong:
            told.setdefault(problem.cause, problem)
    return [*told.values()]


def _added(addition: Addition) -> str:
    counts = (
        (len(addition.traits), "trait"),
        (len(addition.measures), "measure"),
        (len(addition.constants), "constant"),
        (len(addition.phrases), "phrase"),
    )
    return ", ".join(counted(count, what) for count, what in counts if count)


def _rows(varieties: Iterable[Variety], plugins: Registry) -> list[_Row]:
    return [_Row(one.name, one.title, one.describe, len(one.traits), plugins.sources[one.name]) for one in varieties]


def _rule_sets(plugins: Registry) -> list[_RuleSet]:
    return [
        _RuleSet(
            name,
            *_words_of(name, path, plugins),
            plugins.ruleset_sources[name],
            str(path),
            earlier_editions(name, plugins.rulesets),
        )
        for name, path in plugins.rulesets.items()
    ]


def _words_of(name: str, path: Path, plugins: Registry) -> tuple[str, str, str, str]:
    """The title, edition, variety and stage of a rule set, "" for what it does not say or cannot be read."""
    header = header_of(path)
    if header is None:
        return "", "", "", ""
    if header.based_on is not None:
        # What its own header leaves out stands in that of its base.
        try:
            rules = load_standard(name, plugins).rules
        except StandardError:
            return "", "", "", ""
        return rules.title.text, rules.edition, rules.variety or "", rules.stage or ""
    edition = "" if header.edition is None else header.edition.text
    return header.title.text, edition, said_of(header), "" if header.stage is None else header.stage.text


def _print(varieties: list[_Row], skins: list[_Row], rule_sets: list[_RuleSet], others: list[_Given]) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    console = Console(highlight=False, width=None if sys.stdout.isatty() else 140)

    def table(headings: tuple[str, ...], rows: Sequence[tuple[str, ...]]) -> None:
        made = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
        for heading in headings:
            made.add_column(heading, overflow="fold")
        for row in rows:
            made.add_row(*(Text(shown(cell)) for cell in row))
        console.print(made)

    for heading, listed in (("variety", varieties), ("skin, after `with`", skins)):
        if listed:
            rows = [(one.name, one.describe, counted(one.traits, "trait"), one.source) for one in listed]
            table((heading, "what it is", "traits", "from"), rows)
    named = [(one.variety, one.stage, one.name, _told(one), one.source) for one in rule_sets]
    table(("variety", "stage", "rule set", "what it is", "from"), sorted(named))
    if others:
        rows_of_others = [(one.kind, one.name, one.what, one.source) for one in others]
        table(("also", "name", "what it is", "from"), rows_of_others)


def _told(one: _RuleSet) -> str:
    if not one.title:
        return f"cannot be read: `koirules check {one.name}` says why"
    kept = f"; earlier: {', '.join(one.earlier)}" if one.earlier else ""
    return f"{one.title}, edition {one.edition}{kept}"
