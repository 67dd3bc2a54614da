"""What somebody may have meant by a word that nothing has."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

from koirules.language import syntax
from koirules.language.syntax import Expression, Word
from koirules.problems import Edit, Problem, misfits, naming, values
from koirules.standard.types import PlaceWords, Steps, TextLabel, Truth, Type, type_of_kind
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Trait

_EVERYDAY = {
    "two": "2",
    "three": "3",
    "four": "4",
    "five": "5",
    "six": "6",
    "seven": "7",
    "eight": "8",
    "nine": "9",
    "ten": "10",
    "true": "yes",
    "false": "no",
    "points": "score",
    "total": "score",
}
_RECORDED = frozenset(("known", "given", "noted", "written"))
_NOT_RECORDED = frozenset(("unknown", "missing", "blank", "empty", "unrecorded"))
_REST = frozenset(("else", "anything", "other", "others", "otherwise", "rest"))


def meant_by(
    text: str, traits: Mapping[str, Trait], sections: Collection[str], faults: Collection[str], names: Sequence[str]
) -> str | None:
    """What a word most likely stands for: a section or fault, a number, a trait by its label, or a near name."""
    if text in sections:
        return f"section {text}"
    if text in faults:
        return f"fault {text}"
    if text in _EVERYDAY:
        return _EVERYDAY[text]
    by_label = (name for name, trait in traits.items() if text in {trait.title, *trait.titles.values()})
    return next(by_label, None) or near(text, names)


def step_meant(text: str, words: Sequence[str]) -> str | None:
    """What a key of a table stands for that is none of its words."""
    return "anything else" if text in _REST else near(text, words)


def recorded_meant(tail: syntax.Tail) -> Problem | None:
    """The problem of `is unknown`, `is not known` and the like."""
    operand = tail.operands[0] if tail.operator == "is" else None
    if not isinstance(operand, Word) or operand.text not in _RECORDED | _NOT_RECORDED:
        return None
    is_not = tail.negated != (operand.text in _NOT_RECORDED)
    was = f"is not {operand.text}" if tail.negated else f"is {operand.text}"
    return values.recorded_otherwise_said(tail.place, was, "is not recorded" if is_not else "is recorded")


def not_of_type(kind: Type, operand: Expression, is_name: bool) -> Problem | None:
    """The problem of what is compared with something of a kind, where it is plain from the way that it is written."""
    if isinstance(operand, syntax.Text) and not isinstance(kind, TextLabel):
        return misfits.name_in_quotes(operand.place, f'"{operand.text}"')
    if not isinstance(operand, Word) or is_name:
        return None
    text = operand.text
    if isinstance(kind, TextLabel) and text not in {"yes", "no"}:
        return values.label_without_quotes(operand.place, text)
    if isinstance(kind, Truth) and text not in {"yes", "no"}:
        guess = _EVERYDAY.get(text) or near(text, ("yes", "no"))
        return naming.unknown_step(operand.place, text, "a yes-or-no", ("yes", "no"), guess)
    return None


def loose_steps(
    parts: Sequence[Expression], joint: str, traits: Mapping[str, Trait], names: Collection[str]
) -> Problem | None:
    """The problem of `steps is ippon or inazuma`, where `or` and `and` must join whole conditions."""
    for i, part in enumerate(parts):
        if not isinstance(part, syntax.Comparison) or not isinstance(part.left, Word) or part.left.text not in traits:
            continue
        kind = type_of_kind(traits[part.left.text].kind)
        tail = part.tails[0]
        if tail.operator != ("includes" if isinstance(kind, PlaceWords) else "is"):
            continue
        values_of_it = [tail.operands[0]]
        for following in parts[i + 1 :]:
            if not _is_value(following, kind, names):
                break
            values_of_it.append(following)
        if len(values_of_it) > 1 and (_is_value(tail.operands[0], kind, names)):
            shown = [_shown(value, kind) for value in values_of_it]
            mended = _mended(part.left.text, shown, joint, kind, negated=tail.negated)
            edit = Edit(part.place.to(values_of_it[-1].place), mended)
            return values.loose_step(values_of_it[1].place, shown[1], joint, edit)
    return None


def _is_value(expression: Expression, kind: Type, names: Collection[str]) -> bool:
    """Whether an expression by itself can only be a value of a kind."""
    if isinstance(expression, syntax.Text):
        return isinstance(kind, TextLabel)
    if not isinstance(expression, Word) or expression.text in names:
        return False
    if isinstance(kind, Steps | PlaceWords):
        return expression.text in kind.words
    return isinstance(kind, TextLabel) and expression.text not in {"yes", "no"}


def _shown(value: Expression, kind: Type) -> str:
    text = value.text if isinstance(value, Word | syntax.Text) else ""
    return f'"{text}"' if isinstance(kind, TextLabel) else text


def _mended(name: str, shown: Sequence[str], joint: str, kind: Type, *, negated: bool) -> str:
    if isinstance(kind, PlaceWords):
        return f" {joint} ".join(f"{name} includes {place}" for place in shown)
    return f"{name} {'is not' if negated else 'is'} one of ({', '.join(shown)})"


def hyphened(first: Expression, second: Expression, names: Collection[str]) -> Problem | None:
    """The problem of a name that is written with a hyphen, which reads as a difference of two names."""
    if not isinstance(first, Word) or not isinstance(second, Word):
        return None
    name = f"{first.text}_{second.text}"
    if name not in names or (first.text in names and second.text in names):
        return None
    return naming.unknown_name(first.place.to(second.place), f"{first.text}-{second.text}", name, None)
