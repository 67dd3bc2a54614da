"""Laws of maps that grow: of what they become, and of the figures that rules read then."""

from __future__ import annotations

from decimal import Decimal

import polars as pl
import pytest
import shapely
from hypothesis import example, given, settings
from hypothesis import strategies as st

import koirules
from koirules.measures.growing_maps import MOST_THIN, grown_maps, map_ahead
from koirules.measures.growth import GrowthModel, across
from koirules.testing.strategies import values
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Patches
from koirules.vocabulary.maps import Patch, PatchMap, boxed

READS = (
    "hi_cover",
    "hi_front_share",
    "hi_left_share",
    "odome",
    "step_count",
    "tobihi",
    "steps",
    "longest_white_gap",
    "hi_below_line",
)

RULES = """standard "Lantern Bay, maps" edition 1 variety kohaku
setting growth_exponent = 3 from 2 to 4
setting growth_white_share = 1 from 0 to 1
section s worth 100
POINTS
grade keep if score at least 50
grade sell otherwise
"""


def points_of(ahead: str) -> str:
    lines = []
    for name in READS:
        if name == "steps":
            lines.append(f"points {name} by {name}{ahead}: nidan gives 10, sandan gives 8, anything else gives 1")
        elif name == "step_count":
            lines.append(f"points {name} by {name}{ahead}: 0 gives 0, 12 gives 10")
        elif name == "tobihi":
            lines.append(f"points {name} by {name}{ahead}: 0 gives 0, 20 gives 10")
        else:
            lines.append(f"points {name} by {name}{ahead}: 0 % gives 0, 100 % gives 10")
    return RULES.replace("POINTS", "\n".join(lines))


NOW = koirules.read_standard(points_of(""))
GROWN = koirules.read_standard(points_of(" grown to 65 cm"))
moderate = settings(max_examples=60, deadline=None)


def figures(result: koirules.Result) -> dict[str, tuple[object, object]]:
    return {r.name: (r.points_low, r.points_high) for r in result.reasons if r.kind == "points"}


def without_marks(cell: str) -> PatchMap:
    made = read_value(Patches(), cell)
    assert isinstance(made, PatchMap)
    return PatchMap([Patch(patch.outline, patch.windows) for patch in made.patches])


@moderate
@given(values(Patches()))
def test_growth_at_b_3_changes_no_figure_of_a_map(cell: str) -> None:
    fish = {"hi_patches": without_marks(cell), "length": 15}
    assert figures(GROWN.grade(fish)) == figures(NOW.grade(fish))


@moderate
@given(values(Patches()), st.sampled_from(["2.6", "3.02", "3.5"]))
def test_where_no_new_skin_is_white_a_map_stays_as_it_is(cell: str, b: str) -> None:
    grown = GROWN.with_settings({"growth_exponent": b, "growth_white_share": "0"})
    fish = {"hi_patches": without_marks(cell), "length": 15}
    assert figures(grown.grade(fish)) == figures(NOW.grade(fish))


SIDES = koirules.read_standard(
    points_of(" grown to 65 cm").replace("setting growth_white_share = 1 ", "setting growth_white_sides = 0.15 ")
)
USUAL = koirules.read_standard(points_of(" grown to 65 cm").replace("setting growth_white_share = 1 from 0 to 1\n", ""))


@moderate
@given(values(Patches()), st.sampled_from(["2.6", "3.02", "4"]))
def test_how_white_grows_in_from_the_sides_does_not_follow_from_the_exponent_of_the_weight(cell: str, b: str) -> None:
    fish = {"hi_patches": cell, "length": 15}
    for standard in (SIDES, USUAL):
        assert figures(standard.with_settings({"growth_exponent": b}).grade(fish)) == figures(standard.grade(fish))
    assert figures(SIDES.with_settings({"growth_white_sides": "0.1"}).grade(fish)) == figures(USUAL.grade(fish))


@moderate
@given(values(Patches()))
def test_where_no_white_grows_in_a_map_stays_as_it_is(cell: str) -> None:
    fish = {"hi_patches": without_marks(cell), "length": 15}
    still = SIDES.with_settings({"growth_white_sides": "0"})
    assert figures(still.grade(fish)) == figures(NOW.grade(fish))


HIGH = "10 to 24 left 40 right 35; 36 to 50 left 35 right 45; 62 to 74 left 40 right 40"
"""Small patches high on the back: their red lies on the back before and after."""


