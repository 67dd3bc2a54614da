"""What `koirules prove` says of small standards, whose fish can all be tried."""

import json
from itertools import product

import pytest
from click.testing import CliRunner

import koirules
from koirules.analysis.proofs.every import proofs
from koirules.analysis.proofs.statements import Outcome
from koirules.candidates.ordinary import telling_values
from koirules.commands import main
from koirules.standard.cuts import cuts_of
from koirules.testing import registry_with

BOX = registry_with()
HEAD = 'standard "s" edition 1\n'
TRAITS = """trait edge as scale poor < fair < good, more is better
trait size as number in cm from 0 to 50, more is better
trait specks as count up to 9, less is better
trait bent as yes or no
"""
SECTION = """section look worth 100
points edge weight 2 by edge: poor gives 0, fair gives 5, good gives 10
points size by size: 10 cm gives 0, 30 cm gives 10
"""


def standard(text):
    return koirules.read_standard(HEAD + TRAITS + text, registry=BOX)


def proved(text):
    return proofs(standard(text).grader).statements


def words(found, kind, *, slips=False):
    return [one.words for one in found if one.kind == kind and (one.slip or not slips)]


def of_kind(found, kind):
    return [one for one in found if one.kind == kind]


def test_a_grade_that_others_leave_nothing_for_is_a_slip():
    found = proved(SECTION + "grade a if score at least 50\ngrade b if score above 60\ngrade c otherwise\n")
    assert words(found, "grade") == ["a can be reached", "no item can get b", "c can be reached"]
    assert words(found, "grade", slips=True) == ["no item can get b"]


def test_a_grade_that_a_fault_brings_can_be_reached():
    grades = "grade a if score at least 50\ngrade b if score above 60\ngrade c otherwise\n"
    found = proved(SECTION + "fault f if bent: no better than b\n" + grades)
    assert not words(found, "grade", slips=True)


def test_conditions_that_contradict_themselves_are_slips():
    found = proved(
        SECTION
        + """bonus both 2 if size above 30 cm and size + 1 cm below 20 cm
fault never if edge is good and not edge above poor: no better than c
fault always if specks at most 4 or specks above 3: no better than c
grade a if score at least 50
grade c otherwise
"""
    )
    assert words(found, "extra", slips=True) == ["bonus both can never hold"]
    assert words(found, "limit", slips=True) == ["fault never can never bite", "fault always always bites"]


def test_a_comparison_inside_of_a_condition_is_told_and_its_inside_is_not():
    found = proved(
        SECTION
        + """fault odd if bent or (edge is good and edge is poor): no better than c
grade a if score at least 50
grade c otherwise
"""
    )
    assert words(found, "comparison", slips=True) == ["in fault odd: “edge is good and edge is poor” can never hold"]


def test_a_fault_that_changes_no_grade_is_told_and_is_no_slip():
    found = proved(SECTION + "fault mild if bent: no better than a\ngrade a if score at least 50\ngrade c otherwise\n")
    assert "fault mild can bite, but never changes a grade" in words(found, "limit")
    assert not any(one.slip for one in found)


def test_two_faults_that_say_one_thing_bite_together():
    found = proved(
        SECTION
        + """fault many if specks above 3: no better than c
fault again if specks at least 4: no better than c
fault other if specks at least 5: no better than c
grade a if score at least 50
grade c otherwise
"""
    )
    assert words(found, "together") == ["the faults many and again always bite together"]


def test_a_lift_is_not_seen_under_a_fault_that_caps_below_it():
    text = """fault bad if bent: no better than c
fault mild if specks above 3: no better than b
lift fine if edge is fair: no worse than b
grade a if score at least 80
grade b if score at least 40
grade c otherwise
"""
    found = proved(SECTION + text)
    assert words(found, "under") == ["no item shows the lift fine while the fault bad caps its grade"]


def test_the_lowest_and_the_highest_score_are_exact_where_criteria_pull_against_each_other():
    text = """section look worth 100
points short by size: 10 cm gives 10, 30 cm gives 0
points long by size: 10 cm gives 0, 30 cm gives 7
grade a if score at least 50
grade c otherwise
"""
    # By hand: 100 (10 - x + 0.7 x) / 17 for x tenths of the way is highest at 0 and lowest at 10 (7 / 17).
    assert words(proved(text), "score") == ["the highest score is 58.82", "the lowest score is 41.18"]


def test_better_that_never_scores_worse_is_proved():
    found = proved(
        SECTION + "fault specked if specks above 3: no better than c\ngrade a if score at least 50\ngrade c otherwise\n"
    )
    assert {one.outcome for one in of_kind(found, "better")} == {Outcome.PROVED}
    assert [one.about for one in of_kind(found, "better")] == ["edge", "size", "specks"]


