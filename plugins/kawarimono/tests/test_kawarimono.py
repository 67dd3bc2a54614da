"""The variety fits into koirules, and its rule sets are fit to be shipped."""

from __future__ import annotations

import koirules_kawarimono
import pytest

from koirules import load_standard
from koirules.testing import check_plugin, registry_with, ruleset_faults
from koirules.vocabulary.kinds import words_of

REGISTRY = registry_with(koirules_kawarimono)

SPOKEN_OF = {
    "kawarimono": (
        "kawari_kind colour_even net_even head_clear jami growth_standing contrast balance_left_right white_edges sumi_cover "
        "tameness rarity"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""

GOOD = {
    "spine": "straight",
    "whole": "yes",
    "health": "well",
    "fin_damage": "none",
    "scale_loss": 0,
    "outline": "excellent",
    "shoulders": "strong",
    "tail_stem": "strong",
    "growth_standing": 90,
    "pectoral_size": "large",
    "colour_even": "even",
    "lustre": "superb",
    "head_clear": "clear",
    "jami": 0,
    "balance_left_right": 0.9,
    "balance_front_rear": 0.8,
    "sumi_cover": 50,
    "length": 18,
}
"""A fish that the autumn page keeps, whatever its kind."""

WITHOUT_SILENCE = {
    "rarity": "it is the taste of the house, which no page for others can assume",
}
"""Traits by eye that are said of every fish, and why. Opinion, from memory."""


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_kawarimono, without_silence=WITHOUT_SILENCE)
    assert {"kawari_kind", "net_even", "sumi_cover", "spine"} <= set(REGISTRY.varieties["kawarimono"].traits)


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    assert set(names.split()) <= set(REGISTRY.varieties[variety].traits)


@pytest.mark.parametrize("name", ["fry_kawarimono", "tosai_kawarimono"])
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(REGISTRY.rulesets[name], REGISTRY) == ()


@pytest.mark.parametrize("kind", words_of(REGISTRY.varieties["kawarimono"].traits["kawari_kind"].kind))
def test_every_kind_can_reach_the_best_grade_of_the_autumn_page(kind: str) -> None:
    assert (
        load_standard(REGISTRY.rulesets["tosai_kawarimono"], REGISTRY).grade(GOOD | {"kawari_kind": kind}).grade
        == "keep"
    )


def test_no_more_than_so_many_of_one_kind_are_grown_on() -> None:
    standard = load_standard(REGISTRY.rulesets["tosai_kawarimono"], REGISTRY)
    lot = [
        GOOD | {"fish": f"{kind} {number}", "kawari_kind": kind}
        for kind in ("chagoi", "ochiba")
        for number in range(20)
    ]
    lot = [fish | {"growth_standing": 99 - number / 10} for number, fish in enumerate(lot)]
    kept = [result.fish for result in standard.grade_batch(lot).results if "grow_on" in result.kept_by]
    assert sorted(kept) == sorted(f"{kind} {number}" for kind in ("chagoi", "ochiba") for number in range(15))
