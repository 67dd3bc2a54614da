"""The typed expression tree: what a rule means, after the checker.

Every node carries its type, its range (the reading over all that the traits' ranges allow, from the operations table)
and its place. What the later parts of the language need (`earlier`, batch figures, `grown to`) gets node classes here
when it is worked out; until then the checker answers it.
"""

from __future__ import annotations

from typing import Any

from attrs import field, frozen

from koirules.problems import Place
from koirules.standard.operations import Operation
from koirules.standard.types import Type
from koirules.vocabulary.traits import Trait


@frozen
class Constant:
    """A value as written: a Span for numbers, bits for steps and places, (surely, possibly) for yes and no, str for text."""

    type: Type
    range: Any
    place: Place


@frozen
class TraitRead:
    """What was recorded of a trait."""

    trait: Trait
    type: Type
    range: Any
    place: Place


@frozen
class SettingRead:
    """The value of a setting, fixed for a run."""

    name: str
    type: Type
    range: Any
    place: Place


@frozen
class TermRead:
    """The value of a term."""

    name: str
    type: Type
    range: Any
    place: Place
    node: Node = field(repr=False)


@frozen
class Recorded:
    """Whether a trait was recorded; never open. through: the term that it was asked of, "" for the trait itself."""

    trait: Trait
    through: str
    type: Type
    range: Any
    place: Place


@frozen
class ScoreRead:
    """The score, in hundredths made a number."""

    type: Type
    range: Any
    place: Place


@frozen
class SectionRead:
    """The points of a section."""

    name: str
    type: Type
    range: Any
    place: Place


@frozen
class FaultRead:
    """Whether a fault bit, after its `except`."""

    name: str
    type: Type
    range: Any
    place: Place


@frozen
class Apply:
    """An operation of the table over its operands."""

    operation: Operation
    operands: tuple[Node, ...]
    type: Type
    range: Any
    place: Place


Node = Constant | TraitRead | SettingRead | TermRead | Recorded | ScoreRead | SectionRead | FaultRead | Apply


def apply(operation: Operation, operands: tuple[Node, ...], kind: Type, place: Place) -> Apply:
    """An operation over operands, with its range worked out from theirs."""
    return Apply(operation, operands, kind, operation.range_of(*(node.range for node in operands)), place)


def walk(node: Node, *, into_terms: bool = True) -> list[Node]:
    """Every node below (and with) a node, the inside of each term once; without recursion, since sums can be long."""
    found: list[Node] = []
    seen: set[str] = set()
    waiting = [node]
    while waiting:
        current = waiting.pop()
        found.append(current)
        match current:
            case Apply(operands=operands):
                waiting.extend(reversed(operands))
            case TermRead(name=name, node=inner) if into_terms and name not in seen:
                # Terms that read one another twice would otherwise be walked into twice as often at each level.
                seen.add(name)
                waiting.append(inner)
            case _:
                pass
    return found
