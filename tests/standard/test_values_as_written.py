"""Numbers, settings, steps and conditions as a file or a run writes them."""

from decimal import Decimal

import pytest

import koirules
from koirules.problems import StandardError
from koirules.standard.cuts import cuts_of
from koirules.standard.numbers import decimals

HEAD = 'standard "Teal Yard house standard" edition 1 variety kohaku\n'
GRADES = "grade keep if length above 10 cm\ngrade cull otherwise\n"


def codes(text):
    try:
        koirules.read_standard(HEAD + text + GRADES)
    except StandardError as error:
        return [problem.code for problem in error.problems]
    return []


@pytest.mark.parametrize(
    ("written", "needed"),
    [("5", 0), ("5.00", 0), ("0.000", 0), ("1E+3", 0), ("1200", 0), ("0.50", 1), ("5." + "0" * 34 + "1", 35)],
)
def test_decimals_are_counted_to_the_last(written, needed):
    assert decimals(Decimal(written)) == needed
    assert decimals(Decimal(written).copy_negate()) == needed


@pytest.mark.parametrize("sign", ["", "-"])
def test_no_decimal_is_rounded_away(sign):
    assert codes(f"fault f if length above {sign}5.{'0' * 34}1 cm: no better than cull\n") == ["too-many-decimals"]


@pytest.fixture
def changeable():
    text = "setting bar = 1 from 0 to 100\nsetting lowest = 10 cm from 1 cm to 50 cm\n"
    used = "fault f if count of (hi_cover above 5 %, maruten) above bar or length below lowest: no better than cull\n"
    return koirules.read_standard(HEAD + text + used + GRADES)


@pytest.mark.parametrize(
    ("given", "held"),
    [
        (0.00001, "0.00001"),
        (1e-06, "0.000001"),
        (Decimal("1E+1"), "10"),
        ("2.5", "2.5"),
        (7, "7"),
        (Decimal("3.000"), "3"),
    ],
)
def test_a_setting_takes_numbers_in_any_form(changeable, given, held):
    assert changeable.with_settings({"bar": given}).settings["bar"].value == Decimal(held)


@pytest.mark.parametrize(
    ("given", "why"),
    [
        ("1e999", "is no number"),
        ("10e5", "is no number"),
        ("1.5e-5", "is no number"),
        ("nan", "is no number"),
        (float("nan"), "is no number"),
        (float("inf"), "is no number"),
        (Decimal("1E+999999"), "is no number"),
        (1e-7, "more than 6 decimals"),
        ("1." + "0" * 40 + "1", "more than 6 decimals"),
        (1e300, "outside its range"),
        ("9" * 3000, "outside its range"),
    ],
)
def test_a_setting_refuses_what_a_file_could_not_hold(changeable, given, why):
    with pytest.raises(StandardError) as caught:
        changeable.with_settings({"bar": given})
    assert why in caught.value.problems[0].cause


def test_a_setting_with_a_unit_takes_another_of_its_dimension(changeable):
    assert changeable.with_settings({"lowest": "120 mm"}).settings["lowest"].value == 12


@pytest.mark.parametrize("branches", ["sharp if maruten otherwise kiwa", "kiwa if maruten otherwise sharp"])
def test_a_step_may_stand_in_either_branch(branches):
    assert codes(f"fault f if ({branches}) at most fair: no better than cull\n") == []


def test_a_word_that_is_no_step_is_answered_in_either_branch():
    assert codes("fault f if (sharpp if maruten otherwise kiwa) at most fair: no better than cull\n") == [
        "unknown-step"
    ]
    assert codes("fault f if (sharpp if maruten otherwise length) above 5 cm: no better than cull\n") == [
        "unknown-name"
    ]


def test_a_term_that_is_only_yes_is_no_condition():
    assert codes("term q means yes\nterm r means q\nfault f if r: no better than cull\n") == ["always-true"]


def cuts(text, name="length"):
    rules = koirules.read_standard(f"{HEAD}{text}{GRADES}").grader.rules
    return cuts_of(rules, rules.settings)[name]


def test_a_trait_that_is_read_in_a_sum_through_a_term_is_entangled():
    term, trait = "term w means length\n", "trait width_seen as number in cm from 0 to 50\n"
    alone = "fault f if w above 5 cm and w below 7 cm: no better than cull\n"
    summed = "fault f if w above 5 cm and w + width_seen above 20 cm: no better than cull\n"
    assert not cuts(term + alone).entangled
    assert cuts(trait + term + summed).entangled
    further = "term v means w\nfault f if v above 5 cm and v + width_seen above 20 cm: no better than cull\n"
    assert cuts(trait + term + further).entangled
