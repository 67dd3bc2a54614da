"""The drawing of a record in a file of its own: a koi from above, now and as it may be when grown, or what a plugin draws."""

from __future__ import annotations

from pathlib import Path

import click

from koirules.api import Standard
from koirules.commands.output import show_problems, shown, stop
from koirules.records.writing import write_beside
from koirules.report.views import views_drawn
from koirules.results.record import Record


def draw_fish(standard: Standard, record: Record, file: str) -> None:
    """Write the drawing of a record; ends the command where nothing draws it, no map was recorded, or nothing can be written."""
    path = Path(file)
    if path.suffix.lower() != ".svg":
        stop(f"A drawing is written as SVG: let {shown(file)} end in .svg.")
    views = standard.drawer.views_of(record.readings, record.fish)
    failed = standard.drawer.take_problems()
    if failed:
        show_problems(failed)
        stop("Nothing was written.")
    if not views:
        stop(f"Nothing draws {standard.subject.with_article}. Nothing was written.")
    if not views[0].mapped:
        stop(f"No map of the patches of {shown(record.fish)} was recorded, so it cannot be drawn. Nothing was written.")
    made = views_drawn(views, record.fish, standard.tongue)
    problem = write_beside(path, lambda passing: _write(passing, made))
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(file)}.", err=True)


def _write(passing: Path, text: str) -> None:
    passing.write_text(text + "\n", encoding="utf-8")
