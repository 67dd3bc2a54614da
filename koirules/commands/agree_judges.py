"""What `koirules agree` tells of several judges, or of several who sort."""

from __future__ import annotations

import csv
import json
import sys
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

import click
from attrs import asdict, evolve

from koirules.analysis.agreement import IN, OPEN, OUT, UNSURE, Judging
from koirules.api import Standard
from koirules.commands.inputs import shown_titles, standard_words, stop_if_there
from koirules.commands.output import DOES_NOT_HOLD, HOLDS, show_problems, shown, stop, stop_if_refused
from koirules.problems import Problem
from koirules.problems.agreeing import nothing_in_common, unknown_verdict
from koirules.problems.saving import unknown_output_ending
from koirules.records.records import Batch, read_every_look
from koirules.records.safe_text import for_csv
from koirules.records.writing import write_beside
from koirules.results.record import Record
from koirules.rounds.looks import latest_looks
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.wordings import VERDICT

if TYPE_CHECKING:
    from koirules.analysis.judges import Alike, JudgesAgreement, Said
    from koirules.languages import Tongue
    from koirules.standard.parts import Rules
    from koirules.vocabulary.subject import Subject

RELIABLE = 0.8
"""Below this alpha a trait is named among what a committee mends next (customary since Krippendorff, Content Analysis, 2004, from
memory)."""

_MOST = 5
OWNER = "owner"
"""The column of entry sheets that names whose fish it is; nobody is judged by it."""


def judges_named(batch: Batch) -> tuple[str, ...]:
    """The judges that the records of a file name, each as it is written first."""
    found: dict[str, str] = {}
    for record in batch.records:
        if record.judge:
            found.setdefault(folded(record.judge), record.judge)
    return tuple(found.values())


def check_out(out: str | None, *, replace: bool) -> None:
    """End the command where a table cannot be written under a name."""
    if out is not None:
        stop_if_refused([unknown_output_ending(out, Path(out).suffix, (".csv",))] if Path(out).suffix != ".csv" else [])
        stop_if_there([out], replace=replace)


def tell_judges(
    standard: Standard, files: Sequence[str], kept: tuple[str, ...], *, as_json: bool, out: str | None
) -> NoReturn:
    """Tell how far the judges of a file, or the sorters of several files, agree; ends the command."""
    said = list(_of_files(standard, files) if len(files) > 1 else _of_judges(standard, files[0]))
    _tell_said([standard], said, {}, files[0], kept, as_json=as_json, out=out)


def tell_show(
    rules: Sequence[str],
    file: str,
    kept: tuple[str, ...],
    changes: Sequence[str],
    language: str | None,
    *,
    as_json: bool,
    out: str | None,
) -> NoReturn:
    """The same of a file of fish of several standards, each with a panel."""
    from koirules.analysis.judges import Said
    from koirules.commands.grade_mixed import graded_by_several
    from koirules.records.records import read_table

    headings = {folded(heading.text) for heading in read_table(Path(file)).headings if heading.text}
    several = graded_by_several(rules, file, [OWNER] if OWNER in headings else [], changes, language, None, None)
    judged: dict[str, Said] = {}
    of: dict[str, Rules] = {}
    for standard, part in zip(several.standards, several.graded, strict=True):
        for record, result in zip(part.outcome.records, part.results, strict=True):
            seats = [seat for seat in record.seats if seat.judge]
            for seat, one in zip(seats, result.panel.judges if result.panel else (), strict=True):
                known = judged.get(folded(seat.judge)) or Said(seat.judge, {}, {})
                judged[folded(seat.judge)] = evolve(
                    known,
                    records={**known.records, record.fish: seat},
                    results={**known.results, record.fish: one.result},
                )
                of[record.fish] = standard.rules
    _tell_said(several.standards, list(judged.values()), of, file, kept, as_json=as_json, out=out)


