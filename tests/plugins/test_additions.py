"""What plugins add to the vocabularies of others: there wherever the vocabulary is, or left out with the reason."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest

from koirules import read_standard
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import Number, Scale, YesNo
from koirules.vocabulary.measures import Constant, Formula
from koirules.vocabulary.traits import Addition, Trait
from koirules.vocabulary.units import UNITS
from tests.plugins.invented import Gives, lace, only_problem
from tests.repo.snippets import whole

HALF = Trait("half_length", "half of the length", Number(UNITS["cm"], Decimal(0), Decimal(80)))
GOOD = Addition(
    "shared", (HALF,), (Formula("half_length", "length / 2"),), phrases={"half as long": "half_length below 8 cm"}
)


def test_an_addition_is_in_every_vocabulary_that_includes_it() -> None:
    registry = registry_with(Gives(additions=[GOOD]))
    assert registry.problems == ()
    assert "half_length" in registry.varieties["kohaku"].traits
    assert registry.varieties["kohaku"].phrases["half as long"] == "half_length below 8 cm"
    assert "half_length" not in registry_with().varieties["kohaku"].traits


def test_a_rule_may_ask_for_what_was_added_and_records_are_measured_by_it() -> None:
    registry = registry_with(Gives(additions=[GOOD]))
    rules = whole("fault short if half_length below 8 cm: no better than cull")
    standard = read_standard(rules, registry=registry)
    assert standard.grade({"length": "14 cm"}).faults == ("short",)
    assert standard.grade({"length": "18 cm"}).faults == ()


@pytest.mark.parametrize(
    ("addition", "code", "told"),
    [
        (Addition("sharde", (HALF,)), "plugin-addition-nowhere", "That vocabulary is not there"),
        (
            Addition("shared", (Trait("length", "length", YesNo()),)),
            "plugin-addition",
            'the trait "length" is there already',
        ),
        # The clash is in a vocabulary that includes the one that is added to.
        (Addition("shared", (Trait("kiwa", "kiwa", YesNo()),)), "plugin-addition", 'the trait "kiwa" is there already'),
        (
            Addition("shared", (Trait("tone", "tone", Scale(("length", "low"))),)),
            "plugin-addition",
            "is a word of the trait",
        ),
        (
            Addition("shared", (), (Formula("girth_ratio", "1"),)),
            "plugin-addition",
            'something else gives the trait "girth_ratio"',
        ),
        (Addition("shared", (), (Formula("nowhere", "1"),)), "plugin-addition", '"nowhere"'),
        (
            Addition(
                "shared",
                constants=(Constant("gill_edge", "x", Number(UNITS["%"], Decimal(0), Decimal(50)), Decimal(20)),),
            ),
            "plugin-addition",
            'the constant "gill_edge" is there already',
        ),
    ],
)
def test_an_addition_that_does_not_fit_is_left_out_alone(addition: Addition, code: str, told: str) -> None:
    registry = registry_with(Gives(lace(), additions=[addition]))
    problem = only_problem(registry)
    assert problem.code == code
    assert told in problem.cause
    assert "invented" in str(problem.site)
    assert "lace" in registry.varieties
    assert registry.varieties["kohaku"] == registry_with().varieties["kohaku"]


def test_of_two_additions_with_one_name_the_first_stays() -> None:
    registry = registry_with(Gives(additions=[GOOD], name="first"), Gives(additions=[GOOD], name="second"))
    assert only_problem(registry).code == "plugin-addition"
    assert "second" in str(only_problem(registry).site)
    assert "half_length" in registry.varieties["kohaku"].traits


@pytest.mark.parametrize(
    "addition",
    ["shared", Addition(1), Addition("shared", [HALF]), Addition("shared", ("half",))],  # type: ignore[arg-type]
)
def test_an_addition_of_another_type_takes_its_plugin_out(addition: Any) -> None:
    registry = registry_with(Gives(lace(), additions=[addition]))
    assert only_problem(registry).code == "plugin-wrong-type"
    assert "lace" not in registry.varieties
