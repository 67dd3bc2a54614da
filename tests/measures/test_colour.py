"""Colour readings as a sorter writes them, and what rules read of them."""

import sys

import polars as pl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import koirules
from koirules.measures.colour import evenness_of, hue_of
from koirules.problems import RecordWarning
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.colour_readings import ColourReadings, ColourSpace, write_colour_readings
from koirules.vocabulary.kinds import Colours
from koirules.vocabulary.misreads import Misread

RULES = """standard "Lantern Bay, colour" edition 1 variety kohaku
fault patchy "patchy red" if hi_evenness above 6: no better than sell
fault orange "orange" if hi_hue above 60 deg: no better than sell
section colour worth 100
points strong by hi_chroma: 30 gives 0, 60 gives 10
points white by shiroji_lightness: 60 gives 0, 90 gives 10
points plain by shiroji_chroma: 0 gives 10, 20 gives 0
points apart by hi_contrast: 20 gives 0, 45 gives 10
grade keep if score at least 50
grade sell otherwise
"""
EVEN = "45 42 38; 46 41 37; 47 40 36"
WHITE = "82 0 7; 80 1 9"


@pytest.fixture(scope="module")
def standard():
    return koirules.read_standard(RULES)


def reason(result, name):
    return next(each for each in result.reasons if each.name == name)


@pytest.mark.parametrize(
    ("cell", "space", "values", "written"),
    [
        ("45 42 38; 47 40 36", ColourSpace.LAB, ((45, 42, 38), (47, 40, 36)), "45 42 38; 47 40 36"),
        (" 45,42,38 ;47/40/36; ", ColourSpace.LAB, ((45, 42, 38), (47, 40, 36)), "45 42 38; 47 40 36"),
        ("Lab: 45.5 -1 .25", ColourSpace.LAB, ((45.5, -1, 0.25),), "45.5 -1 0.25"),
        ("srgb 200 60 30; 190 55 28", ColourSpace.SRGB, ((200, 60, 30), (190, 55, 28)), "srgb 200 60 30; 190 55 28"),
        ("#c83c1e; #BE371C", ColourSpace.SRGB, ((200, 60, 30), (190, 55, 28)), "srgb 200 60 30; 190 55 28"),
        ("rgb 200 60 30; #be371c", ColourSpace.SRGB, ((200, 60, 30), (190, 55, 28)), "srgb 200 60 30; 190 55 28"),
    ],
)
def test_readings_are_read_as_people_and_programs_write_them(cell, space, values, written):
    reading = read_value(Colours(), cell)
    assert reading == ColourReadings(space, values)
    assert write_colour_readings(reading) == written
    assert read_value(Colours(), written) == reading


@pytest.mark.parametrize(
    ("cell", "code", "mend"),
    [
        ("45 42", "value-colour-not-three", '"45 42 38"'),
        ("45,2 42,1 38,0", "value-colour-not-three", "Decimals have a point."),
        (";", "value-colour-not-three", '"45 42 38"'),
        ("45 x 38", "value-colour-not-a-number", '"45 42 38"'),
        ("head 45 42 38", "value-colour-unknown-mark", '"srgb 200 60 30"'),
        ("45 42 38; srgb 200 60 30", "value-colour-mixed", "one instrument"),
        ("#c83c1", "value-colour-not-hex", '"#c83c1e"'),
        ("200 60 30", "value-colour-beyond-lab", '"srgb 200 60 30"'),
        ("45 142 138", "value-colour-beyond-lab", "within 150"),
        ("45 150.5 0", "value-colour-beyond-lab", "within 150"),
        ("srgb 300 60 30", "value-colour-beyond-srgb", "from 0 to 255"),
        ("?", "value-mark-for-unknown", "empty the cell"),
        (45, "value-no-colours", '"45 42 38"'),
        ("45 42 38;" * 120, "value-too-long", "remark"),
    ],
)
def test_what_cannot_be_read_says_why_and_what_to_write(cell, code, mend):
    misread = read_value(Colours(), cell)
    assert isinstance(misread, Misread)
    assert misread.code == code
    assert mend in f"{misread.cause} {misread.mend}"


