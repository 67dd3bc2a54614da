"""Grades one record."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property, partial

from attrs import evolve, frozen

from koirules.grading.changes import NearestChanges
from koirules.grading.choosing import Standing, main_reasons
from koirules.grading.contributions import Contributor
from koirules.grading.decisions import Decision
from koirules.grading.evaluator import Evaluator, Trace, compile_rules
from koirules.grading.measuring import measured_record
from koirules.grading.nearest_changes import ChangeFinder
from koirules.grading.parts_read import traits_beneath
from koirules.grading.reasons import Reasoner, hundredths
from koirules.grading.records import Record
from koirules.grading.results import Contribution, Reason, Result, SectionResult
from koirules.grading.telling import Teller, fails_on_score_of
from koirules.measures.deriving import Measurer
from koirules.standard.measured import constant_settings, needed_for
from koirules.standard.parts import Rules, Setting
from koirules.vocabulary.readings import Reading


@frozen
class Grader:
    """A compiled standard, ready to grade records."""

    rules: Rules
    evaluator: Evaluator
    reasoner: Reasoner
    grades: tuple[str, ...]
    settings: Mapping[str, Setting]

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting], language: str | None = None) -> Grader:
        """Compile a standard, with the settings of this run and the language of its reasons."""
        evaluator = compile_rules(rules, settings)
        teller = Teller.of(rules, settings, evaluator.said_terms, language)
        return cls(rules, evaluator, Reasoner.of(rules, teller), tuple(grade.name for grade in rules.grades), settings)

    def grade(self, record: Record) -> Result:
        """The result of one fish. Raises RecordError for a map that cannot be measured, where that was not done before."""
        record = self.measured(record)
        whole = evolve(record, readings=self.evaluator.ahead.whole(record.readings))
        return self.result(whole, self.evaluator.run_whole(whole.readings))

    def result(self, record: Record, trace: Trace, decision: Decision | None = None) -> Result:
        """The result of one fish that was worked out, with its grown traits beside its record.

        decision: a person's word about its grade.
        """
        rules, plain = self.rules, self.reasoner.teller.plain
        sections = {
            section.name: SectionResult(
                section.name, plain.of(section.title), hundredths(section.worth), hundredths(low), hundredths(high)
            )
            for section, (low, high) in zip(rules.sections, trace.sections, strict=True)
        }
        bites = [
            (limit.head, limit.name) for limit, states in zip(rules.limits, trace.limits, strict=True) if states[4]
        ]
        by_rules = self.named(trace.possible)
        return Result(
            record.fish,
            by_rules if decision is None else (decision.grade,),
            hundredths(trace.score[0]),
            hundredths(trace.score[1]),
            sections,
            tuple(name for head, name in bites if head == "fault"),
            tuple(name for head, name in bites if head == "lift"),
            record.labels,
            decision=decision,
            by_rules=by_rules,
            tell=partial(self.reasoner.reasons, trace, record.readings),
            choose=partial(self._choose, trace, record.readings),
            near=partial(self._near, record.readings),
            add_up=partial(self._add_up, trace),
        )

    @cached_property
    def measurer(self) -> Measurer:
        """What derives the traits that the rules read from others."""
        wanted = self.traits_read()
        measures = needed_for(self.rules.measures, wanted)
        constants = constant_settings(self.rules.constants, self.settings)
        return Measurer(measures, self.rules.traits, constants, wanted)

    def measured(self, record: Record) -> Record:
        """A record with its derived traits. Raises RecordError for a map that cannot be measured."""
        return measured_record(self.measurer, record)

    @cached_property
    def changes(self) -> ChangeFinder:
        """What finds the nearest changes of its fish."""
        return ChangeFinder.of(self.rules, self.reasoner.teller.settings, self.evaluator)

    def traits_read(self) -> frozenset[str]:
        """The names of the traits that the rules read, or show in the words of a `say`."""
        said = self.rules.said_names & self.rules.traits.keys()
        return traits_beneath(self.rules) | said

    def traits_to_record(self) -> frozenset[str]:
        """The names of the traits that the rules read, and of those that these follow from."""
        read = self.traits_read()
        raw = {name for one in self.measurer.measures if read.intersection(one.outputs) for name in one.inputs}
        return read | raw

    def trace(self, readings: Mapping[str, Reading]) -> Trace:
        """What one evaluation worked out, for those who look inside."""
        return self.evaluator.run(readings)

    def _choose(self, trace: Trace, record: Mapping[str, Reading], reasons: tuple[Reason, ...]) -> tuple[Reason, ...]:
        best, worst = _ends(trace.possible)
        best_by_points, worst_by_points = _ends(trace.by_points)
        asks_more = best > 0 and not fails_on_score_of(self.reasoner.teller, best - 1, trace, record)
        return main_reasons(reasons, Standing(self.grades, best, worst, best_by_points, worst_by_points, asks_more))

    def _near(self, record: Mapping[str, Reading]) -> NearestChanges:
        return self.changes.nearest(record)

    def _add_up(self, trace: Trace, result: Result) -> tuple[Contribution, ...]:
        return Contributor(self.rules).contributions(trace, result.sections, result.reasons)

    def named(self, bits: int) -> tuple[str, ...]:
        """The names of the grades whose bits are set, best first."""
        return tuple(name for i, name in enumerate(self.grades) if bits >> i & 1)


def _ends(bits: int) -> tuple[int, int]:
    """The lowest and the highest bit that is set."""
    return (bits & -bits).bit_length() - 1, bits.bit_length() - 1
