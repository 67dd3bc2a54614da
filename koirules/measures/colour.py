"""Figures of colour from readings along the fish: CIELAB, sRGB to CIELAB, and CIEDE2000.

Readings are L*, a*, b* (ISO/CIE 11664-4) as they were taken; whether under D65 and 10 degrees, as a reader is usually set,
or otherwise, changes none of the formulas here, as long as all readings of a fish are taken alike. Those of a photograph
are brought to CIELAB by IEC 61966-2-1, which is D65 and 2 degrees.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import lru_cache, partial
from itertools import combinations
from math import atan2, degrees, fsum, hypot
from typing import TYPE_CHECKING

from koirules.vocabulary.colour_readings import ColourReadings, ColourSpace, Triple
from koirules.vocabulary.measures import Computed, Found, Given
from koirules.vocabulary.readings import Reading, Span
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    from coloraide import Color

LEAST_CHROMA_WITH_HUE = 8.0
"""Below this chroma a hue means nothing: a reader's scatter turns it right round (from memory)."""

_TO_XYZ = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
"""Linear red, green and blue to XYZ: IEC 61966-2-1:1999, with the four decimals of the standard."""


def colour_measure(readings: str, outputs: Mapping[str, Trait]) -> Computed:
    """The measure that gives figures of the readings of one colour.

    readings: the trait, of the kind colours. outputs: the trait that each figure of `FIGURES` is read into. Raises KeyError
    for an unknown figure.
    """
    by_trait = {trait.name: FIGURES[figure] for figure, trait in outputs.items()}
    return Computed(f"the colour {readings}", (readings,), tuple(by_trait), partial(_measured, readings, by_trait))


def contrast_measure(one: str, other: str, output: Trait) -> Computed:
    """The measure that gives the difference between the readings of two colours."""
    return Computed(output.title, (one, other), (output.name,), partial(_contrasts, one, other, output.name))


def _measured(readings: str, outputs: Mapping[str, Callable[[ColourReadings], float | None]], given: Given) -> Found:
    wanted = {name: figure for name, figure in outputs.items() if name in given.wanted}
    return Found({name: [_span(one, figure) for one in given.readings[readings]] for name, figure in wanted.items()})


def _span(reading: Reading | None, figure: Callable[[ColourReadings], float | None]) -> Span | None:
    value = figure(reading) if isinstance(reading, ColourReadings) else None
    return None if value is None else Span(value, value)


def _contrasts(one: str, other: str, output: str, given: Given) -> Found:
    pairs = zip(given.readings[one], given.readings[other], strict=True)
    return Found({output: [_contrast(*pair) for pair in pairs]})


def _contrast(one: Reading | None, other: Reading | None) -> Span | None:
    # A reader and a photograph see under different whites.
    if isinstance(one, ColourReadings) and isinstance(other, ColourReadings) and one.space is other.space:
        value = contrast(one, other)
        return Span(value, value)
    return None


def lightness_of(readings: ColourReadings) -> float:
    """L* of the mean reading."""
    return mean_reading(readings)[0]


def yellow_of(readings: ColourReadings) -> float:
    """b* of the mean reading: above 0 yellow, below 0 blue."""
    return mean_reading(readings)[2]


def chroma_of(readings: ColourReadings) -> float:
    """C* of the mean reading."""
    _, a, b = mean_reading(readings)
    return hypot(a, b)


def hue_of(readings: ColourReadings) -> float | None:
    """The hue of the mean reading in degrees from 0 to 360, since hues have no mean of their own.

    None where its chroma is too small to have one: then nothing was recorded of it, and it is any hue.
    """
    _, a, b = mean_reading(readings)
    return (degrees(atan2(b, a)) + 360.0) % 360.0 if hypot(a, b) >= LEAST_CHROMA_WITH_HUE else None


def evenness_of(readings: ColourReadings) -> float | None:
    """The largest CIEDE2000 difference between two of the readings; None where there is only one."""
    if len(readings.values) < 2:
        return None
    pairs = combinations(sorted(set(lab_of(readings))), 2)
    return max((difference(one, other) for one, other in pairs), default=0.0)


def contrast(one: ColourReadings, other: ColourReadings) -> float:
    """The CIEDE2000 difference between the mean readings of two colours of a fish."""
    return difference(mean_reading(one), mean_reading(other))


def mean_reading(readings: ColourReadings) -> Triple:
    """The mean of L*, of a* and of b*."""
    lab = lab_of(readings)
    lightness, a, b = (fsum(values) / len(lab) for values in zip(*lab, strict=True))
    return lightness, a, b


def lab_of(readings: ColourReadings) -> Sequence[Triple]:
    """The readings in CIELAB."""
    match readings.space:
        case ColourSpace.LAB:
            return readings.values
        case ColourSpace.SRGB:
            return [srgb_to_lab(value) for value in readings.values]


@lru_cache(maxsize=65_536)
def difference(one: Triple, other: Triple) -> float:
    """The CIEDE2000 difference of two readings in CIELAB (ISO/CIE 11664-6; Sharma, Wu and Dalal 2005)."""
    return float(_colour("lab-d65", one).delta_e(_colour("lab-d65", other), method="2000"))


def srgb_to_lab(value: Triple) -> Triple:
    """Red, green and blue of sRGB, from 0 to 255, in CIELAB under D65 and 2 degrees (IEC 61966-2-1)."""
    red, green, blue = value
    linear = _colour("srgb", (red / 255, green / 255, blue / 255)).convert("srgb-linear").coords()
    x, y, z = (fsum(part * share for part, share in zip(linear, row, strict=True)) for row in _TO_XYZ)
    lightness, a, b = _colour("xyz-d65", (x, y, z)).convert("lab-d65").coords()
    return float(lightness), float(a), float(b)


def _colour(space: str, value: Triple) -> Color:
    from coloraide import Color

    return Color(space, value)


FIGURES: Mapping[str, Callable[[ColourReadings], float | None]] = {
    "lightness": lightness_of,
    "chroma": chroma_of,
    "hue": hue_of,
    "yellow": yellow_of,
    "evenness": evenness_of,
}
"""What can be worked out from the readings of one colour, by name."""
