"""The typed expression tree: what a rule means, after the checker.

Every node carries its type, its range (the reading over all that the traits' ranges allow, from the operations table)
and its place. What is worked out beside the record before a fish is graded (a figure of the batch, an earlier look, a trait as
it will be when the fish is grown, a trait as it was written whatever silence means) is
`Supplied`: every evaluator finds it among the readings by its key.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from decimal import Decimal
from typing import Any, TypeVar, assert_never

from attrs import field

from koirules.meaning.aggregates import Aggregate
from koirules.meaning.operators import Operation
from koirules.problems import Place
from koirules.standard.types import Type
from koirules.values import frozen
from koirules.vocabulary.traits import Trait

N = TypeVar("N")


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

    @property
    def key(self) -> str:
        """Under which name it stands among the readings."""
        return self.trait.name


@frozen
class SettingRead:
    """The value of a setting, fixed for a run."""

    name: str
    type: Type
    range: Any
    place: Place


@frozen
class TermRead:
    """The value of a term. as_written: without what silence means."""

    name: str
    type: Type
    range: Any
    place: Place
    node: Node = field(repr=False)
    as_written: bool = False

    @property
    def key(self) -> str:
        """Tells its value apart from that of the same term with what silence means."""
        return f"{self.name} as written" if self.as_written else self.name


@frozen
class Figure:
    """A figure of the batch.

    kind: which figure; percent: of a percentile. of: what it is a figure of. same: only over fish that have all of these in
    common. kept_by: only over those kept by this round, "" for all that it can look at. least: over so many recorded ones or
    not at all. as_written: `of` without what silence means, where it reads such a trait: what is assumed of a fish is not
    recorded. enough: what is known only where so many have that, one node or none.
    """

    kind: Aggregate
    percent: Decimal | None
    of: Node
    same: tuple[Node, ...] = ()
    kept_by: str = ""
    least: int = 0
    as_written: Node | None = None
    enough: tuple[Node, ...] = ()

    @property
    def groups(self) -> tuple[Node, ...]:
        """What tells the fish apart that it is taken over; a fish of which any of it is not known counts in none."""
        return (*self.same, *self.enough)

    @property
    def reads(self) -> tuple[Node, ...]:
        """The expressions that it reads of each fish."""
        return (self.of, *self.groups)


@frozen
class Earlier:
    """The value of an expression in the look before this one at the same fish."""

    of: Node

    @property
    def reads(self) -> tuple[Node, ...]:
        """The expressions that it reads of the earlier look."""
        return (self.of,)


@frozen
class Grown:
    """A trait as it will be when the fish is as long as a target.

    of: the trait as it is now. inputs: what it is worked out from when grown: itself, or what it is derived from. length:
    the trait that says how long the fish is now. target: the length in cm, of constants and settings. coefficients: the
    settings of the standard that the model of growth goes by. terms: the names of those that the trait stands in where it
    is asked for.
    """

    of: TraitRead
    inputs: tuple[TraitRead, ...]
    length: TraitRead
    target: Node
    coefficients: tuple[SettingRead, ...] = ()
    terms: tuple[str, ...] = ()

    @property
    def reads(self) -> tuple[Node, ...]:
        """The expressions that it reads."""
        return (self.of, *self.inputs, self.length, self.target, *self.coefficients)


@frozen
class Written:
    """A trait as it was written down or derived, whatever silence means."""

    of: TraitRead

    @property
    def reads(self) -> tuple[Node, ...]:
        """The trait."""
        return (self.of,)


Source = Figure | Earlier | Grown | Written


@frozen
class Supplied:
    """A value that is worked out beside the record, before the fish is graded: among its readings under `key`.

    A reading is what the value of a node of this type is (operations.py); without one it is all of its range.
    """

    key: str
    source: Source = field(repr=False)
    type: Type
    range: Any
    place: Place


@frozen
class Recorded:
    """Whether a trait, or a value beside the record, was recorded; never open.

    through: the term that it was asked of, "" where none was.
    """

    of: TraitRead | Supplied
    through: str
    type: Type
    range: Any
    place: Place

    @property
    def key(self) -> str:
        """Under which name it stands among the readings."""
        return self.of.key


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
class GradeRead:
    """The grade, as a scale of the standard's grades, worst first."""

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


Node = (
    Constant
    | TraitRead
    | SettingRead
    | TermRead
    | Supplied
    | Recorded
    | ScoreRead
    | SectionRead
    | FaultRead
    | GradeRead
    | Apply
)


def apply(operation: Operation, operands: tuple[Node, ...], kind: Type, place: Place) -> Apply:
    """An operation over operands, with its range worked out from theirs."""
    return Apply(operation, operands, kind, operation.range_of(*(node.range for node in operands)), place)


def operands_of(node: Node) -> tuple[Node, ...]:
    """The operands of an operation; none of any other node."""
    return node.operands if isinstance(node, Apply) else ()


def post_order(
    root: N,
    beneath: Callable[[N], Sequence[N]],
    known: Callable[[N], bool] = lambda _: False,
    key: Callable[[N], int] = id,
) -> Iterator[N]:
    """Each node once, after those beneath it from left to right; without recursion, since sums can be long.

    beneath: which nodes come before a node. known: nodes that are left out, with what is beneath them. key: tells nodes apart.
    """
    found: set[int] = set()
    waiting: list[tuple[N, bool]] = [(root, False)]
    while waiting:
        node, ready = waiting.pop()
        if key(node) in found or known(node):
            continue
        first = () if ready else beneath(node)
        if first:
            waiting.append((node, True))
            waiting.extend((one, False) for one in reversed(first))
        else:
            found.add(key(node))
            yield node


def walk(node: Node, *, into_terms: bool = True, into_sources: bool = False) -> list[Node]:
    """Every node below (and with) a node, the inside of each term once; without recursion, since sums can be long.

    into_sources: also what values beside the record are made of.
    """
    found: list[Node] = []
    seen: set[str] = set()
    waiting = [node]
    while waiting:
        current = waiting.pop()
        found.append(current)
        match current:
            case Apply(operands=operands):
                waiting.extend(reversed(operands))
            case TermRead(key=key, node=inner) if into_terms and key not in seen:
                # Terms that read one another twice would otherwise be walked into twice as often at each level.
                seen.add(key)
                waiting.append(inner)
            case Supplied(key=key, source=source) if into_sources and key not in seen:
                seen.add(key)
                waiting.extend(reversed(source.reads))
            case Recorded(of=Supplied() as of) if into_sources:
                waiting.append(of)
            case _:
                pass
    return found


def meaning(node: Node) -> str:
    """What a node is in one line, the same for all that mean the same wherever they stand; operators come first."""
    words: list[str] = []
    for each in walk(node, into_terms=False):
        match each:
            case Constant(type=kind, range=value):
                words.append(f"{value!r}" if isinstance(value, str) else f"{type(kind).__name__}{value!r}")
            case TraitRead(trait=trait):
                words.append(trait.name)
            case SettingRead(name=name):
                words.append(name)
            case TermRead(key=key):
                words.append(key)
            case Supplied(key=key):
                words.append(f"[{key}]")
            case Recorded(of=of):
                words.append(f"recorded [{of.key}]")
            case ScoreRead():
                words.append("score")
            case SectionRead(name=name):
                words.append(f"section {name}")
            case FaultRead(name=name):
                words.append(f"fault {name}")
            case GradeRead():
                words.append("grade")
            case Apply(operation=operation, operands=operands):
                words.append(f"{operation.name}/{len(operands)}")
            case _:
                assert_never(each)
    return " ".join(words)
