"""The words that the rule language keeps for itself, and what a name may look like."""

from __future__ import annotations

from unicodedata import category, name, normalize

from koirules.meaning.aggregates import AGGREGATES
from koirules.meaning.expressions import BY_WORDS, FORMS, Comparison


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


HEAD_WORDS = _words(
    "standard setting trait term section points bonus penalty fault lift grade round alert silence carry panel phrase sample "
    "replace drop rename"
)
"""The words that begin a statement of a rule file."""

OPERATOR_WORDS = _words("if otherwise batch yes no") | {
    word
    for phrase in (*BY_WORDS, *FORMS, *(joint for one in Comparison for joint in one.value.joints or ()))
    for word in phrase.split()
    if word.isalpha()
}
"""The words that put an expression together, each word of a phrase by itself."""

FIGURE_WORDS = tuple(AGGREGATES)
"""The names of the figures of a batch, which are words only behind `batch`."""

LATER_OPERATOR_WORDS = _words("within median")
"""Those of them that came after the first edition of the language: earlier files may use them as names, so they stay free."""

LATER_HEAD_WORDS = _words("silence carry panel phrase rename")
"""Head words that came after the first edition of the language: earlier files may use them as names, so they stay free."""

RESERVED = (HEAD_WORDS - LATER_HEAD_WORDS) | (OPERATOR_WORDS - LATER_OPERATOR_WORDS)
"""The words that cannot name a statement."""

NOT_TRAITS = RESERVED | {"none", "fish"}
"""The words that cannot name a trait: `none` would be read as the empty set of places, `fish` as the name of a fish."""

NOT_STEPS = _words(
    "not lesser greater count score grade section fault batch earlier one recorded within otherwise yes no"
)
"""The words that cannot be a step or an option: a value begins or goes on with them, or they belong to yes-or-no."""

NOT_PLACES = NOT_STEPS | {"none"}
"""The words that cannot be a place: `none` is the empty set of places."""

_ONE_SCRIPT = frozenset({"LATIN", "CJK", "HIRAGANA", "KATAKANA", "KATAKANA-HIRAGANA", "IDEOGRAPHIC"})
"""How Unicode names begin for letters that count as one script, because names of this trade mix them."""


def is_name(text: str) -> bool:
    """Whether a text can be a name: letters, digits and `_`, a letter first, one script, NFC."""
    if not text or not text[0].isalpha() or normalize("NFC", text) != text:
        return False
    if text.isascii():  # asked of thousands of words whenever plugins are loaded
        return text.replace("_", "a").isalnum()
    return all(_may_stand_in_name(letter) for letter in text) and len(scripts_in(text)) == 1


def scripts_in(text: str) -> frozenset[str]:
    """The scripts of the letters of a text, by the first word of their Unicode names; kanji, kana and Latin are one."""
    found = (name(letter, letter).split(" ", 1)[0] for letter in text if letter.isalpha())
    return frozenset("LATIN" if script in _ONE_SCRIPT else script for script in found)


def _may_stand_in_name(letter: str) -> bool:
    return letter.isalpha() or letter in "0123456789_" or category(letter) in {"Mn", "Mc"}