def _tell_said(
    standards: Sequence[Standard],
    said: Sequence[Said],
    of: Mapping[str, Rules],
    file: str,
    kept: tuple[str, ...],
    *,
    as_json: bool,
    out: str | None,
) -> NoReturn:
    from koirules.analysis.judges import judges_agreement

    standard = standards[0]
    judging = Judging.of([word for one in said for word in one.verdicts.values()], standard.grades, kept)
    verdicts = [{fish: judging.of_verdict(word) for fish, word in one.verdicts.items()} for one in said]
    said = [
        evolve(one, verdicts={fish: word for fish, word in each.items() if word != OPEN})
        for one, each in zip(said, verdicts, strict=True)
    ]
    titles: dict[str, str] = {}
    for one in standards:
        plain = one.grader.reasoner.teller.plain
        titles |= {name: plain.trait(trait) for name, trait in one.traits.items()}
    verdict_order = [one for one in judging.categories if one != OPEN]
    found = judges_agreement([one.rules for one in standards], said, titles, verdict_order, of)
    if not found.whole and not found.traits:
        stop_if_refused([nothing_in_common(file)])
    if out is not None:
        problem = write_beside(Path(out), lambda path: _write(path, found))
        if problem is not None:
            show_problems([problem])
            stop("Nothing was written.")
    if as_json:
        click.echo(
            json.dumps({"seals": [one.seal for one in standards], **asdict(found)}, indent=1, ensure_ascii=False)
        )
    else:
        _tell(standards, found)
        if out is not None:
            click.echo(f"Wrote {shown(out)}.")
    sys.exit(DOES_NOT_HOLD if any(one.parted for one in found.whole) else HOLDS)


def _of_judges(standard: Standard, file: str) -> Iterator[Said]:
    """What each judge of a file said, with what the row without a judge says."""
    batch = _read(standard, file)
    names = judges_named(batch)
    latest = [seat for record in latest_looks(batch.records) for seat in record.seats]
    for name in names:
        own = latest_looks([one for one in batch.records if folded(one.judge) == folded(name)])
        seats = [one for one in latest if folded(one.judge) == folded(name)]
        yield _said(standard, file, name, own, seats)


def _of_files(standard: Standard, files: Sequence[str]) -> Iterator[Said]:
    """What the sorter of each file said."""
    names = [Path(file).name for file in files]
    for file, name in zip(files, names, strict=True):
        batch = _read(standard, file)
        if judges_named(batch):
            stop(f"{shown(file)} names judges. Give it alone: its judges are compared with each other.")
        records = latest_looks(batch.records)
        whole = [evolve(record, own=frozenset(record.readings)) for record in records]
        yield _said(standard, file, name if names.count(name) == 1 else file, records, whole)


def _said(standard: Standard, file: str, name: str, own: Sequence[Record], whole: Sequence[Record]) -> Said:
    from koirules.analysis.judges import Said

    measured = standard.measured(whole, file)
    stop_if_refused([problem for problem in measured.problems if not problem.warning])
    results = {one.fish: one for one in standard.grade_records(measured.records).results}
    words = standard.verdict_words
    verdicts: dict[str, str] = {}
    problems: list[Problem] = []
    for record in own:
        word = record.labels.get(VERDICT, "")
        if word and folded(word) not in words:
            problems.append(unknown_verdict(file, record.row, word, (IN, OUT, UNSURE, *standard.grades)))
        elif word:
            verdicts[record.fish] = words[folded(word)]
    stop_if_refused(problems)
    return Said(name, {one.fish: one for one in measured.records}, results, verdicts)


def _read(standard: Standard, file: str) -> Batch:
    batch = read_every_look(Path(file), standard.traits)
    stop_if_refused([problem for problem in batch.problems if not problem.warning])
    return batch


def _write(path: Path, found: JudgesAgreement) -> None:
    with path.open("w", encoding="utf-8", newline="") as file:
        rows = csv.writer(file)
        rows.writerow(
            ("what", "name", "title", "compared as", "alpha", "low", "high", "fish", "parted", "against", "times")
        )
        for one in (*found.whole, *found.traits):
            ends = one.interval or ("", "")
            against = f"{one.words[0]} / {one.words[1]}" if one.words else ""
            told = (one.what, one.name, for_csv(one.title), one.level, "" if one.alpha is None else one.alpha, *ends)
            rows.writerow((*told, one.fish, one.parted, for_csv(against), one.words[2] if one.words else ""))


