"""What would have changed the grade of a fish."""

import pytest

import koirules
from koirules.candidates.changes import Move, NearestChanges, Prospect
from koirules.results.result import Result
from koirules.testing import registry_with
from koirules.vocabulary.kinds import Places, Scale
from koirules.vocabulary.readings import PlaceSet
from koirules.vocabulary.traits import Growth, Trait

BOX = registry_with()
SMALL = """standard "Teal Yard small" edition 1 variety kohaku
fault gap "no tail gap" if odome below 3 %: no better than sell
fault bent "bent spine" if spine is bent: no better than cull
section look worth 100
points edge weight 1 by kiwa: blurred gives 0, fair gives 4, sharp gives 8, razor gives 10
points cover weight 1 by hi_cover: 20 % gives 0, 60 % gives 10, 90 % gives 0
grade keep if score at least 75
grade sell if score at least 40
grade cull otherwise
"""
GOOD = {"odome": "5 %", "spine": "straight", "kiwa": "sharp", "hi_cover": "60 %"}


def nearest(record, text=SMALL):
    return koirules.read_standard(text, registry=BOX).grade(record).nearest_changes()


def told(changes):
    return [change.words for change in changes]


def test_a_fault_names_the_value_at_which_it_lets_go():
    found = nearest(GOOD | {"odome": "1.2 %"})
    assert (found.grade, found.loses, found.searched_through) == ("keep", False, True)
    (change,) = found.single
    assert change.words == "white before the tail (odome): 3 % or more instead of 1.2 %"
    assert change.possible == ("keep",)


def test_a_curve_that_turns_names_the_whole_stretch():
    # The edge gives 8. 74.995 is rounded to 75: 6.999 of the cover, which 6.9985 is rounded to, a quarter for each % on the
    # way up to 60 % and a third on the way down.
    found = nearest(GOOD | {"hi_cover": "40 %"})
    assert told(found.single)[0] == "share of red on the back (hi): 48 % up to 69 % instead of 40 %"


def test_the_smallest_change_stands_first():
    found = nearest(GOOD | {"hi_cover": "40 %"})
    assert [move.trait.name for change in found.single for move in change.moves] == ["hi_cover", "kiwa"]
    assert [round(change.size, 3) for change in found.single] == [0.08, 0.333]


def test_two_clearly_smaller_changes_stand_beside_a_larger_one():
    text = SMALL.replace("odome below 3 %", "shimi_count at least 10 and (odome below 21 % or shimi_count at least 60)")
    found = nearest(GOOD | {"odome": "20 %", "shimi_count": 61}, text)
    assert told(found.single) == ["black specks (shimi): 9 or less instead of 61"]
    (change,) = found.double
    assert [move.words for move in change.moves] == [
        "black specks (shimi): 59 or less instead of 61",
        "white before the tail (odome): 21 % or more instead of 20 %",
    ]


TWO = """standard "Teal Yard two" edition 1
trait a as number from 0 to 100
trait b as number from 0 to 100
fault odd if a above 50 or ({} and b above 0): no better than cull
grade keep if a below 100
grade cull otherwise
"""


def test_two_changes_are_told_up_to_half_of_the_one():
    (change,) = nearest({"a": 0, "b": 0}, TWO.format("a above 24")).double
    assert change.words == "a: above 24 instead of 0 and b: above 0 instead of 0"
    assert nearest({"a": 0, "b": 0}, TWO.format("a above 26")).double == ()


@pytest.mark.parametrize(
    ("condition", "fish", "words"),
    [
        ("a above 20", 0, "above 20 instead of 0"),
        ("a at least 20", 0, "20 or more instead of 0"),
        ("a below 20", 40, "below 20 instead of 40"),
        ("a above 20 and a below 30", 0, "above 20 but below 30 instead of 0"),
        ("a between 20 and 30", 0, "20 up to 30 instead of 0"),
        ("a between 20 and 30", 40, "30 down to 20 instead of 40"),
        ("a above 20 and a below 20.000002", 0, "just above 20 instead of 0"),
        ("a is 20", 0, "20 instead of 0"),
    ],
)
def test_a_value_is_told_as_a_person_would_write_it(condition, fish, words):
    text = f'standard "t" edition 1\ntrait a as number from 0 to 100\ngrade keep if {condition}\ngrade cull otherwise'
    assert told(nearest({"a": fish}, text).single) == [f"a: {words}"]


