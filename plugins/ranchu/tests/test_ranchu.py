"""The variety fits into koirules, the page of its README grades, and its drawing shows what was recorded and no more."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path

import koirules_ranchu
import pytest
from koirules_ranchu.drawing import draw

from koirules import read_standard
from koirules.hooks import Recorded
from koirules.testing import check_plugin, registry_with
from koirules.vocabulary.drawings import Value

REGISTRY = registry_with(koirules_ranchu)
README = (Path(__file__).parents[1] / "README.md").read_text(encoding="utf-8")
RULES = re.findall(r"```koi\n(.*?)```", README, re.DOTALL)[0]

WHOLE: Mapping[str, Value] = {
    "length": 12.0,
    "breadth": 4.6,
    "head_growth": "full",
    "back": "smooth",
    "fin_remnants": 0,
    "tail_kind": "four_lobes",
    "tail_spread": "open",
    "colour": "red_and_white",
    "red_on": ("head", "tail"),
}


def sketched(**changes: Value) -> str:
    return draw(Recorded("R1", {**WHOLE, **changes}, 640, 480)).svg


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_ranchu)
    assert REGISTRY.varieties["ranchu"].subject.drawing == "ranchu from above"
    assert "ranchu from above" in REGISTRY.drawings


def test_the_page_of_the_readme_grades() -> None:
    standard = read_standard(RULES, "basin.koi", REGISTRY)
    fish = {"back": "smooth", "head_growth": "full", "tail_spread": "open", "tail_kind": "cherry", "fin_remnants": 0}
    assert standard.grade({**fish, "health": "well"}).grade == "keep"
    assert standard.grade({**fish, "health": "well", "fin_remnants": 1}).grade == "sell"
    assert standard.grade({**fish, "health": "doubtful"}).grade == "rest"


def test_each_kind_of_tail_is_drawn_in_its_own_way() -> None:
    kinds = ("four_lobes", "cherry", "three_lobes", "pinched", "single")
    assert len({sketched(tail_kind=kind) for kind in kinds}) == len(kinds)
    assert len({sketched(tail_spread=word) for word in ("closed", "half_open", "open")}) == 3


@pytest.mark.parametrize("trait", [name for name in WHOLE if name not in {"fin_remnants", "length"}])
def test_what_was_not_recorded_is_drawn_otherwise_and_told(trait: str) -> None:
    without = {name: value for name, value in WHOLE.items() if name != trait}
    made, whole = draw(Recorded("R1", without, 640, 480)), draw(Recorded("R1", WHOLE, 640, 480))
    assert made.svg != whole.svg
    assert made.words != whole.words


def test_nothing_is_red_where_no_colour_was_recorded() -> None:
    nothing = draw(Recorded("R1", {}, 640, 480)).svg
    assert "#cf4a2c" not in nothing
    assert nothing.count("stroke-dasharray") == 5  # the outline, two fins, two halves of the tail
    assert "stroke-dasharray" not in sketched()


def test_remnants_of_a_fin_are_counted() -> None:
    assert sketched(fin_remnants=3).count("l6 -12") == 3
    assert "l6 -12" not in sketched(fin_remnants=0)


def test_a_broader_fish_is_drawn_broader_within_bounds() -> None:
    outlines = [re.findall(r'id="body" d="([^"]*)"', sketched(breadth=wide))[0] for wide in (3.0, 4.0, 11.0, 12.0)]
    assert len(set(outlines)) == 3
