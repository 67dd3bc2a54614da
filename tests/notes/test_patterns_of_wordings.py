"""Wordings that are patterns: what they hold, which goes before which, and that all of them are read as they say."""

from itertools import islice
from random import Random

import pytest
from attrs import evolve

import koirules
from koirules.notes.lexicon import Lexicon
from koirules.notes.reader import NotesReader
from koirules.notes.tree import ARTICLES
from koirules.standard.check.phrasing import read_alone, read_means
from koirules.testing import registry_with
from koirules.vocabulary.phrases import Spoken, brackets_match, examples_of, sequel_of, wordings_in
from koirules.vocabulary.wordings import tokens_of

PAGE = 'standard "x" edition 1 variety {}\ngrade all otherwise\n'

# Words that belong to two traits: the first one listed has them.
ELSEWHERE = {
    "left and right balanced",
    "good torpedo shape",
}


@pytest.mark.parametrize(
    ("wording", "held"),
    [
        ("plain words", ["plain words"]),
        ("(red|hi) to the nose", ["red to the nose", "hi to the nose"]),
        ("(red|) runs (down|) on", ["red runs down on", "red runs on", "runs down on", "runs on"]),
        ("(a (big|small)|no) patch", ["a big patch", "a small patch", "no patch"]),
        ("half (open", ["half (open"]),
        ("half) open", ["half) open"]),
        ("this|that", ["this|that"]),
    ],
)
def test_what_a_pattern_holds(wording, held):
    assert list(examples_of(sequel_of(wording))) == held
    assert brackets_match(wording) == (not set("(|)") & set(wording) or len(held) > 1)


def reader_with(*sayings):
    """A reader of kohaku with other sayings of the traits."""
    rules = koirules.read_standard(PAGE.format("kohaku"), registry=registry_with()).rules
    return NotesReader.of(evolve(rules, sayings=sayings))


def test_what_is_written_out_goes_before_a_pattern_and_a_pattern_before_a_later_one():
    reader = reader_with(
        Spoken(
            "kiwa",
            alone={"is blurred": "the (tin|pewter) (rim|lip)", "is fair": "(tin|lead) rim", "is razor": "tin lip"},
        )
    )
    said = {
        text: [found.said for found in reader.remarks.read(text).found]
        for text in ("pewter lip", "tin rim", "lead rim", "tin lip", "lead lip", "a tin rim", "pewter really lip")
    }
    blurred, fair, razor = 1, 2, 8
    assert said == {
        "pewter lip": [blurred],
        "tin rim": [blurred],
        "lead rim": [fair],
        "tin lip": [razor],
        "lead lip": [],
        "a tin rim": [blurred],
        "pewter really lip": [blurred],
    }
    assert reader.remarks.read("perhaps pewter lip").found[0].hedged


def test_names_and_levels_may_be_patterns_and_stand_beside_others_of_the_same_words():
    reader = reader_with(
        Spoken("kiwa", "(tin|pewter) rim", levels={"razor": "(like|as) a (blade|razor)"}),
        Spoken("sashi_even", "(tin|lead) rim"),
    )
    assert [found.said for found in reader.remarks.read("pewter rim as a blade").found] == [8]
    assert {found.trait for found in reader.remarks.read("tin rim even").found} == {"sashi_even"}
    assert {found.trait for found in reader.remarks.read("tin rim sharp").found} == {"kiwa"}
    assert not reader.remarks.read("lead rim sharp").found


def drawn(sequel, draw):
    """One wording of a pattern."""
    parts = [part if isinstance(part, str) else drawn(draw.choice(part.each), draw) for part in sequel]
    return " ".join(" ".join(parts).split())


