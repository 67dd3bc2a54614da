"""Python source of typed expressions over a record in which everything that is read has one value.

The templates are those of the operations table, of which one end is enough: what stands at both ends is the same source.
What reads one scale, choice or yes-or-no alone is tabled, by running the table's own source over each of its steps.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from attrs import frozen

from koirules.engines.scalar.emitter import Emitter, RecordedAs
from koirules.standard.operations import MILLIONTHS, Ends
from koirules.standard.parts import Setting
from koirules.standard.tree import Apply, Node, Supplied, TraitRead
from koirules.standard.types import TextLabel, Type
from koirules.vocabulary.readings import Reading


@frozen
class Coded(Ends):
    """The source of what depends on one code alone, and its reading for each code."""

    code: str = ""
    readings: tuple[Any, ...] = ()


@frozen
class Input:
    """What the function takes of a record: what stands under a key. name: of the value that it works with.

    A value is the code of a step (where there are two of them a truth: whether it is the second), one end of what has two,
    or a text. steps: how many there are, 0 of what is no step. paired: whether a reading has two ends.
    """

    key: str
    name: str
    steps: int = 0
    paired: bool = False

    @property
    def codes(self) -> Mapping[Reading, Any]:
        """The code of each reading that is one step."""
        if self.steps == len((False, True)):
            return {1: False, 2: True}
        return {1 << i: i for i in range(self.steps)}

    def value(self, reading: Any) -> Any:
        """The value that a reading is, None where it could be several."""
        if self.steps:
            return self.codes.get(reading)
        if self.paired:
            return reading[0] if reading is not None and reading[0] == reading[1] else None
        return reading


class OpenToEveryFishError(Exception):
    """A value that is open whatever is recorded."""


class SureEmitter(Emitter):
    """Gathers the lines of a function over complete records; they give up, with None, where a value turns out open.

    inputs: what is taken of a record, by key. asked: the names of truths, whether something stands under a key at all.
    dear: the names of what is not worked out again for the reasons of a fish.
    """

    def __init__(self, settings: Mapping[str, Setting]) -> None:
        super().__init__(settings, RecordedAs.STANDS)
        self.inputs: dict[str, Input] = {}
        self.asked: dict[str, str] = {}
        self.dear: set[str] = set()

    def given(self, key: str, kind: Type, reach: Any) -> Ends:
        """What stands under a key of the record."""
        known = self._given.get(key)
        if known is None:
            name = f"t{len(self.inputs)}"
            if isinstance(kind, TextLabel):
                made, known = Input(key, name), Ends(name)
            elif isinstance(reach, tuple):
                made, known = Input(key, name, paired=True), Ends(name, name)
            else:
                made = Input(key, name, steps=reach.bit_length())
                known = self.coded(name, tuple(made.codes))
            self.inputs[key] = made
            self._given[key] = known
        return known

    def whether_recorded(self, of: TraitRead | Supplied) -> Ends:
        """Whether something stands under a key: a truth that is taken with the inputs."""
        name = self.asked.setdefault(of.key, f"q{len(self.asked)}")
        return Ends(name, name)

    def node(self, root: Node) -> Ends:
        """The source of an expression. Raises OpenToEveryFishError where it is known and not one value."""
        ends = super().node(root)
        if ends in self.fixed and not _is_one(self.fixed[ends]):
            raise OpenToEveryFishError
        return ends

    def applied(self, node: Apply, inputs: list[Ends]) -> Ends:
        """An operation over operands of one value: one end of it, both where it may open."""
        operation = node.operation
        tabled = self._tabled(node, inputs)
        if tabled is not None:
            return tabled
        if operation is MILLIONTHS:
            return self.kept(operation.first(*inputs))
        sure = all(_is_one(self.fixed[ends]) for ends in inputs if ends in self.fixed)
        first = operation.first(*inputs)
        if operation.second is None:
            if not sure:
                raise OpenToEveryFishError
            return self.line(first)
        if sure and not operation.opens(*(operand.range for operand in node.operands)):
            return self.line(first, first)
        made = self.line(first, operation.second(*inputs))
        if made.first != made.second:
            self.lines.append(f"if {made.first} != {made.second}: return None")
        return Ends(made.first, made.first)

    def kept(self, source: str) -> Ends:
        """A line that works out something dear."""
        ends = self.line(source, source)
        self.dear.add(ends.first)
        return ends

    def points(self, name: str, ends: Ends) -> None:
        """Say where the hundredths of a section, or of the score (name ""), stand."""
        super().points(name, ends)
        self.dear.add(ends.first)

    def _tabled(self, node: Apply, inputs: list[Ends]) -> Ends | None:
        """The operation over operands that depend on one code at the most; None where it is more, or open for a code."""
        codes = {ends.code: len(ends.readings) for ends in inputs if isinstance(ends, Coded)}
        if len(codes) != 1 or not all(isinstance(ends, Coded) or ends in self.fixed for ends in inputs):
            return None
        ((code, size),) = codes.items()
        each = [ends.readings if isinstance(ends, Coded) else (self.fixed[ends],) * size for ends in inputs]
        readings = [node.operation.range_of(*values) for values in zip(*each, strict=True)]
        return self.coded(code, readings) if all(map(_is_one, readings)) else None

    def coded(self, code: str, readings: Sequence[Any]) -> Ends:
        """What has a reading, of one value, for each code."""
        paired = isinstance(readings[0], tuple)
        values = tuple(reading[0] if isinstance(reading, tuple) else reading for reading in readings)
        if len(set(values)) == 1:
            return self.literal(readings[0])
        source = _by_code(code, values)
        return Coded(source, source if paired else "", code, tuple(readings))


def _by_code(code: str, values: tuple[Any, ...]) -> str:
    match values:
        case (False, True):
            return code
        case (one, other):
            return f"({other!r} if {code} else {one!r})"
        case _:
            return f"{values!r}[{code}]"


def _is_one(reading: Any) -> bool:
    """Whether a reading is one value."""
    if isinstance(reading, tuple):
        first, second = reading
        return bool(first == second)
    return not isinstance(reading, int) or reading.bit_count() == 1
