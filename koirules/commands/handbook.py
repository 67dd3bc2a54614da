"""`koirules handbook`: a standard, or those of a whole show, as a page to print and hand to judges."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click

from koirules.commands.inputs import (
    language_option,
    registry,
    replace_option,
    rule_files_in,
    standard_from,
    stop_if_there,
    varieties_installed,
)
from koirules.commands.output import (
    DOES_NOT_HOLD,
    counted,
    show_problems,
    shown,
    stop,
    stop_if_refused,
)

if TYPE_CHECKING:
    from koirules.api import Standard
    from koirules.classes.table import ClassTable
    from koirules.grading.sample_runs import SampleRun
    from koirules.prizes.occasion import Occasion
    from koirules.report.handbook import Chapter, Show


@click.command("handbook")
@click.argument("rules", nargs=-1, required=True)
@click.option("--out", required=True, type=click.Path(), metavar="FILE", help="Where to write it (.html or .md).")
@click.option("--classes", metavar="TABLE", help="For a show: the class table (.toml, or the name of a shipped one).")
@click.option("--prizes", type=click.Path(), metavar="OCCASION", help="For a show: the table of prizes (.toml).")
@click.option(
    "--remarks", is_flag=True, help="Show the remarks of the file (after #) beside the statements that they are about."
)
@language_option
@replace_option
def command(
    rules: tuple[str, ...],
    out: str,
    classes: str | None,
    prizes: str | None,
    remarks: bool,
    language: str | None,
    replace: bool,
) -> None:
    """Write RULES as a page that a committee prints and hands to its judges.

    Sections with their worth, every criterion with its curve drawn or its steps, faults and lifts, what decides ties, the
    samples of the file as worked examples, and what its words mean. The same rules give the same file, to the byte. Exit
    status 1: a sample does not come out as the file says; the page says so too.

    Several RULES, or a folder of them, make one handbook of a show: the base that they share once, then how each of them
    differs from it. `--classes` and `--prizes` add the classes and the prizes in words.
    """
    from koirules.report.handbook import check_handbook_path

    stop_if_there([out], replace=replace)
    problem = check_handbook_path(Path(out))
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    files = list(dict.fromkeys(file for given in rules for file in rule_files_in(Path(given)) or (given,)))
    if len(files) == 1 and classes is None and prizes is None:
        standard = standard_from(files[0], language=language)
        runs = _write_one(standard, out, remarks=remarks)
    else:
        runs = _write_show(files, out, classes, prizes, language, remarks=remarks)
    failed = [run for run in runs if run.failures]
    for run in failed:
        click.echo(f'  sample "{shown(run.sample.title)}" {shown("; ".join(run.failures))}', err=True)
    if failed:
        sys.exit(DOES_NOT_HOLD)


def _write_one(standard: Standard, out: str, *, remarks: bool) -> Sequence[SampleRun]:
    from koirules.grading.sample_runs import run_samples
    from koirules.report.handbook import Subject, write_handbook

    runs = run_samples(standard.grader)
    subject = Subject(standard.grader, runs, standard.seal, standard.every_caution, remarks)
    problem = write_handbook(Path(out), subject)
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    show_problems(subject.drawer.take_problems())
    parts = standard.rules
    told = [
        counted(len(parts.sections), "section"),
        counted(len(parts.criteria), "criterion", "criteria"),
        counted(len([limit for limit in parts.limits if limit.head == "fault"]), "fault"),
        counted(len(parts.grades), "grade"),
        counted(len(runs), "example"),
    ]
    click.echo(f"Wrote {shown(out)}: {', '.join(told)}.")
    return runs


def _write_show(
    files: Sequence[str], out: str, classes: str | None, prizes: str | None, language: str | None, *, remarks: bool
) -> Sequence[SampleRun]:
    """Write the handbook of a show; the samples of its standards."""
    from koirules.report.handbook import Chapter, Subject, write_show_handbook

    occasion, table = _occasion_of(classes, prizes)
    standards = _with_bases(files, language)
    chapters: list[Chapter] = []
    for standard, base in standards:
        subject = Subject(standard.grader, standard.sample_runs(), standard.seal, (), remarks)
        chapters.append(Chapter(subject, None if base is None else base.rules))
    show = _show(chapters, [standard for standard, _ in standards], occasion, table, language)
    problem = write_show_handbook(Path(out), show)
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    show_problems([failed for one in chapters for failed in one.subject.drawer.take_problems()])
    whole = sum(one.base is None for one in chapters)
    told = [counted(len(chapters), "standard")]
    told += [f"{whole} in full, {len(chapters) - whole} by what differs"] if whole < len(chapters) else []
    told += [] if table is None else [counted(len(table.groups), "group of classes", "groups of classes")]
    told += [] if occasion is None else [counted(len(occasion.prizes), "prize")]
    click.echo(f"Wrote {shown(out)}: {', '.join(told)}.")
    return [run for one in chapters for run in one.subject.runs]


def _occasion_of(classes: str | None, prizes: str | None) -> tuple[Occasion | None, ClassTable | None]:
    """The table of prizes, and the class table: the one that was given, or the one that the prizes name."""
    from koirules.commands.classing import class_table
    from koirules.commands.inputs import is_same_file
    from koirules.commands.prizes import class_table_of
    from koirules.prizes.reading import read_occasion

    given = None if classes is None else class_table(classes, varieties_installed())
    if prizes is None:
        return None, given
    occasion = read_occasion(Path(prizes))
    if isinstance(occasion, tuple):
        stop_if_refused(occasion)
        raise AssertionError("an occasion without problems is an occasion")
    named = class_table_of(occasion)
    if given is not None and named is not None and not is_same_file(given.file, named.file):
        stop(f"{shown(prizes)} names another class table, {shown(occasion.classes)}. Leave --classes out.")
    return occasion, named or given


def _with_bases(files: Sequence[str], language: str | None) -> list[tuple[Standard, Standard | None]]:
    """Every standard with the one that it is based on, which comes before it."""
    plugins = registry()
    found: dict[Path, tuple[Standard, Standard | None]] = {}

    def add(file: str) -> Standard:
        standard = standard_from(file, (), language, plugins, quiet=bool(found))
        real = Path(standard.rules.file).resolve()
        if real not in found:
            found[real] = (standard, None)
            bases = tuple(standard.rules.source.bases)
            found[real] = (standard, add(bases[-1]) if bases else None)
        return found[real][0]

    for file in files:
        add(file)
    return _by_base(list(found.values()))


def _by_base(standards: list[tuple[Standard, Standard | None]]) -> list[tuple[Standard, Standard | None]]:
    """The same with each base before those that are based on it, and these together."""
    ordered: list[tuple[Standard, Standard | None]] = []

    def put(base: Standard | None) -> None:
        for one in standards:
            if one[1] is base:
                ordered.append(one)
                put(one[0])

    put(None)
    return ordered


def _show(
    chapters: Sequence[Chapter],
    standards: Sequence[Standard],
    occasion: Occasion | None,
    table: ClassTable | None,
    language: str | None,
) -> Show:
    from koirules.commands.prizes import entered_by, words_of
    from koirules.prizes.reading import check_names
    from koirules.report.handbook import Show
    from koirules.vocabulary.subject import SHOW

    if occasion is not None:
        based = {id(one.base) for one in chapters if one.base is not None}
        pages = [standard for standard in standards if id(standard.rules) not in based]
        stop_if_refused(check_names(occasion, table, [entered_by(one) for one in pages], occasion.columns, ""))
    told = [
        caution
        for one in standards
        for caution in (one.subject.cautions_for(SHOW).all if occasion is not None else one.every_caution)
    ]
    words = words_of(occasion, table, standards, language)
    return Show(tuple(chapters), words, occasion, tuple(dict.fromkeys(told)))
