"""Reads columns of numbers and counts into doubles of the held unit.

A value is plain where its double is surely what the reader of single values would give: looked at as whole columns. The
others are read one by one, each different value once.
"""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING, Any

from koirules.engines.columnar.doubles import divided
from koirules.engines.columnar.glances import TINY, Glance
from koirules.program.held import NumberColumn
from koirules.results.mapping_record import doubles_between
from koirules.vocabulary.cells import CannotTell, Misread, read_cell
from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.quantities import may_be_part_of_one
from koirules.vocabulary.readings import Reading, Span
from koirules.vocabulary.units import Unit

if TYPE_CHECKING:
    import polars as pl

_PLAIN = r"^-?(?:0|[1-9][0-9]{0,8})(?:\.[0-9]{1,6})?$"
_EXACT = 2.0**53
_MILLION = 1_000_000
_MOST_OF_THEM = 10**15
"""Below so many millionths a double that is nearest to a whole number of them is written as that number."""

Misreads = list[tuple[int, Misread]]
"""Rows, from 0, with what is wrong in them."""


def value_key(value: Any) -> Any:
    """What tells values apart, whatever they are: a text by itself, anything else by its type too."""
    if isinstance(value, str):
        return value
    try:
        hash(value)
    except TypeError:
        return type(value), repr(value)
    return type(value), value


def doubles_of(series: pl.Series) -> pl.Series:
    """The doubles of a column of numbers, or of texts that are plain numbers; null for any other value."""
    import polars as pl

    if series.dtype.is_integer() or series.dtype.is_float():
        return series.cast(pl.Float64)
    if series.dtype == pl.String:
        return series.set(~series.str.contains(_PLAIN), None).cast(pl.Float64) + 0.0
    return pl.Series([None] * len(series), dtype=pl.Float64)


def read_numbers(
    kind: Number | Count, series: pl.Series, doubles: pl.Series, glance: Glance, unit: Unit | None, name: str
) -> tuple[list[pl.Series], NumberColumn, Misreads]:
    """The held doubles of a column, with a second column where some values are stretches, and the rows that are wrong.

    doubles, glance: what `doubles_of` and `glances` give of the series.
    """
    given = series
    if glance.nans:
        doubles = doubles.fill_nan(None)
        given = doubles if series.dtype.is_float() else series
    low = _plain(kind, doubles, glance, kind.unit if isinstance(kind, Number) and unit is None else unit)
    if may_be_part_of_one(kind) and glance.least is not None and glance.least <= 1 and glance.shares:
        # Each of them is read closely: without a unit 0.45 may be 45 % or 0.45 %.
        shares = (low > 0) & (low <= 1)
        low = low.set(shares.fill_null(value=False), None) if shares.any() else low
    high, found = low, Misreads()
    if low.null_count() > given.null_count():
        low, high, found = _read_odd(kind, series, unit, low, (low.is_null() & given.is_not_null()).arg_true())
    columns = [low.alias(name)]
    stretched = high is not low and bool((high != low).any())
    if stretched:
        columns.append(high.alias(f"{name}h"))
    return columns, NumberColumn(name, low.null_count() > 0, f"{name}h" if stretched else ""), found


def _plain(kind: Number | Count, doubles: pl.Series, glance: Glance, unit: Unit | None) -> pl.Series:
    """The held values that are plain; null for the others."""
    if isinstance(kind, Number) and unit is not None and not unit.is_held:
        return _converted(kind, doubles, unit)
    if isinstance(kind, Count):
        low, high = 0.0, float(kind.high)
    else:
        low, high = doubles_between(kind.held_low, kind.held_high)
    if glance.least is None or glance.most is None:
        return doubles
    if glance.least >= low and glance.most <= high and not glance.tiny and not glance.parts:
        return doubles
    bad = (doubles < low) | (doubles > high)
    if isinstance(kind, Count):
        return doubles.set(bad | (doubles.floor() != doubles), None)
    return doubles.set(bad | ((doubles != 0) & (doubles.abs() <= TINY)), None)


def _converted(kind: Number, doubles: pl.Series, unit: Unit) -> pl.Series:
    """The held values of whole millionths of another unit: the quotient of two whole numbers, rounded once."""
    import polars as pl

    factor = unit.exact
    up, over = factor.numerator, factor.denominator * _MILLION
    x = pl.col("x")
    whole = (x * float(_MILLION) + 0.5).floor()
    times = whole * float(up)
    low, high = (Fraction(end) * over for end in (kind.held_low, kind.held_high))
    plain = (
        (divided(whole, float(_MILLION)) == x)
        & (whole.abs() < float(_MOST_OF_THEM))
        & (times.abs() < _EXACT)
        & (times >= float(-(-low // 1)))
        & (times <= float(high // 1))
    )
    if over >= _EXACT:
        return pl.Series([None] * len(doubles), dtype=pl.Float64)
    frame = pl.DataFrame({"x": doubles})
    return frame.select(pl.when(plain).then(divided(times, float(over)) + 0.0).alias("x"))["x"]


def _read_odd(
    kind: Number | Count, series: pl.Series, unit: Unit | None, low: pl.Series, rows: pl.Series
) -> tuple[pl.Series, pl.Series, Misreads]:
    values = series.gather(rows).to_list()
    read: dict[Any, Reading | Misread | CannotTell | None] = {}
    lows: list[float | None] = []
    highs: list[float | None] = []
    found: Misreads = []
    for row, value in zip(rows, values, strict=True):
        key = value_key(value)
        if key not in read:
            read[key] = read_cell(kind, value, unit)
        reading = read[key]
        if isinstance(reading, Misread):
            found.append((row, reading))
        one, other = reading if isinstance(reading, Span) else (None, None)
        lows.append(one)
        highs.append(other)
    high = low.clone()
    return low.scatter(rows, lows), high.scatter(rows, highs), found
