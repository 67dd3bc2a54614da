"""One fish under one standard: all that may be read of it, and what its record says of each trait."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import ROUND_FLOOR, Decimal
from fractions import Fraction
from itertools import combinations

from attrs import evolve, frozen

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge import values as v

Record = Mapping[str, object]

# Section 3: every quantity is held in cm, g, days, deg, degC or %; a year is 365.25 days, a month a twelfth of it.
HELD_IN: dict[str, tuple[str, Fraction]] = {
    "": ("", Fraction(1)),
    "%": ("%", Fraction(1)),
    "mm": ("cm", Fraction(1, 10)),
    "cm": ("cm", Fraction(1)),
    "m": ("cm", Fraction(100)),
    "inch": ("cm", Fraction("2.54")),
    "mg": ("g", Fraction(1, 1000)),
    "g": ("g", Fraction(1)),
    "kg": ("g", Fraction(1000)),
    "days": ("days", Fraction(1)),
    "weeks": ("days", Fraction(7)),
    "months": ("days", Fraction("365.25") / 12),
    "years": ("days", Fraction("365.25")),
    "deg": ("deg", Fraction(1)),
    "degC": ("degC", Fraction(1)),
}


def exactly(amount: object) -> Fraction:
    """A number as written; a float stands for its shortest decimal."""
    return Fraction(Decimal(str(amount)))


def held(amount: object, unit: str) -> float:
    """Section 3: converted exactly as a decimal before it becomes a double."""
    return float(exactly(amount) * HELD_IN[unit][1])


@frozen
class Look:
    """All that an expression may read.

    `recorded` is None while a standard is checked without a fish: then `is recorded` may be either.
    `sections` (lowest and highest, in hundredths) is None until all sections are worked out. `figure` is what a figure
    of the batch comes to for this fish, in millionths, or None if it is not recorded; `before` is the look before this
    one. Before the first round `bites` (of each fault) and `grades` (those still possible) are fixed. `anything` is the
    look without a fish; None where this one is that. `told` is the record without what silence means, where silence adds to
    it; `whole` is the look with it, where this one is without.
    """

    traits: dict[str, m.Trait]
    settings: dict[str, v.Span]
    terms: dict[str, e.Expression]
    faults: dict[str, m.Fault]
    record: Record
    recorded: frozenset[str] | None
    sections: dict[str, tuple[int, int]] | None = None
    grown_to: v.Span | None = None  # how long the fish shall be; None for as it is
    figure: Callable[[e.Figure], int | None] | None = None
    before: Look | None = None
    bites: Mapping[str, v.Truth] | None = None
    grades: v.Steps | None = None
    anything: Callable[[], Look] | None = None
    told: Record | None = None
    whole: Look | None = None
    score: tuple[int, int] | None = None  # of a panel, whose sections need not add up to it

    def as_told(self) -> Look:
        """The same fish without what silence means; score, faults and grade are what they are."""
        return self if self.told is None else evolve(self, record=self.told, told=None, whole=self)

    def with_sections(self, sections: dict[str, tuple[int, int]]) -> Look:
        return evolve(self, sections=sections)


def look_at(standard: m.Standard, record: Record, recorded: frozenset[str] | None) -> Look:
    """A fish that is graded: each setting has its own value (nobody changes settings here)."""
    return Look(
        traits={each.name: each for each in standard.traits},
        settings={s.name: v.Span(held(s.amount, s.unit), held(s.amount, s.unit)) for s in standard.settings},
        terms={each.name: each.means for each in standard.terms},
        faults={each.name: each for each in standard.faults},
        record=record,
        recorded=frozenset(record) if recorded is None else recorded,
    )


def look_at_any(standard: m.Standard) -> Look:
    """No fish yet: every trait and setting is its whole range (section 3, always and never; section 2, setting)."""
    ranges = {}
    for each in standard.settings:
        low = each.amount if each.low is None else each.low
        high = each.amount if each.high is None else each.high
        ranges[each.name] = v.Span(held(low, each.unit), held(high, each.unit))
    order = tuple(reversed([each.name for each in standard.grades]))
    any_grade = v.Steps(order, frozenset(order))
    return evolve(look_at(standard, {}, None), settings=ranges, recorded=None, grades=any_grade)


# ---- What was recorded (section 5) -------------------------------------------------------------------------------


def trait_worth(trait: m.Trait, record: Record) -> v.Worth:
    """A trait that was not recorded is any value of its range; one that was may still be any of several."""
    said = record.get(trait.name)
    if isinstance(said, v.Span | v.Truth | v.Steps | v.PlaceSet | v.Label):
        return said  # what a panel came to
    match trait.kind:
        case m.NumberKind(unit, low, high):
            first, last = (low, high) if said is None else ends(said)
            return v.Span(held(first, unit), held(last, unit))
        case m.CountKind(up_to):
            first, last = (0, up_to) if said is None else ends(said)
            return v.Span(held(first, ""), held(last, ""))
        case m.ScaleKind(steps) | m.ChoiceKind(steps):
            if isinstance(said, str):
                return v.Steps(steps, frozenset({said}))
            assert said is None or isinstance(said, frozenset)
            return v.Steps(steps, frozenset(steps) if said is None else said)
        case m.YesNoKind():
            return v.OPEN if said is None or said == "unsure" else (v.YES if said else v.NO)
        case m.PlacesKind(places):
            if isinstance(said, tuple):
                return v.PlaceSet.any_of(sets_of(said))
            assert said is None or isinstance(said, frozenset)
            return v.PlaceSet.between(said or frozenset(), frozenset(places) if said is None else said)
        case m.LabelKind():
            return v.Label(None if said is None else frozenset({str(said)}))
    raise AssertionError(trait)


def sets_of(said: tuple[object, ...]) -> list[frozenset[str]]:
    """Every set that some places can be: those that are in, with from so many to so many of others."""
    _some, inside, among, least, most = said
    assert isinstance(inside, frozenset) and isinstance(among, frozenset)
    assert isinstance(least, int) and isinstance(most, int)
    return [inside | frozenset(more) for size in range(least, most + 1) for more in combinations(sorted(among), size)]


def ends(said: object) -> tuple[object, object]:
    if isinstance(said, tuple):
        _span, low, high = said
        return low, high
    return said, said


# ---- What it will be when grown ----------------------------------------------------------------------------------


def grown(trait: m.Trait, look: Look) -> v.Worth:
    """What a trait will be at a length (language reference, section 4, growth); every end apart, in decimals of 50 digits.

    W = a L^b; a fish that is that long stays as it is; held within the range of the trait; without a fish, all of it.
    """
    now = trait_worth(trait, look.record)
    if trait.fixed:
        return now
    assert isinstance(now, v.Span) and look.grown_to is not None
    target = look.grown_to.low
    whole = trait_worth(trait, {})
    assert isinstance(whole, v.Span)
    if trait.name == "length":
        low, high = (min(max(end, target), whole.high) for end in (now.low, now.high))
        return v.Span(low, high)
    if look.recorded is None or trait.name not in look.record:
        return now
    length = trait_worth(look.traits["length"], look.record)
    assert isinstance(length, v.Span)
    if trait.whitens:
        # Red judged by eye, without a map: what is left of it at the power -w, between two ends where no setting says w.
        sides = look.settings.get("growth_white_sides", v.Span(0.1, 0.25))
        powers = [-exact(sides.low), -exact(sides.high)]
    else:
        assert trait.follows is not None
        b = look.settings.get("growth_exponent", v.Span(3.02, 3.02)).low
        powers = [trait.follows[0] + trait.follows[1] * exact(b)]
    factors = [
        (max(exact(end), exact(target)) / exact(end)) ** power for end in (length.low, length.high) for power in powers
    ]
    if set(factors) == {Decimal(1)}:
        return now
    ends = (exact(now.low) * min(factors), exact(now.high) * max(factors))
    low, high = (min(max(float(rounded(end)), whole.low), whole.high) for end in ends)
    return v.Span(low, high)


def exact(value: float) -> Decimal:
    return Decimal(repr(value))


def rounded(value: Decimal) -> Decimal:
    """To a millionth, half up."""
    return (value + Decimal("0.0000005")).quantize(Decimal("0.000001"), ROUND_FLOOR)
