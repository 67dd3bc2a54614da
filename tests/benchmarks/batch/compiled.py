"""Times of the compiled engine: `python tests/benchmarks/batch/compiled.py [--rows 1000000,10000000] [--repeat 9]`.

The neutral standard, from frame to results: the expert's Polars, the columnar and the compiled engine take turns in one process,
each warm, and medians are shown: of the time, and of the time of all processors, which says more where others use the machine.
All engines must agree in every column. Then, each in a fresh process, the first call, with code in the cache folder; one record;
and with `--files FOLDER` (of `made_records.py`) whole files to totals.
"""

from __future__ import annotations

import argparse
import ctypes
import gc
import os
import statistics
import subprocess
import sys
import tempfile
import time
import timeit
from collections.abc import Callable
from pathlib import Path

HERE = Path(__file__).parent
sys.path[:0] = [str(HERE), str(HERE.parents[2])]

import expert_exact
import polars as pl
from made_records import made_frame
from run import machine, standard

from koirules.engines.columnar.reading import Source
from koirules.engines.compiled import engine as of_engine
from koirules.engines.compiled import running

Times = dict[str, tuple[float, float]]
"""By name the median seconds, and those of all processors together."""


def in_turns(tests: dict[str, Callable[[], object]], repeat: int) -> Times:
    """Time each, the runs taking turns. Results are given back before the next run begins."""
    found: dict[str, list[tuple[float, float]]] = {name: [] for name in tests}
    for test in tests.values():
        test()
        test()
    for _ in range(repeat):
        for name, test in tests.items():
            begin, used = time.perf_counter(), time.process_time()
            result = test()
            found[name].append((time.perf_counter() - begin, time.process_time() - used))
            del result
            gc.collect(0)
    return {name: tuple(map(statistics.median, zip(*times, strict=True))) for name, times in found.items()}


def shown(times: Times, base: str, what: str) -> None:
    """A row for each: time and processors, and both as ratios."""
    for name, (took, used) in times.items():
        ratios = f"{took / times[base][0]:.2f} | {used / times[base][1]:.2f}"
        print(f"| {name} | {what} | {took * 1e3:,.1f} ms | {used * 1e3:,.1f} ms | {ratios} |", flush=True)


def frames(rows: int, repeat: int) -> None:
    loaded = standard()
    for holes in (False, True):
        frame = made_frame(rows, holes=holes)
        expert = expert_exact.grade_with_holes if holes else expert_exact.grade
        if not loaded.grade_frame(frame, engine="compiled").equals(loaded.grade_frame(frame, engine="columnar")):
            raise SystemExit("the engines differ")
        times = in_turns(
            {
                "expert Polars, exact": lambda frame=frame, expert=expert: expert(frame),
                "columnar": lambda frame=frame: loaded.grade_frame(frame, engine="columnar"),
                "compiled": lambda frame=frame: loaded.grade_frame(frame, engine="compiled"),
            },
            repeat,
        )
        what = "5 % holes in ten traits" if holes else "complete"
        shown(times, "expert Polars, exact", f"{rows:,}, {what}")


FIRST = """
import sys, time
sys.path[:0] = {paths!r}
from made_records import made_frame
from run import standard
frame, loaded = made_frame({rows}), standard()
loaded.grade_frame(frame.head(1_000), engine="columnar")
begin = time.perf_counter()
loaded.grade_frame(frame, engine={engine!r})
print(time.perf_counter() - begin)
"""


def first_calls(rows: int, repeat: int) -> None:
    """The first call on a large frame in a fresh process, after a small one; the compiled engine finds its code."""
    with tempfile.TemporaryDirectory() as folder:
        found: dict[str, list[float]] = {"columnar": [], "None": []}
        for turn in range(repeat + 1):
            for name, times in found.items():
                text = FIRST.format(paths=sys.path[:2], rows=rows, engine=None if name == "None" else name)
                done = subprocess.run(
                    [sys.executable, "-c", text],
                    env=os.environ | {"KOIRULES_CACHE": folder},
                    capture_output=True,
                    text=True,
                    check=True,
                )
                if turn:
                    times.append(float(done.stdout))
        for name, times in found.items():
            told = "compiled, its code kept" if name == "None" else name
            print(
                f"| {told} | {rows:,}, the first call of a process | {statistics.median(times) * 1e3:,.1f} ms | | | |"
            )


def files(folder: str, repeat: int) -> None:
    from koirules.runs.run import here, run_files
    from koirules.runs.work import Job

    rules = (HERE / "neutral.koi").read_text(encoding="utf-8")
    job = Job(rules, "neutral.koi")
    worth = of_engine.WORTH_FROM

    def totals(least: float) -> object:
        of_engine.WORTH_FROM = least
        of_engine.READY_FROM = 2_000 if least == worth else least
        return run_files(job, [folder], here()).totals

    if totals(worth) != totals(float("inf")):
        raise SystemExit("the engines differ")
    times = in_turns({"columnar": lambda: totals(float("inf")), "compiled": lambda: totals(worth)}, repeat)
    shown(times, "columnar", "files to totals")


def one_record(repeat: int) -> None:
    """Machine code over one record, whose values lie ready as numbers, against the generated function over the same."""
    loaded = standard()
    frame = made_frame(16)
    loaded.grade_frame(frame, engine="compiled")
    grader = loaded.batch(engine="compiled")
    read = grader.reader({name: Source(name) for name in frame.columns if name in loaded.traits}).read(frame)
    grader.by_code(read, 16)
    (code,) = grader.compiled._codes.values()
    bound = running._Bound(code.layout, read.columns, read.held, 16)
    tables = ctypes.create_string_buffer(4 * code.layout.table_words + 64)
    left = [ctypes.create_string_buffer(8 * 16) for _ in code.layout.written]
    bound.words[code.layout.tables_word] = ctypes.addressof(tables)
    for slot, memory in zip(code.layout.written, left, strict=True):
        bound.words[slot.word] = ctypes.addressof(memory)
    words = bound.array()
    address, run = ctypes.addressof(words), code.loaded.run
    put = [(ctypes.c_double * 16)() for _ in code.layout.inputs]
    mapping = frame.drop("id").row(0, named=True)
    inputs = loaded.grader.complete.inputs
    readings = loaded.reader.read(mapping, "").readings
    values = [one.value(readings[one.key]) for one in inputs]

    def by_code() -> None:
        for array, value in zip(put, values, strict=False):
            array[0] = value
        run(address, 0, 16)

    generated = loaded.grader.complete.run_values
    tests = {
        "the generated function, with what reasons are told by": lambda: generated(values),
        "machine code, values put in place, no reasons": by_code,
    }
    for name, test in tests.items():
        took = min(timeit.repeat(test, number=2_000, repeat=3 * repeat)) / 2_000
        print(f"| {name} | one record | {took * 1e6:.1f} µs | | | |", flush=True)


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--rows", default="1000000,10000000")
    parser.add_argument("--repeat", type=int, default=9)
    parser.add_argument("--files", default="")
    given = parser.parse_args()
    print(f"{machine()}, {pl.thread_pool_size()} threads, median of {given.repeat}\n")
    print("| engine | records | time | of all processors | ratio | of processors |")
    print("| --- | --- | ---: | ---: | ---: | ---: |")
    for rows in map(int, filter(None, given.rows.split(","))):
        frames(rows, given.repeat)
    if given.rows:
        first_calls(1_000_000, given.repeat)
        one_record(given.repeat)
    if given.files:
        files(given.files, given.repeat)


if __name__ == "__main__":
    main()
