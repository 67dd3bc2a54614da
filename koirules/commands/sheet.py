"""`koirules sheet`: a blank record sheet."""

from __future__ import annotations

from pathlib import Path

import click

from koirules.classes.placing import classes_read
from koirules.commands.inputs import replace_option, rule_files_in, standard_from, stop_if_there
from koirules.commands.output import counted, show_problems, shown, stop
from koirules.commands.traits import variety_named
from koirules.records.sheet import Phrases, write_sheet
from koirules.standard.parts import words_of_one_trait
from koirules.vocabulary.subject import in_common
from koirules.vocabulary.traits import Trait, Variety


@click.command("sheet")
@click.argument("variety", metavar="[VARIETY [with SKIN…]]", nargs=-1)
@click.option("--out", required=True, type=click.Path(), metavar="FILE", help="Where to write it (.xlsx or .csv).")
@click.option("--rules", metavar="RULES", help="Take only the traits that this standard reads, its house traits too.")
@replace_option
@click.option(
    "--fish", default=200, show_default=True, type=click.IntRange(1, 100_000), help="How many rows to prepare."
)
def command(variety: tuple[str, ...], out: str, rules: str | None, replace: bool, fish: int) -> None:
    """Make a blank record sheet for VARIETY, or for the standard RULES.

    It has a column a trait, with drop-downs, number checks and notes.
    """
    stop_if_there([out], replace=replace)
    if len(variety) == 1 and variety[0].endswith(".koi") and rules is None:
        rules = variety[0]
        variety = ()
    phrases: Phrases = {}
    if rules is not None:
        found, phrases = _read_by_any(rules, variety)
    elif variety:
        found = variety_named(variety)
    else:
        stop("Name a variety, or a standard with --rules RULES.")
    problem = write_sheet(Path(out), found, fish=fish, phrases=phrases)
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(out)}: {counted(len(found.traits), 'trait')}, a row for each {found.subject.one}.")


def _read_by_any(rules: str, variety: tuple[str, ...]) -> tuple[Variety, Phrases]:
    """The traits that the standards of a folder read, together; of a file those of its one standard."""
    files = rule_files_in(Path(rules))
    if not files:
        return _read_by(rules, variety)
    read = [_read_by(file, ()) for file in files]
    traits: dict[str, Trait] = {}
    for file, (one, _) in zip(files, read, strict=True):
        for name, trait in one.traits.items():
            if traits.setdefault(name, trait).kind != trait.kind:
                stop(
                    f'The rule files of {shown(rules)} mean different things by "{shown(name)}"; {shown(file)} is one of them.'
                )
    about = in_common(one.subject for one, _ in read)
    phrases: dict[str, tuple[str, ...]] = {}
    for name, words in (pair for _, each in read for pair in each.items()):
        phrases[name] = tuple(dict.fromkeys((*phrases.get(name, ()), *words)))
    return Variety("", Path(rules).name, traits, subject=about), phrases


def _read_by(rules: str, variety: tuple[str, ...]) -> tuple[Variety, Phrases]:
    """The traits that a standard reads, and those that they follow from; a variety named beside it must be its own."""
    standard = standard_from(rules)
    if variety and standard.varieties and variety_named(variety).name not in standard.varieties:
        stop(f'{shown(rules)} is not for the variety "{shown(" ".join(variety))}".')
    read = standard.grader.traits_to_record() - classes_read(standard.traits)
    traits = {name: trait for name, trait in standard.traits.items() if name in read}
    found = Variety(standard.variety or "", standard.title, traits, subject=standard.rules.subject)
    return found, words_of_one_trait(standard.rules.phrases)
