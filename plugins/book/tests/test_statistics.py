"""Figures against published examples and reference libraries."""

import numpy as np
import pytest
from koirules_book.foresight import foresight
from koirules_book.ordered import fit_pairs, fit_verdicts, pairs_are_separable, verdicts_are_separable
from koirules_book.statistics import (
    area_under_curve,
    bootstrapped,
    holm,
    log_likelihood_logistic,
    p_of_extra_logistic,
    p_of_extra_ranks,
    rank_correlation,
    share,
)
from scipy import stats
from sklearn.metrics import roc_auc_score
from statsmodels.api import Logit
from statsmodels.miscmodels.ordinal_model import OrderedModel
from statsmodels.stats.multitest import multipletests
from statsmodels.stats.proportion import proportion_confint

import koirules


@pytest.mark.parametrize(("part", "whole"), [(0, 10), (22, 40), (40, 40), (1, 3), (517, 2000)])
def test_the_interval_of_a_share_is_wilsons(part, whole):
    low, high = proportion_confint(part, whole, method="wilson")
    found = share(part, whole)
    assert (found.low, found.high) == pytest.approx((max(0, low), min(1, high)), abs=1e-12)


def test_holm_is_that_of_statsmodels():
    chances = [0.01, 0.04, 0.03, 0.005, 0.9, 0.03]
    assert holm(chances) == pytest.approx(multipletests(chances, method="holm")[1])


def test_rank_correlation_and_area_are_those_of_the_references():
    rng = np.random.default_rng(4)
    x, y = rng.integers(0, 6, 80), rng.integers(0, 5, 80)
    assert rank_correlation(x, y) == pytest.approx(stats.spearmanr(x, y).statistic)
    happened = (y > 2).astype(float)
    assert area_under_curve(x, happened) == pytest.approx(roc_auc_score(happened, x))


def test_published_rank_correlations():
    # From the documentation of scipy.stats.spearmanr, and the encyclopaedia example of Spearman's rank correlation.
    assert rank_correlation(np.array([1, 2, 3, 4, 5]), np.array([5, 6, 7, 8, 7])) == pytest.approx(0.8207826816681233)
    x = np.array([86, 97, 99, 100, 101, 103, 106, 110, 112, 113])
    assert rank_correlation(x, np.array([2, 20, 28, 27, 50, 29, 7, 17, 6, 12])) == pytest.approx(-29 / 165)


def test_a_bootstrap_interval_is_scipys_on_the_same_figure():
    rng = np.random.default_rng(1)
    values = rng.normal(3, 1, 60)
    found = bootstrapped(lambda at: float(values[at].mean()), 60, 4000, np.random.default_rng(2))
    reference = stats.bootstrap((values,), np.mean, n_resamples=4000, method="percentile", rng=3).confidence_interval
    assert (found.low, found.high) == pytest.approx((reference.low, reference.high), abs=0.02)


def test_logistic_regression_and_its_ratio_test_are_those_of_statsmodels():
    rng = np.random.default_rng(5)
    rest = np.column_stack([np.ones(300), rng.normal(size=(300, 2))])
    extra = rng.normal(size=300)
    happened = (rng.random(300) < 1 / (1 + np.exp(-(0.3 + rest[:, 1] - 0.4 * extra)))).astype(float)
    whole = Logit(happened, np.column_stack([rest, extra])).fit(disp=0)
    without = Logit(happened, rest).fit(disp=0)
    value, _ = log_likelihood_logistic(rest, happened)
    assert value == pytest.approx(without.llf, abs=1e-4)
    p, slope = p_of_extra_logistic(rest, extra, happened)
    assert p == pytest.approx(stats.chi2.sf(2 * (whole.llf - without.llf), 1), rel=1e-3)
    assert slope == pytest.approx(whole.params[-1], rel=1e-3)


def test_the_rank_test_keeps_its_level_where_nothing_is():
    rng = np.random.default_rng(6)
    chances = [
        p_of_extra_ranks(
            np.column_stack([np.ones(120), rng.normal(size=120)]), rng.normal(size=120), np.exp(rng.normal(size=120))
        )[0]
        for _ in range(400)
    ]
    assert stats.kstest(chances, "uniform").pvalue > 0.001


