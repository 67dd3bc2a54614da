"""One value's text in a plain form, whatever keyboard, language setting or program it went through."""

from __future__ import annotations

import re
from functools import lru_cache
from unicodedata import normalize

from koirules.vocabulary.kinds import Kind, words_of

_DASHES = "‐‑‒–—−－〜～"
_UNSEEN = "\u00ad\u200b\u200c\u200d\u200e\u200f\u2060\ufeff"
_MENDED = str.maketrans({**dict.fromkeys(_DASHES, "-"), **dict.fromkeys(_UNSEEN, None)})

MARKS_FOR_UNKNOWN = frozenset({"?", "??", "-", "--", ".", "x", "n/a", "na", "nan", "null", "unknown", "n.a.", "#n/a"})
"""What people and programs write where nothing is known."""

_MONTHS = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec"
_DATE = re.compile(
    rf"""[0-9]{{4}}[-./][0-9]{{1,2}}[-./][0-9]{{1,2}}(?:[ T][0-9:.]+)?
    | [0-9]{{1,2}}[-./][0-9]{{1,2}}[-./][0-9]{{2,4}}
    | [0-9]{{1,2}}[-. /](?:{_MONTHS})[a-z]*(?:[-. /][0-9]{{2,4}})?
    | (?:{_MONTHS})[a-z]*[-. /][0-9]{{1,4}}
    | [0-9]{{1,2}}:[0-9]{{2}}(?::[0-9]{{2}})?""",
    re.VERBOSE | re.IGNORECASE,
)


def plain(text: str) -> str:
    """A text with full-width forms made narrow, dashes made one, unseen letters taken out and spaces made single."""
    mended = text.translate(_MENDED) if not text.isascii() else text
    if not mended.isascii():
        mended = normalize("NFKC", mended)
    return " ".join(mended.split())


def folded(word: str) -> str:
    """A word in the form in which words are compared: any case, with spaces and hyphens for `_`."""
    return re.sub(r"[\s_-]+", "_", plain(word).casefold()).strip("_")


def looks_like_a_date(text: str) -> bool:
    """Whether a plain text is a date or a time as a spreadsheet program writes it into a text file."""
    return _DATE.fullmatch(text) is not None


def numbers_of_a_date(text: str) -> tuple[str, str] | None:
    """The two numbers that a date or time may have been made of, the lower first: 3 and 4 for `3-Apr` or `2026-04-03`."""
    if not looks_like_a_date(text):
        return None
    numbers = [int(digits) for digits in re.findall("[0-9]+", text) if len(digits) <= 2]
    if month := re.search(_MONTHS, text, re.IGNORECASE):
        numbers.insert(0, _MONTHS.split("|").index(month[0].lower()) + 1)
    if len(numbers) < 2:
        return None
    low, high = sorted(numbers[:2])
    return str(low), str(high)


@lru_cache(maxsize=1024)
def positions(kind: Kind) -> dict[str, int]:
    """The position of each word of a kind, by the word itself and by its folded form where no other word shares it."""
    words = words_of(kind)
    forms = [folded(word) for word in words]
    found = {form: i for i, form in enumerate(forms) if forms.count(form) == 1}
    found.update({word: i for i, word in enumerate(words)})
    return found


def position(kind: Kind, word: str) -> int | None:
    """The position of a word among the words of a kind; None where the kind lacks it."""
    found = positions(kind)
    exact = found.get(word)
    return exact if exact is not None else found.get(folded(word))
