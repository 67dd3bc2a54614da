"""Numbers and counts as people write them: `12.5cm`, `12,5`, `40 % to 50 %`."""

from __future__ import annotations

import re
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal, localcontext

from koirules.values import frozen
from koirules.vocabulary import misreads
from koirules.vocabulary.expected import stretch_near
from koirules.vocabulary.kinds import Count, Number, shortest
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.plain_text import MARKS_FOR_UNKNOWN, looks_like_a_date, numbers_of_a_date
from koirules.vocabulary.readings import Span
from koirules.vocabulary.units import UNITS, WRITTEN_LOOSELY, WRITTEN_OTHERWISE, Dimension, Unit

_DIGITS = r"[+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)"
_EXPONENT = r"[eE][+-]?[0-9]+"
_WITH_UNIT = re.compile(rf"({_DIGITS})({_EXPONENT})?\s*([^0-9.,\s].*)?")
# Atomic, so that the sign of an exponent is never taken for one that joins two numbers.
_WHOLE_NUMBER = rf"((?>{_DIGITS}(?:{_EXPONENT})?))"
_DASHED = re.compile(rf"{_WHOLE_NUMBER}\s*([^0-9.,\s~/-]*)\s*[-~/]\s*{_WHOLE_NUMBER}\s*([^0-9.,\s].*)?")
_GROUPED = re.compile(rf"([+-]?[0-9]{{1,3}}(?:[ '.,][0-9]{{3}})+)([.,][0-9]+)?({_EXPONENT})?\s*([^0-9.,\s].*)?")
_ABOVE = r"[>≥]|over\b|above\b|more than\b|at least\b"
_BELOW = r"[<≤]|under\b|below\b|less than\b|at most\b|up to\b|nearly\b|almost\b"
_ABOUT = r"[~≈±=]|about\b|around\b|roughly\b|approx(?:imately)?\b|ca\b|circa\b"
_ROUGH = re.compile(
    rf"(?:(?P<above>{_ABOVE})|(?P<below>{_BELOW})|{_ABOUT})\.?\s*(?P<rest>.*?)(?:\s*[+?])*"
    rf"|(?=.*[0-9])(?P<unsure>.*?)\s*(?:(?P<more>\+)|\?)+",
    re.IGNORECASE,
)
_OPEN = re.compile(
    r"(?P<words>(?P<least>at least\b|from\b|>=|=>|≥)|(?P<most>at most\b|up to\b|<=|=<|≤)"
    r"|(?P<above>over\b|above\b|more than\b|>)|(?P<below>under\b|below\b|less than\b|<)"
    r"|(?P<about>about\b|around\b|roughly\b|approx(?:imately)?\b|ca\b|circa\b|~|≈))\.?\s*(?P<rest>\S.*)"
    r"|(?P<number>\S.*?)\s+or\s+(?:(?P<more>more)|(?P<less>less))",
    re.IGNORECASE,
)
_TWENTIETH = Decimal("0.05")
_MILLIONTH = Decimal("0.000001")
_TO = re.compile(r"\s+to\s+", re.IGNORECASE)
_OR = re.compile(r"\s+or\s+", re.IGNORECASE)
_MOST_DIGITS = 40
"""More digits than any measure has; so many are still converted exactly."""

_FARTHEST = 30
"""No measure has an exponent of ten beyond this, up or down."""


@frozen
class Quantity:
    """A number as it was written, with its unit where it has one of its own; `digits` is the number in plain form."""

    was: str
    value: Decimal
    digits: str
    unit: str


def read_quantity(kind: Number | Count, text: str, unit: Unit | None) -> Span | Misread:
    """The span that a plain text says. unit: of the column, for numbers without a unit of their own."""
    open_ended = _read_open(kind, text, unit)
    if open_ended is not None:
        return open_ended
    odd = _not_one_number(kind, text, unit)
    return _read_stretch(kind, text, unit) if odd is None else odd


