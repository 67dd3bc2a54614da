"""`koirules grade` over what is larger than a table on a screen: totals, the best fish, and files of results."""

from __future__ import annotations

import signal
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click

from koirules.api import Standard
from koirules.commands.inputs import shown_titles, standard_words
from koirules.commands.output import show_cautions, show_problems, shown, stop_if_refused
from koirules.problems import Problem
from koirules.problems import runs as say
from koirules.problems.saving import unknown_output_ending
from koirules.vocabulary.kinds import shortest

if TYPE_CHECKING:
    from koirules.runs.run import Finished, Runner
    from koirules.runs.totals import Totals
    from koirules.vocabulary.subject import Subject

LARGE_BYTES = 20_000_000
"""A text file of records beyond this is read piece by piece, and its fish are not listed one by one."""

_PERCENTILES = (10, 25, 50, 75, 90)
_BARS = 12
_STEPS = tuple(step * 10**power for power in range(8) for step in (1, 2, 5))
"""Of how many points a bar of the distribution may be; the narrowest that makes few enough bars is taken."""

_MOST_SETS = 8
_WIDTH = 40


def is_large(records: Sequence[str], outs: Sequence[str]) -> bool:
    """Whether records are graded as whole files: several, a folder, a pattern, Parquet, or a large text file."""
    from koirules.records.large_files import ENDINGS

    if len(records) > 1 or any(not Path(out).suffix or Path(out).suffix.lower() == ".parquet" for out in outs):
        return True
    path = Path(records[0])
    try:
        if path.is_dir() or path.suffix.lower() == ".parquet":
            return True
        if path.suffix.lower() in ENDINGS and path.exists():
            return path.stat().st_size > LARGE_BYTES
    except (OSError, ValueError):
        return False
    return not path.exists() and any(sign in records[0] for sign in "*?[")


def grade_files(
    standard: Standard,
    records: Sequence[str],
    outs: Sequence[str],
    labels: Sequence[str],
    changes: Sequence[tuple[str, str]],
    top: int,
    on: str | None,
    leave_out: bool,
) -> None:
    """Grade whole files, print what came of them, and end the command with status 2 where nothing did."""
    stop_if_refused(_early(outs))  # before the engines are imported, which need what may not be installed
    from koirules.runs.clusters import ClusterError
    from koirules.runs.run import run_files
    from koirules.runs.work import Job

    job = Job(standard.whole_text, standard.rules.file, tuple(changes), tuple(labels), top)
    runner, done = _runner(on)
    # Ended from outside, it still takes its passing files away.
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(128 + signal.SIGTERM))
    try:
        finished = run_files(job, records, runner, outs[0] if outs else "", leave_out=leave_out, parted=on is not None)
    except ClusterError as error:
        stop_if_refused([error.problem])
        raise
    done()
    if finished.failed:
        stop_if_refused(finished.problems)
    show_problems(finished.problems)
    for written in finished.written:
        click.echo(f"Wrote {shown(written)}.")
    _print(standard, finished, top)


def _early(outs: Sequence[str]) -> list[Problem]:
    from koirules.records.large_results import RESULT_ENDINGS

    problems = [] if _has_frames() else [say.needs_frames("records")]
    if len(outs) > 1:
        problems.append(say.one_file_of_results(outs[1]))
    wrong = [out for out in outs if Path(out).suffix and Path(out).suffix.lower() not in RESULT_ENDINGS]
    return problems + [_wrong_ending(out, Path(out).suffix) for out in wrong]


def _wrong_ending(out: str, ending: str) -> Problem:
    from koirules.records.large_results import RESULT_ENDINGS
    from koirules.report.result_files import result_endings

    if ending.lower() in result_endings():
        return say.not_of_whole_files(out, ending, RESULT_ENDINGS)
    return unknown_output_ending(out, ending, RESULT_ENDINGS)


def _has_frames() -> bool:
    from importlib.util import find_spec

    return all(find_spec(name) is not None for name in ("polars", "pyarrow"))


def _runner(on: str | None) -> tuple[Runner, Callable[[], None]]:
    """What does the pieces, and what to call when they are done."""
    from koirules.runs.clusters import chosen
    from koirules.runs.run import here

    if on is None:
        counter = _Counter()
        return here(counter.advance), counter.finish
    runner = chosen(on)
    if isinstance(runner, Problem):
        stop_if_refused([runner])
        raise AssertionError("a problem that is no more than a warning")
    return runner, lambda: None


