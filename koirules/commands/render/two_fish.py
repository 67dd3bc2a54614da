"""Tells what put one fish above another."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from decimal import Decimal

import click

from koirules.api import Standard
from koirules.commands.inputs import shown_titles, standard_words
from koirules.commands.output import counted, shown
from koirules.commands.render.batch import score_words
from koirules.commands.render.changes import wrapped
from koirules.explain.side_by_side import Parting, Row, SideBySide, side_by_side
from koirules.results.ranking import best_first
from koirules.results.reason import Reason, State
from koirules.results.result import Result


def tell_two(standard: Standard, results: Sequence[Result]) -> None:
    """Two fish side by side, the better one first; their differences add up to that of their scores."""
    above, below = best_first(standard.grades, results)
    told = side_by_side(above, below)
    titles = shown_titles(standard)
    for result in (above, below):
        graded = " or ".join(titles[name] for name in result.possible)
        named = f"{standard.subject.begins} {shown(result.fish)}"
        click.echo(click.style(f"{named}: {graded}, score {score_words(result)}", bold=True))
    click.echo(standard_words(standard))
    click.echo(_standing(above, below))
    _tell_partings(told.partings, above, below)
    if standard.rules.sections:
        _table(standard, told)
    if above.score is None or below.score is None:
        click.echo("Where points are not settled, the least that they can be stands here.")


def _standing(above: Result, below: Result) -> str:
    one, other = shown(above.fish), shown(below.fish)
    if (above.possible[0], above.grade is None) != (below.possible[0], below.grade is None):
        turned = ", though not by its score" if above.score_low < below.score_low else ""
        by = "its grade" if above.grade is not None else "the best grade that it may get"
        return f"{one} stands above {other} by {by}{turned}."
    if above.score_low == below.score_low and above.score_high == below.score_high:
        return f"{one} and {other} stand level."
    by = "its score" if above.score_low != below.score_low else "the most that its score can be"
    return f"{one} stands above {other} by {by}."


def _tell_partings(partings: Sequence[Parting], above: Result, below: Result) -> None:
    if not partings:
        return
    click.echo(click.style("Faults and lifts that they do not share", bold=True))
    for parting in partings:
        for result, reason in ((above, parting.one), (below, parting.other)):
            if reason.state in {State.YES, State.HELD_BACK}:
                click.echo(f"  {shown(result.fish)}: {shown(reason.words)}")
    for result, listed in ((above, [one.one for one in partings]), (below, [one.other for one in partings])):
        still_open = "; ".join(shown(reason.title) for reason in listed if reason.state is State.OPEN)
        if still_open:
            click.echo(wrapped(f"{shown(result.fish)}, still open: {still_open}"))


def _table(standard: Standard, told: SideBySide) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    one, other = shown(told.one.fish), shown(told.other.fish)
    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False, show_footer=True)
    table.add_column("criterion", Text("score"), overflow="fold", ratio=2)
    table.add_column(Text(one), overflow="fold", ratio=1)
    table.add_column(Text(other), overflow="fold", ratio=1)
    table.add_column(Text(one), f"{told.one.score_low:.2f}", justify="right", overflow="fold", min_width=5)
    table.add_column(Text(other), f"{told.other.score_low:.2f}", justify="right", overflow="fold", min_width=5)
    table.add_column("apart", _signed(told.difference), justify="right", no_wrap=True)
    sections = {section.name: section.title.within(standard.language) for section in standard.rules.sections}
    differing = [row for row in told.rows if row.difference]
    for row in differing:
        label = row.title if row.one_reason is not None else f"{sections[row.section]}: {row.title}"
        cells = (label, _seen(row, row.one_reason), _seen(row, row.other_reason))
        points = (f"{row.one:.2f}", f"{row.other:.2f}", _signed(row.difference))
        table.add_row(*(Text(shown(cell)) for cell in cells), *points)
    Console(highlight=False, width=None if sys.stdout.isatty() else 120).print(table)
    alike = sum(row.one_reason is not None for row in told.rows) - sum(row.one_reason is not None for row in differing)
    if alike:
        click.echo(f"The same points for both: {counted(alike, 'criterion', 'criteria')}.")


def _seen(row: Row, reason: Reason | None) -> str:
    """What was read and given, without the label that stands beside it."""
    return "" if reason is None else reason.words.removeprefix(f"{row.title}: ")


def _signed(points: Decimal) -> str:
    return f"{points:+.2f}"
