"""A section is a weighted sum: against published examples and against pymcdm.

A section gives worth x sum(weight x p) / sum(weight x p_max), held within 0 and worth and rounded half up to a hundredth;
p is the point of the curve, rounded half up to a thousandth. So the scaling of a method is written as curves: `1 gives
1000` keeps six digits of a share of 1, and with weights whose sum is 1, worth 100 gives a hundred times the weighted sum.
Rounding p moves that by less than 100 x 0.0005 / 1000 = 0.00005; none of the sums below lies so near to a half hundredth.
"""

from decimal import ROUND_HALF_UP, Decimal

import numpy as np
import pytest
from pymcdm.methods import WSM
from pymcdm.normalizations import linear_normalization, minmax_normalization

import koirules

HUNDREDTH = Decimal("0.01")


def hundredths(number):
    return Decimal(repr(float(number))).quantize(HUNDREDTH, ROUND_HALF_UP)


def standard_of(worth, ranges, criteria):
    traits = [f"trait c{i} as number from {low} to {high}" for i, (low, high) in enumerate(ranges)]
    text = "\n".join(
        [
            'standard "Weighted sum" edition 1',
            *traits,
            f"section all worth {worth}",
            *criteria,
            f"grade upper if score above {worth / 2}",
            "grade lower otherwise",
        ]
    )
    return koirules.read_standard(text)


def scores(standard, rows):
    return [standard.grade({f"c{i}": value for i, value in enumerate(row)}).score for row in rows]


# An example that an encyclopaedia attributes to E. Triantaphyllou, Multi-criteria decision making methods: a comparative
# study (2000); its sums were recomputed with scikit-criteria.
PLAIN_WEIGHTS = (0.20, 0.15, 0.40, 0.25)
PLAIN = ((25, 20, 15, 30), (10, 30, 20, 30), (30, 10, 30, 10))


def test_raw_sums_come_out_as_printed_with_their_tie():
    # Values as they are: every curve runs from 0 to 30, so that worth 30 / sum(weight x 30) = 1.
    criteria = [f"points p{i} weight {w} by c{i}: 0 gives 0, 30 gives 30" for i, w in enumerate(PLAIN_WEIGHTS)]
    found = scores(standard_of(30, [(0, 30)] * 4, criteria), PLAIN)
    assert found == [Decimal("21.5"), Decimal(22), Decimal(22)]
    assert found == [hundredths(np.dot(PLAIN_WEIGHTS, row)) for row in PLAIN]


# C.-L. Hwang and K. Yoon, Multiple attribute decision making (1981): the choice of an aircraft; weights as published,
# values from memory, results recomputed with pymcdm. The fourth is a price: less is better.
WEIGHTS = np.array([0.2, 0.1, 0.1, 0.1, 0.2, 0.3])
BEST = np.array([1, 1, 1, -1, 1, 1])
AIRCRAFT = np.array(
    [
        [2.0, 1500, 20000, 5.5, 5, 9],
        [2.5, 2700, 18000, 6.5, 3, 5],
        [1.8, 2000, 21000, 4.5, 7, 7],
        [2.2, 1800, 20000, 5.0, 5, 5],
    ]
)
RANGES = [(1, 3), (1000, 3000), (10000, 30000), (4, 8), (1, 9), (1, 9)]


def weighted(criterion):
    return [f"points p{i} weight {w:.2f} by {criterion(i)}" for i, w in enumerate(WEIGHTS)]


def by_share_of_the_best(i):
    column = AIRCRAFT[:, i]
    return (
        f"c{i} / {column.max():g}: 0 gives 0, 1 gives 1000"
        if BEST[i] > 0
        else (f"{column.min():g} / c{i}: 0 gives 0, 1 gives 1000")
    )


def by_place_between_worst_and_best(i):
    low, high = f"{AIRCRAFT[:, i].min():g}", f"{AIRCRAFT[:, i].max():g}"
    ends = ("gives 0", "gives 1000") if BEST[i] > 0 else ("gives 1000", "gives 0")
    return f"c{i}: {low} {ends[0]}, {high} {ends[1]}"


@pytest.mark.parametrize(
    ("criterion", "scaling", "printed"),
    [
        (by_share_of_the_best, linear_normalization, (0.83546898, 0.70732601, 0.85140741, 0.73742857)),
        (by_place_between_worst_and_best, minmax_normalization, (0.57380952, 0.3, 0.59166667, 0.38095238)),
    ],
)
def test_the_aircraft_get_a_hundred_times_their_weighted_sum(criterion, scaling, printed):
    sums = WSM(normalization_function=scaling)(AIRCRAFT, WEIGHTS, BEST)
    assert sums == pytest.approx(printed, abs=5e-9)
    found = scores(standard_of(100, RANGES, weighted(criterion)), AIRCRAFT.tolist())
    assert found == [hundredths(100 * number) for number in sums]


def test_only_the_ratios_of_weights_count():
    thin = standard_of(100, RANGES, weighted(by_share_of_the_best))
    thick = standard_of(
        100, RANGES, [f"points p{i} weight {w * 30:g} by {by_share_of_the_best(i)}" for i, w in enumerate(WEIGHTS)]
    )
    assert scores(thin, AIRCRAFT.tolist()) == scores(thick, AIRCRAFT.tolist())


def test_the_scaling_has_to_be_written_down_because_it_changes_the_scores():
    shares = scores(standard_of(100, RANGES, weighted(by_share_of_the_best)), AIRCRAFT.tolist())
    places = scores(standard_of(100, RANGES, weighted(by_place_between_worst_and_best)), AIRCRAFT.tolist())
    assert [np.argsort(shares)[::-1].tolist(), np.argsort(places)[::-1].tolist()] == [[2, 0, 3, 1], [2, 0, 3, 1]]
    assert max(abs(share - place) for share, place in zip(shares, places, strict=True)) > 25
