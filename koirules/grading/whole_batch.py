"""A whole batch of records by a standard: figures, grades, alerts, rounds, and what a person decided."""

from __future__ import annotations

import datetime
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from functools import cached_property
from typing import TYPE_CHECKING, Any

from attrs import evolve, field

from koirules.engines.scalar.evaluator import Trace
from koirules.grading.judges import conditions_of_grades, panel_result, trace_together
from koirules.grading.measuring import all_measured
from koirules.grading.single import Grader
from koirules.problems import Problem, RecordError
from koirules.results.course import AlertShown, RoundCourse
from koirules.results.decisions import Decision
from koirules.results.look_again import LookAgain, look_again
from koirules.results.record import Look, Record
from koirules.results.result import JudgeResult, LookResult, Result
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import whether_recorded
from koirules.standard.saying import fill, names_in
from koirules.standard.tree import Node, Supplied
from koirules.standard.types import TextLabel
from koirules.values import define, frozen

if TYPE_CHECKING:
    from koirules.rounds.evaluation_levels import Asked
    from koirules.rounds.figures_of_rows import FiguresOfRows
    from koirules.rounds.node_values import NodeValues
    from koirules.rounds.rounds_of_rows import RoundRun, RoundsOfRows

Readings = dict[str, Any]


@frozen(repr=False)
class BatchResult:
    """What came of a batch: the results in the order of the records, alerts, and what each round did.

    records: those of the batch, with the figures and earlier looks that were read beside them. warnings: what is odd about
    the file that they were read from, and stopped nothing.
    """

    results: tuple[Result, ...]
    alerts: tuple[AlertShown, ...] = ()
    rounds: tuple[RoundCourse, ...] = ()
    records: tuple[Record, ...] = field(default=(), repr=False, eq=False)
    warnings: tuple[Problem, ...] = field(default=(), repr=False, eq=False)

    def __repr__(self) -> str:
        return f"BatchResult({len(self.results)} fish, {len(self.alerts)} alerts, {len(self.rounds)} rounds)"

    @property
    def decided(self) -> int:
        """How many fish have a grade that a person decided."""
        return sum(result.decision is not None for result in self.results)


def looked_at_again(results: Sequence[Result], found: Sequence[tuple[LookAgain, ...]]) -> tuple[Result, ...]:
    """Results with what was recorded of each fish and is unlikely."""
    return tuple(
        evolve(result, look_again=unlikely) if unlikely else result
        for result, unlikely in zip(results, found, strict=True)
    )


def _carrying(result: Result, carried: tuple[str, ...]) -> Result:
    return evolve(result, carried=carried) if carried else result


@frozen
class _Worked:
    """What was worked out of a batch. seats, of_judges: for each fish the readings of its judges, and what comes of them.

    lacks: whether some fish does not count in some figure, or counts in a group that is not known.
    """

    readings: list[Readings]
    seats: list[list[Readings]]
    traces: list[Trace]
    of_judges: list[list[Trace]]
    lacks: bool


