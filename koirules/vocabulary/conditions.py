"""A reading of a trait as a condition of the rule language: the one that it meets, and the one of whatever is worse."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.vocabulary.kinds import Choice, Count, Number, Places, Scale, YesNo
from koirules.vocabulary.readings import NO_OR_YES, PlaceSet, Reading, Span, anything, words_in, write_number
from koirules.vocabulary.traits import Better, Trait

_SHORT = 1.5e-6


def condition_of(trait: Trait, reading: Reading, *, widened: bool = False) -> str | None:
    """The condition that holds where a trait is as read; None where the language has no plain one, or it holds of any fish.

    widened: whether it takes in what is worse, or more, than what was read.
    """
    name, kind = trait.name, trait.kind
    if reading == anything(kind):
        return None
    match kind, reading:
        case Scale(steps), int(bits):
            if widened:
                bits = _with_worse(bits, len(steps), trait.better) or bits
            return _steps(name, steps, bits)
        case ((Choice() | YesNo()), int(bits)):
            return f"{name} is {_one_of(words_in(kind, bits))}"
        case ((Number() | Count()), Span(low, high)):
            return _numbers(name, kind, low, high)
        case Places(), PlaceSet():
            return _places(name, kind, reading)
        case _:
            return None


def opposite_of(trait: Trait, reading: Reading) -> str | None:
    """The condition of a fish that is less than a trait was asked to be; None where there is none or no plain one."""
    name, kind = trait.name, trait.kind
    if reading == anything(kind):
        return None
    match kind, reading:
        case Scale(steps), int(bits):
            every = (1 << len(steps)) - 1
            enough = _with_better(bits, len(steps), trait.better)
            return _steps(name, steps, every & ~enough) if enough != every else None
        case YesNo(), int(bits):
            return f"{name} is {_one_of(words_in(kind, NO_OR_YES & ~bits))}"
        case Choice(), int(bits):
            return f"{name} is not {_one_of(words_in(kind, bits))}"
        case ((Number() | Count()), Span(low, high)):
            lowest, highest = _ends(kind)
            if low == lowest:
                end, short = _end(high, kind)
                return f"{name} {'at least' if short else 'above'} {end}"
            end, short = _end(low, kind)
            return f"{name} {'at most' if short else 'below'} {end}" if high == highest else None
        case Places(), PlaceSet():
            if reading == PlaceSet.exactly(0):
                return f"count of {name} at least 1"
            missing = words_in(kind, ((1 << len(kind.places)) - 1) & ~reading.possible)
            if len(missing) == 1 and not reading.sure:
                return f"{name} includes {missing[0]}"
            plain = _places(name, kind, reading)
            return None if plain is None else f"not {plain}"
        case _:
            return None


def _with_worse(bits: int, count: int, better: Better) -> int:
    lowest, highest = (bits & -bits).bit_length() - 1, bits.bit_length() - 1
    if better is Better.MORE and highest < count - 1:
        return (1 << (highest + 1)) - 1
    if better is Better.LESS and lowest > 0:
        return ((1 << count) - 1) & ~((1 << lowest) - 1)
    if better is Better.TARGET:  # both ends are worse: what lies beyond, on the nearer side
        if 2 * lowest >= count:
            return ((1 << count) - 1) & ~((1 << lowest) - 1)
        return (1 << (highest + 1)) - 1 if 2 * highest < count - 1 else 0
    return 0


def _with_better(bits: int, count: int, better: Better) -> int:
    lowest, highest = (bits & -bits).bit_length() - 1, bits.bit_length() - 1
    if better is Better.MORE:
        return ((1 << count) - 1) & ~((1 << lowest) - 1)
    if better is Better.LESS:
        return (1 << (highest + 1)) - 1
    return bits


def _steps(name: str, steps: Sequence[str], bits: int) -> str:
    chosen = [step for i, step in enumerate(steps) if bits >> i & 1]
    if len(chosen) == 1:
        return f"{name} is {chosen[0]}"
    if chosen == list(steps[: len(chosen)]):
        return f"{name} at most {chosen[-1]}"
    if chosen == list(steps[-len(chosen) :]):
        return f"{name} at least {chosen[0]}"
    return f"{name} is {_one_of(chosen)}"


def _one_of(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"one of ({', '.join(words)})"


def _ends(kind: Number | Count) -> tuple[float, float]:
    whole = anything(kind)
    assert isinstance(whole, Span)  # noqa: S101 - a number or count has nothing else
    return whole


def _end(value: float, kind: Number | Count) -> tuple[str, bool]:
    """An end of a span as a rule writes it, and whether the span stops a millionth short of it, as `above` and `below` do."""
    if isinstance(kind, Number):
        near = round(value, 5)
        if near != value and abs(value - near) <= _SHORT:
            return write_number(near, kind), True
    return write_number(value, kind), False


def _numbers(name: str, kind: Number | Count, low: float, high: float) -> str:
    lowest, highest = _ends(kind)
    if low == high:
        return f"{name} is {write_number(low, kind)}"
    if low == lowest:
        end, short = _end(high, kind)
        return f"{name} {'below' if short else 'at most'} {end}"
    if high == highest:
        end, short = _end(low, kind)
        return f"{name} {'above' if short else 'at least'} {end}"
    return f"{name} between {write_number(low, kind)} and {write_number(high, kind)}"


def _places(name: str, kind: Places, reading: PlaceSet) -> str | None:
    every = (1 << len(kind.places)) - 1
    if reading == PlaceSet.exactly(0):
        return f"count of {name} is 0"
    sure = words_in(kind, reading.sure)
    if len(sure) == 1 and reading.possible in {every, reading.sure}:
        return f"{name} includes {sure[0]}"
    if not sure and reading.possible == every and reading.most == len(kind.places):
        return f"count of {name} at least {reading.least}"
    if not sure and reading.possible == every and reading.least == reading.most:
        return f"count of {name} is {reading.least}"
    return None
