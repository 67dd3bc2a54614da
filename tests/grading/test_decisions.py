"""A person's word about a fish: above the rules, with its reason, and never more than a round allows."""

import pytest

import koirules
from koirules import Decision

STANDARD = koirules.read_standard("""standard "Tin Bucket, places" edition 1
  variety kohaku
setting by_hand = 1 from 0 to 3
grade keep if kiwa at least sharp
grade sell otherwise
round house "places in the house"
  keep those with grade is keep
  pick 1 by highest kiwa
  rescues by_hand
""")
FISH = [{"fish": "a", "kiwa": "razor"}, {"fish": "b", "kiwa": "fair"}, {"fish": "c", "kiwa": "blurred"}]


def test_a_grade_by_hand_is_shown_beside_that_of_the_rules_and_counts_in_the_rounds():
    batch = STANDARD.grade_batch(FISH, [Decision("b", "keep", "", "Y.", "better in the hand")])
    result = batch.results[1]
    assert (result.grade, result.by_rules, result.decision.reason) == ("keep", ("sell",), "better in the hand")
    assert batch.decided == 1
    assert batch.rounds[0].left == ("b", "c")
    assert "razor against fair" in result.course[0].why


def test_a_fish_kept_by_hand_takes_no_place_and_is_told_apart():
    batch = STANDARD.grade_batch(FISH, [Decision("c", "", "house", "Y.", "the owner likes it")])
    (house,) = batch.rounds
    assert house.kept == ("a", "c")
    assert [one.fish for one in house.by_hand] == ["c"]
    assert batch.results[2].course[0].why == "kept by Y.: the owner likes it"
    assert batch.results[2].decision is None


@pytest.mark.parametrize(
    ("decisions", "code"),
    [
        ([Decision("z", "keep", "", "Y.", "x")], "decision-of-nobody"),
        ([Decision("a", "keep", "", "Y.", " ")], "decision-without"),
        ([Decision("a", "keep", "", "", "x")], "decision-without"),
        ([Decision("a", "", "", "Y.", "x")], "decision-of-what"),
        ([Decision("a", "keep", "house", "Y.", "x")], "decision-of-what"),
        ([Decision("a", "best", "", "Y.", "x")], "decision-unknown"),
        ([Decision("a", "", "hous", "Y.", "x")], "decision-unknown"),
        ([Decision("a", "keep", "", "Y.", "x"), Decision("a", "sell", "", "Y.", "x")], "decided-twice"),
        ([Decision("a", "", "house", "Y.", "x"), Decision("b", "", "house", "Y.", "x")], "too-many-rescues"),
    ],
)
def test_a_decision_that_cannot_stand_is_a_problem(decisions, code):
    with pytest.raises(koirules.RecordError) as caught:
        STANDARD.grade_batch(FISH, decisions)
    assert code in [problem.code for problem in caught.value.problems]


def test_how_many_may_be_kept_by_hand_follows_a_setting_and_that_is_a_whole_number():
    two = [Decision("b", "", "house", "Y.", "x"), Decision("c", "", "house", "Y.", "x")]
    assert STANDARD.with_settings({"by_hand": 2}).grade_batch(FISH, two).rounds[0].kept == ("a", "b", "c")
    with pytest.raises(koirules.StandardError, match="number of fish"):
        STANDARD.with_settings({"by_hand": "1.5"})
