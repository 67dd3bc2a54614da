"""Draws the statements of a whole standard, one kind after the other."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Any

from hypothesis import strategies as st

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.drawn_expressions import condition, number, steps_value, type_of
from tests.judge.drawn_records import some_places
from tests.judge.drawn_rounds import add_alert, add_round
from tests.judge.judge import most, weighed
from tests.judge.look import HELD_IN, exactly
from tests.judge.scope import HIGHEST, MILLION, Draw, Scope, StepsType, TruthType, decimal_of, type_of_kind
from tests.judge.silence import is_by_eye
from tests.judge.written import plain

# Each of a prime length, see Scope.shuffled.
NAMES = (
    "kiwa",
    "girth",
    "odome",
    "hi_cover",
    "sheen",
    "x",
    "edge2",
    "赤",
    "頬紅",
    "hi_模様",
    "длина",
    "places",
    "worth",
)
STEPS = ("thin", "fair", "strong", "faint", "sharp", "none", "nidan", "sandan", "弱", "above", "gives", "points", "if")
PLACES = ("left_eye", "tail", "背", "left_pectoral", "if")
GRADES = ("keep", "hold", "sell", "cull", "一級")
LABELS = ("", "", "", "belly mark", "line # 2", "if a above b: no better than", "赤 and blå")
SAYS = ("", "", "", "too much of it", "see # 3: cull otherwise")
GIVES = ("0", "10", "5", "4", "8", "1", "2", "3", "0.5", "0.25", "7.77", "0.01", "100", "1000")
WEIGHTS = (None, None, "1", "2", "0.5", "3", "0", "0.01", "1.25")
WORTHS = ("10", "40", "60", "100", "1", "5", "12.5", "33.33", "0.01", "0", "1000")
EXTRAS = ("2", "1", "5", "0.5", "0.01", "2.25", "100", "0")

KINDS = ("number", "number", "number", "number", "count", "scale", "scale", "choice", "yes or no", "places", "label")

# Ranges that traits have, by unit; all stay exact with six decimals in what they are held in.
RANGES: dict[str, tuple[tuple[str, str], ...]] = {
    "": (
        ("0", "1"),
        ("-5", "5"),
        ("0", "20"),
        ("-1", "2"),
        ("0.1", "0.35"),
        ("-1000000", "1000000"),
        ("0", "0.000004"),
    ),
    "%": (("0", "100"), ("-10", "10"), ("0.5", "99.5")),
    "mm": (("0", "900"), ("-2.5", "2.5")),
    "cm": (("0", "90"), ("1", "2")),
    "m": (("0", "1.5"), ("-0.02", "0.02")),
    "mg": (("0", "5000"),),
    "g": (("0", "15000"),),
    "kg": (("0.001", "25"),),
    "days": (("0", "700"),),
    "weeks": (("-3", "104"),),
    "months": (("0", "36"), ("0.5", "1.5")),
    "years": (("0", "70"),),
    "deg": (("-180", "180"),),
    "degC": (("-5", "40"),),
}


GROWER = "grower"


def follows(name: str, unit: str, low: str, high: str, alone: str, with_b: str) -> m.Trait:
    kind = m.NumberKind(unit, Decimal(low), Decimal(high))
    return m.Trait(name, kind, given=True, follows=(Decimal(alone), Decimal(with_b)))


GIVEN = (
    follows("length", "cm", "0.5", "125", "1", "0"),
    follows("girth_ratio", "", "0.1", "1.2", "-1.5", "0.5"),
    follows("weight", "kg", "0.001", "25", "0", "1"),
    follows("fineness", "", "1", "12", "1.5", "-0.5"),
    follows("stem_ratio", "", "0.05", "1", "0", "0"),
    m.Trait("red_share", m.NumberKind("%", Decimal(0), Decimal(100)), given=True, whitens=True),
    m.Trait("maruten", m.YesNoKind(), given=True, fixed=True),
)
"""The traits of an invented variety that says how they grow."""


@st.composite
def drawn_standard(
    draw: Draw, *, growing: bool = False, comparing: bool = False, selecting: bool = False, silent: bool = False
) -> m.Standard:
    standard = m.Standard(grades=(), variety=GROWER if growing else "")
    scope = Scope(draw, standard, growing=growing, comparing=comparing)
    names = iter(scope.shuffled(NAMES))
    if growing:
        add_what_grows(scope)
    for _ in range(scope.one_of((3, 1, 2, 4, 5, 6))):
        add_trait(scope, next(names))
    for _ in range(scope.one_of((0, 0, 1, 2))):
        add_setting(scope, next(names))
    if silent:
        add_silence(scope)
    grades = scope.shuffled(GRADES)[: draw(st.integers(2, 4))]
    faults = iter(scope.shuffled(NAMES))
    for _ in range(draw(st.integers(0, 3))):
        if scope.chance(50):
            add_term(scope, next(names))
        else:
            add_fault(scope, next(faults), grades)
    add_sections(scope)
    scope.scored = bool(scope.standard.sections)
    for _ in range(draw(st.integers(0, 3))):
        if scope.chance(40):
            add_term(scope, next(names))
        else:
            add_fault(scope, next(faults), grades)
    for name in scope.shuffled(NAMES)[: draw(st.integers(0, 2))]:
        add_lift(scope, name, grades)
    for name in grades[:-1]:
        scope.extend(grades=(m.Grade(name, condition(scope, 1), scope.one_of(LABELS)),))
    scope.extend(grades=(m.Grade(grades[-1], None, scope.one_of(LABELS)),))
    scope.graded = comparing or selecting
    for name in scope.shuffled(NAMES)[: draw(st.integers(0, 2))] if comparing else ():
        add_alert(scope, name)
    if scope.graded:
        for name in scope.shuffled(NAMES)[: draw(st.integers(0, 4))]:
            add_round(scope, name)
    return scope.standard


def add_what_grows(scope: Scope) -> None:
    scope.extend(traits=GIVEN)
    for trait in GIVEN:
        scope.name(trait.name, type_of_kind(trait.kind))
    if scope.chance(60):
        b = Decimal(scope.one_of(("3.2", "2.935", "3", "2", "4")))
        ends = (Decimal(2), Decimal(4)) if scope.chance(50) else (None, None)
        scope.extend(settings=(m.Setting("growth_exponent", b, "", *ends),))
        scope.name("growth_exponent", type_of(scope, e.Score(), ""))
    if scope.chance(40):
        w = Decimal(scope.one_of(("0.2", "0", "0.125", "1")))
        ends = (Decimal(0), Decimal(1)) if scope.chance(50) else (None, None)
        scope.extend(settings=(m.Setting("growth_white_sides", w, "", *ends),))
        scope.name("growth_white_sides", type_of(scope, e.Score(), ""))
    if scope.chance(60):
        scope.extend(settings=(m.Setting("grown_length", Decimal(65), "cm", Decimal(40), Decimal(90)),))
        scope.name("grown_length", type_of(scope, e.Score(), "cm"))


# ---- Names -------------------------------------------------------------------------------------------------------


def add_trait(scope: Scope, name: str) -> None:
    kind = drawn_kind(scope)
    ordered = isinstance(kind, m.NumberKind | m.CountKind | m.ScaleKind)
    direction = scope.one_of(("", "more", "less")) if ordered else ""
    scope.extend(traits=(m.Trait(name, kind, scope.one_of(LABELS), direction),))
    scope.name(name, type_of_kind(kind))


def drawn_kind(scope: Scope) -> m.Kind:
    earlier = [each.kind for each in scope.standard.traits if isinstance(each.kind, m.ScaleKind | m.ChoiceKind)]
    if earlier and scope.chance(30):
        return scope.one_of(earlier)  # two traits of the same steps can be compared
    match scope.one_of(KINDS):
        case "number":
            unit = "" if scope.chance(30) else scope.one_of(tuple(RANGES))
            low, high = scope.one_of(RANGES[unit])
            return m.NumberKind(unit, Decimal(low), Decimal(high))
        case "count":
            return m.CountKind(scope.one_of((3, 20, 1, 1000)))
        case "scale":
            return m.ScaleKind(tuple(scope.shuffled(STEPS)[: scope.one_of((3, 2, 4, 5))]))
        case "choice":
            return m.ChoiceKind(tuple(scope.shuffled(STEPS)[: scope.one_of((3, 2, 4))]))
        case "yes or no":
            return m.YesNoKind()
        case "places":
            return m.PlacesKind(tuple(scope.shuffled(PLACES)[: scope.one_of((2, 1, 4))]))
        case _:
            return m.LabelKind()


def add_setting(scope: Scope, name: str) -> None:
    unit = scope.one_of(tuple(RANGES))
    low, high = (Decimal(each) for each in scope.one_of(RANGES[unit]))
    amount = scope.one_of((low, high, decimal_of((exactly(low) + exactly(high)) / 2)))
    ranged = scope.chance(60)
    setting = m.Setting(name, amount, unit, low if ranged else None, high if ranged else None, scope.one_of(LABELS))
    scope.extend(settings=(setting,))
    scope.name(name, type_of(scope, e.Score(), HELD_IN[unit][0]))


def add_term(scope: Scope, name: str) -> None:
    match scope.one_of(("condition", "condition", "number", "number", "steps", "alias")):
        case "number":
            dimension = scope.one_of(scope.dimensions())
            means = number(scope, dimension, 2)
            its_type: Any = type_of(scope, means, dimension)
        case "steps" if scope.names(StepsType):
            its_type = scope.types[scope.one_of(scope.names(StepsType))]
            means = steps_value(scope, its_type, 2)
        case "alias":
            alias = scope.one_of([each.name for each in scope.standard.traits])
            means, its_type = e.Name(alias), scope.types[alias]
        case _:
            means, its_type = condition(scope, 2), TruthType()
    scope.extend(terms=(m.Term(name, means, scope.one_of(LABELS)),))
    scope.name(name, its_type)


def add_silence(scope: Scope) -> None:
    """What silence means of some traits that are judged by eye; conditions read traits and settings alone."""
    comparing, scope.comparing = scope.comparing, False
    for trait in scope.standard.traits:
        means = silent_value(scope, trait) if is_by_eye(trait) and scope.chance(70) else None
        if means is not None:
            unless = condition(scope, 1) if scope.chance(30) else None
            scope.extend(silence=(m.Silent(trait.name, means, unless),))
    scope.comparing = comparing


def silent_value(scope: Scope, trait: m.Trait) -> object:
    """A value that leaves less open than a blank; None where the kind has none."""
    match trait.kind:
        case m.NumberKind(_, low, high):
            middle = decimal_of((exactly(low) + exactly(high)) / 2)
            first, last = scope.one_of(((low, low), (middle, middle), (low, middle), (middle, high), (high, high)))
            return ("span", plain(first), plain(last))
        case m.CountKind(up_to):
            first, last = scope.one_of(((0, 0), (1, 1), (0, up_to - 1), (up_to, up_to)))
            return ("span", str(first), str(last))
        case m.ScaleKind(steps) | m.ChoiceKind(steps):
            some = scope.draw(st.permutations(steps))[: scope.one_of(tuple(range(1, len(steps))))]
            return frozenset(some)
        case m.YesNoKind():
            return scope.one_of((True, False))
        case m.PlacesKind(places):
            if scope.chance(30):
                some = scope.draw(some_places(places))
                anything = ("some", frozenset(), frozenset(places), 0, len(places))
                return None if some == anything else some
            return frozenset(scope.draw(st.permutations(places))[: scope.one_of((0, 1, len(places)))])
        case _:
            return None


# ---- Caps and floors ---------------------------------------------------------------------------------------------


def add_fault(scope: Scope, name: str, grades: list[str]) -> None:
    excepted = condition(scope, 1) if scope.chance(40) else None
    lowers = scope.draw(st.integers(1, len(grades) - 1)) if len(grades) > 1 and scope.chance(25) else 0
    grade = "" if lowers else scope.one_of(grades)
    labels = (scope.one_of(LABELS), scope.one_of(SAYS))
    fault = m.Fault(name, condition(scope, 2), grade, excepted, *labels, lowers)
    scope.extend(faults=(fault,))


def add_lift(scope: Scope, name: str, grades: list[str]) -> None:
    excepted = condition(scope, 1) if scope.chance(40) else None
    lift = m.Lift(name, condition(scope, 1), scope.one_of(grades), excepted, scope.one_of(LABELS), scope.one_of(SAYS))
    scope.extend(lifts=(lift,))


# ---- Sections ----------------------------------------------------------------------------------------------------


def add_sections(scope: Scope) -> None:
    names = scope.shuffled(NAMES)[: scope.one_of((1, 2, 3, 1, 2, 3, 0))]
    points, bonuses, penalties = (iter(scope.shuffled(NAMES)) for _ in range(3))
    sections = []
    for name in names:
        criteria: list[m.Points | m.Bonus | m.Penalty] = [drawn_points(scope, next(points), counts=True)]
        for _ in range(scope.draw(st.integers(0, 3))):
            match scope.one_of(("points", "bonus", "penalty")):
                case "points":
                    criteria.append(drawn_points(scope, next(points), counts=False))
                case "bonus":
                    amount = Decimal(scope.one_of(EXTRAS))
                    criteria.append(m.Bonus(next(bonuses), amount, condition(scope, 1), scope.one_of(LABELS)))
                case _:
                    amount = Decimal(scope.one_of(EXTRAS))
                    criteria.append(m.Penalty(next(penalties), amount, condition(scope, 1), scope.one_of(LABELS)))
        section = m.Section(name, Decimal(scope.one_of(WORTHS)), tuple(criteria), scope.one_of(LABELS))
        sections.append(section)
        assert worth_times_points(section) <= 100 * MILLION
    scope.extend(sections=tuple(sections))


def worth_times_points(section: m.Section) -> Fraction:
    """Section 4, last paragraph: at most 100,000,000."""
    weights = {each.name: exactly(1 if each.weight is None else each.weight) for each in weighed(section)}
    return exactly(section.worth) * sum(weights[each.name] * most(each) for each in weighed(section)) / 1000


def drawn_points(scope: Scope, name: str, *, counts: bool) -> m.Points:
    """One criterion; with `counts` its weight and its largest `gives` are above 0."""
    weight = scope.one_of(WEIGHTS)
    if counts and weight == "0":
        weight = None
    by, gives = drawn_reading(scope, counts=counts)
    return m.Points(name, by, gives, None if weight is None else Decimal(weight), scope.one_of(LABELS))


def drawn_reading(scope: Scope, *, counts: bool) -> tuple[e.Expression, m.Curve | m.Table]:
    if scope.names(StepsType) and scope.chance(35):
        its_type = scope.types[scope.one_of(scope.names(StepsType))]
        assert isinstance(its_type, StepsType)
        return steps_value(scope, its_type, 1), drawn_table(scope, its_type.order, counts=counts)
    if scope.chance(20):
        names: list[e.Expression] = [e.Name(each) for each in scope.names(TruthType)]
        by = scope.one_of(names) if names and scope.chance(70) else condition(scope, 1)
        return by, drawn_table(scope, ("yes", "no"), counts=counts)
    dimension = scope.one_of(scope.dimensions())
    for _ in range(4):
        by = number(scope, dimension, scope.one_of((0, 0, 1, 2)))
        low, high = scope.ends(by)
        if low < high:
            break
    return by, drawn_curve(scope, by, dimension, counts=counts)


def drawn_table(scope: Scope, steps: tuple[str, ...], *, counts: bool) -> m.Table:
    listed = list(scope.draw(st.permutations(steps)))
    left_over = scope.draw(st.integers(1, len(listed))) if scope.chance(25) else 0
    written = listed[: len(listed) - left_over]
    amounts = drawn_amounts(scope, len(written) + bool(left_over), counts=counts)
    rest = amounts[-1] if left_over else None
    return m.Table(tuple(zip(written, amounts, strict=False)), rest)


def drawn_curve(scope: Scope, by: e.Expression, dimension: str, *, counts: bool) -> m.Curve:
    low, high = scope.ends(by)
    if low == high:
        low, high = low - MILLION, high + MILLION
    margin = (high - low) // (4 * MILLION) * MILLION + 2 * MILLION
    first, last = max(low - margin, -HIGHEST), min(high + margin, HIGHEST)
    whole = scope.is_whole(by)
    count = scope.one_of((2, 3, 4))
    width = (last - first) // count
    stretches = [(first + place * width - 1, first + (place + 1) * width) for place in range(count)]
    drawn = [scope.inside(start, end, whole=whole) for start, end in stretches]
    found = {at for at in drawn if at is not None}  # None: too narrow a stretch to hold a whole number
    found |= {first, last} if len(found) < 2 else set()
    if not whole and scope.chance(40):
        found.add(max(low, first))
    amounts = drawn_amounts(scope, len(found), counts=counts)
    knots = [(*scope.in_some_unit(at, dimension), gives) for at, gives in zip(sorted(found), amounts, strict=True)]
    return m.Curve(tuple(m.Knot(at, unit, gives) for at, unit, gives in knots))


def drawn_amounts(scope: Scope, count: int, *, counts: bool) -> list[Decimal]:
    amounts = [Decimal(scope.one_of(GIVES)) for _ in range(count)]
    if counts and max(amounts) == 0:
        amounts[scope.draw(st.integers(0, count - 1))] = Decimal(10)
    return amounts
