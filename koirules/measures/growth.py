"""What a figure will be when the fish is longer: a stated model, not a promise.

Weight follows length as W = a L^b. With the outline and the density kept, W is as L G^2, so that girth G is as L^((b-1)/2),
and girth over length changes by q = (L2 / L1)^((b-3)/2) (worked out from the definition; Froese 2006, J. Appl. Ichthyol.
22:241-253, for W = a L^b and its b).

White grows in from the sides: what was drawn at v across the body lies at v (L2 / L1)^(-w) on the longer fish, and along the
body a pattern keeps its place. w is a number of its own and does not follow from b: a pattern that fills the back of a fish of
12 cm with room to spare looks small on the same fish at 60 cm (common practice, no source). Where only the share of red was
judged by eye and no map was drawn, the share goes by the same power.

Rule files that say by which share s of the new girth stays white, and nothing of w, are read as ever: v q^(-s).
"""

from __future__ import annotations

from math import floor

from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import Allometry

DEFAULT_EXPONENT = 3.02
"""b of common carp on total length, the middle of published fits (from memory: 3.02, most from 2.98 to 3.07)."""

DEFAULT_SIDES = 0.1
"""w of a map: from 12 cm to 60 cm a red of 75 % becomes 64 %. Young fish are chosen with 70 % to 80 % red, and 40 % to 70 % is
asked of the grown (common practice, no source)."""

DEFAULT_SIDES_BY_EYE = Span(DEFAULT_SIDES, 0.25)
"""Between which ends w lies where no map was drawn: from 12 cm to 60 cm a red of 25 % becomes 17 % to 21 % (common practice, no
source)."""


@frozen
class GrowthModel:
    """exponent: b of W = a L^b. white: s, where a standard says it. sides: w, where a standard says it; it goes before s."""

    exponent: float = DEFAULT_EXPONENT
    white: float | None = None
    sides: float | None = None

    @property
    def by_share(self) -> bool:
        """Whether maps are drawn together by the share of the new girth that stays white."""
        return self.white is not None and self.sides is None


def girth_gain(model: GrowthModel, length: float, target: float) -> float:
    """q: by how much girth over length changes from one length (cm) to a longer one; 1 for a fish that is that long already."""
    return float(_ratio(length, target) ** ((model.exponent - 3.0) / 2.0))


def across(model: GrowthModel, length: float, target: float) -> float:
    """What a distance across the body, as a share of the girth, is multiplied by."""
    if model.white is not None and model.by_share:
        return float(girth_gain(model, length, target) ** -model.white)
    return float(_ratio(length, target) ** -(DEFAULT_SIDES if model.sides is None else model.sides))


def cover_by_eye(model: GrowthModel, cover: Span, lengths: Span, target: float) -> Span:
    """What a share of red that was judged by eye will be, to a millionth; a fish that is that long already stays as it is."""
    if lengths.low >= target:
        return cover
    sides = DEFAULT_SIDES_BY_EYE if model.sides is None else Span(model.sides, model.sides)
    least = cover.low * _ratio(lengths.low, target) ** -sides.high
    most = cover.high * _ratio(lengths.high, target) ** -sides.low
    return Span(_to_a_millionth(least), _to_a_millionth(most))


@frozen
class Grower:
    """Says what one figure will be at one length.

    target: the length in cm. power: of the length that the figure is as. least, most: the range of the figure. is_length:
    whether the figure is the length itself.
    """

    target: float
    power: float
    least: float
    most: float
    is_length: bool = False

    @classmethod
    def of(
        cls, kind: Number | Count, allometry: Allometry, target: float, model: GrowthModel, *, is_length: bool = False
    ) -> Grower:
        """What says it of a figure of a kind and allometry."""
        ends = (0.0, float(kind.high)) if isinstance(kind, Count) else (float(kind.held_low), float(kind.held_high))
        return cls(target, allometry.power(model.exponent), *ends, is_length)

    def grown(self, low: float, high: float, shortest: float, longest: float) -> Span:
        """The figure from `low` to `high` (never below 0) of a fish from `shortest` to `longest`, when grown, to a millionth.

        A fish that is that long already stays as it is. Beyond the range of the figure it is held at the end of the range.
        """
        if self.is_length:
            return Span(min(max(shortest, self.target), self.most), min(max(longest, self.target), self.most))
        one = _ratio(shortest, self.target) ** self.power
        other = one if shortest == longest else _ratio(longest, self.target) ** self.power
        if one == other == 1:
            return Span(low, high)
        low, high = (low * one, high * other) if one <= other else (low * other, high * one)
        return Span(self._held(low), self._held(high))

    def _held(self, value: float) -> float:
        return min(max(_to_a_millionth(value), self.least), self.most)


def _to_a_millionth(value: float) -> float:
    return floor(value * 1_000_000 + 0.5) / 1_000_000


def _ratio(length: float, target: float) -> float:
    return (max(length, target)) / length
