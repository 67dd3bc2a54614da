"""Asagi and shusui: their vocabularies hold, and their rule sets are fit to be shipped."""

from __future__ import annotations

import koirules_asagi
import koirules_skins
import pytest

from koirules import load_standard
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

PALE = {
    "length": 15,
    "spine": "straight",
    "whole": "yes",
    "health": "well",
    "fin_damage": "none",
    "scale_loss": 0,
    "head_clear": "clear",
    "jami": 0,
    "net_clarity": "clear",
    "net_even": "even",
    "blue_tone": "light",
    "scale_rows": 6,
    "lustre": "good",
    "hi_height": 35,
    "hi_line_even": "straight",
    "cheek_hi": "left_cheek right_cheek",
    "pectoral_red": "base",
    "outline": "good",
    "tail_stem": "strong",
    "pectoral_size": "large",
}
"""An asagi that the autumn page keeps."""

WITHOUT_SILENCE = {
    "pectoral_red": "how far the red of the fins goes is what tells one asagi from the next",
    "blue_tone": "each fish has a tone of its own, and none is the ordinary one",
    "blue_skin": "each fish has a tone of its own, and none is the ordinary one",
}
"""Traits by eye that are said of every fish, and why. Opinion, from memory."""


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_asagi, koirules_skins, without_silence=WITHOUT_SILENCE)


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


def test_places_go_to_those_that_are_kept_and_whoever_may_be_unwell_goes_apart() -> None:
    lot = [
        PALE | {"fish": "clean"},
        PALE | {"fish": "torn", "scale_loss": 3},
        PALE | {"fish": "unwell", "health": "doubtful"},
        {"fish": "bent", "spine": "bent"},
    ]
    graded = load_standard(REGISTRY.rulesets["tosai_asagi"], REGISTRY).grade_batch(lot).results
    assert {result.fish: result.kept_by for result in graded} == {
        "clean": ("heated_house",),
        "torn": ("second_look",),
        "unwell": ("apart",),
        "bent": ("apart",),  # nobody wrote down whether it is well
    }