def test_ordered_logit_on_the_housing_survey():
    # Madsen (1976), satisfaction with housing in Copenhagen, 1,681 answers: the example of `polr` in the documentation of
    # R's MASS (Venables and Ripley 2002, 7.3). Counts by satisfaction low, medium, high; from memory, checked by the sum.
    counts = """21 21 28 34 22 36 10 11 36 61 23 17 43 35 40 26 18 54 13 9 10 8 8 12 6 7 9 18 6 7 15 13 13 7 5 11
        14 19 37 17 23 40 3 5 23 78 46 43 48 45 86 15 25 62 20 23 20 10 22 24 7 10 21 57 23 13 31 21 13 5 6 13"""
    freq = np.array(counts.split(), dtype=int)
    assert freq.sum() == 1681
    rows, verdict = [], []
    for at, count in enumerate(freq):
        cell, satisfied = divmod(at, 3)
        contact, rest = divmod(cell, 12)
        kind, influence = divmod(rest, 3)
        row = [influence == 1, influence == 2, kind == 1, kind == 2, kind == 3, contact == 1]
        rows += [row] * count
        verdict += [satisfied] * count
    found = fit_verdicts(np.array(rows, dtype=float), np.array(verdict), 3, signed=True)
    published = [0.5663937, 1.2888191, -0.5723501, -0.3661866, -1.0910149, 0.3602841]
    assert found.beta == pytest.approx(published, abs=5e-5)
    assert found.cuts == pytest.approx([-0.4961353, 0.6907083], abs=5e-5)


def test_ordered_logit_is_that_of_statsmodels():
    rng = np.random.default_rng(7)
    design = rng.normal(size=(400, 3))
    verdict = np.searchsorted([-1, 0, 1.5], design @ [1, 0.5, 0.2] + rng.logistic(size=400))
    reference = OrderedModel(verdict, design, distr="logit").fit(method="bfgs", disp=0, gtol=1e-8)
    found = fit_verdicts(design, verdict, 4)
    assert found.beta == pytest.approx(reference.params[:3], abs=1e-4)
    assert found.likelihood == pytest.approx(reference.llf, abs=1e-5)


def test_bradley_terry_on_the_baseball_season():
    # Agresti, Categorical Data Analysis, American League 1987; the example of the documentation of R's BradleyTerry2.
    # Wins in rows over columns: Milwaukee, Detroit, Toronto, New York, Boston, Cleveland, Baltimore; every pair met 13 times.
    wins = np.array(
        [
            [0, 7, 9, 7, 7, 9, 11],
            [6, 0, 7, 5, 11, 9, 9],
            [4, 6, 0, 7, 7, 8, 12],
            [6, 8, 6, 0, 6, 7, 10],
            [6, 2, 6, 7, 0, 7, 12],
            [4, 4, 5, 6, 6, 0, 6],
            [2, 4, 1, 3, 1, 7, 0],
        ]
    )
    assert ((wins + wins.T)[~np.eye(7, dtype=bool)] == 13).all()
    rows = []
    for i in range(7):
        for j in range(7):
            row = np.zeros(7)
            row[i], row[j] = 1, -1
            rows += [row[:6]] * wins[i, j]
    found = fit_pairs(np.array(rows), signed=True)
    assert found.beta == pytest.approx([1.5814, 1.4364, 1.2945, 1.2476, 1.1077, 0.6839], abs=5e-5)


def test_what_can_be_sorted_without_a_mistake_is_separable():
    design = np.array([[0.1, 0.9], [0.2, 0.7], [0.8, 0.2], [0.9, 0.5]])
    assert verdicts_are_separable(design, np.array([0, 0, 1, 1]))
    assert not verdicts_are_separable(design, np.array([1, 0, 1, 0]))
    assert pairs_are_separable(np.array([[0.4, -0.1], [0.3, 0.2]]))
    assert not pairs_are_separable(np.array([[0.4, -0.1], [-0.4, 0.1]]))


def test_foresight_needs_enough_fish():
    standard = koirules.read_standard(
        'standard "s" edition 1 variety kohaku\nsection a worth 10\npoints o by outline: poor gives 0, anything else gives 1\n'
        "grade keep if score at least 5\ngrade sell otherwise"
    )
    results = [standard.grade({"outline": word}, str(at)) for at, word in enumerate(["poor", "good"] * 5)]
    found = foresight(standard, results, {str(at): float(at % 2) for at in range(8)}, "sold", rounds=50)
    assert found.parts == ()
    assert any("too few" in caution for caution in found.cautions)
    assert [(grade.fish, grade.known, grade.happened.part) for grade in found.grades] == [(5, 4, 4), (5, 4, 0)]
    assert found.area.value == 1.0
