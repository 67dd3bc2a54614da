"""One value as a person writes it, or as a spreadsheet, a JSON file or Python gives it, made into a reading."""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterable
from decimal import Decimal
from enum import Enum
from numbers import Real
from typing import assert_never
from unicodedata import normalize

from koirules.vocabulary import misreads
from koirules.vocabulary.colour_readings import ColourReadings, read_colour_readings
from koirules.vocabulary.kinds import (
    Choice,
    Colours,
    Count,
    Kind,
    Label,
    Number,
    Patches,
    Places,
    Scale,
    YesNo,
    words_of,
)
from koirules.vocabulary.map_misreads import of_another_type
from koirules.vocabulary.map_text import MOST_LETTERS as MOST_LETTERS_OF_MAP
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.misread_colours import no_colour_readings
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import MARKS_FOR_UNKNOWN, folded, plain, position
from koirules.vocabulary.quantities import date_for_number, read_number, read_quantity, write_decimal
from koirules.vocabulary.readings import NO, YES, PlaceSet, Reading
from koirules.vocabulary.units import Unit

__all__ = ["CANNOT_TELL", "CannotTell", "Misread", "read_cell", "read_value"]


class CannotTell(Enum):
    """What a sorter writes who looked and could not tell."""

    MARK = "?"


CANNOT_TELL = CannotTell.MARK

_OR = re.compile(r"\s+or\s+", re.IGNORECASE)
_TO = re.compile(r"\s+to\s+", re.IGNORECASE)
_SIGNS = re.compile(r"\s*[-/,|~;&+]\s*")
_BETWEEN_PLACES = re.compile(r"\s*[,+;、]\s*")
_OPEN_PLACES = re.compile(
    r"(?:^|(?<=[\s,+;、]))(?:(?:(?P<bound>at\s+least|at\s+most|over|under)\s+)?(?P<number>[0-9]{1,3})"
    r"(?:\s+to\s+(?P<to>[0-9]{1,3}))?"
    r"(?:\s+of\s+(?:them|\(\s*(?P<places>[^()]+?)\s*\))|(?(bound)|(?!)))"
    r"|perhaps\s+(?P<perhaps>\S.*))\s*$",
    re.IGNORECASE,
)
"""What may stand behind the places that are in: `1 of them`, `2 of (tail, dorsal)`, `at least 1`, `perhaps tail`."""
_AND = re.compile(r"\s*(?:((?<![\w-])and(?![\w-])|&)\s*)+", re.IGNORECASE)
_NUMBER = re.compile(r"[+-]?[0-9][0-9.,]*")
_MOST_LETTERS = 1000
"""No value of a trait is longer, so that no time is lost on one that is none."""
_YES = (
    "true wahr vrai verdadero verdadeiro vero waar sant sann prawda ja oui sí si sì sim tak да hai はい ✓ ✔ ☑ x y 是 예"
)
_NO = "false falsch faux falso onwaar falskt usann fałsz nein nee nej nei non não nie нет いいえ ☐ n 否 아니요"
_TRUTHS = dict.fromkeys(_YES.split(), YES) | dict.fromkeys(_NO.split(), NO)
"""What people and spreadsheet programs of several countries write for yes and no, where it can mean nothing else."""

_Words = Scale | Choice | YesNo


def read_cell(kind: Kind, raw: object, unit: Unit | None = None) -> Reading | Misread | CannotTell | None:
    """What a cell of a record says: as `read_value`, and CANNOT_TELL for `?`."""
    if isinstance(raw, str) and raw.strip() in {"?", "？"} and not isinstance(kind, Label):
        return CANNOT_TELL
    return read_value(kind, raw, unit)


def read_value(kind: Kind, raw: object, unit: Unit | None = None) -> Reading | Misread | None:
    """The reading of one value; None where it is blank, a Misread where it cannot be read; never raises.

    unit: of the column's header, for numbers without a unit of their own; without either, it is the trait's own.
    """
    match raw:
        case None:
            return None
        case _ if is_missing(raw):
            return None
        case PatchMap() if isinstance(kind, Patches):
            return raw
        case ColourReadings() if isinstance(kind, Colours):
            return raw
        case str():
            found = _read_text(kind, raw, unit)
            if not isinstance(found, Misread) or not found.offers:
                return found
            kept = [one for one in found.offers if not isinstance(_read_text(kind, one, unit), Misread)]
            return misreads.with_offers(found, kind, kept)
        case bool():
            return _read_truth(kind, raw)
        case int() | float() | Decimal():
            return _read_number(kind, raw, unit)
        case datetime.date() | datetime.time() | datetime.timedelta():
            return _read_date(kind, raw, unit)
        case list() | tuple() | set() | frozenset():
            return _read_list(kind, raw)
        case Real():
            return _read_real(kind, raw, unit)
        case _ if type(raw).__module__ == "numpy" and getattr(raw, "shape", None) == ():
            plain_value = raw.item()  # type: ignore[attr-defined]
            unknown = type(plain_value).__module__ == "numpy"
            return misreads.unknown_object(type(raw).__name__, kind) if unknown else read_value(kind, plain_value, unit)
        case _:
            return misreads.unknown_object(type(raw).__name__, kind)


