"""How far one word is from another: optimal string alignment, beside a library.

Source: rapidfuzz (`rapidfuzz.distance.OSA`), which counts the same edits.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rapidfuzz.distance import OSA

from koirules.vocabulary.nearness import distance

WORDS = st.text("abc", max_size=7)


@given(WORDS, WORDS)
def test_a_distance_is_that_of_the_library(one, other):
    assert distance(one, other, 9) == OSA.distance(one, other)


@given(WORDS, WORDS, st.integers(0, 3))
def test_a_distance_above_the_limit_is_cut_off(one, other, limit):
    assert min(distance(one, other, limit), limit + 1) == min(OSA.distance(one, other), limit + 1)


@pytest.mark.parametrize(
    ("one", "other", "away"), [("hi", "ih", 1), ("kiwa", "kiwaa", 1), ("ca", "abc", 3), ("", "", 0)]
)
def test_neighbouring_letters_swapped_are_one_edit(one, other, away):
    assert distance(one, other, 9) == away
