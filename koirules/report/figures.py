"""Numbers of results as people read them."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import ROUND_FLOOR, ROUND_HALF_UP, Decimal

from koirules.languages import ENGLISH, Tongue
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.rounding import round_to


def figure(low: Decimal, high: Decimal, tongue: Tongue = ENGLISH) -> str:
    """A number, or from where to where it can lie: `71.25`, `40.5 to 78`."""
    return _stretch(shortest(low), None if low == high else shortest(high), tongue)


def in_hundredths(low: Decimal, high: Decimal, tongue: Tongue = ENGLISH) -> str:
    """The same with both decimals: `71.25`, `40.50 to 78.00`."""
    return _stretch(f"{low:.2f}", None if low == high else f"{high:.2f}", tongue)


def in_tenths(low: Decimal, high: Decimal | None = None, tongue: Tongue = ENGLISH) -> str:
    """Points as a page shows them, with one decimal, halves up: `99.8`, `81 to 82.9`.

    A number is never rounded up to a whole one: 75.98 is 75.9 and not 76, on which a grade may hang.
    """
    return _stretch(_tenth(low), None if high is None or high == low else _tenth(high), tongue)


def _stretch(low: str, high: str | None, tongue: Tongue) -> str:
    return tongue.figure(low) if high is None else tongue.stretch(tongue.figure(low), tongue.figure(high))


def parts_in_tenths(
    parts: Sequence[tuple[Decimal, Decimal]], whole: tuple[Decimal, Decimal], tongue: Tongue = ENGLISH
) -> list[str]:
    """The parts of points with one decimal, low and high ends, so that they add up to the whole as that is told."""
    lows, highs = (_adding_up([part[end] for part in parts], whole[end]) for end in (0, 1))
    return [
        _stretch(shortest(low), None if part[0] == part[1] else shortest(high), tongue)
        for part, low, high in zip(parts, lows, highs, strict=True)
    ]


def _adding_up(parts: Sequence[Decimal], whole: Decimal) -> list[Decimal]:
    """Each part rounded down, then up where most was lost, until the sum is reached (the method of largest remainders)."""
    if sum(parts) != whole:
        return [_rounded(part) for part in parts]
    told = [round_to(part, 1, ROUND_FLOOR) for part in parts]
    tenth = Decimal("0.1")
    missing = int((_rounded(whole) - sum(told)) / tenth)
    reaches = [one + tenth == (one + tenth).to_integral_value() for one in told]
    lost = sorted(range(len(parts)), key=lambda i: (told[i] == parts[i], reaches[i], told[i] - parts[i]))
    for i in lost[:missing]:
        told[i] += tenth
    return told


def _tenth(value: Decimal) -> str:
    return shortest(_rounded(value))


def _rounded(value: Decimal) -> Decimal:
    told = round_to(value, 1, ROUND_HALF_UP)
    return round_to(value, 1, ROUND_FLOOR) if told == told.to_integral_value() and told > value else told
