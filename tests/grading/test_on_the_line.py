"""Values that lie on a line: on which side they fall. Each test stands for a small fault that no other test saw."""

from decimal import Decimal
from fractions import Fraction

import pytest

import koirules
from koirules.meaning.aggregates import half_up
from koirules.results.ranking import best_first
from koirules.standard.numbers import millionths


@pytest.mark.parametrize(
    ("exact", "whole"),
    [
        (Fraction(1, 2), 1),
        (Fraction(3, 2), 2),
        (Fraction(5, 2), 3),
        (Fraction(-1, 2), 0),
        (Fraction(-5, 2), -2),
        (Fraction(7, 3), 2),
    ],
)
def test_half_up_goes_to_the_larger_number(exact, whole):
    assert half_up(exact) == whole
    assert millionths(Decimal(exact.numerator) / Decimal(exact.denominator) / 1_000_000) == whole


def test_a_mean_that_falls_between_two_millionths_is_the_larger_one():
    standard = koirules.read_standard(
        'standard "means" edition 1 variety kohaku\n'
        "grade more if length at least batch mean of length\ngrade less otherwise\n"
    )
    # The mean of 10.000000 and 10.000001 cm is 10.0000005, read as 10.000001: the longer fish is not above it, but on it.
    first, second = standard.grade_batch([{"fish": "a", "length": 10.0}, {"fish": "b", "length": 10.000001}]).results
    assert (first.grade, second.grade) == ("less", "more")
    by_frame = pytest.importorskip("polars").DataFrame({"length": [10.0, 10.000001] * 200})
    assert standard.grade_frame(by_frame)["grade"].to_list() == ["less", "more"] * 200


def test_a_fault_that_allows_the_next_grade_does_not_stand_in_its_way():
    standard = koirules.read_standard(
        'standard "faults" edition 1 variety kohaku\n'
        'fault thin "thin stem" if tail_stem is thin: no better than hold\n'
        "section s worth 100\npoints o by outline: poor gives 0, anything else gives 10\n"
        "grade keep if score at least 90\ngrade hold if score at least 50\ngrade sell otherwise\n"
    )
    record = standard.reader.read({"fish": "a", "tail_stem": "thin", "outline": "poor"}, "")
    from koirules.grading.distance import to_next_grade

    grade, ways = to_next_grade(standard.grader, standard.settings, record.readings)[:2]
    assert grade == "hold"
    assert not any("thin stem" in way for way in ways)


def test_a_stretch_from_a_word_to_itself_is_that_word():
    standard = koirules.read_standard(
        'standard "s" edition 1 variety kohaku\ngrade a if kiwa is fair\ngrade b otherwise'
    )
    assert standard.grade({"kiwa": "fair to fair"}).grade == "a"
    with pytest.raises(koirules.RecordError, match="blurred to fair"):
        standard.grade({"kiwa": "fair to blurred"})


@pytest.mark.parametrize(("number", "reads"), [("1000000", True), ("1000000.000001", False), ("-1000000", True)])
def test_numbers_reach_to_a_million_and_no_further(number, reads):
    text = (
        'standard "s" edition 1 variety kohaku\ntrait far "far" as number from -1000000 to 1000000\n'
        f"grade a if far is {number}\ngrade b otherwise"
    )
    if reads:
        assert koirules.read_standard(text).grade({"far": number}).grade == "a"
    else:
        with pytest.raises(koirules.StandardError, match="1,000,000"):
            koirules.read_standard(text)


def test_fish_that_are_not_settled_stand_by_what_they_are_sure_of():
    standard = koirules.read_standard(
        'standard "s" edition 1 variety kohaku\nsection s worth 100\n'
        "points o weight 1 by outline: poor gives 0, fair gives 4, good gives 8, excellent gives 10\n"
        "grade keep if score at least 95\ngrade sell otherwise\n"
    )
    wide = standard.grade({"outline": "poor to excellent"}, "wide")
    sure = standard.grade({"outline": "fair to excellent"}, "sure")
    narrow = standard.grade({"outline": "good to excellent"}, "narrow")
    assert [one.fish for one in best_first(standard.grades, [wide, sure, narrow])] == ["narrow", "sure", "wide"]


def test_a_name_is_one_name_however_its_letters_are_composed(tmp_path):
    standard = koirules.read_standard('standard "s" edition 1 variety kohaku\ngrade a otherwise')
    path = tmp_path / "r.csv"
    path.write_text("fish,kiwa\nRené,fair\nRene\u0301,sharp\n", encoding="utf-8")
    with pytest.raises(koirules.RecordError, match="Ren"):
        standard.read_records(path)
