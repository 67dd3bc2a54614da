"""The expression that a place lies in: what a word there is compared with, and what stands on its left."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import field

from koirules.editing.meaning import Meaning
from koirules.language.parse.partial_statement import Written
from koirules.meaning.expressions import FIRST_WORDS
from koirules.standard.types import Numeric, PlaceWords, Truth, Type
from koirules.values import define, frozen
from koirules.vocabulary.units import UNITS, Dimension

_BEGINS = frozenset(
    {"IF", "EXCEPT", "MEANS", "BY", "WITH", "COLON", "OTHERWISE", "HIGHEST", "LOWEST", "AND", "OR", "THEN"}
)
_COMPARES = frozenset(word.upper() for word in FIRST_WORDS)
_OF_OPERATOR = frozenset({"LEAST", "MOST", "ONE", "RECORDED"})
_FIGURES = {"SHARE": Numeric(Dimension.SHARE), "STANDING": Numeric(Dimension.SHARE)}


@frozen
class Group:
    """What stands in brackets."""

    words: tuple[Operand, ...]


Operand = Written | Group


@define
class _Frame:
    """A bracket that is open, or what stands outside of all. opener: the word that its bracket belongs to."""

    opener: str = ""
    compared_with: Type | None = None
    begun: list[Operand] = field(factory=list)
    operand: list[Operand] = field(factory=list)
    left: list[Operand] | None = None
    operator: str = ""
    listed: list[str] = field(factory=list)
    joins: bool = True

    def begin(self) -> None:
        self.operand, self.left, self.operator, self.joins = [], None, "", True


@frozen
class Standing:
    """Where a place lies in an expression.

    compared_with: the type that a word there must have, None where any will do. operand: the type of what stands on the
    left, if anything does. compared: whether a comparison stands there already. listed: the words of the list so far, and
    the name that the comparison is with.
    """

    compared_with: Type | None
    operand: Type | None
    compared: bool
    listed: tuple[str, ...]


def standing(words: Sequence[Written], meaning: Meaning) -> Standing:
    """Where the end of the words lies in the expression that they end in."""
    frames = [_Frame()]
    for i, word in enumerate(words):
        _take(frames, word, words[i - 1].name if i else "", meaning)
    frame = frames[-1]
    last = words[-1].name if words else ""
    wanted = _wanted(frame, last, words, meaning)
    left = [each.text for each in frame.left or () if isinstance(each, Written) and each.name == "NAME"]
    return Standing(wanted, type_of(frame.operand, meaning), bool(frame.operator), (*frame.listed, *left))


def _take(frames: list[_Frame], word: Written, before: str, meaning: Meaning) -> None:
    frame = frames[-1]
    match word.name:
        case "LPAR":
            opener = _opener(frame, before)
            compared = type_of(frame.left or [], meaning) if opener == "ONE" else None
            frames.append(_Frame(opener, compared))
        case "RPAR" if len(frames) > 1:
            frames.pop()
            frames[-1].operand.append(Group((*frame.begun, *frame.operand)))
        case "AND" if frame.operator == "BETWEEN" and frame.joins:
            frame.operand, frame.joins = [], False  # of `between A and B`
        case "COMMA":
            frame.listed += [each.text for each in frame.operand if isinstance(each, Written)]
            frame.begun += frame.operand
            frame.begin()
        case name if name in _BEGINS:
            frame.begun += [*(frame.left or []), *frame.operand, word]
            frame.begin()
        case name if name in _COMPARES:
            frame.left, frame.operand, frame.operator = frame.operand, [], name
        case name if name in _OF_OPERATOR or name == "NOT" or (name == "OF" and frame.operator == "IS"):
            pass
        case _:
            frame.operand.append(word)


def _opener(frame: _Frame, before: str) -> str:
    if frame.operator == "IS" and before == "OF" and not frame.operand:
        return "ONE"
    names = [each.name for each in frame.operand if isinstance(each, Written)]
    return names[-2] if before == "OF" and len(names) > 1 else before


def _wanted(frame: _Frame, last: str, words: Sequence[Written], meaning: Meaning) -> Type | None:
    if frame.opener == "ONE":
        return frame.compared_with
    if last == "TO" and len(words) > 1 and words[-2].name == "GROWN":
        return Numeric(Dimension.LENGTH)
    if last == "OF" and len(words) > 1 and words[-2].name == "COUNT":
        return PlaceWords(())
    if last == "SUM_SIGN" and len(frame.operand) > 1:
        return type_of(frame.operand[:-1], meaning)
    if frame.operator:
        return type_of(frame.left or [], meaning)
    return None


def type_of(operand: Sequence[Operand], meaning: Meaning) -> Type | None:
    """The type of an operand, as far as its words tell; None where they do not."""
    if not operand:
        return None
    first = operand[0]
    names = [each.name for each in operand if isinstance(each, Written)]
    if names and (_COMPARES & set(names) or names[0] in {"NOT", "FAULT", "YES", "NO"} or {"AND", "OR"} & set(names)):
        return Truth()
    if "PRODUCT_SIGN" in names:
        return None
    if isinstance(first, Group):
        return type_of(first.words, meaning)
    match first.name:
        case "NAME":
            return meaning.type_of(first.text)
        case "COUNT":
            return Numeric(None, whole=True)
        case "SCORE" | "SECTION":
            return Numeric(None)
        case "GRADE":
            return meaning.grade_type
        case "BATCH" if len(names) > 1 and names[1] in _FIGURES:
            return _FIGURES[names[1]]
        case "DIGITS":
            unit = operand[1] if len(operand) > 1 else None
            known = UNITS.get(unit.text) if isinstance(unit, Written) and unit.name == "UNIT" else None
            return Numeric(None if known is None else known.dimension)
        case "LESSER" | "GREATER" | "_MEDIAN_OF" | "BATCH" | "EARLIER" | "SUM_SIGN":
            return _type_inside(operand, meaning)
        case _:
            return None


def _type_inside(operand: Sequence[Operand], meaning: Meaning) -> Type | None:
    for i, each in enumerate(operand):
        if isinstance(each, Group) or each.name == "NAME":
            return type_of(operand[i : i + 1], meaning)
    return None
