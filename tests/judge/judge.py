"""The judge: grades one record as a careful person would on paper, exactly (results.md)."""

from __future__ import annotations

import math
from fractions import Fraction
from functools import cache
from itertools import pairwise

from attrs import evolve, frozen

from tests.judge import model as m
from tests.judge import values as v
from tests.judge.look import Look, Record, exactly, held, look_at, look_at_any
from tests.judge.reckoning import fault_bites, number, truth, worth

Ends = tuple[int, int]


@frozen
class Verdict:
    """What must come of a record; points in thousandths, sections and score in hundredths, (lowest, highest)."""

    possible: tuple[str, ...]  # best first
    score_low: int
    score_high: int
    sections: dict[str, Ends]
    points: dict[tuple[str, str], Ends]  # by section and criterion
    faults: tuple[str, ...]  # those that surely bite
    lifts: tuple[str, ...]
    open_faults: tuple[str, ...]  # those that can still bite
    open_lifts: tuple[str, ...]

    @property
    def grade(self) -> str | None:
        return self.possible[0] if len(self.possible) == 1 else None


def judge(standard: m.Standard, record: Record, recorded: frozenset[str] | None = None) -> Verdict:
    """Grade one record.

    `recorded` answers `is recorded` as another record stands (section 5, Sound); without it, as this one does.
    """
    look = evolve(look_at(standard, record, recorded), anything=cache(lambda: look_at_ranges(standard)))
    return verdict_of(standard, look.with_sections(section_ends(standard, look)))


def verdict_of(standard: m.Standard, look: Look) -> Verdict:
    """Of a look whose sections are worked out."""
    sections = look.sections
    assert sections is not None
    bites = {each.name: fault_bites(each, look) for each in standard.faults}
    raised = {each.name: fault_bites(each, look) for each in standard.lifts}
    return Verdict(
        possible=possible_grades(standard, look),
        score_low=sum(low for low, _ in sections.values()),
        score_high=sum(high for _, high in sections.values()),
        sections=sections,
        points={(s.name, p.name): points(p, look) for s in standard.sections for p in weighed(s)},
        faults=tuple(name for name, bit in bites.items() if bit.surely),
        lifts=tuple(name for name, bit in raised.items() if bit.surely),
        open_faults=tuple(name for name, bit in bites.items() if bit.possibly and not bit.surely),
        open_lifts=tuple(name for name, bit in raised.items() if bit.possibly and not bit.surely),
    )


def look_without_a_fish(standard: m.Standard) -> Look:
    """The ranges of everything, sections included: what the checker judges always and never by (section 3)."""
    look = look_at_any(standard)
    return look.with_sections(section_ends(standard, look))


def look_at_ranges(standard: m.Standard) -> Look:
    """The range of everything, of sections as such: held within 0 and worth (section 4 clause 3)."""
    sections = {each.name: (0, half_up(100 * exactly(each.worth))) for each in standard.sections}
    return look_at_any(standard).with_sections(sections)


def half_up(x: Fraction) -> int:
    """Section 4 clause 1: half up always means towards the larger number, also below zero."""
    return math.floor(x + Fraction(1, 2))


# ---- Criteria (section 4 clause 2) -------------------------------------------------------------------------------


def points(criterion: m.Points, look: Look) -> Ends:
    """Lowest and highest thousandths that the criterion could give."""
    match criterion.gives:
        case m.Curve(knots):
            at = [(v.millionths(held(knot.at, knot.unit)), exactly(knot.gives)) for knot in knots]
            span = number(criterion.by, look)
            low, high = v.millionths(span.low), v.millionths(span.high)
            seen = [low, high] + [x for x, _ in at if low < x < high]
            given = [half_up(1000 * on_the_line(at, x)) for x in seen]
        case m.Table(gives, anything_else):
            table = dict(gives)
            given = []
            for step in sorted(possible_steps(worth(criterion.by, look))):
                amount = table.get(step, anything_else)
                assert amount is not None, (criterion, step)
                given.append(half_up(1000 * exactly(amount)))
    return min(given), max(given)


