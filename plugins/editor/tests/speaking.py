"""A rule file to ask about, and how places and changes of the protocol are those of a text."""

from __future__ import annotations

import re

from lsprotocol import types as lsp

RULES = """standard "Lantern Bay, an invented house" edition 2026-1 variety kohaku

setting smallest = 8 cm from 6 cm to 12 cm "shortest that is kept"
trait whole "whole at the bench" as yes or no, more is better
term small "small" means length below smallest

fault bent "bent" if spine is bent: no better than cull
fault short "short" if small and not (whole is yes): no better than sell
  say "{length}, below {smallest}"

section body "body" worth 100
points outline "outline" weight 2 by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
bonus lips "red lips" 2 if kuchibeni is yes

grade keep "keep" if score at least 75 and section body at least 40
grade sell "sell" if score at least 35
grade cull "cull" otherwise

sample "a short one" with length 6 cm, whole no, spine straight
  comes out sell
  shows fault short
"""


def at(text: str, words: str, behind: int = 0, nth: int = 0) -> lsp.Position:
    """The position of some words of a text, or so many characters behind their beginning."""
    begin = [found.start() for found in re.finditer(re.escape(words), text)][nth] + behind
    return lsp.Position(text.count("\n", 0, begin), begin - (text.rfind("\n", 0, begin) + 1))


def end_of(text: str) -> lsp.Position:
    return lsp.Position(text.count("\n"), len(text) - (text.rfind("\n") + 1))


def words_at(text: str, found: lsp.Range) -> str:
    lines = text.split("\n")
    assert found.start.line == found.end.line
    return lines[found.start.line][found.start.character : found.end.character]


def labels(found) -> set[str]:
    return {item.label for item in found.items}


def applied(text: str, edits) -> str:
    """A text with the changes of the protocol made, none of which touches another."""
    lines = text.split("\n")
    starts = [0]
    for line in lines:
        starts.append(starts[-1] + len(line) + 1)

    def offset(position: lsp.Position) -> int:
        return min(starts[position.line] + position.character, len(text)) if position.line < len(lines) else len(text)

    for edit in sorted(edits, key=lambda each: offset(each.range.start), reverse=True):
        text = text[: offset(edit.range.start)] + edit.new_text + text[offset(edit.range.end) :]
    return text


def edits_of(change: lsp.WorkspaceEdit) -> dict[str, list[lsp.TextEdit]]:
    return {each.text_document.uri: list(each.edits) for each in change.document_changes}
