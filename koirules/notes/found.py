"""What a remark says of one trait, and the same where somebody is not sure."""

from __future__ import annotations

from attrs import evolve

from koirules.notes.tree import words_of_line
from koirules.standard.parts import Said
from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Number, Scale, words_of
from koirules.vocabulary.readings import Span, anything
from koirules.vocabulary.traits import Trait

OF_THE_FISH = words_of_line(
    "length weight sex build size_by_eye outline depth width back_line spine body_symmetry health swimming impression "
    "presence tobi shoulders belly_shape tail_stem"
)
"""Traits that are said of the whole fish or of its body, and not of a mark or of the red."""


@frozen
class Found:
    """What a remark says of a trait. said: None where it says no more than that nobody can tell. phrase: by which words.

    after: traits of which the remark before has to speak, where there is one.
    """

    trait: str
    said: Said | None
    phrase: str
    hedged: bool = False
    after: tuple[str, ...] = ()


def hedge(found: Found, trait: Trait, *, number_too: bool = True) -> Found:
    """What a hedged remark says: a scale one word wider either way, a count by one, a number by a tenth, all else unknown."""
    kind, said = trait.kind, found.said
    match kind, said:
        case Scale(), int(bits):
            size = len(words_of(kind))
            return evolve(found, said=(bits | bits << 1 | bits >> 1) & ((1 << size) - 1), hedged=True)
        case ((Number() | Count()), Span(low, high)):
            if not number_too:
                return evolve(found, hedged=True)
            whole = anything(kind)
            if not isinstance(whole, Span):
                raise AssertionError("a number is read as a span")
            if isinstance(kind, Number) and low == high == 0:
                return evolve(
                    found, said=None, hedged=True
                )  # a tenth of nothing would be nothing: `nearly none` is some
            by = (1.0, 1.0) if isinstance(kind, Count) else (abs(low) / 10, abs(high) / 10)
            return evolve(found, said=Span(max(low - by[0], whole.low), min(high + by[1], whole.high)), hedged=True)
        case _:
            return evolve(found, said=None, hedged=True)
