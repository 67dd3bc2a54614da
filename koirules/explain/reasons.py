"""The reasons of a result: views of the trace of the one evaluation that graded the fish."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal
from functools import cache, cached_property, partial
from itertools import count
from typing import Any

from attrs import evolve

from koirules.engines.scalar.evaluator import Trace
from koirules.explain.telling import Teller
from koirules.results.reason import Given, State, Told
from koirules.standard.parts import Extra, Part, Points, Rules
from koirules.values import frozen
from koirules.vocabulary.readings import Reading


@cache
def thousandths(points: int) -> Decimal:
    """Whole thousandths as a decimal."""
    return Decimal(points).scaleb(-3)


@cache
def hundredths(points: int) -> Decimal:
    """Whole hundredths as a decimal with two places."""
    return Decimal(points).scaleb(-2)


_STATES: Mapping[tuple[bool, bool], State] = {
    (True, True): State.YES,
    (False, True): State.OPEN,
    (False, False): State.NO,
}


_MOST_KEPT = 2_000


@frozen
class _Criterion:
    """A `points` with its place in the trace; numerator and divisor make its share of the score."""

    about: Told
    numerator: int
    divisor: int


@frozen
class Reasoner:
    """Makes the reasons of a standard's results, in the order of the rule file."""

    teller: Teller
    points: tuple[Points, ...]
    extras: tuple[Extra, ...]
    _criteria: tuple[_Criterion, ...]
    _limits: tuple[Told, ...]
    _grades: tuple[Told, ...]
    _order: tuple[int, ...]

    @classmethod
    def of(cls, rules: Rules, teller: Teller) -> Reasoner:
        """The reasoner of a standard: all that is the same for every fish is made here."""
        limits = [
            _told(one, teller, "" if one.lowers else rules.grades[one.grade].name, i)
            for i, one in enumerate(rules.limits)
        ]
        grades = [_told(one, teller, one.name, i) for i, one in enumerate(rules.grades)]
        criteria = tuple(_criteria(rules, teller))
        parts: list[Part] = []
        for section in rules.sections:
            parts.extend(section.points)
            parts.extend(section.extras)
        parts.extend(rules.limits)
        parts.extend(rules.grades)
        positions = rules.positions
        stands = [positions[part.place] for part in parts]
        order = sorted(range(len(stands)), key=stands.__getitem__)
        return cls(teller, rules.points, rules.extras, criteria, tuple(limits), tuple(grades), tuple(order))

    def given(self, trace: Trace) -> tuple[Given, ...]:
        """What every reason of a trace says in numbers, in the order of the rule file."""
        points, extras = iter(trace.points), iter(trace.extras)
        found = [
            self._of_points(one, *next(points)[2:]) if one.about.kind == "points" else self._of_extra(one, next(extras))
            for one in self._criteria
        ]
        found += map(self._of_limit, self._limits, trace.limits)
        found += map(self._of_grade, self._grades, trace.grades)
        return tuple(found[i] for i in self._order)

    @cached_property
    def settled(self) -> tuple[Mapping[Any, Given], ...]:
        """What every reason can say where all is sure, by what is worked out of it (`CompleteWriter.outcomes`)."""
        made: list[Mapping[Any, Given]] = [
            _Kept(partial(self._sure_points if one.about.kind == "points" else self._of_extra, one))
            for one in self._criteria
        ]
        made += [_Kept(partial(self._sure_limit, about)) for about in self._limits]
        made += [_Kept(partial(self._sure_grade, about)) for about in self._grades]
        return tuple(made)

    @property
    def order(self) -> tuple[int, ...]:
        """Where each reason stands among criteria (section by section), limits and grades."""
        return self._order

    def _of_points(self, one: _Criterion, low: int, high: int) -> Given:
        least, most = share(one.numerator, one.divisor, low), share(one.numerator, one.divisor, high)
        return Given(one.about, None, thousandths(low), thousandths(high), least, most)

    def _of_extra(self, one: _Criterion, state: tuple[bool, bool]) -> Given:
        least, most = _extra_ends(self.extras[one.about.place], state)
        return Given(one.about, _STATES[state], least, most, least, most)

    def _of_limit(self, about: Told, states: tuple[bool, bool, bool, bool, bool, bool]) -> Given:
        holds, _, excepted, _, surely, possibly = states
        return Given(about, State.HELD_BACK if holds and excepted else _STATES[surely, possibly])

    def _of_grade(self, about: Told, holding: tuple[bool, bool]) -> Given:
        return Given(about, _STATES[holding])

    def _sure_points(self, one: _Criterion, points: int) -> Given:
        return self._of_points(one, points, points)

    def _sure_limit(self, about: Told, bits: int) -> Given:
        holds, excepted, bites = (bool(bits >> i & 1) for i in range(3))
        return self._of_limit(about, (holds, holds, excepted, excepted, bites, bites))

    def _sure_grade(self, about: Told, holds: bool) -> Given:
        return self._of_grade(about, (holds, holds))

    def words(self, about: Told, state: State | None, trace: Trace, record: Mapping[str, Reading]) -> str:
        """The sentence about a part that a person reads; what was read of the fish as it will be when grown says so."""
        words = self._words(about, state, trace, record)
        ahead = "" if state is State.NO else self.teller.ahead_of(f"{about.kind} {about.name}", record, trace)
        return self.teller.say("{words} ({ahead}, by a model)", words=words, ahead=ahead) if ahead else words

    def _words(self, about: Told, state: State | None, trace: Trace, record: Mapping[str, Reading]) -> str:
        teller, place = self.teller, about.place
        match about.kind:
            case "points":
                return teller.criterion(self.points[place], place, trace, record)
            case "bonus" | "penalty":
                return teller.criterion(self.extras[place], place, trace, record)
            case "grade":
                return teller.grade(place, state or State.NO, trace, record)
            case _:
                limit = teller.rules.limits[place]
                return teller.limit(limit, state or State.NO, teller.rules.grades[limit.grade], trace, record)

    def counted_in(self, about: Told, over: Mapping[str, tuple[int, int, int]]) -> str:
        """Over how many fish the figures of the batch are that a part reads, in words (Teller.counted_in)."""
        return self.teller.counted_in(f"{about.kind} {about.name}", over) if over else ""

    def seen(self, about: Told, trace: Trace, record: Mapping[str, Reading]) -> str:
        """What was read, as a person reads it."""
        return self.teller.seen(f"{about.kind} {about.name}", record, trace)

    def read(self, about: Told, trace: Trace, record: Mapping[str, Reading]) -> str:
        """What was read, by names."""
        return self.teller.read(f"{about.kind} {about.name}", record, trace)


