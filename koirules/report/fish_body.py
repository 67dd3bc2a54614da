"""The body of a koi from above as curves: nose up, 1,000 units from the nose to the end of the tail stem.

Lengths `u` run from 0 (tip of the nose) to 100 (end of the stem); a unit of u is ten units of the drawing. Across, x is 0 on the
line of the back and below 0 on the fish's own left. A place of the skin is seen where the round body turns it: the lateral line
is the edge (`Form.x`). All proportions are from memory, no source.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Sequence
from functools import cached_property
from itertools import pairwise
from math import cos, hypot, log, radians, sin

from koirules.report.appearance import Appearance
from koirules.values import define

Point = tuple[float, float]

_PROFILE: tuple[Point, ...] = (
    (0, 0), (0.25, 17), (1.3, 31.5), (3.2, 43), (6, 55), (10, 68), (15, 80.5), (20, 89), (24, 93.5), (26.4, 93), (30, 96),
    (37, 100), (45, 99), (53, 94.5), (61, 86.5), (69, 74.5), (77, 60.5), (85, 46), (92, 36), (96.5, 32.5), (98.6, 32.5),
    (101, 27), (102.6, 14), (103, 0),
)  # fmt: skip
"""Half width in % of the greatest half width, by length."""

_TAIL: tuple[Point, ...] = (
    (97.8, 1), (100.4, 1.03), (102.6, 1.16), (106, 1.55), (112, 2.25), (118, 2.8), (122.5, 2.98), (122.2, 2.72), (118.6, 2),
    (114.8, 1.15), (112.2, 0.45), (111.5, 0),
)  # fmt: skip
"""One lobe of the tail fin: half widths of the stem, by length."""

_SHADES = ((128, 117, 106, 95, 85, 75, 66, 57, 48, 40, 32, 24, 17, 10), "#34444e", 0.027)
"""Widths of the strokes that make a body look round, laid over one another, with their colour and opacity."""

TOP, REACH, LONG = -34, 292, 1285
"""Where a drawing begins before the nose, how far it reaches to each side, and how long it is."""

ORDINARY = 120
"""Half width of the ordinary form."""

EYES_AT, EYES_ASIDE = 10.0, 0.875


@define(slots=False, frozen=True)
class Form:
    """The shape of a body, without its colours: drawings of the same form share it.

    half: greatest half width, in units. shoulders, stem, pectorals, eyes: multiples of the ordinary ones. card: for a small
    picture, with a heavier outline and without scales.
    """

    half: int
    shoulders: float
    stem: float
    pectorals: float
    eyes: float
    card: bool

    @classmethod
    def of(cls, look: Appearance, *, card: bool) -> Form:
        """The form of a fish; widths of small pictures are taken in steps of 8 units, so that many share one."""
        if card:
            half = 8 * round(look.breadth * 500 / 8)
            return cls(
                half, _one_of(look.shoulders, 0.95, 1.03), _one_of(look.stem, 0.86, 1.12), look.pectorals, 1.45, card
            )
        half = 2 * round(look.breadth * 250)
        return cls(half, round(look.shoulders, 2), round(look.stem, 2), look.pectorals, _eyes(look.length), card)

    def share(self, u: float) -> float:
        """The half width at u over the greatest."""
        i = min(max(bisect_right(_PROFILE, (u, 1e9)) - 1, 0), len(_PROFILE) - 2)
        (u0, w0), (u1, w1) = _PROFILE[i], _PROFILE[i + 1]
        ordinary = (w0 + (w1 - w0) * min(max((u - u0) / (u1 - u0), 0), 1)) / 100
        near = max(0.0, 1 - ((u - 25) / 14) ** 2)
        behind = min(max((u - 66) / 24, 0.0), 1.0)
        return ordinary * (1 + (self.shoulders - 1) * near) * (1 + (self.stem - 1) * behind)

    def width(self, u: float) -> float:
        """The half width at u, in units."""
        return self.half * self.share(u)

    def x(self, u: float, v: float) -> float:
        """Where a place of the skin is seen; beyond the lateral line it lies outside the outline, where it is cut off."""
        return self.width(u) * turned(v)

    @cached_property
    def outline(self) -> str:
        """The outline of the body."""
        side = [(self.width(u), 10 * u) for u, _ in _PROFILE[1:-1]]
        left = [(-x, y) for x, y in reversed(side)]
        return curve([(0, 0), *side, (0, 10 * _PROFILE[-1][0]), *left])

    @cached_property
    def seam(self) -> tuple[int, int]:
        """How far the outline is drawn, and left out at the root of the tail, in thousandths of its length."""
        side = [(self.width(u), 10 * u) for u, _ in _PROFILE]
        pieces = [hypot(p - x, q - y) for (x, y), (p, q) in pairwise(side)]
        drawn = sum(piece for piece, (u, _) in zip(pieces, _PROFILE[1:], strict=True) if u < 99)
        share = round(500 * drawn / sum(pieces))
        return share, 1000 - 2 * share

    @cached_property
    def tail(self) -> str:
        """The tail fin, open at its root."""
        root = self.width(97.8)
        lobe = [(root * wide, 10 * u) for u, wide in _TAIL]
        return curve([*lobe, *((-x, y) for x, y in reversed(lobe[:-1]))], closed=False)

    @cached_property
    def tail_rays(self) -> str:
        """Seven rays a lobe, from the root nearly to the rim."""
        root = self.width(97.8)
        rim = [(root * wide, 10 * u) for u, wide in reversed(_TAIL[6:])]
        rays = []
        for number in range(1, 8):
            x, y = _along(rim, number / 7.6)
            start = (root * 0.86 * number / 8, 992.0)
            end = (start[0] + (x - start[0]) * 0.93, start[1] + (y - start[1]) * 0.93)
            rays += [(start, end), ((-start[0], start[1]), (-end[0], end[1]))]
        return lines(rays)

    @property
    def wider(self) -> float:
        """How much wider it is than the ordinary form, from which small pictures take the head and the fin of the back."""
        return round(self.half / ORDINARY, 2)

    @property
    def tail_wider(self) -> float:
        """The same at the root of the tail."""
        return round(self.half / ORDINARY * self.stem, 2)

    @cached_property
    def pectoral(self) -> tuple[int, int, int, float]:
        """Where the right pectoral fin is rooted (x, y), by how much it is turned back in degrees, and its size."""
        return round(0.86 * self.width(26.8)), 268, 48, self.pectorals

    @cached_property
    def pelvic(self) -> tuple[int, int, int, float]:
        """The same of the right pelvic fin."""
        return round(0.8 * self.width(54)), 540, 58, round(0.62 * self.pectorals, 3)

    @cached_property
    def dorsal(self) -> str:
        """The dorsal fin, folded, leaning a little to the fish's own left."""
        lean, other = -0.085 * self.half, 0.024 * self.half
        return (
            f"M0 480C{n(lean * 0.7)} 560 {n(lean * 1.5)} 760 {n(lean)} 905"
            f"C{n(lean * 0.3)} 890 {n(other * 2.4)} 640 0 480z"
        )

    @cached_property
    def dorsal_rays(self) -> str:
        """Nine slanted strokes in it."""
        lean = -0.085 * self.half
        return lines(((lean * 0.05 * i, 505 + 38 * i), (lean * (0.35 + 0.08 * i), 530 + 41 * i)) for i in range(9))

    @cached_property
    def head(self) -> str:
        """Mouth, nostrils, gill covers and the edge of the scales behind the head."""
        mouth = self.width(1.5) * 0.52
        gills = [(13.5, 60), (18, 50), (23, 52), (26.2, 70), (26.4, 98)]
        right = [(self.x(u, v), 10 * u) for u, v in gills]
        nape = [(19.5, -47), (21.3, -24), (21.8, 0), (21.3, 24), (19.5, 47)]
        nostril = self.width(5.6) * 0.42
        return "".join(
            (
                f"M{n(-mouth)} 19Q0 6 {n(mouth)} 19",
                *(f"M{n(side * nostril - 5)} 59q5-8 10 0" for side in (-1, 1)),
                curve(right, closed=False),
                curve([(-x, y) for x, y in right], closed=False),
                curve([(self.x(u, v), 10 * u) for u, v in nape], closed=False),
            )
        )

    @cached_property
    def barbels(self) -> str:
        """Two pairs of barbels."""
        found = []
        for u, out in ((1.5, 21), (3.6, 30)):
            edge = self.width(u) - 2
            for side in (-1, 1):
                found.append(f"M{n(side * edge)} {n(10 * u)}q{n(side * out * 0.7)}-10 {n(side * out)} {n(out * 0.45)}")
        return "".join(found)

    @cached_property
    def eyes_at(self) -> tuple[tuple[int, int], ...]:
        """Where the left eye and the right eye lie."""
        x = round(self.width(EYES_AT) * EYES_ASIDE)
        return (-x, round(10 * EYES_AT)), (x, round(10 * EYES_AT))

    def scales(self, out_to: float) -> str:
        """The edges of the scales, row by row, as far as `out_to` on each side (`v`)."""
        found = []
        for row in range(30):
            u = 22.5 + 2.45 * row
            least = -out_to + (0 if row % 2 else 9)
            edges = [least + 18 * i for i in range(int((out_to - least) // 18) + 1)]
            at = [round(self.x(u, v)) for v in edges]
            arcs = "".join(f"q{n((b - a) / 2)} 46{_next(b - a)} 0" for a, b in pairwise(at))
            found.append(f"M{at[0]} {n(10 * u)}{arcs}")
        return "".join(found)

    def large_scales(self, pairs: int = 20) -> str:
        """The two rows of large scales along the back of a doitsu."""
        found = []
        for pair in range(pairs):
            y = 260 + 34.5 * pair
            size = max(9.0, 0.2 * self.width(y / 10))
            for side in (-1, 1):
                x = side * size * 0.12
                found.append(f"M{n(x)} {n(y)}h{n(side * size)}q{n(-side * size * 0.1)} 24 {n(-side * size * 0.5)} 28z")
        return "".join(found)

    @property
    def shades(self) -> tuple[tuple[int, ...], str, float]:
        """The strokes that make it look round; on a small picture half of them, each twice as strong."""
        widths, colour, opacity = _SHADES
        return (widths[::2], colour, 2 * opacity) if self.card else _SHADES


def _one_of(value: float, low: float, high: float) -> float:
    """The nearest of a small, the ordinary and a large one."""
    return min((low, 1.0, high), key=lambda one: abs(one - value))


def _eyes(length: float | None) -> float:
    """How large the eyes are for the body: those of a young fish are larger."""
    if not length or length <= 0:
        return 1.05
    part = min(max(log(length / 15) / log(60 / 15), 0.0), 1.0)
    return round(1.2 - 0.3 * part, 1)


def turned(v: float) -> float:
    """How far from the line of the back a place is seen, as a share of the half width there; beyond 1 past the lateral line."""
    side = -1 if v < 0 else 1
    return sin(radians(0.9 * v)) if abs(v) <= 100 else side * (1 + (abs(v) - 100) / 250)


FIN = "M-8-20C50-58 150-66 188-34C204-14 202 18 184 32C140 56 50 34-8 22z"
"""A pectoral fin that points to the right, from its root at 0: 201 units long and 105 broad."""

FIN_RAYS = tuple(
    f"M6 {round(2 + 2.4 * i)}L{round(180 * cos(radians(4 * i)))} {round(7 + 140 * sin(radians(4 * i)))}"
    for i in range(-4, 5)
)
FIN_ROOT = "M-12-24C20-40 55-50 78-40L60-26L84-18L62-6L86 4L60 14L76 28C50 40 20 34-12 26z"
"""The root of a fin that is coloured, ragged at its end."""


def n(value: float) -> str:
    """A coordinate as a whole number."""
    return str(round(value) or 0)


def _next(value: float) -> str:
    """A whole number after another one: a minus parts them as well as a blank."""
    text = n(value)
    return text if text.startswith("-") else f" {text}"


def lines(parts: Iterable[tuple[Point, Point]]) -> str:
    """Straight strokes."""
    return "".join(f"M{n(x)} {n(y)}l{n(round(p) - round(x))}{_next(round(q) - round(y))}" for (x, y), (p, q) in parts)


def curve(points: Sequence[Point], *, closed: bool = True, digits: int = 0) -> str:
    """A smooth curve through points: at each the handles are a sixth of what parts its neighbours (Catmull and Rom 1974).

    digits: decimals of the coordinates, for what is so small that whole numbers would change it.
    """
    at = [(round(x, digits), round(y, digits)) for x, y in points]
    handles = handles_of(points, closed=closed)
    order = [*range(1, len(at)), *([0] if closed else [])]
    moves = [handles[0]]
    for i in order:
        (x, y), (px, py) = at[i], at[i - 1]
        moves += [(x - px - handles[i][0], y - py - handles[i][1]), (x - px, y - py)]
    told = [_signed(part, digits) for move in moves for part in move]
    first = f"M{_short(at[0][0], digits)} {_short(at[0][1], digits)}c{''.join(told[:6]).lstrip()}"
    rest = "".join(f"s{''.join(told[k : k + 4]).lstrip()}" for k in range(6, len(told), 4))
    return first + rest + ("z" if closed else "")


def _short(value: float, digits: int) -> str:
    text = f"{value:.{digits}f}"
    return "0" if float(text) == 0 else text.removesuffix(".0")


def _signed(value: float, digits: int) -> str:
    text = _short(value, digits)
    return text if text.startswith("-") else f" {text}"


def handles_of(points: Sequence[Point], *, closed: bool) -> list[Point]:
    """The handle behind each point of a smooth curve; the one before it is the same turned round."""
    last = len(points) - 1
    found = []
    for i in range(len(points)):
        before = points[i - 1] if i or closed else points[0]
        after = points[(i + 1) % len(points)] if i < last or closed else points[last]
        found.append(((after[0] - before[0]) / 6, (after[1] - before[1]) / 6))
    return found


def sampled(points: Sequence[Point], *, per_piece: int = 6) -> list[Point]:
    """Places on the closed smooth curve through points."""
    handles = handles_of(points, closed=True)
    found = []
    for i, (x0, y0) in enumerate(points):
        j = (i + 1) % len(points)
        (x3, y3), (hx, hy), (kx, ky) = points[j], handles[i], handles[j]
        for step in range(per_piece):
            t = step / per_piece
            a, b, c, d = (1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3
            found.append(
                (a * x0 + b * (x0 + hx) + c * (x3 - kx) + d * x3, a * y0 + b * (y0 + hy) + c * (y3 - ky) + d * y3)
            )
    return found


def _along(way: Sequence[Point], part: float) -> Point:
    """The place at a share of a way of straight pieces, each taken for as long as the others."""
    at = min(max(part, 0.0), 1.0) * (len(way) - 1)
    i = min(int(at), len(way) - 2)
    (x0, y0), (x1, y1) = way[i], way[i + 1]
    return x0 + (x1 - x0) * (at - i), y0 + (y1 - y0) * (at - i)
