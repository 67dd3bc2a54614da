"""A Pygments lexer for rule files: for documents, web pages and terminals."""

from __future__ import annotations

import re
from typing import Any, ClassVar

from pygments.lexer import RegexLexer, bygroups
from pygments.token import Token, Whitespace, string_to_tokentype

from koirules_editor.highlighting import CLASSES, FILLED, RULES


def _token(kind: str | None) -> Any:
    return Whitespace if kind is None else string_to_tokentype(f"Token.{CLASSES[kind][0]}")


def _rule(pattern: str, kinds: tuple[str | None, ...]) -> tuple[str, Any]:
    if re.compile(pattern).groups == 0:
        return pattern, _token(kinds[0])
    return pattern, bygroups(*map(_token, kinds))


class KoiLexer(RegexLexer):
    """Rule files of koirules."""

    name = "Koirules"
    aliases: ClassVar[list[str]] = ["koirules", "koi"]
    filenames: ClassVar[list[str]] = ["*.koi"]
    flags = re.MULTILINE
    tokens: ClassVar[dict[str, Any]] = {
        "root": [
            (r"[^\S\n]+", Whitespace),
            (r"\n", Whitespace),
            (r'"(?=[^"\n]*")', _token("text"), "text"),
            *(_rule(pattern, kinds) for pattern, kinds in RULES),
            (".", Token.Error),
        ],
        "text": [
            (FILLED, _token("filled")),
            (r'[^"{\n]+', _token("text")),
            (r'"', _token("text"), "#pop"),
            (r"\{", _token("text")),
            (r"\n", Whitespace, "#pop"),
        ],
    }
