"""The derived traits of a frame: formulas over whole columns from the operations table, other measures over its readings.

What comes out is what `koirules.measures` gives for a single fish, to the last digit.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from koirules.engines.columnar.codes import fits_codes
from koirules.engines.columnar.doubles import divided
from koirules.engines.columnar.plan import Columns
from koirules.measures.deriving import APART, Derived, Doubt, Measurer
from koirules.measures.formulas import MILLION
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.standard.derivations import TypedFormula, inputs_of
from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Reading, Span, anything, show_reading
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    import polars as pl

_MOST_DOUBTS = 200
"""So many doubts about one trait are told of a frame; the rest are of the same kind."""


class MeasuredFrame:
    """A frame that is being measured. columns, held: as they were read, and what has been derived so far."""

    def __init__(self, measurer: Measurer, columns: pl.DataFrame, held: Mapping[str, Held], rows: int) -> None:
        self.measurer = measurer
        self.columns = columns
        self.held = dict(held)
        self.rows = rows
        self.found = Derived({})

    def derive(self) -> None:
        """Derive all that is wanted."""
        for number, measure in enumerate(self.measurer.measures):
            names = [name for name in inputs_of(measure) if self._is_there(name)]
            if not names or not (isinstance(measure, TypedFormula) or self._are_there(measure.inputs)):
                continue
            if isinstance(measure, TypedFormula) and isinstance(measure.trait.kind, Number | Count):
                self._work_out(measure, f"m{number}")
            else:
                self._derive(number, measure, names)

    def _is_there(self, name: str) -> bool:
        return not isinstance(self.held.get(name, NoColumn()), NoColumn)

    def _are_there(self, names: Sequence[str]) -> bool:
        return all(self._is_there(name) for name in names)

    def _work_out(self, formula: TypedFormula, name: str) -> None:
        import polars as pl

        columns = Columns.of_formula(formula.node, self.measurer.constants, self.held)
        first, last = columns.ends(formula.node).first, columns.ends(formula.node).last
        ends = [_millionth(columns.column(end)).alias(f"{name}{i}") for i, end in enumerate((first, last))]
        there = pl.any_horizontal([self._recorded(trait) for trait in formula.inputs if self._is_there(trait)])
        made = columns.collect(self.columns, self.rows, [*ends, there.alias("there")])
        low, high = made[f"{name}0"], made[f"{name}1"]
        reach = anything(formula.trait.kind)
        if not isinstance(reach, Span):
            raise AssertionError("a number without a range")
        outside = made["there"] & ((low > reach.high) | (high < reach.low))
        low, high = low.clip(reach.low, reach.high), high.clip(reach.low, reach.high)
        open_ = ~made["there"] | outside | ((low == reach.low) & (high == reach.high))
        self._settle(formula, name, (low.set(open_, None), high.set(open_, None)), outside.arg_true(), made)

    def _settle(
        self,
        formula: TypedFormula,
        name: str,
        ends: tuple[pl.Series, pl.Series],
        outside: pl.Series,
        made: pl.DataFrame,
    ) -> None:
        trait = formula.trait
        low, high = ends
        written = self._ends(trait)
        if written is not None:
            least, most = written
            gap = _larger(least - high, low - most)
            size = _larger(_larger(least.abs(), most.abs()), _larger(low.abs(), high.abs()))
            for row in (gap > APART * size).arg_true()[:_MOST_DOUBTS]:
                derived = show_reading(trait.kind, Span(low[row], high[row]))
                self._doubt(row, trait, Span(least[row], most[row]), derived, formula.inputs)
            blank = least.is_null()
            low, high = low.zip_with(blank, least), high.zip_with(blank, most)
        for row in outside[:_MOST_DOUBTS]:
            if written is None or written[0][row] is None:
                one, other = made[f"{name}0"][row], made[f"{name}1"][row]
                reach = anything(trait.kind)
                end = one if isinstance(reach, Span) and one > reach.high else other
                self._doubt(row, trait, None, show_reading(trait.kind, Span(end, end)), formula.inputs)
        self._hold_numbers(trait, name, low, high)

    def _derive(self, number: int, measure: Any, names: Sequence[str]) -> None:
        """Let the measure do what it does for single fish, over the readings of the columns."""
        given = {name: self._readings(name) for name in names}
        outputs = self.measurer.outputs(measure)
        given |= {name: self._readings(name) for name in outputs if self._is_there(name)}
        derived = self.measurer.derive_by(measure, given, self.rows)
        self.found.doubts += derived.doubts
        self.found.wrong += derived.wrong
        self.found.failed += derived.failed
        for i, name in enumerate(sorted(outputs)):
            column = derived.columns.get(name)
            if column is not None:
                self._hold(self.measurer.traits[name], f"m{number}o{i}", column)

    def _hold(self, trait: Trait, name: str, column: Sequence[Reading | None]) -> None:
        import polars as pl

        if isinstance(trait.kind, Number | Count):
            ends = zip(*((None, None) if reading is None else reading for reading in column), strict=True)
            low, high = (pl.Series(list(end), dtype=pl.Float64) for end in ends) if column else (pl.Series([]),) * 2
            self._hold_numbers(trait, name, low, high)
            return
        codes: dict[Reading, int] = {}
        numbered = [None if reading is None else codes.setdefault(reading, len(codes)) for reading in column]
        series = pl.Series(name, numbered, dtype=fits_codes(len(codes)))
        self.columns = self.columns.with_columns(series)
        self.held[trait.name] = CodeColumn(name, tuple(codes), series.null_count() > 0)

    def _hold_numbers(self, trait: Trait, name: str, low: pl.Series, high: pl.Series) -> None:
        stretched = bool((low != high).any())
        self.columns = self.columns.with_columns(low.alias(name), *([high.alias(f"{name}h")] if stretched else []))
        self.held[trait.name] = NumberColumn(name, low.null_count() > 0, f"{name}h" if stretched else "")

    def _ends(self, trait: Trait) -> tuple[pl.Series, pl.Series] | None:
        held = self.held.get(trait.name)
        if not isinstance(held, NumberColumn):
            return None
        low = self.columns[held.name]
        return low, self.columns[held.high] if held.high else low

    def _readings(self, name: str) -> list[Reading | None]:
        held = self.held[name]
        if isinstance(held, CodeColumn):
            return [None if code is None else held.readings[code] for code in self.columns[held.name].to_list()]
        if not isinstance(held, NumberColumn):
            raise AssertionError("readings of a trait that no row has")
        low = self.columns[held.name].to_list()
        high = self.columns[held.high].to_list() if held.high else low
        return [None if one is None else Span(one, other) for one, other in zip(low, high, strict=True)]

    def _recorded(self, name: str) -> pl.Expr:
        import polars as pl

        held = self.held[name]
        if isinstance(held, NoColumn):
            raise AssertionError("a trait that no row has")
        return pl.col(held.name).is_not_null()

    def _doubt(self, row: int, trait: Trait, written: Reading | None, derived: str, inputs: tuple[str, ...]) -> None:
        self.found.doubts.append(Doubt(row, trait.name, written, derived, inputs))


def _larger(one: pl.Series, other: pl.Series) -> pl.Series:
    """The larger of two columns, row by row; null where either is."""
    return one.zip_with(one >= other, other)


def _millionth(end: pl.Expr) -> pl.Expr:
    return divided((end * MILLION + 0.5).floor(), MILLION)
