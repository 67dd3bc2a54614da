"""What the traits of a fish will be when it is grown, put beside its record before it is graded.

The model is measures/growth.py; here it is told what a standard asks for, and by which coefficients.
"""

from __future__ import annotations

from collections.abc import Mapping

from attrs import frozen

from koirules.measures.growth import DEFAULT_EXPONENT, DEFAULT_WHITE, Grower, GrowthModel
from koirules.problems.quoting import in_words
from koirules.standard.growing import EXPONENT, LENGTH, WHITE
from koirules.standard.growth_settings import grown_in, length_grown_to
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Grown, Supplied
from koirules.standard.types import Numeric
from koirules.standard.wording import number_words
from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Reading, Span, anything
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Dimension


@frozen
class Wanted:
    """A grown trait that rules ask for. key: under which name rules find it."""

    key: str
    trait: Trait
    grower: Grower


@frozen
class Ahead:
    """Works out grown traits of records, for one standard with the settings of one run.

    any_length: the range of the length, for a fish whose length was not recorded.
    """

    wanted: tuple[Wanted, ...]
    any_length: Span

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting]) -> Ahead:
        """What a standard asks for."""
        model = model_of(settings)
        length = rules.traits.get(LENGTH)
        reach = anything(length.kind) if length is not None else None
        return cls(
            tuple(_wanted(node, settings, model) for node in grown_in(rules).values()),
            reach if isinstance(reach, Span) else Span(0.0, 0.0),
        )

    def whole(self, readings: Mapping[str, Reading]) -> Mapping[str, Reading]:
        """A record with the grown traits beside it; a trait that was not recorded has none, but for the length itself."""
        if not self.wanted:
            return readings
        length = readings.get(LENGTH)
        shortest, longest = length if isinstance(length, Span) else self.any_length
        whole = dict(readings)
        for wanted in self.wanted:
            reading = self.any_length if wanted.grower.is_length else readings.get(wanted.trait.name)
            if isinstance(reading, Span):
                whole[wanted.key] = wanted.grower.grown(*reading, shortest, longest)
        return whole


def growth_note(rules: Rules, settings: Mapping[str, Setting]) -> str:
    """What a reader of results should know about the model of growth behind them; "" where the rules ask for no growth."""
    asked = [node.source for node in grown_in(rules).values() if isinstance(node.source, Grown)]
    if not asked:
        return ""
    model = model_of(settings)
    lengths = sorted({length_grown_to(source, settings) for source in asked})
    words = in_words([number_words(length, Numeric(Dimension.LENGTH)) for length in lengths], "and")
    told = [
        f"{name} = {number_words(value, Numeric(None))}" + ("" if name in settings else ", the usual value")
        for name, value in ((EXPONENT, model.exponent), (WHITE, model.white))
    ]
    return (
        f"What stands as grown to {words} was worked out and not seen: a model, not a promise. A fish that is that long "
        "already is taken as it is; else weight goes as length to the power of b, girth as length to the power of "
        f"(b - 1) / 2, and a share s of the new skin across the body stays white (b: {told[0]}; s: {told[1]})."
    )


def model_of(settings: Mapping[str, Setting]) -> GrowthModel:
    """The model of growth with the coefficients of a standard, or with those that are taken where it names none."""
    exponent, white = settings.get(EXPONENT), settings.get(WHITE)
    return GrowthModel(
        DEFAULT_EXPONENT if exponent is None else float(exponent.value),
        DEFAULT_WHITE if white is None else float(white.value),
    )


def _wanted(node: Supplied, settings: Mapping[str, Setting], model: GrowthModel) -> Wanted:
    if not isinstance(node.source, Grown):
        raise AssertionError("a value beside the record that does not grow")
    trait = node.source.of.trait
    if trait.allometry is None or not isinstance(trait.kind, Number | Count):
        raise AssertionError(f"{trait.name} has no model of growth")
    target = length_grown_to(node.source, settings)
    grower = Grower.of(trait.kind, trait.allometry, target, model, is_length=trait.name == LENGTH)
    return Wanted(node.key, trait, grower)
