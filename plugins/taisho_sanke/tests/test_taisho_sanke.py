"""The variety fits into koirules, its rule sets are fit to be shipped, and black is waited for."""

from __future__ import annotations

import koirules_taisho_sanke
import pytest
from koirules_taisho_sanke import koirules_rulesets

from koirules import Standard, load_standard, read_standard
from koirules.testing import check_plugin, registry_with, ruleset_faults

REGISTRY = registry_with(koirules_taisho_sanke)
RULESETS = koirules_rulesets()

SPOKEN_OF = {
    "taisho_sanke": (
        "sumi_spots sumi_cover sumi_size sumi_quality sumi_places kata_sumi sumi_on_head sumi_on_white "
        "sumi_on_red sumi_below_line tejima ojima sumi_rising sumi_kiwa sumi_balance"
    ),
}
"""What is looked at on these fish, as the trade speaks of them: common practice, no source."""

KOHAKU_TO_KEEP = {
    "spine": "straight",
    "whole": "yes",
    "health": "well",
    "outline": "good",
    "tail_stem": "strong",
    "length": 14,
    "pectoral_size": "fair",
    "shiroji": "snow",
    "lustre": "good",
    "kiwa": "sharp",
    "hi_even": "even",
    "hi_thick": "fair",
    "hi_cover": "55 %",
    "head_hi": "u_shape",
    "hi_left_share": "50 %",
    "sumi_on_head": "no",
}


@pytest.fixture(scope="module")
def tosai() -> Standard:
    return load_standard(RULESETS["tosai_taisho_sanke"], REGISTRY)


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_taisho_sanke)
    assert "taisho_sanke" in REGISTRY.varieties


@pytest.mark.parametrize(("variety", "names"), SPOKEN_OF.items())
def test_what_is_looked_at_can_be_written_down(variety: str, names: str) -> None:
    assert set(names.split()) <= set(REGISTRY.varieties[variety].traits)


def test_a_sanke_has_all_that_a_kohaku_has() -> None:
    assert set(REGISTRY.varieties["kohaku"].traits) < set(REGISTRY.varieties["taisho_sanke"].traits)


def test_its_rule_sets_are_shipped() -> None:
    assert set(RULESETS) == {"tosai_taisho_sanke", "nisai_taisho_sanke", "fry_taisho_sanke"}


@pytest.mark.parametrize("name", RULESETS)
def test_a_rule_set_is_fit_to_be_shipped(name: str) -> None:
    assert ruleset_faults(RULESETS[name], REGISTRY) == ()


@pytest.mark.parametrize("shadow", ["none", "some", "much"])
def test_a_good_fish_without_black_waits_whatever_is_under_its_skin(tosai: Standard, shadow: str) -> None:
    # Common practice, no source: no sanke is passed over for missing black before its second autumn.
    result = tosai.grade({**KOHAKU_TO_KEEP, "sumi_spots": 0, "kata_sumi": "no", "sumi_rising": shadow})
    assert result.grade == "hold"


def test_black_on_white_earns_more_than_the_same_black_on_red(tosai: Standard) -> None:
    black = {"sumi_spots": 5, "sumi_size": "medium", "sumi_quality": "black", "sumi_balance": 0.6, "kata_sumi": "yes"}
    on_white = tosai.grade({**KOHAKU_TO_KEEP, **black, "sumi_on_white": "80 %", "sumi_rising": "none"})
    on_red = tosai.grade({**KOHAKU_TO_KEEP, **black, "sumi_on_white": "20 %", "sumi_rising": "none"})
    assert on_white.score is not None and on_red.score is not None
    assert on_white.score > on_red.score


def test_pepper_at_the_second_look_is_read_from_size_and_number() -> None:
    fry = load_standard(RULESETS["fry_taisho_sanke"], REGISTRY)
    fish = {"spine": "straight", "whole": "yes", "length": 7.2, "hi_cover": "60 %", "head_hi": "u_shape"}
    fish |= {"hi_left_share": "50 %", "head_hi_front": "eye_line", "odome": "3 %", "shiroji": "white"}
    assert fry.grade({**fish, "sumi_spots": 4, "sumi_size": "pepper"}).grade == "stay"
    # That pepper is dropped and bold black kept: common practice, no source; the 30 is made up, twice the line of the page.
    assert fry.grade({**fish, "sumi_spots": 30, "sumi_size": "bold"}).grade == "stay"
    assert fry.grade({**fish, "sumi_spots": 30, "sumi_size": "pepper"}).grade == "out"


def test_black_that_is_there_goes_before_black_that_is_promised(tosai: Standard) -> None:
    black = {"sumi_spots": 5, "sumi_size": "medium", "sumi_quality": "black", "sumi_on_white": 80, "sumi_balance": 0.6}
    fish = {**KOHAKU_TO_KEEP, **black, "kata_sumi": "no", "sumi_rising": "some", "sumi_on_white": "82 %"}
    lot = [
        {**fish, "fish": "promised"},
        {**fish, "fish": "there", "kata_sumi": "yes"},
        {**fish, "fish": "waits", "sumi_quality": "grey", "sumi_rising": "none"},
        {**fish, "fish": "unwell", "health": "sick"},
    ]
    graded = tosai.with_settings({"places": 1}).grade_batch(lot)
    assert {result.fish: result.kept_by for result in graded.results} == {
        "promised": (),
        "there": ("warm_house",),
        "waits": ("spring_look",),
        "unwell": ("apart",),
    }


def test_no_spawning_takes_the_whole_house(tosai: Standard) -> None:
    black = {"sumi_spots": 5, "sumi_size": "medium", "sumi_quality": "black", "sumi_on_white": 80, "sumi_balance": 0.6}
    fish = {**KOHAKU_TO_KEEP, **black, "kata_sumi": "yes", "sumi_rising": "none"}
    lengths = (12 + number / 10 for number in range(14))
    lot = [{**fish, "fish": f"{length}", "length": length, "spawning": "pair 3"} for length in lengths]
    kept = [result for result in tosai.grade_batch(lot).results if "warm_house" in result.kept_by]
    assert len(kept) == 12


SPOKEN = read_standard('standard "x" edition 1 variety taisho_sanke\ngrade kept otherwise\n', registry=REGISTRY)


def test_the_black_of_a_sanke_is_read_as_sorters_say_it() -> None:
    for said, cells in {
        "tsubo zumi": {"sumi_on_white": "80.000001 % to 100 %"},
        "kasane zumi on the second step": {"sumi_on_red": "0.000001 % to 100 %"},
        "jari zumi everywhere": {"sumi_size": "pepper"},
        "sumi nicely spread shoulder middle and tail": {"sumi_balance": "0.7 to 1"},
        "tejima three lines each side": {"tejima": "3"},
        "tejima in both pecs already": {"tejima": "1 to 8"},
        "already finished that sumi": {"sumi_quality": "black"},
        "sumi nothing special": {"sumi_quality": "dull or black"},
        "black spots have soft edges": {"sumi_kiwa": "blurred"},
        "sumi stays up on the back": {"sumi_below_line": "no"},
        "no wait that's a good kata sumi": {"kata_sumi": "yes"},
        "all the sumi on one side": {"sumi_balance": "0 to 0.5"},
    }.items():
        (fish,) = SPOKEN.read_notes(f"1: {said}").records
        assert fish == {"fish": "1", **cells}, said
