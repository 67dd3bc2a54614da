"""Figures of colour from readings along the fish: CIELAB, sRGB to CIELAB, and CIEDE2000.

Readings are L*, a*, b* (ISO/CIE 11664-4) as they were taken; whether under D65 and 10 degrees, as a reader is usually set,
or otherwise, changes none of the formulas here, as long as all readings of a fish are taken alike. Those of a photograph
are brought to CIELAB by IEC 61966-2-1, which is D65 and 2 degrees.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import combinations
from math import atan2, degrees, fsum, hypot
from typing import TYPE_CHECKING

from attrs import frozen

from koirules.vocabulary.colour_readings import ColourReadings, ColourSpace, Triple

if TYPE_CHECKING:
    from coloraide import Color

LEAST_CHROMA_WITH_HUE = 8.0
"""Below this chroma a hue means nothing: a reader's scatter turns it right round (from memory)."""

_TO_XYZ = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
"""Linear red, green and blue to XYZ: IEC 61966-2-1:1999, with the four decimals of the standard."""


@frozen
class ColourFigures:
    """Figures of the readings of one colour of a fish.

    lightness, chroma, yellow: L*, C* and b* of the mean reading. hue: of the mean reading in degrees from 0 to 360, None
    where its chroma is too small to have one. evenness: the largest CIEDE2000 difference between two of the readings, None
    where there is only one.
    """

    lightness: float
    chroma: float
    yellow: float
    hue: float | None
    evenness: float | None


def colour_figures(readings: ColourReadings) -> ColourFigures:
    """The figures of readings. Hue and chroma are those of the mean of L*, a* and b*, since hues have no mean of their own."""
    lightness, a, b = mean_reading(readings)
    chroma = hypot(a, b)
    hue = degrees(atan2(b, a)) % 360.0 if chroma >= LEAST_CHROMA_WITH_HUE else None
    pairs = combinations(sorted(set(lab_of(readings))), 2)
    evenness = max((difference(one, other) for one, other in pairs), default=0.0)
    return ColourFigures(lightness, chroma, b, hue, evenness if len(readings.values) > 1 else None)


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
