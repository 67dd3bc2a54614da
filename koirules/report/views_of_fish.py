"""A fish from above as it is, and at each length that a standard asks its pattern for."""

from __future__ import annotations

from collections.abc import Mapping

from koirules.grading.maps_ahead import maps_ahead
from koirules.languages import ENGLISH, Tongue
from koirules.report.appearance import appearance_of, colour_of
from koirules.report.views import FishView
from koirules.standard.parts import Rules, Setting
from koirules.vocabulary.readings import Reading


def views_of(
    rules: Rules, settings: Mapping[str, Setting], readings: Mapping[str, Reading], tongue: Tongue = ENGLISH
) -> tuple[FishView, ...]:
    """The views of a koi; as an outline alone where no map was recorded."""
    look = appearance_of(rules.traits, readings, tongue)
    grown = [
        FishView(
            tongue("grown to {length}, by a model", length=_centimetres(ahead.length, tongue)),
            look.grown(ahead.length, ahead.stouter, {colour_of(name): one for name, one in ahead.maps.items()}),
        )
        for ahead in maps_ahead(rules, settings, readings)
    ]
    now = tongue("now") if look.length is None else tongue("now, {length}", length=_centimetres(look.length, tongue))
    return (FishView(now if grown else "", look), *grown)


def view_now(rules: Rules, readings: Mapping[str, Reading], tongue: Tongue = ENGLISH) -> FishView:
    """A koi as it is."""
    return FishView("", appearance_of(rules.traits, readings, tongue))


def _centimetres(length: float, tongue: Tongue) -> str:
    return tongue.quantity(f"{length:.1f}".removesuffix(".0") + " cm")
