"""`koirules growth`: fits the coefficients of growth from looks at the same fish."""

from __future__ import annotations

import json
from pathlib import Path

import click

from koirules.analysis.growth_fitting import METHOD, GrowthOfFish, growth_of
from koirules.commands.inputs import standard_from
from koirules.commands.output import counted, show_cautions, show_problems, stop, stop_if_refused
from koirules.measures.growth_fit import FEWEST, Fit
from koirules.problems import Cell
from koirules.problems.growth_fitting import too_few_looks
from koirules.problems.measuring import measuring_needs
from koirules.records.records import read_every_look
from koirules.standard.check.growing import EXPONENT, SIDES, WHITE
from koirules.vocabulary.subject import Subject


@click.command("growth")
@click.argument("rules")
@click.argument("records")
@click.option("--json", "as_json", is_flag=True, help="Print it as data.")
def command(rules: str, records: str, as_json: bool) -> None:
    """Fit how fish grow to RECORDS of the same fish on several days, with the traits of RULES.

    RECORDS has the columns `fish` and `date`, a row for each look, with `length` and `weight`, `girth`, maps such
    as `hi_patches`, or `hi_cover` by eye. Prints the coefficients of `grown to` with their uncertainty, and the lines that set
    them in a rule file.
    """
    standard = standard_from(rules)
    batch = read_every_look(Path(records), standard.traits)
    stop_if_refused(batch.problems)
    try:
        found = growth_of(batch.records, standard.traits)
    except ImportError as error:
        show_problems([measuring_needs(Cell(records), "the area of a map", error.name or str(error))])
        stop("Nothing was fitted.")
    if found.fit.exponent is None and found.fit.sides is None:
        show_problems([too_few_looks(records, found.fit.bearing, FEWEST, found.fit.not_longer)])
        stop("Nothing was fitted.")
    if as_json:
        click.echo(json.dumps(_as_data(found), indent=1))
        return
    _tell(found, standard.subject)


def _tell(found: GrowthOfFish, subject: Subject) -> None:
    fit = found.fit
    left_out = (
        f"; {counted(fit.not_longer, 'pair')} left out, the {subject.one} being no longer" if fit.not_longer else ""
    )
    click.echo(f"{counted(fit.pairs, 'pair')} of looks at {subject.counted(fit.fish)}{left_out}.")
    click.echo(click.style(f"b of W = a L^b ({EXPONENT})", bold=True))
    _tell_fit("by weight", fit.by_weight)
    _tell_fit("by girth", fit.by_girth)
    click.echo(
        click.style(f"w, by which a pattern becomes narrower as white grows in from the sides ({SIDES})", bold=True)
    )
    _tell_fit("by pattern", fit.by_pattern)
    _tell_fit("by eye", fit.by_eye)
    if fit.white is not None:
        click.echo(click.style(f"s, the share of new skin across the body that stays white ({WHITE})", bold=True))
        _tell_fit("by pattern", fit.white)
    click.echo(click.style("For a rule file", bold=True))
    for line in found.settings:
        click.echo(line)
    if not found.settings:
        click.echo("  nothing: no coefficient lies within what it can be.")
    if found.by_share:
        click.echo(click.style(f"Instead of {SIDES}, for a rule file that goes by {WHITE}", bold=True))
    for line in found.by_share:
        click.echo(line)
    click.echo()
    show_cautions([f"Method: {METHOD}.", *found.cautions])


def _tell_fit(source: str, fit: Fit | None) -> None:
    if fit is None:
        click.echo(f"  {source:<10}  fewer than {FEWEST} pairs bear on it")
        return
    low, high = fit.interval
    click.echo(
        f"  {source:<10}  {fit.value:.3f}, standard error {fit.error:.3f}, from {fit.pairs} pairs; "
        f"with 95 % confidence from {low:.3f} to {high:.3f}"
    )


def _as_data(found: GrowthOfFish) -> dict[str, object]:
    fit = found.fit
    return {
        "fish": fit.fish,
        "pairs": fit.pairs,
        "pairs_left_out": fit.not_longer,
        "method": METHOD,
        f"{EXPONENT}_by_weight": _fit_as_data(fit.by_weight),
        f"{EXPONENT}_by_girth": _fit_as_data(fit.by_girth),
        f"{WHITE}_by_pattern": _fit_as_data(fit.white),
        f"{SIDES}_by_pattern": _fit_as_data(fit.by_pattern),
        f"{SIDES}_by_eye": _fit_as_data(fit.by_eye),
        "settings": list(found.settings),
        "settings_by_share": list(found.by_share),
        "cautions": list(found.cautions),
    }


def _fit_as_data(fit: Fit | None) -> dict[str, object] | None:
    if fit is None:
        return None
    low, high = fit.interval
    return {"value": fit.value, "standard_error": fit.error, "low": low, "high": high, "pairs": fit.pairs}
