"""Samples say what does not hold; the next grade says what stands in its way; reach says what nobody tried."""

import pytest

import koirules
from koirules.analysis.coverage import unreached
from koirules.grading.distance import to_next_grade
from koirules.grading.sample_runs import run_samples
from koirules.testing import sample_runs, told

TEXT = """standard "Trial (an invented house)" edition 2026-1
trait kiwa as scale blurred < fair < sharp
trait length as number in cm from 0 to 90
trait spine as scale bent < straight
fault bent if spine is bent: no better than cull
section body worth 100
points edge by kiwa: blurred gives 0, fair gives 5, sharp gives 10
points size by length: 10 cm gives 0, 20 cm gives 4, 60 cm gives 10
bonus tip 2 if length above 80 cm
grade keep if score at least 75 and kiwa at least fair
grade cull otherwise
"""


def test_a_failing_sample_names_everything_that_does_not_hold(tmp_path):
    path = tmp_path / "s.koi"
    sample = (
        'sample "s" with kiwa sharp, spine straight, length 60 cm comes out cull scores from 0 to 5 shows fault bent\n'
    )
    path.write_text(TEXT + sample + "  stays open\n")
    (run,) = sample_runs(path)
    assert run.failures == (
        "should come out cull, but comes out keep",
        "should score from 0 to 5, but scores 100",
        "should show the fault bent, but surely shows none",
        "should stay open, but comes out keep",
    )
    assert "edge: sharp, 10 of 10" in told(run)


def test_shows_no_fault_needs_every_fault_to_be_a_sure_no(tmp_path):
    path = tmp_path / "s.koi"
    path.write_text(TEXT + 'sample "s" with kiwa sharp shows no fault\n')
    assert sample_runs(path)[0].failures == ("should show no fault, but could show bent",)


ROUNDS = """lift quality if kiwa is sharp: no worse than keep
penalty small 2 if length below 12 cm
round first keep those with grade is keep
round last pick 1 by highest score
"""


@pytest.mark.parametrize(
    ("record", "outcomes", "failures"),
    [
        (
            "kiwa sharp, spine straight, length 85 cm",
            "shows lift quality shows bonus tip section body from 99 to 100",
            (),
        ),
        ("kiwa sharp, spine straight, length 85 cm", "kept in round first kept in round last", ()),
        ("kiwa fair, spine straight, length 11 cm", "shows penalty small leaves in round first", ()),
        (
            "kiwa fair, spine straight, length 11 cm",
            "shows lift quality shows bonus tip kept in round first",
            (
                "should show the lift quality, but surely shows none",
                "should show the bonus tip, but its condition does not hold",
                "should be kept in round first, but leaves in round first",
            ),
        ),
        (
            "kiwa fair, spine straight, length 11 to 20 cm",
            "shows penalty small section body from 30 to 40",
            (
                "should show the penalty small, but it stays open",
                "section body should give from 30 to 40, but gives 25 to 45",
            ),
        ),
    ],
)
def test_samples_of_lifts_extras_sections_and_rounds(record, outcomes, failures):
    text = TEXT.replace("grade keep", ROUNDS + "grade keep")
    loaded = koirules.read_standard(f'{text}sample "s" with {record} {outcomes}\n')
    assert run_samples(loaded.grader)[0].failures == failures


def test_reach_lists_outcomes_that_no_sample_shows():
    loaded = koirules.read_standard(TEXT + 'sample "s" with kiwa sharp, spine straight, length 15 cm comes out cull\n')
    assert unreached(loaded.grader) == (
        "points edge at blurred",
        "points edge at fair",
        "points size between 20 cm and 60 cm",
        "bonus tip given",
        "fault bent biting",
        "grade keep",
    )


def next_grade(record):
    loaded = koirules.read_standard(TEXT)
    made = loaded.reader.read(record, "a")
    return to_next_grade(loaded.grader, loaded.settings, made.readings)


def test_the_next_grade_says_how_many_points_are_missing():
    assert next_grade({"kiwa": "sharp", "length": 20, "spine": "straight"}) == (
        "keep",
        ("score is 70, 5 short of 75",),
    )


def test_the_next_grade_names_the_fault_and_the_other_conditions():
    name, ways = next_grade({"kiwa": "blurred", "length": 20, "spine": "bent"})
    assert name == "keep"
    assert ways == (
        "the fault “bent” allows no better than cull",
        "score is 20, 55 short of 75",
        "kiwa is blurred, not at least fair",
    )


def test_the_best_grade_has_no_next():
    assert next_grade({"kiwa": "sharp", "length": 60, "spine": "straight"}) is None
