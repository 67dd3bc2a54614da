"""Small changes that no sample notices are listed, and those that one notices are not."""

import koirules
from koirules.analysis.mutation import changes, unnoticed

TEXT = """standard "Trial (an invented house)" edition 1
trait shimi as number in mm from 0 to 20
trait kiwa as scale blurred < fair < sharp
fault specks if shimi above 0.5 mm except kiwa at most fair: no better than low
section skin worth 100
points edge by kiwa: blurred gives 0, fair gives 5, sharp gives 10
grade high if score at least 75
grade low otherwise
"""
SAMPLES = """
sample "sharp and specked" with kiwa sharp, shimi 0.6 mm comes out low
sample "sharp and just clean" with kiwa sharp, shimi 0.5 mm comes out high
"""


def test_without_samples_nothing_is_noticed():
    grader = koirules.read_standard(TEXT).grader
    listed = unnoticed(grader)
    assert len(listed) == len(list(changes(grader.rules)))
    assert "fault specks left out" in listed
    assert "fault specks with “at least” for “above” (line 4)" in listed
    assert "fault specks with 0.06 cm for 0.05 cm (line 4)" in listed
    assert "fault specks (its except) with “below” for “at most” (line 4)" in listed
    assert "points edge giving 9 for 10 in row 3" in listed
    assert "grade high with 76 for 75 (line 7)" in listed


def test_what_a_sample_notices_is_not_listed():
    grader = koirules.read_standard(TEXT + SAMPLES).grader
    listed = unnoticed(grader)
    assert "fault specks left out" not in listed
    assert "fault specks with “at least” for “above” (line 4)" not in listed
    assert "fault specks with 0.06 cm for 0.05 cm (line 4)" not in listed
    assert "fault specks without its except" in listed


def test_progress_counts_every_change():
    grader = koirules.read_standard(TEXT).grader
    told: list[int] = []
    unnoticed(grader, told.append)
    assert told == list(range(1, len(list(changes(grader.rules))) + 1))


def test_a_long_sum_does_not_exhaust_the_stack():
    long = " + ".join(["shimi"] * 1500)
    grader = koirules.read_standard(TEXT.replace("if shimi above", f"if {long} above")).grader
    told = [change.words for change in changes(grader.rules)]
    assert "fault specks with 0.06 cm for 0.05 cm (line 4)" in told


def test_many_criteria_are_added_up_alike():
    lines = [f"points edge_{i} by kiwa: blurred gives 0, fair gives 5, sharp gives 10" for i in range(1990)]
    text = TEXT.replace("points edge by kiwa: blurred gives 0, fair gives 5, sharp gives 10", "\n".join(lines))
    record = {"kiwa": "fair", "shimi": "0 mm"}
    many, one = (koirules.read_standard(rules).grade(record) for rules in (text, TEXT))
    assert many.grade == one.grade
    assert many.score == one.score


def test_a_sample_that_fails_anyway_notices_nothing():
    wrong = '\nsample "sharp and just clean" with kiwa sharp, shimi 0.5 mm comes out low\n'
    grader = koirules.read_standard(TEXT + wrong).grader
    assert len(unnoticed(grader)) == len(list(changes(grader.rules)))
