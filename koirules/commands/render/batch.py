"""A graded batch as the command prints it: alerts, the table, the totals, the rounds."""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Sequence

import click

from koirules.api import Standard
from koirules.classes.placing import GROUP, SIZE
from koirules.commands.inputs import Graded, setting_words, shown_titles, standard_words
from koirules.commands.output import counted, shown
from koirules.commands.render.changes import wrapped
from koirules.commands.render.rounds import tell_alerts, tell_rounds
from koirules.report.figures import figure
from koirules.results.ranking import best_first
from koirules.results.result import Result

_MOST_OUTSIDE = 20
_MOST_LOOKED_AT = 20


def tell_batch(standard: Standard, batch: Graded, *, as_recorded: bool) -> None:
    """Print all that came of a batch by one standard."""
    listed = list(batch.results) if as_recorded else best_first(standard.grades, batch.results)
    tell_alerts(batch.outcome.alerts)
    tell_outside(batch.results)
    print_table(standard, listed)
    print_totals(standard, batch)
    tell_rounds(batch.outcome.rounds, batch.results)
    tell_look_again(batch.results)


def tell_outside(results: Sequence[Result]) -> None:
    """Print which fish are placed nowhere, and why."""
    outside = [result for result in results if result.outside]
    if outside:
        told = "; ".join(f"{result.fish}: {result.outside}" for result in outside[:_MOST_OUTSIDE])
        more = f"; and {len(outside) - _MOST_OUTSIDE:,} more" if len(outside) > _MOST_OUTSIDE else ""
        fish = counted(len(outside), "fish is", "fish are")
        click.echo(click.style(wrapped(shown(f"! {fish} placed nowhere. {told}{more}")), bold=True))


def tell_look_again(results: Sequence[Result]) -> None:
    """Print what was recorded and is unlikely; nothing was changed by it."""
    found = [(result.fish, one) for result in results for one in result.look_again]
    if found:
        click.echo()
        click.echo(click.style("Look again (graded as recorded)", bold=True))
    for fish, one in found[:_MOST_LOOKED_AT]:
        click.echo(wrapped(shown(f"{fish}: {one.words}")))
    if len(found) > _MOST_LOOKED_AT:
        click.echo(f"  … and {len(found) - _MOST_LOOKED_AT:,} more (see a file of results)")


def score_words(result: Result) -> str:
    """A score or its range: `71.25`, `40.5 to 78`."""
    return figure(result.score_low, result.score_high)


def print_table(standard: Standard, results: Sequence[Result]) -> None:
    """Print each fish with its grade, its score and the reasons that mattered most."""
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
    table.add_column("fish", no_wrap=True, overflow="fold")
    table.add_column("grade", overflow="fold", min_width=6, max_width=16)
    scored = bool(standard.rules.sections)
    if scored:
        table.add_column("score", justify="right", no_wrap=True)
    classed = [name for name in (GROUP, SIZE) if any(name in result.labels for result in results)]
    if classed:
        table.add_column("class", overflow="fold", max_width=24)
    table.add_column("why", overflow="fold", ratio=1)
    titles = shown_titles(standard)
    for result in results:
        grades = " or ".join(titles[name] for name in result.possible)
        style = "bold" if result.grade == standard.grades[0] else ""
        cells = [Text(shown(result.fish)), Text(shown(grades), style=style), Text(score_words(result))]
        if not scored:
            cells.pop()
        if classed:
            cells.append(Text(shown(" ".join(result.labels.get(name, "?") for name in classed))))
        table.add_row(*cells, Text(shown(result.why)))
    console.print(table)


def print_totals(standard: Standard, batch: Graded) -> None:
    """Print how many fish have each grade, and which of them a person decided."""
    settled = Counter(result.grade for result in batch.results if result.grade is not None)
    still_open = Counter(result.possible for result in batch.results if result.grade is None)
    click.echo(
        f"{counted(len(batch.results), 'fish', 'fish')} {standard_words(standard)}"
        + "".join(f"; {name} = {setting_words(standard, name)}" for name in standard.changed)
    )
    titles = shown_titles(standard)
    width = max(len("not settled"), *(len(title) for title in titles.values()))
    for name in standard.grades:
        click.echo(f"  {titles[name]:<{width}}  {settled[name]:>5}")
    if still_open:
        click.echo(f"  {'not settled':<{width}}  {sum(still_open.values()):>5}")
        for possible, count in still_open.most_common():
            click.echo(f"    {count:>3} could be {' or '.join(titles[name] for name in possible)}")
    _print_silence(batch.results)
    _print_decided(titles, batch)


def _print_silence(results: Sequence[Result]) -> None:
    """How many grades rest on what nobody mentioned, where any does."""
    resting = sum(result.rests_on_silence for result in results)
    if resting:
        most = ": most of the lot. Look again where it matters" if 2 * resting > len(results) else ""
        click.echo(f"  rest on what nobody mentioned: {resting} of {len(results)}{most}")


def _print_decided(titles: dict[str, str], batch: Graded) -> None:
    decided = [result for result in batch.results if result.decision is not None]
    if decided:
        click.echo(f"  decided by hand, and counted above: {len(decided)}")
    for result in decided:
        if result.decision is not None:
            rules = " or ".join(titles[name] for name in result.by_rules)
            words = (
                f"{result.fish}: {result.grade}, by the rules {rules}; {result.decision.by}: {result.decision.reason}"
            )
            click.echo(f"    {shown(words)}")
