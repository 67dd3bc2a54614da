"""Why a statement could not be parsed, in plain words: from what stands there and what could stand there."""

from __future__ import annotations

import re

from lark.exceptions import UnexpectedInput

from koirules.language.diagnose import rows, sentences, slips
from koirules.language.diagnose.hint_words import (
    MISSING_FIRST,
    NEVER_MISSING,
    OTHER_WORDS,
    PUNCTUATION,
    expected,
    terminal,
    wants_value,
    words_of,
    written,
)
from koirules.language.diagnose.spots import WHOLE as TO_THE_END
from koirules.language.diagnose.spots import Spot, spot_of
from koirules.language.parse.builder import Builder
from koirules.meaning.expressions import FIRST_WORDS
from koirules.problems import Problem, misfits
from koirules.problems import reading as say
from koirules.problems import sentences as said
from koirules.vocabulary.nearness import near
from koirules.vocabulary.units import UNITS, WRITTEN_OTHERWISE, unit_words
from koirules.vocabulary.words import HEAD_WORDS, OPERATOR_WORDS

_JOINTS = {"and", "or", "except", "if"}
_COMPARISONS = {*FIRST_WORDS} - {"is"}
_OUTCOMES = {"comes", "stays", "scores", "section", "shows", "kept", "leaves"}
_HEADER_WORDS = {"edition", "variety", "any", "stage", "for", "valid", "based", "note"}
_UNTITLED = {("sample", "with"), *(("standard", word) for word in _HEADER_WORDS)}
_NEVER_DROPPED = {"not", "no", "except", "and", "or", "if"}
_AFTER_NAME = {"if", "worth", "by", "as", "means", "weight", "otherwise"}
_MISPLACED = {
    "weight": ("points", "before `by`"),
    "say": ("", "at the end of the statement"),
    "except": ("", "after the condition that follows `if`"),
    "edition": ("standard", "under the title of the standard"),
}
_JOINING = {"to", "till", "until", "plus", "with", "und", "nor", "so"}  # words in whose place `and` may have been meant
WHOLE = {
    "points": 'points frame "outline" by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10` below '
    '`section body "body" worth 100',
    "section": 'section body "body" worth 100',
    "bonus": 'bonus long "long for its age" 2 if length at least 18 cm` below `section body "body" worth 100',
    "penalty": 'penalty thin "thin" 2 if outline is poor` below `section body "body" worth 100',
    "fault": 'fault bent "bent spine" if spine is bent: no better than sell',
    "grade": "grade keep if length at least 15 cm` and, below the other grades, `grade sell otherwise",
    "round": 'round best "the best 3" pick 3 by highest length',
    "term": "term long means length at least 18 cm",
}
"""A whole statement of each head word, of traits that every variety has."""

_SWAPPED_SIGNS = {":", ",", "/", "="}  # signs in whose place a word may have been meant


def explain(error: UnexpectedInput, text: str, head: str, builder: Builder) -> tuple[Problem, Problem]:
    """The problem of a statement that the grammar refused: with our guess at what was meant, and without one."""
    spot = spot_of(error, text, builder)
    if spot.accepts == {"STRING"} and spot.word_before(2).startswith('"') and len(spot.last) > 2:
        spot = spot.step_back()  # behind a title any word is read as the code of a language, a misspelt one too
    for rule in _RULES:
        problem = rule(spot, head)
        if problem is not None:
            return spot.spaced(problem), _plain(spot, head)
    plain = _plain(spot, head)
    return plain, plain


def _plain(spot: Spot, head: str) -> Problem:
    if not spot.word:
        if spot.text.strip() == head and head in WHOLE:
            return say.head_alone(spot.before_place, head, WHOLE[head])
        behind = spot.span(len(spot.text), len(spot.text))
        return say.ends_too_early(behind, spot.last or head, expected(spot.likely, head))
    return say.unexpected_word(spot.place, spot.word, expected(spot.likely, head))


