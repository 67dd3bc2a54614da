"""Numbers in remarks: `14.5 cm`, `12-13 cm`, `at least 18`, `about 60 %`, `half a scale`."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from functools import cache, lru_cache

from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Span
from koirules.vocabulary.units import UNITS, Unit, added_units
from koirules.vocabulary.wordings import NUMBERS, tokens_of

ABOUT = Decimal("0.05")
"""`about N` is N less and more this share of it."""

NEARLY = Decimal("0.1")
"""A hedged number is wider by this share of it either way."""

_MOST_REMEMBERED = 10_000

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
        (
            Decimal(1),
            Decimal(1),
        ): "flat, exactly, exact, dead, spot on, on the dot, to the mm, on the nail, bang on, bang on it, "
        "dead on, on the button, precisely, on the ruler, on the board, on the tape, by the ruler, by the board, by the tape, "
        "by my ruler, on my ruler, tip to tail, nose to tail, from nose to tail, from tip to tail, nose to tip, end to end, "
        "nose to tail tip, head to tail, say the ruler, say the board, say the tape, i measured, i measured it, i measured her, "
        "measured, when measured, and counting, and growing, and still growing, and filling, and filling out, "
        "but look more, but look bigger, but look longer, but look less, but look smaller, but it look more, but she look more, "
        "but look bigger than that, but i want to check",
        (
            Decimal(1),
            1 + NEARLY,
        ): "and a bit, and a little, and a bit more, and a touch, and a half or so, and some, plus a bit, strong, and change, "
        "and then some, "
        "and a whisker, and a hair, and a fraction, and a shade, and a smidge, and a tad, odd, or a touch more, or a bit more, "
        "or a little more, or just over, or a shade over, and a bit over, or slightly more, or a whisker more, good",
        (Decimal(1), None): "easy, easily, at least, or more, and more, or over, and over, plus, if not more",
        (1 - NEARLY, Decimal(1)): "if that, at a push, at a pinch, top, at most, at the most, or less, max, maximum, "
        "not more, no more, if it stretch, if she stretch, if he stretch, and not more, or a bit less, or a little less, "
        "or just under, at best, at the best, at the outside, at the very most, at very most, on a good day, or just shy, "
        "or just short, or a shade under, or a touch under, or a shade less, or a touch less, or slightly less, or "
        "slightly under, "
        "or a whisker under, scant, if you are generous, if i am generous, if you are kind, and that is with a following "
        "wind, if you stretch it, if i am kind",
        (
            1 - ABOUT,
            1 + ABOUT,
        ): "or so, or thereabout, near enough, give or take, ish, or about, or near it, or near enough, "
        "or something, or something like that, more or less, approx, approximately, roughly, circa, ca, "
        "or as near as, near as, or close to it, or close enough, or close, in round number, by eye, in my hand, eyeballed, "
        "unmeasured, i have not measured, not measured, as near as i can tell, as near as i can measure",
    }.items()
    for words in each.split(", ")
}
for _little in (
    "just",
    "a hair",
    "a shade",
    "a touch",
    "a bit",
    "a whisker",
    "slightly",
    "a little",
    "a tad",
    "a fraction",
    "a mm",
):
    for _way, _ends in (
        ("under below less short shy", (1 - NEARLY, Decimal(1))),
        ("over above more past longer", (Decimal(1), 1 + NEARLY)),
    ):
        _BEHIND |= {
            tuple(f"{_or} {_little} {_word}".split()): _ends
            for _word in _way.split()
            for _or in ("or", "maybe", "perhap")
        }
_BEHIND |= {
    tuple(f"and that is {_kind}".split()): (1 - NEARLY, Decimal(1))
    for _kind in (
        "generous",
        "kind",
        "being kind",
        "being generous",
        "stretching it",
        "pushing it",
        "a push",
        "a stretch",
        "stretched",
    )
}
_BEHIND |= {
    tuple(f"give or take {_little}".split()): (1 - ABOUT, 1 + ABOUT)
    for _little in (
        "a whisker",
        "a bit",
        "a hair",
        "a little",
        "a mm",
        "a cm",
        "a touch",
        "a fraction",
        "a few mm",
        "half a cm",
    )
}
_BEHIND |= {
    tuple(f"if {_it} is {_a} {_unit}".split()): (Decimal(1), 1 + NEARLY)
    for _it in ("it", "she", "he", "that")
    for _a, _unit in (("a", "cm"), ("a", "mm"), ("an", "inch"), ("a", "day"), ("a", "scale"))
}
_BEHIND |= {
    tuple(f"and {_on}".split()): (Decimal(1), Decimal(1))
    for _on in ("still going", "still growing", "rising", "not done")
}
_LONGEST = max(map(len, _BEHIND))
"""What stands behind a number, and the shares of it between which it then lies: None where it is open at that end."""

_BEFORE = tuple(
    tuple(words.split())
    for words in (
        *(
            "call it",
            "i make it",
            "make it",
            "i would call it",
            "let us say",
            "let us call it",
            "say",
            "it say",
            "somewhere",
        ),
        *(
            "the ruler say",
            "ruler say",
            "the board say",
            "board say",
            "the tape say",
            "tape say",
            "my ruler say",
            "he make it",
        ),
        *(
            "i get",
            "i get it at",
            "i got",
            "i measured",
            "i measure",
            "measured",
            "measuring",
            "it measure",
            "she measure",
        ),
        *(
            "i put it at",
            "i put her at",
            "i put him at",
            "i would put it at",
            "i would put her at",
            "i would put him at",
            "put it at",
        ),
        *("come in at", "come out at", "i measured it at", "i measured it and it is"),
        *(
            "i put the ruler on it and it is",
            "on the board",
            "on the ruler",
            "by the ruler",
            "the board read",
            "board read",
            "read",
        ),
        *("a flat", "an even", "a clear", "a full", "a clean"),
    )
)
"""What stands before a number and says nothing of it."""

_BEGINS = {words[0] for words in _BEFORE}

_CLOSE: dict[tuple[str, ...], tuple[Decimal, Decimal]] = {
    tuple(f"{a} {words}".split()): ends
    for ends, each in {
        (
            NEARLY,
            Decimal(0),
        ): "a shade under, a touch under, a bit under, a hair under, a whisker under, a fraction under, a tad under, "
        "slightly under, a little under, just under, fractionally under, just short of, just shy of, shy of, a shade short of, "
        "a touch short of, a bit short of, a whisker short of, a bare, a scant, getting on for, pushing, close on, "
        "approaching, knocking on, nudging, going on, the best part of, not far off, not far short of, a shade below, just "
        "below, "
        "a bit below, a little below, a touch below, slightly below, a bit less than, a little less than, slightly less than, "
        "a touch less than, just less than, a weak",
        (
            Decimal(0),
            NEARLY,
        ): "just over, just above, just past, a shade over, a touch over, a bit over, a little over, slightly over, "
        "a fraction over, a hair over, a whisker over, a tad over, fractionally over, little over, bit over, a good, "
        "comfortably, "
        "a strong, a comfortable, a generous, a bit more than, a little more than, slightly more than, just more than, "
        "a touch more than, a bit past, a little past",
        (
            ABOUT,
            ABOUT,
        ): "in the region of, in the area of, round about, around about, somewhere near, somewhere about, somewhere around, "
        "somewhere in the region of, in the neighbourhood of, close to, plus minus, plus or minus",
    }.items()
    for words in each.split(", ")
    for a in ("", "maybe", "only", "say")
}
"""What stands before a number that is near to what is meant, and by which share that may be less or more."""
for _little in ("bit", "shade", "touch", "hair", "whisker", "fraction", "tad", "little", "smidge"):
    for _words, _shares in (
        ("under, below, short of, shy of, less than", (NEARLY, Decimal(0))),
        ("over, above, past, more than", (Decimal(0), NEARLY)),
    ):
        _CLOSE |= {
            (*_a, _little, *_word.split()): _shares
            for _word in _words.split(", ")
            for _a in ((), ("a",), ("only", "a"))
        }
_LONGEST_CLOSE = max(map(len, _CLOSE))
_ENDS_CLOSE = {words[-1] for words in _CLOSE}
_INCHES = re.compile(
    r"(?<![\d./])(?:\ban? )?(\d+(?:\.5)?|\b(?:three|four|five|six|seven|eight|nine|ten|eleven|twelve))(?:[- ]inch(?:es|er|"
    r"ers)?|\")(?!\w)",
    re.IGNORECASE,
)
_APPROACHED = re.compile(
    r"\b(?:about|around|roughly|nearly|almost|over|under|some|good|to|of|for|on|barely|just|quite|perhaps|maybe|than|least|"
    r"most) $",
    re.IGNORECASE,
)
_FOOT = re.compile(
    r"^((?:(?:it's|it is|she's|he's|just|about|around|roughly|nearly|almost|not quite|quite|over|under|close to|getting on for|"
    r"a shade|a touch|well|all of|easily|maybe|perhaps|i'd say|i think|say|call it|must be) )*)(?:(half) )?(?:a|one) foot( "
    r"and a half)?(?= long$|$| or so$|"
    r" i'd say$| i think$| if (?:it|she|he|that)(?:'s| is) an? (?:inch|cm|day|mm)$| in length$| nose to tail$| or more$)",
    re.IGNORECASE,
)
_ABOUT = {"about", "around", "roughly", "approximately", "circa", "ca", "some", "approx", "abt"}
_STRONG = {"strong", "good", "odd"}
_ROUND = 10
"""From here on `20 odd` is a length."""
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
_INCH = Decimal("2.54")
_FEWEST_INCHES = 3
"""Of fewer inches are gaps and patches."""
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
    units = tuple(re.escape(word) for unit in added_units() for word in (unit.symbol, *unit.written))
    return _plain_numbers(text, _comma(units))


@lru_cache(maxsize=_MOST_REMEMBERED)
def _plain_numbers(text: str, comma: re.Pattern[str]) -> str:
    if "point" in text or "quarter" in text:
        text = _POINT.sub(lambda found: f"{_digits(found[1])}.{''.join(map(_digit, found[2].split()))}", text)
        text = _QUARTERS.sub(lambda found: f"{_digits(found[1])}.{'75' if found[2] else '25'}", text)
    text = _AND_HALF.sub(lambda found: f"{_digits(found[1])}.5", _ABBREVIATED.sub(r"\1", text))
    return _DASH.sub(r"\1 to ", comma.sub(r"\1.\2", _HALF.sub("0.5", text)))


def in_cm(text: str) -> str:
    """A remark with a length in inches, of so many that a fish may be meant, in cm; who speaks of inches means about so many."""
    if "inch" not in text and "foot" not in text and '"' not in text:
        return text
    if (foot := _FOOT.match(text.strip())) is not None:
        inches = Decimal(6 if foot[2] else 18 if foot[3] else 12)
        return f"{foot[1]}{'' if foot[1].strip() else 'about '}{_cm(inches)}{text.strip()[foot.end() :]}"
    text = _AND_HALF.sub(lambda half: f"{_digits(half[1])}.5", text)
    found = _INCHES.search(text)
    if found is None or (inches := Decimal(_digits(found[1]))) < _FEWEST_INCHES:
        return text
    ahead = text[: found.start()]
    return f"{ahead}{'' if _APPROACHED.search(ahead) else 'about '}{_cm(inches)}{text[found.end() :]}"


def _cm(inches: Decimal) -> str:
    return f"{(inches * _INCH).quantize(Decimal('0.1'))} cm"


def _digit(word: str) -> str:
    return "0" if word.casefold() in {"nought", "oh"} else _digits(word)


def _digits(word: str) -> str:
    return tokens_of(word)[0]


@frozen
class Written:
    """A number in a remark. low, high: None where it is open at that end. end: the place behind it.

    less, more: the shares of it by which it may be less and more. measured: whether the wording is one of a measure, and not
    of a name or a count: `13.4`, `14 flat`, `about 14`. near: whether words before it say so: `a shade under 18`.
    """

    end: int
    low: Decimal | None
    high: Decimal | None
    unit: Unit | None
    less: Decimal = Decimal(0)
    more: Decimal = Decimal(0)
    open_at: bool = False
    measured: bool = False
    near: bool = False

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
    for words in _BEFORE if at < len(tokens) and tokens[at] in _BEGINS else ():
        if tuple(tokens[at : at + len(words)]) == words:
            at += len(words)
            break
    called, rises, is_open = at > start, 0, False
    less = more = Decimal(0)
    near = next((size for size in range(_LONGEST_CLOSE, 0, -1) if tuple(tokens[at : at + size]) in _CLOSE), 0)
    if near:
        less, more = _CLOSE[tuple(tokens[at : at + near])]
        at += near
    for words, direction in () if near else _OPEN.items():
        if tuple(tokens[at : at + len(words)]) == words:
            at, rises, is_open = at + len(words), direction, words[0] not in {"at", "up", "no"}
            break
    else:
        if at < len(tokens) and tokens[at] in _ABOUT:
            at, less, more = at + 1, ABOUT, ABOUT
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
    if behind is not None and value < _ROUND and tokens[end] in _STRONG:
        behind = None  # `2 strong` is said of two patches
    if behind is None:
        return Written(end, low, high, unit, less, more, measured=measured, near=bool(near))
    end, (below, above) = behind
    if unit is None and end < len(tokens) and (meant := _spoken().get(tokens[end])):
        end, unit = end + 1, UNITS[meant]  # `13 or so cm`
    if above is None:
        return Written(end, low, None, unit, less, measured=True)
    return Written(end, low, high, unit, max(less, 1 - below), max(more, above - 1), measured=True, near=bool(near))


def is_near(tokens: Sequence[str]) -> bool:
    """Whether a number is told by what it is near to: `a shade under 18`."""
    if _ENDS_CLOSE.isdisjoint(tokens):
        return False
    numbers = (number_at(tokens, at) for at in range(len(tokens)))
    return any(number is not None and number.near for number in numbers)


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
