"""Tells who moves from which grade to which between two editions."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from decimal import Decimal

import click

from koirules.analysis.diff.comparison import Comparison
from koirules.analysis.diff.moves import MOST_TRIED, Because, Move, Moves
from koirules.analysis.diff.parting import Outcome
from koirules.api import Standard
from koirules.commands.output import counted, shown
from koirules.commands.render.changes import wrapped
from koirules.vocabulary.kinds import shortest


def tell_moves(old: Standard, new: Standard, found: Comparison, moves: Moves) -> None:
    """Print the table of moves, then each fish that moved with the change that did it."""
    click.echo(click.style(f"\nWho moves, of {new.subject.counted(moves.graded)}", bold=True))
    stay, about = moves.graded - len(moves.moves), new.subject
    staying = counted(stay, f"{about.one} keeps its", f"{about.many} keep their")
    also = f", {moves.rescored:,} of them with another score" if moves.rescored else ""
    if not moves.moves:
        click.echo(f"  Nobody: {staying} grade{also}.")
    else:
        _table(
            ("by the old edition", "by the new edition", about.many),
            [
                (_grades(old, found.in_old_names(one)), _grades(new, other), f"{number:,}")
                for (one, other), number in sorted(moves.counts.items(), key=lambda each: _place(found, each[0]))
                if set(one) != set(other)
            ],
        )
        click.echo(f"  {staying} grade{also}.")
        click.echo()
        _table(
            (about.one, "by the old edition", "by the new edition", "because of"),
            [
                (
                    move.fish,
                    _outcome(old, found.in_old_names(move.old.possible), move.old),
                    _outcome(new, move.new.possible, move.new),
                    reason_words(move),
                )
                for move in moves.moves
            ],
        )
        if len(found.counting) > MOST_TRIED and not any(move.by for move in moves.moves):
            click.echo(f"  Of more than {MOST_TRIED} changes none is tried alone.")
    for one in moves.rounds:
        for word, fish in (("old", one.only_old), ("new", one.only_new)):
            if fish:
                names = ", ".join(shown(name) for name in fish)
                click.echo(wrapped(f"round {shown(one.round)}, kept by the {word} edition alone: {names}"))


def reason_words(move: Move) -> str:
    """By which changes a fish moved: `fault specks`, `bonus a or fault b, each alone`, `points a, points b, together`."""
    match move.because:
        case Because.ALONE:
            return move.by[0]
        case Because.EACH:
            return f"{' or '.join(move.by)}, each alone"
        case Because.TOGETHER:
            if len(move.by) < 2:
                return f"{move.by[0]} with others" if move.by else "several together"
            return f"{', '.join(move.by)}, together"


def _place(found: Comparison, pair: tuple[Sequence[str], Sequence[str]]) -> tuple[object, ...]:
    order = {name: i for i, name in enumerate(found.grades)}
    return tuple([order[name] for name in names] for names in pair)


def _grades(standard: Standard, names: Sequence[str]) -> str:
    titles = standard.grade_titles
    return " or ".join(titles[name] for name in names)


def _outcome(standard: Standard, names: Sequence[str], outcome: Outcome) -> str:
    low, high = (shortest(Decimal(end).scaleb(-2)) for end in outcome.score)
    return f"{_grades(standard, names)}, {low if low == high else f'{low} to {high}'}"


def _table(headings: Sequence[str], rows: Sequence[Sequence[str]]) -> None:
    from rich.console import Console
    from rich.padding import Padding
    from rich.table import Table
    from rich.text import Text

    table = Table(box=None, padding=(0, 2, 0, 0), pad_edge=False, header_style="")
    for heading in headings:
        table.add_column(heading, overflow="fold")
    for row in rows:
        table.add_row(*(Text(shown(cell)) for cell in row))
    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    with console.capture() as made:
        console.print(Padding(table, (0, 0, 0, 2)))
    for line in made.get().splitlines():
        click.echo(line.rstrip())
