"""Invented records of any vocabulary, the same ones for the same seed."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import Decimal
from importlib.util import find_spec
from random import Random
from typing import assert_never

from koirules.vocabulary.kinds import (
    Choice,
    Colours,
    Count,
    Kind,
    Label,
    Number,
    Patches,
    Places,
    Scale,
    YesNo,
    shortest,
)
from koirules.vocabulary.quantities import may_be_part_of_one
from koirules.vocabulary.traits import Trait

_MISSING, _UNSURE, _AT_AN_END = 0.2, 0.15, 0.2
"""The shares of values that are not recorded, that are what they could be, and that lie at an end of a range."""

_MEASURED_BY: dict[type, str] = {Patches: "shapely", Colours: "coloraide"}

_LABELS = ("mill pond", "line A", "7")


def made_records(
    traits: Iterable[Trait], number: int, seed: int = 0, missing: float = _MISSING, unsure: float = _UNSURE
) -> list[dict[str, str]]:
    """Invented records as a record sheet has them: trait to cell, numbers in the trait's own unit.

    Of all values a share of `missing` is left out; of the others a share of `unsure` is what it could be, and some lie at an
    end of their range. Maps are left out where Shapely is not installed, which measures them, and colour readings where
    ColorAide is not.
    """
    random = Random(seed)  # noqa: S311 - nobody's secret
    unmeasured = tuple(kind for kind, library in _MEASURED_BY.items() if find_spec(library) is None)
    listed = [trait for trait in traits if not isinstance(trait.kind, unmeasured)]
    return [
        {trait.name: _cell(trait.kind, random, unsure) for trait in listed if random.random() >= missing}
        for _ in range(number)
    ]


def _cell(kind: Kind, random: Random, share: float) -> str:
    unsure = random.random() < share
    match kind:
        case YesNo():
            return "yes or no" if unsure else random.choice(("yes", "no"))
        case Scale(words) | Choice(words):
            return " or ".join(_picked(words, 2 if unsure else 1, random))
        case Places(places):
            return " ".join(_picked(places, random.randint(0, min(4, len(places))), random)) or "none"
        case Count(high):
            values = [random.randint(0, high) for _ in range(2 if unsure else 1)]
            return " to ".join(str(value) for value in sorted(values))
        case Number():
            numbers = sorted(_number(kind, random) for _ in range(2 if unsure else 1))
            # A bare share of at most 1 could be a part of one, and is refused.
            unit = " %" if may_be_part_of_one(kind) else ""
            return " to ".join(f"{shortest(value)}{unit}" for value in numbers)
        case Label():
            return random.choice(_LABELS)
        case Colours():
            red = [(random.randint(40, 55), random.randint(25, 45), random.randint(20, 45)) for _ in range(3)]
            return "; ".join(f"{lightness} {a} {b}" for lightness, a, b in red)
        case Patches():
            front, reach = random.randint(0, 80), random.randint(1, 190)
            return f"{front} to {front + random.randint(2, 20)} left {reach} right {random.randint(1, 190)}"
        case _:
            assert_never(kind)


def _number(kind: Number, random: Random) -> Decimal:
    if random.random() < _AT_AN_END:
        return random.choice((kind.low, kind.high))
    finest = max(-6, _exponent(kind.low), _exponent(kind.high), -2)
    width = kind.high - kind.low
    value = kind.low + width * Decimal(random.randint(0, 10_000)) / 10_000
    return min(max(value.quantize(Decimal(1).scaleb(min(finest, -2))), kind.low), kind.high)


def _exponent(value: Decimal) -> int:
    return int(value.as_tuple().exponent)


def _picked(words: Sequence[str], number: int, random: Random) -> list[str]:
    """Some of the words, in their own order."""
    picked = sorted(random.sample(range(len(words)), min(number, len(words))))
    return [words[position] for position in picked]
