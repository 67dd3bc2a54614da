"""The value algebra: the primitive operations of which the meaning of a standard is made.

The meaning of the language is written once, as functions over any algebra. The technique is known as tagless final
(Carette, Kiselyov, Shan, Finally Tagless, Partially Evaluated, 2009). A value of an algebra is one of

- a number: a double, or a whole number (thousandths, hundredths, millionths, counts);
- a truth;
- a set: levels of a scale or places, as bits;
- a text, or None where no text was recorded.

What a record leaves open is a pair of such values (`Ends`): the ends of an interval, or what surely and what possibly holds.

Sources: three-valued logic, Kleene, Introduction to Metamathematics (1952), section 64; interval arithmetic, Moore,
Kearfott, Cloud, Introduction to Interval Analysis (2009), chapter 2 (both from memory).
"""

from __future__ import annotations

from math import floor
from typing import TYPE_CHECKING, Any, Generic, NamedTuple, Protocol, TypeVar

if TYPE_CHECKING:
    from koirules.meaning.curves import Shape

V = TypeVar("V")


class Ends(NamedTuple, Generic[V]):
    """Both ends of what a value could be; the very same object where it is one value.

    | shape  | first                    | second                   |
    | ------ | ------------------------ | ------------------------ |
    | number | lowest value             | highest value            |
    | truth  | surely yes               | possibly yes             |
    | levels | bits of possible levels  | None                     |
    | text   | the text                 | None                     |
    | places | bits of places surely in | bits of places maybe in  |

    least, most: how many places there are, where that was told; None where it is as many as the bits have.
    """

    first: V
    second: V | None = None
    least: V | None = None
    most: V | None = None

    @property
    def last(self) -> V:
        """The second end, of a value that has two."""
        if self.second is None:
            raise AssertionError("a value with one end")
        return self.second

    @property
    def sure(self) -> bool:
        """Whether both ends are the same object: one value, whatever the record."""
        return self.first is self.second


class OperatorAlgebra(Protocol[V]):
    """The primitive operations that operators and grades are made of.

    Each takes and gives values of one record, of every row, or of every fish at once.
    """

    def constant(self, value: Any) -> V:
        """A number, a truth or a text that is the same for every record."""

    def bits(self, value: int) -> V:
        """A set that is the same for every record."""

    def known(self, value: V) -> bool | None:
        """Whether a truth holds, where that is the same for every record; None where it is not."""

    def add(self, a: V, b: V) -> V:
        """A + b."""

    def subtract(self, a: V, b: V) -> V:
        """A - b."""

    def multiply(self, a: V, b: V) -> V:
        """A * b."""

    def divide(self, a: V, b: V) -> V:
        """A / b; any number where b is 0, of which the caller makes no use."""

    def negate(self, a: V) -> V:
        """-a."""

    def millionths(self, a: V) -> V:
        """A number in whole millionths, rounded half up: floor(1000000 a + 1/2), in doubles."""

    def least(self, *parts: V) -> V:
        """The smallest of some numbers."""

    def most(self, *parts: V) -> V:
        """The largest of some numbers."""

    def count(self, *parts: V) -> V:
        """How many of some truths hold."""

    def at_least(self, a: V, b: V) -> V:
        """A >= b: of two numbers, or of two sets by their bits (the highest level decides)."""

    def above(self, a: V, b: V) -> V:
        """A > b, likewise."""

    def equal(self, a: V, b: V) -> V:
        """Whether two numbers, sets or texts are the same; a text that was not recorded is the same as no text."""

    def every(self, *parts: V) -> V:
        """Whether all of some truths hold."""

    def some(self, *parts: V) -> V:
        """Whether any of some truths holds."""

    def no(self, part: V) -> V:
        """Whether a truth does not hold."""

    def where(self, test: V, one: V, other: V) -> V:
        """One value where a truth holds, else the other."""

    def common(self, a: V, b: V) -> V:
        """The members that two sets share."""

    def either(self, a: V, b: V) -> V:
        """The members of two sets together."""

    def meets(self, a: V, b: V) -> V:
        """Whether two sets share a member."""

    def lowest(self, a: V) -> V:
        """The lowest member of a set, alone."""

    def halved(self, a: V) -> V:
        """The bits of a set, moved down by one."""

    def members(self, a: V) -> V:
        """How many members a set has."""

    def missing(self, a: V) -> V:
        """Whether no text was recorded."""


