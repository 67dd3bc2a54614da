"""Rules that ask what a fish will be when it is grown: what they read, what they say, and what they hang on."""

import json
from decimal import Decimal

import polars as pl
import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.vocabulary import traits

RULES = """standard "Lantern Bay, grown" edition 1 variety kohaku
setting grown_length = 65 cm from 40 cm to 90 cm
term stout means girth_ratio
section body worth 100
points outline by stout grown to grown_length: 0.18 gives 0, 0.24 gives 10, 0.30 gives 4
bonus heavy 2 if weight grown to (grown_length - 5 cm) above 4 kg
fault slim if (girth_ratio + 0.01) grown to 60 cm below 0.2: no better than cull
grade keep if score at least 60
grade cull otherwise
"""
B_3_2 = RULES.replace("term stout", "setting growth_exponent = 3.2 from 3 to 3.5\nterm stout")


@pytest.fixture(scope="module")
def standard():
    return koirules.read_standard(B_3_2)


def reason(result, name):
    return next(each for each in result.reasons if each.name == name)


def test_a_figure_is_read_as_it_will_be(standard):
    # By hand: q from 20 to 65 cm at b = 3.2 is 3.25^0.1 = 1.125092; 0.22 q = 0.247520, on the curve 9.248 of 10.
    result = standard.grade({"length": 20, "girth_ratio": 0.22, "weight": 150})
    outline = reason(result, "outline")
    assert outline.points_low == Decimal("9.248")
    assert outline.words == "outline: 0.248, 9.25 of 10 (grown to 65 cm, by a model)"
    assert outline.read == "girth_ratio 0.22, length 20 cm, girth_ratio grown to grown_length 0.24752"
    # 150 g (60 / 20)^3.2 = 5045 g.
    assert reason(result, "heavy").words == "heavy: +2 (grown to 60 cm, by a model)"
    assert reason(result, "slim").words == "slim: no"


def test_the_length_that_is_asked_for_is_a_setting_of_the_run(standard):
    changed = standard.with_settings({"grown_length": "40 cm", "growth_exponent": "3"})
    result = changed.grade({"length": 20, "girth_ratio": 0.22, "weight": 150})
    assert reason(result, "outline").read.endswith("girth_ratio grown to grown_length 0.22")
    assert "grown to 35 cm, 40 cm and 60 cm" in changed.growth_note
    assert "growth_exponent = 3;" in changed.growth_note


def test_without_a_setting_the_usual_coefficients_are_taken_and_said():
    usual = koirules.read_standard(RULES)
    assert "growth_exponent = 3.02, the usual value" in usual.growth_note
    assert "an estimate, not a promise" in usual.growth_note
    # 0.22 (65 / 20)^0.01 = 0.222608.
    result = usual.grade({"length": 20, "girth_ratio": 0.22, "weight": 150})
    assert reason(result, "outline").read.endswith("0.222608")
    plain = RULES.replace(" grown to grown_length", "").replace(" grown to (grown_length - 5 cm)", "")
    assert koirules.read_standard(plain.replace(" grown to 60 cm", "")).growth_note == ""


def test_a_fish_that_is_that_long_is_taken_as_it_is(standard):
    result = standard.grade({"length": 70, "girth_ratio": 0.22, "weight": 5000})
    assert reason(result, "outline").points_low == Decimal("6.667")


def test_an_unrecorded_length_leaves_open_how_much_it_will_change(standard):
    result = standard.grade({"girth_ratio": 0.22, "weight": 150})
    low, high = reason(result, "outline").points_low, reason(result, "outline").points_high
    assert low < high
    # From 0.5 cm, the shortest fish there is, to one that is grown already.
    for length in (0.5, 3, 20, 64, 125):
        points = reason(standard.grade({"length": length, "girth_ratio": 0.22, "weight": 150}), "outline").points_low
        assert low <= points <= high


def test_an_open_fish_hangs_on_what_the_grown_trait_is_worked_out_from(standard):
    assert "girth_ratio" in {question.trait.name for question in standard.questions({"length": 20})}
    assert "length" in {question.trait.name for question in standard.questions({"girth_ratio": 0.18, "weight": 150})}
    assert standard.next_question({"length": 20, "weight": 150}).trait.name == "girth_ratio"


