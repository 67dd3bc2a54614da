"""`koirules classes`: a table of classes, and the class of each fish."""

from __future__ import annotations

import json
import sys
from collections.abc import Sequence
from pathlib import Path

import click

from koirules.classes.placing import counted, not_understood, place
from koirules.classes.table import ClassTable
from koirules.commands.classing import class_table, measure_among, said_of
from koirules.commands.grade_files import is_large
from koirules.commands.inputs import registry, replace_option, stop_if_there
from koirules.commands.output import show_problems, shown, stop, stop_if_refused
from koirules.commands.traits import variety_named
from koirules.plugins import Registry
from koirules.records.class_files import Classed, as_data, read_for_classes, write_classes
from koirules.records.columns import VARIETY
from koirules.records.told_records import cell_of
from koirules.results.record import Record
from koirules.vocabulary.spoken import Said, known, said
from koirules.vocabulary.subject import Subject, in_common
from koirules.vocabulary.traits import Trait


@click.command("classes")
@click.argument("table")
@click.argument("files", metavar="[RECORDS]", type=click.Path(), nargs=-1)
@click.option("--variety", metavar="VARIETY", help="Of all fish, where the records have no column `variety`.")
@click.option("--out", type=click.Path(), metavar="FILE", help="Write the class of each fish (.csv or .json).")
@click.option("--json", "as_json", is_flag=True, help="Print them as data.")
@replace_option
def command(
    table: str, files: tuple[str, ...], variety: str | None, out: str | None, as_json: bool, replace: bool
) -> None:
    """Show the classes of TABLE, a .toml file or the name of a shipped one, or put each fish of RECORDS into its class.

    The group follows from the column `variety`, the size from what the table measures. A fish that was measured as what it
    could be may fall into several sizes.
    """
    stop_if_there([] if out is None else [out], replace=replace)
    records = _one_file(files)
    plugins = registry()
    found = class_table(table, plugins.varieties)
    if records is None:
        if out is not None or as_json:
            stop("Name a file of records that go into classes.")
        _show(found)
        return
    traits = {name: trait for one in plugins.varieties.values() for name, trait in one.traits.items()}
    measure = measure_among(found, traits)
    read, problems = read_for_classes(Path(records), measure)
    everybody = None if variety is None else said(variety_named(variety.split()).name, plugins.varieties)
    words = [(record.row, known(record.labels.get(VARIETY, ""))) for record in read]
    stop_if_refused([*problems, *not_understood(found, words, plugins.varieties, records)])
    fish = [_classed(found, record, measure, everybody, plugins) for record in read]
    if out is not None:
        problem = write_classes(Path(out), fish, found.title, found.edition)
        if problem is not None:
            show_problems([problem])
            stop("Nothing was written.")
        click.echo(f"Wrote {shown(out)}.", err=as_json)
    if as_json:
        click.echo(json.dumps(as_data(fish, found.title, found.edition), indent=1))
    else:
        spoken = [plugins.varieties[one.variety] for one in fish if one.variety in plugins.varieties]
        subject = in_common(one.subject for one in spoken or plugins.varieties.values())
        _show_fish(found, fish, subject)


def _one_file(files: tuple[str, ...]) -> str | None:
    """The file of records, None where there is none; ends the command where whole files were named, or several."""
    if len(files) > 1 or (files and is_large(files, ())):
        stop("Classes are given from one file of records, .csv, .xlsx or .jsonl, of at most 20 MB. Give one at a time.")
    return files[0] if files else None


def _classed(
    table: ClassTable, record: Record, measure: Trait | None, everybody: Said | None, plugins: Registry
) -> Classed:
    words = said_of(record, plugins.varieties, everybody)
    reading = None if measure is None else record.readings.get(measure.name)
    measured = "" if measure is None or reading is None else cell_of(measure, reading)
    variety = words.name if isinstance(words, Said) else words or ""
    return Classed(record.fish, variety, measured, place(table, words, reading))


def _show(table: ClassTable) -> None:
    click.echo(click.style(f"{shown(table.title)}, edition {shown(table.edition)}", bold=True))
    for note in table.notes:
        click.echo(shown(note))
    if table.sizes is not None:
        click.echo(f"\nSizes, by {shown(table.sizes.trait)}, {table.sizes.told_rounding()}:")
        width = max(len(shown(size.title)) for size in table.sizes.sizes)
        for size in table.sizes.sizes:
            click.echo(f"  {shown(size.title):<{width}}  {table.sizes.told(size)}")
    if table.groups:
        click.echo("\nGroups:")
        width = max(len(shown(group.name)) for group in table.groups)
        for group in table.groups:
            parts = [*group.varieties, *(f"any other with {skin}" for skin in group.skins)]
            parts += ["whatever no group names"] if group.others else []
            click.echo(f"  {shown(group.name):<{width}}  {shown(', '.join(parts))}")


def _show_fish(table: ClassTable, fish: Sequence[Classed], subject: Subject) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    made = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
    measured = "measured" if table.sizes is None else f"{table.sizes.trait}"
    for heading in (subject.one, "variety", measured, "group", "size"):
        made.add_column(heading, overflow="fold")
    for one in fish:
        cells = (one.fish, one.variety, one.measured, one.placed.group, one.placed.size)
        made.add_row(*(Text(shown(cell)) for cell in cells))
    console.print(made)
    click.echo(f"{subject.counted(len(fish))} by {shown(table.title)}, edition {shown(table.edition)}")
    for (group, size), number in counted([one.placed for one in fish]).items():
        words = f"{group or 'group not known'}, {'size ' + size if size else 'not measured'}"
        click.echo(f"  {number:>4}  {shown(words)}")
