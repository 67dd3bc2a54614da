"""The neutral standard as an expert in Polars writes it: one plan for the streaming engine, chains, gathers, balanced sums.

`grade(frame, exact=True)` does the arithmetic of the rule language in whole numbers carried in doubles (`expert_exact.py` is a
quicker one); `exact=False` is what is natural in doubles: one rounding, at the end.
"""

from __future__ import annotations

import itertools
from fractions import Fraction
from functools import cache

import polars as pl
from figures import CURVES, FAULTS, GRADES, NUMBERS, SCALES, SECTIONS, TABLES, whole

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


def curve_exact(x: pl.Expr, knots) -> pl.Expr:
    """Thousandths: the line, nudged by a quarter of what an exact tie could be missed by, rounded down."""
    at, gives = [whole(a, 10**6) for a, _ in knots], [whole(g, 1000) for _, g in knots]
    pieces = [pl.lit(float(gives[0]))]
    for i in range(len(at) - 1):
        slope = Fraction(gives[i + 1] - gives[i], at[i + 1] - at[i])
        start = gives[i] - slope * at[i] + Fraction(1, 2) + Fraction(1, 4 * slope.denominator)
        pieces.append(x * float(slope) + float(start))
    pieces.append(pl.lit(float(gives[-1])))
    return chain(x, [float(a) for a in at], pieces).floor()


def curve_floats(x: pl.Expr, knots) -> pl.Expr:
    pieces = [pl.lit(float(knots[0][1]))]
    for (left, low), (right, high) in itertools.pairwise(knots):
        slope = (high - low) / (right - left)
        pieces.append(x * slope + (low - slope * left))
    pieces.append(pl.lit(float(knots[-1][1])))
    return chain(x, [float(a) for a, _ in knots], pieces)


@cache
def plan(*, exact: bool) -> tuple[list[pl.Expr], list[pl.Expr], list[pl.Expr]]:
    first = [C(name).to_physical().alias(f"{name} code") for name in SCALES]
    if exact:
        first += [(C(name) * 1e6 + 0.5).floor().alias(f"{name} m") for name in NUMBERS]
    sections = []
    for section, worth in SECTIONS.items():
        parts, divisor = [], 0
        for of, _, weight, name, knots in CURVES:
            if of == section:
                if exact:
                    parts.append(curve_exact(C(f"{name} m"), knots) * float(whole(weight, 100)))
                else:
                    parts.append(curve_floats(C(name), knots) * float(weight))
                divisor += whole(weight, 100) * max(whole(gives, 1000) for _, gives in knots)
        for of, _, weight, name, points in TABLES:
            if of == section:
                each = [float(whole(weight, 100) * whole(p, 1000)) if exact else float(weight) * p for p in points]
                parts.append(pl.lit(pl.Series(each)).gather(code(name)))
                divisor += whole(weight, 100) * max(whole(p, 1000) for p in points)
        share = Fraction(worth * 100, divisor)
        if exact:
            nudge = float(Fraction(1, 2) + Fraction(1, 4 * share.denominator))
            sections.append((balanced(parts) * float(share) + nudge).floor())
        else:
            sections.append(balanced(parts) * (worth / (divisor / 1e5)))
    total = balanced(sections)
    second = [(total if exact else (total * 100 + (0.5 + 1e-9)).floor()).alias("score")]
    names = [name for name, _ in GRADES]
    bites = faults()
    caps = {g: [bites[fault] for fault, grade in FAULTS if grade == g] for g in names}
    any_of = {g: pl.any_horizontal(parts) if parts else None for g, parts in caps.items()}
    second += [made.alias(f"cap {g}") for g, made in any_of.items() if made is not None]
    by_score = pl.when(C("score") >= GRADES[0][1] * 100).then(pl.lit(0, pl.UInt8))
    by_score = by_score.when(C("score") >= GRADES[1][1] * 100).then(pl.lit(1, pl.UInt8))
    by_score = by_score.when(C("score") >= GRADES[2][1] * 100).then(pl.lit(2, pl.UInt8)).otherwise(pl.lit(3, pl.UInt8))
    grade = pl.when(C("cap cull")).then(pl.lit(3, pl.UInt8))
    grade = grade.when(C("cap sell")).then(pl.max_horizontal(by_score, pl.lit(2, pl.UInt8)))
    grade = grade.when(C("cap hold")).then(pl.max_horizontal(by_score, pl.lit(1, pl.UInt8))).otherwise(by_score)
    return first, second, [C("score"), grade.alias("grade")]


def grade(frame: pl.DataFrame, *, exact: bool) -> pl.DataFrame:
    first, second, results = plan(exact=exact)
    lazy = frame.lazy().with_columns(first).with_columns(second).select(results)
    return lazy.collect(engine="streaming", optimizations=pl.QueryOptFlags(comm_subexpr_elim=False))
