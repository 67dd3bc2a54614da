"""What a figure will be when the fish is longer: a stated model, not a promise.

Weight follows length as W = a L^b. With the outline and the density kept, W is as L G^2, so that girth G is as L^((b-1)/2),
and girth over length changes by q = (L2 / L1)^((b-3)/2) (worked out from the definition; Froese 2006, J. Appl. Ichthyol.
22:241-253, for W = a L^b and its b). The share s of the skin that is new across the body comes in white, so that what was
drawn at v across the body lies at v q^(-s); along the body a pattern keeps its place.
"""

from __future__ import annotations

from math import floor

from attrs import frozen

from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import Allometry

DEFAULT_EXPONENT = 3.02
"""b of common carp on total length, the middle of published fits (from memory: 3.02, most from 2.98 to 3.07)."""

DEFAULT_WHITE = 1.0
"""s: all new skin of belly and flank is white (common practice, no source)."""


@frozen
class GrowthModel:
    """exponent: b of W = a L^b. white: s, the share of the new girth that stays white."""

    exponent: float = DEFAULT_EXPONENT
    white: float = DEFAULT_WHITE


def girth_gain(model: GrowthModel, length: float, target: float) -> float:
    """q: by how much girth over length changes from one length (cm) to a longer one; 1 for a fish that is that long already."""
    return float(_ratio(length, target) ** ((model.exponent - 3.0) / 2.0))


def across(model: GrowthModel, length: float, target: float) -> float:
    """What a distance across the body, as a share of the girth, is multiplied by: q^(-s)."""
    return float(girth_gain(model, length, target) ** -model.white)


def grown_number(
    kind: Number | Count, reading: Span, allometry: Allometry, length: Span, target: float, model: GrowthModel
) -> Span | None:
    """What a figure will be at the target length (cm), by its allometry, to a millionth; the figure is never below 0.

    A fish that is that long already stays as it is. None where nothing is left within the range of the figure.
    """
    power = allometry.power(model.exponent)
    ends = sorted(_ratio(end, target) ** power for end in length)
    return _within(kind, reading.low * ends[0], reading.high * ends[1])


def grown_length(kind: Number | Count, length: Span, target: float) -> Span | None:
    """The length itself at the target length: the longer of the two."""
    return _within(kind, max(length.low, target), max(length.high, target))


def _ratio(length: float, target: float) -> float:
    return max(length, target) / length


def _within(kind: Number | Count, low: float, high: float) -> Span | None:
    """The part of an interval that lies in the range of a kind; None where none does."""
    least, most = (0.0, float(kind.high)) if isinstance(kind, Count) else (float(kind.held_low), float(kind.held_high))
    lowest, highest = max(_millionths(low), least), min(_millionths(high), most)
    return Span(lowest, highest) if lowest <= highest else None


def _millionths(value: float) -> float:
    return floor(value * 1_000_000 + 0.5) / 1_000_000
