"""`koirules ask`: at the tub, one fish after another, one question at a time."""

from __future__ import annotations

import errno
import sys
from pathlib import Path

import click

from koirules.commands.inputs import label_option, language_option, setting_option, standard_from
from koirules.commands.output import HOLDS

_INTERRUPTED = 130
_CLOSED = {errno.EIO, errno.EPIPE, errno.EBADF}


@click.command("ask")
@click.argument("rules")
@click.option(
    "--out", required=True, type=click.Path(), metavar="FILE", help="The records (.csv); goes on where it is."
)
@click.option(
    "--records", type=click.Path(), metavar="FILE", help="Ask about the fish of this file that are not settled."
)
@click.option("--thorough", is_flag=True, help="Ask one by one for what counts only where it was noted.")
@label_option
@setting_option
@language_option
def command(
    rules: str,
    out: str,
    records: str | None,
    thorough: bool,
    labels: tuple[str, ...],
    changes: tuple[str, ...],
    language: str | None,
) -> None:
    """Ask for the fish at the tub by RULES, the most decisive question first, until each is settled.

    Every answer is on disk before the next question. Stop at any time; the same command goes on where it was left.
    """
    from koirules.commands.asking.keyboard import Ended, Keyboard
    from koirules.commands.asking.session import Session, Stopped, say
    from koirules.commands.asking.session_file import Book

    standard = standard_from(rules, changes, language)
    book = Book.open(Path(out), standard, None if records is None else Path(records), labels)
    session = Session(standard, book, Keyboard(), records is not None, thorough)
    status = HOLDS
    try:
        if standard.growth_note:
            say(standard.growth_note)
        for caution in standard.cautions.handling:
            say(caution)
        try:
            session.run()
        except (Stopped, Ended):
            click.echo()
        except KeyboardInterrupt:
            click.echo()
            status = _INTERRUPTED
        settled = sum(map(session.is_settled, book.records))
        say(f"{out}: {standard.subject.counted(len(book.records))}, {settled} settled.")
        for caution in standard.cautions.deciding:
            say(caution)
    except OSError as error:
        # The terminal was closed: every answer is on disk already, and nobody is there to be told.
        if error.errno not in _CLOSED:
            raise
    sys.exit(status)
