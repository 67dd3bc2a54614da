"""Columns of Polars as memory, and memory as columns: the Arrow C data interface, by ctypes.

Source: the Apache Arrow specification, "The Arrow C data interface" and "The Arrow PyCapsule Interface". pyarrow could do this
too, and takes longer to import than a million records to grade.
"""

from __future__ import annotations

import ctypes
import mmap
from collections.abc import Sequence
from itertools import count
from threading import Lock
from typing import TYPE_CHECKING, Any

from attrs import field

from koirules.values import define, frozen

if TYPE_CHECKING:
    import polars as pl

_HUGE = 1 << 21
"""Memory is taken in pages of this size where the system has them: a page is cleared when it is first written to."""

_SMALL = 1 << 16
_LAZILY = getattr(mmap, "MADV_FREE", None)
_MOST_KEPT = 1 << 30 if _LAZILY is not None else 1 << 27
"""So many bytes of results that were let go are kept for the next ones: more where the system may take them back."""


class _Schema(ctypes.Structure):
    pass


class _Array(ctypes.Structure):
    pass


class _Stream(ctypes.Structure):
    pass


_Release = ctypes.CFUNCTYPE(None, ctypes.c_void_p)

_Schema._fields_ = [
    ("format", ctypes.c_char_p),
    ("name", ctypes.c_char_p),
    ("metadata", ctypes.c_char_p),
    ("flags", ctypes.c_int64),
    ("n_children", ctypes.c_int64),
    ("children", ctypes.c_void_p),
    ("dictionary", ctypes.c_void_p),
    ("release", _Release),
    ("private_data", ctypes.c_void_p),
]
_Array._fields_ = [
    ("length", ctypes.c_int64),
    ("null_count", ctypes.c_int64),
    ("offset", ctypes.c_int64),
    ("n_buffers", ctypes.c_int64),
    ("n_children", ctypes.c_int64),
    ("buffers", ctypes.POINTER(ctypes.c_void_p)),
    ("children", ctypes.c_void_p),
    ("dictionary", ctypes.c_void_p),
    ("release", _Release),
    ("private_data", ctypes.c_void_p),
]
_Stream._fields_ = [
    ("get_schema", ctypes.c_void_p),
    ("get_next", ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(_Stream), ctypes.POINTER(_Array))),
    ("get_last_error", ctypes.c_void_p),
    ("release", ctypes.c_void_p),
    ("private_data", ctypes.c_void_p),
]

_pointer_in = ctypes.PYFUNCTYPE(ctypes.c_void_p, ctypes.py_object, ctypes.c_char_p)(
    ("PyCapsule_GetPointer", ctypes.pythonapi)
)
_capsule_of = ctypes.PYFUNCTYPE(ctypes.py_object, ctypes.c_void_p, ctypes.c_char_p, ctypes.c_void_p)(
    ("PyCapsule_New", ctypes.pythonapi)
)


@define(eq=False)
class Memory:
    """The memory of a column, as long as this is held.

    data: the address of its values, from the first row on; of truths the address of the first byte, in which `shift` says at
    which bit the first row stands. there: likewise of the bits that say where something is, None where every row has something.
    """

    data: int
    there: int | None
    shift: int
    _array: _Array = field(repr=False)
    _stream: object = field(repr=False)

    @classmethod
    def of(cls, series: pl.Series, bytes_each: int) -> Memory:
        """The memory of a column in one chunk. bytes_each: of a value, 0 of truths, which take a bit."""
        whole = series.rechunk()
        stream = whole.__arrow_c_stream__()
        found = ctypes.cast(_pointer_in(stream, b"arrow_array_stream"), ctypes.POINTER(_Stream))
        array = _Array()
        if found.contents.get_next(found, ctypes.byref(array)) or not array.release:
            # A column without rows may have no chunk at all.
            return cls(0, None, 0, array, whole)
        byte, shift = divmod(array.offset, 8)
        bits, values = array.buffers[0], array.buffers[1] or 0
        data = values + byte if not bytes_each else values + bytes_each * array.offset
        there = None if bits is None or not whole.null_count() else bits + byte
        return cls(data, there, shift, array, stream)

    def __del__(self) -> None:
        if self._array.release:
            self._array.release(ctypes.addressof(self._array))


