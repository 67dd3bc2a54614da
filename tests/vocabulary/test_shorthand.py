"""The short forms for kinds: what an author of a vocabulary mistypes is told in words."""

from decimal import Decimal

import pytest
from attrs import evolve

from koirules.vocabulary.readings import write_number
from koirules.vocabulary.shorthand import number
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import UNITS


def test_the_unit_of_a_number_is_told_by_what_is_known():
    with pytest.raises(ValueError, match='"inches" is not the symbol of a unit: write "inch"'):
        number("0", "90", "inches")
    with pytest.raises(
        ValueError, match=r'"furlong" is not the symbol of a unit: the units are mm, cm, m, .*%'
    ) as told:
        number("0", "90", "furlong")
    assert all(symbol in str(told.value) for symbol in UNITS)


def test_a_length_in_inches_is_written_to_a_millionth():
    assert write_number(12.5, number("0", "90", "inch")) == "4.92126 inch"


def test_traits_that_differ_in_nothing_but_where_they_come_from_are_equal():
    one = Trait("girth", "girth", number("0", "90", "cm"))
    assert evolve(one, source="from memory") == one
    assert evolve(one, usual={"": (Decimal(3), Decimal(9))}) == one
    assert evolve(one, title="waist") != one
