"""The neutral standard by an expert in Polars, in plain doubles: one rounding, at the end, and so not the rule language's.

One plan for the streaming engine, chains of `when` for curves, gathers for tables, balanced sums.
"""

from __future__ import annotations

import itertools
from functools import cache

import polars as pl
from figures import CURVES, FAULTS, GRADES, SCALES, SECTIONS, TABLES

C = pl.col


def balanced(parts: list[pl.Expr]) -> pl.Expr:
    while len(parts) > 1:
        parts = [parts[i] + parts[i + 1] if i + 1 < len(parts) else parts[i] for i in range(0, len(parts), 2)]
    return parts[0]


def code(scale: str) -> pl.Expr:
    return C(f"{scale} code")


def step(scale: str, word: str) -> int:
    return SCALES[scale].index(word)


def faults() -> dict[str, pl.Expr]:
    """The conditions of neutral.koi, by hand."""
    rhythm_even = code("rhythm") >= step("rhythm", "even")
    return {
        "crooked": C("spine_bent") | C("jaw_crooked") & ~C("head_round"),
        "starved": (C("mass") < 20.5) & (C("length") > 18),
        "blind": C("eye_missing") & ~((C("gloss") >= 80) & C("lips_red")),
        "sick": C("parasites") & (C("gill_open") | (C("warmth") > 28.7)),
        "thin_stem": (C("stem_width") < 1.2) & ((code("outline") <= 1) | (C("girth") < 6.3)) & ~C("lips_red"),
        "one_sided": (C("left_share") < 3.5) | (C("left_share") > 96.5),
        "washed": (code("shiroji") == 0) & ~(code("luster") >= 1),
        "torn": C("fin_torn") & (C("fin_spread") < 6.2) & ~C("parasites"),
        "specked": (C("speck_size") > 8.5)
        & ((code("skin") <= 1) | (C("gloss") < 12.5) | (code("depth") == 0))
        & ~C("head_round"),
        "loose_edge": (code("kiwa") == 0) & ((C("hi_cover") > 62.5) | (C("hi_cover") < 12)),
        "open_rear": (C("rear_gap") > 32.5) & ((C("front_cover") > 70) | ~(rhythm_even | (C("back_height") >= 6.6))),
        "slow": (C("age") > 400) & (C("length") < 15) & ~C("head_round") & (code("depth") <= 1),
    }


def chain(x: pl.Expr, knots: list[float], pieces: list[pl.Expr]) -> pl.Expr:
    made = pl.when(x < knots[0]).then(pieces[0])
    for knot, piece in zip(knots[1:], pieces[1:-1], strict=True):
        made = made.when(x < knot).then(piece)
    return made.otherwise(pieces[-1])


def curve(x: pl.Expr, knots) -> pl.Expr:
    pieces = [pl.lit(float(knots[0][1]))]
    for (left, low), (right, high) in itertools.pairwise(knots):
        slope = (high - low) / (right - left)
        pieces.append(x * slope + (low - slope * left))
    pieces.append(pl.lit(float(knots[-1][1])))
    return chain(x, [float(a) for a, _ in knots], pieces)


@cache
def plan() -> tuple[list[pl.Expr], list[pl.Expr], list[pl.Expr]]:
    first = [C(name).to_physical().alias(f"{name} code") for name in SCALES]
    sections = []
    for section, worth in SECTIONS.items():
        parts, most = [], 0.0
        for of, _, weight, name, knots in CURVES:
            if of == section:
                parts.append(curve(C(name), knots) * float(weight))
                most += float(weight) * max(gives for _, gives in knots)
        for of, _, weight, name, points in TABLES:
            if of == section:
                parts.append(pl.lit(pl.Series([float(weight) * p for p in points])).gather(code(name)))
                most += float(weight) * max(points)
        sections.append(balanced(parts) * (worth / most))
    second = [(balanced(sections) * 100 + (0.5 + 1e-9)).floor().alias("score")]
    bites = faults()
    for grade, _ in GRADES[1:]:
        second.append(pl.any_horizontal([bites[fault] for fault, cap in FAULTS if cap == grade]).alias(f"cap {grade}"))
    best = pl.lit(3, pl.UInt8)
    for rank in (2, 1, 0):
        best = pl.when(C("score") >= GRADES[rank][1] * 100).then(pl.lit(rank, pl.UInt8)).otherwise(best)
    grade = best
    for rank, (name, _) in list(enumerate(GRADES))[1:]:
        grade = pl.when(C(f"cap {name}")).then(pl.max_horizontal(best, pl.lit(rank, pl.UInt8))).otherwise(grade)
    return first, second, [C("score"), grade.alias("grade")]


def grade(frame: pl.DataFrame) -> pl.DataFrame:
    first, second, results = plan()
    lazy = frame.lazy().with_columns(first).with_columns(second).select(results)
    return lazy.collect(engine="streaming", optimizations=pl.QueryOptFlags(comm_subexpr_elim=False))
