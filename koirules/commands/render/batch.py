"""A graded batch as the command prints it: alerts, the table, the totals, the rounds."""

from __future__ import annotations

import shutil
import sys
from collections import Counter
from collections.abc import Sequence

import click

from koirules.api import Standard
from koirules.classes.placing import GROUP, SIZE
from koirules.commands.inputs import Graded, shown_titles, standard_words
from koirules.commands.output import show_paragraph, shown
from koirules.commands.render.changes import wrapped
from koirules.commands.render.rounds import tell_alerts, tell_rounds, tell_rounds_in_short
from koirules.results.ranking import best_first
from koirules.results.result import Result

_MOST_OUTSIDE = 20
_MOST_LOOKED_AT = 20
_MOST_IN_SHORT = 3
_BEST = 10
_MOST_UNREAD = 10
_FEW = 4
"""A batch of so few fish is listed in full."""


def is_short(batch: Graded, *, as_recorded: bool, in_full: bool) -> bool:
    """Whether only the best fish of a batch are listed, a line each."""
    return not (in_full or as_recorded or len(batch.results) <= _FEW)


def tell_batch(standard: Standard, batch: Graded, *, as_recorded: bool, in_full: bool = False) -> None:
    """Print what came of a batch by one standard.

    The best fish stand last, where a terminal of 24 lines still shows them. in_full: every fish, with its reasons.
    """
    listed = list(batch.results) if as_recorded else best_first(standard.grades, batch.results)
    tell_alerts(batch.outcome.alerts)
    tell_outside(standard, batch.results)
    tell_unread(standard, batch.results)
    if is_short(batch, as_recorded=as_recorded, in_full=in_full):
        print_short_totals(standard, batch)
        tell_rounds_in_short(batch.outcome.rounds)
        tell_look_again(batch.results, most=_MOST_IN_SHORT)
        print_best(standard, listed[:_BEST])
        rest = len(listed) - _BEST
        more = f"{rest:,} more: " if rest > 0 else ""
        click.echo(
            f"{more}--all lists every {standard.subject.one} with its reasons; `koirules why` tells all about one."
        )
        return
    print_table(standard, listed)
    print_totals(standard, batch)
    tell_rounds(batch.outcome.rounds, batch.results, standard.subject)
    tell_look_again(batch.results)


def tell_outside(standard: Standard, results: Sequence[Result]) -> None:
    """Print which fish are placed nowhere, and why."""
    outside = [result for result in results if result.outside]
    if outside:
        told = "; ".join(f"{result.fish}: {result.outside}" for result in outside[:_MOST_OUTSIDE])
        more = f"; and {len(outside) - _MOST_OUTSIDE:,} more" if len(outside) > _MOST_OUTSIDE else ""
        fish = f"{standard.subject.counted(len(outside))} {'is' if len(outside) == 1 else 'are'}"
        click.echo(click.style(wrapped(shown(f"! {fish} placed nowhere. {told}{more}")), bold=True))


def tell_look_again(results: Sequence[Result], most: int = _MOST_LOOKED_AT) -> None:
    """Print what was recorded and is unlikely, so many of it; nothing was changed by it."""
    found = [(result.fish, one) for result in results for one in result.look_again]
    if found:
        if most == _MOST_LOOKED_AT:
            click.echo()
        click.echo(click.style("Look again (graded as recorded)", bold=True))
    for fish, one in found[:most]:
        click.echo(wrapped(shown(f"{fish}: {one.words}")))
    if len(found) > most:
        where = "see a file of results" if most == _MOST_LOOKED_AT else "--all, or a file of results"
        click.echo(f"  … and {len(found) - most:,} more ({where})")


def print_best(standard: Standard, results: Sequence[Result]) -> None:
    """Print fish a line each: its grade, its score and as much of its reasons as the line holds."""
    titles = shown_titles(standard)
    rows = [
        (
            shown(result.fish),
            " or ".join(titles[name] for name in result.possible),
            score_words(result) if standard.rules.sections else "",
            " ".join(result.labels.get(name, "?") for name in (GROUP, SIZE) if name in result.labels),
            shown(result.why),
        )
        for result in results
    ]
    most = (14, 16, 14, 16)
    widths = [min(most[i], max(len(row[i]) for row in rows)) for i in range(4)] if rows else [0] * 4
    whole = min(120, shutil.get_terminal_size((100, 24)).columns)
    for row in rows:
        cells = [_fitted(cell, width) for cell, width in zip(row, widths, strict=False) if width]
        start = "  ".join(cells)
        click.echo(f"{start}  {_fitted(row[-1], max(10, whole - len(start) - 2)).rstrip()}")


