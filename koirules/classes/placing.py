"""A fish put into its class: the group of its variety, and the size that its measure falls in."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from attrs import evolve

from koirules.classes.table import ClassTable, Group
from koirules.problems import Problem, class_tables
from koirules.values import frozen
from koirules.vocabulary.kinds import Label, Number
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.readings import Reading, Span
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.spoken import Said, every_word, said, skin_said
from koirules.vocabulary.traits import Trait

GROUP, SIZE = "class_group", "class_size"
"""What the two halves of a class are called in files of results."""

CLASS_TRAITS: Mapping[str, Trait] = {
    GROUP: Trait(GROUP, "class group", Label(), describe="The group of varieties of the show that the fish is in."),
    SIZE: Trait(SIZE, "class size", Label(), describe="The size of the show that the fish is in."),
}
"""The halves of a class as a standard reads them that does not declare them itself."""


def classes_read(traits: Mapping[str, Trait]) -> frozenset[str]:
    """The halves of a class that a standard of these traits reads without declaring them."""
    return frozenset(name for name, trait in CLASS_TRAITS.items() if traits.get(name) == trait)


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
    def readings(self) -> dict[str, str]:
        """What rules read of it: what is sure. A size of several is none, so that whatever hangs on it is open."""
        size = self.sizes[0] if len(self.sizes) == 1 else ""
        return {name: text for name, text in ((GROUP, self.group), (SIZE, size)) if text}

    @property
    def labels(self) -> dict[str, str]:
        """What a result carries of it; what is not known is left out."""
        return {name: text for name, text in ((GROUP, self.group), (SIZE, self.size)) if text}


def place(table: ClassTable, variety: Said | str | None, measured: Reading | None) -> Placed:
    """The class of a fish. variety: as it was understood, or the words of a cell that no installed variety explains."""
    group = ""
    if table.groups and variety is not None:
        found = _by_words(table, variety) if isinstance(variety, str) else table.group_of(variety)
        group = NONE if found is None else found
    if table.sizes is None or not isinstance(measured, Span):
        return Placed(group, ())
    return Placed(group, tuple(NONE if size is None else size.name for size in table.sizes.could_be(measured)))


def understood(table: ClassTable, varieties: Varieties) -> tuple[ClassTable, tuple[Problem, ...]]:
    """A table with its varieties and skins read as the cells of records are, and what is wrong with these.

    A word that no installed variety explains is a warning: it is still found where a record has the same word.
    """
    problems: list[Problem] = []
    groups: list[Group] = []
    first: dict[tuple[Said, str], str] = {}
    unknown: dict[str, str | None] = {}
    for group in table.groups:
        read = {words: said(words, varieties) for words in group.varieties}
        over = {words: skin_said(words, varieties) for words in group.skins}
        for words, one in read.items():
            if one is None:
                unknown[words] = _guess(words, varieties)
            elif (before := first.setdefault((one, one.form), words)) is not words:
                problems.append(class_tables.class_said_twice(table.file, before, words, one.name))
        for words, skin in over.items():
            if skin is None:
                unknown[words] = near(folded(words), varieties.skins)
        named = tuple(one for one in read.values() if one is not None)
        groups.append(evolve(group, said=named, over=tuple(skin for skin in over.values() if skin is not None)))
    problems += class_tables.class_varieties_unknown(table.file, unknown)
    return evolve(table, groups=tuple(groups)), tuple(problems)


def not_understood(
    table: ClassTable, rows: Iterable[tuple[int, str]], varieties: Varieties, file: str
) -> tuple[Problem, ...]:
    """A warning for each word of records that names no variety, neither installed nor in the table.

    rows: the row of each fish, with what is written for its variety.
    """
    first: dict[str, int] = {}
    for row, words in rows:
        if table.groups and words and said(words, varieties) is None and not _is_written(table, words):
            first.setdefault(words, row)
    group = _others(table) or NONE
    return tuple(
        class_tables.class_word_unknown(file, row, words, group, _guess(words, varieties))
        for words, row in first.items()
    )


def _guess(words: str, varieties: Varieties) -> str | None:
    found = near(folded(words), every_word(varieties))
    return None if found is None else found.replace("_", " ")


def check_measure(table: ClassTable, traits: Mapping[str, Trait]) -> Problem | None:
    """What is wrong with what the sizes of a table go by, among these traits."""
    sizes = table.sizes
    if sizes is None:
        return None
    trait = traits.get(sizes.trait)
    if trait is None:
        guess = near(sizes.trait, traits)
        return class_tables.class_trait_wrong(table.file, sizes.trait, "is no trait here", guess)
    if isinstance(trait.kind, Number) and trait.kind.dimension is sizes.unit.dimension:
        return None
    return class_tables.class_trait_wrong(table.file, sizes.trait, f"cannot be measured in {sizes.unit.symbol}")


def classes_missing(file: str, records: Iterable[Mapping[str, Reading]], traits: Mapping[str, Trait]) -> Problem | None:
    """A warning where a standard reads the classes of a table and no fish has any."""
    read = classes_read(traits)
    if not read or any(name in record for record in records for name in read):
        return None
    return class_tables.classes_missing(file, sorted(read))


def _by_words(table: ClassTable, words: str) -> str | None:
    """The group of a variety that is not installed: as the table itself writes it, or the one for others."""
    for group in table.groups:
        if folded(words) in {folded(variety) for variety in group.varieties}:
            return group.name
    return _others(table)


def _is_written(table: ClassTable, words: str) -> bool:
    return any(folded(words) == folded(variety) for group in table.groups for variety in group.varieties)


def _others(table: ClassTable) -> str | None:
    return next((group.name for group in table.groups if group.others), None)


def counted(placed: Sequence[Placed]) -> dict[tuple[str, str], int]:
    """How many fish are in each class, in the order in which they first come."""
    found: dict[tuple[str, str], int] = {}
    for one in placed:
        found[one.group, one.size] = found.get((one.group, one.size), 0) + 1
    return found
