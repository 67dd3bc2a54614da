"""Between which ends a figure of a batch lies while some of its fish may yet be recorded, or leave it.

Each value of a figure lies between two ends, in whole millionths; some values surely count, others may. A figure rises with
every value, so its lowest end takes each value at its lowest end. Which of the others it then takes in is up to them: of any
number of these the smallest make it lowest.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right, insort
from collections.abc import Callable, Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from functools import cached_property

from attrs import define

from koirules.standard.tree import Figure

Ends = tuple[int, int]
"""The lowest and the highest value, in millionths."""

WHOLE = 100 * 1_000_000
"""100 % in millionths."""

_MOST_TRIED = 200
"""With more values that may count than this, percentiles are given wider ends that need no trying."""


def half_up(exact: Fraction) -> int:
    """A fraction as a whole number, half up."""
    return (2 * exact.numerator + exact.denominator) // (2 * exact.denominator)


def percentile(at: Callable[[int], int], number: int, percent: Decimal) -> Fraction:
    """A percentile by type 7 of Hyndman and Fan (1996). at: the value at a place of the order, from 0; number: of values."""
    place = Fraction(percent) / 100 * (number - 1)
    below = int(place)
    low, high = at(below), at(min(below + 1, number - 1))
    return low + (high - low) * (place - below)


@define(slots=False)
class Members:
    """The values of one group: how many surely count between each pair of ends, and how many may."""

    sure: Mapping[Ends, int]
    more: Mapping[Ends, int]

    @cached_property
    def number(self) -> int:
        """How many surely count."""
        return sum(self.sure.values())

    def ends(self, figure: Figure, own: int | None) -> Ends:
        """The ends of a figure over one fish or more that surely count. own: of a standing, the value of the fish."""
        match figure.kind:
            case "lowest":
                return min([self._lows[0], *self._more_lows[:1]]), self._highs[0]
            case "highest":
                return self._lows[-1], max([self._highs[-1], *self._more_highs[-1:]])
            case "mean":
                return half_up(_lowest_mean(self._lows, self._more_lows)), half_up(
                    -_lowest_mean(_turned(self._highs), _turned(self._more_highs))
                )
            case "median" | "percentile":
                percent = Decimal(50) if figure.percent is None else figure.percent
                low = _lowest_percentile(self._lows, self._more_lows, percent)
                high = -_lowest_percentile(_turned(self._highs), _turned(self._more_highs), 100 - percent)
                return half_up(low), half_up(high)
            case "share":
                # Of a condition, 1 for each that holds.
                out, inside = self._more_lows.count(0), self._more_highs.count(1)
                low = Fraction(WHOLE * sum(self._lows), self.number + out)
                high = Fraction(WHOLE * (sum(self._highs) + inside), self.number + inside)
                return half_up(low), half_up(high)
            case "standing":
                if own is None:
                    raise AssertionError("a standing of a fish without a value")
                low = _lowest_standing(self._highs, self._more_highs, own)
                high = 1 - _lowest_standing(_turned(self._lows), _turned(self._more_lows), -own)
                return half_up(WHOLE * low), half_up(WHOLE * high)
            case kind:
                raise AssertionError(kind)

    @cached_property
    def _lows(self) -> list[int]:
        return _listed(self.sure, 0)

    @cached_property
    def _highs(self) -> list[int]:
        return _listed(self.sure, 1)

    @cached_property
    def _more_lows(self) -> list[int]:
        return _listed(self.more, 0)

    @cached_property
    def _more_highs(self) -> list[int]:
        return _listed(self.more, 1)


def _listed(counts: Mapping[Ends, int], end: int) -> list[int]:
    return sorted(ends[end] for ends, times in counts.items() for _ in range(times))


def _turned(values: Sequence[int]) -> list[int]:
    """The same values with their signs and their order turned, so that the highest end becomes the lowest."""
    return [-value for value in reversed(values)]


def _lowest_mean(sure: Sequence[int], more: Sequence[int]) -> Fraction:
    total, number = sum(sure), len(sure)
    for value in more:
        if value * number >= total:
            break
        total, number = total + value, number + 1
    return Fraction(total, number)


def _lowest_percentile(sure: Sequence[int], more: Sequence[int], percent: Decimal) -> Fraction:
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
