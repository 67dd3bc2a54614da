"""What several judges say, put together: middles, the most named, majorities, and what these could still be.

What a judge leaves open is a pair of ends or a set; what comes out holds exactly what the panel could still say: every value
that comes of some choice of what each judge leaves open, and no other. Nothing is broken in silence: of a tie every side stays
possible. Means and medians are exact fractions until they are rounded.
"""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum
from fractions import Fraction
from math import floor
from typing import TypeVar

_N = TypeVar("_N", float, int, Fraction)

LOWER, HIGHER = "lower", "higher"
"""Which of two in the middle a median takes, where a panel says so."""


class PanelWay(Enum):
    """How a panel puts the records of its judges together; the value is how a rule file writes it."""

    TRAITS = "trait by trait"
    MEAN = "by mean of score"
    TRIMMED = "by mean of score without the highest and the lowest"
    MEDIAN = "by median of score"
    VOTES = "by votes"


def middles(values: Sequence[_N]) -> tuple[_N, _N]:
    """The two values in the middle; of an odd number of values both are the same one."""
    ordered = sorted(values)
    return ordered[(len(ordered) - 1) // 2], ordered[len(ordered) // 2]


def middle(values: Sequence[int], takes: str | None) -> Fraction:
    """The median of whole numbers. takes: which of two in the middle, None for halfway between them."""
    low, high = middles(values)
    return Fraction(low if takes == LOWER else high) if takes else Fraction(low + high, 2)


def in_the_middle(ends: Sequence[tuple[float, float]], takes: str | None, *, halfway: bool) -> tuple[float, float]:
    """Between which ends the median of numbers lies, each known between two ends.

    takes: which of two in the middle. halfway: whether two in the middle give the number halfway between them, exactly in
    decimals; else both, and all between them, stay possible.
    """
    lows, highs = middles([low for low, _ in ends]), middles([high for _, high in ends])
    if takes is not None:
        place = 0 if takes == LOWER else 1
        return lows[place], highs[place]
    return (_halfway(*lows), _halfway(*highs)) if halfway else (lows[0], highs[1])


def _halfway(low: float, high: float) -> float:
    """The double that is nearest to the number halfway between two, each of them the shortest decimal that it is written as."""
    return low if low == high else float((Fraction(repr(low)) + Fraction(repr(high))) / 2)


def steps_in_the_middle(said: Sequence[int], steps: int, takes: str | None) -> int:
    """The steps that may be the median of scales, as bits. said: the bits of what each judge leaves possible."""
    most_below, most_above = len(said) // 2, len(said) // 2
    if len(said) % 2 == 0 and takes is not None:
        most_below, most_above = (most_below - 1, most_above) if takes == LOWER else (most_below, most_above - 1)
    found = 0
    for step in range(steps):
        bit = 1 << step
        below = sum(bits < bit for bits in said)
        above = sum(not bits & (2 * bit - 1) for bits in said)
        named = (takes is None and len(said) % 2 == 0) or any(bits & bit for bits in said)
        if named and below <= most_below and above <= most_above:
            found |= bit
    return found


def most_named(said: Sequence[int], options: int) -> int:
    """The options that may be named most often, as bits; of a tie all. said: the bits of what each judge leaves possible."""
    found = 0
    for option in range(options):
        bit = 1 << option
        others = [bits for bits in said if not bits & bit]
        if _placed(others, options, len(said) - len(others)):
            found |= bit
    return found


def _placed(said: Sequence[int], options: int, room: int) -> bool:
    """Whether each of some judges can name one of what they leave possible, with no option named by more than `room`."""
    if len(said) <= room:
        return True
    holders: list[list[int]] = [[] for _ in range(options)]

    def place(judge: int, tried: set[int]) -> bool:
        for option in range(options):
            if not said[judge] >> option & 1 or option in tried:
                continue
            tried.add(option)
            if len(holders[option]) < room:
                holders[option].append(judge)
                return True
            for at, other in enumerate(holders[option]):
                if place(other, tried):
                    holders[option][at] = judge
                    return True
        return False

    return all(place(judge, set()) for judge in range(len(said)))


def majority(said: Sequence[tuple[bool, bool]], least: int | None = None) -> tuple[bool, bool]:
    """Whether more than half of some judges say yes, surely and possibly; half and half is open.

    said: surely and possibly of each. least: so many are enough instead, and fewer are not.
    """
    surely, possibly = sum(sure for sure, _ in said), sum(may for _, may in said)
    if least is not None:
        return surely >= least, possibly >= least
    return 2 * surely > len(said), 2 * possibly >= len(said) > 0


def points_together(way: PanelWay, points: Sequence[int], takes: str | None) -> int:
    """Whole hundredths or thousandths of points put together, rounded half up. takes: as for `middle`."""
    match way:
        case PanelWay.MEDIAN:
            exact = middle(points, takes)
        case PanelWay.TRIMMED:
            inner = sorted(points)[1:-1]
            exact = Fraction(sum(inner), len(inner))
        case _:
            exact = Fraction(sum(points), len(points))
    return floor(exact + Fraction(1, 2))
