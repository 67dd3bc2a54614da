"""Words that no trait may have for its name, and labels in the one form in which they are compared."""

from decimal import Decimal

import pytest

import koirules
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Count, Label, Number, YesNo
from koirules.vocabulary.traits import (
    AS_GIRTH,
    AS_LENGTH,
    AS_WEIGHT,
    GIRTH_OVER_LENGTH,
    LENGTH_OVER_GIRTH,
    UNCHANGED,
    WEIGHT_OVER_LENGTH_CUBED,
    Trait,
)
from koirules.vocabulary.wellformed import check_trait


@pytest.mark.parametrize("name", ["fish", "none", "grade"])
def test_no_trait_of_a_plugin_is_named_by_a_word_that_records_or_rules_keep(name):
    assert check_trait(Trait(name, name, YesNo()), "a plugin")


def test_no_trait_of_a_house_takes_the_column_of_names():
    with pytest.raises(koirules.StandardError) as caught:
        koirules.read_standard('standard "Trial" edition 1\ntrait fish as label\ngrade high otherwise\n')
    assert any("fish" in str(problem) for problem in caught.value.problems)


def test_a_label_is_the_same_whichever_way_its_letters_were_typed():
    assert read_value(Label(), " Cafe\u0301 ") == read_value(Label(), "Caf\u00e9") == "Caf\u00e9"


@pytest.mark.parametrize(
    ("low", "high", "cause"),
    [
        ("0", "1000000", None),
        ("-1000000", "0", None),
        ("0", "1000001", "beyond 1,000,000"),
        ("-1000001", "0", "beyond 1,000,000"),
        ("0.000001", "1", None),
        ("0", "1.0000000", None),
        ("0.0000001", "1", "more than six decimals"),
        ("0", "0.1234567", "more than six decimals"),
        ("1", "1", "goes from 1 to 1"),
        ("2", "1", "goes from 2 to 1"),
    ],
)
def test_a_number_of_a_plugin_has_a_range_that_the_rule_language_can_write(low, high, cause):
    problems = check_trait(Trait("t", "T", Number(None, Decimal(low), Decimal(high)), describe="It is."), "a plugin")
    assert [cause in str(problem) for problem in problems] == ([] if cause is None else [True])


@pytest.mark.parametrize(
    ("high", "right"), [(0, False), (1, True), (1_000_000, True), (1_000_001, False), (True, False)]
)
def test_a_count_of_a_plugin_goes_up_to_at_least_one_and_at_most_a_million(high, right):
    problems = check_trait(Trait("t", "T", Count(high), describe="It is."), "a plugin")
    assert (not problems) is right, problems


@pytest.mark.parametrize(
    ("figure", "power"),
    [
        (UNCHANGED, 0),
        (AS_LENGTH, 1),
        (AS_GIRTH, 1),
        (AS_WEIGHT, 3),
        (GIRTH_OVER_LENGTH, 0),
        (LENGTH_OVER_GIRTH, 0),
        (WEIGHT_OVER_LENGTH_CUBED, 0),
    ],
)
def test_a_fish_that_keeps_its_form_as_it_grows_keeps_its_shares(figure, power):
    assert figure.power(3.0) == power
    # A fish that grows stouter: weight as L^3.2, so girth as L^1.1.
    stouter = {
        AS_GIRTH: 1.1,
        AS_WEIGHT: 3.2,
        GIRTH_OVER_LENGTH: 0.1,
        LENGTH_OVER_GIRTH: -0.1,
        WEIGHT_OVER_LENGTH_CUBED: 0.2,
    }
    assert figure.power(3.2) == pytest.approx(stouter.get(figure, power))
