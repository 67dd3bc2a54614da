"""`koirules print`: sheets for paper, a certificate, labels, lists of ponds."""

from __future__ import annotations

from pathlib import Path

import click

from koirules.commands.inputs import (
    Graded,
    decisions_option,
    graded,
    label_option,
    language_option,
    replace_option,
    setting_option,
    standard_from,
    stop_if_there,
)
from koirules.commands.output import show_problems, shown, stop
from koirules.commands.page_options import occasion_options
from koirules.commands.writing_results import pictures_of, with_hangs_on
from koirules.problems import Problem
from koirules.records.writing import check_folder
from koirules.report.audience import Audience
from koirules.report.page_pictures import Pictures
from koirules.report.paper import SHEETS, SIZES, Paper, Sheet, Size, write_paper
from koirules.results.result import Result
from koirules.vocabulary.nearness import near


@click.command("print")
@click.argument("what", type=click.Choice(SHEETS))
@click.argument("rules")
@click.argument("records", type=click.Path())
@click.option(
    "--out", type=click.Path(), required=True, metavar="FILE", help="The page to write, .html: print it there."
)
@click.option("--fish", default="", help="Of which fish a certificate is.")
@click.option("--paper", type=click.Choice(SIZES), default="a5", help="The size of a certificate.")
@click.option(
    "--by",
    default="",
    metavar="COLUMN",
    help="The column that says where a fish goes; else where a round sends it, or `pond`.",
)
@decisions_option
@label_option
@setting_option
@language_option
@replace_option
@occasion_options
def command(
    what: Sheet,
    rules: str,
    records: str,
    out: str,
    fish: str,
    paper: Size,
    by: str,
    decisions: str | None,
    labels: tuple[str, ...],
    changes: tuple[str, ...],
    language: str | None,
    replace: bool,
    house: Audience,
) -> None:
    """Write a sheet to print about the fish of RECORDS, graded by RULES.

    WHAT is a certificate of one fish (--fish), labels for bags and tubs, lists of the fish of each pond to hang up, or ponds,
    a page for each of them with drawings. The sheet is one HTML file; a browser prints it, or saves it as PDF.
    """
    path = Path(out)
    if path.suffix.lower() != ".html":
        stop(
            f"A sheet is written as HTML: let {shown(out)} end in .html. A browser prints it, or saves it as PDF. "
            "Nothing was written."
        )
    if what == "certificate" and not fish:
        stop("A certificate is of one of the records: name it with --fish. Nothing was written.")
    stop_if_there([out], replace=replace)
    problem = check_folder(path)
    if problem is None:
        standard = standard_from(rules, changes, language)
        batch = graded(standard, records, (*labels, *([by] if by else [])), decisions)
        results = [one for one in with_hangs_on(batch.results, [(standard, batch.batch)]) if isinstance(one, Result)]
        pictures = pictures_of([(standard, batch.batch)]) if what in {"certificate", "ponds"} else Pictures()
        about = batch.about(standard)
        if what == "certificate":
            _check_settled(batch, fish, records, standard.subject.one)
        problem = write_paper(path, Paper(what, fish, by, paper), results, about, pictures, house)
    _tell(problem, out)


def _check_settled(batch: Graded, fish: str, records: str, noun: str) -> None:
    """End the command where there is no such fish among the results, or where its grade is open."""
    names = [one.fish for one in batch.results]
    if fish not in names:
        guess = near(fish, names)
        more = f' Did you mean "{shown(guess)}"?' if guess else ""
        stop(f'There is no {noun} "{shown(fish)}" in {shown(records)}.{more} Nothing was written.')
    if batch.results[names.index(fish)].grade is None:
        stop(f"The grade of {shown(fish)} is not settled; `koirules why` says what it hangs on. Nothing was written.")


def _tell(problem: Problem | None, out: str) -> None:
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(out)}.")
