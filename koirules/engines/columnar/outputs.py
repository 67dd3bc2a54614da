"""The columns of results, from what a plan works out: their names, types and order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations
from typing import TYPE_CHECKING, Any

from koirules.engines.columnar.plan import Plan
from koirules.engines.columnar.stages import Stages
from koirules.engines.columnar.values import Pair, divided
from koirules.standard.parts import Rules

if TYPE_CHECKING:
    import polars as pl

_MOST_TABLED = 8
"""With more grades than this, the possible ones are put together from words and not from a table of all sets of them."""


def result_expressions(plan: Plan, grades: Sequence[str], *, sections: bool, faults: bool) -> Iterator[pl.Expr]:
    """The columns of the results, named as in a file of results.

    grade: null where several are possible. possible: names parted by `|`, best first. score: null where it is open.
    score_low, score_high and the ends of each section: points. For each fault and lift, on request, `fault NAME`: true
    where it surely bites, null where it is open.
    """
    import polars as pl

    grade, possible = _grades(plan.possible, grades)
    yield grade.alias("grade")
    yield possible.alias("possible")
    low, high = _ends(plan.stages, plan.score)
    yield (low if plan.score.sure else pl.when(low == high).then(low)).alias("score")
    yield low.alias("score_low")
    yield high.alias("score_high")
    if sections:
        for name, pair in plan.sections.items():
            low, high = _ends(plan.stages, pair)
            yield low.alias(f"{name}_low")
            yield high.alias(f"{name}_high")
    if faults:
        for (head, name), pair in plan.limits.items():
            yield _bites(pair).alias(f"{head} {name}")


def column_names(rules: Rules, *, sections: bool, faults: bool) -> Iterator[str]:
    """The names of the columns of results, in order."""
    yield from ("grade", "possible", "score", "score_low", "score_high")
    if sections:
        yield from (f"{section.name}_{end}" for section in rules.sections for end in ("low", "high"))
    if faults:
        yield from (f"{limit.head} {limit.name}" for limit in rules.limits)


def column_types(rules: Rules, *, sections: bool, faults: bool) -> dict[str, Any]:
    """The types of the columns of results, by name."""
    import polars as pl

    names = [grade.name for grade in rules.grades]
    types: dict[str, Any] = {
        name: pl.Boolean if " " in name else pl.Float64
        for name in column_names(rules, sections=sections, faults=faults)
    }
    return types | {"grade": pl.Enum(names), "possible": _type_of_sets(names)}


def _type_of_sets(names: Sequence[str]) -> Any:
    import polars as pl

    if len(names) > _MOST_TABLED:
        return pl.String
    return pl.Enum(["|".join(some) for size in range(1, len(names) + 1) for some in combinations(names, size)])


def _ends(stages: Stages, hundredths: Pair) -> tuple[pl.Expr, pl.Expr]:
    low = stages.keep(_points(hundredths.first))
    return low, low if hundredths.sure else stages.keep(_points(hundredths.second))


def _points(hundredths: Any) -> pl.Expr:
    import polars as pl

    if isinstance(hundredths, int | float):
        return pl.lit(hundredths / 100.0)
    return divided(hundredths, 100.0)


def _bites(pair: Pair) -> pl.Expr:
    import polars as pl

    surely, possibly = (pl.lit(end) if isinstance(end, bool) else end for end in (pair.first, pair.second))
    return surely if pair.sure else pl.when(surely).then(True).when(~possibly).then(False)


def _grades(planes: Sequence[Any], grades: Sequence[str]) -> tuple[pl.Expr, pl.Expr]:
    import polars as pl

    if len(grades) > _MOST_TABLED:
        return _written_out(planes, grades)
    names = list(grades)
    sets = [
        "|".join(names[i] for i in range(len(names)) if chosen >> i & 1) or None for chosen in range(1 << len(names))
    ]
    alone = [names[chosen.bit_length() - 1] if chosen.bit_count() == 1 else None for chosen in range(1 << len(names))]
    alone_type, sets_type = pl.Enum(names), _type_of_sets(names)
    known = sum(1 << i for i, plane in enumerate(planes) if plane is True)
    if all(isinstance(plane, bool) for plane in planes):
        return pl.lit(alone[known], alone_type), pl.lit(sets[known], sets_type)
    bits = pl.lit(known, pl.UInt8)
    for i, plane in enumerate(planes):
        if not isinstance(plane, bool):
            bits = bits | (pl.when(plane).then(pl.lit(1 << i, pl.UInt8)).otherwise(pl.lit(0, pl.UInt8)))
    if not bits.meta.root_names():
        # What reads no column at all is one row long, and not as many as the frame has.
        known = pl.select(bits).item()
        return pl.lit(alone[known], alone_type), pl.lit(sets[known], sets_type)
    return (
        pl.lit(pl.Series(alone, dtype=alone_type)).gather(bits),
        pl.lit(pl.Series(sets, dtype=sets_type)).gather(bits),
    )


def _written_out(planes: Sequence[Any], grades: Sequence[str]) -> tuple[pl.Expr, pl.Expr]:
    import polars as pl

    there = [pl.lit(plane) if isinstance(plane, bool) else plane for plane in planes]
    words = [pl.when(plane).then(pl.lit(name)) for plane, name in zip(there, grades, strict=True)]
    possible = pl.concat_str(words, separator="|", ignore_nulls=True)
    alone = pl.sum_horizontal([plane.cast(pl.UInt32) for plane in there]) == 1
    return pl.when(alone).then(possible).cast(pl.Enum(list(grades))), possible
