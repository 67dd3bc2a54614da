"""`koirules grade`: a batch by a standard."""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Sequence

import click

from koirules.api import Standard
from koirules.commands.grade_files import grade_files, is_large
from koirules.commands.inputs import (
    Graded,
    graded,
    label_option,
    language_option,
    setting_option,
    setting_words,
    shown_titles,
    standard_from,
)
from koirules.commands.output import counted, show_cautions, show_problems, shown, stop
from koirules.commands.telling_rounds import tell_alerts, tell_rounds
from koirules.commands.writing_results import check_paths, write_all
from koirules.formats.figures import figure
from koirules.grading.ranking import best_first
from koirules.grading.results import Result


@click.command("grade")
@click.argument("rules")
@click.argument("records", type=click.Path(), nargs=-1, required=True)
@click.option(
    "--out",
    "outs",
    type=click.Path(),
    multiple=True,
    metavar="FILE",
    help="Write the results (.csv, .xlsx, .json, or .html, a page to read; of whole files .csv, .parquet or a new folder).",
)
@click.option(
    "--plot",
    "plots",
    type=click.Path(),
    multiple=True,
    metavar="FILE",
    help="Plot the points of the fish by section, with the lines of the grades and the cuts (.svg or .png).",
)
@click.option("--as-recorded", is_flag=True, help="List the fish in the order of the records, not best first.")
@click.option(
    "--top", type=click.IntRange(0, 1000), default=10, metavar="N", help="Of whole files: list the N best fish."
)
@click.option("--on", metavar="CLUSTER", default=None, help="Of whole files: let dask or spark do them (dask:ADDRESS).")
@click.option("--leave-out-broken", is_flag=True, help="Of whole files: name those that cannot be read, and go on.")
@click.option(
    "--decisions",
    type=click.Path(),
    default=None,
    metavar="FILE",
    help="A table of what a person decided: fish, grade or round, by, reason.",
)
@label_option
@setting_option
@language_option
def command(
    rules: str,
    records: tuple[str, ...],
    outs: tuple[str, ...],
    plots: tuple[str, ...],
    as_recorded: bool,
    top: int,
    on: str | None,
    leave_out_broken: bool,
    decisions: str | None,
    labels: tuple[str, ...],
    changes: tuple[str, ...],
    language: str | None,
) -> None:
    """Grade the fish in RECORDS (.csv, .xlsx, .jsonl or .parquet) by RULES, a rule file or the name of a rule set.

    Prints each fish with its grade, its score and the reasons that mattered most, then the totals. A fish whose grade
    could still be one or another, by what was not recorded, is shown with every grade still possible; a rule that asks
    whether something is recorded is answered as the record stands.

    Several files, a folder, a pattern, Parquet, or a text file beyond 20 MB are graded as whole files, however large: the
    totals, the scores and the best fish are printed.
    """
    large = on is not None or is_large(records, outs)
    check_paths(outs, plots, [rules, *records, *([decisions] if decisions else [])], large=large)
    standard = standard_from(rules, changes, language)
    if large and decisions is not None:
        stop("--decisions is for a batch that is listed; of whole files nobody is decided about. Nothing was written.")
    if large and as_recorded:
        click.echo("--as-recorded is for a batch that is listed; of whole files the best are.", err=True)
    if large:
        settings = [(name.strip(), value.strip()) for name, _, value in (change.partition("=") for change in changes)]
        grade_files(standard, records, outs, labels, settings, top, on, leave_out_broken)
        return
    batch = graded(standard, records[0], labels, decisions)
    listed = list(batch.results) if as_recorded else best_first(standard.grades, batch.results)
    failed = write_all(standard, batch, outs, plots)
    tell_alerts(batch.outcome.alerts)
    _print_table(standard, listed)
    _print_totals(standard, batch)
    tell_rounds(batch.outcome.rounds, batch.results)
    click.echo()
    show_cautions()
    if failed:
        show_problems(failed)
        stop("Not everything was written.")


def score_words(result: Result) -> str:
    """A score or its range: `71.25`, `40.5 to 78`."""
    return figure(result.score_low, result.score_high)


def _print_table(standard: Standard, results: Sequence[Result]) -> None:
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
    table.add_column("why", overflow="fold", ratio=1)
    titles = shown_titles(standard)
    for result in results:
        grades = " or ".join(titles[name] for name in result.possible)
        style = "bold" if result.grade == standard.grades[0] else ""
        cells = [Text(shown(result.fish)), Text(shown(grades), style=style), Text(score_words(result))]
        if not scored:
            cells.pop()
        table.add_row(*cells, Text(shown(result.why)))
    console.print(table)


def _print_totals(standard: Standard, batch: Graded) -> None:
    settled = Counter(result.grade for result in batch.results if result.grade is not None)
    still_open = Counter(result.possible for result in batch.results if result.grade is None)
    click.echo(
        f"{counted(len(batch.results), 'fish', 'fish')} by {shown(standard.title)}, edition {shown(standard.edition)}"
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
    _print_decided(titles, batch)


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
