"""The neutral standard by an expert in Polars who measured each variant: exact, with and without holes.

Values are whole millionths, points whole thousandths, sections whole hundredths, all in doubles far below 2^53. What made it
the fastest of the variants tried: curves as halved trees of `when`, all tables of a section over packed codes of several
scales, criteria of one weight added before they are multiplied, a grade as the sum of three truths. It leans on the figures:
the nudges keep every tie on its side only because their divisors are small.
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
    """Thousandths; where x is null, those after the last knot, since no comparison holds."""
    at, gives = [whole(a, 10**6) for a, _ in knots], [whole(g, 1000) for _, g in knots]
    pieces = [pl.lit(float(gives[0]))]
    for i in range(len(at) - 1):
        slope = Fraction(gives[i + 1] - gives[i], at[i + 1] - at[i])
        # Half a step of what a line can give is 1 / (2 x its divisor): a quarter is as far from a tie as can be.
        start = gives[i] - slope * at[i] + Fraction(1, 2) + Fraction(1, 4 * slope.denominator)
        pieces.append(x * float(slope) + float(start))
    pieces.append(pl.lit(float(gives[-1])))

    def tree(first: int, last: int) -> pl.Expr:
        if first == last:
            return pieces[first]
        half = (first + last) // 2
        return pl.when(x < float(at[half])).then(tree(first, half)).otherwise(tree(half + 1, last))

    return tree(0, len(pieces) - 1).floor()


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


@cache
def plan() -> tuple[list[pl.Expr], list[pl.Expr], list[pl.Expr]]:
    sections = (of_section(section, ()) for section in SECTIONS)
    score = balanced((low * share + nudge).floor() for low, _, share, nudge in sections)
    second = [score.alias("score"), *(cap.alias(f"cap {i}") for i, cap in enumerate(caps()))]
    # A fish is worse than grade i if its score is too low for it, or a fault caps it anywhere below.
    worse = []
    for i, threshold in enumerate(THRESHOLDS):
        made = C("score") < threshold
        for cap in range(i, len(CAPS)):
            made = made | C(f"cap {cap}")
        worse.append(made.cast(pl.UInt8))
    return first_columns(()), second, [C("score"), balanced(worse).alias("grade")]


def grade(frame: pl.DataFrame) -> pl.DataFrame:
    """Score in hundredths and grade, 0 the best, of complete records."""
    first, second, results = plan()
    lazy = frame.lazy().with_columns(first).with_columns(second).select(results)
    return lazy.collect(engine="streaming", optimizations=FLAGS)


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
    third = [balanced(lows).alias("score_low"), balanced(highs).alias("score_high")]
    kind = pl.UInt16
    digits = [balanced((C("score_low") < t).cast(pl.UInt8) for t in THRESHOLDS).cast(kind)]
    digits.append(balanced((C("score_high") < t).cast(pl.UInt8) for t in THRESHOLDS).cast(kind) * pl.lit(4, kind))
    for i in range(len(CAPS)):
        cap = C(f"cap {i}")
        state = cap.fill_null(False).cast(pl.UInt8) + cap.fill_null(True).cast(pl.UInt8)
        digits.append(state.cast(kind) * pl.lit(16 * 3**i, kind))
    table = pl.lit(pl.Series(possible_table(), dtype=pl.UInt8))
    possible = table.gather(balanced(digits)).alias("possible")
    return first_columns(holed), second, third, [C("score_low"), C("score_high"), possible]


def grade_with_holes(frame: pl.DataFrame) -> pl.DataFrame:
    """Lowest and highest score in hundredths, and the grades still possible as bits, bit 0 the best."""
    holed = tuple(name for name in (*NUMBERS, *SCALES) if frame[name].null_count())
    first, second, third, results = plan_with_holes(holed)
    lazy = frame.lazy().with_columns(first).with_columns(second).with_columns(third).select(results)
    return lazy.collect(engine="streaming", optimizations=FLAGS)
