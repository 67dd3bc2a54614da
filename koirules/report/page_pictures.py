"""The pictures of a fish on a page: its drawing from above where its pattern was mapped, and its photograph."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from attrs import field, frozen

from koirules.report.fish_drawing import fish_drawing
from koirules.report.page_markup import Markup, element
from koirules.report.photographs import Photograph
from koirules.report.views import View
from koirules.results.result import Result


@frozen
class Pictures:
    """What can be shown of the fish of a batch, by fish: photographs, and views from above."""

    photographs: Mapping[str, Photograph] = field(factory=dict)
    views: Mapping[str, Sequence[View]] = field(factory=dict)


def pictures_of(pictures: Pictures, result: Result, name: str) -> Markup:
    """What there is to see of a fish. name: the id of its card, with which those in its drawing begin."""
    views = [view for view in pictures.views.get(result.fish, ()) if view.look.is_mapped]
    shown = [_view(view, result.fish, f"{name}-drawing-{i}", alone=len(views) == 1) for i, view in enumerate(views)]
    shown = [element("div", *shown, class_="views")] if shown else []
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


def _view(view: View, fish: str, key: str, *, alone: bool) -> Markup:
    title = f"{fish} from above" if alone else f"{fish} from above, {view.words}"
    # The one picture that is not made of elements here: it escapes what it is given, and a test holds that.
    drawing = Markup(fish_drawing(view.look, title=title, key=key, card=True))
    return drawing if alone else element("figure", drawing, element("figcaption", view.caption))
