"""The skins: sound over every variety, with rule sets that are fit to be shipped."""

from __future__ import annotations

import koirules_skins
import pytest

from koirules import load_standard, read_standard
from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_skins)
RULESETS = koirules_skins.koirules_rulesets()

SPOKEN_OF = {
    "kohaku with ginrin": "scalation gin_type gin_rows gin_cover gin_even gin_strength gin_blur hi_cover kiwa",
    "kohaku with doitsu": (
        "scalation dorsal_rows lateral_row row_symmetry stray_scales scale_size_even bare_skin_lustre edge_on_skin skin_marks "
        "hi_cover kiwa"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""

WITHOUT_SILENCE = {
    "gin_blur": "the edition that is out asks it of each fish",
    "lateral_row": "a doitsu has such a row or none, and neither is the ordinary one",
    "stray_scales": "the edition that is out asks them of each fish: each is counted",
}
"""Traits by eye that are said of every fish, and why. Opinion, from memory."""


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_skins, without_silence=WITHOUT_SILENCE)


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    standard = read_standard(f'standard "t" edition 1 variety {variety}\ngrade a otherwise', registry=REGISTRY)
    assert set(names.split()) <= set(standard.traits)


def test_its_rule_sets_are_shipped() -> None:
    assert set(RULESETS) == {f"{stage}_{skin}_kohaku" for stage in ("fry", "tosai") for skin in ("ginrin", "doitsu")}


@pytest.mark.parametrize("name", RULESETS)
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(RULESETS[name], REGISTRY) == ()


@pytest.mark.parametrize("skins", ["ginrin", "doitsu", "(ginrin, doitsu)"])
def test_a_skin_lies_over_a_variety_without_a_clash(skins: str) -> None:
    standard = read_standard(
        f'standard "t" edition 1 variety kohaku with {skins}\ngrade a otherwise', registry=REGISTRY
    )
    for skin in ("ginrin", "doitsu"):
        worn = {trait.name for trait in REGISTRY.vocabularies[skin].traits}
        assert worn
        assert (worn <= set(standard.traits)) == (skin in skins)
    assert "hi_cover" in standard.traits


def test_a_skin_is_no_variety_of_its_own() -> None:
    assert {"ginrin", "doitsu"}.isdisjoint(REGISTRY.varieties)


def test_a_lot_that_is_scratched_by_the_net_is_told_of() -> None:
    standard = load_standard(RULESETS["tosai_doitsu_kohaku"], REGISTRY)
    lot = [{"fish": str(number), "skin_marks": 4 if number < 2 else 0} for number in range(5)]
    assert [alert.name for alert in standard.grade_batch(lot).alerts] == ["scratched"]
    assert standard.grade_batch(lot[1:]).alerts == ()


def test_what_is_no_ginrin_is_carried_to_the_kohaku_table_when_it_is_well() -> None:
    one_row = {
        "length": 15,
        "spine": "straight",
        "whole": "yes",
        "health": "well",
        "fin_damage": "none",
        "scale_loss": 0,
        "gin_rows": 1,
        "gin_balance": 1,
        "shiroji": "snow",
        "hi_even": "even",
        "steps": "sandan",
        "head_hi": "u_shape",
        "hi_left_share": 50,
    }
    lot = [
        one_row
        | {"fish": "well", "gin_cover": 20, "gin_even": "scattered", "gin_strength": "fair", "gin_type": "kado"},
        one_row | {"fish": "sick", "health": "sick"},
    ]
    graded = load_standard(RULESETS["tosai_ginrin_kohaku"], REGISTRY).grade_batch(lot).results
    assert [(result.fish, result.grade, result.kept_by) for result in graded] == [
        ("well", "kohaku_page", ("to_kohaku",)),
        ("sick", "hold", ()),
    ]
