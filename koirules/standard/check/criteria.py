"""Checks what gives points: curves, tables, bonuses and penalties."""

from __future__ import annotations

from itertools import pairwise

from koirules.language import statements as st
from koirules.language.syntax import Quantity, Word
from koirules.meaning import operators as ops
from koirules.meaning.curves import Curve, Shape, Table
from koirules.problems import Edit, Problem, is_refused, naming, parts, rows, values
from koirules.standard.check.declarations import maybe_titled, titled
from koirules.standard.check.expressions import Typer
from koirules.standard.check.guesses import is_unknown_word, step_meant
from koirules.standard.numbers import dimension_of, held, millionths, points_scaled, share_meant, written
from koirules.standard.parts import Extra, Points
from koirules.standard.reading_nodes import YES_NO_STEPS, unit_shown
from koirules.standard.tree import Node, apply
from koirules.standard.types import Numeric, Steps, Truth, type_words
from koirules.standard.wording import number_words
from koirules.vocabulary.units import Dimension


def check_points(statement: st.Points, typer: Typer) -> Points | None:
    """A `points` criterion, None where it has problems."""
    problems = typer.problems
    weight = 100
    if statement.weight is not None:
        given = points_scaled(statement.weight, "A weight", 100, problems)
        weight = -1 if given is None else given
    by = typer.node(statement.by)
    gives = [points_scaled(row.gives, "Points", 1000, problems) for row in statement.rows]
    if by is None:
        return None
    shape: Shape | None
    match by.type:
        case Numeric():
            reads: Node = apply(ops.MILLIONTHS, (by,), by.type, by.place)
            shape = _curve(statement, by, gives, problems)
        case Steps(words):
            reads = by
            shape = _table(statement, by, words, gives, problems)
        case Truth():
            reads = apply(ops.STEPS_OF_TRUTH, (by,), YES_NO_STEPS, by.place)
            shape = _table(statement, by, YES_NO_STEPS.words, gives, problems)
        case _:
            problems.append(parts.not_scorable(statement.by.place, type_words(by.type)))
            return None
    if shape is None or weight < 0:
        return None
    name = statement.name.text
    say = maybe_titled(statement.say)
    return Points(name, titled(statement.title, name), weight, by, reads, shape, say, statement.place)


def _curve(statement: st.Points, by: Node, gives: list[int | None], problems: list[Problem]) -> Curve | None:
    if not isinstance(by.type, Numeric):
        raise AssertionError("a curve over something that is no number")
    before = len(problems)
    knots: list[tuple[int, Quantity]] = []
    for row in statement.rows:
        key = row.key
        if key is None:
            problems.append(parts.anything_else_on_curve(row.place))
        elif isinstance(key, Word):
            problems.append(parts.number_key(key.place, key.text, type_words(by.type), ()))
        else:
            _knot(key, by, knots, problems)
    for (x, last), (y, following) in pairwise(knots):
        if y <= x:
            problems.append(parts.knots_not_rising(following.place, written(last), written(following)))
    if not is_refused(problems[before:]) and len(knots) < 2:
        problems.append(parts.curve_needs_knots(statement.place))
    if is_refused(problems[before:]) or None in gives:
        return None
    return Curve(tuple(x for x, _ in knots), tuple(y for y in gives if y is not None))


def _knot(key: Quantity, by: Node, knots: list[tuple[int, Quantity]], problems: list[Problem]) -> None:
    if not isinstance(by.type, Numeric):
        raise AssertionError("a knot over something that is no number")
    if dimension_of(key) != by.type.dimension:
        unit = unit_shown(by)
        symbol = unit.symbol if unit else by.type.dimension.value if by.type.dimension else "a plain number"
        edit = None
        both = share_meant(key) if by.type.dimension is Dimension.SHARE else None
        if both is not None:
            problems.append(values.share_needs_unit(key.place, "This criterion", *both))
            return
        if key.unit is None:
            edit = Edit(key.place, f"{written(key)} {symbol}")
        elif by.type.dimension is None:
            edit = Edit(key.place, written(Quantity(key.value, None, key.place)))
        problems.append(parts.needs_unit(key.place, "this criterion", symbol, edit))
        return
    value = held(key, problems)
    if value is None:
        return
    low, high = by.range
    if not low <= float(value) <= high:
        unit = unit_shown(by)
        problems.append(
            parts.knot_outside(
                key.place, written(key), number_words(low, by.type, unit), number_words(high, by.type, unit)
            )
        )
    knots.append((millionths(value), key))


def _table(
    statement: st.Points, by: Node, words: tuple[str, ...], gives: list[int | None], problems: list[Problem]
) -> Table | None:
    before = len(problems)
    found: dict[str, int | None] = {}
    rest: list[int | None] = []
    for i, row in enumerate(statement.rows):
        key = row.key
        if key is None:
            if i != len(statement.rows) - 1:
                problems.append(parts.anything_else_not_last(row.place))
            rest.append(gives[i])
        elif isinstance(key, Quantity):
            problems.append(parts.number_key(key.place, written(key), type_words(by.type), words))
        elif key.text not in words and is_unknown_word(key.text):
            problems.append(rows.row_for_unknown(row.place, key.text, alone=False))
        elif key.text not in words:
            guess = step_meant(key.text, words)
            problems.append(naming.unknown_step(key.place, key.text, type_words(by.type), words, guess))
        elif key.text in found:
            problems.append(parts.key_twice(key.place, key.text))
        else:
            found[key.text] = gives[i]
    missing = [word for word in words if word not in found]
    if not is_refused(problems[before:]):
        if rest and not missing:
            problems.append(parts.nothing_else_left(statement.rows[-1].place))
        elif missing and not rest:
            problems.append(parts.keys_missing(statement.place, missing))
    if is_refused(problems[before:]) or None in gives:
        return None
    points = [found.get(word, rest[0] if rest else None) for word in words]
    return Table(tuple(point for point in points if point is not None))


def check_extra(statement: st.Extra, typer: Typer) -> Extra | None:
    """A `bonus` or `penalty`, None where it has problems."""
    amount: int | None = None
    if statement.amount.value < 0:
        place, bare = statement.amount.place, Quantity(-statement.amount.value, None, statement.amount.place)
        typer.problems.append(values.below_zero(place, statement.head, written(bare)))
    else:
        amount = points_scaled(statement.amount, f"A {statement.head}", 100, typer.problems)
    condition = typer.condition(statement.condition)
    if amount is None or condition is None:
        return None
    name = statement.name.text
    return Extra(
        name,
        titled(statement.title, name),
        1 if statement.head == "bonus" else -1,
        amount,
        condition,
        maybe_titled(statement.say),
        statement.place,
    )
