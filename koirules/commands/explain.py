"""`koirules explain`: what the code of a problem means."""

from __future__ import annotations

import sys
from textwrap import indent

import click

from koirules.commands.output import PROBLEMS, show_paragraph, shown
from koirules.problems.pages import AREAS, Page, pages
from koirules.vocabulary.nearness import near

_HEADINGS = {
    "rules": "Of rule files",
    "sharing": "Of standards that are based on another, and of skins",
    "records": "Of records",
    "classes": "Of tables of classes",
    "prizes": "Of tables of prizes, votes and decisions about ties",
    "commands": "Of commands, files and clusters",
    "plugins": "Of plugins",
}


@click.command("explain")
@click.argument("code", required=False)
def command(code: str | None) -> None:
    """Say what CODE means, the word in brackets after a problem: an example that makes it, and the mend.

    Without CODE, list every code.
    """
    known = pages()
    if code is None:
        _list(tuple(known.values()))
        return
    page = known.get(code.strip().strip("[]").lower())
    if page is None:
        click.echo(f'There is no problem code "{shown(code)}".{_guess(code)}', err=True)
        click.echo("`koirules explain` alone lists every code.", err=True)
        sys.exit(PROBLEMS)
    _show(page)


def _guess(code: str) -> str:
    meant = near(code.strip().strip("[]").lower(), pages())
    return f' Did you mean "{meant}"?' if meant else ""


def _list(known: tuple[Page, ...]) -> None:
    for area in AREAS:
        of_area = [page for page in known if page.area == area]
        click.echo(click.style(_HEADINGS[area], bold=True))
        width = max(len(page.code) for page in of_area)
        for page in of_area:
            click.echo(f"  {page.code:<{width}}  {_first_sentence(page.means)}")
        click.echo()


def _first_sentence(text: str) -> str:
    return text.split(". ", maxsplit=1)[0].removesuffix(".") + "."


def _show(page: Page) -> None:
    click.echo(click.style(page.code, bold=True))
    show_paragraph(page.means)
    if page.when:
        show_paragraph(f"When: {page.when}")
    if page.wrong:
        click.echo("\nMakes it:\n")
        click.echo(indent(shown_lines(page.wrong), "    "))
    click.echo()
    show_paragraph(f"Mend: {page.mend}")
    if page.right:
        click.echo("\nMended:\n")
        click.echo(indent(shown_lines(page.right), "    "))


def shown_lines(text: str) -> str:
    """Lines without what a terminal cannot show; a character that nobody can see stands as its number."""
    visible = text.replace("\u200b", "<U+200B>")
    return "\n".join(shown(line) for line in visible.strip("\n").split("\n"))
