"""Areas, shares and roundness of maps against closed forms and against a fine raster counted point by point."""

from __future__ import annotations

from math import cos, pi, sin, sqrt

import numpy as np
import pytest
import shapely

from koirules.measures.pattern import pattern_measure
from koirules.measures.skin import Skin
from koirules.vocabulary.maps import Patch, PatchMap
from koirules.vocabulary.measures import Given
from koirules.vocabulary.outlines import TORPEDO, Outline
from koirules.vocabulary.readings import Span
from tests.measures.maps import KOHAKU, MEASURER, map_of, number

TUBE = Outline(((0, 1), (100, 1)))
CONE = Outline(((0, 0), (100, 1)))
AT = np.zeros(1, dtype=np.intp)


def skin(outline: Outline) -> Skin:
    along, girth = np.array(outline.knots).T
    return Skin.of(along, girth[None, :], AT)


def area(polygon: shapely.Polygon, outline: Outline, **within: float) -> float:
    return float(skin(outline).areas(np.array([polygon], dtype=object), AT, **within)[0])


def ring(u: float, v: float, long: float, wide: float, corners: int = 720) -> list[tuple[float, float]]:
    return [(u + long * cos(2 * pi * i / corners), v + wide * sin(2 * pi * i / corners)) for i in range(corners)]


def test_a_rectangle_on_a_tube_and_on_a_cone() -> None:
    box = shapely.box(20, -30, 50, 40)
    assert area(box, TUBE) == pytest.approx(30 * 70)
    # On a cone the girth is u / 100, whose integral from 20 to 50 is (50^2 - 20^2) / 200.
    assert area(box, CONE) == pytest.approx(70 * (50**2 - 20**2) / 200)


def test_an_ellipse_and_a_ring_on_a_tube() -> None:
    outer, inner = ring(50, 0, 20, 60), ring(50, 0, 10, 30)
    # A polygon of n corners on an ellipse has the area n/2 sin(2 pi / n) a b.
    of_corners = 720 / 2 * sin(2 * pi / 720)
    assert area(shapely.Polygon(outer), TUBE) == pytest.approx(of_corners * 20 * 60)
    assert of_corners == pytest.approx(pi, rel=2e-5)
    assert area(shapely.Polygon(outer, [inner]), TUBE) == pytest.approx(of_corners * (20 * 60 - 10 * 30))


def test_an_ellipse_on_a_cone_weighs_as_its_middle() -> None:
    # The girth is linear, so the area is that on a tube times the girth at the centre.
    assert area(shapely.Polygon(ring(40, 0, 20, 60)), CONE) == pytest.approx(0.4 * pi * 20 * 60, rel=2e-5)


def test_a_triangle_on_a_cone() -> None:
    # The integral of a linear function over a triangle is its area times the mean at the three corners.
    corners = [(10, -20), (70, 0), (40, 60)]
    flat = shapely.Polygon(corners).area
    assert area(shapely.Polygon(corners), CONE) == pytest.approx(flat * (10 + 70 + 40) / 300)


def test_parts_of_shapes_are_those_of_shapes_that_were_cut() -> None:
    draw = np.random.default_rng(7)
    for _ in range(50):
        middle, sizes = draw.uniform((20, -80), (80, 80)), draw.uniform((5, 20), (20, 110))
        polygon = shapely.intersection(
            shapely.Polygon(ring(*middle, *sizes, corners=int(draw.integers(3, 40)))), shapely.box(0, -200, 100, 200)
        )
        for front, left, right in ((100, -100, 100), (50, -100, 100), (100, -100, 0), (37, -20, 65)):
            cut = shapely.intersection(polygon, shapely.box(0, left, front, right))
            parts = [part for part in shapely.get_parts(cut) if part.geom_type == "Polygon"]
            whole = sum(area(part, TORPEDO, left=-200, right=200) for part in parts)
            assert area(polygon, TORPEDO, left=left, right=right, rear=front) == pytest.approx(whole, abs=1e-6)


def raster(pattern: PatchMap, left: float = -100, right: float = 100, front: float = 100) -> tuple[float, float]:
    """The area of a map on the skin and of the whole back, counted on a grid of 0.1 by 0.25."""
    along, across = np.arange(0.05, 100, 0.1), np.arange(-99.875, 100, 0.25)
    girth = np.interp(along, *np.array(TORPEDO.knots).T)
    u, v = np.meshgrid(along, across)
    inside = np.zeros(u.shape, dtype=bool)
    for patch in pattern.patches:
        inside |= shapely.contains_xy(shapely.Polygon(patch.outline, patch.windows), u, v)
    inside &= (v > left) & (v < right) & (u < front)
    return float((inside * girth).sum()), float(girth.sum() * len(across))


MAPS = [
    "8 to 26 left 60 right 55; 34 to 52 left 195 right 40; 45 to 60 right 20 to 90",
    "POLYGON ((6 -20, 14 -70, 25 -50, 28 10, 22 60, 9 40, 6 -20), (14 -10, 18 -10, 18 15, 14 -10)); 50 to 90 right 80",
    "POLYGON ((30 -150, 55 -120, 70 30, 95 60, 80 120, 40 80, 30 -150))",
]


@pytest.mark.parametrize("text", MAPS)
def test_cover_and_shares_are_those_of_a_raster(text: str) -> None:
    pattern = map_of(text)
    there, back = raster(pattern)
    assert number(pattern, "hi_cover") == pytest.approx(100 * there / back, abs=0.05)
    assert number(pattern, "hi_left_share") == pytest.approx(100 * raster(pattern, right=0)[0] / there, abs=0.1)
    assert number(pattern, "hi_front_share") == pytest.approx(100 * raster(pattern, front=50)[0] / there, abs=0.1)


def roundness(pattern: PatchMap, outline: Outline, girth_of_length: float) -> float:
    measure = pattern_measure("hi_patches", {"roundness": KOHAKU.traits["head_roundness"]}, outline)
    constants = MEASURER.values | {"girth_of_length": girth_of_length}
    found = measure.compute(Given({"hi_patches": [pattern]}, 1, constants, frozenset(["head_roundness"])))
    reading = found.readings["head_roundness"][0]
    assert isinstance(reading, Span)
    return reading.low


def test_a_circle_on_the_skin_has_the_roundness_of_a_circle() -> None:
    # On a tube of girth 0.8 lengths, 1 % of the length is 4 / 0.8 = 5 % of the way to the lateral line.
    circle = PatchMap((Patch(ring(15, 0, 6, 30)),))
    assert roundness(circle, TUBE, 0.8) == pytest.approx(1, abs=1e-4)


@pytest.mark.parametrize("longer", [1.5, 2.0, 3.0])
def test_the_roundness_of_an_ellipse(longer: float) -> None:
    a, b = 3 * longer, 3.0
    h = ((a - b) / (a + b)) ** 2
    around = pi * (a + b) * (1 + 3 * h / (10 + sqrt(4 - 3 * h)))
    ellipse = PatchMap((Patch(ring(13, 0, a, b * 5)),))
    assert roundness(ellipse, TUBE, 0.8) == pytest.approx(4 * pi * pi * a * b / around**2, abs=2e-4)


def test_the_roundness_of_a_square() -> None:
    # A square by its corners on the axes: 4 pi s^2 / (4 s)^2 = pi / 4.
    square = PatchMap((Patch(((9, 0), (15, 30), (21, 0), (15, -30))),))
    assert roundness(square, TUBE, 0.8) == pytest.approx(pi / 4, abs=1e-6)
