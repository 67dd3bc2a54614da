"""What people write in place of the words of the language, and how we name what could stand somewhere."""

from __future__ import annotations

import re
from collections.abc import Iterator, Set

from koirules.meaning.expressions import FIRST_WORDS
from koirules.meaning.expressions import PHRASES as COMPARISONS

SIGNS = {
    ">=": "at least",
    "=>": "at least",
    "≥": "at least",
    "<=": "at most",
    "=<": "at most",
    "≤": "at most",
    "<>": "is not",
    "!=": "is not",
    "≠": "is not",
    "==": "is",
    "=": "is",
    ">": "above",
    "<": "below",
    "&&": "and",
    "&": "and",
    "||": "or",
    "|": "or",
    "!": "not",
    "×": "*",
    "÷": "/",
    "→": "gives",
    "->": "gives",
    ";": ",",
    "[": "(",
    "{": "(",
    "]": ")",
    "}": ")",
}
"""Signs, and the words that the language has for them."""

OTHER_WORDS = {
    "when": "if",
    "where": "if",
    "unless": "except",
    "else": "otherwise",
    "equals": "is",
    "equal": "is",
    "are": "is",
    "has": "includes",
    "contains": "includes",
    "contain": "includes",
    "include": "includes",
    "exceeds": "above",
    "minimum": "at least",
    "maximum": "at most",
    "times": "weight",
    "give": "gives",
    "then": ":",
    "mean": "means",
    "is": "means",
    "points": "gives",
    "for": "by",
    "of": "by",
    "from": "worth",
    "worse": "better",
    "better": "worse",
    "lower": "less",
    "smaller": "less",
    "fewer": "less",
    "higher": "more",
    "larger": "more",
    "and": ",",
    "can't": "not",
    "default": "otherwise",
    "expect": "comes out",
    "expects": "comes out",
    "becomes": "comes out",
}
"""Words of everyday English, and the word that may stand there instead."""

_LARGER = "(?:greater|more|higher|larger|bigger|longer|heavier|older)"
_SMALLER = "(?:less|smaller|lower|fewer|shorter|lighter|younger)"
_NOT = "(?:(?:(?:is|are) )?(?:no|not)|(?:is|are|was|were)n'?t)"
_AMOUNT = "([0-9][0-9.]*(?: ?[a-zA-Z%]+)?)"
PHRASES = tuple(
    (re.compile(rf"(?<!\w)(?:{written.replace(' ', chr(92) + 's+')})(?!\w)"), meant)
    for written, meant in (
        (f"{_NOT} {_LARGER} than", "at most"),
        (f"{_NOT} {_SMALLER} than", "at least"),
        (f"(?:is )?{_LARGER} (?:than )?or equal(?: to)?", "at least"),
        (f"(?:is )?{_SMALLER} (?:than )?or equal(?: to)?", "at most"),
        (f"(?:is )?{_LARGER} than", "above"),
        (f"(?:is )?{_SMALLER} than", "below"),
        ("not is", "is not"),
        (f"is ({'|'.join(words for words in COMPARISONS if words != 'is')})", r"\1"),
        ("(?:is )?equals?(?: to)?", "is"),
        ("(?:is )?over", "above"),
        ("(?:is )?under", "below"),
        (r"is not in(?=\s*\()", "is not one of"),
        (r"(?:is )?in(?=\s*\()", "is one of"),
        (f"{_NOT} (?:above|over)", "at most"),
        (f"{_NOT} (?:below|under)", "at least"),
        (f"{_NOT} at least", "below"),
        (f"{_NOT} at most", "above"),
        ("do(?:es)?(?: not|n't) exceed", "at most"),
        ("do(?:es)?(?: not|n't) equal", "is not"),
        (r"(?:is|are|was|were)n'?t in(?=\s*\()", "is not one of"),
        ("(?:is|are|was|were)n'?t", "is not"),
        (f"{_AMOUNT} or (?:more|above|better|larger|longer|higher|greater)", r"at least \1"),
        (f"{_AMOUNT} or (?:less|below|smaller|shorter|lower|fewer)", r"at most \1"),
        (f"from {_AMOUNT} to {_AMOUNT}", r"between \1 and \2"),
        (f"(?:between )?{_AMOUNT} ?- ?{_AMOUNT}", r"between \1 and \2"),
    )
)
"""Comparisons as people say them, and as the language has them."""

FILLERS = frozenset(("the", "a", "an", "very", "too", "both", "either"))
"""Words of a sentence that a rule does without."""

PUNCTUATION = {"COMMA": ",", "COLON": ":", "LPAR": "(", "RPAR": ")", "EQUAL": "=", "LESSTHAN": "<"}


