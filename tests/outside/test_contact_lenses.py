"""Nine rules for contact lenses, against the 24 cases that they were drawn from.

Cases and rules: J. Cendrowska, PRISM: an algorithm for inducing modular rules, Int. J. Man-Machine Studies 27 (1987),
349-370. Both are retyped from memory; the numbers of cases a class (15, 5, 4) are those that are published with them.
"""

from collections import Counter
from itertools import product

import pytest

import koirules

AGES = ("young", "pre_presbyopic", "presbyopic")
PRESCRIPTIONS = ("myope", "hypermetrope")
YES_NO = ("no", "yes")
TEARS = ("reduced", "normal")

# The last trait varies fastest: tears, then astigmatism, then prescription, then age.
CLASSES = """
no_lenses soft no_lenses hard  no_lenses soft no_lenses hard
no_lenses soft no_lenses hard  no_lenses soft no_lenses no_lenses
no_lenses no_lenses no_lenses hard  no_lenses soft no_lenses no_lenses
"""
NAMES = ("age", "prescription", "astigmatic", "tears")
CASES = dict(zip(product(AGES, PRESCRIPTIONS, YES_NO, TEARS), CLASSES.split(), strict=True))

RULES = """
standard "Contact lenses" edition 1987
trait age as scale young < pre_presbyopic < presbyopic
trait prescription as choice of (myope, hypermetrope)
trait astigmatic as yes or no
trait tears as scale reduced < normal
term moist means tears is normal and not astigmatic
term moist_astigmatic means tears is normal and astigmatic
term old_and_far means age is presbyopic and prescription is hypermetrope and astigmatic
"""
HARD = "moist_astigmatic and prescription is myope or moist_astigmatic and age is young"
SOFT = "age is young and moist or age is pre_presbyopic and moist or prescription is hypermetrope and moist"
NO_LENSES = """tears is reduced
  or age is presbyopic and prescription is myope and not astigmatic
  or age is pre_presbyopic and prescription is hypermetrope and astigmatic
  or old_and_far"""
GRADES = [f"grade hard if {HARD}", f"grade soft if {SOFT}", f"grade no_lenses if {NO_LENSES}"]


def standard_of(grades):
    return koirules.read_standard("\n".join([RULES, *grades]))


NINE = standard_of([*GRADES, "grade undecided otherwise"])
LAST_LEFT_OVER = standard_of([*GRADES[:2], "grade no_lenses otherwise"])
PARTIAL = list(product(*((None, *values) for values in (AGES, PRESCRIPTIONS, YES_NO, TEARS))))


def classes_left(partial):
    """The classes of all the cases that a partial record fits."""
    return {
        found
        for case, found in CASES.items()
        if all(wanted is None or wanted == value for wanted, value in zip(partial, case, strict=True))
    }


def possible(standard, partial):
    return set(standard.grade(dict(zip(NAMES, partial, strict=True))).possible)


def test_the_cases_have_the_published_numbers_a_class():
    assert Counter(CASES.values()) == {"no_lenses": 15, "soft": 5, "hard": 4}


@pytest.mark.parametrize("case", CASES)
def test_the_nine_rules_class_every_case_as_published(case):
    assert NINE.grade(dict(zip(NAMES, case, strict=True))).grade == CASES[case]


def test_each_rule_is_sure_of_its_own_class_so_their_order_does_not_matter():
    turned = standard_of([*reversed(GRADES), "grade undecided otherwise"])
    assert all(possible(turned, case) == {found} for case, found in CASES.items())


@pytest.mark.parametrize("standard", [NINE, LAST_LEFT_OVER])
def test_no_class_is_lost_whatever_is_missing(standard):
    assert len(PARTIAL) == 4 * 3 * 3 * 3
    assert all(classes_left(partial) <= possible(standard, partial) for partial in PARTIAL)


def test_the_classes_named_are_exactly_those_left():
    # `undecided` is not a class: interval logic cannot know that the nine rules leave no case over.
    assert all(classes_left(partial) == possible(NINE, partial) - {"undecided"} for partial in PARTIAL)


def test_where_the_last_class_takes_what_is_left_over_four_of_108_name_one_too_many():
    # With normal tears, `soft` and `hard` each hang on astigmatism alone; that one of them holds either way, interval
    # logic does not see, so that the last class stays possible.
    too_many = [partial for partial in PARTIAL if classes_left(partial) != possible(LAST_LEFT_OVER, partial)]
    assert too_many == [
        ("young", None, None, "normal"),
        ("young", "myope", None, "normal"),
        ("young", "hypermetrope", None, "normal"),
        ("pre_presbyopic", "myope", None, "normal"),
    ]
