"""A base for several varieties or for any, the pages that build on it, and an installed rule set as a base."""

from pathlib import Path

import pytest

import koirules
from koirules.hooks import hookimpl
from koirules.standard.inherit.effective_text import told_lines
from koirules.testing import registry_with
from koirules.vocabulary.kinds import Count, Scale, YesNo
from koirules.vocabulary.measures import Formula
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary

EDGE = Scale(("soft", "sharp"))
LIKE = Trait("edge", "edge of the red", EDGE, Better.MORE, Growth.RISES)


class Plugin:
    """Two invented varieties that share some traits, and a rule set that is based on nothing."""

    KOIRULES_API = 1
    folder = None

    @hookimpl
    def koirules_vocabularies(self):
        dots = Trait("dots", "dots", Count(9), Better.LESS)
        bands = Trait("bands", "bands", Count(9))
        return (
            Vocabulary(
                "amber",
                "amber",
                (LIKE, dots, Trait("mark", "mark", YesNo()), Trait("twice", "twice", Count(18)), bands),
                includes=("shared",),
                measures=(Formula("twice", "dots + dots"),),
            ),
            Vocabulary(
                "birch",
                "birch",
                (
                    Trait("edge", "edge of the grey", EDGE, Better.LESS, Growth.RISES),
                    Trait("mark", "mark", Count(3)),
                    Trait("twice", "twice", Count(18)),
                    Trait("dots", "dots", Count(9), Better.LESS, Growth.RISES),
                    bands,
                ),
                includes=("shared",),
                measures=(Formula("twice", "dots + dots"),),
            ),
        )

    @hookimpl
    def koirules_rulesets(self):
        return {"open_house": self.folder / "open_house" / "standard.koi"}


FAULTS = """fault bent "bent spine" if spine is bent: no better than out
section body "body" worth 40
points outline by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
grade first if score at least 32
grade out otherwise
"""
INSTALLED = 'standard "Open House (invented)" edition 2026-1 any variety stage tosai\n' + FAULTS


