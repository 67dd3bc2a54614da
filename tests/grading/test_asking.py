"""The order of questions, counted out on small standards, and what is asked together."""

from functools import cache
from itertools import product

import pytest

import koirules
from koirules.grading.next_look import Asker, Noting
from koirules.grading.questions import Known

TRAITS = """standard "Trial (an invented house)" edition 1
trait a as yes or no
trait b as yes or no
trait c as scale low < middle < high
trait d as yes or no
"""
VALUES = {"a": ("no", "yes"), "b": ("no", "yes"), "c": ("low", "middle", "high"), "d": ("no", "yes")}
CONDITIONS = [
    ("a and b", "a or c is high"),
    ("c is high", "a and b and d"),
    ("not a and c at least middle", "c is middle or b"),
    ("a and (b or c is high or d)", "a"),
    ("count of (a, b, d) at least 2", "c is low"),
    ("(a and b) or (c is high and d)", "d"),
]


def standard_of(good, fair):
    return koirules.read_standard(f"{TRAITS}grade good if {good}\ngrade fair if {fair}\ngrade poor otherwise\n")


def fewest_questions(standard):
    """The fewest questions on average over all fish that any order of asking needs, however it looks at the answers."""

    @cache
    def least(told):
        record = dict(told)
        if standard.grade(record).grade is not None:
            return 0.0
        return min(
            1 + sum(least((*told, (name, value))) for value in values) / len(values)
            for name, values in VALUES.items()
            if name not in record
        )

    return least(())


def questions_asked(standard):
    """How many questions the standard asks on average over all fish."""
    total = 0
    fish = [dict(zip(VALUES, values, strict=True)) for values in product(*VALUES.values())]
    for seen in fish:
        record = {}
        while (question := standard.next_question(record)) is not None:
            record[question.trait.name] = seen[question.trait.name]
            total += 1
        assert standard.grade(record).grade == standard.grade(seen).grade
    return total / len(fish)


@pytest.mark.parametrize(("good", "fair"), CONDITIONS)
def test_no_order_of_questions_does_much_better(good, fair):
    standard = standard_of(good, fair)
    assert questions_asked(standard) <= 1.1 * fewest_questions(standard)


def test_over_these_standards_asking_is_nearly_as_short_as_can_be():
    standards = [standard_of(good, fair) for good, fair in CONDITIONS]
    asked = sum(questions_asked(standard) for standard in standards)
    assert asked <= 1.03 * sum(fewest_questions(standard) for standard in standards)


def test_what_other_fish_of_the_batch_are_like_changes_the_order():
    standard = koirules.read_standard(
        f"{TRAITS}grade good if a and b\ngrade fair if a is no and d is no\ngrade poor otherwise\n"
    )
    assert standard.next_question({}).trait.name == "a"
    rare = koirules.read_standard(
        'standard "Trial" edition 1\ntrait a as yes or no\ntrait b as yes or no\ngrade out if a or b\ngrade in otherwise\n'
    )
    batch = [{"b": 2, "a": 1}] * 9 + [{"b": 1, "a": 1}]
    assert Asker.of(rare.questioner).next_one(Known()).trait.name == "a"
    assert Asker.of(rare.questioner, batch).next_one(Known()).trait.name == "b"


NOTED = """standard "Trial (an invented house)" edition 1
trait spine as scale bent < fair < straight
trait lips as yes or no
trait notch as yes or no
trait whole as yes or no
trait mouth as scale malformed < good
fault bent if spine is bent: no better than cull
fault mouth if mouth is malformed and (mouth is recorded or whole is no): no better than sell
section body worth 10
points s by spine: bent gives 0, fair gives 8, straight gives 10
bonus lips 2 if lips is recorded and lips is yes
bonus notch 1 if notch is recorded and notch is yes
grade keep if score at least 10
grade sell if score at least 5
grade cull otherwise
"""


def test_what_counts_only_where_it_was_noted_is_asked_for_together():
    asker = Asker.of(koirules.read_standard(NOTED).questioner)
    traits = asker.questioner.grader.rules.traits
    first = asker.next_asked(Known())
    assert first.trait.name == "spine"
    known = Known().told(first.trait, 2)
    noting = asker.next_asked(known)
    assert isinstance(noting, Noting)
    assert [trait.name for trait in noting.traits] == ["lips", "notch", "mouth"]
    assert asker.next_one(known.noted(noting.traits, [])) is None, "nothing noted: it is a fish for the shop"
    noted = known.noted(noting.traits, ["lips"])
    assert asker.next_one(noted).trait.name == "lips"
    # Only now does it matter whether it was called whole: and if not, the mouth is looked at though nobody noted it.
    whole = asker.next_one(noted.told(traits["lips"], 2))
    assert whole.trait.name == "whole"
    assert asker.next_one(noted.told(traits["lips"], 2).told(whole.trait, 2)) is None
    assert asker.next_one(noted.told(traits["lips"], 2).told(whole.trait, 1)).trait.name == "mouth"


def test_a_fish_that_one_look_settles_is_not_asked_what_else_to_note():
    asker = Asker.of(koirules.read_standard(NOTED).questioner)
    assert asker.next_asked(Known({"spine": 1})) is None
