"""A fish from above as it is, and at each length that a standard asks its pattern for."""

from __future__ import annotations

from collections.abc import Mapping

from koirules.grading.maps_ahead import maps_ahead
from koirules.languages import ENGLISH, Tongue
from koirules.report.appearance import appearance_of, colour_of
from koirules.report.views import View
from koirules.standard.parts import Rules, Setting
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.subject import FISH_FROM_ABOVE


def views_of(
    rules: Rules, settings: Mapping[str, Setting], readings: Mapping[str, Reading], tongue: Tongue = ENGLISH
) -> tuple[View, ...]:
    """The views of a fish; as an outline alone where no map was recorded; none where its subject is not drawn."""
    if rules.subject.drawing != FISH_FROM_ABOVE:
        return ()
    look = appearance_of(rules.traits, readings, tongue)
    grown = [
        View(
            tongue("grown to {length}, by a model", length=_centimetres(ahead.length, tongue)),
            look.grown(ahead.length, ahead.stouter, {colour_of(name): one for name, one in ahead.maps.items()}),
        )
        for ahead in maps_ahead(rules, settings, readings)
    ]
    now = tongue("now") if look.length is None else tongue("now, {length}", length=_centimetres(look.length, tongue))
    return (View(now if grown else "", look), *grown)


def _centimetres(length: float, tongue: Tongue) -> str:
    return tongue.quantity(f"{length:.1f}".removesuffix(".0") + " cm")
