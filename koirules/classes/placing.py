"""A fish put into its class: the group of its variety, and the size that its measure falls in."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from attrs import frozen

from koirules.classes.table import ClassTable
from koirules.problems import Problem, class_tables
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.readings import Reading, Span
from koirules.vocabulary.spoken import Said
from koirules.vocabulary.traits import Trait

GROUP, SIZE = "class_group", "class_size"
"""What the two halves of a class are called in files of results."""

NONE = "none"
"""In place of a name: the table has no class for such a fish."""


@frozen
class Placed:
    """The class of a fish.

    group: its name, `none` where the table has none for the variety, "" where the variety is not known or the table has no
    groups. sizes: the names of the sizes that it could be in, `none` for no size; empty where nothing was measured.
    """

    group: str
    sizes: tuple[str, ...]

    @property
    def size(self) -> str:
        """The sizes as a text: `53`, `48 or 53`, "" where nothing was measured."""
        return " or ".join(self.sizes)

    @property
    def labels(self) -> dict[str, str]:
        """What a result carries of it; what is not known is left out."""
        return {name: text for name, text in ((GROUP, self.group), (SIZE, self.size)) if text}


def place(table: ClassTable, variety: Said | str | None, measured: Reading | None) -> Placed:
    """The class of a fish. variety: as it was understood, or the words of a cell that no installed variety explains."""
    group = ""
    if table.groups and variety is not None:
        found = (
            _by_words(table, variety)
            if isinstance(variety, str)
            else table.group_of(variety.name, sorted(variety.skins))
        )
        group = NONE if found is None else found
    if table.sizes is None or not isinstance(measured, Span):
        return Placed(group, ())
    return Placed(group, tuple(NONE if size is None else size.name for size in table.sizes.could_be(measured)))


def check_measure(table: ClassTable, traits: Mapping[str, Trait]) -> Problem | None:
    """What is wrong with what the sizes of a table go by, among these traits."""
    sizes = table.sizes
    if sizes is None:
        return None
    trait = traits.get(sizes.trait)
    if trait is None:
        guess = near(sizes.trait, traits)
        why = "is no trait here" + (f'; did the table mean "{guess}"?' if guess else "")
    elif not isinstance(trait.kind, Number) or trait.kind.dimension is not sizes.unit.dimension:
        why = f"cannot be measured in {sizes.unit.symbol}"
    else:
        return None
    return class_tables.class_trait_wrong(table.file, sizes.trait, why)


def _by_words(table: ClassTable, words: str) -> str | None:
    """The group of a variety that is not installed: as the table itself writes it, or the one for others."""
    for group in table.groups:
        if folded(words) in {folded(variety) for variety in group.varieties}:
            return group.name
    return next((group.name for group in table.groups if group.others), None)


def counted(placed: Sequence[Placed]) -> dict[tuple[str, str], int]:
    """How many fish are in each class, in the order in which they first come."""
    found: dict[tuple[str, str], int] = {}
    for one in placed:
        found[one.group, one.size] = found.get((one.group, one.size), 0) + 1
    return found
