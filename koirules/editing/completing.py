"""What could stand at a place: the words of the language, names, steps and units that fit there, and no others."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from enum import Enum
from pathlib import Path

from attrs import field

from koirules.editing.context import Context, Role, context_of
from koirules.editing.desk import Desk
from koirules.editing.meaning import Meaning
from koirules.editing.phrases import fits
from koirules.editing.telling import Told, told_name, told_step, told_unit, told_word
from koirules.language.parse.partial_statement import SoFar, so_far
from koirules.standard.types import Numeric, PlaceWords, Steps, Type
from koirules.values import frozen
from koirules.vocabulary.units import UNITS
from koirules.vocabulary.words import HEAD_WORDS

MOST_FILES = 200


class Sort(Enum):
    """What something that could stand at a place is, in the order in which they are offered."""

    STEP = "step"
    UNIT = "unit"
    TERM = "term"
    SETTING = "setting"
    TRAIT = "trait"
    PART = "part"
    WORD = "word"
    FILE = "file"


@frozen
class Offer:
    """Something that could stand at a place. told: what there is to tell about it, if anything."""

    text: str
    sort: Sort
    told: Told | None = field(default=None, eq=False, repr=False)

    @property
    def detail(self) -> str:
        """A few words about it."""
        return "" if self.told is None else self.told.short

    @property
    def about(self) -> str:
        """All there is to tell about it; takes longer."""
        return "" if self.told is None else self.told.text


@frozen
class Offers:
    """What could stand at a place. replaces: how many characters before the place it takes the place of."""

    replaces: int
    offers: tuple[Offer, ...]


def offers_at(desk: Desk, key: str, line: int, column: int) -> Offers:
    """What could stand at a place of a page."""
    page, look = desk.pages[key], desk.last_look(key)
    found = so_far(page.lines.counted, line, column)
    if look is None or found.within == "remark":
        return Offers(0, ())
    meaning = look.meaning
    if found.within == "text":
        return _in_text(found, meaning, page.path, desk.registry.rulesets)
    if found.is_fresh:
        return Offers(len(found.part), tuple(_heads(meaning, line)))
    context = context_of(found.words, meaning)
    return Offers(len(found.part), tuple(dict.fromkeys(_fitting(found, context, meaning))))


def _fitting(found: SoFar, context: Context, meaning: Meaning) -> Iterator[Offer]:
    takes = frozenset({"NAME"}) if found.takes is None else found.takes
    if "UNIT" in takes and not context.bare:
        for symbol, unit in UNITS.items():
            if context.measures in {None, unit.dimension}:
                yield Offer(symbol, Sort.UNIT, told_unit(symbol))
    if "NAME" in takes:
        own = found.words[1].text if len(found.words) > 1 and found.words[0].name == "TERM" else ""
        yield from _names(context, own, meaning)
    for phrase in found.phrases:
        if fits(phrase, context, found, meaning):
            yield Offer(phrase, Sort.WORD, told_word(phrase))


def _names(context: Context, own: str, meaning: Meaning) -> Iterator[Offer]:
    role, wanted = context.role, context.wanted
    if role in {Role.VALUE, Role.STEP}:
        yield from _steps(context)
    match role:
        case Role.VALUE:
            names: Iterable[str] = [
                each for each in meaning.values if each not in {own, *context.taken} and _is(each, wanted, meaning)
            ]
        case Role.TRAIT:
            names = [each for each in meaning.traits if each not in context.taken]
        case Role.SETTING:
            types = {name: meaning.type_of(name) for name in meaning.settings}
            fish = [name for name, kind in types.items() if kind == Numeric(None, whole=True)]
            fish += [name for name, kind in types.items() if context.measures and kind == Numeric(context.measures)]
            names = fish or [name for name, each in meaning.settings.items() if each.unit is None]
        case Role.SECTION | Role.FAULT | Role.LIFT | Role.BONUS | Role.PENALTY | Role.GRADE | Role.ROUND:
            names = meaning.named(role.name.lower())
        case Role.OF_BASE:
            names = meaning.of_base(context.head)
        case Role.VARIETY:
            names = [each for each in meaning.varieties if each not in context.taken]
        case Role.SKIN:
            names = [each for each in meaning.varieties.skins if each not in context.taken]
        case Role.STEP | Role.NEW | Role.OTHER:
            names = ()
    for name in names:
        yield Offer(name, _sort(name, role, meaning), told_name(role, context.head, name, meaning))


def _steps(context: Context) -> Iterator[Offer]:
    wanted = context.wanted
    if not isinstance(wanted, Steps | PlaceWords):
        return
    for word in wanted.words:
        if word not in context.taken:
            yield Offer(word, Sort.STEP, told_step(word, wanted))
    if isinstance(wanted, PlaceWords) and context.role is Role.STEP and not context.taken:
        yield Offer("none", Sort.STEP, Told("no place", lambda: "none: no place"))


def _is(name: str, wanted: Type | None, meaning: Meaning) -> bool:
    """Whether a name can stand where a type is wanted; what is not known may."""
    found = meaning.type_of(name)
    match wanted, found:
        case (None, _) | (_, None):
            return True
        case Numeric(dimension), Numeric(other):
            return dimension == other
        case PlaceWords(()), PlaceWords():
            return True
        case PlaceWords(), _:
            return False
        case _:
            return wanted == found


def _sort(name: str, role: Role, meaning: Meaning) -> Sort:
    if role not in {Role.VALUE, Role.TRAIT, Role.SETTING}:
        return Sort.PART
    if name in meaning.traits:
        return Sort.TRAIT
    return Sort.SETTING if name in meaning.settings else Sort.TERM


def _heads(meaning: Meaning, line: int) -> Iterator[Offer]:
    header = meaning.header
    begins = header is None or header.place.line == line
    for head in sorted(HEAD_WORDS):
        changes = head in {"replace", "drop", "rename"}
        if (head == "standard") is begins and (not changes or (header and header.based_on)):
            yield Offer(head, Sort.WORD, told_word(head, begins=True))


def _in_text(found: SoFar, meaning: Meaning, path: Path | None, rulesets: Iterable[str]) -> Offers:
    names = [word.name for word in found.words]
    _, brace, part = found.part.rpartition("{")
    if "SAY" in names and brace and "}" not in part:
        return Offers(len(part), tuple(_names(Context(Role.VALUE, ""), "", meaning)))
    if names[:1] == ["STANDARD"] and names[-1] == "ON":
        bases = [*([] if path is None else files_beside(path)), *rulesets]
        return Offers(len(found.part), tuple(Offer(name, Sort.FILE) for name in bases))
    return Offers(0, ())


def files_beside(path: Path) -> list[str]:
    """The other rule files in the folder of a file and below, as `based on` names them, the nearest first."""
    found: list[str] = []
    try:
        for pattern in ("*.koi", "*/*.koi", "*/*/*.koi"):
            for each in sorted(path.parent.glob(pattern)):
                if each != path and len(found) < MOST_FILES:
                    found.append(each.relative_to(path.parent).as_posix())
    except OSError:
        return found
    return found
