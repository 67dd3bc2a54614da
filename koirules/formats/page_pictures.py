"""The pictures of a fish on a page."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import field, frozen

from koirules.formats.page_markup import Markup, element
from koirules.formats.photographs import Photograph
from koirules.grading.results import Result


@frozen
class Pictures:
    """What can be shown of the fish of a batch, by fish."""

    photographs: Mapping[str, Photograph] = field(factory=dict)


def pictures_of(pictures: Pictures, result: Result) -> Markup:
    """What there is to see of a fish."""
    photograph = pictures.photographs.get(result.fish)
    if photograph is None:
        return Markup("")
    shown = element(
        "img",
        src=photograph.source,
        width=photograph.width,
        height=photograph.height,
        alt=f"Photograph of {result.fish}",
    )
    return element("div", shown, class_="pictures")
