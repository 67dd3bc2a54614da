"""Where on a fish the words of some traits lie: an invented kohaku from above with the places marked.

Lengths are in % from the tip of the nose to the end of the tail stem, as a map has them; places beside the red are those of the
fish that is drawn.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import cast

from koirules.report.appearance import Appearance
from koirules.report.fish_body import LONG, REACH, TOP, Form
from koirules.report.fish_drawing import fish_drawing
from koirules.report.templating import rendered
from koirules.values import frozen
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.maps import PatchMap

_MAP = "8 to 21 left 55 right 55; 32 to 54 left 70 right 60; 64 to 84 left 55 right 70"
_LOOK_LENGTH = 40.0
_ROW = 54
"""How far below the one before it a mark is written."""


@frozen
class _Mark:
    """What is marked.

    words: beside it. start, end: from where to where, in %; the same for a place. across: where it lies across, from -100
    (lateral line on the left) to 100, None for the whole breadth.
    """

    words: str
    start: float
    end: float
    across: float | None = None


_FRONT, _REAR = "sashi: the front edge of a patch", "kiwa: the rear and side edge of a patch"
_MARKS: Mapping[str, _Mark] = {
    "length": _Mark("total length: nose to the end of the tail", 0, 122.5),
    "fork_length": _Mark("fork length: nose to the fork of the tail", 0, 111.5),
    "standard_length": _Mark("standard length: nose to the end of the stem", 0, 100),
    "head_length": _Mark("head: nose to the rear edge of the gill cover", 0, 25),
    "gill_width": _Mark("width at the gill covers", 25, 25),
    "width": _Mark("greatest width", 37, 37),
    "stem_width": _Mark("width of the tail stem", 93, 93),
    "shoulders": _Mark("shoulder (kata): just behind the head", 25, 35),
    "shoulder_cut": _Mark("shoulder: white that cuts in here", 25, 32),
    "tail_stem": _Mark("tail stem (ozutsu)", 87, 100),
    "head_hi": _Mark("head", 0, 25),
    "head_hi_front": _Mark("front end of the red on the head", 8, 8, 0),
    "maruten": _Mark("round patch on the head", 8, 21, 0),
    "kuchibeni": _Mark("lips", 1.5, 1.5, 0),
    "motoaka": _Mark("joints of the pectoral fins", 29, 29, 100),
    "hi_on_eyes": _Mark("eyes", 10, 10, 66),
    "hi_start": _Mark("nose to the front of the first red", 0, 8),
    "hi_front_share": _Mark("the middle: red in front of here", 50, 50),
    "longest_white_gap": _Mark("the longest white between two patches", 21, 32),
    "bongiri": _Mark("the white rear", 84, 100),
    "odome": _Mark("odome, the tail stop: white behind the last red", 84, 100),
    "kiwa": _Mark(_REAR, 54, 54, 0),
    "kiwa_style": _Mark(_REAR, 54, 54, 0),
    "sashi_depth": _Mark(_FRONT, 32, 32, 0),
    "sashi_even": _Mark(_FRONT, 32, 32, 0),
    "makibara": _Mark("lateral line: red beyond it runs under the belly", 43, 43, 100),
    "dorsal_fin": _Mark("dorsal fin", 48, 85, 0),
    "hi_patches": _Mark("a patch: where it starts and ends", 32, 54),
}


@frozen
class _Shown:
    """A mark as the template draws it."""

    words: str
    path: str
    spot: tuple[int, int] | None
    x: int
    y: int
    anchor: str


def has_drawing(trait: str) -> bool:
    """Whether a drawing says where a trait is looked at."""
    return trait in _MARKS


def trait_drawing(traits: Iterable[str], title: str) -> str:
    """One `<svg>` element: the fish, nose to the left, with the places of some traits marked and named below it.

    traits: each of them has a drawing. title: what it shows.
    """
    pattern = cast("PatchMap", read_map(_MAP))
    words = {"kiwa": "razor", "shiroji": "snow", "hi_tone": "red"}
    look = Appearance(maps={"hi": pattern}, length=_LOOK_LENGTH, sashi_scales=1.0, words=words)
    form = Form.of(look, card=False)
    marks = list(_shown(form, [_MARKS[name] for name in traits]))
    bottom = REACH + 20 + _ROW * len(marks)
    ticks = [(round(10 * u), word) for u, word in ((0, "0"), (10, "10"), (25, "25"), (50, "50"), (100, "100 %"))]
    return rendered(
        "trait.svg",
        title=title,
        left=TOP,
        top=-REACH - 70,
        wide=LONG,
        tall=bottom + REACH + 70,
        fish=fish_drawing(look, title=title, key="place", at=(TOP, -REACH, LONG, 2 * REACH)),
        ticks=ticks,
        rule=-REACH - 20,
        marks=marks,
    )


def _shown(form: Form, marks: Iterable[_Mark]) -> Iterator[_Shown]:
    for row, mark in enumerate(dict.fromkeys(marks)):
        y = REACH + 50 + _ROW * row
        start, end = round(10 * mark.start), round(10 * mark.end)
        anchor = "end" if start + end > LONG else "start"
        x = (start if anchor == "start" else end) + (16 if start == end else 0) * (1 if anchor == "start" else -1)
        if mark.across is None:
            half = round(max(form.width(min(mark.start, 99)), form.width(min(mark.end, 99)))) + 20
            ends = [start] if start == end else [start, end]
            foot = y if start == end else y - 36
            path = "".join(f"M{at} {-half}V{foot}" for at in ends) + (f"M{start} {foot}H{end}" if start != end else "")
            yield _Shown(mark.words, path, None, x, y, anchor)
        else:
            middle = (start + end) // 2
            at = round(form.x((mark.start + mark.end) / 2, mark.across))
            yield _Shown(
                mark.words, f"M{middle} {at}V{y}", (middle, at), middle + (16 if anchor == "start" else -16), y, anchor
            )
