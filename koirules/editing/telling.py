"""What there is to tell about a name, a word or a unit: for a box beside the text, plain text throughout."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from attrs import field

from koirules.editing.context import Role
from koirules.editing.meaning import Meaning
from koirules.editing.words import about
from koirules.language import statements as st
from koirules.language.format.writer import tidy_statement
from koirules.standard.inherit.merging import head_of, name_of
from koirules.standard.parts import Setting
from koirules.standard.types import Steps, Type, type_words
from koirules.values import frozen
from koirules.vocabulary.kinds import describe_kind, shortest
from koirules.vocabulary.traits import Better, Growth, Trait
from koirules.vocabulary.units import UNITS

_MOST_CRITERIA = 30


@frozen
class Told:
    """What there is to tell. short: a few words for a list. tell: makes the text."""

    short: str
    tell: Callable[[], str] = field(eq=False, repr=False)

    @property
    def text(self) -> str:
        """All of it, in lines."""
        return self.tell()


def told_name(role: Role, head: str, name: str, meaning: Meaning) -> Told | None:
    """What there is to tell about a name at a place where such a role fits; None where nobody knows it."""
    match role:
        case Role.VALUE | Role.TRAIT | Role.SETTING | Role.STEP:
            return told_value(name, meaning)
        case Role.SECTION | Role.FAULT | Role.LIFT | Role.BONUS | Role.PENALTY | Role.GRADE | Role.ROUND:
            return _told_part(meaning.named(role.name.lower()), name, meaning)
        case Role.NEW if head in {"setting", "trait", "term"}:
            return told_value(name, meaning)
        case Role.NEW | Role.OF_BASE:
            return _told_part(meaning.named(head), name, meaning)
        case Role.VARIETY | Role.SKIN:
            found = {**meaning.varieties.plain, **meaning.varieties.skins}.get(name)
            return None if found is None else Told(found.title, lambda: _lines(found.title, found.describe))
        case Role.OTHER:
            return None


def told_value(name: str, meaning: Meaning) -> Told | None:
    """What there is to tell about a trait, term or setting."""
    if name in meaning.traits:
        return told_trait(meaning.traits[name])
    if name in meaning.settings:
        return _told_setting(meaning.settings[name])
    parts = (meaning.named(head).get(name) for head in ("term", "setting", "trait"))
    part = next((part for part in parts if part is not None), None)
    if part is None:
        return None
    kind = meaning.type_of(name)
    first = f"{head_of(part)} {name}" + ("" if kind is None else f": {type_words(kind)}")
    return Told(_title(part), lambda: _lines(first, tidy_statement(part)))


def told_trait(trait: Trait) -> Told:
    """What there is to tell about a trait."""
    return Told(describe_kind(trait.kind), lambda: _about_trait(trait))


def _about_trait(trait: Trait) -> str:
    lines = [f"{trait.name}: {trait.title}", describe_kind(trait.kind)]
    if trait.better is not Better.NEITHER:
        lines.append(trait.better.value)
    if trait.growth is not Growth.VARIES:
        lines.append(f"with growth: {trait.growth.value}")
    return _lines(*lines, trait.describe)


def told_step(word: str, kind: Type | None) -> Told | None:
    """What there is to tell about a step or option, None where the type has no such word."""
    if not isinstance(kind, Steps) or word not in kind.words:
        return None
    if not kind.ordered:
        return Told("option", lambda: f"{word}: one of {', '.join(kind.words)}")
    at = kind.words.index(word) + 1
    short, scale = f"level {at} of {len(kind.words)}", " < ".join(kind.words)
    return Told(short, lambda: f"{word}: {short}\n{scale}")


def told_unit(symbol: str) -> Told:
    """What there is to tell about a unit."""
    unit = UNITS[symbol]
    held = unit.dimension.value
    text = unit.dimension.word
    return Told(text, lambda: text if held == symbol else f"{text}\n1 {symbol} is {unit.told}")


def told_word(word: str, *, begins: bool = False) -> Told | None:
    """What there is to tell about a word of the language, None where it says it itself. begins: as a head word."""
    text = about(word, begins=begins)
    return Told("", lambda: text) if text else None


def _told_setting(setting: Setting) -> Told:
    unit = "" if setting.unit is None else f" {setting.unit.dimension.value}"
    value, low, high = (f"{shortest(each)}{unit}" for each in (setting.value, setting.low, setting.high))
    span = f"from {low} to {high}" if setting.changeable else "cannot be changed"
    return Told(f"{value}, {span}", lambda: _lines(f"{setting.name}: {setting.title.text}", f"{value}, {span}"))


def _told_part(parts: Mapping[str, st.Part | None], name: str, meaning: Meaning) -> Told | None:
    part = parts.get(name)
    if part is None:
        return None
    match part:
        case st.Grade():
            return Told(_title(part), lambda: _lines(tidy_statement(part), *_around(part, meaning)))
        case st.Section():
            return Told(_title(part), lambda: _lines(tidy_statement(part), *_criteria(name, meaning)))
        case _:
            return Told(_title(part), lambda: tidy_statement(part))


def _around(grade: st.Grade, meaning: Meaning) -> list[str]:
    """What bounds a grade: its place in the order, the next better one, and the faults and lifts that stop at it."""
    order = meaning.grades
    at = order.index(grade.name.text)
    lines = [f"grade {at + 1} of {len(order)}, best first"]
    better = meaning.named("grade")[order[at - 1]] if at else None
    if better is not None:
        lines.append(f"what is not already: {tidy_statement(better)}")
    for head, words in (("fault", "no better, for"), ("lift", "no worse, for")):
        stopped = [
            name
            for name, part in meaning.named(head).items()
            if isinstance(part, st.Limit) and part.grade is not None and part.grade.text == grade.name.text
        ]
        if stopped:
            lines.append(f"{words} {head} {', '.join(stopped)}")
    return lines


def _criteria(name: str, meaning: Meaning) -> list[str]:
    lines: list[str] = []
    within = False
    for part in meaning.parts:
        if isinstance(part, st.Section):
            within = part.name.text == name
        elif within and isinstance(part, st.Points | st.Extra):
            lines.append(f"{head_of(part)} {name_of(part)}: {_title(part)}")
    return lines[:_MOST_CRITERIA]


def _title(part: st.Part) -> str:
    title = getattr(part, "title", None)
    return name_of(part).replace("_", " ") if title is None else str(title.text)


def _lines(*lines: str) -> str:
    return "\n".join(line for line in lines if line)
