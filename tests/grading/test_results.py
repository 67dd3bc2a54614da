"""What comes of a fish: grades, intervals, reasons."""

from decimal import Decimal

import pytest

import koirules

HEAD = """standard "Trial (an invented house)" edition 2026-1
trait length as number in cm from 0 to 90
trait kiwa as scale blurred < fair < sharp, more is better
trait spine as scale bent < straight
trait fins as places of (left_pectoral, right_pectoral, tail)
trait shimi as count up to 20
trait line as label
"""


def standard(body):
    return koirules.read_standard(HEAD + body)


PLAIN = """
section body "body" worth 60
points size "size" by length: 10 cm gives 0, 60 cm gives 10
points edge "edge" weight 2 by kiwa: blurred gives 0, anything else gives 10
section pattern "pattern" worth 40
points specks "specks" by shimi: 0 gives 10, 10 gives 0
penalty fins "red fins" 4 if count of fins at least 2
fault bent "bent spine" if spine is bent: no better than cull
fault many "many specks" if shimi at least 5 except line is "old": no better than sell
  say "{shimi} specks on {length}"
lift big "big" if length at least 50 cm: no worse than sell
grade keep if score at least 70
grade sell if score at least 30
grade cull otherwise
"""


def reason(result, kind, name):
    return next(r for r in result.reasons if (r.kind, r.name) == (kind, name))


def test_a_whole_record_is_settled():
    result = standard(PLAIN).grade(
        {"length": 35, "kiwa": "sharp", "spine": "straight", "fins": "none", "shimi": 0, "line": "new", "fish": "A1"}
    )
    assert (result.fish, result.grade, result.possible) == ("A1", "keep", ("keep",))
    # body: 60 x (1 x 5 + 2 x 10) / (1 x 10 + 2 x 10) = 50; pattern: 40 x 10 / 10 = 40
    assert result.score == Decimal("90.00")
    assert result.sections["body"].low == Decimal("50.00")
    assert result.faults == ()


def test_what_was_not_recorded_leaves_everything_open_that_it_can_change():
    result = standard(PLAIN).grade({"length": 35, "kiwa": "sharp"})
    assert result.grade is None
    assert result.possible == ("keep", "sell", "cull")
    assert (result.score_low, result.score_high) == (Decimal("50.00"), Decimal("90.00"))


def test_a_bent_spine_settles_the_fish_whatever_is_missing():
    result = standard(PLAIN).grade({"spine": "bent"})
    assert result.grade == "cull"
    assert result.score is None
    assert result.main_reasons[0].words == "bent spine: no better than cull"


def test_an_unsure_value_is_any_of_what_it_could_be():
    result = standard(PLAIN).grade(
        {"length": "35 cm to 60 cm", "kiwa": "blurred or fair", "spine": "straight", "shimi": 0}
    )
    # body from (5 + 0) to (10 + 20) of 30, pattern from 36 (the fins may be red) to 40
    assert (result.score_low, result.score_high) == (Decimal("46.00"), Decimal("100.00"))


def test_a_fault_that_except_holds_back_says_so():
    result = standard(PLAIN).grade({"shimi": 6, "line": "old"})
    held = reason(result, "fault", "many")
    assert held.state is koirules.State.HELD_BACK
    assert held.words == 'many specks: held back, since line is "old"'
    assert result.faults == ()


def test_an_unrecorded_label_leaves_the_exception_open():
    result = standard(PLAIN).grade({"shimi": 6, "length": 10, "spine": "straight"})
    assert reason(result, "fault", "many").state is koirules.State.OPEN


def test_say_is_filled_in_with_units():
    result = standard(PLAIN).grade({"shimi": 6, "line": "new", "length": "123 mm"})
    assert reason(result, "fault", "many").words == "6 specks on 12.3 cm: no better than sell"


def test_a_fault_has_the_last_word_over_a_lift():
    result = standard(PLAIN).grade({"length": 50, "spine": "bent"})
    assert result.lifts == ("big",)
    assert result.grade == "cull"


def test_every_number_of_a_result_has_its_reasons():
    result = standard(PLAIN).grade({"length": 35, "kiwa": "fair", "shimi": 3, "fins": "tail left_pectoral"})
    body = [r for r in result.reasons if r.section == "body"]
    pattern = [r for r in result.reasons if r.section == "pattern"]
    assert sum(r.score_low for r in body) == result.sections["body"].low
    assert sum(r.score_low for r in pattern) == result.sections["pattern"].low == Decimal("24.00")
    assert reason(result, "penalty", "fins").words == "red fins: -4"
    assert reason(result, "points", "size").left_on_table == Decimal("10.00")


