"""What shows of columns of numbers at a glance, by machine code: one look at each value where Polars takes several.

The same as `columnar/glances.py`, for long columns of a standard whose code is there.
"""

from __future__ import annotations

import ctypes
from collections.abc import Iterable
from functools import cache
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

_ENDS = ("least", "most", "least_above_0")
_FLAGS = ("nans", "parts")
_WORDS = len(_ENDS) * LANES + len(_FLAGS)
"""What a look leaves: ends for each lane, then the lanes that met no number, or parts of one."""


def glances(columns: Iterable[tuple[pl.Series, bool]]) -> list[Glance]:
    """A glance at each column of doubles; with each, whether its values should be whole."""
    given = list(columns)
    looks: list[tuple[Loaded, Any, int, int]] = []
    found: list[list[Any]] = []
    kept: list[Any] = []
    for series, whole in given:
        memory = Memory.of(series, 8)
        there, copy = (0, None) if memory.there is None else bits_from(memory.there, memory.shift, len(series), LANES)
        kept += [memory, copy]
        found.append([])
        whole_rows = len(series) - len(series) % LANES
        for first in range(0, whole_rows, _ROWS):
            left = (ctypes.c_double * _WORDS)()
            found[-1].append(left)
            words = (ctypes.c_int64 * 3)(memory.data, there, ctypes.addressof(left))
            looks.append((_code(bool(there), whole), words, first, min(first + _ROWS, whole_rows)))
    run_all(looks)
    return [_told(series, whole, left) for (series, whole), left in zip(given, found, strict=True)]


def _told(series: pl.Series, whole: bool, found: list[Any]) -> Glance:
    """What several looks and the last few rows come to."""
    last = [value for value in series[len(series) - len(series) % LANES :].to_list() if value is not None]
    numbers = [value for value in last if not isnan(value)]
    nans, parts = len(numbers) < len(last), any(isfinite(value) and value % 1 != 0 for value in numbers)
    above = [value for value in numbers if value > 0]
    for left in found:
        numbers += [min(left[:LANES]), max(left[LANES : 2 * LANES])]
        above += left[2 * LANES : 3 * LANES]
        nans, parts = nans or bool(left[-2]), parts or bool(left[-1])
    least, most, least_above = min(numbers, default=inf), max(numbers, default=-inf), min(above, default=inf)
    if least > most:
        return Glance(None, None, nans, tiny=False, parts=False, shares=False)
    tiny = least_above <= TINY
    if least < 0 and not whole:
        tiny = tiny or bool(((series < 0) & (series >= -TINY)).any())
    return Glance(least, most, nans, tiny and not whole, parts and whole, least_above <= 1)


@cache
def _code(holes: bool, whole: bool) -> Loaded:
    """The code for columns with nulls or without, whose values should be whole or not."""
    return Loaded(made_or_kept(f"glances {holes} {whole}", lambda target: _module(target, holes=holes, whole=whole)))


def _module(target: Target, *, holes: bool, whole: bool) -> str:
    vector, truths = f"<{LANES} x double>", f"<{LANES} x i1>"
    begin = {"least": inf, "most": -inf, "least_above_0": inf}
    flags = _FLAGS if whole else _FLAGS[:1]
    body = ["%at = getelementptr double, ptr %data, i64 %row", f"%x = load {vector}, ptr %at, align 8"]
    if holes:
        body += [
            "%byte = lshr i64 %row, 3",
            "%at.valid = getelementptr i8, ptr %valid, i64 %byte",
            f"%bits = load i{LANES}, ptr %at.valid, align 1",
            f"%there = bitcast i{LANES} %bits to {truths}",
        ]
    # What is not there is what each of them begins with.
    for name, value in begin.items():
        body.append(
            f"%{name}.x = select {truths} %there, {vector} %x, {vector} {double(value).name}"
            if holes
            else f"%{name}.x = select i1 true, {vector} %x, {vector} %x"
        )
    body += [
        f"%above = fcmp ogt {vector} %least_above_0.x, zeroinitializer",
        f"%above.x = select {truths} %above, {vector} %least_above_0.x, {vector} {double(inf).name}",
    ]
    for name, how, x in (("least", "olt", "least.x"), ("most", "ogt", "most.x"), ("least_above_0", "olt", "above.x")):
        body += [
            f"%{name}.test = fcmp {how} {vector} %{x}, %{name}",
            f"%{name}.next = select {truths} %{name}.test, {vector} %{x}, {vector} %{name}",
        ]
    body += [f"%nans.now = fcmp uno {vector} %least.x, %least.x", f"%nans.next = or {truths} %nans, %nans.now"]
    if whole:
        body += [
            f"%down = call {vector} @llvm.floor.v{LANES}f64({vector} %least.x)",
            f"%parts.now = fcmp one {vector} %least.x, %down",
            f"%parts.next = or {truths} %parts, %parts.now",
        ]
    phis = [
        f"%{name} = phi {vector} [ {double(value).name}, %entry ], [ %{name}.next, %rows ]"
        for name, value in begin.items()
    ]
    phis += [f"%{name} = phi {truths} [ zeroinitializer, %entry ], [ %{name}.next, %rows ]" for name in flags]
    stores = []
    for place, name in enumerate(begin):
        stores += [
            f"%{name}.at = getelementptr double, ptr %left, i64 {place * LANES}",
            f"store {vector} %{name}.next, ptr %{name}.at, align 8",
        ]
    for place, name in enumerate(flags):
        stores += [
            f"%{name}.bits = bitcast {truths} %{name}.next to i{LANES}",
            f"%{name}.double = uitofp i{LANES} %{name}.bits to double",
            f"%{name}.at = getelementptr double, ptr %left, i64 {len(_ENDS) * LANES + place}",
            f"store double %{name}.double, ptr %{name}.at",
        ]
    words = []
    for place, name in enumerate(("data", "valid", "left")):
        words += [
            f"%at{place} = getelementptr i64, ptr %args, i64 {place}",
            f"%word{place} = load i64, ptr %at{place}",
            f"%{name} = inttoptr i64 %word{place} to ptr",
        ]
    lines = "\n  ".join
    return f"""
declare {vector} @llvm.floor.v{LANES}f64({vector})
define void @grade(ptr noalias %args, i64 %first, i64 %end) #0 {{
entry:
  {lines(words)}
  br label %rows
rows:
  %row = phi i64 [ %first, %entry ], [ %next, %rows ]
  {lines(phis)}
  {lines(body)}
  %next = add i64 %row, {LANES}
  %more = icmp slt i64 %next, %end
  br i1 %more, label %rows, label %done
done:
  {lines(stores)}
  ret void
}}
{attributes(target)}
"""
