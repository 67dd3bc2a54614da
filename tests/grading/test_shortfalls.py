"""What stands between a fish and a grade, from both sides of a comparison."""

import pytest

import koirules
from koirules.grading.distance import to_next_grade

TEXT = """standard "Trial (an invented house)" edition 1
trait length as number in cm from 0 to 90
trait shimi as number in mm from 0 to 20
setting line = 12 cm
section body "body, first" worth 100
points p by length: 0 cm gives 0, 90 cm gives 9
grade good if {condition}
grade poor otherwise
"""


@pytest.mark.parametrize(
    ("condition", "words"),
    [
        ("length at least 12 cm", "length is 10 cm, 2 cm short of 12 cm"),
        ("length at most 8 cm", "length is 10 cm, 2 cm over 8 cm"),
        ("length below 10 cm", "length is 10 cm, and must be below it"),
        ("length above 10 cm", "length is 10 cm, and must be above it"),
        ("length at least line", "length is 10 cm, 2 cm short of 12 cm"),
        ("length between 2 cm and 8 cm", "length is 10 cm, 2 cm over 8 cm"),
        ("shimi at most 0.5 mm", "shimi is 0.9 mm, 0.4 mm over 0.5 mm"),
        ("section body at least 20", "body, first is 11.11, 8.89 short of 20"),
    ],
)
def test_the_next_grade_says_how_far_it_is(condition, words):
    standard = koirules.read_standard(TEXT.format(condition=condition))
    made = standard.reader.read({"length": 10, "shimi": 0.9}, "a")
    assert to_next_grade(standard.grader, standard.settings, made.readings) == ("good", (words,))
