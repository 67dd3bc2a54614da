"""Panels of judges: each judge's record graded by itself, and what comes of them together.

Trait by trait, the fish is graded by one record, that of the panel. By score and by votes the results of the judges are put
together: points by their mean or median, bonuses, penalties, faults and lifts by more than half of the judges (half and half is
open); what conditions of grades, rounds and figures of the batch read of the fish itself is put together trait by trait.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from typing import Any

from attrs import evolve

from koirules.engines.scalar.evaluator import Trace
from koirules.explain.plain_words import PlainWords
from koirules.meaning import grades as of_grades
from koirules.meaning.algebra import PLAIN, Ends
from koirules.meaning.panels import PanelWay, majority, most_named, points_together
from koirules.results.parts_read import traits_of_parts
from koirules.results.record import Record
from koirules.results.result import JudgeResult, PanelResult, Result
from koirules.rounds.judges import readings_together
from koirules.rounds.node_values import NodeValues, compile_nodes, outcome_readings
from koirules.standard.parts import Panel, Rules, Setting
from koirules.vocabulary.readings import is_sure
from koirules.vocabulary.rounding import for_people


def seats_of(panel: Panel, record: Record) -> tuple[Record, ...]:
    """The judges of a fish, with a seat for each who is missing: of that one nothing is known but what holds for all."""
    missing = Record(
        record.fish,
        record.row,
        record.readings,
        cannot_tell=record.cannot_tell,
        looked=False,
        before=record.before,
        earlier=record.earlier,
    )
    return (*record.seats, *(missing for _ in range(panel.needed - len(record.seats))))


def record_together(rules: Rules, panel: Panel, record: Record, seats: Sequence[Record]) -> Record:
    """The record of a panel, trait by trait. seats: those of its judges, measured."""
    befores = [seat.before for seat in seats]
    return evolve(
        record,
        readings=readings_together(rules, panel, [seat.readings for seat in seats]),
        before=readings_together(rules, panel, [before or {} for before in befores]) if any(befores) else None,
        measured=True,
        doubts=tuple(doubt for seat in seats for doubt in seat.doubts),
        looks=(),
        carried=frozenset().union(*(seat.carried for seat in seats)),
        seats=tuple(seats),
    )


def trace_together(
    rules: Rules, conditions: NodeValues, whole: Trace, seats: Sequence[Trace], readings: Mapping[str, Any]
) -> Trace:
    """What comes of a panel. whole: of its record trait by trait, whose readings these are; seats: of each judge's record.

    conditions: those of the grades, as `conditions_of_grades` compiles them.
    """
    panel = rules.panel
    if panel is None or panel.way is PanelWay.TRAITS or not seats:
        return whole
    way = PanelWay.MEAN if panel.way is PanelWay.VOTES else panel.way

    def together(points: Sequence[tuple[int, int]]) -> tuple[int, int]:
        low, high = (points_together(way, ends, panel.middle) for ends in zip(*points, strict=True))
        return low, high

    made = whole._replace(
        score=together([seat.score for seat in seats]),
        sections=tuple(together(each) for each in zip(*(seat.sections for seat in seats), strict=True)),
        points=tuple(
            (*read[:2], *together([given[2:] for given in each]))
            for read, each in zip(whole.points, zip(*(seat.points for seat in seats), strict=True), strict=True)
        ),
        extras=tuple(majority(each) for each in zip(*(seat.extras for seat in seats), strict=True)),
        limits=tuple(
            (
                *majority([one[:2] for one in each]),
                *majority([one[2:4] for one in each]),
                *majority([one[4:] for one in each]),
            )
            for each in zip(*(seat.limits for seat in seats), strict=True)
        ),
    )
    if panel.way is PanelWay.VOTES:
        votes = most_named([seat.possible for seat in seats], len(rules.grades))
        return made._replace(possible=votes, by_points=votes)
    values = iter(conditions.run({**readings, **outcome_readings(rules, made)}))
    grades = tuple((True, True) if one.condition is None else next(values) for one in rules.grades)
    by_points = of_grades.possible(PLAIN, [Ends(*each) for each in grades])
    return made._replace(grades=grades, by_points=by_points, possible=_limited(rules, made, by_points))


def conditions_of_grades(rules: Rules, settings: Mapping[str, Setting]) -> NodeValues:
    """The function that works out the conditions of the grades, of a fish whose score, sections and faults are given."""
    nodes = [one.condition for one in rules.grades if one.condition is not None]
    return compile_nodes(rules, settings, nodes, graded=True)


def _limited(rules: Rules, trace: Trace, grades: int) -> int:
    limits = zip(rules.limits, trace.limits, strict=True)
    bites = [(limit.turn, limit.by, Ends(*states[4:])) for limit, states in limits]
    left: int = of_grades.after_all(PLAIN, grades, bites, len(rules.grades))
    return left


def panel_result(
    rules: Rules, record: Record, told: Sequence[JudgeResult], made: Result, plain: PlainWords
) -> PanelResult:
    """How a panel came to what was made of a fish. record: the panel's. told: what came of each judge who was there."""
    missing = len(record.seats) - len(told)
    way = None if rules.panel is None else rules.panel.way
    split = tuple(_split(rules, record)) if not missing and way is PanelWay.TRAITS else ()
    tongue = plain.tongue
    titles = {grade.name: plain.of(grade.title) for grade in rules.grades}
    votes = Counter(one.result.possible for one in told)
    words = [tongue.plural("{number} judge", "{number} judges", len(told))]
    if missing:
        lacking = tongue.plural("{number} more is needed", "{number} more are needed", missing)
        words = [tongue("{judges}, {lacking}", judges=words[0], lacking=lacking)]
    names = list(titles)
    said = [
        tongue.plural(
            "{number} says {grade}",
            "{number} say {grade}",
            votes[each],
            grade=tongue.joined([titles[name] for name in each], " or "),
        )
        for each in sorted(votes, key=lambda possible: [names.index(name) for name in possible])
    ]
    words.append(tongue.joined(said))
    if way in {PanelWay.MEAN, PanelWay.TRIMMED, PanelWay.MEDIAN}:
        ends = min(one.result.score_low for one in told), max(one.result.score_high for one in told)
        both = _between(plain, *ends), _between(plain, made.score_low, made.score_high)
        words.append(tongue("scores {scores}, together {score}", scores=both[0], score=both[1]))
    tied = way is PanelWay.VOTES and not missing and len(made.by_rules) > 1
    if tied and all(one.result.grade is not None for one in told):
        words.append(tongue("tied between {grades}", grades=tongue.listed([titles[name] for name in made.by_rules])))
    for trait in (rules.traits[name] for name in split):
        title = plain.trait(trait)
        if trait.name in record.readings:
            values = plain.as_read(trait, record.readings)
            words.append(tongue("tied on {trait} ({values})", trait=title, values=values))
        else:
            words.append(tongue("tied on {trait}", trait=title))
    for limit in rules.limits:
        finders = sum(limit.name in one.result.faults for one in told) if limit.head == "fault" else 0
        if finders and limit.name not in made.faults:
            words.append(
                tongue.plural("{number} finds {fault}", "{number} find {fault}", finders, fault=plain.of(limit.title))
            )
    return PanelResult(tuple(told), missing, split, tongue.joined(words, "; "))


def _between(plain: PlainWords, low: Decimal, high: Decimal) -> str:
    ends = [plain.tongue.figure(for_people(end)) for end in (low, high)]
    return ends[0] if low == high else plain.tongue.stretch(*ends)


def _split(rules: Rules, record: Record) -> Iterator[str]:
    """The traits on which every judge is sure and the panel is not: as many say the one as the other."""
    read = traits_of_parts(rules)
    for name, trait in rules.traits.items():
        if name not in read:
            continue
        said = [seat.readings.get(name) for seat in record.seats]
        reading = record.readings.get(name)
        if None in said or any(not is_sure(trait.kind, one) for one in said if one is not None):
            continue
        if reading is None or not is_sure(trait.kind, reading):
            yield name