@pytest.fixture(autouse=True)
def box(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    folder = tmp_path / "installed" / "open_house"
    folder.mkdir(parents=True)
    (folder / "standard.koi").write_text(INSTALLED, encoding="utf-8")
    monkeypatch.setattr(Plugin, "folder", tmp_path / "installed")
    Path("hall").mkdir()
    return registry_with(Plugin())


def loaded(box, text, file="hall/page.koi"):
    Path(file).write_text(text, encoding="utf-8")
    return koirules.load_standard(file, box)


def told(box, text, file="hall/page.koi"):
    with pytest.raises(koirules.StandardError) as found:
        loaded(box, text, file)
    return found.value.problems


def head(says, base='"base.koi" edition 1', edition="1"):
    return f'standard "A page (invented)" edition {edition} {says}' + (f" based on {base}\n" if base else "\n")


def test_a_base_for_several_reads_what_all_of_them_have_alike(box):
    base = loaded(
        box, head("variety (amber, birch)", "") + FAULTS + "alert x if batch share of (edge is soft) above 9 %\n"
    )
    assert (base.variety, base.varieties) == ("(amber, birch)", ("amber", "birch"))
    assert {"edge", "bands", "spine", "length"} <= base.traits.keys()
    assert base.traits["edge"].title == "edge of the red"
    assert base.traits["edge"].better is Better.NEITHER  # they do not agree about it
    # Not alike: `mark` in its values, `dots` in its growth; `twice` is, but not what it follows from.
    assert not {"mark", "dots"} & base.traits.keys()
    assert "twice" in base.traits
    assert not [one for one in base.rules.measures if "twice" in one.outputs]
    alone = loaded(box, head("variety amber", "") + "grade all otherwise\n")
    assert [one for one in alone.rules.measures if "twice" in one.outputs]


def test_what_only_some_of_them_have_is_told_with_who_lacks_it(box):
    fault = "fault y if {}: no better than out\n"
    (problem,) = told(box, head("variety (amber, kohaku)", "") + FAULTS + fault.format("dots at least 1"))
    assert problem.code == "unknown-name"
    assert (
        problem.cause
        == '"dots" is a trait of amber, but not one that all of these varieties have alike: kohaku lacks it.'
    )
    (problem,) = told(box, head("variety (amber, birch)", "") + FAULTS + fault.format("mark is recorded"))
    assert "amber and birch" in problem.cause
    assert "its values are not the same" in problem.cause
    (problem,) = told(box, head("any variety", "") + FAULTS + fault.format("windows at least 1"))
    assert "a standard for any variety reads only what all have" in problem.cause


def test_any_variety_does_not_hang_on_which_plugins_are_installed(box):
    text = head("any variety", "") + FAULTS
    assert set(loaded(box, text).traits) == set(box.vocabularies["shared"].includes) | {
        trait.name for trait in box.vocabularies["shared"].traits
    }
    Path("hall/page.koi").write_text(text, encoding="utf-8")
    assert koirules.load_standard("hall/page.koi", registry_with()).seal == loaded(box, text).seal


def test_a_page_for_one_variety_builds_on_it_and_reads_all_that_it_has(box):
    Path("hall/base.koi").write_text(head("variety (amber, birch)", "") + FAULTS, encoding="utf-8")
    page = loaded(box, head("variety amber") + "fault dotted if dots at least 3: no better than out\n")
    assert (page.variety, page.varieties) == ("amber", ("amber",))
    good = {"spine": "straight", "outline": "good", "dots": 0}
    assert page.grade(good).grade == "first"
    assert page.grade(good | {"dots": 3}).grade == "out"
    assert page.grade(good | {"spine": "bent"}).grade == "out"
    # The base alone grades by what it says, and by nothing else.
    assert koirules.load_standard("hall/base.koi", box).grade({"spine": "straight", "outline": "good"}).grade == "first"
    # Who says no variety has those of the base.
    assert loaded(box, head("")).variety == "(amber, birch)"
    assert loaded(box, head("variety (birch, amber)")).varieties == ("birch", "amber")


@pytest.mark.parametrize(
    ("base", "page"),
    [
        ("variety (amber, birch)", "variety kohaku"),
        ("variety (amber, birch)", "variety (amber, kohaku)"),
        ("variety (amber, birch)", "any variety"),
        ("variety amber", "any variety"),
        ("variety amber", "variety (amber, birch)"),
    ],
)
def test_a_page_is_never_for_more_than_its_base(box, base, page):
    Path("hall/base.koi").write_text(head(base, "") + FAULTS, encoding="utf-8")
    assert [problem.code for problem in told(box, head(page))] == ["other-variety"]


def test_an_installed_rule_set_is_a_base_by_its_name(box):
    page = loaded(box, head("variety birch", '"open_house" edition 2026-1'))
    assert (page.variety, page.rules.stage) == ("birch", "tosai")
    assert any("open_house/standard.koi:2" in line for line in told_lines(page.rules))
    # Held to its edition, and to its seal.
    assert [p.code for p in told(box, head("", '"open_house" edition 2025-1'))] == ["other-edition"]
    sealed = f'"open_house" edition 2026-1 seal {koirules.load_standard("open_house", box).seal}'
    changes = 'replace fault bent "bent spine" if spine is bent: no better than first\n'
    assert loaded(box, head("", sealed) + changes).warnings == ()
    (warning,) = loaded(box, head("", '"open_house" edition 2026-1') + changes).warnings
    assert warning.code == "unsealed-base"
    Plugin.folder.joinpath("open_house", "standard.koi").write_text(
        INSTALLED.replace("is bent", "at most slight"), encoding="utf-8"
    )
    assert [p.code for p in told(box, head("", sealed))] == ["other-seal"]


def earlier(edition, text):
    folder = Plugin.folder / "open_house" / "earlier"
    folder.mkdir(exist_ok=True)
    (folder / f"open_house-{edition}.koi").write_text(text, encoding="utf-8")


def test_a_page_goes_on_by_the_edition_that_it_names_when_its_installed_base_has_a_new_one(box):
    pinned = f'"open_house" edition 2026-1 seal {koirules.load_standard("open_house", box).seal}'
    good, bent = {"spine": "straight", "outline": "good"}, {"spine": "slight", "outline": "good"}
    before = loaded(box, head("variety birch", pinned))
    newer = INSTALLED.replace("2026-1", "2027-1").replace("is bent", "at most slight")
    (Plugin.folder / "open_house" / "standard.koi").write_text(newer, encoding="utf-8")
    # Without the text of that edition the page stops, with what is there.
    (problem,) = told(box, head("variety birch", pinned))
    assert (problem.code, problem.cause) == (
        "other-edition",
        '"open_house" is installed in edition 2027-1; edition 2026-1 is not there.',
    )
    earlier("2026-1", INSTALLED)
    after = loaded(box, head("variety birch", pinned))
    assert (after.seal, after.warnings) == (before.seal, ())
    assert [after.grade(one).grade for one in (good, bent)] == ["first", "first"]
    assert any("open_house-2026-1.koi:2" in line for line in told_lines(after.rules))
    now = loaded(box, head("variety birch", '"open_house" edition 2027-1'))
    assert [now.grade(one).grade for one in (good, bent)] == ["first", "out"]
    # By its own name it is a standard like any other.
    assert koirules.load_standard("open_house-2026-1", box).edition == "2026-1"
    assert koirules.load_standard("open_house", box).edition == "2027-1"


def test_an_edition_that_is_not_kept_is_told_with_those_that_are_and_both_mends_hold(box):
    newer = INSTALLED.replace("2026-1", "2027-1")
    (Plugin.folder / "open_house" / "standard.koi").write_text(newer, encoding="utf-8")
    earlier("2026-1", INSTALLED)
    (problem,) = told(box, head("", '"open_house" edition 2025-1'))
    assert problem.cause.startswith('"open_house" is installed in edition 2027-1, and 2026-1 is kept beside it;')
    earlier("2026-2", INSTALLED.replace("2026-1", "2026-2"))
    (problem,) = told(box, head("", '"open_house" edition 2025-1'))
    assert ", and 2026-1 and 2026-2 are kept beside it; edition 2025-1 is not there." in problem.cause
    assert "write `edition 2027-1` and its new seal" in problem.mend
    seal = koirules.load_standard("open_house", box).seal
    assert loaded(box, head("", f'"open_house" edition 2027-1 seal {seal}')).warnings == ()
    assert "Install a version that has edition 2025-1" in problem.mend
    earlier("2025-1", INSTALLED.replace("2026-1", "2025-1"))
    assert loaded(box, head("", '"open_house" edition 2025-1')).edition


def test_an_earlier_edition_is_held_to_its_seal_and_to_what_it_says_it_is(box):
    pinned = f'"open_house" edition 2026-1 seal {koirules.load_standard("open_house", box).seal}'
    (Plugin.folder / "open_house" / "standard.koi").write_text(INSTALLED.replace("2026-1", "2027-1"), encoding="utf-8")
    earlier("2026-1", INSTALLED.replace("is bent", "at most slight"))
    assert [one.code for one in told(box, head("", pinned))] == ["other-seal"]
    earlier("2026-1", INSTALLED.replace("2026-1", "2026-4"))
    assert [one.code for one in told(box, head("", pinned))] == ["other-edition"]
    # A new edition may build on the one before it, and is no circle.
    earlier("2026-1", INSTALLED)
    (Plugin.folder / "open_house" / "standard.koi").write_text(head("", pinned, "2027-1"), encoding="utf-8")
    assert loaded(box, head("variety birch", '"open_house" edition 2027-1')).variety == "birch"


def test_a_name_means_no_other_file_and_a_file_in_the_folder_goes_before_it(box):
    (problem,) = told(box, head("", '"open_hose" edition 2026-1'))
    assert (problem.code, problem.mend) == ("no-base-file", 'Did you mean "open_house"?')
    assert problem.edit.text == '"open_house"'
    Path("hall/open_house").write_text(head("variety amber", "", "9") + FAULTS, encoding="utf-8")
    assert loaded(box, head("", '"open_house" edition 9')).variety == "amber"
    # The base of an installed base lies beside that, and not beside the page.
    own = Plugin.folder / "open_house"
    (own / "standard.koi").write_text(head("", '"ours.koi" edition 3', "2026-1"), encoding="utf-8")
    (own / "ours.koi").write_text(head("any variety", "", "3") + FAULTS, encoding="utf-8")
    Path("hall/open_house").unlink()
    Path("hall/ours.koi").write_text("nothing that reads", encoding="utf-8")
    assert loaded(box, head("", '"open_house" edition 2026-1')).variety == "any variety"
    (own / "standard.koi").write_text(head("", '"../../hall/ours.koi" edition 3', "2026-1"), encoding="utf-8")
    codes = [problem.code for problem in told(box, head("", '"open_house" edition 2026-1'))]
    assert codes == ["base-has-problems", "base-outside"]


def test_a_text_without_a_folder_may_build_on_an_installed_rule_set_alone(box):
    assert koirules.read_standard(head("", '"open_house" edition 2026-1'), registry=box).variety == "any variety"
    with pytest.raises(koirules.StandardError) as found:
        koirules.read_standard(head("", '"open.koi" edition 2026-1'), registry=box)
    assert [problem.code for problem in found.value.problems] == ["base-without-folder"]


def test_a_rule_set_that_names_itself_goes_round_in_a_circle(box):
    Plugin.folder.joinpath("open_house", "standard.koi").write_text(
        head("any variety", '"open_house" edition 1') + FAULTS, encoding="utf-8"
    )
    assert [problem.code for problem in told(box, head("", '"open_house" edition 1'))][-1] == "base-circle"