def _name(spot: Spot, head: str) -> Problem | None:
    """A name that is not there, that is in parts, or that stands in quotes."""
    if spot.last == head and spot.accepts == {"NAME"} and spot.word.isdigit():
        return said.name_of_words(spot.place, spot.word, f"{head}_{spot.word}")
    if spot.last == head and spot.accepts == {"NAME"} and spot.word:
        return say.missing_name(spot.place, head, "its title" if spot.word.startswith('"') else f'"{spot.word}"')
    if spot.last == head and (head, spot.word) in _UNTITLED:
        return misfits.title_missing(spot.place, head, spot.word)
    named = (
        head not in {"standard", "sample", "silence", "carry", "replace", "drop", "rename"}
        and spot.word_before(2) == head
    )
    if named and spot.last in _AFTER_NAME:
        return say.missing_name(spot.before_place, head, f'"{spot.last}"')
    following = spot.following()
    if named and spot.word == "-" and following and following[0].isidentifier():
        place = spot.before_place.to(spot.span(spot.at, spot.text.index(following[0], spot.at) + len(following[0])))
        return misfits.name_in_parts(place, f"{spot.last}-{following[0]}", f"{spot.last}_{following[0]}")
    if spot.word.startswith('"') and "NAME" in spot.accepts and not wants_value(spot.accepts) and len(spot.word) > 2:
        return misfits.name_in_quotes(spot.place, spot.word)
    return None


def _end(spot: Spot, head: str) -> Problem | None:
    if spot.word:
        return None
    if spot.last == "," and head in {"points", "sample", "trait"}:
        return misfits.trailing_comma(spot.before_place)
    if wants_value(spot.accepts):
        return misfits.value_missing(spot.before_place, _last(spot))
    if head == "points" and spot.last == ":":
        return misfits.rows_missing(spot.before_place)
    return _plain(spot, head)


def _value(spot: Spot, head: str) -> Problem | None:
    """A value or condition that is not there; a word of the language may have been read as a name in its stead."""
    if spot.word in {":", ",", ")"} and wants_value(spot.accepts):
        return misfits.value_missing(spot.before_place, _last(spot))
    if spot.accepts <= {"DIGITS", "SUM_SIGN"} and spot.word in {":", ",", ")"}:
        return misfits.value_missing(spot.before_place, spot.last)
    if spot.word_before(2) == "edition" and spot.last in _HEADER_WORDS:
        return misfits.value_missing(spot.before_place, "edition")
    if head == "sample":
        return _fact(spot)
    if spot.last == "gives" and spot.word[:1].isalpha() and spot.word_before(2).isdigit():
        begin = spot.text.rfind(spot.word_before(2), 0, spot.text.rfind("gives", 0, spot.at))
        whole = spot.span(begin, spot.at + len(spot.word))
        return misfits.row_turned(spot.place, spot.word, spot.word_before(2), whole)
    if "IS" not in spot.accepts or wants_value(spot.accepts):
        return None
    if spot.last == "if" and spot.word_before(2) in {"and", "or", "not"}:
        return misfits.not_needed(spot.before_place, spot.last)
    if spot.last in _JOINTS:
        return misfits.value_missing(spot.before_place, spot.word_before(2))
    if spot.last in _COMPARISONS and spot.word_before(2) in _JOINTS | {"not", "means", "by", "("}:
        return misfits.left_side_missing(spot.before_place, spot.last)
    return None


def _last(spot: Spot) -> str:
    return f"at {spot.last}" if spot.last in {"least", "most"} else spot.last


def _fact(spot: Spot) -> Problem | None:
    if spot.last in {"is", "as"}:
        return misfits.not_needed(spot.before_place, spot.last)
    if spot.last in _OUTCOMES:
        return misfits.fact_value_missing(spot.before_place, spot.word_before(2))
    if spot.word == "," and "NAME" in spot.accepts:
        return misfits.fact_value_missing(spot.before_place, spot.last)
    if spot.word[:1].isdigit() and spot.accepts == {"NAME"}:
        return misfits.fact_turned(spot.place, spot.word)
    return None


