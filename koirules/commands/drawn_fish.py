"""What a fish looks like from above, as it is and as it may be when grown, and a drawing of it in a file of its own."""

from __future__ import annotations

from pathlib import Path

import click

from koirules.api import Standard
from koirules.commands.output import show_problems, shown, stop
from koirules.records.writing import write_beside
from koirules.report import views_of_fish
from koirules.report.views import View, views_drawn
from koirules.results.record import Record


def views_of(standard: Standard, record: Record) -> tuple[View, ...]:
    """A fish as it is, and at each length that its pattern is asked for."""
    return views_of_fish.views_of(standard.rules, standard.settings, record.readings, standard.tongue)


def draw_fish(standard: Standard, record: Record, file: str) -> None:
    """Write the drawing of a fish; ends the command where no map of it was recorded, or nothing can be written."""
    path = Path(file)
    if path.suffix.lower() != ".svg":
        stop(f"A drawing is written as SVG: let {shown(file)} end in .svg.")
    views = views_of(standard, record)
    if not views:
        stop(f"Nothing draws {standard.subject.with_article}. Nothing was written.")
    if not views[0].look.is_mapped:
        stop(f"No map of the patches of {shown(record.fish)} was recorded, so it cannot be drawn. Nothing was written.")
    made = views_drawn(views, record.fish)
    problem = write_beside(path, lambda passing: _write(passing, made))
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(file)}.", err=True)


def _write(passing: Path, text: str) -> None:
    passing.write_text(text + "\n", encoding="utf-8")
