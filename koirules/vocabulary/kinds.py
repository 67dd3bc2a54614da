"""The kinds of value that a trait can have, each with its range."""

from __future__ import annotations

from decimal import Decimal

from attrs import field

from koirules.values import frozen
from koirules.vocabulary.units import Dimension, Unit


@frozen
class YesNo:
    """Yes or no."""


@frozen
class Count:
    """A whole number from 0 up to `high`."""

    high: int


@frozen
class Number:
    """A number between `low` and `high` (both in), in a unit or plain where `unit` is None.

    usual: between which ends it lies for nearly every fish, None where nobody can say; what lies outside is looked at again.
    """

    unit: Unit | None
    low: Decimal
    high: Decimal
    usual: tuple[Decimal, Decimal] | None = field(default=None, eq=False)

    @property
    def dimension(self) -> Dimension | None:
        """What the number measures; None for a plain number."""
        return None if self.unit is None else self.unit.dimension

    @property
    def held_low(self) -> Decimal:
        """The lowest value, in the held unit."""
        return self.low if self.unit is None else self.unit.to_held(self.low)

    @property
    def held_high(self) -> Decimal:
        """The highest value, in the held unit."""
        return self.high if self.unit is None else self.unit.to_held(self.high)


@frozen
class Scale:
    """Steps in order, the lowest first."""

    steps: tuple[str, ...]


@frozen
class Choice:
    """One of several options without order."""

    options: tuple[str, ...]


@frozen
class Places:
    """Any set of the named places on the fish, the empty set too."""

    places: tuple[str, ...]


@frozen
class Label:
    """Any text: a pond, a bloodline, a note."""


@frozen
class Patches:
    """A map of where a colour lies on the body, patch by patch; rules read what is measured on it."""


@frozen
class Colours:
    """Colour readings along the body, of one colour of the fish; rules read what is worked out from them."""


Kind = YesNo | Count | Number | Scale | Choice | Places | Label | Patches | Colours


def words_of(kind: Kind) -> tuple[str, ...]:
    """The words that a value of this kind can be: steps, options, places, yes and no; none for numbers and labels."""
    match kind:
        case YesNo():
            return ("no", "yes")
        case Scale(steps):
            return steps
        case Choice(options):
            return options
        case Places(places):
            return places
        case Count() | Number() | Label() | Patches() | Colours():
            return ()


def describe_kind(kind: Kind) -> str:
    """A kind with its range in the words of the rule language: `number in cm from 0 to 90`."""
    match kind:
        case YesNo():
            return "yes or no"
        case Count(high):
            return f"count up to {high}"
        case Number(unit, low, high):
            inside = "" if unit is None else f" in {unit.symbol}"
            return f"number{inside} from {shortest(low)} to {shortest(high)}"
        case Scale(steps):
            return "scale " + " < ".join(steps)
        case Choice(options):
            return f"choice of ({', '.join(options)})"
        case Places(places):
            return f"places of ({', '.join(places)})"
        case Label():
            return "label"
        case Patches():
            return "patches"
        case Colours():
            return "colour readings"


def shortest(value: Decimal) -> str:
    """A decimal in its shortest plain form: no exponent, no needless zeros."""
    text = format(value, "f")
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
