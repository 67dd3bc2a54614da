"""One expression of a standard, evaluated for one fish that has been graded: for looking into a result."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from koirules.engines.scalar.evaluator import Trace
from koirules.meaning.algebra import PLAIN, Ends, ends_of
from koirules.meaning.grades import worst_first
from koirules.program.evaluation import Expressions, reading
from koirules.program.records import reach_of
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Node, Supplied, TraitRead
from koirules.values import frozen
from koirules.vocabulary.readings import Reading


@frozen
class _Record:
    """What is read of the readings of one record."""

    readings: Mapping[str, Reading]

    def given(self, node: TraitRead | Supplied) -> Ends[Any]:
        """Its reading; all of the range where there is none."""
        return ends_of(self.readings.get(node.key, reach_of(node)))

    def recorded(self, of: TraitRead | Supplied) -> Ends[Any]:
        """Whether there is a reading."""
        there = of.key in self.readings
        return Ends(there, there)


def worked_out(
    root: Node, rules: Rules, settings: Mapping[str, Setting], record: Mapping[str, Reading], trace: Trace
) -> Any:
    """The value of an expression for a fish: both ends for numbers, truths and places, bits for levels, text for labels."""
    hundredths = {"": Ends(*trace.score)}
    hundredths.update((section.name, Ends(*ends)) for section, ends in zip(rules.sections, trace.sections, strict=True))
    limits = zip(rules.limits, trace.limits, strict=True)
    faults = {limit.name: Ends(*states[4:]) for limit, states in limits if limit.head == "fault"}
    grade: Ends[Any] = Ends(worst_first(trace.possible, len(rules.grades)))
    evaluation = Expressions(settings, PLAIN, _Record(record), faults=faults, hundredths=hundredths, grade=grade)
    return reading(evaluation.node(root), root.type)
