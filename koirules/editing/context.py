"""Which kind of name fits at a place of a statement."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

from koirules.editing.meaning import Meaning
from koirules.editing.operands import standing, type_of
from koirules.language.parse.partial_statement import Written
from koirules.standard.types import Numeric, Type, type_of_kind
from koirules.values import frozen
from koirules.vocabulary.units import UNITS, Dimension
from koirules.vocabulary.words import HEAD_WORDS


class Role(Enum):
    """What a name at a place stands for."""

    NEW = "a name that is given here"
    OF_BASE = "something of the base"
    VALUE = "a trait, term or setting"
    STEP = "a word of a trait"
    TRAIT = "a trait"
    SETTING = "a setting"
    SECTION = "a section"
    FAULT = "a fault"
    LIFT = "a lift"
    BONUS = "a bonus"
    PENALTY = "a penalty"
    GRADE = "a grade"
    ROUND = "a round"
    VARIETY = "a variety"
    SKIN = "a skin"
    OTHER = "any word"


@frozen
class Context:
    """What fits at a place.

    head: the head word of the statement; of `replace` and `drop` that of what they change. wanted: the type that a value
    or step must have, None where any will do. operand: the type of what stands on the left. compared: whether a comparison
    stands there. taken: words that stand there already and do not fit again. measures: what a unit may measure, None where
    any will do; no unit at all fits where `bare`.
    """

    role: Role
    head: str
    wanted: Type | None = None
    operand: Type | None = None
    compared: bool = False
    taken: tuple[str, ...] = ()
    measures: Dimension | None = None
    bare: bool = False


_AFTER = {
    ("FAULT", "THAN"): Role.GRADE,
    ("LIFT", "THAN"): Role.GRADE,
    ("GRADE", "AFTER"): Role.GRADE,
    ("SAMPLE", "OUT"): Role.GRADE,
    ("SAMPLE", "FAULT"): Role.FAULT,
    ("SAMPLE", "LIFT"): Role.LIFT,
    ("SAMPLE", "BONUS"): Role.BONUS,
    ("SAMPLE", "PENALTY"): Role.PENALTY,
    ("SAMPLE", "ROUND"): Role.ROUND,
    ("STANDARD", "STAGE"): Role.OTHER,
    ("ROUND", "THAN"): Role.SETTING,
    ("ROUND", "RESCUES"): Role.SETTING,
}
_DECLARES = frozenset(
    head.upper()
    for head in HEAD_WORDS - {"standard", "silence", "carry", "phrase", "sample", "replace", "drop", "rename"}
)


def context_of(words: Sequence[Written], meaning: Meaning) -> Context:
    """What fits behind the words of a statement."""
    names = [word.name for word in words]
    if names[0] == "DROP":
        return Context(Role.OF_BASE, words[1].text if len(words) > 1 else "")
    if names[0] == "RENAME":
        return Context({"GRADE": Role.OF_BASE, "TO": Role.NEW}.get(names[-1], Role.OTHER), "grade")
    replaces = names[0] == "REPLACE"
    if replaces:
        words, names = words[1:], names[1:]
    if not words:
        return Context(Role.OTHER, "")
    head, last = words[0].text, names[-1]
    if len(words) == 1 and names[0] in _DECLARES:
        return Context(Role.OF_BASE if replaces else Role.NEW, head)
    if names[0] == "ROUND" and "PICK" in names[-2:]:
        return Context(Role.SETTING, head, measures=Dimension.SHARE)
    if (names[0], last) in _AFTER:
        return Context(_AFTER[names[0], last], head)
    simple = _simple(words, names, head)
    if simple is not None:
        return simple
    if names[0] == "SAMPLE":
        return _of_sample(words, head, meaning)
    if names[0] == "PHRASE":
        return _of_phrase(words, head, meaning)
    if names[0] == "CARRY":
        taken = tuple(word.text for word in words if word.name == "NAME")
        return Context(Role.OTHER if names[-1] in {"CARRY", "NAME"} else Role.TRAIT, head, taken=taken)
    if names[0] == "SILENCE":
        return _of_silence(words, names, head, meaning)
    if names[0] == "POINTS" and "COLON" in names:
        return _of_row(words, names, head, meaning)
    if names[0] in {"SETTING", "TRAIT"}:
        return _of_range(words, head)
    return _of_expression(words, head, meaning)


def _of_expression(words: Sequence[Written], head: str, meaning: Meaning) -> Context:
    """What fits inside an expression. words: from before its beginning on."""
    last = words[-1].name
    found = standing(words, meaning)
    typed = found.compared_with or (found.operand if last == "DIGITS" else None)
    alone = last == "DIGITS" and found.operand == Numeric(None) and not found.compared
    measures, bare = (None, False) if alone else _measured(typed)
    return Context(
        Role.VALUE, head, found.compared_with, found.operand, found.compared, found.listed, measures=measures, bare=bare
    )


def _simple(words: Sequence[Written], names: Sequence[str], head: str) -> Context | None:
    """What is told by the words just before, without an expression."""
    if len(names) > 1 and names[-1] in {"SECTION", "FAULT"}:
        return Context(Role[names[-1]], head)
    if names[-1] == "BY" and names[-2] in {"KEPT", "OVER"}:
        return Context(Role.ROUND, head)
    if names[-1] == "STRING":
        return Context(Role.OTHER, head)
    if names[-1] == "DIGITS" and names[-2] == "IN" and "AGAIN" in names:
        return Context(Role.OTHER, head, measures=Dimension.TIME)
    listed = _listed_after(names)
    if listed is None:
        return None
    taken = tuple(word.text for word in words[listed + 1 :] if word.name == "NAME")
    if names[listed] in {"SAME", "EACH"}:
        return Context(Role.TRAIT, head, taken=taken)
    if names[0] != "STANDARD":
        return None
    return Context(Role.SKIN if names[listed] == "WITH" else Role.VARIETY, head, taken=taken)


def _listed_after(names: Sequence[str]) -> int | None:
    """Where the word stands that the list of names here belongs to: `the same (a, b`, `variety (a, b`, `with (a, b`."""
    at = len(names) - 1
    while at > 0 and names[at] in {"COMMA", "NAME", "LPAR"}:
        at -= 1
    opened = at + 1 < len(names)
    if names[at] not in {"SAME", "EACH", "VARIETY", "WITH"} or (
        opened and (names[at + 1] != "LPAR" or names[-1] == "NAME")
    ):
        return None
    return at


def _of_sample(words: Sequence[Written], head: str, meaning: Meaning) -> Context:
    given: list[str] = []
    listed: list[str] = []
    trait, depth = "", 0
    for word in words[2:]:
        match word.name:
            case "WITH" | "COMMA" if depth == 0:
                trait, listed = "", []
            case "LPAR":
                depth += 1
            case "RPAR":
                depth -= 1
            case "NAME" if not trait:
                trait = word.text
                given.append(trait)
            case "NAME":
                listed.append(word.text)
            case _:
                pass
    if not trait:
        return Context(Role.TRAIT, head, taken=tuple(given))
    kind = meaning.traits[trait].kind if trait in meaning.traits else None
    wanted = None if kind is None else type_of_kind(kind)
    measures, bare = _measured(wanted)
    return Context(Role.STEP, head, wanted, taken=tuple(listed), measures=measures, bare=bare)


def _of_phrase(words: Sequence[Written], head: str, meaning: Meaning) -> Context:
    """In what a phrase means: a trait, then a comparison, then a value of the trait."""
    if "MEANS" not in [word.name for word in words]:
        return Context(Role.OTHER, head)
    trait, counts, compared = "", False, False
    listed: list[str] = []
    for word in words:
        match word.name:
            case "MEANS" | "AND":
                trait, counts, compared, listed = "", False, False, []
            case "COUNT":
                counts = True
            case "NAME" if not trait:
                trait = word.text
            case "NAME":
                listed.append(word.text)
            case "IS" | "AT" | "ABOVE" | "BELOW" | "INCLUDES":
                compared = True
            case _:
                pass
    if not trait:
        return Context(Role.OTHER if words[-1].name == "COUNT" else Role.TRAIT, head)
    kind = meaning.traits[trait].kind if trait in meaning.traits else None
    operand = Numeric(None) if counts else None if kind is None else type_of_kind(kind)
    measures, bare = _measured(operand)
    role = Role.STEP if compared else Role.OTHER
    return Context(role, head, operand, operand, compared, tuple(listed), measures, bare)


def _of_silence(words: Sequence[Written], names: Sequence[str], head: str, meaning: Meaning) -> Context:
    if names[-1] == "SILENCE":
        return Context(Role.OTHER, head)
    depth, begin, unless = 0, 0, 0
    for at, name in enumerate(names):
        depth += (name == "LPAR") - (name == "RPAR")
        if name in {"MEANS", "COMMA"} and depth == 0:
            begin, unless = at + 1, 0
        elif name == "UNLESS":
            unless = at
    if unless:
        # To what follows, `unless` is what `if` is elsewhere.
        return _of_expression([Written("IF", "if"), *words[unless + 1 :]], head, meaning)
    entry = words[begin:]
    if not entry:
        starts = [i + 1 for i, name in enumerate(names) if name in {"MEANS", "COMMA"}]
        return Context(Role.TRAIT, head, taken=tuple(words[i].text for i in starts if i < len(words)))
    trait = entry[0].text
    wanted = type_of_kind(meaning.traits[trait].kind) if trait in meaning.traits else None
    if len(entry) == 1 or entry[-1].name == "AT":
        return Context(Role.OTHER, head, operand=wanted)
    listed = tuple(word.text for word in entry[1:] if word.name == "NAME")
    measures, bare = _measured(wanted)
    return Context(Role.STEP, head, wanted, taken=listed, measures=measures, bare=bare)


def _of_row(words: Sequence[Written], names: Sequence[str], head: str, meaning: Meaning) -> Context:
    begin, colon = names.index("BY") + 1 if "BY" in names else 0, names.index("COLON")
    wanted = standing(words[begin:colon], meaning).operand if begin else None
    if begin and standing(words[begin:colon], meaning).compared:
        wanted = type_of([Written("YES", "yes")], meaning)
    row = max(at for at, name in enumerate(names) if name in {"COLON", "COMMA"})
    if "GIVES" in names[row:]:
        return Context(Role.OTHER, head, bare=True)
    keys = tuple(words[at + 1].text for at in range(colon, row) if names[at] in {"COLON", "COMMA"})
    measures, bare = _measured(wanted)
    return Context(Role.STEP, head, wanted, taken=keys, measures=measures, bare=bare)


def _of_range(words: Sequence[Written], head: str) -> Context:
    """Of a setting or a house trait: a unit after another measures the same."""
    unit = next((UNITS[word.text] for word in words if word.name == "UNIT"), None)
    plain = head == "trait" and unit is None and "FROM" in [word.name for word in words]
    return Context(Role.OTHER, head, measures=None if unit is None else unit.dimension, bare=plain)


def _measured(kind: Type | None) -> tuple[Dimension | None, bool]:
    """What a unit of a type measures, and whether it has none."""
    match kind:
        case None:
            return None, False
        case Numeric(dimension):
            return dimension, dimension is None
        case _:
            return None, True
