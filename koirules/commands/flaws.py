"""`koirules flaws`: an ideal fish of a standard, and what each single flaw makes of it."""

from __future__ import annotations

import click

from koirules.commands.inputs import standard_from
from koirules.commands.output import printed
from koirules.commands.render.fish import written


@click.command("flaws")
@click.argument("rules")
@click.option("--serious", type=click.Path(exists=True, dir_okay=False), help="A CSV of serious flaws: only these.")
@click.option("--ideal", is_flag=True, help="Show the ideal fish too.")
def command(rules: str, serious: str | None, ideal: bool) -> None:
    """Show what each single flaw makes of an ideal fish of RULES, as a table.

    For each trait that the standard reads, the value that does most harm: the grade and the score before and after. What
    stays at the best grade is let pass. A CSV of serious flaws has the columns trait, value, stages, varieties and key; only
    those for the stage and the variety of RULES are shown, also where RULES do not read the trait.
    """
    from koirules.analysis.flaws import Flaws, flaw_table, flaws_for, read_flaws

    standard = standard_from(rules)
    flaws = Flaws.of(standard.grader, standard.settings)
    if ideal:
        for name, reading in flaws.ideal.readings.items():
            printed(f"{name} {written(standard.traits.get(name), reading)}\n")
        printed("\n")
    listed = None
    if serious is not None:
        try:
            listed = flaws_for(standard.rules, read_flaws(serious))
        except (OSError, ValueError) as error:
            raise click.BadParameter(f"{serious} cannot be read: {error}.", param_hint="'--serious'") from error
    printed(flaw_table(flaws, listed))
