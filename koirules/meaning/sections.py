"""What sections add up to: the points of criteria with their weights, bonuses and penalties, once over any algebra."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import gcd
from typing import TypeVar

from koirules.meaning.algebra import Algebra, Ends

V = TypeVar("V")


def section(
    m: Algebra[V],
    points: Sequence[tuple[int, Ends[V]]],
    extras: Sequence[tuple[int, Ends[V]]],
    worth: int,
    divisor: int,
) -> Ends[V]:
    """The least and the most hundredths of a section.

    points: weights (hundredths) with what each criterion gives (thousandths); divisor: the sum of weight x largest points.
    extras: signed amounts (hundredths) with where each applies. worth: of the section, in hundredths.
    """
    least = _hundredths(m, points, extras, worth, divisor, lambda ends: ends.first, lambda ends: ends.last)
    if all(ends.sure for _, ends in (*points, *extras)):
        return Ends(least, least)
    return Ends(least, _hundredths(m, points, extras, worth, divisor, lambda ends: ends.last, lambda ends: ends.first))


def _hundredths(
    m: Algebra[V],
    points: Sequence[tuple[int, Ends[V]]],
    extras: Sequence[tuple[int, Ends[V]]],
    worth: int,
    divisor: int,
    end: Callable[[Ends[V]], V],
    other_end: Callable[[Ends[V]], V],
) -> V:
    """floor(n / d + 1/2) in whole numbers, held within 0 and the worth. A penalty applies at the other end."""
    shared = gcd(worth, divisor)
    worth_part, over = worth // shared, divisor // shared
    given = m.total(*(m.multiply(m.constant(weight), end(ends)) for weight, ends in points))
    parts = [m.multiply(m.constant(2 * worth_part), given)]
    for amount, ends in extras:
        applies = end(ends) if amount > 0 else other_end(ends)
        parts.append(m.where(applies, m.constant(2 * amount * over), m.constant(0)))
    rounded = m.divide_down(m.total(*parts, m.constant(over)), 2 * over)
    if not extras:
        # Without extras no sum of points leaves what the section is worth.
        return rounded
    return m.least(m.constant(worth), m.most(m.constant(0), rounded))


def score(m: Algebra[V], sections: Sequence[Ends[V]]) -> Ends[V]:
    """The least and the most hundredths of the score."""
    least = m.total(*(ends.first for ends in sections))
    return Ends(least, least if all(ends.sure for ends in sections) else m.total(*(ends.last for ends in sections)))
