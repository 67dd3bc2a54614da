"""The model of growth against tables worked out by hand, and its fit against certified and reference results."""

from datetime import date
from decimal import Decimal

import numpy as np
import pytest
from scipy import stats
from scipy.optimize import curve_fit

from koirules.measures.growth import Grower, GrowthModel, across, girth_gain
from koirules.measures.growth_fit import Look, fit_growth, line_through_origin, student_t_95
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import AS_GIRTH, AS_LENGTH, AS_WEIGHT, GIRTH_OVER_LENGTH, WEIGHT_OVER_LENGTH_CUBED
from koirules.vocabulary.units import UNITS

ANYTHING = Number(None, Decimal(0), Decimal(1_000_000))
WEIGHT = Number(UNITS["g"], Decimal(0), Decimal(100_000))

# W = a L^b: 406 fish of one reservoir (Yilmaz, Cerim, Some population parameters of Cyprinus carpio from Yesilirmak, Acta Nat.
# Sci., abstract), 190 of one lake (Tanir 2020, Erzincan Univ. J. Sci. 13(2):609-619, abstract), and the prior of a fish data
# base (from memory); a, b, and the weight in g at 20, 30, 45 and 60 cm, worked out apart (with a and b before they were
# rounded: to 0.2 %).
WEIGHTS = [
    (0.0163, 2.935, (107, 353, 1160, 2698)),
    (0.0528, 2.7202, (183, 550, 1659, 3627)),
    (0.0148, 3.02, (126, 427, 1454, 3467)),
]

# What b means for girth, worked out from W as L G^2 (Froese 2006, J. Appl. Ichthyol. 22:241-253, for W = a L^b): the exponent
# of G, then what G, G/L and K are multiplied by when L doubles, and G/L from 20 to 60 cm
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
        grown = Grower.of(WEIGHT, AS_WEIGHT, length, GrowthModel(b)).grown(*at_20, 20.0, 20.0)
        assert grown.low == grown.high == pytest.approx(expected, rel=2e-3, abs=0.5)


@pytest.mark.parametrize(("b", "exponent", "girth", "ratio", "condition", "far"), GIRTHS)
def test_girth_and_condition_grow_as_the_table_says(b, exponent, girth, ratio, condition, far):
    model = GrowthModel(b)
    assert AS_GIRTH.power(b) == pytest.approx(exponent, abs=5e-5)

    def doubled(allometry):
        low, high = Grower.of(ANYTHING, allometry, 40.0, model).grown(1.0, 1.0, 20.0, 20.0)
        assert low == high
        return low

    assert doubled(AS_GIRTH) == pytest.approx(girth, abs=5e-4)
    assert doubled(GIRTH_OVER_LENGTH) == pytest.approx(ratio, abs=6e-4)
    assert doubled(WEIGHT_OVER_LENGTH_CUBED) == pytest.approx(condition, abs=5e-4)
    assert girth_gain(model, 20.0, 60.0) == pytest.approx(far, abs=5e-4)


def test_a_fish_that_is_that_long_already_stays_as_it_is():
    model = GrowthModel(3.5, 1.0)
    assert girth_gain(model, 70.0, 65.0) == across(model, 70.0, 65.0) == 1.0
    assert Grower.of(ANYTHING, GIRTH_OVER_LENGTH, 65.0, model).grown(0.3, 0.3, 70.0, 70.0) == sure(0.3)
    length = Grower.of(ANYTHING, AS_LENGTH, 65.0, model, is_length=True)
    assert length.grown(60.0, 70.0, 60.0, 70.0) == Span(65.0, 70.0)


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


def drawn_looks(b, s, fish=60, scatter=0.0):
    """Fish that grow by the model, each stout or slim in its own way, measured with a scatter (a share of each measure)."""
    drawn = np.random.default_rng(20261125)

    def seen(value):
        return float(value * np.exp(scatter * drawn.standard_normal()))

    looks = []
    for number in range(fish):
        stout, area = drawn.uniform(0.9, 1.1), drawn.uniform(2_000, 9_000)
        first = drawn.uniform(12, 20)
        for day, length in ((date(2026, 6, 1), first), (date(2027, 6, 1), first * drawn.uniform(1.6, 3.0))):
            girth = stout * 0.45 * first * (length / first) ** ((b - 1) / 2)
            q = (length / first) ** ((b - 3) / 2)
            weight = stout * 0.015 * first**3 * (length / first) ** b
            looks.append(Look(str(number), day, seen(length), seen(weight), seen(girth), seen(area * q**-s)))
    return looks


def test_the_fit_finds_what_fish_were_grown_by():
    fit = fit_growth(drawn_looks(3.2, 0.7))
    assert fit.pairs == 60
    for found, true in ((fit.by_weight, 3.2), (fit.by_girth, 3.2), (fit.white, 0.7)):
        assert found.value == pytest.approx(true, abs=1e-9)
    scattered = fit_growth(drawn_looks(3.2, 0.7, scatter=0.01))
    for found, true in ((scattered.by_weight, 3.2), (scattered.by_girth, 3.2), (scattered.white, 0.7)):
        assert 0 < found.error < 0.2
        assert abs(found.value - true) < 4 * found.error


def test_the_interval_covers_the_truth_as_often_as_it_says():
    drawn = np.random.default_rng(20261125)
    covered = 0
    for _ in range(1_000):
        x = drawn.uniform(0.3, 1.2, 8)
        low, high = line_through_origin(x.tolist(), (3.1 * x + 0.05 * drawn.standard_normal(8)).tolist()).interval
        covered += low < 3.1 < high
    assert 930 <= covered <= 970


def test_the_fit_by_weight_is_that_of_scipy_through_the_origin():
    looks = drawn_looks(3.1, 1.0, fish=25, scatter=0.02)
    pairs = list(zip(looks[::2], looks[1::2], strict=True))
    x = np.log([after.length / before.length for before, after in pairs])
    y = np.log([after.weight / before.weight for before, after in pairs])
    (slope,), covariance = curve_fit(lambda x, b: b * x, x, y)
    fit = fit_growth(looks).by_weight
    assert fit.value == pytest.approx(slope, rel=1e-6)
    assert fit.error == pytest.approx(float(np.sqrt(covariance[0][0])), rel=1e-5)


def test_what_bears_on_nothing_is_left_out():
    shrunk = [Look("a", date(2026, 1, 1), 20.0, 100.0), Look("a", date(2027, 1, 1), 19.0, 90.0)]
    fit = fit_growth([*drawn_looks(3.0, 1.0, fish=3), *shrunk])
    assert (fit.fish, fit.pairs, fit.not_longer) == (4, 3, 1)
    assert fit.exponent == fit.by_weight
    # At b = 3 girth over length never changes, so that nothing can be said about the new skin.
    assert fit.white is None
    assert fit_growth(shrunk).exponent is None
