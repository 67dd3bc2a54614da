"""`koirules compare`: two editions of a standard."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click

from koirules.api import Standard
from koirules.commands.inputs import (
    is_same_file,
    label_option,
    meant_for_others,
    pairs_of,
    replace_option,
    setting_option,
    standard_from,
    stop_if_there,
    varieties_installed,
)
from koirules.commands.output import DOES_NOT_HOLD, HOLDS, show_problems, shown, stop, stop_if_refused
from koirules.problems import RecordError, StandardError
from koirules.records.comparison_files import Edition, check_comparison_path, write_comparison
from koirules.records.records import read_records

if TYPE_CHECKING:
    from koirules.analysis.diff.moves import Batch


@click.command("compare")
@click.argument("old")
@click.argument("new")
@click.option(
    "--records",
    type=click.Path(),
    default=None,
    metavar="FILE",
    help="A batch: show who moves from which grade to which, and by which change.",
)
@click.option(
    "--out",
    "outs",
    type=click.Path(),
    multiple=True,
    metavar="FILE",
    help="Write all of it (.json), or the fish that moved, without records the changes (.csv).",
)
@click.option("--check", is_flag=True, help="End with 1 unless it is proved that no fish is graded differently.")
@label_option
@setting_option
@replace_option
def command(
    old: str,
    new: str,
    records: str | None,
    outs: tuple[str, ...],
    check: bool,
    labels: tuple[str, ...],
    changes: tuple[str, ...],
    replace: bool,
) -> None:
    """Compare two editions of a standard, OLD and NEW: rule files, or names of rule sets.

    What changed, statement by statement, through their bases too; whether the two can ever grade a fish differently, with the
    simplest such fish: the one with the fewest traits other than in an ordinary fish; and of a batch, who moves from which
    grade to which, and which change did it.
    """
    _check_outs(outs, [name for name in (old, new, records) if name is not None])
    stop_if_there(outs, replace=replace)
    editions = _editions(old, new, changes)
    for edition in editions:
        show_problems(edition.warnings)
    batch = None if records is None else _batch(editions, records, labels)
    from koirules.analysis.diff.comparison import compared
    from koirules.commands.render.editions import tell

    def progress(what: str) -> None:
        if sys.stderr.isatty():
            click.echo(f"\r\x1b[K  {what}", err=True, nl=False)

    try:
        found = compared(editions[0].grader, editions[1].grader, batch, progress)
    except RecordError as error:
        stop_if_refused(error.problems)
        raise
    if sys.stderr.isatty():
        click.echo("\r\x1b[K", err=True, nl=False)
    about = [_about(one) for one in editions]
    failed = [
        problem for out in outs if (problem := write_comparison(Path(out), about[0], about[1], found)) is not None
    ]
    tell(*editions, found)
    if failed:
        show_problems(failed)
        stop("Not everything was written.")
    moved = found.moves is not None and bool(found.moves.moves)
    differ = not found.parting.never or bool(found.unmentioned) or found.of_judges or moved
    sys.exit(DOES_NOT_HOLD if check and differ else HOLDS)


def _about(one: Standard) -> Edition:
    settings = {name: one.settings[name].words for name in one.changed}
    return Edition(one.title, one.edition, one.seal, one.variety, one.rules.file, settings)


def _check_outs(outs: Sequence[str], given: Sequence[str]) -> None:
    """End the command where a result could not be written, or would take the place of what was given."""
    wrong = [problem for out in outs if (problem := check_comparison_path(Path(out))) is not None]
    if wrong:
        show_problems(wrong)
        stop("Nothing was written.")
    for out in outs:
        if any(is_same_file(out, name) for name in given):
            stop(
                f"{shown(out)} is what was given: results would take its place. Name another file. Nothing was written."
            )


def _editions(old: str, new: str, changes: Sequence[str]) -> tuple[Standard, Standard]:
    """Both editions, each with the settings that it has; one that neither has is told of the older one."""
    plain = standard_from(old), standard_from(new)
    given = pairs_of(changes)
    known = {name for one in plain for name in one.rules.settings}
    try:
        one, other = (
            each.with_settings(
                {name: given[name] for name in given if name in each.rules.settings or name not in known}
            )
            for each in plain
        )
    except StandardError as error:
        stop_if_refused(error.problems)
        raise
    return one, other


def _batch(editions: tuple[Standard, Standard], records: str, labels: Sequence[str]) -> Batch:
    """The records as each edition reads them; a column of a trait that only one of them knows is no problem of the other."""
    from koirules.analysis.diff.moves import Batch

    old, new = (edition.traits for edition in editions)
    both = [read_records(Path(records), traits, labels) for traits in ({**new, **old}, {**old, **new})]
    stop_if_refused(list(dict.fromkeys([*both[0].problems, *both[1].problems])))
    show_problems(meant_for_others(editions[1], both[1].records, both[1].file, varieties_installed()))
    if not both[0].records:
        click.echo(f"There is no {editions[1].subject.one} in {shown(records)}.", err=True)
    return Batch(both[0].records, both[1].records, both[0].file)
