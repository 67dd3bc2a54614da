"""Tables of show classes as commands take them, and records that carry their class along."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

import click
from attrs import evolve

from koirules.api import Standard
from koirules.classes.placing import NONE, check_measure, classes_missing, classes_read, place, understood
from koirules.classes.table import ClassTable
from koirules.commands.output import shown, stop, stop_if_refused
from koirules.records.columns import VARIETY
from koirules.records.records import Batch
from koirules.results.record import Record
from koirules.vocabulary.readings import show_reading
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.spoken import Said, known, said
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    from koirules.languages import Tongue
    from koirules.report.result_files import About

classes_option = click.option(
    "--classes",
    "classes",
    metavar="TABLE",
    default=None,
    help="Put each fish into its class by this table (.toml, or the name of a shipped one).",
)
"""`--classes TABLE`."""


def class_table(name: str, varieties: Varieties) -> ClassTable:
    """The table that a command was given; ends the command with its problems where it does not hold."""
    from koirules.classes.reading import read_table

    found = read_table(name)
    if isinstance(found, tuple):
        stop_if_refused(found)
        raise AssertionError("a table without problems is a table")
    table, problems = understood(found, varieties)
    stop_if_refused(problems)
    return table


def by_classes(about: About, table: ClassTable | None) -> About:
    """What files say of results whose fish were put into classes, in the words of the catalogue beside the table."""
    if table is None:
        return about
    tongue = _tongue_of(table, about.tongue)
    words = tongue("{title}, edition {edition}", title=tongue.of(table.title), edition=table.edition)
    parts = tuple(evolve(part, tongue=_tongue_of(table, part.tongue)) for part in about.parts)
    return evolve(about, classes=words, tongue=tongue, parts=parts)


def _tongue_of(table: ClassTable, tongue: Tongue) -> Tongue:
    """A language with the words of the catalogue beside a table; groups and sizes are said by their titles."""
    from koirules.languages import CatalogueError, beside

    if tongue.language is None or not table.file:
        return tongue
    try:
        told = tongue.also(beside([table.file], tongue.language))
    except CatalogueError as error:
        stop(f"{shown(str(error))}. Nothing was written.")
    titles = {one.name: one.title for one in (() if table.sizes is None else table.sizes.sizes)}
    titles |= {one.name: one.title for one in table.groups}
    return told.knowing({name: words for name, title in titles.items() if (words := told.found(title)) is not None})


def measure_among(table: ClassTable, traits: Mapping[str, Trait]) -> Trait | None:
    """The trait that the sizes of a table go by, None without sizes; ends the command where it is not among the traits."""
    problem = check_measure(table, traits)
    if problem is not None:
        stop_if_refused([problem])
    return None if table.sizes is None else traits[table.sizes.trait]


def with_classes(batch: Batch, standard: Standard, table: ClassTable | None, varieties: Varieties) -> Batch:
    """A batch whose records carry their class as labels, `class_group` and `class_size`, into every result."""
    if table is None:
        missing = classes_missing(batch.file, [record.readings for record in batch.records], standard.traits)
        return batch if missing is None else evolve(batch, problems=(*batch.problems, missing))
    measure_among(table, standard.traits)
    variety = said(standard.varieties[0], varieties) if len(standard.varieties) == 1 else None
    records = [(record, said_of(record, varieties, variety)) for record in batch.records]
    return evolve(batch, records=tuple(_with_class(record, table, words, standard.traits) for record, words in records))


def said_of(record: Record, varieties: Varieties, otherwise: Said | None) -> Said | str | None:
    """The variety of a fish as it was recorded, in its words where nothing explains them, else the one it is taken for."""
    written = known(record.labels.get(VARIETY, ""))
    return (said(written, varieties) or written) if written else otherwise


def _with_class(record: Record, table: ClassTable, words: Said | str | None, traits: Mapping[str, Trait]) -> Record:
    measure = None if table.sizes is None else traits[table.sizes.trait]
    measured = None if measure is None else record.readings.get(measure.name)
    placed = place(table, words, measured)
    labels = {**record.labels, **placed.labels}
    asked = {name: text for name, text in placed.readings.items() if name in traits and name not in record.readings}
    record = evolve(record, labels=labels, readings={**record.readings, **asked})
    if any(name in traits and name not in classes_read(traits) for name in placed.labels):
        # The standard declares a trait of this name, so it says itself what becomes of a fish without a class.
        return record
    outside = []
    if placed.group == NONE:
        outside.append(f"the class table has no class for {words.name if isinstance(words, Said) else words}")
    if placed.sizes == (NONE,) and measure is not None and measured is not None:
        outside.append(f"the class table has no size for {show_reading(measure.kind, measured)}")
    return evolve(record, outside=" and ".join(outside))
