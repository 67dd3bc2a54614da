"""The columns of results, from the program of a frame: their names, types and order."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import combinations, product
from typing import Any

import polars as pl

from koirules.engines.columnar.plan import Columns
from koirules.meaning.algebra import Ends
from koirules.program.frames import FrameProgram
from koirules.program.graph import Value
from koirules.program.held import Held
from koirules.standard.parts import Rules, Setting
from koirules.values import frozen

_MOST_TABLED = 8
"""With more grades than this, the possible ones are put together from words and not from a table of all sets of them."""


@frozen(eq=False)
class Plan:
    """A standard compiled for one shape of frame: its program, the columns of it, and the columns of its results.

    These are named as in a file of results. grade: null where several are possible. possible: names parted by `|`, best first.
    score: null where it is open. score_low, score_high and the ends of each section: points. For each fault and lift, on
    request, `fault NAME`: true where it surely bites, null where it is open.
    """

    program: FrameProgram
    columns: Columns
    results: tuple[pl.Expr, ...]

    @classmethod
    def of(
        cls,
        rules: Rules,
        settings: Mapping[str, Setting],
        held: Mapping[str, Held],
        *,
        sections: bool,
        faults: bool,
        outputs: bool = False,
    ) -> Plan:
        """Compile a standard for frames that hold their traits so. outputs: whether those of the program are wanted, too."""
        program = FrameProgram.of(rules, settings, held)
        tracer = program.evaluation.tracer
        numbers = {"score": program.score} | (dict(program.sections) if sections else {})
        points = {
            name: Ends(tracer.hundredths(ends.first), tracer.hundredths(ends.last)) for name, ends in numbers.items()
        }
        limits = {f"{head} {name}": ends for (head, name), ends in program.limits.items()} if faults else {}
        grades = _Grades([grade.name for grade in rules.grades], program)
        # The ends of the score, and the code of the grades, are read twice.
        read = [*points["score"], *(end for ends in (*points.values(), *limits.values()) for end in ends), *grades.read]
        wanted = [*read, *(program.outputs.values() if outputs else ())]
        columns = Columns.of_nodes(program.evaluation, (), [value for value in wanted if value is not None])

        def results() -> Iterator[pl.Expr]:
            yield from grades.columns(columns)
            low, high = (columns.column(end) for end in (points["score"].first, points["score"].last))
            # Polars takes a literal on the left of a column that is the same in every row for one row.
            same = high == low if points["score"].first.constant else low == high
            yield (low if points["score"].sure else pl.when(same).then(low)).alias("score")
            for name, ends in points.items():
                yield columns.column(ends.first).alias(f"{name}_low")
                yield columns.column(ends.last).alias(f"{name}_high")
            for name, bites in limits.items():
                surely, possibly = columns.column(bites.first), columns.column(bites.last)
                yield (surely if bites.sure else pl.when(surely).then(True).when(~possibly).then(False)).alias(name)

        return cls(program, columns, tuple(results()))


def column_names(rules: Rules, *, sections: bool, faults: bool) -> Iterator[str]:
    """The names of the columns of results, in order."""
    yield from ("grade", "possible", "score", "score_low", "score_high")
    if sections:
        yield from (f"{section.name}_{end}" for section in rules.sections for end in ("low", "high"))
    if faults:
        yield from (f"{limit.head} {limit.name}" for limit in rules.limits)


def column_types(rules: Rules, *, sections: bool, faults: bool) -> dict[str, Any]:
    """The types of the columns of results, by name."""
    names = [grade.name for grade in rules.grades]
    types: dict[str, Any] = {
        name: pl.Boolean if " " in name else pl.Float64
        for name in column_names(rules, sections=sections, faults=faults)
    }
    return types | {"grade": pl.Enum(names), "possible": _type_of_sets(names)}


def _type_of_sets(names: Sequence[str]) -> Any:
    if len(names) > _MOST_TABLED:
        return pl.String
    return pl.Enum(["|".join(some) for size in range(1, len(names) + 1) for some in combinations(names, size)])


def sets_of_grades(names: Sequence[str], bits: pl.Series) -> tuple[pl.Series, pl.Series]:
    """The columns `grade` and `possible` of sets of grades, as bits, bit 0 the best."""
    different = range(1 << len(names)) if len(names) <= _MOST_TABLED else bits.unique().to_list()
    words = [[name for i, name in enumerate(names) if chosen >> i & 1] for chosen in different]
    alone = pl.Series([one[0] if len(one) == 1 else None for one in words], dtype=pl.Enum(names))
    sets = pl.Series(["|".join(one) or None for one in words], dtype=_type_of_sets(names))
    if len(names) <= _MOST_TABLED:
        return alone.gather(bits), sets.gather(bits)
    told = pl.DataFrame({"bits": pl.Series(different, dtype=bits.dtype), "alone": alone, "sets": sets})
    found = pl.DataFrame({"bits": bits}).join(told, on="bits", how="left", maintain_order="left")
    return found["alone"], found["sets"]


class _Grades:
    """The columns `grade` and `possible`. read: the values that they read."""

    def __init__(self, names: Sequence[str], program: FrameProgram) -> None:
        self.names = names
        self.planes = program.possible
        self.open = [place for place, plane in enumerate(self.planes) if not plane.constant]
        self.read: list[Value] = list(self.planes)
        if self.open and len(names) <= _MOST_TABLED:
            planes = [self.planes[place] for place in self.open]
            self.read = [program.evaluation.tracer.pack(planes, [2] * len(planes))] * 2

    def columns(self, columns: Columns) -> Iterator[pl.Expr]:
        """Both columns."""
        if len(self.names) > _MOST_TABLED:
            yield from self._written_out([columns.column(plane) for plane in self.planes])
            return
        known = [place for place, plane in enumerate(self.planes) if plane.constant and plane.data]
        sets = [
            sorted([*known, *(place for place, there in zip(self.open, code, strict=True) if there)])
            for code in product((False, True), repeat=len(self.open))
        ]
        alone = [self.names[one[0]] if len(one) == 1 else None for one in sets]
        words = ["|".join(self.names[place] for place in one) or None for one in sets]
        for name, found, kind in (
            ("grade", alone, pl.Enum(self.names)),
            ("possible", words, _type_of_sets(self.names)),
        ):
            if self.open:
                yield pl.lit(pl.Series(found, dtype=kind)).gather(columns.column(self.read[0])).alias(name)
            else:
                yield pl.lit(found[0], kind).alias(name)

    def _written_out(self, planes: Sequence[pl.Expr]) -> Iterator[pl.Expr]:
        words = [pl.when(plane).then(pl.lit(name)) for plane, name in zip(planes, self.names, strict=True)]
        possible = pl.concat_str(words, separator="|", ignore_nulls=True)
        alone = pl.sum_horizontal([plane.cast(pl.UInt32) for plane in planes]) == 1
        yield pl.when(alone).then(possible).cast(pl.Enum(list(self.names))).alias("grade")
        yield possible.alias("possible")
