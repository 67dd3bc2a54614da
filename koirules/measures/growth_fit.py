"""Fits the coefficients of growth from pairs of looks at the same fish.

Each is a line through the origin by ordinary least squares over logarithms, since a fish is compared with itself: whatever
made it stout or slim at the first look is there at the second. Of weight, ln(W2 / W1) = b ln(L2 / L1); of girth,
ln(G2 / G1) = (b - 1) / 2 ln(L2 / L1); of the pattern, ln(A2 / A1) = -s ln q with A the area of the patches in body
coordinates and q how girth over length changed between the looks. Standard error: residual standard deviation with n - 1
degrees of freedom over the root of the sum of squares of x.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import fsum, inf, sqrt

from attrs import frozen

FEWEST = 3
"""With fewer pairs nothing is fitted."""

FEW = 20
"""With fewer pairs than this a fit comes with a caution (common practice, no source)."""

# NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2: Student's t for 95 % on two sides.
_T_95 = (
    12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160, 2.145, 2.131,
    2.120, 2.110, 2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064, 2.060, 2.056, 2.052, 2.048, 2.045, 2.042,
)  # fmt: skip
_T_95_BEYOND = ((120, 1.980), (60, 2.000), (40, 2.021), (30, 2.042))


@frozen
class Fit:
    """A coefficient with its standard error, from so many pairs of looks; error: infinite where it cannot be told."""

    value: float
    error: float
    pairs: int

    @property
    def interval(self) -> tuple[float, float]:
        """The two ends between which it lies with 95 % confidence, by Student's t with pairs - 1 degrees of freedom."""
        reach = student_t_95(self.pairs - 1) * self.error
        return self.value - reach, self.value + reach

    def moved(self, times: float, plus: float) -> Fit:
        """The same fit of `times * value + plus`."""
        return Fit(times * self.value + plus, abs(times) * self.error, self.pairs)


def line_through_origin(x: Sequence[float], y: Sequence[float]) -> Fit | None:
    """The slope of y = slope * x by ordinary least squares; None for fewer than three points, or where all x are 0."""
    squares = fsum(value * value for value in x)
    if len(x) < FEWEST or squares == 0:
        return None
    slope = fsum(one * other for one, other in zip(x, y, strict=True)) / squares
    left = fsum((other - slope * one) ** 2 for one, other in zip(x, y, strict=True))
    return Fit(slope, sqrt(left / (len(x) - 1) / squares), len(x))


def student_t_95(freedom: int) -> float:
    """The quantile of Student's t for 95 % on two sides; between the rows of the table the next above, which is wider."""
    if freedom < 1:
        return inf
    if freedom <= len(_T_95):
        return _T_95[freedom - 1]
    return next(quantile for least, quantile in _T_95_BEYOND if freedom >= least)
