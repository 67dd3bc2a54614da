"""The pictures of a fish on a page: its drawing from above where its pattern was mapped, and its photograph."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import field, frozen

from koirules.formats.drawing import fish_drawing
from koirules.formats.page_markup import Markup, element
from koirules.formats.photographs import Photograph
from koirules.grading.results import Result
from koirules.vocabulary.maps import PatchMap


@frozen
class Pictures:
    """What can be shown of the fish of a batch, by fish: photographs, and the maps of each colour of the pattern."""

    photographs: Mapping[str, Photograph] = field(factory=dict)
    maps: Mapping[str, Mapping[str, PatchMap]] = field(factory=dict)


def pictures_of(pictures: Pictures, result: Result, name: str) -> Markup:
    """What there is to see of a fish. name: the id of its card, with which those in its drawing begin."""
    shown: list[Markup] = []
    maps = pictures.maps.get(result.fish)
    if maps:
        # The one picture that is not made of elements here: it escapes what it is given, and a test holds that.
        shown.append(Markup(fish_drawing(patches=maps, title=f"{result.fish} from above", key=f"{name}-drawing")))
    photograph = pictures.photographs.get(result.fish)
    if photograph is not None:
        shown.append(
            element(
                "img",
                src=photograph.source,
                width=photograph.width,
                height=photograph.height,
                alt=f"Photograph of {result.fish}",
            )
        )
    return element("div", *shown, class_="pictures") if shown else Markup("")