@pytest.mark.parametrize(("target", "left"), [("60", "0.8513"), ("70", "0.8383"), ("80", "0.8272")])
def test_small_patches_high_on_the_back_of_a_tosai_are_clearly_less_when_it_is_grown(target: str, left: str) -> None:
    # 5, 5.83 and 6.67 to the power of -0.1, worked out apart; 12 cm is a tosai.
    text = """standard "Lantern Bay" edition 1 variety kohaku
section pattern worth 100
points cover by hi_cover grown to LENGTH: 0 % gives 0, 100 % gives 10
points now by hi_cover: 0 % gives 0, 100 % gives 10
grade keep if score at least 50
grade sell otherwise
"""
    standard = koirules.read_standard(text.replace("LENGTH", f"{target} cm"))
    drawn = figures(standard.grade({"hi_patches": HIGH, "length": 12}))
    now, then = drawn["now"][0], drawn["cover"]
    assert then[0] == then[1]
    assert float(then[0]) / float(now) == pytest.approx(float(left), abs=0.002)
    # What is said of the same red by eye leaves room for the map.
    by_eye = figures(standard.grade({"hi_cover": f"{float(now) * 10:.4f} %", "length": 12}))["cover"]
    assert float(by_eye[0]) < float(then[0]) <= float(by_eye[1]) + 0.002 < float(now) * 0.86


def test_a_pattern_that_is_just_large_enough_today_is_too_small_when_grown() -> None:
    asked = 'standard "Lantern Bay" edition 1 variety kohaku\ngrade keep if hi_cover{} at least 17 %\ngrade sell otherwise\n'
    fish = {"hi_patches": HIGH, "length": 12}
    grades = [koirules.read_standard(asked.format(ahead)).grade(fish).grade for ahead in ("", " grown to 60 cm")]
    assert grades == ["keep", "sell"]


@moderate
@given(values(Patches()), st.sampled_from([0.05, 0.1, 0.3]))
def test_every_point_of_a_map_moves_to_the_back_by_the_length_alone(cell: str, sides: float) -> None:
    made = without_marks(cell)
    (then,) = grown_maps(made, across(GrowthModel(3.4, sides=sides), 12.0, 60.0))
    less = Decimal(5) ** -Decimal(repr(sides))
    before = [(u, v) for patch in made.patches for u, v in patch.outline]
    after = [(u, v) for patch in then.patches for u, v in patch.outline]
    if len(before) == len(after):
        for (u, v), (along, aside) in zip(before, after, strict=True):
            assert u == along
            assert aside == pytest.approx(float(Decimal(repr(v)) * less), abs=0.0011)


@moderate
@given(values(Patches()))
def test_a_fish_that_is_that_long_is_measured_as_it_is(cell: str) -> None:
    fish = {"hi_patches": cell, "length": 70}
    assert figures(GROWN.with_settings({"growth_exponent": "3.5"}).grade(fish)) == figures(NOW.grade(fish))


@moderate
@given(values(Patches()), st.sampled_from(["3.1", "3.5", "4"]))
@example("14 to 15 left 82 right 100", "3.1")
def test_red_covers_no_more_of_a_stouter_fish(cell: str, b: str) -> None:
    # Above b = 3 the skin that is new is white; what lay below the lateral line may be drawn up onto the back.
    made = without_marks(cell)
    if any(abs(v) > 100 for patch in made.patches for _, v in patch.outline):
        return
    fish = {"hi_patches": made, "length": 15}
    now, then = figures(NOW.grade(fish)), figures(GROWN.with_settings({"growth_exponent": b}).grade(fish))
    assert then["hi_cover"][1] <= now["hi_cover"][0]
    if then["tobihi"] != now["tobihi"]:
        return  # a step that shrinks below a hundredth of the back is a splash from then on
    for name in ("odome", "longest_white_gap", "step_count", "hi_left_share", "hi_front_share"):
        assert [float(end) for end in then[name]] == pytest.approx([float(end) for end in now[name]], abs=0.011), name


@moderate
@given(values(Patches()), st.sampled_from([0.8, 1.0, 1.1]))
def test_what_is_drawn_is_the_map_in_which_all_that_is_thin_stays_and_marks_it(cell: str, across: float) -> None:
    made = read_value(Patches(), cell)
    assert isinstance(made, PatchMap)
    drawn = map_ahead(made, across)
    measured = grown_maps(made, across)
    if measured:
        assert PatchMap(Patch(p.outline, p.windows) for p in drawn.patches) == measured[0]
        assert len(measured[-1].patches) == sum(not p.thin for p in drawn.patches)
    assert not any(p.sashi for p in drawn.patches)