def test_the_nearest_change_is_in_the_trait_as_it_is_now(standard):
    fish = {"length": 20, "girth_ratio": 0.18, "weight": 150}
    result = standard.grade(fish)
    assert result.grade == "cull"
    moves = [move for change in result.nearest_changes().single for move in change.moves]
    girth = next(move for move in moves if move.trait.name == "girth_ratio")
    assert standard.grade({**fish, "girth_ratio": girth.becomes.low}).grade == "keep"


def test_what_does_not_change_with_growth_may_stand_beside_it():
    standard = koirules.read_standard(
        'standard "Lantern Bay" edition 1 variety kohaku\n'
        "grade keep if (barbels_missing is 0 and girth_ratio at least 0.2) grown to 65 cm\ngrade cull otherwise\n"
    )
    assert standard.grade({"barbels_missing": 0, "girth_ratio": 0.25, "length": 20}).grade == "keep"
    assert standard.grade({"barbels_missing": 1, "girth_ratio": 0.25, "length": 20}).grade == "cull"
    assert standard.grade({"girth_ratio": 0.25, "length": 20}).possible == ("keep", "cull")


@pytest.mark.parametrize("rows", [3, 3_000])
def test_a_frame_is_graded_by_what_its_fish_will_be(standard, rows):
    lengths = [20.0, None, 70.0]
    made = {
        "length": [lengths[i % 3] for i in range(rows)],
        "girth_ratio": [0.18 + (i % 7) / 100 for i in range(rows)],
        "weight (kg)": [0.15] * rows,
    }
    frame = pl.DataFrame(made).rename({"weight (kg)": "weight"}).with_columns(pl.col("weight") * 1000)
    graded = standard.grade_frame(frame)
    assert "girth_ratio grown to grown_length" not in graded.columns
    for i in (0, 1, 2, rows - 1):
        row = {name: value for name, value in frame.row(i, named=True).items() if value is not None}
        result = standard.grade(row)
        assert graded.row(i, named=True)["possible"] == "|".join(result.possible)
        assert graded.row(i, named=True)["score_high"] == float(result.score_high)


def test_every_way_of_showing_results_names_the_model_and_its_coefficients(tmp_path):
    rules, records = tmp_path / "grown.koi", tmp_path / "fish.csv"
    rules.write_text(B_3_2, encoding="utf-8")
    records.write_text("fish,length,girth_ratio,weight\na,20,0.22,150\n", encoding="utf-8")
    run = CliRunner().invoke
    out = tmp_path / "results.json"
    graded = run(main, ["grade", str(rules), str(records), "--out", str(out)])
    assert graded.exit_code == 0
    for shown in (graded.output, run(main, ["why", str(rules), str(records), "a"]).output):
        assert "an estimate, not a promise" in " ".join(shown.split())
        assert "growth_exponent = 3.2" in " ".join(shown.split())
    assert "growth_exponent = 3.2" in json.loads(out.read_text(encoding="utf-8"))["cautions"][0]
    folder = tmp_path / "lots"
    folder.mkdir()
    (folder / "fish.csv").write_text(records.read_text(encoding="utf-8"), encoding="utf-8")
    whole = run(main, ["grade", str(rules), str(folder)])
    assert "growth_exponent = 3.2" in " ".join(whole.output.split())
    told = json.loads(run(main, ["traits", "kohaku", "--json"]).output)
    assert {each["name"] for each in told if each["grown_to"]} >= {"length", "girth_ratio", "weight", "maruten"}
    assert not next(each for each in told if each["name"] == "kiwa")["grown_to"]


