"""What is asked about a page as a whole."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest
from lsprotocol import types as lsp
from pygls.exceptions import JsonRpcException
from speaking import RULES, applied, at, edits_of, end_of, words_at

import koirules


def test_it_is_laid_out_as_tidy_lays_it_out(shared):
    text = RULES.replace(", whole no", ",whole   no").replace("\n\nsection", "\n\n\n\nsection").rstrip("\n")
    uri = shared.open("tidy.koi", text)
    edits = shared.ask("formatting", uri, options=lsp.FormattingOptions(tab_size=2, insert_spaces=True))
    assert applied(text, edits) == koirules.tidy(text)
    tidied = koirules.tidy(text)
    shared.type(uri, tidied)
    assert not shared.ask("formatting", uri, options=lsp.FormattingOptions(tab_size=2, insert_spaces=True))
    shared.type(uri, text.replace("spine is", "spin is"))
    with pytest.raises(JsonRpcException, match="Mend the problems first"):
        shared.ask("formatting", uri, options=lsp.FormattingOptions(tab_size=2, insert_spaces=True))


def test_the_outline_has_every_statement_criteria_in_their_section(shared):
    uri = shared.open("outline.koi", RULES)
    found = shared.ask("document_symbol", uri)
    assert [each.name for each in found] == [
        "Lantern Bay, an invented house",
        *("smallest", "whole", "small", "bent", "short", "body", "keep", "sell", "cull", "a short one"),
    ]
    (body,) = [each for each in found if each.name == "body"]
    assert [each.name for each in body.children] == ["outline", "lips"]
    assert words_at(RULES, body.selection_range) == "body"
    assert body.range.end.line == body.children[-1].range.end.line


def test_an_editor_without_trees_gets_the_outline_flat(editors, tmp_path):
    editor = editors(tmp_path, lsp.ClientCapabilities())
    assert editor.server.capabilities.position_encoding == lsp.PositionEncodingKind.Utf16
    uri = editor.open("flat.koi", RULES)
    found = editor.ask("document_symbol", uri)
    assert [each.container_name for each in found if each.name in {"outline", "lips"}] == ["body", "body"]
    change = editor.ask("rename", uri, position=at(RULES, "term small", 6), new_name="tiny")
    assert applied(RULES, change.changes[uri]).count("tiny") == 2


def test_statements_sections_and_remarks_can_be_folded(shared):
    text = "# one\n# two\n" + RULES
    found = shared.ask("folding_range", shared.open("folds.koi", text))
    assert (0, 1, lsp.FoldingRangeKind.Comment) in {(f.start_line, f.end_line, f.kind) for f in found}
    section, sample = at(text, "section body").line, at(text, "sample").line
    assert {(section, section + 2), (sample, sample + 2)} <= {(f.start_line, f.end_line) for f in found}


def test_a_mend_is_offered_at_once_where_nothing_was_typed_since(shared):
    text = RULES.replace("spine is", "spin is")
    uri = shared.open("at_once.koi", text)
    shared.problems(uri)
    for typed in ("# above\n" + text, text + "# below\n"):
        shared.type(uri, typed)
        everywhere = lsp.Range(lsp.Position(0, 0), end_of(typed))
        (mend,) = shared.ask("code_action", uri, range=everywhere, context=lsp.CodeActionContext([]))
        (edits,) = edits_of(mend.edit).values()
        assert applied(typed, edits) == typed.replace("spin is", "spine is")
        (about,) = mend.diagnostics
        assert words_at(typed, about.range) == "spin"


def test_a_mend_is_offered_where_it_can_be_made(shared):
    text = RULES.replace("spine is", "spin is").replace("at least 35", "≥ 35") + "grade sell otherwise\n"
    uri = shared.open("mend.koi", text)
    told = shared.problems(uri)
    everywhere = lsp.Range(lsp.Position(0, 0), end_of(text))

    def actions(within, only=None):
        return shared.ask("code_action", uri, range=within, context=lsp.CodeActionContext(told, only=only))

    spot = at(text, "spin is", 1)
    (mend,) = actions(lsp.Range(spot, spot))[:1]
    assert mend.kind == lsp.CodeActionKind.QuickFix
    assert mend.is_preferred
    assert [each.code for each in mend.diagnostics] == ["unknown-name"]
    (edits,) = edits_of(mend.edit).values()
    assert applied(text, edits) == text.replace("spin is", "spine is")
    quick = [each for each in actions(everywhere) if each.kind == lsp.CodeActionKind.QuickFix]
    assert 2 <= len(quick) < len(told), "a problem whose mend is a matter of choice is not mended"
    (every,) = actions(everywhere, [lsp.CodeActionKind.SourceFixAll])
    (edits,) = edits_of(every.edit).values()
    assert applied(text, edits) == text.replace("spin is", "spine is").replace("≥ 35", "at least 35")
    blank = lsp.Range(lsp.Position(1, 0), lsp.Position(1, 0))
    assert not [each for each in actions(blank) if each.kind == lsp.CodeActionKind.QuickFix]


def test_an_ordinary_refusal_is_one_line_of_the_log():
    text = "standard"  # a page that cannot be laid out
    hello = {"jsonrpc": "2.0", "id": 0, "method": "initialize", "params": {"capabilities": {}}}
    item = {"uri": "file:///a.koi", "languageId": "koirules", "version": 1, "text": text}
    messages = [hello, {"jsonrpc": "2.0", "method": "textDocument/didOpen", "params": {"textDocument": item}}]
    asked = {"textDocument": {"uri": "file:///a.koi"}, "options": {"tabSize": 2, "insertSpaces": True}}
    messages += [
        {"jsonrpc": "2.0", "id": number, "method": "textDocument/formatting", "params": asked} for number in (1, 2, 3)
    ]
    sent = b""
    for message in messages:
        body = json.dumps(message).encode()
        sent += b"Content-Length: %d\r\n\r\n%s" % (len(body), body)
    with subprocess.Popen(
        [sys.executable, "-m", "koirules_editor"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    ) as server:
        assert server.stdin and server.stdout and server.stderr
        server.stdin.write(sent)
        server.stdin.flush()
        answers = b""
        while answers.count(b"Mend the problems first") < 3:
            answers += server.stdout.read1()
        server.stdin.close()
        logged = server.stderr.read().decode()
    assert logged.count("Refused: Mend the problems first: then it can be laid out.") == 3
    assert "Traceback" not in logged
