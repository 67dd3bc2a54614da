"""The metallic koi: their vocabularies hold, and their rule sets are fit to be shipped."""

from __future__ import annotations

import koirules_hikari
import pytest

from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_hikari)
GROUPS = ("hikari_muji", "hikari_moyo", "hikari_utsuri")


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_hikari)


@pytest.mark.parametrize("name", ["fry_hikari_muji", *(f"tosai_{group}" for group in GROUPS)])
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(REGISTRY.rulesets[name], REGISTRY) == ()


@pytest.mark.parametrize("group", GROUPS)
def test_every_group_is_a_variety_with_metal_and_body(group: str) -> None:
    traits = REGISTRY.varieties[group].traits
    assert {trait.name for trait in REGISTRY.vocabularies["metal"].traits} <= set(traits)
    assert {"lustre", "head_clear", "spine"} <= set(traits)


def test_black_bands_are_those_of_showa_and_belong_to_one_group() -> None:
    bands = {trait.name: trait for trait in REGISTRY.vocabularies["black_bands"].traits}
    assert bands
    assert [group for group in GROUPS if bands.items() <= REGISTRY.varieties[group].traits.items()] == ["hikari_utsuri"]
