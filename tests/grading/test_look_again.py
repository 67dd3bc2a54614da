"""What was recorded and is unlikely is listed to be looked at again, in every output, and changes nothing."""

import json
from math import ceil, floor

import polars as pl
import pytest
from hypothesis import given
from hypothesis import strategies as st

import koirules
from koirules.problems import RecordWarning
from koirules.records.about import About
from koirules.report.result_files import write_results
from koirules.results.look_again import fences, hinges
from koirules.runs.run import here, run_files
from koirules.runs.work import Job
from tests.rulesets import shipped

TOSAI = koirules.read_standard(
    'standard "Tin Bucket" edition 1\n  variety kohaku\n  stage tosai\n'
    "section body worth 100\npoints long by length: 10 cm gives 0, 20 cm gives 10\n"
    "grade keep if score at least 40\ngrade sell otherwise\n"
)
NEAR = [14, 15, 14.5, 13, 14.2, 14.4, 15.1, 13.9, 14.1]


def graded(*lengths):
    return TOSAI.grade_batch([{"fish": str(n), "length": length} for n, length in enumerate(lengths)])


def told(batch):
    return {one.fish: [each.words for each in one.look_again] for one in batch.results if one.look_again}


def test_what_is_unlikely_for_the_stage_is_told_with_the_unit_that_it_may_have_been_meant_in():
    assert told(graded(1.45, 14, 41)) == {
        "0": ["total length 1.45 cm: unlikely for a tosai (usually 4 cm to 40 cm)"],
        "2": ["total length 41 cm: unlikely for a tosai (usually 4 cm to 40 cm)"],
    }
    assert told(graded(120))["0"][0].endswith("; was it 120 mm?")


SEEN_AS = [
    # trait, as written, what it was taken for, and in which units it would be usual of a tosai
    ("length", "85 cm", "85 cm", "85 mm"),
    ("standard_length", "100", "100 cm", "100 mm"),
    ("fork_length", "100", "100 cm", "100 mm"),
    ("weight", "0.05", "0.05 g", "0.05 kg"),
    ("depth", "38", "38 cm", "38 mm"),
    ("width", "0.1", "0.1 cm", "0.1 m"),
    ("girth", "90", "90 cm", "90 mm"),
    ("gill_width", "30", "30 cm", "30 mm"),
    ("stem_width", "14", "14 cm", "14 mm"),
    ("stem_depth", "17", "17 cm", "17 mm"),
    ("head_length", "30", "30 cm", "30 mm"),
    ("pectoral_length", "26", "26 cm", "26 mm"),
    ("odome_gap", "25", "25 cm", "25 mm"),
    ("shimi_size", "20", "20 mm", ""),
    ("age", "15", "15 days", "15 weeks or 15 months"),
]
"""Sizes of a fish of some 14 cm (common practice, no source), each in a unit that somebody left out or took for another."""


@pytest.mark.parametrize(("trait", "written", "read", "meant"), SEEN_AS, ids=[f"{one[0]} {one[1]}" for one in SEEN_AS])
@pytest.mark.parametrize("variety", ["kohaku", "showa", "asagi", "kawarimono"])
def test_each_measure_of_each_variety_is_told_where_only_another_unit_makes_it_usual(
    variety, trait, written, read, meant
):
    if trait not in shipped.registry().varieties[variety].traits:
        assert trait == "odome_gap"
        return
    standard = koirules.read_standard(
        f'standard "Tin Bucket" edition 1\n  variety {variety}\n  stage tosai\n'
        f"grade keep if {trait} is recorded\ngrade sell otherwise\n",
        registry=shipped.registry(),
    )
    (result,) = standard.grade_batch([{"fish": "a", trait: written}]).results
    (again,) = [one for one in result.look_again if one.trait == trait]
    assert again.value == read
    assert "unlikely for a tosai" in again.why
    assert again.why.endswith(f"; was it {meant}?" if meant else ")")


def test_what_lies_far_from_the_rest_of_ten_fish_is_told_and_of_nine_nothing():
    assert told(graded(*NEAR, 25)) == {
        "9": ["total length 25 cm: far from the rest of the batch (nearly all between 12.5 cm and 16.5 cm)"]
    }
    assert told(graded(*NEAR[:8], 25)) == {}


def test_where_half_of_the_fish_are_equal_nothing_is_far_from_them():
    assert told(graded(*[14] * 12, 25)) == {}


def test_what_may_be_several_values_counts_in_no_fence_and_is_not_told():
    # Hinges 14 and 14.5 of the ten that are sure; 13 lies below 13.25.
    assert set(told(graded(*NEAR, "24 cm to 26 cm", "14 cm"))) == {"3"}


def test_it_changes_no_grade_and_no_score():
    alone, together = graded(25), graded(*NEAR, 25)
    assert (alone.results[0].grade, alone.results[0].score) == (together.results[9].grade, together.results[9].score)


def test_files_of_results_carry_it(tmp_path):
    results = graded(*NEAR, 25).results
    for ending in ("csv", "json"):
        assert write_results(tmp_path / f"out.{ending}", results, About("", "", None, "")) is None
    rows = pl.read_csv(tmp_path / "out.csv")
    assert rows["look_again"].to_list()[8:] == [None, results[9].look_again[0].words]
    fish = json.loads((tmp_path / "out.json").read_text(encoding="utf-8"))["results"]
    assert [len(one["look_again"]) for one in fish] == [0] * 9 + [1]


@pytest.mark.parametrize("rows", [3, 600])
def test_a_frame_warns_once_of_a_column(rows):
    frame = pl.DataFrame({"length": [14.0] * (rows - 2) + [1.45, 2.0]})
    with pytest.warns(RecordWarning, match=r"1\.45 cm is unlikely for a tosai .* \(1 more in this column\)"):
        TOSAI.grade_frame(frame)


def test_hinges_are_those_of_published_examples():
    # fivenum(1:10) and fivenum(1:9) of R give 1 3 5.5 8 10 and 1 3 5 7 9 (from memory).
    assert hinges(range(1, 11)) == (3, 8)
    assert hinges(range(1, 10)) == (3, 7)
    assert fences(range(1, 11)) == (-4.5, 15.5)


@given(st.lists(st.integers(-1000, 1000), min_size=1, max_size=40))
def test_hinges_are_those_of_the_formula_of_r(values):
    # stats::fivenum of R: the depth of a hinge is floor((n + 3) / 2) / 2.
    ordered = sorted(values)
    depth = floor((len(ordered) + 3) / 2) / 2

    def at(place):
        return (ordered[floor(place) - 1] + ordered[ceil(place) - 1]) / 2

    assert hinges(values) == (at(depth), at(len(ordered) + 1 - depth))


def test_whole_files_tell_it_once_of_a_column(tmp_path):
    frame = pl.DataFrame({"fish": ["a", "b", "c"], "length": [14.0, 1.45, 2.0]})
    frame.write_parquet(tmp_path / "lot.parquet")
    finished = run_files(Job(TOSAI.whole_text, "rules.koi", (), (), 0), [str(tmp_path / "lot.parquet")], here())
    (problem,) = finished.problems
    assert (problem.code, problem.warning, problem.site.row) == ("value-unlikely", True, 2)
