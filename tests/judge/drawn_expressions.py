"""Draws well-typed expressions that ranges alone never decide."""

from __future__ import annotations

from decimal import Decimal

from hypothesis import strategies as st

from tests.judge import drawn_comparisons as comparisons
from tests.judge import expressions as e
from tests.judge.look import HELD_IN
from tests.judge.scope import LabelType, NumberType, PlacesType, Scope, StepsType, TruthType, literal

TEXTS = ("line A", "line C", "blå", "a line # 2", "赤", "if a above b")
AMOUNTS = ("1", "2", "3", "0.1", "0.2", "0.5", "10", "0.3", "100", "0.000001", "0.333333", "1000000")

WORKINGS = ("+", "-", "*", "*", "/", "/", "either", "lesser", "greater", "median", "negative", "count", "places")


# ---- Numbers -----------------------------------------------------------------------------------------------------


def number(scope: Scope, dimension: str, depth: int) -> e.Expression:
    """A number or count of this dimension."""
    if scope.growing and scope.chance(40):
        return grown_number(scope, dimension)
    if scope.comparing and scope.chance(12):
        way = comparisons.earlier_number if scope.chance(35) else comparisons.figure_number
        found = way(scope, dimension, depth)
        if found is not None:
            return found
    if depth == 0 or scope.chance(35):
        return plain_number(scope, dimension)
    match scope.one_of(WORKINGS):
        case "+" | "-" as sign:
            return e.Arithmetic(sign, number(scope, dimension, depth - 1), number(scope, dimension, depth - 1))
        case "*":  # one side is a bare number
            sides = [number(scope, dimension, depth - 1), number(scope, "", depth - 1)]
            left, right = (0, 1) if scope.chance(50) else (1, 0)
            return e.Arithmetic("*", sides[left], sides[right])
        case "/":
            return quotient(scope, dimension, depth)
        case "either":
            return e.Either(
                number(scope, dimension, depth - 1), condition(scope, depth - 1), number(scope, dimension, depth - 1)
            )
        case "lesser":
            return e.Lesser(several_numbers(scope, dimension, depth - 1))
        case "greater":
            return e.Greater(several_numbers(scope, dimension, depth - 1))
        case "median":
            several = scope.one_of((3, 3, 2, 4, 5))
            return e.Median(tuple(number(scope, dimension, depth - 1) for _ in range(several)))
        case "negative":
            return e.Negative(number(scope, dimension, depth - 1))
        case "count" if not dimension:
            return e.CountOf(tuple(condition(scope, depth - 1) for _ in range(scope.one_of((2, 3, 1)))))
        case "places" if not dimension and scope.names(PlacesType):
            return e.CountPlaces(e.Name(scope.one_of(scope.names(PlacesType))))
    return plain_number(scope, dimension)


def grown_number(scope: Scope, dimension: str) -> e.Expression:
    """What a figure will be, or a sum of several."""
    names = [
        n
        for n in scope.numbers(dimension)
        if any(t.name == n and (t.follows or t.whitens) for t in scope.standard.traits)
    ]
    if not names:
        return plain_number(scope, dimension)
    of: e.Expression = e.Name(scope.one_of(names))
    if scope.chance(30):
        of = e.Arithmetic(scope.one_of(("+", "-")), of, e.Name(scope.one_of(names)))
    return e.GrownTo(of, grown_length(scope))


def grown_length(scope: Scope) -> e.Expression:
    settings = [
        each.name for each in scope.standard.settings if each.unit == "cm" and each.amount > 0 and each.low != 0
    ]
    length = e.Name(scope.one_of(settings)) if settings and scope.chance(40) else None
    written = e.Literal(Decimal(scope.one_of(("65", "30", "12.5", "90"))), "cm")
    if length is None:
        return e.Literal(Decimal("0.65"), "m") if scope.chance(10) else written
    return e.Arithmetic("+", length, written) if scope.chance(20) else length


def quotient(scope: Scope, dimension: str, depth: int) -> e.Expression:
    """/ divides by a bare number, or by the same dimension, which gives a bare number."""
    if not dimension and scope.chance(60):
        both = scope.one_of(scope.dimensions())
        return e.Arithmetic("/", number(scope, both, depth - 1), number(scope, both, depth - 1))
    return e.Arithmetic("/", number(scope, dimension, depth - 1), number(scope, "", depth - 1))


def several_numbers(scope: Scope, dimension: str, depth: int) -> tuple[e.Expression, ...]:
    return tuple(number(scope, dimension, depth) for _ in range(scope.one_of((2, 3))))


