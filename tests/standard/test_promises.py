"""What the reference promises from version to version, beside the ten frozen pages: words of traits, words of the language.

`words.json` was written on 2026-11-30 and is never refreshed: a trait that comes later has no line in it.
"""

import json
import re
from decimal import Decimal
from pathlib import Path

import pytest

import koirules
from koirules.language.keywords import language_words
from koirules.testing import registry_with
from koirules.vocabulary.kinds import Count, Number, describe_kind

FROZEN = json.loads(
    (Path(__file__).resolve().parents[1] / "cases" / "frozen" / "words.json").read_text(encoding="utf-8")
)
REGISTRY = registry_with()
NEW_WORDS = ("silence", "phrase", "carry", "rename", "look", "unless", "forward")


def traits_of(variety):
    page = f'standard "x" edition 1 variety {variety}\ngrade all otherwise\n'
    return koirules.read_standard(page, registry=REGISTRY).rules.traits


def reach(kind):
    """The ends of a number or a count, in the unit of its trait."""
    return (kind.low, kind.high) if isinstance(kind, Number) else (0, kind.high)


@pytest.mark.parametrize("variety", FROZEN["traits"])
def test_a_trait_keeps_its_kind_its_words_its_unit_and_its_range(variety):
    traits = traits_of(variety)
    frozen = FROZEN["traits"][variety]
    assert len(frozen) > 20
    for name, (described, unit, low, high) in frozen.items():
        kind = traits[name].kind
        if isinstance(kind, Number | Count):
            assert (kind.unit.symbol if isinstance(kind, Number) and kind.unit else "") == unit, name
            assert reach(kind)[0] <= Decimal(low) and reach(kind)[1] >= Decimal(high), name
        else:
            assert describe_kind(kind) == described, name


def test_no_word_of_the_language_goes_away():
    assert set(FROZEN["language"]) <= language_words()
    assert len(FROZEN["language"]) > 100


@pytest.mark.parametrize("word", NEW_WORDS)
def test_words_that_came_into_the_language_still_name_things(word):
    page = f"""standard "x" edition 1
trait {word} as scale poor < good
term {word}_again means {word} is good
grade keep if {word} at least good
grade out otherwise
"""
    assert koirules.read_standard(page).grade({word: "good"}).grade == "keep"


def test_the_reference_says_it():
    page = (Path(__file__).resolve().parents[2] / "examples/guide/reference/language.md").read_text(encoding="utf-8")
    promises = page.partition("## What stays the same from version to version")[2].partition("\n## ")[0]
    assert len(re.findall(r"^- \*\*", promises, re.MULTILINE)) == 5
