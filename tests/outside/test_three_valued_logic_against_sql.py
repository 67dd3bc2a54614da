"""`and`, `or` and `not` over what was not recorded, against NULL in SQL (sqlite3): both are Kleene's strong logic.

Source: S. C. Kleene, Introduction to Metamathematics (1952), section 64; the SQL standard's unknown is his undefined.
A fault shows what a condition is: sure (the fish is capped), a sure no (it is not) or open (both grades are possible).
"""

import sqlite3
from itertools import product

import pytest

import koirules

VALUES = (True, False, None)
PAIRS = list(product(VALUES, VALUES))
SHOWN = {("cull",): 1, ("keep",): 0, ("keep", "cull"): None}


def standard_of(condition):
    return koirules.read_standard(
        f"""standard "Logic" edition 1
trait a as yes or no
trait b as yes or no
trait whole as yes or no
fault shown if {condition}: no better than cull
grade keep if whole
grade cull otherwise
"""
    )


def by_rules(condition, a, b=None):
    return SHOWN[standard_of(condition).grade({"a": a, "b": b, "whole": True}).possible]


def by_sql(expression, *values):
    with sqlite3.connect(":memory:") as database:
        (found,) = database.execute(f"SELECT {expression}", values).fetchone()
    database.close()
    return found


@pytest.mark.parametrize(("a", "b"), PAIRS)
def test_and_is_the_and_of_sql(a, b):
    assert by_rules("a and b", a, b) == by_sql("? AND ?", a, b)


@pytest.mark.parametrize(("a", "b"), PAIRS)
def test_or_is_the_or_of_sql(a, b):
    assert by_rules("a or b", a, b) == by_sql("? OR ?", a, b)


@pytest.mark.parametrize("a", VALUES)
def test_not_is_the_not_of_sql(a):
    assert by_rules("not a", a) == by_sql("NOT ?", a)


@pytest.mark.parametrize(("a", "b"), PAIRS)
def test_a_comparison_with_what_was_not_recorded_is_open_as_in_sql(a, b):
    assert by_rules("a is b", a, b) == by_sql("? = ?", a, b)
    assert by_rules("a is not b", a, b) == by_sql("? <> ?", a, b)


@pytest.mark.parametrize(("a", "b"), PAIRS)
def test_except_is_and_not(a, b):
    text = standard_of("a").rules.text.replace("if a:", "if a except b:")
    found = koirules.read_standard(text).grade({"a": a, "b": b, "whole": True}).possible
    assert SHOWN[found] == by_sql("? AND NOT ?", a, b)
