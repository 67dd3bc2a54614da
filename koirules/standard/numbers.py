"""Numbers as written, made exact and held in the unit of their dimension."""

from __future__ import annotations

from decimal import ROUND_FLOOR, Decimal
from typing import TYPE_CHECKING

from koirules.problems import Problem, values
from koirules.standard.tree import Constant
from koirules.standard.types import Numeric
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.readings import Span
from koirules.vocabulary.units import UNITS, Dimension, Unit

if TYPE_CHECKING:
    from koirules.language.syntax import Quantity

MOST = Decimal(1_000_000)
MOST_DECIMALS = 6
MOST_POINTS = Decimal(1_000)


def decimals(value: Decimal) -> int:
    """How many decimals a number needs."""
    _, digits, exponent = value.as_tuple()
    # Counted by hand: `normalize` would first round to the digits of the context and drop what lies beyond them.
    needed = -exponent if isinstance(exponent, int) else 0
    for digit in reversed(digits):
        if digit or needed <= 0:
            return max(0, needed)
        needed -= 1
    return 0


def written(quantity: Quantity) -> str:
    """A quantity as a person writes it."""
    return f"{shortest(quantity.value)} {quantity.unit}" if quantity.unit else shortest(quantity.value)


def share_meant(bare: Quantity) -> tuple[str, str] | None:
    """The two shares that a bare number below 1 may stand for: `40 %` and `0.4 %` for 0.4."""
    if bare.unit is not None or not 0 < abs(bare.value) < 1:
        return None
    return f"{shortest(bare.value * 100)} %", f"{shortest(bare.value)} %"


def unit_of(quantity: Quantity) -> Unit | None:
    """The unit of a quantity; the grammar lets no unknown one pass."""
    return None if quantity.unit is None else UNITS[quantity.unit]


def dimension_of(quantity: Quantity) -> Dimension | None:
    """What a quantity measures."""
    unit = unit_of(quantity)
    return None if unit is None else unit.dimension


def held(quantity: Quantity, problems: list[Problem]) -> Decimal | None:
    """The value in the held unit, exactly; None and a problem where it has too many decimals or lies out of bounds."""
    unit = unit_of(quantity)
    if decimals(quantity.value) > MOST_DECIMALS:
        problems.append(values.not_exact(quantity.place, written(quantity), MOST_DECIMALS))
        return None
    # Checked before the conversion, which a number of thousands of digits would make slow and inexact.
    value = quantity.value if unit is None or abs(quantity.value) > MOST * 10 else unit.to_held(quantity.value)
    if abs(value) > MOST:
        symbol = "" if unit is None else f" {unit.dimension.value}"
        problems.append(values.out_of_bounds(quantity.place, "A number", f"-1,000,000{symbol}", f"1,000,000{symbol}"))
        return None
    return value


def constant_of(quantity: Quantity, problems: list[Problem]) -> Constant | None:
    """The node of a number as written."""
    value = held(quantity, problems)
    if value is None:
        return None
    dimension = dimension_of(quantity)
    whole = dimension is None and value == value.to_integral_value() and value >= 0
    return Constant(Numeric(dimension, whole), Span(float(value), float(value)), quantity.place)


def millionths(value: Decimal) -> int:
    """A held value in whole millionths, half up."""
    return int((value * 1_000_000 + Decimal("0.5")).to_integral_value(ROUND_FLOOR))


def points_scaled(quantity: Quantity, what: str, scale: int, problems: list[Problem]) -> int | None:
    """Points, weights and worths as whole parts (scale 100: hundredths; 1000: thousandths); 0 to 1,000, two decimals."""
    if quantity.unit is not None:
        problems.append(values.out_of_bounds(quantity.place, f"{what} is a plain number; it", "0", "1,000"))
        return None
    if not 0 <= quantity.value <= MOST_POINTS:
        problems.append(values.out_of_bounds(quantity.place, what, "0", "1,000"))
        return None
    if decimals(quantity.value) > 2:
        problems.append(values.not_exact(quantity.place, written(quantity), 2))
        return None
    return int(quantity.value * scale)
