"""Where a name is given and used, and how it is changed."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from lsprotocol import types as lsp
from pygls.exceptions import JsonRpcException
from speaking import RULES, applied, at, edits_of, words_at


@pytest.mark.parametrize(
    ("words", "behind", "nth", "given"),
    [
        ("if small", 4, 0, "term small"),
        ("below smallest", 7, 0, "setting smallest"),
        ("section body at", 9, 0, "section body"),
        ("than sell", 6, 0, "grade sell"),
        ("(whole", 2, 0, "trait whole"),
        ("fault short\n", 7, 0, "fault short"),
        ("{smallest}", 3, 0, "setting smallest"),
        ("comes out sell", 11, 0, "grade sell"),
    ],
)
def test_a_name_leads_to_where_it_is_given(shared, words, behind, nth, given):
    uri = shared.open("given.koi", RULES)
    (found,) = shared.ask("definition", uri, position=at(RULES, words, behind, nth))
    head, name = given.split()
    assert found.uri == uri
    assert found.range.start == at(RULES, given, len(head) + 1)
    assert words_at(RULES, found.range) == name


def test_a_trait_of_the_variety_and_a_step_lead_nowhere(shared):
    uri = shared.open("nowhere.koi", RULES)
    assert shared.ask("definition", uri, position=at(RULES, "spine", 1)) == []
    assert shared.ask("definition", uri, position=at(RULES, "straight", 1)) == []


def test_every_use_of_a_name_is_found(shared):
    uri = shared.open("uses.koi", RULES)
    context = lsp.ReferenceContext(include_declaration=True)
    found = shared.ask("references", uri, position=at(RULES, "smallest", 1), context=context)
    assert [each.range.start for each in found] == [
        at(RULES, "smallest"),
        at(RULES, "smallest", nth=1),
        at(RULES, "{smallest", 1),
    ]
    context = lsp.ReferenceContext(include_declaration=False)
    assert len(shared.ask("references", uri, position=at(RULES, "smallest", 1), context=context)) == 2
    assert len(shared.ask("document_highlight", uri, position=at(RULES, "smallest", 1))) == 3


def test_a_base_and_what_it_gives_are_found_in_its_file(editors, tmp_path):
    editor = editors(tmp_path)
    (tmp_path / "base.koi").write_text(RULES, encoding="utf-8")
    own = 'standard "ours" edition 1\n  based on "base.koi" edition 2026-1\nfault more "more" if small: no better than sell\n'
    uri = editor.open("own.koi", own)
    editor.problems(uri)
    (found,) = editor.ask("definition", uri, position=at(own, "base.koi", 3))
    assert Path(found.uri).name == "base.koi"
    (found,) = editor.ask("definition", uri, position=at(own, "small", 1))
    assert Path(found.uri).name == "base.koi"
    assert found.range.start == at(RULES, "term small", 5)
    base = editor.open("base.koi", RULES)
    editor.problems(base)
    context = lsp.ReferenceContext(include_declaration=True)
    found = editor.ask("references", base, position=at(RULES, "term small", 6), context=context)
    assert [each.uri for each in found] == [base, base, uri]
    with pytest.raises(JsonRpcException, match="given in the base"):
        editor.ask("rename", uri, position=at(own, "small", 1), new_name="tiny")


@pytest.mark.parametrize(
    ("words", "behind", "new", "after"),
    [
        ("term small", 6, "tiny", [("small", "tiny")]),
        ("grade sell", 6, "pass_on", [("sell", "pass_on")]),
        ("smallest", 1, "shortest_kept", [("smallest", "shortest_kept")]),
        ("fault short", 7, "too_short", [("fault short", "fault too_short")]),
    ],
)
def test_a_name_is_changed_everywhere_and_the_file_still_holds(shared, words, behind, new, after):
    uri = shared.open("rename.koi", RULES)
    spot = at(RULES, words, behind)
    prepared = shared.ask("prepare_rename", uri, position=spot)
    assert words_at(RULES, prepared.range) == prepared.placeholder
    edits = edits_of(shared.ask("rename", uri, position=spot, new_name=new))
    text = applied(RULES, edits[uri])
    for was, becomes in after:
        expected = re.sub(rf'(?<![\w"]){was}(?![\w"])', becomes, RULES)
    assert text == expected
    shared.type(uri, text)
    assert shared.problems(uri) == []


@pytest.mark.parametrize(
    ("words", "behind", "new", "why"),
    [
        ("term small", 6, "smallest", "taken already"),
        ("term small", 6, "length", "taken already"),
        ("term small", 6, "two words", "is no name"),
        ("term small", 6, "3rd", "is no name"),
        ("term small", 6, "if", "word of the language"),
        ("term small", 6, "bent", "two meanings"),
        ("grade sell", 6, "keep", "taken already"),
        ("spine", 1, "back", "belongs to the variety"),
        ("straight", 1, "even", "no name here"),
        ("worth", 1, "value", "no name here"),
    ],
)
def test_a_name_that_cannot_be_is_refused_plainly(shared, words, behind, new, why):
    uri = shared.open("refuse.koi", RULES)
    with pytest.raises(JsonRpcException, match=why):
        shared.ask("rename", uri, position=at(RULES, words, behind), new_name=new)


def test_a_name_is_not_changed_while_a_statement_cannot_be_read(shared):
    text = RULES + "fault more if small and\n"
    uri = shared.open("unread.koi", text)
    with pytest.raises(JsonRpcException, match="Mend line 22 first"):
        shared.ask("rename", uri, position=at(text, "term small", 6), new_name="tiny")


def test_a_name_is_changed_in_the_files_that_are_based_on_this_one(editors, tmp_path):
    own = 'standard "ours" edition 1\n  based on "base.koi" edition 2026-1\nfault more "more" if small: no better than sell\n'
    (tmp_path / "base.koi").write_text(RULES, encoding="utf-8")
    (tmp_path / "own.koi").write_text(own, encoding="utf-8")
    (tmp_path / "other.koi").write_text(RULES, encoding="utf-8")
    editor = editors(tmp_path)
    uri = editor.open("base.koi", RULES)
    edits = edits_of(editor.ask("rename", uri, position=at(RULES, "term small", 6), new_name="tiny"))
    assert set(edits) == {uri, editor.uri("own.koi")}
    assert applied(own, edits[editor.uri("own.koi")]) == own.replace("small", "tiny")
    sealed = own.replace("edition 2026-1", f"edition 2026-1 seal 1-{'0' * 64}")
    opened = editor.open("own.koi", sealed)
    editor.problems(opened)
    with pytest.raises(JsonRpcException, match="sealed"):
        editor.ask("rename", uri, position=at(RULES, "term small", 6), new_name="tiny")
