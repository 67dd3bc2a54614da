"""What a part of a standard reads: traits, sections, the score."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from koirules.meaning.operators import Nature
from koirules.standard.parts import Part, Rules
from koirules.standard.reading_nodes import traits_at, written_key
from koirules.standard.saying import names_in
from koirules.standard.tree import (
    Apply,
    Figure,
    Grown,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    Supplied,
    TermRead,
    TraitRead,
    Written,
    walk,
)
from koirules.vocabulary.traits import Trait


def traits_in(part: Part) -> tuple[Trait, ...]:
    """The traits that a part reads, through terms and in what they grow to too, in the order they stand."""
    found: dict[str, Trait] = {}
    for root in part.roots:
        for node in walk(root):
            for of in traits_at(node):
                found.setdefault(of.trait.name, of.trait)
    return tuple(found.values())


def supplied_in(part: Part) -> tuple[Supplied, ...]:
    """The values beside the record that a part reads, through terms too, in the order they stand."""
    found: dict[str, Supplied] = {}
    for root in part.roots:
        for node in walk(root):
            of = node.of if isinstance(node, Recorded) else node
            if isinstance(of, Supplied) and not isinstance(of.source, Written):
                found.setdefault(of.key, of)
    return tuple(found.values())


def supplied_looked_at(part: Part, value_of: Callable[[Node], Any]) -> tuple[Supplied, ...]:
    """The values beside the record that a part came to look at for one fish: none of a branch that was surely not taken.

    value_of: both ends of a node for that fish.
    """
    found: dict[str, Supplied] = {}
    waiting = list(part.roots)
    seen: set[int] = set()
    while waiting:
        node = waiting.pop()
        if id(node) in seen:
            continue
        seen.add(id(node))
        match node:
            case Apply(operation=operation, operands=(value, condition, otherwise)) if (
                Nature.CHOOSES in operation.nature
            ):
                could_be = value_of(condition)
                branches = ((value, (False, False)), (otherwise, (True, True)))
                waiting.extend((condition, *(branch for branch, shut in branches if could_be != shut)))
            case Apply(operands=operands):
                waiting.extend(operands)
            case TermRead(node=inner):
                waiting.append(inner)
            case Supplied(key=key):
                found.setdefault(key, node)
            case _:
                pass
    return tuple(found.values())


def keys_needed(rules: Rules) -> frozenset[str]:
    """The keys of all values, of traits and beside the record, without which the outcome of a fish may be open."""
    nodes = (node for part in rules.parts for root in part.roots for node in walk(root))
    return frozenset(node.key for node in nodes if isinstance(node, TraitRead | Supplied))


def traits_beneath(rules: Rules) -> frozenset[str]:
    """The names of all traits that a standard reads of some look at some fish."""
    found: set[str] = set()
    for root in rules.roots:
        for node in walk(root, into_sources=True):
            of = node.of if isinstance(node, Recorded) else node
            if isinstance(of, TraitRead):
                found.add(of.trait.name)
    return frozenset(found)


def traits_of_rounds(rules: Rules) -> frozenset[str]:
    """The keys of all traits that the rounds of a standard read, as they are graded or as they were written."""
    roots = (root for one in rules.rounds for root in one.roots)
    nodes = (node for root in roots for node in walk(root, into_sources=True))
    told = [node.of if isinstance(node, Recorded) else node for node in nodes]
    written = (node.key for node in told if isinstance(node, Supplied) and isinstance(node.source, Written))
    return frozenset((*(node.trait.name for node in told if isinstance(node, TraitRead)), *written))


def traits_of_parts(rules: Rules) -> frozenset[str]:
    """The names of all traits that criteria, faults, lifts and grades read of this look at the fish, or show in a `say`."""
    found = {name for part in rules.parts if part.say is not None for said in part.say.every for name in names_in(said)}
    waiting: list[Node] = [root for part in rules.parts for root in part.roots]
    waiting += [rules.terms[name].node for name in found if name in rules.terms]
    found &= rules.traits.keys()
    while waiting:
        for node in walk(waiting.pop()):
            match node:
                case TraitRead(trait=trait):
                    found.add(trait.name)
                case Supplied(source=Figure() | Grown() as source):
                    waiting.extend(source.reads)
                case _:
                    pass
    return frozenset(found)


def asked_whether_recorded(rules: Rules) -> frozenset[str]:
    """The names of the traits of which some rule asks whether they are recorded."""
    nodes = (node for part in rules.parts for root in part.roots for node in walk(root))
    return frozenset(node.key for node in nodes if isinstance(node, Recorded) and isinstance(node.of, TraitRead))


def points_in(part: Part) -> tuple[str, ...]:
    """The sections that a part reads, "" for the score."""
    found: dict[str, None] = {}
    for root in part.roots:
        for node in walk(root):
            match node:
                case ScoreRead():
                    found[""] = None
                case SectionRead(name=name):
                    found[name] = None
                case _:
                    pass
    return tuple(found)


def is_assumed(rules: Rules, name: str, readings: Mapping[str, Any]) -> bool:
    """Whether silence filled a trait in."""
    reading = readings.get(name)
    return name in rules.silence and reading is not None and readings.get(written_key(name)) != reading
