"""Runs machine code over the columns of a frame that was read, and puts the columns of its results together.

Nothing is copied on the way in but what does not lie as the code reads it: bitmaps that begin within a byte, columns in several
chunks, and the last few rows, which are filled up to a whole vector.
"""

from __future__ import annotations

import ctypes
import os
from collections.abc import Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from functools import lru_cache
from typing import TYPE_CHECKING, Any, assert_never

from attrs import field

from koirules.engines.columnar.outputs import sets_of_grades
from koirules.engines.compiled.arrow import Memory, Written, as_series, bits_from, taken
from koirules.engines.compiled.layout import (
    HUNDREDTHS,
    SET,
    THERE,
    TRUTHS,
    UPPER,
    VALUES,
    Entry,
    Layout,
    Slot,
    holds_always,
)
from koirules.engines.compiled.lowering import LANES
from koirules.engines.compiled.objects import Loaded
from koirules.program.graph import Value
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.program.profiles import Column, Looked, Profile, evaluated
from koirules.standard.parts import Rules
from koirules.values import define, frozen

if TYPE_CHECKING:
    import polars as pl

CHUNK = 1 << 16
"""So many rows a core does at once."""

_NOTHING = bytes(8 * LANES)
_EVERY = b"\xff" * LANES
"""A vector of rows without anything, and the bits of one in which all is there."""

_NO, _YES = 1, 2
_MOST_READINGS = 1 << 12


class OtherFrameError(Exception):
    """A frame that the code cannot be run over; says why in a few words."""


def profile_of(columns: Mapping[str, tuple[Column, Any]], frame: pl.DataFrame, held: Mapping[str, Held]) -> Profile:
    """The profile of a frame that was read. Raises OtherFrameError for what no profile has."""
    complete, stretched = True, set[str]()
    for key, (column, reach) in columns.items():
        match held.get(key, NoColumn()):
            case NoColumn():
                complete = False
            case NumberColumn(holes=holes, high=high):
                if column is not Column.NUMBERS:
                    raise OtherFrameError("numbers where words are read")
                complete = complete and not holes
                if high:
                    stretched.add(key)
            case CodeColumn() as how:
                if column is Column.NUMBERS:
                    raise OtherFrameError("words where numbers are read")
                complete = complete and not how.holes and _is_sure(how, frame, reach)
    return Profile(complete and not stretched, frozenset(stretched))


def _is_sure(how: CodeColumn, frame: pl.DataFrame, reach: Any) -> bool:
    """Whether every row of a column of codes without nulls has one value."""
    unsure = [code for code, reading in enumerate(how.readings) if not _is_one(reading, reach)]
    if not unsure:
        return True
    return not set(unsure) & set(frame[how.name].cast(_wide()).unique().to_list())


def _wide() -> Any:
    import polars as pl

    return pl.UInt32


def _is_one(reading: Any, reach: Any) -> bool:
    if reading is None:
        return False
    if isinstance(reach, tuple):
        return bool(reading[0] == reading[1])
    return reach is None or reading.bit_count() == 1


@frozen
class Results:
    """How results are named and typed. sections, faults: whether they are among them."""

    rules: Rules
    sections: bool
    faults: bool


