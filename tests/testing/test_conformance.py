"""The check that a plugin's own tests call: sound ones pass, and what is wrong with others is said in words."""

from __future__ import annotations

import importlib.util
import sys
from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from attrs import evolve

from koirules import builtin, read_standard
from koirules.plugins import registry_with
from koirules.testing import check_plugin, conformance, findings
from koirules.testing.importing import of_import
from koirules.testing.measuring import of_measures
from koirules.testing.wording import of_vocabulary
from koirules.vocabulary.kinds import Choice, Count, Label, Number, Places, Scale, YesNo
from koirules.vocabulary.measures import Formula
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.traits import Better, Trait, Variety, Vocabulary
from koirules.vocabulary.units import UNITS
from tests.plugins.invented import Gives, lace

TOLD = "Look from above in even light, and write what you see."
SOUND = Trait("shine", "metallic shine", Scale(("dull", "fair", "good")), Better.MORE, describe=TOLD)
RULES = """standard "Lantern Bay, ogon (an invented house)" edition 1 variety hill_ogon stage tosai
section skin worth 100
points shine by shine: dull gives 0, fair gives 6, good gives 10
silence means shine is fair
grade keep if score at least 60
grade cull otherwise
sample "a bright one" with shine good comes out keep
"""


WITHOUT_SILENCE = {
    "belly_shape": "each shape but the level one is told, and the page asks for it by name",
    "body_symmetry": "a crooked body is looked for in each fish",
    "head_shape": "the head is looked at in each fish",
    "skin_clean": "it differs from pond to pond, and is said for the lot",
    "shimi_places": "how many shimi there are has its silence; where they are is nothing without them",
    "hikui": "hikui is out for a show, so that nobody may take it for granted",
    "interest": "what is special about a pattern has no ordinary middle",
    "finish": "how far a fish is finished differs from fish to fish",
    "head_hi": "red on the head is what a kohaku is sorted by first",
    "hi_on_fins": "the edition that is out asks it of each fish",
    "niban_hi": "late red comes or does not, and the edition that is out asks it of each fish",
}
"""Traits of the box that are said of every fish, and why. Opinion, from memory."""


def ogon(*traits: Trait, rulesets: Any = None, **rest: Any) -> Gives:
    traits = traits or (SOUND,)
    words = {
        "title": "hill ogon",
        "describe": "One colour that shines like metal.",
        "includes": ("shared",),
        "sayings": tuple(Spoken(trait.name, f"the {trait.name}") for trait in traits),
    } | rest
    return Gives(Vocabulary(name="hill_ogon", traits=traits, **words), rulesets=rulesets)


def with_rules(tmp_path: Path, text: str) -> Gives:
    path = tmp_path / "standard.koi"
    path.write_text(text, encoding="utf-8")
    return ogon(rulesets={"hill_ogon": path})


def only(plugin: object, *beside: object) -> str:
    (told,) = findings(plugin, *beside, fish=10)
    return told


def test_a_sound_plugin_passes(tmp_path: Path) -> None:
    check_plugin(with_rules(tmp_path, RULES))


def test_every_kind_of_trait_passes() -> None:
    kinds = (
        YesNo(),
        Count(5),
        Number(UNITS["cm"], Decimal("-0.5"), Decimal("2.25")),
        Number(None, Decimal(0), Decimal("0.000001")),
        Choice(("left", "right")),
        Places(("nose",)),
        Label(),
    )
    check_plugin(
        ogon(*(Trait(f"t{n}", f"title {n}", kind, describe=TOLD) for n, kind in enumerate(kinds)), includes=())
    )


def test_a_variety_of_labels_alone_passes() -> None:
    check_plugin(ogon(Trait("line", "bloodline", Label(), describe=TOLD), includes=()))


