"""Tells what would have changed the grade of a fish."""

from __future__ import annotations

import shutil
import sys
from collections.abc import Collection, Sequence
from typing import TYPE_CHECKING

import click

from koirules.api import Standard
from koirules.commands.inputs import shown_titles
from koirules.commands.output import shown
from koirules.results.result import Result

if TYPE_CHECKING:  # most commands wrap lines and tell no changes
    from koirules.candidates.changes import Change, NearestChanges

_MOST_CHANGES = 8


def tell_changes(standard: Standard, result: Result) -> None:
    """The smallest changes that would have given the next better grade, or that would have lost the best one."""
    nearest = result.nearest_changes()
    if not nearest.grade:
        return
    click.echo(click.style(_heading(standard, result, nearest), bold=True))
    if nearest.single:
        _table(standard, nearest.single[:_MOST_CHANGES], result.assumed)
        _rest(standard, nearest.single[_MOST_CHANGES:])
    else:
        click.echo("  no change of one trait" + ("" if nearest.double else ", and none of two that was tried"))
    if nearest.double:
        click.echo(f"  two traits together{', clearly less of each' if nearest.single else ''}:")
        _table(standard, nearest.double, result.assumed)
    if not nearest.searched_through:
        click.echo("  (the search was ended early: smaller changes, or further ones, may be missing)")


def wrapped(text: str) -> str:
    """A long line as a paragraph, no wider than the terminal."""
    width = min(110, shutil.get_terminal_size((112, 24)).columns - 2)
    return click.wrap_text(text, width, "  ", "    ")


def _heading(standard: Standard, result: Result, nearest: NearestChanges) -> str:
    title = shown_titles(standard)[nearest.grade]
    if nearest.loses:
        return f"What would have cost it {title}, the smallest change first"
    if len(result.possible) > 1:
        return f"What would have left {title} possible, the smallest change first"
    return f"What would have made it {title}, the smallest change first"


def _table(standard: Standard, changes: Sequence[Change], assumed: Collection[str]) -> None:
    from rich.console import Console
    from rich.padding import Padding
    from rich.table import Table
    from rich.text import Text

    plain = standard.grader.reasoner.teller.plain
    titles = shown_titles(standard)
    table = Table(box=None, padding=(0, 1), pad_edge=False, expand=True)
    table.add_column("change", overflow="fold", ratio=1, header_style="")
    table.add_column("then", overflow="fold", max_width=20, header_style="")
    table.add_column(
        f"as the {standard.subject.one} grows", overflow="fold", min_width=18, max_width=18, header_style=""
    )
    for change in changes:
        for i, move in enumerate(change.moves):
            look = "look at " if move.trait.name in assumed else ""
            told = f"{'and ' if i else ''}{look}{move.told(plain.trait(move.trait), exact=plain.exact)}"
            then = " or ".join(titles[name] for name in change.possible) if i == 0 else ""
            table.add_row(Text(shown(told)), Text(then), Text(move.prospect.value))
    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    console.print(Padding(table, (0, 0, 0, 2)))


def _rest(standard: Standard, changes: Sequence[Change]) -> None:
    """The traits whose changes would be larger, on a few lines."""
    if changes:
        plain = standard.grader.reasoner.teller.plain
        told = "; ".join(plain.trait(move.trait) for change in changes for move in change.moves)
        click.echo(wrapped(f"and larger ones: {shown(told)}"))
