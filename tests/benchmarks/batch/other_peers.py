"""The neutral standard as others write it: idiomatic Polars, whole arrays of numpy, one SQL text for DuckDB, a function.

All but the function work in plain doubles and round once, at the end, as one does. The rule language rounds every criterion
and every section, so their scores differ in the last hundredths for some 40 % of records, and their grades hardly ever. The
function does the arithmetic of the rule language, in whole numbers.
"""

from __future__ import annotations

import itertools
from functools import cache

import duckdb
import numpy as np
import polars as pl
from figures import CURVES, FAULTS, GRADES, SCALES, SECTIONS, TABLES, whole

C = pl.col
NAMES = [name for name, _ in GRADES]


def scale_of(section: str) -> float:
    most = [float(w) * max(g for _, g in knots) for of, _, w, _, knots in CURVES if of == section]
    most += [float(w) * max(points) for of, _, w, _, points in TABLES if of == section]
    return SECTIONS[section] / sum(most)


# ---- Polars as one writes it without a thought of speed ------------------------------------------------------------


def idiomatic(frame: pl.DataFrame) -> pl.DataFrame:
    totals = []
    for section in SECTIONS:
        parts = []
        for of, _, weight, name, knots in CURVES:
            if of == section:
                made = pl.when(C(name) <= knots[0][0]).then(pl.lit(float(knots[0][1])))
                for (left, low), (right, high) in itertools.pairwise(knots):
                    made = made.when(C(name) <= right).then(low + (high - low) * (C(name) - left) / (right - left))
                parts.append(made.otherwise(float(knots[-1][1])) * float(weight))
        for of, _, weight, name, points in TABLES:
            if of == section:
                steps = [float(p) for p in points]
                parts.append(C(name).replace_strict(list(SCALES[name]), steps, return_dtype=pl.Float64) * float(weight))
        totals.append(pl.sum_horizontal(parts) * scale_of(section))
    outline = C("outline").is_in(["poor", "lean"])
    bites = {
        "crooked": C("spine_bent") | (C("jaw_crooked") & ~C("head_round")),
        "starved": (C("mass") < 20.5) & (C("length") > 18),
        "blind": C("eye_missing") & ~((C("gloss") >= 80) & C("lips_red")),
        "sick": C("parasites") & (C("gill_open") | (C("warmth") > 28.7)),
        "thin_stem": (C("stem_width") < 1.2) & (outline | (C("girth") < 6.3)) & ~C("lips_red"),
        "one_sided": (C("left_share") < 3.5) | (C("left_share") > 96.5),
        "washed": (C("shiroji") == "yellow") & (C("luster") == "dull"),
        "torn": C("fin_torn") & (C("fin_spread") < 6.2) & ~C("parasites"),
        "specked": (C("speck_size") > 8.5)
        & (C("skin").is_in(["rough", "grainy"]) | (C("gloss") < 12.5) | (C("depth") == "faint"))
        & ~C("head_round"),
        "loose_edge": (C("kiwa") == "blurred") & ~C("hi_cover").is_between(12, 62.5),
        "open_rear": (C("rear_gap") > 32.5)
        & ((C("front_cover") > 70) | ~(C("rhythm").is_in(["even", "striking"]) | (C("back_height") >= 6.6))),
        "slow": (C("age") > 400) & (C("length") < 15) & ~C("head_round") & C("depth").is_in(["faint", "pale"]),
    }
    caps = {g: pl.any_horizontal([bites[f] for f, of in FAULTS if of == g]) for g in NAMES[1:]}
    made = frame.with_columns((pl.sum_horizontal(totals) * 100).round().alias("score"))
    by_score = (
        pl.when(C("score") >= 6200)
        .then(0)
        .when(C("score") >= 5500)
        .then(1)
        .when(C("score") >= 4600)
        .then(2)
        .otherwise(3)
    )
    cap = pl.when(caps["cull"]).then(3).when(caps["sell"]).then(2).when(caps["hold"]).then(1).otherwise(0)
    return made.select("score", pl.max_horizontal(by_score, cap).alias("grade"))


# ---- numpy -------------------------------------------------------------------------------------------------------


