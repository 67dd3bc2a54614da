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
from koirules.languages import ENGLISH, Tongue
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
    tongue = standard.tongue
    if is_short(batch, as_recorded=as_recorded, in_full=in_full):
        print_short_totals(standard, batch)
        tell_rounds_in_short(batch.outcome.rounds, tongue)
        tell_look_again(batch.results, tongue, most=_MOST_IN_SHORT)
        print_best(standard, listed[:_BEST])
        rest = len(listed) - _BEST
        more = f"{tongue('{number} more', number=tongue.whole(rest))}: " if rest > 0 else ""
        subject = tongue.of(standard.subject.one)
        lists = tongue("--all lists every {fish} with its reasons; `koirules why` tells all about one.", fish=subject)
        click.echo(f"{more}{lists}")
        return
    print_table(standard, listed)
    print_totals(standard, batch)
    tell_rounds(batch.outcome.rounds, batch.results, standard.subject, tongue)
    tell_look_again(batch.results, tongue)


def tell_outside(standard: Standard, results: Sequence[Result]) -> None:
    """Print which fish are placed nowhere, and why."""
    outside = [result for result in results if result.outside]
    if outside:
        tongue = standard.tongue
        told = "; ".join(f"{result.fish}: {result.outside}" for result in outside[:_MOST_OUTSIDE])
        rest = len(outside) - _MOST_OUTSIDE
        more = tongue("; and {number} more", number=tongue.whole(rest)) if rest > 0 else ""
        number = len(outside)
        fish = tongue.plural(
            "{fish} is placed nowhere", "{fish} are placed nowhere", number, fish=counted_in(standard, number)
        )
        click.echo(click.style(wrapped(shown(f"! {tongue.sentence(fish)} {told}{more}")), bold=True))


def counted_in(standard: Standard, number: int) -> str:
    """How many of what a standard is about, in the language that it is told in."""
    subject = standard.subject
    return standard.tongue.counted(subject.one, subject.many, number)


def tell_look_again(results: Sequence[Result], tongue: Tongue, most: int = _MOST_LOOKED_AT) -> None:
    """Print what was recorded and is unlikely, so many of it; nothing was changed by it."""
    found = [(result.fish, one) for result in results for one in result.look_again]
    if found:
        if most == _MOST_LOOKED_AT:
            click.echo()
        click.echo(click.style(tongue("Look again (graded as recorded)"), bold=True))
    for fish, one in found[:most]:
        click.echo(wrapped(shown(f"{fish}: {one.words}")))
    if len(found) > most:
        more = tongue("… and {number} more", number=tongue.whole(len(found) - most))
        where = (
            tongue("see a file of results") if most == _MOST_LOOKED_AT else f"--all, {tongue('or a file of results')}"
        )
        click.echo(f"  {more} ({where})")