class Algebra(OperatorAlgebra[V], Protocol[V]):
    """All primitive operations: those of which criteria, sections and the score are made, too."""

    def divide_down(self, a: V, by: int) -> V:
        """The whole number floor(a / by) of a whole number; by: above 0."""

    def total(self, *parts: V) -> V:
        """The sum of some whole numbers."""

    def hundredths(self, a: V) -> V:
        """Whole hundredths as a number: a / 100, in doubles."""

    def points(self, shape: Shape, read: Ends[V]) -> Ends[V]:
        """The least and the most thousandths that a curve or table gives over what it reads (millionths, or levels)."""


class Plain:
    """Plain Python values: the reference."""

    def constant(self, value: Any) -> Any:
        """A value as it is."""
        return value

    def bits(self, value: int) -> Any:
        """The bits as they are."""
        return value

    def known(self, value: Any) -> bool | None:
        """Every plain truth is known."""
        return bool(value)

    def add(self, a: Any, b: Any) -> Any:
        """A + b."""
        return a + b

    def subtract(self, a: Any, b: Any) -> Any:
        """A - b."""
        return a - b

    def multiply(self, a: Any, b: Any) -> Any:
        """A * b."""
        return a * b

    def divide(self, a: Any, b: Any) -> Any:
        """A / b; a itself where b is 0."""
        return a / (b or 1.0)

    def negate(self, a: Any) -> Any:
        """-a."""
        return -a

    def millionths(self, a: Any) -> Any:
        """floor(1000000 a + 1/2)."""
        return floor(1_000_000.0 * a + 0.5)

    def divide_down(self, a: Any, by: int) -> Any:
        """floor(a / by)."""
        return a // by

    def least(self, *parts: Any) -> Any:
        """The first of the smallest."""
        return min(parts)

    def most(self, *parts: Any) -> Any:
        """The first of the largest."""
        return max(parts)

    def total(self, *parts: Any) -> Any:
        """The sum."""
        return sum(parts)

    def count(self, *parts: Any) -> Any:
        """How many hold."""
        return sum(parts)

    def at_least(self, a: Any, b: Any) -> Any:
        """A >= b."""
        return a >= b

    def above(self, a: Any, b: Any) -> Any:
        """A > b."""
        return a > b

    def equal(self, a: Any, b: Any) -> Any:
        """Whether both are the same."""
        return a == b

    def every(self, *parts: Any) -> Any:
        """Whether all hold."""
        return all(parts)

    def some(self, *parts: Any) -> Any:
        """Whether any holds."""
        return any(parts)

    def no(self, part: Any) -> Any:
        """Whether it does not hold."""
        return not part

    def where(self, test: Any, one: Any, other: Any) -> Any:
        """One or the other."""
        return one if test else other

    def common(self, a: Any, b: Any) -> Any:
        """The bits of both."""
        return a & b

    def either(self, a: Any, b: Any) -> Any:
        """The bits of either."""
        return a | b

    def meets(self, a: Any, b: Any) -> Any:
        """Whether they share a bit."""
        return a & b != 0

    def lowest(self, a: Any) -> Any:
        """The lowest bit."""
        return a & -a

    def halved(self, a: Any) -> Any:
        """The bits, moved down by one."""
        return a >> 1

    def members(self, a: Any) -> Any:
        """How many bits are set."""
        return a.bit_count()

    def missing(self, a: Any) -> Any:
        """Whether there is no text."""
        return a is None

    def hundredths(self, a: Any) -> Any:
        """A / 100."""
        return a / 100.0

    def points(self, shape: Shape, read: Ends[Any]) -> Ends[Any]:
        """What the shape gives."""
        return Ends(*shape.span(read.first, read.second))


PLAIN: Algebra[Any] = Plain()
"""Plain Python values."""


def ends_of(reading: Any) -> Ends[Any]:
    """The ends of a reading: a pair for numbers and truths, four of places, one end for levels and texts."""
    return Ends(*reading) if isinstance(reading, tuple) else Ends(reading)
