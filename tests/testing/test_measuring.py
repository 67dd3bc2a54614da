"""Measures of a plugin tried out: one that takes what is missing for nothing is found, and so is one that fails."""

from __future__ import annotations

from decimal import Decimal

import pytest
from attrs import evolve

from koirules.testing import check_plugin, findings
from koirules.testing.measuring import holds
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.measures import Computed, Formula, Found, Given, Measure
from koirules.vocabulary.readings import PlaceSet, Reading, Span
from koirules.vocabulary.traits import Better, Trait, Vocabulary
from koirules.vocabulary.units import UNITS
from tests.plugins.invented import Gives

SHARE = Number(UNITS["%"], Decimal(0), Decimal(100))
MARKS = Trait("marks", "marks", SHARE, Better.LESS, describe="How much of the back lies under marks.")
DARK = Trait("dark", "dark marks", SHARE, Better.LESS, describe="How much of the back lies under dark marks.")
FREE = Trait("free", "free of marks", SHARE, describe="What is left of the back beside the marks.")
WHOLE = Formula("free", "greater of (100 % - marks - dark, 0 %)")


def plugin(*measures: Measure) -> Gives:
    said = {"clean back": "marks below 5 % and dark below 5 %"}
    lace = Vocabulary("lace", "lace", (MARKS, DARK, FREE), describe="A net of marks on the back.", phrases=said)
    return Gives(evolve(lace, measures=measures))


def taken_for_nothing(given: Given) -> Found:
    marks, dark = (given.readings.get(name, [None] * given.fish) for name in ("marks", "dark"))
    free = []
    for one, other in zip(marks, dark, strict=True):
        low = (one.low if isinstance(one, Span) else 0.0) + (other.low if isinstance(other, Span) else 0.0)
        free.append(Span(max(0.0, 100.0 - low), max(0.0, 100.0 - low)))
    return Found({"free": free})


def failing(_: Given) -> Found:
    raise ZeroDivisionError("of the plugin")


def test_a_formula_is_sound() -> None:
    check_plugin(plugin(WHOLE))


def test_a_function_that_takes_what_is_missing_for_nothing_is_told() -> None:
    found = findings(plugin(Computed("free of marks", ("marks", "dark"), ("free",), taken_for_nothing)))
    (told,) = [told for told in found if "not sound" in told]
    assert told.startswith("the measure of free is not sound: it gives ")


def test_a_function_that_fails_is_told() -> None:
    found = findings(plugin(Computed("free of marks", ("marks", "dark"), ("free",), failing)))
    assert any("ZeroDivisionError: of the plugin" in told for told in found), found


def test_a_formula_that_does_not_hold_is_told_with_its_variety() -> None:
    found = findings(plugin(Formula("free", "100 cm - marks")))
    assert any("The variety lace cannot be used: the formula" in told for told in found), found


@pytest.mark.parametrize(
    ("wide", "narrow", "held"),
    [
        (Span(1, 3), Span(2, 2), True),
        (Span(1, 3), Span(2, 4), False),
        (PlaceSet(1, 7), PlaceSet(3, 3), True),
        (PlaceSet(1, 7), PlaceSet(2, 3), False),
        (PlaceSet(1, 3), PlaceSet(1, 7), False),
        (6, 4, True),
        (6, 1, False),
        ("a", "a", True),
        ("a", "b", False),
    ],
)
def test_what_a_reading_could_be_holds_what_a_surer_one_is(wide: Reading, narrow: Reading, held: bool) -> None:
    assert holds(wide, narrow) is held
