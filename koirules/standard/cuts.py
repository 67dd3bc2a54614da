"""Where a trait makes a difference: the values at which something that reads it can change.

A number or count that is compared or read by a curve on its own has exact cuts: thresholds and knots, in millionths of
the held unit. Between two cuts every comparison that reads the trait alone stays as it is, and every curve is a
straight line. A trait that is read inside a sum, product, quotient or the like is `entangled`: where its cuts lie depends
on other traits, so it gets a few even ones, which serve as a measure and not as a proof.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from koirules.meaning import operators as ops
from koirules.meaning.curves import Curve
from koirules.meaning.operators import Nature
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import trait_of, traits_at, unrounded
from koirules.standard.tree import Apply, Constant, Node, Recorded, SettingRead, Supplied, TermRead, TraitRead, walk
from koirules.standard.types import TextLabel
from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Kind, Number

_EVEN = 4


@frozen
class Cuts:
    """The cuts of one trait: at each of them begins a piece of its range. texts: what a label is compared with."""

    at: tuple[int, ...]
    entangled: bool
    texts: tuple[str, ...] = ()


def cuts_of(rules: Rules, settings: Mapping[str, Setting]) -> dict[str, Cuts]:
    """The cuts of every number, count and label that the rules read, by name."""
    at: dict[str, set[int]] = {}
    texts: dict[str, set[str]] = {}
    alone: dict[str, int] = {}
    read: dict[str, int] = {}
    # A term that is nothing but a trait reads it wherever the term stands, and not once in its own words.
    terms = [term.node for term in rules.terms.values()]
    roots = [
        *(root for part in rules.parts for root in part.roots),
        *(node for node in terms if trait_of(node) is None),
    ]
    read.update((trait.name, 0) for trait in map(trait_of, terms) if trait is not None)
    for root in roots:
        for node in walk(root, into_terms=False):
            through = trait_of(node) if isinstance(node, TraitRead | TermRead) else None
            if through is not None:
                read[through.name] = read.get(through.name, 0) + 1
            elif isinstance(node, Recorded) and isinstance(node.of, TraitRead):
                read.setdefault(node.of.trait.name, 0)
            elif isinstance(node, Supplied):
                # Where its own cuts lie depends on the length, and the other way round.
                for of in traits_at(node):
                    read[of.trait.name] = read.get(of.trait.name, 0) + 1
            elif isinstance(node, Apply):
                for name, cut in _of_comparison(node, settings):
                    at.setdefault(name, set()).update(cut)
                    alone[name] = alone.get(name, 0) + 1
                for name, text in _of_text(node):
                    texts.setdefault(name, set()).add(text)
    for section in rules.sections:
        for part in section.points:
            trait = trait_of(part.by)
            if trait is not None and isinstance(part.shape, Curve):
                at.setdefault(trait.name, set()).update(part.shape.at)
                alone[trait.name] = alone.get(trait.name, 0) + 1
    found: dict[str, Cuts] = {}
    for name, times in read.items():
        kind = rules.traits[name].kind
        entangled = isinstance(kind, Number | Count) and times > alone.get(name, 0)
        cuts = at.get(name, set())
        if entangled:
            cuts = cuts | set(even_cuts(kind))
        found[name] = Cuts(tuple(sorted(cuts)), entangled, tuple(sorted(texts.get(name, ()))))
    return found


def _of_comparison(node: Apply, settings: Mapping[str, Setting]) -> Iterator[tuple[str, tuple[int, ...]]]:
    """The trait and the cuts of a comparison of one trait with one known number."""
    if Nature.COMPARES_NUMBERS not in node.operation.nature:
        return
    left, right = (unrounded(operand) for operand in node.operands)
    for one, other, turned in ((left, right, False), (right, left, True)):
        trait, known = trait_of(one), known_millionths(other, settings)
        if trait is None or known is None:
            continue
        if node.operation is ops.NUMBER_IS:
            yield trait.name, (known, known + 1)
        elif node.operation is ops.NUMBER_AT_LEAST:
            yield trait.name, (known + 1 if turned else known,)
        else:
            yield trait.name, (known if turned else known + 1,)


def _of_text(node: Apply) -> Iterator[tuple[str, str]]:
    if node.operation is ops.TEXT_IS:
        trait, text = trait_of(node.operands[0]), node.operands[1]
        if trait is not None and isinstance(text, Constant) and isinstance(text.type, TextLabel):
            yield trait.name, text.range


def known_millionths(node: Node, settings: Mapping[str, Setting]) -> int | None:
    """The millionths of a constant or a setting; None for what is known only of a fish."""
    match node:
        case Constant(range=(float() | int() as value, _)):
            return int(ops.MILLIONTHS.range_of((value, value))[0])
        case SettingRead(name=name):
            value = float(settings[name].value)
            return int(ops.MILLIONTHS.range_of((value, value))[0])
        case _:
            return None


def even_cuts(kind: Kind) -> list[int]:
    """A few even places in the range of a number or count; none of what is no number."""
    if not isinstance(kind, Number | Count):
        return []
    low, high = (float(kind.held_low), float(kind.held_high)) if isinstance(kind, Number) else (0.0, float(kind.high))
    step = (high - low) / _EVEN
    return [round((low + step * i) * 1_000_000) for i in range(1, _EVEN)]
