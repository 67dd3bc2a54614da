"""Both varieties fit into koirules, their rule sets are fit to be shipped, and they see what the trade sees."""

from __future__ import annotations

import koirules_utsurimono
import pytest
from koirules_utsurimono import koirules_rulesets

from koirules import load_standard
from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_utsurimono)
RULESETS = koirules_rulesets()

SPOKEN_OF = {
    "bekko": (
        "ground ground_quality head_clear sumi_spots sumi_size sumi_quality sumi_kiwa kata_sumi tejima "
        "sumi_below_line sumi_balance sumi_left_share ground_in_fins"
    ),
    "utsurimono": (
        "ground sumi_cover head_split head_sumi_share nose_sumi sumi_bands sumi_linked sumi_quality "
        "checker motoguro motoguro_even small_sumi ground_quality head_yellow ground_even"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""

BODY = {"spine": "straight", "whole": "yes", "health": "well", "outline": "good", "tail_stem": "strong", "length": 13}
BEKKO = {
    **BODY,
    "pectoral_size": "fair",
    "ground": "shiro",
    "ground_quality": "snow",
    "ground_even": "even",
    "lustre": "good",
    "head_clear": "clear",
    "sumi_spots": 5,
    "sumi_size": "medium",
    "sumi_quality": "black",
    "sumi_kiwa": "sharp",
    "sumi_balance": 0.6,
    "sumi_left_share": "50 %",
    "sumi_rising": "none",
    "sumi_on_head": "no",
}
UTSURI = {
    **BODY,
    "shoulders": "strong",
    "ground": "shiro",
    "ground_quality": "clean",
    "ground_even": "even",
    "lustre": "good",
    "head_yellow": "slight",
    "sumi_quality": "black",
    "sumi_rising": "some",
    "sumi_linked": "linked",
    "checker": 0.6,
    "motoguro": "base",
    "motoguro_even": "even",
    "head_split": "split",
    "head_sumi_share": "50 %",
}

WITHOUT_SILENCE = {
    "ground_in_fins": "the edition that is out asks it of each fish",
    "head_split": "a split head is what a sorter looks for first",
}
"""Traits by eye that are said of every fish, and why. Opinion, from memory."""


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_utsurimono, without_silence=WITHOUT_SILENCE)
    assert {"bekko", "utsurimono"} < set(REGISTRY.varieties)


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    assert set(names.split()) <= set(REGISTRY.varieties[variety].traits)


def test_its_rule_sets_are_shipped() -> None:
    assert set(RULESETS) == {"tosai_bekko", "tosai_utsurimono", "fry_utsurimono"}


@pytest.mark.parametrize("name", RULESETS)
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(RULESETS[name], REGISTRY) == ()


def test_a_second_small_thing_on_a_bekko_costs_more_than_the_first() -> None:
    # Common practice, no source: a small fault counts for more where no pattern hides it.
    standard = load_standard(RULESETS["tosai_bekko"], REGISTRY)
    faultless, one, two = (
        standard.grade({**BEKKO, **noted}).score for noted in ({}, {"ojima": "yes"}, {"ojima": "yes", "shimi_count": 1})
    )
    assert faultless is not None and one is not None and two is not None
    assert 0 < faultless - one < one - two


def test_half_of_black_is_best_on_an_utsuri_and_shadows_count_as_black_to_come() -> None:
    standard = load_standard(RULESETS["tosai_utsurimono"], REGISTRY)

    def score(cover: int, rising: str) -> float:
        result = standard.grade({**UTSURI, "sumi_cover": cover, "sumi_rising": rising})
        assert result.score is not None
        return float(result.score)

    # A handout on selecting an utsuri (2005): half black, or a bit less.
    assert max(range(0, 101, 10), key=lambda cover: score(cover, "none")) == 50
    assert score(42, "much") > score(42, "none")
    assert score(58, "much") < score(58, "none")


@pytest.mark.parametrize(
    ("motoguro", "grade"), [("base", "keep"), ("whole_fin", "keep"), ("none", "hold"), ("stripes", "sell")]
)
def test_stripes_in_place_of_a_base_lower_an_utsuri_more_than_no_base_yet(motoguro: str, grade: str) -> None:
    # Three pages on utsuri: stripes in the fins lower.
    standard = load_standard(RULESETS["tosai_utsurimono"], REGISTRY)
    assert standard.grade({**UTSURI, "sumi_cover": 45, "motoguro": motoguro}).grade == grade


def test_fry_of_a_yellow_line_need_not_have_been_black() -> None:
    standard = load_standard(RULESETS["fry_utsurimono"], REGISTRY)
    fry = {"spine": "straight", "whole": "yes", "sumi_cover": "50 %", "head_split": "weak", "black_as_larva": "no"}
    assert standard.grade({**fry, "ground": "ki"}).grade == "stay"
    assert standard.grade({**fry, "ground": "shiro"}).grade == "out"
    assert set(standard.grade(fry).possible) == {"stay", "out"}


def test_red_and_yellow_fish_do_not_fill_the_long_tank() -> None:
    standard = load_standard(RULESETS["tosai_utsurimono"], REGISTRY)
    grounds = ("ki",) * 6 + ("hi",) * 10 + ("shiro",) * 5
    lot = [
        {**UTSURI, "fish": str(number), "ground": ground, "sumi_cover": 30 + number / 2, "sumi_rising": "none"}
        for number, ground in enumerate(grounds)
    ]
    kept = [grounds[int(result.fish)] for result in standard.grade_batch(lot).results if result.kept_by == ("indoors",)]
    assert {ground: kept.count(ground) for ground in ("ki", "hi", "shiro")} == {"ki": 4, "hi": 8, "shiro": 5}