@pytest.mark.parametrize("variety", ["kohaku"])
def test_every_wording_says_what_its_table_says(variety):
    """A wording that has another meaning by an earlier table would be one that nobody can say."""
    rules = koirules.read_standard(PAGE.format(variety), registry=registry_with()).rules
    lexicon, otherwise, tried = Lexicon.of(rules), set(), 0
    for saying in rules.sayings:
        if isinstance(saying, Spoken):
            told = [(read_alone(saying.trait, reading, rules.traits), said) for reading, said in saying.alone.items()]
        else:
            told = [(read_means(saying.means, rules.traits), saying.wordings)]
        for stated, wording in (
            (stated, each) for stated, text in told if stated is not None for each in wordings_in(text)
        ):
            sequel, draw = sequel_of(wording), Random(wording)  # of its own: another wording changes no other
            examples = {*islice(examples_of(sequel), 20), *(drawn(sequel, draw) for _ in range(20 * ("(" in wording)))}
            for tokens, example in ((tokens_of(example), example) for example in examples - {""}):
                hits = [hit for hit in lexicon.hits(tokens, 0) if hit.means]
                said = [hit.means for hit in hits if all(word in ARTICLES for word in tokens[hit.end :])]
                tried += 1
                if not said or said[0].stated[: len(stated)] != stated:
                    otherwise.add(example)
    assert otherwise <= ELSEWHERE
    assert tried > 5_000


def test_a_level_may_be_a_reading_and_a_table_may_keep_its_levels_to_its_own_names():
    reader = reader_with(
        Spoken("kiwa", "tin rim", levels={"at most fair": "so to say", "sharp": "keen"}),
        Spoken("kiwa", "pewter rim", levels={"blurred": "keen"}, apart=True),
    )
    read = {text: reader.remarks.read(text) for text in ("tin rim so to say", "tin rim keen", "keen pewter rim")}
    assert {text: [found.said for found in remark.found] for text, remark in read.items()} == {
        "tin rim so to say": [3],
        "tin rim keen": [4],
        "keen pewter rim": [1],
    }
    assert not reader.remarks.read("pewter rim so to say").found
    assert not reader.remarks.read("pewter rim").found


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("tin rim keen on the last patch", [4]),
        ("tin rim on the second patch keen", [4]),
        ("tin rim at the back is not keen", [3]),
        ("tin rim keen all round", [4]),
        ("keen tin rim on both sides", [4]),
        ("tin rim keen only on the left", []),
        ("tin rim keen on the left pectoral", []),
        ("lead rim plump on the last patch", []),
        ("lead rim on the last patch plump", []),
    ],
)
def test_what_is_said_of_a_part_is_said_of_the_whole_where_its_table_says_so(text, said):
    reader = reader_with(
        Spoken("kiwa", "tin rim", levels={"sharp": "keen"}, of_parts="all"),
        Spoken("sashi_even", "lead rim", levels={"even": "plump"}),
    )
    assert [found.said for found in reader.remarks.read(text).found] == said


def test_a_remark_that_does_not_name_what_it_speaks_of_is_of_what_the_one_before_names():
    reader = NotesReader.of(koirules.read_standard(PAGE.format("kohaku"), registry=registry_with()).rules)
    read = {}
    for line in (
        "red on the head, stops at the eyes",
        "stops at the eyes",
        "white is yellow on the head, stops at the eyes",
        "a speck on the nose, goes down to the nose",
        "large head patch, keep an eye on it, right down to the nose",
        "white yellow and right down to the nose",
    ):
        (fish,) = reader.read(f"1: {line}").fish
        read[line] = (fish.said.get("head_hi_front"), fish.unread)
    eye_line, nose = 2, 8
    assert read == {
        "red on the head, stops at the eyes": (eye_line, ()),
        "stops at the eyes": (eye_line, ()),
        "white is yellow on the head, stops at the eyes": (None, ("stops at the eyes",)),
        "a speck on the nose, goes down to the nose": (None, ("goes down to the nose",)),
        "large head patch, keep an eye on it, right down to the nose": (nose, ("keep an eye on it",)),
        "white yellow and right down to the nose": (None, ("white yellow and right down to the nose",)),
    }


def test_every_bracket_of_a_wording_is_closed():
    """A bracket that stays open would be read as a word."""
    sayings = koirules.read_standard(PAGE.format("kohaku"), registry=registry_with()).rules.sayings
    texts = [
        text
        for saying in sayings
        for text in (
            (saying.nouns, saying.beside, *saying.levels.values(), *saying.alone.values(), *saying.bare.values())
            if isinstance(saying, Spoken)
            else (saying.wordings,)
        )
    ]
    assert [wording for text in texts for wording in wordings_in(text) if not brackets_match(wording)] == []
    assert len(texts) > 1000