def _split(names: str) -> tuple[str, ...]:
    return tuple(names.split())


NEVER_MISSING = frozenset(
    _split(
        "NAME DIGITS STRING UNIT EDITION_LABEL DATE YES NO SUM_SIGN PRODUCT_SIGN $END ANYTHING_ELSE NOT COUNT LESSER "
        "GREATER _MEDIAN_OF BOUND THEM SCORE GRADE FAULT SECTION BATCH EARLIER POSSIBLY ALL MORE LESS SCALE CHOICE PLACES GROWN "
        "RESCUES " + " ".join(words.upper() for words in COMPARISONS if words != "is" and words.isalpha())
    )
)
"""Names of the grammar that are never what is missing: classes of words, and words that nobody can mean to write alone."""

MISSING_FIRST = _split("COMMA COLON GIVES IF BY MEANS OF AT LEAST WITH THAN TO IS AS BETTER WORSE AND OUT RPAR LPAR")
"""What is missing most often, the likeliest first."""

_KINDS = {
    "NAME": "a name",
    "DIGITS": "a number",
    "STRING": 'a text in "quotes"',
    "UNIT": "a unit",
    "EDITION_LABEL": "an edition such as 2026-1",
    "DATE": "a date such as 2026-09-30",
    "ANYTHING_ELSE": '"anything else"',
    "BOUND": '"at least" or "at most"',
    "SUM_SIGN": '"+" or "-"',
    "PRODUCT_SIGN": '"*" or "/"',
    "$END": "the end of the statement",
}
_FULLER = {
    "FROM": '"from" and the range, such as "from 0 to 90"',
    "UP": '"up to" and the largest number',
    "IF": '"if" and a condition',
    "GIVES": '"gives" and the points',
    "MEANS": '"means" and what it stands for',
}
_VALUE = {
    "NAME",
    "DIGITS",
    "LPAR",
    "COUNT",
    "LESSER",
    "GREATER",
    "_MEDIAN_OF",
    "SCORE",
    "SECTION",
    "FAULT",
    "GRADE",
    "BATCH",
}
_VALUE |= {"EARLIER", "YES", "NO", "STRING", "SUM_SIGN", "NOT"}
_COMPARE = {word.upper() for word in FIRST_WORDS}
_GO_ON = {"SUM_SIGN", "PRODUCT_SIGN", "GROWN"}
_MOST_PHRASES = 8


def terminal(word: str) -> str:
    """The grammar's name of a word or sign."""
    for name, sign in PUNCTUATION.items():
        if sign == word:
            return name
    return {"*": "PRODUCT_SIGN", "/": "PRODUCT_SIGN", "-": "SUM_SIGN", "+": "SUM_SIGN"}.get(word, word.upper())


def written(name: str) -> str:
    """The word or sign of a name of the grammar."""
    return PUNCTUATION.get(name) or name.lower()


def words_of(accepts: Set[str]) -> list[str]:
    """The words, not signs or classes of words, among names of the grammar."""
    return sorted(written(name) for name in accepts if name not in _KINDS and name not in PUNCTUATION)


def wants_value(accepts: Set[str]) -> bool:
    """Whether an expression can begin here."""
    return {"NAME", "LPAR", "COUNT"} <= accepts


def expected(accepts: Set[str], head: str = "") -> list[str]:
    """What could stand here, a few phrases, the same for the same state."""
    return list(_phrases(set(accepts), head))[:_MOST_PHRASES]


def _phrases(left: set[str], head: str) -> Iterator[str]:
    if wants_value(left):
        yield "a trait, a term, a number or a bracket"
        left -= _VALUE
    if left >= _COMPARE:
        yield f"a comparison ({', '.join(COMPARISONS)})"
        left -= _COMPARE | _GO_ON
    if "DIGITS" in left:
        left.discard("SUM_SIGN")
    limit = {"fault": "no better than", "lift": "no worse than"}.get(head)
    if limit and left <= {"NO", "LOWERS"}:
        yield f'"{limit}" with a grade'
        yield from ['"lowers by 1 grade"'] if "LOWERS" in left else []
        return
    if len(left) > len(_GO_ON):
        left -= _GO_ON
    for name in ("COLON", "COMMA", "LPAR", "RPAR", "EQUAL", "LESSTHAN"):
        if name in left:
            yield f'"{PUNCTUATION[name]}"' + (f' and "{limit}" with a grade' if limit and name == "COLON" else "")
    for name, phrase in _KINDS.items():
        if name in left and name != "$END":
            yield "the points, a number" if name == "DIGITS" and head in {"bonus", "penalty"} else phrase
    for word in words_of(left):
        yield _FULLER.get(terminal(word), f'"{word}"')
    if "$END" in left:
        yield _KINDS["$END"]
