"""A fish from above as it is, and as it may be when grown: what stands under each drawing, and all of them in one picture."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from textwrap import wrap
from xml.sax.saxutils import escape

from attrs import evolve, field, frozen

from koirules.report.drawing import drawing_size, fish_drawing
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.outlines import TORPEDO, Outline

_LINE, _LETTERS, _GAP = 15.0, 60, 12.0
"""Height of a line of words below a drawing, how many letters go on one, and the room below the words."""


@frozen
class View:
    """A fish from above.

    words: of what day or length it is. maps: by the word of their colour. stouter: its girth for its length, next to that of
    the fish as it is.
    """

    words: str
    maps: Mapping[str, PatchMap] = field(hash=False)
    stouter: float = 1.0

    @property
    def outline(self) -> Outline:
        """The outline of its body."""
        return evolve(TORPEDO, stoutness=TORPEDO.stoutness * self.stouter)

    @property
    def caption(self) -> str:
        """What stands under it: its words, and what is pale in it."""
        patches = [patch for pattern in self.maps.values() for patch in pattern.patches]
        told = [self.words]
        if any(patch.sashi for patch in patches):
            told.append("pale: under white scales")
        if any(patch.thin for patch in patches):
            told.append("broken edge: thin, may go")
        return "; ".join(told)


def views_drawn(views: Sequence[View], title: str) -> str:
    """One `<svg>` element: a single view alone, several one above the other, each with its caption below.

    title: the name of the fish; any text.
    """
    if len(views) == 1:
        return fish_drawing(views[0].outline, views[0].maps, title=title)
    parts: list[str] = []
    top = widest = 0.0
    for number, view in enumerate(views):
        wide, tall = drawing_size(view.outline)
        name = f"{title}, {view.words}"
        parts.append(fish_drawing(view.outline, view.maps, title=name, key=f"fish-{number}", at=(0, top, wide, tall)))
        top += tall
        for line in wrap(view.caption, _LETTERS):
            top += _LINE
            parts.append(f'<text x="10" y="{top - 3:g}" {_LETTERING}>{escape(line)}</text>')
        top, widest = top + _GAP, max(widest, wide)
    head = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {widest:g} {top:g}">'
    return "\n".join((head, f'<rect width="{widest:g}" height="{top:g}" fill="#ffffff"/>', *parts, "</svg>"))


_LETTERING = 'font-family="system-ui, sans-serif" font-size="11" fill="#10201d"'
