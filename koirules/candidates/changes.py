"""Changes of a fish that would have changed its grade, as values and in words."""

from __future__ import annotations

from decimal import Decimal
from enum import Enum

from koirules.candidates.places_to_move import MILLION, OTHER_TEXT
from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Count, Label, Number, Scale, YesNo, shortest
from koirules.vocabulary.readings import PlaceSet, Reading, Span, show_reading, words_in, write_reading
from koirules.vocabulary.rounding import towards
from koirules.vocabulary.traits import Growth, Trait

_MOST_DECIMALS = 9


class Prospect(Enum):
    """Whether the vocabulary says that a trait can still change in the direction of a change as the fish grows."""

    COMING = "can still come"
    OPPOSITE = "goes the other way"
    EITHER = "may go either way"
    NEVER = "does not change"


@frozen
class Move:
    """One trait of a change.

    was: what was recorded. becomes: the nearest value that does it, exactly. until: of a number, how far beyond it every value
    does it too, as far as that is sure; None where it is not. to_the_end: whether that is the end of the trait's range. size:
    see places_to_move.py.
    """

    trait: Trait
    was: Reading
    becomes: Reading
    until: Reading | None
    to_the_end: bool
    size: float

    @property
    def direction(self) -> int:
        """1 where there is more of the trait after it, -1 where there is less, 0 where neither can be said."""
        match self.trait.kind, self.was, self.becomes:
            case (Number() | Count(), Span(before, _), Span(after, _)):
                return 1 if after > before else -1
            case (Scale() | YesNo(), int(before), int(after)):
                return 1 if after > before else -1
            case (_, PlaceSet(before, _), PlaceSet(after, _)) if before & after in {before, after}:
                return 1 if after.bit_count() > before.bit_count() else -1
            case _:
                return 0

    @property
    def prospect(self) -> Prospect:
        """Whether it can still come as the fish grows, by the vocabulary."""
        match self.trait.growth, self.direction:
            case Growth.FIXED, _:
                return Prospect.NEVER
            case (Growth.RISES, 1) | (Growth.FALLS, -1):
                return Prospect.COMING
            case (Growth.RISES, -1) | (Growth.FALLS, 1):
                return Prospect.OPPOSITE
            case _:
                return Prospect.EITHER

    def value(self, *, exact: bool = False) -> str:
        """What the trait would have to be: `3 % or more`, `sharp`, `none`.

        A number is rounded for people, towards values that do it too. exact: with all of its digits.
        """
        kind, becomes = self.trait.kind, self.becomes
        if not isinstance(kind, Number | Count):
            return _value(self.trait, becomes, exact=exact)
        ahead = self.direction
        more, over = ("more", "above") if ahead > 0 else ("less", "below")
        start = _round_beside(becomes, kind, -ahead)
        if self.until is None:
            # How far beyond it a value does it too is not known: it may not be rounded away from it.
            nearest = exact_number(becomes, kind) if exact or isinstance(kind, Count) else show_reading(kind, becomes)
            return f"just {over} {start}" if start else f"about {nearest}"
        if self.until == becomes:
            end = _round_beside(becomes, kind, ahead)
            side = "above" if (ahead > 0) == (start is not None) else "below"
            return f"just {side} {start or end}" if start or end else exact_number(becomes, kind)
        first = exact_number(becomes, kind) if exact else _towards(becomes, kind, ahead, self.until)
        if self.to_the_end:
            return f"{over} {start}" if start else f"{first} or {more}"
        end = _round_beside(self.until, kind, ahead)
        from_here = f"{over} {start}" if start else first
        if end:
            return f"{from_here} but {'below' if ahead > 0 else 'above'} {end}"
        last = exact_number(self.until, kind) if exact else _towards(self.until, kind, -ahead, becomes)
        return f"{from_here} {'up' if ahead > 0 else 'down'} to {last}"

    def told(self, title: str, *, exact: bool = False) -> str:
        """The change in words, with the title of its trait: `tail gap: 3 % or more instead of 1.2 %`."""
        was, value = (_value(self.trait, self.was, exact=exact), self.value(exact=exact))
        if was == value.removeprefix("about "):
            was, value = _value(self.trait, self.was, exact=True), self.value(exact=True)
        return f"{title}: {value} instead of {was}"

    @property
    def words(self) -> str:
        """The change in words."""
        return self.told(self.trait.title)


@frozen
class Change:
    """A change of one trait or two, and the grades possible after it, best first."""

    moves: tuple[Move, ...]
    possible: tuple[str, ...]

    @property
    def size(self) -> float:
        """The sizes of its moves together."""
        return sum(move.size for move in self.moves)

    @property
    def words(self) -> str:
        """The change in words."""
        return " and ".join(move.words for move in self.moves)


@frozen
class NearestChanges:
    """The smallest changes that would have made a difference to a fish, the smallest first.

    grade: the next better grade, or the best one itself that the fish would lose (`loses`); "" where there is neither. single:
    of each trait the smallest change that does it alone. double: of two traits together. searched_through: False where the
    search was ended at its bound, so that more or smaller ones may be missing.
    """

    grade: str = ""
    loses: bool = False
    single: tuple[Change, ...] = ()
    double: tuple[Change, ...] = ()
    searched_through: bool = True


def exact_number(reading: Reading, kind: Number | Count) -> str:
    """A whole millionth of the held unit, or a count, written exactly: in the trait's own unit, or else in the held one."""
    if not isinstance(reading, Span):
        raise AssertionError("a number with a reading that is none")
    held = Decimal(round(reading.low * MILLION)).scaleb(-6)
    unit = kind.unit if isinstance(kind, Number) else None
    if unit is None:
        return shortest(held)
    own = unit.from_held(held)
    if own == round(own, _MOST_DECIMALS) and unit.to_held(own) == held:
        return f"{shortest(own)} {unit.symbol}"
    # A seventh or a twelfth has no end as a decimal.
    return f"{shortest(held)} {unit.dimension.value}"


def _towards(reading: Reading, kind: Number | Count, ahead: int, last: Reading) -> str:
    """The roundest number at or beyond a reading in a direction, no further than the last one."""
    if isinstance(kind, Count) or not isinstance(reading, Span) or not isinstance(last, Span):
        return exact_number(reading, kind)
    unit = kind.unit
    own, end = (
        Decimal(round(one.low * MILLION)).scaleb(-6)
        if unit is None
        else round(unit.from_held(Decimal(repr(one.low))), 9)
        for one in (reading, last)
    )
    text = shortest(towards(own, ahead, end))
    return text if unit is None else f"{text} {unit.symbol}"


def _round_beside(reading: Reading, kind: Number | Count, step: int) -> str | None:
    """The number a millionth beside one, where it is the rounder of the two; None elsewhere."""
    if isinstance(kind, Count) or not isinstance(reading, Span):
        return None
    beside = (round(reading.low * MILLION) + step) / MILLION
    there, here = exact_number(Span(beside, beside), kind), exact_number(reading, kind)
    return there if len(there) + 3 <= len(here) else None


def _value(trait: Trait, reading: Reading, *, exact: bool) -> str:
    match trait.kind, reading:
        case (Label(), str(text)):
            return "any other" if text == OTHER_TEXT else f'"{text}"'
        case (Scale() | Choice() | YesNo(), _):
            return write_reading(trait.kind, reading).replace("_", " ")
        case (_, PlaceSet(sure, _)):
            return ", ".join(words_in(trait.kind, sure)).replace("_", " ") or "none"
        case _:
            return write_reading(trait.kind, reading) if exact else show_reading(trait.kind, reading)
