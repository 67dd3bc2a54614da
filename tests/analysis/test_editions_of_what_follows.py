"""What comparing says of editions that measure maps, derive traits and ask what a fish grows to."""

import json
import sys
from decimal import Decimal

import pytest
from click.testing import CliRunner

import koirules
from koirules.analysis.diff.moves import Because
from koirules.analysis.diff.parting import Verdict
from koirules.candidates.maps_to_try import map_between
from koirules.commands import main
from koirules.testing import registry_with
from koirules.vocabulary.kinds import Count, Number, Scale, YesNo
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.maps import write_map
from koirules.vocabulary.measures import Formula
from koirules.vocabulary.readings import write_reading
from koirules.vocabulary.traits import Trait, Vocabulary
from tests.judge.growing import registry_that_grows
from tests.plugins.invented import Gives

BOX = registry_with()
HEAD = 'standard "s (an invented house)" edition 1 variety kohaku\n'
SECTION = """section body worth 100
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
"""
GRADES = "grade keep if score at least 50\ngrade cull otherwise\n"
NO_OTHER = GRADES.replace("least 50", "least 50 and (tail_stem is thin or tail_stem above thin)")
SLIM = "points slim by girth_ratio grown to 60 cm: 0.2 gives 0, 0.6 gives 10\n"
COVER = "points cover by hi_cover grown to 60 cm: 10 % gives 0, 45 % gives 10\n"
BASE = SECTION + SLIM
EXPONENT = "setting growth_exponent = 3.02 from 2.5 to 3.5\n"
SPLASH = "setting splash = 1 % from 0.1 % to 20 %\n"
STEPS = "fault bare if steps is none: no better than cull\n"
SMALL = "30 to 36 both 20"


def standard(text, grades=GRADES):
    return koirules.read_standard(HEAD + text + grades, registry=BOX)


def compared(old, new, grades=GRADES, newer=GRADES, records=None):
    return standard(old, grades).compare(standard(new, newer), records)


def shown(old, new, found):
    """That a fish which is told of, written as anybody writes it, is graded differently; gives what is written."""
    parting = found.parting
    assert parting.verdict is Verdict.DIFFER
    fish = {name: write_reading(parting.traits[name].kind, reading) for name, reading in parting.fish.items()}
    graded = [standard(text).grade(fish) for text in (old, new)]
    assert [one.possible for one in graded] == [parting.old.possible, parting.new.possible]
    assert graded[0].possible != graded[1].possible
    return fish


@pytest.mark.parametrize("text", [BASE, SECTION + COVER, EXPONENT + BASE, SPLASH + SECTION + STEPS])
def test_what_grows_and_what_follows_alike_parts_no_fish(text):
    found = compared(text, text, newer=NO_OTHER)
    assert found.counting
    assert found.parting.verdict is Verdict.NEVER


def test_another_length_to_grow_to_is_another_value():
    new = BASE.replace("60 cm", "65 cm")
    found = compared(BASE, new)
    assert [change.words for change in found.counting] == [
        "points slim: by girth_ratio grown to 65 cm, was girth_ratio grown to 60 cm"
    ]
    shown(BASE, new, found)


@pytest.mark.parametrize(("one", "other"), [("60 cm", "40 cm"), ("60 cm", "65 cm")])
def test_maps_are_tried_between_those_where_something_turns(one, other):
    old, new = SECTION + COVER, SECTION + COVER.replace(one, other)
    fish = shown(old, new, compared(old, new))
    assert "hi_patches" in fish


def test_what_only_an_alert_asks_of_growth_bears_on_no_grade():
    alert = 'alert big "many" if batch share of (length grown to 60 cm above 70 cm) above 5 %\n'
    found = compared(SECTION, SECTION, newer=NO_OTHER + alert)
    assert found.parting.verdict is Verdict.NEVER
    found = compared(SECTION, SECTION, newer=GRADES.replace("50", "60.5") + alert)
    assert found.parting.verdict is Verdict.DIFFER
    found = compared(SECTION, SECTION + "fault odd if score is 3: no better than cull\n", newer=GRADES + alert)
    assert found.parting.verdict is Verdict.NEVER


def test_between_maps_of_other_shapes_there_is_none():
    plain, wide, cut = (
        read_map(text) for text in ("5 to 90 both 20", "5 to 90 both 40", "5 to 30 both 20; 40 to 90 both 20")
    )
    assert write_map(map_between(plain, wide)) == "5 to 90 left 30 right 30"
    assert map_between(plain, cut) is None
    near = map_between(plain, read_map("5 to 90 both 20.001"))
    assert near is None