def with_numpy(frame: pl.DataFrame) -> pl.DataFrame:
    x = {
        name: frame[name].to_physical().to_numpy() if name in SCALES else frame[name].to_numpy()
        for name in frame.columns
    }
    total = np.zeros(frame.height)
    for section in SECTIONS:
        part = np.zeros(frame.height)
        for of, _, weight, name, knots in CURVES:
            if of == section:
                part += float(weight) * np.interp(x[name], [a for a, _ in knots], [g for _, g in knots])
        for of, _, weight, name, points in TABLES:
            if of == section:
                part += (float(weight) * np.array(points, float))[x[name]]
        total += part * scale_of(section)
    score = np.floor(total * 100 + (0.5 + 1e-9))
    cull = x["spine_bent"] | x["jaw_crooked"] & ~x["head_round"]
    cull |= (x["mass"] < 20.5) & (x["length"] > 18)
    cull |= x["eye_missing"] & ~((x["gloss"] >= 80) & x["lips_red"])
    cull |= x["parasites"] & (x["gill_open"] | (x["warmth"] > 28.7))
    sell = (x["stem_width"] < 1.2) & ((x["outline"] <= 1) | (x["girth"] < 6.3)) & ~x["lips_red"]
    sell |= (x["left_share"] < 3.5) | (x["left_share"] > 96.5)
    sell |= (x["shiroji"] == 0) & (x["luster"] < 1)
    sell |= x["fin_torn"] & (x["fin_spread"] < 6.2) & ~x["parasites"]
    sell |= (x["speck_size"] > 8.5) & ((x["skin"] <= 1) | (x["gloss"] < 12.5) | (x["depth"] == 0)) & ~x["head_round"]
    hold = (x["kiwa"] == 0) & ((x["hi_cover"] > 62.5) | (x["hi_cover"] < 12))
    hold |= (x["rear_gap"] > 32.5) & ((x["front_cover"] > 70) | ~((x["rhythm"] >= 3) | (x["back_height"] >= 6.6)))
    hold |= (x["age"] > 400) & (x["length"] < 15) & ~x["head_round"] & (x["depth"] <= 1)
    by_score = np.select([score >= 6200, score >= 5500, score >= 4600], [0, 1, 2], 3)
    grade = np.maximum(by_score, np.where(cull, 3, np.where(sell, 2, np.where(hold, 1, 0))))
    return pl.DataFrame({"score": score, "grade": grade.astype(np.uint8)})


# ---- DuckDB ------------------------------------------------------------------------------------------------------


@cache
def sql() -> str:
    totals = []
    for section in SECTIONS:
        parts = []
        for of, _, weight, name, knots in CURVES:
            if of == section:
                cases = [f"when {name} < {knots[0][0]}::double then {knots[0][1]}::double"]
                for (left, low), (right, high) in itertools.pairwise(knots):
                    slope = (high - low) / (right - left)
                    cases.append(
                        f"when {name} < {right}::double then {name} * {slope!r}::double + {low - slope * left!r}::double"
                    )
                parts.append(f"{weight}::double * case {' '.join(cases)} else {knots[-1][1]}::double end")
        for of, _, weight, name, points in TABLES:
            if of == section:
                cases = " ".join(
                    f"when '{step}' then {p}::double" for step, p in zip(SCALES[name], points, strict=True)
                )
                parts.append(f"{weight}::double * case {name} {cases} end")
        totals.append(f"({' + '.join(parts)}) * {scale_of(section)!r}::double")
    return f"""
    with scored as (select *, floor(({" + ".join(totals)}) * 100 + 0.500000001::double) as score from fish)
    select score, greatest(
      case when score >= 6200 then 0 when score >= 5500 then 1 when score >= 4600 then 2 else 3 end,
      case
        when spine_bent or jaw_crooked and not head_round or mass < 20.5 and length > 18
          or eye_missing and not (gloss >= 80 and lips_red) or parasites and (gill_open or warmth > 28.7) then 3
        when stem_width < 1.2 and (outline in ('poor', 'lean') or girth < 6.3) and not lips_red
          or left_share < 3.5 or left_share > 96.5 or shiroji = 'yellow' and luster = 'dull'
          or fin_torn and fin_spread < 6.2 and not parasites
          or speck_size > 8.5 and (skin in ('rough', 'grainy') or gloss < 12.5 or depth = 'faint') and not head_round then 2
        when kiwa = 'blurred' and (hi_cover > 62.5 or hi_cover < 12)
          or rear_gap > 32.5 and (front_cover > 70 or not (rhythm in ('even', 'striking') or back_height >= 6.6))
          or age > 400 and length < 15 and not head_round and depth in ('faint', 'pale') then 1
        else 0 end)::utinyint as grade from scored"""


