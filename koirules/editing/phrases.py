"""Which words of the language fit at a place, of those that the grammar takes there."""

from __future__ import annotations

from koirules.editing.context import Context, Role
from koirules.editing.meaning import Meaning
from koirules.language.parse.partial_statement import SoFar
from koirules.meaning.expressions import BY_WORDS, Operand
from koirules.meaning.expressions import PHRASES as COMPARISONS
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, Type

_BARE = frozenset({"count", "score", "section"})
_NUMBERS = _BARE | {"lesser", "greater", "median", "batch"}
_OF_CRITERIA = frozenset({"points", "bonus", "penalty"})


def fits(phrase: str, context: Context, found: SoFar, meaning: Meaning) -> bool:
    """Whether a word or phrase that the grammar takes makes sense there."""
    first = phrase.split(maxsplit=1)[0]
    takes_value = found.takes is not None and "NAME" in found.takes
    if phrase in COMPARISONS or first == "grown":
        return not context.compared and _compares(phrase, context.operand)
    if first in {"and", "or", "except"} and not takes_value:
        return (
            context.compared
            or context.operand is None
            or isinstance(context.operand, Truth)
            or context.head == "sample"
        )
    if first in {"yes", "no"} and (takes_value or "gives" in phrase):
        return isinstance(context.wanted, Truth) and context.role in {Role.VALUE, Role.STEP}
    if takes_value and context.role is Role.VALUE:
        return _begins(first, context, meaning)
    return True


def _compares(phrase: str, operand: Type | None) -> bool:
    """Whether a comparison, or `grown to`, can follow something of a type."""
    if operand is None:
        return True
    kind = _operand(operand)
    if phrase == "grown to":
        return kind not in {Operand.TEXT, Operand.RAW}
    rows = [words for words in BY_WORDS if words == phrase or words.startswith(f"{phrase} ")]
    return any(kind in BY_WORDS[words].value.left for words in rows)


def _operand(kind: Type) -> Operand:
    match kind:
        case Numeric():
            return Operand.NUMBER
        case Steps(_, ordered):
            return Operand.SCALE if ordered else Operand.CHOICE
        case PlaceWords():
            return Operand.PLACES
        case Truth():
            return Operand.TRUTH
        case TextLabel():
            return Operand.TEXT
        case PatternMap() | ColourList():
            return Operand.RAW


def _begins(first: str, context: Context, meaning: Meaning) -> bool:
    """Whether a value that begins with a word can stand here."""
    if first in {"score", "section", "grade"} and context.head in _OF_CRITERIA:
        return False
    if first == "grade" and context.head not in {"alert", "round", "term"}:
        return False
    wanted = context.wanted
    if wanted is None or first in {"earlier", "not", "one", "recorded"}:
        return True
    if first in _NUMBERS:
        return isinstance(wanted, Numeric) and (first not in _BARE or wanted.dimension is None)
    if first == "fault":
        return isinstance(wanted, Truth)
    return first == "grade" and wanted == meaning.grade_type
