"""Units of measure, and their exact conversion to the unit that a quantity is held in.

Factors are exact decimals: the SI brochure (2019) for length and mass; a year is 365.25 days and a month a twelfth of it,
as the rule language says.
"""

from __future__ import annotations

from decimal import Decimal
from enum import Enum

from attrs import frozen


class Dimension(Enum):
    """What a unit measures; the value is the symbol of the unit that quantities of it are held in."""

    LENGTH = "cm"
    MASS = "g"
    TIME = "days"
    ANGLE = "deg"
    TEMPERATURE = "degC"
    SHARE = "%"

    @property
    def word(self) -> str:
        """The dimension as a word of a sentence."""
        return _WORDS[self]


_WORDS = {
    Dimension.LENGTH: "length",
    Dimension.MASS: "mass",
    Dimension.TIME: "time",
    Dimension.ANGLE: "angle",
    Dimension.TEMPERATURE: "temperature",
    Dimension.SHARE: "share in %",
}


@frozen
class Unit:
    """A unit: its symbol, what it measures, and how much of the held unit one of it is."""

    symbol: str
    dimension: Dimension
    factor: Decimal

    def __reduce__(self) -> tuple[object, ...]:
        """A unit is copied and pickled as what it is: the one of its symbol."""
        return (
            (unit_of, (self.symbol,))
            if UNITS.get(self.symbol) is self
            else (Unit, (self.symbol, self.dimension, self.factor))
        )

    def to_held(self, value: Decimal) -> Decimal:
        """A value in this unit as a value in the held unit, exactly."""
        return value * self.factor

    def from_held(self, value: Decimal) -> Decimal:
        """A value in the held unit as a value in this unit (to 28 digits)."""
        return value / self.factor


def _units() -> dict[str, Unit]:
    rows = [
        ("mm", Dimension.LENGTH, "0.1"),
        ("cm", Dimension.LENGTH, "1"),
        ("m", Dimension.LENGTH, "100"),
        ("mg", Dimension.MASS, "0.001"),
        ("g", Dimension.MASS, "1"),
        ("kg", Dimension.MASS, "1000"),
        ("days", Dimension.TIME, "1"),
        ("weeks", Dimension.TIME, "7"),
        ("months", Dimension.TIME, "30.4375"),
        ("years", Dimension.TIME, "365.25"),
        ("deg", Dimension.ANGLE, "1"),
        ("degC", Dimension.TEMPERATURE, "1"),
        ("%", Dimension.SHARE, "1"),
    ]
    return {symbol: Unit(symbol, dimension, Decimal(factor)) for symbol, dimension, factor in rows}


UNITS: dict[str, Unit] = _units()
"""Every unit by its symbol."""


def unit_of(symbol: str) -> Unit:
    """The unit of a symbol. Raises KeyError."""
    return UNITS[symbol]


WRITTEN_OTHERWISE: dict[str, str] = {
    "percent": "%",
    "pct": "%",
    "％": "%",
    "day": "days",
    "d": "days",
    "week": "weeks",
    "month": "months",
    "year": "years",
    "gram": "g",
    "grams": "g",
    "kilogram": "kg",
    "kilograms": "kg",
    "millimetre": "mm",
    "millimetres": "mm",
    "centimetre": "cm",
    "centimetres": "cm",
    "metre": "m",
    "metres": "m",
    "meter": "m",
    "meters": "m",
    "degree": "deg",
    "degrees": "deg",
    "°": "deg",
    "°C": "degC",
    "C": "degC",
    "℃": "degC",
    "㎝": "cm",
    "㎜": "mm",
    "CM": "cm",
    "MM": "mm",
    "Cm": "cm",
    "Mm": "mm",
    "G": "g",
    "Kg": "kg",
    "KG": "kg",
}
"""Other ways in which people write a unit: read in records, answered with the symbol in rule files."""
