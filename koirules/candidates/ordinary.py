"""An ordinary fish of a standard, and a fish that shows something made as ordinary as it can be while it still shows it.

Ordinary is what the samples of the standard give most often for a trait. A trait that no sample gives is in the middle: the
middle one of the thresholds and knots of a number, else the middle of its range; the middle step; no; 0; no place; the first
option; a text that no rule names; a map without a patch and a colour without a hue, of which a rule can only ask whether they
are there.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from decimal import ROUND_HALF_EVEN, Decimal

from koirules.candidates.places_to_move import OTHER_TEXT, every_telling_value, range_in_notches
from koirules.standard.cuts import Cuts
from koirules.standard.parts import Rules
from koirules.vocabulary.colour_readings import ColourReadings, ColourSpace
from koirules.vocabulary.kinds import Choice, Colours, Count, Label, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import NO, PlaceSet, Reading, Span, anything, is_sure
from koirules.vocabulary.traits import Trait

_MILLION = 1_000_000
_MOST_DECIMALS = 6

SOME_MAP = PatchMap()
"""A map, where any will do."""

SOME_COLOUR = ColourReadings(ColourSpace.LAB, ((50.0, 0.0, 0.0),))
"""A colour reading, where any will do."""


def ordinary_fish(standards: Sequence[Rules], cuts: Mapping[str, Cuts]) -> dict[str, Reading]:
    """The ordinary fish of one or more editions; cuts: of every trait that it is to have."""
    given: dict[str, Counter[Reading]] = {}
    for rules in standards:
        for sample in rules.samples:
            for name, reading in sample.record.items():
                given.setdefault(name, Counter())[reading] += 1
    traits = {name: trait for rules in standards for name, trait in rules.traits.items()}
    found: dict[str, Reading] = {}
    for name, cut in cuts.items():
        trait = traits[name]
        sure = [
            (reading, times) for reading, times in given.get(name, Counter()).items() if is_sure(trait.kind, reading)
        ]
        # Of those that are given as often, the one that was given first.
        found[name] = max(sure, key=lambda one: one[1])[0] if sure else _middle(trait, cut)
    return found


def _middle(trait: Trait, cut: Cuts) -> Reading:
    match trait.kind:
        case Count():
            return Span(0.0, 0.0)
        case Number() as kind:
            low, high, notch = range_in_notches(kind)
            inside = [at for at in cut.at if low <= at <= high]
            number = inside[len(inside) // 2] if inside else (low + high) // 2
            value = float(Decimal(number) / notch)
            return Span(value, value)
        case Scale(steps):
            return 1 << (len(steps) // 2)
        case YesNo():
            return NO
        case Choice():
            return 1
        case Places():
            return PlaceSet(0, 0)
        case Label():
            return other_text(cut.texts)
        case Patches():
            return SOME_MAP
        case Colours():
            return SOME_COLOUR


def other_text(named: Sequence[str]) -> str:
    """A text that no rule names."""
    text = "another"
    while text in named:
        text += " one"
    return text


def telling_values(trait: Trait, cut: Cuts) -> tuple[Reading, ...]:
    """Values of a trait at which something turns, the ends of its range too."""
    if isinstance(trait.kind, Patches | Colours):
        return (_middle(trait, cut),)
    found = every_telling_value(trait, anything(trait.kind), cut)
    return tuple(other_text(cut.texts) if value == OTHER_TEXT else value for value in found)


def made_ordinary(
    record: Mapping[str, Reading],
    ordinary: Mapping[str, Reading],
    traits: Mapping[str, Trait],
    shows: Callable[[Mapping[str, Reading]], bool],
) -> dict[str, Reading]:
    """A fish that shows something, with every trait as in an ordinary one that can be so, and with short numbers.

    No one trait more can be made ordinary; a fish with fewer others in a different place is not looked for.
    """
    found = dict(record)
    changed = True
    while changed:
        changed = False
        for name, reading in ordinary.items():
            if found.get(name) != reading:
                tried = {**found, name: reading}
                if shows(tried):
                    found, changed = tried, True
    for name, reading in list(found.items()):
        trait = traits.get(name)
        if trait is None or found[name] == ordinary.get(name):
            continue
        for shorter in shorter_numbers(trait, reading):
            if shows({**found, name: shorter}):
                found[name] = shorter
                break
    return found


def shorter_numbers(trait: Trait, reading: Reading) -> Sequence[Reading]:
    """A number rounded to no decimals, to one, and so on, in the unit that people write it in; none of what is no number."""
    if not isinstance(trait.kind, Number) or not isinstance(reading, Span):
        return ()
    low, high, notch = range_in_notches(trait.kind)
    unit = trait.kind.unit
    exact = Decimal(repr(reading.low))
    shown = exact if unit is None else unit.from_held(exact)
    found: list[Reading] = []
    for decimals in range(_MOST_DECIMALS):
        rounded = shown.quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_EVEN)
        held = rounded if unit is None else unit.to_held(rounded)
        if Decimal(low) / notch <= held <= Decimal(high) / notch:
            found.append(Span(float(held), float(held)))
    return found
