"""The judge over a batch: figures, looks before, grades by hand, alerts (batches.md)."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import cache, partial

from attrs import define, evolve, field, frozen

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge import values as v
from tests.judge.judge import Verdict, half_up, look_at_ranges, section_ends, verdict_of
from tests.judge.look import Look, Record, look_at
from tests.judge.looks import said_otherwise
from tests.judge.reckoning import named, truth, worth
from tests.judge.rounds import RoundVerdict, run_rounds
from tests.judge.silence import filled

Groups = tuple[object, ...]


@frozen
class Looked:
    """What was written down of one fish: now, and in the look before this one (None at the first look)."""

    record: Record
    before: Record | None = None


@frozen
class BatchVerdict:
    """Of each fish in the order given: by the rules alone, and the grades that count; alerts that are no sure no."""

    fish: tuple[Verdict, ...]
    possible: tuple[tuple[str, ...], ...]
    alerts: dict[str, bool]  # whether surely
    rounds: tuple[RoundVerdict, ...]


def judge_batch(
    standard: m.Standard,
    fish: Sequence[Looked],
    grades_by_hand: Mapping[int, str] | None = None,
    kept_by_hand: Mapping[str, frozenset[int]] | None = None,
) -> BatchVerdict:
    """Grade fish together; what a person decided stands above the rules."""
    anything = cache(lambda: look_at_ranges(standard))
    looks = [first_look(standard, each, anything) for each in fish]
    looks = compared(looks)
    looks = compared([each.with_sections(section_ends(standard, each)) for each in looks])
    verdicts = tuple(verdict_of(standard, each) for each in looks)
    decided = grades_by_hand or {}
    possible = tuple((decided[n],) if n in decided else one.possible for n, one in enumerate(verdicts))
    order = tuple(reversed([each.name for each in standard.grades]))
    fixed = [
        evolve(
            look,
            bites={f.name: bit(f.name, one) for f in standard.faults},
            grades=v.Steps(order, frozenset(grades)),
        )
        for look, one, grades in zip(looks, verdicts, possible, strict=True)
    ]
    rounds = run_rounds(standard, partial(compared, fixed), kept_by_hand or {})
    return BatchVerdict(verdicts, possible, alerts(standard, compared(fixed)), rounds)


def first_look(standard: m.Standard, fish: Looked, anything: object) -> Look:
    before = None if fish.before is None else evolve(look_at(standard, fish.before, None), anything=anything)
    otherwise = {one.trait for one in standard.silence if fish.before and said_otherwise(standard, one, fish.before)}
    whole = {
        name: value for name, value in filled(standard, fish.record).items() if name not in otherwise - {*fish.record}
    }
    told = fish.record if len(whole) > len(fish.record) else None
    look = look_at(standard, whole, frozenset(fish.record))
    return evolve(look, before=before, anything=anything, told=told)


def bit(fault: str, verdict: Verdict) -> v.Truth:
    return v.Truth(fault in verdict.faults, fault in verdict.faults or fault in verdict.open_faults)


def alerts(standard: m.Standard, looks: list[Look]) -> dict[str, bool]:
    """Section 2, alert: about the batch as a whole, so nothing of one fish is read."""
    population = Population(looks, tuple(range(len(looks))))
    nobody = evolve(
        look_at(standard, {}, None),
        figure=partial(population.figure, fish=None),
        anything=cache(lambda: look_at_ranges(standard)),
    )
    found = {each.name: truth(each.condition, nobody) for each in standard.alerts}
    return {name: holds.surely for name, holds in found.items() if holds.possibly}


# ---- Figures -----------------------------------------------------------------------------------------------------


def compared(
    looks: list[Look],
    members: Sequence[int] | None = None,
    kept: Mapping[str, Sequence[int]] | None = None,
) -> list[Look]:
    """The same looks, each comparing itself with the members (all of them unless said otherwise)."""
    population = Population([], tuple(range(len(looks)) if members is None else members), kept or {})
    population.looks.extend(evolve(each, figure=partial(population.figure, fish=n)) for n, each in enumerate(looks))
    return population.looks


@define
class Population:
    """The fish that figures are taken over; `kept` by each round so far."""

    looks: list[Look]
    members: tuple[int, ...]
    kept: Mapping[str, Sequence[int]] = field(factory=dict)
    _values: dict[tuple[int, int], int | None] = field(factory=dict)
    _groups: dict[tuple[int, int], Groups | None] = field(factory=dict)

    def figure(self, figure: e.Figure, fish: int | None) -> int | None:
        """What it comes to for a fish, in millionths; None if it is not recorded."""
        members = self.kept[figure.kept_by] if figure.kept_by else self.members
        group: Groups | None = () if fish is None else self.group(figure, fish)
        if group is None:
            return None
        found = [self.value(figure, each) for each in members if self.group(figure, each) == group]
        values = sorted(each for each in found if each is not None)
        if not values:
            return None
        if figure.at_least is not None:
            # said.md, section 1: `with N or more recorded` counts what was written.
            told = [
                v.one_number(worth(figure.of, self.looks[each].as_told()))
                for each in members
                if self.group(figure, each) == group
            ]
            if sum(each is not None for each in told) < figure.at_least:
                return None
        if figure.kind != "standing":
            return half_up(taken(figure, values))
        assert fish is not None
        own = self.value(figure, fish)
        return None if own is None else half_up(standing(own, values))

    def value(self, figure: e.Figure, fish: int) -> int | None:
        """Section 6: a fish counts only where E is one value, a condition not open."""
        key = (id(figure), fish)
        if key not in self._values:
            self._values[key] = v.one_number(worth(figure.of, self.looks[fish]))
        return self._values[key]

    def group(self, figure: e.Figure, fish: int) -> Groups | None:
        key = (id(figure), fish)
        if key not in self._groups:
            parts = tuple(v.one_value(named(name, self.looks[fish].as_told())) for name in figure.same)
            self._groups[key] = None if None in parts else parts
        return self._groups[key]


def taken(figure: e.Figure, values: list[int]) -> Fraction:
    """A figure over values in rising order; of conditions, 1 for each that holds."""
    match figure.kind:
        case "lowest":
            return Fraction(values[0])
        case "highest":
            return Fraction(values[-1])
        case "mean":
            return Fraction(sum(values), len(values))
        case "median":
            return percentile(Fraction(50), values)
        case "percentile":
            assert figure.percent is not None
            return percentile(Fraction(figure.percent), values)
        case "spread":  # the standard deviation of all of them: the root of the mean square distance from the mean
            mean = Fraction(sum(values), len(values))
            return root(sum((value - mean) ** 2 for value in values) / len(values))
        case "share":
            return Fraction(100 * 1_000_000 * sum(values), len(values))
        case _:
            raise AssertionError(figure)


def root(x: Fraction) -> Fraction:
    """The square root, rounded half up to a whole number without a double."""
    whole = math.isqrt(x.numerator // x.denominator)
    # floor(sqrt(x)) is whole; sqrt(x) is at least whole + 1/2 where x is at least (whole + 1/2)^2.
    return Fraction(whole + 1 if x >= (whole + Fraction(1, 2)) ** 2 else whole)


def percentile(percent: Fraction, values: list[int]) -> Fraction:
    """Type 7 of Hyndman and Fan 1996: place 1 + (n - 1) p among n values, in a straight line between two."""
    place = (len(values) - 1) * percent / 100
    below = int(place)
    above = min(below + 1, len(values) - 1)
    return values[below] + (place - below) * (values[above] - values[below])


def standing(own: int, values: list[int]) -> Fraction:
    """The share below it plus half the share equal to it, in %."""
    below = sum(each < own for each in values)
    equal = sum(each == own for each in values)
    return 100 * 1_000_000 * (below + Fraction(equal, 2)) / len(values)