@pytest.mark.parametrize(
    ("trait", "silence", "told"),
    [
        (SOUND, "", "reads shine, and no rule set of the plugin says what silence means of it"),
        (SOUND, "silence means shine is fair", ""),
        (evolve(SOUND, never_silent=True), "", ""),
        (evolve(SOUND, by_eye=False), "", ""),
        (evolve(SOUND, kind=Choice(("dull", "fair", "good")), better=Better.NEITHER), "", ""),
        (evolve(SOUND, kind=Count(3), better=Better.LESS), "", "reads shine, and no rule set"),
        (evolve(SOUND, kind=Count(3), better=Better.TARGET), "", ""),
    ],
)
def test_a_rule_set_that_leaves_an_ordinary_trait_open_is_told(
    tmp_path: Path, trait: Trait, silence: str, told: str
) -> None:
    text = RULES.replace("silence means shine is fair", silence)
    if isinstance(trait.kind, Count):
        text = text.replace("dull gives 0, fair gives 6, good gives 10", "0 gives 0, 3 gives 10")
        text = text.replace("shine good", "shine 3")
    path = tmp_path / "standard.koi"
    path.write_text(text, encoding="utf-8")
    plugin = ogon(trait, rulesets={"hill_ogon": path})
    found = findings(plugin, fish=5)
    assert [told in each for each in found] == ([True] if told else []), found
    if told:
        assert findings(plugin, fish=5, without_silence={"shine": "it is the whole fish"}) == ()


def test_a_wording_whose_brackets_do_not_match_is_told() -> None:
    told = only(ogon(SOUND, sayings=(Spoken("shine", "shine", alone={"is good": "all (aglow|bright"}),)))
    assert told == 'in "hill_ogon" the brackets of the wording "all (aglow|bright" do not match'
    assert findings(ogon(SOUND, sayings=(Spoken("shine", "(shine|glow)"),)), fish=5) == ()


def test_a_trait_by_eye_without_phrases_is_told() -> None:
    sayings: tuple[Spoken, ...] = ()
    told = only(ogon(SOUND, sayings=sayings))
    assert told.startswith("the trait shine has no phrases")
    assert '`Spoken("shine", …)`' in told
    assert findings(ogon(SOUND, sayings=sayings, phrases={"all aglow": "shine is good"}), fish=5) == ()
    assert findings(ogon(SOUND, sayings=sayings), fish=5, without_phrases={"shine": "written, never said"}) == ()
    board = Trait("board", "length on the board", Number(UNITS["cm"], Decimal(1), Decimal(9)), describe=TOLD)
    assert findings(ogon(board, sayings=sayings), fish=5) == ()


def test_a_reason_that_nothing_needs_or_that_is_empty_is_told(tmp_path: Path) -> None:
    plugin = with_rules(tmp_path, RULES)
    found = findings(plugin, fish=5, without_silence={"shine": "x"}, without_phrases={"glow": "x"})
    assert found == (
        "`without_silence` names shine, which does not lack silence: delete it there",
        "`without_phrases` names glow, which does not lack phrases: delete it there",
    )
    found = findings(ogon(SOUND, sayings=()), fish=5, without_phrases={"shine": " "})
    assert found == ("`without_phrases` gives no reason for shine",)


@pytest.mark.parametrize(
    ("trait", "word"),
    [
        (
            Trait("dents", "dents", Count(5), Better.LESS, describe="Count the scars and dents of the bare skin."),
            "scars",
        ),
        (Trait("lips_shut", "mouth at rest", Scale(("open", "shut")), Better.MORE, describe=TOLD), "mouth"),
        (Trait("crooked", "malformed shine", YesNo(), Better.LESS, describe=TOLD), "malformed"),
        (Trait("red_mouth", "red round the mouth", YesNo(), Better.MORE, describe=TOLD), ""),
        (Trait("rare", "rare in the eyes of the house", Scale(("usual", "seldom")), Better.MORE, describe=TOLD), ""),
    ],
)
def test_a_trait_of_health_that_silence_could_take_for_granted_is_told(trait: Trait, word: str) -> None:
    if not word:
        assert findings(ogon(trait), fish=5) == ()
        return
    told = only(ogon(trait))
    assert told.startswith(f'the trait {trait.name} speaks of health, injuries or deformities ("{word}")')
    assert "`never_silent=True`" in told
    assert findings(ogon(evolve(trait, never_silent=True)), fish=5) == ()
    assert findings(ogon(trait), fish=5, may_be_silent={trait.name: "it is a colour"}) == ()
    assert findings(ogon(SOUND), fish=5, may_be_silent={"shine": "x"}) == (
        "`may_be_silent` names shine, which is not held to be about health: delete it there",
    )
    assert findings(ogon(trait), fish=5, may_be_silent={trait.name: " "}) == (
        f"`may_be_silent` gives no reason for {trait.name}",
    )