def _unit(spot: Spot, head: str) -> Problem | None:  # noqa: ARG001
    """What stands behind a number and is no word of the language is a unit that we do not know."""
    word = spot.word
    if word in UNITS and spot.last in UNITS:
        return misfits.not_needed(spot.place, word)
    if word == "of" and spot.last == "%" and spot.word_before(2).replace(".", "").isdigit():
        return misfits.part_of_a_share(spot.place, f"{float(spot.word_before(2)) / 100:g}")
    if "UNIT" not in spot.accepts or not (word[:1].isalpha() or word in WRITTEN_OTHERWISE):
        return None
    if word in WRITTEN_OTHERWISE:
        return say.unknown_unit(spot.place, word, WRITTEN_OTHERWISE[word], tuple(UNITS))
    if word in HEAD_WORDS | OPERATOR_WORDS | OTHER_WORDS.keys() | {"to", "wide", "than"}:
        return None
    fits = near(word, words_of(spot.accepts))
    if fits is not None and spot.reach(terminal(fits), drop=True):
        return None
    if "COMMA" in spot.accepts and spot.reach("COMMA") > 1:
        return None
    meant = near(word, [*UNITS, *WRITTEN_OTHERWISE]) if len(word) > 2 else None
    return say.unknown_unit(spot.place, word, WRITTEN_OTHERWISE.get(meant, meant) if meant else None, tuple(UNITS))


def _silence(spot: Spot, head: str) -> Problem | None:
    """A condition of what silence means that begins as one elsewhere does."""
    if head == "silence" and spot.word in {"except", "if", "when"} and "UNLESS" in spot.accepts:
        return say.misspelt_word(spot.place, spot.word, "unless")
    return None


def _place(spot: Spot, head: str) -> Problem | None:
    """A part of a statement, or another statement, in the wrong place."""
    following = spot.following()
    begins = spot.word in HEAD_WORDS and "$END" in spot.accepts and following and following[0][0] not in ",:.)"
    if begins and (spot.word != "grade" or head not in {"round", "alert"} or _begins_grade(spot)):
        if not spot.text[: spot.at].rpartition("\n")[2].strip():
            return say.indented_statement(spot.place, spot.word)
        return misfits.own_line(spot.place, spot.word)
    only, belongs = _MISPLACED.get(spot.word, ("", ""))
    if belongs and only in {"", head} and not any(spot.reach(name) == TO_THE_END for name in _insertable(spot)):
        return misfits.misplaced(spot.place, spot.word, belongs)
    return None


def _begins_grade(spot: Spot) -> bool:
    """Whether a grade begins here; rounds and alerts read `grade` too."""
    return re.match(r'grade\s+[^\W\d]\w*\s+(?:"|if\s|otherwise\s)', spot.text[spot.at :]) is not None


def _word(spot: Spot, head: str) -> Problem | None:
    if not spot.word[:1].isalpha():
        return None
    if head == "standard" and spot.accepts >= {"VARIETY", "STAGE"} and not near(spot.word, _HEADER_WORDS):
        return _header_word(spot)
    other = OTHER_WORDS.get(spot.word)
    if other is not None and other not in PUNCTUATION.values() and spot.takes(other):
        return say.misspelt_word(spot.place, spot.word, other)
    if spot.word in {"least", "most"} and "AT" in spot.accepts:
        return say.missing_word(spot.place, spot.word, "at", spot.before_place)
    fits = near(spot.word, words_of(spot.accepts))
    if fits is not None and fits != spot.word and (spot.reach(terminal(fits), drop=True) or not spot.following()):
        return say.misspelt_word(spot.place, spot.word, fits)
    if other is not None and other in PUNCTUATION.values() and terminal(other) in spot.accepts:
        return say.misspelt_word(spot.place, spot.word, other)
    return None


def _header_word(spot: Spot) -> Problem | None:
    """A word of the header that is another one than ours: `breed kohaku`, `for kohaku`, `version 2`."""
    following = spot.following()[:1]
    there = set(re.findall(r"(?m)(?<!\w)(edition|variety|stage|valid|based)(?!\w)", spot.text[: spot.at]))
    if not following or there >= {"edition", "variety"}:
        return None
    meant = "edition" if following[0][0].isdigit() else "variety"
    if meant in there or following[0] in _HEADER_WORDS or following[0][0] == '"':
        return None
    return say.misspelt_word(spot.place, spot.word, meant)


