"""What a reading of places means: the sets that it allows, told apart one by one."""

from itertools import combinations_with_replacement, product

import pytest

from koirules.vocabulary.kinds import Places
from koirules.vocabulary.readings import PlaceSet

EVERY = range(8)


def allowed(reading):
    """The sets of three places that a reading allows, from what it says."""
    return {
        bits
        for bits in EVERY
        if bits & reading.sure == reading.sure
        and bits | reading.possible == reading.possible
        and reading.least <= bits.bit_count() <= reading.most
    }


READINGS = [
    told
    for sure, possible in product(EVERY, EVERY)
    for least, most in combinations_with_replacement(range(4), 2)
    if (told := PlaceSet(sure, possible, least, most).narrowed()) is not None
]


def test_a_reading_names_every_set_that_it_allows_once():
    for reading in READINGS:
        assert sorted(reading.sets) == sorted(allowed(reading)) != []


def test_a_narrowed_reading_allows_the_same_sets_and_none_allows_nothing():
    for sure, possible in product(EVERY, EVERY):
        for least, most in combinations_with_replacement(range(4), 2):
            reading = PlaceSet(sure, possible, least, most)
            narrowed = reading.narrowed()
            assert allowed(reading) == (set() if narrowed is None else allowed(narrowed))


def test_a_reading_holds_another_where_it_allows_each_of_its_sets():
    for one, other in product(READINGS, READINGS):
        assert one.holds(other) == (allowed(other) <= allowed(one)), (one, other)


def test_two_readings_share_the_sets_that_both_allow():
    for one, other in product(READINGS, READINGS):
        met = one.meet(other)
        assert (set() if met is None else allowed(met)) == allowed(one) & allowed(other), (one, other)


def test_either_of_two_readings_allows_the_sets_of_both():
    for one, other in product(READINGS, READINGS):
        assert allowed(one) | allowed(other) <= allowed(one.either(other)), (one, other)


@pytest.mark.parametrize(
    ("reading", "counted"),
    [
        (PlaceSet(0b001, 0b111), False),
        (PlaceSet(0, 0b111, 1, 3), True),
        (PlaceSet(0, 0b111, 0, 2), True),
        (PlaceSet(0b001, 0b111, 2, 3), True),
        (PlaceSet(0b001, 0b111, 1, 2), True),
        (PlaceSet(0b101, 0b101), False),
    ],
)
def test_a_reading_is_counted_where_its_number_says_more_than_its_places(reading, counted):
    assert reading.is_counted is counted


def test_any_set_at_all_is_each_of_the_sets_of_its_places():
    assert allowed(PlaceSet.any_of(Places(("a", "b", "c")))) == set(EVERY)
    assert PlaceSet.any_of(Places(("a", "b"))) == PlaceSet(0, 0b11)


def test_what_lies_within_some_places_holds_nothing_beside_them():
    for reading, bits, sure in product(READINGS, EVERY, EVERY):
        within = reading.within(bits, sure=sure)
        wanted = {one for one in allowed(reading) if one | bits == bits and one & sure == sure}
        assert (set() if within is None else allowed(within)) == wanted
        assert sure or reading.within(bits) == within
