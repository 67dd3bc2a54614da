"""`koirules agree`: a sorter's own words beside the rules, another sorter or another look."""

from __future__ import annotations

import json
import sys
from collections.abc import Mapping
from pathlib import Path

import click

from koirules.analysis.agreement import IN, OUT, UNSURE, Agreement, Judging
from koirules.api import Standard
from koirules.commands.agree_judges import check_out, judges_named, tell_judges, tell_show
from koirules.commands.inputs import (
    graded,
    language_option,
    replace_option,
    rule_files_in,
    setting_option,
    shown_titles,
    standard_from,
    standard_words,
)
from koirules.commands.output import DOES_NOT_HOLD, HOLDS, shown, stop, stop_if_refused
from koirules.problems import Problem
from koirules.problems.agreeing import no_such_grade, no_two_looks, no_verdicts, unknown_verdict
from koirules.records.records import Batch, read_every_look
from koirules.results.result import Result
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.wordings import VERDICT


@click.command("agree")
@click.argument("rules")
@click.argument("records")
@click.option(
    "--with",
    "others",
    metavar="FILE",
    multiple=True,
    help="Compare with the verdicts of this file: a second sorter. Given twice or more: of several sorters.",
)
@click.option("--looks", is_flag=True, help="Compare the verdicts of the first look with those of the last.")
@click.option(
    "--in", "kept", metavar="GRADE", multiple=True, help="A grade that counts as in; the best one by default."
)
@click.option("--json", "as_json", is_flag=True, help="Print it as data.")
@click.option(
    "--out",
    type=click.Path(),
    default=None,
    metavar="FILE",
    help="Of several judges: write the table of agreement (.csv).",
)
@replace_option
@setting_option
@language_option
def command(
    rules: str,
    records: str,
    others: tuple[str, ...],
    looks: bool,
    kept: tuple[str, ...],
    as_json: bool,
    out: str | None,
    replace: bool,
    changes: tuple[str, ...],
    language: str | None,
) -> None:
    """Set the verdicts of a sorter beside the grades of RULES, or beside another sorter or look.

    RECORDS has a column `verdict`: in, out, unsure, or the name or title of a grade. Prints a table of both, the share that
    agrees with its 95 % interval, Cohen's kappa, and each fish where they differ. Exit status 1: they differ somewhere.

    Where RECORDS has a column `judge` with several judges, or with several files behind --with: how far they agree on the score,
    the grade and each trait (Krippendorff's alpha), who stands apart, the fish on which they part most, and what they read
    differently. RULES may then be a folder of rule files: each fish is graded by that of its variety.
    """
    several = rule_files_in(Path(rules))
    if several:
        if looks or others:
            stop(
                "A folder of rule files is for one file of records that names several judges, without --with and --looks."
            )
        check_out(out, replace=replace)
        tell_show(several, records, kept, changes, language, as_json=as_json, out=out)
    standard = standard_from(rules, changes, language)
    stop_if_refused([no_such_grade(name, standard.grades) for name in kept if name not in standard.grades])
    judges = judges_named(_read(standard, records))
    if len(judges) > 1 or len(others) > 1:
        if looks or (len(judges) > 1 and others):
            stop("A file that names several judges, or several files behind --with, are compared by themselves.")
        check_out(out, replace=replace)
        tell_judges(standard, [records, *others], kept, as_json=as_json, out=out)
    if out is not None:
        stop("--out is for several judges: a column `judge`, or --with given twice or more.")
    other = others[0] if others else None
    first = _verdicts(standard, records, last=not looks)
    results: Mapping[str, Result] = {}
    if looks:
        second = _verdicts(standard, records, last=True)
        titles = (standard.tongue("first look"), standard.tongue("last look"))
        first, second = _of_two_looks(standard, records, first, second)
    elif other is not None:
        second, titles = _verdicts(standard, other, last=True), (Path(records).name, Path(other).name)
    else:
        second, titles = {}, (standard.tongue("the sorter"), standard.tongue("the rules"))
        results = {result.fish: result for result in graded(standard, records, ()).results}
    judging = Judging.of([*first.values(), *second.values()], standard.grades, kept)
    ours = {fish: judging.of_verdict(verdict) for fish, verdict in first.items()}
    theirs = {fish: judging.of_verdict(verdict) for fish, verdict in second.items()}
    theirs |= {fish: judging.of_result(result) for fish, result in results.items()}
    found = judging.agreement(ours, theirs)
    if as_json:
        click.echo(json.dumps(_as_data(standard, found, titles, results), indent=1, ensure_ascii=False))
    else:
        _tell(standard, found, titles, results)
    sys.exit(DOES_NOT_HOLD if found.differing else HOLDS)


