"""The skins: sound over every variety, with rule sets that are fit to be shipped."""

from __future__ import annotations

import koirules_skins
import pytest

from koirules import read_standard
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


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_skins)


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
