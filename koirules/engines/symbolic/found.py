"""The fish that the solver has found: the record that a model of the variables gives."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from math import floor
from typing import Any, assert_never

import z3

from koirules.candidates.ordinary import SOME_COLOUR, SOME_MAP
from koirules.candidates.places_to_move import MILLION
from koirules.engines.symbolic.fish import Fish, Slot, at_notch
from koirules.engines.symbolic.grown import is_grown, ratio, source_of
from koirules.standard.tree import Supplied
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth
from koirules.vocabulary.readings import PlaceSet, Reading, Span


def record_of(fish: Fish, model: z3.ModelRef, ordinary: Mapping[str, Reading]) -> dict[str, Reading]:
    """The record that a model gives, without what it grows to; what it does not speak of is as in an ordinary fish."""
    spoken = {declared.name() for declared in model.decls()}
    found: dict[str, Reading] = {}
    for key, slot in fish.slots.items():
        if is_grown(slot.node):
            continue
        if spoken.isdisjoint(slot.names):
            if key in ordinary:
                found[key] = ordinary[key]
        elif slot.recorded is True or _holds(model, slot.recorded):
            found[key] = _reading(slot, model)
    return found


def before_growth(fish: Fish, model: z3.ModelRef, record: dict[str, Any]) -> dict[str, Any]:
    """A record with the figures that grow to what a model says, as nearly as their digits go."""
    found = dict(record)
    for key, slot in fish.slots.items():
        grower = fish.growers.get(key)
        if grower is None or grower.is_length or not isinstance(slot.node, Supplied):
            continue
        source = source_of(slot.node)
        length = record.get(source.length.key)
        if isinstance(length, Span) and source.of.key in record:
            then = model.eval(slot.value, model_completion=True).as_fraction() / MILLION
            now = float(then / ratio(grower, Fraction(length.low)))
            found[source.of.key] = fish.at_nearest(source.of, now)
    return found


def _holds(model: z3.ModelRef, term: Any) -> bool:
    return term if isinstance(term, bool) else z3.is_true(model.eval(term, model_completion=True))


def _reading(slot: Slot, model: z3.ModelRef) -> Any:
    match slot.type:
        case Numeric():
            exact = model.eval(slot.value, model_completion=True).as_fraction()
            if slot.between:
                # What it is read as: rounded half up, as the evaluator rounds it.
                return at_notch(floor(exact + Fraction(1, 2)), slot.notch)
            # Thresholds stand on whole notches, and what lies between two of them is on the side of the lower one.
            return at_notch(floor(exact), slot.notch)
        case PlaceWords():
            bits = sum(1 << i for i, name in enumerate(slot.value) if _holds(model, name))
            return PlaceSet(bits, bits)
        case TextLabel():
            return next(text for text, when in slot.value if _holds(model, when))
        case Truth():
            holds = _holds(model, slot.value)
            return (holds, holds)
        case Steps():
            return next(1 << i for i, when in enumerate(slot.value) if _holds(model, when))
        case PatternMap():
            return SOME_MAP
        case ColourList():
            return SOME_COLOUR
        case _:
            assert_never(slot.type)
