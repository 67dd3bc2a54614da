"""What is measured on a map of the red is what a sorter would say of the fish."""

from __future__ import annotations

import pytest

from koirules.vocabulary.maps import PatchMap
from tests.measures.maps import MEASURER, measured, number, shown

BLOB = "POLYGON (({0} -30, {1} -45, {2} -40, {3} 0, {2} 40, {1} 45, {0} 30, {0} -30))"
HEAD = BLOB.format(11, 14, 19, 22)
LATER = BLOB.format(40, 46, 60, 66)


@pytest.mark.parametrize(
    ("pattern", "steps", "count"),
    [
        ("none", "none", "0"),
        ("11 to 22 left 40 right 40", "tancho", "1"),
        ("11 to 22 left 40 right 40; 60 to 61 left 5", "tancho", "1"),
        ("8 to 90 left 60 right 60", "ippon", "1"),
        ("10 to 40 left 90 right 20; 40 to 66 left 20 right 90; 66 to 90 left 90 right 20", "inazuma", "1"),
        ("10 to 40 left 90 right 20; 40 to 90 left 20 right 90", "ippon", "1"),
        ("8 to 26 left 60 right 55; 34 to 52 left 95 right 40", "nidan", "2"),
        ("8 to 26 left 60; 20 to 52 right 40", "ippon", "1"),
        ("8 to 26 left 60; 26 to 52 right 40", "ippon", "1"),
        ("8 to 20 left 60; 25 to 40 left 60; 50 to 60 left 60", "sandan", "3"),
        ("; ".join(f"{u} to {u + 9} both 50" for u in range(10, 60, 12)), "godan", "5"),
        ("; ".join(f"{u} to {u + 9} both 50" for u in range(10, 80, 12)), "many", "6"),
        ("8 to 26 left 110 to 180; 34 to 52 left 95", "ippon", "1"),
    ],
)
def test_steps_are_groups_of_patches_with_white_across_the_back_between(pattern: str, steps: str, count: str) -> None:
    found = shown(pattern)
    assert (found["steps"], found["step_count"]) == (steps, count)


def test_places_and_gaps_along_the_body() -> None:
    found = shown("8 to 26 both 60; 34 to 52 both 60; 70 to 85 left 60")
    assert found["hi_start"] == "8 %"
    assert found["odome"] == "15 %"
    assert found["longest_white_gap"] == "18 %"
    assert shown("8 to 26 both 60; 34 to 80 both 60", standard_length=20)["odome_gap"] == "4 cm"


def test_a_fish_without_red_has_nothing_to_share() -> None:
    found = shown("none")
    assert found["hi_cover"] == "0 %"
    assert (found["hi_start"], found["odome"]) == ("100 %", "100 %")
    for trait in ("hi_front_share", "hi_left_share", "smallest_patch", "head_roundness", "head_hi_front"):
        assert trait not in found
    assert (found["hi_on_eyes"], found["hi_at_fins"], found["kuchibeni"]) == ("none", "none", "no")


def test_left_and_right_front_and_rear() -> None:
    found = shown("0 to 100 left 60")
    assert (found["hi_cover"], found["hi_left_share"]) == ("30 %", "100 %")
    assert found["balance_left_right"] == "0"
    assert shown("0 to 100 both 60")["balance_left_right"] == "1"
    assert shown("0 to 50 both 60")["hi_front_share"] == "100 %"
    assert shown("50 to 100 both 60")["balance_front_rear"] == "0"


def test_splashes_are_counted_and_are_no_steps() -> None:
    found = shown("8 to 26 both 60; 40 to 42 left 5; 60 to 62 right 20 to 30")
    assert (found["steps"], found["tobihi"]) == ("ippon", "2")
    assert float(found["smallest_patch"].removesuffix(" %")) > 1


def test_what_lies_below_the_line_on_the_worse_side() -> None:
    found = shown("20 to 40 left 120; 30 to 50 left 130; 60 to 65 right 190")
    assert (found["hi_below_line"], found["makibara"]) == ("30 %", "yes")
    assert shown("20 to 40 both 100")["hi_below_line"] == "0 %"
    assert shown("20 to 40 both 149")["makibara"] == "no"


@pytest.mark.parametrize(
    ("pattern", "eyes"),
    [
        ("9 to 22 left 60 right 55", "left_eye"),
        ("9 to 22 both 80", "left_eye right_eye"),
        ("13 to 22 both 80", "none"),
        ("9 to 22 both 40", "none"),
    ],
)
def test_red_over_the_eyes(pattern: str, eyes: str) -> None:
    assert shown(pattern)["hi_on_eyes"] == eyes


