"""What the commands print: problems, counts and exit statuses."""

from __future__ import annotations

import shutil
import sys
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn
from unicodedata import normalize

import click

from koirules.language import MOST_BYTES
from koirules.problems import Place, Problem, is_refused

if TYPE_CHECKING:
    from koirules.api import Standard

HOLDS, DOES_NOT_HOLD, PROBLEMS = 0, 1, 2
"""Exit statuses."""

_UNSHOWN = dict.fromkeys(
    [*range(32), *range(0x7F, 0xA0), *range(0x202A, 0x202F), *range(0x2066, 0x206A), *range(0xD800, 0xE000)]
)
_MOST_PROBLEMS = 200


def shown(text: str) -> str:
    """A text without control characters, which could steer a terminal."""
    return text.translate(_UNSHOWN)


def show_problems(problems: Sequence[Problem]) -> None:
    """Print problems to the error stream, each with the line of the rule file that it is about where there is one."""
    lines: dict[str, list[str]] = {}
    for problem in problems[:_MOST_PROBLEMS]:
        word = click.style("warning" if problem.warning else "problem", bold=True)
        click.echo(f"{word}: {_site(problem)}", err=True)
        if isinstance(problem.site, Place):
            file = problem.site.file
            if file not in lines:
                lines[file] = _lines_of(file)
            _show_line(problem.site, lines[file])
        click.echo(f"  {shown(problem.cause)}", err=True)
        click.echo(f"  {shown(problem.mend)}  [{problem.code}]", err=True)
    if len(problems) > _MOST_PROBLEMS:
        click.echo(f"… and {len(problems) - _MOST_PROBLEMS} more.", err=True)


def stop_if_refused(problems: Sequence[Problem]) -> None:
    """Show problems, and end with status 2 where one of them is more than a warning."""
    show_problems(problems)
    if is_refused(problems):
        count = sum(not problem.warning for problem in problems)
        stop(f"{count} problem{'s' if count != 1 else ''}; nothing was written.")


def stop(message: str) -> NoReturn:
    """End with a message and status 2."""
    click.echo(message, err=True)
    sys.exit(PROBLEMS)


def printed(text: str) -> None:
    """Print a text to the last byte; on a terminal without what could steer it."""
    if sys.stdout.isatty():
        text = "".join(f"{shown(line)}\n" for line in text.split("\n")[:-1])
        click.echo(text, nl=False)
    else:
        click.echo(text.encode("utf-8", "surrogateescape"), nl=False)


def counted(number: int, one: str, many: str | None = None) -> str:
    """A number with its noun."""
    return f"{number:,} {one if number == 1 else many or one + 's'}"


def show_paragraph(text: str, *, dim: bool = False) -> None:
    """Print a text over as many lines as the terminal needs."""
    width = min(100, shutil.get_terminal_size((100, 24)).columns)
    wrapped = click.wrap_text(text, width)
    click.echo(click.style(wrapped, dim=True) if dim else wrapped)


def short_cautions_of(standard: Standard, *, noted: bool) -> tuple[str, ...]:
    """The same with no more than the gist of the cautions, where their author gave one. noted: with the model of growth."""
    if not standard.cautions.short:
        return standard.every_caution
    return tuple(filter(None, (standard.growth_note if noted else "", standard.cautions.short)))


def show_cautions(parts: Iterable[str]) -> None:
    """Print cautions."""
    for part in parts:
        show_paragraph(part, dim=True)


def _site(problem: Problem) -> str:
    site = problem.site
    if isinstance(site, Place):
        return shown(f"{site.file}, line {site.line}, column {site.column}")
    return shown(str(site))


def _lines_of(file: str) -> list[str]:
    """The lines of a rule file, none where it cannot be read."""
    try:
        with Path(file).open("rb") as opened:
            text = opened.read(MOST_BYTES).decode("utf-8-sig", errors="replace")
    except (OSError, ValueError):
        return []
    return normalize("NFC", text.replace("\r\n", "\n").replace("\r", "\n")).split("\n")


def _show_line(place: Place, lines: Sequence[str]) -> None:
    if place.line > len(lines):
        return
    line = lines[place.line - 1]
    start = place.column - 1
    length = max(1, (place.end_column if place.end_line == place.line else len(line) + 1) - place.column)
    # A long line is shown around the place.
    cut = max(0, start - 60)
    view = line[cut : cut + 100].translate({**_UNSHOWN, 9: " "})
    click.echo(f"    {view}", err=True)
    click.echo(f"    {' ' * _width(line[cut:start])}{'^' * min(length, max(1, 100 - (start - cut)))}", err=True)


def _width(text: str) -> int:
    from rich.cells import cell_len

    return cell_len(text)
