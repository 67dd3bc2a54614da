"""Tells of a made-up fish: where it is other than an ordinary one, and what it gets."""

from __future__ import annotations

import sys
from collections.abc import Mapping, Sequence
from decimal import Decimal

import click

from koirules.api import Standard
from koirules.commands.output import shown
from koirules.vocabulary.readings import Reading, write_reading
from koirules.vocabulary.traits import Trait

Row = tuple[str, Sequence[str]]


def written(trait: Trait | None, reading: Reading | None) -> str:
    """A reading as a record has it; `not recorded` where there is none."""
    if reading is None:
        return "not recorded"
    return str(reading) if trait is None else write_reading(trait.kind, reading)


def differences(
    traits: Mapping[str, Trait], ordinary: Mapping[str, Reading], fish: Sequence[Mapping[str, Reading]]
) -> list[Row]:
    """A row for each trait in which some fish is not ordinary: its name, and what each fish has."""
    names = dict.fromkeys([*ordinary, *(name for one in fish for name in one)])
    return [
        (name, [written(traits.get(name), one.get(name)) for one in fish])
        for name in names
        if any(one.get(name) != ordinary.get(name) for one in fish)
    ]


def outcome_words(standard: Standard, possible: Sequence[str], score: tuple[int, int]) -> str:
    """What a fish gets: its grade or grades, and its score."""
    low, high = (str(Decimal(end).scaleb(-2)) for end in score)
    titles = standard.grade_titles
    return f"{' or '.join(titles[name] for name in possible)}, {low if low == high else f'{low} to {high}'}"


def print_rows(rows: Sequence[Row], indent: int = 6) -> None:
    """Rows as a table without lines."""
    from rich.console import Console
    from rich.padding import Padding
    from rich.table import Table
    from rich.text import Text

    table = Table(box=None, padding=(0, 2, 0, 0), pad_edge=False, show_header=False)
    for name, values in rows:
        table.add_row(Text(shown(name)), *(Text(shown(value)) for value in values))
    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    with console.capture() as made:
        console.print(Padding(table, (0, 0, 0, indent)))
    for line in made.get().splitlines():
        click.echo(line.rstrip())
