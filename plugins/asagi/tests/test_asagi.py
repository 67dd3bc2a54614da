"""Asagi and shusui: their vocabularies hold, and their rule sets are fit to be shipped."""

from __future__ import annotations

import koirules_asagi
import koirules_skins
import pytest

from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_skins, koirules_asagi)

SPOKEN_OF = {
    "asagi": (
        "net_clarity net_even scale_rows blue_tone head_clear nose_clear jami hi_height hi_line_even white_line cheek_hi "
        "pectoral_red red_eyes stray_hi menkaburi"
    ),
    "shusui": (
        "dorsal_rows row_symmetry stray_scales lateral_row blue_skin blue_scales hi_height hi_line_even cheek_hi pectoral_red "
        "red_back head_clear jami"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_asagi, koirules_skins)


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    assert set(names.split()) <= set(REGISTRY.varieties[variety].traits)


@pytest.mark.parametrize("name", ["fry_asagi", "fry_shusui", "tosai_asagi", "tosai_shusui"])
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(REGISTRY.rulesets[name], REGISTRY) == ()


def test_a_shusui_has_the_rows_of_a_doitsu_and_no_net() -> None:
    asagi, shusui = (REGISTRY.varieties[name].traits for name in ("asagi", "shusui"))
    assert "dorsal_rows" in shusui
    assert "net_clarity" not in shusui
    assert "net_clarity" in asagi
    assert "dorsal_rows" not in asagi


def test_red_and_head_mean_the_same_on_both() -> None:
    both = {trait.name: trait for trait in REGISTRY.vocabularies["asagi_and_shusui"].traits}
    assert both
    for name in ("asagi", "shusui"):
        assert {trait: REGISTRY.varieties[name].traits[trait] for trait in both} == both
