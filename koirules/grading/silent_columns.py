"""Fills in what silence means over the columns of a frame, as `grading/silence.py` does record by record."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from functools import reduce
from operator import or_
from typing import TYPE_CHECKING, Any

from attrs import evolve

from koirules.engines.columnar.codes import fits_codes, is_there
from koirules.engines.columnar.reading import ReadFrame
from koirules.grading.silence import SilenceFiller, within
from koirules.measures.deriving import apart
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.rounds.columnar.earlier import LooksOfRows
from koirules.rounds.columnar.of_nodes import NodeColumns
from koirules.rounds.columnar.rows import Rows, columns_of
from koirules.standard.derivations import TypedFormula
from koirules.standard.parts import SilentTrait
from koirules.standard.reading_nodes import written_key
from koirules.values import frozen
from koirules.vocabulary.readings import Reading, Span

if TYPE_CHECKING:
    import polars as pl


SILENCE_COLUMNS = ("assumed", "rests_on_silence")
"""The columns of results that tell of silence."""


def with_silence(filler: SilenceFiller, read: ReadFrame, rows: int, looks: LooksOfRows | None = None) -> ReadFrame:
    """A frame that was read, with its silent traits, and for each a column that says in which rows it was silent.

    looks: which rows are of the same fish. What was written stands under a key of its own.
    """
    read = with_written(filler, read)
    return _Filling(filler, read, rows, looks).filled()


def with_written(filler: SilenceFiller, read: ReadFrame) -> ReadFrame:
    """A frame with what was written of each trait of which silence means something under its key."""
    written = {written_key(name): read.held.get(name, NoColumn()) for name in filler.rules.silence}
    return evolve(read, held={**read.held, **written})


def as_written(filler: SilenceFiller, read: ReadFrame) -> ReadFrame:
    """A frame as it was written, without what silence filled in and what grew from that."""
    silent = {name: read.held[written_key(name)] for name in filler.rules.silence}
    held = {key: how for key, how in read.held.items() if key not in filler.grown}
    grown = [name for key in filler.grown & read.held.keys() for name in columns_of(read.held[key])]
    return evolve(read, columns=read.columns.drop(grown), held={**held, **silent})


def assumed_column(name: str) -> str:
    """The column that says in which rows a trait was silent."""
    return f"silent {name}"


def told_of_silence(filler: SilenceFiller, columns: pl.DataFrame, possible: pl.Series) -> pl.DataFrame:
    """The columns `assumed` (names parted by `|`, "" for none) and `rests_on_silence` of results.

    columns: with those of `assumed_column`. possible: the grades that would be possible without silence, parted by `|`.
    """
    import polars as pl

    named = [
        pl.when(pl.col(assumed_column(name))).then(pl.lit(name))
        for name in filler.rules.silence
        if name in filler.told and assumed_column(name) in columns.columns
    ]
    if not named:
        nobody = pl.Series("assumed", [""], dtype=pl.String).new_from_index(0, len(possible))
        rests = pl.Series("rests_on_silence", [False]).new_from_index(0, len(possible))
        return pl.DataFrame([nobody.alias("assumed"), rests.alias("rests_on_silence")])
    assumed = columns.select(pl.concat_str(named, separator="|", ignore_nulls=True).alias("assumed"))["assumed"]
    several = possible.cast(pl.String).str.contains("|", literal=True)
    return pl.DataFrame([assumed, ((assumed != "") & several).alias("rests_on_silence")])


@frozen
class _Filling:
    filler: SilenceFiller
    read: ReadFrame
    rows: int
    looks: LooksOfRows | None

    def filled(self) -> ReadFrame:
        """The frame with its silent traits."""
        columns: list[pl.Series] = []
        held = dict(self.read.held)
        unless = self._unless()
        for number, (name, one) in enumerate(self.filler.rules.silence.items()):
            if name not in self.filler.needed:
                continue
            silent = self._looked() & ~self._known(name) & ~self._contradicted(one)
            if name in self.read.cannot_tell:
                silent &= ~self.read.cannot_tell[name]
            if name in unless:
                silent &= ~unless[name]
            if self.looks is not None:
                silent &= ~self._said_otherwise(one, self.looks)
            made, held[name] = self._put(one, silent, f"silence{number}")
            columns += [*made, silent.alias(assumed_column(name))]
        frame = self.read.columns
        return evolve(self.read, columns=frame.hstack(columns) if frame.width else _frame(columns), held=held)

    def _all(self, value: bool) -> pl.Series:
        import polars as pl

        return pl.Series([value]).new_from_index(0, self.rows)

    def _looked(self) -> pl.Series:
        seen = [column for name, column in self.read.recorded.items() if name in self.filler.by_eye]
        looked = reduce(or_, seen, self._all(value=False))
        return looked if self.read.looked is None else self.read.looked.zip_with(self.read.looked.is_not_null(), looked)

    def _there(self, name: str) -> pl.Series:
        """In which rows there is a reading of a trait."""
        how = self.read.held.get(name, NoColumn())
        return self._all(value=False) if isinstance(how, NoColumn) else is_there(self.read.columns[how.name], how)

    def _known(self, name: str) -> pl.Series:
        """In which rows a trait was recorded, or follows from traits that were all recorded."""
        recorded = self.read.recorded.get(name)
        recorded = self._all(value=False) if recorded is None else recorded
        measure = self.filler.measured_by.get(name)
        if measure is None:
            return recorded
        follows = self._there(name)
        for needed in measure.inputs if isinstance(measure, TypedFormula) else ():
            follows &= self._known(needed)
        return recorded | follows

    def _unless(self) -> Mapping[str, pl.Series]:
        """By trait the rows in which the condition of its `unless` is a sure yes."""
        silence = self.filler.rules.silence
        nodes = {name: one.unless for name, one in silence.items() if one.unless is not None}
        if not nodes:
            return {}
        frame = Rows(self.read.columns, dict(self.read.held), self.rows)
        made = NodeColumns.of(self.filler.rules, self.filler.settings, frame, list(nodes.values()), graded=False)
        for name, node in nodes.items():
            made.ask(name, made.column(made.ends(node).first))
        found = made.collect()
        return {name: found[name].fill_null(value=False) for name in nodes}

    def _contradicted(self, one: SilentTrait) -> pl.Series:
        """In which rows what is derived of a trait from less than all cannot be what silence means."""
        return self._where(one, lambda reading: apart(reading, one.reading))

    def _said_otherwise(self, one: SilentTrait, looks: LooksOfRows) -> pl.Series:
        """In which rows an earlier look at the fish recorded something that silence does not mean."""
        recorded = self.read.recorded.get(one.trait.name)
        if recorded is None:
            return self._all(value=False)
        otherwise = self._where(one, lambda reading: not within(reading, one.reading)) & recorded
        found = before = otherwise.gather(looks.before).fill_null(value=False)
        while before.any():
            before = before.gather(looks.before).fill_null(value=False)
            found = found | before
        return found

    def _where(self, one: SilentTrait, holds: Any) -> pl.Series:
        """The rows in which something holds of the reading of a trait; no row without a reading."""
        import polars as pl

        match self.read.held.get(one.trait.name, NoColumn()):
            case NumberColumn() as how:
                low = self.read.columns[how.name]
                ends = pl.DataFrame({"low": low, "high": self.read.columns[how.high] if how.high else low})
                different = ends.drop_nulls().unique()
                said = [holds(Span(*row)) for row in different.iter_rows()]
                told = different.with_columns(said=pl.Series(said, dtype=pl.Boolean))
                return ends.join(told, on=["low", "high"], how="left", maintain_order="left")["said"].fill_null(
                    value=False
                )
            case CodeColumn() as how:
                table = pl.Series(
                    [reading is not None and holds(reading) for reading in how.readings], dtype=pl.Boolean
                )
                return table.gather(_codes(self.read.columns[how.name])).fill_null(value=False)
            case _:
                return self._all(value=False)

    def _put(self, one: SilentTrait, silent: pl.Series, name: str) -> tuple[list[pl.Series], Held]:
        """The columns of a trait with what silence means in the rows where it is silent."""
        import polars as pl

        how = self.read.held.get(one.trait.name, NoColumn())
        if isinstance(one.reading, Span):
            least, most = one.reading
            low = high = pl.Series([None], dtype=pl.Float64).new_from_index(0, self.rows)
            if isinstance(how, NumberColumn):
                low = self.read.columns[how.name]
                high = self.read.columns[how.high] if how.high else low
            low, high = (_where(silent, end, old) for end, old in ((least, low), (most, high)))
            stretched = bool((low != high).any())
            made = [low.alias(name), *([high.alias(f"{name}h")] if stretched else [])]
            return made, NumberColumn(name, low.null_count() > 0, f"{name}h" if stretched else "")
        readings: tuple[Reading | None, ...] = ()
        codes = pl.Series([None], dtype=pl.UInt8).new_from_index(0, self.rows)
        if isinstance(how, CodeColumn):
            readings, codes = how.readings, _codes(self.read.columns[how.name])
        wide = codes.cast(fits_codes(len(readings) + 1))
        made_codes = _where(silent, len(readings), wide).cast(wide.dtype).alias(name)
        return [made_codes], CodeColumn(name, (*readings, one.reading), made_codes.null_count() > 0)


def _codes(column: pl.Series) -> pl.Series:
    import polars as pl

    return column.cast(pl.UInt32)


def _where(rows: pl.Series, value: float, otherwise: pl.Series) -> pl.Series:
    import polars as pl

    column = pl.Series([value]).new_from_index(0, len(rows)).cast(otherwise.dtype)
    return column.zip_with(rows, otherwise)


def _frame(columns: Collection[pl.Series]) -> pl.DataFrame:
    import polars as pl

    return pl.DataFrame(list(columns))
