"""What a panel could still say is just what comes of some choice of what each judge leaves open: each choice is counted out."""

from fractions import Fraction
from itertools import product
from statistics import mode, multimode

import pytest

from koirules.meaning.panels import (
    HIGHER,
    LOWER,
    PanelWay,
    in_the_middle,
    majority,
    middle,
    most_named,
    points_together,
    steps_in_the_middle,
)

STEPS = 3
SETS = range(1, 1 << STEPS)


def bits_in(bits):
    return [step for step in range(STEPS) if bits >> step & 1]


def panels():
    for judges in (1, 2, 3, 4):
        yield from product(SETS, repeat=judges) if judges < 4 else product((1, 3, 4, 5, 7), repeat=4)


def test_the_most_named_options_are_those_of_some_choice():
    for said in panels():
        found = {option for choice in product(*map(bits_in, said)) for option in multimode(choice)}
        assert bits_in(most_named(said, STEPS)) == sorted(found), said
    assert mode((0, 0, 1)) == 0


@pytest.mark.parametrize("takes", [None, LOWER, HIGHER])
def test_the_steps_in_the_middle_are_those_of_some_choice(takes):
    for said in panels():
        found = set()
        for choice in product(*map(bits_in, said)):
            ordered = sorted(choice)
            low, high = ordered[(len(ordered) - 1) // 2], ordered[len(ordered) // 2]
            found |= {low} if takes == LOWER else {high} if takes == HIGHER else set(range(low, high + 1))
        assert bits_in(steps_in_the_middle(said, STEPS, takes)) == sorted(found), said


def test_a_majority_is_more_than_half_and_a_half_is_open():
    for judges in (1, 2, 3, 4, 5):
        for yes in range(judges + 1):
            said = [(True, True)] * yes + [(False, False)] * (judges - yes)
            assert majority(said) == (2 * yes > judges, 2 * yes >= judges)
            for least in range(1, judges + 1):
                assert majority(said, least) == (yes >= least, yes >= least)
    assert majority([(False, True), (True, True), (False, False)]) == (False, True)
    assert majority([]) == (False, False)


def test_medians_are_exact_and_take_the_side_that_is_asked_for():
    assert [middle([3, 1, 2], takes) for takes in (None, LOWER, HIGHER)] == [2, 2, 2]
    assert [middle([1, 4, 2, 9], takes) for takes in (None, LOWER, HIGHER)] == [3, 2, 4]
    assert middle([1, 2], None) == Fraction(3, 2)
    ends = [(0.1, 0.1), (0.2, 0.6), (0.4, 0.4), (0.9, 0.9)]
    assert in_the_middle(ends, None, halfway=True) == (0.3, 0.5)
    assert in_the_middle(ends, None, halfway=False) == (0.2, 0.6)
    assert (in_the_middle(ends, LOWER, halfway=True), in_the_middle(ends, HIGHER, halfway=True)) == (
        (0.2, 0.4),
        (0.4, 0.6),
    )


@pytest.mark.parametrize(
    ("way", "points", "together"),
    [
        (PanelWay.MEAN, (1, 2), 2),
        (PanelWay.MEAN, (-1, -2), -1),
        (PanelWay.MEAN, (100, 100, 101), 100),
        (PanelWay.TRIMMED, (0, 5, 6, 100), 6),
        (PanelWay.MEDIAN, (1, 2), 2),
        (PanelWay.MEDIAN, (7, 1, 3), 3),
    ],
)
def test_points_are_put_together_and_rounded_half_up(way, points, together):
    assert points_together(way, points, None) == together
