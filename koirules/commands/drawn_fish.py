"""A drawing of one fish with the maps of its patches, written to a file of its own."""

from __future__ import annotations

from pathlib import Path

import click

from koirules.api import Standard
from koirules.commands.output import show_problems, shown, stop
from koirules.formats.drawing import fish_drawing
from koirules.formats.writing import write_beside
from koirules.grading.records import Record
from koirules.vocabulary.kinds import Patches
from koirules.vocabulary.maps import PatchMap


def maps_of(standard: Standard, record: Record) -> dict[str, PatchMap]:
    """The maps of a record by the word of their colour: `hi` for the trait `hi_patches`."""
    found: dict[str, PatchMap] = {}
    for name, reading in record.readings.items():
        if isinstance(standard.traits[name].kind, Patches) and isinstance(reading, PatchMap):
            found[name.removesuffix("_patches")] = reading
    return found


def draw_fish(standard: Standard, record: Record, file: str) -> None:
    """Write the drawing of a fish; ends the command where no map of it was recorded, or nothing can be written."""
    path = Path(file)
    if path.suffix.lower() != ".svg":
        stop(f"A drawing is written as SVG: let {shown(file)} end in .svg.")
    maps = maps_of(standard, record)
    if not maps:
        stop(f"No map of the patches of {shown(record.fish)} was recorded, so it cannot be drawn. Nothing was written.")
    made = fish_drawing(patches=maps, title=record.fish)
    problem = write_beside(path, lambda passing: _write(passing, made))
    if problem is not None:
        show_problems([problem])
        stop("Nothing was written.")
    click.echo(f"Wrote {shown(file)}.", err=True)


def _write(passing: Path, text: str) -> None:
    passing.write_text(text + "\n", encoding="utf-8")
