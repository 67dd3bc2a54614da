"""A table of classes: groups of varieties, sizes, and where a fish falls."""

from __future__ import annotations

from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal
from enum import Enum

from koirules.languages import ENGLISH, Tongue
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.readings import Span
from koirules.vocabulary.spoken import Said
from koirules.vocabulary.units import Unit

_MILLION = 1_000_000


class Closed(Enum):
    """On which side a size holds its own end: a fish of exactly 48 cm is in "up to 48" or in "from 48"."""

    UPPER = "upper"
    LOWER = "lower"


class Rounding(Enum):
    """How a measure is rounded before its size is looked up; half up is towards the larger."""

    NONE = "none"
    DOWN = "down"
    UP = "up"
    HALF_UP = "half up"


@frozen
class Size:
    """One size, with its ends in the unit of the table; None where it is open."""

    name: str
    title: str
    low: Decimal | None
    high: Decimal | None


@frozen
class Sizes:
    """The sizes of a table, from small to large, each beginning where the one before it ends.

    trait: what is measured. unit: of the ends. closed, rounding: see there. step: what is rounded to, in the unit; None
    where nothing is rounded.
    """

    trait: str
    unit: Unit
    closed: Closed
    rounding: Rounding
    step: Decimal | None
    sizes: tuple[Size, ...]

    def rounded(self, value: Decimal) -> Decimal:
        """A measure as the table reads it, in its unit."""
        if self.step is None:
            return value
        parts = value / self.step
        match self.rounding:
            case Rounding.NONE:
                return value
            case Rounding.DOWN:
                whole = parts.to_integral_value(ROUND_FLOOR)
            case Rounding.UP:
                whole = parts.to_integral_value(ROUND_CEILING)
            case Rounding.HALF_UP:
                whole = (parts + Decimal("0.5")).to_integral_value(ROUND_FLOOR)
        return whole * self.step

    def of(self, value: Decimal) -> Size | None:
        """The size of a measure in the unit of the table; None where it is in none of them."""
        read = self.rounded(value)
        return next((size for size in self.sizes if self._holds(size, read)), None)

    def could_be(self, reading: Span) -> tuple[Size | None, ...]:
        """The sizes that a measure could be in, small ones first; None at the end where it could be in no size.

        reading: the measure in the held unit of its dimension, rounded to a millionth as the rule language reads numbers.
        """
        low, high = (self.unit.from_held(_to_a_millionth(end)) for end in reading)
        first, last = self.of(low), self.of(high)
        if first is last:
            return (first,)
        inside = [size for size in self.sizes if self._between(size, low, high)]
        found = dict.fromkeys(size for size in (first, *inside, last) if size is not None)
        return (*found, None) if first is None or last is None else tuple(found)

    def told(self, size: Size, tongue: Tongue = ENGLISH) -> str:
        """Which measures a size holds: `over 48 cm up to 53 cm`, `from 20 cm to below 30 cm`, `80 cm and more`."""
        ends = (size.low, size.high)
        low, high = ("" if end is None else tongue.quantity(f"{shortest(end)} {self.unit.symbol}") for end in ends)
        if not low and not high:
            return tongue("any")
        if self.closed is Closed.UPPER:
            if low and high:
                return tongue("over {low} up to {high}", low=low, high=high)
            return tongue("over {low}", low=low) if low else tongue("up to {high}", high=high)
        if low and high:
            return tongue("from {low} to below {high}", low=low, high=high)
        return tongue("{low} and more", low=low) if low else tongue("below {high}", high=high)

    def told_rounding(self, tongue: Tongue = ENGLISH) -> str:
        """How measures are read, in words: `rounded down to 0.1 cm`."""
        if self.step is None:
            return tongue("as measured")
        step = tongue.quantity(f"{shortest(self.step)} {self.unit.symbol}")
        match self.rounding:
            case Rounding.NONE:
                return tongue("as measured")
            case Rounding.DOWN:
                return tongue("rounded down to {step}", step=step)
            case Rounding.UP:
                return tongue("rounded up to {step}", step=step)
            case Rounding.HALF_UP:
                return tongue("rounded half up to {step}", step=step)

    def _holds(self, size: Size, read: Decimal) -> bool:
        if self.closed is Closed.UPPER:
            return (size.low is None or read > size.low) and (size.high is None or read <= size.high)
        return (size.low is None or read >= size.low) and (size.high is None or read < size.high)

    def _between(self, size: Size, low: Decimal, high: Decimal) -> bool:
        ends = [end for end in (size.low, size.high) if end is not None]
        return all(self.rounded(low) <= end <= self.rounded(high) for end in ends)


def _to_a_millionth(value: float) -> Decimal:
    whole = (Decimal(repr(value)) * _MILLION + Decimal("0.5")).to_integral_value(ROUND_FLOOR)
    return whole / _MILLION


@frozen
class Group:
    """A group of varieties that is judged together.

    varieties: by the words of a header, `showa` or `showa with ginrin`, skins in the order of the alphabet. skins: every
    variety with one of these over it that no group names. others: whatever no group names. said, over: the varieties and the
    skins as `koirules.classes.placing.understood` reads them; empty before that.
    """

    name: str
    title: str
    varieties: tuple[str, ...] = ()
    skins: tuple[str, ...] = ()
    others: bool = False
    said: tuple[Said, ...] = ()
    over: tuple[str, ...] = ()


@frozen
class ClassTable:
    """A table of classes; sizes is None where fish are not parted by size, groups empty where not by variety."""

    title: str
    edition: str
    file: str
    sizes: Sizes | None
    groups: tuple[Group, ...]
    notes: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        """Its title with the edition."""
        return f"{self.title}, edition {self.edition}"

    @property
    def said(self) -> tuple[str, ...]:
        """Its texts, as far as people read them."""
        sizes = () if self.sizes is None else self.sizes.sizes
        return (self.title, *self.notes, *(one.title for one in self.groups), *(one.title for one in sizes))

    def group_of(self, variety: Said) -> str | None:
        """The name of the group that names a variety, else of the first that names a skin of it, else of that for others.

        A group that names its form (`shiro utsuri`) comes before one that names the variety.
        """
        for form in (variety.form, "") if variety.form else ("",):
            for group in self.groups:
                if any(one == variety and one.form == form for one in group.said):
                    return group.name
        for group in self.groups:
            if variety.name in group.varieties:
                return group.name
        for group in self.groups:
            if not variety.skins.isdisjoint((*group.skins, *group.over)):
                return group.name
        return next((group.name for group in self.groups if group.others), None)