def _quotes(spot: Spot, head: str) -> Problem | None:
    """Words where a text in quotes must stand, or a name of two words."""
    if "STRING" not in spot.accepts or wants_value(spot.accepts) or not spot.word[:1].isalpha():
        return None
    ends = {written(name) for name in spot.accepts}
    rest = spot.text[spot.at :]
    found = re.match(r"[^\W\d]\w*(?:[ '-]+\w+)*?(?=\s+(?:" + "|".join(map(re.escape, ends)) + r")(?!\w))", rest)
    if found is None and spot.accepts == {"STRING"}:
        found = re.match(r"[^\n]*\w", rest)
    if found is None:
        return None
    place = spot.span(spot.at, spot.at + found.end())
    if spot.word_before(2) == head and " " not in found.group():
        name = f"{spot.last}_{found.group()}"
        return misfits.name_in_parts(spot.before_place.to(place), f"{spot.last} {found.group()}", name)
    return misfits.text_without_quotes(place, found.group())


def _repair(spot: Spot, head: str) -> Problem | None:
    """The smallest change that lets us read furthest: a word put in, put in its place, or left out."""
    if head == "sample" and spot.word in {"out", "open"}:
        first = "comes" if spot.word == "out" else "stays"
        return say.missing_word(spot.place, spot.word, first, spot.before_place)
    best, kind, name = 1, "", ""
    for trial in _insertable(spot):
        read = spot.reach(trial)
        if read > best:
            best, kind, name = read, "put in", trial
    for trial in _swappable(spot):
        read = spot.reach(trial, drop=True)
        if read > max(best, 2):
            best, kind, name = read, "instead", trial
    needed = (
        spot.word in _NEVER_DROPPED
        or spot.word == "otherwise"
        or (spot.word == ")" and spot.text.count("(") >= spot.text.count(")"))
    )
    if not needed and spot.reach(drop=True) > max(best, 3):
        return misfits.not_needed(spot.place, spot.word)
    word = written(name)
    if kind == "instead":
        return say.misspelt_word(spot.place, spot.word, word)
    compares = "IS" in spot.accepts and (spot.last.isidentifier() or spot.last == ")") and spot.last not in _JOINTS
    if compares and name == "IS" and re.match(r"-?[0-9]|-", spot.word):
        return say.comparison_missing(spot.place, spot.last, _written_number(spot))
    names = spot.last.isidentifier() and spot.word.isidentifier() and not {spot.last, spot.word} & OPERATOR_WORDS
    if names and "IS" in spot.accepts and (word == "is" or not kind):
        return misfits.joined_or_compared(spot.place, spot.last, spot.word)
    if not kind:
        return None
    return say.missing_word(spot.place, spot.word, word, spot.before_place)


def _written_number(spot: Spot) -> str:
    """The number at a spot as it stands there, with its unit."""
    found = re.compile(rf"-?\s*[0-9.]+(?:\s?(?:{'|'.join(unit_words())})(?!\w)|\s?%)?").match(spot.text, spot.at)
    return found.group() if found else spot.word


def _swappable(spot: Spot) -> list[str]:
    """The words and signs in whose place another may have been written."""
    if spot.word in _SWAPPED_SIGNS:
        return sorted(_insertable(spot), key=lambda trial: trial != "AND")
    if spot.word[:1].isalpha():
        joins = spot.word in _JOINING
        return [trial for trial in _insertable(spot) if joins or trial not in {"AND", "OR"}]
    return []


def _insertable(spot: Spot) -> list[str]:
    """The words and signs that may be missing here, the likeliest first."""
    able = spot.accepts - NEVER_MISSING
    if "NAME" not in spot.accepts:
        able |= spot.accepts & {"NO"}
    return sorted(able, key=lambda name: (MISSING_FIRST.index(name) if name in MISSING_FIRST else 99, name))


_RULES = (
    _name,
    sentences.best_slip,
    sentences.grade_slip,
    _end,
    _silence,
    *sentences.RULES,
    rows.row_slip,
    slips.comma_slip,
    slips.filler_slip,
    slips.phrase_slip,
    sentences.names_slip,
    slips.bracket_slip,
    slips.scale_slip,
    slips.sign_slip,
    slips.number_slip,
    _value,
    _unit,
    _place,
    _word,
    _quotes,
    _repair,
)