def is_missing(raw: object) -> bool:
    """Whether a value says that nothing is there: None, and what pandas has in its place."""
    return raw is None or type(raw).__name__ in {"NAType", "NaTType"}


def _read_text(kind: Kind, raw: str, unit: Unit | None) -> Reading | Misread | None:
    if isinstance(kind, Label):
        return normalize("NFC", raw.strip()) or None  # as rule files are read, whatever the machine it was typed on
    if len(raw) > (MOST_LETTERS_OF_MAP if isinstance(kind, Patches) else _MOST_LETTERS):
        return misreads.too_long(raw, kind)
    text = plain(raw)
    if not text:
        return None
    match kind:
        case Number() | Count():
            return read_quantity(kind, text, unit)
        case Scale() | Choice() | YesNo():
            return _read_words(kind, text)
        case Places():
            return _read_places(kind, text)
        case Colours():
            unknown = text.casefold() in MARKS_FOR_UNKNOWN
            return misreads.not_recorded_mark(text, kind) if unknown else read_colour_readings(text)
        case Patches():
            unknown = text.casefold() in MARKS_FOR_UNKNOWN
            return misreads.not_recorded_mark(text, kind) if unknown else read_map(text)
        case _:
            assert_never(kind)


def _read_truth(kind: Kind, raw: bool) -> Reading | Misread:
    was = str(raw).upper()
    match kind:
        case YesNo():
            return YES if raw else NO
        case Label():
            return was
        case Places():
            return misreads.places_not_named(was, kind) if raw else PlaceSet(0, 0)
        case _:
            return misreads.truth_for_number(was, kind)


def _read_number(kind: Kind, raw: float | Decimal, unit: Unit | None) -> Reading | Misread | None:
    # repr gives the shortest decimal that stands for the double: what was typed, not what it is stored as.
    value = Decimal(repr(float(raw))) if isinstance(raw, float) else Decimal(raw)
    if value.is_nan():
        return None
    match kind:
        case Number() | Count():
            return read_number(kind, value, unit)
        case Label():
            return misreads.infinite() if value.is_infinite() else write_decimal(value)
        case Patches():
            return of_another_type("A number")
        case Colours():
            return no_colour_readings("A number")
        case _:
            return misreads.number_for_word(write_decimal(value), kind)


def _read_real(kind: Kind, raw: Real, unit: Unit | None) -> Reading | Misread | None:
    """A number of another library, such as an integer of numpy."""
    try:
        value = float(raw)
    except (TypeError, ValueError, ArithmeticError):
        return misreads.unknown_object(type(raw).__name__, kind)
    return _read_number(kind, value, unit)


def _read_date(
    kind: Kind, raw: datetime.date | datetime.time | datetime.timedelta, unit: Unit | None
) -> Reading | Misread:
    if isinstance(raw, datetime.datetime) and raw.time() == datetime.time():
        raw = raw.date()
    was = str(raw)
    match kind:
        case Label():
            return was
        case Patches():
            return of_another_type(f"The date or time {was}")
        case Colours():
            return no_colour_readings(f"The date or time {was}")
        case Number() | Count():
            return date_for_number(kind, was, was, unit)
        case _:
            return misreads.became_a_date(was, kind)


def _read_list(kind: Kind, raw: Iterable[object]) -> Reading | Misread:
    if not isinstance(kind, Places):
        return misreads.list_for_one(kind)
    words: list[str] = []
    for item in raw:
        if isinstance(item, int | float | Decimal):
            return misreads.number_for_word(write_decimal(Decimal(item)), kind)
        if not isinstance(item, str):
            return misreads.unknown_object(type(item).__name__, kind)
        words.append(plain(item))
    return _place_set(kind, [word for word in words if word], " ".join(words))


def _read_words(kind: _Words, text: str) -> int | Misread:
    bits = _step(kind, text)
    if bits is not None:
        return bits
    bits = 0
    for part in _OR.split(text):
        one = _read_stretch(kind, part, text)
        if isinstance(one, Misread):
            return one
        bits |= one
    return bits


def _step(kind: _Words, word: str) -> int | None:
    if isinstance(kind, YesNo) and word.casefold() in _TRUTHS:
        return _TRUTHS[word.casefold()]
    found = position(kind, word)
    return None if found is None else 1 << found


def _read_stretch(kind: _Words, part: str, text: str) -> int | Misread:
    """One word, or every step from one word to another."""
    bits = _step(kind, part)
    if bits is not None:
        return bits
    ends = _TO.split(part)
    if len(ends) != 2:
        return _unknown(kind, part, text)
    low, high = (_step(kind, end) for end in ends)
    if low is None or high is None:
        return _unknown(kind, ends[0] if low is None else ends[1], text)
    if not isinstance(kind, Scale):
        return misreads.no_order(text, " or ".join(ends))
    if low > high:
        return misreads.ends_swapped(text, f"{ends[1]} to {ends[0]}")
    return 2 * high - low


