"""Values that leave a million, and quotients by what could be 0."""

import pytest

import koirules

TEXT = """standard "Trial (an invented house)" edition 1
trait small as number from 0 to 0.000004
trait large as number from 0 to 900000
grade high if {condition}
grade low otherwise
"""


@pytest.mark.parametrize(
    ("condition", "record", "possible"),
    [
        ("large + large at least 5", {"large": 4}, ("high",)),
        ("large + large at least 5", {"large": 600_000}, ("high", "low")),  # 1,200,000 is not recorded: any number
        ("large / small at least 5", {"large": 4, "small": 0}, ("high", "low")),
        # The range of the quotient is everything, since the divisor could be 0; 4 / 0.000002 is still beyond the limit.
        ("large / small at least 5", {"large": 4, "small": 0.000002}, ("high", "low")),
        ("large / small at least 5", {"large": 0.00002, "small": 0.000002}, ("high",)),
        ("-large at least -5", {"large": 4}, ("high",)),
    ],
)
def test_a_value_beyond_the_limit_is_any_number(condition, record, possible):
    assert koirules.read_standard(TEXT.format(condition=condition)).grade(record).possible == possible


def test_a_whole_record_that_stays_open_says_why():
    text = """standard "Trial (an invented house)" edition 1
trait large as number from 0 to 900000
trait small as number from 0 to 4
section all worth 100
points p by large * large: 0 gives 0, 10 gives 10
bonus b 1 if large / small at least 5
fault f if large / small at least 5: no better than low
grade high if score at least 50 and large / small at least 5
grade low otherwise
"""
    reasons = koirules.read_standard(text).grade({"large": 600_000, "small": 0}).reasons
    assert [reason.words for reason in reasons][:4] == [
        "p: any number, 0 to 10 of 10 (any number: a value beyond 1,000,000)",
        "b: perhaps +1 (any number: divides by what may be 0)",
        "f: perhaps no better than low; large 600000, small 0 (any number: divides by what may be 0)",
        "high: not settled, asks for score at least 50; large / small at least 5 (any number: divides by what may be 0)",
    ]


def test_tenths_add_up():
    text = """standard "Trial (an invented house)" edition 1
trait a as number from 0 to 1
grade yes_indeed if a + 0.2 is 0.3
grade not_so otherwise
"""
    assert koirules.read_standard(text).grade({"a": 0.1}).grade == "yes_indeed"
