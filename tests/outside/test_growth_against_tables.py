"""The model of growth against tables worked out by hand, and its fit against certified and reference results."""

from decimal import Decimal

import numpy as np
import pytest
from scipy import stats

from koirules.measures.growth import GrowthModel, across, girth_gain, grown_length, grown_number
from koirules.measures.growth_fit import line_through_origin, student_t_95
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import AS_GIRTH, AS_WEIGHT, GIRTH_OVER_LENGTH, WEIGHT_OVER_LENGTH_CUBED
from koirules.vocabulary.units import UNITS

ANYTHING = Number(None, Decimal(0), Decimal(1_000_000))
WEIGHT = Number(UNITS["g"], Decimal(0), Decimal(100_000))

# W = a L^b: 406 fish of one reservoir and 190 of one lake (published fits), and the prior of a fish data base (from memory);
# a, b, and the weight in g at 20, 30, 45 and 60 cm, worked out apart (with a and b before they were rounded: to 0.2 %).
WEIGHTS = [
    (0.0163, 2.935, (107, 353, 1160, 2698)),
    (0.0528, 2.7202, (183, 550, 1659, 3627)),
    (0.0148, 3.02, (126, 427, 1454, 3467)),
]

# What b means for girth: exponent of G, then what G, G/L and K are multiplied by when L doubles, and G/L from 20 to 60 cm
# (G/L was halved from the rounded G, so that its last place may be one off).
GIRTHS = [
    (2.72, 0.860, 1.815, 0.908, 0.824, 0.857),
    (2.935, 0.9675, 1.955, 0.978, 0.956, 0.965),
    (3.00, 1.000, 2.000, 1.000, 1.000, 1.000),
    (3.03, 1.015, 2.021, 1.011, 1.021, 1.017),
    (3.20, 1.100, 2.144, 1.072, 1.149, 1.116),
    (3.50, 1.250, 2.378, 1.189, 1.414, 1.316),
]


def sure(value):
    return Span(value, value)


@pytest.mark.parametrize(("a", "b", "weights"), WEIGHTS)
def test_weight_grows_along_the_published_relations(a, b, weights):
    at_20 = sure(a * 20**b)
    for length, expected in zip((20.0, 30.0, 45.0, 60.0), weights, strict=True):
        grown = grown_number(WEIGHT, at_20, AS_WEIGHT, sure(20.0), length, GrowthModel(b))
        assert grown.low == grown.high == pytest.approx(expected, rel=2e-3, abs=0.5)


@pytest.mark.parametrize(("b", "exponent", "girth", "ratio", "condition", "far"), GIRTHS)
def test_girth_and_condition_grow_as_the_table_says(b, exponent, girth, ratio, condition, far):
    model = GrowthModel(b)
    assert AS_GIRTH.power(b) == pytest.approx(exponent, abs=5e-5)

    def doubled(allometry):
        low, high = grown_number(ANYTHING, sure(1.0), allometry, sure(20.0), 40.0, model)
        assert low == high
        return low

    assert doubled(AS_GIRTH) == pytest.approx(girth, abs=5e-4)
    assert doubled(GIRTH_OVER_LENGTH) == pytest.approx(ratio, abs=6e-4)
    assert doubled(WEIGHT_OVER_LENGTH_CUBED) == pytest.approx(condition, abs=5e-4)
    assert girth_gain(model, 20.0, 60.0) == pytest.approx(far, abs=5e-4)


def test_a_fish_that_is_that_long_already_stays_as_it_is():
    model = GrowthModel(3.5, 1.0)
    assert girth_gain(model, 70.0, 65.0) == across(model, 70.0, 65.0) == 1.0
    assert grown_number(ANYTHING, sure(0.3), GIRTH_OVER_LENGTH, sure(70.0), 65.0, model) == sure(0.3)
    assert grown_length(ANYTHING, Span(60.0, 70.0), 65.0) == Span(65.0, 70.0)


def test_new_skin_that_stays_white_pulls_the_pattern_together():
    # q from 20 to 60 cm at b = 3.5 is 1.316; across the body what was at v lies at v / 1.316, and at s = 0 it stays.
    assert across(GrowthModel(3.5, 1.0), 20.0, 60.0) == pytest.approx(1 / 1.316, abs=5e-4)
    assert across(GrowthModel(3.5, 0.0), 20.0, 60.0) == 1.0
    assert across(GrowthModel(3.0, 1.0), 20.0, 60.0) == 1.0


# NIST Statistical Reference Datasets, linear regression through the origin, with certified slope and standard error:
# NoInt1 and NoInt2 (from memory; worked out again with numpy below).
NO_INTERCEPT = [
    (range(60, 71), range(130, 141), 2.07438016528926, 0.0165289256198347),
    ((4, 5, 6), (3, 4, 4), 0.727272727272727, 0.0420827318078432),
]


@pytest.mark.parametrize(("x", "y", "slope", "error"), NO_INTERCEPT)
def test_the_fit_gives_the_certified_values(x, y, slope, error):
    fit = line_through_origin(list(x), list(y))
    assert (fit.value, fit.error, fit.pairs) == (
        pytest.approx(slope, rel=1e-12),
        pytest.approx(error, rel=1e-12),
        len(x),
    )
    matrix = np.array(x, float)[:, None]
    found, residual, *_ = np.linalg.lstsq(matrix, np.array(y, float))
    assert found[0] == pytest.approx(slope, rel=1e-12)
    assert np.sqrt(residual[0] / (len(x) - 1) / (matrix**2).sum()) == pytest.approx(error, rel=1e-12)


def test_the_quantiles_of_t_are_those_of_scipy_or_the_next_wider():
    for freedom in (*range(1, 31), 40, 60, 120):
        assert student_t_95(freedom) == pytest.approx(stats.t.ppf(0.975, freedom), abs=5e-4)
    for freedom in (31, 47, 99, 5_000):
        assert stats.t.ppf(0.975, freedom) - 5e-4 < student_t_95(freedom) < 1.03 * stats.t.ppf(0.975, freedom)


def test_too_few_pairs_give_no_fit():
    assert line_through_origin([1.0, 2.0], [1.0, 2.0]) is None
    assert line_through_origin([0.0, 0.0, 0.0], [1.0, 2.0, 3.0]) is None