class _Kept(dict[Any, Given]):
    """Makes what a reason says when it is first asked for, and keeps it, as long as there are not too many."""

    def __init__(self, make: Callable[[Any], Given]) -> None:
        super().__init__()
        self._make = make

    def __missing__(self, key: object) -> Given:
        made = self._make(key)
        if len(self) < _MOST_KEPT:
            self[key] = made
        return made


def _criteria(rules: Rules, teller: Teller) -> list[_Criterion]:
    found: list[_Criterion] = []
    points, extras = count(), count()
    for section in rules.sections:
        for part in section.points:
            numerator, gives = section.worth * part.weight, part.shape.most
            top = share(numerator, section.divisor, gives)
            about = _told(part, teller, "", next(points))
            about = evolve(about, section=section.name, points_most=thousandths(gives), score_most=top)
            found.append(_Criterion(about, numerator, section.divisor))
        for extra in section.extras:
            added = hundredths(max(0, extra.sign * extra.amount))
            about = _told(extra, teller, "", next(extras))
            about = evolve(about, section=section.name, points_most=added, score_most=added)
            found.append(_Criterion(about, 0, 1))
    return found


def _told(part: Part, teller: Teller, outcome: str, place: int) -> Told:
    title = teller.title(part)
    return Told(part.head, part.name, title, "", outcome, part.place.line, place=place, file=part.place.file)


def _extra_ends(part: Extra, state: tuple[bool, bool]) -> tuple[Decimal, Decimal]:
    surely, possibly = (hundredths(part.sign * part.amount if given else 0) for given in state)
    return (surely, possibly) if part.sign > 0 else (possibly, surely)


@cache
def share(numerator: int, divisor: int, points: int) -> Decimal:
    """What a criterion gives of the score: worth x weight x p / sum(weight x p_max), rounded half up to a hundredth."""
    return hundredths((2 * numerator * points + divisor) // (2 * divisor))