@pytest.mark.parametrize(("unit", "words"), [("mm", "75 mm"), ("m", "0.075 m"), ("cm", "7.5 cm")])
def test_a_value_is_told_in_the_unit_of_its_trait(unit, words):
    trait = f"trait a as number in {unit} from 0 to 1000"
    text = f'standard "t" edition 1\n{trait}\ngrade keep if a at least 7.5 cm\ngrade cull otherwise'
    assert told(nearest({"a": 0}, text).single) == [f"a: {words} or more instead of 0 {unit}"]


def test_a_value_that_has_no_end_in_its_own_unit_is_told_in_days():
    trait = "trait a as number in weeks from 0 to 50"
    text = f'standard "t" edition 1\n{trait}\ngrade keep if a at least 10 days\ngrade cull otherwise'
    assert told(nearest({"a": 0}, text).single) == ["a: 1.43 weeks or more instead of 0 weeks"]


def test_the_second_of_two_changes_is_exact_between_the_cuts():
    (change,) = nearest({"a": 0, "b": 0}, TWO.format("a + 1 above 25.5")).double
    assert change.words == "a: above 24.5 instead of 0 and b: above 0 instead of 0"


def test_a_kept_fish_is_told_what_would_have_lost_it():
    found = nearest(GOOD)
    assert (found.grade, found.loses) == ("keep", True)
    assert told(found.single) == [
        "white before the tail (odome): below 3 % instead of 5 %",
        "share of red on the back (hi): 69.1 % or more instead of 60 %",
        "rear and side edge of the red (kiwa): fair instead of sharp",
        "spine: bent instead of straight",
    ]
    assert all("keep" not in change.possible for change in found.single)


def test_two_traits_are_moved_where_one_alone_is_not_enough():
    found = nearest(GOOD | {"odome": "1 %", "spine": "bent"})
    assert found.grade == "sell"
    found = nearest(GOOD | {"odome": "1 %", "kiwa": "blurred"})
    assert found.single == ()
    assert "white before the tail (odome): 3 % or more instead of 1 %" in found.double[0].words
    assert "rear and side edge of the red (kiwa)" in found.double[0].words
    assert found.double[0].possible == ("keep",)


def test_whether_a_change_can_still_come_is_told_by_the_vocabulary():
    found = nearest(GOOD | {"spine": "bent"})
    (move,) = found.single[0].moves
    assert move.prospect is Prospect.OPPOSITE  # a bent spine does not straighten
    rises = nearest(GOOD | {"kiwa": "fair"}).single
    assert {move.prospect for change in rises for move in change.moves if move.trait.name == "kiwa"} == {
        Prospect.COMING
    }
    lost = nearest(GOOD).single
    assert {move.prospect for change in lost for move in change.moves if move.trait.name == "kiwa"} == {
        Prospect.OPPOSITE
    }


def test_what_was_not_recorded_is_not_changed():
    found = nearest({"odome": "1 %", "kiwa": "fair or sharp"})
    assert found.grade == "keep"
    assert {move.trait.name for change in found.single for move in change.moves} == {"odome"}
    assert found.single[0].possible == ("keep", "sell", "cull")
    assert found.single[0].words.endswith("3 % or more instead of 1 %")


def test_a_fish_that_may_be_of_the_best_grade_has_nothing_to_change():
    assert nearest({"odome": "5 %"}) == NearestChanges()


@pytest.mark.parametrize("places", ["dorsal tail left_pectoral", "dorsal"])
def test_places_are_taken_away_as_few_as_can_be(places):
    text = SMALL.replace("odome below 3 %", "count of hi_on_fins at least 1")
    (change,) = nearest(GOOD | {"hi_on_fins": places}, text).single
    assert change.words.split(": ")[1].startswith("none instead of ")


