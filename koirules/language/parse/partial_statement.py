"""The statement that somebody is writing: its words up to a place, and what the grammar takes there."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from copy import copy
from typing import Any

from attrs import evolve
from lark import Token
from lark.exceptions import UnexpectedInput
from lark.lexer import LexerThread
from lark.parsers.lalr_interactive_parser import InteractiveParser
from lark.parsers.lalr_parser_state import ParserState

from koirules.language.diagnose.hint_words import PUNCTUATION, written
from koirules.language.parse.cleaning import clean, inside
from koirules.language.parse.reader import begins_statement
from koirules.language.parse.tables import grammar
from koirules.values import frozen
from koirules.vocabulary.words import HEAD_WORDS

_MOST_LINES = 400
"""A statement is looked for no further up than this."""

_MOST_PHRASE = 5
_WORD = re.compile(r"[A-Z]+\Z")
_NO_WORDS = frozenset({"NAME", "DIGITS", "STRING", "UNIT", "DATE", *PUNCTUATION})
_LAST_WORD = re.compile(r"[^\W\d]\w*\Z")
_HEAD = re.compile(r"\s*([^\W\d]\w*)")


@frozen
class Written:
    """A word or sign of a statement: the grammar's name of it (`NAME`, `AT`, `LPAR`), and the word itself."""

    name: str
    text: str


@frozen
class SoFar:
    """A statement up to a place.

    words: what stands before it, without `part`. part: the beginning of a word that stands right before the place; inside
    a text in quotes, all of the text before it. takes: the grammar's names of all that could stand there; None where the
    words before cannot be read. phrases: those of them that are words of the language, each with the words that must
    follow it. within: `text` or `remark` where the place lies in one, else "".
    """

    words: tuple[Written, ...]
    part: str
    takes: frozenset[str] | None
    phrases: tuple[str, ...]
    within: str = ""

    @property
    def is_fresh(self) -> bool:
        """Whether a statement begins here."""
        return not self.words and not self.within


_OF_TWO_WORDS = {"ANYTHING_ELSE": "anything else", "_MEDIAN_OF": "median of", "BOUND": "at least"}
"""The words of the grammar that are two."""


def so_far(lines: Sequence[str], line: int, column: int) -> SoFar:
    """The statement at a place of a text in lines. line and column count from 1; the place is before that character."""
    before = lines[line - 1][: column - 1]
    within, ends = inside(before)
    if within == "remark":
        return SoFar((), "", None, (), within)
    begin = _first_line(lines, line)
    text = "\n".join(_plain([*lines[begin : line - 1], before[:ends]]))
    found = _LAST_WORD.search(text)
    part = before[ends + 1 :] if within else found.group() if found else ""
    if not within:
        text = text[: len(text) - len(part)]
        at_edge = not text.rpartition("\n")[2]
        if not text.strip() or (at_edge and (part or not lines[line - 1].strip())):
            return SoFar((), part, None, ())
    return evolve(_read_on(text), part=part, within=within)


def _plain(lines: Sequence[str]) -> tuple[str, ...]:
    return clean("\n".join(lines), "").lines


def _first_line(lines: Sequence[str], line: int) -> int:
    """How many lines stand before the statement that goes on to a line."""
    for number in range(line - 1, max(-1, line - 1 - _MOST_LINES), -1):
        if not lines[number].strip():
            continue
        before, here = _plain(["" if number == 0 else lines[number - 1], lines[number]])
        if begins_statement(here, before):
            return number
    return line - 1


def _read_on(text: str) -> SoFar:
    reading = grammar().parse_interactive(text)
    conf = copy(reading.parser_state.parse_conf)
    conf.callbacks = {}  # nothing is built from a statement that is not whole
    state = ParserState(conf, LexerThread.from_text(reading.lexer_thread.lexer, text))
    words: list[Written] = []
    try:
        for token in state.lexer.lex(state):  # type: ignore[no-untyped-call]
            state.feed_token(token)
            words.append(Written(token.type, str(token)))
    except UnexpectedInput:
        return SoFar(tuple(words), "", None, ())
    parser = InteractiveParser(reading.parser, state, state.lexer)
    takes = frozenset(parser.accepts())  # type: ignore[no-untyped-call]
    return SoFar(tuple(words), "", takes, tuple(_phrases(parser, takes)))


def _phrases(parser: Any, takes: frozenset[str]) -> Iterator[str]:
    for name in sorted(takes):
        if name in _OF_TWO_WORDS:
            yield _OF_TWO_WORDS[name]
        elif _WORD.match(name) and name not in _NO_WORDS and not name.startswith("EDITION"):
            yield from _continued(parser, name, written(name), _MOST_PHRASE)


def _continued(parser: Any, name: str, phrase: str, most: int) -> Iterator[str]:
    """A word with the words of the language that must follow, one phrase for each way it can go on."""
    after = parser.copy(deepcopy_values=False)
    after.feed_token(Token(name, phrase.rpartition(" ")[2]))
    takes = frozenset(after.accepts())
    if most > 1 and takes and all(_WORD.match(each) and each not in _NO_WORDS for each in takes):
        for each in sorted(takes):
            yield from _continued(after, each, f"{phrase} {written(each)}", most - 1)
    else:
        yield phrase


def head_of_line(line: str) -> str:
    """The head word that a line begins with, "" where it begins with none."""
    found = _HEAD.match(line)
    return found.group(1) if found and found.group(1) in HEAD_WORDS else ""
