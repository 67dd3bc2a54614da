"""What can be a name: letters of one script, digits and _."""

from __future__ import annotations

import unicodedata

_ONE_SCRIPT = {"CJK": "Japanese", "HIRAGANA": "Japanese", "KATAKANA": "Japanese", "LATIN": "Latin"}
_TOGETHER = frozenset({"Japanese", "Latin"})


def scripts_of(word: str) -> tuple[str, ...]:
    """The scripts that a word mixes, empty where it may: kanji, kana and Latin letters count as one."""
    found: list[str] = []
    for letter in word:
        if not letter.isalpha():
            continue
        first = unicodedata.name(letter, "UNKNOWN").split()[0]
        script = _ONE_SCRIPT.get(first, first.capitalize())
        if script == "Katakana-hiragana":
            script = "Japanese"
        if script not in found:
            found.append(script)
    if len(found) < 2 or set(found) <= _TOGETHER:
        return ()
    return tuple(found)
