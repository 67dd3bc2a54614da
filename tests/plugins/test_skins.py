"""A skin lies over a variety: the traits of both can be named, and a name that both use for two things is a problem."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from koirules import StandardError, read_standard
from koirules.commands import inputs, main
from koirules.plugins import Registry, registry_with
from koirules.vocabulary.kinds import Count, Scale, YesNo
from koirules.vocabulary.skins import name_with
from koirules.vocabulary.traits import Trait
from tests.plugins.invented import Gives, assert_left_out, lace, only_problem

ROWS = Trait("glitter_rows", "rows that glitter", Count(10))
BARE = Trait("bare_rows", "rows of large scales", Scale(("broken", "straight")))


def skins(*more: object) -> Registry:
    glitter = lace(ROWS, name="glitter", is_skin=True, includes=("shared",))
    registry = registry_with(Gives(glitter, lace(BARE, name="bare", is_skin=True), *more))
    assert registry.problems == ()
    return registry


def header(variety: str) -> str:
    return f'standard "try" edition 1 variety {variety}\ngrade a if spine is bent\ngrade b otherwise\n'


def codes(variety: str, registry: Registry) -> list[str]:
    with pytest.raises(StandardError) as found:
        read_standard(header(variety), registry=registry)
    return [problem.code for problem in found.value.problems]


def test_a_skin_is_no_variety_of_its_own() -> None:
    registry = skins()
    assert list(registry.varieties) == ["kohaku"]
    assert list(registry.varieties.skins) == ["glitter", "bare"]
    assert registry.sources["glitter"] == "invented"


def test_rules_may_name_the_traits_of_the_variety_and_of_its_skins() -> None:
    text = header("kohaku with (glitter, bare)") + (
        "fault f if glitter_rows below 3 and bare_rows is broken and kiwa is blurred: no better than b"
    )
    standard = read_standard(text, registry=skins())
    assert standard.variety == "kohaku with (glitter, bare)"
    plain = registry_with().varieties["kohaku"].traits
    assert list(standard.traits) == [*plain, "glitter_rows", "bare_rows"]
    assert standard.grade({"glitter_rows": 1, "bare_rows": "broken", "kiwa": "blurred", "spine": "bent"}).grade == "b"


def test_what_a_skin_adds_is_offered_where_it_is_missed() -> None:
    with pytest.raises(StandardError) as found:
        read_standard(header("kohaku") + "fault f if glitter_rows below 3: no better than b", registry=skins())
    (problem,) = found.value.problems
    assert problem.code == "unknown-name"
    assert "`variety kohaku with glitter`" in problem.mend


@pytest.mark.parametrize(
    ("variety", "code"),
    [
        ("glitter", "skin-alone"),
        ("kohaku with glittr", "unknown-skin"),
        ("kohaku with kohaku", "variety-as-skin"),
        ("kohaku with (bare, bare)", "skin-twice"),
        ("kohaku with rough", "skin-clash"),
        ("kohaku with (glitter, shiny)", "skin-clash"),
        ("kohaku with named", "skin-clash"),
    ],
)
def test_what_cannot_lie_over_a_variety_is_one_problem_and_no_trait_is_missed(variety: str, code: str) -> None:
    rough = lace(Trait("kiwa", "edge", YesNo()), name="rough", is_skin=True)
    shiny = lace(Trait("glitter_rows", "rows", YesNo()), name="shiny", is_skin=True)
    named = lace(Trait("word", "a word", Scale(("kiwa", "other"))), name="named", is_skin=True)
    assert codes(variety, skins(rough, shiny, named)) == [code]


def test_everything_wrong_with_a_header_is_said_at_once() -> None:
    assert codes("kohacu with (glittr, kohaku)", skins()) == ["unknown-variety", "unknown-skin", "variety-as-skin"]


def test_a_vocabulary_is_a_variety_or_a_skin() -> None:
    registry = registry_with(Gives(lace(is_skin=True, is_variety=True)))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-skin-or-variety"


def test_a_skin_has_a_name_that_no_variety_has() -> None:
    registry = registry_with(Gives(lace(name="kohaku", is_skin=True)))
    assert_left_out(registry)
    assert only_problem(registry).code == "plugin-clash"


def test_a_variety_with_skins_is_named_as_a_header_has_it() -> None:
    assert name_with("showa", ()) == "showa"
    assert name_with("showa", ("ginrin",)) == "showa with ginrin"
    assert name_with("showa", ("ginrin", "doitsu")) == "showa with (ginrin, doitsu)"


@pytest.fixture
def farm(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(inputs, "load_registry", skins)


def run(*words: str) -> Result:
    result = CliRunner().invoke(main, words)
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


@pytest.mark.usefixtures("farm")
@pytest.mark.parametrize("words", [("kohaku", "with", "glitter", "bare"), ("kohaku with (glitter, bare)",)])
def test_traits_and_sheets_of_a_variety_with_skins(words: tuple[str, ...]) -> None:
    listed = [trait["name"] for trait in json.loads(run("traits", *words, "--json").output)]
    assert listed[-2:] == ["glitter_rows", "bare_rows"]
    assert run("sheet", *words, "--out", "sheet.csv").exit_code == 0
    heads = Path("sheet.csv").read_text(encoding="utf-8-sig").strip().split(",")
    assert "glitter_rows" in heads and "bare_rows" in heads and "kiwa" in heads


@pytest.mark.usefixtures("farm")
def test_the_traits_of_a_skin_alone_are_listed_and_make_no_sheet() -> None:
    listed = [trait["name"] for trait in json.loads(run("traits", "bare", "--json").output)]
    assert listed == ["bare_rows"]
    assert "length" in run("traits", "shared").output
    result = run("sheet", "glitter", "--out", "sheet.csv")
    assert result.exit_code == 2
    assert '"glitter" is a skin, which lies over a variety' in result.output


@pytest.mark.usefixtures("farm")
def test_a_sheet_for_rules_of_a_skinned_variety() -> None:
    rule = "fault f if glitter_rows below 3: no better than b"
    Path("rules.koi").write_text(header("kohaku with glitter") + rule, encoding="utf-8")
    words = ("--rules", "rules.koi", "--out", "sheet.csv")
    assert run("sheet", "kohaku", *words).exit_code == 2
    assert run("sheet", "kohaku", "with", "glitter", *words).exit_code == 0
    assert "glitter_rows" in Path("sheet.csv").read_text(encoding="utf-8-sig")


@pytest.mark.usefixtures("farm")
def test_a_command_takes_a_variety_in_the_words_of_a_cell() -> None:
    assert run("traits", "Glitter", "Kohaku").output == run("traits", "kohaku", "with", "glitter").output
    assert run("traits", "kohaku", "glitter").exit_code == 0


@pytest.mark.usefixtures("farm")
@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("kohaku", "chagoi"), "kohaku with chagoi"),
        (("kohaku", "with"), "Name the skin"),
        (("kohaku", "with", "glittr"), 'Did you mean "glitter"?'),
        (("kohaku", "with", "glitter", "glitter"), "stands here twice"),
        (("kohakku", "with", "glitter"), 'Did you mean "kohaku"?'),
    ],
)
def test_a_command_says_what_does_not_go_together(words: tuple[str, ...], told: str) -> None:
    result = run("traits", *words)
    assert result.exit_code == 2
    assert told in result.output


def test_what_people_call_a_variety_is_what_a_header_may_have_meant() -> None:
    text = 'standard "Trial" edition 1 variety ogon\ngrade keep if length at least 3 cm\ngrade cull otherwise\n'
    registry = registry_with(Gives(lace(forms=("ogon",), includes=("shared",))))
    with pytest.raises(StandardError) as error:
        read_standard(text, registry=registry)
    assert [problem.mend for problem in error.value.problems] == ['Did you mean "lace"?']
