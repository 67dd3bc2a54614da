"""The parser of one statement, from tables that were made before where they fit.

Building the tables of the grammar takes longer than all else that a command does before it reads. They are made when the
wheel is built (`build_tables.py`), or else once for a user, and kept in the cache folder. They are used only for the version of
Lark and the text of the grammar that they were made from; otherwise they are built.

Tables are what `Lark.save` gives: dictionaries, lists, texts and numbers. They are written by `marshal`, and a value of any
other type is refused before it is written; so reading them runs no code, as `Lark.load` of a pickle might.

This module needs nothing but Lark and attrs, so that the build of the wheel can use it.
"""

from __future__ import annotations

import io
import marshal
import pickle
import re
from functools import cache
from hashlib import sha256
from pathlib import Path

import lark
from lark import Lark
from lark import lexer as lark_lexer
from lark.lexer import PatternRE, PatternStr, TerminalDef

from koirules.meaning.aggregates import FIGURES
from koirules.meaning.expressions import Comparison
from koirules.vocabulary.units import unit_words

TABLES = Path(__file__).with_name("grammar.tables")
"""Where the tables are in an installed wheel."""

_GRAMMAR = Path(__file__).with_name("grammar.lark")
_FORM = "1"
"""The form of the tables; it rises with each change of how they are made."""

_KIND = "grammar"


def grammar() -> Lark:
    """The parser of one statement, with the units that are known now."""
    return _grammar(unit_words())


@cache
def _grammar(units: tuple[str, ...]) -> Lark:
    text = grammar_text(units)
    name = _digest(text)
    made = _unpacked(name, _shipped()) or _unpacked(name, _kept(name))
    if made is not None:
        return made
    built = _built(text)
    _keep(name, _packed(name, built))
    return built


def grammar_text(units: tuple[str, ...] | None = None) -> str:
    """The grammar, with what stands in tables filled in: units (those known now), comparisons and figures of a batch."""
    text = _GRAMMAR.read_text(encoding="utf-8")
    text = text.replace("(?:UNITS)", f"(?:{'|'.join(unit_words() if units is None else units)})")
    text = text.replace("tail: COMPARISONS", "tail: " + " | ".join(one.alternative for one in Comparison))
    return text.replace("!figure: FIGURES", f"!figure: {FIGURES}")


def words_of_grammar() -> frozenset[str]:
    """Every word that stands in the grammar, without reading it: more than a few are none of the language."""
    return frozenset(re.findall(r"[a-z]+", " ".join(re.findall(r"\"[^\"]*\"|/[^/\n]*/", grammar_text(())))))


def packed_tables() -> bytes:
    """The tables of the grammar, for the wheel."""
    text = grammar_text()
    return _packed(_digest(text), _built(text))


def _digest(grammar: str) -> str:
    return sha256(f"{_FORM}\n{lark.__version__}\n{grammar}".encode()).hexdigest()


def _built(grammar: str) -> Lark:
    # Where interegular is installed, Lark compares all terminals with each other, and only to log what it finds.
    before = lark_lexer.has_interegular
    lark_lexer.has_interegular = False
    try:
        return Lark(
            grammar, parser="lalr", propagate_positions=True, maybe_placeholders=True, edit_terminals=end_at_word
        )
    finally:
        lark_lexer.has_interegular = before


def end_at_word(terminal: TerminalDef) -> None:
    """Let a terminal that is a word end where the word ends.

    Without this, `termx means a isb` would be read as `term x means a is b`: a lexer that takes only what fits the state does
    not look at the letter behind a word.
    """
    pattern = terminal.pattern
    if isinstance(pattern, PatternStr) and pattern.value.isalpha():
        terminal.pattern = PatternRE(re.escape(pattern.value) + r"(?!\w)", pattern.flags)
        terminal.priority = 1


def _packed(name: str, parser: Lark) -> bytes:
    saved = io.BytesIO()
    parser.save(saved, exclude_options={"edit_terminals"})  # it has done its work
    data = pickle.loads(saved.getvalue())  # noqa: S301 - written one line above
    _check(data)
    return name.encode() + marshal.dumps(data)


def _check(data: object) -> None:
    match data:
        case dict():
            for key, value in data.items():
                _check(key)
                _check(value)
        case list() | tuple() | set() | frozenset():
            for value in data:
                _check(value)
        case str() | int() | float() | None:
            pass
        case _:
            raise TypeError(f"the tables of the grammar hold a {type(data).__name__}")


def _unpacked(name: str, packed: bytes | None) -> Lark | None:
    """The parser of tables, None where they are of another grammar, of another Lark, or damaged."""
    if packed is None or not packed.startswith(name.encode()):
        return None
    try:
        data = marshal.loads(packed[len(name) :])  # noqa: S302 - it holds data alone, from the wheel or the user's own folder
        made: Lark = Lark.load(data)
    except (EOFError, ValueError, TypeError, KeyError, AttributeError, AssertionError):
        return None
    return made


def _shipped() -> bytes | None:
    try:
        return TABLES.read_bytes()
    except OSError:
        return None


def _kept(name: str) -> bytes | None:
    from koirules.cache import read_kept

    return read_kept(_KIND, name)


def _keep(name: str, packed: bytes) -> None:
    from koirules.cache import keep

    keep(_KIND, name, packed)
