"""A fish is drawn from above with its patches: sound XML, safe text, left where left is."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest

from koirules.report.drawing import PAINTS, fish_drawing
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.outlines import TORPEDO, Outline

SVG = "{http://www.w3.org/2000/svg}"


def map_of(text: str) -> PatchMap:
    read = read_map(text)
    assert isinstance(read, PatchMap)
    return read


def drawn(text: str, **more: object) -> ElementTree.Element:
    return ElementTree.fromstring(fish_drawing(TORPEDO, {"hi": map_of(text)}, title="fish 1", **more))  # noqa: S314


def corners(svg: ElementTree.Element, paint: str) -> list[list[tuple[float, float]]]:
    paths = [path for path in svg.iter(f"{SVG}path") if path.get("fill") == paint]
    numbers = [re.findall(r"(-?[\d.]+) (-?[\d.]+)", path.get("d", "")) for path in paths]
    return [[(float(x), float(y)) for x, y in found] for found in numbers]


def test_it_is_named_and_described_for_those_who_do_not_see_it() -> None:
    svg = drawn("8 to 26 left 60 right 55; 34 to 52 left 95 thin", key="L01")
    assert svg.get("role") == "img"
    assert svg.get("aria-labelledby") == "L01-title L01-desc"
    assert svg.findtext(f"{SVG}title") == "fish 1"
    assert "2 patches" in (svg.findtext(f"{SVG}desc") or "")
    assert "34 to 52 % (thin)" in (svg.findtext(f"{SVG}desc") or "")


def test_any_text_stays_text() -> None:
    made = fish_drawing(title='</title><script>alert("1")</script>\x00\x1b[31m', key='"><x', describe="<b>&")
    svg = ElementTree.fromstring(made)  # noqa: S314
    assert not list(svg.iter(f"{SVG}script"))
    assert "<script" not in made
    assert "\x1b" not in made
    assert svg.findtext(f"{SVG}desc") == "<b>&"


def test_left_is_below_where_the_nose_is_to_the_left_and_left_where_it_is_up() -> None:
    (flat,) = corners(drawn("30 to 50 left 20 to 90"), PAINTS["hi"])
    (upright,) = corners(drawn("30 to 50 left 20 to 90", upright=True), PAINTS["hi"])
    lying, standing = drawn("none"), drawn("none", upright=True)
    middle = float((lying.get("viewBox") or "").split()[3]) / 2
    centre = float((standing.get("viewBox") or "").split()[2]) / 2
    assert all(y > middle for _, y in flat)
    assert all(x < centre for x, _ in upright)
    assert sorted(x for x, _ in flat) == pytest.approx(sorted(y for _, y in upright))


def test_the_back_is_wider_than_the_flank_as_it_turns_away() -> None:
    (back,) = corners(drawn("POLYGON ((35 0, 40 0, 38 50, 35 0))"), PAINTS["hi"])
    (flank,) = corners(drawn("POLYGON ((35 50, 40 50, 38 100, 35 50))"), PAINTS["hi"])
    heights = [max(y for _, y in found) - min(y for _, y in found) for found in (back, flank)]
    assert heights[0] > 2 * heights[1]


def test_thin_red_and_red_under_white_scales_are_pale() -> None:
    thin = [path for path in drawn("30 to 50 left 20 thin").iter(f"{SVG}path") if path.get("fill-opacity")]
    assert [path.get("stroke-dasharray") is not None for path in thin] == [True]
    sashi = [path for path in drawn("30 to 50 left 20 sashi 3").iter(f"{SVG}path") if path.get("fill") == PAINTS["hi"]]
    assert [path.get("fill-opacity") is not None for path in sashi] == [True, False]


def test_a_window_is_not_painted() -> None:
    made = drawn("POLYGON ((30 -50, 60 -50, 60 50, 40 60, 30 50, 30 -50), (40 -10, 50 -10, 50 10, 40 10, 40 -10))")
    (path,) = [path for path in made.iter(f"{SVG}path") if path.get("fill") == PAINTS["hi"]]
    assert path.get("fill-rule") == "evenodd"
    assert path.get("d", "").count("M") == 2


def test_an_outline_says_how_wide_a_body_is() -> None:
    assert TORPEDO.width(36) == 1
    assert TORPEDO.width(-5) == TORPEDO.width(0)
    assert Outline(((0, 0.5), (100, 1))).width(50) == 0.75
    with pytest.raises(ValueError, match="from 0 to 100"):
        Outline(((0, 1), (50, 1)))
