"""What is offered at the cursor, and what a word tells."""

from __future__ import annotations

import pytest
from lsprotocol import types as lsp
from speaking import RULES, at, end_of, labels, words_at


@pytest.mark.parametrize(
    ("typed", "fit", "do_not"),
    [
        ("fault q if ", {"length", "small", "smallest", "whole", "not", "section"}, {"bent", "keep", "is", "mm"}),
        ("fault q if kiwa ", {"at least", "is", "between"}, {"includes", "and", "kiwa"}),
        ("fault q if spine is ", {"bent", "straight", "not"}, {"length", "small", "score", "sharp"}),
        ("fault q if kiwa is one of (fair, ", {"sharp"}, {"fair", "bent", "length"}),
        ("fault q if length above ", {"smallest", "girth"}, {"kiwa", "whole", "fair", "score"}),
        ("fault q if length above 3 ", {"mm", "cm", "m", "and"}, {"kg", "days", "%", "above"}),
        ("fault q if small: ", {"no better than"}, {"no worse than", "length"}),
        ("fault q if small: no better than ", {"keep", "sell", "cull"}, {"bent", "body", "length"}),
        ("lift q if fault ", {"bent", "short"}, {"keep", "body", "length"}),
        ("grade q if section ", {"body"}, {"keep", "bent", "length"}),
        ("points q by kiwa: blurred gives 0, ", {"fair", "anything else"}, {"blurred", "length"}),
        ("points q by length: 3 ", {"mm", "cm", "gives"}, {"kg", "length"}),
        ("points q by ", {"length", "kiwa"}, {"score", "section", "grade"}),
        ('sample "x" with length 3 cm, ', {"kiwa", "whole"}, {"length", "small", "smallest"}),
        ('sample "x" with kiwa ', {"fair", "sharp"}, {"kiwa", "length", "bent"}),
        ('sample "x" with spine bent shows fault ', {"bent", "short"}, {"keep"}),
        ("term q means hi_on_fins includes ", {"dorsal", "tail"}, {"fair", "length"}),
        ("term q means count of ", {"hi_on_fins"}, {"length", "small"}),
        ("trait q as ", {"yes or no", "count up to", "scale"}, {"length", "cm"}),
        ("trait q as number in ", {"cm", "kg"}, {"length"}),
        ("setting q = 3 kg from 2 ", {"g", "kg", "mg"}, {"cm", "%"}),
        ('bonus q 2 if small say "{', {"length", "smallest"}, {"keep", "if"}),
        ("gr", {"grade", "fault", "section"}, {"standard", "length", "drop"}),
        ("fault q if small # if ", set(), {"length", "grade"}),
    ],
)
def test_what_is_offered_fits_the_place(shared, typed, fit, do_not):
    uri = shared.open("offers.koi", RULES)
    shared.problems(uri)
    text = RULES + typed
    shared.type(uri, text)
    found = labels(shared.ask("completion", uri, position=end_of(text)))
    assert fit <= found
    assert not do_not & found


def test_an_offer_has_its_description_and_takes_the_place_of_what_was_typed(shared, editors, tmp_path):
    text = RULES + "fault q if kiw"
    for editor in (shared, editors(tmp_path, lsp.ClientCapabilities())):
        found = editor.ask("completion", editor.open("offer.koi", text), position=end_of(text))
        item = editor.tell_more(found, "kiwa")
        assert item.detail == "scale blurred < fair < sharp < razor"
        assert "edge" in item.documentation
        at = found.item_defaults.edit_range if found.item_defaults else item.text_edit.range
        assert words_at(text, at) == "kiw"


def test_an_offer_is_made_in_a_file_that_is_broken_elsewhere(shared):
    text = RULES.replace("worth 100", "worht 100").replace("spine is bent", "spine bent") + "fault q if kiwa is "
    uri = shared.open("broken.koi", text)
    assert {"fair", "sharp"} <= labels(shared.ask("completion", uri, position=end_of(text)))


def test_a_header_is_offered_varieties_and_the_files_beside_it(editors, tmp_path):
    editor = editors(tmp_path)
    (tmp_path / "committee.koi").write_text(RULES, encoding="utf-8")
    text = 'standard "x" edition 1 variety '
    uri = editor.open("own.koi", text)
    assert "kohaku" in labels(editor.ask("completion", uri, position=end_of(text)))
    text = 'standard "x" edition 1 based on "'
    editor.type(uri, text)
    offered = labels(editor.ask("completion", uri, position=end_of(text)))
    assert {"committee.koi", "tosai_kohaku"} <= offered  # an installed rule set by its name
    assert {name for name in offered if name.endswith(".koi")} == {"committee.koi"}
    text = 'standard "x" edition 1 variety (kohaku, '
    editor.type(uri, text)
    assert "kohaku" not in labels(editor.ask("completion", uri, position=end_of(text)))


def test_what_the_base_has_is_offered_to_be_replaced_or_dropped(editors, tmp_path):
    editor = editors(tmp_path)
    (tmp_path / "base.koi").write_text(RULES, encoding="utf-8")
    own = 'standard "ours" edition 1\n  based on "base.koi" edition 2026-1\n'
    uri = editor.open("own.koi", own)
    editor.problems(uri)
    for typed in ("drop fault ", "replace fault "):
        editor.type(uri, own + typed)
        assert labels(editor.ask("completion", uri, position=end_of(own + typed))) == {"bent", "short"}


@pytest.mark.parametrize(
    ("words", "behind", "nth", "told"),
    [
        ("length", 1, 0, ["length", "number in cm from", "with growth: rises"]),
        ("smallest", 1, 1, ["8 cm, from 6 cm to 12 cm", "shortest that is kept"]),
        ("small ", 1, 1, ["term small: a yes-or-no", "means length below smallest"]),
        ("straight", 1, 0, ["level 3 of 3", "bent < slight < straight"]),
        ("than sell", 6, 0, ["grade 2 of 3, best first", "score at least 35", "no better, for fault short"]),
        ("section body at", 9, 0, ["worth 100", "points outline: outline"]),
        ("fault short\n", 7, 0, ['fault short "short"', "no better than sell"]),
        ("cm from", 1, 0, ["length"]),
        ("points outline", 1, 0, ["criterion"]),
        ("at least 75", 1, 0, ["This much or more"]),
        ("{length}", 2, 0, ["number in cm"]),
        ("kohaku", 1, 0, ["White koi with red patches"]),
    ],
)
def test_a_word_tells_what_it_is(shared, words, behind, nth, told):
    uri = shared.open("hover.koi", RULES)
    found = shared.ask("hover", uri, position=at(RULES, words, behind, nth))
    assert found.contents.kind == lsp.MarkupKind.PlainText
    for each in told:
        assert each in found.contents.value


def test_a_problem_tells_what_its_code_means(shared):
    text = RULES.replace("spine is bent", "spin is bent")
    uri = shared.open("told.koi", text)
    assert "unknown-name: " in shared.ask("hover", uri, position=at(text, "spin is", 1)).contents.value
