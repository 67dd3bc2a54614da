"""The short forms for kinds: what an author of a vocabulary mistypes is told in words."""

import pytest

from koirules.vocabulary.shorthand import number
from koirules.vocabulary.units import UNITS


def test_the_unit_of_a_number_is_told_by_what_is_known():
    with pytest.raises(ValueError, match='"inches" is not the symbol of a unit: write "inch"'):
        number("0", "90", "inches")
    with pytest.raises(
        ValueError, match=r'"furlong" is not the symbol of a unit: the units are mm, cm, m, .*%'
    ) as told:
        number("0", "90", "furlong")
    assert all(symbol in str(told.value) for symbol in UNITS)
