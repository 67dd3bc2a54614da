"""Nodes that read a trait, and which trait a node reads."""

from __future__ import annotations

from collections.abc import Collection
from typing import TYPE_CHECKING

from attrs import evolve

from koirules.meaning.operators import MILLIONTHS, TRUTH_OF_STEPS
from koirules.problems import Place
from koirules.standard.tree import (
    Apply,
    Grown,
    Node,
    Recorded,
    Supplied,
    TermRead,
    TraitRead,
    Written,
    apply,
    operands_of,
    post_order,
)
from koirules.standard.types import Steps, Truth, type_of_kind
from koirules.vocabulary.kinds import Number, YesNo
from koirules.vocabulary.readings import anything
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit

if TYPE_CHECKING:
    from koirules.language.syntax import Word

YES_NO_STEPS = Steps(("no", "yes"), ordered=False)


def read_trait(trait: Trait, word: Word) -> Node:
    """The node that reads a trait: a condition for a yes-or-no, else what was recorded."""
    reach = anything(trait.kind)
    if isinstance(trait.kind, YesNo):
        inner = TraitRead(trait, YES_NO_STEPS, reach, word.place)
        return apply(TRUTH_OF_STEPS, (inner,), Truth(), word.place)
    return TraitRead(trait, type_of_kind(trait.kind), reach, word.place)


def trait_of(node: Node) -> Trait | None:
    """The trait that a node reads and nothing else, through terms and the reading of yes and no."""
    found = recordable_of(node)
    return found.trait if isinstance(found, TraitRead) else None


def recordable_of(node: Node) -> TraitRead | Supplied | None:
    """What a node reads and nothing else, where that can be recorded or not: a trait, or a value beside the record."""
    while True:
        match node:
            case TraitRead() | Supplied():
                return node
            case TermRead(node=inner):
                node = inner
            case Apply(operation=operation, operands=(inner,)) if operation is TRUTH_OF_STEPS:
                node = inner
            case _:
                return None


def traits_at(node: Node) -> tuple[TraitRead, ...]:
    """The traits that a node itself reads of this fish: one, or what a grown trait is worked out from."""
    match node:
        case TraitRead():
            return (node,)
        case Recorded(of=TraitRead() as of) | Recorded(of=Supplied(source=Written(of=of))):
            return (of,)
        case Supplied(source=Grown() as source):
            return tuple({one.key: one for one in (source.of, *source.inputs, source.length)}.values())
        case _:
            return ()


def recorded(of: TraitRead | Supplied, through: Node, place: Place) -> Node:
    """Whether something was recorded, asked of itself or of a term that is nothing else."""
    name = through.name if isinstance(through, TermRead) else ""
    return Recorded(of, name, Truth(), (False, True), place)


def as_written(of: TraitRead) -> Supplied:
    """A trait as it was written, of which silence means something."""
    return Supplied(written_key(of.trait.name), Written(of), of.type, of.range, of.place)


def written_alone(root: Node, silent: Collection[str]) -> Node | None:
    """What a node is without what silence means: each trait as it was written. None where it reads no silent trait."""
    written: dict[int, Node | None] = {}
    for node in post_order(root, _within_terms):
        match node:
            case TraitRead(trait=trait) if trait.name in silent:
                written[id(node)] = as_written(node)
            case TermRead(node=inner) if (alone := written[id(inner)]) is not None:
                written[id(node)] = evolve(node, node=alone, as_written=True)
            case Apply(operands=operands) if any(written[id(one)] is not None for one in operands):
                written[id(node)] = evolve(node, operands=tuple(written[id(one)] or one for one in operands))
            case _:
                written[id(node)] = None
    return written[id(root)]


def _within_terms(node: Node) -> tuple[Node, ...]:
    return (node.node,) if isinstance(node, TermRead) else operands_of(node)


def written_key(trait: str) -> str:
    """The key of a trait as it was written."""
    return f"{trait} as written"


def whether_recorded(node: Node) -> Node | None:
    """Whether what a node reads was recorded; None where it reads more than one thing, or nothing that can be recorded."""
    of = recordable_of(node)
    return None if of is None else recorded(of, node, node.place)


def unit_shown(node: Node) -> Unit | None:
    """The unit that values of a node are shown in: that of the trait, where it reads one, as it is or as it will be."""
    match recordable_of(node):
        case TraitRead(trait=Trait(kind=Number(unit=unit))):
            return unit
        case Supplied(source=Grown(of=TraitRead(trait=Trait(kind=Number(unit=unit))))):
            return unit
        case _:
            return None


def unrounded(node: Node) -> Node:
    """What is compared, without the rounding to millionths that every comparison begins with."""
    return node.operands[0] if isinstance(node, Apply) and node.operation is MILLIONTHS else node