def _read_open(kind: Number | Count, text: str, unit: Unit | None) -> Span | Misread | None:
    """The span of an open-ended or rough number: `at least 3 %`, `over 0`, `about 14 cm`; None for any other text.

    `over` and `under` stop a millionth of the held unit beside the number (one for counts); `about` is the number less and
    more a twentieth (rounded outward for counts). Nothing lies outside the range of the trait.
    """
    match = _OPEN.fullmatch(text)
    one = None if match is None else _read_end(kind, match["rest"] or match["number"])
    if (
        match is None
        or not isinstance(one, Quantity)
        or one.unit.strip("?+ ") != one.unit
        or (match["about"] and not one.value)
    ):
        return None
    words = match["words"] or ""
    before, behind = (f"{words} ", "") if words else ("", text[match.end("number") :])
    doubtful = _share_or_part(kind, text, one, one, unit, before, behind)
    if doubtful is not None:
        return doubtful
    held = _held(kind, one, one.unit, unit)
    if isinstance(held, Misread):
        return held
    least, most = (Decimal(0), Decimal(kind.high)) if isinstance(kind, Count) else (kind.held_low, kind.held_high)
    step = Decimal(1) if isinstance(kind, Count) else _MILLIONTH
    low, high = least, most
    if match["about"]:
        width = abs(held) * _TWENTIETH
        low, high = held - width, held + width
        if isinstance(kind, Count):
            low, high = low.to_integral_value(ROUND_FLOOR), high.to_integral_value(ROUND_CEILING)
    elif match["least"] or match["more"]:
        low = held
    elif match["most"] or match["less"]:
        high = held
    elif match["above"]:
        low = held + step
    else:
        high = held - step
    low, high = max(low, least), min(high, most)
    if low > high:
        return misreads.out_of_range(text, "", kind, None)
    return Span(float(low) + 0.0, float(high) + 0.0)


def _read_stretch(kind: Number | Count, text: str, unit: Unit | None) -> Span | Misread:
    parts = _TO.split(text)
    if len(parts) > 2:
        return misreads.not_a_number(text, kind)
    ends: list[Quantity] = []
    for part in parts:
        end = _read_end(kind, part)
        if isinstance(end, Misread):
            return end
        ends.append(end)
    return _span(kind, text, ends[0], ends[-1], unit)


def read_number(kind: Number | Count, value: Decimal, unit: Unit | None) -> Span | Misread:
    """The span of one number that came as a number. unit: of the column."""
    if value.is_infinite():
        return misreads.infinite()
    was = write_decimal(value)
    if _too_long(value):
        return misreads.too_many_digits(was)
    one = Quantity(was, value, was, "")
    return _span(kind, was, one, one, unit)


def may_be_part_of_one(kind: Number | Count) -> bool:
    """Whether a bare number above 0 and at most 1 has two meanings: as a share in %, and as a part of one."""
    return isinstance(kind, Number) and kind.dimension is Dimension.SHARE and kind.high > 1


def exactly_held(unit: Unit, value: Decimal) -> Decimal:
    """A value in a unit as a value in the held unit, with every digit that a number which is read can have."""
    with localcontext(prec=2 * _MOST_DIGITS):
        return unit.to_held(value)


def date_for_number(kind: Number | Count, text: str, shown: str, unit: Unit | None) -> Misread:
    """What is wrong with a date, with the numbers that it may have been made of. unit: of the column."""
    low, high = numbers_of_a_date(text) or ("", "")
    seen = low if low == high else f"{low} to {high}"
    return misreads.became_a_date(shown, kind, _if_read(kind, seen, unit))


def unit_named(word: str) -> Unit | None:
    """The unit that somebody wrote, in any of the ways that people write units; None where there is none such."""
    symbol = word if word in UNITS else WRITTEN_OTHERWISE.get(word) or WRITTEN_LOOSELY.get(word.rstrip(".").casefold())
    return UNITS[symbol] if symbol else None


def write_decimal(value: Decimal) -> str:
    """A decimal in its shortest form, with an exponent only where it would be absurdly long."""
    if not value:
        return "0"
    if value.is_finite() and (-_MOST_DIGITS < value.adjusted() < _MOST_DIGITS):
        return shortest(value)
    return str(value)


def _too_long(value: Decimal) -> bool:
    far = bool(value) and not -_FARTHEST <= value.adjusted() <= _FARTHEST
    return far or len(value.as_tuple().digits) > _MOST_DIGITS


