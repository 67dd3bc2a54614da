"""Between which ends a figure of a batch lies: every choice of what is not known is counted out over small batches."""

from bisect import bisect_left, bisect_right
from decimal import Decimal
from itertools import chain, combinations, product

import pytest
from attrs import frozen

from koirules.meaning.aggregates import AGGREGATES, Bounds, Over

SPANS = ((0, 0), (1, 1), (3, 3), (0, 2), (1, 3))
TRUTHS = ((0, 0), (1, 1), (0, 1))
PERCENTS = {"percentile": (Decimal(25), Decimal("33.3"), Decimal(100))}


@frozen
class Listed:
    """What was counted, as a sorted list."""

    values: tuple[int, ...]

    number = property(lambda self: len(self.values))
    total = property(lambda self: sum(self.values))
    squares = property(lambda self: sum(value * value for value in self.values))

    def at(self, place):
        return self.values[place]

    def below(self, value):
        return bisect_left(self.values, value)

    def upto(self, value):
        return bisect_right(self.values, value)


def batches(spans):
    """Values that surely count, and values that may."""
    for sure in range(1, 4):
        for more in range(3):
            yield from product(combinations(spans, sure), combinations(spans, more))


def possible(sure, more, what, percent, own):
    """Every value that a figure can come to."""
    some = chain.from_iterable(combinations(more, number) for number in range(len(more) + 1))
    for counted in some:
        for values in product(*(range(low, high + 1) for low, high in (*sure, *counted))):
            yield what.value(Listed(tuple(sorted(values))), percent, own)


def bounds(sure, more):
    lows, highs = ([sorted(span[end] for span in spans) for end in (0, 1)] for spans in (sure, more))
    return Bounds(*lows, *highs, sorted(low for low, high in sure if low == high))


@pytest.mark.parametrize("name", [name for name in AGGREGATES if name not in {"spread", "standing"}])
def test_ends_are_the_lowest_and_the_highest_that_can_be(name):
    what = AGGREGATES[name]
    for sure, more in batches(TRUTHS if what.over is Over.CONDITIONS else SPANS):
        for percent in PERCENTS.get(name, (None,)):
            found = set(possible(sure, more, what, percent, None))
            assert what.ends(bounds(sure, more), percent, None) == (min(found), max(found)), (sure, more, percent)


def test_a_standing_lies_between_the_ends_that_can_be():
    what = AGGREGATES["standing"]
    for others, more in batches(SPANS):
        for own in range(4):
            sure = (*others, (own, own))
            found = set(possible(sure, more, what, None, own))
            assert what.ends(bounds(sure, more), None, own) == (min(found), max(found)), (sure, more, own)


def test_a_spread_lies_between_its_ends_and_at_them_where_all_is_known():
    what = AGGREGATES["spread"]
    for sure, more in batches(tuple((5 * low, 5 * high) for low, high in SPANS)):
        found = set(possible(sure, more, what, None, None))
        low, high = what.ends(bounds(sure, more), None, None)
        assert low <= min(found)
        assert max(found) <= high
        if not more and all(one == other for one, other in sure):
            assert {low, high} == found


def test_percentiles_of_many_that_may_count_hold_all_that_can_be():
    what = AGGREGATES["percentile"]
    more = [(value, value) for value in range(201)]
    low, high = what.ends(bounds([(50, 50), (150, 150)], more), Decimal(50), None)
    lowest, highest = (Listed(tuple(sorted((50, 150, *some)))) for some in (range(101), range(100, 201)))
    assert 0 <= low <= what.value(lowest, Decimal(50), None)
    assert what.value(highest, Decimal(50), None) <= high <= 200


def test_a_figure_is_shown_by_what_it_says_and_not_by_how_it_is_worked_out():
    assert all(" at 0x" not in repr(figure) and "ends=" not in repr(figure) for figure in AGGREGATES.values())


def test_a_share_is_exact_to_a_millionth():
    thirds = Listed((0, 0, 1))
    assert AGGREGATES["share"].value(thirds, Decimal(0), None) == 33_333_333


def test_a_standing_alone_is_read_off_by_the_value_of_a_fish():
    assert [name for name, figure in AGGREGATES.items() if figure.own] == ["standing"]
