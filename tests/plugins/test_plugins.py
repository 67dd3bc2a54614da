"""A plugin that is sound adds to the registry; one that is not is left out, reported, and leaves nothing behind."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

import pytest
from attrs.exceptions import FrozenInstanceError

import koirules
from koirules.hooks import hookimpl
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import YesNo
from koirules.vocabulary.traits import Trait, Vocabulary
from tests.plugins.invented import NET, Gives, assert_left_out, lace, only_problem


def test_a_good_plugin_adds_a_variety_with_the_traits_it_includes() -> None:
    registry = registry_with(Gives(lace(includes=("shared",))))
    assert registry.problems == ()
    assert list(registry.varieties) == ["kohaku", "lace"]
    assert [*registry.varieties["lace"].traits][-1] == "net"
    assert "length" in registry.varieties["lace"].traits
    assert "kiwa" not in registry.varieties["lace"].traits
    assert registry.sources["lace"] == "invented"


def test_a_variety_may_include_another_one_and_takes_each_trait_once() -> None:
    registry = registry_with(Gives(lace(includes=("shared", "kohaku"))))
    assert registry.problems == ()
    assert [*registry.varieties["lace"].traits] == [*registry.varieties["kohaku"].traits, "net"]


def test_a_variety_may_include_what_a_later_plugin_gives() -> None:
    later = Gives(lace(name="nets", is_variety=False), name="later")
    registry = registry_with(Gives(lace(Trait("tone", "tone", YesNo()), includes=("nets",))), later)
    assert registry.problems == ()
    assert [*registry.varieties["lace"].traits] == ["net", "tone"]
    assert "nets" not in registry.varieties


def test_two_varieties_may_use_the_same_name_for_their_own_trait() -> None:
    registry = registry_with(Gives(lace(), lace(name="mesh")))
    assert registry.problems == ()


def test_a_plugin_may_give_rule_sets_alone(tmp_path: Path) -> None:
    file = tmp_path / "standard.koi"
    file.write_text("", encoding="utf-8")
    registry = registry_with(Gives(rulesets={"lace_house": file}))
    assert registry.problems == ()
    assert registry.rulesets["lace_house"] == file


def test_a_registry_cannot_be_changed() -> None:
    registry = registry_with()
    with pytest.raises(FrozenInstanceError):
        registry.problems = ()  # type: ignore[misc]
    with pytest.raises(TypeError):
        registry.varieties["lace"] = registry.varieties["kohaku"]  # type: ignore[index]
    with pytest.raises(TypeError):
        registry.varieties["kohaku"].traits["net"] = NET  # type: ignore[index]


def test_a_plugin_that_raises_what_is_no_exception_is_left_out() -> None:
    class Panic(BaseException):
        """As extensions in Rust raise it."""

    class Panics(Gives):
        @hookimpl
        def koirules_vocabularies(self) -> Sequence[Vocabulary]:
            raise Panic("in an extension")

    registry = registry_with(Panics())
    assert_left_out(registry)
    assert "Panic: in an extension" in only_problem(registry).cause


def test_what_a_plugin_prints_does_not_stand_in_the_data_of_a_command(capsys: pytest.CaptureFixture[str]) -> None:
    class Prints(Gives):
        @hookimpl
        def koirules_vocabularies(self) -> Sequence[Vocabulary]:
            print("loading")
            return super().koirules_vocabularies()

    assert registry_with(Prints(lace())).problems == ()
    printed = capsys.readouterr()
    assert (printed.out, printed.err) == ("", "loading\n")


def test_a_plugin_that_raises_in_a_hook_is_left_out() -> None:
    class Raises:
        __name__ = "invented"
        KOIRULES_API = 1

        @hookimpl
        def koirules_vocabularies(self) -> Sequence[Vocabulary]:
            raise LookupError("no such\nlist")

        @hookimpl
        def koirules_rulesets(self) -> Mapping[str, Path]:
            return {}

    registry = registry_with(Raises())
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-raises"
    assert "in koirules_vocabularies (LookupError: no such list)" in only_problem(registry).cause


def test_a_good_hook_of_a_plugin_with_a_bad_one_is_rolled_back() -> None:
    registry = registry_with(Gives(lace(), rulesets=["lace_house"]))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-wrong-type"


def test_a_bad_plugin_takes_no_good_one_along() -> None:
    registry = registry_with(Gives("lace"), Gives(lace(), name="sound"))
    assert only_problem(registry).code == "plugin-wrong-type"
    assert "lace" in registry.varieties


def test_a_plugin_that_exits_is_left_out() -> None:
    class Exits:
        __name__ = "invented"
        KOIRULES_API = 1

        @hookimpl
        def koirules_vocabularies(self) -> Sequence[Vocabulary]:
            raise SystemExit(3)

    registry = registry_with(Exits())
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-raises"


def test_a_misspelt_hook_is_answered_with_the_right_one() -> None:
    class Misspelt:
        __name__ = "invented"
        KOIRULES_API = 1

        @hookimpl
        def koirules_vocabularys(self) -> Sequence[Vocabulary]:
            return (lace(),)

    registry = registry_with(Misspelt())
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-unknown-hook"
    assert only_problem(registry).mend == 'Did you mean "koirules_vocabularies"?'


def test_a_hook_of_a_later_version_may_be_marked_optional() -> None:
    class Later(Gives):
        @hookimpl(optionalhook=True)
        def koirules_moon_phases(self) -> Sequence[str]:
            return ("new", "full")

    assert registry_with(Later(lace())).problems == ()


def test_a_hook_that_asks_for_more_than_there_is_is_left_out() -> None:
    class Asks:
        __name__ = "invented"
        KOIRULES_API = 1

        @hookimpl
        def koirules_vocabularies(self, weather: str) -> Sequence[Vocabulary]:
            return (lace(name=weather),)

    registry = registry_with(Asks())
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-raises"
    assert "weather" in only_problem(registry).cause


def test_a_plugin_without_marked_functions_is_told_to_mark_them() -> None:
    class Unmarked:
        __name__ = "invented"
        KOIRULES_API = 1

        def koirules_vocabularies(self) -> Sequence[Vocabulary]:
            return (lace(),)

    registry = registry_with(Unmarked())
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-without-hooks"


def test_a_vocabulary_with_a_name_from_the_box_is_a_clash() -> None:
    registry = registry_with(Gives(lace(name="kohaku")))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-clash"
    assert 'The vocabulary "kohaku" is already there, from koirules' in only_problem(registry).cause


def test_of_two_plugins_with_the_same_name_the_first_stays() -> None:
    first = Gives(lace(Trait("tone", "tone", YesNo())), name="first")
    registry = registry_with(first, Gives(lace()))
    assert only_problem(registry).code == "plugin-clash"
    assert "from first" in only_problem(registry).cause
    assert list(registry.varieties["lace"].traits) == ["tone"]


def test_a_rule_set_with_a_name_that_is_taken_is_a_clash(tmp_path: Path) -> None:
    file = tmp_path / "standard.koi"
    file.write_text("", encoding="utf-8")
    first = Gives(rulesets={"lace_house": file}, name="first")
    registry = registry_with(first, Gives(lace(), rulesets={"lace_house": file}))
    assert only_problem(registry).code == "plugin-clash"
    assert "lace" not in registry.varieties


def test_a_trait_that_is_already_in_the_same_variety_is_a_clash() -> None:
    registry = registry_with(Gives(lace(Trait("length", "length", YesNo()), includes=("shared",))))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-clash"
    assert 'the vocabulary "shared"' in only_problem(registry).cause


def test_the_same_trait_twice_in_one_vocabulary_is_a_clash() -> None:
    registry = registry_with(Gives(lace(NET, NET)))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-clash"


def test_an_include_that_is_not_there_is_answered_with_a_near_one() -> None:
    registry = registry_with(Gives(lace(includes=("sharde",))))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-unknown-include"
    assert only_problem(registry).mend == 'Did you mean "shared"?'


def test_a_plugin_that_leans_on_one_that_was_left_out_is_left_out_too() -> None:
    bad = Gives(lace(name="nets", includes=("nowhere",)), name="invented_nets")
    registry = registry_with(Gives(lace(includes=("nets",))), bad)
    assert_left_out(registry)
    assert [problem.code for problem in registry.problems] == ["plugin-unknown-include"] * 2


def test_vocabularies_that_include_each_other_are_a_circle() -> None:
    registry = registry_with(Gives(lace(includes=("mesh",))), Gives(lace(name="mesh", includes=("lace",))))
    assert_left_out(registry)
    assert {problem.code for problem in registry.problems} == {"plugin-include-circle"}


def test_the_box_given_again_is_there_once() -> None:
    from koirules import builtin

    assert registry_with(builtin) == registry_with()


def test_a_rule_set_that_is_not_there_names_the_plugins_that_were_left_out():
    class Broken(Gives):
        KOIRULES_API = 99

    found = registry_with(Broken(name="lost"))
    with pytest.raises(koirules.StandardError) as told:
        koirules.load_standard("tosai_lost", found)
    (problem,) = told.value.problems
    assert problem.code == "no-such-file"
    assert "A plugin that was left out may have it (plugin lost: The plugin was left out." in problem.mend
    with pytest.raises(koirules.StandardError) as told:
        koirules.load_standard("tosai_lost", registry_with())
    assert "left out" not in told.value.problems[0].mend
