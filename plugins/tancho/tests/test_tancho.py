"""The variety fits into koirules, its rule set is fit to be shipped, and the mark decides."""

from __future__ import annotations

import koirules_tancho
import pytest
from koirules_tancho import koirules_rulesets

from koirules import Standard, load_standard
from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_tancho)
RULESETS = koirules_rulesets()

SPOKEN_OF = {
    "tancho": (
        "tancho_body spot_shape spot_roundness spot_symmetry spot_off_centre spot_size spot_touches "
        "hi_even kiwa other_red shiroji sumi_quality tejima motoguro"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""

TO_KEEP = {
    "spine": "straight",
    "whole": "yes",
    "health": "well",
    "outline": "good",
    "tail_stem": "strong",
    "length": 13,
    "tancho_body": "kohaku",
    "spot_shape": "round",
    "spot_symmetry": 0.9,
    "spot_off_centre": "3 %",
    "spot_size": "35 %",
    "spot_touches": "none",
    "other_red": 0,
    "kiwa": "sharp",
    "hi_even": "even",
    "hi_thick": "fair",
    "shiroji": "snow",
    "lustre": "good",
}

WITHOUT_SILENCE = {
    "spot_off_centre": "the spot is the whole pattern, so each of its measures is said",
    "spot_touches": "the spot is the whole pattern, so what it touches is said",
}
"""Traits by eye that are said of every fish, and why. Opinion, from memory."""


@pytest.fixture(scope="module")
def tosai() -> Standard:
    return load_standard(RULESETS["tosai_tancho"], REGISTRY)


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_tancho, without_silence=WITHOUT_SILENCE)
    assert "tancho" in REGISTRY.varieties


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    assert set(names.split()) <= set(REGISTRY.varieties[variety].traits)


@pytest.mark.parametrize("name", RULESETS)
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(RULESETS[name], REGISTRY) == ()


def test_any_red_elsewhere_makes_it_no_tancho(tosai: Standard) -> None:
    # Texts on tancho in a trade magazine: also on the lips.
    assert tosai.grade(TO_KEEP).grade == "keep"
    assert tosai.grade({**TO_KEEP, "other_red": 1}).grade == "other"


@pytest.mark.parametrize("place", ["nose", "left_eye", "right_eye", "shoulder"])
def test_a_mark_that_touches_eye_nose_or_shoulder_is_not_kept(tosai: Standard, place: str) -> None:
    # Three pages on tancho: large, and free of eyes, nose and shoulder.
    assert tosai.grade({**TO_KEEP, "spot_touches": place}).grade == "sell"


def test_likeness_of_the_halves_outranks_shape(tosai: Standard) -> None:
    # Texts on tancho in a trade magazine.
    odd_but_alike = tosai.grade({**TO_KEEP, "spot_shape": "irregular", "spot_symmetry": 0.95})
    round_but_lopsided = tosai.grade({**TO_KEEP, "spot_symmetry": 0.7})
    assert odd_but_alike.score is not None and round_but_lopsided.score is not None
    assert odd_but_alike.score > round_but_lopsided.score


def test_a_speck_counts_on_white_and_not_among_black_spots(tosai: Standard) -> None:
    # Common practice, no source: nothing hides a small fault on a white fish with one mark.
    black = {"sumi_quality": "black", "sumi_rising": "none"}
    white_fish = [tosai.grade({**TO_KEEP, "shimi_count": specks}).score for specks in (0, 1)]
    sanke = [
        tosai.grade({**TO_KEEP, **black, "tancho_body": "sanke", "shimi_count": specks}).score for specks in (0, 1)
    ]
    assert white_fish[0] is not None and white_fish[1] is not None
    assert white_fish[0] - white_fish[1] == 4
    assert sanke[0] == sanke[1]


def test_black_that_is_late_holds_a_fine_mark_and_does_not_lose_it(tosai: Standard) -> None:
    late = {**TO_KEEP, "tancho_body": "showa", "sumi_quality": "dull", "sumi_rising": "none"}
    assert tosai.grade(late).grade == "hold"
    assert tosai.grade({**late, "sumi_rising": "some"}).grade == "keep"