def with_duckdb(frame: pl.DataFrame) -> pl.DataFrame:
    with duckdb.connect() as connection:
        connection.register("fish", frame)
        return connection.sql(sql()).pl()


# ---- A function over a dict ----------------------------------------------------------------------------------------


@cache
def _figures():
    curves = [
        (of, whole(weight, 100), name, [(whole(a, 10**6), whole(g, 1000)) for a, g in knots])
        for of, _, weight, name, knots in CURVES
    ]
    tables = [
        (of, whole(weight, 100), name, {step: whole(p, 1000) for step, p in zip(SCALES[name], points, strict=True)})
        for of, _, weight, name, points in TABLES
    ]
    divisors = dict.fromkeys(SECTIONS, 0)
    for of, weight, _, knots in curves:
        divisors[of] += weight * max(gives for _, gives in knots)
    for of, weight, _, steps in tables:
        divisors[of] += weight * max(steps.values())
    return curves, tables, divisors


def plain_function(fish: dict) -> tuple[int, int]:
    """Hundredths of the score, and the grade, 0 the best."""
    curves, tables, divisors = _figures()
    sums = dict.fromkeys(SECTIONS, 0)
    for section, weight, name, knots in curves:
        x = int(fish[name] * 1_000_000 + 0.5)
        points = knots[-1][1]
        if x < knots[0][0]:
            points = knots[0][1]
        else:
            for (left, low), (right, high) in itertools.pairwise(knots):
                if x < right:
                    run = right - left
                    points = (2 * (low * run + (high - low) * (x - left)) + run) // (2 * run)
                    break
        sums[section] += weight * points
    for section, weight, name, steps in tables:
        sums[section] += weight * steps[fish[name]]
    score = 0
    for section, worth in SECTIONS.items():
        score += (200 * worth * sums[section] + divisors[section]) // (2 * divisors[section])
    grade = 0 if score >= 6200 else 1 if score >= 5500 else 2 if score >= 4600 else 3
    return score, max(grade, _cap(fish))


def _cap(f: dict) -> int:
    if (
        f["spine_bent"]
        or (f["jaw_crooked"] and not f["head_round"])
        or (f["mass"] < 20.5 and f["length"] > 18)
        or (f["eye_missing"] and not (f["gloss"] >= 80 and f["lips_red"]))
        or (f["parasites"] and (f["gill_open"] or f["warmth"] > 28.7))
    ):
        return 3
    if (
        (f["stem_width"] < 1.2 and (f["outline"] in {"poor", "lean"} or f["girth"] < 6.3) and not f["lips_red"])
        or f["left_share"] < 3.5
        or f["left_share"] > 96.5
        or (f["shiroji"] == "yellow" and f["luster"] == "dull")
        or (f["fin_torn"] and f["fin_spread"] < 6.2 and not f["parasites"])
        or (
            f["speck_size"] > 8.5
            and (f["skin"] in {"rough", "grainy"} or f["gloss"] < 12.5 or f["depth"] == "faint")
            and not f["head_round"]
        )
    ):
        return 2
    even = f["rhythm"] in {"even", "striking"}
    return int(
        (f["kiwa"] == "blurred" and (f["hi_cover"] > 62.5 or f["hi_cover"] < 12))
        or (f["rear_gap"] > 32.5 and (f["front_cover"] > 70 or not (even or f["back_height"] >= 6.6)))
        or (f["age"] > 400 and f["length"] < 15 and not f["head_round"] and f["depth"] in {"faint", "pale"})
    )


def by_function(frame: pl.DataFrame) -> pl.DataFrame:
    rows = [plain_function(row) for row in frame.iter_rows(named=True)]
    return pl.DataFrame(rows, schema={"score": pl.Int64, "grade": pl.UInt8}, orient="row")
