"""Curves against numpy.interp, which is documented to do the same: straight lines between the points, flat outside.

What the language adds is checked here too: the number read is rounded to a millionth, the point to a thousandth, both
half up. numpy works in doubles, so it decides nothing where a value lies within 1e-9 of a half thousandth.
"""

from decimal import Decimal
from math import floor

import numpy as np
import pytest

import koirules

CURVES = {
    "a line": ((0, 0), (10, 10)),
    "a falling line": ((-3, 9), (7.5, 0.25)),
    "a peak": ((0.18, 0), (0.24, 10), (0.30, 4)),
    "a plateau": ((1, 2), (2, 8), (4, 8), (5, 1)),
    "a steep edge": ((3, 0), (3.000001, 10), (8, 10.01)),
    "thirds": ((0, 0), (3, 1), (7, 1000), (8, 3)),
}


def standard_of(knots):
    rows = ", ".join(f"{Decimal(str(x))} gives {Decimal(str(y))}" for x, y in knots)
    return koirules.read_standard(
        f"""standard "Curve" edition 1
trait x as number from -100 to 100
section all worth 100
points read by x: {rows}
grade upper if score above 50
grade lower otherwise
"""
    )


def grid_of(knots):
    at = np.array([x for x, _ in knots])
    wide = np.linspace(at[0] - 2, at[-1] + 2, 101)
    near = np.concatenate([at, at - 0.000001, at + 0.000001, (at[1:] + at[:-1]) / 2])
    return np.round(np.concatenate([wide, near]), 6)


def point(standard, x):
    (reason, *_) = standard.grade({"x": float(x)}).reasons
    return reason.points_low


@pytest.mark.parametrize("name", CURVES)
def test_a_curve_is_numpy_interp_rounded_half_up_to_a_thousandth(name):
    knots = CURVES[name]
    standard, grid = standard_of(knots), grid_of(knots)
    lines = np.interp(grid, [x for x, _ in knots], [y for _, y in knots])
    decided = 0
    for x, exact in zip(grid, lines, strict=True):
        thousandths = 1000 * exact
        assert abs(float(point(standard, x)) - exact) <= 0.0005 + 1e-9
        if abs(thousandths - floor(thousandths) - 0.5) > 1e-6:
            decided += 1
            assert point(standard, x) == Decimal(floor(thousandths + 0.5)) / 1000
    assert decided > 90


def test_a_line_of_slope_one_clamps_as_numpy_clip_does():
    standard = standard_of(((0, 0), (10, 10)))
    for x in np.round(np.linspace(-5, 15, 81), 3):
        assert point(standard, x) == Decimal(str(np.clip(x, 0, 10)))


def test_what_is_read_is_rounded_to_a_millionth_first():
    standard = standard_of(((3, 0), (3.000001, 10)))
    assert point(standard, 3.0000004) == 0
    assert point(standard, 3.0000006) == 10


def test_an_interval_gives_the_least_and_most_of_the_curve_in_it():
    knots = CURVES["a peak"]
    standard = standard_of(knots)
    fine = np.linspace(0.2, 0.29, 9001)
    lines = np.interp(fine, [x for x, _ in knots], [y for _, y in knots])
    (reason, *_) = standard.grade({"x": "0.2 to 0.29"}).reasons
    assert float(reason.points_low) == pytest.approx(lines.min(), abs=0.0005)
    assert float(reason.points_high) == pytest.approx(lines.max(), abs=0.0005)