def test_two_fish_show_that_better_can_score_worse():
    text = """section look worth 100
points size by size: 10 cm gives 0, 30 cm gives 10, 40 cm gives 4
penalty odd 20 if edge is good and size above 20 cm
fault strange if specks is 0 and bent: no better than c
grade a if score at least 50
grade c otherwise
"""
    made = standard(text)
    found = {one.about: one for one in proofs(made.grader).statements if one.kind == "better"}
    assert found["size"].words == "size: better can bring a worse grade"
    assert found["edge"].words == "edge: better can bring a worse grade"
    assert found["specks"].words == "specks: better can bring a worse grade"
    for one in found.values():
        worse, better = one.fish
        assert {name for name in worse.record if worse.record[name] != better.record[name]} == {one.about}
        assert better.possible == ("c",)
        assert worse.possible == ("a",)


DRAWN = [
    "fault f if bent and edge at most fair: no better than b\nlift l if edge is good: no worse than b\n",
    "fault f if specks above 3 except edge is good: no better than c\nlift l if bent: no worse than a\n",
    "fault f if count of (bent, specks above 2, size below 20 cm) at least 2: no better than b\n",
    "fault f if size / (size + 1 cm) above 0.9 and bent is recorded: no better than c\n",
    """lift l if section look below 30 and bent: no worse than b
fault f if g_bites: no better than c
term g_bites means fault g
fault g if edge is poor: no better than b
""",
]
GRADES = "grade a if score at least 60\ngrade b if score at least 40 and not bent\ngrade c otherwise\n"


@pytest.mark.parametrize("text", DRAWN)
def test_what_is_proved_holds_of_every_fish_that_is_tried(text):
    made = standard(SECTION + text + GRADES)
    found = proofs(made.grader).statements
    assert not [one.words for one in found if one.outcome is Outcome.OPEN]
    cuts = cuts_of(made.rules, made.settings)
    values = [telling_values(made.rules.traits[name], cuts[name]) for name in cuts]
    tried = [dict(zip(cuts, each, strict=True)) for each in product(*values)]
    traces = [made.grader.trace(record) for record in tried]
    assert len(tried) > 30
    reached = {name for trace in traces for name in made.grader.named(trace.possible)}
    for one in of_kind(found, "grade"):
        name = one.about.removeprefix("grade ")
        assert name not in reached or one.outcome is Outcome.FOUND
    highest = next(one for one in of_kind(found, "score") if one.about == "highest")
    assert highest.fish[0].score[0] == max(trace.score[0] for trace in traces)
    for i, limit in enumerate(made.rules.limits):
        never = f"{limit.head} {limit.name} can never bite" in words(found, "limit")
        assert never == (not any(trace.limits[i][4] for trace in traces))
    better = {one.about: one.outcome for one in of_kind(found, "better")}
    by_record = {tuple(record.items()): trace for record, trace in zip(tried, traces, strict=True)}
    for record, trace in zip(tried, traces, strict=True):
        for value in telling_values(made.rules.traits["edge"], cuts["edge"]):
            other = by_record[tuple({**record, "edge": value}.items())]
            if value > record["edge"] and better["edge"] is Outcome.PROVED:
                assert other.score >= trace.score
                assert other.possible <= trace.possible


def test_the_same_is_said_in_every_run():
    text = SECTION + DRAWN[1] + GRADES
    assert proved(text) == proved(text)


@pytest.fixture
def rules(tmp_path):
    path = tmp_path / "rules.koi"
    path.write_text(HEAD + TRAITS + SECTION + "fault f if bent and not bent: no better than c\n" + GRADES, "utf-8")
    return path


def run(*options):
    result = CliRunner().invoke(main, ["prove", *(str(option) for option in options)])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_the_command_tells_slips_and_ends_with_one(rules):
    result = run(rules)
    assert result.exit_code == 1
    assert "slip: line 9: fault f can never bite" in result.output
    assert "Proved of each trait: edge, size" in result.output
    assert "1 slip; 0 questions not decided." in result.output


def test_the_command_gives_the_statements_as_data(rules):
    made = json.loads(run(rules, "--json").stdout)
    slips = [one for one in made["statements"] if one["slip"]]
    assert [one["words"] for one in slips] == ["fault f can never bite"]
    highest = next(one for one in made["statements"] if one["about"] == "highest")
    assert highest["fish"][0]["record"]["edge"] == "good"
    assert highest["fish"][0]["score_low"] == 100.0


def test_a_standard_with_nothing_wrong_ends_with_zero(rules):
    rules.write_text(HEAD + TRAITS + SECTION + GRADES, "utf-8")
    assert run(rules).exit_code == 0


