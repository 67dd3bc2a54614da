"""CIEDE2000 and sRGB against published numbers and against a reference library of colour science."""

from itertools import pairwise

import colour
import numpy as np
import pytest

from koirules.measures.colour import chroma_of, contrast, difference, evenness_of, hue_of, srgb_to_lab
from koirules.vocabulary.colour_readings import ColourReadings, ColourSpace, read_colour_readings

# Sharma, Wu, Dalal 2005, The CIEDE2000 color-difference formula, Color Research and Application 30(1):21-30, Table 1 (the
# table from memory; each row was worked out again with colour-science 0.4.7).
PAIRS = """
50 2.6772 -79.7751 | 50 0 -82.7485 | 2.0425
50 3.1571 -77.2803 | 50 0 -82.7485 | 2.8615
50 2.8361 -74.0200 | 50 0 -82.7485 | 3.4412
50 -1.3802 -84.2814 | 50 0 -82.7485 | 1.0000
50 -1.1848 -84.8006 | 50 0 -82.7485 | 1.0000
50 -0.9009 -85.5211 | 50 0 -82.7485 | 1.0000
50 0 0 | 50 -1 2 | 2.3669
50 -1 2 | 50 0 0 | 2.3669
50 2.49 -0.001 | 50 -2.49 0.0009 | 7.1792
50 2.49 -0.001 | 50 -2.49 0.0010 | 7.1792
50 2.49 -0.001 | 50 -2.49 0.0011 | 7.2195
50 2.49 -0.001 | 50 -2.49 0.0012 | 7.2195
50 -0.001 2.49 | 50 0.0009 -2.49 | 4.8045
50 -0.001 2.49 | 50 0.0010 -2.49 | 4.8045
50 -0.001 2.49 | 50 0.0011 -2.49 | 4.7461
50 2.5 0 | 50 0 -2.5 | 4.3065
50 2.5 0 | 73 25 -18 | 27.1492
50 2.5 0 | 61 -5 29 | 22.8977
50 2.5 0 | 56 -27 -3 | 31.9030
50 2.5 0 | 58 24 15 | 19.4535
50 2.5 0 | 50 3.1736 0.5854 | 1.0000
50 2.5 0 | 50 3.2972 0 | 1.0000
50 2.5 0 | 50 1.8634 0.5757 | 1.0000
50 2.5 0 | 50 3.2592 0.3350 | 1.0000
60.2574 -34.0099 36.2677 | 60.4626 -34.1751 39.4387 | 1.2644
63.0109 -31.0961 -5.8663 | 62.8187 -29.7946 -4.0864 | 1.2630
61.2901 3.7196 -5.3901 | 61.4292 2.2480 -4.9620 | 1.8731
35.0831 -44.1164 3.7933 | 35.0232 -40.0716 1.5901 | 1.8645
22.7233 20.0904 -46.6940 | 23.0331 14.9730 -42.5619 | 2.0373
36.4612 47.8580 18.3852 | 36.2715 50.5065 21.2231 | 1.4146
90.8027 -2.0831 1.4410 | 91.1528 -1.6435 0.0447 | 1.4441
90.9257 -0.5406 -0.9208 | 88.6381 -0.8985 -0.7239 | 1.5381
6.7747 -0.2908 -2.4247 | 5.8714 -0.0985 -2.2286 | 0.6377
2.0776 0.0795 -1.1350 | 0.9033 -0.0636 -0.5514 | 0.9082
"""
ROWS = [tuple(part.strip() for part in line.split("|")) for line in PAIRS.strip().splitlines()]


def triple(text):
    first, second, third = (float(word) for word in text.split())
    return first, second, third


def test_all_34_pairs_are_there():
    assert len(ROWS) == 34


@pytest.mark.parametrize(("one", "other", "expected"), ROWS)
def test_ciede2000_of_the_published_pairs(one, other, expected):
    assert f"{difference(triple(one), triple(other)):.4f}" == expected
    assert f"{difference(triple(other), triple(one)):.4f}" == expected


@pytest.mark.parametrize(("one", "other", "expected"), ROWS[16:])
def test_evenness_of_a_cell_with_a_published_pair_is_their_difference(one, other, expected):
    readings = read_colour_readings(f"{one}; {other}")
    assert f"{evenness_of(readings):.4f}" == expected


# IEC 61966-2-1:1999 by way of D65 and 2 degrees; to the two decimals that were worked out with colour-science 0.4.7.
@pytest.mark.parametrize(
    ("srgb", "lab"),
    [((255, 0, 0), (53.23, 80.11, 67.22)), ((200, 60, 30), (46.45, 54.01, 48.04)), ((128, 128, 128), (53.59, 0, 0))],
)
def test_srgb_comes_out_in_cielab_as_published(srgb, lab):
    assert srgb_to_lab(srgb) == pytest.approx(lab, abs=0.006)


def test_the_formulas_agree_with_the_reference_library_over_whole_columns():
    drawn = np.random.default_rng(20261125)
    ours, other = (np.column_stack((drawn.uniform(0, 100, 500), drawn.uniform(-90, 90, (500, 2)))) for _ in range(2))
    expected = colour.delta_E(ours, other, method="CIE 2000")
    got = [difference(tuple(one), tuple(two)) for one, two in zip(ours.tolist(), other.tolist(), strict=True)]
    assert got == pytest.approx(expected.tolist(), abs=1e-9)
    rgb = drawn.integers(0, 256, (500, 3))
    white = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D65"]
    lab = colour.XYZ_to_Lab(colour.sRGB_to_XYZ(rgb / 255, illuminant=white), white)
    assert np.array([srgb_to_lab(tuple(one)) for one in rgb.tolist()]) == pytest.approx(lab, abs=0.002)


def test_evenness_is_the_largest_difference_of_any_two_readings():
    texts = ["45 42 38", "47 40 36", "44 45 33", "52 38 41"]
    readings = read_colour_readings("; ".join(texts))
    expected = max(
        float(colour.delta_E(np.array(triple(one)), np.array(triple(other)), method="CIE 2000"))
        for one in texts
        for other in texts
    )
    assert evenness_of(readings) == pytest.approx(expected, abs=1e-9)
    neighbours = [difference(triple(one), triple(other)) for one, other in pairwise(texts)]
    assert evenness_of(readings) >= max(neighbours)


# The worked pairs of red to white and of two reds, worked out with colour-science 0.4.7.
def test_contrast_is_the_difference_of_the_mean_readings():
    def one(*values):
        return ColourReadings(ColourSpace.LAB, values)

    assert contrast(one((45, 42, 38)), one((82, 0, 7))) == pytest.approx(39.48, abs=0.005)
    assert contrast(one((45, 42, 38)), one((47, 40, 36))) == pytest.approx(2.09, abs=0.005)
    assert contrast(one((44, 42, 38), (46, 42, 38)), one((82, 0, 7))) == pytest.approx(39.48, abs=0.005)


# Lab (50, 45, 35) has C* 57.01 and h 37.87 by the formulas of ISO/CIE 11664-4.
def test_chroma_and_hue_are_those_of_the_mean_reading():
    readings = ColourReadings(ColourSpace.LAB, ((50.0, 45.0, 35.0),))
    assert (round(chroma_of(readings), 2), round(hue_of(readings), 2), evenness_of(readings)) == (57.01, 37.87, None)


def test_a_colour_near_grey_has_no_hue():
    assert hue_of(ColourReadings(ColourSpace.LAB, ((85.0, 1.0, 4.0),))) is None
    assert hue_of(ColourReadings(ColourSpace.LAB, ((85.0, 0.0, 8.0),))) == pytest.approx(90)
