"""`koirules grade`: a batch by a standard."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from koirules.commands.classing import by_classes, class_table, classes_option
from koirules.commands.grade_files import grade_files, is_large
from koirules.commands.grade_mixed import grade_mixed, told_apart
from koirules.commands.inputs import (
    decisions_option,
    graded,
    label_option,
    language_option,
    replace_option,
    setting_option,
    standard_from,
    stop_if_there,
    varieties_installed,
)
from koirules.commands.output import short_cautions_of, show_cautions, show_problems, stop
from koirules.commands.page_options import Wishes, wishes_options


@click.command("grade")
@click.argument("rules")
@click.argument("records", type=click.Path(), nargs=-1, required=True, metavar="[RULES…] RECORDS…")
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
@click.option(
    "--all", "in_full", is_flag=True, help="List every fish with its reasons, not only the ten best in short."
)
@click.option("--as-recorded", is_flag=True, help="List the fish in the order of the records, not best first.")
@click.option(
    "--top", type=click.IntRange(0, 1000), default=10, metavar="N", help="Of whole files: list the N best fish."
)
@click.option("--on", metavar="CLUSTER", default=None, help="Of whole files: let dask or spark do them (dask:ADDRESS).")
@click.option(
    "--leave-out-broken",
    is_flag=True,
    help="Name the rows that are wrong, or of whole files those that cannot be read, and go on without them.",
)
@click.option("--broken-as-open", is_flag=True, help="Take a value that cannot be read as not recorded, and say so.")
@decisions_option
@classes_option
@label_option
@setting_option
@language_option
@replace_option
@wishes_options
def command(
    rules: str,
    records: tuple[str, ...],
    outs: tuple[str, ...],
    plots: tuple[str, ...],
    in_full: bool,
    as_recorded: bool,
    top: int,
    on: str | None,
    leave_out_broken: bool,
    broken_as_open: bool,
    decisions: str | None,
    classes: str | None,
    labels: tuple[str, ...],
    changes: tuple[str, ...],
    language: str | None,
    replace: bool,
    wishes: Wishes,
) -> None:
    """Grade the fish in RECORDS (.csv, .xlsx, .jsonl or .parquet) by RULES, a rule file or the name of a rule set.

    Several RULES, or a folder of rule files, grade a batch of mixed varieties: each fish by the standard of its variety and
    stage, which stand in the columns `variety` and `stage`.

    Prints the totals and the ten best fish, or with --all each fish with its grade, its score and the reasons that mattered
    most. A fish whose grade could still be one or another, by what was not recorded, is shown with every grade still
    possible; a rule that asks whether something is recorded is answered as the record stands.

    Several files, a folder, a pattern, Parquet, or a text file beyond 20 MB are graded as whole files, however large: the
    totals, the scores and the best fish are printed.
    """
    from koirules.commands.render.batch import is_short, tell_batch, unread_in
    from koirules.commands.writing_results import check_paths, write_all

    table = None if classes is None else class_table(classes, varieties_installed())
    several, records = told_apart(rules, records)
    large = on is not None or is_large(records, outs)
    given = [*several, *records, *([decisions] if decisions else [])]
    check_paths(outs, plots, given, large=large)
    if not large or all(Path(out).suffix for out in outs):
        stop_if_there((*outs, *plots), replace=replace)
    if several != (rules,):
        grade_mixed(
            several,
            records,
            outs,
            plots,
            labels,
            changes,
            language,
            decisions,
            table,
            large=large,
            as_recorded=as_recorded,
            in_full=in_full,
            wishes=wishes,
            leave_out_broken=leave_out_broken,
            broken_as_open=broken_as_open,
        )
        return
    standard = standard_from(rules, changes, language)
    if large and decisions is not None:
        stop("--decisions is for a batch that is listed; of whole files nobody is decided about. Nothing was written.")
    if large and wishes != Wishes():
        stop(
            "--for, --offer, --title, --contact, --mark and --with-records are for a batch that is listed. Give one file of "
            "records that fits on a screen. Nothing was written."
        )
    if large and broken_as_open:
        stop(
            "--broken-as-open is for one file of records that fits on a screen. Of whole files, --leave-out-broken leaves the "
            "broken rows out. Nothing was written."
        )
    if large and as_recorded:
        click.echo("--as-recorded is for a batch that is listed; of whole files the best are.", err=True)
    if large and table is not None:
        stop(
            "--classes is for one file of records that fits on a screen. Grade the whole files without it, or give one file "
            "at a time; `koirules classes TABLE FILE` puts the fish of one file into classes without grading them."
        )
    if large:
        settings = [(name.strip(), value.strip()) for name, _, value in (change.partition("=") for change in changes)]
        grade_files(standard, records, outs, labels, settings, top, on, leave_out_broken)
        return
    batch = graded(
        standard,
        records[0],
        labels,
        decisions,
        table,
        leave_out_broken=leave_out_broken,
        broken_as_open=broken_as_open,
    )
    about = by_classes(batch.about(standard), table)
    failed = write_all(outs, plots, batch.results, about, [(standard, batch.batch)], wishes)
    tell_batch(standard, batch, as_recorded=as_recorded, in_full=in_full)
    if in_full:
        click.echo()
    noted = not is_short(batch, as_recorded=as_recorded, in_full=in_full)
    cautions = standard.every_caution if in_full else short_cautions_of(standard, noted=noted)
    show_cautions(map(standard.tongue.of, cautions))
    if failed:
        show_problems(failed)
        stop("Not everything was written.")
    if batch.broken or unread_in(batch.results):
        sys.exit(1)  # nobody knows yet what was said of these fish
