"""What somebody may have meant by a word that nothing has."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Mapping, Sequence
from typing import Protocol

from koirules.language import syntax
from koirules.language.syntax import Expression, Word
from koirules.problems import Edit, Place, Problem, misfits, naming, sentences, values
from koirules.standard.types import PlaceWords, Steps, TextLabel, Truth, Type, type_of_kind
from koirules.vocabulary.kinds import Count, Kind, Number, Places, YesNo, words_of
from koirules.vocabulary.nearness import distance, near, titles_with, traits_called
from koirules.vocabulary.phrases import Saying
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
_MOST_MEANT = 3
_SLIP = 2
_SHORTEST = 4
"""Words of fewer letters stand in too many titles to say which is meant."""
_RECORDED = frozenset(("known", "given", "noted", "written"))
_NOT_RECORDED = frozenset(("unknown", "missing", "blank", "empty", "unrecorded"))
_REST = frozenset(("else", "anything", "everything", "other", "others", "otherwise", "rest"))


def meant_by(
    text: str,
    traits: Mapping[str, Trait],
    sayings: Collection[Saying],
    sections: Collection[str],
    faults: Collection[str],
    names: Sequence[str],
) -> str | tuple[tuple[str, str], ...] | None:
    """What a word most likely stands for: a section or fault, a number, a trait that is called so, a near name.

    Several traits with their titles, where the word may stand for several.
    """
    if text in sections:
        return f"section {text}"
    if text in faults:
        return f"fault {text}"
    if text in _EVERYDAY:
        return _EVERYDAY[text]
    called = traits_called(text, traits, sayings)
    if not called or (len(called) == 1 and text.endswith("s")):  # `eyes`, `fins`: parts of which several traits speak
        called = list(dict.fromkeys((*called, *_by_title(text, traits, names))))
    if len(called) < 2:
        return called[0] if called else near(text, names)
    return _titled(called, traits)


def _by_title(text: str, traits: Mapping[str, Trait], names: Sequence[str]) -> list[str]:
    """The traits in whose titles a word stands that is more than a slip away from every name."""
    guess = near(text, names)
    slip = guess is not None and distance(text.casefold(), guess.casefold(), _SLIP) <= _SLIP
    return [] if slip or len(text) < _SHORTEST else titles_with(text, traits)


def _titled(names: Sequence[str], traits: Mapping[str, Trait]) -> tuple[tuple[str, str], ...]:
    return tuple((name, traits[name].title) for name in names[:_MOST_MEANT])


def step_meant(text: str, words: Sequence[str]) -> str | None:
    """What a key of a table stands for that is none of its words."""
    return "anything else" if text in _REST else near(text, words)


def is_unknown_word(text: str) -> bool:
    """Whether the key of a table stands for what was not recorded."""
    return text in _NOT_RECORDED or text in {"open", "unknown", "unclear"}


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


_OF_TWO_WORDS = frozenset(("missing-word", "not-needed", "name-in-parts"))


class Named(Protocol):
    """The names that a file can read."""

    @property
    def traits(self) -> Mapping[str, Trait]:
        """The traits of its variety and its own."""

    @property
    def faults(self) -> Iterable[str]:
        """Its faults."""

    @property
    def sayings(self) -> Collection[Saying]:
        """How people speak of the traits."""

    def names(self) -> list[str]:
        """Traits, settings and terms."""


def with_names(problems: Sequence[Problem], text: str, known: Named, terms: Collection[str]) -> list[Problem]:
    """Problems of the reader; those that hang on what a word names have the mend that fits it."""
    lines = text.split("\n")
    found: list[Problem] = []
    for problem in problems:
        site = problem.site
        better = None
        if isinstance(site, Place) and problem.code == "no-before-name" and problem.edit is None:
            name = lines[site.end_line - 1][: site.end_column - 1].split()[-1]
            if name in terms:
                better = sentences.no_before_name(site, name, f"not {name}")
            elif name in known.traits:
                better = sentences.no_before_name(site, name, _none_of(name, known.traits[name].kind))
        elif isinstance(site, Place) and problem.code in _OF_TWO_WORDS and site.line == site.end_line:
            better = _two_words(problem, site, lines[site.line - 1], known)
        found.append(better or problem)
    return found


def _two_words(problem: Problem, site: Place, line: str, known: Named) -> Problem | None:
    """The problem of two words in a row where they are a name in two parts, or a value before its trait."""
    begins = re.search(r"\w+\s+$" if problem.code == "missing-word" else "$", line[: site.column - 1])
    both = None if begins is None else re.compile(r"(\w+)\s+(\w+)").match(line, begins.start())
    if (
        both is None or len(line[: both.start()].split()) < 2
    ):  # what stands behind the first word is the statement's own name
        return None
    first, second = both.groups()
    place = Place(site.file, site.line, both.start() + 1, site.line, both.end() + 1)
    if problem.code == "missing-word" and problem != misfits.joined_or_compared(site, first, second):
        return None
    joined = f"{first}_{second}"
    fault = f"fault {joined}" if joined in known.faults else None
    trait = known.traits.get(second)
    if trait is not None and first in words_of(trait.kind):
        return misfits.value_before_trait(place, first, second, fault)
    words = f"{first} {second}"
    if joined in known.names() or fault:
        return misfits.name_with_a_blank(place, words, joined if joined in known.names() else fault or "")
    called = traits_called(words, known.traits, known.sayings) if first not in known.names() else []
    if not called:
        return None
    return naming.unknown_name(place, words, called[0] if len(called) == 1 else _titled(called, known.traits), None)


def _none_of(name: str, kind: Kind) -> str:
    match kind:
        case YesNo():
            return f"not {name}"
        case Places():
            return f"count of {name} is 0"
        case Number(unit):
            return f"{name} is 0 {unit.symbol}" if unit else f"{name} is 0"
        case Count():
            return f"{name} is 0"
        case _:
            return f"{name} is …"


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