def test_reasons_stand_in_the_order_of_the_file():
    lines = [r.line for r in standard(PLAIN).grade({}).reasons]
    assert lines == sorted(lines)


@pytest.mark.parametrize(
    ("record", "code"),
    [
        ({"lenght": 3}, "unknown-column"),
        ({"length": 300}, None),
        ({"kiwa": "sharpish"}, None),
        ({"shimi": 2.5}, None),
        ({"length": "12 g"}, None),
    ],
)
def test_a_record_that_cannot_be_read_raises_with_every_problem(record, code):
    with pytest.raises(koirules.RecordError) as caught:
        standard(PLAIN).grade({**record, "spine": "bant"})
    assert len(caught.value.problems) == 2
    assert code is None or code in {problem.code for problem in caught.value.problems}


def test_settings_change_a_run_within_their_range():
    text = PLAIN + "setting bar = 70 from 50 to 90\n"
    text = text.replace("score at least 70", "score at least bar")
    loaded = standard(text)
    record = {"length": 35, "kiwa": "sharp", "spine": "straight", "fins": "none", "shimi": 5, "line": "old"}
    assert loaded.grade(record).grade == "keep"  # 50 + 20
    assert loaded.with_settings({"bar": 75}).grade(record).grade == "sell"
    assert loaded.with_settings({"bar": "75"}).changed == ("bar",)
    with pytest.raises(koirules.StandardError, match="outside its range"):
        loaded.with_settings({"bar": 95})
    with pytest.raises(koirules.StandardError, match="Did you mean"):
        loaded.with_settings({"baar": 75})


def test_labels_and_reasons_come_in_another_language_where_the_file_has_it():
    text = PLAIN.replace('"bent spine"', '"bent spine" ja "背曲がり"')
    result = standard(text).in_language("ja").grade({"spine": "bent"})
    assert result.main_reasons[0].words.startswith("背曲がり")
    # The file gives no Japanese for "size"; the catalogue of the tool does.
    assert reason(result, "points", "size").title == "大きさ"


def test_the_main_reasons_of_the_best_grade_name_its_strengths_and_what_it_missed_most():
    result = standard(PLAIN).grade({"length": 35, "kiwa": "sharp", "spine": "straight", "fins": "none", "shimi": 0})
    assert [r.name for r in result.main_reasons] == ["edge", "specks", "size"]


def test_a_remark_inside_a_condition_is_no_part_of_the_reason():
    text = 'standard "x" edition 1\ntrait a as yes or no\ngrade keep if a is # no "remark"\n  yes # none\ngrade cull otherwise'
    keep, _ = koirules.read_standard(text).grade({"a": "yes"}).reasons
    assert keep.words == "keep: yes, a is yes"


FAULTY = """standard "Tin Bucket, faults" edition 1
trait bent as yes or no
trait specks as count up to 9
trait small as yes or no
trait edge as scale blurred < fair < sharp
trait shoulders as scale weak < strong
fault bent "bent spine" if bent: no better than sell
fault specked "specks" if specks at least 1 except small: no better than hold
section body worth 100
points edge "rim" weight 3 by edge: blurred gives 0, fair gives 5, sharp gives 10
points shoulders "shoulders" by shoulders: weak gives 0, strong gives 10
grade keep if score at least 75
grade hold if score at least 40
grade sell otherwise
"""


@pytest.mark.parametrize(
    ("record", "why"),
    [
        # The score alone gives the grade that the first fault allows, and a worse one than the second: both are named.
        (
            {"bent": "yes", "specks": 2, "small": "no", "edge": "blurred", "shoulders": "weak"},
            "bent spine: no better than sell; specks: no better than hold; lost: rim: blurred, 0 of 10; shoulders: weak, 0 of 10",
        ),
        (
            {"bent": "yes", "specks": 2, "small": "no", "edge": "sharp", "shoulders": "strong"},
            "bent spine: no better than sell (decides); specks: no better than hold",
        ),
        (
            {"bent": "no", "specks": 2, "small": "yes", "edge": "sharp", "shoulders": "weak"},
            "specks: held back, since small; gained: rim: sharp, 10 of 10; lost: shoulders: weak, 0 of 10",
        ),
    ],
)
def test_faults_that_bite_stand_first_what_decided_is_marked_and_losses_stand_apart_from_gains(record, why):
    result = koirules.read_standard(FAULTY).grade(record)
    assert result.why == why
