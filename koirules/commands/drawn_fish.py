"""What a fish looks like from above, as it is and as it may be when grown, and a drawing of it in a file of its own."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import click

from koirules.api import Standard
from koirules.commands.output import show_problems, shown, stop
from koirules.grading.maps_ahead import maps_ahead
from koirules.records.writing import write_beside
from koirules.report.views import View, views_drawn
from koirules.results.record import Record
from koirules.vocabulary.kinds import Patches, shortest
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import Span


def maps_of(standard: Standard, record: Record) -> dict[str, PatchMap]:
    """The maps of a record by the word of their colour: `hi` for the trait `hi_patches`."""
    found: dict[str, PatchMap] = {}
    for name, reading in record.readings.items():
        if isinstance(standard.traits[name].kind, Patches) and isinstance(reading, PatchMap):
            found[_colour(name)] = reading
    return found


def views_of(standard: Standard, record: Record) -> tuple[View, ...]:
    """A fish as it is, and at each length that its pattern is asked for; none where no map of it was recorded."""
    maps = maps_of(standard, record)
    if not maps:
        return ()
    length = record.readings.get("length")
    known = isinstance(length, Span) and length.low == length.high
    now = f"now, {_centimetres(length.low)}" if known and isinstance(length, Span) else "now"
    grown = [
        View(
            f"grown to {_centimetres(ahead.length)}, by a model",
            {_colour(name): pattern for name, pattern in ahead.maps.items()},
            ahead.stouter,
        )
        for ahead in maps_ahead(standard.rules, standard.settings, record.readings)
    ]
    return (View(now, maps), *grown)


def _centimetres(length: float) -> str:
    return f"{shortest(Decimal(str(length)))} cm"


def _colour(trait: str) -> str:
    return trait.removesuffix("_patches")


def draw_fish(standard: Standard, record: Record, file: str) -> None:
    """Write the drawing of a fish; ends the command where no map of it was recorded, or nothing can be written."""
    path = Path(file)
    if path.suffix.lower() != ".svg":
        stop(f"A drawing is written as SVG: let {shown(file)} end in .svg.")
    views = views_of(standard, record)
    if not views:
        stop(f"No map of the patches of {shown(record.fish)} was recorded, so it cannot be drawn. Nothing was written.")
    made = views_drawn(views, record.fish)
    problem = write_beside(path, lambda passing: _write(passing, made))
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(file)}.", err=True)


def _write(passing: Path, text: str) -> None:
    passing.write_text(text + "\n", encoding="utf-8")
