"""Problems as one types, with exact places."""

from __future__ import annotations

import pytest
from lsprotocol import types as lsp
from speaking import RULES, at, words_at


def test_problems_are_told_as_one_types_and_cleared_when_they_are_mended(shared):
    text = RULES.replace("spine is bent", "spin is bent")
    uri = shared.open("typing.koi", text)
    (told,) = shared.problems(uri)
    assert told.code == "unknown-name"
    assert told.severity == lsp.DiagnosticSeverity.Error
    assert told.source == "koirules"
    assert words_at(text, told.range) == "spin"
    shared.type(uri, RULES)
    assert shared.problems(uri) == []


def test_all_problems_of_a_file_come_at_once_warnings_as_such(shared):
    text = RULES.replace("worth 100", "worth 90").replace("at least 35", "atleast 35").replace("is bent", "is bnt")
    told = shared.problems(shared.open("several.koi", text))
    assert {each.code for each in told if each.severity == lsp.DiagnosticSeverity.Error} >= {"unknown-step"}
    assert len(told) >= 2
    text = RULES.replace("worth 100", "worth 90").replace("body at least 40", "body at least 30")
    told = shared.problems(shared.open("warned.koi", text))
    assert told
    assert {each.severity for each in told} == {lsp.DiagnosticSeverity.Warning}


def test_the_other_place_is_told_beside(shared):
    text = RULES + 'term small "again" means length below 3 cm\n'
    uri = shared.open("twice.koi", text)
    (told,) = [each for each in shared.problems(uri) if each.code == "named-twice"]
    (beside,) = told.related_information
    assert beside.location.uri == uri
    assert words_at(text, beside.location.range) == "small"
    assert beside.location.range.start == at(text, "term small", 5)


@pytest.mark.parametrize(
    ("encoding", "codec", "width"),
    [("utf-32", "utf-32-le", 4), ("utf-16", "utf-16-le", 2), ("utf-8", "utf-8", 1)],
)
def test_ranges_are_in_the_units_that_were_agreed_on(editors, tmp_path, encoding, codec, width):
    general = lsp.GeneralClientCapabilities(position_encodings=[lsp.PositionEncodingKind(encoding)])
    editor = editors(tmp_path, lsp.ClientCapabilities(general=general))
    assert editor.server.capabilities.position_encoding == encoding
    before = 'fault fish "a 🐟 fish" if '
    character = len(before.encode(codec)) // width
    text = RULES + before + "spin is bent or spine is bent: no better than cull\n"
    (told,) = editor.problems(editor.open("fish.koi", text))
    assert told.range.start.character == character
    assert told.range.end.character == character + len("spin")
    behind = lsp.Position(told.range.start.line, character + len("spin is bent or spine is b"))
    found = editor.ask("hover", editor.uri("fish.koi"), position=behind)
    assert "level 1 of 3" in found.contents.value


def test_what_an_editor_does_not_compose_keeps_its_place(shared):
    # e and a combining accent are one character to us, and two in the editor's text; a mark in front is none.
    text = "\ufeff" + RULES + 'fault fish "e\u0301e\u0301" if spin is bent: no better than cull\n'
    told = shared.problems(shared.open("composed.koi", text))
    (told,) = [each for each in told if each.code == "unknown-name"]
    assert words_at(text, told.range) == "spin"


def test_a_base_is_read_as_it_is_open_and_not_as_it_was_saved(editors, tmp_path):
    editor = editors(tmp_path)
    (tmp_path / "base.koi").write_text(RULES, encoding="utf-8")
    own = 'standard "ours" edition 1\n  based on "base.koi" edition 2026-1\nfault more "more" if small: no better than sell\n'
    uri = editor.open("own.koi", own)
    assert editor.problems(uri) == []
    base = editor.open("base.koi", RULES.replace("term small", "term tiny").replace("if small", "if tiny"))
    (told,) = editor.problems(uri, lambda told: told.diagnostics)
    assert told.code == "unknown-name"
    assert words_at(own, told.range) == "small"
    editor.type(base, RULES.replace("edition 2026-1", "edition 2026-2"))
    (told,) = editor.problems(uri, lambda told: [each.code for each in told.diagnostics] == ["other-edition"])
    editor.type(base, RULES.replace("spine is bent", "spin is bent"))
    editor.problems(uri, lambda told: "base-has-problems" in [each.code for each in told.diagnostics])
    told = [each for each in editor.told[uri].diagnostics if each.code == "unknown-name"]
    assert words_at(own, told[0].range).startswith("based on")
    assert told[0].related_information[0].location.uri == base
    editor.close(base)
    assert editor.problems(uri, lambda told: not told.diagnostics) == []


def test_a_file_that_has_no_place_yet_is_read_too(shared):
    assert shared.problems(shared.open("untitled:Untitled-1", RULES)) == []
    text = RULES.replace("edition 2026-1", 'edition 2026-1 based on "x.koi" edition 1')
    assert [each.code for each in shared.problems(shared.open("untitled:Untitled-2", text))] == ["base-without-folder"]
