"""Maps traced on photographs: rendered scenes of an invented fish whose patches are known.

The camera is a pinhole at a slant (Hartley and Zisserman 2004, chapter 6). The picture is 1,600 pixels long, as it is kept. The
body is round, the water moves, and glare hides parts of it. A script traces the edges that can be seen, each tap up to three
pixels off. What must come out is the cover of the back.
"""

from __future__ import annotations

import numpy as np
import pytest
from koirules_tub.tracing import BROADEST, Frame, TracingError, map_of

from koirules.vocabulary.outlines import TORPEDO

WIDEST = max(width for _, width in TORPEDO.knots)
HALF = TORPEDO.stoutness / 2 * 100
"""Half the greatest width, in % of the length of the body."""

PATTERNS = {
    "one": [(8, 30, -70, 60)],
    "nidan": [(6, 28, -60, 60), (40, 66, -90, 30)],
    "sandan": [(5, 20, -40, 45), (32, 48, -100, -20), (60, 84, -55, 80)],
    "one side": [(15, 75, 10, 95)],
}


def edge_of(patch):
    """The corners of a patch, dense enough to follow a curved skin."""
    front, rear, left, right = patch
    u = np.concatenate(
        [np.full(40, front), np.linspace(front, rear, 40), np.full(40, rear), np.linspace(rear, front, 40)]
    )
    v = np.concatenate(
        [np.linspace(right, left, 40), np.full(40, left), np.linspace(left, right, 40), np.full(40, right)]
    )
    return u, v


class Scene:
    """A camera over a fish. The fish lies in the plane z = 0 with its round back up."""

    def __init__(self, rng, pitch, roll, turn, ripple):
        self.rng, self.ripple = rng, ripple
        a, c, b = np.radians((pitch, roll, turn))
        lean = np.array([[1, 0, 0], [0, np.cos(a), -np.sin(a)], [0, np.sin(a), np.cos(a)]])
        heel = np.array([[np.cos(c), 0, np.sin(c)], [0, 1, 0], [-np.sin(c), 0, np.cos(c)]])
        spin = np.array([[np.cos(b), -np.sin(b), 0], [np.sin(b), np.cos(b), 0], [0, 0, 1]])
        self.rotation = spin @ lean @ heel
        self.phase = rng.random(2) * 6

    def pixels(self, u, across, height):
        """Pixels of places: u along, across and height in % of the length."""
        places = np.column_stack([across, u - 50, height])
        seen = places @ self.rotation.T
        depth = 260 - seen[:, 2]
        x, y = 3200 * seen[:, 0] / depth + 800, 3200 * seen[:, 1] / depth + 800
        x = x + self.ripple * np.sin(y / 47 + self.phase[0])
        y = y + self.ripple * np.sin(x / 61 + self.phase[1])
        return np.column_stack([x, y])

    def on_skin(self, u, v):
        half = HALF * np.array([TORPEDO.width(one) for one in u]) / WIDEST
        angle = np.radians(0.9 * np.asarray(v))
        return self.pixels(np.asarray(u, dtype=float), half * np.sin(angle), 0.6 * half * (np.cos(angle) - 1))

    def taps(self):
        points = self.on_skin(np.array([0.0, 100.0, BROADEST, BROADEST]), [0, 0, -100, 100])
        return points + self.rng.uniform(-3, 3, points.shape)

    def traced(self, patch, glare):
        points = self.on_skin(*edge_of(patch))
        points = points + self.rng.uniform(-3, 3, points.shape)
        keep = np.ones(len(points), dtype=bool)
        for spot in self.rng.uniform(points.min(axis=0), points.max(axis=0), (glare, 2)):
            keep &= np.hypot(*(points - spot).T) > 12  # nobody sees an edge under glare: the finger goes straight on
        return points[keep][::4]


def cover(standard, text):
    (record,) = standard.measured([standard.reader.read({"hi_patches": text}, "fish")], "scene").records
    return record.readings["hi_cover"]


@pytest.mark.parametrize("name", PATTERNS)
@pytest.mark.parametrize(
    ("pitch", "roll", "turn", "ripple"), [(0, 0, 0, 0), (12, 1, 25, 2), (18, -1.5, -140, 2), (-12, 1, 90, 2)]
)
def test_traced_photographs_give_the_cover_within_three_points(standard, name, pitch, roll, turn, ripple):
    true = cover(standard, "; ".join(_words(*patch) for patch in PATTERNS[name])).low
    errors = []
    for seed in range(20):
        scene = Scene(np.random.default_rng([seed, turn % 360]), pitch, roll, turn, ripple)
        nose, tail, left, right = (tuple(point) for point in scene.taps())
        rings = [[tuple(point) for point in scene.traced(patch, glare=3)] for patch in PATTERNS[name]]
        errors.append(abs(cover(standard, map_of(Frame(nose, tail, left, right), rings)).low - true))
    assert max(errors) <= 3


def _words(front, rear, left, right):
    if left < 0 < right:
        return f"{front} to {rear} left {-left} right {right}"
    return f"{front} to {rear} right {left} to {right}" if left >= 0 else f"{front} to {rear} left {-right} to {-left}"


def test_an_exact_tracing_gives_the_patch_back(standard):
    frame = Frame((0, 0), (1000, 0), (BROADEST * 10, -100), (BROADEST * 10, 100))
    # Nose to the left: the fish's own left lies below in the picture of a camera that looks down; here the taps say so.
    ring = [
        (u * 10, 100 * TORPEDO.width(u) / WIDEST * np.sin(np.radians(0.9 * v)))
        for u, v in zip(*edge_of((20, 40, -50, 50)), strict=True)
    ]
    text = map_of(frame, [ring])
    exact, found = cover(standard, "20 to 40 both 50"), cover(standard, text)
    assert found.low == pytest.approx(exact.low, abs=0.2)


def test_windows_overlaps_and_loops_are_read_as_areas(standard):
    frame = Frame((0, 0), (1000, 0), (360, -100), (360, 100))
    box = [(200, -30), (300, -30), (300, 30), (200, 30)]
    for twice in ([box, box], [box, box[::-1]], [box[:2] + box[1:]]):
        assert cover(standard, map_of(frame, twice)).low == pytest.approx(cover(standard, map_of(frame, [box])).low)
    assert map_of(frame, [[(200, 0), (300, 0)]]) == "none"
    assert map_of(frame, []) == "none"
    eight = [(200, -30), (300, 30), (300, -30), (200, 30)]
    assert map_of(frame, [eight]).count("((") >= 1
    assert map_of(frame, [[(x * 50, y) for x, y in box]]) == "none"


def test_taps_on_a_line_are_told():
    with pytest.raises(TracingError, match="on a line"):
        map_of(Frame((0, 0), (100, 0), (50, 0), (70, 0)), [[(1, 1), (2, 2), (3, 1), (2, 0)]])
