"""Draws figures of the batch and looks before (batches.md)."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

from tests.judge import drawn_expressions as drawn
from tests.judge import expressions as e
from tests.judge.scope import NumberType, Scope, StepsType

OF_NUMBERS = ("median", "mean", "lowest", "highest", "percentile", "spread")
PERCENTS = ("10", "12.5", "50", "0", "100", "33.3", "87.5", "90")


def figure_number(scope: Scope, dimension: str, depth: int) -> e.Expression | None:
    """A figure of this dimension; None if there is nothing that it could be of."""
    again = [each for its_dimension, each in scope.figures if its_dimension == dimension]
    if again and not scope.about_nobody and scope.chance(20):
        return scope.one_of(again)
    if dimension == "%" and scope.chance(70):
        return standing_or_share(scope, depth)
    if not scope.numbers(dimension) and (dimension or not scope.scored):
        return None
    of = figure_operand(scope, dimension, depth)
    kind = scope.one_of(OF_NUMBERS)
    percent = drawn_percent(scope) if kind == "percentile" else None
    made = with_its_fish(scope, e.Figure(kind, of, percent))
    if not scope.scored and not made.kept_by:
        scope.figures.append((dimension, made))
    return made


def figure_operand(scope: Scope, dimension: str, depth: int) -> e.Expression:
    names = trait_numbers(scope, dimension)
    if names and (depth == 0 or scope.chance(60)):
        return e.Name(scope.one_of(names))
    with scope.about_one():
        of = drawn.number(scope, dimension, max(depth - 1, 0))
    return of if reads_a_fish(scope, of) or not names else e.Name(scope.one_of(names))


def standing_or_share(scope: Scope, depth: int) -> e.Expression:
    if scope.chance(50):
        return with_its_fish(scope, e.Figure("share", some_condition(scope, depth)))
    ordered = [n for n, t in scope.types.items() if isinstance(t, StepsType) and t.ordered]
    if ordered and scope.chance(30):
        return with_its_fish(scope, e.Figure("standing", e.Name(scope.one_of(ordered))))
    if scope.graded and scope.chance(30):
        return with_its_fish(scope, e.Figure("standing", e.GradeNow()))
    if scope.scored and scope.chance(30):
        return with_its_fish(scope, e.Figure("standing", e.Score()))
    dimensions = sorted({t.dimension for t in scope.types.values() if isinstance(t, NumberType)})
    dimensions = [each for each in dimensions if trait_numbers(scope, each)]
    if not dimensions:
        return with_its_fish(scope, e.Figure("share", some_condition(scope, depth)))
    return with_its_fish(scope, e.Figure("standing", figure_operand(scope, scope.one_of(dimensions), depth)))


def some_condition(scope: Scope, depth: int) -> e.Expression:
    with scope.about_one():
        return drawn.condition(scope, min(depth, 1))


def with_its_fish(scope: Scope, figure: e.Figure) -> e.Figure:
    """Taken among the same, among those kept by a round, or only if enough were recorded."""
    same: tuple[str, ...] = ()
    names = [n for n in scope.types if n not in {each.name for each in scope.standard.settings}]
    if names and not scope.about_nobody and scope.chance(40):
        same = tuple(dict.fromkeys(scope.one_of(names) for _ in range(scope.one_of((1, 1, 2)))))
    kept_by = scope.one_of(scope.rounds) if scope.rounds and scope.chance(25) else ""
    at_least = scope.one_of((2, 1, 3, 5)) if scope.chance(60 if scope.standard.silence else 20) else None
    return e.Figure(figure.kind, figure.of, figure.percent, same, kept_by, at_least)


def drawn_percent(scope: Scope) -> Decimal:
    return Decimal(scope.one_of(PERCENTS))


def trait_numbers(scope: Scope, dimension: str) -> list[str]:
    settings = {each.name for each in scope.standard.settings}
    return [each for each in scope.numbers(dimension) if each not in settings]


def reads_a_fish(scope: Scope, of: object) -> bool:
    if isinstance(of, e.Score | e.SectionPoints | e.FaultBit | e.GradeNow):
        return True
    if isinstance(of, e.Name):
        return of.name not in {each.name for each in scope.standard.settings}
    if isinstance(of, tuple):
        return any(reads_a_fish(scope, each) for each in of)
    return any(reads_a_fish(scope, getattr(of, part)) for part in getattr(of, "__match_args__", ()))


# ---- The look before ---------------------------------------------------------------------------------------------


def earlier_number(scope: Scope, dimension: str, depth: int) -> e.Expression | None:
    names = trait_numbers(scope, dimension)
    if not names:
        return None
    if depth == 0 or scope.chance(60):
        with scope.before():
            names = trait_numbers(scope, dimension)
        return e.Earlier(e.Name(scope.one_of(names))) if names else None
    with scope.before():
        of = drawn.number(scope, dimension, depth - 1)
        return e.Earlier(of) if reads_a_fish(scope, of) else None


def earlier_named(scope: Scope, names: list[str]) -> e.Expression | None:
    """One of these traits in the look before."""
    traits = [each for each in names if any(each == trait.name for trait in scope.standard.traits)]
    return e.Earlier(e.Name(scope.one_of(traits))) if traits and not scope.alone else None


def earlier_condition(scope: Scope, depth: int) -> e.Expression:
    with scope.before():
        return e.Earlier(drawn.condition(scope, max(depth - 1, 0)))


# ---- Conditions --------------------------------------------------------------------------------------------------


def against_the_others(scope: Scope, depth: int) -> e.Expression | None:
    """A number beside a figure of the same number, or what it was; where this fish stands."""
    dimensions = [each for each in scope.dimensions() if trait_numbers(scope, each)]
    if not dimensions or scope.chance(25):
        standing = standing_or_share(scope, depth)
        found = drawn.literal_inside(scope, standing, "%")
        return None if found is None else e.Compare(scope.one_of(e.ORDERS), standing, found)
    left = e.Name(scope.one_of(trait_numbers(scope, scope.one_of(dimensions))))
    kind = scope.one_of((*OF_NUMBERS, "earlier"))
    if kind == "earlier":
        right = earlier_named(scope, [left.name])
    else:
        figure = e.Figure(kind, left, drawn_percent(scope) if kind == "percentile" else None)
        right = with_its_fish(scope, figure)
    return None if right is None else e.Compare(scope.one_of((*e.ORDERS, "is")), left, right)


def grade_condition(scope: Scope, _depth: int) -> e.Expression:
    names = tuple(reversed([each.name for each in scope.standard.grades]))
    if scope.chance(25):
        return drawn.is_one_of(scope, e.GradeNow(), [e.Step(each) for each in names])
    return e.Compare(scope.one_of((*e.ORDERS, *e.SAMENESS)), e.GradeNow(), e.Step(scope.one_of(names)))


def what_may_be_recorded(scope: Scope) -> list[Callable[[], e.Earlier | e.Figure | None]]:
    """Ways to ask whether a figure or the look before is recorded."""

    def of_figure() -> e.Figure | None:
        found = figure_number(scope, scope.one_of(scope.dimensions()), 0)
        return found if isinstance(found, e.Figure) else None

    def of_earlier() -> e.Earlier:
        return e.Earlier(e.Name(scope.one_of(scope.standard.traits).name))

    return [of_figure, of_earlier]
