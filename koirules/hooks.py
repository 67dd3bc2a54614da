"""The hooks: all that a plugin author needs to read.

A plugin is an installed distribution with an entry point in the group `koirules` that names a module. The module says which
version of these hooks it was written for, and marks its functions with `hookimpl`:

    KOIRULES_API = 2

    @hookimpl
    def koirules_vocabularies():
        return [Vocabulary(…)]

Each hook is called once, when the first command or library call needs it, and gives data. Wrappers of pluggy are not called.
A plugin that raises, gives something of another type, or does not answer within five seconds is named, left out as a whole,
and takes neither the command nor another plugin down.

What can be plugged in, and what cannot:

| what | how | since |
| --- | --- | --- |
| varieties, skins, shared vocabularies | `koirules_vocabularies` | 1 |
| traits: yes or no, count, number, scale, choice, places, label, patches, colours (`vocabulary.kinds`) | in a vocabulary | 1 |
| the noun, cautions by occasion, headings, the trait that growth goes by, and whether a page draws | `Vocabulary.subject` | 2 |
| measures, constants, phrases, sayings of a vocabulary of one's own | in a vocabulary | 1 |
| traits, measures, constants, phrases, sayings for a vocabulary of somebody else | `koirules_additions` | 2 |
| rule sets, with their earlier editions | `koirules_rulesets` | 1 |
| commands | `koirules_subcommands` | 2 |
| formats of records, decisions and classes; formats of results | `koirules_record_readers`, `koirules_result_writers` | 2 |
| drawings of a subject; `FISH_FROM_ABOVE`, a koi, is ours | `koirules_drawings`, named by `Subject.drawing` | 2 |
| units of the dimensions that there are, but no temperature (`vocabulary.units`) | `koirules_units` | 2 |
| dimensions, and units in which a number of a vocabulary is held | cannot: every evaluator has to know them | |
| kinds of traits, and figures of a batch | cannot: every evaluator has to know them | |
| occasions: `sorting` and `show` | cannot; a subject says what each of them warns of | |
| the model of growth, and `koirules growth`, which fits it by `length`, `weight` and `girth` | cannot | |
| the column `fish` of records and results, and names and help of commands | cannot: they are keys, whatever is graded | |
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import pluggy

from koirules.records.exchange import CellError, Grid, RecordReader, ResultWriter, Sheet, UnreadableError
from koirules.values import frozen
from koirules.vocabulary.drawings import Drawing, Recorded, Sketch
from koirules.vocabulary.units import Dimension, Unit

if TYPE_CHECKING:  # so that a plugin that gives commands alone is imported in no time
    from koirules.vocabulary.traits import Addition, Vocabulary

__all__ = [
    "API",
    "OLDEST_API",
    "CellError",
    "Dimension",
    "Drawing",
    "Grid",
    "Hooks",
    "RecordReader",
    "Recorded",
    "ResultWriter",
    "Sheet",
    "Sketch",
    "Subcommand",
    "Unit",
    "UnreadableError",
    "hookimpl",
    "hookspec",
    "rulesets_in",
]

API = 2
"""The version of the hooks and of what they take and give. It rises when a plugin that was right would no longer be right, or
when there is more that a plugin may give. A plugin writes the number itself, and does not import it: it is the one it was
written for."""

OLDEST_API = 1
"""The oldest version that is still understood."""

hookspec = pluggy.HookspecMarker("koirules")
hookimpl = pluggy.HookimplMarker("koirules")
"""Marks a function of a plugin as the answer to the hook of the same name."""


@frozen
class Subcommand:
    """A command of a plugin: `koirules NAME …`.

    name: letters, digits and `-`, in lower case. help: what it does, in one line, for `koirules --help`. target: where the
    `click.Command` is, as `module:attribute`. The module is imported when the command runs, and not before.
    """

    name: str
    help: str
    target: str


class Hooks:
    """The hook specifications."""

    @hookspec
    def koirules_vocabularies(self) -> Sequence[Vocabulary]:  # type: ignore[empty-body]
        """The vocabularies that the plugin gives: one for each variety or skin, and shared ones that they include.

        Names must be new: a vocabulary or a trait that is already there (in the same variety) is a clash, and the plugin
        is left out with a report that names both. A skin (`is_skin=True`) is met with a variety only when a rule file
        says so; a clash is then a problem of that file.
        """

    @hookspec
    def koirules_rulesets(self) -> Mapping[str, Path]:  # type: ignore[empty-body]
        """The rule sets that the plugin ships: name to rule file, for commands that are given a name and no path.

        When one gets a new edition, the text of the edition before it goes into a folder `earlier` beside the rule file, as
        `NAME-EDITION.koi`: pages that are based on that edition go on by it.
        """

    @hookspec
    def koirules_subcommands(self) -> Sequence[Subcommand]:  # type: ignore[empty-body]
        """The commands that the plugin adds to `koirules`; since version 2.

        A name that `koirules` has itself stays with `koirules`; of two plugins the first by distribution and name keeps it.
        Only the command is left out then, with a report, so that a new command of koirules takes no plugin away.
        """

    @hookspec
    def koirules_record_readers(self) -> Sequence[RecordReader]:  # type: ignore[empty-body]
        """Formats of record files that the plugin reads, each for one ending; since version 2.

        They serve wherever records, decisions or classes are read. Of an ending that is taken, the reader is left out with
        a report.
        """

    @hookspec
    def koirules_result_writers(self) -> Sequence[ResultWriter]:  # type: ignore[empty-body]
        """Formats of results that the plugin writes, each for one ending; since version 2. Taken endings as with readers."""

    @hookspec
    def koirules_drawings(self) -> Sequence[Drawing]:  # type: ignore[empty-body]
        """Drawings of records, for subjects that name them in `Subject.drawing`; since version 2.

        They serve wherever something is drawn: pages, certificates, prizes, the handbook, `koirules why --drawing`. Of a name
        that is taken, the drawing is left out with a report. A subject may name the drawing of another plugin; where nobody
        brings it, that is told, and nothing is drawn.
        """

    @hookspec
    def koirules_units(self) -> Sequence[Unit]:  # type: ignore[empty-body]
        """Units beside those of koirules, each an exact part of the unit in which its dimension is held; since version 2.

        `Unit("sun", Dimension.LENGTH, Decimal(100), per=33, written=("寸",), source="…")` is 100/33 cm. They serve in rule
        files, records, notes and tables of classes, for the whole process. Of a symbol or a spelling that is taken, the unit is
        left out with a report. A trait of a vocabulary has a unit of koirules; a `trait` of a rule file may have any.
        """

    @hookspec
    def koirules_additions(self) -> Sequence[Addition]:  # type: ignore[empty-body]
        """What the plugin adds to vocabularies of others: traits, measures, constants, phrases; since version 2.

        An addition to a vocabulary that is not there, or that has a name in common with it, is left out with a report.
        """


def rulesets_in(folder: Path) -> Mapping[str, Path]:
    """The rule sets of a folder, for `koirules_rulesets`: each has a folder of its own with a `standard.koi` in it."""
    return {path.parent.name: path for path in sorted(folder.glob("*/standard.koi"))}
