"""One fish under one standard: what its record says of each trait, and what each expression is worth on it."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import ROUND_FLOOR, Decimal
from fractions import Fraction

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
    `sections` (lowest and highest, in hundredths) is None until all sections are worked out.
    """

    traits: dict[str, m.Trait]
    settings: dict[str, v.Span]
    terms: dict[str, e.Expression]
    faults: dict[str, m.Fault]
    record: Record
    recorded: frozenset[str] | None
    sections: dict[str, tuple[int, int]] | None = None
    grown_to: v.Span | None = None  # how long the fish shall be; None for as it is

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
    return evolve(look_at(standard, {}, None), settings=ranges, recorded=None)


# ---- What was recorded (section 5) -------------------------------------------------------------------------------


def trait_worth(trait: m.Trait, record: Record) -> v.Worth:
    """A trait that was not recorded is any value of its range; one that was may still be any of several."""
    said = record.get(trait.name)
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
            assert said is None or isinstance(said, frozenset)
            return v.PlaceSet(frozenset(), frozenset(places)) if said is None else v.PlaceSet(said, said)
        case m.LabelKind():
            return v.Label(None if said is None else frozenset({str(said)}))
    raise AssertionError(trait)


def ends(said: object) -> tuple[object, object]:
    if isinstance(said, tuple):
        _span, low, high = said
        return low, high
    return said, said


# ---- Expressions (sections 3 to 5) -------------------------------------------------------------------------------


def worth(expression: e.Expression, look: Look) -> v.Worth:
    match expression:
        case e.Literal(amount, unit):
            return v.Span(held(amount, unit), held(amount, unit))
        case e.YesNo(yes):
            return v.YES if yes else v.NO
        case e.Words(text):
            return v.Label(frozenset({text}))
        case e.Name(name):
            return named(name, look)
        case e.Either(then, condition, otherwise):
            first = worth(then, look)
            return v.either(first, truth(condition, look), operand(otherwise, first, look))
        case e.GrownTo(of, target):
            return worth(of, evolve(look, grown_to=number(target, look)))
        case e.Negative() | e.Arithmetic() | e.CountOf() | e.CountPlaces() | e.Lesser() | e.Greater():
            return working(expression, look)
        case e.Score() | e.SectionPoints():
            return points_so_far(expression, look)
        case _:
            return condition_worth(expression, look)


def named(name: str, look: Look) -> v.Worth:
    if name in look.traits:
        return trait_worth(look.traits[name], look.record) if look.grown_to is None else grown(look.traits[name], look)
    return look.settings[name] if name in look.settings else worth(look.terms[name], look)


def grown(trait: m.Trait, look: Look) -> v.Worth:
    """What a trait will be at a length (language reference, section 4, growth); every end apart, in decimals of 50 digits.

    W = a L^b; a fish that is that long stays as it is; held within the range of the trait; without a fish, all of it.
    """
    now = trait_worth(trait, look.record)
    if trait.fixed:
        return now
    assert isinstance(now, v.Span) and look.grown_to is not None and trait.follows is not None
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
    b = look.settings.get("growth_exponent", v.Span(3.02, 3.02)).low
    power = trait.follows[0] + trait.follows[1] * exact(b)
    factors = [(max(exact(end), exact(target)) / exact(end)) ** power for end in (length.low, length.high)]
    ends = (exact(now.low) * min(factors), exact(now.high) * max(factors))
    low, high = (min(max(float(rounded(end)), whole.low), whole.high) for end in ends)
    return v.Span(low, high)


def exact(value: float) -> Decimal:
    return Decimal(repr(value))


def rounded(value: Decimal) -> Decimal:
    """To a millionth, half up."""
    return (value + Decimal("0.0000005")).quantize(Decimal("0.000001"), ROUND_FLOOR)


