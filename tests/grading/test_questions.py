"""What a grade hangs on: the measure counted out by hand and by brute force, and laws of settled fish."""

from fractions import Fraction
from itertools import permutations, product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import koirules

TEXT = """standard "Trial (an invented house)" edition 1
trait spine as scale bent < slight < straight
trait odome as number in % from 0 to 10
trait kiwa as scale blurred < fair < sharp
trait marks as places of (tail, dorsal)
trait line as label
trait lips as yes or no
trait size as count up to 9
fault bent if spine is bent: no better than cull
fault marked if count of marks at least 1 and line is "old": no better than sell
section body worth 100
points edge by kiwa: blurred gives 0, fair gives 5, sharp gives 10
bonus tail 10 if odome at least 3 %
grade keep if score at least 60
grade sell if score at least 20
grade cull otherwise
"""


def asked(record, text=TEXT):
    return [question.trait.name for question in koirules.read_standard(text).questions(record)]


def test_the_most_decisive_trait_comes_first_and_the_expected_grades_can_be_counted():
    questions = koirules.read_standard(TEXT).questions({})
    by_name = {question.trait.name: question for question in questions}
    # spine: bent leaves 1 grade, slight and straight leave 3: (1 + 3 + 3) / 3. kiwa: blurred leaves the score at 0 to 10
    # (cull: 1), fair at 50 to 60 (keep, sell, cull: 3), sharp at 100 (3): (1 + 3 + 3) / 3, and the narrower score.
    assert by_name["spine"].expected_grades == Fraction(7, 3)
    assert by_name["kiwa"].expected_grades == Fraction(7, 3)
    assert by_name["odome"].expected_grades == 3
    assert [question.trait.name for question in questions][:2] == ["kiwa", "spine"]


def test_a_trait_that_can_change_nothing_is_not_asked():
    assert "lips" not in asked({})
    assert "size" not in asked({})
    assert "line" not in asked({"marks": "none"})


def test_a_settled_fish_hangs_on_nothing():
    assert asked({"spine": "bent"}) == []
    assert koirules.read_standard(TEXT).next_question({"spine": "bent"}) is None


def test_what_cannot_be_told_is_not_asked_again():
    standard = koirules.read_standard(TEXT)
    first = standard.next_question({})
    second = standard.next_question({}, untold={first.trait.name})
    assert second.trait.name != first.trait.name


def test_answers_are_told_in_words_with_what_they_would_do():
    standard = koirules.read_standard(TEXT)
    (question,) = standard.questions({"spine": "straight", "kiwa": "fair", "marks": "none"})
    assert question.gathered == (("below 3 %", ("sell",)), ("at least 3 %", ("keep",)))


def test_what_answers_would_do_is_told_in_a_sentence():
    titles = {"keep": "keep", "sell": "for the shop", "cull": "cull"}
    by_name = {
        question.trait.name: question for question in koirules.read_standard(TEXT).questions({"spine": "straight"})
    }
    assert by_name["kiwa"].told(titles) == "blurred: it is cull; fair or sharp: still keep or for the shop"
    (odome,) = koirules.read_standard(TEXT).questions({"spine": "straight", "kiwa": "fair", "marks": "none"})
    assert odome.told(titles) == "below 3 %: it is for the shop; at least 3 %: it is keep"


def test_is_recorded_is_open_as_long_as_the_trait_may_be_told():
    text = """standard "Trial (an invented house)" edition 1
trait lips as yes or no
grade a if lips is recorded
grade b otherwise
"""
    standard = koirules.read_standard(text)
    assert standard.grade({}).grade == "b"
    assert standard.next_question({}).trait.name == "lips"
    assert standard.next_question({}, untold={"lips"}) is None


def test_what_a_grade_hangs_on_takes_the_record_as_it_stands():
    text = """standard "Trial (an invented house)" edition 1
trait lips as yes or no
trait size as count up to 9
grade a if lips is recorded or size at least 4
grade b otherwise
"""
    standard = koirules.read_standard(text)
    hangs_on = standard.questioner.hangs_on({})
    assert [question.trait.name for question in hangs_on] == ["size"]
    assert hangs_on[0].gathered == (("at most 3", ("b",)), ("at least 4", ("a",)))


def hanging(condition, record):
    text = f"""standard "Trial (an invented house)" edition 1
trait lips as yes or no
trait patch as yes or no
trait kiwa as scale blurred < fair < sharp < razor
trait fins as places of (left, right, tail)
grade a if {condition}
grade b otherwise
"""
    questions = koirules.read_standard(text).questioner.hangs_on
    made = koirules.read_standard(text).reader.read(record, "")
    return [(question.trait.name, question.gathered) for question in questions(made.readings)]


