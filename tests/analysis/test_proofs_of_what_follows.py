"""What `koirules prove` says of standards with grown traits, traits that follow from others, maps and colour readings."""

import json
import sys

import pytest
from click.testing import CliRunner

import koirules
from koirules.analysis.proofs.every import proofs
from koirules.analysis.proofs.statements import Outcome
from koirules.commands import main
from koirules.results.record import Record
from koirules.testing import registry_with
from koirules.vocabulary.readings import Span

BOX = registry_with()
HEAD = 'standard "s (an invented house)" edition 1 variety kohaku\n'
SECTION = """section body worth 100
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
"""
GRADES = "grade keep if score at least 50\ngrade cull otherwise\n"


def standard(text, grades=GRADES):
    return koirules.read_standard(HEAD + text + grades, registry=BOX)


def proved(text, grades=GRADES):
    return proofs(standard(text, grades).grader).statements


def said(found, kind, outcome=None):
    return [one.words for one in found if one.kind == kind and outcome in {None, one.outcome}]


def test_a_trait_that_is_read_only_through_growth_is_compared_too():
    found = proved(SECTION + "points slim by girth_ratio grown to 60 cm: 0.2 gives 0, 0.6 gives 10\n")
    better = {one.about: one for one in found if one.kind == "better"}
    assert better["tail_stem"].outcome is Outcome.PROVED
    # A fish that is shorter now has more girth for its length to gain until then: growth_exponent is above 3.
    assert better["length"].outcome is Outcome.FOUND
    worse, best = better["length"].fish
    assert worse.record["length"] < best.record["length"]
    assert worse.score > best.score


def test_the_grown_length_is_known_to_the_digit():
    text = """fault a if length grown to 60 cm above 70 cm and length below 70.000001 cm: no better than cull
fault b if length grown to 60 cm above 70 cm and length below 70.000002 cm: no better than cull
fault c if length grown to 60 cm below 60.000001 cm and length above 60 cm: no better than cull
fault d if length grown to 60 cm below 60.000001 cm and length at least 60 cm: no better than cull
"""
    assert said(proved(SECTION + text), "limit", Outcome.PROVED) == [
        "fault a can never bite",
        "fault c can never bite",
    ]


def test_a_fish_that_is_long_enough_already_stays_as_it_is():
    text = """term wide means girth_ratio grown to 40 cm above 0.3
fault a if wide and length above 45 cm and girth_ratio below 0.3: no better than cull
fault b if wide and length above 35 cm and girth_ratio below 0.3: no better than cull
fault c if wide and length above 35 cm and girth_ratio below 0.29: no better than cull
"""
    assert said(proved(SECTION + text), "limit", Outcome.PROVED) == [
        "fault a can never bite",
        # (40 / 35) ** 0.01 = 1.0013 (worked out by hand): 0.29 does not come to 0.3.
        "fault c can never bite",
    ]


def test_what_grows_by_the_settings_of_a_run_is_proved_with_these():
    text = """setting growth_exponent = 3.02 from 2.5 to 3.5
fault a if girth_ratio grown to 40 cm below girth_ratio: no better than cull
"""
    made = standard(SECTION + text)
    assert said(proofs(made.grader).statements, "limit", Outcome.PROVED) == ["fault a can never bite"]
    thinner = made.with_settings({"growth_exponent": "2.9"})
    assert said(proofs(thinner.grader).statements, "limit", Outcome.PROVED) == []


def test_of_an_unknown_length_what_a_trait_grows_to_is_open():
    text = """fault a if girth_ratio grown to 60 cm above girth_ratio: no better than cull
bonus long 5 if length is recorded
"""
    grades = "grade odd if girth_ratio grown to 60 cm above 0.3 and girth_ratio grown to 60 cm below 0.3\n" + GRADES
    found = proved(SECTION + text, grades)
    assert said(found, "grade", Outcome.PROVED) == ["no fish is ever sure of odd"]
    made = standard(SECTION + text, grades)
    assert "odd" in made.grade({"girth_ratio": 0.29}).possible
    assert made.grade({"girth_ratio": 0.29, "length": 40, "tail_stem": "fair"}).possible == ("cull",)


@pytest.mark.parametrize(
    ("condition", "pattern"),
    [
        (
            "steps grown to 60 cm is yondan and steps grown to 60 cm is not yondan",
            "5 to 15 both 80; 25 to 35 both 80; 45 to 55 both 80; 70 to 90 both 70 thin",
        ),
        (
            "hi_cover grown to 60 cm above 40 % and hi_cover grown to 60 cm at most 40 %",
            "8 to 40 both 80; 60 to 90 both 70 thin",
        ),
    ],
)
def test_what_a_map_grows_to_may_be_one_thing_or_another(condition, pattern):
    grades = f"grade odd if {condition}\n{GRADES}"
    assert said(proved(SECTION, grades), "grade", Outcome.PROVED) == ["no fish is ever sure of odd"]
    assert "odd" in standard(SECTION, grades).grade({"hi_patches": pattern, "length": 30, "tail_stem": "fair"}).possible


