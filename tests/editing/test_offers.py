"""What is offered would be taken: put where it is offered, the grammar reads it."""

import random
import re
from pathlib import Path

import pytest

from koirules.editing import Desk, Sort, language_words, offers_at
from koirules.editing.telling import told_trait
from koirules.editing.words import HEADS, PHRASES
from koirules.language.parse.partial_statement import so_far
from koirules.testing import registry_with
from koirules.vocabulary.kinds import YesNo
from koirules.vocabulary.traits import Better, Growth, Trait
from koirules.vocabulary.words import HEAD_WORDS

ROOT = Path(__file__).parents[2]
BOX = registry_with()
FILES = sorted(ROOT.glob("rulesets/*/standard.koi"))


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.parent.name)
def test_the_next_word_of_a_file_is_among_what_is_offered(path):
    """Wherever a word of a file that holds was read, it is offered before it is typed, unless its author made it up."""
    text = path.read_text(encoding="utf-8")
    desk = Desk(BOX)
    page = desk.open("page", None, text)
    desk.look("page")
    lines = page.lines.counted
    spots = [
        (line, column + 1, word)
        for line, words in enumerate(lines, 1)
        for column, word in words_of(words)
        if not so_far(lines, line, column + 1).within
    ]
    rng = random.Random(1)
    made_up = {use.place.line * 1_000 + use.place.column for use in page.uses if use.gives}
    for line, column, word in rng.sample(spots, min(400, len(spots))):
        if line * 1_000 + column in made_up:
            continue
        found = so_far(lines, line, column)
        if found.takes is not None and not found.takes & {"NAME"} and not found.phrases and "UNIT" not in found.takes:
            continue  # an edition, a date
        offered = {first for offer in offers_at(desk, "page", line, column).offers for first in offer.text.split()[:1]}
        named = found.words and found.words[0].name in {"TRAIT", "STANDARD"}
        assert word in offered or named or language_code(found), (line, column, word, sorted(offered))


def words_of(line):
    return [(found.start(), found.group()) for found in re.finditer(r"(?<![\w.\"])[^\W\d]\w*", line)]


def language_code(found):
    return bool(found.words) and found.words[-1].name == "STRING"


def test_what_is_told_about_words_is_told_about_words_of_the_language():
    assert HEADS.keys() == HEAD_WORDS
    for phrase in PHRASES:
        assert set(phrase.split()) <= language_words(), phrase


def test_what_is_told_about_words_and_traits_is_not_about_fish():
    rim = Trait("rim", "rim", YesNo(), Better.MORE, Growth.RISES, describe="How wide the pot is at its rim.")
    told = [*HEADS.values(), *PHRASES.values(), told_trait(rim).text]
    assert "with growth: rises" in told[-1]
    assert [each for each in told if re.search(r"\b(fish|koi|ponds?|tubs?)\b", each, re.IGNORECASE)] == []


def test_every_head_word_is_told_about_and_offered():
    desk = Desk(BOX)
    desk.open("page", None, 'standard "x" edition 1 based on "y.koi" edition 1\n')
    desk.look("page")
    offers = offers_at(desk, "page", 2, 1).offers
    assert {offer.text for offer in offers} == HEAD_WORDS - {"standard"}
    assert all(offer.about and offer.sort is Sort.WORD for offer in offers)
    desk.open("page", None, "")
    desk.look("page")
    assert [offer.text for offer in offers_at(desk, "page", 1, 1).offers] == ["standard"]


def test_the_ways_of_a_panel_are_offered_and_told_about():
    desk = Desk(BOX)
    for written, wanted in (
        ("panel show ", {"trait by trait", "by mean of score", "by median of score", "by votes"}),
        ("panel show by votes ", {"at least", "places named by at least", "of two in the middle"}),
        ("panel show by votes of two in the middle the ", {"lower", "higher"}),
    ):
        desk.open("page", None, f'standard "x" edition 1\n{written}\n')
        desk.look("page")
        offered = {offer.text: offer.about for offer in offers_at(desk, "page", 2, len(written) + 1).offers}
        assert wanted <= offered.keys(), (written, sorted(offered))
        assert all(offered[one] for one in wanted & PHRASES.keys())


def test_behind_a_number_of_places_what_it_is_a_number_of_is_offered():
    desk = Desk(BOX)
    lines = ['standard "x" edition 1 variety kohaku', "grade keep if count of hi_on_eyes is 1", "grade cull otherwise"]
    lines += ['sample "one eye" with hi_on_eyes 1 ', 'sample "an eye" with hi_on_eyes ']
    desk.open("page", None, "\n".join(lines))
    desk.look("page")
    behind = {offer.text for offer in offers_at(desk, "page", 4, len(lines[3]) + 1).offers}
    assert "of" in {text.split()[0] for text in behind}
    before = {offer.text.strip() for offer in offers_at(desk, "page", 5, len(lines[4]) + 1).offers}
    assert any(text.startswith("at least") for text in before), before
