"""What a record looks like: a koi from above, as it is and as it may be when grown, or the sketch of a plugin.

Each view says what stands under it and how it is put on a page; several of a koi are drawn to one scale.
"""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import wrap

from koirules.languages import ENGLISH, Tongue
from koirules.report.appearance import LENGTH_OVER_BODY, Appearance, described
from koirules.report.fish_body import LONG, REACH, TOP
from koirules.report.fish_drawing import Shared, fish_drawing, fish_group, view_box
from koirules.report.sketch_markup import SoundSketch
from koirules.report.templating import rendered
from koirules.values import frozen

_LINE, _LETTERS, _GAP, _LEFT = 40, 78, 30, 40
"""Height of a line of words, how many letters go on one, the room below a row, and the margin, in units of the picture."""
_SMALL = 0.5
"""A fish shorter than this share of the longest one is shown large as well."""


@frozen
class Placed:
    """A view as a page puts it: its markup, and the part of the plane that an `<svg>` shows around it.

    standing, lying: a koi stands with its nose up or lies with its nose to the left; a sketch has one way. turned: how the markup
    is turned where it lies.
    """

    markup: str
    standing: str
    lying: str
    turned: str = ""


@frozen
class FishView:
    """A koi from above. words: of what day or length it is."""

    words: str
    look: Appearance

    @property
    def mapped(self) -> bool:
        """Whether there is enough to draw more than an outline."""
        return self.look.is_mapped

    def title(self, fish: str, tongue: Tongue) -> str:
        """What a picture of it shows."""
        if not self.words:
            return tongue("{fish} from above", fish=fish)
        return tongue("{fish} from above, {view}", fish=fish, view=self.words)

    def told(self, tongue: Tongue) -> str:
        """What is to be seen, for those who do not see it."""
        return described(self.look, tongue)

    def placed(self, shared: Shared, key: str, *, card: bool) -> Placed:  # noqa: ARG002 - the ids of koi are shared
        """As a page puts it. card: without what a small picture cannot show."""
        group = fish_group(self.look, shared, card=card)
        return Placed(group, view_box(upright=True), view_box(upright=False), "rotate(-90)")

    def alone(self, title: str, key: str, tongue: Tongue) -> str:
        """One `<svg>` element that stands alone."""
        return fish_drawing(self.look, title=title, describe=self.told(tongue), key=key)

    def caption(self, tongue: Tongue = ENGLISH) -> str:
        """What stands under it: its words, what is pale in it, and what was recorded but cannot be drawn."""
        patches = [patch for pattern in self.look.maps.values() for patch in pattern.patches]
        told = [self.words] if self.words else []
        if not self.look.is_mapped:
            told.append(tongue("not mapped"))
        if any(patch.sashi for patch in patches):
            told.append(tongue("pale: under white scales"))
        if any(patch.thin for patch in patches):
            told.append(tongue("broken edge: thin, may go"))
        return tongue.joined([*told, *self.look.told], "; ")


@frozen
class SketchView:
    """The sketch that a plugin made of a record, as it is now."""

    sketch: SoundSketch
    words: str = ""
    look: None = None

    @property
    def mapped(self) -> bool:
        """A drawing that has too little to go by gives no sketch."""
        return True

    def title(self, fish: str, tongue: Tongue) -> str:
        """What a picture of it shows."""
        return tongue("Drawing of {fish}", fish=fish)

    def caption(self, tongue: Tongue = ENGLISH) -> str:  # noqa: ARG002 - as of a koi
        """What stands under it: nothing."""
        return ""

    def told(self, tongue: Tongue) -> str:  # noqa: ARG002 - the plugin wrote it
        """What is to be seen, for those who do not see it."""
        return self.sketch.words

    def placed(self, shared: Shared, key: str, *, card: bool) -> Placed:  # noqa: ARG002 - sketches share nothing
        """As a page puts it. key: begins its ids."""
        return Placed(self.sketch.group(f"{key}-"), self.sketch.view_box, self.sketch.view_box)

    def alone(self, title: str, key: str, tongue: Tongue) -> str:  # noqa: ARG002 - the plugin wrote what is told
        """One `<svg>` element that stands alone."""
        return self.sketch.alone(title, key).text


View = FishView | SketchView


@frozen
class _Row:
    """A fish in the picture of several: its drawing, and the lines of words below it with the height of each."""

    drawing: str
    lines: tuple[tuple[float, str], ...]


def views_drawn(views: Sequence[View], title: str, tongue: Tongue = ENGLISH) -> str:
    """One `<svg>` element: a single view alone; several to one scale, the small ones large as well, with a rule in centimetres.

    title: the name of the fish; any text. Several are views of one koi, each with a length.
    """
    fish = [view for view in views if isinstance(view, FishView)]
    return _to_scale(fish, title) if len(fish) > 1 else views[0].alone(title, "fish", tongue)


def _to_scale(views: Sequence[FishView], title: str) -> str:
    longest = max(view.look.length or 0 for view in views)
    rows: list[_Row] = []
    top = 0.0
    for view in views:
        share = (view.look.length or 0) / longest
        if share < _SMALL:
            more = f"{1 / share:.1f}".removesuffix(".0")
            row, top = _row(view, title, f"{view.caption()}; {more} times as large as below", 1.0, top, len(rows))
            rows.append(row)
    rule_top = top
    top += 100
    for view in views:
        share = (view.look.length or 0) / longest
        row, top = _row(view, title, view.words if share < _SMALL else view.caption(), share, top, len(rows))
        rows.append(row)
    # The fish is 122.5 of 100 long where it is drawn; the nose lies at 0.
    centimetre = 10 * 100 * LENGTH_OVER_BODY / longest
    every = next(step for step in (1, 2, 5, 10, 20) if longest / step <= 14)
    ticks = [(round(_LEFT - TOP + at * centimetre, 1), at) for at in range(0, int(longest) + 1, every)]
    return rendered(
        "views.svg", wide=_LEFT + LONG + _LEFT, tall=round(top), rows=rows, ticks=ticks, rule=round(rule_top) + 40
    ).replace("\n\n", "\n")


def _row(view: FishView, title: str, caption: str, share: float, top: float, number: int) -> tuple[_Row, float]:
    tall = 2 * REACH * share
    left = _LEFT - TOP * (1 - share)
    drawing = fish_drawing(
        view.look,
        title=f"{title}, {view.words}",
        key=f"fish-{number}",
        at=(round(left, 1), round(top, 1), round(LONG * share, 1), round(tall, 1)),
        card=share < _SMALL,
    )
    lines = []
    top += tall
    for line in wrap(caption, _LETTERS):
        top += _LINE
        lines.append((round(top - 8), line))
    return _Row(drawing, tuple(lines)), top + _GAP
