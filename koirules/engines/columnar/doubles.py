"""Whole numbers in columns of doubles: quotients and rounding that are exact, each proved when a plan is made.

A quotient n / d of whole numbers is either whole or 1 / d away from what is whole. Worked out in doubles with half of that
added, it is rounded down right as long as the error stays below that half. Each rounding adds at most 2^-53 of the largest
value in play (Higham, Accuracy and Stability of Numerical Algorithms, 2002, section 2.2, from memory).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction
from typing import Any

import polars as pl

EXACT = 2.0**53
"""Below this doubles hold every whole number."""
UNIT = Fraction(1, 2**53)
"""How far a rounded result can be from the exact one, as a part of it."""
_ROUNDINGS = 4


def balanced(parts: Sequence[pl.Expr], join: Callable[[Any, Any], Any]) -> pl.Expr:
    """Parts joined two by two, and these again, until one is left: Polars plans deep expressions in quadratic time."""
    level = list(parts)
    while len(level) > 1:
        pairs = [join(level[i], level[i + 1]) for i in range(0, len(level) - 1, 2)]
        level = pairs + level[len(level) - len(level) % 2 :]
    return level[0]


def divided(column: pl.Expr, by: pl.Expr | float) -> pl.Expr:
    """A quotient, as Python rounds it.

    By a known number Polars multiplies with its reciprocal, which is one bit off in every eighth quotient; a divisor that
    is a column is divided by.
    """
    return column / (by if isinstance(by, pl.Expr) else column * 0.0 + by)


def divided_down(column: pl.Expr, known: int, by: int, most: float) -> pl.Expr | None:
    """floor((n + known) / by) of a column of whole doubles; None where doubles are too short for it.

    most: how far n + known, and each of the two, can be from 0.
    """
    exact = Fraction(2 * known + 1, 2 * by)
    largest = (Fraction(most) + 1) / by + abs(exact) if most < EXACT else Fraction(1)
    if largest * UNIT * _ROUNDINGS >= Fraction(1, 2 * by):
        return None
    return (column * float(Fraction(1, by)) + float(exact)).floor()
