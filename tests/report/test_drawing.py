"""A fish is drawn from above as it was recorded: its patches where and as large as they were mapped, and nothing made up."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from koirules.report.appearance import Appearance, appearance_of
from koirules.report.fish_body import Form
from koirules.report.fish_drawing import PLAIN_RED, REDS, SKINS, Shared, fish_drawing, fish_group
from koirules.report.fish_patches import patch_path
from koirules.vocabulary.kinds import Count, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.maps import PatchMap, boxed
from koirules.vocabulary.readings import PlaceSet, Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import UNITS

SVG = "{http://www.w3.org/2000/svg}"
FORM = Form(120, 1.0, 1.0, 1.0, 1.0, card=False)


def map_of(text: str) -> PatchMap:
    read = read_map(text)
    assert isinstance(read, PatchMap)
    return read


def look_of(text: str, **more: object) -> Appearance:
    return Appearance(maps={"hi": map_of(text)}, **more)


def drawn(text: str, **more: object) -> ElementTree.Element:
    return ElementTree.fromstring(fish_drawing(look_of(text), title="fish 1", **more))  # noqa: S314


def shape_of(path: str) -> shapely.Geometry:
    """The area inside a path; where its edge crosses itself on the tip of the nose, that of all its parts."""
    rings = rings_of(path)
    return shapely.make_valid(shapely.Polygon(rings[0], rings[1:]))


def rings_of(path: str) -> list[list[tuple[float, float]]]:
    """The edges of a path of SVG 2 (section 9.3: M, l, c, s, z), worked out from its text alone, curves in 24 pieces."""
    rings: list[list[tuple[float, float]]] = []
    for ring in path.split("z"):
        if not ring:
            continue
        x = y = hx = hy = 0.0
        points: list[tuple[float, float]] = []
        for command, numbers in re.findall(r"([Mlcs])([^Mlcs]*)", ring):
            values = [float(one) for one in re.findall(r"-?\d+(?:\.\d+)?", numbers)]
            size = {"M": 2, "l": 2, "c": 6, "s": 4}[command]
            for at in range(0, len(values), size):
                part = values[at : at + size]
                if command == "M":
                    x, y = part
                elif command == "l":
                    x, y = x + part[0], y + part[1]
                else:
                    first = part[:2] if command == "c" else [hx, hy]
                    second, end = (part[2:4], part[4:]) if command == "c" else (part[:2], part[2:])
                    for step in range(1, 25):
                        t = step / 24
                        a, b, c = 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3
                        points.append(
                            tuple(
                                o + a * p + b * q + c * r for o, p, q, r in zip((x, y), first, second, end, strict=True)
                            )
                        )
                    hx, hy = end[0] - second[0], end[1] - second[1]
                    x, y = x + end[0], y + end[1]
                points.append((x, y))
        rings.append(points)
    return rings


def mapped_shape(form: Form, front: float, rear: float, left: float, right: float) -> shapely.Polygon:
    """What is seen of a patch from above that reaches exactly so far: the sine of the angle round a round body."""
    us = [front + (rear - front) * step / 40 for step in range(41)]
    near, far = (min(max(v, -100), 100) for v in (left, right))
    return shapely.Polygon([(form.x(u, near), 10 * u) for u in us] + [(form.x(u, far), 10 * u) for u in reversed(us)])


def body_of(form: Form) -> shapely.Polygon:
    us = [step / 4 for step in range(401)]
    return shapely.Polygon([(-form.width(u), 10 * u) for u in us] + [(form.width(u), 10 * u) for u in reversed(us)])


BOXES = st.tuples(st.integers(0, 96), st.integers(2, 90), st.integers(-130, 90), st.integers(12, 230)).map(
    lambda box: (box[0], min(box[0] + box[1], 100), box[2], min(box[2] + box[3], 130))
)


@given(box=BOXES, half=st.integers(54, 75).map(lambda x: 2 * x))
@settings(max_examples=100, deadline=None)
def test_a_patch_meets_its_front_and_rear_and_keeps_its_area(box, half):
    form = Form(half, 1.0, 1.0, 1.0, 1.0, card=False)
    front, rear, left, right = box
    path = patch_path(form, boxed(*map(float, box)))
    (edge,) = rings_of(path)
    # Coordinates are whole thousandths of the body.
    assert min(y for _, y in edge) == pytest.approx(10 * front, abs=1.5)
    assert max(y for _, y in edge) == pytest.approx(10 * rear, abs=1.5)
    mapped = mapped_shape(form, front, rear, left, right)
    # Coordinates are whole: what is smaller than a thousandth of the 160,000 square units of a body is rounded away.
    assume(mapped.area > 160)
    seen = shape_of(path).intersection(body_of(form)).area
    assert seen == pytest.approx(mapped.area, rel=0.12, abs=60 if front < 2 else 0)


def test_the_lot_keeps_the_area_of_each_patch():
    """The boxes of the lot of examples/01-autumn-lot that are smallest and largest."""
    for text in ("31 to 32 right 46 to 56", "61 to 62 left 55 to 65", "11 to 97 left 72 right 60", "0 to 2 both 12"):
        (patch,) = map_of(text).patches
        shape = shape_of(patch_path(FORM, patch)).intersection(body_of(FORM))
        assert shape.area == pytest.approx(mapped_shape(FORM, *patch.box).area, rel=0.12), text


def test_a_traced_edge_is_drawn_as_it_was_traced():
    text = "POLYGON ((30 -50, 60 -50, 60 50, 40 60, 30 50, 30 -50), (40 -10, 50 -10, 50 10, 40 10, 40 -10))"
    (patch,) = map_of(text).patches
    corners = {(round(FORM.x(u, v)), round(10 * u)) for u, v in (*patch.outline, *patch.windows[0])}
    path = patch_path(FORM, patch)
    shape = shape_of(path)
    assert all(shapely.Point(corner).distance(shape.boundary) < 1.5 for corner in corners)
    assert len(shape.interiors) == 1
    assert 'fill-rule="evenodd"' in fish_drawing(look_of(text), title="x")


def test_the_same_fish_looks_the_same_everywhere():
    look = look_of("8 to 26 left 60 right 55; 34 to 52 left 95")
    assert fish_group(look, Shared()) == fish_group(look, Shared())
    assert fish_group(look, Shared()) in fish_drawing(look, title="x", key="k").replace("k-", "k")


def test_it_is_named_and_described_for_those_who_do_not_see_it() -> None:
    svg = drawn("8 to 26 left 60 right 55; 34 to 52 left 95 thin", key="L01")
    assert svg.get("role") == "img"
    assert svg.get("aria-labelledby") == "L01-title L01-desc"
    assert svg.findtext(f"{SVG}title") == "fish 1"
    assert "2 patches" in (svg.findtext(f"{SVG}desc") or "")
    assert "34 to 52 % (thin)" in (svg.findtext(f"{SVG}desc") or "")


def test_any_text_stays_text() -> None:
    made = fish_drawing(
        Appearance(), title='</title><script>alert("1")</script>\x00\x1b[31m', key='"><x', describe="<b>&"
    )
    svg = ElementTree.fromstring(made)  # noqa: S314
    assert not list(svg.iter(f"{SVG}script"))
    assert "<script" not in made
    assert "\x1b" not in made
    assert svg.findtext(f"{SVG}desc") == "<b>&"


def test_left_is_below_where_the_nose_is_to_the_left_and_left_where_it_is_up() -> None:
    assert shape_of(patch_path(FORM, map_of("30 to 50 left 20 to 90").patches[0])).bounds[2] < 0
    standing, lying = (drawn("30 to 50 left 20 to 90", upright=upright) for upright in (True, False))
    assert "transform" not in standing.find(f"{SVG}g").attrib
    # By SVG 2 (8.5) rotate(-90) takes (x, y) to (y, -x): x below 0 comes to lie below the middle.
    assert lying.find(f"{SVG}g").get("transform") == "rotate(-90)"
    x, y, wide, tall = map(float, standing.get("viewBox").split())
    assert tuple(map(float, lying.get("viewBox").split())) == (y, -(x + wide), tall, wide)


def test_the_back_is_wider_than_the_flank_as_it_turns_away() -> None:
    back, flank = (
        mapped_shape(FORM, 35, 40, 0, 50).area,
        mapped_shape(FORM, 35, 40, 50, 100).area,
    )
    assert back > 2 * flank


def test_thin_red_is_pale_and_the_front_edge_fades_over_its_depth() -> None:
    assert 'fill-opacity=".4"' in fish_drawing(look_of("30 to 50 left 20 thin"), title="x")
    depth = {
        "the map says it": fish_group(look_of("30 to 50 left 60 sashi 3", sashi_scales=1), Shared()),
        "in scales of 2 %": fish_group(look_of("30 to 50 left 60", sashi_scales=1.5), Shared()),
    }
    for words, group in depth.items():
        (clipped,) = re.findall(r'<g clip-path="url\(#kp0c\)".*?</g>', group)
        uses = re.findall(r"<use ([^>]*)/>", clipped)
        assert len(uses) == 4, words
        assert uses[-1] == 'href="#kp0" y="30"', words
        assert all('opacity="0.4"' in one for one in uses[:3]), words
    assert "clipPath" not in fish_group(look_of("10 to 50 left 60", sashi_scales=1.5), Shared())  # a head has no scales


@pytest.mark.parametrize(
    ("words", "paint"),
    [({"hi_tone": tone}, paint) for tone, paint in REDS.items()]
    + [({}, PLAIN_RED)]
    + [({"shiroji": ground}, paint) for ground, paint in SKINS.items()]
    + [({"sumi_quality": "black"}, "#22252b"), ({"kiwa": "blurred"}, 'stroke-width="18"')],
)
def test_colours_and_edges_are_those_that_were_recorded(words, paint):
    look = Appearance(maps={"hi": map_of("30 to 50 left 60"), "sumi": map_of("60 to 70 both 30")}, words=words)
    assert paint in fish_drawing(look, title="x")


def luminance(paint: str) -> float:
    """Relative luminance (WCAG 2.2, definition)."""
    parts = [int(paint[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return sum(weight * part for weight, part in zip((0.2126, 0.7152, 0.0722), linear, strict=True))


def test_reds_are_told_apart_by_lightness():
    found = [luminance(paint) for paint in REDS.values()]
    assert found == sorted(found, reverse=True)
    contrasts = [(luminance(SKINS["white"]) + 0.05) / (one + 0.05) for one in found]
    assert [round(one, 1) for one in contrasts] == [2.3, 3.4, 4.2, 5.4, 7.0]


PLACES = ("shoulder", "left_pectoral", "belly", "left_eye")
TRAITS = {
    trait.name: trait
    for trait in (
        Trait("hi_patches", "map", Patches()),
        Trait("length", "length", Number(UNITS["cm"], 1, 90)),
        Trait("width", "width", Number(UNITS["cm"], 1, 30)),
        Trait("stem_width", "stem", Number(UNITS["cm"], 0, 30)),
        Trait("tail_stem", "stem", Scale(("thin", "fair", "strong"))),
        Trait("outline", "outline", Scale(("poor", "fair", "good", "excellent"))),
        Trait("shimi_count", "specks", Count(50)),
        Trait("windows", "windows", Count(50)),
        Trait("shimi_places", "specks", Places(PLACES)),
        Trait("hikui", "hikui", YesNo()),
        Trait("kuchibeni", "lips", YesNo()),
    )
}


def test_what_has_no_place_is_told_and_not_drawn():
    bare = appearance_of(TRAITS, {"hi_patches": map_of("none")})
    seen = appearance_of(
        TRAITS,
        {
            "hi_patches": map_of("none"),
            "shimi_count": Span(3, 3),
            "shimi_places": PlaceSet(0b101, 0b101),
            "windows": Span(2, 2),
            "hikui": 2,
        },
    )
    assert seen.told == (
        "2 more specks, place not recorded",
        "2 white windows, place not recorded",
        "fading red (hikui), place not recorded",
        "speck below: belly",
    )
    assert fish_group(seen, Shared()).count("<circle") == 1
    assert "<circle" not in fish_group(bare, Shared())
    unsure = appearance_of(TRAITS, {"hi_patches": map_of("none"), "kuchibeni": 3, "shimi_places": PlaceSet(0, 1)})
    assert fish_group(unsure, Shared()) == fish_group(bare, Shared())


def test_a_fish_that_was_not_mapped_is_an_outline_that_says_so():
    look = appearance_of(TRAITS, {"length": Span(15, 15)})
    made = fish_drawing(look, title="x")
    assert "stroke-dasharray" in made and "not mapped" in made
    assert REDS["orange_red"] not in made and PLAIN_RED not in made


def test_the_body_follows_what_was_measured():
    """Widths as measured, by the proportions of the drawing: total length over the length of the body is 1.229."""
    broad = Form.of(appearance_of(TRAITS, {"length": Span(24.58, 24.58), "width": Span(5, 5)}), card=False)
    assert 2 * broad.half / 1000 == pytest.approx(5 / 20, abs=0.003)
    stem = {"length": Span(24.58, 24.58), "width": Span(5, 5), "stem_width": Span(2.4, 2.4)}
    measured = Form.of(appearance_of(TRAITS, stem), card=False)
    assert 2 * measured.width(92) == pytest.approx(1000 * 2.4 / 20, rel=0.03)
    words = [Form.of(appearance_of(TRAITS, {"outline": 1 << i, "tail_stem": 1 << i}), card=False) for i in range(3)]
    assert words[0].half < words[1].half < words[2].half
    assert words[0].width(92) < words[1].width(92) < words[2].width(92)


def test_a_fish_alone_is_small_and_needs_no_filter_and_no_picture():
    look = Appearance(
        maps={
            "hi": map_of("9 to 24 left 60 right 40; 31 to 48 both 114; 56 to 80 both 60"),
            "sumi": map_of("2 to 16 right 70; 26 to 38 left 60; 60 to 70 both 60"),
        },
        sashi_scales=1,
        words={"motoguro": "base", "lustre": "superb", "kiwa": "fair", "kuchibeni": "yes"},
        places={"hi_on_eyes": ("left_eye",), "shimi_places": ("shoulder", "crown")},
    )
    for made in (fish_drawing(look, title="x", upright=True), fish_drawing(look, title="x", card=True)):
        assert len(made.encode()) < 12_000
        assert not re.search('<(filter|image|script|style)|href="[^#]', made)
