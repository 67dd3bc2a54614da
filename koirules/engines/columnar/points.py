"""The criteria of a section over columns: least points, and how much more there could be where something is open.

What reads one column of codes is added up in one table, weights and all; the rest is a product of its weight.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction
from typing import Any

from attrs import define, field

from koirules.engines.columnar.codes import looked_up, spread
from koirules.engines.columnar.curves import points_at, points_between
from koirules.engines.columnar.expressions import Expressions
from koirules.engines.columnar.held import CodeColumn
from koirules.engines.columnar.meaning import chosen, total
from koirules.engines.columnar.missing import Missing
from koirules.engines.columnar.packs import Packs
from koirules.engines.columnar.rounding import Line, rounded
from koirules.engines.columnar.values import Coded, Known, Millionths, Pair, Raw
from koirules.meaning.curves import Curve
from koirules.meaning.operators import MILLIONTHS
from koirules.standard.parts import Extra, Points, Section

_FEW_CODES = 24


@define
class _Sum:
    """A sum over columns in the making: least, and how much more it may be.

    known: what every row adds. tables: what each column of codes adds by code. lacks: what is to be added in rows where a
    column has a hole, where the rest counts some value of it. parts: the rest.
    """

    missing: Missing
    known: list[int] = field(factory=lambda: [0, 0])
    tables: dict[str, tuple[CodeColumn, list[int], list[int]]] = field(factory=dict)
    lacks: tuple[dict[str, int], dict[str, int]] = field(factory=lambda: ({}, {}))
    parts: tuple[list[Any], list[Any]] = field(factory=lambda: ([], []))

    def add_known(self, low: int, high: int) -> None:
        """Add what is the same for every row."""
        self.known[0] += low
        self.known[1] += high - low

    def add_coded(self, held: CodeColumn, spans: Sequence[tuple[int, int]]) -> None:
        """Add what a column of codes gives; the last of the spans is that of a hole."""
        *codes, (least, most) = spans
        _, low, more = self.tables.setdefault(held.name, (held, [0] * len(codes), [0] * len(codes)))
        for code, (one, other) in enumerate(codes):
            low[code] += one
            more[code] += other - one
        if held.holes:
            # The tables count a hole as their first code.
            first, last = codes[0] if codes else (0, 0)
            self.add_lack(held.name, least - first, (most - least) - (last - first))

    def add_lack(self, column: str, low: int, more: int) -> None:
        """Add what a hole in a column changes."""
        for lacks, amount in zip(self.lacks, (low, more), strict=True):
            lacks[column] = lacks.get(column, 0) + amount

    def add(self, low: Any, more: Any) -> None:
        """Add columns."""
        self.parts[0].append(low)
        self.parts[1].append(more)

    def packed(self) -> list[CodeColumn]:
        """The columns of codes whose tables may be put together."""
        return [held for held, *_ in self.tables.values() if not held.truth and len(held.readings) <= _FEW_CODES]

    def ends(self, packs: Packs) -> Pair:
        """The least of the sum and the most."""
        together = {held.name for held in self.packed()}
        low, more = ([*parts, known] for parts, known in zip(self.parts, self.known, strict=True))
        lows, mores = dict(self.lacks[0]), dict(self.lacks[1])
        packed: tuple[dict[str, list[int]], dict[str, list[int]]] = ({}, {})
        for name, (held, of_codes, more_of_codes) in self.tables.items():
            if name in together:
                first = of_codes[0] if of_codes else 0
                packed[0][name] = [*of_codes, first + lows.pop(name, 0)]
                packed[1][name] = [*more_of_codes, (more_of_codes[0] if more_of_codes else 0) + mores.pop(name, 0)]
            else:
                low.append(_of_code(held, of_codes))
                more.append(_of_code(held, more_of_codes))
        low += [*self.missing.total(lows), *packs.total(packed[0])]
        more += [*self.missing.total(mores), *packs.total(packed[1])]
        first, rest = total(low), total(more)
        if isinstance(rest, int | float) and not rest:
            return Pair(first, first)
        first = self.missing.stages.keep(first)
        return Pair(first, first + rest)


def _of_code(held: CodeColumn, values: Sequence[int]) -> Any:
    """The value of each code; a hole counts as the first of them."""
    if not values:
        return 0
    return looked_up(held, [float(value) for value in (*values, values[0])])


def points_by_section(columns: Expressions, sections: Iterable[Section]) -> dict[str, Pair]:
    """The hundredths of each section: columns of whole doubles, or numbers."""
    sums = {section.name: _sums(columns, section) for section in sections}
    packs = Packs(columns.stages)
    packs.pack({held.name: held for both in sums.values() for each in both for held in each.packed()}.values())
    made: dict[str, Pair] = {}
    for section in sections:
        points, extras = sums[section.name]
        made[section.name] = _section(section, points.ends(packs), extras.ends(packs))
    return made


def _sums(columns: Expressions, section: Section) -> tuple[_Sum, _Sum]:
    points, extras = _Sum(columns.missing), _Sum(columns.missing)
    for part in section.points:
        _add_points(points, columns, part)
    for extra in section.extras:
        _add_extra(extras, columns, extra)
    return points, extras


def _section(section: Section, points: Pair, extras: Pair) -> Pair:
    low = _hundredths(section, points.first, extras.first)
    if points.sure and extras.sure:
        return Pair(low, low)
    return Pair(low, _hundredths(section, points.second, extras.second))


def _hundredths(section: Section, points: Any, extras: Any) -> Any:
    # Bonuses and penalties are whole hundredths, so that they can be added after the rounding.
    share = Fraction(section.worth, section.divisor)
    if isinstance(points, int | float):
        given: Any = float((2 * section.worth * int(points) + section.divisor) // (2 * section.divisor))
    else:
        given = rounded(Line(0, share, 0, section.divisor), points)
    if not section.extras:
        return given
    whole = given + extras
    if isinstance(whole, int | float):
        return float(min(section.worth, max(0, whole)))
    return whole.clip(0.0, float(section.worth))


def _add_points(to: _Sum, columns: Expressions, part: Points) -> None:
    weight, shape = part.weight, part.shape
    read = columns.node(part.reads)
    match read:
        case Known(reading=reading):
            low, high = shape.span(*reading) if isinstance(shape, Curve) else shape.span(reading)
            to.add_known(weight * low, weight * high)
        case Coded(column=held, readings=readings):
            spans = [shape.span(*reading) if isinstance(shape, Curve) else shape.span(reading) for reading in readings]
            to.add_coded(held, [(weight * low, weight * high) for low, high in spans])
        case Pair() if isinstance(shape, Curve):
            _add_curve(to, shape, weight, read, max(map(abs, part.reads.range)))
        case Pair():
            _add_table(to, weight, [(1 << i, gives) for i, gives in enumerate(shape.gives)], read.first, sure=read.sure)


def _add_curve(to: _Sum, curve: Curve, weight: int, read: Pair, reach: int) -> None:
    if read.sure:
        to.add(points_at(curve, read.first, reach)[0] * float(weight), 0)
        return
    raw = read.first.of if isinstance(read.first, Millionths) else None
    if isinstance(raw, Raw) and raw.column is read.second.of.column:
        # One column with holes: one value where there is any, everything where there is none.
        least, most = curve.span(*(_end(end) for end in (read.first, read.second)))
        points, of_hole = points_at(curve, read.first, reach)
        to.add(points * float(weight), 0)
        to.add_lack(raw.column.meta.output_name(), weight * (least - of_hole), weight * (most - least))
        return
    least, most = points_between(curve, read.first, read.second, reach)
    to.add(least * float(weight), (most - least) * float(weight))


def _end(end: Millionths) -> int:
    if end.of.fill is None:
        raise AssertionError("a column without holes")
    return int(MILLIONTHS.range_of((end.of.fill, end.of.fill))[0])


def _add_table(to: _Sum, weight: int, rows: Iterable[tuple[int, int]], bits: Any, *, sure: bool) -> None:
    """A table over steps that come from several traits: the least and the most of the steps that are possible."""
    import polars as pl

    given = [pl.when(bits & bit != 0).then(pl.lit(float(weight * gives))) for bit, gives in rows]
    least = pl.min_horizontal(given)
    to.add(least, 0 if sure else pl.max_horizontal(given) - least)


def _add_extra(to: _Sum, columns: Expressions, extra: Extra) -> None:
    value = columns.node(extra.condition)
    amount = extra.sign * extra.amount
    if isinstance(value, Known | Coded):
        states = value.readings if isinstance(value, Coded) else (value.reading,)
        spans = [tuple(sorted((amount * surely, amount * possibly))) for surely, possibly in states]
        if isinstance(value, Coded):
            to.add_coded(value.column, spans)
        else:
            to.add_known(*spans[0])
        return
    pair = spread(value, extra.condition.type)
    surely = chosen(pair.first, float(amount), 0.0)
    if pair.sure:
        to.add(surely, 0)
        return
    possibly = chosen(pair.second, float(amount), 0.0)
    low, high = (surely, possibly) if amount > 0 else (possibly, surely)
    to.add(low, high - low)
