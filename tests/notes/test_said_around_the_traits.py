"""What is said around the traits: talk, comparisons, lengths as people speak of them, doubts, and what is taken back."""

from pathlib import Path

import pytest

import koirules
from koirules.notes.numbers import in_cm
from koirules.notes.reader import NotesReader, cells
from koirules.notes.remarks import Sort
from koirules.testing import registry_with
from tests.notes.noted_pages import tabled

PAGE = """standard "Tin Bucket, around the traits (invented)" edition 1 variety kohaku stage tosai
grade kept otherwise
"""
READER = NotesReader.of(koirules.read_standard(PAGE, registry=registry_with()).rules)
TABLE = Path(__file__).parent / "said_around_the_traits.txt"


def fish_of(text):
    (fish,) = READER.read(f"1: {text}").fish
    return fish


def said(text):
    return cells(fish_of(text), READER.lexicon.traits)


def test_what_is_said_around_the_traits_is_read_as_meant():
    right, unread, otherwise = tabled(TABLE, READER, READER.rules)
    assert (unread, otherwise) == ([], [])
    assert len(right) >= 100


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("speck on the cheek, no hang on that was dirt", {}),
        ("shimi on the shoulder, it wiped off", {}),
        ("red on the left cheek, kiwa sharp, it rubs off", {"hi_on_cheeks": "left_cheek"}),
        ("2 shimi, it's dirt", {"shimi_count": "?"}),
        ("spine bent, no it's only turning", {}),
        ("kiwa sharp, I may be seeing things", {"kiwa": "fair or sharp or razor"}),
        ("nidan, hard to say in this light", {"steps": "?"}),
        ("nidan, could be the light", {"steps": "?"}),
        ("white a bit yellow, not badly", {"shiroji": "yellow or cream or white"}),
        ("15 cm, make that eighteen", {"length": "18 cm"}),
        ("18 cm, then it stretched and it was 18 and a half", {"length": "18.5 cm"}),
        ("16 cm, 17 when it lay still", {"length": "17 cm"}),
    ],
)
def test_a_second_look_takes_back_or_doubts_what_was_said_last(text, read):
    found = {trait: cell for trait, cell in said(text).items() if trait in read or not read}
    assert found == read


def test_dirt_takes_back_nothing_that_was_not_seen_as_a_mark():
    fish = fish_of("kiwa sharp, it's dirt")
    assert fish.unread
    assert said("kiwa sharp, it's dirt") == {"kiwa": "?"}


def test_a_verdict_of_one_who_is_not_sure_stays_a_verdict():
    fish = fish_of("kiwa sharp, not sure")
    assert (fish.verdict, fish.unsure) == ("unsure", ())


def test_a_simile_says_nothing_beside_what_it_is_like_and_is_told_where_it_stands_alone():
    assert fish_of("kiwa sharp, like a letter box").unread == ()
    assert fish_of("like a barber pole").unread == ("like a barber pole",)
    assert fish_of("kiwa sharp, like paper").unread == ("like paper",)
    assert fish_of("kiwa sharp, like the big one with the window").comparisons


@pytest.mark.parametrize(
    "text", ["half an inch of white", "crow's foot at the neck", "my foot is wet", "2 inches", "kiwa 6"]
)
def test_small_lengths_in_inches_and_other_feet_are_no_length_of_a_fish(text):
    assert in_cm(text) == text


def test_a_remark_on_people_that_may_say_what_becomes_of_the_fish_is_not_passed_over():
    for text in ("my wife took it home", "I can see through it", "I counted them", "we let people have those"):
        assert READER.remarks.read(text).sort is not Sort.NOTHING, text