def _read(standard: Standard, file: str) -> Batch:
    batch = read_every_look(Path(file), standard.traits)
    stop_if_refused(batch.problems)
    return batch


def _verdicts(standard: Standard, file: str, *, last: bool) -> dict[str, str]:
    """The verdict of each fish of a file, of its last look or of its first; ends the command where there is none."""
    words = standard.verdict_words
    found: dict[str, str] = {}
    problems: list[Problem] = []
    for record in _read(standard, file).records:
        said = record.labels.get(VERDICT, "")
        if not said or (not last and record.fish in found):
            continue
        if folded(said) not in words:
            problems.append(unknown_verdict(file, record.row, said, (IN, OUT, UNSURE, *standard.grades)))
            continue
        found[record.fish] = words[folded(said)]
    stop_if_refused(problems or ([] if found else [no_verdicts(file)]))
    return found


def _of_two_looks(
    standard: Standard, file: str, first: Mapping[str, str], last: Mapping[str, str]
) -> tuple[dict[str, str], dict[str, str]]:
    """The verdicts of the fish that have one at two looks or more."""
    said: dict[str, int] = {}
    for record in _read(standard, file).records:
        said[record.fish] = said.get(record.fish, 0) + bool(record.labels.get(VERDICT))
    several = [fish for fish, number in said.items() if number > 1]
    stop_if_refused([] if several else [no_two_looks(file)])
    return {fish: first[fish] for fish in several}, {fish: last[fish] for fish in several}


def _tell(standard: Standard, found: Agreement, titles: tuple[str, str], results: Mapping[str, Result]) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    tongue = standard.tongue
    names = {word: tongue(word) for word in (IN, OUT, UNSURE)} | shown_titles(standard)
    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
    table.add_column(shown(f"{titles[0]} / {titles[1]}"))
    for category in found.categories:
        table.add_column(Text(names.get(category, category)), justify="right")
    for category, row in zip(found.categories, found.table, strict=True):
        table.add_row(Text(names.get(category, category)), *map(str, row))
    console = Console(highlight=False, width=None if sys.stdout.isatty() else 120)
    console.print(table)
    number, (low, high) = len(found.pairs), found.interval
    share, lowest, highest = (tongue.figure(f"{100 * part:.1f}") for part in (found.share, low, high))
    click.echo(
        tongue(
            "{agreed} of {fish} agree: {share} % (95 % interval {low} % to {high} %)",
            agreed=tongue.whole(found.agreed),
            fish=tongue.counted(standard.subject.one, standard.subject.many, number),
            share=share,
            low=lowest,
            high=highest,
        )
    )
    kappa = found.kappa
    told = tongue("not defined, since both know one word only") if kappa is None else tongue.figure(f"{kappa:.3f}")
    click.echo(tongue("Cohen's kappa: {number}", number=told))
    if results:
        click.echo(standard_words(standard))
    for pair in found.differing:
        why = f": {results[pair.fish].why}" if pair.fish in results else ""
        one, two = (names.get(category, category) for category in (pair.first, pair.second))
        differ = tongue("{fish}: {one}, not {other}", fish=pair.fish, one=one, other=two)
        click.echo(click.wrap_text(shown(f"{differ}{why}"), 110, "  ", "    "))


def _as_data(
    standard: Standard, found: Agreement, titles: tuple[str, str], results: Mapping[str, Result]
) -> dict[str, object]:
    return {
        "seal": standard.seal,
        "judgements": titles,
        "categories": found.categories,
        "table": found.table,
        "fish": len(found.pairs),
        "agreed": found.agreed,
        "share": found.share,
        "interval": found.interval,
        "kappa": found.kappa,
        "differing": [
            {
                "fish": pair.fish,
                "first": pair.first,
                "second": pair.second,
                "why": results[pair.fish].why if pair.fish in results else None,
            }
            for pair in found.differing
        ],
    }