@define(slots=False)
class WholeBatch:
    """A compiled standard, ready to grade batches of records."""

    grader: Grader

    @property
    def rules(self) -> Rules:
        """The standard."""
        return self.grader.rules

    @property
    def settings(self) -> Mapping[str, Setting]:
        """The settings of the run."""
        return self.grader.reasoner.teller.settings

    @cached_property
    def asked(self) -> Asked:
        """What has to be known of the batch and of earlier looks before the fish are graded."""
        from koirules.rounds.evaluation_levels import asked_before_grades

        return asked_before_grades(self.rules)

    @cached_property
    def _figures(self) -> FiguresOfRows:
        from koirules.rounds.figures_of_rows import FiguresOfRows

        return FiguresOfRows.of(self.rules, self.settings, self.asked, graded=False)

    @cached_property
    def _alerts(self) -> FiguresOfRows:
        from koirules.rounds.figures_of_rows import FiguresOfRows

        return FiguresOfRows.of(self.rules, self.settings, self.asked_by_alerts, graded=True)

    @cached_property
    def _rounds(self) -> RoundsOfRows:
        from koirules.rounds.rounds_of_rows import RoundsOfRows

        return RoundsOfRows.of(self.rules, self.settings)

    @cached_property
    def _conditions(self) -> NodeValues:
        return conditions_of_grades(self.rules, self.settings)

    @property
    def needed(self) -> bool:
        """Whether a fish cannot be graded by itself: it asks for the batch or for earlier looks, or there are rounds."""
        return not self.asked.nothing or bool(self.rules.rounds or self.rules.alerts)

    def grade(
        self, records: Sequence[Record], decisions: Sequence[Decision] = (), day: datetime.date | None = None
    ) -> BatchResult:
        """Grade a batch. decisions: checked ones, of fish in it. day: that of looks whose record has no date.

        Raises RecordError for a map that cannot be measured, where that was not done before, and for decisions that keep
        more fish than a round allows or settle a tie by half.
        """
        plain = self.grader.reasoner.teller.plain
        titles = (
            {name: plain.trait(trait) for name, trait in self.rules.traits.items()} if plain.tongue.language else {}
        )
        again = look_again(records, self.rules.traits, self.rules.stage, plain.tongue, titles)
        records = self._measured(records)
        several = any(len(record.looks) > 1 or record.seats for record in records)
        if not self.needed and not decisions and not several:
            results = tuple(_carrying(self.grader.grade(record), self._carried(record)) for record in records)
            graded = BatchResult(results, records=tuple(records))
        else:
            graded = self._grade(records, decisions, day, alone=False)
        return evolve(graded, results=looked_at_again(graded.results, again))

    def alone(self, record: Record) -> Result:
        """Grade a fish by itself, for which no figure of a batch is recorded."""
        return self._grade(self._measured([record]), (), None, alone=True).results[0]

    def _measured(self, records: Sequence[Record]) -> tuple[Record, ...]:
        """Records with their derived traits, put together where judges looked at a fish, and what grows of them made ready."""
        found = all_measured(self.grader.measurer, records, self.grader.silence, self.rules)
        self.grader.evaluator.ahead.prepare([one.readings for record in found for one in (record, *record.seats)])
        return found

    def _work_out(self, records: Sequence[Record], *, alone: bool = False) -> _Worked:
        """The readings of measured records with the figures of the batch, and what comes of each fish and judge."""
        readings = self._read(records)
        seats = [self._read(record.seats) for record in records]
        beside = [one for each in seats for one in each]
        lacks = not alone and self._figures.supply(readings, {}, beside)
        return _Worked(readings, seats, *self._traces(readings, seats), lacks)

    def _traces(
        self, readings: Sequence[Readings], seats: Sequence[Sequence[Readings]]
    ) -> tuple[list[Trace], list[list[Trace]]]:
        """What comes of each fish, and of each judge's record of it."""
        run = self.grader.evaluator.run_whole
        own = [[run(one) for one in each] for each in seats]
        found = [
            trace_together(self.rules, self._conditions, run(each), mine, each) if mine else run(each)
            for each, mine in zip(readings, own, strict=True)
        ]
        return found, own

    def _grade(
        self, records: Sequence[Record], decisions: Sequence[Decision], day: datetime.date | None, *, alone: bool
    ) -> BatchResult:
        worked = self._work_out(records, alone=alone)
        readings, traces, lacks = worked.readings, worked.traces, worked.lacks
        over = [{}] * len(records) if alone else self._figures.counts(readings)
        records = [
            evolve(record, readings=each, over=counts)
            for record, each, counts in zip(records, readings, over, strict=True)
        ]
        places = {record.fish: number for number, record in enumerate(records)}
        by_grade = {places[one.fish]: one for one in decisions if one.grade}
        final = [self._decided(trace, by_grade.get(number)) for number, trace in enumerate(traces)]
        results = [
            self._result(record, trace, worked.of_judges[number], by_grade.get(number))
            for number, (record, trace) in enumerate(zip(records, traces, strict=True))
        ]
        seen = {} if alone else self._looks(records)
        for number, record in enumerate(records):
            looks = self._results_of_looks(record, number, traces[number], seen)
            carrying = _carrying(results[number], self._carried(record))
            results[number] = evolve(carrying, looks=looks) if looks else carrying
        if not self.rules.rounds and not self.rules.alerts:
            return BatchResult(tuple(results), records=tuple(records))
        from koirules.rounds.course_words import CourseTeller
        from koirules.rounds.decision_checks import check_rescues
        from koirules.rounds.node_values import outcome_readings

        outcomes = [each | outcome_readings(self.rules, trace) for each, trace in zip(readings, final, strict=True)]
        kept_by_hand: dict[str, dict[int, Decision]] = {}
        for one in decisions:
            if one.round:
                kept_by_hand.setdefault(one.round, {})[places[one.fish]] = one
        later = self._later(worked, by_grade) if lacks else None
        at = {
            look: [
                each | outcome_readings(self.rules, self._decided(trace, by_grade.get(number)))
                for number, (each, trace) in enumerate(zip(*then, strict=True))
            ]
            for look, then in seen.items()
        }
        outside = [number for number, record in enumerate(records) if record.outside]
        runs = self._rounds.run(outcomes, kept_by_hand, later, at, alone=alone, outside=outside)
        refused = check_rescues(self.settings, runs, kept_by_hand)
        if refused:
            raise RecordError(tuple(refused))
        traces_at = {look: then for look, (_, then) in seen.items()}
        plain = self.grader.reasoner.teller.plain
        teller = CourseTeller(self.rules, self.settings, plain, records, final, day, traces_at)
        courses = teller.courses(runs, kept_by_hand)
        results = [evolve(result, course=course) for result, course in zip(results, courses, strict=True)]
        alerts, rounds = self._shown(outcomes, outcomes if later is None else later), teller.rounds(runs, kept_by_hand)
        return BatchResult(tuple(results), tuple(alerts), tuple(rounds), tuple(records))

    def _result(self, record: Record, trace: Trace, judges: Sequence[Trace], decision: Decision | None) -> Result:
        made = self.grader.result(record, trace, decision)
        if not judges:
            return made
        seats = zip(record.seats, judges, strict=True)
        told = [JudgeResult(seat.judge, self.grader.result(seat, own)) for seat, own in seats if seat.judge]
        return evolve(made, panel=panel_result(self.rules, record, told, made, self.grader.reasoner.teller.plain))

    def _carried(self, record: Record) -> tuple[str, ...]:
        return tuple(name for name in self.rules.traits if name in record.carried)

    def _looks(self, records: Sequence[Record]) -> dict[int, tuple[list[Readings], list[Trace]]]:
        """For each look before the last one of any fish the readings and traces of all fish at that look."""
        rows = [one for record in records for one in (record, *record.seats)]
        last = max((look.number for row in rows for look in row.looks), default=1)
        asked = {one.look for one in self.rules.rounds if one.look is not None}
        some = last > 1 or bool(asked)
        found = {}
        for number in range(1, last + 1) if some else ():
            then = self._work_out(self._measured([_at_look(record, number) for record in records]))
            found[number] = (then.readings, then.traces)
        return found

    def _results_of_looks(
        self, record: Record, place: int, last: Trace, seen: Mapping[int, tuple[list[Readings], list[Trace]]]
    ) -> tuple[LookResult, ...]:
        """What came of a fish at each look of a sorting that has several."""
        if len(record.looks) < 2 or not seen:
            return ()
        told: list[LookResult] = []
        before: Look | None = None
        for look in record.looks:
            trace = last if look is record.looks[-1] else seen[look.number][1][place]
            changes = () if before is None else tuple(self._changes(before, look))
            low, high = (Decimal(end).scaleb(-2) for end in trace.score)
            told.append(LookResult(look.number, self.grader.named(trace.possible), low, high, changes))
            before = look
        return tuple(told)

    def _changes(self, before: Look, look: Look) -> Iterator[str]:
        """What a look told otherwise than those before it: `outline from above: fair instead of good`."""
        plain = self.grader.reasoner.teller.plain
        for name, trait in self.rules.traits.items():
            was, now = before.readings.get(name), look.readings.get(name)
            if was is not None and now != was:
                told = "nobody can tell" if now is None else plain.as_read(trait, look.readings)
                yield f"{plain.trait(trait)}: {told} instead of {plain.as_read(trait, before.readings)}"

    def worked_out(self, records: Sequence[Record]) -> tuple[list[Readings], list[Trace], list[RoundRun]]:
        """The readings and traces of a batch with its derived traits, and what its rounds did, without words."""
        from koirules.rounds.node_values import outcome_readings

        self.grader.evaluator.ahead.prepare([one.readings for record in records for one in (record, *record.seats)])
        worked = self._work_out(records)
        readings, traces = worked.readings, worked.traces
        outcomes = [each | outcome_readings(self.rules, trace) for each, trace in zip(readings, traces, strict=True)]
        if not self.rules.rounds:
            return readings, traces, []
        return readings, traces, self._rounds.run(outcomes, {}, self._later(worked, {}) if worked.lacks else None)

    def _later(self, worked: _Worked, decisions: Mapping[int, Decision]) -> list[Readings] | None:
        """The readings of a batch with outcomes as wide as figures may yet make them; None where no figure moves."""
        from koirules.rounds.figures_of_rows import Seen
        from koirules.rounds.node_values import outcome_readings

        seen = [Seen(each, dict(each)) for each in worked.readings]
        beside = [[Seen(one, dict(one)) for one in each] for each in worked.seats]
        if not self._figures.supply_ends(seen, {}, [one for each in beside for one in each]):
            return None
        traces, _ = self._traces([each.later for each in seen], [[one.later for one in each] for each in beside])
        final = [self._decided(trace, decisions.get(number)) for number, trace in enumerate(traces)]
        return [each.later | outcome_readings(self.rules, trace) for each, trace in zip(seen, final, strict=True)]

    def _decided(self, trace: Trace, decision: Decision | None) -> Trace:
        return trace if decision is None else trace._replace(possible=1 << self.grader.grades.index(decision.grade))

    def _read(self, records: Sequence[Record]) -> list[Readings]:
        """The readings of each record, with its grown traits, and with what is asked of the look before it."""
        ahead = self.grader.evaluator.ahead
        readings: list[Readings] = [dict(ahead.whole(record.readings)) for record in records]
        if any(record.before is not None for record in records):
            for record, each in zip(records, readings, strict=True):
                if record.before is not None:
                    each.update(self._earlier(record.before))
        return readings

    @cached_property
    def earlier(self) -> tuple[Supplied, ...]:
        """What the standard asks of the look before."""
        from koirules.rounds.evaluation_levels import asked_by

        later = asked_by(self.rules, self.rules.roots, graded=True).earlier
        return tuple({one.key: one for one in (*self.asked.earlier, *later)}.values())

    @cached_property
    def _earlier_values(self) -> tuple[tuple[tuple[str, Node, bool], ...], Any]:
        """What is asked of the look before; whether a second value says if that was recorded; the function for them all."""
        from koirules.rounds.node_values import compile_nodes

        asked = [(one.key, one.source.of, whether_recorded(one.source.of)) for one in self.earlier]
        nodes = [each for _, node, said in asked for each in (node, said) if each is not None]
        told = tuple((key, node, said is not None) for key, node, said in asked)
        return told, compile_nodes(self.rules, self.settings, nodes, graded=False)

    def _earlier(self, before: Mapping[str, Any]) -> Readings:
        nodes, compiled = self._earlier_values
        values = iter(compiled.run(self.grader.evaluator.ahead.whole(before)))
        found: Readings = {}
        for key, node, asked_for in nodes:
            value = next(values)
            # Of a sum, what is no narrower than anything at all says nothing.
            anything = None if isinstance(node.type, TextLabel) else node.range
            if next(values)[0] if asked_for else value != anything:
                found[key] = value
        return found

    @property
    def asked_by_alerts(self) -> Asked:
        """What alerts ask of the batch, in their conditions and in what they say."""
        from koirules.rounds.evaluation_levels import asked_by

        roots = [alert.condition for alert in self.rules.alerts]
        roots += [self.rules.terms[name].node for name in self._said_by_alerts if name in self.rules.terms]
        return asked_by(self.rules, roots, graded=True)

    @property
    def _said_by_alerts(self) -> tuple[str, ...]:
        """The names in the braces of what alerts say."""
        said = (alert.say for alert in self.rules.alerts if alert.say is not None)
        return tuple(dict.fromkeys(name for one in said for text in one.every for name in names_in(text)))

    def _shown(self, outcomes: Sequence[Readings], later: Sequence[Readings]) -> list[AlertShown]:
        return self.alerts(*self._alerts.overall(outcomes, later)) if self.rules.alerts else []

    def alerts(self, figures: Readings, later: Readings) -> list[AlertShown]:
        """The alerts that hold, or may hold, of a batch with these figures. later: as wide as they may yet become."""
        from koirules.rounds.node_values import compile_nodes

        terms = [self.rules.terms[name] for name in self._said_by_alerts if name in self.rules.terms]
        nodes = [*(alert.condition for alert in self.rules.alerts), *(term.node for term in terms)]
        compiled = compile_nodes(self.rules, self.settings, nodes, graded=True)
        states, wide = compiled.run(figures), compiled.run(later)
        plain = self.grader.reasoner.teller.plain
        values = {name: plain.setting(self.settings[name]) for name in self._said_by_alerts if name in self.settings}
        for term, value in zip(terms, states[len(self.rules.alerts) :], strict=True):
            values[term.name] = plain.both_ends(term.node, value)
        shown: list[AlertShown] = []
        for alert, (surely, possibly), (always, ever) in zip(self.rules.alerts, states, wide, strict=False):
            words = fill(plain.of(alert.title if alert.say is None else alert.say), values)
            so_far = True if surely else None if possibly else False
            if possibly or ever:
                shown.append(AlertShown(alert.name, words, surely and always, so_far))
        return shown


def _at_look(record: Record, number: int) -> Record:
    """A record as it stood at a look of its sorting, or at the latest one before it, else at its first."""
    if record.seats:
        return evolve(record, seats=tuple(_at_look(seat, number) for seat in record.seats), measured=False)
    looks = [look for look in record.looks if look.number <= number] or list(record.looks[:1])
    if not looks:
        return record
    look = looks[-1]
    return Record(
        record.fish,
        record.row,
        look.readings,
        record.labels,
        look.date,
        record.before,
        looked=look.looked,
        cannot_tell=look.cannot_tell,
        earlier=record.earlier,
        judge=record.judge,
    )
