"""The metallic koi: their vocabularies hold, and their rule sets are fit to be shipped."""

from __future__ import annotations

import koirules_hikari
import pytest

from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_hikari)
GROUPS = ("hikari_muji", "hikari_moyo", "hikari_utsuri")

SPOKEN_OF = {
    "hikari_muji": (
        "metal_colour lustre lustre_even head_clear tone_even fukurin rows_neat pectoral_shine pectoral_size net_clarity "
        "discolour helmet outline"
    ),
    "hikari_moyo": (
        "moyo_kind lustre head_clear moyo_cover moyo_balance moyo_edge contrast net_clarity kujaku_face wave"
    ),
    "hikari_utsuri": (
        "utsuri_kind lustre sumi_quality sumi_cover sumi_bands sumi_linked head_sumi motoguro motoguro_even hi_under_metal "
        "pectoral_shine head_clear metal_lost hi_cover shiroji"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""

WITHOUT_SILENCE = {
    "discolour": "it shows in warm water alone, so nobody may take it for granted",
    "helmet": "a helmet rules a fish out, so somebody looks for it",
    "hi_under_metal": "each fish has a depth of red of its own, and none is the ordinary one",
    "metal_lost": "lost metal rules a fish out, so somebody looks for it",
}
"""Traits by eye that are said of every fish, and why. Opinion, from memory."""


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_hikari, without_silence=WITHOUT_SILENCE)


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    assert set(names.split()) <= set(REGISTRY.varieties[variety].traits)


@pytest.mark.parametrize("name", ["fry_hikari_muji", "fry_hikari_moyo", *(f"tosai_{group}" for group in GROUPS)])
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