def test_what_only_two_answers_together_can_change_is_asked_too():
    assert [name for name, _ in hanging("lips is patch", {})] == ["lips", "patch"]
    assert [name for name, _ in hanging("count of (lips, patch) is 1", {})] == ["lips", "patch"]


def test_what_was_recorded_but_not_surely_is_asked_within_what_it_could_be():
    assert hanging("kiwa at least sharp", {"kiwa": "fair or sharp"}) == [
        ("kiwa", (("fair", ("b",)), ("sharp", ("a",))))
    ]


def test_several_places_are_tried_too():
    assert hanging("count of fins at least 2", {}) == [
        ("fins", (("none or left or right or tail", ("b",)), ("all of them", ("a",))))
    ]


SMALL = """standard "Trial (an invented house)" edition 1
trait a as yes or no
trait b as yes or no
trait c as scale low < middle < high
grade good if {good}
grade fair if {fair}
grade poor otherwise
"""
VALUES = {"a": [True, False], "b": [True, False], "c": ["low", "middle", "high"]}


def expected_questions(standard, order):
    """How many questions an order needs on average over all fish, counted out."""
    total = 0
    for values in product(*VALUES.values()):
        fish = dict(zip(VALUES, values, strict=True))
        record = {}
        for name in order:
            if len(standard.grade(record).possible) == 1:
                break
            record[name] = fish[name]
            total += 1
    return total


@pytest.mark.parametrize(
    ("good", "fair"),
    [
        ("a and b", "a or c is high"),
        ("c is high", "a and b"),
        ("not a and c at least middle", "c is middle or b"),
        ("a and (b or c is high)", "a"),
    ],
)
def test_the_first_question_is_the_first_of_a_best_order(good, fair):
    standard = koirules.read_standard(SMALL.format(good=good, fair=fair))
    costs = {order: expected_questions(standard, order) for order in permutations(VALUES)}
    best = {order[0] for order, cost in costs.items() if cost == min(costs.values())}
    assert standard.next_question({}).trait.name in best


@pytest.mark.parametrize(
    ("good", "fair"),
    [("a and b", "a or c is high"), ("c is high", "a and b"), ("a and (b or c is high)", "a"), ("b", "c is low or a")],
)
def test_what_a_grade_hangs_on_is_in_the_order_of_the_grades_that_are_left(good, fair):
    standard = koirules.read_standard(SMALL.format(good=good, fair=fair))

    def left(name):
        counts = [len(standard.grade({name: value}).possible) for value in VALUES[name]]
        return sum(counts) / len(counts)

    found = [question.trait.name for question in standard.questioner.hangs_on({})]
    assert found == sorted(found, key=left)
    # Left out is only what, alone, leaves as much open as there was.
    assert all(left(name) == len(standard.grade({}).possible) for name in VALUES.keys() - set(found))


ANSWERS = {
    "spine": st.sampled_from(["bent", "slight", "straight"]),
    "odome": st.sampled_from([0, 2.9, 3, 9]),
    "kiwa": st.sampled_from(["blurred", "fair", "sharp"]),
    "marks": st.sampled_from(["none", "tail", "tail dorsal"]),
    "line": st.sampled_from(["old", "new"]),
}


@settings(max_examples=60)
@given(st.fixed_dictionaries(ANSWERS))
def test_asking_until_settled_gives_the_grade_of_the_full_record(fish):
    standard = koirules.read_standard(TEXT)
    record = {}
    while (question := standard.next_question(record)) is not None:
        record[question.trait.name] = fish[question.trait.name]
    assert standard.grade(record).grade == standard.grade(fish).grade


@pytest.mark.parametrize("first", ["a", "b"])
def test_of_questions_that_narrow_as_much_the_first_in_the_file_comes_first(first):
    # A third of the words of each leaves one grade, the others two: 5/3. As sums of doubles the two differ in the last bit.
    traits = {
        "a": "trait a as choice of (k, l, m, n, o, p)\nfault of_a if a is one of (k, l): no better than sell\n",
        "b": "trait b as choice of (q, r, s)\nfault of_b if b is q: no better than sell\n",
    }
    order = [first, "ab".replace(first, "")]
    text = (
        'standard "Tin Bucket" edition 1\n' + "".join(traits[name] for name in order) + "trait c as yes or no\n"
        "grade keep if c\ngrade sell otherwise\n"
    )
    questions = koirules.read_standard(text).questions({})
    assert {one.trait.name: one.expected_grades for one in questions if one.trait.name != "c"} == {
        "a": Fraction(5, 3),
        "b": Fraction(5, 3),
    }
    assert [one.trait.name for one in questions if one.trait.name != "c"] == order
