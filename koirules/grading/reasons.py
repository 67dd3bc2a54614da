"""The reasons of a result: views of the trace of the one evaluation that graded the fish."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from functools import cache
from itertools import count

from attrs import evolve, frozen

from koirules.grading.evaluator import Trace
from koirules.grading.results import Reason, State, Told
from koirules.grading.telling import Teller
from koirules.standard.parts import Extra, Part, Points, Rules
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


@frozen
class _Criterion:
    """A `points` with its place in the trace; numerator and divisor make its share of the score."""

    about: Told
    numerator: int
    divisor: int


@frozen
class _FishTale:
    """The words of one fish, from its trace and record."""

    reasoner: Reasoner
    trace: Trace
    record: Mapping[str, Reading]

    def words(self, about: Told, state: State | None) -> str:
        """The sentence that a person reads; what was read of the fish as it will be when grown says so."""
        words = self._words(about, state)
        key = f"{about.kind} {about.name}"
        ahead = "" if state is State.NO else self.reasoner.teller.ahead_of(key, self.record, self.trace)
        return f"{words} ({ahead}, by a model)" if ahead else words

    def _words(self, about: Told, state: State | None) -> str:
        teller, trace, record, place = self.reasoner.teller, self.trace, self.record, about.place
        match about.kind:
            case "points":
                return teller.criterion(self.reasoner.points[place], place, trace, record)
            case "bonus" | "penalty":
                return teller.criterion(self.reasoner.extras[place], place, trace, record)
            case "grade":
                return teller.grade(place, state or State.NO, trace, record)
            case _:
                limit = teller.rules.limits[place]
                return teller.limit(limit, state or State.NO, teller.rules.grades[limit.grade], trace, record)

    def read(self, about: Told) -> str:
        """What was read, by names."""
        return self.reasoner.teller.read(f"{about.kind} {about.name}", self.record, self.trace)


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
        limits = [_told(one, teller, rules.grades[one.grade].name, i) for i, one in enumerate(rules.limits)]
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

    def reasons(self, trace: Trace, record: Mapping[str, Reading]) -> tuple[Reason, ...]:
        """Every reason of a trace, in the order of the rule file."""
        tale = _FishTale(self, trace, record)
        found: list[Reason] = []
        for one in self._criteria:
            about = one.about
            if about.kind == "points":
                _, _, low, high = trace.points[about.place]
                least, most = share(one.numerator, one.divisor, low), share(one.numerator, one.divisor, high)
                found.append(Reason(about, None, thousandths(low), thousandths(high), least, most, tale))
            else:
                state = trace.extras[about.place]
                least, most = _extra_ends(self.extras[about.place], state)
                found.append(Reason(about, _STATES[state], least, most, least, most, tale))
        for about, (holds, _, excepted, _, surely, possibly) in zip(self._limits, trace.limits, strict=True):
            bites = State.HELD_BACK if holds and excepted else _STATES[surely, possibly]
            found.append(Reason(about, bites, None, None, None, None, tale))
        for about, holding in zip(self._grades, trace.grades, strict=True):
            found.append(Reason(about, _STATES[holding], None, None, None, None, tale))
        return tuple(found[i] for i in self._order)


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
