"""The words of the language, as its grammar has them."""

from __future__ import annotations

import re
from functools import cache

from koirules.language.parse.tables import grammar


@cache
def language_words() -> frozenset[str]:
    """Every word that the grammar knows, but for the units."""
    words: set[str] = set()
    for terminal in grammar().terminals:
        pattern = terminal.pattern.value.removesuffix(r"(?!\w)")
        if pattern.isalpha():
            words.add(pattern)
        elif terminal.name in {"ANYTHING_ELSE", "_MEDIAN_OF"}:
            words.update(re.findall("[a-z]{3,}", pattern))
    return frozenset(words)
