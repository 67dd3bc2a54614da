"""Laws of maps: mirrored fish mirror what is left and right, and a patch that is written in two pieces stays one."""

from __future__ import annotations

from typing import Any

from hypothesis import assume, given
from hypothesis import strategies as st

from koirules.vocabulary.maps import Patch, PatchMap, boxed
from koirules.vocabulary.readings import Reading, Span
from tests.measures.maps import KOHAKU, measured

_TURNED = {"hi_left_share", "hi_on_eyes", "hi_at_fins"}
_NOISE = 1e-3
"""Where patches cross, their shape is put on a grid of a thousandth, which need not round both ways alike."""


def _coordinates(low: int, high: int) -> st.SearchStrategy[float]:
    return st.integers(low * 10, high * 10).map(lambda n: n / 10)


@st.composite
def _boxes(draw: st.DrawFn) -> Patch:
    front, rear = sorted(draw(st.lists(_coordinates(0, 100), min_size=2, max_size=2, unique=True)))
    left, right = sorted(draw(st.lists(_coordinates(-200, 200), min_size=2, max_size=2, unique=True)))
    return boxed(front, rear, left, right)


@st.composite
def _quads(draw: st.DrawFn) -> Patch:
    """A patch with a slanting front and rear edge."""
    fronts = draw(st.tuples(_coordinates(0, 50), _coordinates(0, 50)))
    rears = draw(st.tuples(_coordinates(51, 100), _coordinates(51, 100)))
    left, right = draw(_coordinates(-190, 0)), draw(_coordinates(1, 190))
    return Patch(((fronts[0], left), (rears[0], left), (rears[1], right), (fronts[1], right)))


_MAPS = st.lists(_boxes() | _quads(), max_size=4).map(PatchMap)


def _same(one: Reading | None, other: Reading | None) -> bool:
    match one, other:
        case Span(a, b), Span(c, d):
            return abs(a - c) <= _NOISE and abs(b - d) <= _NOISE
        case _:
            return one == other


def _near_a_limit(columns: dict[str, list[Reading | None]]) -> bool:
    """Whether a figure lies so near a limit that the last digit of an area decides what it is called."""
    for trait, limits in (("zigzag", (25,)), ("smallest_patch", (1,)), ("hi_cover", (0,))):
        reading = columns[trait][0]
        if isinstance(reading, Span) and any(0 < abs(reading.low - limit) < 0.01 for limit in limits):
            return True
    return False


def _mirrored(pattern: PatchMap) -> PatchMap:
    return PatchMap(
        [Patch([(u, -v) for u, v in patch.outline], (), patch.sashi, patch.thin) for patch in pattern.patches]
    )


@given(_MAPS)
def test_a_mirrored_fish_mirrors_every_figure_of_left_and_right(pattern: PatchMap) -> None:
    plain, turned = measured(pattern).columns, measured(_mirrored(pattern)).columns
    assume(not _near_a_limit(plain))
    for name in set(plain) - _TURNED - {"hi_patches"}:
        assert _same(plain[name][0], turned[name][0]), name
    left: Any = plain["hi_left_share"][0]
    right: Any = turned["hi_left_share"][0]
    assert (left is None) == (right is None)
    if left is not None:
        assert abs(left.low + right.low - 100) <= _NOISE
    for name in ("hi_on_eyes", "hi_at_fins"):
        words = KOHAKU.traits[name].kind.places  # type: ignore[union-attr]
        one: Any = plain[name][0]
        other: Any = turned[name][0]
        swap = {"left": "right", "right": "left"}
        for i, word in enumerate(words):
            side, _, rest = word.partition("_")
            j = words.index(f"{swap[side]}_{rest}") if side in swap else i
            assert (one.sure >> i & 1) == (other.sure >> j & 1)


@given(_MAPS, st.integers(0, 3), st.data())
def test_a_patch_that_is_cut_and_written_as_two_that_touch_changes_nothing(
    pattern: PatchMap, number: int, data: st.DataObject
) -> None:
    assume(number < len(pattern.patches))
    whole = pattern.patches[number]
    (a, b), (c, d), (e, f), (g, h) = whole.outline
    share = data.draw(st.sampled_from([0.25, 0.5, 0.75]))
    # Cut from the middle of one edge to the middle of the edge across.
    first = (round(a + share * (c - a), 3), round(b + share * (d - b), 3))
    second = (round(g + share * (e - g), 3), round(h + share * (f - h), 3))
    pieces = [Patch(((a, b), first, second, (g, h))), Patch((first, (c, d), (e, f), second))]
    assume(all(len(set(piece.outline)) == 4 for piece in pieces))
    others = [patch for i, patch in enumerate(pattern.patches) if i != number]
    plain, cut = measured(pattern), measured(PatchMap([*others, *pieces]))
    assume(not plain.wrong and not cut.wrong and not _near_a_limit(plain.columns))
    for name in ("steps", "step_count", "tobihi", "maruten", "hi_on_eyes"):
        assert plain.columns[name] == cut.columns[name], name
    for name in ("hi_cover", "hi_start", "odome", "longest_white_gap"):
        one: Any = plain.columns[name][0]
        other: Any = cut.columns[name][0]
        assert abs(one.low - other.low) < 0.01, name