def test_figures_of_the_batch_and_earlier_looks_read_what_fish_will_be():
    standard = koirules.read_standard(
        'standard "Lantern Bay" edition 1 variety kohaku\nsetting growth_exponent = 3.2\n'
        "term stout means girth_ratio grown to 65 cm\n"
        "fault slim if stout below batch median of stout: no better than sell\n"
        "fault slower if earlier length is recorded and stout below earlier (girth_ratio grown to 65 cm): no better than cull\n"
        "grade keep if length above 10 cm\ngrade sell if length above 5 cm\ngrade cull otherwise\n"
    )
    # At 20 cm 0.22 grows to 0.2475, at 40 cm 0.23 to 0.2414 and 0.24 to 0.2519.
    looks = [
        {"fish": "a", "length": 20, "girth_ratio": 0.22},
        {"fish": "b", "length": 40, "girth_ratio": 0.23},
        {"fish": "c", "length": 40, "girth_ratio": 0.24},
    ]
    graded = {result.fish: result for result in standard.grade_batch(looks).results}
    assert {fish: result.grade for fish, result in graded.items()} == {"a": "keep", "b": "sell", "c": "keep"}
    before = {"fish": "c", "date": "2025-10-01", "length": 20, "girth_ratio": 0.23}
    dated = [*({**look, "date": "2026-10-01"} for look in looks), before]
    graded = {result.fish: result for result in standard.grade_batch(dated).results}
    # At 20 cm 0.23 would have grown to 0.2588.
    assert graded["c"].grade == "cull"


BY_EYE = """standard "Dark Tub" edition 1 variety kohaku
section body worth 10
points cover "red when grown" by hi_cover grown to 60 cm: 10 % gives 0, 30 % gives 10
grade keep if score at least 5
grade cull otherwise
"""


def test_red_by_eye_without_a_map_becomes_less_as_white_grows_in_from_the_sides():
    standard = koirules.read_standard(BY_EYE)
    result = standard.grade({"length": 12, "hi_cover": "25 %"})
    # 25 % times 5 to the power of -0.25 is 16.72 %, and to the power of -0.1 it is 21.28 %.
    assert (result.score_low, result.score_high) == (Decimal("3.36"), Decimal("5.64"))
    assert "growth_white_sides = from 0.1 to 0.25, as is usual" in standard.growth_note
    today = koirules.read_standard(BY_EYE.replace(" grown to 60 cm", "")).grade({"length": 12, "hi_cover": "25 %"})
    assert result.score_high < today.score_low == 7.5


def test_by_how_much_white_grows_in_is_a_setting_apart_from_the_exponent_of_the_weight():
    told = "setting growth_white_sides = 0.2 from 0 to 0.5\nsetting growth_exponent = 3 from 2 to 4\nsection"
    standard = koirules.read_standard(BY_EYE.replace("section", told, 1))
    fish = {"length": 12, "hi_cover": "25 %"}
    result = standard.grade(fish)
    assert result.score_low == result.score_high == Decimal("4.06")
    assert standard.with_settings({"growth_exponent": "3.5"}).grade(fish).score_low == result.score_low
    assert standard.with_settings({"growth_white_sides": "0"}).grade(fish).score_low == 7.5


def test_beside_the_white_of_the_sides_the_share_of_new_skin_is_not_read():
    share, sides = "setting growth_white_share = 1 from 0 to 1\n", "setting growth_white_sides = 0.2 from 0 to 0.5\n"
    drawn = {"length": 12, "hi_patches": "10 to 40 left 60 right 60"}

    def read(*lines):
        b = "setting growth_exponent = 3.4 from 2 to 4\n"
        return koirules.read_standard(
            BY_EYE.replace("section body worth 10\n", "".join((b, *lines)) + "section body worth 100\n", 1)
        )

    by_share, by_sides, both = read(share), read(sides), read(share, sides)
    assert by_share.warnings == by_sides.warnings == ()
    assert [(one.code, one.site.line) for one in both.warnings] == [("unused", 3)]
    scores = [one.grade(drawn).score_low for one in (by_share, by_sides, both, read())]
    # 5 to the power of -0.2 by both, of -0.1 where nothing is said.
    assert scores[0] == scores[1] == scores[2] < scores[3]
    assert both.with_settings({"growth_white_share": "0"}).grade(drawn).score_low == scores[2]
    assert "s: growth_white_share = 1)" in by_share.growth_note
    assert "w: growth_white_sides = 0.2)" in both.growth_note
    assert "w: growth_white_sides = 0.1, the usual value)" in read().growth_note


def test_red_by_eye_of_a_fish_that_is_that_long_stays_and_a_map_says_more():
    standard = koirules.read_standard(BY_EYE)
    assert standard.grade({"length": 62, "hi_cover": "25 %"}).score_low == 7.5
    drawn = {"length": 12, "hi_patches": "10 to 40 left 60 right 60"}
    assert standard.grade(drawn).score_low == standard.grade({**drawn, "hi_cover": "90 %"}).score_low


