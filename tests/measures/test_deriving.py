"""Derived traits come from raw ones once, before grading: as written wins, and what is doubtful is told."""

from __future__ import annotations

import sys

import pytest

import koirules
from koirules.plugins import registry_with
from koirules.problems import Cell, RecordError
from koirules.problems.measuring import measuring_needs
from koirules.results.record import Record
from koirules.vocabulary.readings import Span

BOX = registry_with()


def standard(rules, registry=BOX, variety="kohaku"):
    header = f'standard "try" edition 1 variety {variety}\n'
    return koirules.read_standard(f"{header}{rules}\ngrade a otherwise", registry=registry)


def derived(trait, rules="", registry=BOX, variety="kohaku", **record):
    """The reading of a trait that only a `say` reads, after it was derived from a record."""
    rules += f'\nfault seen if length is not recorded: no better than a say "{{{trait}}}"'
    made = standard(rules, registry, variety)
    read = made.reader.read(record, "")
    assert isinstance(read, Record), read
    return made.grader.measured(read).readings.get(trait)


def test_a_ratio_follows_from_what_was_measured():
    assert derived("girth_ratio", girth=12, length=24) == Span(0.5, 0.5)
    assert derived("girth_ratio", girth="120 mm", length="0.24 m") == Span(0.5, 0.5)


def test_what_is_not_sure_gives_a_stretch():
    assert derived("girth_ratio", girth="11 to 13", length=20) == Span(0.55, 0.65)


def test_what_was_not_recorded_leaves_nothing_or_a_narrower_stretch():
    assert derived("girth_ratio", length=20) is None
    assert derived("girth_ratio") is None
    assert derived("girth_ratio", length=100) == Span(0.1, 1.1), "no girth is above 110 cm"


def test_numbers_are_held_to_a_millionth():
    assert derived("girth_ratio", girth=10, length=30) == Span(0.333333, 0.333333)


def test_as_written_wins():
    assert derived("girth_ratio", girth=12, length=24, girth_ratio=0.48) == Span(0.48, 0.48)


def test_a_derived_trait_may_follow_from_a_derived_one():
    assert derived("girth_ratio", depth=10, width=8, length=60) == Span(0.472694, 0.472694)


def test_a_measured_girth_goes_before_that_of_an_ellipse():
    assert derived("girth_ratio", depth=10, width=8, girth=30, length=60) == Span(0.5, 0.5)


def test_no_length_stands_for_one_of_another_kind():
    assert derived("condition", weight=500, standard_length=30) is None
    assert derived("condition_standard", weight=500, length=30) is None
    assert derived("condition_fork", weight=500, standard_length=30, length=36) is None


def doubts(record, rules):
    made = standard(rules)
    read = made.reader.read(record, "K1")
    measured = made.measured([read], "tub.csv")
    return [(problem.code, str(problem.site), problem.warning) for problem in measured.problems], measured


RATIO = "fault thin if girth_ratio below 0.3: no better than a"


def test_a_difference_from_what_is_written_is_a_warning():
    found, measured = doubts({"girth": 12, "length": 24, "girth_ratio": 0.6}, RATIO)
    assert found == [("derived-differs", 'tub.csv, column "girth_ratio"', True)]
    assert "written as 0.6, but from girth and length it comes out as 0.5" in measured.problems[0].cause
    assert measured.records[0].doubts == measured.problems


def test_digits_that_nobody_writes_are_no_difference():
    assert doubts({"girth": 10, "length": 30, "girth_ratio": 0.33}, RATIO)[0] == []
    assert doubts({"girth": "10 to 13", "length": 30, "girth_ratio": 0.4}, RATIO)[0] == []


def test_an_estimate_is_no_reason_to_doubt_a_tape():
    assert doubts({"depth": 10, "width": 8, "girth": 20}, "fault thin if girth below 5 cm: no better than a")[0] == []


def test_what_no_fish_can_be_is_told_and_not_taken():
    found, measured = doubts({"girth": 40, "length": 20}, RATIO)
    assert found == [("derived-outside", 'tub.csv, column "girth_ratio"', True)]
    assert "girth_ratio" not in measured.records[0].readings


def test_a_map_that_is_none_is_a_problem_of_its_cell():
    made = standard("fault bare if hi_cover below 5 %: no better than a")
    crossed = "8 to 20 left 9; POLYGON ((30 0, 40 0, 32 20, 35 -10, 30 0))"
    with pytest.raises(RecordError) as found:
        made.grade({"hi_patches": crossed})
    (problem,) = found.value.problems
    assert problem.code == "value-map-crossed"
    assert "Patch 2" in problem.cause
    assert "crosses itself at" in problem.cause


def test_rules_that_read_nothing_derived_do_not_measure():
    made = standard("fault short if length below 10 cm: no better than a")
    assert made.grader.measurer.measures == ()
    assert made.grade({"length": 12, "hi_patches": "8 to 20 left 9"}).grade == "a"


def test_a_landmark_is_set_by_a_setting_of_its_name():
    rules = 'setting splash = 1 % from 1 % to 9 % "largest splash"'
    pattern = "8 to 26 left 60 right 55; 34 to 40 left 25"
    assert derived("step_count", rules, hi_patches=pattern) == Span(2.0, 2.0)
    made = standard(rules + "\nfault seen if step_count above 1: no better than a")
    assert made.grade({"hi_patches": pattern}).faults == ("seen",)
    assert made.with_settings({"splash": "5 %"}).grade({"hi_patches": pattern}).faults == ()


def test_a_landmark_that_is_set_is_not_unused():
    made = standard('setting gill_edge = 22 % from 20 % to 30 % "gill edge"')
    assert "unused" not in {problem.code for problem in made.warnings}


def test_a_setting_of_an_unread_name_is_still_unused():
    assert "unused" in {problem.code for problem in standard("setting x = 1").warnings}


def test_what_is_missing_for_maps_is_said_once_with_its_mend(monkeypatch):
    made = standard("fault bare if hi_cover below 5 %: no better than a")
    monkeypatch.setitem(sys.modules, "shapely", None)
    with pytest.raises(RecordError) as found:
        made.grade({"hi_patches": "8 to 20 left 9"})
    (problem,) = found.value.problems
    assert problem.code == "measuring-needs-library"
    assert problem.mend == "Install it where koirules is: python -m pip install shapely."


@pytest.mark.parametrize(
    ("library", "told"),
    [
        ("skimage.measure", "python -m pip install scikit-image."),
        ("shapely.geometry", "python -m pip install shapely."),
        ("coloraide", 'pip install "koirules[colour]"'),
    ],
)
def test_a_missing_library_is_named_as_it_is_installed(library, told):
    assert told in measuring_needs(Cell("record"), "the cover", library).mend