def test_a_length_by_a_setting_is_told_by_its_value():
    text = "setting full = 60 cm from 40 cm to 90 cm\n" + BASE.replace("60 cm", "full")
    one = standard(text)
    assert one.compare(standard(text.replace("= 60 cm", "= 600 mm"))).parting.never
    assert one.compare(one.with_settings({"full": "70 cm"})).parting.verdict is Verdict.DIFFER
    plain = compared(text, BASE)
    assert plain.parting.verdict is Verdict.NEVER


@pytest.mark.parametrize(
    ("old", "new"),
    [
        (EXPONENT + BASE, EXPONENT.replace("3.02", "2.9") + BASE),
        (BASE, EXPONENT.replace("3.02", "2.9") + BASE),
        (EXPONENT.replace("3.02", "2.9") + BASE, BASE),
    ],
)
def test_a_coefficient_of_growth_bears_on_grades_without_being_read(old, new):
    found = compared(old, new)
    assert [change.name for change in found.counting] == ["growth_exponent"]
    fish = shown(old, new, found)
    records = [{**fish, "fish": "K1"}]
    (move,) = compared(old, new, records=records).moves.moves
    assert (move.because, move.by) == (Because.ALONE, ("setting growth_exponent",))


def test_a_coefficient_at_its_usual_value_changes_nothing():
    found = compared(BASE, EXPONENT + BASE)
    assert [change.words for change in found.counting] == ["setting growth_exponent: added"]
    assert found.parting.verdict is Verdict.NEVER


def test_a_setting_that_counts_by_its_name_is_not_taken_for_a_renamed_one():
    old = EXPONENT.replace("3.02 from", "2.9 from").replace("3.5\n", '3.5 "b"\n') + BASE
    new = old.replace("growth_exponent", "exponent")
    found = compared(old, new)
    assert {change.name for change in found.changes} == {"growth_exponent", "exponent"}
    shown(old, new, found)


def test_the_white_share_counts_where_maps_grow_and_not_for_figures():
    white = "setting growth_white_share = 0.5 from 0 to 1\n"
    assert compared(BASE, white + BASE).parting.verdict is Verdict.NEVER
    assert compared(SECTION + COVER, white + SECTION + COVER).parting.verdict is not Verdict.NEVER


def test_the_white_from_the_sides_counts_where_a_pattern_grows_and_not_for_figures():
    sides = "setting growth_white_sides = 0.3 from 0 to 1\n"
    assert compared(BASE, sides + BASE).parting.verdict is Verdict.NEVER
    assert compared(SECTION + COVER, sides + SECTION + COVER).parting.verdict is not Verdict.NEVER


def test_the_white_from_the_sides_counts_for_a_share_that_is_told_without_a_map():
    text = """standard "Lantern Bay" edition 1 variety grower
SIDESgrade keep if red_share grown to 60 cm at least 20 %
grade cull otherwise
"""
    sides = "setting growth_white_sides = 0.3 from 0 to 1\n"
    before, after = (
        koirules.read_standard(text.replace("SIDES", one), registry=registry_that_grows()) for one in ("", sides)
    )
    assert before.compare(after).parting.verdict is not Verdict.NEVER
    assert before.compare(before).parting.verdict is Verdict.NEVER


def test_nothing_is_claimed_of_what_the_solver_does_not_know():
    odd = GRADES.replace("least 50", "least 50 or hi_cover grown to 60 cm between 3 % and 3.001 %")
    found = compared(SECTION + COVER, SECTION + COVER, newer=odd)
    assert found.parting.verdict is Verdict.OPEN
    (reason,) = found.parting.reasons
    assert reason == "of hi_cover grown to 60 cm the proof knows nothing, since a map or the like grows first"


def test_a_constant_that_measures_go_by_parts_fish_whose_map_is_written():
    old, new = SPLASH + SECTION + STEPS, SPLASH.replace("= 1 %", "= 10 %") + SECTION + STEPS
    found = compared(old, new)
    assert [change.words for change in found.counting] == ["setting splash: value 10 %, was 1 %"]
    fish = shown(old, new, found)
    assert "steps" not in fish
    assert "hi_patches" in fish
    # Whoever writes the trait itself is graded alike by both.
    written = {"tail_stem": "strong", "steps": "none", "hi_patches": SMALL}
    assert standard(old).grade(written).possible == standard(new).grade(written).possible == ("cull",)


