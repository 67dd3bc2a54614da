"""`koirules sheet`: a blank record sheet."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

import click
from attrs import evolve

from koirules.classes.placing import classes_read
from koirules.commands.inputs import registry, replace_option, rule_files_in, standard_from, stop_if_there
from koirules.commands.output import counted, show_problems, shown, stop
from koirules.commands.traits import variety_named
from koirules.problems.quoting import in_words
from koirules.records.columns import OWNER, STAGE, VARIETY
from koirules.records.sheet import Phrases, write_sheet
from koirules.records.table import FISH
from koirules.results.mapping_record import JUDGE, LOOK, LOOKED
from koirules.rounds.looks import DATE
from koirules.standard.parts import words_of_one_trait
from koirules.vocabulary.kinds import Colours, Label, Patches
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.subject import in_common
from koirules.vocabulary.traits import Better, Growth, Trait, Variety
from koirules.vocabulary.words import is_name

_COLUMNS = {
    JUDGE: "Whose record the row is, where several judges record. What is measured once stands in a row without a judge.",
    OWNER: "Whose fish it is. Judges and customers are not shown it.",
    VARIETY: "The variety of the fish, with its skins: kohaku, showa with ginrin.",
    STAGE: "fry, tosai, nisai or older, where standards of several stages grade the file.",
    DATE: "The day of the look: 2026-11-25. A fish may have a row for each day.",
    LOOK: "Which look of the sorting it is: 1, 2 and so on.",
    LOOKED: "yes where somebody looked at the fish, no where nobody did.",
}
_CALLED = {"exhibitor": OWNER, "entrant": OWNER, "keeper": OWNER, "breed": VARIETY, "referee": JUDGE, "day": DATE}
"""What the trade calls some of these columns."""
_OWN = (
    "A column of your own. Name it behind --label when you grade, or declare it in the rule file: `trait … as label`."
)


@click.command("sheet")
@click.argument("variety", metavar="[VARIETY [with SKIN…]]", nargs=-1)
@click.option("--out", required=True, type=click.Path(), metavar="FILE", help="Where to write it (.xlsx or .csv).")
@click.option("--rules", metavar="RULES", help="Take only the traits that this standard reads, its house traits too.")
@click.option(
    "--with",
    "columns",
    multiple=True,
    metavar="COLUMN",
    help="Add a column: judge, owner, variety, stage, date, look or looked, or a name of your own.",
)
@click.option("--maps", is_flag=True, help="Add the maps and colour readings that photographs give; nobody types them.")
@replace_option
@click.option(
    "--fish", default=200, show_default=True, type=click.IntRange(1, 100_000), help="How many rows to prepare."
)
def command(
    variety: tuple[str, ...],
    out: str,
    rules: str | None,
    columns: tuple[str, ...],
    maps: bool,
    replace: bool,
    fish: int,
) -> None:
    """Make a blank record sheet for VARIETY, or for the standard RULES.

    It has a column a trait, with drop-downs, number checks and notes. Maps of the red have none: their shares are recorded
    by eye in columns of their own.
    """
    stop_if_there([out], replace=replace)
    if len(variety) == 1 and rules is None and _is_standard(variety[0]):
        rules = variety[0]
        variety = ()
    phrases: Phrases = {}
    if rules is not None:
        found, phrases = _read_by_any(rules, variety)
    elif variety:
        found = variety_named(variety)
    else:
        stop("Name a variety, or a standard with --rules RULES.")
    whole, found = found, _for_people(found, columns, maps=maps)
    problem = write_sheet(Path(out), found, fish=fish, phrases=phrases)
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(out)}: {counted(len(found.traits), 'column')}, a row for each {found.subject.one}.")
    left_out = [name for name in whole.traits if name not in found.traits]
    if left_out:
        click.echo(
            f"Without {in_words(left_out, 'and')}, which photographs give; --maps adds {'it' if len(left_out) == 1 else 'them'}."
        )


def _is_standard(name: str) -> bool:
    """Whether a word names a rule file or a rule set, and no variety."""
    return name.endswith(".koi") or name in registry().rulesets or Path(name).is_dir()


def _for_people(variety: Variety, columns: Sequence[str], *, maps: bool) -> Variety:
    """A variety with the traits that people fill in, behind the other columns that were asked for."""
    more = dict(_column_named(name, variety.traits) for name in columns)
    traits = {name: one for name, one in variety.traits.items() if maps or not isinstance(one.kind, Patches | Colours)}
    return evolve(variety, traits=more | traits)


def _column_named(word: str, traits: Mapping[str, Trait]) -> tuple[str, Trait]:
    """A column that is no trait, by its name or by what the trade calls it. Ends the command where a trait has that name."""
    name = _CALLED.get(folded(word), folded(word))
    if name in traits or not is_name(name) or name == FISH:
        stop(f'"{shown(word)}" is no column to add: {"the sheet has it" if name in traits else "write one word"}.')
    return name, Trait(name, name, Label(), Better.NEITHER, Growth.FIXED, _COLUMNS.get(name, _OWN))


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
