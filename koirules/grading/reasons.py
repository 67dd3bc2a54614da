"""The reasons of a result: views of the trace of the one evaluation that graded the fish."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from functools import cache, partial
from itertools import count

from attrs import frozen

from koirules.grading.evaluator import Trace
from koirules.grading.parts_read import part_key
from koirules.grading.results import Reason, State, Told
from koirules.grading.telling import Teller
from koirules.standard.parts import Extra, Grade, Limit, Points, Rules
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
    """A `points`, `bonus` or `penalty` with its place in the trace; numerator and divisor make its share of the score."""

    part: Points | Extra
    key: str
    about: Told
    place: int
    numerator: int
    divisor: int


@frozen
class Reasoner:
    """Makes the reasons of a standard's results, in the order of the rule file."""

    teller: Teller
    _criteria: tuple[_Criterion, ...]
    _limits: tuple[tuple[Limit, Grade, str, Told], ...]
    _grades: tuple[tuple[int, str, Told], ...]

    @classmethod
    def of(cls, rules: Rules, teller: Teller) -> Reasoner:
        """The reasoner of a standard: all that is the same for every fish is made here."""
        limits = []
        for limit in rules.limits:
            grade = rules.grades[limit.grade]
            about = Told(limit.head, limit.name, teller.title(limit), "", grade.name, limit.place.line)
            limits.append((limit, grade, part_key(limit), about))
        grades = [
            (i, part_key(grade), Told("grade", grade.name, teller.title(grade), "", grade.name, grade.place.line))
            for i, grade in enumerate(rules.grades)
        ]
        return cls(teller, tuple(_criteria(rules, teller)), tuple(limits), tuple(grades))

    def reasons(self, trace: Trace, record: Mapping[str, Reading]) -> tuple[Reason, ...]:
        """Every reason of a trace: criteria by section, then faults and lifts, then grades, each group in file order."""
        teller, read = self.teller, self.teller.read
        found = [self._criterion(one, trace, record) for one in self._criteria]
        for (limit, grade, key, about), (holds, _, excepted, _, *bites) in zip(self._limits, trace.limits, strict=True):
            state = State.HELD_BACK if holds and excepted else _STATES[bites[0], bites[1]]
            words = partial(teller.limit, limit, state, grade, trace, record)
            found.append(Reason(about, state, None, None, None, None, words, partial(read, key, record, trace)))
        for (place, key, about), holding in zip(self._grades, trace.grades, strict=True):
            words = partial(teller.grade, place, _STATES[holding], trace, record)
            read_words = partial(read, key, record, trace)
            found.append(Reason(about, _STATES[holding], None, None, None, None, words, read_words))
        return tuple(found)

    def _criterion(self, one: _Criterion, trace: Trace, record: Mapping[str, Reading]) -> Reason:
        part = one.part
        words = partial(self.teller.criterion, part, one.place, trace, record)
        read = partial(self.teller.read, one.key, record, trace)
        if isinstance(part, Points):
            _, _, low, high = trace.points[one.place]
            return Reason(
                one.about,
                None,
                thousandths(low),
                thousandths(high),
                share(one.numerator, one.divisor, low),
                share(one.numerator, one.divisor, high),
                words,
                read,
            )
        state = trace.extras[one.place]
        least, most = _extra_ends(part, state)
        return Reason(one.about, _STATES[state], least, most, least, most, words, read)


def _criteria(rules: Rules, teller: Teller) -> list[_Criterion]:
    found: list[_Criterion] = []
    points, extras = count(), count()
    for section in rules.sections:
        inside: list[_Criterion] = []
        for part in section.points:
            numerator, most = section.worth * part.weight, part.shape.most
            top = share(numerator, section.divisor, most)
            about = Told(
                "points", part.name, teller.title(part), section.name, "", part.place.line, thousandths(most), top
            )
            inside.append(_Criterion(part, part_key(part), about, next(points), numerator, section.divisor))
        for extra in section.extras:
            added = hundredths(max(0, extra.sign * extra.amount))
            about = Told(extra.head, extra.name, teller.title(extra), section.name, "", extra.place.line, added, added)
            inside.append(_Criterion(extra, part_key(extra), about, next(extras), 0, 1))
        found.extend(sorted(inside, key=lambda one: one.about.line))
    return found


def _extra_ends(part: Extra, state: tuple[bool, bool]) -> tuple[Decimal, Decimal]:
    surely, possibly = (hundredths(part.sign * part.amount if given else 0) for given in state)
    return (surely, possibly) if part.sign > 0 else (possibly, surely)


@cache
def share(numerator: int, divisor: int, points: int) -> Decimal:
    """What a criterion gives of the score: worth x weight x p / sum(weight x p_max), rounded half up to a hundredth."""
    return hundredths((2 * numerator * points + divisor) // (2 * divisor))
