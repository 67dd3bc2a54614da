"""Words as people say them, in the form in which phrases and remarks are compared."""

from __future__ import annotations

import re
from functools import lru_cache

from koirules.vocabulary.plain_text import plain

VERDICT, UNSURE, FORECAST, COMPARISON, DETAIL, UNREAD, READ_BY = (
    "verdict",
    "unsure",
    "forecast",
    "comparison",
    "detail",
    "unread",
    "read_by",
)
NOTE_COLUMNS = (VERDICT, UNSURE, FORECAST, COMPARISON, DETAIL, UNREAD, READ_BY)
"""Columns beside the traits, which no rule reads: what the sorter said of the fish, and what could not be read."""

MOST_LETTERS = 200
"""No phrase is longer."""

NUMBERS = (
    *("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"),
    *("thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"),
)
"""The number words from zero on."""

_CJK = "\u3005-\u3007\u3040-\u30ff\u3400-\u4dbf\u4e00-\u9fff\uf900-\ufaff"
_TOKEN = re.compile(rf"[0-9]+(?:\.[0-9]+)?|%|[{_CJK}]|(?:(?![{_CJK}])[^\W\d_])+")
_SPELLED = (
    r"per cent|cannot|(?:ca|wo|do|does|did|is|are|was|were|has|have|would|could|should)nt|im|ive|"
    r"(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety) (?:one|two|three|four|five|six|seven|eight|nine)"
)
_PLAIN_WORDS = re.compile(rf"(?!.*\b(?:{_SPELLED})\b)[a-z]+(?: [a-z]+)*\Z")
_PER_CENT = re.compile(r"(?<![^\W\d_])per cent(?![^\W\d_])")
_APOSTROPHES = re.compile("['’‘`´]")
_CONTRACTED = re.compile(
    r"(?<!\w)(?:(ca)n'?t|(wo)n'?t|([a-z]+)n't|(do|does|did|is|are|was|were|has|have|would|could|should)nt|"
    r"(let|it|that|there|here|what|who|where|he|she|one)'s|(i|you|we|they|he|she|it|that|who)'d|"
    r"([a-z]+)'ll|([a-z]+)'(ve|re|m)|i(m|ve))(?!\w)"
)
_OWNED = re.compile(r"(?<=\w)'s(?!\w)")  # of a name that ends in i or u no plural could be taken: `hi's`, `sumi's`
_COMPOUND = re.compile(
    r"(?<!\w)(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[- ](one|two|three|four|five|six|seven|eight|nine)(?!\w)",
)
_SAME = {
    "color": "colour",
    "colored": "coloured",
    "gray": "grey",
    "grayish": "greyish",
    "center": "centre",
    "luster": "lustre",
    "percent": "%",
    "fins": "fin",
    "centimetre": "cm",
    "centimeter": "cm",
    "millimetre": "mm",
    "millimeter": "mm",
    "gram": "g",
    "gramme": "g",
    "kilo": "kg",
    "mil": "mm",
}
"""Words that are spelled in two ways, and the one that stands for both."""

_KEEP_S = frozenset(["its", "this", "his", "is", "was", "has", "as", "us", "yes", "gas", "plus", "less", "unless"])


@lru_cache(maxsize=32_768)
def tokens_of(text: str) -> tuple[str, ...]:
    """The words of a text in the form in which they are compared.

    Unicode NFKC, no case, no punctuation, no plural; number words up to twenty as digits; every character of Japanese and
    Chinese by itself, since they know no spaces.
    """
    if _PLAIN_WORDS.match(text):
        return _with_the_rear(tuple(map(_same, text.split())))
    low = _APOSTROPHES.sub("'", plain(text).casefold())
    low = _OWNED.sub("", _CONTRACTED.sub(_whole, low)).replace("'", "").replace("cannot", "can not")
    low = _COMPOUND.sub(lambda found: str(sum(int(_NUMBER_WORDS[word]) for word in found.groups())), low)
    low = _PER_CENT.sub("%", low)
    return _with_the_rear(tuple(_same(word) for word in _TOKEN.findall(low)))


_PARTS_AT_THE_BACK = frozenset(["of", "end", "edge", "half", "patch", "step", "fin", "1", "red", "hi", "side"])


_LEFT_AND_RIGHT = (("left",), ("right",))


def _with_the_rear(words: tuple[str, ...]) -> tuple[str, ...]:
    """`at the back` is at the rear; `on the back` is not; the `left hand side` is the left side."""
    if "hand" in words:
        words = tuple(
            word for at, word in enumerate(words) if word != "hand" or words[at - 1 : at] not in _LEFT_AND_RIGHT
        )
    if "back" not in words or "at" not in words:
        return words
    found = list(words)
    for at, word in enumerate(words):
        before = words[at - 2 : at] if words[at - 1 : at] == ("the",) else words[at - 1 : at]
        if word == "back" and before[:1] == ("at",) and not _PARTS_AT_THE_BACK & {*words[at + 1 : at + 2]}:
            found[at] = "rear"
    return tuple(found)


_VERBS = {"ve": "have", "re": "are", "m": "am"}


def _whole(found: re.Match[str]) -> str:
    can, wont, negated, run_on, pronoun, would, will, whose, verb, of_mine = found.groups()
    if can:
        return "can not"
    if wont:
        return "will not"
    if negated or run_on:
        return f"{negated or run_on} not"
    if pronoun:
        return "let us" if pronoun == "let" else f"{pronoun} is"
    if would:
        return f"{would} would"
    return f"{will} will" if will else f"{whose or 'i'} {_VERBS[verb or of_mine]}"


@lru_cache(maxsize=32_768)
def _same(word: str) -> str:
    if word in _NUMBER_WORDS:
        return _NUMBER_WORDS[word]
    one = singular(word)
    return _SAME.get(one, one)


_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_NUMBER_WORDS = {word: str(value) for value, word in enumerate(NUMBERS)} | {
    word: str(value) for value, word in zip(range(20, 100, 10), _TENS, strict=True)
}


def singular(word: str) -> str:
    """An English word without the `s` of a plural; any other word as it is."""
    if len(word) < 4 or not word.endswith("s") or word in _KEEP_S or not word.isascii():
        return word
    if word.endswith(("ches", "shes", "xes", "sses", "zzes")):
        return word[:-2]
    if word.endswith("ies") and len(word) > 4:
        return f"{word[:-3]}y"
    return word if word.endswith(("ss", "us", "is")) else word[:-1]
