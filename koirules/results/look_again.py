"""Values to look at again: numbers that are unlikely for the stage of the fish, or that lie far from the rest of the batch.

Far from the rest is what lies outside the inner fences of Tukey (Exploratory Data Analysis, 1977): one and a half times the
spread of the hinges beyond either hinge.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from types import MappingProxyType

from attrs import field

from koirules.languages import ENGLISH, Tongue
from koirules.results.record import Record
from koirules.values import frozen
from koirules.vocabulary.kinds import Number, shortest
from koirules.vocabulary.readings import Span, show_reading, write_number
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import UNITS

_FACTOR = 2
"""Who errs by a unit errs by more than this."""

FEWEST = 10
"""Of fewer fish the fences say nothing."""


@frozen
class LookAgain:
    """A value to look at again. trait, title: of what; value: as it was read; why: in words, with what may have been meant."""

    trait: str
    title: str
    value: str
    why: str
    tongue: Tongue = field(default=ENGLISH, eq=False, repr=False)

    @property
    def words(self) -> str:
        """What to look at, in words: `total length 1.45 cm: …`."""
        return self.tongue("{title} {value}: {why}", title=self.title, value=self.value, why=self.why)


def look_again(
    records: Sequence[Record],
    traits: Mapping[str, Trait],
    stage: str | None,
    tongue: Tongue = ENGLISH,
    titles: Mapping[str, str] = MappingProxyType({}),
) -> list[tuple[LookAgain, ...]]:
    """For each record what of it to look at again; it changes nothing. stage: that of the standard.

    tongue: in which language it is told; titles: of traits in it, by their names.
    """
    found: list[list[LookAgain]] = [
        [
            LookAgain(
                name,
                titles.get(name, traits[name].title),
                tongue("not read"),
                tongue("{cause} It was taken as not recorded.", cause=cause),
                tongue,
            )
            for name, cause in record.unreadable
            if name in traits
        ]
        for record in records
    ]
    for trait in traits.values():
        kind = trait.kind
        if not isinstance(kind, Number):
            continue
        known = [(n, one) for n, record in enumerate(records) if (one := _sure(record, trait.name)) is not None]
        usual = trait.usual_at(stage)
        low, high = fences([one for _, one in known]) if len(known) >= FEWEST else (None, None)
        for n, one in known:
            why = "" if usual is None else _unusual(kind, one, usual, stage, tongue)
            if not why and low is not None and high is not None and not low <= one <= high:
                ends = (tongue.quantity(_rounded(end, kind)) for end in (low, high))
                lowest, highest = ends
                why = tongue(
                    "far from the rest of the batch (nearly all between {low} and {high})", low=lowest, high=highest
                )
            if why:
                shown = tongue.quantity(show_reading(kind, Span(one, one)))
                found[n].append(LookAgain(trait.name, titles.get(trait.name, trait.title), shown, why, tongue))
    return [tuple(each) for each in found]


def unlikely(trait: Trait, value: float, stage: str | None) -> LookAgain:
    """What is to be said of a held value of a trait that lies outside what is usual."""
    usual = trait.usual_at(stage)
    if not isinstance(trait.kind, Number) or usual is None:
        raise AssertionError(trait.name)
    return LookAgain(
        trait.name, trait.title, show_reading(trait.kind, Span(value, value)), _unusual(trait.kind, value, usual, stage)
    )


def fences(values: Sequence[float]) -> tuple[float | None, float | None]:
    """The inner fences of Tukey (1977) of some values; None for both where the hinges are equal."""
    lower, upper = hinges(values)
    spread = upper - lower
    return (lower - 1.5 * spread, upper + 1.5 * spread) if spread > 0 else (None, None)


def hinges(values: Sequence[float]) -> tuple[float, float]:
    """The hinges of Tukey (1977): the medians of the lower and of the upper half, the median itself in both."""
    ordered = sorted(values)
    half = (len(ordered) + 1) // 2
    return _median(ordered[:half]), _median(ordered[-half:])


def _median(ordered: Sequence[float]) -> float:
    middle = len(ordered) // 2
    return ordered[middle] if len(ordered) % 2 else (ordered[middle - 1] + ordered[middle]) / 2


def _sure(record: Record, name: str) -> float | None:
    reading = record.readings.get(name)
    return reading.low if isinstance(reading, Span) and reading.low == reading.high else None


def _unusual(
    kind: Number, value: float, usual: tuple[Decimal, Decimal], stage: str | None, tongue: Tongue = ENGLISH
) -> str:
    """Why a held value is unlikely, with the unit that it may have been written in; "" where it is likely."""
    unit = kind.unit
    given = Decimal(repr(value)) if unit is None else unit.from_held(Decimal(repr(value)))
    if usual[0] <= given <= usual[1]:
        return ""
    symbol = "" if unit is None else f" {unit.symbol}"
    low, high = (tongue.quantity(f"{shortest(end)}{symbol}") for end in usual)
    if stage:
        why = tongue("unlikely for a {stage} (usually {low} to {high})", stage=tongue.of(stage), low=low, high=high)
    else:
        why = tongue("unlikely (usually {low} to {high})", low=low, high=high)
    if unit is None or usual[0] / _FACTOR <= given <= usual[1] * _FACTOR:
        return why
    others = [other for other in UNITS.values() if other.dimension is unit.dimension and other is not unit]
    meant = [other for other in others if usual[0] <= unit.from_held(other.to_held(given)) <= usual[1]]
    words = tongue.listed([tongue.quantity(f"{shortest(round(given, 6))} {other.symbol}") for other in meant], " or ")
    return tongue("{why}; was it {words}?", why=why, words=words) if meant else why


def _rounded(value: float, kind: Number) -> str:
    """A fence for people: to three significant digits."""
    exact = Decimal(f"{value:.3g}")
    return write_number(float(exact), kind) if kind.unit is None or kind.unit.is_held else write_number(value, kind)
