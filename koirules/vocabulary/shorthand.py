"""Short forms for the kinds of value, and the places on a koi that traits name: for authors of vocabularies.

The list of places is common practice, spelled out; left and right are the fish's own.
"""

from __future__ import annotations

from decimal import Decimal

from koirules.vocabulary.kinds import Choice, Colours, Count, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.units import UNITS, WRITTEN_OTHERWISE

PRACTICE = "Meaning: common practice, no source. Range and words: from memory."
"""Where most traits come from, for their `source`."""

CIELAB = "CIELAB under D65 and 10 degrees unless the sheet says otherwise (ISO/CIE 11664-4). Range: from memory."
CIEDE2000 = "CIEDE2000 (ISO/CIE 11664-6). Range: from memory."
FULTON = "Fulton's K (Froese 2006, Journal of Applied Ichthyology 22:241-253). Range: from memory."

YES_NO = YesNo()
"""Yes or no."""

PATCHES = Patches()
"""A map of where a colour lies."""

COLOURS = Colours()
"""Colour readings along the body."""

EYES = ("left_eye", "right_eye")
CHEEKS = ("left_cheek", "right_cheek")
GILLS = ("left_gill", "right_gill")
PECTORALS = ("left_pectoral", "right_pectoral")
FINS = (*PECTORALS, "dorsal", "pelvic", "anal", "tail")
HEAD = ("nose", "lips", *CHEEKS, *EYES, *GILLS, "crown")
TRUNK = ("nape", "shoulder", "front_back", "middle_back", "rear_back", "left_flank", "right_flank", "belly", "stem")
EVERYWHERE = (*HEAD, *TRUNK, *FINS)


def number(low: str, high: str, unit: str | None = None, usual: tuple[str, str] | None = None) -> Number:
    """A number from low to high, both written as decimals, in the unit with this symbol or plain.

    usual: between which ends it lies for nearly every fish. Raises ValueError for a unit that is not known.
    """
    if unit is not None and unit not in UNITS:
        meant = WRITTEN_OTHERWISE.get(unit)
        advice = f'write "{meant}"' if meant else f"the units are {', '.join(UNITS)}"
        raise ValueError(f'"{unit}" is not the symbol of a unit: {advice}')
    ends = None if usual is None else (Decimal(usual[0]), Decimal(usual[1]))
    return Number(None if unit is None else UNITS[unit], Decimal(low), Decimal(high), ends)


def share(low: str = "0", high: str = "100", usual: tuple[str, str] | None = None) -> Number:
    """A share in %."""
    return number(low, high, "%", usual)


def count(high: int) -> Count:
    """A whole number up to high."""
    return Count(high)


def scale(*steps: str) -> Scale:
    """Steps in order, the lowest first."""
    return Scale(steps)


def choice(*options: str) -> Choice:
    """One of several options without order."""
    return Choice(options)


def places(*names: str) -> Places:
    """Any set of these places."""
    return Places(names)
