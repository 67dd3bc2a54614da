"""A fish from above as it is, and as it may be when grown: what stands under each drawing, and all of them to one scale."""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import wrap

from attrs import frozen

from koirules.languages import ENGLISH, Tongue
from koirules.report.appearance import LENGTH_OVER_BODY, Appearance
from koirules.report.fish_body import LONG, REACH, TOP
from koirules.report.fish_drawing import fish_drawing
from koirules.report.templating import rendered

_LINE, _LETTERS, _GAP, _LEFT = 40, 78, 30, 40
"""Height of a line of words, how many letters go on one, the room below a row, and the margin, in units of the picture."""
_SMALL = 0.5
"""A fish shorter than this share of the longest one is shown large as well."""


@frozen
class View:
    """A fish from above. words: of what day or length it is."""

    words: str
    look: Appearance

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
class _Row:
    """A fish in the picture of several: its drawing, and the lines of words below it with the height of each."""

    drawing: str
    lines: tuple[tuple[float, str], ...]


def views_drawn(views: Sequence[View], title: str) -> str:
    """One `<svg>` element: a single view alone; several to one scale, the small ones large as well, with a rule in centimetres.

    title: the name of the fish; any text. Each of several views has a length.
    """
    if len(views) == 1:
        return fish_drawing(views[0].look, title=title)
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


def _row(view: View, title: str, caption: str, share: float, top: float, number: int) -> tuple[_Row, float]:
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
