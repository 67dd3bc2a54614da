"""What a trait will be when the fish is grown, of a fish that is not known yet.

The length follows exactly. A figure that goes as a power of the length has the bounds of the power over short pieces of the
length, and is itself where the fish is that long already. What is measured on something that grows first (a map, what follows
from one) is anything at all, known or not: more than any fish has, so that what is ruled out stays ruled out.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations, pairwise
from typing import TYPE_CHECKING, Any

import z3
from attrs import evolve

from koirules.candidates.places_to_move import MILLION
from koirules.engines.symbolic.meaning import TooManyReadings
from koirules.engines.symbolic.values import Bits, Cases, Logic
from koirules.meaning.algebra import Ends
from koirules.measures.grown_traits import Ahead
from koirules.measures.growth import Grower
from koirules.standard.reading_nodes import YES_NO_STEPS
from koirules.standard.tree import Grown, Supplied, TraitRead
from koirules.standard.types import Numeric, PlaceWords, Steps
from koirules.vocabulary.kinds import YesNo

if TYPE_CHECKING:
    from koirules.engines.symbolic.fish import Fish, Slot

_PIECES = 24
_MOST_STEPS = 10
_LEEWAY = Fraction(1, 10**9)
"""How far a power of doubles may stand from the power, as a share of it; far more than any library of C is off."""

_LEAST_TURN = 1e-14
"""By which share a power has to change between two lengths, lest the rounding of doubles puts them in the wrong order."""


def read_by(fish: Fish, read: Supplied) -> tuple[TraitRead, ...]:
    """The traits that a grown one needs, the length last; what only helps to be more exact is not among them."""
    source = source_of(read)
    inputs = (source.of,) if read.key in fish.growers else source.inputs
    as_read = (evolve(one, type=YES_NO_STEPS) if isinstance(one.trait.kind, YesNo) else one for one in inputs)
    return (*(one for one in as_read if one.key != source.length.key), source.length)


def worked_from(ahead: Ahead) -> dict[str, frozenset[str]]:
    """All traits that each grown one is worked out from, by its key."""
    found = {one.key: frozenset({one.trait.name, ahead.grows_by}) for one in ahead.wanted}
    for one in ahead.derived:
        found.update((key, frozenset({*one.inputs, ahead.grows_by})) for key in one.every_key)
    return found


def is_grown(read: TraitRead | Supplied | None) -> bool:
    """Whether what is read is a grown trait."""
    return isinstance(read, Supplied) and isinstance(read.source, Grown)


def grown_slot(fish: Fish, read: Supplied) -> Slot | None:
    """The variables of a grown trait; None where they are those of any value beside the record."""
    for one in read_by(fish, read):
        fish.slot(one)
    grower = fish.growers.get(read.key)
    if grower is not None:
        return _of_length(fish, read, grower) if grower.is_length else _following(fish, read, grower)
    match read.type:
        case Numeric():
            low, high = fish.millionths(read, ""), fish.millionths(read, "at most")
            fish.facts.append(low <= high)
            return fish.of_ends(read, low, high)
        case Steps():
            return fish.of_reading(read, Ends(_some_steps(fish, read)))
        case PlaceWords(places):
            sure = [fish.named_truth(read, f"{place} surely") for place in places]
            possible = [fish.named_truth(read, place) for place in places]
            fish.facts.extend(z3.Implies(one, other) for one, other in zip(sure, possible, strict=True))
            return fish.of_reading(read, Ends(Bits(tuple(sure)), Bits(tuple(possible))))
        case _:
            return None


def _some_steps(fish: Fish, read: Supplied) -> Cases:
    logic = Logic(fish.context)
    steps = [i for i in range(int(read.range).bit_length()) if read.range >> i & 1]
    if len(steps) > _MOST_STEPS:
        raise TooManyReadings
    can_be = {i: fish.named_truth(read, str(i)) for i in steps}
    fish.facts.append(z3.Or(*can_be.values()))
    cases = []
    for size in range(1, len(steps) + 1):
        for some in combinations(steps, size):
            when = logic.every([can_be[i] if i in some else logic.no(can_be[i]) for i in steps])
            cases.append((sum(1 << i for i in some), when))
    return Cases(tuple(cases))


def _of_length(fish: Fish, read: Supplied, grower: Grower) -> Slot:
    length = fish.slot(source_of(read).length)
    shortest = _notches(grower.grown(*fish.any_length, *fish.any_length).low)
    longest = _notches(grower.grown(*fish.any_length, *fish.any_length).high)
    now = length.value * _number(fish, Fraction(MILLION, length.notch))
    already = length.value >= _number(fish, Fraction(repr(grower.target)) * length.notch)
    then = z3.If(already, now, _number(fish, shortest))
    if length.recorded is True:
        return fish.of_ends(read, then, then)
    ends = (z3.If(length.recorded, then, _number(fish, end)) for end in (shortest, longest))
    return fish.of_ends(read, *ends)


def _following(fish: Fish, read: Supplied, grower: Grower) -> Slot:
    source = source_of(read)
    of, length = fish.slot(source.of), fish.slot(source.length)
    low = high = fish.millionths(read, "")
    now = of.value * _number(fish, Fraction(MILLION, of.notch))
    known = []
    if length.recorded is not True:
        high = fish.millionths(read, "at most")
        known = [length.recorded]
        fish.facts.extend([low <= high, z3.Implies(length.recorded, low == high)])
        ends = sorted(ratio(grower, Fraction(end)) for end in fish.any_length)
        for name, end in zip((low, high), ends, strict=True):
            fish.facts.extend(
                z3.Implies(z3.Not(length.recorded), one) for one in _between(fish, grower, name, now, (end, end))
            )
    long_by = length.value * z3.Q(1, length.notch, fish.context)
    for when, bounds in _lengths(fish, grower, long_by):
        facts = [low == now] if bounds is None else _between(fish, grower, low, now, bounds)
        fish.facts.extend(z3.Implies(z3.And(*known, when), fact) for fact in facts)
    if grower.power >= 0:
        fish.facts.append(low >= now)
    elif not known:
        fish.facts.append(low <= now)
    return fish.of_ends(read, low, high, of.recorded)


def _lengths(fish: Fish, grower: Grower, long_by: Any) -> Iterator[tuple[Any, tuple[Fraction, Fraction] | None]]:
    """Pieces of the length, and between which multiples of itself a figure will be there; None where it stays as it is."""
    target = Fraction(repr(grower.target))
    already = long_by >= _number(fish, target)
    if not grower.power:
        yield z3.BoolVal(True, fish.context), None
        return
    yield already, None
    shortest = fish.any_length.low
    if shortest >= grower.target:
        return
    step = (grower.target / shortest) ** (1 / _PIECES)
    inner = (Fraction(round(shortest * step**i * MILLION), MILLION) for i in range(1, _PIECES))
    cuts = [Fraction(repr(shortest)), *inner, target]
    for one, other in pairwise(cuts):
        ratios = sorted((ratio(grower, one), ratio(grower, other)))
        yield z3.And(long_by >= _number(fish, one), long_by <= _number(fish, other)), (ratios[0], ratios[1])


def ratio(grower: Grower, length: Fraction) -> Fraction:
    """By what a figure is multiplied as a fish grows from a length."""
    return Fraction((max(float(length), grower.target) / float(length)) ** grower.power)


def _between(fish: Fish, grower: Grower, then: Any, now: Any, ratios: tuple[Fraction, Fraction]) -> Iterator[Any]:
    """That a figure will lie between two multiples of itself, or is held at an end of its range."""
    low, high = ratios[0] * (1 - _LEEWAY), ratios[1] * (1 + _LEEWAY)
    off = _number(fish, Fraction(2))
    yield z3.Or(then >= now * _number(fish, _short(low, -1)) - off, then >= _number(fish, _notches(grower.most)))
    yield z3.Or(then <= now * _number(fish, _short(high, 1)) + off, then <= _number(fish, _notches(grower.least)))


def _short(number: Fraction, sign: int) -> Fraction:
    """A number with few digits, no higher (sign -1) or no lower: the solver is slow with long fractions."""
    scaled = number * 10**8
    return Fraction(scaled.__floor__() if sign < 0 else scaled.__ceil__(), 10**8)


def in_order(base: Fish, twin: Fish, moved: str) -> Iterator[Any]:
    """What holds of the grown traits of two fish that differ in one trait.

    A figure of fish of one length keeps its order, since doubles are multiplied and rounded in order; of one figure at two
    lengths the longer fish has less to grow.
    """
    for key in list(twin.slots):
        slot, grower = twin.slots[key], twin.growers.get(key)
        if grower is None or grower.is_length or not isinstance(slot.node, Supplied):
            continue
        source = source_of(slot.node)
        one, other = base.slots[key].value, slot.value
        if source.of.key == moved:
            before, after = base.slot(source.of).value, twin.slot(source.of).value
            yield z3.Implies(before <= after, one <= other)
            yield z3.Implies(after <= before, other <= one)
        elif source.length.key == moved and abs(grower.power) >= _LEAST_TURN * MILLION * base.any_length.high:
            before, after = base.slot(source.length).value, twin.slot(source.length).value
            less, more = (other, one) if grower.power > 0 else (one, other)
            yield z3.Implies(before <= after, less <= more)
            yield z3.Implies(after <= before, more <= less)


def source_of(read: Supplied) -> Grown:
    """What a grown trait is worked out from."""
    if not isinstance(read.source, Grown):
        raise AssertionError("a value beside the record that does not grow")
    return read.source


def _notches(value: float) -> Fraction:
    return Fraction(repr(value)) * MILLION


def _number(fish: Fish, value: Fraction) -> Any:
    return z3.Q(value.numerator, value.denominator, fish.context)