def working(expression: e.Working, look: Look) -> v.Span:
    match expression:
        case e.Negative(of):
            return v.negative(number(of, look))
        case e.Arithmetic(sign, left, right):
            return v.arithmetic(sign, number(left, look), number(right, look))
        case e.CountOf(conditions):
            return v.count_of([truth(each, look) for each in conditions])
        case e.CountPlaces(of):
            places = worth(of, look)
            assert isinstance(places, v.PlaceSet)
            return v.Span(float(len(places.surely)), float(len(places.possibly)))
        case e.Lesser(of):
            return v.lesser([number(each, look) for each in of])
        case e.Greater(of):
            return v.greater([number(each, look) for each in of])
        case _:
            raise AssertionError(expression)


def points_so_far(expression: e.Score | e.SectionPoints, look: Look) -> v.Span:
    """Score and section points are hundredths, exact; as a number, that many hundredths (section 4 clauses 3 and 4)."""
    assert look.sections is not None
    if isinstance(expression, e.SectionPoints):
        low, high = look.sections[expression.name]
    else:
        low = sum(lowest for lowest, _ in look.sections.values())
        high = sum(highest for _, highest in look.sections.values())
    return v.Span(low / 100, high / 100)


def condition_worth(expression: e.Expression, look: Look) -> v.Truth:
    match expression:
        case e.FaultBit(name):
            return fault_bites(look.faults[name], look)  # section 4 clause 5: after its `except`
        case e.Or(parts):
            return v.any_of([truth(each, look) for each in parts])
        case e.And(parts):
            return v.all_of([truth(each, look) for each in parts])
        case e.Not(of):
            return v.negated(truth(of, look))
        case e.Compare(operator, left, right):
            first = worth(left, look)
            return compare(operator, first, operand(right, first, look))
        case e.Between(of, low, high):  # both ends in: at least the low one and at most the high one
            middle = worth(of, look)
            at_least = compare("at least", middle, operand(low, middle, look))
            return v.all_of([at_least, compare("at most", middle, operand(high, middle, look))])
        case e.IsOneOf(of, options, negated):
            first = worth(of, look)
            listed = v.one_of(first, [operand(each, first, look) for each in options])
            return v.negated(listed) if negated else listed
        case e.IsRecorded(of, negated):
            known = is_recorded(of, look)
            return v.negated(known) if negated else known
        case e.Includes(of, place):
            places = worth(of, look)
            assert isinstance(places, v.PlaceSet)
            return v.Truth(place in places.surely, place in places.possibly)
        case _:
            raise AssertionError(expression)


def compare(operator: str, left: v.Worth, right: v.Worth) -> v.Truth:
    if operator == "is":
        return v.same(left, right)
    if operator == "is not":
        return v.negated(v.same(left, right))
    return v.in_order(operator, v.as_order(left), v.as_order(right))


def operand(expression: e.Expression, left: v.Worth, look: Look) -> v.Worth:
    """Section 3: right of a comparison with a scale or choice, or beside it in a choice of two, a word is its step."""
    if isinstance(expression, e.Step):
        assert isinstance(left, v.Steps)
        return v.Steps(left.order, frozenset({expression.name}))
    return worth(expression, look)


def is_recorded(of: e.Name, look: Look) -> v.Truth:
    """Section 5: asks of a trait, or of a term that is nothing but one; never open."""
    if of.name not in look.traits:
        inner = look.terms[of.name]
        assert isinstance(inner, e.Name)
        return is_recorded(inner, look)
    if look.recorded is None:
        return v.OPEN
    return v.YES if of.name in look.recorded else v.NO


def number(expression: e.Expression, look: Look) -> v.Span:
    found = worth(expression, look)
    assert isinstance(found, v.Span), expression
    return found


def truth(expression: e.Expression, look: Look) -> v.Truth:
    found = worth(expression, look)
    assert isinstance(found, v.Truth), expression
    return found


def fault_bites(fault: m.Fault | m.Lift, look: Look) -> v.Truth:
    """Section 4 clause 5: `if C except D` means C and not D."""
    excepted = None if fault.excepted is None else truth(fault.excepted, look)
    return v.held_back(truth(fault.condition, look), excepted)
