"""What `koirules grade` writes of a batch: files of results, and plots."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click
from attrs import evolve

from koirules.api import Standard
from koirules.commands.inputs import is_same_file
from koirules.commands.output import show_problems, shown, stop
from koirules.commands.page_options import Wishes
from koirules.problems import Problem
from koirules.problems.picturing import plot_of_whole_files
from koirules.results.result import Result
from koirules.vocabulary.nearness import near

if TYPE_CHECKING:
    from koirules.records.not_graded import Row
    from koirules.records.records import Batch
    from koirules.report.page_pictures import Pictures
    from koirules.report.result_files import About
    from koirules.report.views import View

_MANY_PHOTOGRAPHS = 30
"""From how many on it takes seconds to make them smaller."""


def check_paths(outs: Sequence[str], plots: Sequence[str], given: Sequence[str], *, large: bool) -> None:
    """End the command where a path cannot be written to, before anything is graded.

    given: the files that the command reads. large: whether whole files are graded; what is wrong with their results they say.
    """
    if not outs and not plots:
        return
    from koirules.report.plots import check_plot_path
    from koirules.report.result_files import check_result_path

    checked = [plot_of_whole_files(plot) if large else check_plot_path(Path(plot)) for plot in plots]
    if not large:
        checked = [*(check_result_path(Path(out)) for out in outs), *checked]
    wrong = [problem for problem in checked if problem is not None]
    if wrong:
        show_problems(wrong)
        stop("Nothing was written.")
    for out in (*outs, *plots):
        if any(is_same_file(out, one) for one in given):
            stop(
                f"{shown(out)} is what was given: results would take its place. Name another file. Nothing was written."
            )


def write_all(
    outs: Sequence[str],
    plots: Sequence[str],
    results: Sequence[Row],
    about: About,
    given: Sequence[tuple[Standard, Batch]],
    wishes: Wishes | None = None,
) -> list[Problem]:
    """Write the results to each file, before anything is printed; the problems of those that could not be written.

    given: each standard with its records, for what a page shows of the fish. wishes: what was asked of the files.
    """
    if not outs and not plots:
        return []
    from koirules.records.recorded_values import recorded_values
    from koirules.report.plots import write_plot
    from koirules.report.result_files import is_page, write_results

    wishes = wishes or Wishes()
    _check_offered(wishes, [standard for standard, _ in given])
    if outs:
        results = with_hangs_on(results, given)
    if wishes.with_records:
        about = evolve(about, recorded=recorded_values((standard.traits, batch.records) for standard, batch in given))
    pages = [out for out in outs if is_page(Path(out))]
    tables = [] if wishes.audience.is_house else [shown(out) for out in outs if out not in pages]
    if tables:
        click.echo(f"A table has everything, notes of the house too, whoever it is for: {', '.join(tables)}.", err=True)
    if pages and not _shows_any(wishes, results, about):
        click.echo(
            f"No {about.subject.one} is of a grade that is on offer: the page for a customer shows none.", err=True
        )
    pictures = pictures_of(given) if pages else None
    written = [(out, write_results(Path(out), results, about, pictures, wishes.audience)) for out in outs]
    written += [(plot, write_plot(Path(plot), results, about)) for plot in plots]
    failed: list[Problem] = []
    for name, problem in written:
        if problem is None or problem.warning:
            click.echo(f"Wrote {shown(name)}.")
            show_problems([problem] if problem else [])
        else:
            failed.append(problem)
    return failed


def _check_offered(wishes: Wishes, standards: Sequence[Standard]) -> None:
    """End the command where a grade is offered that no standard has."""
    known = list(dict.fromkeys(name for standard in standards for name in standard.grades))
    for name in sorted(wishes.audience.offered):
        if name not in known:
            guess = near(name, known)
            did = f' Did you mean "{guess}"?' if guess else f" There are {', '.join(known)}."
            stop(f"--offer {shown(name)}: no grade is called so.{did} Nothing was written.")


def _shows_any(wishes: Wishes, results: Sequence[Row], about: About) -> bool:
    """Whether a page would show a fish, where there is one at all."""
    from koirules.records.not_graded import by_standard
    from koirules.report.page_words import Wording

    parts = [(Wording.of(fish, one), fish) for one, fish in by_standard(results, about)]
    there = [wishes.audience.shows(wording, one) for wording, fish in parts for one in fish]
    return any(there) or not there


def with_hangs_on(results: Sequence[Row], given: Sequence[tuple[Standard, Batch]]) -> list[Row]:
    """The results, each that is not settled with the traits that its grade hangs on, the most decisive first."""
    graded = [one for one in results if isinstance(one, Result)]
    told: dict[str, Result] = {one.fish: one for one in graded}
    for standard, batch in given:
        own = [told[record.fish] for record in batch.records if record.fish in told]
        told |= {one.fish: one for one in standard.questioner.with_hangs_on(own, batch.records)}
    return [told[one.fish] if isinstance(one, Result) else one for one in results]


def pictures_of(given: Sequence[tuple[Standard, Batch]]) -> Pictures:
    """What a page can show of the fish; photographs that cannot be shown, and drawings that fail, are named."""
    from koirules.report.page_pictures import Pictures
    from koirules.report.photographs import named_photographs, read_photographs

    records = [record for _, batch in given for record in batch.records]
    file = next((Path(batch.file) for _, batch in given), Path())
    number = named_photographs(records)
    if number > _MANY_PHOTOGRAPHS:
        with click.progressbar(length=number, label="Photographs", file=sys.stderr) as bar:
            photographs, problems = read_photographs(file, records, lambda: bar.update(1))
    else:
        photographs, problems = read_photographs(file, records)
    show_problems(problems)
    views: dict[str, Sequence[View]] = {}
    for standard, batch in given:
        views |= standard.drawer.views_by_fish(batch.records)
        show_problems(standard.drawer.take_problems())
    return Pictures(photographs, views)
