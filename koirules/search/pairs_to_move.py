"""The tries of a search over changes of two traits: the one put at its telling values, the other searched.

A pair begins as one try over all values of both, which costs one look where the two cannot do it together; only then is it
parted, first by the telling values of the one, then by the boxes of the other.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import combinations

from koirules.candidates.places_to_move import Box, Point, Stretch, Whole
from koirules.search.best_first import Try
from koirules.vocabulary.readings import PlaceSet, Reading, Span


def pair_tries(
    boxes: Mapping[str, Sequence[Box]],
    points: Mapping[str, Sequence[Point]],
    record: Mapping[str, Reading],
    limit: float,
) -> list[Try]:
    """The tries over every two traits, as far as changes of both together can be no larger than a limit.

    boxes: every other value of each trait. points: its telling values.
    """
    searched = {name: whole for name in boxes if (whole := _whole(boxes[name], limit)) is not None}
    told = {name: whole for name in boxes if (whole := _whole(points[name], limit)) is not None}
    found: list[Try] = []
    for one, other in combinations([name for name in boxes if name in searched and name in told], 2):
        # Where one has nothing but single values, its telling values are all of them: the other way round adds nothing.
        ways = [(one, other), (other, one)]
        steps = [way for way in ways if all(isinstance(box, Point) for box in boxes[way[0]])]
        found.extend(
            Try(record, ((first, told[first]), (second, searched[second])), frozenset((first, second)))
            for first, second in steps[:1] or ways
        )
    return [one for one in found if one.size <= limit]


def _whole(boxes: Sequence[Box], limit: float) -> Whole | None:
    """All boxes of a trait as one, as far as they are no larger than a limit; None where nothing is."""
    near = tuple(box.up_to(limit) if isinstance(box, Stretch) else box for box in boxes if box.size <= limit)
    return Whole(_any_of([box.reading for box in near]), min(box.size for box in near), near) if near else None


def _any_of(readings: Sequence[Reading | None]) -> Reading | None:
    """A reading that could be any of several of one trait; None is any text."""
    found = readings[0]
    for reading in readings[1:]:
        match found, reading:
            case Span(low, high), Span(least, most):
                found = Span(min(low, least), max(high, most))
            case PlaceSet(), PlaceSet():
                found = found.either(reading)
            case int(bits), int(others):
                found = bits | others
            case _:
                return None
    return found
