"""What shows of columns of numbers at a glance, by machine code: one look at each value where Polars takes several.

The same as `columnar/glances.py`, for long columns of a standard whose code is there.
"""

from __future__ import annotations

import ctypes
from collections.abc import Iterable
from functools import lru_cache
from math import inf, isfinite, isnan
from typing import TYPE_CHECKING, Any

from koirules.engines.columnar.glances import TINY, Glance
from koirules.engines.compiled.arrow import Memory, bits_from
from koirules.engines.compiled.layout import Target
from koirules.engines.compiled.lowering import LANES, attributes, double
from koirules.engines.compiled.objects import Loaded, made_or_kept
from koirules.engines.compiled.running import run_all

if TYPE_CHECKING:
    import polars as pl

_ROWS = 1 << 20
"""So many rows of a column are looked at in one go."""

_WORDS = 2 * LANES + 3
"""What a look leaves: the least and the most of each lane, and which lanes met no number, something tiny, or parts of one."""


def glances(columns: Iterable[tuple[pl.Series, bool]]) -> list[Glance]:
    """A glance at each column of doubles; with each, whether its values should be whole."""
    given = list(columns)
    looks: list[tuple[Any, int, int]] = []
    found: list[list[Any]] = []
    kept: list[Any] = []
    for series, _ in given:
        memory = Memory.of(series, 8)
        there, copy = (0, None) if memory.there is None else bits_from(memory.there, memory.shift, len(series), LANES)
        kept += [memory, copy]
        found.append([])
        whole_rows = len(series) - len(series) % LANES
        for first in range(0, whole_rows, _ROWS):
            left = (ctypes.c_double * _WORDS)()
            found[-1].append(left)
            words = (
                memory.data,
                there or ctypes.addressof(_EVERY),
                bool(there),
                ctypes.addressof(left),
            )
            looks.append(((ctypes.c_int64 * len(words))(*words), first, min(first + _ROWS, whole_rows)))
    run_all(_code(), looks)
    return [_told(series, whole, left) for (series, whole), left in zip(given, found, strict=True)]


_EVERY = ctypes.create_string_buffer(b"\xff" * LANES)


def _told(series: pl.Series, whole: bool, found: list[Any]) -> Glance:
    """What several looks and the last few rows come to."""
    least, most = inf, -inf
    nans = tiny = parts = False
    for left in found:
        least, most = min(least, *left[:LANES]), max(most, *left[LANES : 2 * LANES])
        no_number, small, part = left[2 * LANES :]
        nans, tiny, parts = nans or bool(no_number), tiny or bool(small), parts or bool(part)
    for value in series[len(series) - len(series) % LANES :].to_list():
        if value is not None and isnan(value):
            nans = True
        elif value is not None:
            least, most = min(least, value), max(most, value)
            tiny, parts = tiny or 0 < abs(value) <= TINY, parts or (isfinite(value) and value % 1 != 0)
    nothing = least > most
    return Glance(None if nothing else least, None if nothing else most, nans, tiny and not whole, parts and whole)


@lru_cache(1)
def _code() -> Loaded:
    return Loaded(made_or_kept("glances", _module))


def _module(target: Target) -> str:
    vector, truths = f"<{LANES} x double>", f"<{LANES} x i1>"
    looks = "\n  ".join(
        f"%{name} = phi {truths} [ zeroinitializer, %entry ], [ %{name}.next, %rows ]"
        for name in ("nans", "tiny", "parts")
    )
    noted = "\n  ".join(
        f"%{name}.there = and {truths} %{name}.now, %there\n  %{name}.next = or {truths} %{name}, %{name}.there"
        for name in ("nans", "tiny", "parts")
    )
    ends = "\n  ".join(
        f"%{name}.beyond = fcmp {how} {vector} %x, %{name}\n  %{name}.test = and {truths} %{name}.beyond, %there\n"
        f"  %{name}.next = select {truths} %{name}.test, {vector} %x, {vector} %{name}"
        for name, how in (("least", "olt"), ("most", "ogt"))
    )
    stores = "\n  ".join(
        f"%{name}.bits = bitcast {truths} %{name}.next to i{LANES}\n  %{name}.double = uitofp i{LANES} %{name}.bits to double\n"
        f"  %{name}.at = getelementptr double, ptr %left, i64 {2 * LANES + place}\n  store double %{name}.double, ptr %{name}.at"
        for place, name in enumerate(("nans", "tiny", "parts"))
    )
    words = "\n  ".join(
        f"%at{place} = getelementptr i64, ptr %args, i64 {place}\n  %word{place} = load i64, ptr %at{place}"
        for place in range(4)
    )
    return f"""
declare {vector} @llvm.floor.v{LANES}f64({vector})
declare {vector} @llvm.fabs.v{LANES}f64({vector})
define void @grade(ptr noalias %args, i64 %first, i64 %end) #0 {{
entry:
  {words}
  %data = inttoptr i64 %word0 to ptr
  %valid = inttoptr i64 %word1 to ptr
  %left = inttoptr i64 %word3 to ptr
  br label %rows
rows:
  %row = phi i64 [ %first, %entry ], [ %next, %rows ]
  %least = phi {vector} [ {double(inf).name}, %entry ], [ %least.next, %rows ]
  %most = phi {vector} [ {double(-inf).name}, %entry ], [ %most.next, %rows ]
  {looks}
  %at = getelementptr double, ptr %data, i64 %row
  %x = load {vector}, ptr %at, align 8
  %byte = lshr i64 %row, 3
  %place = mul i64 %byte, %word2
  %at.valid = getelementptr i8, ptr %valid, i64 %place
  %bits = load i{LANES}, ptr %at.valid, align 1
  %there = bitcast i{LANES} %bits to {truths}
  {ends}
  %nans.now = fcmp uno {vector} %x, %x
  %size = call {vector} @llvm.fabs.v{LANES}f64({vector} %x)
  %small = fcmp ole {vector} %size, {double(TINY).name}
  %some = fcmp one {vector} %x, zeroinitializer
  %tiny.now = and {truths} %small, %some
  %down = call {vector} @llvm.floor.v{LANES}f64({vector} %x)
  %parts.now = fcmp one {vector} %x, %down
  {noted}
  %next = add i64 %row, {LANES}
  %more = icmp slt i64 %next, %end
  br i1 %more, label %rows, label %done
done:
  store {vector} %least.next, ptr %left, align 8
  %left.most = getelementptr double, ptr %left, i64 {LANES}
  store {vector} %most.next, ptr %left.most, align 8
  {stores}
  ret void
}}
{attributes(target)}
"""
