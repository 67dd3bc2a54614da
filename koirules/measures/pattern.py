"""The measure of a pattern map, for any colour: figures of the pattern as readings of a variety's own traits."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from typing import TYPE_CHECKING, Any

from koirules.measures.details import FRONTS, Details
from koirules.measures.kept_figures import found_or_kept
from koirules.measures.profiles import FOR_GIRTH, WIDTHS, girths_of, skin_of
from koirules.vocabulary.kinds import Choice, Count, Kind, Number, Places, Scale, YesNo
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.measures import Column, Computed, Found, Given
from koirules.vocabulary.outlines import TORPEDO, Outline
from koirules.vocabulary.readings import NO, YES, PlaceSet, Span, step_bits
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

__all__ = ["FIGURES", "FRONTS", "STEPS", "pattern_measure"]

STEPS = ("none", "tancho", "ippon", "inazuma", "nidan", "sandan", "yondan", "godan", "many")
"""What a pattern is called by its steps: a head mark alone, one long patch, one zigzag, two steps to five, more."""

_Values = Any
"""What a figure is of each map: numbers (NaN: nothing to say), both ends of numbers, truths, words, or truths by place."""


def _step_names(details: Details) -> Sequence[str]:
    figures = details.figures
    least = figures.constants["zigzag_least"]
    several = STEPS[STEPS.index("nidan") :]
    names = []
    for steps, mark, swing in zip(figures.steps, figures.head_mark, figures.zigzag, strict=True):
        if len(steps) > 1:
            names.append(several[min(len(steps) - 2, len(several) - 1)])
        elif not steps:
            names.append("none")
        else:
            names.append("tancho" if mark else "inazuma" if swing >= least else "ippon")
    return names


def _counts(details: Details) -> NDArray[np.float64]:
    import numpy as np

    return np.array([len(steps) for steps in details.figures.steps], dtype=float)


def _separate_head(details: Details) -> NDArray[np.bool_]:
    separate: NDArray[np.bool_] = details.figures.head_mark & (_counts(details) > 1)
    return separate


def _holes(details: Details, which: int) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Both ends of a count of windows: a patch that was given by its ends may have any number of them."""
    import numpy as np

    seen = details.windows[which]
    return seen, np.where(details.figures.shapes.traced, seen, np.inf)


FIGURES: Mapping[str, Callable[[Details], _Values]] = {
    "cover": lambda details: details.figures.cover,
    "front_share": lambda details: details.figures.front_share,
    "left_share": lambda details: details.figures.left_share,
    "start": lambda details: details.figures.start,
    "rear_gap": lambda details: details.figures.rear_gap,
    "steps": _step_names,
    "step_count": _counts,
    "longest_gap": lambda details: details.figures.longest_gap,
    "smallest": lambda details: details.figures.smallest,
    "zigzag": lambda details: details.figures.zigzag,
    "below_line": lambda details: details.figures.below,
    "wraps": lambda details: details.figures.wraps,
    "splashes": lambda details: details.splashes,
    "separate_head": _separate_head,
    "roundness": lambda details: details.roundness,
    "windows": partial(_holes, which=0),
    "head_windows": partial(_holes, which=1),
    "lips": lambda details: details.lips,
    "head_front": lambda details: details.fronts,
    "eyes": lambda details: details.eyes,
    "fins": lambda details: details.fins,
}
"""What can be measured on a map, by name; each is told of in `koirules.measures.figures` and `details`.

Shares, places and gaps are in %; `wraps`, `separate_head` and `lips` are yes or no; `steps` is one of `STEPS`, `head_front`
one of `FRONTS`; `eyes` and `fins` are places.
"""


def pattern_measure(maps: str, outputs: Mapping[str, Trait], outline: Outline = TORPEDO) -> Computed:
    """The measure that gives figures of the maps of one trait.

    maps: the trait, of the kind patches. outputs: the trait that each figure of `FIGURES` is read into; its kind says how.
    `shared`, which the vocabulary includes, has the constants that it goes by. Raises KeyError for an unknown figure.
    """
    unknown = sorted(outputs.keys() - FIGURES.keys())
    if unknown:
        raise KeyError(f"no figure of a pattern is called {', '.join(unknown)}; there are {', '.join(FIGURES)}")
    by_trait = {trait.name: (figure, trait.kind) for figure, trait in outputs.items()}
    return Computed(
        name=f"the map {maps}",
        inputs=(maps,),
        outputs=tuple(by_trait),
        compute=partial(_measured, maps, by_trait, outline),
        helped_by=(*WIDTHS, *FOR_GIRTH),
    )


def _measured(maps: str, outputs: Mapping[str, tuple[str, Kind]], outline: Outline, given: Given) -> Found:
    column = given.readings[maps]
    if any(reading is not None and not isinstance(reading, PatchMap) for reading in column):
        raise TypeError(f"{maps} is no map: a pattern is measured on a trait of the kind patches")
    return found_or_kept(maps, outputs, outline, given, lambda: _found(maps, outputs, outline, given))


def _found(maps: str, outputs: Mapping[str, tuple[str, Kind]], outline: Outline, given: Given) -> Found:
    from koirules.measures.figures import Figures
    from koirules.measures.shapes import shapes_of

    column = given.readings[maps]
    shapes = shapes_of([reading if isinstance(reading, PatchMap) else PatchMap() for reading in column])
    details = Details(Figures(shapes, skin_of(given, outline), given.constants), girths_of(given))
    silent = {i for i, reading in enumerate(column) if reading is None} | shapes.wrong.keys()
    readings: dict[str, Column] = {}
    for name, (figure, kind) in outputs.items():
        if name in given.wanted:
            made = as_readings(kind, FIGURES[figure](details), given.fish)
            readings[name] = [None if i in silent else reading for i, reading in enumerate(made)]
    return Found(readings, {maps: shapes.wrong})


def as_readings(kind: Kind, values: _Values, fish: int) -> Column:
    """The readings of a kind that the values of a figure are."""
    match kind:
        case Number() | Count():
            low, high = values if isinstance(values, tuple) else (values, values)
            return [Span(a, b) if a == a else None for a, b in zip(low.tolist(), high.tolist(), strict=True)]  # noqa: PLR0124
        case YesNo():
            return [YES if value else NO for value in values]
        case Scale() | Choice():
            return [None if word is None else step_bits(kind, (word,)) for word in values]
        case Places(places):
            sets = [sum((1 << i) for i, place in enumerate(places) if values[place][n]) for n in range(fish)]
            return [PlaceSet(bits, bits) for bits in sets]
        case _:
            raise TypeError(f"no figure of a pattern can be read into {kind}")
