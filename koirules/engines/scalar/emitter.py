"""Python source of typed expressions, from the templates of the operations table.

Every line works out one node into local names; a node whose source was written before is not written again. Whatever is
known before any fish is looked at (numbers, settings, and what is worked out from them alone) is worked out here.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from typing import Any, assert_never

from koirules.standard.operations import NAMES, Ends
from koirules.standard.parts import Limit, Setting, Term
from koirules.standard.tree import (
    Apply,
    Constant,
    FaultRead,
    GradeRead,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    SettingRead,
    Supplied,
    TermRead,
    TraitRead,
)
from koirules.standard.types import TextLabel, Type
from koirules.vocabulary.readings import Span, anything


class RecordedAs(Enum):
    """How `is recorded` of a trait is answered.

    STANDS: as the record stands. SAID: as it is said beside the record, by the name of the trait; open for any other.
    """

    STANDS = "as the record stands"
    SAID = "as it is said by name"


class Constants(dict[str, Any]):
    """What a generated function finds under names that stand in its source."""

    def named(self, value: Any) -> str:
        """A name for a value that source cannot spell."""
        name = f"K{len(self)}"
        self[name] = value
        return name


class Emitter:
    """Gathers the lines of one function over a record, and the constants that they name.

    recorded: how `is recorded` is answered.
    """

    def __init__(self, settings: Mapping[str, Setting], recorded: RecordedAs) -> None:
        self.settings = settings
        self.recorded_as = recorded
        self.lines: list[str] = []
        self.constants = Constants(NAMES)
        self._known: dict[tuple[str, str], Ends] = {}
        self._given: dict[str, Ends] = {}
        self._grade = Ends("")
        self._recorded: dict[str, Ends] = {}
        self._terms: dict[str, Ends] = {}
        self._faults: dict[str, Ends] = {}
        self._points: dict[str, Ends] = {}
        self.fixed: dict[Ends, Any] = {}

    def constant(self, value: Any) -> str:
        """A name for a value that source cannot spell."""
        return self.constants.named(value)

    def line(self, first: str, second: str = "") -> Ends:
        """A line that works out both ends (or the one) and the names that hold them; one name where both are the same."""
        known = self._known.get((first, second))
        if known is None:
            number = len(self._known)
            if second == first:
                known = Ends(f"a{number}", f"a{number}")
                self.lines.append(f"{known.first} = {first}")
            elif second:
                known = Ends(f"a{number}", f"b{number}")
                self.lines.append(f"{known.first} = {first}; {known.second} = {second}")
            else:
                known = Ends(f"a{number}")
                self.lines.append(f"{known.first} = {first}")
            self._known[first, second] = known
        return known

    def term(self, term: Term) -> None:
        """Work out a term; what it needs has been worked out before."""
        self._terms[term.name] = self.node(term.node)

    def told(self, part: Limit | Term) -> Ends:
        """The ends of a term or a fault that was worked out before."""
        return self._faults[part.name] if isinstance(part, Limit) else self._terms[part.name]

    def fault(self, name: str, ends: Ends) -> None:
        """Say where the outcome of a fault stands."""
        self._faults[name] = ends

    def points(self, name: str, ends: Ends) -> None:
        """Say where the hundredths of a section, or of the score (name ""), stand."""
        self._points[name] = ends

    def grade(self, ends: Ends) -> None:
        """Say where the grade stands, as a scale."""
        self._grade = ends

    def node(self, root: Node) -> Ends:
        """The names (or literals) that hold an expression; without recursion, since sums can be long."""
        done: dict[int, Ends] = {}
        waiting: list[tuple[Node, bool]] = [(root, False)]
        while waiting:
            node, ready = waiting.pop()
            if id(node) in done:
                continue
            if isinstance(node, Apply) and not ready:
                waiting.append((node, True))
                waiting.extend((operand, False) for operand in reversed(node.operands))
                continue
            done[id(node)] = self._one(node, done)
        return done[id(root)]

    def _one(self, node: Node, done: Mapping[int, Ends]) -> Ends:
        match node:
            case Constant(range=value):
                return self.literal(value)
            case SettingRead(name=name):
                value = float(self.settings[name].value)
                return self.literal(Span(value, value))
            case TraitRead(trait=trait):
                return self.given(trait.name, node.type, anything(trait.kind))
            case Supplied(key=key, range=reach):
                return self.given(key, node.type, reach)
            case Recorded(of=of):
                return self.whether_recorded(of)
            case TermRead(name=name):
                return self._terms[name]
            case FaultRead(name=name):
                return self._faults[name]
            case GradeRead():
                return self._grade
            case SectionRead(name=name):
                ends = self._points[name]
                return Ends(f"({ends.first} / 100.0)", f"({ends.second} / 100.0)")
            case ScoreRead():
                ends = self._points[""]
                return Ends(f"({ends.first} / 100.0)", f"({ends.second} / 100.0)")
            case Apply(operation=operation, operands=operands):
                inputs = [done[id(operand)] for operand in operands]
                if all(ends in self.fixed for ends in inputs):
                    return self.literal(operation.range_of(*(self.fixed[ends] for ends in inputs)))
                return self.applied(node, inputs)
            case _:
                assert_never(node)

    def applied(self, node: Apply, inputs: list[Ends]) -> Ends:
        """An operation over operands that are not all known."""
        operation = node.operation
        return self.line(operation.first(*inputs), "" if operation.second is None else operation.second(*inputs))

    def literal(self, value: Any) -> Ends:
        """The source of a reading that is known."""

        def spell(part: Any) -> str:
            return self.constant(part) if isinstance(part, str) else f"({part!r})"

        ends = Ends(spell(value[0]), spell(value[1])) if isinstance(value, tuple) else Ends(spell(value))
        self.fixed[ends] = value
        return ends

    def whether_recorded(self, of: TraitRead | Supplied) -> Ends:
        """Whether something was recorded of a trait, or stands beside the record."""
        known = self._recorded.get(of.key)
        if known is None:
            name = self.constant(of.key)
            if self.recorded_as is RecordedAs.SAID and isinstance(of, TraitRead):
                known = self.line(f"said({name}, False)", f"said({name}, True)")
            else:
                held = self.line(f"{name} in record")
                known = Ends(held.first, held.first)
            self._recorded[of.key] = known
        return known

    def given(self, key: str, kind: Type, reach: Any) -> Ends:
        """What stands under a key of the record; all of its reach where nothing does."""
        known = self._given.get(key)
        if known is not None:
            return known
        name = self.constant(key)
        number = len(self._given)
        if isinstance(kind, TextLabel):
            self.lines.append(f"t{number} = get({name})")
            known = Ends(f"t{number}")
        elif isinstance(reach, tuple):
            known = self._pair(number, name, reach)
        else:
            self.lines.append(f"t{number} = get({name}, {reach!r})")
            known = Ends(f"t{number}")
        self._given[key] = known
        return known

    def _pair(self, number: int, name: str, reach: Any) -> Ends:
        self.lines.append(f"t{number}, u{number} = get({name}, {self.constant(tuple(reach))})")
        return Ends(f"t{number}", f"u{number}")
