"""Where the machine code of a program finds its columns and tables, and where it puts its results.

The code is given an array of 64-bit words: addresses, and after each address of an input, where rows may lack something, the
stride of the column (0 for one that no row has, else 1). Everything in it follows from the program alone.
"""

from __future__ import annotations

from enum import Enum

from attrs import field

from koirules.program.bounds import Bounds
from koirules.program.graph import Kind, Op, Read, Value
from koirules.program.passes import live
from koirules.program.profiles import Column, Looked, RowProgram
from koirules.values import define, frozen

MOST_SMALL = 16
MOST_CODES = 256
"""The entries of a table of codes, small or large; the last is for nothing recorded."""

_SMALL_REACH = 12
"""Scales and choices of up to so many levels have small tables, with room for readings of several levels."""

_BITS_OF_BYTE = 8

EXACT = 2**51
"""Up to here doubles hold whole numbers, and their halves, exactly."""

INTEGERS = 2**30
"""Up to here 32-bit integers hold whole numbers, and sums of two of them."""


@frozen
class Target:
    """The processor that code is made for, in LLVM's words."""

    triple: str
    cpu: str
    features: str

    @property
    def fused(self) -> bool:
        """Whether it multiplies and adds in one instruction."""
        return "+fma," in f"{self.features}," or "aarch64" in self.triple

    @property
    def permutes(self) -> bool:
        """Whether one instruction looks up 16 entries."""
        return "+avx512f," in f"{self.features},"


@frozen
class Slot:
    """A column in memory, at a word of the array. what: what an input holds (`INPUTS`), or a result (`RESULTS`)."""

    word: int
    key: str
    what: str


VALUES, UPPER, THERE = "values", "upper", "there"
"""Of an input: doubles, truths or codes; the doubles of upper ends; where something was recorded."""

HUNDREDTHS, SET, TRUTHS = "hundredths", "set", "truths"
"""Of a result: doubles, shown as points; bits of grades; bits of truths."""


def holds_always(truth: Value) -> bool:
    """Whether a truth is one for every row, so that no column is needed for it."""
    return truth.constant and truth.data is True


class Entry(Enum):
    """What a table holds for each code: a bit of one word, a 32-bit integer, or a double."""

    BIT = "bit"
    INTEGER = "integer"
    DOUBLE = "double"

    __hash__ = object.__hash__


@frozen
class TableSlot:
    """A table, at an offset in 32-bit words."""

    offset: int
    holds: Entry


@define(eq=False)
class Layout:
    """The words of a program, in order: inputs (with strides unless complete), the tables, results.

    entries: of the tables of each key. tables: where each input that is looked up has its own. table_words: how long all tables
    are. written: what each slot of results holds. A slot serves every result that is the same value. bounds: of the numbers.
    """

    program: RowProgram
    bytes_of_sets: int
    words: int = 0
    inputs: dict[tuple[str, str], Slot] = field(factory=dict)
    entries: dict[str, int] = field(factory=dict)
    tables: dict[Value, TableSlot] = field(factory=dict)
    table_words: int = 0
    tables_word: int = 0
    written: dict[Slot, Value] = field(factory=dict)
    bounds: Bounds = field(factory=Bounds)
    _slots: dict[tuple[Value, str], Slot] = field(factory=dict)

    @classmethod
    def of(cls, program: RowProgram, grades: int, *, sections: bool, faults: bool) -> Layout:
        """The layout of a program of so many grades, with those of its results that are asked for."""
        made = cls(program, 1 if grades <= _BITS_OF_BYTE else 4)
        made._take_inputs()
        made._result(program.possible, SET)
        for end in program.score:
            made._result(end, HUNDREDTHS)
        if not holds_always(program.is_one):
            made._result(program.is_one, TRUTHS)
        if sections:
            for ends in program.sections:
                for end in ends:
                    made._result(end, HUNDREDTHS)
        if faults:
            for surely, known in program.limits:
                made._result(surely, TRUTHS)
                if not holds_always(known):
                    made._result(known, TRUTHS)
        made._take_tables()
        return made

    def slot(self, value: Value, what: str) -> Slot:
        """The slot of a result."""
        return self._slots[value, what]

    def _take_inputs(self) -> None:
        profile = self.program.profile
        for key, (column, reach) in self.program.columns.items():
            parts = [VALUES]
            if column is Column.NUMBERS and key in profile.stretched:
                parts.append(UPPER)
            if not profile.complete:
                parts.append(THERE)
            for part in parts:
                self.inputs[key, part] = Slot(self.words, key, part)
                self.words += 1 if profile.complete else 2
            if column is Column.CODES:
                small = isinstance(reach, int) and reach.bit_length() <= _SMALL_REACH
                self.entries[key] = MOST_SMALL if small else MOST_CODES
        self.tables_word = self.words
        self.words += 1

    def _take_tables(self) -> None:
        for value in live(self.written.values()):
            if value.op is Op.INPUT and isinstance(value.data, Looked):
                self._note_bounds(value, value.data.value)
                entries = self.entries[value.data.key]
                holds = self._entry(value, entries)
                self.tables[value] = TableSlot(self.table_words, holds)
                self.table_words += 1 if holds is Entry.BIT else 2 * entries if holds is Entry.DOUBLE else entries

    def _result(self, value: Value, what: str) -> None:
        if (value, what) not in self._slots:
            slot = self._slots[value, what] = Slot(self.words, "", what)
            self.written[slot] = value
            self.words += 1

    def largest(self, value: Value) -> float:
        """The largest that a number or set can be on either side of 0."""
        return max(map(abs, self.bounds.of(value)))

    def _note_bounds(self, looked: Value, inner: Value) -> None:
        """Note the bounds of what is looked up: those of what it follows from, whatever the reading."""
        for value in live([inner]):
            if value.op is Op.INPUT and isinstance(value.data, Read) and value.data.otherwise is not None:
                reach = value.data.otherwise
                self.bounds.note(value, 0, max(reach) if isinstance(reach, tuple) else reach)
        self.bounds.note(looked, *self.bounds.of(inner))

    def _entry(self, value: Value, entries: int) -> Entry:
        if value.kind is Kind.TRUTH and entries == MOST_SMALL:
            return Entry.BIT
        if value.kind is Kind.NUMBER or (value.kind is Kind.WHOLE and not self.largest(value) < INTEGERS):
            return Entry.DOUBLE
        return Entry.INTEGER