def test_rules_read_what_is_worked_out_from_the_readings(standard):
    result = standard.grade({"hi_readings": EVEN, "shiroji_readings": WHITE})
    assert result.grade == "keep"
    assert reason(result, "patchy").read == "hi_evenness 2.088947"
    # The mean reading is 46 41 37: chroma 55.226805, hue 42.064327 deg.
    assert reason(result, "strong").read == "hi_chroma 55.226805"
    assert reason(result, "orange").read == "hi_hue 42.064327 deg"
    assert reason(result, "white").read == "shiroji_lightness 81"
    patchy = standard.grade({"hi_readings": "45 42 38; 60 25 30", "shiroji_readings": WHITE})
    assert patchy.grade == "sell"
    assert patchy.faults == ("patchy",)


def test_one_reading_alone_says_nothing_of_evenness(standard):
    result = standard.grade({"hi_readings": "45 42 38", "shiroji_readings": WHITE})
    assert reason(result, "patchy").state is koirules.State.OPEN


def test_a_red_that_is_nearly_grey_has_any_hue(standard):
    result = standard.grade({"hi_readings": "45 3 4; 46 3 4", "shiroji_readings": WHITE})
    assert reason(result, "orange").state is koirules.State.OPEN
    assert reason(result, "strong").points_high == 0


def test_a_photograph_and_a_reader_are_not_set_beside_each_other(standard):
    result = standard.grade({"hi_readings": "srgb 200 60 30; 190 55 28", "shiroji_readings": WHITE})
    assert reason(result, "apart").read == "hi_contrast not recorded"
    both = standard.grade({"hi_readings": "srgb 200 60 30; 190 55 28", "shiroji_readings": "srgb 230 228 220"})
    assert reason(both, "apart").points_low == reason(both, "apart").points_high


def test_a_figure_that_is_written_counts_and_a_difference_is_told(standard):
    record = {"hi_readings": EVEN, "shiroji_readings": WHITE, "hi_evenness": 7}
    with pytest.warns(RecordWarning, match="hi_evenness is written as 7"):
        frame = standard.grade_frame(pl.DataFrame([record]))
    assert frame["grade"].to_list() == ["sell"]


@pytest.mark.parametrize("rows", [4, 3_000])
def test_a_frame_comes_to_what_its_rows_come_to(standard, rows):
    cells = [EVEN, "45 42 38; 60 25 30", None, "srgb 200 60 30; 190 55 28"]
    frame = pl.DataFrame({"hi_readings": [cells[i % 4] for i in range(rows)], "shiroji_readings": [WHITE] * rows})
    graded = standard.grade_frame(frame)
    for i in range(4):
        result = standard.grade({name: value for name, value in frame.row(i, named=True).items() if value})
        assert graded["possible"][i] == "|".join(result.possible)
        assert (graded["score_low"][i], graded["score_high"][i]) == (float(result.score_low), float(result.score_high))


def test_where_the_library_is_missing_it_is_named(standard, monkeypatch):
    monkeypatch.setitem(sys.modules, "coloraide", None)
    with pytest.raises(koirules.RecordError) as caught:
        standard.grade({"hi_readings": "1 2 3; 3 2 1"})
    (problem,) = caught.value.problems
    assert problem.code == "measuring-needs-library"
    assert "koirules[colour]" in problem.mend


lab = st.tuples(st.floats(0, 100), st.floats(-80, 80), st.floats(-80, 80))


@settings(deadline=None)
@given(st.lists(lab, min_size=2, max_size=5), st.randoms(use_true_random=False), lab)
def test_evenness_does_not_depend_on_order_and_never_falls_with_one_more_reading(values, random, more):
    readings = ColourReadings(ColourSpace.LAB, tuple(values))
    shuffled = list(values)
    random.shuffle(shuffled)
    assert evenness_of(ColourReadings(ColourSpace.LAB, tuple(shuffled))) == evenness_of(readings)
    assert evenness_of(ColourReadings(ColourSpace.LAB, (*values, more))) >= evenness_of(readings)
    assert evenness_of(ColourReadings(ColourSpace.LAB, (values[0], values[0]))) == 0
    hue = hue_of(readings)
    assert hue is None or 0 <= hue < 360


def test_a_colour_has_no_negative_zero():
    assert repr(read_value(Colours(), "45 -0 -0")) == repr(read_value(Colours(), "45 0 0"))
