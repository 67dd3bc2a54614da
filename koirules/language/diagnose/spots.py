"""Where a statement could not be read on: what stands there, what could, and how far a small change would let us read."""

from __future__ import annotations

import re
from copy import copy
from typing import Any

from attrs import evolve
from lark import Token
from lark.exceptions import UnexpectedInput, UnexpectedToken
from lark.lexer import LexerThread
from lark.parsers.lalr_interactive_parser import InteractiveParser
from lark.parsers.lalr_parser_state import ParserState

from koirules.language.diagnose.hint_words import terminal
from koirules.language.parse.builder import Builder
from koirules.problems import Place, Problem
from koirules.values import frozen
from koirules.vocabulary.words import NOT_STEPS

TOKEN = re.compile(r'"[^"\n]*"|[^\W\d]\w*|[0-9][\w.]*|°[CF]?|<=|>=|==|!=|<>|=>|=<|->|&&|\|\||//|\S')
WHOLE = 1_000
"""How far a change reaches that lets us read the statement to its end."""

_NO_NAMES = (NOT_STEPS | {"if", "and", "or", "is", "at", "than"}) - {"yes", "no"}
_LOOK_AHEAD = 400
_MOST_TOKENS = 40


@frozen
class Spot:
    """The word at the error with its place, the words before it, and the names of the grammar that could stand there.

    accepts: all that could stand there. likely: what could, once what the wrong word closes is closed; for telling.
    """

    text: str
    at: int
    word: str
    before: tuple[str, ...]
    place: Place
    before_place: Place
    accepts: frozenset[str]
    likely: frozenset[str]
    parser: Any
    builder: Builder

    @property
    def last(self) -> str:
        """The word just before the error."""
        return self.before[-1] if self.before else ""

    def word_before(self, back: int) -> str:
        """A word before the error: 1 is the one just before."""
        return self.before[-back] if len(self.before) >= back else ""

    def takes(self, words: str) -> bool:
        """Whether the first of the given words could stand here."""
        return terminal(words.split(maxsplit=1)[0]) in self.accepts

    def following(self) -> list[str]:
        """The words after the one at the error, a few."""
        return TOKEN.findall(self.text[self.at + len(self.word) : self.at + _LOOK_AHEAD])

    def step_back(self) -> Spot:
        """The spot of the word just before this one."""
        at = max(0, self.text.rfind(self.last, 0, self.at))
        return _spot_at(at, self.text, self.builder, self.parser, None)

    def span(self, start: int, end: int) -> Place:
        """The place of a stretch of the statement's text."""
        return place_of(self.text, start, end, self.builder)

    def spaced(self, problem: Problem) -> Problem:
        """The problem, its edit parted by spaces from letters that stand close to it."""
        edit = problem.edit
        if edit is None or not edit.text.strip():
            return problem
        lines = self.text.split("\n")
        first, last = edit.place.line - 1 - self.builder.offset, edit.place.end_line - 1 - self.builder.offset
        before, behind = lines[first][: edit.place.column - 1][-1:], lines[last][edit.place.end_column - 1 :][:1]
        left = " " if _is_letter(before) and _is_letter(edit.text[0]) else ""
        right = " " if _is_letter(behind) and _is_letter(edit.text[-1]) else ""
        return evolve(problem, edit=evolve(edit, text=f"{left}{edit.text}{right}")) if left or right else problem

    def reach(self, *put: str, drop: bool = False) -> int:
        """How many words could be read with some terminals put in here, and the word here dropped or kept."""
        if self.parser is None:
            return 0
        state = self.parser.parser_state.copy(deepcopy_values=False)
        rest = self.text[self.at + (len(self.word) if drop else 0) :]
        whole = len(rest) <= _LOOK_AHEAD
        thread = LexerThread.from_text(self.parser.lexer_thread.lexer, rest[:_LOOK_AHEAD])
        read = 0
        try:
            for name in put:
                state.feed_token(Token(name, name.lower()))
            for token in thread.lex(state):  # type: ignore[no-untyped-call]
                if token.type == "NAME" and token.value in _NO_NAMES:
                    return read  # a word of the language where a name must stand
                state.feed_token(token)
                read += 1
                if read == _MOST_TOKENS:
                    return read
            if whole:
                state.feed_token(Token("$END", ""), True)
                return WHOLE
        except UnexpectedInput:
            pass
        return read


def spot_of(error: UnexpectedInput, text: str, builder: Builder) -> Spot:
    """The spot of an error of the parser."""
    at = error.pos_in_stream
    if at is None or (isinstance(error, UnexpectedToken) and error.token.type == "$END"):
        at = len(text)
    failed: Any = getattr(error, "interactive_parser", None)
    return _spot_at(at, text, builder, failed, failed)


def _spot_at(at: int, text: str, builder: Builder, parser: Any, failed: Any) -> Spot:
    tokens = [found for found in TOKEN.finditer(text) if found.end() <= at]
    here = TOKEN.match(text, at)
    before = None if parser is None else _parser_before(parser, text[:at])
    accepts = frozenset() if before is None else frozenset(before.accepts())  # type: ignore[no-untyped-call]
    word = here.group() if here else ""
    place = place_of(text, at, at + len(word), builder)
    return Spot(
        text=text,
        at=at,
        word=word,
        before=tuple(found.group() for found in tokens[-4:]),
        place=place,
        before_place=place_of(text, tokens[-1].start(), tokens[-1].end(), builder) if tokens else place,
        accepts=accepts,
        likely=accepts if failed is None else frozenset(failed.accepts()),
        parser=before,
        builder=builder,
    )


def _parser_before(failed: InteractiveParser, text: str) -> InteractiveParser:
    # The parser of the error has already closed what the wrong word would have closed, and no longer knows what else
    # could have stood there; so the text before the error is read again.
    conf = copy(failed.parser_state.parse_conf)
    conf.callbacks = {}
    thread = LexerThread.from_text(failed.lexer_thread.lexer, text)
    state = ParserState(conf, thread)
    try:
        for token in thread.lex(state):  # type: ignore[no-untyped-call]
            state.feed_token(token)
    except UnexpectedInput:
        return failed
    return InteractiveParser(failed.parser, state, thread)


def _is_letter(sign: str) -> bool:
    return sign.isalnum() or sign == "_"


def place_of(text: str, start: int, end: int, builder: Builder) -> Place:
    """The place in the file of a stretch of a statement's text."""
    line = text.count("\n", 0, start)
    column = start - (text.rfind("\n", 0, start) + 1) + 1
    last = text.count("\n", 0, end)
    last_column = end - (text.rfind("\n", 0, end) + 1) + 1
    return Place(builder.file, line + 1 + builder.offset, column, last + 1 + builder.offset, last_column)