@pytest.mark.parametrize(
    ("saying", "told"),
    [
        (lambda: Spoken("shine", "glow", {"dull": "flat"}), 'the Spoken for "shine"'),  # type: ignore[arg-type]
        (lambda: Spoken("shine", {"dull": "flat"}), "`levels={…}`"),  # type: ignore[arg-type]
        (lambda: Spoken("shine", "glow", "", ["dull"]), "`levels`"),  # type: ignore[arg-type]
        (lambda: Spoken("shine", "glow", "", "dull"), "`levels`"),  # type: ignore[arg-type]
        (lambda: Spoken("shine", "glow", "", {"dull": ("flat", "matt")}), "what is said in `levels`"),  # type: ignore[dict-item]
        (lambda: Spoken("shine", "glow", "", {}, {"is dull": "no glow"}, {}), "a mapping in the place of words"),  # type: ignore[arg-type]
        (lambda: Spoken("shine", "glow", after="shine"), "`after`"),  # type: ignore[arg-type]
        (lambda: Spoken("shine", "glow", after=(1,)), "`after`"),  # type: ignore[arg-type]
        (lambda: Spoken("shine", ("glow", "gleam")), "`nouns`"),  # type: ignore[arg-type]
        (lambda: Spoken(None), "`trait` of a Spoken"),  # type: ignore[arg-type]
        (lambda: SpokenTogether(("all aglow",), "shine is good"), "`wordings`"),  # type: ignore[arg-type]
        (lambda: ("shine", "glow"), "a saying of"),
    ],
)
def test_a_saying_of_a_wrong_form_is_told_by_the_name_of_the_plugin(saying: Any, told: str) -> None:
    found = findings(ogon(SOUND, sayings=(saying(),)), fish=5)
    assert found
    assert all(one.startswith("plugin invented: The plugin was left out.") for one in found), found
    assert told.casefold() in " ".join(found).casefold()


def test_what_ships_in_the_box_is_sound() -> None:
    box = registry_with()
    nothing = evolve(box, varieties=Varieties({}, {}), vocabularies={}, rulesets={})
    assert list(conformance._findings(builtin, box, nothing, 60, WITHOUT_SILENCE)) == []


def test_a_plugin_that_is_left_out_is_told_why() -> None:
    told = only(Gives("no vocabulary"))
    assert "It must be a Vocabulary" in told


def test_everything_that_is_wrong_is_raised_at_once() -> None:
    poor = Trait("x", "", YesNo())
    with pytest.raises(AssertionError, match="not sound") as error:
        check_plugin(ogon(poor, describe=""))
    assert str(error.value).count("\n  - ") == 3


@pytest.mark.parametrize(
    ("trait", "told"),
    [
        (evolve(SOUND, title=" "), "has no title"),
        (evolve(SOUND, title="t" * 61), "title of 61 letters"),
        (evolve(SOUND, describe="short"), "lacks a describe"),
        (evolve(SOUND, describe="long " * 60), "more than one line"),
        (evolve(SOUND, title="Lustre (tsuya)"), 'lustre and shine have one title, "Lustre (tsuya)"'),
        (evolve(SOUND, kind=Choice(("a", "b"))), "its values have no order"),
        (evolve(SOUND, kind=Number(UNITS["%"], Decimal(-5), Decimal(5))), "below 0 %"),
        (evolve(SOUND, titles={"jpn": "艶"}), "no two-letter code"),
    ],
)
def test_the_words_of_a_trait_are_looked_at(trait: Trait, told: str) -> None:
    assert told in only(ogon(trait))


