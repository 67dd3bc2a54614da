"""Units of measure, and their exact conversion to the unit that a quantity is held in.

Factors are exact: the SI brochure (2019) for length and mass; a year is 365.25 days and a month a twelfth of it, as the rule
language says. Plugins add units of the same dimensions; the table is one for the whole process, as the grammar is.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import Decimal, localcontext
from enum import Enum
from fractions import Fraction
from types import MappingProxyType

from attrs import field

from koirules.values import frozen


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


_EXACT = 60
"""So many digits has a value in the held unit that no decimal says exactly: enough to round to the nearest double once."""


@frozen
class Unit:
    """A unit: its symbol, what it measures, and how much of the held unit one of it is: `factor / per`, exactly.

    written: how else people write it. source: where the factor is from, which a unit of a plugin says.
    """

    symbol: str
    dimension: Dimension
    factor: Decimal
    written: tuple[str, ...] = field(default=(), eq=False, repr=False)
    per: int = 1
    source: str = field(default="", eq=False, repr=False)

    def __reduce__(self) -> tuple[object, ...]:
        """A unit is copied and pickled as what it is: the one of its symbol."""
        return (
            (unit_of, (self.symbol,))
            if UNITS.get(self.symbol) is self
            else (Unit, (self.symbol, self.dimension, self.factor, (), self.per))
        )

    @property
    def exact(self) -> Fraction:
        """How much of the held unit one of it is."""
        return Fraction(self.factor) / self.per

    @property
    def is_held(self) -> bool:
        """Whether one of it is one of the held unit."""
        return self.factor == self.per

    @property
    def told(self) -> str:
        """How much of the held unit one of it is, as people write it: `2.54 cm`, `100/33 cm`."""
        number = f"{self.factor.normalize():f}"
        return f"{number if self.per == 1 else f'{number}/{self.per}'} {self.dimension.value}"

    def to_held(self, value: Decimal) -> Decimal:
        """A value in this unit as a value in the held unit: exactly, or of a third and the like to 60 digits."""
        if self.per == 1:
            return value * self.factor
        with localcontext(prec=_EXACT):
            return value * self.factor / self.per

    def from_held(self, value: Decimal) -> Decimal:
        """A value in the held unit as a value in this unit (to 28 digits)."""
        return value / self.factor if self.per == 1 else value * self.per / self.factor


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

OWN_UNITS: Mapping[str, Unit] = MappingProxyType({unit.symbol: unit for unit in _ROWS})
"""The units of koirules itself by symbol."""

UNITS: dict[str, Unit] = dict(OWN_UNITS)
"""Every unit by its symbol: those of koirules, then those of plugins (`use_units`)."""

WRITTEN_OTHERWISE: dict[str, str] = {}
"""Other ways in which people write a unit: read in records, answered with the symbol in rule files."""

WRITTEN_LOOSELY: dict[str, str] = {}
"""Both in small letters."""


_added: list[Unit] = []


def use_units(added: Iterable[Unit]) -> None:
    """Make the units of plugins known beside ours, for the whole process, in place of those that were added before."""
    _added[:] = {unit.symbol: unit for unit in added}.values()
    units = {**OWN_UNITS, **{unit.symbol: unit for unit in _added}}
    written = {word: unit.symbol for unit in units.values() for word in unit.written}
    loosely = {other.casefold(): symbol for other, symbol in (*written.items(), *((one, one) for one in units))}
    for table, now in ((WRITTEN_OTHERWISE, written), (WRITTEN_LOOSELY, loosely)):
        table.clear()
        table.update(now)
    UNITS.clear()
    UNITS.update(units)


def added_units() -> tuple[Unit, ...]:
    """The units of plugins."""
    return tuple(_added)


use_units(())


def unit_of(symbol: str) -> Unit:
    """The unit of a symbol. Raises KeyError."""
    return UNITS[symbol]


def unit_words() -> tuple[str, ...]:
    """The symbols that are words, the longest first, as alternatives of a regular expression have to be."""
    return tuple(sorted((symbol for symbol in UNITS if symbol.isalpha()), key=lambda word: (-len(word), word)))