@moderate
@given(values(Patches()))
def test_each_map_that_a_thin_patch_leaves_lies_within_what_is_said(cell: str) -> None:
    made = without_marks(cell)
    for thin in range(len(made.patches)):
        doubtful = PatchMap([Patch(p.outline, p.windows, thin=number == thin) for number, p in enumerate(made.patches)])
        said = figures(GROWN.grade({"hi_patches": doubtful, "length": 15}))
        gone = PatchMap([p for number, p in enumerate(made.patches) if number != thin])
        for true in (made, gone):
            for name, (low, high) in figures(GROWN.grade({"hi_patches": true, "length": 15})).items():
                assert said[name][0] <= low <= high <= said[name][1]


@moderate
@given(st.lists(st.tuples(values(Patches()), st.sampled_from([15.0, 20.0, 70.0, None])), min_size=1, max_size=5))
def test_a_frame_comes_to_what_its_fish_come_to(fish: list[tuple[str, float | None]]) -> None:
    standard = GROWN.with_settings({"growth_exponent": "3.2"})
    rows = [{"hi_patches": cell, "length": length} for cell, length in fish]
    frame = pl.DataFrame(rows, schema={"hi_patches": pl.String, "length": pl.Float64})
    grader = standard.batch()
    from koirules.engines.columnar.reading import Source

    read = grader.reader({name: Source(name) for name in frame.columns}).read(frame)
    by_row = grader.by_row(read, len(rows))
    by_column = grader.by_column(read, len(rows))
    assert by_column.equals(by_row)
    for row, made in zip(rows, by_row.iter_rows(named=True), strict=True):
        result = standard.grade({name: value for name, value in row.items() if value is not None})
        assert (made["score_low"], made["score_high"]) == (float(result.score_low), float(result.score_high))


# ---- What becomes of a map -----------------------------------------------------------------------------------------


def test_the_front_edge_moves_back_by_the_sashi() -> None:
    (grown,) = grown_maps(PatchMap([boxed(8, 26, -60, 55, sashi=2)]), 1.0)
    assert grown == PatchMap([boxed(10, 26, -60, 55)])
    assert grown_maps(PatchMap([boxed(8, 26, -60, 55, sashi=18)]), 1.0) == (PatchMap(),)
    traced = Patch(((8, -60), (26, -60), (26, 55), (17, 80), (8, 55)), sashi=3)
    (drawn,) = grown_maps(PatchMap([traced]), 1.0)
    whole, left = (shapely.Polygon(one.outline) for one in (traced, drawn.patches[0]))
    # Of a shape without dents that is all of it that lies 3 behind its front edge, whatever the place across the body.
    assert left.within(whole.buffer(0.001))
    for v in (-59, 0, 50, 60, 70):
        across = shapely.LineString([(0, v), (100, v)])
        ahead, behind = (shapely.bounds(shapely.intersection(one, across)) for one in (whole, left))
        assert behind[0] == pytest.approx(ahead[0] + 3, abs=0.002)
        assert behind[2] == pytest.approx(ahead[2], abs=0.002)


def test_across_the_body_a_map_is_drawn_together_and_never_beyond_the_belly() -> None:
    assert grown_maps(PatchMap([boxed(8, 26, -60, 55)]), 0.9) == (PatchMap([boxed(8, 26, -54, 49.5)]),)
    assert grown_maps(PatchMap([boxed(8, 26, -190, 55)]), 1.1) == (PatchMap([boxed(8, 26, -200, 60.5)]),)


def test_every_thin_patch_may_stay_or_go_up_to_a_bound() -> None:
    thin = [boxed(10 * i, 10 * i + 5, -30, 30, thin=True) for i in range(MOST_THIN + 1)]
    assert len(set(grown_maps(PatchMap(thin[:3]), 1.0))) == 8
    assert len(grown_maps(PatchMap(thin[:MOST_THIN]), 1.0)) == 2**MOST_THIN
    assert grown_maps(PatchMap(thin), 1.0) == ()


def test_where_the_map_is_missing_nothing_is_known_and_it_is_asked_for() -> None:
    standard = koirules.read_standard(
        'standard "x" edition 1 variety kohaku\ngrade keep if hi_cover grown to 65 cm at least 30 %\ngrade cull otherwise\n'
    )
    fish = {"length": 15}
    result = standard.grade(fish)
    assert result.possible == ("keep", "cull")
    assert "hi_cover grown to 65 cm not known" in result.reasons[0].read
    assert {"hi_patches", "hi_cover"} <= {question.trait.name for question in standard.questions(fish)}
    unsure = standard.grade({"hi_patches": "8 to 60 both 90", "length": "60 cm to 70 cm"})
    assert unsure.possible == ("keep", "cull")
