"""`koirules prove`: what holds for every fish that there could be."""

from __future__ import annotations

import sys
from importlib.util import find_spec

import click

from koirules.commands.inputs import setting_option, standard_from
from koirules.commands.output import DOES_NOT_HOLD, HOLDS, show_problems, stop, stop_if_refused
from koirules.problems import RecordError
from koirules.problems.proving import needs_solver


@click.command("prove")
@click.argument("rules")
@click.option("--json", "as_json", is_flag=True, help="Print the statements as JSON.")
@click.option(
    "--seconds",
    type=click.FloatRange(min=0, min_open=True),
    metavar="N",
    help="Stop after N seconds of processor time, and name what was not reached.",
)
@setting_option
def command(rules: str, as_json: bool, seconds: float | None, changes: tuple[str, ...]) -> None:
    """Prove what holds for every fish, by RULES, or show a fish of which it does not.

    Grades that no fish can reach; faults, bonuses and conditions that can never or always hold; faults that always bite
    together; lifts that a fault always hides; the lowest and highest score; rounds that no fish, or every fish, passes; and
    for each trait of which more or less is better, whether better can ever score worse. Answers appear as they come. Exit
    status 1: something is surely a slip, or the time was too short.
    """
    if find_spec("z3") is None:
        stop_if_refused([needs_solver("prove")])
    standard = standard_from(rules, changes)
    show_problems(standard.warnings)
    from koirules.analysis.proofs.every import Proofs, proofs
    from koirules.commands.render.proofs import as_data, tell_about, tell_end, tell_kind
    from koirules.engines.symbolic.meaning import TooManyReadings

    def progress(question: str) -> None:
        if sys.stderr.isatty():
            click.echo(f"\r\x1b[K  {question}", err=True, nl=False)

    def told(kind: str, answers: Proofs) -> None:
        if not as_json:
            _clear()
            tell_kind(standard, kind, answers)
            sys.stdout.flush()

    if not as_json:
        tell_about(standard)
    try:
        found = proofs(standard.grader.of_known_fish, progress, seconds, told)
    except RecordError as error:
        stop_if_refused(error.problems)
        raise
    except TooManyReadings:
        stop("Some condition of these rules chooses among too many words to be worked out for every fish at once.")
    _clear()
    if as_json:
        click.echo(as_data(standard, found))
    else:
        tell_end(standard, found)
    slips = any(statement.slip for statement in found.statements)
    sys.exit(DOES_NOT_HOLD if slips or found.unreached else HOLDS)


def _clear() -> None:
    if sys.stderr.isatty():
        click.echo("\r\x1b[K", err=True, nl=False)
