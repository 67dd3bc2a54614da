"""Both varieties fit into koirules, their rule sets are fit to be shipped, and they see what the trade sees."""

from __future__ import annotations

import koirules_koromo
import pytest
from koirules_koromo import koirules_rulesets

from koirules import load_standard
from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_koromo)
RULESETS = koirules_rulesets()

SPOKEN_OF = {
    "koromo": (
        "koromo_type net_clarity net_even net_on_white head_net budo_clusters dark_sashi hi_hidden "
        "hi_cover steps kiwa odome"
    ),
    "goshiki": (
        "net_clarity net_weight goshiki_style hi_clean net_even head_white_clear hi_brightness "
        "water_temperature steps head_hi kiwa odome"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""

KOROMO = {
    "spine": "straight",
    "whole": "yes",
    "health": "well",
    "outline": "good",
    "tail_stem": "strong",
    "length": 13,
    "koromo_type": "ai",
    "shiroji": "white",
    "lustre": "good",
    "kiwa": "sharp",
    "hi_even": "even",
    "hi_cover": "48 %",
    "head_hi": "u_shape",
    "hi_left_share": "50 %",
    "net_even": "even",
    "net_on_white": "none",
    "head_net": "no",
    "dark_sashi": "yes",
}
GOSHIKI = {
    "spine": "straight",
    "whole": "yes",
    "health": "well",
    "outline": "good",
    "tail_stem": "strong",
    "length": 13,
    "goshiki_style": "modern",
    "hi_brightness": "bright",
    "hi_clean": "some",
    "hi_even": "even",
    "hi_cover": "45 %",
    "head_hi": "u_shape",
    "kiwa": "fair",
    "net_clarity": "crisp",
    "net_even": "even",
    "head_white_clear": "fair",
    "lustre": "good",
}

WITHOUT_SILENCE = {
    "net_on_white": "a net on the white is what a sorter looks for first",
    "head_net": "whether it counts as a plus or a flaw goes by the kind of koromo, so somebody says it",
    "hi_hidden": "how much red the net hides differs from fish to fish",
    "net_weight": "light or dark is a matter of style, and neither is the ordinary one",
    "hi_clean": "clean red is what a goshiki is chosen for, so somebody says it",
}
"""Traits by eye that are said of every fish, and why. Opinion, from memory."""


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_koromo, without_silence=WITHOUT_SILENCE)
    assert {"koromo", "goshiki"} < set(REGISTRY.varieties)


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    assert set(names.split()) <= set(REGISTRY.varieties[variety].traits)


def test_its_rule_sets_are_shipped() -> None:
    assert set(RULESETS) == {"tosai_koromo", "nisai_koromo", "tosai_goshiki"}


@pytest.mark.parametrize("name", RULESETS)
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(RULESETS[name], REGISTRY) == ()


def test_the_net_that_is_best_in_the_first_autumn_is_not_enough_in_the_second() -> None:
    # A club page on koromo: the net comes with age, and the least marked young may end best.
    tosai = load_standard(RULESETS["tosai_koromo"], REGISTRY)
    nisai = load_standard(RULESETS["nisai_koromo"], REGISTRY)
    first = {net: tosai.grade({**KOROMO, "net_clarity": net}) for net in ("none", "faint", "clear", "crisp")}
    second = {net: nisai.grade({**KOROMO, "length": 38, "hi_hidden": 5, "net_clarity": net}) for net in first}
    assert [first[net].grade for net in first] == ["keep", "keep", "keep", "sell"]
    assert [second[net].grade for net in second] == ["hold", "hold", "keep", "keep"]
    best = max(first, key=lambda net: first[net].score_high)
    assert best == "faint"


def test_net_on_the_head_is_for_sumi_goromo_alone() -> None:
    tosai = load_standard(RULESETS["tosai_koromo"], REGISTRY)
    fish = {**KOROMO, "net_clarity": "faint", "head_net": "yes"}
    assert tosai.grade(fish).grade == "sell"
    assert tosai.grade({**fish, "koromo_type": "sumi"}).grade == "keep"


def test_a_heavy_net_in_cold_water_waits_for_warm_water() -> None:
    # From memory: the net of a goshiki darkens in cold water.
    tosai = load_standard(RULESETS["tosai_goshiki"], REGISTRY)
    fish = {**GOSHIKI, "net_weight": "heavy"}
    cold, warm = (tosai.grade({**fish, "water_temperature": warmth}) for warmth in (9, 20))
    assert (cold.grade, warm.grade) == ("hold", "keep")
    assert cold.score is not None and warm.score is not None
    assert cold.score > warm.score


def test_each_style_of_goshiki_is_judged_as_what_it_is() -> None:
    tosai = load_standard(RULESETS["tosai_goshiki"], REGISTRY)
    covered = {**GOSHIKI, "net_weight": "middle", "hi_clean": "covered", "water_temperature": 18}
    assert "ashes" in tosai.grade(covered).faults
    assert "ashes" not in tosai.grade({**covered, "goshiki_style": "kuro"}).faults


@pytest.mark.parametrize(("warmths", "told"), [((9, 11, 18), ["cold_day"]), ((9, 16, 18), [])])
def test_a_day_of_cold_water_is_told_before_anything_is_sold(warmths: tuple[int, ...], told: list[str]) -> None:
    tosai = load_standard(RULESETS["tosai_goshiki"], REGISTRY)
    lot = [{**GOSHIKI, "fish": str(warmth), "net_weight": "light", "water_temperature": warmth} for warmth in warmths]
    assert [alert.name for alert in tosai.grade_batch(lot).alerts] == told


def test_a_lot_whose_robe_came_too_early_is_told() -> None:
    tosai = load_standard(RULESETS["tosai_koromo"], REGISTRY)
    lot = [{**KOROMO, "fish": net, "net_clarity": net} for net in ("crisp", "faint")]
    assert [alert.name for alert in tosai.grade_batch(lot).alerts] == ["a_third_too_early"]
