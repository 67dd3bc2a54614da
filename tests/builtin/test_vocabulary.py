"""The traits in the box are complete, can be written in rule files and records, and cover what the guide uses."""

from __future__ import annotations

from decimal import Decimal
from types import SimpleNamespace

import pytest

from koirules import hookimpl
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import Count, Label, Number, Places, Scale, YesNo, words_of
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules.vocabulary.words import NOT_PLACES, NOT_STEPS, NOT_TRAITS, is_name

REGISTRY = registry_with()
KOHAKU = REGISTRY.varieties["kohaku"].traits
EVERY = {trait.name: trait for vocabulary in REGISTRY.vocabularies.values() for trait in vocabulary.traits}
TRAITS = [pytest.param(trait, id=name) for name, trait in EVERY.items()]

IN_THE_EXAMPLE = {
    "length": (),
    "girth_ratio": (),
    "spine": ("bent", "slight", "straight"),
    "tail_stem": ("thin", "fair", "strong"),
    "hi_cover": (),
    "steps": ("ippon", "nidan"),
    "odome": (),
    "shimi_count": (),
    "shimi_size": (),
    "kuchibeni": ("no", "yes"),
    "hi_on_eyes": ("left_eye", "right_eye"),
    "hi_on_fins": ("left_pectoral", "right_pectoral", "dorsal", "tail"),
}
DECLARED_IN_THE_EXAMPLE = {"grown_length", "places", "belly_mark", "tail_closed", "eye_touched"}
DERIVED = {
    *("girth_ratio", "fineness", "condition", "stem_ratio", "shoulder_share"),
    *("hi_evenness", "hi_hue", "hi_chroma", "shiroji_lightness", "shiroji_chroma"),
    *("hi_cover", "hi_front_share", "hi_left_share", "step_count", "steps", "zigzag", "hi_start", "odome"),
    *("hi_below_line", "longest_white_gap", "smallest_patch", "head_windows", "head_roundness"),
}
LABELS = {"batch_name", "pond", "spawning", "bloodline", "sorter", "note", "look_date", "photo"}


def test_the_box_gives_kohaku_and_no_problems() -> None:
    assert REGISTRY.problems == ()
    assert list(REGISTRY.varieties) == ["kohaku"]


def test_the_shared_traits_are_no_variety_but_part_of_kohaku() -> None:
    assert not REGISTRY.vocabularies["shared"].is_variety
    shared = [trait.name for trait in REGISTRY.vocabularies["shared"].traits]
    assert list(KOHAKU)[: len(shared)] == shared


@pytest.mark.parametrize("trait", TRAITS)
def test_a_trait_says_what_it_is_and_how_to_look(trait: Trait) -> None:
    assert trait.title.strip() == trait.title != ""
    assert trait.describe[0].isupper()
    assert trait.describe.endswith((".", "?"))
    assert "\n" not in trait.describe
    assert trait.describe.isprintable()


@pytest.mark.parametrize("trait", TRAITS)
def test_a_trait_has_a_name_that_can_be_written(trait: Trait) -> None:
    assert is_name(trait.name)
    assert trait.name == trait.name.lower()
    assert trait.name.isascii()
    assert trait.name not in NOT_TRAITS
    assert trait.name != "fish", "records name the fish in a column of this name"


@pytest.mark.parametrize("trait", TRAITS)
def test_a_name_ends_in_no_unit(trait: Trait) -> None:
    assert trait.name.rsplit("_", 1)[-1] not in {"cm", "mm", "m", "g", "kg", "days", "deg", "c", "pct", "percent"}


@pytest.mark.parametrize("trait", TRAITS)
def test_the_words_of_a_trait_can_be_written_and_are_no_traits(trait: Trait) -> None:
    if isinstance(trait.kind, YesNo):
        return
    kept = NOT_PLACES if isinstance(trait.kind, Places) else NOT_STEPS
    for word in words_of(trait.kind):
        assert is_name(word)
        assert word not in kept
        assert word not in EVERY


