"""What a plugin gives is looked through before anybody uses it: types, names, ranges, steps, files."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from koirules.hooks import hookimpl
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import Choice, Count, Kind, Number, Places, Scale, YesNo
from koirules.vocabulary.subject import Cautions, Subject
from koirules.vocabulary.traits import AS_LENGTH, Trait, Vocabulary
from koirules.vocabulary.units import UNITS, Dimension, Unit
from koirules.vocabulary.wellformed import check_vocabulary
from tests.plugins.invented import NET, Gives, assert_left_out, lace, only_problem, with_kind


@pytest.mark.parametrize(
    "plugin",
    [
        pytest.param(Gives("lace"), id="a text for a vocabulary"),
        pytest.param(Gives(None), id="nothing for a vocabulary"),
        pytest.param(Gives(lace("net")), id="a text for a trait"),
        pytest.param(Gives(Vocabulary("lace", "lace", [NET])), id="a list of traits"),  # type: ignore[arg-type]
        pytest.param(Gives(Vocabulary(7, "lace", (NET,))), id="a number for a name"),  # type: ignore[arg-type]
        pytest.param(Gives(lace(includes=(7,))), id="a number for an include"),
        pytest.param(Gives(lace(Trait("net", "net", YesNo(), "more is better"))), id="a text for better"),  # type: ignore[arg-type]
        pytest.param(Gives(lace(Trait("net", "net", YesNo(), titles={"ja": 7}))), id="a number for a title"),  # type: ignore[dict-item]
        pytest.param(with_kind("yes or no"), id="a text for a kind"),
        pytest.param(with_kind(Scale(["faint", "clear"])), id="a list of steps"),  # type: ignore[arg-type]
        pytest.param(with_kind(Number(None, 0.0, 1.0)), id="floats for a range"),  # type: ignore[arg-type]
        pytest.param(with_kind(Count(2.5)), id="a half count"),  # type: ignore[arg-type]
        pytest.param(
            with_kind(Number(Unit("shaku", Dimension.LENGTH, Decimal("30.3")), Decimal(0), Decimal(3))),
            id="a unit that the language lacks",
        ),
        pytest.param(Gives(rulesets=["lace_house"]), id="a list of rule sets"),
        pytest.param(Gives(rulesets={"lace_house": "standard.koi"}), id="a text for a path"),
    ],
)
def test_a_plugin_that_gives_a_wrong_type_is_left_out(plugin: Gives) -> None:
    registry = registry_with(plugin)
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-wrong-type"


def test_a_hook_that_gives_nothing_at_all_is_a_wrong_type() -> None:
    class Forgets:
        __name__ = "invented"
        KOIRULES_API = 1

        @hookimpl
        def koirules_vocabularies(self) -> None:
            lace()

    registry = registry_with(Forgets())
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-wrong-type"
    assert "NoneType" in only_problem(registry).cause


@pytest.mark.parametrize(
    ("kind", "code"),
    [
        pytest.param(Scale(("faint",)), "plugin-bad-steps", id="one step"),
        pytest.param(Choice(()), "plugin-bad-steps", id="no option"),
        pytest.param(Places(()), "plugin-bad-steps", id="no place"),
        pytest.param(Scale(("faint", "clear", "faint")), "plugin-bad-steps", id="a step twice"),
        pytest.param(Scale(("faint", "very clear")), "plugin-bad-name", id="a step of two words"),
        pytest.param(Scale(("faint", "otherwise")), "plugin-reserved-word", id="a step that is an operator"),
        pytest.param(Choice(("yes", "perhaps")), "plugin-reserved-word", id="yes as an option"),
        pytest.param(Places(("tail", "none")), "plugin-reserved-word", id="none as a place"),
        pytest.param(Scale(("faint", "net")), "plugin-step-like-trait", id="a step like the trait"),
        pytest.param(Number(UNITS["cm"], Decimal(5), Decimal(5)), "plugin-bad-range", id="an empty range"),
        pytest.param(Number(None, Decimal(0), Decimal("NaN")), "plugin-bad-range", id="an end that is no number"),
        pytest.param(Number(UNITS["kg"], Decimal(0), Decimal(2000)), "plugin-bad-range", id="too large in grams"),
        pytest.param(Number(None, Decimal(0), Decimal("0.0000001")), "plugin-bad-range", id="seven decimals"),
        pytest.param(Count(0), "plugin-bad-range", id="a count up to nothing"),
    ],
)
def test_a_kind_that_rule_files_cannot_use_is_reported(kind: Kind, code: str) -> None:
    registry = registry_with(with_kind(kind))
    assert_left_out(registry)
    assert only_problem(registry).code == code


@pytest.mark.parametrize(
    "kind", [Count(5), Number(None, Decimal(0), Decimal(1)), Number(UNITS["%"], Decimal(5), Decimal(90))]
)
def test_what_becomes_less_as_white_grows_in_is_a_share_from_nothing(kind: Kind) -> None:
    trait = Trait("net", "net", kind, white_from_sides=True)
    registry = registry_with(Gives(lace(trait)))
    assert_left_out(registry)
    assert "white grows in from the sides" in only_problem(registry).cause


def test_what_ships_in_the_box_is_well_formed() -> None:
    vocabularies = registry_with().vocabularies
    assert {"shared", "kohaku"} <= set(vocabularies)
    assert [problem for one in vocabularies.values() for problem in check_vocabulary(one, "koirules")] == []


def test_none_may_be_a_step() -> None:
    assert registry_with(with_kind(Scale(("none", "clear")))).problems == ()


@pytest.mark.parametrize(
    ("name", "code"),
    [
        ("hi cover", "plugin-bad-name"),
        ("2nd_net", "plugin-bad-name"),
        ("nеt", "plugin-bad-name"),  # the second letter is Cyrillic
        ("\x1b[2J", "plugin-bad-name"),
        ("", "plugin-bad-name"),
        ("batch", "plugin-reserved-word"),
        ("fault", "plugin-reserved-word"),
        ("none", "plugin-reserved-word"),
    ],
)
def test_a_trait_whose_name_cannot_be_written_is_reported(name: str, code: str) -> None:
    registry = registry_with(Gives(lace(Trait(name, "net", YesNo()))))
    assert_left_out(registry)
    assert only_problem(registry).code == code
    assert str(only_problem(registry)).isprintable()


@pytest.mark.parametrize(
    ("kind", "allometry", "code"),
    [
        pytest.param(Number(None, Decimal(-1), Decimal(5)), AS_LENGTH, "plugin-bad-range", id="what can be below 0"),
        pytest.param(Scale(("faint", "clear")), AS_LENGTH, "plugin-wrong-type", id="a scale"),
        pytest.param(Number(None, Decimal(0), Decimal(5)), 2.0, "plugin-wrong-type", id="a power that is a number"),
    ],
)
def test_what_cannot_follow_the_length_of_a_fish_is_reported(kind: Kind, allometry: Any, code: str) -> None:
    registry = registry_with(Gives(lace(Trait("net", "net", kind, allometry=allometry))))
    assert_left_out(registry)
    assert only_problem(registry).code == code


def test_a_name_may_mix_kanji_kana_and_latin() -> None:
    assert registry_with(Gives(lace(Trait("緋のedge", "net", YesNo())))).problems == ()


@pytest.mark.parametrize("name", ["houses/lace", "lace.koi", " "])
def test_a_rule_set_cannot_be_named_like_a_path(name: str, tmp_path: Path) -> None:
    registry = registry_with(Gives(rulesets={name: tmp_path}))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-ruleset-like-path"


def test_a_rule_set_whose_file_is_missing_is_reported(tmp_path: Path) -> None:
    registry = registry_with(Gives(rulesets={"lace_house": tmp_path / "standard.koi"}))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-no-such-file"


def test_all_that_is_wrong_with_a_plugin_is_said_in_one_go() -> None:
    registry = registry_with(Gives(lace(Trait("batch", "batch", Scale(("one", "two"))), name="very lace")))
    assert_left_out(registry)
    assert [problem.code for problem in registry.problems] == [
        "plugin-bad-name",
        "plugin-reserved-word",
        "plugin-reserved-word",
    ]


CAUTIONS = Cautions(("A grade is one look.",), short="One look.")


@pytest.mark.parametrize(
    ("subject", "code", "told"),
    [
        ("pot", "plugin-wrong-type", "a Subject"),
        (Subject("", "pots"), "plugin-bad-subject", "its one is no line of text"),
        (Subject("pot", "pots", place="a\nshelf"), "plugin-bad-subject", "its place is no line of text"),
        (Subject("pot", 3), "plugin-wrong-type", "str"),  # type: ignore[arg-type]
        (Subject("pot", "pots", {"auction": CAUTIONS}), "plugin-bad-subject", 'no occasion "auction"'),
        (Subject("pot", "pots", {"sorting": "mind"}), "plugin-wrong-type", "Cautions"),  # type: ignore[dict-item]
        (Subject("pot", "pots", {"sorting": Cautions("mind")}), "plugin-wrong-type", "tuple"),  # type: ignore[arg-type]
        (Subject("pot", "pots", {"sorting": Cautions((3,))}), "plugin-wrong-type", "paragraphs"),  # type: ignore[arg-type]
        (Subject("pot", "pots", on_paper="a" * 251), "plugin-bad-subject", "250 letters"),
        (Subject("pot", "pots", drawing=4), "plugin-wrong-type", "str"),  # type: ignore[arg-type]
        (Subject("pot", "pots", grows_by="how high"), "plugin-bad-subject", "no name of a trait"),
    ],
)
def test_a_subject_that_cannot_be_used_leaves_the_plugin_out(subject: Any, code: str, told: str) -> None:
    problem = only_problem(registry_with(Gives(lace(subject=subject))))
    assert problem.code == code
    assert told in f"{problem.cause} {problem.mend}"


def test_a_subject_is_of_version_two_of_the_hooks() -> None:
    gives = Gives(lace(subject=Subject("pot", "pots", {"sorting": CAUTIONS})))
    assert not registry_with(gives).problems
    gives.KOIRULES_API = 1
    problem = only_problem(registry_with(gives))
    assert (problem.code, "KOIRULES_API = 2" in problem.mend) == ("plugin-since", True)


@pytest.mark.parametrize(
    ("usual", "code"),
    [({"tosai": ("1", "2")}, "plugin-wrong-type"), ({"tosai": (Decimal(2), Decimal(1))}, "plugin-bad-range")],
)
def test_usual_values_that_are_no_range_leave_the_plugin_out(usual: Any, code: str) -> None:
    height = Trait("height", "height", Number(None, Decimal(0), Decimal(9)), usual=usual)
    assert only_problem(registry_with(Gives(lace(height)))).code == code