def test_red_on_the_lips_alone_is_kuchibeni_and_no_splash() -> None:
    assert shown("0 to 3 both 5; 14 to 30 both 50")["tobihi"] == "0"
    assert shown("0 to 3 both 20; 14 to 30 both 50")["kuchibeni"] == "yes"
    assert shown("0 to 30 both 50")["kuchibeni"] == "no"
    assert shown("14 to 30 both 50")["kuchibeni"] == "no"


@pytest.mark.parametrize(
    ("pattern", "front"),
    [
        ("0 to 3 both 20; 14 to 30 both 50", "behind_eyes"),
        ("9 to 30 both 50", "eye_line"),
        ("5 to 30 both 50", "nostrils"),
        ("3 to 30 both 50", "nose"),
        ("1 to 30 both 50", "lips"),
    ],
)
def test_how_far_forward_the_head_red_runs(pattern: str, front: str) -> None:
    assert shown(pattern)["head_hi_front"] == front


def test_red_at_the_roots_of_the_fins() -> None:
    assert shown("20 to 35 left 130")["hi_at_fins"] == "left_pectoral"
    assert shown("40 to 60 right 2 to 185")["hi_at_fins"] == "dorsal pelvic"
    assert shown("70 to 100 right 20 to 195")["hi_at_fins"] == "anal tail"


def test_a_separate_head_patch_is_maruten() -> None:
    assert shown(f"{HEAD}; {LATER}")["maruten"] == "yes"
    assert shown(HEAD)["maruten"] == "no"
    assert shown("11 to 40 both 40; 50 to 70 both 40")["maruten"] == "no"


def test_only_a_drawn_edge_has_a_roundness() -> None:
    assert "head_roundness" in shown(HEAD)
    assert "head_roundness" not in shown("11 to 22 left 40 right 40")
    assert "head_roundness" not in shown(LATER)


def test_windows_are_counted_where_they_could_be_drawn() -> None:
    holed = "POLYGON ((10 -50, 24 -50, 60 0, 24 50, 10 50, 10 -50), (14 0, 17 0, 17 9, 14 0), (40 0, 44 0, 44 9, 40 0))"
    assert (shown(holed)["windows"], shown(holed)["head_windows"]) == ("2", "1")
    assert shown(LATER)["windows"] == "0"
    assert "windows" not in shown("8 to 26 both 60"), "the ends of a patch say nothing of holes in it"
    ring = "10 to 40 left 60; 10 to 40 right 40 to 60; 10 to 15 both 60; 35 to 40 both 60"
    assert shown(ring)["windows"] == "1 to 20"


def test_the_outline_is_drawn_through_the_widths_that_were_measured() -> None:
    rear = "70 to 95 both 60; 20 to 30 both 20"
    plain = number(rear, "hi_cover")
    assert number(rear, "hi_cover", gill_width=3.8, width=4, stem_width=2.6) > plain + 1
    assert number(rear, "hi_cover", gill_width=3.8, width=4, stem_width=0.8) < plain - 1
    assert number(rear, "hi_cover", width=4, stem_width=0.8) == plain, "all three are needed"


def test_each_fish_is_measured_for_itself() -> None:
    touching = ["8 to 26 left 60; 26 to 40 right 55", "30 to 50 both 20; 40 to 60 left 90"]
    maps = ["8 to 26 left 60 right 55", "none", *touching, LATER, "8 to 26 left 60 right 55", *touching]
    together = measured(*maps).columns
    for i, one in enumerate(maps):
        alone = measured(one).columns
        assert {name: column[i] for name, column in together.items()} == {
            name: column[0] for name, column in alone.items()
        }


def test_a_map_that_crosses_itself_spoils_no_other() -> None:
    crossed = "8 to 20 left 9; POLYGON ((30 0, 40 0, 32 20, 35 -10, 30 0))"
    found = measured("8 to 26 both 60", crossed)
    assert [(wrong.fish, wrong.trait, wrong.misread.code) for wrong in found.wrong] == [
        (1, "hi_patches", "value-map-crossed")
    ]
    assert found.columns["steps"][0] is not None
    assert found.columns["steps"][1] is None


@pytest.mark.parametrize(
    ("pattern", "told"),
    [
        ("POLYGON ((10 0, 30 0, 30 30, 10 30, 10 0), (40 0, 44 0, 44 9, 40 0))", "a window lies outside it"),
        (
            "POLYGON ((10 0, 40 0, 40 40, 10 30, 10 0), (12 2, 30 2, 30 20, 12 2), (20 4, 25 4, 25 7, 20 4))",
            "inside another",
        ),
    ],
)
def test_what_is_no_patch_is_told_in_words(pattern: str, told: str) -> None:
    (wrong,) = measured(pattern).wrong
    assert told in wrong.misread.cause


def test_every_figure_has_its_trait() -> None:
    assert set(measured(PatchMap()).columns) >= {"hi_cover", "zigzag", "balance_front_rear", "hi_at_fins"}
    assert len(MEASURER.wanted) == 40
