"""Units of measure, and their exact conversion to the unit that a quantity is held in.

Factors are exact decimals: the SI brochure (2019) for length and mass; a year is 365.25 days and a month a twelfth of it,
as the rule language says.
"""

from __future__ import annotations

from decimal import Decimal
from enum import Enum

from attrs import field, frozen


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
    """A unit: its symbol, what it measures, how much of the held unit one of it is, and how else people write it."""

    symbol: str
    dimension: Dimension
    factor: Decimal
    written: tuple[str, ...] = field(default=(), eq=False, repr=False)

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


def _unit(symbol: str, dimension: Dimension, factor: str, written: str = "") -> Unit:
    return Unit(symbol, dimension, Decimal(factor), tuple(written.split()))


# The one table of units: the grammar, the hints, the highlighting and the reading of records are made of its rows.
# An inch is 2.54 cm exactly (International Yard and Pound Agreement of 1959). Its symbol `in` is a word of the language.
_ROWS = (
    _unit("mm", Dimension.LENGTH, "0.1", "millimetre millimetres ㎜ MM Mm"),
    _unit("cm", Dimension.LENGTH, "1", "centimetre centimetres ㎝ CM Cm"),
    _unit("m", Dimension.LENGTH, "100", "metre metres meter meters"),
    _unit("inch", Dimension.LENGTH, "2.54", "inches in Inch Inches INCH ″"),
    _unit("mg", Dimension.MASS, "0.001"),
    _unit("g", Dimension.MASS, "1", "gram grams G"),
    _unit("kg", Dimension.MASS, "1000", "kilogram kilograms Kg KG"),
    _unit("days", Dimension.TIME, "1", "day d"),
    _unit("weeks", Dimension.TIME, "7", "week"),
    _unit("months", Dimension.TIME, "30.4375", "month"),
    _unit("years", Dimension.TIME, "365.25", "year"),
    _unit("deg", Dimension.ANGLE, "1", "degree degrees °"),
    _unit("degC", Dimension.TEMPERATURE, "1", "°C C ℃"),
    _unit("%", Dimension.SHARE, "1", "percent pct ％"),
)

UNITS: dict[str, Unit] = {unit.symbol: unit for unit in _ROWS}
"""Every unit by its symbol."""


def unit_of(symbol: str) -> Unit:
    """The unit of a symbol. Raises KeyError."""
    return UNITS[symbol]


WRITTEN_OTHERWISE: dict[str, str] = {word: unit.symbol for unit in _ROWS for word in unit.written}
"""Other ways in which people write a unit: read in records, answered with the symbol in rule files."""

UNIT_WORDS = tuple(sorted((symbol for symbol in UNITS if symbol.isalpha()), key=lambda word: (-len(word), word)))
"""The symbols that are words, the longest first, as alternatives of a regular expression have to be."""
