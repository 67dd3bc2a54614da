"""How wide a body is all along its length."""

from itertools import pairwise

import pytest

from koirules.vocabulary.maps import Patch, doubled_area
from koirules.vocabulary.outlines import TORPEDO, Outline


def test_an_outline_says_how_wide_a_body_is():
    assert TORPEDO.width(36) == 1
    assert TORPEDO.width(-5) == TORPEDO.width(0)
    assert TORPEDO.width(105) == TORPEDO.width(100)
    assert Outline(((0, 0.5), (100, 1))).width(100) == 1
    assert Outline(((0, 0.5), (100, 1))).width(50) == 0.75
    assert Outline(((0, 0), (100, 0))).width(50) == 0


@pytest.mark.parametrize(
    "knots",
    [
        (),
        ((0, 1),),
        ((100, 1),),
        ((0, 1), (50, 1)),
        ((0, 1), (101, 1)),
        ((1, 1), (100, 1)),
        ((-1, 1), (100, 1)),
        ((0, 1), (60, 1), (40, 1), (100, 1)),
        ((0, 1), (50, 1), (50, 0.5), (100, 1)),
        ((0, 1), (50, -0.1), (100, 1)),
    ],
)
def test_an_outline_goes_from_0_to_100_and_is_never_narrower_than_nothing(knots):
    with pytest.raises(ValueError, match="from 0 to 100"):
        Outline(knots)


def test_a_body_of_good_outline_is_widest_in_one_place_and_tapers_smoothly_from_there():
    knots = TORPEDO.knots
    widest = max(knots, key=lambda knot: knot[1])
    steepness = [(w1 - w0) / (u1 - u0) for (u0, w0), (u1, w1) in pairwise(knots) if u1 <= widest[0]]
    assert widest[1] == 1
    assert all(width < 1 for knot, width in knots if knot != widest[0])
    assert steepness == sorted(steepness, reverse=True)
    assert all(one[1] > other[1] for one, other in pairwise(knots) if one[0] >= widest[0])


@pytest.mark.parametrize("size", [0.5, 1, 20])
def test_the_outline_of_a_patch_turns_one_way_however_small_it_is_and_however_it_was_drawn(size):
    drawn = [(10, 0), (10 + size, 0), (10 + size, 0.5), (10, 0.5)]
    assert Patch(drawn).outline == Patch(drawn[::-1]).outline
    assert doubled_area(Patch(drawn).outline) == size
    assert doubled_area(Patch([(0, -50), (99, -50), (99, 50), (0, 50)], windows=[drawn]).windows[0]) == -size


def test_the_stem_of_a_body_of_good_outline_narrows_to_a_third_of_the_shoulder():
    assert [TORPEDO.width(u) for u in (90, 95, 100)] == [0.38, 0.34, 0.32]
