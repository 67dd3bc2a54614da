"""`koirules seal`: by which text a standard is known."""

from __future__ import annotations

import click

from koirules.commands.inputs import standard_from
from koirules.commands.output import printed


@click.command("seal")
@click.argument("rules")
@click.option("--text", is_flag=True, help="Print the canonical text, which the seal is made of, instead.")
def command(rules: str, text: bool) -> None:
    """Print the seal of RULES: it stays the same as long as what they say does, and changes with every change of that.

    Layout, remarks, notes and samples do not count; labels and words of reasons do. A file that is based on RULES names
    the seal after the edition.
    """
    standard = standard_from(rules)
    if text:
        printed(standard.canonical_text)
    else:
        click.echo(standard.seal)
