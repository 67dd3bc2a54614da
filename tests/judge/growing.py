"""The invented variety of `standards_that_grow`, as a plugin gives it."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.hooks import hookimpl
from koirules.plugins import Registry, registry_with
from koirules.vocabulary.kinds import Kind, Number, YesNo
from koirules.vocabulary.traits import Allometry, Growth, Trait, Vocabulary
from koirules.vocabulary.units import UNITS
from tests.judge import model as m
from tests.judge.drawn_statements import GIVEN, GROWER


class Grower:
    """The plugin."""

    KOIRULES_API = 1

    @hookimpl
    def koirules_vocabularies(self) -> Sequence[Vocabulary]:
        return [Vocabulary(GROWER, "grower", tuple(as_trait(each) for each in GIVEN))]


def as_trait(of: m.Trait) -> Trait:
    allometry = None if of.follows is None else Allometry(*(float(part) for part in of.follows))
    growth = Growth.FIXED if of.fixed else Growth.VARIES
    return Trait(of.name, of.name, as_kind(of.kind), growth=growth, allometry=allometry, white_from_sides=of.whitens)


def as_kind(of: m.Kind) -> Kind:
    if isinstance(of, m.YesNoKind):
        return YesNo()
    assert isinstance(of, m.NumberKind)
    return Number(UNITS[of.unit] if of.unit else None, of.low, of.high)


def registry_that_grows() -> Registry:
    return registry_with(Grower())