@pytest.mark.parametrize(("rest", "told"), [({"title": ""}, "has no title"), ({"describe": ""}, "has no describe")])
def test_the_words_of_a_vocabulary_are_looked_at(rest: dict[str, Any], told: str) -> None:
    assert told in only(ogon(**rest))


def test_another_word_that_is_not_read_as_its_variety_is_told() -> None:
    assert findings(ogon(also=("hill gold",), forms=("bright ogon",)), fish=5) == ()
    skin = Vocabulary("frost", "frost", (SOUND,), describe="A skin of frost.", is_skin=True, also=("rime",))
    found = findings(Gives(skin), fish=1)
    assert not any('"rime"' in told for told in found)
    assert '"kohaku", another word for hill_ogon, is not read as it' in only(ogon(also=("kohaku",)))
    assert '" ", another word for hill_ogon, is not read as it' in only(ogon(forms=(" ",)))


@pytest.mark.parametrize("word", ["gives", "with", "cm", "than"])
def test_a_step_may_be_a_word_that_stands_elsewhere_in_rules(word: str) -> None:
    assert findings(ogon(evolve(SOUND, kind=Scale(("dull", word)))), fish=5) == ()


def test_a_word_that_no_sheet_can_be_filled_in_with_is_found_with_its_trait() -> None:
    # In a sheet an x is a mark for what is not known.
    found = findings(ogon(evolve(SOUND, kind=Places(("x",)))), fish=20)
    assert any("cannot read an invented record" in told and "shine" in told for told in found)
    assert any("a sheet filled in with invented records is not read" in told for told in found)


def test_a_trait_that_no_rule_can_speak_of_is_named(monkeypatch: pytest.MonkeyPatch) -> None:
    from koirules.testing import gradings, whole_rules

    whole = whole_rules.whole_rules

    def spoilt(variety: Variety) -> whole_rules.WholeRules:
        rules = whole(variety)
        return evolve(rules, text=rules.text.replace("good gives 2", "good gave 2"))

    monkeypatch.setattr(gradings, "whole_rules", spoilt)
    assert "a rule file cannot speak of shine" in only(ogon(includes=()))


def test_a_drop_down_that_offers_something_else_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    from koirules.testing import sheets

    monkeypatch.setattr(sheets, "words_offered", lambda _: ("other",))
    assert any("the drop-down of shine offers" in told for told in findings(ogon(), fish=5))


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (("variety hill_ogon ", ""), "shine"),
        (('sample "a bright one" with shine good comes out keep', ""), "has no sample"),
        (
            ("comes out keep", "comes out cull"),
            "the sample 'a bright one' of the rule set \"hill_ogon\" should come out",
        ),
        (("points shine by", "points shine bi"), "standard.koi:3"),
        (("worth 100", "worth 90"), "standard.koi"),
    ],
)
def test_what_is_wrong_with_a_rule_set_is_told(tmp_path: Path, change: tuple[str, str], told: str) -> None:
    found = findings(with_rules(tmp_path, RULES.replace(*change)), fish=10)
    assert any(told in each for each in found), found


def test_a_rule_set_without_a_variety_cannot_be_picked(tmp_path: Path) -> None:
    rules = ['standard "any" edition 1', "trait a as yes or no", "grade k if a is yes", "grade c otherwise"]
    text = "\n".join([*rules, 'sample "s" with a yes comes out k'])
    assert "names no variety" in only(with_rules(tmp_path, text))


def test_a_skin_is_tried_over_each_variety_over_which_it_can_lie() -> None:
    rows = Trait("rows", "rows of scales", Count(9), describe=TOLD)
    said = {"rows apart": "rows is 0"}
    skin = Vocabulary("glitter", "glitter", (rows,), describe="Scales that glitter.", is_skin=True, phrases=said)
    beside = ogon()
    check_plugin(Gives(skin), beside, fish=5)
    alike = evolve(skin, traits=(evolve(rows, title="metallic shine"),))
    assert 'in "hill_ogon with glitter" the traits shine and rows' in only(Gives(alike), beside)


