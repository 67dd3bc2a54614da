"""Short words for the standards of the hand-computed examples."""

from __future__ import annotations

from decimal import Decimal

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.judge import Verdict

GRADES = ("keep", "hold", "sell", "cull")


def number(text: str, unit: str = "") -> e.Literal:
    return e.Literal(Decimal(text), unit)


def plain(name: str, low: str, high: str, unit: str = "") -> m.Trait:
    return m.Trait(name, m.NumberKind(unit, Decimal(low), Decimal(high)))


def curve(*knots: tuple[str, str], unit: str = "") -> m.Curve:
    return m.Curve(tuple(m.Knot(Decimal(at), unit, Decimal(gives)) for at, gives in knots))


def points(name: str, by: str, gives: m.Curve | m.Table, weight: str | None = None) -> m.Points:
    return m.Points(name, e.Name(by), gives, None if weight is None else Decimal(weight))


def section(worth: str, *criteria: m.Points | m.Bonus | m.Penalty, name: str = "body") -> m.Section:
    return m.Section(name, Decimal(worth), criteria)


def graded(*conditions: e.Expression) -> tuple[m.Grade, ...]:
    """keep if the first, hold if the second ..., the next one otherwise."""
    names = iter(GRADES)
    return (*(m.Grade(next(names), each) for each in conditions), m.Grade(next(names), None))


def on_condition(condition: e.Expression, *traits: m.Trait) -> m.Standard:
    return m.Standard(traits=traits, grades=graded(condition))


def score_at_least(text: str) -> e.Expression:
    return e.Compare("at least", e.Score(), number(text))


def scored(traits: tuple[m.Trait, ...], *criteria: m.Points | m.Bonus | m.Penalty, worth: str = "10") -> m.Standard:
    return m.Standard(traits=traits, sections=(section(worth, *criteria),), grades=graded(score_at_least("5")))


def ends(verdict: Verdict, name: str) -> tuple[int, int]:
    return verdict.points["body", name]