def _unknown(kind: _Words, word: str, text: str) -> Misread:
    if text.casefold() in MARKS_FOR_UNKNOWN:
        return misreads.not_recorded_mark(text, kind)
    if _NUMBER.fullmatch(word):
        return misreads.number_for_word(word, kind)
    pieces = _SIGNS.split(text)
    if len(pieces) > 1 and all(_step(kind, piece) is not None for piece in pieces):
        stretch = isinstance(kind, Scale) and len(pieces) == 2 and "-" in text
        return misreads.joined_by_sign(text, (" to " if stretch else " or ").join(pieces))
    return misreads.unknown_word(word, text, kind, near(folded(word), words_of(kind)))


def _read_places(kind: Places, text: str, was: str = "") -> PlaceSet | Misread:
    """The places of a plain text; was: what messages show for it, where that is another text."""
    if text.casefold() in MARKS_FOR_UNKNOWN:
        return misreads.not_recorded_mark(text, kind)
    truth = None if position(kind, text) is not None else _step(YesNo(), text)
    if truth is not None:
        return PlaceSet(0, 0) if truth == NO else misreads.places_not_named(was or text, kind)
    whole: PlaceSet | None = None
    for part in _OR.split(text):
        one = _some_places(kind, part, was or text)
        if isinstance(one, Misread):
            joined = _AND.search(text)
            return _joined_places(kind, text, joined[1]) or one if joined else one
        whole = one if whole is None else whole.either(one)
    if whole is None:
        raise AssertionError("a text without a part")
    return whole


def _some_places(kind: Places, part: str, text: str) -> PlaceSet | Misread:
    """Places, then what else may be in: `tail`, `1 of them`, `tail, at least 1 of (dorsal, anal)`, `tail, perhaps dorsal`."""
    open_ones = _OPEN_PLACES.search(part)
    if open_ones is None:
        return _listed(kind, part, text)
    before = part[: open_ones.start()].strip(" ,+;、")
    sure = _listed(kind, before, text) if before else PlaceSet(0, 0)
    inside = open_ones["places"] or open_ones["perhaps"]
    among = _listed(kind, inside, text) if inside else PlaceSet.any_of(kind)
    if isinstance(sure, Misread):
        return sure
    if isinstance(among, Misread):
        return among
    free = among.possible & ~sure.sure
    size, least, most = free.bit_count(), 0, free.bit_count()
    if not open_ones["perhaps"]:
        one, other = int(open_ones["number"]), int(open_ones["to"] or open_ones["number"])
        by = {"at least": (one, size), "over": (one + 1, size), "at most": (0, one), "under": (0, one - 1)}
        least, most = by.get(" ".join((open_ones["bound"] or "").casefold().split()), (one, other))
    if not 0 <= least <= most <= size:
        return misreads.not_so_many_places(open_ones[0].strip(" ,"), size, kind)
    told = PlaceSet(sure.sure, sure.sure | free, sure.least + least, sure.least + most).narrowed()
    if told is None:
        raise AssertionError("some of the places that are there")
    return told


def _listed(kind: Places, part: str, text: str) -> PlaceSet | Misread:
    words: list[str] = []
    for chunk in _BETWEEN_PLACES.split(part):
        words += [chunk] if position(kind, chunk) is not None else _named(kind, chunk.split())
    return _place_set(kind, words, text)


def _joined_places(kind: Places, text: str, word: str) -> Misread | None:
    """What is wrong with places that are joined by `and` or `&`; another slip among them comes first."""
    better = _AND.sub(" ", text).strip()
    if not better:
        return None
    rest = _read_places(kind, better, text)
    return rest if isinstance(rest, Misread) else misreads.word_between_places(word, text, better, kind)


def _named(kind: Places, words: list[str]) -> list[str]:
    """Words put together where several make one place (`left pectoral`), the longest name first."""
    together: list[str] = []
    start = 0
    while start < len(words):
        size = next((n for n in (4, 3, 2) if position(kind, " ".join(words[start : start + n])) is not None), 1)
        together.append(" ".join(words[start : start + size]))
        start += size
    return together


def _place_set(kind: Places, words: list[str], text: str) -> PlaceSet | Misread:
    bits = 0
    nones = 0
    for i, word in enumerate(words):
        found = position(kind, word)
        if found is not None:
            bits |= 1 << found
        elif folded(word) == "none":
            nones += 1
        elif _NUMBER.fullmatch(word):
            return misreads.number_for_word(word, kind)
        else:
            meant = near(folded(" ".join(words[i : i + 2])), kind.places) or near(folded(word), kind.places)
            return misreads.unknown_word(word, text, kind, meant)
    return misreads.none_with_others(text) if nones and bits else PlaceSet(bits, bits)
