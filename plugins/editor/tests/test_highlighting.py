"""Both highlighters know the words of the grammar, read every rule set, and agree about each character of it."""

from __future__ import annotations

import json
import re

import onigurumacffi
import pytest
from hypothesis import given
from hypothesis import strategies as some
from koirules_editor.highlighting import CLASSES, CONSTANTS, HEADS, ONLY, OPERATORS, UNITS, WORDS
from koirules_editor.pygments_lexer import KoiLexer
from koirules_editor.textmate import FILE, written
from pygments.lexers import get_lexer_by_name, get_lexer_for_filename
from pygments.token import Token, Whitespace, string_to_tokentype

from koirules.editing import language_words
from koirules.testing import registry_with
from koirules.vocabulary.units import OWN_UNITS

RULESETS = registry_with().rulesets
TEXTS = {name: path.read_text(encoding="utf-8") for name, path in RULESETS.items()}
TEXTS["tricky"] = """standard "a {b}" edition 2026-1 variety kohaku stage tosai valid from 2026-01-01
grade keep "best" if score at least 75 and weight above 1.5 kg # keep those
fault stage "s" if number is 3: no better than keep
points weight "w" weight 2 by weight: .5 kg gives 0, 2kg gives 10, 3 % gives 1
round keep keep those with grade is keep pick 12 by highest score, then lowest weight no more than keep with label is "x"
trait label as label
trait t as number in cm from 0 to 90
drop fault odome
replace section body "body" worth 30
sample "錦" with hi_on_fins none, whole no, count 3
  shows no fault
  leaves in round first
  kept in round first
  section body from 1 to 2
  shows lift quality
say "{length}, {unclosed" 鯉_name
"""
GRAMMAR = json.loads(FILE.read_text(encoding="utf-8"))
TOKENS = {string_to_tokentype(f"Token.{token}"): kind for kind, (token, _) in CLASSES.items()}
SCOPES = {f"{scope}.koirules": kind for kind, (_, scope) in CLASSES.items()}


def test_both_know_every_word_of_the_grammar_and_no_other():
    known = {*HEADS, *OPERATORS, *WORDS, *ONLY, *CONSTANTS} - {"none"}  # none is a step, the empty set of places
    assert known == language_words()
    assert {*UNITS, "%"} == set(OWN_UNITS)


def test_the_textmate_grammar_is_the_one_that_the_rules_make():
    assert FILE.read_text(encoding="utf-8") == written()


def patterns(part):
    for key, value in part.items():
        if key in {"match", "begin", "end"}:
            yield value
        elif key == "patterns":
            for each in value:
                yield from patterns(each)


@pytest.mark.parametrize("pattern", [*patterns(GRAMMAR)])
def test_every_expression_is_one_for_oniguruma_and_for_python(pattern):
    assert onigurumacffi.compile(pattern).number_of_captures() == re.compile(pattern).groups


def by_pygments(text: str) -> list[str | None]:
    """What each character of a text is, by the lexer."""
    found: list[str | None] = []
    for token, value in KoiLexer(stripnl=False, ensurenl=False).get_tokens(text):
        assert token is not Token.Error, value
        kind = None if token is Whitespace else TOKENS[token]
        found += [None if letter.isspace() and kind != "text" else kind for letter in value]
    return found


def by_textmate(text: str) -> list[str | None]:
    """What each character of a text is, by the grammar: the first rule that fits furthest left, line by line."""
    string, *rules = GRAMMAR["patterns"]
    ready = [(onigurumacffi.compile(rule["match"]), rule) for rule in rules]
    begin, end = onigurumacffi.compile(string["begin"]), onigurumacffi.compile(string["end"])
    filled = onigurumacffi.compile(string["patterns"][0]["match"])
    found: list[str | None] = []
    for line in text.split("\n"):
        kinds: list[str | None] = [None] * len(line)
        at = 0
        while at < len(line):
            matches = [
                (match.start(), order) for order, (each, _) in enumerate(ready) if (match := each.search(line, at))
            ]
            opens = begin.search(line, at)
            if opens and all(opens.start() <= start for start, _ in matches):
                close = end.search(line, opens.end()).end()
                kinds[opens.start() : close] = ["text"] * (close - opens.start())
                inside = filled.search(line, opens.end())
                while inside and inside.end() < close:
                    kinds[inside.start() : inside.end()] = ["filled"] * (inside.end() - inside.start())
                    inside = filled.search(line, inside.end())
                at = close
            elif matches:
                each, rule = ready[min(matches)[1]]
                match = each.search(line, at)
                spans = (
                    {0: rule["name"]}
                    if "name" in rule
                    else {int(group): capture["name"] for group, capture in rule["captures"].items()}
                )
                for group, scope in spans.items():
                    first, last = match.span(group)
                    if first >= 0:
                        kinds[first:last] = [SCOPES[scope]] * (last - first)
                at = match.end()
            else:
                break
        found += [
            kind if not letter.isspace() or kind == "text" else None for kind, letter in zip(kinds, line, strict=True)
        ]
        found.append(None)
    return found[:-1]


@pytest.mark.parametrize("name", TEXTS)
def test_every_rule_set_is_read_and_both_agree_about_each_character(name):
    text = TEXTS[name].removesuffix("\n")
    ours, theirs = by_pygments(text), by_textmate(text)
    remarks = [kind if kind != "remark" else None for kind in ours]
    for at, (one, other) in enumerate(zip(remarks, theirs, strict=True)):
        assert one == (other if other != "remark" else None), text[max(0, at - 30) : at + 30]
    nameless = [letter for letter, kind in zip(text, ours, strict=True) if kind is None and not letter.isspace()]
    assert not nameless


@pytest.mark.parametrize(
    ("words", "nth", "kind"),
    [
        ("keep", 0, "given"),
        ("keep those with", 0, "word"),
        ("than keep", 0, "word"),
        ("keep:", 0, None),
        ("weight above", 0, "name"),
        ("weight 2", 0, "word"),
        ("weight:", 0, "name"),
        ("label is", 0, "name"),
        ("label as", 0, "given"),
        ("number is", 0, "name"),
        ("number in", 0, "word"),
        ("cm from", 0, "unit"),
        ("kg gives 10", 0, "unit"),
        ("2026-01-01", 0, "label"),
        ("no better", 0, "word"),
        ("no, count", 0, "constant"),
        ("none", 0, "constant"),
        ("length}", 0, "filled"),
        ("{unclosed", 0, "text"),
        ("鯉", 0, "name"),
        ("odome", 0, "given"),
        ("first", 0, "name"),
    ],
)
def test_a_word_is_what_the_language_reads_there(words, nth, kind):
    text = TEXTS["tricky"].removesuffix("\n")
    if kind is not None:
        assert by_pygments(text)[[f.start() for f in re.finditer(re.escape(words), text)][nth]] == kind


BITS = [*'"{}#\n \t3.%<=():,;é錦\x0c\u2028', "if ", "grade ", "fault keep ", "weight", "kg"]


@given(text=some.lists(some.sampled_from(BITS), max_size=60).map("".join))
def test_no_text_is_lost(text):
    tokens = list(KoiLexer(stripnl=False, ensurenl=False).get_tokens(text))
    assert "".join(value for _, value in tokens) == text.replace("\r\n", "\n").replace("\r", "\n")


def test_pygments_finds_it():
    assert isinstance(get_lexer_by_name("koirules"), KoiLexer)
    assert isinstance(get_lexer_for_filename("standard.koi"), KoiLexer)