@define(eq=False)
class Code:
    """Machine code with its layout, ready to run over frames of its profile."""

    layout: Layout
    loaded: Loaded
    results: Results
    _tables: dict[tuple[str, Sequence[Any]], list[tuple[int, bytes]]] = field(factory=dict)

    def run(self, frame: pl.DataFrame, held: Mapping[str, Held], rows: int) -> pl.DataFrame:
        """The columns of the results of a frame that was read. Raises OtherFrameError."""
        bound = _Bound(self.layout, frame, held, rows)
        tables = (ctypes.c_char * (4 * self.layout.table_words + 64))()
        for key, readings in bound.readings.items():
            for offset, contents in self._tables_of(key, readings):
                ctypes.memmove(ctypes.addressof(tables) + 4 * offset, contents, len(contents))
        bound.words[self.layout.tables_word] = ctypes.addressof(tables)
        memory = {slot: _memory(slot.what, self.layout.bytes_of_sets, rows) for slot in self.layout.written}
        for slot, buffer in memory.items():
            bound.words[slot.word] = buffer.block.address
        whole = rows - rows % LANES
        words = bound.array()
        run_all([(self.loaded, words, first, min(first + CHUNK, whole)) for first in range(0, whole, CHUNK)])
        if whole < rows:
            run_all([(self.loaded, bound.last_rows(whole), whole, rows)])
        return _Columns(self.layout, self.results, memory, rows).frame()

    def _tables_of(self, key: str, readings: tuple[Any, ...]) -> list[tuple[int, bytes]]:
        """The tables of a key for these readings: where they go, and what is in them."""
        known = self._tables.get((key, readings))
        if known is None:
            if len(self._tables) > _MOST_TABLES:
                self._tables.clear()
            known = self._tables[key, readings] = _filled(self.layout, key, readings)
        return known


_MOST_TABLES = 200


def looked_up(layout: Layout, key: str) -> list[Value]:
    """The values that follow from the code of a key, in the order of their tables."""
    return [value for value in layout.tables if isinstance(value.data, Looked) and value.data.key == key]


def _filled(layout: Layout, key: str, readings: Sequence[Any]) -> list[tuple[int, bytes]]:
    values = looked_up(layout, key)
    inner = [value.data.value for value in values]
    rows = [evaluated(inner, reading) for reading in readings]
    missing = evaluated(inner, None)
    entries = layout.entries[key]
    made = []
    for value, column, last in zip(
        values, zip(*rows, strict=True) if rows else ((),) * len(values), missing, strict=True
    ):
        whole = [*column, *[last] * (entries - len(column))]
        made.append((layout.tables[value].offset, _packed(layout.tables[value].holds, whole)))
    return made


def _packed(holds: Entry, entries: Sequence[Any]) -> bytes:
    match holds:
        case Entry.BIT:
            return sum(1 << code for code, entry in enumerate(entries) if entry).to_bytes(4, "little")
        case Entry.INTEGER:
            return bytes((ctypes.c_int32 * len(entries))(*map(int, entries)))
        case Entry.DOUBLE:
            return bytes((ctypes.c_double * len(entries))(*entries))
        case _:
            assert_never(holds)


def run_all(runs: Sequence[tuple[Loaded, Any, int, int]]) -> None:
    """Run code over words, each from a row to another, on all cores; ctypes lets go of Python's lock meanwhile."""
    if len(runs) == 1:
        _run(runs[0])
        return
    for _ in _threads().map(_run, runs):
        pass


def _run(run: tuple[Loaded, Any, int, int]) -> None:
    loaded, words, first, end = run
    loaded.run(ctypes.addressof(words), first, end)


@lru_cache(1)
def _threads() -> ThreadPoolExecutor:
    """As many threads as Polars has, so that what limits these limits this."""
    import polars as pl

    return ThreadPoolExecutor(pl.thread_pool_size(), "koirules")


if hasattr(os, "register_at_fork"):
    # A process that was forked has none of the threads.
    os.register_at_fork(after_in_child=_threads.cache_clear)


