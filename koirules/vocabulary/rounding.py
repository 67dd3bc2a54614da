"""Numbers as people read them: the one place where a number loses digits on its way to a reader.

Data hold the exact number (JSON, the journal, frames), and so does `koirules why --exact`. Rules compare the exact number,
so a rounded one must not say that a fish stands on the other side of a line: `apart` and `towards` see to that.
"""

from __future__ import annotations

from decimal import ROUND_CEILING, ROUND_DOWN, ROUND_FLOOR, ROUND_HALF_EVEN, Decimal

from koirules.vocabulary.kinds import shortest

DIGITS = 3
"""So many significant digits a person needs: more than a board, a scale or an eye can tell of a fish."""

_WRITTEN = 2
"""A number with so few decimals was written by a person, or is a score: it stays as it is."""

_MOST_DIGITS = 12
_WHOLE = Decimal(100)


def rounded(value: Decimal, digits: int = DIGITS, way: str = ROUND_HALF_EVEN) -> Decimal:
    """A number to some significant digits, never coarser than whole units; as it is where it has two decimals or fewer.

    way: how to round, one of the names of the module `decimal`.
    """
    value = value.normalize()
    exponent = value.as_tuple().exponent
    if value == 0 or not isinstance(exponent, int) or -exponent <= _WRITTEN:
        return value
    decimals = max(0, digits - 1 - value.adjusted())
    return round_to(value, decimals, way)


def round_to(value: Decimal, decimals: int, way: str = ROUND_HALF_EVEN) -> Decimal:
    """A number to some decimals."""
    return value.quantize(Decimal(1).scaleb(-decimals), way)


def for_people(value: Decimal, *, share: bool = False) -> str:
    """A number as a person reads it: `65` for 64.996734, `16.4` for 16.368125, `67.54` as it is.

    share: it is a share in %, of which 99.97 is not all: `99.9`.
    """
    told = rounded(value)
    if share and value < _WHOLE <= told:
        told = round_to(value, 1, ROUND_DOWN)
    return shortest(told)


def apart(value: Decimal, line: Decimal, *, share: bool = False) -> str:
    """A number with as many digits as tell it from another one: `65.003` where the line is 65."""
    told = for_people(value, share=share)
    digits = DIGITS
    while value != line and Decimal(told) == line and digits < _MOST_DIGITS:
        digits += 1
        told = shortest(rounded(value, digits))
    return told


def towards(value: Decimal, ahead: int, last: Decimal | None = None) -> Decimal:
    """The roundest number at or beyond a value, in a direction (1 up, -1 down), and not beyond the last one that will do."""
    way = ROUND_CEILING if ahead > 0 else ROUND_FLOOR
    for digits in range(DIGITS, _MOST_DIGITS):
        found = rounded(value, digits, way)
        if last is None or (found - last) * ahead <= 0:
            return found
    return value
