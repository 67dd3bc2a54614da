"""Weights from past picks by maximum likelihood: ordered logistic regression for verdicts, Bradley-Terry for pairs.

McCullagh, P. (1980), "Regression models for ordinal data", JRSS B 42, 109-142: P(y <= k) = logistic(cut_k - eta).
Bradley and Terry (1952), "Rank analysis of incomplete block designs", Biometrika 39, 324-345: P(i before j) =
logistic(eta_i - eta_j).
In both, eta is the score that the standard gives divided by the scale of the noise, so that it is linear in what each
criterion gives. Coefficients of criteria are held at 0 or above. Both likelihoods are concave: the maximum is the only one.
"""

from __future__ import annotations

import numpy as np
from attrs import field, frozen
from scipy.optimize import linprog, minimize

Array = np.ndarray

_FAR = 30.0
_GAP = 1e-4
"""Cuts stand at least this far apart: two equal ones would say that a grade can never be given."""


@frozen
class Prior:
    """Holds coefficients near a direction. near: the coefficients that it holds to. spread: their standard deviations."""

    near: Array = field(eq=False)
    spread: Array = field(eq=False)


@frozen
class Fit:
    """The fitted coefficients and cuts. likelihood: the log likelihood, without the prior."""

    beta: Array = field(eq=False)
    cuts: Array = field(eq=False)
    likelihood: float


def fit_verdicts(
    design: Array,
    verdict: Array,
    levels: int,
    prior: Prior | None = None,
    start: Fit | None = None,
    *,
    signed: bool = False,
) -> Fit:
    """Ordered logistic regression.

    design: a row a fish, a column a criterion. verdict: 0 (worst) to levels - 1. signed: lets coefficients fall below 0, as
    in textbooks. Cuts rise; they are written as the first one and the logarithms of the gaps.
    """
    n, k = design.shape
    cuts = levels - 1
    if start is None:
        shares = np.clip(np.cumsum(np.bincount(verdict, minlength=levels))[:-1] / n, 1e-3, 1 - 1e-3)
        first = np.log(shares / (1 - shares))
        beta = np.full(k, 1e-2)
        at_cuts = first + float((design @ beta).mean())
    else:
        beta, at_cuts = start.beta.copy(), start.cuts.copy()
    gaps = np.maximum(np.diff(at_cuts), _GAP * 10)
    theta = np.concatenate([beta, at_cuts[:1], np.log(gaps)])
    rows = np.arange(n)

    def minus(theta: Array) -> tuple[float, Array]:
        beta, first, logs = theta[:k], theta[k], theta[k + 1 :]
        steps = np.exp(np.clip(logs, -20, 20))
        edges = np.concatenate([[-np.inf], first + np.concatenate([[0.0], np.cumsum(steps)]), [np.inf]])
        eta = design @ beta
        upper, lower = _logistic(edges[verdict + 1] - eta), _logistic(edges[verdict] - eta)
        chance = np.maximum(upper - lower, 1e-300)
        up, down = upper * (1 - upper) / chance, lower * (1 - lower) / chance
        value = -np.sum(np.log(chance))
        slope = np.empty_like(theta)
        slope[:k] = design.T @ (up - down)
        of_edge = np.zeros((n, levels + 1))
        of_edge[rows, verdict + 1] -= up
        of_edge[rows, verdict] += down
        of_cut = of_edge.sum(axis=0)[1:levels]
        slope[k] = of_cut.sum()
        for i in range(cuts - 1):
            slope[k + 1 + i] = of_cut[i + 1 :].sum() * steps[i]
        return _held(value, slope, beta, prior, k)

    bounds = [(None if signed else 0.0, None)] * k + [(None, None)] + [(-12.0, 6.0)] * (cuts - 1)
    found = minimize(
        minus, theta, jac=True, method="L-BFGS-B", bounds=bounds, options={"maxiter": 500, "ftol": 1e-12, "gtol": 1e-8}
    )
    beta, first, logs = found.x[:k], found.x[k], found.x[k + 1 :]
    at_cuts = first + np.concatenate([[0.0], np.cumsum(np.exp(logs))])
    return Fit(beta, at_cuts, -(float(found.fun) - _penalty(beta, prior)))


def fit_pairs(differences: Array, prior: Prior | None = None, *, signed: bool = False) -> Fit:
    """Bradley-Terry on criteria: each row is what the fish put first has more of each criterion than the other one."""
    k = differences.shape[1]

    def minus(beta: Array) -> tuple[float, Array]:
        eta = differences @ beta
        value = float(np.sum(np.logaddexp(0, -eta)))
        slope = -differences.T @ _logistic(-eta)
        return _held(value, slope, beta, prior, k)

    bounds = [(None if signed else 0.0, None)] * k
    start = np.full(k, 1e-2)
    found = minimize(
        minus, start, jac=True, method="L-BFGS-B", bounds=bounds, options={"maxiter": 500, "ftol": 1e-12, "gtol": 1e-8}
    )
    return Fit(found.x, np.empty(0), -(float(found.fun) - _penalty(found.x, prior)))


def verdicts_are_separable(design: Array, verdict: Array) -> bool:
    """Whether some weights, none below 0, sort all fish without a single mistake: then no size of the noise can be told.

    Albert and Anderson (1984), Biometrika 71, 1-10: the likelihood then has no maximum. Found as a linear program.
    """
    levels = int(verdict.max()) + 1
    k = design.shape[1]
    rows = []
    for cut in range(levels - 1):
        below = verdict <= cut
        sign = np.where(below, 1.0, -1.0)[:, None]
        edge = np.zeros((len(verdict), levels - 1))
        edge[:, cut] = -sign[:, 0]
        rows.append(np.hstack([sign * design, edge]))
    return _is_feasible(np.vstack(rows), k, levels - 1)


def pairs_are_separable(differences: Array) -> bool:
    """The same for pairs: weights by which every pair stands as picked."""
    return _is_feasible(-differences, differences.shape[1], 0)


def _is_feasible(rows: Array, weights: int, cuts: int) -> bool:
    bounds = [(0.0, 1.0)] * weights + [(None, None)] * cuts
    # All rows at most 0, and their sum as low as can be: below 0, some fish lie strictly on their side.
    found = linprog(rows.sum(axis=0), A_ub=rows, b_ub=np.zeros(len(rows)), bounds=bounds, method="highs")
    return bool(found.status == 0 and found.fun < -1e-7)


def _logistic(x: Array) -> Array:
    return 0.5 * (1 + np.tanh(0.5 * np.clip(x, -2 * _FAR, 2 * _FAR)))


def _penalty(beta: Array, prior: Prior | None) -> float:
    return 0.0 if prior is None else float(np.sum(((beta - prior.near) / prior.spread) ** 2) / 2)


def _held(value: float, slope: Array, beta: Array, prior: Prior | None, k: int) -> tuple[float, Array]:
    if prior is not None:
        value = value + _penalty(beta, prior)
        slope[:k] = slope[:k] + (beta - prior.near) / prior.spread**2
    return float(value), slope
