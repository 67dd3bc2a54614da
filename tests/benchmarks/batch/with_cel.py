"""The neutral standard as one program of a CEL library, compiled once and run over a dict; in doubles, not exact.

The program gives the score in hundredths, rounded once at the end, and the grade that faults cap at; the thresholds are then
Python. Constants are written as doubles, since CEL adds no int to a double. Needs `common-expression-language` from PyPI,
which is written in Rust.
"""

from __future__ import annotations

import itertools
from collections.abc import Mapping
from functools import cache

import cel
from figures import CURVES, GRADES, SCALES, SECTIONS, TABLES

THRESHOLDS = [score * 100 for _, score in GRADES if score is not None]

CULL = """spine_bent || jaw_crooked && !head_round || mass < 20.5 && length > 18.0
  || eye_missing && !(gloss >= 80.0 && lips_red) || parasites && (gill_open || warmth > 28.7)"""
SELL = """stem_width < 1.2 && (outline in ['poor', 'lean'] || girth < 6.3) && !lips_red
  || left_share < 3.5 || left_share > 96.5 || shiroji == 'yellow' && luster == 'dull'
  || fin_torn && fin_spread < 6.2 && !parasites
  || speck_size > 8.5 && (skin in ['rough', 'grainy'] || gloss < 12.5 || depth == 'faint') && !head_round"""
HOLD = """kiwa == 'blurred' && (hi_cover > 62.5 || hi_cover < 12.0)
  || rear_gap > 32.5 && (front_cover > 70.0 || !(rhythm in ['even', 'striking'] || back_height >= 6.6))
  || age > 400.0 && length < 15.0 && !head_round && depth in ['faint', 'pale']"""


def curve(name: str, knots) -> str:
    made = f"{name} < {float(knots[0][0])} ? {float(knots[0][1])} : "
    for (left, low), (right, high) in itertools.pairwise(knots):
        slope = (high - low) / (right - left)
        made += f"{name} < {float(right)} ? {name} * {slope!r} + {low - slope * left!r} : "
    return f"({made}{float(knots[-1][1])})"


def table(name: str, points) -> str:
    made = "".join(
        f"{name} == '{step}' ? {float(p)} : " for step, p in zip(SCALES[name][:-1], points[:-1], strict=True)
    )
    return f"({made}{float(points[-1])})"


@cache
def program() -> cel.Program:
    sections = []
    for section, worth in SECTIONS.items():
        parts, most = [], 0.0
        for of, _, weight, name, knots in CURVES:
            if of == section:
                parts.append(f"{float(weight)} * {curve(name, knots)}")
                most += float(weight) * max(given for _, given in knots)
        for of, _, weight, name, points in TABLES:
            if of == section:
                parts.append(f"{float(weight)} * {table(name, points)}")
                most += float(weight) * max(points)
        sections.append(f"{worth * 100 / most!r} * ({' + '.join(parts)})")
    return cel.compile(f"[int({' + '.join(sections)} + 0.500000001), {CULL} ? 3 : {SELL} ? 2 : {HOLD} ? 1 : 0]")


def grade_one(fish: Mapping[str, object]) -> tuple[int, int]:
    """Hundredths of the score, and the grade, 0 the best, of a complete record."""
    score, cap = program().execute(fish)
    return score, max(cap, sum(score < threshold for threshold in THRESHOLDS))