def _fitted(text: str, width: int) -> str:
    """A text in a column of so many cells, cut where it is longer."""
    from rich.cells import cell_len, set_cell_size

    return set_cell_size(text, width) if cell_len(text) <= width else f"{set_cell_size(text, width - 1)}…"


def print_short_totals(standard: Standard, batch: Graded) -> None:
    """Print how many fish have each grade, on as many lines as it takes."""
    settled = Counter(result.grade for result in batch.results if result.grade is not None)
    titles = shown_titles(standard)
    again = Counter(result.grade for result in unread_in(batch.results))
    told = [f"{titles[name]} {settled[name]:,}{_again(again[name])}" for name in standard.grades]
    still_open = sum(result.grade is None for result in batch.results)
    told += [f"not settled {still_open:,}"] if still_open else []
    decided = sum(result.decision is not None for result in batch.results)
    told += [f"decided by hand {decided:,}, counted above"] if decided else []
    changed = "".join(f"; {name} = {standard.settings[name].words}" for name in standard.changed)
    show_paragraph(f"{standard.subject.counted(len(batch.results))} {standard_words(standard)}{changed}")
    show_paragraph(", ".join(told))


def score_words(result: Result) -> str:
    """A score or its range: `71.25`, `40.5 to 78`."""
    from koirules.report.figures import figure

    return figure(result.score_low, result.score_high)


def print_table(standard: Standard, results: Sequence[Result]) -> None:
    """Print each fish with its grade, its score and the reasons that mattered most."""
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
    table.add_column(standard.subject.one, no_wrap=True, overflow="fold")
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
        f"{standard.subject.counted(len(batch.results))} {standard_words(standard)}"
        + "".join(f"; {name} = {standard.settings[name].words}" for name in standard.changed)
    )
    titles, again = shown_titles(standard), Counter(result.grade for result in unread_in(batch.results))
    width = max(len("not settled"), *(len(title) for title in titles.values()))
    for name in standard.grades:
        click.echo(f"  {titles[name]:<{width}}  {settled[name]:>5}{_again(again[name])}")
    if still_open:
        click.echo(f"  {'not settled':<{width}}  {sum(still_open.values()):>5}")
        for possible, count in still_open.most_common():
            click.echo(f"    {count:>3} could be {' or '.join(titles[name] for name in possible)}")
    _print_silence(batch.results)
    _print_decided(titles, batch)


def _again(number: int) -> str:
    """The mark behind how many fish a grade has, where remarks on some of them were not understood."""
    return f" ({number:,} to be read again)" if number else ""


def _print_silence(results: Sequence[Result]) -> None:
    """How many grades rest on what nobody mentioned, where any does."""
    resting = sum(result.rests_on_silence for result in results)
    if resting:
        most = ": most of the lot. Look again where it matters" if 2 * resting > len(results) else ""
        click.echo(f"  rest on what nobody mentioned: {resting} of {len(results)}{most}")


def unread_in(results: Sequence[Result]) -> list[Result]:
    """The fish with remarks that were not understood, which nobody should call settled."""
    return [result for result in results if result.unread]


def tell_unread(standard: Standard, results: Sequence[Result]) -> None:
    """Print which fish are to be read again, since something that was said of them was not understood."""
    found = unread_in(results)
    if found:
        told = "; ".join(f"{result.fish}: {result.unread}" for result in found[:_MOST_UNREAD])
        more = f"; and {len(found) - _MOST_UNREAD:,} more" if len(found) > _MOST_UNREAD else ""
        fish = standard.subject.counted(len(found))
        click.echo(click.style(wrapped(shown(f"Read again {fish}, not understood: {told}{more}")), bold=True))


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
