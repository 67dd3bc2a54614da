"""What can be shown of the fish of a page: views from above, and photographs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from attrs import field, frozen

from koirules.languages import Tongue
from koirules.report.appearance import Appearance, described
from koirules.report.fish_drawing import Shared, fish_group
from koirules.report.photographs import Photograph
from koirules.report.views import View
from koirules.results.result import Result


@frozen
class Pictures:
    """What can be shown of the fish of a batch, by fish: photographs, and views from above."""

    photographs: Mapping[str, Photograph] = field(factory=dict)
    views: Mapping[str, Sequence[View]] = field(factory=dict)

    def look_of(self, fish: str) -> Appearance | None:
        """What a fish looks like now, where that is known."""
        views = self.views.get(fish, ())
        return views[0].look if views else None


@frozen
class Seen:
    """A view on a page. group: the fish as markup of SVG. words: of what length it is. mapped: whether its pattern is drawn."""

    key: str
    title: str
    describe: str
    words: str
    caption: str
    group: str
    mapped: bool


def seen(
    pictures: Pictures, result: Result, name: str, shared: Shared, tongue: Tongue, *, large: bool
) -> tuple[Seen, ...]:
    """The views of a fish. name: the id of its card. large: whether the first one is drawn with all that a small one lacks."""
    views = pictures.views.get(result.fish, ())
    return tuple(
        Seen(
            f"{name}v{i}",
            tongue("{fish} from above", fish=result.fish)
            if len(views) == 1
            else tongue("{fish} from above, {view}", fish=result.fish, view=view.words),
            described(view.look, tongue),
            view.words,
            view.caption(tongue),
            fish_group(view.look, shared, card=not (large and i == 0)),
            view.look.is_mapped,
        )
        for i, view in enumerate(views)
    )
