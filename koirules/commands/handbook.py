"""`koirules handbook`: a standard as a page to print and hand to judges."""

from __future__ import annotations

import sys
from pathlib import Path

import click

from koirules.commands.inputs import language_option, replace_option, standard_from, stop_if_there
from koirules.commands.output import DOES_NOT_HOLD, cautions_of, counted, show_problems, shown, stop


@click.command("handbook")
@click.argument("rules")
@click.option("--out", required=True, type=click.Path(), metavar="FILE", help="Where to write it (.html or .md).")
@click.option(
    "--remarks", is_flag=True, help="Show the remarks of the file (after #) beside the statements that they are about."
)
@language_option
@replace_option
def command(rules: str, out: str, remarks: bool, language: str | None, replace: bool) -> None:
    """Write RULES as a page that a committee prints and hands to its judges.

    Sections with their worth, every criterion with its curve drawn or its steps, faults and lifts, what decides ties, the
    samples of the file as worked examples, and what its words mean. The same rules give the same file, to the byte. Exit
    status 1: a sample does not come out as the file says; the page says so too.
    """
    from koirules.grading.sample_runs import run_samples
    from koirules.report.handbook import Subject, check_handbook_path, write_handbook

    stop_if_there([out], replace=replace)
    problem = check_handbook_path(Path(out))
    if problem is None:
        standard = standard_from(rules, language=language)
        runs = run_samples(standard.grader)
        problem = write_handbook(
            Path(out), Subject(standard.grader, runs, standard.seal, cautions_of(standard), remarks)
        )
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    parts = standard.rules
    told = [
        counted(len(parts.sections), "section"),
        counted(len(parts.criteria), "criterion", "criteria"),
        counted(len([limit for limit in parts.limits if limit.head == "fault"]), "fault"),
        counted(len(parts.grades), "grade"),
        counted(len(runs), "example"),
    ]
    click.echo(f"Wrote {shown(out)}: {', '.join(told)}.")
    failed = [run for run in runs if run.failures]
    for run in failed:
        click.echo(f'  sample "{shown(run.sample.title)}" {shown("; ".join(run.failures))}', err=True)
    if failed:
        sys.exit(DOES_NOT_HOLD)
