"""`koirules check`: rule files and the samples in them."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from koirules.commands.inputs import out_of_date, registry, rule_files_in
from koirules.commands.output import (
    DOES_NOT_HOLD,
    HOLDS,
    PROBLEMS,
    counted,
    show_problems,
    shown,
    stop,
)
from koirules.loading.sound_pages import SoundPage, keep_page, kept_page
from koirules.problems import EngineError, RecordError, StandardError
from koirules.records.plugged_formats import is_table

if TYPE_CHECKING:  # of a page that was sound the last time little is needed
    from koirules.api import Standard
    from koirules.grading.sample_runs import SampleRun


@click.command("check")
@click.argument("rules", nargs=-1, required=True)
@click.option(
    "--reach", is_flag=True, help="List what no sample reaches: faults, words of scales, pieces of curves, grades."
)
@click.option("--changes", is_flag=True, help="List small changes to the rules that no sample would notice.")
@click.option("--engines", is_flag=True, help="Tell which engine grades large frames by these rules, and why.")
def command(rules: tuple[str, ...], reach: bool, changes: bool, engines: bool) -> None:
    """Check RULES, rule files or folders of them: every problem is shown with its place and what to try.

    Then the samples of each file are run.
    """
    from datetime import date

    plugins = registry()
    status = HOLDS
    for name in [each for given in rules for each in rule_files_in(Path(given)) or (given,)]:
        if is_table(name):
            click.echo(f"{shown(name)} is a table of records by its name, not a rule file.", err=True)
            status = PROBLEMS
            continue
        if not (reach or changes or engines) and (page := kept_page(name, plugins.rulesets, plugins.key)) is not None:
            show_problems(out_of_date(page, date.today()))
            click.echo(f"{shown(name)}: {page.told}.")
            continue
        from koirules.api import load_standard
        from koirules.grading.sample_runs import calls_functions, run_samples

        try:
            standard = load_standard(name, plugins)
        except StandardError as error:
            show_problems(error.problems)
            count = sum(not problem.warning for problem in error.problems)
            click.echo(f"{shown(name)}: {counted(count, 'problem')}.")
            status = PROBLEMS
            continue
        show_problems([*standard.warnings, *out_of_date(standard.rules, date.today())])
        try:
            runs = run_samples(standard.grader)
        except RecordError as error:
            show_problems(error.problems)
            click.echo(f"{shown(name)}: its samples cannot be run.")
            status = PROBLEMS
            continue
        failed = [run for run in runs if run.failures]
        for run in failed:
            _show_failure(run)
        told = _told(standard, runs, failed)
        click.echo(f"{shown(name)}: {told}.")
        if not (failed or standard.warnings or calls_functions(standard.grader)):
            held = standard.rules
            keep_page(standard.kept_as, SoundPage(held.file, told, held.valid_from, held.valid_until))
        if reach:
            _show_reach(standard)
        if changes:
            _show_changes(standard)
        if engines:
            _show_engines(standard)
        status = max(status, DOES_NOT_HOLD if failed else HOLDS)
    sys.exit(status)


def _told(standard: Standard, runs: tuple[SampleRun, ...], failed: list[SampleRun]) -> str:
    rules = standard.rules
    criteria = sum(len(section.points) + len(section.extras) for section in rules.sections)
    faults = sum(limit.head == "fault" for limit in rules.limits)
    parts = [
        counted(len(rules.sections), "section"),
        counted(criteria, "criterion", "criteria"),
        counted(faults, "fault"),
        counted(len(rules.grades), "grade"),
    ]
    if not runs:
        samples = "no samples"
    elif failed:
        samples = f"{len(failed)} of {counted(len(runs), 'sample')} {'does' if len(failed) == 1 else 'do'} not hold"
    else:
        samples = f"{counted(len(runs), 'sample')} hold" + ("s" if len(runs) == 1 else "")
    return f"reads well ({', '.join(parts)}); {samples}"


def _show_failure(run: SampleRun) -> None:
    place = run.sample.place
    click.echo(
        f"{shown(place.file)}, line {place.line}: the sample {shown(run.sample.title)!r} does not hold:", err=True
    )
    for failure in run.failures:
        click.echo(f"  it {shown(failure)}", err=True)
    for reason in run.result.reasons:
        click.echo(f"    {reason.kind:<7} {shown(reason.words)}", err=True)


def _show_reach(standard: Standard) -> None:
    from koirules.analysis.coverage import unreached

    missing = unreached(standard.grader)
    if not missing:
        click.echo("  The samples reach everything.")
    for words in missing:
        click.echo(f"  no sample reaches: {shown(words)}")


def _show_engines(standard: Standard) -> None:
    try:
        grader = standard.batch()
    except EngineError as error:
        stop(str(error))
    from koirules.grading.batch import engines_told

    for words in engines_told(grader):
        click.echo(f"  {words}")


def _show_changes(standard: Standard) -> None:
    from koirules.analysis.mutation import changes, unnoticed

    total = sum(1 for _ in changes(standard.rules))
    with click.progressbar(length=total, label="  Trying small changes", file=sys.stderr) as bar:
        found = unnoticed(standard.grader, lambda _: bar.update(1))
    click.echo(f"  {total - len(found)} of {counted(total, 'small change')} would be noticed by a sample.")
    for words in found:
        click.echo(f"  no sample notices: {shown(words)}")