def print_best(standard: Standard, results: Sequence[Result]) -> None:
    """Print fish a line each: its grade, its score and as much of its reasons as the line holds."""
    titles = shown_titles(standard)
    rows = [
        (
            shown(result.fish),
            standard.tongue.joined((titles[name] for name in result.possible), " or "),
            score_words(result, standard.tongue) if standard.rules.sections else "",
            " ".join(result.labels.get(name, "?") for name in (GROUP, SIZE) if name in result.labels),
            shown(_why(result, standard.tongue)),
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


def _why(result: Result, tongue: Tongue) -> str:
    """The reasons of a result, behind what a person decided about it."""
    if result.decision is None:
        return result.why
    told = tongue("decided by {judge}: {reason}", judge=result.decision.by, reason=result.decision.reason)
    return f"{told}; {result.why}" if result.why else told


def _fitted(text: str, width: int) -> str:
    """A text in a column of so many cells, cut where it is longer."""
    from rich.cells import cell_len, set_cell_size

    return set_cell_size(text, width) if cell_len(text) <= width else f"{set_cell_size(text, width - 1)}…"


def _cells(text: str) -> int:
    """How many columns of a terminal a text takes."""
    from rich.cells import cell_len

    return cell_len(text)


def print_short_totals(standard: Standard, batch: Graded) -> None:
    """Print how many fish have each grade, on as many lines as it takes."""
    settled = Counter(result.grade for result in batch.results if result.grade is not None)
    titles = shown_titles(standard)
    again = Counter(result.grade for result in unread_in(batch.results))
    told = [f"{titles[name]} {settled[name]:,}{_again(again[name])}" for name in standard.grades]
    still_open = sum(result.grade is None for result in batch.results)
    tongue = standard.tongue
    told += [f"{tongue('not settled')} {tongue.whole(still_open)}"] if still_open else []
    decided = sum(result.decision is not None for result in batch.results)
    told += [tongue("decided by hand {number}, counted above", number=tongue.whole(decided))] if decided else []
    show_paragraph(_head(standard, batch))
    show_paragraph(tongue.joined(told))


def _head(standard: Standard, batch: Graded) -> str:
    """How many fish were graded, and by what."""
    changed = "".join(f"; {name} = {standard.settings[name].words}" for name in standard.changed)
    fish = counted_in(standard, len(batch.results))
    return shown(standard.tongue("{fish} {by}", fish=fish, by=standard_words(standard))) + changed


def score_words(result: Result, tongue: Tongue = ENGLISH) -> str:
    """A score or its range: `71.25`, `40.5 to 78`."""
    from koirules.report.figures import figure

    return figure(result.score_low, result.score_high, tongue)


def print_table(standard: Standard, results: Sequence[Result]) -> None:
    """Print each fish with its grade, its score and the reasons that mattered most."""
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
    tongue = standard.tongue
    table.add_column(tongue.of(standard.subject.one), no_wrap=True, overflow="fold")
    table.add_column(tongue("grade"), overflow="fold", min_width=6, max_width=16)
    scored = bool(standard.rules.sections)
    if scored:
        table.add_column(tongue("score"), justify="right", no_wrap=True)
    classed = [name for name in (GROUP, SIZE) if any(name in result.labels for result in results)]
    if classed:
        table.add_column(tongue("class"), overflow="fold", max_width=24)
    table.add_column(tongue("why"), overflow="fold", ratio=1)
    titles = shown_titles(standard)
    for result in results:
        grades = tongue.joined((titles[name] for name in result.possible), " or ")
        style = "bold" if result.grade == standard.grades[0] else ""
        cells = [Text(shown(result.fish)), Text(shown(grades), style=style), Text(score_words(result, tongue))]
        if not scored:
            cells.pop()
        if classed:
            cells.append(Text(shown(" ".join(result.labels.get(name, "?") for name in classed))))
        table.add_row(*cells, Text(shown(_why(result, tongue))))
    console.print(table)


def print_totals(standard: Standard, batch: Graded) -> None:
    """Print how many fish have each grade, and which of them a person decided."""
    settled = Counter(result.grade for result in batch.results if result.grade is not None)
    still_open = Counter(result.possible for result in batch.results if result.grade is None)
    click.echo(_head(standard, batch))
    tongue, nowhere = standard.tongue, standard.tongue("not settled")
    titles, again = shown_titles(standard), Counter(result.grade for result in unread_in(batch.results))
    width = max(_cells(nowhere), *(_cells(title) for title in titles.values()))
    for name in standard.grades:
        click.echo(f"  {_fitted(titles[name], width)}  {settled[name]:>5}{_again(again[name])}")
    if still_open:
        click.echo(f"  {_fitted(nowhere, width)}  {sum(still_open.values()):>5}")
        for possible, count in still_open.most_common():
            could = tongue("could be {grades}", grades=tongue.joined((titles[name] for name in possible), " or "))
            click.echo(f"    {count:>3} {could}")
    _print_silence(batch.results, tongue)
    _print_decided(titles, batch, tongue)


def _again(number: int) -> str:
    """The mark behind how many fish a grade has, where remarks on some of them were not understood."""
    return f" ({number:,} to be read again)" if number else ""


def _print_silence(results: Sequence[Result], tongue: Tongue) -> None:
    """How many grades rest on what nobody mentioned, where any does."""
    resting = sum(result.rests_on_silence for result in results)
    if resting:
        most = f": {tongue('most of the lot. Look again where it matters')}" if 2 * resting > len(results) else ""
        told = tongue("rest on what nobody mentioned: {number} of {whole}", number=resting, whole=len(results))
        click.echo(f"  {told}{most}")


def unread_in(results: Sequence[Result]) -> list[Result]:
    """The fish with remarks that were not understood, which nobody should call settled."""
    return [result for result in results if result.unread]


def tell_unread(standard: Standard, results: Sequence[Result]) -> None:
    """Print which fish are to be read again, since something that was said of them was not understood."""
    found = unread_in(results)
    if found:
        tongue = standard.tongue
        told = "; ".join(f"{result.fish}: {result.unread}" for result in found[:_MOST_UNREAD])
        rest = len(found) - _MOST_UNREAD
        more = tongue("; and {number} more", number=tongue.whole(rest)) if rest > 0 else ""
        words = tongue("Read again {fish}, not understood: {told}", fish=counted_in(standard, len(found)), told=told)
        click.echo(click.style(wrapped(shown(f"{words}{more}")), bold=True))


def _print_decided(titles: dict[str, str], batch: Graded, tongue: Tongue) -> None:
    decided = [result for result in batch.results if result.decision is not None]
    if decided:
        click.echo(f"  {tongue('decided by hand, and counted above')}: {len(decided)}")
    for result in decided:
        if result.decision is not None:
            rules = tongue.joined((titles[name] for name in result.by_rules), " or ")
            grade = result.grade if tongue.language is None else titles.get(result.grade or "", "")
            by_rules = tongue("by the rules {grades}", grades=rules)
            words = f"{result.fish}: {grade}, {by_rules}; {result.decision.by}: {result.decision.reason}"
            click.echo(f"    {shown(words)}")
