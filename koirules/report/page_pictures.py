"""What can be shown of the fish of a page: drawings, and photographs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from attrs import field

from koirules.languages import Tongue
from koirules.report.appearance import Appearance
from koirules.report.fish_drawing import Shared
from koirules.report.photographs import Photograph
from koirules.report.views import Placed, View
from koirules.results.result import Result
from koirules.values import frozen


@frozen
class Pictures:
    """What can be shown of the fish of a batch, by fish: photographs, and the views that drawings have of it."""

    photographs: Mapping[str, Photograph] = field(factory=dict)
    views: Mapping[str, Sequence[View]] = field(factory=dict)

    def look_of(self, fish: str) -> Appearance | None:
        """What a koi looks like now, where that is known."""
        views = self.views.get(fish, ())
        return views[0].look if views else None


@frozen
class Seen:
    """A view on a page. drawn: its markup. words: of what length it is. mapped: whether more than a sign is drawn."""

    key: str
    title: str
    describe: str
    words: str
    caption: str
    drawn: Placed
    mapped: bool


def seen(
    pictures: Pictures, result: Result, name: str, shared: Shared, tongue: Tongue, *, large: bool
) -> tuple[Seen, ...]:
    """The views of a fish. name: the id of its card. large: whether the first one is drawn with all that a small one lacks."""
    return tuple(
        Seen(
            f"{name}v{i}",
            view.title(result.fish, tongue),
            view.told(tongue),
            view.words,
            view.caption(tongue),
            view.placed(shared, f"{name}v{i}", card=not (large and i == 0)),
            view.mapped,
        )
        for i, view in enumerate(pictures.views.get(result.fish, ()))
    )
