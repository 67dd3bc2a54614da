"""Which coefficients of growth do looks at the same fish suggest, and how sure is that?

In: records of looks on several days. Out: the fits of measures/growth_fit.py, with the settings that carry them into a rule
file and what is to be borne in mind.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_EVEN, Decimal

from koirules.measures.growing_maps import area_without_sashi
from koirules.measures.growth_fit import FEW, Fit, GrowthFit, Look, fit_growth
from koirules.results.record import Record
from koirules.standard.check.growing import COEFFICIENTS, EXPONENT, SIDES, WHITE
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import Trait

LENGTH = "length"
"""The length of a koi that fits go by, as weight and girth are other names of what its vocabulary measures."""

METHOD = (
    "ordinary least squares through the origin over logarithms of what changed between two looks at the same one; the "
    "standard error has pairs - 1 degrees of freedom, the interval is that of Student's t at 95 %"
)

_PLACES = Decimal("0.001")


@frozen
class GrowthOfFish:
    """What looks say of growth.

    settings: lines for a rule file. by_share: those that may stand there instead of the one of the sides. cautions: what is to
    be borne in mind.
    """

    fit: GrowthFit
    settings: tuple[str, ...]
    by_share: tuple[str, ...]
    cautions: tuple[str, ...]


def growth_of(records: Sequence[Record], traits: Mapping[str, Trait]) -> GrowthOfFish:
    """Fit growth to records, each a look at a fish on a day; those without a day, or without a sure length, say nothing."""
    covers = [trait.name for trait in traits.values() if trait.white_from_sides]
    fit = fit_growth([look for record in records if (look := _look(record, covers)) is not None])
    settings = _lines((EXPONENT, fit.exponent), (SIDES, fit.sides))
    return GrowthOfFish(fit, settings, _lines((WHITE, fit.white)), tuple(_cautions(fit)))


def _lines(*found: tuple[str, Fit | None]) -> tuple[str, ...]:
    lines = (setting_line(name, one) for name, one in found if one is not None)
    return tuple(line for line in lines if line is not None)


def setting_line(name: str, fit: Fit) -> str | None:
    """The setting of a coefficient, from the low to the high end of its interval; None where it lies beyond what can be."""
    least, most, _ = COEFFICIENTS[name]
    low, high = fit.interval
    if high < least or low > most:
        return None

    def written(value: float, rounding: str) -> Decimal:
        return min(max(Decimal(repr(value)).quantize(_PLACES, rounding), least), most)

    value = written(fit.value, ROUND_HALF_EVEN)
    ends = written(max(low, 0.0), ROUND_FLOOR), written(min(high, 10.0), ROUND_CEILING)
    told = f"fitted to {fit.pairs} pairs of looks, standard error {fit.error:.2g}"
    stretch = f" from {shortest(ends[0])} to {shortest(ends[1])}" if ends[0] < ends[1] else ""
    return f'setting {name} = {shortest(value)}{stretch} "{told}"'


def _look(record: Record, covers: Sequence[str]) -> Look | None:
    length = _sure(record, LENGTH)
    if record.date is None or not length:
        return None
    ratio = _sure(record, "girth_ratio")
    girth = _sure(record, "girth") or (ratio * length if ratio else None)
    return Look(record.fish, record.date, length, _sure(record, "weight"), girth, _area(record), _cover(record, covers))


def _cover(record: Record, covers: Sequence[str]) -> float | None:
    """The share of red that was judged by eye; None where a map was drawn, which says more."""
    if any(isinstance(reading, PatchMap) for reading in record.readings.values()):
        return None
    return next((cover for name in covers if (cover := _sure(record, name)) is not None), None)


def _area(record: Record) -> float | None:
    """The area of all maps of a fish together; None where one of them has a thin patch, or there is none."""
    areas = [area_without_sashi(reading) for reading in record.readings.values() if isinstance(reading, PatchMap)]
    known = [area for area in areas if area is not None]
    return sum(known) or None if len(known) == len(areas) else None


def _sure(record: Record, name: str) -> float | None:
    """The value of a number that was recorded as one value."""
    reading = record.readings.get(name)
    return reading.low if isinstance(reading, Span) and reading.low == reading.high else None


def _cautions(fit: GrowthFit) -> Iterator[str]:
    exponent = fit.exponent
    if exponent is not None and exponent.pairs < FEW:
        yield (
            f"{exponent.pairs} pairs are few: with fewer than {FEW}, one fish that was measured wrong moves the line. The "
            "interval says how sure b is only if the measuring was as good in all of them."
        )
    if fit.by_weight is not None and fit.by_girth is not None and _apart(fit.by_weight, fit.by_girth):
        yield (
            "Weight and girth do not agree on b: fish full of eggs or of food weigh more than their outline says, and a tape "
            "that is pulled says less. The setting goes by weight."
        )
    if fit.by_pattern is not None and fit.by_eye is not None and _apart(fit.by_pattern, fit.by_eye):
        yield (
            "Maps and the red that was judged by eye do not agree on w: by eye, a dense red is easily taken for more than it "
            "covers. The setting goes by the maps."
        )
    for name, one in ((EXPONENT, exponent), (WHITE, fit.white), (SIDES, fit.sides)):
        if one is not None:
            least, most, _ = COEFFICIENTS[name]
            if not least <= one.value <= most:
                beyond = f"beyond what it can be ({least} to {most}): look at the measures again."
                yield f"{name} comes out at {one.value:.3g}, {beyond}"
    if fit.sides is None:
        yield (
            "Nothing is said of the new skin that comes in white from the sides: that needs three pairs or more with pattern "
            "maps without a thin patch, or with red judged by eye where no map was drawn."
        )
    yield "These are the fish of one water, food and line; those of another grow otherwise."


def _apart(one: Fit, other: Fit) -> bool:
    return one.interval[1] < other.interval[0] or other.interval[1] < one.interval[0]