@pytest.mark.parametrize(
    ("writer", "told"),
    [
        ("write_results", "the page of results by"),
        ("write_handbook", "the page for judges of"),
        ("write_sheet", "the sheet of"),
    ],
)
def test_a_page_or_sheet_that_cannot_be_made_is_told(monkeypatch: pytest.MonkeyPatch, writer: str, told: str) -> None:
    from koirules.testing import pages

    def crash(*_: object, **__: object) -> None:
        raise ZeroDivisionError("of the plugin")

    monkeypatch.setattr(pages, writer, crash)
    assert f"{told} a rule file that names all traits of hill_ogon cannot be made (ZeroDivisionError" in only(ogon())


def test_a_page_that_lacks_what_it_should_show_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from koirules.testing import pages

    monkeypatch.setattr(pages, "write_results", lambda path, *_: path.write_text("keep", encoding="utf-8") and None)
    found = findings(with_rules(tmp_path, RULES), fish=2)
    assert 'the page of results by the rule set "hill_ogon" does not show "cull"' in found
    assert not any('"keep"' in told for told in found)


def test_a_crash_while_grading_is_told_with_its_record(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from koirules.api import Standard

    def crash(*_: object) -> None:
        raise ZeroDivisionError("of the plugin")

    monkeypatch.setattr(Standard, "grade", crash)
    found = findings(with_rules(tmp_path, RULES), fish=2)
    assert all("cannot grade an invented record (ZeroDivisionError: of the plugin)" in told for told in found)
    assert len(found) == 2


def test_a_frame_that_differs_from_its_rows_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    import polars as pl

    from koirules.api import Standard

    whole = Standard.grade_frame

    def off(self: Standard, frame: Any, **rest: Any) -> Any:
        return whole(self, frame, **rest).with_columns(pl.col("score_low") - 1)

    monkeypatch.setattr(Standard, "grade_frame", off)
    assert all("for a record alone and" in told for told in findings(with_rules(tmp_path, RULES), fish=3))
    assert findings(with_rules(tmp_path, RULES), fish=3)


@pytest.fixture
def on_disk(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Any]:
    """Makes a module of some code that a new Python can import as well."""
    monkeypatch.syspath_prepend(tmp_path)

    def make(code: str) -> ModuleType:
        path = tmp_path / "invented_on_disk.py"
        path.write_text(code, encoding="utf-8")
        spec = importlib.util.spec_from_file_location("invented_on_disk", path)
        assert spec is not None and spec.loader is not None
        module = importlib.util.module_from_spec(spec)
        module.KOIRULES_API = 1  # type: ignore[attr-defined]
        module.koirules_vocabularies = ogon().koirules_vocabularies  # type: ignore[attr-defined]
        spec.loader.exec_module(module)
        return module

    yield make
    sys.modules.pop("invented_on_disk", None)


def test_a_heavy_import_is_named(on_disk: Any) -> None:
    assert findings(on_disk("import json"), fish=2) == ()
    assert only(on_disk("import polars")) == (
        "importing invented_on_disk loads polars: import it in the function that uses it"
    )


def test_a_module_that_only_imports_here_is_told(on_disk: Any) -> None:
    module = on_disk("import sys\nif 'pytest' not in sys.modules: raise RuntimeError('only in a test')")
    assert "cannot be imported in a new Python: RuntimeError: only in a test" in only(module)


def test_words_that_are_operators_and_formulas_of_nothing_are_told() -> None:
    word = Trait(
        "tone", "tone of the net", Scale(("within", "clear")), describe="How clear the net is, seen from above."
    )
    told = [*of_vocabulary(lace(word, describe="Net over white."))]
    assert told == ['"within", a word of the trait "tone", is an operator of the rule language: choose another']
    share = Trait("tone", "tone of the net", Count(9), describe="How many lines of the net are clear, seen from above.")
    plain = lace(share, describe="Net over white.", measures=(Formula("tone", "1"),))
    registry = registry_with(Gives(plain))
    assert [*of_measures(registry.varieties["lace"], registry, 2)][:1] == [
        (
            'The measure of "tone" was left out: its formula "1" names no trait. Name a trait in the formula, or give the number '
            "as a constant."
        )
    ]


def test_an_import_that_is_slow_or_not_declared_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    waits = "import time\nend = time.process_time() + 0.4\nwhile time.process_time() < end: pass\n"
    code = f"import attrs\n{waits}\ndef f():\n    import z3\n"
    (tmp_path / "invented_slow.py").write_text(code, encoding="utf-8")
    info = tmp_path / "invented_slow-1.dist-info"
    info.mkdir()
    (info / "METADATA").write_text(
        "Metadata-Version: 2.1\nName: invented-slow\nVersion: 1\nRequires-Dist: attrs\n", "utf-8"
    )
    (info / "entry_points.txt").write_text("[koirules]\nslow = invented_slow\n", encoding="utf-8")
    monkeypatch.syspath_prepend(tmp_path)
    module = importlib.import_module("invented_slow")
    told = [*of_import(module)]
    assert any("every command waits for it" in one for one in told)
    assert "invented_slow imports z3, but its distribution does not depend on z3-solver" in told
    assert len(told) == 2


@pytest.mark.parametrize(
    ("kept", "text", "told"),
    [
        ("0", RULES.replace("edition 1", "edition 0"), None),
        ("0", RULES, "its earlier edition 0, says that it is edition 1"),
        ("1", RULES, "its earlier edition 1, is the edition that it has now"),
        ("0", RULES.replace("points shine by", "points shine bi"), "its earlier edition 0, "),
    ],
)
def test_what_is_wrong_with_an_earlier_edition_is_told(tmp_path: Path, kept: str, text: str, told: str | None) -> None:
    plugin = with_rules(tmp_path, RULES)
    folder = plugin.koirules_rulesets()["hill_ogon"].parent / "earlier"
    folder.mkdir()
    (folder / f"hill_ogon-{kept}.koi").write_text(text, encoding="utf-8")
    found = findings(plugin, fish=10)
    assert (found == ()) if told is None else any(told in each for each in found), found


@pytest.mark.parametrize(
    ("means", "why"),
    [
        ("shine is goood", 'Did you mean "good"?'),
        ("shin is good", '"shin"'),
        ("shine at", "cannot be read"),
        ("shine is good\ngrade keep otherwise", "It is no single meaning"),
    ],
)
def test_a_phrase_that_cannot_be_read_is_told_and_left_out(means: str, why: str) -> None:
    plugin = ogon(phrases={"like a lantern": means, "like glass": "shine is good"})
    told = only(plugin)
    assert 'The phrase "like a lantern" was left out' in told
    assert why in told
    registry = registry_with(plugin)
    page = 'standard "x" edition 1 variety hill_ogon\ngrade all otherwise\n'
    standard = read_standard(page, registry=registry)
    assert [problem.code for problem in standard.warnings] == ["phrase-left-out"]
    mirror, glass = standard.read_notes("1: like a lantern\n2: like glass").fish
    assert mirror.unread
    assert not glass.unread


@pytest.mark.parametrize(
    "saying",
    [
        Spoken("shine", alone={"is goood": "mirror"}),
        Spoken("shine", implies="shine is goood"),
        SpokenTogether("mirror", "shine is goood and lustre is high"),
    ],
)
def test_a_saying_that_cannot_be_read_is_told_and_left_out(saying: Saying) -> None:
    plugin = ogon(sayings=(saying,))
    assert "was left out: its meaning" in only(plugin)
    page = 'standard "x" edition 1 variety hill_ogon\ngrade all otherwise\n'
    assert read_standard(page, registry=registry_with(plugin)).read_notes("1: mirror").fish[0].unread
