"""Reads the columns of a frame into codes and doubles; every cell that cannot be read becomes a problem.

Whatever the type of a column, a value is read as the reader of single values reads it: texts by their different values,
each once; numbers and truths as whole columns where it is plain that nothing else can come of it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import reduce
from operator import or_
from typing import TYPE_CHECKING, Any

from attrs import evolve, field

from koirules.engines.columnar.codes import fits_codes, is_there
from koirules.engines.columnar.glances import Glance, glances
from koirules.engines.columnar.measured import MeasuredFrame
from koirules.engines.columnar.numbers import doubles_of, read_numbers, value_key
from koirules.measures.deriving import Doubt, Measurer
from koirules.problems import Problem
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.values import define, frozen
from koirules.vocabulary.cells import CannotTell, Misread, read_cell, read_value
from koirules.vocabulary.kinds import Count, Kind, Label, Number, YesNo, words_of
from koirules.vocabulary.readings import NO, YES, Reading, Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit

if TYPE_CHECKING:
    import polars as pl


@frozen
class Source:
    """Where a trait is read from: the column of the frame, and the unit of its numbers (None: the trait's own)."""

    column: str
    unit: Unit | None = None


@frozen
class WrongCell:
    """A cell that cannot be read: its column, its row (from 0), and what is wrong with it."""

    column: str
    row: int
    misread: Misread


@frozen
class ReadFrame:
    """What was read of a frame: columns of codes and doubles, how each trait is held, and the cells that are wrong.

    doubts: what is doubtful of derived traits. failed: measures that could not be carried out at all. looked: which rows are of
    fish that somebody looked at; recorded: by trait the rows in which it was recorded and not derived; cannot_tell: those in
    which the sorter could not tell it. These three stand there where silence means something.
    """

    columns: pl.DataFrame
    held: Mapping[str, Held]
    wrong: tuple[WrongCell, ...]
    doubts: tuple[Doubt, ...] = ()
    failed: tuple[Problem, ...] = ()
    looked: pl.Series | None = None
    recorded: Mapping[str, pl.Series] = field(factory=dict)
    cannot_tell: Mapping[str, pl.Series] = field(factory=dict)


@define
class _Texts:
    """The different values of a column so far, in the order in which they were met, each with what it was read as."""

    codes: dict[Any, int] = field(factory=dict)
    read: list[Reading | Misread | CannotTell | None] = field(factory=list)

    def learn(self, kind: Kind, values: Iterable[Any]) -> None:
        """Read the values that are new."""
        for value in values:
            key = value_key(value)
            if key not in self.codes:
                self.codes[key] = len(self.read)
                self.read.append(read_cell(kind, value))


@define
class FrameReader:
    """Reads the frames of one batch, piece by piece; what a text means is remembered from one piece to the next.

    traits: those that may be named. sources: where each is found. needed: those that the standard reads; the others are
    read too, so that what is wrong in them is told. measurer: what derives the others. noticed: the traits of which it is told in
    which rows they were recorded, empty where silence means nothing. look: what takes a glance at columns of numbers. lot: what
    holds for every row that says nothing of a trait itself: it counts as recorded, and as no look.
    """

    traits: Mapping[str, Trait]
    sources: Mapping[str, Source]
    needed: frozenset[str]
    measurer: Measurer
    noticed: frozenset[str] = frozenset()
    look: Callable[[Sequence[tuple[pl.Series, bool]]], list[Glance]] = glances
    lot: Mapping[str, Reading | CannotTell] = field(factory=dict)
    _texts: dict[str, _Texts] = field(factory=dict)

    def read(self, frame: pl.DataFrame, untold: Mapping[str, pl.Series] | None = None) -> ReadFrame:
        """Read the columns that hold traits. untold: by trait the rows of which it is said that nobody could tell it."""
        import polars as pl

        held: dict[str, Held] = {name: NoColumn() for name in self.needed}
        taken = self.needed | self.measurer.inputs
        columns: list[pl.Series] = []
        wrong: list[WrongCell] = []
        recorded: dict[str, pl.Series] = {}
        cannot_tell: dict[str, pl.Series] = dict(untold or {})
        numbers = self._numbers(frame)
        for number, (name, source) in enumerate(self.sources.items()):
            kind, series = self.traits[name].kind, frame[source.column]
            if series.null_count() == len(series) or (isinstance(kind, Label) and name not in taken):
                continue
            made: list[pl.Series]
            how: Held
            if isinstance(kind, Number | Count):
                doubles, glance = numbers[name]
                made, how, found = read_numbers(kind, series, doubles, glance, source.unit, f"n{number}")
            else:
                codes, how, found = self._read_codes(self.traits[name], series, f"c{number}")
                made = [codes]
            wrong.extend(WrongCell(source.column, row, misread) for row, misread in found)
            if name in taken:
                held[name] = how
                columns.extend(made)
            if name in self.noticed or name in self.lot:
                recorded[name] = is_there(made[0], how)
                marked = _untold(series)
                if marked is not None:
                    cannot_tell[name] = cannot_tell[name] | marked if name in cannot_tell else marked
        seen = [column for name, column in recorded.items() if self.traits[name].by_eye]
        by_name = {column.name: column for column in columns}
        for number, (name, reading) in enumerate(self.lot.items()):
            nobody = pl.Series([False]).new_from_index(0, frame.height)
            silent = ~recorded.get(name, nobody) & ~cannot_tell.get(name, nobody)
            if isinstance(reading, CannotTell):
                cannot_tell[name] = cannot_tell.get(name, nobody) | silent
                continue
            recorded[name] = recorded.get(name, nobody) | silent
            if name in taken:
                held[name], made = _of_lot(reading, silent, held.get(name, NoColumn()), by_name, f"l{number}")
                by_name |= {column.name: column for column in made}
        read = ReadFrame(pl.DataFrame(list(by_name.values())), held, tuple(wrong))
        measured = self._measured(read, frame.height)
        if not self.noticed:
            return measured
        looked = reduce(or_, seen, pl.Series([False]).new_from_index(0, frame.height)) if self.lot else None
        return evolve(measured, looked=looked, recorded=recorded, cannot_tell=cannot_tell)

    def _measured(self, read: ReadFrame, rows: int) -> ReadFrame:
        """A frame with its derived traits, and without what only these were read from."""
        if not self.measurer.measures:
            return read
        frame = MeasuredFrame(self.measurer, read.columns, read.held, rows)
        frame.derive()
        held = {name: how for name, how in frame.held.items() if name in self.needed}
        wrong = [WrongCell(self.sources[w.trait].column, w.fish, w.misread) for w in frame.found.wrong]
        doubts = tuple(frame.found.doubts)
        return ReadFrame(frame.columns, held, (*read.wrong, *wrong), doubts, tuple(frame.found.failed))

    def _numbers(self, frame: pl.DataFrame) -> dict[str, tuple[pl.Series, Glance]]:
        """The doubles of every column of numbers, with a glance at each."""
        named = {
            name: (doubles_of(frame[source.column]), isinstance(self.traits[name].kind, Count))
            for name, source in self.sources.items()
            if isinstance(self.traits[name].kind, Number | Count)
        }
        found = self.look(list(named.values()))
        return {name: (doubles, glance) for (name, (doubles, _)), glance in zip(named.items(), found, strict=True)}

    def _read_codes(
        self, trait: Trait, series: pl.Series, name: str
    ) -> tuple[pl.Series, CodeColumn, list[tuple[int, Misread]]]:
        import polars as pl

        holes = series.null_count() > 0
        if isinstance(trait.kind, YesNo) and series.dtype == pl.Boolean:
            return series.alias(name), CodeColumn(name, (NO, YES), holes, truth=True), []
        if isinstance(series.dtype, pl.Enum):
            # The codes of its categories are there already.
            read = [read_cell(trait.kind, word) for word in series.dtype.categories]
            codes = series.to_physical()
        else:
            texts = self._texts_of(trait)
            if series.dtype in {pl.String, pl.Categorical}:
                words = series.cast(pl.String)
                texts.learn(trait.kind, words.drop_nulls().unique(maintain_order=True))
                codes = words.cast(pl.Enum(list(texts.codes))).to_physical()
            else:
                values = series.to_list()
                texts.learn(trait.kind, (value for value in values if value is not None))
                numbered = [None if value is None else texts.codes[value_key(value)] for value in values]
                codes = pl.Series(numbered, dtype=fits_codes(len(texts.read)))
            read = list(texts.read)
        found = _misread(codes, read)
        known = tuple(None if isinstance(reading, Misread | CannotTell) else reading for reading in read)
        return codes.alias(name), CodeColumn(name, known, holes), found

    def _texts_of(self, trait: Trait) -> _Texts:
        """What is known of the texts of a trait; a label may be any text, so nothing of it is kept."""
        if isinstance(trait.kind, Label):
            return _Texts()
        texts = self._texts.get(trait.name)
        if texts is None:
            texts = self._texts[trait.name] = _Texts()
            texts.learn(trait.kind, words_of(trait.kind))
        return texts


def _of_lot(
    reading: Reading, silent: pl.Series, how: Held, columns: Mapping[str, pl.Series], name: str
) -> tuple[Held, list[pl.Series]]:
    """How a trait is held, and its columns, with what holds for the lot in the rows that say nothing of it."""
    import polars as pl

    if isinstance(reading, Span):
        if isinstance(how, CodeColumn):
            raise AssertionError("codes of a number")
        none = pl.Series([None], dtype=pl.Float64).new_from_index(0, len(silent))
        low = none if isinstance(how, NoColumn) else columns[how.name]
        high = columns[how.high] if isinstance(how, NumberColumn) and how.high else low
        ends = [
            pl.select(pl.when(silent).then(pl.lit(at)).otherwise(end)).to_series()
            for end, at in ((low, reading.low), (high, reading.high))
        ]
        own = how.name if isinstance(how, NumberColumn) else name
        above = (how.high if isinstance(how, NumberColumn) else "") or f"{own}h"
        made = [ends[0].alias(own), *([] if ends[0].equals(ends[1]) else [ends[1].alias(above)])]
        return NumberColumn(own, ends[0].null_count() > 0, above if len(made) > 1 else ""), made
    if isinstance(how, NumberColumn):
        raise AssertionError("a number of a trait that has none")
    codes = columns[how.name] if isinstance(how, CodeColumn) else pl.Series([None], dtype=pl.UInt8)
    known = how.readings if isinstance(how, CodeColumn) else ()
    if isinstance(how, NoColumn):
        codes = codes.new_from_index(0, len(silent))
    codes = codes.cast(fits_codes(len(known) + 1))
    filled = pl.select(pl.when(silent).then(pl.lit(len(known), codes.dtype)).otherwise(codes)).to_series()
    own = how.name if isinstance(how, CodeColumn) else name
    return CodeColumn(own, (*known, reading), filled.null_count() > 0), [filled.alias(own)]


def read_looked(series: pl.Series) -> tuple[pl.Series, list[WrongCell]]:
    """Whether somebody looked at the fish of each row, null where that is not said; and the cells that say neither yes nor no."""
    import polars as pl

    if series.dtype == pl.Boolean:
        return series, []
    read = {value: read_value(YesNo(), value) for value in series.unique().to_list()}
    said = [{YES: True, NO: False}.get(found) if isinstance(found := read[value], int) else None for value in series]
    wrong = [
        WrongCell(series.name, row, found)
        for row, value in enumerate(series.to_list())
        if isinstance(found := read[value], Misread)
    ]
    return pl.Series(series.name, said, dtype=pl.Boolean), wrong


def _untold(series: pl.Series) -> pl.Series | None:
    """In which rows of a column somebody wrote that they could not tell; None where nobody did."""
    import polars as pl

    if series.dtype in {pl.String, pl.Categorical} or isinstance(series.dtype, pl.Enum):
        found = series.cast(pl.String).str.strip_chars().is_in(["?", "？"]).fill_null(value=False)
        return found if found.any() else None
    return None


def _misread(codes: pl.Series, read: Sequence[Reading | Misread | CannotTell | None]) -> list[tuple[int, Misread]]:
    import polars as pl

    wrong = {code: reading for code, reading in enumerate(read) if isinstance(reading, Misread)}
    if not wrong:
        return []
    rows = codes.is_in(pl.Series(list(wrong), dtype=codes.dtype).implode()).arg_true()
    return [(row, wrong[codes[row]]) for row in rows]
