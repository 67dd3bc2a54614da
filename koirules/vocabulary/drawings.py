"""What the drawing of a plugin is asked to draw, and what it gives."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import TYPE_CHECKING, TypeAlias

from attrs import field

from koirules.values import frozen

if TYPE_CHECKING:  # so that a plugin that draws is imported in no time
    from koirules.vocabulary.colour_readings import ColourReadings
    from koirules.vocabulary.maps import PatchMap

Value: TypeAlias = "str | bool | int | float | tuple[str, ...] | PatchMap | ColourReadings"
"""A word of a scale or choice or the text of a label; yes or no; a count; a number, in the unit of its trait; places; a map of
patches; readings of colours."""


def _unchanging(values: Mapping[str, Value]) -> Mapping[str, Value]:
    return MappingProxyType(dict(values))


@frozen
class Recorded:
    """One record as a drawing sees it.

    title: what it is called, such as the name of the fish. values: by trait, what was recorded; a trait that was not recorded,
    or not surely, is not there, and a drawing invents nothing for it. wide, tall: the room on the page, in pixels; a sketch may
    have another shape. language: of the page, by its two letters; "" for English.
    """

    title: str
    values: Mapping[str, Value] = field(converter=_unchanging, hash=False)
    wide: int
    tall: int
    language: str = ""


@frozen
class Sketch:
    """A picture of one record.

    svg: what stands inside an `<svg>` element, in units in which the picture goes from 0 0 to `wide` and `tall`. It is held to
    shapes, text, blends of colour, cuts and what it defines itself: no script, no style, nothing from outside. words: what is to
    be seen, for those who do not see it.
    """

    svg: str = field(repr=False)
    wide: float
    tall: float
    words: str


@frozen
class Drawing:
    """A drawing that a plugin brings, for `Subject.drawing`.

    name: what it shows, `ranchu from above`. draw: gives the sketch of a record. It is called for each record of a page, with
    five seconds for each; the same record gives the same sketch. It imports what is heavy when it is called.
    """

    name: str
    draw: Callable[[Recorded], Sketch] = field(repr=False)
