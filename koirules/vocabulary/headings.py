"""What heads a column or a key of a record: the name of a trait or its title, with the unit of its numbers in brackets."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from koirules.vocabulary.kinds import Number
from koirules.vocabulary.plain_text import folded, plain
from koirules.vocabulary.quantities import unit_named
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit

IN_BRACKETS = re.compile(r"(.+?) ?[(\[] ?([^()\[\]]+?) ?[)\]]")
"""A heading with something in brackets at its end."""


def by_heading(traits: Iterable[Trait]) -> dict[str, Trait]:
    """Every trait by its name, and by each title that no other trait has, folded."""
    names: dict[str, Trait] = {}
    titled: dict[str, list[Trait]] = {}
    for trait in traits:
        names[folded(trait.name)] = trait
        for title in {folded(title) for title in (trait.title, *trait.titles.values())}:
            titled.setdefault(title, []).append(trait)
    return {title: owners[0] for title, owners in titled.items() if len(owners) == 1} | names


def headed(heading: str, known: Mapping[str, Trait]) -> tuple[Trait, Unit | None] | None:
    """The trait that a heading names, and the unit that it gives its numbers; None where it names none, or no fitting unit.

    known: as `by_heading` gives it.
    """
    text = plain(heading)
    trait = known.get(folded(text))
    if trait is not None:
        return trait, None
    bracketed = IN_BRACKETS.fullmatch(text)
    trait = None if bracketed is None else known.get(folded(bracketed[1]))
    if trait is None or bracketed is None or not isinstance(trait.kind, Number) or trait.kind.unit is None:
        return None
    unit = unit_named(bracketed[2])
    return None if unit is None or unit.dimension is not trait.kind.dimension else (trait, unit)
