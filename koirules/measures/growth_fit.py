"""Fits the coefficients of growth from pairs of looks at the same fish.

Each is a line through the origin by ordinary least squares over logarithms, since a fish is compared with itself: whatever
made it stout or slim at the first look is there at the second. Of weight, ln(W2 / W1) = b ln(L2 / L1); of girth,
ln(G2 / G1) = (b - 1) / 2 ln(L2 / L1); of the pattern, ln(A2 / A1) = -s ln q with A the area of the patches in body
coordinates and q how girth over length changed between the looks, or ln(A2 / A1) = -w ln(L2 / L1), which needs no girth; of red
that was judged by eye on fish without a map, ln(c2 / c1) = -w ln(L2 / L1). Standard error: residual standard deviation with
n - 1 degrees of freedom over the root of the sum of squares of x.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from itertools import pairwise
from math import fsum, inf, log, sqrt

from koirules.values import frozen

FEWEST = 3
"""With fewer pairs nothing is fitted: an error needs two pairs beside the slope (common practice, no source)."""

FEW = 20
"""With fewer pairs than this a fit comes with a caution (common practice, no source)."""

LEAST_CHANGE = 0.05
"""Pairs whose girth over length changed by less than this part say nothing of the new skin: measuring is no
finer than that (from memory)."""

_T_95 = (
    12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160, 2.145, 2.131,
    2.120, 2.110, 2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064, 2.060, 2.056, 2.052, 2.048, 2.045, 2.042,
)  # fmt: skip
"""Student's t for 95 % on two sides, for 1 to 30 degrees of freedom; NIST, as below."""
_T_95_BEYOND = ((120, 1.980), (60, 2.000), (40, 2.021), (30, 2.042))
"""Student's t for 95 % on two sides: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2."""


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


@frozen
class Look:
    """What was measured of one fish on one day. length in cm; weight in g, girth in cm and the area of the patches where known.

    area: of the red (or what the pattern's colour is) in body coordinates, where no patch is thin and sashi is left out.
    cover: the share of red that was judged by eye, where no map was drawn.
    """

    fish: str
    day: date
    length: float
    weight: float | None = None
    girth: float | None = None
    area: float | None = None
    cover: float | None = None


@frozen
class GrowthFit:
    """What pairs of looks say about growth; None where there are too few that bear on it.

    by_weight, by_girth: b of W = a L^b, by either. white: s. by_pattern, by_eye: w, by either. fish: how many were looked at more
    than once. pairs: how many pairs of looks that makes in which they had grown. bearing: those of them with the weight, the
    girth or the red of both looks. not_longer: pairs that were left out because the fish was no longer at the second
    look.
    """

    by_weight: Fit | None
    by_girth: Fit | None
    white: Fit | None
    by_pattern: Fit | None
    by_eye: Fit | None
    fish: int
    pairs: int
    bearing: int
    not_longer: int

    @property
    def exponent(self) -> Fit | None:
        """The b by weight, or by girth where there are too few weights."""
        return self.by_weight or self.by_girth

    @property
    def sides(self) -> Fit | None:
        """The w by maps, or by red that was judged by eye where there are too few maps."""
        return self.by_pattern or self.by_eye


def fit_growth(looks: Sequence[Look]) -> GrowthFit:
    """Fit b, s and w; of a fish that was looked at more than twice, each look is compared with the one before it."""
    pairs = _pairs(looks)
    grown = [(before, after) for before, after in pairs if after.length > before.length]
    weight = [
        (log(after.length / before.length), log(after.weight / before.weight))
        for before, after in grown
        if before.weight and after.weight
    ]
    girth = [
        (log(after.length / before.length), log(after.girth / before.girth))
        for before, after in grown
        if before.girth and after.girth
    ]
    white = [
        (-gain, log(after.area / before.area))
        for before, after in grown
        if before.area and after.area and abs(gain := _gain(before, after)) >= log(1 + LEAST_CHANGE)
    ]
    pattern = [
        (log(after.length / before.length), log(after.area / before.area))
        for before, after in grown
        if before.area and after.area
    ]
    cover = [
        (log(after.length / before.length), log(after.cover / before.cover))
        for before, after in grown
        if before.cover and after.cover
    ]
    by_girth, by_pattern, by_eye = _through_origin(girth), _through_origin(pattern), _through_origin(cover)
    return GrowthFit(
        _through_origin(weight),
        None if by_girth is None else by_girth.moved(2.0, 1.0),
        _through_origin(white),
        None if by_pattern is None else by_pattern.moved(-1.0, 0.0),
        None if by_eye is None else by_eye.moved(-1.0, 0.0),
        len({before.fish for before, _ in pairs}),
        len(grown),
        max(len(weight), len(girth), len(pattern), len(cover)),
        len(pairs) - len(grown),
    )


def _pairs(looks: Sequence[Look]) -> list[tuple[Look, Look]]:
    by_fish: dict[str, list[Look]] = {}
    for look in sorted(looks, key=lambda look: look.day):
        by_fish.setdefault(look.fish, []).append(look)
    return [pair for seen in by_fish.values() for pair in pairwise(seen)]


def _gain(before: Look, after: Look) -> float:
    """How girth over length changed, by the girths, or by the weights (W is as L G^2) where a girth is missing; else 0."""
    longer = log(after.length / before.length)
    if before.girth and after.girth:
        return log(after.girth / before.girth) - longer
    if before.weight and after.weight:
        return (log(after.weight / before.weight) - 3.0 * longer) / 2.0
    return 0.0


def _through_origin(points: Sequence[tuple[float, float]]) -> Fit | None:
    return line_through_origin([x for x, _ in points], [y for _, y in points])
