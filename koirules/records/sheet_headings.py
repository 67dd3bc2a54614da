"""The headings of a blank record sheet."""

from __future__ import annotations

from koirules.vocabulary.kinds import Number
from koirules.vocabulary.traits import Trait


def heading_of(trait: Trait) -> str:
    """The header of a trait's column, with its unit: `length (cm)`."""
    if isinstance(trait.kind, Number) and trait.kind.unit is not None:
        return f"{trait.name} ({trait.kind.unit.symbol})"
    return trait.name