@pytest.mark.parametrize("trait", TRAITS)
def test_a_japanese_title_is_in_japanese(trait: Trait) -> None:
    assert set(trait.titles) <= {"ja"}
    assert not any(title.isascii() or title.strip() != title for title in trait.titles.values())


@pytest.mark.parametrize("trait", TRAITS)
def test_what_has_no_order_has_no_better_end(trait: Trait) -> None:
    if isinstance(trait.kind, Label):
        assert trait.better is Better.NEITHER
    if isinstance(trait.kind, Scale) and trait.better is Better.LESS:
        pytest.fail("a scale runs from worst to best, or has its best in between")


def test_no_two_vocabularies_of_the_box_have_the_same_trait() -> None:
    assert len(EVERY) == sum(len(vocabulary.traits) for vocabulary in REGISTRY.vocabularies.values())


def test_the_parts_can_all_be_included_together() -> None:
    parts = tuple(name for name, one in REGISTRY.vocabularies.items() if not one.is_variety)
    give = hookimpl(lambda: [Vocabulary("all", "all", (), parts)])
    everything = SimpleNamespace(KOIRULES_API=1, koirules_vocabularies=give)
    registry = registry_with(everything)
    assert registry.problems == ()
    assert set(registry.varieties["all"].traits) == set(EVERY)


def test_no_two_traits_have_the_same_title() -> None:
    titles = [trait.title for trait in EVERY.values()]
    assert sorted(set(titles)) == sorted(titles)


@pytest.mark.parametrize(("name", "words"), IN_THE_EXAMPLE.items())
def test_the_example_of_the_language_finds_its_traits_and_words(name: str, words: tuple[str, ...]) -> None:
    assert set(words) <= set(words_of(KOHAKU[name].kind))


def test_the_example_of_the_language_may_declare_its_own_names() -> None:
    assert not DECLARED_IN_THE_EXAMPLE & set(KOHAKU)


def test_the_example_of_the_language_finds_its_units() -> None:
    units = {name: kind.unit and kind.unit.symbol for name, kind in _numbers().items()}
    assert {name: units[name] for name in ("length", "girth_ratio", "hi_cover", "odome", "shimi_size")} == {
        "length": "cm",
        "girth_ratio": None,
        "hi_cover": "%",
        "odome": "%",
        "shimi_size": "mm",
    }
    assert isinstance(KOHAKU["shimi_count"].kind, Count)


def test_each_measure_has_its_trait() -> None:
    assert set(KOHAKU) >= DERIVED


def test_where_a_fish_comes_from_is_a_label() -> None:
    assert {name for name, trait in KOHAKU.items() if isinstance(trait.kind, Label)} == LABELS


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("length", "0.5"),
        ("length", "125"),
        ("weight", "45000"),
        ("girth_ratio", "0.18"),
        ("girth_ratio", "0.75"),
        ("condition", "4.01"),
        ("fineness", "4.5"),
        ("water_temperature", "28"),
        ("hi_hue", "45"),
        ("shiroji_yellow", "-2"),
    ],
)
def test_a_range_has_room_for_what_is_measured(name: str, value: str) -> None:
    kind = _numbers()[name]
    assert kind.low <= Decimal(value) <= kind.high


def test_left_and_right_come_together() -> None:
    for trait in EVERY.values():
        if isinstance(trait.kind, Places):
            left = {word.removeprefix("left_") for word in words_of(trait.kind) if word.startswith("left_")}
            right = {word.removeprefix("right_") for word in words_of(trait.kind) if word.startswith("right_")}
            assert left == right


def test_what_a_fish_is_born_with_does_not_change() -> None:
    assert {KOHAKU[name].growth for name in ("barbels_missing", "sex", "mouth")} == {Growth.FIXED}
    assert KOHAKU["spine"].growth is Growth.FALLS


def _numbers() -> dict[str, Number]:
    return {name: trait.kind for name, trait in KOHAKU.items() if isinstance(trait.kind, Number)}
