"""`koirules grade` over a batch of mixed varieties: each fish by the standard of its variety and stage."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING

import click
from attrs import evolve

from koirules.api import Standard
from koirules.classes.table import ClassTable
from koirules.commands.classing import by_classes, with_classes
from koirules.commands.inputs import (
    Graded,
    decisions_by,
    graded_together,
    pairs_of,
    registry,
    rows_left_out,
    rule_files_in,
    standard_from,
    tell_untranslated,
)
from koirules.commands.output import (
    DOES_NOT_HOLD,
    show_cautions,
    show_problems,
    shown,
    stop,
    stop_if_refused,
)
from koirules.commands.page_options import Wishes
from koirules.plugins import Registry, load_registry
from koirules.problems import StandardError, mixed
from koirules.results.record import Record
from koirules.values import frozen
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.spoken import said
from koirules.vocabulary.subject import in_common

if TYPE_CHECKING:
    from koirules.languages import Tongue
    from koirules.records.mixed_records import LeftOver, MixedBatch, Reading
    from koirules.records.not_graded import NotGraded, Row
    from koirules.report.result_files import About
    from koirules.results.result import Result


def told_apart(rules: str, records: tuple[str, ...]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """What a command was given, told apart into rules and records.

    The first is rules, or a folder of rule files (unless it is the folder of one rule set); then come more rules for as long
    as one ends in .koi, or is the name of a rule set and no file; the others are records.
    """
    from koirules.records.plugged_formats import is_table

    if is_table(rules):
        return (rules,), records  # told as what it is where the rules are read
    several = rule_files_in(Path(rules)) or (rules,)
    count = 0
    for given in records:
        if not given.lower().endswith(".koi") and not _is_rule_set(given):
            _check_there(given)
            break
        count += 1
    if count == len(records):
        stop("Rules alone were given. The records come behind the rules.")
    return (*several, *records[:count]), records[count:]


def grade_mixed(
    rules: Sequence[str],
    records: Sequence[str],
    outs: Sequence[str],
    plots: Sequence[str],
    labels: Sequence[str],
    changes: Sequence[str],
    language: str | None,
    decisions: str | None,
    classes: ClassTable | None,
    *,
    large: bool,
    as_recorded: bool,
    in_full: bool,
    wishes: Wishes,
    leave_out_broken: bool,
    broken_as_open: bool,
) -> None:
    """Grade a batch by several standards, each ranked by itself; ends with status 1 where a fish was not graded."""
    from koirules.commands.render.batch import tell_batch, unread_in
    from koirules.commands.writing_results import write_all

    if large:
        stop(
            "A batch of mixed varieties is one file of records, .csv, .xlsx or .jsonl, of at most 20 MB. Give one file at a "
            "time, or grade whole files by one standard each."
        )
    several = graded_by_several(
        rules,
        records[0],
        labels,
        changes,
        language,
        decisions,
        classes,
        leave_out_broken=leave_out_broken,
        broken_as_open=broken_as_open,
    )
    standards, graded, batch = several.standards, several.graded, several.batch
    tongue = standards[0].tongue
    rows: list[Row] = [*several.results, *(_not_graded(one, tongue) for one in batch.left)]
    about = about_several(standards, graded, Path(batch.file).name)
    about = by_classes(about, classes)
    given = [(standard, part.batch) for standard, part in zip(standards, graded, strict=True)]
    failed = write_all(outs, plots, rows, about, given, wishes)
    for standard, part in zip(standards, graded, strict=True):
        if part.results:
            tell_batch(standard, part, as_recorded=as_recorded, in_full=in_full)
            click.echo()
    _tell_left(batch, standards)
    show_cautions(about.cautions)
    if failed:
        show_problems(failed)
        stop("Not everything was written.")
    if batch.left or several.broken or unread_in(several.results):
        sys.exit(DOES_NOT_HOLD)


@frozen
class Several:
    """A batch that several standards graded. graded: what each of them did, in the order of `standards`.

    broken: whether rows were left out, or values taken as not recorded, since they could not be read.
    """

    standards: tuple[Standard, ...]
    graded: tuple[Graded, ...]
    batch: MixedBatch
    broken: bool = False

    @property
    def results(self) -> tuple[Result, ...]:
        """The results of its fish, standard after standard."""
        return tuple(row for part in self.graded for row in part.results)


def graded_by_several(
    rules: Sequence[str],
    records: str,
    labels: Sequence[str],
    changes: Sequence[str],
    language: str | None,
    decisions: str | None,
    classes: ClassTable | None,
    *,
    leave_out_broken: bool = False,
    broken_as_open: bool = False,
) -> Several:
    """Grade a file of records by several standards; ends the command with its problems where it cannot be read.

    leave_out_broken, broken_as_open: as for a batch of one standard (graded).
    """
    from koirules.records.mixed_records import read_mixed
    from koirules.records.records import Batch

    plugins = registry()
    standards = _standards(rules, changes, language, plugins)
    readings = [_reading(standard, plugins) for standard in standards]
    batch = read_mixed(
        Path(records), readings, lambda text: said(text, plugins.varieties), labels, broken_as_open=broken_as_open
    )
    named = [reading.name for reading in readings]
    measured = [
        standard.measured([_marked(record, standard, name) for record in group], batch.file)
        for standard, group, name in zip(standards, batch.records, named, strict=True)
    ]
    broken = rows_left_out(
        [*batch.problems, *(problem for part in measured for problem in part.problems)],
        leave_out_broken=leave_out_broken,
    )
    parts = [
        with_classes(Batch(batch.file, part.records, (), ()), standard, classes, plugins.varieties)
        for standard, part in zip(standards, measured, strict=True)
    ]
    decided = decisions_by(standards, decisions, [[record.fish for record in part.records] for part in parts])
    graded = tuple(
        Graded(part, graded_together(standard, part.records, words))
        for standard, part, words in zip(standards, parts, decided, strict=True)
    )
    if not any(part.records for part in parts) and not batch.left:
        click.echo(f"There is no record in {shown(records)}.", err=True)
    broken = broken or any(record.unreadable for part in parts for record in part.records)
    return Several(tuple(standards), graded, batch, broken)


def _check_there(given: str) -> None:
    """End the command where neither rules nor records are called so, as a misspelt rule set among others."""
    if Path(given).suffix or any(sign in given for sign in "/\\*?["):
        return  # told as the file that it is meant to be
    try:
        there = Path(given).exists()
    except (OSError, ValueError):
        there = False
    if not there:
        stop_if_refused([mixed.no_rules_or_records(given, near(given, load_registry().rulesets))])


def _is_rule_set(given: str) -> bool:
    from koirules.records.plugged_formats import is_table

    if is_table(given) or any(sign in given for sign in "/\\*?["):
        return False
    try:
        if Path(given).exists():
            return False
    except (OSError, ValueError):
        return False
    return given in load_registry().rulesets


def _standards(rules: Sequence[str], changes: Sequence[str], language: str | None, plugins: Registry) -> list[Standard]:
    """Each standard with those of the changed settings that it has; a setting that none of them has ends the command."""
    standards = [standard_from(one, (), language, plugins, quiet=True) for one in rules]
    if language is not None:
        tell_untranslated(list(zip(rules, standards, strict=True)), language)
    files = [Path(standard.rules.file).resolve() for standard in standards]
    doubled = [rules[place] for place, file in enumerate(files) if file in files[:place]]
    stop_if_refused([mixed.standard_named_twice(one) for one in dict.fromkeys(doubled)])
    changed = pairs_of(changes)
    known = sorted({name for standard in standards for name in standard.settings})
    for name in changed:
        if name not in known:
            guess = near(name, known)
            stop(f'No standard here has a setting "{shown(name)}".' + (f' Did you mean "{guess}"?' if guess else ""))
    try:
        return [
            standard.with_settings({name: value for name, value in changed.items() if name in standard.settings})
            for standard in standards
        ]
    except StandardError as error:
        stop_if_refused(error.problems)
        raise


def _reading(standard: Standard, plugins: Registry) -> Reading:
    from koirules.grading.purposes import Purpose
    from koirules.records.mixed_records import Reading

    named = tuple(meant for one in standard.varieties if (meant := said(one, plugins.varieties)) is not None)
    stage = standard.rules.stage
    name = f"{standard.title}, edition {standard.edition}"
    rules = standard.rules
    bases = tuple((base.title.text, base.edition) for base in rules.source.chain)
    purpose = Purpose(named, None if stage is None else folded(stage))
    return Reading(purpose, standard.traits, name, (rules.title.text, rules.edition), bases)


def _marked(record: Record, standard: Standard, name: str) -> Record:
    """A record that carries its standard along, into files that have no other place for it."""
    return evolve(record, labels={**record.labels, "standard": name, "seal": standard.seal})


def _not_graded(one: LeftOver, tongue: Tongue) -> NotGraded:
    from koirules.records.not_graded import NotGraded

    given = {"variety": one.variety, "stage": one.stage}
    labels = {name: value for name, value in given.items() if value}
    fish = one.fish or tongue("row {number}", number=one.row)
    why = one.told(tongue)
    return NotGraded(fish, tongue("not graded: {why}", why=why), labels, why)


def about_several(standards: Sequence[Standard], graded: Sequence[Graded], records: str) -> About:
    """What files say about where the results of several standards come from."""
    from koirules.records.about import About

    every = tuple(part.about(standard) for standard, part in zip(standards, graded, strict=True))
    parts = tuple(part for part in every if part.fish) or every
    rounds = tuple(evolve(one, title=f"{part.title}: {one.title}") for part in parts for one in part.rounds)
    alerts = tuple(alert for part in parts for alert in part.alerts)
    cautions = tuple(dict.fromkeys(words for part in parts for words in part.cautions))
    subject = in_common(part.subject for part in parts)
    return About(
        "",
        "",
        None,
        "",
        cautions=cautions,
        alerts=alerts,
        rounds=rounds,
        records=records,
        parts=parts,
        subject=subject,
        tongue=standards[0].tongue,
    )


def _tell_left(batch: MixedBatch, standards: Sequence[Standard]) -> None:
    """Say which fish were not graded, by the reason."""
    from koirules.commands.render.changes import wrapped

    if not batch.left:
        return
    click.echo(
        click.style(f"Not graded: {in_common(one.subject for one in standards).counted(len(batch.left))}", bold=True)
    )
    known = sorted({variety for standard in standards for variety in standard.varieties})
    for why, fish in groupby(sorted(batch.left, key=lambda one: (one.why, one.row)), key=lambda one: one.why):
        named = [shown(one.fish) or f"row {one.row}" for one in fish]
        guess = near(why.removeprefix("no standard for "), known)
        meant = f' (did you mean "{guess}"?)' if guess and why != f"no standard for {guess}" and ", " not in why else ""
        click.echo(wrapped(f"{shown(why)}{meant}: {', '.join(named)}"))
    click.echo()