def plain_number(scope: Scope, dimension: str) -> e.Expression:
    """A name, points or a literal."""
    if scope.scored and not dimension and scope.chance(40):
        parts: list[e.Expression] = [e.SectionPoints(each.name) for each in scope.standard.sections]
        return scope.one_of([e.Score(), *parts])
    names = scope.numbers(dimension)
    if names and scope.chance(75):
        return e.Name(scope.one_of(names))
    units = [unit for unit, (held_in, _) in HELD_IN.items() if held_in == dimension]
    amount, unit = Decimal(scope.one_of(AMOUNTS)), scope.one_of(units)
    return e.Literal(amount, unit if amount * Decimal(str(float(HELD_IN[unit][1]))) <= 1_000_000 else dimension)


def literal_inside(scope: Scope, of: e.Expression, dimension: str) -> e.Expression | None:
    """A literal that this number may be above, at or below; None if there is none."""
    low, high = scope.ends(of)
    found = scope.inside(low, high, whole=scope.is_whole(of))
    if found is None:
        return None
    return literal(*scope.in_some_unit(found, dimension))


# ---- Scales and choices ------------------------------------------------------------------------------------------


def steps_value(scope: Scope, its_type: StepsType, depth: int) -> e.Expression:
    names = scope.same_type(its_type)
    if scope.comparing and scope.chance(15):
        earlier = comparisons.earlier_named(scope, names)
        if earlier is not None:
            return earlier
    if depth and scope.chance(20):
        word = scope.chance(30)
        otherwise = e.Step(scope.one_of(its_type.order)) if word else steps_value(scope, its_type, depth - 1)
        return e.Either(e.Name(scope.one_of(names)), condition(scope, depth - 1), otherwise)
    return e.Name(scope.one_of(names))


# ---- Conditions --------------------------------------------------------------------------------------------------


def condition(scope: Scope, depth: int) -> e.Expression:
    """A condition that no range alone decides."""
    if depth == 0 or scope.chance(50):
        return simple_condition(scope, depth)
    match scope.one_of(("and", "or", "not", "either")):
        case "and":
            return e.And(several_conditions(scope, depth - 1))
        case "or":
            return e.Or(several_conditions(scope, depth - 1))
        case "not":
            return e.Not(condition(scope, depth - 1))
        case _:
            return e.Either(*(condition(scope, depth - 1) for _ in range(3)))


def several_conditions(scope: Scope, depth: int) -> tuple[e.Expression, ...]:
    return tuple(condition(scope, depth) for _ in range(scope.one_of((2, 2, 3))))


def simple_condition(scope: Scope, depth: int) -> e.Expression:
    ways = [number_comparison] * 4 + [recorded_condition]
    for its_type, way in (
        (StepsType, steps_comparison),
        (TruthType, truth_condition),
        (PlacesType, places_condition),
        (LabelType, label_comparison),
    ):
        if scope.names(its_type):
            ways += [way, way]
    if scope.standard.faults and not scope.alone:
        ways.append(fault_condition)
    if scope.comparing:
        ways += [comparisons.against_the_others] * 2
        if scope.chance(10):
            return comparisons.earlier_condition(scope, depth)
    if scope.graded:
        ways += [comparisons.grade_condition]
    for _ in range(4):
        found = scope.one_of(ways)(scope, depth)
        if found is not None and scope.is_open(found):
            return found
    return recorded_condition(scope, depth)


def number_comparison(scope: Scope, depth: int) -> e.Expression | None:
    dimension = scope.one_of(scope.dimensions())
    left = number(scope, dimension, 0 if scope.chance(35) else depth)
    if scope.chance(15):
        return between_numbers(scope, left, dimension)
    if scope.chance(8):
        return within_numbers(scope, left, dimension, depth)
    if scope.chance(8):
        options = [literal_inside(scope, left, dimension) for _ in range(scope.one_of((2, 1, 3)))]
        return (
            e.IsOneOf(left, tuple(each for each in options if each), negated=scope.chance(30)) if any(options) else None
        )
    operator = scope.one_of((*e.ORDERS, *e.ORDERS, *e.SAMENESS))
    right = number(scope, dimension, max(depth - 1, 0)) if scope.chance(25) else None
    if right is None or not scope.is_open(e.Compare(operator, left, right)):
        right = literal_inside(scope, left, dimension)
    if right is None:
        return None
    if scope.chance(8):
        left, right = right, left
    return e.Compare(operator, left, right)


def within_numbers(scope: Scope, of: e.Expression, dimension: str, depth: int) -> e.Expression | None:
    middle = number(scope, dimension, max(depth - 1, 0)) if scope.chance(30) else literal_inside(scope, of, dimension)
    distance = literal(*scope.in_some_unit(scope.one_of((0, 1, 500_000, 2_000_000, 15_000_000)), dimension))
    return None if middle is None else e.IsWithin(of, distance, middle, negated=scope.chance(30))