def test_red_by_eye_in_frames_is_what_it_is_in_one_record():
    standard = koirules.read_standard(BY_EYE)
    fish = [{"fish": str(n), "length": 10 + n, "hi_cover": f"{20 + 3 * n} %"} for n in range(6)]
    frame = standard.grade_frame(pl.DataFrame(fish))
    one_by_one = [standard.grade({k: v for k, v in one.items() if k != "fish"}) for one in fish]
    assert frame["score_low"].to_list() == [float(each.score_low) for each in one_by_one]
    assert frame["score_high"].to_list() == [float(each.score_high) for each in one_by_one]


@pytest.mark.parametrize(
    ("patches", "condition", "possible"),
    [
        # The front edge moves back by the sashi: from 9 % to 12 %.
        ("9 to 28 both 60 sashi 3", "hi_start grown to 60 cm is 12 %", ("keep",)),
        # The thin patch may go: then the red begins at 40 %.
        ("9 to 28 both 60 thin; 40 to 60 both 50", "hi_start grown to 60 cm at most 20 %", ("keep", "cull")),
        ("9 to 28 both 60 thin; 40 to 60 both 50", "hi_start grown to 60 cm between 9 % and 40 %", ("keep",)),
        ("9 to 28 both 60; 40 to 60 both 50", "hi_start grown to 60 cm is 9 %", ("keep",)),
    ],
)
def test_where_the_red_begins_moves_with_sashi_and_with_a_thin_patch(patches, condition, possible):
    standard = koirules.read_standard(
        f'standard "Lantern Bay" edition 1\n  variety kohaku\ngrade keep if {condition}\ngrade cull otherwise\n'
    )
    assert standard.grade({"length": 14, "hi_patches": patches}).possible == possible


@pytest.mark.parametrize(("first", "second"), [("65 cm", "goal"), ("goal", "65 cm"), ("0.65 m", "goal")])
def test_two_ways_to_name_one_length_are_both_worked_out(first, second):
    standard = koirules.read_standard(
        'standard "two names" edition 1 variety kohaku\nsetting goal = 65 cm from 40 cm to 90 cm\n'
        f"section a worth 50\npoints p1 by hi_cover grown to {first}: 10 % gives 0, 60 % gives 10\n"
        f"section b worth 50\npoints p2 by hi_cover grown to {second}: 10 % gives 0, 60 % gives 10\n"
        "grade keep if score at least 50\ngrade sell otherwise\n"
    )
    record = {"length": 15, "hi_patches": "8 to 26; 40 to 60 left 60 right 60; 70 to 90"}
    result = standard.grade(record)
    ends = [(one.low, one.high) for one in result.sections.values()]
    assert ends[0] == ends[1]
    assert ends[0][0] == ends[0][1] > 0
    (row,) = standard.grade_frame(pl.DataFrame({name: [value] for name, value in record.items()})).to_dicts()
    assert (row["score_low"], row["score_high"]) == (float(result.score_low), float(result.score_high))
    assert not standard.compare(standard).counting


@pytest.mark.parametrize("b", [2.5, 3.0, 3.2])
def test_figures_made_of_others_follow_the_length_as_those_do(b):
    girth, weight = (b - 1) / 2, b  # W = a L^b, and W is as L G^2
    powers = {
        traits.UNCHANGED: 0,
        traits.AS_LENGTH: 1,
        traits.AS_GIRTH: girth,
        traits.AS_WEIGHT: weight,
        traits.GIRTH_OVER_LENGTH: girth - 1,
        traits.LENGTH_OVER_GIRTH: 1 - girth,
        traits.WEIGHT_OVER_LENGTH_CUBED: weight - 3,
    }
    assert all(allometry.power(b) == pytest.approx(power) for allometry, power in powers.items())


def test_fish_of_which_nothing_was_recorded_are_graded_alike_by_row_and_by_column():
    asked = "grade keep if length grown to 65 cm above 70 cm\ngrade cull otherwise\n"
    grader = koirules.read_standard(f'standard "Lantern Bay, grown" edition 1 variety kohaku\n{asked}').batch()
    read = grader.reader({}).read(pl.DataFrame())
    assert grader.by_column(read, 3).equals(grader.by_row(read, 3))
