"""Numbers lose digits for people, and never their side of a line.

Rounding half to even of the last digit kept is that of IEEE 754 and of the module `decimal`, which is asked here as well.
"""

from decimal import Context, Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from koirules.vocabulary.kinds import Number
from koirules.vocabulary.readings import Span, show_reading
from koirules.vocabulary.rounding import apart, for_people, rounded, towards
from koirules.vocabulary.units import UNITS

numbers = st.decimals(min_value=0, max_value=10**6, places=6)


@pytest.mark.parametrize(
    ("value", "told"),
    [
        ("64.996734", "65"),
        ("16.368125", "16.4"),
        ("0.2145", "0.214"),
        ("67.54", "67.54"),
        ("1234.567", "1235"),
        ("0.0012344", "0.00123"),
    ],
)
def test_three_digits_are_enough_and_what_a_person_wrote_stays(value, told):
    assert for_people(Decimal(value)) == told


def test_a_share_that_is_not_all_is_not_told_as_all():
    assert for_people(Decimal("99.9967"), share=True) == "99.9"
    assert for_people(Decimal("100.000000"), share=True) == "100"


def test_scores_keep_both_decimals_however_they_were_worked_out():
    assert for_people(Decimal("67.540000")) == "67.54"


@given(numbers)
def test_a_number_below_a_thousand_is_rounded_as_decimal_does_it(value):
    if value < 1000 and rounded(value) != value:
        assert rounded(value) == Context(prec=3).plus(value)


@given(numbers, numbers)
def test_a_number_is_never_told_as_the_line_that_it_does_not_reach(value, line):
    assert value == line or Decimal(apart(value, line)) != line


@given(numbers, st.sampled_from([1, -1]), numbers)
def test_a_value_to_reach_is_rounded_to_one_that_does_it_too(value, ahead, reach):
    last = value + ahead * reach
    told = towards(value, ahead, last)
    assert min(value, last) <= told <= max(value, last)


@pytest.mark.parametrize(
    ("low", "high", "told"),
    [
        (12.3456, 12.3456, "12.3 cm"),
        (12.3456, 14.5678, "12.3 cm to 14.6 cm"),
        (12.3456, 12.3457, "12.3456 cm to 12.3457 cm"),  # which would be one number, and is not sure
    ],
)
def test_both_ends_of_a_range_are_told_rounded_where_that_leaves_them_apart(low, high, told):
    assert show_reading(Number(UNITS["cm"], Decimal(0), Decimal(90)), Span(low, high)) == told
