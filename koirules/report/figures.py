"""Numbers of results as people read them."""

from __future__ import annotations

from decimal import ROUND_FLOOR, ROUND_HALF_UP, Decimal

from koirules.vocabulary.kinds import shortest

_TENTH = Decimal("0.1")


def figure(low: Decimal, high: Decimal) -> str:
    """A number, or from where to where it can lie: `71.25`, `40.5 to 78`."""
    return shortest(low) if low == high else f"{shortest(low)} to {shortest(high)}"


def in_hundredths(low: Decimal, high: Decimal) -> str:
    """The same with both decimals: `71.25`, `40.50 to 78.00`."""
    return f"{low:.2f}" if low == high else f"{low:.2f} to {high:.2f}"


def for_people(low: Decimal, high: Decimal | None = None) -> str:
    """Points with one decimal, halves up: `99.8`, `81 to 82.9`.

    A number is never rounded up to a whole one: 75.98 is 75.9 and not 76, on which a grade may hang.
    """
    least = _tenth(low)
    return least if high is None or high == low else f"{least} to {_tenth(high)}"


def _tenth(value: Decimal) -> str:
    rounded = value.quantize(_TENTH, ROUND_HALF_UP)
    if rounded == rounded.to_integral_value() and rounded > value:
        rounded = value.quantize(_TENTH, ROUND_FLOOR)
    return shortest(rounded)
