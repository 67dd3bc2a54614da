"""What the traits of a fish will be when it is grown, put beside its record before it is graded.

The model is measures/growth.py; here it is told what a standard asks for, and by which coefficients.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from koirules.languages import ENGLISH, Tongue
from koirules.measures.grown_measures import MeasuresAhead
from koirules.measures.growth import (
    DEFAULT_EXPONENT,
    DEFAULT_SIDES,
    DEFAULT_SIDES_BY_EYE,
    Grower,
    GrowthModel,
)
from koirules.standard.check.growing import EXPONENT, SIDES, WHITE
from koirules.standard.growth_settings import grown_in, length_grown_to
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Grown
from koirules.standard.types import Numeric
from koirules.standard.wording import number_words
from koirules.values import frozen
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

    wanted: those that follow the length. derived: those that are measured. any_length: the range of the length, for a fish
    whose length was not recorded. grows_by: the trait that says how long it is.
    """

    wanted: tuple[Wanted, ...]
    derived: tuple[MeasuresAhead, ...]
    any_length: Span
    grows_by: str

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting]) -> Ahead:
        """What a standard asks for."""
        model = model_of(settings)
        length = rules.traits.get(rules.subject.grows_by)
        reach = anything(length.kind) if length is not None else None
        wanted: list[Wanted] = []
        derived: dict[float, dict[str, tuple[str, ...]]] = {}
        for key, node in grown_in(rules).items():
            if not isinstance(node.source, Grown):
                raise AssertionError("a value beside the record that does not grow")
            trait, target = node.source.of.trait, length_grown_to(node.source, settings)
            if trait.allometry is not None and isinstance(trait.kind, Number | Count):
                grower = Grower.of(
                    trait.kind, trait.allometry, target, model, is_length=trait.name == rules.subject.grows_by
                )
                wanted.append(Wanted(key, trait, grower))
            else:
                # `grown to 65 cm` and `grown to goal` are two keys of one trait where the goal is 65 cm.
                keys = derived.setdefault(target, {})
                keys[trait.name] = (*keys.get(trait.name, ()), key)
        return cls(
            tuple(wanted),
            tuple(MeasuresAhead.of(rules, settings, target, keys, model) for target, keys in derived.items()),
            reach if isinstance(reach, Span) else Span(0.0, 0.0),
            rules.subject.grows_by,
        )

    @property
    def nothing(self) -> bool:
        """Whether the standard asks for no growth."""
        return not self.wanted and not self.derived

    @property
    def reads(self) -> frozenset[str]:
        """The traits that it is worked out from."""
        names = {name for one in self.derived for name in one.inputs} | {one.trait.name for one in self.wanted}
        return frozenset(names if self.nothing else names | {self.grows_by})

    def prepare(self, fish: Sequence[Mapping[str, Reading]]) -> None:
        """Measure many fish at once, so that each of them is ready when it is asked for."""
        lengths = [self._length(readings) for readings in fish] if self.derived else []
        for one in self.derived:
            one.rows([tuple(readings.get(name) for name in one.inputs) for readings in fish], lengths)

    def _length(self, readings: Mapping[str, Reading]) -> Span:
        length = readings.get(self.grows_by)
        return length if isinstance(length, Span) else self.any_length

    def whole(self, readings: Mapping[str, Reading]) -> Mapping[str, Reading]:
        """A record with the grown traits beside it; a trait of which nothing is known has none, but for the length itself.

        Raises RecordError where a library for measuring is missing.
        """
        if self.nothing:
            return readings
        span = self._length(readings)
        whole = dict(readings)
        for wanted in self.wanted:
            reading = self.any_length if wanted.grower.is_length else readings.get(wanted.trait.name)
            if isinstance(reading, Span):
                whole[wanted.key] = wanted.grower.grown(*reading, *span)
        for one in self.derived:
            whole.update(one.rows([tuple(readings.get(name) for name in one.inputs)], [span])[0])
        return whole


def growth_note(rules: Rules, settings: Mapping[str, Setting], tongue: Tongue = ENGLISH) -> str:
    """What a reader of results should know about the model of growth behind them; "" where the rules ask for no growth."""
    asked = [node.source for node in grown_in(rules).values() if isinstance(node.source, Grown)]
    if not asked:
        return ""
    model, subject = model_of(settings), rules.subject
    lengths = sorted({length_grown_to(source, settings) for source in asked})
    words = tongue.listed([tongue.quantity(number_words(length, Numeric(Dimension.LENGTH))) for length in lengths])

    def told(name: str, value: float) -> str:
        figure = f"{name} = {tongue.figure(number_words(value, Numeric(None)))}"
        return figure if name in settings else figure + tongue(", the usual value")

    said = {
        "fish": tongue.of(subject.one),
        "a_fish": tongue.of(subject.opening),
        "lengths": words,
        "exponent": told(EXPONENT, model.exponent),
    }
    if model.white is not None and model.by_share:
        note = tongue(
            "Figures for the {fish} grown to {lengths} come from a model: they are an estimate, not a promise. {a_fish} that is "
            "that long already counts as it is. In the model, weight follows length to the power b, girth follows length to the "
            "power (b - 1) / 2, and a share s of the new skin across the body stays white (b: {exponent}; s: {white}).",
            white=told(WHITE, model.white),
            **said,
        )
    else:
        note = tongue(
            "Figures for the {fish} grown to {lengths} come from a model: they are an estimate, not a promise. {a_fish} that is "
            "that long already counts as it is. In the model, weight follows length to the power b, and girth follows length to "
            "the power (b - 1) / 2. White grows in from the sides, so a pattern becomes narrower across the body, as length to "
            "the power -w (b: {exponent}; w: {sides}).",
            sides=told(SIDES, DEFAULT_SIDES if model.sides is None else model.sides),
            **said,
        )
    seen = any(one.of.trait.white_from_sides for one in asked)
    return note + (_without_a_map(model, tongue) if seen else "")


def _without_a_map(model: GrowthModel, tongue: Tongue) -> str:
    """By what a share of red is told that was judged by eye."""
    if model.sides is not None:
        return tongue(" Red that was judged by eye becomes less by the same power.")
    low, high = (tongue.figure(number_words(end, Numeric(None))) for end in DEFAULT_SIDES_BY_EYE)
    return tongue(
        " Where red was judged by eye and no map of it was drawn, its share becomes less in the same way, and w is not known as "
        "well ({name} = {value}).",
        name=SIDES,
        value=tongue("from {low} to {high}, as is usual", low=low, high=high),
    )


def model_of(settings: Mapping[str, Setting]) -> GrowthModel:
    """The model of growth with the coefficients of a standard, or with those that are taken where it names none."""
    exponent, white, sides = settings.get(EXPONENT), settings.get(WHITE), settings.get(SIDES)
    return GrowthModel(
        DEFAULT_EXPONENT if exponent is None else float(exponent.value),
        None if white is None else float(white.value),
        None if sides is None else float(sides.value),
    )
