"""Measures of the body against published relations of length, weight and girth.

Sources: Froese, Cube law, condition factor and weight-length relationships, Journal of Applied Ichthyology 22 (2006), for
Fulton's K, the length-weight relation and the mean K at a length; two published length-weight relations of common carp (406
fish of one reservoir, total length; 190 fish of one lake, fork length). The girth of an ellipse is set against the
numerical integral of its arc length.
"""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise
from math import cos, hypot, pi, sin

import pytest

import koirules
from koirules.measures.body import girth_of_ellipse
from koirules.plugins import registry_with
from koirules.vocabulary.readings import Span
from tests.measures.maps import MEASURER, shown

# Length-weight relations of common carp, W = a L^b. Total length: Yilmaz, Cerim, Some population parameters of Cyprinus carpio
# from Yesilirmak, Acta Nat. Sci., abstract (406 fish). Fork length: Tanir 2020, Erzincan Univ. J. Sci. 13(2):609-619, abstract
# (190 fish). The weights are worked out from a and b.
RELATIONS = [
    pytest.param(0.0163, 2.935, "condition", "length", (107, 353, 1160, 2698), id="reservoir, total length"),
    pytest.param(0.0528, 2.7202, "condition_fork", "fork_length", (183, 550, 1659, 3627), id="lake, fork length"),
]


def value(trait: str, **record: float) -> float:
    derived = MEASURER.derive({name: [Span(number, number)] for name, number in record.items()}, 1)
    reading = derived.columns[trait][0]
    assert isinstance(reading, Span)
    assert reading.low == reading.high
    return reading.low


def test_fultons_condition_factor() -> None:
    assert value("condition", weight=500, length=30) == pytest.approx(1.852, abs=0.0005)
    assert value("condition", weight=2100, length=45.8) == pytest.approx(2.18, abs=0.01)
    # Mohammed, Fadhil, Aytekin, Some phenotypic parameters of marketable common carp, Selcuk J. Agr. Food Sci., abstract:
    # males of a pond farm, 45.8 cm in total length and 2.10 kg; the 2.18 is worked out from these.
    by_millimetre = 1e5 * 500 / 300**3
    assert value("condition", weight=500, length=30) == pytest.approx(by_millimetre, abs=1e-6)


@pytest.mark.parametrize(("a", "b", "trait", "length", "weights"), RELATIONS)
def test_the_condition_of_the_weights_of_a_published_relation(
    a: float, b: float, trait: str, length: str, weights: tuple[int, ...]
) -> None:
    for long, weight in zip((20, 30, 45, 60), weights, strict=True):
        assert a * long**b == pytest.approx(weight, abs=0.6)
        # Froese (2006): the mean K at a length is 100 a L^(b-3).
        mean = 100 * a * long ** (b - 3)
        assert value(trait, weight=weight, **{length: float(long)}) == pytest.approx(mean, rel=0.006)


# K goes by the cube of the length: 1 / 0.90^3 = 1.372, 1 / 0.83^3 = 1.749. That a fork length is 0.90 and a standard length
# 0.83 of the total is from memory.
@pytest.mark.parametrize(("part", "times"), [(0.90, 1.37), (0.83, 1.75)])
def test_a_condition_on_a_shorter_length_is_higher(part: float, times: float) -> None:
    whole = value("condition", weight=500, length=30)
    assert value("condition_fork", weight=500, fork_length=30 * part) / whole == pytest.approx(times, abs=0.005)
    assert value("condition_standard", weight=500, standard_length=30 * part) / whole == pytest.approx(times, abs=0.005)


@pytest.mark.parametrize(
    ("b", "of_girth", "ratio", "condition"),
    [
        (2.72, 1.815, 0.908, 0.824),
        (2.935, 1.955, 0.978, 0.956),
        (3.00, 2.000, 1.000, 1.000),
        (3.03, 2.021, 1.011, 1.021),
        (3.20, 2.144, 1.072, 1.149),
        (3.50, 2.378, 1.189, 1.414),
    ],
)
def test_what_the_exponent_of_weight_means_for_girth_when_a_fish_doubles_its_length(
    b: float, of_girth: float, ratio: float, condition: float
) -> None:
    """W ~ L G^2 with W = a L^b gives G ~ L^((b-1)/2), so G/L ~ L^((b-3)/2) and K ~ L^(b-3)."""
    young = {"length": 20.0, "girth": 10.0, "weight": 150.0}
    grown = {"length": 40.0, "girth": 10.0 * 2 ** ((b - 1) / 2), "weight": 150.0 * 2**b}
    assert grown["girth"] / young["girth"] == pytest.approx(of_girth, abs=0.0006)
    stouter = value("girth_ratio", **grown) / value("girth_ratio", **young)
    fuller = value("condition", **grown) / value("condition", **young)
    assert stouter == pytest.approx(ratio, abs=0.0006)
    assert fuller == pytest.approx(condition, abs=0.0006)
    assert fuller == pytest.approx(stouter**2, abs=1e-4)


@pytest.mark.parametrize(("depth", "width", "girth"), [(10, 8, 28.362), (10, 7, 26.912), (10, 10, 31.416)])
def test_the_girth_of_an_ellipse(depth: float, width: float, girth: float) -> None:
    assert value("girth", depth=depth, width=width) == pytest.approx(girth, abs=0.0005)
    assert value("girth_ratio", depth=depth, width=width, length=50) == pytest.approx(girth / 50, abs=0.00001)


@pytest.mark.parametrize("flatness", [0.3, 0.6, 0.75, 0.95])
def test_the_girth_of_an_ellipse_is_its_arc_length(flatness: float) -> None:
    steps = 20_000
    at = [(cos(2 * pi * i / steps) * 5, sin(2 * pi * i / steps) * 5 * flatness) for i in range(steps + 1)]
    arc = sum(hypot(x - u, y - v) for (x, y), (u, v) in pairwise(at))
    assert girth_of_ellipse(10, 10 * flatness) == pytest.approx(arc, rel=2e-5)


def test_lengths_of_one_kind_never_stand_for_another() -> None:
    registry = registry_with()
    standard = koirules.read_standard(
        'standard "try" edition 1 variety kohaku\nfault fat if condition above 2: no better than b\n'
        "grade a if length at least 1 cm\ngrade b otherwise",
        registry=registry,
    )
    assert standard.grade({"weight": 500, "length": 30}).grade == "a"
    assert standard.grade({"weight": 500, "standard_length": 25, "length": "25 to 40"}).grade is None
    assert Decimal(shown("none", weight=500, standard_length=25)["condition_standard"]) == Decimal("3.2")
