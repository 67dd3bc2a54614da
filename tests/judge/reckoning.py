"""What each expression is worth on one fish (conditions.md, results.md, batches.md)."""

from __future__ import annotations

import math
from fractions import Fraction

from attrs import evolve

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge import values as v
from tests.judge.look import Look, grown, held, trait_worth

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
        case e.Negative() | e.Arithmetic() | e.CountOf() | e.CountPlaces() | e.Lesser() | e.Greater() | e.Median():
            return working(expression, look)
        case e.Score() | e.SectionPoints():
            return points_so_far(expression, look)
        case e.Figure():
            return figure_worth(expression, look)
        case e.Earlier(of):
            return worth(of, look.before or without_a_fish(look))
        case e.GradeNow():
            assert look.grades is not None
            return look.grades
        case _:
            return condition_worth(expression, look)


def named(name: str, look: Look) -> v.Worth:
    if name in look.traits:
        return trait_worth(look.traits[name], look.record) if look.grown_to is None else grown(look.traits[name], look)
    return look.settings[name] if name in look.settings else worth(look.terms[name], look)


def without_a_fish(look: Look) -> Look:
    return look if look.anything is None else look.anything()


def figure_worth(figure: e.Figure, look: Look) -> v.Span:
    """Section 6: a figure is a whole millionth; one that is not recorded is anything in its range."""
    found = None if look.figure is None else look.figure(figure)
    if found is not None:
        return v.Span(found / 1_000_000, found / 1_000_000)
    if figure.kind in {"share", "standing"}:
        return v.Span(0.0, 100.0)
    low, high = v.as_order(worth(figure.of, without_a_fish(look)))
    if figure.kind == "spread":  # from 0 to half the width of the range, a whole millionth
        return v.Span(0.0, math.ceil(Fraction(high - low, 2)) / 1_000_000)
    return v.Span(low / 1_000_000, high / 1_000_000)


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
            return v.Span(float(places.least), float(places.most))
        case e.Lesser(of):
            return v.lesser([number(each, look) for each in of])
        case e.Greater(of):
            return v.greater([number(each, look) for each in of])
        case e.Median(of):
            return v.median([number(each, look) for each in of])
        case _:
            raise AssertionError(expression)


def points_so_far(expression: e.Score | e.SectionPoints, look: Look) -> v.Span:
    """Score and section points are hundredths, exact; as a number, that many hundredths (section 4 clauses 3 and 4)."""
    assert look.sections is not None
    if isinstance(expression, e.SectionPoints):
        low, high = look.sections[expression.name]
    elif look.score is not None:
        low, high = look.score
    else:
        low = sum(lowest for lowest, _ in look.sections.values())
        high = sum(highest for _, highest in look.sections.values())
    return v.Span(low / 100, high / 100)


def condition_worth(expression: e.Expression, look: Look) -> v.Truth:
    match expression:
        case e.FaultBit(name) if look.bites is not None:
            return look.bites[name]
        case e.FaultBit() if look.whole is not None:
            return truth(expression, look.whole)
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
        case e.IsWithin(of, distance, middle, negated):  # both ends in: at least B - A and at most B + A
            first = worth(of, look)
            low, high = (e.Arithmetic(sign, middle, distance) for sign in "-+")
            at_least = compare("at least", first, worth(low, look))
            near = v.all_of([at_least, compare("at most", first, worth(high, look))])
            return v.negated(near) if negated else near
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


def is_recorded(of: e.Name | e.Earlier | e.Figure, look: Look) -> v.Truth:
    """Section 5: asks of a trait, an `earlier`, a figure, or a term that is nothing but one of these; never open."""
    if isinstance(of, e.Figure):
        if look.anything is None:
            return v.OPEN
        return v.NO if look.figure is None or look.figure(of) is None else v.YES
    if isinstance(of, e.Earlier):
        assert isinstance(of.of, e.Name)
        if look.anything is None:
            return v.OPEN
        return v.NO if look.before is None else is_recorded(of.of, look.before)
    if of.name not in look.traits:
        inner = look.terms[of.name]
        assert isinstance(inner, e.Name | e.Earlier | e.Figure)
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