def on_the_line(at: list[tuple[int, Fraction]], x: int) -> Fraction:
    """Section 2, points: straight lines between the knots, flat outside; exact."""
    if x <= at[0][0]:
        return at[0][1]
    for (x0, y0), (x1, y1) in pairwise(at):
        if x <= x1:
            return y0 + (y1 - y0) * Fraction(x - x0, x1 - x0)
    return at[-1][1]


def possible_steps(read: v.Worth) -> frozenset[str]:
    steps = v.as_set(read)
    assert steps is not None
    return steps


def most(criterion: m.Points) -> int:
    """p_max: the largest `gives`, `anything else` included, in thousandths."""
    match criterion.gives:
        case m.Curve(knots):
            amounts = [knot.gives for knot in knots]
        case m.Table(gives, anything_else):
            amounts = [amount for _, amount in gives]
            if anything_else is not None:
                amounts.append(anything_else)
    return half_up(1000 * max(exactly(each) for each in amounts))


# ---- Sections and score (section 4 clauses 3 and 4) --------------------------------------------------------------


def weighed(section: m.Section) -> list[m.Points]:
    return [each for each in section.criteria if isinstance(each, m.Points)]


def section_ends(standard: m.Standard, look: Look) -> dict[str, Ends]:
    return {each.name: section_points(each, look) for each in standard.sections}


def section_points(section: m.Section, look: Look) -> Ends:
    """worth x sum(weight x p) / sum(weight x p_max) + bonuses - penalties, held within 0 and worth, half up."""
    low = high = whole = Fraction(0)
    for criterion in weighed(section):
        weight = Fraction(1) if criterion.weight is None else exactly(criterion.weight)
        lowest, highest = points(criterion, look)
        low += weight * lowest
        high += weight * highest
        whole += weight * most(criterion)
    all_points = exactly(section.worth)
    low, high = all_points * low / whole, all_points * high / whole
    for extra in section.criteria:
        match extra:
            case m.Bonus(_, amount, condition):
                holds = truth(condition, look)
                low += exactly(amount) if holds.surely else 0
                high += exactly(amount) if holds.possibly else 0
            case m.Penalty(_, amount, condition):
                holds = truth(condition, look)
                low -= exactly(amount) if holds.possibly else 0
                high -= exactly(amount) if holds.surely else 0
            case m.Points():
                pass
    return to_hundredths(low, all_points), to_hundredths(high, all_points)


def to_hundredths(x: Fraction, all_points: Fraction) -> int:
    return half_up(100 * min(max(x, Fraction(0)), all_points))


# ---- Grade (section 4 clause 5; section 5) -----------------------------------------------------------------------


def possible_grades(standard: m.Standard, look: Look) -> tuple[str, ...]:
    lifts = {lift.name: fault_bites(lift, look) for lift in standard.lifts}
    faults = {fault.name: fault_bites(fault, look) for fault in standard.faults}
    return after_limits(standard, by_points(standard, look), lifts, faults)


def after_limits(
    standard: m.Standard, places: set[int], lifts: dict[str, v.Truth], faults: dict[str, v.Truth]
) -> tuple[str, ...]:
    """Lifts, then faults that lower, then those that cap; each that is open adds its outcome and keeps the other."""
    names = [grade.name for grade in standard.grades]  # best first: a smaller place is a better grade
    for lift in standard.lifts:
        floor = names.index(lift.no_worse_than)
        places = moved(places, {min(place, floor) for place in places}, lifts[lift.name])
    for fault in standard.faults:
        down = {min(place + fault.lowers, len(names) - 1) for place in places}
        places = moved(places, down, faults[fault.name]) if fault.lowers else places
    for fault in standard.faults:
        if fault.lowers:
            continue
        cap = names.index(fault.no_better_than)
        places = moved(places, {max(place, cap) for place in places}, faults[fault.name])
    return tuple(names[place] for place in sorted(places))


def by_points(standard: m.Standard, look: Look) -> set[int]:
    """Possible if its condition is not a sure no and no better grade's condition is a sure yes."""
    places = set()
    for place, grade in enumerate(standard.grades):
        holds = v.YES if grade.condition is None else truth(grade.condition, look)
        if holds.possibly:
            places.add(place)
        if holds.surely:
            break
    return places


def moved(before: set[int], after: set[int], bites: v.Truth) -> set[int]:
    if bites.surely:
        return after
    return before | after if bites.possibly else before
