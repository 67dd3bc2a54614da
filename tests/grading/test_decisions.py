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
        ([Decision("b", "", "house", "Y.", "x"), Decision("c", "", "house", "Y.", "x")], "too-many-rescues"),
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


def picked(rules: str, *chosen: str) -> koirules.BatchResult:
    """The round over records 4, 4, 4, 3 named a to d, after decisions for some."""
    text = 'standard "Tin Bucket" edition 1\ntrait n as number from 0 to 9\ngrade all otherwise\nround house ' + rules
    fish = [{"fish": name, "n": n} for name, n in zip("abcd", (4, 4, 4, 3), strict=True)]
    decided = [Decision(name, "", "house", "Y.", "the better back") for name in chosen]
    return koirules.read_standard(text).grade_batch(fish, decided)


@pytest.mark.parametrize("rescues", ["", " rescues 1"])
def test_a_decision_on_tied_fish_takes_the_places_among_them_and_needs_no_rescue(rescues):
    batch = picked(f"pick 2 by highest n{rescues}", "a", "c")
    (house,) = batch.rounds
    assert (house.kept, house.left, house.ties) == (("a", "c"), ("b", "d"), ())
    assert [one.fish for one in house.by_hand] == ["a", "c"]
    why = {one.fish: one.course[0].why for one in batch.results}
    assert why["a"] == "kept by Y.: the better back (tied with b, c for 2 places)"
    assert why["b"] == "tied for 2 places; a person chose a and c"
    assert "2 places; c stood above it" in why["d"]


def test_a_choice_within_a_quota_leaves_room_for_those_below_it_only_as_far_as_it_goes():
    # One of a, b, c fits into the quota; d, which is not counted in it, takes the second place.
    batch = picked("pick 2 by highest n no more than 1 with n above 3", "b")
    assert batch.rounds[0].kept == ("b", "d")


def test_one_more_than_the_places_of_a_tie_is_a_rescue():
    batch = picked("pick 2 by highest n rescues 1", "a", "b", "c")
    assert set(batch.rounds[0].kept) == {"a", "b", "c"}


def test_keeping_by_hand_what_the_rules_keep_makes_no_room_for_another():
    batch = picked("pick 1 by lowest n", "d")
    assert batch.rounds[0].kept == ("d",)
    assert batch.rounds[0].by_hand == ()
    assert batch.results[3].course[0].why == "stands 1st; the rules keep it too, so that no decision was needed"


@pytest.mark.parametrize(
    ("rules", "chosen", "code", "words"),
    [
        ("pick 2 by highest n", "a", "tie-half-settled", 'only "a" of those that are tied is chosen, and 1 place'),
        ("pick 2 by highest n", "abc", "too-many-rescues", 'keeps "c" beyond those that its 2 places went to'),
        ("pick 3 by highest n", "d", "too-many-rescues", 'keeps "d" beyond'),
        ("keep those with n above 3", "d", "too-many-rescues", 'keeps "d" although it would leave it'),
    ],
)
def test_a_choice_that_does_not_come_out_even_is_refused_with_the_fish_named(rules, chosen, code, words):
    with pytest.raises(koirules.RecordError) as caught:
        picked(rules, *chosen)
    (problem,) = caught.value.problems
    assert problem.code == code
    assert words in problem.cause


def test_what_a_round_asks_names_grades_and_rounds_by_their_titles():
    text = (
        'standard "s" edition 1 variety kohaku\ngrade first_class "fit to be placed" if length at least 10 cm\n'
        'grade rest "seen, not placed" otherwise\nround look "first look" keep those with grade is first_class\n'
        'round last "last look" from those kept by look pick 1 by highest length\n'
    )
    standard = koirules.read_standard(text)
    batch = standard.grade_batch([{"fish": "a", "length": "12 cm"}, {"fish": "b", "length": "8 cm"}])
    assert batch.rounds[0].asks == "those with grade is fit to be placed"
    assert batch.results[1].course[0].why == "grade is seen, not placed, not fit to be placed"
