"""Measures, typed: a formula with its tree, or a function over columns."""

from __future__ import annotations

from koirules.standard.tree import Node
from koirules.values import frozen
from koirules.vocabulary.measures import Computed
from koirules.vocabulary.traits import Trait


@frozen
class TypedFormula:
    """A formula with its tree; inputs: the traits that it reads."""

    trait: Trait
    expression: str
    node: Node
    inputs: tuple[str, ...]

    @property
    def outputs(self) -> tuple[str, ...]:
        """The one trait that it gives."""
        return (self.trait.name,)


TypedMeasure = TypedFormula | Computed


def inputs_of(measure: TypedMeasure) -> tuple[str, ...]:
    """All that a measure reads."""
    return (*measure.inputs, *measure.helped_by) if isinstance(measure, Computed) else measure.inputs