def _memory(what: str, bytes_of_sets: int, rows: int) -> Written:
    """Memory for a result, up to a whole vector."""
    lanes = -(-rows // LANES) * LANES
    return Written(taken(lanes // 8 if what == TRUTHS else lanes * (8 if what == HUNDREDTHS else bytes_of_sets)))


@define(eq=False)
class _Bound:
    """A frame bound to the words of a layout.

    readings: of each key that is looked up, by code. kept: what must not go while the code runs.
    """

    layout: Layout
    frame: pl.DataFrame
    held: Mapping[str, Held]
    rows: int
    words: list[int] = field(init=False)
    readings: dict[str, tuple[Any, ...]] = field(factory=dict)
    kept: list[Any] = field(factory=list)
    _sizes: dict[int, int] = field(factory=dict)

    def __attrs_post_init__(self) -> None:
        self.words = [0] * self.layout.words
        for key, (column, _) in self.layout.program.columns.items():
            how = self.held.get(key, NoColumn())
            if isinstance(how, NoColumn):
                self._put_nothing(key, column)
            elif isinstance(how, NumberColumn):
                self._put_numbers(key, how)
            elif column is Column.TRUTHS:
                self._put_truths(key, how)
            else:
                self._put_codes(key, how)

    def array(self) -> Any:
        """The words as the code takes them."""
        return (ctypes.c_int64 * len(self.words))(*(_signed(word) for word in self.words))

    def last_rows(self, first: int) -> Any:
        """The same words for the rows from `first` on, of which copies are made that are a whole vector long."""
        words = list(self.words)
        for word, size in self._sizes.items():
            # A size of 0 is a bit a row.
            left = (self.rows - first) * size if size else -(-(self.rows - first) // 8)
            before = first * size if size else first // 8
            copy = ctypes.create_string_buffer(ctypes.string_at(words[word] + before, left), 8 * LANES)
            self.kept.append(copy)
            words[word] = ctypes.addressof(copy) - before
        return (ctypes.c_int64 * len(words))(*(_signed(word) for word in words))

    def _put(self, key: str, part: str, address: int, size: int) -> None:
        slot = self.layout.inputs[key, part]
        self.words[slot.word] = address
        self._sizes[slot.word] = size
        if not self.layout.program.profile.complete:
            self.words[slot.word + 1] = 1

    def _put_same(self, key: str, part: str, contents: bytes) -> None:
        """Let every row read the same vector."""
        buffer = ctypes.create_string_buffer(contents)
        self.kept.append(buffer)
        self.words[self.layout.inputs[key, part].word] = ctypes.addressof(buffer)

    def _put_nothing(self, key: str, column: Column) -> None:
        self._put_same(key, VALUES, _NOTHING)
        self._put_same(key, THERE, _NOTHING)
        if (key, UPPER) in self.layout.inputs:
            self._put_same(key, UPPER, _NOTHING)
        if column is Column.CODES:
            self.readings[key] = ()

    def _put_numbers(self, key: str, how: NumberColumn) -> None:
        import polars as pl

        for part, name in ((VALUES, how.name), (UPPER, how.high)):
            if name and (key, part) in self.layout.inputs:
                memory = self._memory(self.frame[name].cast(pl.Float64), 8)
                self._put(key, part, memory.data, 8)
                if part == VALUES:
                    self._put_there(key, memory)
        if (key, UPPER) in self.layout.inputs and not how.high:
            raise OtherFrameError("numbers without upper ends where some had them")

    def _put_truths(self, key: str, how: CodeColumn) -> None:
        import polars as pl

        column = self.frame[how.name]
        if not how.truth:
            # An answer that could be either is the same as none, except where it is asked for: there it is no truth.
            table: dict[Any, bool] = {_NO: False, _YES: True}
            truths = pl.Series([table.get(reading) for reading in how.readings], dtype=pl.Boolean)
            column = truths.gather(column.cast(pl.UInt32))
        memory = self._memory(column, 0)
        self._put(key, VALUES, self._bits(memory.data, memory.shift), 0)
        self._put_there(key, memory)

    def _put_codes(self, key: str, how: CodeColumn) -> None:
        import polars as pl

        column, readings = self.frame[how.name], how.readings
        if how.truth:
            column = column.cast(pl.UInt8)
        if len(readings) >= self.layout.entries[key]:
            column, readings = self._classed(key, column, readings)
        elif column.dtype != pl.UInt8:
            column = column.cast(pl.UInt8)
        memory = self._memory(column, 1)
        self.readings[key] = readings
        self._put(key, VALUES, memory.data, 1)
        self._put_there(key, memory)

    def _classed(self, key: str, column: pl.Series, readings: Sequence[Any]) -> tuple[pl.Series, tuple[Any, ...]]:
        """Codes of which those share one whose values are the same, and a reading for each."""
        import polars as pl

        if len(readings) > _MOST_READINGS:
            raise OtherFrameError(f"more than {_MOST_READINGS:,} different texts in one column")
        inner = [value.data.value for value in looked_up(self.layout, key)]
        classes: dict[tuple[Any, ...], int] = {}
        firsts: list[Any] = []
        codes = []
        for reading in readings:
            said = tuple(evaluated(inner, reading))
            if said not in classes:
                firsts.append(reading)
            codes.append(classes.setdefault(said, len(classes)))
        if len(firsts) >= self.layout.entries[key]:
            raise OtherFrameError("too many different readings in one column")
        return pl.Series(codes, dtype=pl.UInt8).gather(column.cast(pl.UInt32)), tuple(firsts)

    def _put_there(self, key: str, memory: Memory) -> None:
        if (key, THERE) not in self.layout.inputs:
            return
        if memory.there is None:
            self._put_same(key, THERE, _EVERY)
        else:
            self._put(key, THERE, self._bits(memory.there, memory.shift), 0)

    def _memory(self, series: pl.Series, bytes_each: int) -> Memory:
        made = Memory.of(series, bytes_each)
        self.kept.append(made)
        return made

    def _bits(self, address: int, shift: int) -> int:
        found, copy = bits_from(address, shift, self.rows, LANES)
        self.kept.append(copy)
        return found


def _signed(word: int) -> int:
    return word - (1 << 64) if word >= 1 << 63 else word


@frozen
class _Columns:
    """The columns of results in memory that was written. A column that is another one as well is not made twice."""

    layout: Layout
    results: Results
    memory: Mapping[Slot, Written]
    rows: int
    _made: dict[tuple[int, int | None], pl.Series] = field(factory=dict)

    def frame(self) -> pl.DataFrame:
        """The columns, named and typed as those of the columnar engine."""
        import polars as pl

        return pl.DataFrame(list(self._columns()))

    def _columns(self) -> Iterator[pl.Series]:
        program, rules = self.layout.program, self.results.rules
        bits = self._series(program.possible, SET, b"C" if self.layout.bytes_of_sets == 1 else b"I")
        alone, sets = sets_of_grades([grade.name for grade in rules.grades], bits)
        yield alone.alias("grade")
        yield sets.alias("possible")
        low, high = (self._series(end, HUNDREDTHS, b"g") for end in program.score)
        one = self._series(program.score[0], HUNDREDTHS, b"g", program.is_one)
        yield one.alias("score")
        yield low.alias("score_low")
        yield high.alias("score_high")
        if self.results.sections:
            for section, ends in zip(rules.sections, program.sections, strict=True):
                for end, which in zip(ends, ("low", "high"), strict=True):
                    yield self._series(end, HUNDREDTHS, b"g").alias(f"{section.name}_{which}")
        if self.results.faults:
            for limit, (surely, known) in zip(rules.limits, program.limits, strict=True):
                yield self._series(surely, TRUTHS, b"b", known).alias(f"{limit.head} {limit.name}")

    def _series(self, value: Value, what: str, kind: bytes, known: Value | None = None) -> pl.Series:
        """The column of a value, null where it is not known."""
        slot = self.layout.slot(value, what)
        there = None if known is None or holds_always(known) else self.layout.slot(known, TRUTHS)
        key = (slot.word, None if there is None else there.word)
        if key not in self._made:
            memory = self.memory[slot]
            self._made[key] = as_series(kind, self.rows, memory, None if there is None else self.memory[there])
        return self._made[key]