def test_of_what_a_map_grows_to_nothing_is_claimed_without_a_fish():
    text = "fault odd if hi_cover grown to 60 cm between 3 % and 3.001 %: no better than cull\n"
    (statement,) = [one for one in proved(SECTION + text) if one.kind == "limit"]
    assert statement.outcome is Outcome.OPEN
    assert not statement.slip
    assert "of hi_cover grown to 60 cm the proof knows nothing, since a map or the like grows first" in statement.words


def test_a_map_and_colour_readings_are_there_or_not():
    text = """bonus mapped 5 if hi_patches is recorded
penalty read 5 if hi_readings is recorded and hi_patches is not recorded
fault neither if hi_patches is recorded and hi_patches is not recorded: no better than cull
"""
    found = proved(SECTION + text)
    assert said(found, "extra", Outcome.PROVED) == []
    assert said(found, "limit", Outcome.PROVED) == ["fault neither can never bite"]


def test_a_trait_that_follows_need_not_be_missing_where_it_is_not_written():
    # Whoever writes the share of the left side has the balance with it: no fish of these rules shows the penalty.
    text = """points left by hi_left_share: 20 % gives 0, 50 % gives 10
penalty unknown 5 if balance_left_right is not recorded
"""
    (statement,) = [one for one in proved(SECTION + text) if one.kind == "extra"]
    assert statement.outcome is Outcome.OPEN
    assert not statement.slip
    assert "whether balance_left_right is recorded can follow from other traits" in statement.words
    measured = standard(SECTION + text).grader.measured(Record("K1", 0, {"hi_left_share": Span(40.0, 40.0)}))
    assert measured.readings["balance_left_right"] == Span(0.8, 0.8)


def test_better_is_told_with_what_follows_from_it_and_stays_the_same():
    text = (
        "points slim by girth_ratio: 0.2 gives 0, 0.4 gives 10\npoints long by length: 10 cm gives 0, 40 cm gives 10\n"
    )
    (statement,) = [one for one in proved(SECTION + text) if one.about == "length"]
    assert statement.outcome is Outcome.PROVED
    assert statement.held == ("girth_ratio",)
    assert statement.words.endswith("of two fish with the same girth_ratio, which can follow from it")


def test_what_only_helps_to_measure_a_map_is_not_taken_to_make_no_difference():
    # The widths say how wide the body is along its length, by which the share of a patch is weighed.
    text = "points stout by stem_width: 1 cm gives 0, 3 cm gives 10\n"
    text += "points cover by hi_cover grown to 60 cm: 10 % gives 0, 45 % gives 10\n"
    (statement,) = [one for one in proved(SECTION + text) if one.about == "stem_width"]
    assert statement.outcome is not Outcome.PROVED


@pytest.fixture
def rules(tmp_path):
    path = tmp_path / "rules.koi"
    text = "points cover by hi_cover grown to 60 cm: 10 % gives 0, 45 % gives 10\nbonus mapped 5 if hi_patches is recorded\n"
    path.write_text(HEAD + SECTION + text + GRADES, "utf-8")
    return path


def run(*options):
    result = CliRunner().invoke(main, ["prove", *(str(option) for option in options)])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_the_command_tells_what_was_worked_out_and_by_which_model(rules):
    result = run(rules)
    assert result.exit_code == 0
    assert "an estimate, not a promise" in " ".join(result.output.split())
    assert "grown to" not in result.output.split("The ordinary fish")[1].split("Figures for the fish grown")[0]


def test_the_fish_of_the_data_are_records_that_somebody_can_write(rules):
    made = koirules.load_standard(rules, BOX)
    statements = json.loads(run(rules, "--json").stdout)["statements"]
    fish = [one for statement in statements for one in statement["fish"]]
    assert fish
    for one in fish:
        result = made.grade(one["record"])
        assert [float(result.score_low), float(result.score_high)] == [one["score_low"], one["score_high"]]
        assert list(result.possible) == one["possible"]


def test_without_what_measures_maps_one_is_told_what_to_install(rules, monkeypatch):
    for name in [name for name in sys.modules if name.partition(".")[0] == "shapely"]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.setitem(sys.modules, "shapely", None)
    result = run(rules)
    assert result.exit_code == 2
    assert "measuring-needs-library" in result.stderr
