"""Where red and white begin and end along a fish, and how long they are."""

from pathlib import Path

import pytest

import koirules
from koirules.builtin.red_pattern import ALONG
from koirules.notes.extents import Topic, along, topic_of
from koirules.notes.reader import NotesReader, cells
from koirules.notes.remarks import Sort
from koirules.notes.sheet import headings_of, row_of
from koirules.testing import registry_with
from koirules.vocabulary.readings import PlaceSet

PAGE = """standard "Tin Bucket, along the body (invented)" edition 1 variety kohaku stage tosai
grade kept otherwise
"""
READER = NotesReader.of(koirules.read_standard(PAGE, registry=registry_with()).rules)


def _told():
    table = Path(__file__).parent / "said_along_the_body.txt"
    for line in table.read_text(encoding="utf-8").splitlines():
        meaning, parted, lines = line.partition(" = ")
        yield from ((meaning, each) for each in (lines.split("; ") if parted and not line.startswith("#") else ()))


@pytest.mark.parametrize(("meaning", "text"), list(_told()))
def test_what_lies_where_along_the_body_is_read_as_meant(meaning, text):
    (fish,) = READER.read(f"1: {text}").fish
    last = fish.remarks[-1]
    what, _, value = meaning.partition(" ")
    if what == "unread":
        assert last.sort is Sort.UNKNOWN
        return
    if what == "detail":
        assert (last.is_detail, fish.details[-1:], fish.unread) == (True, (last.text,), ())
        return
    assert last.sort is Sort.TRAITS
    found = cells(READER.gather("1", 0, 1, [last]), READER.lexicon.traits)
    if what not in {"red", "no"}:
        assert found[what] == value
        return
    said = READER.gather("1", 0, 1, [last]).said["hi_places"]
    assert isinstance(said, PlaceSet)
    named = [ALONG.index(name) for name in value.removeprefix("red ").split() if name != "at"]
    told = [at for at in range(len(ALONG)) if (said.sure if what == "red" else ~said.possible) >> at & 1]
    # Of a patch between two places its ends are told, and all that is told lies between them.
    assert {named[0], named[-1]} <= {*told} <= {*named}


def test_a_length_is_of_the_gap_that_was_spoken_of_and_else_of_the_part():
    (gap, part) = READER.read("1: nidan, clear gap between them, about 1 cm\n2: nidan, one speck, about half a cm").fish
    assert cells(gap, READER.lexicon.traits)["white_gap_width"] == "0.95 cm to 1.05 cm"
    assert part.details == ("about half a cm",)


def test_the_topic_is_kept_by_what_says_no_more_than_where():
    assert topic_of(["3 patch", "1 on the head", "1 on the shoulder"]) is Topic.RED
    assert topic_of(["3 patch", "mouth is crooked"]) is Topic.OTHER
    assert topic_of(["a black speck"]) is Topic.MARK


def test_what_has_no_place_and_no_length_is_told_in_no_clauses():
    for words in ("sharp kiwa", "red", "2", "he shook his head twice"):
        assert list(along(words)) == []


def test_details_have_a_column_where_there_are_any():
    notes = READER.read("1: sandan, second patch is 3 cm long")
    assert row_of(notes.fish[0], notes)["detail"] == "second patch is 3 cm long"
    assert "detail" in headings_of(notes)
    assert "detail" not in headings_of(READER.read("1: sandan"))