def test_without_the_solver_one_is_told_what_to_install(rules, monkeypatch):
    monkeypatch.setattr("koirules.commands.prove.find_spec", lambda _: None)
    result = run(rules)
    assert result.exit_code == 2
    assert "koirules[proofs]" in result.stderr
    assert "extra-missing" in result.stderr


def test_rules_that_choose_among_too_many_steps_are_answered(rules, monkeypatch):
    monkeypatch.setattr("koirules.engines.symbolic.meaning.MOST_READINGS", 1)
    result = run(rules)
    assert result.exit_code == 2
    assert "too many words" in result.stderr


def test_alerts_rounds_and_values_from_beside_the_record_may_stand_in_the_rules(rules):
    text = """term fine means grade at least b
term short means size below batch percentile 10 of size
penalty short 10 if short
penalty shrunk 10 if earlier size is recorded and size below earlier size
"""
    rest = """alert many "many" if batch share of (fine) above 33 %
round first keep those with fine and size above batch median of size
"""
    rules.write_text(HEAD + TRAITS + SECTION + text + GRADES + rest, "utf-8")
    result = run(rules)
    assert result.exit_code == 0, result.output
    assert "0 slips; 0 questions not decided." in result.output
    assert "the lowest score is 0.00" in result.output


QUOTIENT = """trait wide as number in cm from 0.1 to 30, more is better
trait long as number in cm from 0.1 to 90, more is better
section body worth 60
points slim by wide / long: 0.14 gives 0, 0.18 gives 10, 0.22 gives 0
section look worth 40
points size by long: 10 cm gives 0, 22 cm gives 10, 30 cm gives 4
grade a if score at least 80
grade b otherwise
"""


def test_the_highest_score_of_a_curve_over_a_quotient_is_found():
    # 3.96 / 22 is 0.18, the knot that gives 10, and a length of 22 cm gives 10 as well.
    (highest, _) = of_kind(proofs(standard(QUOTIENT).grader).statements, "score")
    assert highest.words == "the highest score is 100.00"
    (fish,) = highest.fish
    assert fish.record["wide"].low / fish.record["long"].low == pytest.approx(0.18, abs=1e-6)


@pytest.mark.parametrize(
    ("rounds", "said"),
    [
        ("round first keep those with grade is a\n", ["some items pass the round first, and some leave in it"]),
        (
            "round first keep those with grade is a\nround second keep those with score at least 40\n",
            [
                "some items pass the round first, and some leave in it",
                "every item that the round second looks at passes it",
            ],
        ),
        (
            "round first keep those with score at least 60\nround second keep those with grade is c\n",
            ["some items pass the round first, and some leave in it", "no item can pass the round second"],
        ),
        ("round first keep those with score at least batch median of score\n", []),
    ],
)
def test_rounds_that_no_fish_or_every_fish_passes_are_told(rounds, said):
    grades = "grade a if score at least 50\ngrade c otherwise\n"
    found = proved(SECTION + grades + rounds)
    assert words(found, "round") == said
    assert words(found, "round", slips=True) == said[1:]


def test_answers_come_kind_by_kind_and_what_no_time_was_left_for_is_named():
    text = SECTION + "grade a if score at least 50\ngrade c otherwise\n"
    kinds = []
    whole = proofs(standard(text).grader, told=lambda kind, answers: kinds.append((kind, answers.statements)))
    assert [one for _, answers in kinds for one in answers] == list(whole.statements)
    assert whole.unreached == ()
    cut = proofs(standard(text).grader, seconds=1e-9)
    assert cut.statements == ()
    assert cut.unreached[0] == "Which grades can be reached"
    assert "Better never scores worse" in cut.unreached


def test_too_little_time_ends_with_status_1_and_says_so(tmp_path):
    (tmp_path / "s.koi").write_text(HEAD + TRAITS + SECTION + "grade a if score at least 50\ngrade c otherwise\n")
    result = CliRunner().invoke(main, ["prove", str(tmp_path / "s.koi"), "--seconds", "0.000001"])
    assert result.exit_code == 1
    assert "No time was left for: Which grades can be reached" in " ".join(result.stdout.split())


def test_words_that_hang_on_a_condition_are_worked_out_for_every_fish():
    standard = koirules.read_standard(
        'standard "s" edition 1 variety kohaku\nsection s worth 10\npoints p by kiwa: blurred gives 0, anything else gives 1\n'
        'fault plain "plain" if outline below (fair if length below 20 cm otherwise good): no better than b\n'
        "grade a if score at least 1\ngrade b otherwise\n"
    )
    found = proofs(standard.grader.of_known_fish)
    assert any("plain" in str(statement) for statement in found.statements)