def _not_one_number(kind: Number | Count, text: str, unit: Unit | None) -> Misread | None:
    low = text.casefold()
    if low in MARKS_FOR_UNKNOWN or low == "none":
        return misreads.not_recorded_mark(text, kind)
    if looks_like_a_date(text):
        return date_for_number(kind, text, f'"{text}"', unit)
    if not _TO.search(text) and (dashed := _DASHED.fullmatch(text)):
        return misreads.joined_by_sign(text, _undashed(dashed))
    if rough := _ROUGH.fullmatch(text):
        return misreads.roughly(text, kind, _if_read(kind, _less_rough(kind, rough, unit), unit))
    pieces = _OR.split(text)
    if len(pieces) > 1:
        ends = [_read_end(kind, piece) for piece in pieces]
        read = [end for end in ends if isinstance(end, Quantity)]
        if len(read) < len(ends):
            return misreads.not_a_number(text, kind)
        lowest, highest = (pick(read, key=lambda end: end.value) for pick in (min, max))
        return misreads.either_number(text, _stretch(lowest, highest))
    return None


def _if_read(kind: Number | Count, text: str, unit: Unit | None) -> str | None:
    """A text that would be read as a number; None for any other, so that no mend leads to the next problem."""
    return text if isinstance(_read_stretch(kind, text, unit), Span) else None


def _undashed(dashed: re.Match[str]) -> str:
    one, unit, other, last = dashed.groups("")
    behind = (unit or last).rstrip("?+ ")
    return f"{one} to {other}{f' {behind}' if behind else ''}"


def _less_rough(kind: Number | Count, rough: re.Match[str], column: Unit | None) -> str:
    """What a rough number may have meant: its own two ends, or a small stretch at the number."""
    text = rough["rest"] or rough["unsure"] or ""
    if dashed := _DASHED.fullmatch(text):
        return _undashed(dashed)
    one = _read_end(kind, text)
    if isinstance(one, Misread):
        return text if _TO.search(text) else ""
    used = unit_named(one.unit) or column or (kind.unit if isinstance(kind, Number) else None)
    above = rough["above"] or rough["more"]
    steps = (0, 2) if above else (2, 0) if rough["below"] else (1, 1)
    return stretch_near(kind, one.value, used, steps) + (f" {one.unit}" if one.unit else "")


def _read_end(kind: Number | Count, part: str) -> Quantity | Misread:
    if grouped := _GROUPED.fullmatch(part):
        whole, decimals, exponent, unit = grouped.groups("")
        marks = re.sub(r"[0-9+-]", "", whole)
        if decimals or len(marks) > 1 or marks in {" ", "'"}:
            last = whole[-4] if not decimals and len(set(marks)) > 1 else ""
            if last in {".", ","}:
                whole, decimals = whole[:-4], whole[-4:]
            better = re.sub(r"[ '.,]", "", whole) + decimals.replace(",", ".") + exponent
            return misreads.grouped_digits(part, f"{better}{f' {unit}' if unit else ''}")
    match = _WITH_UNIT.fullmatch(part)
    if match is None:
        return misreads.not_a_number(part, kind)
    digits, exponent, unit = match.groups("")
    if re.search("[0-9]", unit):
        return misreads.not_a_number(part, kind)
    whole, _, part_after = digits.partition(",")
    if not exponent and len(part_after) == 3 and whole.lstrip("+-") not in {"", "0"}:
        return misreads.comma_in_number(part, whole, part_after)
    if abs(int(exponent[1:] or 0)) > _FARTHEST:
        return misreads.too_many_digits(part)
    plain_digits = digits.replace(",", ".")
    value = Decimal(plain_digits + exponent)
    if _too_long(value):
        return misreads.too_many_digits(part)
    return Quantity(part, value, write_decimal(value) if exponent else plain_digits, unit.strip())


def _span(kind: Number | Count, text: str, low: Quantity, high: Quantity, column: Unit | None) -> Span | Misread:
    doubtful = _share_or_part(kind, text, low, high, column)
    if doubtful is not None:
        return doubtful
    held: list[Decimal] = []
    for end in (low, high):
        word = end.unit or high.unit or low.unit
        one = _held(kind, end, word, column)
        if isinstance(one, Misread):
            return one
        held.append(one)
    if held[0] > held[1]:
        return misreads.ends_swapped(text, _stretch(high, low))
    # Adding 0.0 turns -0.0, which a spreadsheet may hold, into 0.0.
    return Span(float(held[0]) + 0.0, float(held[1]) + 0.0)