def between_numbers(scope: Scope, of: e.Expression, dimension: str) -> e.Expression | None:
    ends = [literal_inside(scope, of, dimension) for _ in range(2)]
    low, high = ends
    if low is None or high is None:
        return None
    if scope.ends(low) > scope.ends(high):
        low, high = high, low
    if scope.chance(15):
        low = literal(*scope.in_some_unit(scope.ends(of)[0], dimension))
    return e.Between(of, low, high)


def steps_comparison(scope: Scope, depth: int) -> e.Expression | None:
    its_type = scope.types[scope.one_of(scope.names(StepsType))]
    assert isinstance(its_type, StepsType)
    left = steps_value(scope, its_type, depth)
    if scope.chance(35):
        return is_one_of(scope, left, [e.Step(each) for each in its_type.order])
    if its_type.ordered and scope.chance(15):
        low, high = sorted(scope.draw(st.integers(0, len(its_type.order) - 1)) for _ in range(2))
        return e.Between(left, e.Step(its_type.order[low]), e.Step(its_type.order[high]))
    operators = (*e.ORDERS, *e.ORDERS, *e.SAMENESS) if its_type.ordered else e.SAMENESS
    right = e.Step(scope.one_of(its_type.order)) if scope.chance(80) else steps_value(scope, its_type, 0)
    return e.Compare(scope.one_of(operators), left, right)


def is_one_of(scope: Scope, left: e.Expression, every: list[e.Expression]) -> e.Expression:
    """Some of the options but not all."""
    count = scope.draw(st.integers(1, max(1, len(every) - 1)))
    listed = scope.draw(st.permutations(every))[:count]
    return e.IsOneOf(left, tuple(listed), negated=scope.chance(30))


def truth_condition(scope: Scope, depth: int) -> e.Expression:
    """A yes or no by itself, or compared."""
    left = some_truth(scope, depth)
    if scope.chance(40):
        return left
    right = e.YesNo(scope.chance(50)) if scope.chance(85) else some_truth(scope, depth)
    if scope.chance(10):
        return e.IsOneOf(left, (right,), negated=scope.chance(30))
    return e.Compare(scope.one_of(e.SAMENESS), left, right)


def some_truth(scope: Scope, depth: int) -> e.Expression:
    if scope.standard.faults and not scope.alone and scope.chance(10):
        return e.FaultBit(scope.one_of(scope.standard.faults).name)
    if depth and scope.chance(15):
        return condition(scope, depth - 1)
    name = scope.one_of(scope.names(TruthType))
    if scope.comparing and scope.chance(15):
        return comparisons.earlier_named(scope, [name]) or e.Name(name)
    fixed = any(each.name == name and each.fixed for each in scope.standard.traits)
    return e.GrownTo(e.Name(name), grown_length(scope)) if fixed and scope.chance(50) else e.Name(name)


def places_condition(scope: Scope, _depth: int) -> e.Expression:
    name = scope.one_of(scope.names(PlacesType))
    its_type = scope.types[name]
    assert isinstance(its_type, PlacesType)
    earlier = comparisons.earlier_named(scope, [name]) if scope.comparing and scope.chance(30) else None
    return e.Includes(earlier or e.Name(name), scope.one_of(its_type.places))


def label_comparison(scope: Scope, _depth: int) -> e.Expression:
    name = e.Name(scope.one_of(scope.names(LabelType)))
    if scope.chance(40):
        return is_one_of(scope, name, [e.Words(each) for each in TEXTS])
    return e.Compare(scope.one_of(e.SAMENESS), name, e.Words(scope.one_of(TEXTS)))


def fault_condition(scope: Scope, _depth: int) -> e.Expression:
    return e.FaultBit(scope.one_of(scope.standard.faults).name)


def recorded_condition(scope: Scope, _depth: int) -> e.Expression:
    """Asks of a trait, or of a term that is nothing but one."""
    names = [each.name for each in scope.standard.traits]
    if scope.comparing and scope.chance(40):
        found = scope.one_of(comparisons.what_may_be_recorded(scope))()
        if found is not None:
            return e.IsRecorded(found, negated=scope.chance(30))
    for term in () if scope.alone else scope.standard.terms:
        if isinstance(term.means, e.Name) and term.means.name in names:
            names.append(term.name)
    return e.IsRecorded(e.Name(scope.one_of(names)), negated=scope.chance(30))


def type_of(scope: Scope, expression: e.Expression, dimension: str) -> NumberType:
    return NumberType(dimension, whole=not dimension and scope.is_whole(expression))
