"""Numbers in remarks: `14.5 cm`, `12-13 cm`, `at least 18`, `about 60 %`, `half a scale`."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from attrs import frozen

from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Span
from koirules.vocabulary.units import UNITS, Unit

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
_ABOUT = {"about", "around", "roughly", "approximately", "circa", "ca", "some", "approx", "abt"}
_ABOUT_BEHIND = {"approx", "approximately", "roughly", "circa", "ca"}
_NUMBER = re.compile(r"[0-9]+(?:\.[0-9]+)?\Z")

# Before a text is cut into remarks: a decimal comma stands directly before a unit, a hyphen between two numbers means `to`.
_COMMA = re.compile(r"(?<![\d.,])(\d+),(\d+)(?=\s*(?:mm|cm|m|mg|kg|g|%)(?!\w))")
_DASH = re.compile(r"(\d)\s*[-–—]\s*(?=\d)")
_ABBREVIATED = re.compile(r"\b(approx|ca|abt)\.(?=\s*\d)", re.IGNORECASE)
_AND_HALF = re.compile(r"(?<![\d.])(\d+)(?:\s*½|(?:\s+|-)1\s*[/⁄]\s*2(?![\d/])|\s+and a half(?!\w))")
_HALF = re.compile(r"(?<![\d/])1\s*[/⁄]\s*2(?![\d/])|½")


def plain_numbers(text: str) -> str:
    """A text with its numbers written in one way: a point for the decimal comma, `to` for a dash, 0.5 for a half."""
    text = _AND_HALF.sub(r"\1.5", _ABBREVIATED.sub(r"\1", text))
    return _DASH.sub(r"\1 to ", _COMMA.sub(r"\1.\2", _HALF.sub("0.5", text)))


@frozen
class Written:
    """A number in a remark. low, high: None where it is open at that end. end: the place behind it."""

    end: int
    low: Decimal | None
    high: Decimal | None
    unit: Unit | None
    about: bool = False
    open_at: bool = False

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
        share = NEARLY if hedged else ABOUT if self.about else Decimal(0)
        if share:
            low, high = _wider(low, high, share, kind, hedged=hedged)
        low, high = max(low, whole[0]), min(high, whole[1])
        return Span(float(low), float(high)) if low <= high else None


def _wider(
    low: Decimal, high: Decimal, share: Decimal, kind: Number | Count, *, hedged: bool
) -> tuple[Decimal, Decimal]:
    if isinstance(kind, Count):
        # A count rounds outward: about 3 is 2 to 4.
        by = Decimal(1) if hedged else max(Decimal(1), (share * high).to_integral_value())
        return low - by, high + by
    return low - share * abs(low), high + share * abs(high)


def number_at(tokens: Sequence[str], start: int) -> Written | None:
    """The number that begins at a place, None where none does."""
    at, rises, about, is_open = start, 0, False, False
    for words, direction in _OPEN.items():
        if tuple(tokens[at : at + len(words)]) == words:
            at, rises, is_open = at + len(words), direction, words[0] not in {"at", "up", "no"}
            break
    else:
        if at < len(tokens) and tokens[at] in _ABOUT:
            at, about = at + 1, True
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
    if low > high:
        return None
    if tuple(tokens[end : end + 2]) == ("or", "so"):
        end, about = end + 2, True
    elif end < len(tokens) and tokens[end] in _ABOUT_BEHIND and _value(tokens, end + 1) is None:
        end, about = end + 1, True
    if rises:
        return Written(end, value if rises > 0 else None, None if rises > 0 else value, unit, open_at=is_open)
    return Written(end, low, high, unit, about)


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
    if end < len(tokens) and tokens[end] in _UNITS:
        return end + 1, value, UNITS[_UNITS[tokens[end]]]
    return end, value, None
