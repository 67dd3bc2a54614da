"""Figures of a batch against numpy and scipy, and two published worked examples of ranking and averaging.

Percentiles: numpy.percentile(method="linear") and scipy.stats.mstats.mquantiles(alphap=1, betap=1), which is type 7 of Hyndman
and Fan, Sample quantiles in statistical packages, The American Statistician 50 (1996), 361-365. Standings:
scipy.stats.percentileofscore(kind="mean"). Both libraries are from the registry of Python packages.
"""

from decimal import Decimal
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import stats
from scipy.stats import mstats

import koirules
from koirules.meaning.aggregates import half_up, mean, percentile, standing
from koirules.rounds.tallies import Counts

LENGTHS = st.lists(st.integers(0, 3_000_000).map(lambda n: n / 10_000), min_size=1, max_size=60)


def figures(values, figure):
    """What a figure of the lengths of a batch comes to for each fish, read off a table of cuts that are a millionth wide."""
    counts: dict[int, int] = {}
    for value in values:
        millionths = round(value * 1_000_000)
        counts[millionths] = counts.get(millionths, 0) + 1
    return figure(Counts.of(counts))


@settings(max_examples=300)
@given(LENGTHS, st.decimals(0, 100, places=2))
def test_percentiles_are_those_of_numpy_and_scipy(values, percent):
    ours = half_up(figures(values, lambda counts: percentile(counts.at, counts.number, percent))) / 1_000_000
    assert ours == pytest.approx(np.percentile(values, float(percent), method="linear"), abs=1e-6)
    (other,) = mstats.mquantiles(values, prob=[float(percent) / 100], alphap=1, betap=1)
    assert ours == pytest.approx(other, abs=1e-6)


@settings(max_examples=300)
@given(LENGTHS, st.data())
def test_standings_are_percentiles_of_score_of_the_kind_mean(values, data):
    value = data.draw(st.sampled_from(values))
    ours = figures(values, lambda counts: standing(counts, round(value * 1_000_000)))
    assert float(ours) / 1_000_000 == pytest.approx(stats.percentileofscore(values, value, kind="mean"), abs=1e-9)


@settings(max_examples=200)
@given(LENGTHS)
def test_means_are_exact(values):
    exact = sum(Fraction(round(value * 1_000_000)) for value in values) / len(values)
    assert figures(values, mean) == exact
    assert float(exact) / 1_000_000 == pytest.approx(np.mean(values))


def test_a_standard_reads_the_percentile_that_numpy_gives():
    """Through the language: the least setting that is not above the percentile, found by halving."""
    chance = np.random.default_rng(3)
    lengths = [round(float(length), 3) for length in chance.uniform(5, 25, 31)]
    standard = koirules.read_standard("""standard "Tin Bucket, a cut" edition 1 variety kohaku
setting cut = 10 cm from 0 cm to 40 cm
grade over if batch percentile 12.5 of length at least cut
grade under otherwise
""")
    low, high = Decimal(0), Decimal(40)
    while high - low > Decimal("0.000002"):
        middle = ((low + high) / 2).quantize(Decimal("0.000001"))
        fish = [{"fish": str(number), "length": length} for number, length in enumerate(lengths)]
        result = standard.with_settings({"cut": f"{middle} cm"}).grade_batch(fish).results[0]
        low, high = (middle, high) if result.grade == "over" else (low, middle)
    assert float(low) == pytest.approx(np.percentile(lengths, 12.5), abs=3e-6)


def test_borda_and_plurality_differ_over_the_hundred_voters():
    """Four places ranked by 100 voters: 42 M>N>C>K, 26 N>C>K>M, 15 C>K>N>M, 17 K>C>N>M.

    Source: the common worked example of voting methods with four cities (data from memory); points 3, 2, 1, 0 give
    M 126, N 194, C 173, K 107, and N wins; most first places has M.
    """
    standard = koirules.read_standard("""standard "Lantern Bay, a panel of a hundred" edition 1
trait first as count up to 100
trait second as count up to 100
trait third as count up to 100
section all worth 300
points borda by 3 * first + 2 * second + third: 0 gives 0, 300 gives 300
grade all otherwise
round borda pick 1 by highest score
round plurality from all pick 1 by highest first
""")
    votes = {"M": (42, 0, 0), "N": (26, 42, 32), "C": (15, 43, 42), "K": (17, 15, 26)}
    batch = standard.grade_batch(
        [
            {"fish": name, "first": first, "second": second, "third": third}
            for name, (first, second, third) in votes.items()
        ]
    )
    assert {result.fish: int(result.score) for result in batch.results} == {"M": 126, "N": 194, "C": 173, "K": 107}
    assert [one.kept for one in batch.rounds] == [("N",), ("M",)]


def test_a_mean_without_the_highest_and_the_lowest_of_seven_judges():
    """Seven judges, 70 74 75 78 79 86 95: without highest and lowest 78.4 (scipy.stats.trim_mean with a seventh cut)."""
    judges = [70, 74, 75, 78, 79, 86, 95]
    names = [f"judge_{number}" for number in range(1, 8)]
    listed = ", ".join(names)
    standard = koirules.read_standard(
        'standard "Lantern Bay, a panel of seven" edition 1\n'
        + "".join(f"trait {name} as number from 0 to 100\n" for name in names)
        + f"term middle means ({' + '.join(names)} - greater of ({listed}) - lesser of ({listed})) / 5\n"
        + "section all worth 100\npoints middle by middle: 0 gives 0, 100 gives 100\ngrade all otherwise\n"
    )
    score = standard.grade(dict(zip(names, judges, strict=True))).score
    assert score == Decimal("78.4")
    assert float(score) == pytest.approx(stats.trim_mean(judges, 1 / 7 + 1e-9))