def bits_from(address: int, shift: int, rows: int, spare: int) -> tuple[int, Any]:
    """The address of bits of which the first row's is the first of a byte, and the copy that they are where it was not."""
    if not shift:
        return address, None
    length = -(-(rows + shift) // 8)
    bits = int.from_bytes(ctypes.string_at(address, length), "little") >> shift
    copy = ctypes.create_string_buffer(bits.to_bytes(length, "little"), length + spare)
    return ctypes.addressof(copy), copy


# Results


@frozen(eq=False)
class Block:
    """Memory that can be written to. owner: what it is part of; kept: under what size it is kept when it is let go, else 0."""

    address: int
    owner: Any = field(repr=False)
    kept: int = 0


def _pages(size: int) -> mmap.mmap:
    """Memory of this process alone: what is shared between processes has no huge pages, and is not taken back lazily."""
    if hasattr(mmap, "MAP_PRIVATE"):
        return mmap.mmap(-1, size, flags=mmap.MAP_PRIVATE | mmap.MAP_ANONYMOUS)
    return mmap.mmap(-1, size)


@define(eq=False)
class _Kept:
    """Blocks that were let go, by their size."""

    blocks: dict[int, list[Block]] = field(factory=dict)
    bytes: int = 0
    lock: Lock = field(factory=Lock)

    def take(self, size: int) -> Block:
        """Memory for so many bytes, at least a whole vector."""
        if size < _SMALL:
            buffer = ctypes.create_string_buffer(size + 64)
            return Block(ctypes.addressof(buffer), buffer)
        whole = -(-size // _HUGE) * _HUGE
        with self.lock:
            found = self.blocks.get(whole)
            if found:
                self.bytes -= whole
                return found.pop()
        pages = _pages(whole + _HUGE)
        if hasattr(mmap, "MADV_HUGEPAGE"):
            pages.madvise(mmap.MADV_HUGEPAGE)
        start = ctypes.addressof(ctypes.c_char.from_buffer(pages))
        return Block(-(-start // _HUGE) * _HUGE, pages, whole)

    def give_back(self, block: Block) -> None:
        """Keep a block that nobody reads any more, as far as there is room."""
        if block.kept:
            with self.lock:
                if self.bytes + block.kept <= _MOST_KEPT:
                    if _LAZILY is not None:
                        block.owner.madvise(_LAZILY)
                    self.bytes += block.kept
                    self.blocks.setdefault(block.kept, []).append(block)


_KEPT = _Kept()
_READ: dict[int, Any] = {}
"""What columns of Polars read, until they let it go."""
_NUMBERS = count(1)


def taken(size: int) -> Block:
    """Memory for so many bytes of results; what columns that are gone had is used again."""
    return _KEPT.take(size)


class Written:
    """Blocks that several columns read; given back when the last of them is gone."""

    def __init__(self, block: Block) -> None:
        self.block = block

    def __del__(self) -> None:
        _KEPT.give_back(self.block)


def _let_go_schema(address: int) -> None:
    _Schema.from_address(address).release = _Release()


def _let_go(address: int) -> None:
    array = _Array.from_address(address)
    _READ.pop(array.private_data, None)
    array.release = _Release()


_LET_GO_SCHEMA, _LET_GO = _Release(_let_go_schema), _Release(_let_go)


@frozen(eq=False)
class _Exported:
    """What Polars makes a column of. formats of the specification: `g` doubles, `C` and `I` whole numbers, `b` truths."""

    format: bytes
    rows: int
    blocks: Sequence[Written | None]

    def __arrow_c_array__(self, requested_schema: object | None = None) -> tuple[object, object]:
        number = next(_NUMBERS)
        buffers = (ctypes.c_void_p * 2)(*(None if one is None else one.block.address for one in self.blocks))
        schema = _Schema(format=self.format, name=b"", flags=2, release=_LET_GO_SCHEMA)
        array = _Array(
            length=self.rows,
            null_count=-1 if self.blocks[0] is not None else 0,
            n_buffers=2,
            buffers=ctypes.cast(buffers, ctypes.POINTER(ctypes.c_void_p)),
            release=_LET_GO,
            private_data=number,
        )
        _READ[number] = (buffers, schema, array, self.blocks)
        # Polars moves both out of the capsules.
        return (
            _capsule_of(ctypes.addressof(schema), b"arrow_schema", None),
            _capsule_of(ctypes.addressof(array), b"arrow_array", None),
        )


def as_series(format_: bytes, rows: int, values: Written, there: Written | None = None) -> pl.Series:
    """A column over memory that was written. there: the bits that say where something is."""
    import polars as pl

    return pl.Series(_Exported(format_, rows, (there, values)))
