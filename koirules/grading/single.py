"""Grades one record."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from operator import getitem
from typing import TYPE_CHECKING, Any, Protocol

from attrs import evolve, field

from koirules.engines.scalar.complete import Complete, Sure
from koirules.engines.scalar.evaluator import Evaluator, Trace, compile_rules
from koirules.explain.reasons import Reasoner, hundredths
from koirules.explain.telling import Teller, fails_on_score_of
from koirules.grading.measuring import leaves_as_it_is, measured_record
from koirules.grading.silence import SilenceFiller
from koirules.meaning.panels import PanelWay
from koirules.measures.deriving import Measurer
from koirules.results.decisions import Decision
from koirules.results.parts_read import keys_needed, traits_beneath
from koirules.results.reason import Given, Grounds, Reason, Reasons, State, Told
from koirules.results.record import Record
from koirules.results.result import Contribution, Result, SectionResult
from koirules.standard.measured import constant_settings, needed_for
from koirules.standard.parts import Rules, Section, Setting, part_key
from koirules.standard.silencing import without_silence
from koirules.values import define, frozen
from koirules.vocabulary.readings import Reading

if TYPE_CHECKING:
    from koirules.candidates.changes import NearestChanges
    from koirules.search.nearest_changes import ChangeFinder

_MOST_KEPT = 1_000
"""Of so many combinations of faults and lifts the names are kept ready."""


@frozen
class Grader:
    """A compiled standard, ready to grade records."""

    rules: Rules
    evaluator: Evaluator
    reasoner: Reasoner
    grades: tuple[str, ...]
    settings: Mapping[str, Setting]
    _named: dict[int, tuple[str, ...]] = field(factory=dict, init=False, repr=False, eq=False)
    _bitten: dict[int, tuple[tuple[str, ...], tuple[str, ...]]] = field(factory=dict, init=False, repr=False, eq=False)

    @classmethod
    def of(
        cls, rules: Rules, settings: Mapping[str, Setting], language: str | None = None, exact: bool = False
    ) -> Grader:
        """Compile a standard, with the settings of this run and the language of its reasons.

        exact: whether numbers in reasons keep all of their digits.
        """
        evaluator = compile_rules(rules, settings)
        teller = Teller.of(rules, settings, evaluator.said_terms, language, exact)
        return cls(rules, evaluator, Reasoner.of(rules, teller), tuple(grade.name for grade in rules.grades), settings)

    @cached_property
    def of_known_fish(self) -> Grader:
        """The same standard where silence means nothing, for fish of which everything is known or still being asked."""
        if self.silence is None:
            return self
        teller = self.reasoner.teller
        return Grader.of(without_silence(self.rules), self.settings, teller.plain.language)

    @cached_property
    def needed(self) -> frozenset[str]:
        """The keys of what a complete record has."""
        return keys_needed(self.rules)

    @cached_property
    def complete(self) -> Complete:
        """The same standard over complete records."""
        return Complete.of(self.rules, self.reasoner.teller.settings)

    def grade(self, record: Record) -> Result:
        """The result of one fish. Raises RecordError for a map that cannot be measured, where that was not done before."""
        whole = self._whole(record)
        sure = self._sure(whole.readings)
        if sure is None:
            return self.result(whole, self.evaluator.run_whole(whole.readings))
        result = self.settled(whole.fish, whole.labels, sure, whole)
        return evolve(result, outside=whole.outside) if whole.outside else result

    def _whole(self, record: Record) -> Record:
        """A record with its derived traits, and its grown ones beside it. A result tells no doubts."""
        silent = self.silence is not None and not record.measured
        if silent or record.before is not None or not leaves_as_it_is(self.measurer, record.readings.__contains__):
            record = self.measured(record)
        ahead = self.evaluator.ahead
        return record if ahead.nothing else evolve(record, readings=ahead.whole(record.readings))

    def _sure(self, whole: Mapping[str, Reading | None]) -> Sure | None:
        return None if len(whole) < len(self.needed) else self.complete.run(whole)

    def possible(self, readings: Mapping[str, Any]) -> int:
        """The bits of the grades possible for a record, for those who ask for nothing else."""
        whole = self.evaluator.ahead.whole(readings)
        sure = self._sure(whole)
        return self.evaluator.run_whole(whole).possible if sure is None else sure[0]

    def result(self, record: Record, trace: Trace, decision: Decision | None = None) -> Result:
        """The result of one fish that was worked out, with its grown traits beside its record.

        decision: a person's word about its grade.
        """
        bites = sum(1 << number for number, states in enumerate(trace.limits) if states[4])
        by_rules = self.named(trace.possible)
        made = Result(
            record.fish,
            by_rules if decision is None else (decision.grade,),
            hundredths(trace.score[0]),
            hundredths(trace.score[1]),
            {one.name: one.between(*ends) for one, ends in zip(self._shown, trace.sections, strict=True)},
            *self._limits_of(bites),
            record.labels,
            decision=decision,
            by_rules=by_rules,
            outside=record.outside,
            behind=_Fish(self, record, None, trace),
        )
        return self._told_of_silence(made, record.readings)

    def settled(self, fish: str, labels: Mapping[str, str], sure: Sure, record: HasReadings) -> Result:
        """The result of a fish of which everything is sure."""
        bit, score, sections, bites, worked = sure
        grade, points = self.named(bit), hundredths(score)
        shown = dict(zip(self._sections, map(getitem, self._shown, sections), strict=True))
        faults, lifts = self._limits_of(bites)
        behind = _Fish(self, record, worked)
        made = Result(fish, grade, points, points, shown, faults, lifts, labels, by_rules=grade, behind=behind)
        return made if self.silence is None else self._told_of_silence(made, record.readings)

    def _told_of_silence(self, result: Result, readings: Mapping[str, Any]) -> Result:
        """A result that says what was assumed of its fish, and whether its grade rests on that."""
        if self.silence is None:
            return result
        return evolve(result, assumed=self.silence.assumed(readings), rests_on_silence=self.rests_on_silence(readings))

    def rests_on_silence(self, readings: Mapping[str, Any]) -> bool:
        """Whether something was assumed of a fish without which two grades or more would be possible."""
        if self.silence is None or not self.silence.assumed(readings):
            return False
        return self.trace_without_silence(readings).possible.bit_count() > 1

    def trace_without_silence(self, readings: Mapping[str, Any]) -> Trace:
        """What comes of a fish if silence means nothing."""
        written = readings if self.silence is None else self.silence.as_written(readings)
        return self.evaluator.run_whole(self.evaluator.ahead.whole(written))

    @cached_property
    def given(self) -> Callable[[tuple[Any, ...]], tuple[Given, ...]]:
        """What gives the reasons of a complete record in numbers, of what was worked out (`Sure`)."""
        return self.complete.told_by(self.reasoner.settled, self.reasoner.order)

    @cached_property
    def _shown(self) -> tuple[_Shown, ...]:
        plain = self.reasoner.teller.plain
        return tuple(_Shown(one, plain.of(one.title)) for one in self.rules.sections)

    @cached_property
    def _sections(self) -> tuple[str, ...]:
        return tuple(section.name for section in self.rules.sections)

    def _limits_of(self, bites: int) -> tuple[tuple[str, ...], tuple[str, ...]]:
        """The names of the faults that bite, and of the lifts."""
        known = self._bitten.get(bites)
        if known is None:
            found = [limit for number, limit in enumerate(self.rules.limits) if bites >> number & 1]
            faults, lifts = (tuple(one.name for one in found if one.head == head) for head in ("fault", "lift"))
            known = faults, lifts
            if len(self._bitten) < _MOST_KEPT:
                self._bitten[bites] = known
        return known

    @cached_property
    def measurer(self) -> Measurer:
        """What derives the traits that the rules read from others."""
        wanted = self.traits_read()
        measures = needed_for(self.rules.measures, wanted)
        constants = constant_settings(self.rules.constants, self.settings)
        return Measurer(measures, self.rules.traits, constants, wanted)

    def measured(self, record: Record) -> Record:
        """A record with its derived traits. Raises RecordError for a map that cannot be measured."""
        return measured_record(self.measurer, record, silence=self.silence)

    @cached_property
    def silence(self) -> SilenceFiller | None:
        """What fills silent traits in, and those carried forward; None where the page says nothing of either."""
        return SilenceFiller.of(self.rules, self.settings) if self.rules.silence or self.rules.carried else None

    @cached_property
    def changes(self) -> ChangeFinder:
        """What finds the nearest changes of its fish."""
        from koirules.search.nearest_changes import ChangeFinder

        return ChangeFinder.of(self.rules, self.reasoner.teller.settings, self.possible)

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

    def named(self, bits: int) -> tuple[str, ...]:
        """The names of the grades whose bits are set, best first."""
        known = self._named.get(bits)
        if known is None:
            known = self._named[bits] = tuple(name for i, name in enumerate(self.grades) if bits >> i & 1)
        return known


class HasReadings(Protocol):
    """A record with its derived and grown traits, or what can be read as one."""

    @property
    def readings(self) -> Mapping[str, Reading]:
        """By trait name."""


@define
class _Fish:
    """What the result of one fish is a view of, and what tells its reasons.

    worked: what was worked out of a complete record. trace: of any record; None where that was not needed yet.
    """

    grader: Grader
    record: HasReadings
    _worked: tuple[Any, ...] | None
    _trace: Trace | None = None

    @property
    def trace(self) -> Trace:
        """What one evaluation worked out."""
        if self._trace is None:
            self._trace = self.grader.evaluator.run_whole(self.record.readings)
        return self._trace

    def reasons(self) -> Sequence[Reason]:
        """Every reason, in the order of the rule file."""
        known = self._worked
        return Reasons(self.grader.reasoner.given(self.trace) if known is None else self.grader.given(known), self)

    def words(self, about: Told, state: State | None) -> str:
        """The sentence that a person reads."""
        words = self.grader.reasoner.words(about, state, self.trace, self.record.readings)
        counted = self.grader.reasoner.counted_in(about, self.record.over) if isinstance(self.record, Record) else ""
        return f"{words} ({counted})" if counted and state is not State.NO else words

    def read(self, about: Told) -> str:
        """What was read, by names."""
        return self.grader.reasoner.read(about, self.trace, self.record.readings)

    def seen(self, about: Told) -> str:
        """What was read, by names."""
        return self.grader.reasoner.seen(about, self.trace, self.record.readings)

    def grounds(self, reasons: Sequence[Reason]) -> Grounds:
        """Those that decided and that weighed most."""
        from koirules.explain.choosing import Standing, grounds_of

        teller, trace = self.grader.reasoner.teller, self.trace
        best, worst = _ends(trace.possible)
        best_by_points, worst_by_points = _ends(trace.by_points)
        asks_more = best > 0 and not fails_on_score_of(teller, best - 1, trace, self.record.readings)
        silence = self.grader.silence
        assumed = set() if silence is None else set(silence.assumed(self.record.readings))
        rest = {
            (part.head, part.name)
            for part in (self.grader.rules.parts if assumed else ())
            if any(trait.name in assumed for trait in teller.traits_of(part_key(part)))
        }
        standing = Standing(self.grader.grades, best, worst, best_by_points, worst_by_points, asks_more, rest)
        return grounds_of(tuple(reasons), standing, teller.plain.tongue)

    def nearest_changes(self) -> NearestChanges:
        """The smallest changes that would have given another grade; none where results of judges are put together."""
        if self._is_of_results:
            from koirules.candidates.changes import NearestChanges

            return NearestChanges()
        return self.grader.changes.nearest(self.record.readings)

    @property
    def _is_of_results(self) -> bool:
        panel = self.grader.rules.panel
        judged = isinstance(self.record, Record) and bool(self.record.seats)
        return judged and panel is not None and panel.way is not PanelWay.TRAITS

    def contributions(self, result: Result) -> tuple[Contribution, ...]:
        """What each criterion gave."""
        from koirules.explain.contributions import Contributor

        tongue = self.grader.reasoner.teller.plain.tongue
        contributor = Contributor(self.grader.rules, tongue, self._is_of_results)
        return contributor.contributions(self.trace, result.score_low, result.sections, result.reasons)


class _Shown(dict[int, SectionResult]):
    """The results of a section by its hundredths where these are sure: made once, so one for each hundredth at the most."""

    def __init__(self, section: Section, title: str) -> None:
        super().__init__()
        self.name, self.title, self.worth = section.name, title, hundredths(section.worth)

    def __missing__(self, points: int) -> SectionResult:
        made = self[points] = self.between(points, points)
        return made

    def between(self, low: int, high: int) -> SectionResult:
        """The section with hundredths between two ends."""
        return SectionResult(self.name, self.title, self.worth, hundredths(low), hundredths(high))


def _ends(bits: int) -> tuple[int, int]:
    """The lowest and the highest bit that is set."""
    return (bits & -bits).bit_length() - 1, bits.bit_length() - 1