def test_a_trait_inside_a_sum_is_changed_exactly():
    text = SMALL.replace("odome below 3 %", "length - width below 8 cm")
    found = nearest(GOOD | {"length": "100 mm", "width": "25 mm"}, text)
    assert told(found.single) == [
        "total length: 10.5 cm or more instead of 10 cm",
        "body width: 2 cm or less instead of 2.5 cm",
    ]


def test_two_curves_with_opposite_slopes_are_searched_exactly():
    # Together they rise by a twentieth for each %, but each is rounded for itself: the sum goes up and down by thousandths.
    opposite = "by hi_cover: 20 % gives 10, 60 % gives 2, 90 % gives 10"
    text = SMALL.replace("by kiwa: blurred gives 0, fair gives 4, sharp gives 8, razor gives 10", opposite)
    standard = koirules.read_standard(text.replace("at least 75", "at least 55"), registry=BOX)
    (change,) = standard.grade(GOOD | {"hi_cover": "20 %"}).nearest_changes().single
    notch = round(change.moves[0].becomes.low * 1_000_000)
    assert 39_900_000 < notch <= 40_000_000

    def grade(at):
        return standard.grade(GOOD | {"hi_cover": at / 1_000_000}).grade

    assert grade(notch) == "keep"
    assert {grade(at) for at in range(notch - 30_000, notch, 7)} == {grade(notch - 1)} == {"sell"}


def test_a_result_that_no_standard_made_has_no_changes():
    assert Result("1", ("keep",), 0, 0, {}, (), ()).nearest_changes() == NearestChanges()


def test_each_move_of_a_pair_is_the_smallest_while_the_other_stands():
    standard = koirules.read_standard(
        'standard "x" edition 1\ntrait length "length" as number in cm from 0 to 90\n'
        'trait width "width" as number in cm from 0 to 30\ntrait odome "odome" as number in % from 0 to 20\n'
        'fault thin "thin" if width / length below 0.15: no better than sell\n'
        'fault gap "gap" if odome - 1 % below 3 %: no better than sell\ngrade keep if odome is recorded\ngrade sell otherwise\n'
    )
    record = {"length": 20.0, "width": 2.5, "odome": 1.0}
    pairs = standard.grade(record).nearest_changes().double
    assert pairs
    for pair in pairs:
        after = record | {move.trait.name: move.becomes.low for move in pair.moves}
        assert standard.grade(after).grade == "keep"
        for move in pair.moves:
            less = after | {move.trait.name: move.becomes.low - move.direction / 1_000_000}
            assert standard.grade(less).grade == "sell", pair.words
    nearest = {move.trait.name: move.becomes.low for pair in pairs for move in pair.moves}
    assert nearest["odome"] == 4.0
    # A ratio of 0.1499995 is rounded to 0.15: 2.99999 of 20 cm, and 2.5 of 16.666722.
    assert nearest.get("width", 2.99999) == 2.99999
    assert nearest.get("length", 16.666722) == 16.666722


def test_whether_a_change_can_still_come_is_what_the_vocabulary_says_of_its_direction():
    falling = Trait("sheen", "sheen", Scale(("dull", "fair", "bright")), growth=Growth.FALLS)
    rising = Trait("fins", "red in the fins", Places(("left", "right")), growth=Growth.RISES)
    down, up = Move(falling, 4, 2, None, False, 0.5), Move(falling, 2, 4, None, False, 0.5)
    assert (down.prospect, up.prospect) == (Prospect.COMING, Prospect.OPPOSITE)
    more = Move(rising, PlaceSet(0, 0), PlaceSet(1, 1), None, False, 0.5)
    fewer = Move(rising, PlaceSet(1, 1), PlaceSet(0, 0), None, False, 0.5)
    assert (more.prospect, fewer.prospect) == (Prospect.COMING, Prospect.OPPOSITE)
