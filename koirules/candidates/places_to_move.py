"""Where a trait of a fish could stand instead, as boxes of values, the nearest first.

How large a change is, defined here and nowhere else, so that changes of different traits can be put in order: the share of
the trait's own range that it covers. A number or a count: the distance, of the highest less the lowest value of its range.
A scale: the steps between, of all its steps less one. Places: how many are added or taken away, of all of them. Yes and no,
an option of a choice, another label: the whole trait, 1. The range comes from the vocabulary, so the same change has the same
size for every fish and every standard; it is no statement about how hard the change would be.

Numbers move in whole millionths of the held unit, which is what comparisons and curves see, and counts in whole numbers.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import ROUND_CEILING, ROUND_FLOOR
from itertools import pairwise
from math import ceil, floor
from typing import assert_never

from koirules.standard.cuts import Cuts
from koirules.values import frozen
from koirules.vocabulary.colour_readings import ColourReadings
from koirules.vocabulary.kinds import Choice, Colours, Count, Label, Number, Patches, Places, Scale, YesNo, words_of
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import PlaceSet, Reading, Span
from koirules.vocabulary.traits import Trait

MILLION = 1_000_000

OTHER_TEXT = "\n"
"""Stands for any text that no rule names, since texts of rules have no line break."""


@frozen
class Point:
    """One value. size: of the change to it."""

    reading: Reading
    size: float

    @property
    def nearest(self) -> Reading:
        """The value itself."""
        return self.reading

    def split(self) -> Sequence[Box]:
        """A value has no parts."""
        return ()


@frozen
class Stretch:
    """The numbers from `near` to `far` (notches, both in), seen from a value that lies on the side of `near`.

    notch: how many notches make 1. size: of the change to `near`.
    """

    near: int
    far: int
    notch: int
    value: float
    width: float

    @property
    def size(self) -> float:
        """The size of the smallest change into the stretch."""
        return abs(self.near / self.notch - self.value) / self.width

    @property
    def reading(self) -> Reading:
        """Any number of the stretch."""
        low, high = sorted((self.near, self.far))
        return Span(low / self.notch, high / self.notch)

    @property
    def nearest(self) -> Reading:
        """The number that is the smallest change."""
        return Span(self.near / self.notch, self.near / self.notch)

    def split(self) -> Sequence[Box]:
        """The nearer and the farther half; none of a single number."""
        if self.near == self.far:
            return ()
        middle = (self.near + self.far) // 2 if self.near < self.far else -((-self.near - self.far) // 2)
        step = 1 if self.near < self.far else -1
        return (self.part(self.near, middle), self.part(middle + step, self.far))

    def up_to(self, limit: float) -> Stretch:
        """The part whose changes are no larger than a limit, or one notch more; `near` is none larger."""
        step = 1 if self.near < self.far else -1
        if (self.part(self.far, self.far)).size <= limit:
            return self
        reach = int((limit - self.size) * self.width * self.notch) + 1
        return self.part(self.near, self.near + step * min(reach, abs(self.far - self.near)))

    def part(self, near: int, far: int) -> Stretch:
        """A part of the stretch."""
        return Stretch(near, far, self.notch, self.value, self.width)


@frozen
class Marks:
    """Sets of places but those that the fish has (`now`): the first `decided` places are as in `marked`, the others open."""

    now: int
    marked: int
    decided: int
    count: int

    @property
    def size(self) -> float:
        """The places added or taken away, of all: at least one."""
        return max(1, (self.now ^ self.marked).bit_count()) / self.count

    @property
    def reading(self) -> Reading:
        """Any of these sets."""
        sure = self.marked & ((1 << self.decided) - 1)
        return PlaceSet(sure, sure | ((1 << self.count) - (1 << self.decided)))

    @property
    def nearest(self) -> Reading:
        """The set that is the smallest change: the open places stay as they are, or one of them is turned round."""
        marked = self.marked if self.marked != self.now else self.marked ^ (1 << self.decided)
        return PlaceSet(marked, marked)

    def split(self) -> Sequence[Box]:
        """With the next place as it is, and turned round; none where all are decided."""
        if self.decided == self.count:
            return ()
        turned = self.marked ^ (1 << self.decided)
        ends = self.decided + 1 == self.count
        return tuple(
            Marks(self.now, marked, self.decided + 1, self.count)
            for marked in (self.marked, turned)
            if not (ends and marked == self.now)
        )


@frozen
class Whole:
    """Several values of a trait, not yet parted. size: of the smallest change. reading: None for any text."""

    reading: Reading | None
    size: float
    parts: tuple[Box, ...]

    @property
    def nearest(self) -> Reading:
        """The smallest change among them."""
        return min(self.parts, key=lambda part: part.size).nearest

    def split(self) -> Sequence[Box]:
        """The boxes it is made of."""
        return self.parts


Box = Point | Stretch | Marks | Whole


def boxes_of(trait: Trait, reading: Reading, cuts: Cuts) -> tuple[Box, ...]:
    """Every other value of a trait that was recorded as one value; numbers in stretches between cuts."""
    kind = trait.kind
    match kind, reading:
        case (Number() | Count(), Span(value, _)):
            return _stretches(kind, value, cuts)
        case (Scale() | Choice() | YesNo(), int(bit)):
            last = len(words_of(kind)) - 1
            now = bit.bit_length() - 1
            ordered = isinstance(kind, Scale)
            return tuple(Point(1 << i, abs(i - now) / last if ordered else 1.0) for i in range(last + 1) if i != now)
        case (Places(places), PlaceSet(sure, _)):
            return (Marks(sure, sure, 0, len(places)),)
        case (Label(), str(text)):
            others = [other for other in cuts.texts if other != text]
            return tuple(Point(other, 1.0) for other in (*others, *([OTHER_TEXT] if text in cuts.texts else [])))
        case (Patches(), PatchMap()) | (Colours(), ColourReadings()):
            return ()  # a rule only asks whether it is there
        case _:
            raise AssertionError("a reading of another kind")


def telling_points(trait: Trait, reading: Reading, cuts: Cuts) -> tuple[Point, ...]:
    """The values at which something turns: of a number the first and last of each stretch, else every step or option.

    Of places: one added or taken away, or none left at all.
    """
    found: list[Point] = []
    for box in boxes_of(trait, reading, cuts):
        match box:
            case Point():
                found.append(box)
            case Stretch(near, far):
                found.extend(Point(part.nearest, part.size) for part in (box.part(near, near), box.part(far, far)))
            case Marks(now, _, _, count):
                sets = dict.fromkeys([*(now ^ (1 << i) for i in range(count)), 0])
                found.extend(Point(PlaceSet(one, one), (now ^ one).bit_count() / count) for one in sets if one != now)
            case Whole():
                raise AssertionError("boxes of a trait are parted")
            case _:
                assert_never(box)
    return tuple(sorted(found, key=lambda point: point.size))


def every_telling_value(trait: Trait, reading: Reading | None, cuts: Cuts) -> tuple[Reading, ...]:
    """Single values that something open could be, one for each of its pieces; reading: what is known, None for any text."""
    kind = trait.kind
    match kind, reading:
        case (Number() | Count(), Span(low, high)):
            notch = range_in_notches(kind)[2]
            least, most = ceil(low * notch), floor(high * notch)
            begins = (-(-cut // (MILLION // notch)) for cut in cuts.at)
            notches = sorted({least, most, *(begin + step for begin in begins for step in (-1, 0))})
            return tuple(Span(one / notch, one / notch) for one in notches if least <= one <= most)
        case (Scale() | Choice() | YesNo(), int(bits)):
            return tuple(1 << i for i in range(len(words_of(kind))) if bits >> i & 1)
        case (Places(places), PlaceSet(sure, may)):
            sets = dict.fromkeys([sure, may, *(sure | (may & (1 << i)) for i in range(len(places)))])
            return tuple(PlaceSet(one, one) for one in sets)
        case (Label(), None):
            return (*cuts.texts, OTHER_TEXT)
        case _:
            return ()


def rest_of_range(trait: Trait, reading: Reading, toward: int) -> Stretch | None:
    """The numbers beyond a value towards the lowest (-1) or the highest (1) of the range; None where there are none."""
    kind = trait.kind
    if not isinstance(kind, Number | Count) or not isinstance(reading, Span):
        return None
    low, high, notch = range_in_notches(kind)
    near, far = round(reading.low * notch) + toward, high if toward > 0 else low
    return Stretch(near, far, notch, reading.low, 1.0) if (far - near) * toward >= 0 else None


def range_in_notches(kind: Number | Count) -> tuple[int, int, int]:
    """The lowest and highest whole notch of a range, and how many notches make 1."""
    if isinstance(kind, Count):
        return 0, kind.high, 1
    low = (kind.held_low * MILLION).to_integral_value(ROUND_CEILING)
    high = (kind.held_high * MILLION).to_integral_value(ROUND_FLOOR)
    return int(low), int(high), MILLION


def _beside(value: float, notch: int) -> tuple[int, int]:
    """The first notch on either side of a value, which may lie on a notch or between two."""
    nearest = round(value * notch)
    if nearest / notch == value:
        return nearest - 1, nearest + 1
    below = nearest if nearest / notch < value else nearest - 1
    return below, below + 1


def _stretches(kind: Number | Count, value: float, cuts: Cuts) -> tuple[Stretch, ...]:
    low, high, notch = range_in_notches(kind)
    if low >= high:
        return ()
    below, above = _beside(value, notch)
    first_of = MILLION // notch
    begins = sorted({-(-cut // first_of) for cut in cuts.at})
    width = (high - low) / notch
    found: list[Stretch] = []
    if above <= high:
        edges = [above, *(begin for begin in begins if above < begin <= high), high + 1]
        found.extend(Stretch(a, b - 1, notch, value, width) for a, b in pairwise(edges))
    if below >= low:
        edges = [low, *(begin for begin in begins if low < begin <= below), below + 1]
        found.extend(Stretch(b - 1, a, notch, value, width) for a, b in pairwise(edges))
    return tuple(found)
