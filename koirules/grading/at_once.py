"""Grades a mapping as a program gives it at once, without making a record of it first, where it is complete.

Nothing else is read here than RecordReader reads: a value is taken as it stands only where a glance would give it back, and
any other goes through its glance. Whatever that does not know, all that is wrong, what has to be measured first and what grows
is left to the reader.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import Any

from koirules.engines.scalar.complete import Sure, taken
from koirules.engines.scalar.source import Constants
from koirules.grading.measuring import leaves_as_it_is
from koirules.grading.single import Grader
from koirules.program.records import Input
from koirules.results.mapping_record import TINY, Glance, RecordReader, doubles_between, highest_count, words_known
from koirules.results.record import Record
from koirules.results.result import Result
from koirules.values import define, frozen
from koirules.vocabulary.kinds import Choice, Count, Number, Places, Scale, YesNo
from koirules.vocabulary.quantities import may_be_part_of_one
from koirules.vocabulary.readings import Reading


@define
class _Unread:
    """A mapping that was graded at once. It holds nothing but numbers, texts and truths, that can be read."""

    reader: RecordReader
    mapping: Mapping[str, object]

    @cached_property
    def readings(self) -> Mapping[str, Reading]:
        """Its readings by trait name."""
        record = self.reader.read(self.mapping, "")
        if isinstance(record, Record):
            return record.readings
        raise AssertionError(record)


@frozen
class AtOnce:
    """A compiled standard, ready to grade mappings at once."""

    grader: Grader
    reader: RecordReader

    def grade(self, record: Mapping[str, object], fish: str) -> Result | None:
        """The result of a fish, None where its record is to be read first."""
        # A mapping of another class may answer in its own way.
        if type(record) is not dict or len(record) < len(self.grader.needed) or self.grader.silence is not None:
            return None
        sure = self.run(record)
        if sure is None:
            return None
        there = "fish" in record
        alone = self._plain and len(record) == len(self.grader.needed) + there
        labels = {} if alone else self._labels(record)
        if labels is None or not (alone or self._needs_no_measuring(record)):
            return None
        if there and not fish:
            named = record["fish"]
            fish = "" if named is None else str(named)
        return self.grader.settled(fish, labels, sure, _Unread(self.reader, record.copy()))

    @cached_property
    def _plain(self) -> bool:
        """Whether the inputs are neither labels nor called like the name of the fish, and nothing follows from them alone."""
        needed = self.grader.needed
        named = self.reader.labels.isdisjoint(needed) and "fish" not in self.reader.glances
        return named and leaves_as_it_is(self.grader.measurer, needed.__contains__)

    def _needs_no_measuring(self, record: Mapping[str, object]) -> bool:
        measurer = self.grader.measurer
        return not measurer.measures or leaves_as_it_is(measurer, lambda name: record.get(name) is not None)

    def _labels(self, record: Mapping[str, object]) -> dict[str, str] | None:
        """The labels of a record; None where something in it, that the rules do not read, needs a second look."""
        labels: dict[str, str] = {}
        glances = self.reader.glances
        for name, value in record.items():
            label = name in self.reader.labels
            if name in self.grader.needed and not label:
                continue
            glance = glances.get(name)
            if glance is None:
                if name == "fish":
                    continue
                return None
            reading = glance(value)
            if reading is None and value is not None:
                return None
            if label and reading is not None:
                labels[name] = str(reading)
        return labels

    @cached_property
    def run(self) -> Callable[[Any], Sure | None]:
        """Grades what the rules read of a mapping; None where it is not complete, or something takes a second look."""
        complete, traits = self.grader.complete, self.reader.traits
        beside = any(key not in traits for key in (*(one.key for one in complete.inputs), *complete.asked))
        if beside or not self.grader.evaluator.ahead.nothing:
            # What stands beside a record is in no mapping.
            return lambda _: None
        constants = Constants()
        lines = [
            f"q{number} = record.get({constants.named(key)}) is not None" for number, key in enumerate(complete.asked)
        ]
        lookups = taken(complete.inputs, [f"t{number}" for number in range(len(complete.inputs))], constants)
        for number, one in enumerate(complete.inputs):
            found = self._looked_up(one, f"t{number}", constants)
            if found:
                lookups.append(found)
            else:
                lines.append(f"if {self._needs_a_look(one, f't{number}', constants)} is None: return None")
        return complete.made(lookups, lines, constants)

    def _looked_up(self, one: Input, name: str, constants: Constants) -> str:
        """The line that looks up the value of an input by its word; "" of what has no words."""
        kind = self.reader.traits[one.key].kind
        if not isinstance(kind, YesNo | Scale | Choice | Places):
            return ""
        words = constants.named({word: one.value(reading) for word, reading in words_known(kind).items()})
        test = f"if {name} is not True and {name} is not False: " if isinstance(kind, YesNo) else ""
        return f"{test}{name} = {words}[{name}]"

    def _needs_a_look(self, one: Input, name: str, constants: Constants) -> str:
        """The test that makes the value of an input of what was given; None where that takes a second look."""
        kind = self.reader.traits[one.key].kind
        look = constants.named(_look(one, self.reader.glances[one.key]))
        match kind:
            case Number(unit=unit) if unit is None or unit.is_held:
                low, high = doubles_between(kind.low, kind.high)
                least = 1.0 if may_be_part_of_one(kind) else TINY
                within = f"{low!r} <= {name} <= {high!r}" if low > least else f"{least!r} < {name} <= {high!r}"
                plain = f"type({name}) is float and {within}"
                return f"({name} if {plain} else ({name} := {look}({name})))"
            case Count(high):
                plain = f"type({name}) is int and 0 <= {name} <= {highest_count(high)}"
                return f"({name} := {name} + 0.0 if {plain} else {look}({name}))"
            case _:
                return f"({name} := {look}({name}))"


def _look(one: Input, glance: Glance) -> Callable[[object], Any]:
    """What gives the value of an input; None where that takes a second look."""
    return lambda given: one.value(glance(given))
