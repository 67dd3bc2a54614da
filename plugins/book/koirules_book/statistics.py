"""Figures of outcomes with their intervals: shares, ranks, areas under the curve, and many questions asked at once.

Wilson, E. B. (1927), "Probable inference, the law of succession, and statistical inference", JASA 22, 209-212: the interval
of a share. Holm, S. (1979), "A simple sequentially rejective multiple test procedure", Scand. J. Statist. 6, 65-70.
Mann and Whitney (1947): the area under the curve is the share of pairs that stand in the right order, ties counted half.
Efron and Tibshirani (1993), "An Introduction to the Bootstrap": percentile intervals.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import sqrt

import numpy as np
from attrs import frozen
from scipy import stats

Array = np.ndarray

Z95 = 1.959963984540054
"""The 97.5 % point of the normal distribution."""


@frozen
class Share:
    """A share with its 95 % interval (Wilson); part of whole."""

    part: int
    whole: int
    low: float
    high: float

    @property
    def value(self) -> float:
        """The share, from 0 to 1."""
        return self.part / self.whole if self.whole else float("nan")


def share(part: int, whole: int) -> Share:
    """The share of `part` in `whole`, with its Wilson interval; from 0 to 1 where there is nothing."""
    if whole == 0:
        return Share(0, 0, 0.0, 1.0)
    p, z2 = part / whole, Z95**2
    middle = (p + z2 / (2 * whole)) / (1 + z2 / whole)
    half = Z95 * sqrt(p * (1 - p) / whole + z2 / (4 * whole**2)) / (1 + z2 / whole)
    return Share(part, whole, max(0.0, middle - half), min(1.0, middle + half))


@frozen
class Estimate:
    """A figure with its 95 % bootstrap interval; low and high are NaN where too few fish give one."""

    value: float
    low: float
    high: float


def bootstrapped(figure: Callable[[Array], float], count: int, rounds: int, rng: np.random.Generator) -> Estimate:
    """A figure of fish, by their places, with the percentile interval over samples drawn with replacement."""
    value = figure(np.arange(count))
    drawn = np.array([figure(rng.integers(0, count, count)) for _ in range(rounds)])
    drawn = drawn[np.isfinite(drawn)]
    if len(drawn) < rounds / 2 or not np.isfinite(value):
        return Estimate(value, float("nan"), float("nan"))
    low, high = np.quantile(drawn, [0.025, 0.975])
    return Estimate(float(value), float(low), float(high))


def rank_correlation(x: Array, y: Array) -> float:
    """Spearman's rank correlation, ties at their mean rank; NaN where one side never varies."""
    if len(x) < 3 or np.ptp(x) == 0 or np.ptp(y) == 0:
        return float("nan")
    a, b = stats.rankdata(x), stats.rankdata(y)
    return float(np.corrcoef(a, b)[0, 1])


def area_under_curve(score: Array, happened: Array) -> float:
    """The chance that a fish to which it happened has the higher score than one to which it did not; ties count half."""
    yes = int(happened.sum())
    no = len(happened) - yes
    if yes == 0 or no == 0:
        return float("nan")
    ranks = stats.rankdata(score)
    return float((ranks[happened.astype(bool)].sum() - yes * (yes + 1) / 2) / (yes * no))


def holm(chances: Sequence[float]) -> list[float]:
    """The p-values of several questions, each made larger for all that were asked at once."""
    order = sorted(range(len(chances)), key=lambda i: chances[i])
    adjusted = [1.0] * len(chances)
    most = 0.0
    for rank, i in enumerate(order):
        most = max(most, min(1.0, (len(chances) - rank) * chances[i]))
        adjusted[i] = most
    return adjusted


def log_likelihood_logistic(design: Array, happened: Array) -> tuple[float, Array]:
    """The largest log likelihood of a logistic regression and its coefficients, by Newton's method with a slight ridge.

    The ridge (a millionth of the number of fish) keeps columns that never vary, or that say the same twice, from breaking it.
    """
    n, k = design.shape
    beta = np.zeros(k)
    ridge = np.eye(k) * n * 1e-6
    for _ in range(60):
        chance = 1 / (1 + np.exp(-np.clip(design @ beta, -35, 35)))
        gradient = design.T @ (happened - chance) - ridge @ beta
        hessian = (design * (chance * (1 - chance))[:, None]).T @ design + ridge
        step = np.linalg.solve(hessian, gradient)
        beta = beta + np.clip(step, -5, 5)
        if np.abs(step).max() < 1e-9:
            break
    eta = np.clip(design @ beta, -35, 35)
    return float(np.sum(happened * eta - np.logaddexp(0, eta))), beta


def p_of_extra_logistic(rest: Array, extra: Array, happened: Array) -> tuple[float, float]:
    """Whether a column tells of what happened beyond the rest: the p-value (likelihood ratio) and its coefficient."""
    without, _ = log_likelihood_logistic(rest, happened)
    with_it, beta = log_likelihood_logistic(np.column_stack([rest, extra]), happened)
    return float(stats.chi2.sf(max(0.0, 2 * (with_it - without)), 1)), float(beta[-1])


def p_of_extra_ranks(rest: Array, extra: Array, outcome: Array) -> tuple[float, float]:
    """The same for an outcome with many values: F test on the normal scores of its ranks, with the coefficient.

    Normal scores (Conover 1999, Practical Nonparametric Statistics, 5.10) keep a few dear fish from deciding everything.
    """
    scores = stats.norm.ppf(stats.rankdata(outcome) / (len(outcome) + 1))
    full = np.column_stack([rest, extra])
    before = _squares_left(rest, scores)
    beta, *_ = np.linalg.lstsq(full, scores, rcond=None)
    after = float(np.sum((scores - full @ beta) ** 2))
    free = len(scores) - np.linalg.matrix_rank(full)
    if free <= 0 or after <= 0:
        return 1.0, float(beta[-1])
    return float(stats.f.sf(max(0.0, before - after) / (after / free), 1, free)), float(beta[-1])


def _squares_left(design: Array, outcome: Array) -> float:
    beta, *_ = np.linalg.lstsq(design, outcome, rcond=None)
    return float(np.sum((outcome - design @ beta) ** 2))
