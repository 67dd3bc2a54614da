"""The neutral standard by an expert in Polars who measured each variant: exact, with and without holes.

Values are whole millionths, points whole thousandths, sections whole hundredths, all in doubles far below 2^53. What made it
the fastest of the variants tried: curves as sums of hinges, all tables of a section over packed codes of several
scales, criteria of one weight added before they are multiplied, a grade as the sum of three truths. It leans on the figures:
the nudges keep every tie on its side only because their divisors are small. It writes the same columns as koirules.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable
from fractions import Fraction
from functools import cache

import polars as pl
from figures import CURVES, FAULTS, GRADES, NUMBERS, SCALES, SECTIONS, TABLES, whole

C = pl.col
MOST_CODES = 256
THRESHOLDS = [float(score * 100) for _, score in GRADES if score is not None]
CAPS = [name for name, _ in GRADES[1:]]
FLAGS = pl.QueryOptFlags(comm_subexpr_elim=False)


def balanced(parts: Iterable[pl.Expr]) -> pl.Expr:
    left = list(parts)
    while len(left) > 1:
        left = [left[i] + left[i + 1] if i + 1 < len(left) else left[i] for i in range(0, len(left), 2)]
    return left[0]


def curve(x: pl.Expr, knots) -> pl.Expr:
    """Thousandths, as a sum of hinges: how far x has come between each two knots, times the slope there."""
    at, gives = [whole(a, 10**6) for a, _ in knots], [whole(g, 1000) for _, g in knots]
    slopes = [Fraction(gives[i + 1] - gives[i], at[i + 1] - at[i]) for i in range(len(at) - 1)]
    # Half a step of what a line can give is 1 / (2 x its divisor): a quarter is as far from a tie as can be.
    nudge = Fraction(1, 2) + Fraction(1, 4 * max(slope.denominator for slope in slopes))
    start = gives[0] + nudge - sum(slope * left for slope, left in zip(slopes, at, strict=False))
    hinges = [
        pl.max_horizontal(pl.min_horizontal(x, float(at[i + 1])), float(at[i])) * float(slope)
        for i, slope in enumerate(slopes)
    ]
    return (balanced(hinges) + float(start)).floor()


@cache
def packs() -> list[list[str]]:
    """The scales, as many together as one byte can tell apart, with a code of its own for a hole."""
    made: list[list[str]] = [[]]
    size = 1
    for scale, steps in SCALES.items():
        if size * (len(steps) + 1) > MOST_CODES:
            made.append([])
            size = 1
        made[-1].append(scale)
        size *= len(steps) + 1
    return made


def pack_code(scales: list[str], holed: frozenset[str]) -> pl.Expr:
    parts, stride = [], 1
    for scale in reversed(scales):
        digit = C(scale).to_physical().cast(pl.UInt8)
        digit = digit.fill_null(len(SCALES[scale])) if scale in holed else digit
        parts.append(digit * pl.lit(stride, pl.UInt8) if stride > 1 else digit)
        stride *= len(SCALES[scale]) + 1
    return balanced(parts)


def looked_up(values: Iterable[float], code: pl.Expr) -> pl.Expr:
    return pl.lit(pl.Series(list(values))).gather(code)


def of_section(section: str, holed: tuple[str, ...]) -> tuple[pl.Expr, pl.Expr, float, float]:
    """The least sum of weight x points, how much more there may be, and the factor and the nudge to hundredths."""
    curves, divisor = {}, 0
    steps = {scale: [0] * (len(names) + 1) for scale, names in SCALES.items()}
    lack, more = dict.fromkeys(holed, 0), dict.fromkeys(holed, 0)
    for of, _, weight, name, knots in CURVES:
        if of == section:
            given, times = [whole(g, 1000) for _, g in knots], whole(weight, 100)
            curves.setdefault(times, []).append(curve(C(f"{name} m"), knots))
            divisor += times * max(given)
            if name in holed:
                lack[name] += times * (min(given) - given[-1])
                more[name] += times * (max(given) - min(given))
    for of, _, weight, name, points in TABLES:
        if of == section:
            given, times = [whole(g, 1000) for g in points], whole(weight, 100)
            divisor += times * max(given)
            steps[name] = [known + times * g for known, g in zip(steps[name], [*given, min(given)], strict=True)]
            if name in holed:
                more[name] += times * (max(given) - min(given))
    parts = [balanced(each) * float(times) for times, each in curves.items()]
    for number, scales in enumerate(packs()):
        sums = [float(sum(each)) for each in itertools.product(*(steps[scale] for scale in scales))]
        parts.append(looked_up(sums, C(f"pack {number}")))
    parts += lookups(lack)
    share = Fraction(SECTIONS[section] * 100, divisor)
    nudge = Fraction(1, 2) + Fraction(1, 4 * share.denominator)
    return balanced(parts), balanced(lookups(more) or [pl.lit(0.0)]), float(share), float(nudge)


def bytes_of(columns: Iterable[str]) -> list[list[str]]:
    """The columns with holes, as many together as a byte has bits."""
    listed = list(columns)
    return [listed[i : i + 8] for i in range(0, len(listed), 8)]


def lookups(each: dict[str, int]) -> list[pl.Expr]:
    """What the holes of a row add up to; each: by column."""
    made = []
    for number, names in enumerate(bytes_of(each)):
        amounts = [each[name] for name in names]
        if any(amounts):
            made.append(looked_up(subset_sums(amounts), C(f"lacks {number}")))
    return made


def subset_sums(amounts: list[int]) -> list[float]:
    """What the columns of each set add up to; the bits of its number say which are in it."""
    sums = [0.0]
    for amount in amounts:
        sums += [known + amount for known in sums]
    return sums


def first_columns(holed: tuple[str, ...]) -> list[pl.Expr]:
    made = [C(scale).to_physical().alias(f"{scale} code") for scale in SCALES]
    made += [(C(name) * 1e6 + 0.5).floor().alias(f"{name} m") for name in NUMBERS]
    made += [pack_code(scales, frozenset(holed)).alias(f"pack {i}") for i, scales in enumerate(packs())]
    for number, names in enumerate(bytes_of(holed)):
        bits = (C(name).is_null().cast(pl.UInt8) * pl.lit(1 << i, pl.UInt8) for i, name in enumerate(names))
        made.append(balanced(bits).alias(f"lacks {number}"))
    return made


def caps() -> list[pl.Expr]:
    """For hold, sell and cull, whether a fault caps there; null where that is open."""
    from expert_doubles import faults

    bites = faults()
    made = []
    for cap in CAPS:
        each = [bites[fault] for fault, grade in FAULTS if grade == cap]
        any_of = each[0]
        for bite in each[1:]:
            any_of = any_of | bite
        made.append(any_of)
    return made


def points(hundredths: pl.Expr) -> pl.Expr:
    """Hundredths as a number, rounded once: by a known number Polars multiplies with its reciprocal."""
    return hundredths / (hundredths * 0.0 + 100.0)


def words(sets: Iterable[int]) -> tuple[pl.Expr, pl.Expr]:
    """The grade that each set has alone, and the names of all in it; bit 0 is the best."""
    names = [name for name, _ in GRADES]
    each = [[name for i, name in enumerate(names) if grades >> i & 1] for grades in sets]
    every = ["|".join(some) for size in range(1, len(names) + 1) for some in itertools.combinations(names, size)]
    alone = pl.Series([one[0] if len(one) == 1 else None for one in each], dtype=pl.Enum(names))
    return pl.lit(alone), pl.lit(pl.Series(["|".join(one) or None for one in each], dtype=pl.Enum(every)))


@cache
def plan() -> tuple[list[pl.Expr], ...]:
    second = []
    for section in SECTIONS:
        low, _, share, nudge = of_section(section, ())
        second.append((low * share + nudge).floor().alias(section))
    second += [cap.alias(f"cap {i}") for i, cap in enumerate(caps())]
    third = [balanced([C(section) for section in SECTIONS]).alias("hundredths")]
    # A fish is worse than grade i if its score is too low for it, or a fault caps it anywhere below.
    worse = []
    for i, threshold in enumerate(THRESHOLDS):
        made = C("hundredths") < threshold
        for cap in range(i, len(CAPS)):
            made = made | C(f"cap {cap}")
        worse.append(made.cast(pl.UInt8))
    grade, possible = words(1 << i for i in range(len(GRADES)))
    fourth = [balanced(worse).alias("worse"), points(C("hundredths")).alias("score")]
    fourth += [points(C(section)).alias(f"{section}_low") for section in SECTIONS]
    results = [grade.gather(C("worse")).alias("grade"), possible.gather(C("worse")).alias("possible"), C("score")]
    results += [C("score").alias("score_low"), C("score").alias("score_high")]
    for section in SECTIONS:
        results += [C(f"{section}_low"), C(f"{section}_low").alias(f"{section}_high")]
    return first_columns(()), second, third, fourth, results


def grade(frame: pl.DataFrame) -> pl.DataFrame:
    """The results of complete records."""
    return collected(frame, plan())


def collected(frame: pl.DataFrame, stages: tuple[list[pl.Expr], ...]) -> pl.DataFrame:
    lazy = frame.lazy()
    for stage in stages[:-1]:
        lazy = lazy.with_columns(stage)
    return lazy.select(stages[-1]).collect(engine="streaming", optimizations=FLAGS)


def possible_table() -> list[int]:
    """The grades still possible, by the ends by score (4 x 4) and whether each cap is a no, open or sure (3 x 3 x 3)."""
    made = []
    for *states, best, worst in itertools.product(range(3), range(3), range(3), range(4), range(4)):
        grades = set(range(best, worst + 1))
        for cap, state in enumerate(reversed(states), 1):
            held = {max(cap, known) for known in grades}
            grades = grades if state == 0 else held | grades if state == 1 else held
        made.append(sum(1 << known for known in grades))
    return made


@cache
def plan_with_holes(holed: tuple[str, ...]) -> tuple[list[pl.Expr], ...]:
    second, lows, highs = [], [], []
    for section in SECTIONS:
        low, more, share, nudge = of_section(section, holed)
        second += [low.alias(f"{section} low"), more.alias(f"{section} more")]
        lows.append((C(f"{section} low") * share + nudge).floor())
        highs.append(((C(f"{section} low") + C(f"{section} more")) * share + nudge).floor())
    second += [cap.alias(f"cap {i}") for i, cap in enumerate(caps())]
    ends = {"low": lows, "high": highs}
    third = [
        made.alias(f"{section} {end}s")
        for end, each in ends.items()
        for section, made in zip(SECTIONS, each, strict=True)
    ]
    fourth = [balanced([C(f"{section} {end}s") for section in SECTIONS]).alias(end) for end in ends]
    kind = pl.UInt16
    digits = [balanced((C("low") < t).cast(pl.UInt8) for t in THRESHOLDS).cast(kind)]
    digits.append(balanced((C("high") < t).cast(pl.UInt8) for t in THRESHOLDS).cast(kind) * pl.lit(4, kind))
    for i in range(len(CAPS)):
        cap = C(f"cap {i}")
        state = cap.fill_null(False).cast(pl.UInt8) + cap.fill_null(True).cast(pl.UInt8)
        digits.append(state.cast(kind) * pl.lit(16 * 3**i, kind))
    fifth = [balanced(digits).alias("state"), *(points(C(end)).alias(f"score_{end}") for end in ends)]
    grade, possible = words(possible_table())
    results = [grade.gather(C("state")).alias("grade"), possible.gather(C("state")).alias("possible")]
    results += [pl.when(C("score_low") == C("score_high")).then(C("score_low")).alias("score")]
    results += [C("score_low"), C("score_high")]
    results += [points(C(f"{section} {end}s")).alias(f"{section}_{end}") for section in SECTIONS for end in ends]
    return first_columns(holed), second, third, fourth, fifth, results


def grade_with_holes(frame: pl.DataFrame) -> pl.DataFrame:
    """The results of records with holes."""
    holed = tuple(name for name in (*NUMBERS, *SCALES) if frame[name].null_count())
    return collected(frame, plan_with_holes(holed))
