"""The lines of grades: from which score on a grade can be reached by points."""

from decimal import Decimal

import pytest

from koirules import load_standard, read_standard

HEAD = """standard "Lines (an invented house)" edition 1 variety kohaku
setting bar = 60 from 50 to 90
section body "body" worth 100
points stem "tail stem" by tail_stem: thin gives 0, fair gives 6, strong gives 10
fault bent "bent spine" if spine is bent: no better than rest
"""


def line(condition, **settings):
    standard = read_standard(f'{HEAD}grade first "first" ja "一" if {condition}\ngrade rest otherwise')
    first, rest = standard.with_settings(settings).grade_lines
    assert (first.name, rest.name, rest.score) == ("first", "rest", None)
    return first.score


@pytest.mark.parametrize(
    ("condition", "score"),
    [
        ("score at least 75", "75"),
        ("score above 75", "75.01"),
        ("score at least 75 and section body at least 25", "75"),
        ("score at least 75 and not fault bent", "75"),
        ("score at least 90 or (score at least 80 and kiwa is sharp)", "80"),
        ("score at least bar", "60"),
        ("40.5 below score and score at least 20", "40.51"),
        ("score / 2 at least 30.123", "60.25"),
        ("kiwa is sharp", None),
        ("score below 50", None),
        ("kiwa is sharp or score at least 70", None),
        ("score is 33", "33"),
    ],
)
def test_the_line_is_the_lowest_score_at_which_the_condition_can_hold(condition, score):
    assert line(condition) == (None if score is None else Decimal(score))


def test_the_line_follows_a_setting_of_the_run():
    assert line("score at least bar", bar=72) == Decimal(72)


def test_the_lines_of_the_example_are_those_that_its_page_states_and_speak_its_languages():
    standard = load_standard("tosai_kohaku").in_language("ja")
    assert [(line.name, line.title, line.score) for line in standard.grade_lines] == [
        ("keep", "立て鯉", Decimal(76)),
        ("hold", "保留", Decimal(66)),
        ("sell", "販売", Decimal(49)),
        ("pond", "池用", Decimal(35)),
        ("cull", "選外", None),
    ]
