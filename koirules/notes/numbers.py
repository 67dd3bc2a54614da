"""Numbers in remarks: `14.5 cm`, `12-13 cm`, `at least 18`, `about 60 %`, `half a scale`."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from functools import cache

from attrs import frozen

from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Span
from koirules.vocabulary.units import UNITS, Unit, added_units
from koirules.vocabulary.wordings import NUMBERS, tokens_of

ABOUT = Decimal("0.05")
"""`about N` is N less and more this share of it."""

NEARLY = Decimal("0.1")
"""A hedged number is wider by this share of it either way."""

_UNITS = {"%": "%", "mm": "mm", "cm": "cm", "m": "m", "mg": "mg", "g": "g", "kg": "kg"} | {
    "day": "days",
    "week": "weeks",
    "month": "months",
    "year": "years",
}
_OPEN = {
    ("at", "least"): 1,
    ("over",): 1,
    ("above",): 1,
    ("more", "than"): 1,
    ("longer", "than"): 1,
    ("at", "most"): -1,
    ("up", "to"): -1,
    ("under",): -1,
    ("below",): -1,
    ("less", "than"): -1,
    ("no", "more", "than"): -1,
    ("not", "even"): -1,
    ("not", "quite"): -1,
    ("well", "over"): 1,
    ("well", "above"): 1,
    ("well", "under"): -1,
    ("shorter", "than"): -1,
}
_BEHIND: dict[tuple[str, ...], tuple[Decimal, Decimal | None]] = {
    tuple(words.split()): ends
    for ends, each in {
        (Decimal(1), Decimal(1)): "flat, exactly, exact, dead, spot on, on the dot, to the mm, on the nail",
        (
            Decimal(1),
            1 + NEARLY,
        ): "and a bit, and a little, and a bit more, and a touch, and a half or so, and some, plus a bit",
        (Decimal(1), None): "easy, easily, at least, or more, and more, or over, and over, plus, if not more",
        (1 - NEARLY, Decimal(1)): "if that, at a push, at a pinch, top, at most, at the most, or less, max, maximum, "
        "not more, no more, if it stretch, if she stretch, if he stretch, and not more, or a bit less, or a little less, "
        "or just under, and that is with a following wind, if you stretch it, if i am kind",
        (
            1 - ABOUT,
            1 + ABOUT,
        ): "or so, or thereabout, near enough, give or take, ish, or about, or near it, or near enough, "
        "or something, or something like that, more or less, approx, approximately, roughly, circa, ca",
    }.items()
    for words in each.split(", ")
}
_LONGEST = max(map(len, _BEHIND))
"""What stands behind a number, and the shares of it between which it then lies: None where it is open at that end."""

_BEFORE = tuple(
    tuple(words.split())
    for words in ("call it", "i make it", "make it", "i would call it", "let us say", "let us call it", "say", "it say")
)
"""What stands before a number and says nothing of it."""

_ABOUT = {"about", "around", "roughly", "approximately", "circa", "ca", "some", "approx", "abt"}
_ABOUT_BEHIND = {"approx", "approximately", "roughly", "circa", "ca"}
_NUMBER = re.compile(r"[0-9]+(?:\.[0-9]+)?\Z")

# A hyphen between two numbers means `to`.
_DASH = re.compile(r"(\d)\s*[-–—]\s*(?=\d)")
_ABBREVIATED = re.compile(r"\b(approx|ca|abt)\.(?=\s*\d)", re.IGNORECASE)
_TENS = r"(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[- ])?"
_DIGIT = rf"(?:{'|'.join(NUMBERS[:10])}|nought|oh|[0-9])"
_POINT = re.compile(
    rf"(?<![\d.])(\d+|\b{_TENS}(?:{'|'.join(NUMBERS)})|\b(?:twenty|thirty|forty)) point ({_DIGIT}(?: {_DIGIT})*)\b",
    re.IGNORECASE,
)
_QUARTERS = re.compile(
    rf"(?<![\d.])(\d+|\b{_TENS}(?:{'|'.join(NUMBERS)})|\b(?:twenty|thirty|forty)) and (?:a|one|(three)) quarters?(?!\w)",
    re.IGNORECASE,
)
_AND_HALF = re.compile(
    rf"(?<![\d.])(\d+|\b{_TENS}(?:{'|'.join(NUMBERS)}))(?:\s*½|(?:\s+|-)1\s*[/⁄]\s*2(?![\d/])|\s+and a half(?!\w))",
    re.IGNORECASE,
)
_HALF = re.compile(r"(?<![\d/])1\s*[/⁄]\s*2(?![\d/])|½")


def _spoken() -> dict[str, str]:
    """What people say for each unit, with its symbol: of plugins the symbol and all that is written for it."""
    added = {tokens_of(word)[0]: unit.symbol for unit in added_units() for word in (unit.symbol, *unit.written)}
    return _UNITS if not added else added | _UNITS


@cache
def _comma(units: tuple[str, ...]) -> re.Pattern[str]:
    """A decimal comma, before a text is cut into remarks: it stands directly before a unit."""
    return re.compile(rf"(?<![\d.,])(\d+),(\d+)(?=\s*(?:mm|cm|m|mg|kg|g|%{''.join(f'|{one}' for one in units)})(?!\w))")


def plain_numbers(text: str) -> str:
    """A text with its numbers written in one way: a point for the decimal comma, `to` for a dash, 0.5 for a half."""
    comma = _comma(tuple(re.escape(word) for unit in added_units() for word in (unit.symbol, *unit.written)))
    if "point" in text or "quarter" in text:
        text = _POINT.sub(lambda found: f"{_digits(found[1])}.{''.join(map(_digit, found[2].split()))}", text)
        text = _QUARTERS.sub(lambda found: f"{_digits(found[1])}.{'75' if found[2] else '25'}", text)
    text = _AND_HALF.sub(lambda found: f"{_digits(found[1])}.5", _ABBREVIATED.sub(r"\1", text))
    return _DASH.sub(r"\1 to ", comma.sub(r"\1.\2", _HALF.sub("0.5", text)))


def _digit(word: str) -> str:
    return "0" if word.casefold() in {"nought", "oh"} else _digits(word)


def _digits(word: str) -> str:
    return tokens_of(word)[0]


@frozen
class Written:
    """A number in a remark. low, high: None where it is open at that end. end: the place behind it.

    less, more: the shares of it by which it may be less and more. measured: whether the wording is one of a measure, and not
    of a name or a count: `13.4`, `14 flat`, `about 14`.
    """

    end: int
    low: Decimal | None
    high: Decimal | None
    unit: Unit | None
    less: Decimal = Decimal(0)
    more: Decimal = Decimal(0)
    open_at: bool = False
    measured: bool = False

    def within(self, kind: Number | Count, *, hedged: bool = False) -> Span | None:
        """What it says of a trait, in the held unit; None where the trait cannot be that."""
        if isinstance(kind, Number):
            dimension = None if self.unit is None else self.unit.dimension
            if self.unit is not None and dimension != kind.dimension:
                return None
            unit = self.unit or kind.unit
            whole = (kind.held_low, kind.held_high)
        else:
            if self.unit is not None:
                return None
            unit, whole = None, (Decimal(0), Decimal(kind.high))
        ends = [None if end is None else end if unit is None else unit.to_held(end) for end in (self.low, self.high)]
        if isinstance(kind, Count) and any(end is not None and end != end.to_integral_value() for end in ends):
            return None
        if any(end is not None and not whole[0] <= end <= whole[1] for end in ends):
            return None
        low, high = (whole[i] if end is None else end for i, end in enumerate(ends))
        if self.open_at:  # `over 14` and `under 14` stop short of the value
            step = Decimal(1) if isinstance(kind, Count) else Decimal("0.000001")
            low, high = (low + step, high) if self.low is not None else (low, high - step)
        less, more = (max(share, NEARLY if hedged else share) for share in (self.less, self.more))
        low, high = low - _by(low, less, kind, hedged=hedged), high + _by(high, more, kind, hedged=hedged)
        low, high = max(low, whole[0]), min(high, whole[1])
        return Span(float(low), float(high)) if low <= high else None


def _by(end: Decimal, share: Decimal, kind: Number | Count, *, hedged: bool) -> Decimal:
    if not share:
        return Decimal(0)
    if isinstance(kind, Count):
        # A count rounds outward: about 3 is 2 to 4.
        return Decimal(1) if hedged else max(Decimal(1), (share * end).to_integral_value())
    return share * abs(end)


def number_at(tokens: Sequence[str], start: int) -> Written | None:
    """The number that begins at a place, None where none does."""
    at = start
    for words in _BEFORE:
        if tuple(tokens[at : at + len(words)]) == words:
            at += len(words)
            break
    called, rises, is_open = at > start, 0, False
    less = more = Decimal(0)
    for words, direction in _OPEN.items():
        if tuple(tokens[at : at + len(words)]) == words:
            at, rises, is_open = at + len(words), direction, words[0] not in {"at", "up", "no"}
            break
    else:
        if at < len(tokens) and tokens[at] in _ABOUT:
            at, less, more = at + 1, ABOUT, ABOUT
        elif tuple(tokens[at : at + 2]) == ("a", "good"):
            at, more = at + 2, NEARLY
    between = at < len(tokens) and tokens[at] == "between"
    first = _value(tokens, at + 1 if between else at)
    if first is None:
        return None
    end, value, unit = first
    low, high = value, value
    joins = {"and"} if between else {"to", "or", "till", "until"}
    if end < len(tokens) and tokens[end] in joins and (second := _value(tokens, end + 1)) is not None:
        end, high, unit = second[0], second[1], second[2] or unit
    elif between:
        return None
    elif unit is None and (second := _value(tokens, end)) is not None and _in_a_row(value, second[1]):
        end, high, unit = second
    if low > high:
        return None
    with_point = value != value.to_integral_value() or value.as_tuple().exponent != 0
    measured = bool(called or less or more or low != high or with_point)
    if rises:
        return Written(end, value if rises > 0 else None, None if rises > 0 else value, unit, open_at=is_open)
    behind = _behind(tokens, end)
    if behind is None:
        return Written(end, low, high, unit, less, more, measured=measured)
    end, (below, above) = behind
    if unit is None and end < len(tokens) and (meant := _spoken().get(tokens[end])):
        end, unit = end + 1, UNITS[meant]  # `13 or so cm`
    if above is None:
        return Written(end, low, None, unit, less, measured=True)
    return Written(end, low, high, unit, max(less, 1 - below), max(more, above - 1), measured=True)


def _in_a_row(first: Decimal, second: Decimal) -> bool:
    """Whether two numbers side by side are the ends of a guess: `seventy eighty`, `two three`."""
    return second - first == (10 if first % 10 == 0 and first >= 10 else 1)


def _behind(tokens: Sequence[str], at: int) -> tuple[int, tuple[Decimal, Decimal | None]] | None:
    """What stands behind a number and makes it looser: the longest."""
    for size in range(min(_LONGEST, len(tokens) - at), 0, -1):
        found = _BEHIND.get(tuple(tokens[at : at + size]))
        last = at + size == len(tokens)
        if found is not None and (last or tokens[at : at + size] != tokens[at : at + 1] or tokens[at] in _ABOUT_BEHIND):
            if not last and _value(tokens, at + size) is not None:
                continue
            return at + size, found
    return None


def _value(tokens: Sequence[str], at: int) -> tuple[int, Decimal, Unit | None] | None:
    if at >= len(tokens):
        return None
    word = tokens[at]
    if word == "half" and tuple(tokens[at + 1 : at + 3])[:1] == ("a",):
        value, end = Decimal("0.5"), at + 2
    elif _NUMBER.match(word):
        value, end = Decimal(word), at + 1
    else:
        return None
    if end < len(tokens) and (meant := _spoken().get(tokens[end])):
        return end + 1, value, UNITS[meant]
    return end, value, None


_COMPARED = re.compile(
    r"(?:about |by |some )?"
    r"(?:(?:a|an|half a|[1-4]) (?:fingernail|thumbnail|finger|thumb|eye width)|(?:a|half a) (?:cm|mm))\Z"
)


def past_comparison(tokens: Sequence[str], start: int) -> int:
    """Where a size by finger or thumb ends that begins at `start` (`about a fingernail`); `start` where there is none."""
    for end in range(len(tokens), start, -1):
        if _COMPARED.match(" ".join(tokens[start:end])):
            return end
    return start