class _Counter:
    """Tells on a terminal how many fish are done; how many there are is not known before the end."""

    def __init__(self) -> None:
        self.done = 0
        self.shown = sys.stderr.isatty()

    def advance(self, rows: int) -> None:
        self.done += rows
        if self.shown:
            click.echo(f"\rGrading: {self.done:,} rows", nl=False, err=True)

    def finish(self) -> None:
        if self.shown and self.done:
            click.echo("", err=True)


def _print(standard: Standard, finished: Finished, top: int) -> None:
    from koirules.commands.render.rounds import tell_alerts, tell_round_totals

    totals = finished.totals
    titles = shown_titles(standard)
    tell_alerts(finished.alerts)
    if top and totals.best:
        _print_best(totals, titles, standard.subject.one, scored=bool(standard.rules.sections))
    click.echo(
        f"{standard.subject.counted(totals.fish)} {standard_words(standard)}"
        + "".join(f"; {name} = {standard.settings[name].words}" for name in standard.changed)
    )
    _print_grades(standard, totals, titles)
    if standard.rules.sections:
        _print_scores(totals, standard.subject)
    tell_round_totals(finished.rounds, standard.subject)
    for file in finished.left_out:
        click.echo(f"Left out: {shown(file)}")
    click.echo("(Names that stand twice were looked for in each 100,000 rows of a file, not among all.)")
    click.echo()
    show_cautions(standard.every_caution)


def _print_best(totals: Totals, titles: dict[str, str], noun: str, *, scored: bool) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    table = Table(box=SIMPLE_HEAD, padding=(0, 1), pad_edge=False)
    for heading in ("", noun, "grade", *(("score",) if scored else ())):
        table.add_column(heading, justify="right" if heading in {"", "score"} else "left")
    for place, best in enumerate(totals.best, 1):
        grades = " or ".join(titles[name] for name in best.possible.split("|"))
        row = [str(place), shown(best.fish), shown(grades)]
        low, high = -best.low / 100, -best.high / 100
        table.add_row(
            *map(Text, row), *([f"{low:.2f}" if low == high else f"{low:.2f} to {high:.2f}"] if scored else [])
        )
    Console(highlight=False, width=None if sys.stdout.isatty() else 120).print(table)


def _print_grades(standard: Standard, totals: Totals, titles: dict[str, str]) -> None:
    still_open = {possible: count for possible, count in totals.possible.items() if "|" in possible}
    rows = [(titles[name], totals.possible.get(name, 0)) for name in standard.grades]
    if still_open:
        rows.append(("not settled", sum(still_open.values())))
    width = max(len(title) for title, _ in rows)
    for title, count in rows:
        share = f"{100 * count / totals.fish:5.1f} %" if totals.fish else ""
        click.echo(f"  {title:<{width}}  {count:>13,}  {share}")
    ordered = sorted(still_open.items(), key=lambda item: (-item[1], item[0]))
    for possible, count in ordered[:_MOST_SETS]:
        click.echo(f"    {count:>13,} could be {' or '.join(titles[name] for name in possible.split('|'))}")
    if len(ordered) > _MOST_SETS:
        click.echo(f"    {sum(count for _, count in ordered[_MOST_SETS:]):>13,} could be others")


def _print_scores(totals: Totals, subject: Subject) -> None:
    sure = sum(totals.scores.values())
    if not sure:
        return
    click.echo(f"Scores of the {subject.counted(sure)} whose score is sure:")
    found = [(percent, totals.percentile(percent)) for percent in _PERCENTILES]
    told = ", ".join(f"{percent} % at {shortest(round(score, 2))}" for percent, score in found if score is not None)
    click.echo(f"  percentiles: {told}")
    low, high = min(totals.scores) // 100, max(totals.scores) // 100
    step = next(step for step in _STEPS if high // step - low // step < _BARS)
    bars = dict.fromkeys(range(low // step, high // step + 1), 0)
    for score, count in totals.scores.items():
        bars[score // (100 * step)] += count
    for number, count in bars.items():
        ends = f"{number * step:>4} to below {(number + 1) * step:>4}"
        click.echo(f"  {ends}  {count:>13,}  {'█' * round(_WIDTH * count / max(bars.values()))}".rstrip())
