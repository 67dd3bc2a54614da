"""Asagi and shusui: their vocabularies hold, and their rule sets are fit to be shipped."""

from __future__ import annotations

import koirules_asagi
import koirules_skins
import pytest

from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_skins, koirules_asagi)


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_asagi, koirules_skins)


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
