"""Each figure of a batch once: its name, what it is a figure of, and how it is read off what was counted.

Values are whole millionths; of a condition 1 where it holds, else 0. A figure is a fraction of whole numbers, rounded half up
to a whole millionth: percentiles by type 7 (Hyndman and Fan, Sample quantiles in statistical packages, 1996), standings as
the share below plus half the share equal (the mean rank of scipy's percentileofscore), the spread as the standard deviation
of the whole population, whose root is drawn of the exact fraction.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right, insort
from collections.abc import Callable, Mapping, Sequence
from decimal import Decimal
from enum import Enum
from fractions import Fraction
from math import isqrt
from typing import Protocol

from attrs import field

from koirules.values import frozen

WHOLE = 100 * 1_000_000
"""100 % in millionths."""

Percent = Decimal | None
Range = tuple[int, int]
"""The lowest and the highest value, in millionths."""

_MOST_TRIED = 200
"""With more values that may count than this, percentiles are given wider ends that need no trying."""


class Counted(Protocol):
    """What was counted of one group: at least one value."""

    @property
    def number(self) -> int:
        """How many values there are."""

    def at(self, place: int) -> int:
        """The value at a place of their order, from 0."""

    @property
    def total(self) -> int:
        """Their sum."""

    @property
    def squares(self) -> int:
        """The sum of their squares."""

    def below(self, value: int) -> int:
        """How many are below a value."""

    def upto(self, value: int) -> int:
        """How many are no greater than a value."""


@frozen
class Bounds:
    """Between which ends each value of a group lies, as sorted lists of low and of high ends.

    lows, highs: of values that surely count; more_lows, more_highs: of those that may yet count. fixed: the values that
    surely count and are one number.
    """

    lows: Sequence[int]
    highs: Sequence[int]
    more_lows: Sequence[int]
    more_highs: Sequence[int]
    fixed: Sequence[int]

    @property
    def turned(self) -> Bounds:
        """The same values with their signs and their order turned, so that the highest end becomes the lowest."""
        return Bounds(*map(_turned, (self.highs, self.lows, self.more_highs, self.more_lows, self.fixed)))


class Over(Enum):
    """What a figure is of."""

    NUMBERS = "a number or a count"
    ORDERED = "a number, a count or a scale"
    CONDITIONS = "a condition"


class Gives(Enum):
    """What a figure gives: a share in %, a value as one fish has it, a number of the same dimension, or a difference of two."""

    SHARE = "share"
    ONE_VALUE = "one value"
    NUMBER = "number"
    DIFFERENCE = "difference"


@frozen
class Aggregate:
    """A figure of the batch.

    percent: whether a percentage stands behind its name. own: whether it is read off by the value of the fish itself.
    value: its millionths, of what was counted, the percentage and the value of the fish. ends: the lowest and the highest
    millionths that it can come to once more is recorded.
    """

    name: str
    over: Over
    gives: Gives
    percent: bool
    own: bool
    about: str
    value: Callable[[Counted, Percent, int | None], int] = field(repr=False, eq=False)
    ends: Callable[[Bounds, Percent, int | None], Range] = field(repr=False, eq=False)

    def __str__(self) -> str:
        return self.name

    def __reduce__(self) -> tuple[Callable[[str], Aggregate], tuple[str]]:
        return _named, (self.name,)


def _named(name: str) -> Aggregate:
    return AGGREGATES[name]


def half_up(exact: Fraction) -> int:
    """A fraction as a whole number, half up."""
    return (2 * exact.numerator + exact.denominator) // (2 * exact.denominator)


def root_half_up(exact: Fraction) -> int:
    """The square root of a fraction as a whole number, half up.

    floor(sqrt(x) + 1/2) = floor((floor(2 sqrt(x)) + 1) / 2), and floor(2 sqrt(x)) is the whole root of floor(4 x).
    """
    return (isqrt(4 * exact.numerator // exact.denominator) + 1) // 2


def percentile(at: Callable[[int], int], number: int, percent: Decimal) -> Fraction:
    """A percentile by type 7. at: the value at a place of the order, from 0; number: of values."""
    place = Fraction(percent) / 100 * (number - 1)
    below = int(place)
    low, high = at(below), at(min(below + 1, number - 1))
    return low + (high - low) * (place - below)


def mean(counted: Counted) -> Fraction:
    """The arithmetic mean."""
    return Fraction(counted.total, counted.number)


def standing(counted: Counted, own: int) -> Fraction:
    """The share below a value and half the share equal to it, in millionths of a percent."""
    return Fraction(WHOLE * (counted.below(own) + counted.upto(own)), 2 * counted.number)


def variance(number: int, total: int, squares: int) -> Fraction:
    """The variance of a whole population."""
    return Fraction(number * squares - total * total, number * number)


def _given(percent: Percent) -> Decimal:
    return Decimal(50) if percent is None else percent


def _percentile(counted: Counted, percent: Percent, _: int | None) -> int:
    return half_up(percentile(counted.at, counted.number, _given(percent)))


def _standing(counted: Counted, _: Percent, own: int | None) -> int:
    if own is None:
        raise AssertionError("a standing of a fish without a value")
    return half_up(standing(counted, own))


def _lowest_ends(of: Bounds, _: Percent, __: int | None) -> Range:
    return min([of.lows[0], *of.more_lows[:1]]), of.highs[0]


def _highest_ends(of: Bounds, _: Percent, __: int | None) -> Range:
    return of.lows[-1], max([of.highs[-1], *of.more_highs[-1:]])


def _mean_ends(of: Bounds, _: Percent, __: int | None) -> Range:
    return half_up(_lowest_mean(of)), half_up(-_lowest_mean(of.turned))


def _percentile_ends(of: Bounds, percent: Percent, _: int | None) -> Range:
    given = _given(percent)
    return half_up(_lowest_percentile(of, given)), half_up(-_lowest_percentile(of.turned, 100 - given))


def _share_ends(of: Bounds, _: Percent, __: int | None) -> Range:
    out, inside, number = of.more_lows.count(0), of.more_highs.count(1), len(of.lows)
    low = Fraction(WHOLE * sum(of.lows), number + out)
    return half_up(low), half_up(Fraction(WHOLE * (sum(of.highs) + inside), number + inside))


def _standing_ends(of: Bounds, _: Percent, own: int | None) -> Range:
    if own is None:
        raise AssertionError("a standing of a fish without a value")
    low = _lowest_standing(of.highs, of.more_highs, own)
    turned = of.turned
    high = 1 - _lowest_standing(turned.highs, turned.more_highs, -own)
    return half_up(WHOLE * low), half_up(WHOLE * high)


def _spread_ends(of: Bounds, _: Percent, __: int | None) -> Range:
    """Ends that hold whatever is recorded; exact where everything is.

    The squares of all values round their mean are no less than those of the fixed values round their own. A spread is no more
    than half the distance between the lowest and the highest value (Popoviciu, Sur les équations algébriques ayant toutes
    leurs racines réelles, 1935, from memory).
    """
    fixed, most = len(of.fixed), len(of.lows) + len(of.more_lows)
    around = variance(fixed, sum(of.fixed), sum(value * value for value in of.fixed)) if fixed else Fraction(0)
    low = root_half_up(around * fixed / most)
    if fixed == most:
        return low, low
    reach = max([*of.highs[-1:], *of.more_highs[-1:]]) - min([*of.lows[:1], *of.more_lows[:1]])
    return low, max(low, half_up(Fraction(reach, 2)))


def _turned(values: Sequence[int]) -> list[int]:
    return [-value for value in reversed(values)]


def _lowest_mean(of: Bounds) -> Fraction:
    total, number = sum(of.lows), len(of.lows)
    for value in of.more_lows:
        if value * number >= total:
            break
        total, number = total + value, number + 1
    return Fraction(total, number)


def _lowest_percentile(of: Bounds, percent: Decimal) -> Fraction:
    sure, more = of.lows, of.more_lows
    if len(more) > _MOST_TRIED:
        # With all the others in, the value that stands where a lower place of those that are sure stood.
        place = int(Fraction(percent) / 100 * (len(sure) - 1))
        return Fraction(sorted([*sure, *more])[place])
    values = list(sure)
    found = [percentile(values.__getitem__, len(values), percent)]
    for value in more:
        insort(values, value)
        found.append(percentile(values.__getitem__, len(values), percent))
    return min(found)


def _lowest_standing(sure: Sequence[int], more: Sequence[int], own: int) -> Fraction:
    """The lowest share below a value, with half the share equal to it, among values of which it is one."""
    below, upto = bisect_left(sure, own), bisect_right(sure, own)
    twice, number = below + upto, len(sure)
    equal = bisect_right(more, own) - bisect_left(more, own)
    number += len(more) - bisect_right(more, own)  # those above only make the whole larger
    if twice > number:  # those equal draw it towards a half
        twice, number = twice + equal, number + equal
    return Fraction(twice, 2 * number)


_ROWS = (
    Aggregate(
        "median",
        Over.NUMBERS,
        Gives.NUMBER,
        percent=False,
        own=False,
        about="The value in the middle of the batch.",
        value=_percentile,
        ends=_percentile_ends,
    ),
    Aggregate(
        "mean",
        Over.NUMBERS,
        Gives.NUMBER,
        percent=False,
        own=False,
        about="The arithmetic mean over the batch.",
        value=lambda counted, *_: half_up(mean(counted)),
        ends=_mean_ends,
    ),
    Aggregate(
        "lowest",
        Over.NUMBERS,
        Gives.ONE_VALUE,
        percent=False,
        own=False,
        about="The lowest value of the batch.",
        value=lambda counted, *_: counted.at(0),
        ends=_lowest_ends,
    ),
    Aggregate(
        "highest",
        Over.NUMBERS,
        Gives.ONE_VALUE,
        percent=False,
        own=False,
        about="The highest value of the batch.",
        value=lambda counted, *_: counted.at(counted.number - 1),
        ends=_highest_ends,
    ),
    Aggregate(
        "percentile",
        Over.NUMBERS,
        Gives.NUMBER,
        percent=True,
        own=False,
        about="The value below which so many of 100 lie.",
        value=_percentile,
        ends=_percentile_ends,
    ),
    Aggregate(
        "spread",
        Over.NUMBERS,
        Gives.DIFFERENCE,
        percent=False,
        own=False,
        about="The standard deviation over the batch: how far the values lie from their mean.",
        value=lambda counted, *_: root_half_up(variance(counted.number, counted.total, counted.squares)),
        ends=_spread_ends,
    ),
    Aggregate(
        "standing",
        Over.ORDERED,
        Gives.SHARE,
        percent=False,
        own=True,
        about="The share of the batch below this one, and half of those equal to it.",
        value=_standing,
        ends=_standing_ends,
    ),
    Aggregate(
        "share",
        Over.CONDITIONS,
        Gives.SHARE,
        percent=False,
        own=False,
        about="The share of the batch of which a condition holds.",
        value=lambda counted, *_: half_up(Fraction(WHOLE * counted.total, counted.number)),
        ends=_share_ends,
    ),
)

FIGURES = " | ".join(f'"{one.name}" DIGITS' if one.percent else f'"{one.name}"' for one in _ROWS)
"""Their alternatives in the grammar."""

AGGREGATES: Mapping[str, Aggregate] = {one.name: one for one in _ROWS}
"""Every figure by its name."""