def _share_or_part(
    kind: Number | Count,
    text: str,
    low: Quantity,
    high: Quantity,
    column: Unit | None,
    before: str = "",
    behind: str = "",
) -> Misread | None:
    """What is wrong with 0.45 where a share in % is expected: it may be 45 % or 0.45 %.

    A column whose header has the unit takes it at its word, unless the share would be an unusual one. before, behind: what
    stands beside the number.
    """
    if not isinstance(kind, Number) or not may_be_part_of_one(kind) or low.unit or high.unit:
        return None
    times = [end.value * 100 for end in (low, high)]
    if not (0 <= low.value <= high.value and 0 < high.value <= 1 and kind.low <= times[0] and times[1] <= kind.high):
        return None
    usual = kind.usual
    if column is not None and (usual is None or (usual[0] <= low.value and high.value <= usual[1])):
        return None
    shares, parts = ([f"{shortest(end)} %" for end in ends] for ends in (times, (low.value, high.value)))
    whole, part = (f"{before}{' to '.join(dict.fromkeys(told))}{behind}" for told in (shares, parts))
    return misreads.share_or_part(text, whole, part)


def _stretch(low: Quantity, high: Quantity) -> str:
    """The words for everything from one quantity to another; a unit that both share stands once, at the end."""
    if low.unit and high.unit and low.unit != high.unit:
        return f"{low.digits} {low.unit} to {high.digits} {high.unit}"
    unit = low.unit or high.unit
    return f"{low.digits} to {high.digits}{f' {unit}' if unit else ''}"


def _held(kind: Number | Count, end: Quantity, word: str, column: Unit | None) -> Decimal | Misread:
    if isinstance(kind, Count) or kind.unit is None:
        if word:
            return misreads.unit_on_plain(end.was, _without(kind, end, word), kind)
        if column:
            return misreads.column_unit_on_plain(column.symbol, kind)
        if isinstance(kind, Count) and end.value != end.value.to_integral_value():
            return misreads.not_whole(end.was)
        return end.value if _fits(kind, end.value) else misreads.out_of_range(end.was, "", kind, None)
    unit = unit_named(word) if word else column or kind.unit
    if unit is None:
        return misreads.unknown_unit(end.was, kind)
    if unit.dimension is not kind.dimension:
        return misreads.wrong_dimension(end.was, unit.symbol, kind)
    with localcontext(prec=2 * _MOST_DIGITS):
        held = unit.to_held(end.value)
        if kind.held_low <= held <= kind.held_high:
            return held
        own = shortest(round(kind.unit.from_held(held), 6))
        means = f"{'' if word else f'in {unit.symbol} '}is {own} {kind.unit.symbol}" if unit is not kind.unit else ""
        return misreads.out_of_range(end.was, means, kind, None if word else _other_unit(kind, end, unit))


def _fits(kind: Number | Count, value: Decimal) -> bool:
    low, high = (Decimal(0), Decimal(kind.high)) if isinstance(kind, Count) else (kind.low, kind.high)
    return low <= value <= high


def _without(kind: Number | Count, end: Quantity, word: str) -> str | None:
    """The plain number that may have been meant by one with a unit, where it is in range."""
    value = end.value / 100 if unit_named(word) is UNITS["%"] else end.value
    return shortest(value) if _fits(kind, value) else None


def _other_unit(kind: Number, end: Quantity, used: Unit) -> str | None:
    """The quantity in the nearest other unit in which it would be in range: what may have been meant."""
    others = [unit for unit in UNITS.values() if unit.dimension is used.dimension and unit is not used]
    fits = [unit for unit in others if kind.held_low <= unit.to_held(end.value) <= kind.held_high]
    if not fits or not end.value:
        return None
    nearest = min(fits, key=lambda unit: max(unit.exact / used.exact, used.exact / unit.exact))
    return f"{end.digits} {nearest.symbol}"