def test_of_what_each_edition_measures_in_its_own_way_nothing_is_claimed():
    odd = "fault odd if hi_left_share between 3 % and 3.001 %: no better than cull\n"
    found = compared(SPLASH + SECTION + odd, SPLASH.replace("= 1 %", "= 2 %") + SECTION + odd)
    assert found.parting.verdict is Verdict.OPEN
    assert found.parting.reasons == ("where nobody wrote hi_left_share, each edition works it out in its own way",)


def test_records_are_measured_and_grown_as_they_are_graded():
    old = SPLASH + SECTION + STEPS + COVER
    new = SPLASH.replace("= 1 %", "= 10 %") + SECTION.replace("fair gives 6", "fair gives 5") + STEPS + COVER
    maps = (SMALL, "5 to 30 both 80; 45 to 90 both 80", "5 to 92 both 60")
    records = [
        {"fish": str(i), "tail_stem": stem, "hi_patches": pattern, "length": length}
        for i, (pattern, stem, length) in enumerate(
            (pattern, stem, length) for pattern in maps for stem in ("fair", "strong") for length in (30, 70)
        )
    ]
    moves = {move.fish: move for move in compared(old, new, records=records).moves.moves}
    one, other = standard(old), standard(new)
    moved = {}
    for record in records:
        told = one.grade(record).possible, other.grade(record).possible
        if told[0] != told[1]:
            moved[record["fish"]] = told
    assert {name: (move.old.possible, move.new.possible) for name, move in moves.items()} == moved


def test_a_moved_fish_is_told_by_the_constant_that_moved_it():
    old, new = SPLASH + SECTION + STEPS, SPLASH.replace("= 1 %", "= 10 %") + SECTION + STEPS
    new = new.replace("thin gives 0", "thin gives 1")
    records = [{"fish": "K1", "tail_stem": "strong", "hi_patches": SMALL}]
    (move,) = compared(old, new, records=records).moves.moves
    assert (move.old.possible, move.new.possible) == (("keep",), ("cull",))
    assert (move.because, move.by) == (Because.ALONE, ("setting splash",))


def test_a_renamed_grade_is_the_same_where_traits_follow_and_grow():
    text = SECTION + STEPS + COVER
    found = compared(text, text.replace("than cull", "than sell"), newer=GRADES.replace("grade cull", "grade sell"))
    assert found.renamed == {"sell": "cull"}
    assert found.parting.verdict is Verdict.NEVER


@pytest.mark.parametrize(
    ("kind", "pattern", "changed"),
    [
        ("hi_patches is recorded", SMALL, "hi_patches is recorded and tail_stem is strong"),
        ("hi_readings is recorded", None, "hi_readings is not recorded"),
    ],
)
def test_maps_and_colour_readings_are_there_or_not(kind, pattern, changed):
    old, new = SECTION + f"bonus seen 55 if {kind}\n", SECTION + f"bonus seen 55 if {changed}\n"
    fish = shown(old, new, compared(old, new))
    assert pattern is None or "hi_patches" in fish


NET = (
    Trait("rows_along", "rows along", Count(60)),
    Trait("rows_across", "rows across", Count(60)),
    Trait("row_ratio", "ratio", Number(None, Decimal(0), Decimal(60))),
    Trait("fine_net", "fine net", YesNo()),
    Trait("net_grade", "net", Scale(("coarse", "fair", "fine"))),
)
PLAIN = {
    "row_ratio": "rows_along / rows_across",
    "fine_net": "rows_along at least 30",
    "net_grade": "(fine if row_ratio above 2 otherwise fair)",
}
READS = {
    "row_ratio": "points ratio by row_ratio: 0 gives 0, 10 gives 10\n",
    "fine_net": "bonus fine 55 if fine_net\n",
    "net_grade": "points net by net_grade: coarse gives 0, fair gives 4, fine gives 10\n",
}


def netted(read, *traits, **formulas):
    """A standard of an invented variety that says by itself how its traits follow from others."""
    measures = tuple(Formula(name, text) for name, text in {**PLAIN, **formulas}.items())
    lace = Vocabulary("lace", "lace", traits or NET, ("shared",), measures=measures)
    head = 'standard "t" edition 1 variety lace\nsection net worth 100\n'
    text = f"{head}{READS.get(read, read)}{SECTION.splitlines()[1]}\n{GRADES}"
    return koirules.read_standard(text, registry=registry_with(Gives(lace)))


