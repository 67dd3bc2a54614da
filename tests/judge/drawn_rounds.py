"""Draws alerts and rounds (batches.md)."""

from __future__ import annotations

from decimal import Decimal

from hypothesis import strategies as st

from tests.judge import drawn_expressions as drawn
from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.drawn_comparisons import against_the_others, figure_number, grade_condition, standing_or_share
from tests.judge.scope import NumberType, Scope, StepsType

PONDS = ("", "", "pond 2", "the heated house")


def add_alert(scope: Scope, name: str) -> None:
    """Reads figures of the batch, and nothing of one fish."""
    scope.about_nobody = True
    parts = tuple(part for _ in range(scope.one_of((1, 1, 2))) if (part := about_the_batch(scope)) is not None)
    scope.about_nobody = False
    if parts:
        condition = parts[0] if len(parts) == 1 else scope.one_of((e.And, e.Or))(parts)
        scope.extend(alerts=(m.Alert(name, condition),))


def about_the_batch(scope: Scope) -> e.Expression | None:
    dimension = scope.one_of((*scope.dimensions(), "%", "%"))
    figure = standing_or_share(scope, 1) if dimension == "%" else figure_number(scope, dimension, 1)
    if not isinstance(figure, e.Figure) or figure.kind == "standing":
        return None
    if scope.chance(10):
        return e.IsRecorded(figure, negated=scope.chance(30))
    found = drawn.literal_inside(scope, figure, dimension)
    return None if found is None else e.Compare(scope.one_of(e.ORDERS), figure, found)


def add_round(scope: Scope, name: str) -> None:
    pool, pool_of = "", ""
    if scope.chance(40):
        pool = scope.one_of(("all", "kept by", "passed over by")) if scope.rounds else "all"
        pool_of = scope.one_of(scope.rounds) if pool != "all" else ""
    keep = drawn_keep(scope) if scope.chance(60) else None
    possibly = keep is not None and scope.chance(40)
    picks = keep is None or scope.chance(60)
    made = m.Round(
        name,
        pool,
        pool_of,
        keep,
        possibly,
        many=drawn_amount(scope) if picks else None,
        keys=tuple(drawn_key(scope) for _ in range(scope.one_of((1, 2, 3)))) if picks else (),
        quotas=tuple(drawn_quota(scope) for _ in range(scope.one_of((0, 0, 1, 2)))) if picks else (),
        ties=scope.one_of(("", "", "all in", "by first recorded")) if picks else "",
        each=drawn_groups(scope) if picks and scope.chance(35) else (),
        send=scope.one_of(PONDS),
        rescues=scope.one_of((0, 0, 1, 2)),
    )
    scope.extend(rounds=(made,))
    scope.rounds.append(name)


def drawn_keep(scope: Scope) -> e.Expression:
    if scope.chance(50):
        ways = (grade_condition, against_the_others) if scope.comparing else (grade_condition,)
        found = scope.one_of(ways)(scope, 0)
        if found is not None and scope.is_open(found):
            return found
    return drawn.condition(scope, 1)


def drawn_amount(scope: Scope) -> int | str | Decimal | None:
    whole = [
        each.name
        for each in scope.standard.settings
        if not each.unit
        and each.amount == each.amount.to_integral_value()
        and (each.amount if each.low is None else each.low) >= 0
    ]
    shares = [
        each.name
        for each in scope.standard.settings
        if each.unit == "%" and (each.low or each.amount) >= 0 and (each.high or each.amount) <= 100
    ]
    if (whole or shares) and scope.chance(30):
        return scope.one_of([*whole, *shares])
    if scope.chance(25):
        return scope.one_of((Decimal(30), Decimal("33.333333"), Decimal(50), Decimal(10), Decimal(100), Decimal(0)))
    return scope.one_of((2, 1, 3, 4, 0, None, None, 6))


def drawn_key(scope: Scope) -> m.Key:
    if scope.chance(25):
        return m.Key("those with", drawn.condition(scope, 1))
    word = scope.one_of(("highest", "lowest"))
    ordered = [n for n, t in scope.types.items() if isinstance(t, StepsType) and t.ordered]
    if ordered and scope.chance(30):
        return m.Key(word, e.Name(scope.one_of(ordered)))
    if scope.chance(20):
        return m.Key(word, e.GradeNow())
    if scope.scored and scope.chance(30):
        return m.Key(word, e.Score())
    settings = {each.name for each in scope.standard.settings}
    numbers = [n for n, t in scope.types.items() if isinstance(t, NumberType) and n not in settings]
    if numbers and scope.chance(60):
        return m.Key(word, e.Name(scope.one_of(numbers)))
    return m.Key(word, drawn.number(scope, scope.one_of(scope.dimensions()), 1))


def drawn_groups(scope: Scope) -> tuple[str, ...]:
    settings = {each.name for each in scope.standard.settings}
    found = [name for name in scope.types if name not in settings]
    return tuple(dict.fromkeys(scope.one_of(found) for _ in range(scope.one_of((1, 1, 2))))) if found else ()


def drawn_quota(scope: Scope) -> m.Quota:
    amount = scope.draw(st.integers(0, 3))
    settings = {each.name for each in scope.standard.settings}
    names = [name for name in scope.types if name not in settings]
    if names and scope.chance(60):
        same = tuple(dict.fromkeys(scope.one_of(names) for _ in range(scope.one_of((1, 1, 2)))))
        return m.Quota(amount, None, same)
    return m.Quota(amount, drawn.condition(scope, 1))