def _tell(standards: Sequence[Standard], found: JudgesAgreement) -> None:
    from koirules.analysis.judges import FEWEST

    names, tongue, subject = shown_titles(standards[0]), standards[0].tongue, standards[0].subject
    fish = tongue.counted(subject.one, subject.many, found.fish)
    click.echo(tongue("{number} judges, {fish} that two or more of them judged", number=len(found.judges), fish=fish))
    heads = (
        tongue("alpha"),
        tongue("95 % interval"),
        tongue.of(subject.many),
        tongue("they part on"),
        tongue("most often against each other"),
    )
    _print(("", *heads), [_row(one, names, tongue) for one in (*found.whole, *found.traits)])
    if found.fleiss is not None:
        click.echo(tongue("Fleiss' kappa of the grade: {number}", number=tongue.figure(f"{found.fleiss:.2f}")))
    if found.concordance is not None:
        number = tongue.figure(f"{found.concordance:.2f}")
        click.echo(tongue("Order of the fish, Kendall's W: {number} (1: all put them in one order)", number=number))
        score = next((one for one in found.whole if one.what == "score"), None)
        if score is not None and score.alpha is not None and score.alpha < RELIABLE <= found.concordance:
            _line(tongue("The judges order the fish alike, but give them different points: their levels differ."))
    heads = (
        tongue("judge"),
        tongue.of(subject.many),
        tongue("points above the others"),
        tongue("order as the others (rho)"),
        tongue("alpha of the others"),
    )
    _print(
        heads,
        [
            (
                shown(one.judge),
                str(one.fish),
                tongue.figure(_signed(one.shift)),
                _two(one.rho, tongue),
                _two(one.without, tongue),
            )
            for one in found.apart
        ],
    )
    apart = found.stands_apart
    if apart is not None:
        main = next(one for one in found.whole if one.alpha is not None)
        words = tongue(
            "{judge} stands apart: without this judge alpha of the {what} is {other}, not {number}.",
            judge=apart.judge,
            what=tongue.of(main.title),
            other=_two(apart.without, tongue),
            number=_two(main.alpha, tongue),
        )
        _line(words)
    if found.partings:
        click.echo(click.style(tongue("They part most on"), bold=True))
    for parting in found.partings[:_MOST]:
        grades = tongue.joined(f"{number} {names[grade]}" for grade, number in parting.grades)
        ends = (tongue.figure(f"{end:g}") for end in (parting.score_low, parting.score_high))
        low, high = ends
        scores = tongue("scores {low} to {high}", low=low, high=high) if standards[0].rules.sections else ""
        differing = "; ".join(f"{title}: {words}" for title, words in parting.differing)
        _line(f"{parting.fish}: {'; '.join(part for part in (grades, scores, differing) if part)}")
    known = [one for one in found.traits if one.alpha is not None and one.fish >= FEWEST]
    unlike = [one for one in known if one.alpha is not None and one.alpha < RELIABLE][:_MOST]
    if unlike:
        click.echo(click.style(tongue("What they read differently, and a committee mends next"), bold=True))
    for one in unlike:
        against = "" if one.words is None else _against(one.words, subject, tongue)
        read = tongue("; read by {parts}", parts=tongue.joined(one.read_by)) if one.read_by else ""
        _line(f"{one.title}: {tongue('alpha')} {_two(one.alpha, tongue)}{against}{read}")
    for standard in standards[:1] if len(standards) == 1 else ():
        click.echo(standard_words(standard))


def _against(words: tuple[str, str, int], subject: Subject, tongue: Tongue) -> str:
    """Which two words stand against each other most often, and on how many fish."""
    fish = tongue.counted(subject.one, subject.many, words[2])
    return tongue("; {one} against {other} on {fish}", one=words[0], other=words[1], fish=fish)


def _row(one: Alike, names: Mapping[str, str], tongue: Tongue) -> tuple[str, ...]:
    interval = ""
    if one.interval is not None:
        interval = tongue.stretch(*(_two(end, tongue) for end in one.interval))
    told = tongue("all say the same") if one.alpha is None else _two(one.alpha, tongue)
    against = ""
    if one.words is not None:
        first, second, times = one.words
        against = f"{names.get(first, first)} / {names.get(second, second)} ({times})"
    return shown(tongue.of(one.title)), told, interval, str(one.fish), str(one.parted), shown(against)


def _print(headings: Sequence[str], rows: Sequence[Sequence[str]]) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
    for number, heading in enumerate(headings):
        table.add_column(heading, justify="right" if 0 < number < len(headings) - (len(headings) == 6) else "left")
    for row in rows:
        table.add_row(*map(Text, row))
    Console(highlight=False, width=None if sys.stdout.isatty() else 110).print(table)


def _line(text: str) -> None:
    click.echo(click.wrap_text(shown(text), 100, "  ", "    "))


def _two(number: float | None, tongue: Tongue) -> str:
    return "" if number is None else tongue.figure(f"{number:.2f}")


def _signed(number: float | None) -> str:
    return "" if number is None else f"{number:+.1f}"