@pytest.mark.parametrize(
    ("read", "name", "formula"),
    [
        ("row_ratio", "row_ratio", "rows_across / rows_along"),
        ("fine_net", "fine_net", "rows_along at least 40"),
        ("net_grade", "net_grade", "(fine if row_ratio above 3 otherwise coarse)"),
        ("net_grade", "row_ratio", "rows_along / (rows_across + 1)"),
    ],
)
def test_a_variety_that_says_otherwise_how_a_trait_follows_parts_fish(read, name, formula):
    old, new = netted(read), netted(read, **{name: formula})
    records = [
        {"fish": f"{along} {across} {stem}", "rows_along": along, "rows_across": across, "tail_stem": stem}
        for along in (20, 35, 50)
        for across in (4, 9, 24)
        for stem in ("thin", "fair", "strong")
    ]
    found = old.compare(new, records)
    assert [change.words for change in found.counting] == [f"trait {name}: follows as {formula}, was {PLAIN[name]}"]
    moved = {
        record["fish"]: (one.possible, other.possible)
        for record in records
        if (one := old.grade(record)).possible != (other := new.grade(record)).possible
    }
    assert moved
    assert {one.fish: (one.old.possible, one.new.possible) for one in found.moves.moves} == moved
    assert {(one.because, one.by) for one in found.moves.moves} == {(Because.ALONE, (f"trait {name}",))}
    parting = found.parting
    assert parting.verdict is Verdict.DIFFER
    fish = {key: write_reading(parting.traits[key].kind, reading) for key, reading in parting.fish.items()}
    assert read not in fish
    graded = [one.grade(fish).possible for one in (old, new)]
    assert graded == [parting.old.possible, parting.new.possible]
    assert graded[0] != graded[1]


def test_a_trait_that_follows_alike_is_one_value():
    old, new = netted("net_grade"), netted("net_grade", fine_net="rows_along at least 31")
    assert old.compare(new).parting.verdict is Verdict.NEVER


def test_a_trait_of_other_steps_may_follow_in_the_words_of_each():
    traits = (*NET[:4], Trait("net_grade", "net", Scale(("coarse", "poor", "fair", "fine"))))
    text = READS["net_grade"]
    rows = text.replace("coarse gives 0, ", "").replace("gives 10\n", "gives 10, anything else gives 0\n")
    old, new = netted(rows), netted(rows, *traits)
    # By hand: whoever has 3 times as many rows along has a fine net by both, else a fair one.
    fish = {"rows_along": 30, "rows_across": 10, "tail_stem": "thin"}
    assert old.grade(fish).possible == new.grade(fish).possible == ("keep",)
    assert old.compare(new, [{**fish, "fish": "K1"}]).moves.moves == ()
    assert old.compare(new).parting.verdict in {Verdict.OPEN, Verdict.NEVER}


@pytest.fixture
def pages(tmp_path):
    def write(old, new):
        paths = tmp_path / "old.koi", tmp_path / "new.koi"
        for path, text in zip(paths, (old, new), strict=True):
            path.write_text(HEAD + text + GRADES, "utf-8")
        return paths

    return write


def run(*words):
    result = CliRunner().invoke(main, ["compare", *(str(word) for word in words)])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_the_command_says_why_and_by_which_model(pages, tmp_path):
    odd = "fault odd if hi_cover grown to 60 cm between 3 % and 3.001 %: no better than cull\n"
    out = tmp_path / "comparison.json"
    told = " ".join(run(*pages(SECTION + COVER, SECTION + COVER + odd), "--out", out).output.split())
    assert "there is none (of hi_cover grown to 60 cm the proof knows nothing" in told
    assert "an estimate, not a promise" in told
    made = json.loads(out.read_text("utf-8"))["graded_differently"]
    assert (made["verdict"], len(made["not_decided_because"])) == ("not decided", 1)


def test_records_that_cannot_be_measured_are_refused_by_their_cells(pages, tmp_path):
    lot = tmp_path / "lot.csv"
    lot.write_text("fish,tail_stem,hi_patches\nK1,strong,30 to 36 left 20 right -10\n", "utf-8")
    result = run(*pages(SECTION + STEPS, SECTION + STEPS.replace("none", "many")), "--records", lot)
    assert result.exit_code == 2
    assert "lot.csv" in result.stderr


def test_without_what_measures_maps_one_is_told_what_to_install(pages, monkeypatch):
    for name in [name for name in sys.modules if name.partition(".")[0] == "shapely"]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.setitem(sys.modules, "shapely", None)
    result = run(*pages(SECTION + COVER, SECTION + COVER.replace("45 %", "44 %")))
    assert result.exit_code == 2
    assert "measuring-needs-library" in result.stderr
