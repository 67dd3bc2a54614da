"""Numbers of results as people read them."""

from __future__ import annotations

from decimal import Decimal

from koirules.vocabulary.kinds import shortest


def figure(low: Decimal, high: Decimal) -> str:
    """A number, or from where to where it can lie: `71.25`, `40.5 to 78`."""
    return shortest(low) if low == high else f"{shortest(low)} to {shortest(high)}"


def in_hundredths(low: Decimal, high: Decimal) -> str:
    """The same with both decimals: `71.25`, `40.50 to 78.00`."""
    return f"{low:.2f}" if low == high else f"{low:.2f} to {high:.2f}"
